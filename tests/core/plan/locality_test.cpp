// What is done at one end of a large field leaves the plan of the other end as it was, to the bit.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "core/plan/make_plan.h"
#include "core/runs/main_run.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

// Two fields of one strip, 400 m from middle to middle; the mounds of the second are named E...
Survey long_strip(FieldKind kind, std::size_t mounds_each) {
    Survey strip = test::simulated_survey(71, mounds_each, kind);
    for (Mound& mound : strip.mounds) mound.name = "W" + mound.name;
    Survey east = test::moved(test::simulated_survey(72, mounds_each, kind), 0.0, {400.0, 0.0});
    for (Mound& mound : east.mounds) {
        mound.name = "E" + mound.name;
        strip.mounds.push_back(mound);
    }
    strip.walks.clear();
    strip.walks.push_back({"walk 1", "walk.gpx", {}});
    for (Mound& mound : strip.mounds) mound.walk = 0;
    return strip;
}

bool at_the_east(const Survey& survey, std::size_t mound) { return survey.mounds[mound].name.front() == 'E'; }

std::map<std::set<std::size_t>, double> eastern_systems(const Survey& survey, const Plan& plan) {
    std::map<std::set<std::size_t>, double> systems;
    for (const BurrowSystem& system : plan.systems)
        if (at_the_east(survey, system.mounds.front()))
            systems[{system.mounds.begin(), system.mounds.end()}] = system.single.value();
    return systems;
}

std::map<std::pair<std::size_t, std::size_t>, const MainRun*> eastern_runs(const Survey& survey, const Plan& plan) {
    std::map<std::pair<std::size_t, std::size_t>, const MainRun*> runs;
    for (const MainRun& run : plan.runs)
        if (at_the_east(survey, run.from_mound)) runs[{run.from_mound, run.to_mound}] = &run;
    return runs;
}

std::map<ProbeKey, const ProbeSite*> eastern_probes(const Survey& survey, const Plan& plan) {
    std::map<ProbeKey, const ProbeSite*> probes;
    for (const ProbeSite& site : plan.probes)
        if (at_the_east(survey, site.from_mound)) probes[site.key] = &site;
    return probes;
}

void expect_same_east(const Survey& survey, const Plan& before, const Plan& after) {
    EXPECT_EQ(eastern_systems(survey, before), eastern_systems(survey, after));
    const auto runs_before = eastern_runs(survey, before);
    const auto runs_after = eastern_runs(survey, after);
    ASSERT_EQ(runs_before.size(), runs_after.size());
    for (const auto& [ends, run] : runs_before) {
        const auto other = runs_after.find(ends);
        ASSERT_NE(other, runs_after.end());
        EXPECT_EQ(run->line.vertices, other->second->line.vertices);
        EXPECT_EQ(run->sd_m, other->second->sd_m);
        EXPECT_EQ(run->probability.value(), other->second->probability.value());
    }
    const auto probes_before = eastern_probes(survey, before);
    const auto probes_after = eastern_probes(survey, after);
    ASSERT_EQ(probes_before.size(), probes_after.size());
    for (const auto& [key, site] : probes_before) {
        const auto other = probes_after.find(key);
        ASSERT_NE(other, probes_after.end()) << key.from_mound << ' ' << key.to_mound;
        EXPECT_EQ(site->hit.value(), other->second->hit.value());
        EXPECT_EQ(site->expected_rungs, other->second->expected_rungs);
        EXPECT_EQ(site->rungs, other->second->rungs);
        EXPECT_EQ(site->rung_places, other->second->rung_places);
    }
    for (std::size_t i = 0; i < survey.mounds.size(); ++i) {
        if (!at_the_east(survey, i)) continue;
        EXPECT_EQ(before.mounds[i].belongs.value(), after.mounds[i].belongs.value());
    }
}

class PlanOfALongStrip : public testing::TestWithParam<FieldKind> {};

TEST_P(PlanOfALongStrip, IsTheSameToTheBitAtTheOtherEndOfWhatIsChanged) {
    const Survey survey = long_strip(GetParam(), 500);
    const Plan before = *make_plan(survey);
    const auto west_most = std::min_element(survey.mounds.begin(), survey.mounds.end(),
                                            [](const Mound& a, const Mound& b) { return a.plug.east_m < b.plug.east_m; });
    for (const std::size_t mound : {std::size_t{17}, static_cast<std::size_t>(west_most - survey.mounds.begin())}) {
        Survey nudged = survey;
        nudged.mounds[mound].plug = nudged.mounds[mound].plug + LocalVector{-0.03, 0.04};
        expect_same_east(survey, before, *make_plan(nudged));
    }
    Survey with_ditch = survey;
    with_ditch.ground.barriers.push_back({"ditch", {{{10.0, -200.0}, {10.0, 200.0}}}});
    expect_same_east(survey, before, *make_plan(with_ditch));
}

INSTANTIATE_TEST_SUITE_P(Kinds, PlanOfALongStrip,
                         testing::Values(FieldKind::meander, FieldKind::crowded_growth, FieldKind::shared_ground),
                         [](const auto& kind) {
                             std::string name = to_text(kind.param);
                             std::replace(name.begin(), name.end(), ' ', '_');
                             return name;
                         });

}  // namespace
}  // namespace plugside
