#include "core/simulation/burrow_simulator.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <limits>
#include <set>

namespace plugside {
namespace {

SimulationOptions options_of(FieldKind kind, std::uint64_t seed, std::size_t mounds, bool with_ground = false) {
    SimulationOptions options;
    options.kind = kind;
    options.seed = seed;
    options.mounds_wanted = mounds;
    options.with_ground = with_ground;
    return options;
}

class EveryKind : public testing::TestWithParam<FieldKind> {};

std::string kind_name(const testing::TestParamInfo<FieldKind>& info) {
    std::string name = to_text(info.param);
    std::replace(name.begin(), name.end(), ' ', '_');
    return name;
}

INSTANTIATE_TEST_SUITE_P(Simulator, EveryKind, testing::ValuesIn(all_field_kinds()), kind_name);

TEST_P(EveryKind, TheSameSeedGivesTheSameFieldToTheBit) {
    const SimulatedField a = simulate_field(options_of(GetParam(), 5, 200));
    const SimulatedField b = simulate_field(options_of(GetParam(), 5, 200));
    EXPECT_EQ(a.survey, b.survey);
    ASSERT_EQ(a.truth.mounds.size(), b.truth.mounds.size());
    for (std::size_t i = 0; i < a.truth.mounds.size(); ++i) {
        EXPECT_EQ(a.truth.mounds[i].plug, b.truth.mounds[i].plug);
        EXPECT_EQ(a.truth.mounds[i].system, b.truth.mounds[i].system);
    }
    const SimulatedField other = simulate_field(options_of(GetParam(), 6, 200));
    EXPECT_FALSE(a.survey == other.survey);
}

TEST_P(EveryKind, GivesAboutAsManyMoundsAsWanted) {
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        const SimulatedField field = simulate_field(options_of(GetParam(), seed, 300));
        EXPECT_GE(field.truth.mounds.size(), 225u) << seed;
        EXPECT_LE(field.truth.mounds.size(), 420u) << seed;
    }
}

TEST_P(EveryKind, EveryLateralMeetsARunOfItsOwnSystemAndThrowsItsSoilAwayFromIt) {
    double lean_sum = 0.0;
    std::size_t count = 0;
    for (std::uint64_t seed = 1; seed <= 4; ++seed) {
        const SimulatedField field = simulate_field(options_of(GetParam(), seed, 150));
        for (const TrueMound& mound : field.truth.mounds) {
            double nearest = std::numeric_limits<double>::infinity();
            for (const TrueRun& run : field.truth.runs)
                if (run.system == mound.system) nearest = std::min(nearest, distance(mound.run_junction, run.line)->value());
            EXPECT_LT(nearest, 1e-9);
            const LocalVector lateral = mound.plug - mound.run_junction;
            // 15-36 cm deep under slopes of 28-65 degrees
            EXPECT_GE(lateral.length_m(), 0.15 / std::tan(65.0 * 3.141592653589793 / 180.0) - 1e-9);
            EXPECT_LE(lateral.length_m(), 0.36 / std::tan(28.0 * 3.141592653589793 / 180.0) + 1e-9);
            lean_sum += std::abs(turn_degrees(*Bearing::along(lateral), mound.fan));
            EXPECT_LT(std::abs(turn_degrees(*Bearing::along(lateral), mound.fan)), 60.0);
            ++count;
        }
    }
    EXPECT_LT(lean_sum / static_cast<double>(count), 12.0);
}

TEST_P(EveryKind, LateralsLeaveTheRunAboutAtARightAngleOnEitherSide) {
    std::size_t right = 0;
    std::size_t count = 0;
    double square_sum = 0.0;
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        const SimulatedField field = simulate_field(options_of(GetParam(), seed, 150));
        for (const TrueMound& mound : field.truth.mounds)
            for (const TrueRun& run : field.truth.runs) {
                if (run.system != mound.system) continue;
                const auto& v = run.line.vertices;
                const auto at = std::find(v.begin() + 1, v.end(), mound.run_junction);
                if (at == v.end() || at + 1 == v.end()) continue;
                const Bearing along = *Bearing::along(*(at + 1) - *(at - 1));
                const double turn = turn_degrees(along, *Bearing::along(mound.plug - mound.run_junction));
                right += turn > 0.0 ? 1u : 0u;
                ++count;
                square_sum += std::pow(std::abs(turn) - 90.0, 2);
                break;
            }
    }
    EXPECT_NEAR(static_cast<double>(right) / static_cast<double>(count), 0.5, 0.1);
    const double lean_sd = std::sqrt(square_sum / static_cast<double>(count));
    EXPECT_GT(lean_sd, 12.0);
    EXPECT_LT(lean_sd, 22.0);
}

