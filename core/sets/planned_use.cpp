#include "core/sets/planned_use.h"

#include <algorithm>
#include <map>

#include "core/sets/set_choices.h"
#include "core/sets/system_reach.h"

namespace plugside {

namespace {

void take_least(std::optional<Metres>& least, std::optional<Metres> other) {
    if (other && (!least || *other < *least)) least = other;
}

struct Treated {
    int placements = 0;
    std::vector<LocalPoint> places;
};

std::map<std::size_t, Treated> treated_systems(const Survey& survey, const WorkOrder& work, const Plan& plan) {
    std::map<std::string, std::optional<Method>> methods;
    std::map<std::size_t, Treated> treated;
    const std::vector<SetChoice> choices = choices_of(survey, plan);
    for (std::size_t s = 0; s < plan.sets.size(); ++s) {
        if (choices[s] == SetChoice::dropped) continue;
        const ProbeSite& site = plan.probes[plan.sets[s].probe];
        const std::string id = method_at(work, site.key);
        const auto [method, is_new] = methods.try_emplace(id);
        if (is_new) method->second = find_method(work, id);
        if (!method->second || method->second->stuff == Stuff::trap) continue;
        Treated& system = treated[site.system];
        system.placements += method->second->placements;
        system.places.push_back(site.middle);
    }
    return treated;
}

}  // namespace

PlannedUse planned_use(const Survey& survey, const WorkOrder& work, const Plan& plan, UtcTime now) {
    PlannedUse use;
    use.day = std::chrono::floor<std::chrono::days>(now);
    use.per_placement = work.dose;
    use.area_m2 = plan.area_field_m2 ? plan.area_field_m2 : plan.area_walked_m2;
    use.crop = current(work.conditions.crop, work.conditions, Question::crop, now);
    const bool distances = work.label.building_distance || work.label.water_distance;
    for (const auto& [number, system] : treated_systems(survey, work, plan)) {
        use.placements_of_system.push_back(system.placements);
        for (std::size_t i = 0; i < system.places.size(); ++i)
            for (std::size_t j = 0; j < i; ++j)
                take_least(use.nearest_placements, Metres::of(distance_m(system.places[i], system.places[j])));
        if (!distances) continue;
        for (const SystemReach& reach : reaches_of(survey, plan, number))
            for (const KeepClearArea& area : survey.ground.keep_clear) {
                if (area.kind == KeepClearKind::building && may_be_lived_in(work.conditions, area.name, now))
                    take_least(use.nearest_building, reach.nearest(area.area, use.nearest_building));
                if (area.kind == KeepClearKind::well)
                    take_least(use.nearest_water, reach.nearest(area.area, use.nearest_water));
            }
    }
    return use;
}

std::vector<LabelCheck> label_checks(const Survey& survey, const WorkOrder& work, const Plan& plan, UtcTime now,
                                     const std::vector<Application>& season, LengthUnits units) {
    return compare(work.label, planned_use(survey, work, plan, now), season, units);
}

}  // namespace plugside
