// A place on the map as a person types it: the name of a mark, or latitude and longitude.
//
// Name:   letters' case does not matter; a mark named so goes before numbers.
// Degrees: any writing of degrees_text.h, latitude first unless letters say otherwise, parted by a comma with a blank, a semicolon
//         or a blank: "34.0612, -106.8921", "34° 3' 40\" N, 106° 53' 31\" W".
// Errors: a sentence for what is neither, for what is off the earth and for what lies further than 50 km from the field.
// Cost:   linear in the marks.
#pragma once

#include <QString>
#include <tl/expected.hpp>

#include "geo/read/field_survey.h"

namespace plugside {

[[nodiscard]] tl::expected<LocalPoint, QString> typed_place(const QString& text, const FieldSurvey& field);

}  // namespace plugside
