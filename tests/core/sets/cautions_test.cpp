#include "core/sets/cautions.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <regex>
#include <set>

namespace plugside {
namespace {

// Two mounds 20 m apart on an east-west run at north 0, and a probe row half way.
struct OneSystem {
    Survey survey;
    Plan plan;
    ProbeSite probe;
};

OneSystem one_system(double run_sd_m = 0.5) {
    OneSystem made;
    for (const double east : {0.0, 20.0}) {
        Mound mound;
        mound.name = east == 0.0 ? "M1" : "M2";
        mound.plug = {east, 0.0};
        mound.position_sd = Metres::of(0.2);
        made.survey.mounds.push_back(mound);
        MoundInPlan in_plan;
        in_plan.system = 0;
        in_plan.take_off = mound.plug;
        in_plan.take_off_sd_along = in_plan.take_off_sd_across = Metres::of(0.2);
        made.plan.mounds.push_back(in_plan);
    }
    BurrowSystem system;
    system.letter = "A";
    system.mounds = {0, 1};
    made.plan.systems.push_back(system);
    MainRun run;
    run.to_mound = 1;
    run.line = {{{0, 0}, {10, 0}, {20, 0}}};
    run.sd_m = {0.2, run_sd_m, 0.2};
    made.plan.runs.push_back(run);
    made.probe.to_mound = 1;
    made.probe.middle = {10, 0};
    made.probe.rung_places = {{10, 0}, {10, 0.06}, {10, -0.06}};
    made.plan.probes.push_back(made.probe);
    return made;
}

// A square of 4 m whose southern edge lies `north_m` north of the run, above its middle.
KeepClearArea thing(KeepClearKind kind, double north_m) {
    return {"thing", "drawn by hand", kind, {{{{8, north_m}, {12, north_m}, {12, north_m + 4}, {8, north_m + 4}}}, {}}};
}

std::vector<std::string> with(OneSystem made, const KeepClearArea& area) {
    made.survey.ground.keep_clear.push_back(area);
    return cautions_for(made.survey, made.plan, made.probe);
}

bool has(const std::vector<std::string>& ids, const std::string& id) {
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}

TEST(Cautions, every_row_of_the_table_is_whole) {
    std::set<std::string> ids;
    const std::set<std::string> tags{"read", "second-hand", "memory", "practice", "ours"};
    for (const Caution& caution : all_cautions()) {
        EXPECT_TRUE(ids.insert(caution.id).second) << caution.id << " stands twice";
        EXPECT_TRUE(std::regex_match(caution.id, std::regex("[a-z]+(-[a-z]+)*"))) << caution.id;
        EXPECT_GT(caution.sentence.size(), 20U) << caution.id;
        EXPECT_EQ(caution.sentence.back(), '.') << caution.id;
        EXPECT_GT(caution.reason.size(), 10U) << caution.id;
        EXPECT_FALSE(caution.source.empty()) << caution.id;
        EXPECT_EQ(tags.count(caution.tag), 1U) << caution.id << " is tagged " << caution.tag;
        EXPECT_EQ(find_caution(caution.id), &caution);
    }
    EXPECT_GE(ids.size(), 19U);
    EXPECT_EQ(find_caution("no such caution"), nullptr);
}

TEST(Cautions, every_set_says_who_decides_and_what_to_ask_first) {
    const OneSystem made = one_system();
    const std::vector<std::string> ids = cautions_for(made.survey, made.plan, made.probe);
    for (const char* id : {"label-decides", "people-and-animals", "utilities-ask", "kill-trap-law", "protected-species"})
        EXPECT_TRUE(has(ids, id)) << id;
    for (const std::string& id : ids) {
        ASSERT_NE(find_caution(id), nullptr) << id;
        EXPECT_NE(find_caution(id)->weight, CautionWeight::stop) << id << " stops a set on an empty map";
    }
}

TEST(Cautions, what_a_note_says_of_people_or_animals_goes_with_every_set_of_that_system_and_those_near_by) {
    OneSystem made = one_system();
    made.survey.mounds[1].mentions = {{MentionCategory::pets, "dog"}, {MentionCategory::people, "two children"}};
    std::vector<std::string> ids = cautions_for(made.survey, made.plan, made.probe);
    EXPECT_TRUE(has(ids, "noted-pets"));
    EXPECT_TRUE(has(ids, "noted-people"));
    EXPECT_FALSE(has(ids, "noted-stock"));
    EXPECT_FALSE(has(ids, "noted-wildlife"));
    // far away it still counts while the mark is of the same system, and no longer once it is of none
    made.survey.mounds[1].plug = {500, 0};
    EXPECT_TRUE(has(cautions_for(made.survey, made.plan, made.probe), "noted-pets"));
    made.plan.mounds[1].system = std::nullopt;
    EXPECT_FALSE(has(cautions_for(made.survey, made.plan, made.probe), "noted-pets"));
    // 100 ft from the probe row at east 10
    made.survey.mounds[1].plug = {40.47, 0};
    EXPECT_TRUE(has(cautions_for(made.survey, made.plan, made.probe), "noted-pets"));
    made.survey.mounds[1].plug = {40.49, 0};
    EXPECT_FALSE(has(cautions_for(made.survey, made.plan, made.probe), "noted-pets"));
}

TEST(Cautions, the_weightiest_stand_first) {
    OneSystem made = one_system();
    made.survey.ground.keep_clear = {thing(KeepClearKind::other, 3), thing(KeepClearKind::well, 20),
                                     thing(KeepClearKind::building, 25)};
    const std::vector<std::string> ids = cautions_for(made.survey, made.plan, made.probe);
    EXPECT_EQ(ids.front(), "building");
    EXPECT_TRUE(std::is_sorted(ids.begin(), ids.end(), [](const std::string& a, const std::string& b) {
        return find_caution(a)->weight < find_caution(b)->weight;
    }));
    EXPECT_EQ(std::set<std::string>(ids.begin(), ids.end()).size(), ids.size());
}

// 100 ft (30.48 m) to a building: federal label text of phosphide burrow fumigants, 2018; from the run and 1.645 of its
// standard deviation of .5 m: 30.48 + .8225 = 31.3025.
TEST(Cautions, a_building_within_a_hundred_feet_of_where_a_run_may_lie_stops_fumigants) {
    EXPECT_TRUE(has(with(one_system(), thing(KeepClearKind::building, 31.30)), "building"));
    EXPECT_FALSE(has(with(one_system(), thing(KeepClearKind::building, 31.31)), "building"));
    EXPECT_EQ(find_caution("building")->weight, CautionWeight::stop);
}

TEST(Cautions, the_less_sure_a_run_the_farther_a_building_counts) {
    const KeepClearArea building = thing(KeepClearKind::building, 36.0);
    EXPECT_FALSE(has(with(one_system(0.5), building), "building"));
    EXPECT_TRUE(has(with(one_system(4.0), building), "building"));
}

TEST(Cautions, a_building_is_measured_from_the_whole_system_and_not_from_the_probe) {
    OneSystem made = one_system();
    made.plan.runs[0].line = {{{0, 0}, {300, 0}, {600, 0}}};
    KeepClearArea building = thing(KeepClearKind::building, 20);
    for (LocalPoint& corner : building.area.outer.vertices) corner.east_m += 580;
    EXPECT_TRUE(has(with(made, building), "building"));
    made.plan.runs[0].system = 7;  // another animal's run
    EXPECT_FALSE(has(with(made, building), "building"));
}

TEST(Cautions, a_system_of_one_mound_is_measured_from_its_mound) {
    OneSystem made = one_system();
    made.plan.runs.clear();
    made.plan.systems[0].mounds = {1};
    made.probe.middle = {20, 0};
    made.probe.rung_places.clear();
    EXPECT_TRUE(has(with(made, thing(KeepClearKind::building, 20)), "building"));
    EXPECT_FALSE(has(with(made, thing(KeepClearKind::building, 40)), "building"));
}

TEST(Cautions, a_run_that_passes_under_a_building_counts_even_if_no_edge_is_near) {
    OneSystem made = one_system();
    KeepClearArea hall = thing(KeepClearKind::building, 0);
    hall.area.outer.vertices = {{-500, -500}, {500, -500}, {500, 500}, {-500, 500}};
    EXPECT_TRUE(has(with(made, hall), "building"));
}

TEST(Cautions, a_well_and_a_play_area_hold_back_within_a_hundred_feet) {
    EXPECT_TRUE(has(with(one_system(), thing(KeepClearKind::well, 31.30)), "well"));
    EXPECT_FALSE(has(with(one_system(), thing(KeepClearKind::well, 31.31)), "well"));
    EXPECT_TRUE(has(with(one_system(), thing(KeepClearKind::play_area, 31.30)), "play-area"));
    EXPECT_FALSE(has(with(one_system(), thing(KeepClearKind::play_area, 31.31)), "play-area"));
    EXPECT_EQ(find_caution("well")->weight, CautionWeight::hold_back);
}

// 4.9 m: a recreational receiver under open sky, GPS.gov [memory]. The northernmost rung stands .06 m north.
TEST(Cautions, a_buried_line_within_a_receivers_error_of_the_probe_row_stops) {
    EXPECT_TRUE(has(with(one_system(), thing(KeepClearKind::utility, 4.95)), "utility"));
    EXPECT_FALSE(has(with(one_system(), thing(KeepClearKind::utility, 4.97)), "utility"));
    EXPECT_EQ(find_caution("utility")->weight, CautionWeight::stop);
    for (const KeepClearKind kind : {KeepClearKind::building, KeepClearKind::well, KeepClearKind::other})
        EXPECT_FALSE(has(with(one_system(), thing(kind, 4.0)), "utility"));
}

TEST(Cautions, a_probe_row_that_reaches_into_an_area_of_any_kind_is_stopped) {
    for (const KeepClearKind kind : {KeepClearKind::building, KeepClearKind::well, KeepClearKind::play_area,
                                     KeepClearKind::utility, KeepClearKind::other}) {
        EXPECT_TRUE(has(with(one_system(), thing(kind, 0.05)), "inside-keep-clear")) << to_text(kind);
        EXPECT_FALSE(has(with(one_system(), thing(kind, 0.07)), "inside-keep-clear")) << to_text(kind);
    }
}

TEST(Cautions, the_edge_of_an_area_within_a_receivers_error_is_to_be_taped) {
    EXPECT_TRUE(has(with(one_system(), thing(KeepClearKind::other, 4.95)), "near-keep-clear"));
    EXPECT_FALSE(has(with(one_system(), thing(KeepClearKind::other, 4.97)), "near-keep-clear"));
    EXPECT_FALSE(has(with(one_system(), thing(KeepClearKind::other, 0.0)), "near-keep-clear"));
}

TEST(Cautions, an_area_without_vertices_comes_near_nothing) {
    const auto ids = with(one_system(), {"drawn and deleted", "", KeepClearKind::building, {}});
    const OneSystem made = one_system();
    EXPECT_EQ(ids, cautions_for(made.survey, made.plan, made.probe));
}

}  // namespace
}  // namespace plugside
