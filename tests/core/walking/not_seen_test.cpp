#include "core/walking/not_seen.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/simulation/burrow_simulator.h"
#include "core/simulation/seen_from_line.h"
#include "core/walking/not_seen_words.h"

namespace plugside {
namespace {

SimulatedField walked_field(std::uint64_t seed, LineWalk walk, std::size_t mounds = 160) {
    SimulationOptions options;
    options.seed = seed;
    options.kind = all_field_kinds()[seed % all_field_kinds().size()];
    options.with_ground = true;
    options.mounds_wanted = mounds;
    Random random(seed + 100000);
    return seen_from_line(simulate_field(options), walk, random);
}

// A plan that knows the systems: what is tried here is seeing, not the inference.
Plan plan_with_true_systems(const SimulatedField& field) {
    Plan plan;
    plan.mounds.resize(field.survey.mounds.size());
    plan.systems.resize(field.truth.systems);
    for (const TrueMound& mound : field.truth.mounds) {
        if (!mound.seen_as) continue;
        plan.mounds[*mound.seen_as].system = mound.system;
        plan.systems[mound.system].mounds.push_back(*mound.seen_as);
    }
    std::erase_if(plan.systems, [](const BurrowSystem& system) { return system.mounds.empty(); });
    plan.estimate.expected = static_cast<double>(plan.systems.size());
    plan.estimate.low = plan.estimate.high = static_cast<int>(plan.systems.size());
    return plan;
}

LineWalk steady_walk() {
    LineWalk walk;
    walk.shared_sd_m = 1.0;
    walk.track_every_s = 1.0;
    return walk;
}

// A tenth of the walks may miss; of 40, more than 10 do in 1 of 200 sets of walks when 9 in 10 hold.
TEST(NotSeen, nine_in_ten_intervals_hold_the_true_number_of_mounds) {
    int hold = 0;
    constexpr int walks = 40;
    for (std::uint64_t seed = 60000; seed < 60000 + walks; ++seed) {
        Random random(seed);
        LineWalk walk = draw_line_walk(random);
        walk.walked_share = seed % 2 == 0 ? 1.0 : random.uniform(0.6, 1.0);
        walk.gap_chance = seed % 3 == 0 ? 0.3 : 0.0;
        const SimulatedField field = walked_field(seed, walk);
        const auto result = not_seen(field.survey, plan_with_true_systems(field));
        ASSERT_TRUE(result);
        const auto truth = static_cast<double>(field.truth.mounds.size());
        if (truth >= result->mounds_in_all.low && truth <= result->mounds_in_all.high) ++hold;
        EXPECT_LE(result->mounds_in_all.low, result->mounds_in_all.expected);
        EXPECT_GE(result->mounds_in_all.high, result->mounds_in_all.expected);
    }
    RecordProperty("hold_of_40", hold);
    EXPECT_GE(hold, 30);
}

TEST(NotSeen, finds_the_curve_that_the_walk_was_made_with) {
    LineWalk walk = steady_walk();
    walk.line_gap_m = 12.0;
    double log_ratio = 0.0;
    for (std::uint64_t seed = 61000; seed < 61008; ++seed) {
        const SimulatedField field = walked_field(seed, walk, 300);
        const auto result = not_seen(field.survey, plan_with_true_systems(field));
        ASSERT_TRUE(result && result->detection.fitted);
        log_ratio += std::log(result->detection.half_width / walk.curve.effective_half_width(result->detection.reach)) / 8.0;
    }
    EXPECT_NEAR(log_ratio, 0.0, 0.25);  // measured .16: receiver's drift and the line found widen it a little
}

TEST(NotSeen, says_that_distances_tell_little_where_mounds_were_followed) {
    LineWalk walk = steady_walk();
    walk.follows = true;
    const SimulatedField field = walked_field(62000, walk);
    const auto result = not_seen(field.survey, plan_with_true_systems(field));
    ASSERT_TRUE(result);
    EXPECT_GT(result->followed_share, 0.4);
    EXPECT_FALSE(result->detection.fitted);
    EXPECT_NE(not_seen_sentences(*result, LengthUnits::metres).front().find("reached from the mark before"),
              std::string::npos);
    walk.follows = false;
    const SimulatedField plain = walked_field(62000, walk);
    EXPECT_TRUE(not_seen(plain.survey, plan_with_true_systems(plain))->detection.fitted);
}

TEST(NotSeen, speaks_in_the_units_that_were_chosen) {
    NotSeen seen;
    seen.detection.fitted = true;
    seen.detection.half_width = Metres::of(3.048);
    seen.gaps_m = 30.48;
    seen.driven_m = 304.8;
    const auto all = [&](LengthUnits units) {
        std::string text;
        for (const std::string& sentence : not_seen_sentences(seen, units)) text += sentence + "\n";
        return text;
    };
    const std::string feet = all(LengthUnits::feet_and_inches);
    for (const char* length : {"within 10 ft of", "gaps of 100 ft in", "1000 ft of the track"})
        EXPECT_NE(feet.find(length), std::string::npos) << length << " in " << feet;
    EXPECT_EQ(feet.find(" m "), std::string::npos) << feet;
    const std::string metres = all(LengthUnits::metres);
    for (const char* length : {"within 3.0 m of", "gaps of 30 m in", "305 m of the track"})
        EXPECT_NE(metres.find(length), std::string::npos) << length << " in " << metres;
    EXPECT_EQ(metres.find(" ft "), std::string::npos) << metres;
}

TEST(NotSeen, leans_on_likeness_as_far_as_ground_was_not_walked) {
    LineWalk walk = steady_walk();
    const SimulatedField whole = walked_field(63000, walk);
    walk.walked_share = 0.5;
    const SimulatedField half = walked_field(63000, walk);
    const auto seen_whole = not_seen(whole.survey, plan_with_true_systems(whole));
    const auto seen_half = not_seen(half.survey, plan_with_true_systems(half));
    ASSERT_TRUE(seen_whole && seen_half);
    EXPECT_LT(seen_whole->assumed_alike, 0.3);
    EXPECT_GT(seen_half->assumed_alike, 0.5);
    EXPECT_GT(seen_half->unwalked_m2, 0.35 * (seen_half->unwalked_m2 + seen_half->walked_m2));
    EXPECT_GT(seen_half->mounds_unwalked.high - seen_half->mounds_unwalked.low,
              2.0 * 1.645 * std::sqrt(seen_half->mounds_unwalked.expected));  // wider than Poisson's
    EXPECT_GT(seen_half->animals_unwalked.expected, 0.5);
    EXPECT_NE(not_seen_sentences(*seen_half, LengthUnits::metres).back().find("assumed alike"), std::string::npos);
}

TEST(NotSeen, takes_gaps_of_the_track_as_not_walked) {
    LineWalk walk = steady_walk();
    walk.gap_chance = 1.0;
    const SimulatedField field = walked_field(64000, walk);
    const auto result = not_seen(field.survey, plan_with_true_systems(field));
    ASSERT_TRUE(result);
    EXPECT_GT(result->gaps_m, 20.0);
    EXPECT_GT(result->unwalked_m2, 0.03 * result->walked_m2);
}

TEST(NotSeen, the_surface_falls_off_with_distance_and_is_nothing_outside) {
    Survey survey;
    survey.ground.boundary = {{{{{{0, 0}, {60, 0}, {60, 40}, {0, 40}}}, {}}}};
    survey.walks = {{"walk 1", "walk.gpx", {{}}}};
    for (int i = 0; i <= 60; ++i) survey.walks[0].segments[0].push_back({{static_cast<double>(i), 20.0}, {}});
    const auto result = not_seen(survey, {});
    ASSERT_TRUE(result);
    EXPECT_FALSE(result->detection.fitted);
    const SeenSurface& s = result->surface;
    const auto at = [&](double east, double north) {
        return s.chance[static_cast<std::size_t>((north - s.south_west.north_m) / s.cell_m) * s.columns +
                        static_cast<std::size_t>((east - s.south_west.east_m) / s.cell_m)];
    };
    EXPECT_GT(at(30, 20), 0.99F);
    EXPECT_GT(at(30, 22), at(30, 25));
    EXPECT_GT(at(30, 25), at(30, 29));
    EXPECT_LT(at(30, 38), 0.01F);
    EXPECT_NEAR(result->walked_m2, 600.0, 20.0);
    EXPECT_NEAR(result->unwalked_m2, 1800.0, 20.0);
    EXPECT_EQ(result->mounds_seen, 0U);
}

TEST(NotSeen, is_nothing_without_a_track_and_nothing_once_stopped_and_the_same_each_time) {
    EXPECT_FALSE(not_seen({}, {}));
    const SimulatedField field = walked_field(65000, steady_walk());
    const Plan plan = plan_with_true_systems(field);
    std::stop_source source;
    source.request_stop();
    Progress stopped;
    stopped.stop = source.get_token();
    EXPECT_FALSE(not_seen(field.survey, plan, {}, stopped));
    EXPECT_EQ(not_seen(field.survey, plan)->mounds_in_all, not_seen(field.survey, plan)->mounds_in_all);
}

TEST(SeenFromLine, misses_as_many_as_the_curve_has_it) {
    LineWalk walk = steady_walk();
    walk.line_gap_m = 20.0;  // no place is passed twice within sight
    walk.curve.scale = Metres::of(2.5);
    double seen = 0.0;
    double all = 0.0;
    for (std::uint64_t seed = 66000; seed < 66014; ++seed) {
        const SimulatedField field = walked_field(seed, walk, 300);
        all += static_cast<double>(field.truth.mounds.size());
        seen += static_cast<double>(field.survey.mounds.size());
        for (const TrueMound& mound : field.truth.mounds)
            if (mound.seen_as) {
                EXPECT_LT(distance_m(mound.plug, field.survey.mounds[*mound.seen_as].plug), 8.0);
            }
    }
    EXPECT_NEAR(seen / all, 2.0 * 2.5 * std::sqrt(1.5708) / 20.0, 0.05);
}

TEST(SeenFromLine, is_the_same_for_the_same_seed) {
    const SimulatedField a = walked_field(67000, steady_walk());
    EXPECT_EQ(a.survey, walked_field(67000, steady_walk()).survey);
    EXPECT_FALSE(a.survey.mounds.empty());
}

}  // namespace
}  // namespace plugside
