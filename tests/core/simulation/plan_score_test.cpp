#include "core/simulation/plan_score.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <map>
#include <memory>
#include <set>

#include "core/simulation/burrow_simulator.h"
#include "core/simulation/random.h"

namespace plugside {
namespace {

using Labels = std::vector<std::size_t>;

TEST(AdjustedRandIndex, GivesTheDocumentedExample) {
    // scikit-learn, documentation of adjusted_rand_score: ([0, 0, 1, 2], [0, 0, 1, 1]) gives 0.57...; 4/7 exactly
    EXPECT_NEAR(adjusted_rand_index({0, 0, 1, 2}, {0, 0, 1, 1}), 0.571428571428571, 1e-12);
    // the same page: ([0, 0, 0, 0], [0, 1, 2, 3]) gives 0; ([0, 0, 1, 1], [0, 1, 0, 1]) gives -0.5
    EXPECT_NEAR(adjusted_rand_index({0, 0, 0, 0}, {0, 1, 2, 3}), 0.0, 1e-12);
    EXPECT_NEAR(adjusted_rand_index({0, 0, 1, 1}, {0, 1, 0, 1}), -0.5, 1e-12);
}

TEST(AdjustedRandIndex, IsOneForEqualPartitionsWhateverTheirNames) {
    EXPECT_EQ(adjusted_rand_index({0, 0, 1, 1, 2}, {7, 7, 3, 3, 9}), 1.0);
    EXPECT_EQ(adjusted_rand_index({}, {}), 1.0);
    EXPECT_EQ(adjusted_rand_index({4}, {2}), 1.0);
    EXPECT_EQ(adjusted_rand_index({0, 1, 2}, {2, 1, 0}), 1.0);
    EXPECT_EQ(adjusted_rand_index({0, 0, 0}, {5, 5, 5}), 1.0);
}

TEST(AdjustedRandIndex, IsSymmetricAndAboutZeroForUnrelatedLabels) {
    Random random(5);
    double sum = 0.0;
    for (int round = 0; round < 200; ++round) {
        Labels a;
        Labels b;
        for (int i = 0; i < 60; ++i) {
            a.push_back(random.below(6));
            b.push_back(random.below(5));
        }
        const double index = adjusted_rand_index(a, b);
        EXPECT_NEAR(index, adjusted_rand_index(b, a), 1e-12);
        EXPECT_LE(index, 1.0);
        sum += index;
    }
    EXPECT_NEAR(sum / 200.0, 0.0, 0.01);
}

std::vector<LocalPoint> scattered(std::size_t count, std::uint64_t seed) {
    Random random(seed);
    std::vector<LocalPoint> places;
    for (std::size_t i = 0; i < count; ++i) places.push_back({random.uniform(0.0, 30.0), random.uniform(-20.0, 10.0)});
    return places;
}

std::size_t near_count(const std::vector<LocalPoint>& places, std::size_t i, double radius) {
    return static_cast<std::size_t>(
        std::count_if(places.begin(), places.end(), [&](LocalPoint p) { return distance_m(p, places[i]) <= radius; }));
}

// Core marks are joined when within the radius: components by repeated relabelling, no index, no queue.
Labels core_components(const std::vector<LocalPoint>& places, double radius, std::size_t least) {
    Labels label(places.size());
    for (std::size_t i = 0; i < places.size(); ++i) label[i] = i;
    for (bool changed = true; changed;) {
        changed = false;
        for (std::size_t i = 0; i < places.size(); ++i)
            for (std::size_t j = 0; j < places.size(); ++j)
                if (label[j] < label[i] && distance_m(places[i], places[j]) <= radius &&
                    near_count(places, i, radius) >= least && near_count(places, j, radius) >= least) {
                    label[i] = label[j];
                    changed = true;
                }
    }
    return label;
}

TEST(DensityClusters, AgreeWithTheDefinitionByBruteForce) {
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        const auto places = scattered(70, seed);
        for (const double radius : {0.7, 2.0, 4.0})
            for (const int least : {1, 2, 3, 5}) {
                const Labels got = density_clusters(places, Metres::of(radius), least);
                const Labels want = core_components(places, radius, static_cast<std::size_t>(least));
                std::map<std::size_t, std::size_t> sizes;
                for (const std::size_t label : got) ++sizes[label];
                for (std::size_t i = 0; i < places.size(); ++i) {
                    const bool core_i = near_count(places, i, radius) >= static_cast<std::size_t>(least);
                    bool beside_core = false;
                    bool with_own_core = false;
                    for (std::size_t j = 0; j < places.size(); ++j) {
                        const bool core_j = near_count(places, j, radius) >= static_cast<std::size_t>(least);
                        if (core_i && core_j) {
                            EXPECT_EQ(got[i] == got[j], want[i] == want[j]);
                        }
                        if (!core_i && core_j && distance_m(places[i], places[j]) <= radius) {
                            beside_core = true;
                            with_own_core = with_own_core || got[i] == got[j];
                        }
                    }
                    if (!core_i) {
                        EXPECT_EQ(beside_core, with_own_core);
                        if (!beside_core) {
                            EXPECT_EQ(sizes[got[i]], 1u);
                        }
                    }
                }
            }
    }
}

TEST(DensityClusters, FindTheClustersThatIndependentProgramsFindInARealPattern) {
    // redwoodfull: 195 seedlings (Strauss 1975), from R's spatstat.data. DBSCAN with radius .06 and at least 5: scikit-learn
    // 1.2.1 and R's dbscan both give 10 clusters and 82 noise points. The places are read at test time and not copied.
    const std::string file = testing::TempDir() + "redwoodfull.txt";
    const std::string command = "Rscript -e 'library(spatstat.data); write.table(cbind(redwoodfull$x, redwoodfull$y), \"" +
                                file + "\", row.names = FALSE, col.names = FALSE)' > /dev/null 2>&1";
    const int exit_code = std::system(command.c_str());
    ASSERT_EQ(exit_code, 0) << "needs R with spatstat.data";
    std::vector<LocalPoint> places;
    const std::unique_ptr<FILE, int (*)(FILE*)> input(std::fopen(file.c_str(), "r"), std::fclose);
    ASSERT_NE(input, nullptr);
    LocalPoint p;
    while (std::fscanf(input.get(), "%lf %lf", &p.east_m, &p.north_m) == 2) places.push_back(p);
    ASSERT_EQ(places.size(), 195u);
    std::map<std::size_t, std::size_t> sizes;
    for (const std::size_t label : density_clusters(places, Metres::of(0.06), 5)) ++sizes[label];
    const auto noise = std::count_if(sizes.begin(), sizes.end(), [](const auto& entry) { return entry.second == 1u; });
    EXPECT_EQ(noise, 82);
    EXPECT_EQ(sizes.size() - static_cast<std::size_t>(noise), 10u);
}

TEST(DensityClusters, HandleNoneOneAndEqualPlaces) {
    EXPECT_TRUE(density_clusters({}, Metres::of(1.0), 3).empty());
    EXPECT_EQ(density_clusters({{2.0, 3.0}}, Metres::of(1.0), 3), Labels{0});
    const Labels equal = density_clusters(std::vector<LocalPoint>(5, {1.0, 1.0}), Metres::of(0.5), 5);
    EXPECT_EQ(equal, Labels(5, 0));
}

// A plan that knows the truth: the true systems, nothing else.
Plan true_plan(const SimulatedField& field) {
    Plan plan;
    plan.mounds.resize(field.survey.mounds.size());
    plan.systems.resize(field.truth.systems);
    for (const TrueMound& mound : field.truth.mounds)
        if (mound.seen_as) plan.mounds[*mound.seen_as].system = mound.system;
    plan.estimate.expected = static_cast<double>(field.truth.systems);
    return plan;
}

TEST(PlanScore, IsOneForTheTruthAndTheYardstickIsBelow) {
    for (const FieldKind kind : all_field_kinds()) {
        const SimulatedField field = simulate_field({kind, 2, 200, true, false, {}});
        const PlanScore score = score_plan(true_plan(field), field);
        EXPECT_EQ(score.adjusted_rand, 1.0);
        EXPECT_GT(score.yardstick_adjusted_rand, 0.0);
        EXPECT_LT(score.yardstick_adjusted_rand, 1.0);
        EXPECT_EQ(score.animals_reached, 0u);
        std::size_t seen = 0;
        for (const TrueMound& mound : field.truth.mounds) seen += mound.seen_as ? 1u : 0u;
        EXPECT_EQ(score.marks, seen);
        EXPECT_LE(score.true_systems, field.truth.systems);
    }
}

}  // namespace
}  // namespace plugside
