#include "geo/write/waypoints.h"

#include <cassert>

#include "geo/write/gpx_text.h"
#include "geo/write/safe_file.h"
#include "geo/write/set_words.h"

namespace plugside {

namespace {

// A waypoint's place, name and words; `tag` is wpt or rtept.
std::string place_element(const FieldSurvey& field, const Plan& plan, const SetPoint& set, LengthUnits units, int indent,
                          const std::string& tag) {
    using namespace gpx_text;
    const std::string margin(static_cast<std::size_t>(indent), ' ');
    std::string text = margin + "<" + tag + coordinates(field.frame.to_geographic(plan.probes[set.probe].middle)) + ">\n";
    text += element(indent + 2, "name", set_name(set, plan));
    text += element(indent + 2, "cmt", chance_words(set, plan));
    text += element(indent + 2, "desc", set_words(set, field.survey, plan, units));
    return text + margin + "</" + tag + ">\n";
}

}  // namespace

tl::expected<void, Refusal> write_waypoints(const FieldSurvey& field, const Plan& plan, const std::filesystem::path& file,
                                            LengthUnits units) {
    assert(plan.revision == field.survey.revision);
    std::string text = gpx_text::opening(field.field_name);
    for (const SetPoint* set : sets_to_visit(plan)) text += place_element(field, plan, *set, units, 2, "wpt");
    return write_text_file(file, text + gpx_text::closing);
}

tl::expected<void, Refusal> write_set_route(const FieldSurvey& field, const Plan& plan, const std::filesystem::path& file,
                                            LengthUnits units) {
    assert(plan.revision == field.survey.revision);
    std::string text = gpx_text::opening(field.field_name) + "  <rte>\n";
    text += gpx_text::element(4, "name", field.field_name);
    for (const SetPoint* set : sets_to_visit(plan)) text += place_element(field, plan, *set, units, 4, "rtept");
    return write_text_file(file, text + "  </rte>\n" + gpx_text::closing);
}

}  // namespace plugside
