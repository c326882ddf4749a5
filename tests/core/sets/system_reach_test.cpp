// Where a system may lie, beside closed forms and an independent raster.
#include "core/sets/system_reach.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/plan/make_plan.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

constexpr double reach_m = 30.48;          // 100 ft
constexpr double ninety_five = 1.6448536;  // quantile of the normal distribution, any table
constexpr double cell_m = 0.5;

struct Field {
    Survey survey;
    Plan plan;
    Polygon building;
};

// A run that wanders from a place, with a deviation that wanders too.
MainRun wandering_run(std::mt19937_64& random, LocalPoint from) {
    std::uniform_real_distribution<double> share(0.0, 1.0);
    MainRun run;
    double turn = 2.0 * std::numbers::pi * share(random);
    double sd = 0.2 + 2.0 * share(random);
    const int pieces = 3 + static_cast<int>(12.0 * share(random));
    for (int i = 0; i <= pieces; ++i) {
        run.line.vertices.push_back(from);
        run.sd_m.push_back(sd);
        turn += 1.2 * (share(random) - 0.5);
        const double step = 0.3 + 4.0 * share(random);
        from = from + LocalVector{step * std::cos(turn), step * std::sin(turn)};
        sd = std::clamp(sd + 1.5 * (share(random) - 0.5), 0.05, 4.0);
    }
    return run;
}

// A star-shaped outline about a middle: convex or not; a courtyard in every fourth.
Polygon some_building(std::mt19937_64& random, LocalPoint middle) {
    std::uniform_real_distribution<double> share(0.0, 1.0);
    const int corners = 3 + static_cast<int>(8.0 * share(random));
    const double size = 4.0 + 12.0 * share(random);
    Polygon building;
    Ring courtyard;
    for (int i = 0; i < corners; ++i) {
        const double angle = 2.0 * std::numbers::pi * (i + 0.7 * share(random)) / corners;
        const double radius = size * (0.5 + 0.5 * share(random));
        building.outer.vertices.push_back(middle + LocalVector{radius * std::cos(angle), radius * std::sin(angle)});
        courtyard.vertices.push_back(middle + LocalVector{0.3 * radius * std::cos(angle), 0.3 * radius * std::sin(angle)});
    }
    if (share(random) < 0.25) building.holes.push_back(courtyard);
    return building;
}

Field random_field(std::uint64_t seed) {
    std::mt19937_64 random(seed);
    std::uniform_real_distribution<double> share(0.0, 1.0);
    Field field;
    BurrowSystem system;
    const int runs = 1 + static_cast<int>(4.0 * share(random));
    LocalPoint from{0.0, 0.0};
    for (int r = 0; r < runs; ++r) {
        field.plan.runs.push_back(wandering_run(random, from));
        const auto& line = field.plan.runs.back().line.vertices;
        from = line[static_cast<std::size_t>(share(random) * static_cast<double>(line.size() - 1))];
        Mound mound;
        mound.name = "M" + std::to_string(r);
        mound.plug = line.back() + LocalVector{0.3 * share(random), -0.3 * share(random)};
        mound.position_sd = Metres::of(0.1 + share(random));
        MoundInPlan in_plan;
        in_plan.system = 0;
        in_plan.take_off = line.back();
        in_plan.take_off_sd_along = Metres::of(0.1 + 0.5 * share(random));
        in_plan.take_off_sd_across = Metres::of(0.1 + 0.5 * share(random));
        system.mounds.push_back(field.survey.mounds.size());
        field.survey.mounds.push_back(mound);
        field.plan.mounds.push_back(in_plan);
    }
    field.plan.systems.push_back(system);
    const double away = 25.0 + 50.0 * share(random);
    const double where = 2.0 * std::numbers::pi * share(random);
    field.building = some_building(random, LocalPoint{0, 0} + LocalVector{away * std::cos(where), away * std::sin(where)});
    return field;
}

