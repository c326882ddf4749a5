#include "geo/write/waypoints.h"

#include <algorithm>
#include <cassert>

#include "core/probing/instruction.h"
#include "core/sets/cautions.h"
#include "core/words/words.h"
#include "geo/write/gpx_text.h"
#include "geo/write/safe_file.h"

namespace plugside {

namespace {

std::string name_of(const SetPoint& set, const BurrowSystem& system) {
    std::string name = set.visit_order < 10 ? "S0" : "S";
    return name.append(std::to_string(set.visit_order)).append(" ").append(system.letter);
}

// What speaks against the place goes to the field with it: there is where the decision is carried out.
std::string warnings_of(const SetPoint& set) {
    std::string text;
    for (const std::string& id : set.cautions) {
        const Caution* caution = find_caution(id);
        if (caution != nullptr && caution->weight == CautionWeight::stop)
            text += " " + Words::tell("STOP: {1}", {caution->sentence});
    }
    return text;
}

std::string waypoint(const FieldSurvey& field, const Plan& plan, const SetPoint& set, LengthUnits units) {
    using namespace gpx_text;
    const ProbeSite& site = plan.probes[set.probe];
    std::string text = "  <wpt" + coordinates(field.frame.to_geographic(site.middle)) + ">\n";
    text += element(4, "name", name_of(set, plan.systems[site.system]));
    text += element(4, "cmt", Words::tell("chance of a hit {1} in 100", {std::to_string(site.hit.in_100())}));
    text += element(4, "desc", instruction(site, field.survey, units) + warnings_of(set));
    return text + "  </wpt>\n";
}

}  // namespace

tl::expected<void, Refusal> write_waypoints(const FieldSurvey& field, const Plan& plan, const std::filesystem::path& file,
                                            LengthUnits units) {
    assert(plan.revision == field.survey.revision);
    std::vector<const SetPoint*> sets;
    for (const SetPoint& set : plan.sets)
        if (set.choice != SetChoice::dropped) sets.push_back(&set);
    std::stable_sort(sets.begin(), sets.end(),
                     [](const SetPoint* a, const SetPoint* b) { return a->visit_order < b->visit_order; });
    std::string text = gpx_text::opening(field.field_name);
    for (const SetPoint* set : sets) text += waypoint(field, plan, *set, units);
    return write_text_file(file, text + gpx_text::closing);
}

}  // namespace plugside
