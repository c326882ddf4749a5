// Each kind of made-up field shows its mechanism in a number that the others do not have.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

#include "core/simulation/burrow_simulator.h"
#include "core/simulation/dug_ground.h"
#include "core/simulation/food_field.h"

namespace plugside {
namespace {

FieldTruth truth_of(FieldKind kind, std::uint64_t seed, std::size_t mounds = 250) {
    SimulationOptions options;
    options.kind = kind;
    options.seed = seed;
    options.mounds_wanted = mounds;
    return simulate_field(options).truth;
}

double mean_over_seeds(FieldKind kind, double (*statistic)(const FieldTruth&)) {
    double sum = 0.0;
    constexpr int seeds = 16;
    for (int seed = 1; seed <= seeds; ++seed) sum += statistic(truth_of(kind, static_cast<std::uint64_t>(seed)));
    return sum / seeds;
}

// Runs of a metre and more that begin on an earlier run of their system, over the length dug, a hundred metres.
double branches_a_hundred_metres(const FieldTruth& truth) {
    double length_m = 0.0;
    for (const TrueRun& run : truth.runs) length_m += length(run.line).value();
    return 100.0 * static_cast<double>(truth.runs.size() - truth.systems) / length_m;
}

// How much of the runs' length of a system points one of two directions at a right angle: the length of the mean of unit
// vectors turned four times as far as the run, over systems; 1 when all do, near 0 when directions are spread evenly.
double squareness(const FieldTruth& truth) {
    std::map<std::size_t, LocalVector> sums;
    std::map<std::size_t, double> lengths;
    constexpr std::size_t stride = 10;  // a metre, so that small wobbles do not count
    for (const TrueRun& run : truth.runs)
        for (std::size_t i = stride; i < run.line.vertices.size(); i += stride) {
            const LocalVector step = run.line.vertices[i] - run.line.vertices[i - stride];
            const double turn = 4.0 * std::atan2(step.east_m, step.north_m);
            sums[run.system] = sums[run.system] + LocalVector{std::sin(turn), std::cos(turn)} * step.length_m();
            lengths[run.system] += step.length_m();
        }
    double weighted = 0.0;
    double all_m = 0.0;
    for (const auto& [system, sum] : sums) {
        if (lengths[system] < 30.0) continue;  // short works are straight in every kind
        weighted += sum.length_m();
        all_m += lengths[system];
    }
    return all_m > 0.0 ? weighted / all_m : 0.0;
}

// The distance along a run from one mound to the next, and how much the run winds there, degrees a metre.
struct Gap {
    double length_m;
    double winding;
};

// Of each run that has some, in order.
std::vector<std::vector<Gap>> gaps_of_runs(const FieldTruth& truth) {
    constexpr std::size_t stride = 10;  // a metre
    std::vector<std::vector<Gap>> gaps;
    for (const TrueRun& run : truth.runs) {
        const auto& v = run.line.vertices;
        std::vector<std::size_t> at;
        for (const TrueMound& mound : truth.mounds) {
            const auto found = std::find(v.begin(), v.end(), mound.run_junction);
            if (mound.system == run.system && found != v.end()) at.push_back(static_cast<std::size_t>(found - v.begin()));
        }
        std::sort(at.begin(), at.end());
        gaps.emplace_back();
        for (std::size_t g = 1; g < at.size(); ++g) {
            const std::size_t from = std::max(at[g - 1], 3 * stride) - 3 * stride;
            const std::size_t to = std::min(at[g] + 3 * stride, v.size() - 1);
            double turned = 0.0;
            for (std::size_t i = from + stride; i + stride <= to; i += stride)
                turned +=
                    std::abs(turn_degrees(*Bearing::along(v[i] - v[i - stride]), *Bearing::along(v[i + stride] - v[i])));
            gaps.back().push_back({static_cast<double>(at[g] - at[g - 1]) * dig_step_m,
                                   turned / (static_cast<double>(to - from) * dig_step_m)});
        }
    }
    return gaps;
}

double correlation(const std::vector<std::pair<double, double>>& pairs) {
    double x = 0.0;
    double y = 0.0;
    for (const auto& [a, b] : pairs) {
        x += a / static_cast<double>(pairs.size());
        y += b / static_cast<double>(pairs.size());
    }
    double xx = 0.0;
    double yy = 0.0;
    double xy = 0.0;
    for (const auto& [a, b] : pairs) {
        xx += (a - x) * (a - x);
        yy += (b - y) * (b - y);
        xy += (a - x) * (b - y);
    }
    return pairs.empty() ? 0.0 : xy / std::sqrt(xx * yy);
}

// How alike a distance between mounds is to the next on the same run: none where each is drawn by itself.
double likeness_of_following_gaps(const FieldTruth& truth) {
    std::vector<std::pair<double, double>> pairs;
    for (const auto& run : gaps_of_runs(truth))
        for (std::size_t i = 1; i < run.size(); ++i)
            pairs.push_back({std::log(run[i - 1].length_m), std::log(run[i].length_m)});
    return correlation(pairs);
}

double closeness_where_runs_wind(const FieldTruth& truth) {
    std::vector<std::pair<double, double>> pairs;
    for (const auto& run : gaps_of_runs(truth))
        for (const Gap& gap : run) pairs.push_back({-std::log(gap.length_m), gap.winding});
    return correlation(pairs);
}

TEST(RunMechanisms, InASearchForFoodCloseMoundsFollowCloseMoundsAndInNoOtherKind) {
    EXPECT_GT(mean_over_seeds(FieldKind::patch_foraging, likeness_of_following_gaps), 0.12);
    for (const FieldKind kind : all_field_kinds())
        if (kind != FieldKind::patch_foraging) {
            EXPECT_LT(mean_over_seeds(kind, likeness_of_following_gaps), 0.06) << to_text(kind);
        }
}

TEST(RunMechanisms, InASearchForFoodMoundsStandCloserWhereTheRunWindsAndInNoOtherKind) {
    EXPECT_GT(mean_over_seeds(FieldKind::patch_foraging, closeness_where_runs_wind), 0.2);
    for (const FieldKind kind : all_field_kinds())
        if (kind != FieldKind::patch_foraging) {
            EXPECT_LT(mean_over_seeds(kind, closeness_where_runs_wind), 0.1) << to_text(kind);
        }
}

TEST(RunMechanisms, LanesOnSharedGroundArePerpendicularOrParallelMoreThanRunsOfAnyKindThatIsNotDugInRows) {
    const double shared = mean_over_seeds(FieldKind::shared_ground, squareness);
    EXPECT_GT(shared, 0.5);
    for (const FieldKind kind : {FieldKind::meander, FieldKind::straight_with_branches, FieldKind::crowded_growth,
                                 FieldKind::patch_foraging, FieldKind::food_tree})
        EXPECT_GT(shared, mean_over_seeds(kind, squareness) + 0.1) << to_text(kind);
}

TEST(RunMechanisms, ATreeOfFoodHasMoreBranchesThanAnyOther) {
    const double tree = mean_over_seeds(FieldKind::food_tree, branches_a_hundred_metres);
    for (const FieldKind kind : all_field_kinds())
        if (kind != FieldKind::food_tree) {
            EXPECT_GT(tree, 1.3 * mean_over_seeds(kind, branches_a_hundred_metres)) << to_text(kind);
        }
}

TEST(RunMechanisms, ATreeOfFoodHasManyShortBranchesAndFewLong) {
    std::vector<double> lengths;
    for (std::uint64_t seed = 1; seed <= 10; ++seed)
        for (const TrueRun& run : truth_of(FieldKind::food_tree, seed).runs) lengths.push_back(length(run.line).value());
    std::sort(lengths.begin(), lengths.end());
    const double median = lengths[lengths.size() / 2];
    const double mean = std::accumulate(lengths.begin(), lengths.end(), 0.0) / static_cast<double>(lengths.size());
    EXPECT_GT(mean, 1.08 * median);
    EXPECT_GT(lengths[lengths.size() * 99 / 100], 3.0 * median);
    EXPECT_GE(lengths.front(), 1.0 - 1e-9);
}

// What is given up leads nowhere: the rest hangs together.
TEST(RunMechanisms, EveryRunButTheFirstOfASystemOnNewGroundBeginsOnAnotherOfItsRuns) {
    for (const FieldKind kind : {FieldKind::patch_foraging, FieldKind::shared_ground, FieldKind::food_tree})
        for (std::uint64_t seed = 1; seed <= 8; ++seed) {
            const FieldTruth truth = truth_of(kind, seed, 120);
            for (std::size_t i = 1; i < truth.runs.size(); ++i) {
                if (truth.runs[i].system != truth.runs[i - 1].system) continue;
                double nearest_m = 1e9;
                for (std::size_t j = 0; j < i; ++j)
                    if (truth.runs[j].system == truth.runs[i].system)
                        nearest_m =
                            std::min(nearest_m, distance(truth.runs[i].line.vertices[0], truth.runs[j].line)->value());
                EXPECT_LT(nearest_m, 1e-9) << to_text(kind) << ' ' << seed;
            }
        }
}

TEST(RunMechanisms, NewKindsHaveSystemsWithinThePublishedSizes) {
    // total length: mean 44 m, up to 160 m (Florida extension), 244 m (Montana Dept of Agriculture)
    for (const FieldKind kind : {FieldKind::patch_foraging, FieldKind::shared_ground, FieldKind::food_tree}) {
        std::vector<double> lengths;
        for (std::uint64_t seed = 1; seed <= 40; ++seed) {
            std::map<std::size_t, double> of_system;
            for (const TrueRun& run : truth_of(kind, seed).runs) of_system[run.system] += length(run.line).value();
            for (const auto& [system, length_m] : of_system) lengths.push_back(length_m);
        }
        std::sort(lengths.begin(), lengths.end());
        const double mean = std::accumulate(lengths.begin(), lengths.end(), 0.0) / static_cast<double>(lengths.size());
        EXPECT_GT(mean, 18.0) << to_text(kind);
        EXPECT_LT(mean, 60.0) << to_text(kind);
        EXPECT_LT(lengths.back(), 244.0) << to_text(kind);
    }
}

TEST(RunMechanisms, CrowdedKindsAreThoseThatShutEachOtherIn) {
    for (const FieldKind kind : all_field_kinds())
        EXPECT_EQ(is_crowded(kind), kind == FieldKind::crowded_growth || kind == FieldKind::shared_ground) << to_text(kind);
}

TEST(FoodField, IsBetweenPoorAndRichAndAsScarceAsAskedFor) {
    for (const double scarcity : {0.0, 1.0}) {
        double rich = 0.0;
        double count = 0.0;
        for (std::uint64_t seed = 1; seed <= 40; ++seed) {
            Random random(seed);
            const FoodField food({5.0, 4.0, scarcity}, random);
            for (int i = 0; i < 400; ++i) {
                const double richness = food.richness({random.uniform(-100.0, 100.0), random.uniform(-100.0, 100.0)});
                ASSERT_GE(richness, 0.0);
                ASSERT_LE(richness, 1.0);
                rich += richness > 0.5 ? 1.0 : 0.0;
                count += 1.0;
            }
        }
        EXPECT_NEAR(rich / count, scarcity == 0.0 ? 0.5 : 0.159, 0.03);  // of a normal above 0 and 1
    }
}

TEST(FoodField, ItsSlopeLeadsToRicherGroundAndItForgetsItselfOverAPatch) {
    double near = 0.0;
    double far = 0.0;
    double own = 0.0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        Random random(seed);
        const FoodField food({6.0, 4.0, 0.0}, random);
        for (int i = 0; i < 60; ++i) {
            const LocalPoint p{random.uniform(-50.0, 50.0), random.uniform(-50.0, 50.0)};
            const auto up = Bearing::along(food.slope(p));
            ASSERT_TRUE(up);
            EXPECT_GE(food.richness(p + up->unit() * 1e-4), food.richness(p));
            const double here = food.richness(p) - 0.5;
            own += here * here;
            near += here * (food.richness(p + LocalVector{1.5, 0.0}) - 0.5);
            far += here * (food.richness(p + LocalVector{0.0, 30.0}) - 0.5);
        }
    }
    EXPECT_GT(near / own, 0.8);
    EXPECT_LT(std::abs(far / own), 0.15);
}

}  // namespace
}  // namespace plugside
