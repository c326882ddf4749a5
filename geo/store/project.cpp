#include "geo/store/project.h"

#include <system_error>

namespace plugside {

namespace {

bool same_field(const FieldSurvey& a, const FieldSurvey& b) {
    return a.field_name == b.field_name && a.survey == b.survey && a.frame.centre() == b.frame.centre() &&
           a.findings == b.findings && a.of_reading == b.of_reading;
}

}  // namespace

bool operator==(const Project& a, const Project& b) {
    const bool same_fields = a.field == b.field || (a.field && b.field && same_field(*a.field, *b.field));
    return same_fields && a.steps == b.steps && a.tables == b.tables && a.layers == b.layers && a.norths == b.norths &&
           a.pictures == b.pictures && a.imagery_tone == b.imagery_tone && a.units == b.units &&
           a.not_handed_out == b.not_handed_out;
}

std::filesystem::path as_kept(const std::filesystem::path& file) {
    std::error_code error;
    const auto whole = std::filesystem::absolute(file, error);
    return (error ? file : whole).lexically_normal();
}

}  // namespace plugside