// Middles of the cells of a grid that are of the building: by counting crossings to the east of the cell's middle, and those that the outline
// passes through, looked at every twentieth of a metre (a thin corner may hold no middle).
std::vector<LocalPoint> building_cells(const Polygon& building) {
    LocalPoint low = building.outer.vertices.front();
    LocalPoint high = low;
    for (const LocalPoint corner : building.outer.vertices) {
        low = {std::min(low.east_m, corner.east_m), std::min(low.north_m, corner.north_m)};
        high = {std::max(high.east_m, corner.east_m), std::max(high.north_m, corner.north_m)};
    }
    std::vector<Ring> rings = building.holes;
    rings.push_back(building.outer);
    std::vector<LocalPoint> cells;
    for (double north = low.north_m + 0.5 * cell_m; north < high.north_m; north += cell_m)
        for (double east = low.east_m + 0.5 * cell_m; east < high.east_m; east += cell_m) {
            int crossings = 0;
            for (const Ring& ring : rings)
                for (std::size_t i = 0; i < ring.vertices.size(); ++i) {
                    const LocalPoint a = ring.vertices[i];
                    const LocalPoint b = ring.vertices[(i + 1) % ring.vertices.size()];
                    if ((a.north_m > north) == (b.north_m > north)) continue;
                    if (a.east_m + (north - a.north_m) / (b.north_m - a.north_m) * (b.east_m - a.east_m) > east) ++crossings;
                }
            if (crossings % 2 == 1) cells.push_back({east, north});
        }
    const auto middle = [](double at, double first) { return first + cell_m * (std::floor((at - first) / cell_m) + 0.5); };
    for (const Ring& ring : rings)
        for (std::size_t i = 0; i < ring.vertices.size(); ++i) {
            const LocalPoint a = ring.vertices[i];
            const LocalPoint b = ring.vertices[(i + 1) % ring.vertices.size()];
            const int steps = 1 + static_cast<int>(distance_m(a, b) / 0.05);
            for (int step = 0; step <= steps; ++step) {
                const LocalPoint at = a + (static_cast<double>(step) / steps) * (b - a);
                cells.push_back({middle(at.east_m, low.east_m), middle(at.north_m, low.north_m)});
            }
        }
    const auto earlier = [](LocalPoint a, LocalPoint b) {
        return std::pair(a.north_m, a.east_m) < std::pair(b.north_m, b.east_m);
    };
    std::sort(cells.begin(), cells.end(), earlier);
    cells.erase(std::unique(cells.begin(), cells.end()), cells.end());
    return cells;
}

// A place of the system every tenth of a metre: how far off the building's cells it lies, less what its corridor takes off.
struct Sample {
    LocalPoint at;
    double margin_m;  // below reach: may lie within it
};

std::vector<Sample> sampled(const Field& field) {
    const std::vector<LocalPoint> cells = building_cells(field.building);
    std::vector<Sample> samples;
    const auto walk = [&](LocalPoint from, LocalPoint to, double from_sd, double to_sd) {
        const int steps = std::max(1, static_cast<int>(distance_m(from, to) / 0.1));
        for (int i = 0; i <= steps; ++i) {
            const double t = static_cast<double>(i) / steps;
            const LocalPoint at = from + t * (to - from);
            double least = 1e9;
            for (const LocalPoint cell : cells) least = std::min(least, distance_m(at, cell));
            samples.push_back({at, least - ninety_five * (from_sd + t * (to_sd - from_sd))});
        }
    };
    for (const MainRun& run : field.plan.runs)
        for (std::size_t i = 1; i < run.line.vertices.size(); ++i)
            walk(run.line.vertices[i - 1], run.line.vertices[i], run.sd_m[i - 1], run.sd_m[i]);
    for (std::size_t m = 0; m < field.survey.mounds.size(); ++m) {
        const MoundInPlan& in_plan = field.plan.mounds[m];
        const double sd = std::max({field.survey.mounds[m].position_sd.value(), in_plan.take_off_sd_along.value(),
                                    in_plan.take_off_sd_across.value()});
        walk(field.survey.mounds[m].plug, in_plan.take_off, sd, sd);
    }
    return samples;
}

