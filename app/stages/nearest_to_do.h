// What lies nearest to a place and still waits for a decision: a set in the Sets step, a mound whose system is doubtful in the Systems step,
// a mark with a finding before; where nothing waits there, the nearest mound of a gopher.
//
// waits: whether it is something to decide. Nothing where the field has no such place at all; in the Sets step also where all is decided.
// Cost:  linear in marks, findings and sets.
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "app/session/choices.h"
#include "app/session/field_session.h"

namespace plugside {

struct NearestPlace {
    QString name;  // "set 7", "M031"
    LocalPoint at;
    bool waits = false;
    friend bool operator==(const NearestPlace&, const NearestPlace&) = default;
};

[[nodiscard]] std::optional<NearestPlace> nearest_to_do(const FieldSession& session, Step step, LocalPoint from);

}  // namespace plugside
