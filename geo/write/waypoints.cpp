#include "geo/write/waypoints.h"

#include <cassert>

#include "core/words/words.h"
#include "geo/write/gpx_text.h"
#include "geo/write/safe_file.h"
#include "geo/write/set_words.h"

namespace plugside {

namespace {

struct WhatIsWritten {
    std::string opening;
    std::string tag;
    int indent;
    std::string closing;
};

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

// All sets to visit as elements `tag`, within `opening` and `closing`.
tl::expected<void, Refusal> write_places(const FieldSurvey& field, const Plan& plan, const std::filesystem::path& file,
                                         LengthUnits units, const Progress& progress, const WhatIsWritten& what) {
    assert(plan.revision == field.survey.revision);
    std::string text = gpx_text::opening(field.field_name) + what.opening;
    const std::vector<const SetPoint*> sets = sets_to_visit(plan);
    for (std::size_t i = 0; i < sets.size(); ++i) {
        if (progress.stopped())
            return tl::unexpected(Refusal{Refusal::Code::stopped, file.string(), "", Words::later("a request to stop"), ""});
        if (i % 100 == 99)
            progress.say(static_cast<double>(i) / static_cast<double>(sets.size()), Words::later("writing the sets"));
        text += place_element(field, plan, *sets[i], units, what.indent, what.tag);
    }
    return write_text_file(file, text + what.closing + gpx_text::closing);
}

}  // namespace

tl::expected<void, Refusal> write_waypoints(const FieldSurvey& field, const Plan& plan, const std::filesystem::path& file,
                                            LengthUnits units, const Progress& progress) {
    return write_places(field, plan, file, units, progress, {"", "wpt", 2, ""});
}

tl::expected<void, Refusal> write_set_route(const FieldSurvey& field, const Plan& plan, const std::filesystem::path& file,
                                            LengthUnits units, const Progress& progress) {
    const std::string opening = "  <rte>\n" + gpx_text::element(4, "name", field.field_name);
    return write_places(field, plan, file, units, progress, {opening, "rtept", 4, "  </rte>\n"});
}

}  // namespace plugside
