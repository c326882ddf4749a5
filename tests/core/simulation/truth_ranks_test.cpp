#include "core/simulation/truth_ranks.h"

#include <gtest/gtest.h>

#include "core/plan/plan_with_posterior.h"
#include "core/simulation/burrow_simulator.h"

namespace plugside {
namespace {

// Two true systems of two and three marks, all seen and used; drawn as given.
struct Drawn {
    SimulatedField field;
    Plan plan;
    SystemPosterior posterior;
};

Drawn drawn_as(std::vector<std::vector<std::uint32_t>> trees) {
    Drawn drawn;
    drawn.field.truth.systems = 2;
    for (std::size_t i = 0; i < 5; ++i) {
        TrueMound mound;
        mound.system = i < 2 ? 0 : 1;
        mound.seen_as = i;
        drawn.field.truth.mounds.push_back(mound);
        Mark mark;
        mark.mound = i;
        drawn.posterior.marks.push_back(mark);
    }
    drawn.posterior.drawn_system = trees;
    DrawnSystems systems;
    systems.plug.resize(5);
    systems.tree = std::move(trees);
    drawn.plan.drawn = std::make_shared<const DrawnSystems>(std::move(systems));
    return drawn;
}

TEST(TruthPlaces, StandWhereTheTruthIsAmongTheDraws) {
    // numbers 1, 1, 3, 3 of systems: the truth, 2, is third of five places; pairs 10, 10, 2, 2 about 4
    const Drawn drawn = drawn_as({{0, 0, 0, 0, 0}, {4, 4, 4, 4, 4}, {0, 0, 2, 2, 4}, {0, 1, 1, 3, 3}});
    for (std::uint64_t seed = 0; seed < 50; ++seed) {
        const TruthPlaces places = truth_places(drawn.plan, drawn.posterior, drawn.field, seed);
        for (const auto& place : places) {
            ASSERT_TRUE(place);
            EXPECT_GE(*place, 0.4);
            EXPECT_LT(*place, 0.6);
        }
    }
    const Drawn low = drawn_as({{0, 0, 0, 0, 0}, {0, 0, 0, 0, 0}, {0, 0, 0, 0, 0}});
    EXPECT_GE(truth_places(low.plan, low.posterior, low.field, 1)[0], 0.75) << "draws too few: the truth lies above";
    EXPECT_LT(truth_places(low.plan, low.posterior, low.field, 1)[1], 0.25) << "too many together: below";
}

TEST(TruthPlaces, AreNothingWithoutMarksOrDraws) {
    EXPECT_FALSE(truth_places({}, {}, {}, 1)[0]);
    const Drawn none = drawn_as({});
    EXPECT_FALSE(truth_places(none.plan, none.posterior, none.field, 1)[0]);
    EXPECT_EQ(histogram_of_places({std::nullopt, 0.999999999, 0.0, 0.25}).ranks(), 3U);
}

TEST(TruthPlaces, OfASimulatedFieldAreShares) {
    SimulationOptions options;
    options.seed = 51;
    options.mounds_wanted = 80;
    const SimulatedField field = simulate_field(options);
    const auto made = make_plan_with_posterior(field.survey, {}, learnt_link_weights());
    for (const auto& place : truth_places(made->plan, made->posterior, field, 51)) {
        ASSERT_TRUE(place);
        EXPECT_GE(*place, 0.0);
        EXPECT_LT(*place, 1.0);
    }
}

TEST(TruthPlaces, OfExactDrawsAreEven) {
    // truth and draws of one distribution: systems by a coin for each of four gaps
    Random random(8);
    std::vector<std::optional<double>> of_systems, of_pairs;
    const auto partition = [&] {
        std::vector<std::uint32_t> label(5, 0);
        for (std::uint32_t i = 1; i < 5; ++i) label[i] = random.chance(0.5) ? i : label[i - 1];
        return label;
    };
    for (std::uint64_t trial = 0; trial < 2000; ++trial) {
        std::vector<std::vector<std::uint32_t>> trees;
        for (std::size_t d = 0; d < 12; ++d) trees.push_back(partition());
        Drawn drawn = drawn_as(std::move(trees));
        const auto truth = partition();
        for (std::size_t i = 0; i < 5; ++i) drawn.field.truth.mounds[i].system = truth[i];
        const TruthPlaces places = truth_places(drawn.plan, drawn.posterior, drawn.field, trial);
        of_systems.push_back(places[0]);
        of_pairs.push_back(places[1]);
    }
    EXPECT_GT(histogram_of_places(of_systems).evenness().p_value, 1e-3);
    EXPECT_GT(histogram_of_places(of_pairs).evenness().p_value, 1e-3);
}

}  // namespace
}  // namespace plugside