double distance_to_parts(LocalPoint at, const ReachReason& reason) {
    double least = 1e9;
    for (const Polyline& part : reason.parts) least = std::min(least, distance(at, part)->value());
    return least;
}

struct Tally {
    int fields = 0;
    int within = 0;
    int beyond_a_cell = 0;
    int places_beyond_a_cell = 0;
    double nearest_off_m = 0.0;
};

void compare(const Field& field, const char* where, Tally& tally) {
    SCOPED_TRACE(where);
    const SystemReach reach(field.survey, field.plan, 0);
    const bool ours = reach.may_come_within(Metres::of(reach_m), field.building);
    const auto reason = reach.why_within(Metres::of(reach_m), field.building);
    ASSERT_EQ(reason.has_value(), ours);
    const std::vector<Sample> samples = sampled(field);
    double least = 1e9;
    for (const Sample& sample : samples) least = std::min(least, sample.margin_m);
    ++tally.fields;
    if (ours) ++tally.within;
    if (ours != (least <= reach_m) && std::abs(least - reach_m) > cell_m) ++tally.beyond_a_cell;
    tally.nearest_off_m =
        std::max(tally.nearest_off_m, std::abs(reach.nearest(field.building)->value() - std::max(least, 0.0)));
    // where two runs meet, the place counts by the one with the wider corridor
    const auto may_be_within = [&](LocalPoint place) {
        return std::any_of(samples.begin(), samples.end(), [&](const Sample& other) {
            return other.margin_m <= reach_m + cell_m && distance_m(other.at, place) < 0.1;
        });
    };
    for (const Sample& sample : samples) {
        const bool in_parts = reason && distance_to_parts(sample.at, *reason) < 1e-3;
        if (in_parts && sample.margin_m > reach_m + cell_m && !may_be_within(sample.at)) ++tally.places_beyond_a_cell;
        if (!in_parts && sample.margin_m < reach_m - cell_m) ++tally.places_beyond_a_cell;
    }
}

TEST(SystemReach, agrees_with_a_raster_on_two_hundred_random_fields_to_one_cell) {
    Tally tally;
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        compare(random_field(seed), "random", tally);
    }
    RecordProperty("fields", tally.fields);
    RecordProperty("within", tally.within);
    EXPECT_EQ(tally.fields, 200);
    EXPECT_GT(tally.within, 50);
    EXPECT_LT(tally.within, 150);
    EXPECT_EQ(tally.beyond_a_cell, 0);
    EXPECT_EQ(tally.places_beyond_a_cell, 0);
    EXPECT_LT(tally.nearest_off_m, cell_m);
}

TEST(SystemReach, agrees_with_the_raster_on_systems_that_were_inferred) {
    const Survey survey = test::simulated_survey(7, 120);
    const std::optional<Plan> plan = make_plan(survey);
    ASSERT_TRUE(plan.has_value());
    Tally tally;
    std::mt19937_64 random(7);
    for (std::size_t s = 0; s < std::min<std::size_t>(plan->systems.size(), 8); ++s) {
        // the system alone, as the first of its field
        Field field;
        field.plan.systems.push_back({});
        for (const std::size_t mound : plan->systems[s].mounds) {
            field.plan.systems[0].mounds.push_back(field.survey.mounds.size());
            field.survey.mounds.push_back(survey.mounds[mound]);
            field.plan.mounds.push_back(plan->mounds[mound]);
        }
        for (MainRun run : plan->runs)
            if (run.system == s) {
                run.system = 0;
                field.plan.runs.push_back(run);
            }
        const LocalPoint middle = plan->systems[s].label_at;
        field.building = some_building(random, middle + LocalVector{38.0, 4.0});
        compare(field, "inferred", tally);
        EXPECT_EQ(SystemReach(survey, *plan, s).may_come_within(Metres::of(reach_m), field.building),
                  SystemReach(field.survey, field.plan, 0).may_come_within(Metres::of(reach_m), field.building));
    }
    EXPECT_EQ(tally.beyond_a_cell, 0);
    EXPECT_EQ(tally.places_beyond_a_cell, 0);
}