TEST_P(EveryKind, RunsOfDifferentSystemsKeepApartAndAreFinelyDrawn) {
    for (std::uint64_t seed = 1; seed <= 3; ++seed) {
        const SimulatedField field = simulate_field(options_of(GetParam(), seed, 100));
        double nearest = std::numeric_limits<double>::infinity();
        for (const TrueRun& a : field.truth.runs) {
            for (std::size_t i = 1; i < a.line.vertices.size(); ++i)
                EXPECT_LE(distance_m(a.line.vertices[i - 1], a.line.vertices[i]), 0.1 + 1e-9);
            for (const TrueRun& b : field.truth.runs)
                if (a.system < b.system)
                    for (const LocalPoint p : a.line.vertices)
                        for (const LocalPoint q : b.line.vertices) nearest = std::min(nearest, distance_m(p, q));
        }
        EXPECT_GT(nearest, 0.7)
            << seed;  // gaps are drawn from 1 m on; a piece may cut a corner of the last third of a metre
    }
}

TEST_P(EveryKind, RunsStayInTheFieldOffTheHouseAndDoNotCrossTheDitch) {
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        const SimulatedField field = simulate_field(options_of(GetParam(), seed, 150, true));
        const Ground& ground = field.survey.ground;
        ASSERT_EQ(ground.boundary.parts.size(), 1u);
        ASSERT_EQ(ground.barriers.size(), 1u);
        ASSERT_EQ(ground.keep_clear.size(), 1u);
        EXPECT_EQ(ground.keep_clear[0].kind, KeepClearKind::building);
        EXPECT_TRUE(contains(ground.boundary, ground.keep_clear[0].area.outer.vertices[0]));
        for (const TrueRun& run : field.truth.runs)
            for (const LocalPoint p : run.line.vertices) {
                ASSERT_TRUE(contains(ground.boundary, p));
                ASSERT_GT(distance(p, ground.barriers[0].line)->value(), 1.0);
                ASSERT_GT(distance(p, ground.keep_clear[0].area).value(), 7.0);
            }
    }
}

TEST_P(EveryKind, SystemSizesAreBroad) {
    std::vector<std::size_t> sizes;
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        const SimulatedField field = simulate_field(options_of(GetParam(), seed, 300));
        std::vector<std::size_t> count(field.truth.systems, 0);
        for (const TrueMound& mound : field.truth.mounds) ++count.at(mound.system);
        EXPECT_GT(*std::min_element(count.begin(), count.end()), 0u);
        sizes.insert(sizes.end(), count.begin(), count.end());
    }
    std::sort(sizes.begin(), sizes.end());
    EXPECT_LE(sizes.back(), 90u);
    EXPECT_GE(sizes[sizes.size() * 9 / 10], 2 * sizes[sizes.size() / 3]);
}

TEST_P(EveryKind, NoTwoPlugsOfASystemShareAPlace) {
    const SimulatedField field = simulate_field(options_of(GetParam(), 9, 200));
    for (std::size_t i = 0; i < field.truth.mounds.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (field.truth.mounds[i].system == field.truth.mounds[j].system) {
                EXPECT_GE(distance_m(field.truth.mounds[i].plug, field.truth.mounds[j].plug), 0.4);
            }
}

TEST_P(EveryKind, NoneOneAndAFewMoundsCanBeAskedFor) {
    for (const std::size_t wanted : {0u, 1u, 2u, 5u}) {
        const SimulatedField field = simulate_field(options_of(GetParam(), 3, wanted));
        EXPECT_GE(field.truth.mounds.size(), wanted);
        EXPECT_LE(field.truth.mounds.size(), wanted + 90);
        EXPECT_EQ(field.survey.walks.size(), 1u);
    }
}

TEST_P(EveryKind, TwentyThousandMoundsTakeSeconds) {
    const auto start = std::chrono::steady_clock::now();
    const SimulatedField field = simulate_field(options_of(GetParam(), 1, 20000));
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
    EXPECT_GT(field.truth.mounds.size(), 15000u);
    EXPECT_LT(took.count(), 30.0);  // under a second on an idle machine; a debug build with checks on is slower by far
}

}  // namespace
}  // namespace plugside