Field straight_run(double sd_m, double edge_north_m) {
    Field field;
    MainRun run;
    run.line = {{{-50, 0}, {50, 0}}};
    run.sd_m = {sd_m, sd_m};
    field.plan.runs.push_back(run);
    field.plan.systems.push_back({});
    field.building = {{{{-9, edge_north_m}, {9, edge_north_m}, {9, edge_north_m + 9}, {-9, edge_north_m + 9}}}, {}};
    return field;
}

// A run with a normal error of s beside a straight edge d away lies within R with chance Phi((R - d) / s): closed form. At the
// border of "may" that is 1 in 20, one side of 90 in 100.
TEST(SystemReach, holds_where_the_chance_of_lying_within_reach_is_above_one_in_twenty) {
    for (const double sd : {0.3, 1.0, 3.0}) {
        const double border = reach_m + ninety_five * sd;
        const Field within = straight_run(sd, border - 1e-4);
        const auto reason = SystemReach(within.survey, within.plan, 0).why_within(Metres::of(reach_m), within.building);
        ASSERT_TRUE(reason.has_value());
        EXPECT_NEAR(reason->chance.value(), 0.05, 1e-4);
        EXPECT_GT(reason->chance.value(), 0.05);
        EXPECT_NEAR(reason->apart.value(), border - 1e-4, 1e-6);
        const Field beyond = straight_run(sd, border + 1e-4);
        EXPECT_FALSE(SystemReach(beyond.survey, beyond.plan, 0).may_come_within(Metres::of(reach_m), beyond.building));
        // and the same by drawing where the run lies
        std::mt19937_64 random(5);
        std::normal_distribution<double> off(0.0, sd);
        int inside = 0;
        for (int i = 0; i < 200000; ++i)
            if (border - off(random) < reach_m) ++inside;
        EXPECT_NEAR(inside / 200000.0, 0.05, 0.002);
        const Field sure = straight_run(sd, reach_m - sd);
        EXPECT_NEAR(SystemReach(sure.survey, sure.plan, 0).why_within(Metres::of(reach_m), sure.building)->chance.value(),
                    0.841345, 1e-5)
            << "one standard deviation: any table of the normal distribution";
    }
}

TEST(SystemReach, shows_the_part_of_a_run_that_is_the_reason_and_no_more) {
    const Field field = straight_run(1.0, 20.0);
    const auto reason = SystemReach(field.survey, field.plan, 0).why_within(Metres::of(reach_m), field.building);
    ASSERT_TRUE(reason.has_value());
    ASSERT_EQ(reason->parts.size(), 1U);
    // from the corner (9, 20): sqrt((30.48 + 1.6448536)^2 - 20^2) = 25.139 m farther on (Pythagoras)
    const double far = 9.0 + std::sqrt(std::pow(reach_m + ninety_five, 2) - 400.0);
    EXPECT_NEAR(reason->parts[0].vertices.front().east_m, -far, 1e-3);
    EXPECT_NEAR(reason->parts[0].vertices.back().east_m, far, 1e-3);
    EXPECT_NEAR(reason->half_width_m[0], ninety_five, 1e-6);
    EXPECT_NEAR(SystemReach(field.survey, field.plan, 0).nearest(field.building)->value(), 20.0 - ninety_five, 1e-6);
}

TEST(SystemReach, counts_a_run_under_a_great_building_far_from_its_walls) {
    Field field = straight_run(1.0, 20.0);
    field.building = {{{{-500, -500}, {500, -500}, {500, 500}, {-500, 500}}}, {}};
    const SystemReach reach(field.survey, field.plan, 0);
    const auto reason = reach.why_within(Metres::of(reach_m), field.building);
    ASSERT_TRUE(reason.has_value());
    EXPECT_NEAR(length(reason->parts.at(0)).value(), 100.0, 1e-6);
    EXPECT_EQ(reach.nearest(field.building)->value(), 0.0);
    EXPECT_EQ(reason->apart.value(), 0.0);
    // in a courtyard whose walls are far it is not under the building
    field.building.holes = {{{{-400, -400}, {400, -400}, {400, 400}, {-400, 400}}}};
    EXPECT_FALSE(reach.why_within(Metres::of(reach_m), field.building).has_value());
    EXPECT_FALSE(reach.may_come_within(Metres::of(reach_m), field.building));
}

// Two chances together: that the systems are one, p, and that the run lies within reach, at least .05 / p. Quantiles of the normal
// distribution from any table: .90 is 1.28155, .50 is 0.
TEST(SystemReach, of_a_system_that_may_be_one_with_another_asks_for_one_in_twenty_of_both) {
    for (const auto& [one, quantile] : {std::pair(0.5, 1.281552), std::pair(0.1, 0.0), std::pair(1.0, ninety_five)}) {
        const double border = reach_m + quantile * 2.0;
        const Field within = straight_run(2.0, border - 1e-3);
        const auto reason = SystemReach(within.survey, within.plan, 0, Probability::of(one))
                                .why_within(Metres::of(reach_m), within.building);
        ASSERT_TRUE(reason.has_value()) << one;
        EXPECT_NEAR(reason->chance.value(), 0.05, 1e-4);
        const Field beyond = straight_run(2.0, border + 1e-3);
        EXPECT_FALSE(SystemReach(beyond.survey, beyond.plan, 0, Probability::of(one))
                         .may_come_within(Metres::of(reach_m), beyond.building));
    }
    const Field field = straight_run(2.0, 5.0);
    EXPECT_FALSE(SystemReach(field.survey, field.plan, 0, Probability::of(0.05))
                     .may_come_within(Metres::of(reach_m), field.building));
}

TEST(SystemReach, takes_in_what_may_be_one_animals_with_the_system) {
    Field field = straight_run(1.0, 20.0);
    field.plan.systems.push_back({});  // system 1: of no run, far from all
    field.plan.alternatives.joined.push_back({0, 1, Probability::of(0.3)});
    const auto near = [&](std::size_t system) {
        std::vector<std::size_t> through;
        for (const SystemReach& reach : reaches_of(field.survey, field.plan, system))
            if (const auto reason = reach.why_within(Metres::of(reach_m), field.building)) through.push_back(reason->system);
        return through;
    };
    EXPECT_EQ(near(0), (std::vector<std::size_t>{0}));
    EXPECT_EQ(near(1), (std::vector<std::size_t>{0}));
    field.plan.alternatives.joined[0].one = Probability::of(0.04);
    EXPECT_TRUE(near(1).empty());
    field.plan.alternatives.joined.clear();
    // a mound of system 0 that may be of system 1
    field.survey.mounds.push_back({});
    field.survey.mounds[0].plug = {0, 5};
    MoundInPlan in_plan;
    in_plan.system = 0;
    in_plan.take_off = {0, 5.3};
    field.plan.mounds.push_back(in_plan);
    EXPECT_TRUE(near(1).empty());
    field.plan.alternatives.doubtful.push_back({0, 0, Probability::of(0.4), 1, Probability::of(0.35)});
    EXPECT_EQ(near(1), (std::vector<std::size_t>{0}));
}

TEST(SystemReach, of_nothing_or_to_nothing_comes_near_nothing) {
    const Field field = straight_run(1.0, 20.0);
    const SystemReach none(field.survey, field.plan, 3);
    EXPECT_FALSE(none.may_come_within(Metres::of(1e6), field.building));
    EXPECT_EQ(none.nearest(field.building), std::nullopt);
    const SystemReach reach(field.survey, field.plan, 0);
    EXPECT_FALSE(reach.may_come_within(Metres::of(1e6), Polygon{}));
    EXPECT_FALSE(reach.why_within(Metres::of(1e6), Polygon{}).has_value());
    EXPECT_EQ(reach.nearest(Polygon{}), std::nullopt);
}

}  // namespace
}  // namespace plugside
