#include "core/systems/coarse_systems.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>

#include "core/geometry/space_curve.h"
#include "core/simulation/plan_score.h"
#include "core/simulation/random.h"
#include "core/systems/coarse_neighbours.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

std::vector<CoarseMark> marks_at(const std::vector<LocalPoint>& places) {
    std::vector<CoarseMark> marks;
    for (const LocalPoint place : places) marks.push_back({place, {}});
    return marks;
}

std::vector<CoarseMark> simulated_marks(std::uint64_t seed, std::size_t mounds, FieldKind kind = FieldKind::meander) {
    return coarse_marks_of(test::simulated_survey(seed, mounds, kind)).marks;
}

// Mounds every 2 m along a run to the east, from `from` on.
void add_row(std::vector<LocalPoint>& places, LocalPoint from, int mounds) {
    for (int i = 0; i < mounds; ++i) places.push_back(from + LocalVector{2.0 * i, 0.3 * (i % 2)});
}

bool same_partition(const std::vector<std::uint32_t>& a, const std::vector<std::uint32_t>& b) {
    return adjusted_rand_index({a.begin(), a.end()}, {b.begin(), b.end()}) == 1.0;
}

std::vector<std::uint32_t> drawn_order(std::size_t things, std::uint64_t seed) {
    std::vector<std::uint32_t> order(things);
    std::iota(order.begin(), order.end(), 0U);
    Random random(seed);
    for (std::size_t i = things; i > 1; --i) std::swap(order[i - 1], order[random.below(i)]);
    return order;
}

TEST(CoarseSystems, ExpectNothingOfNoMarkAndOneOfOne) {
    const auto none = coarse_systems({});
    ASSERT_TRUE(none);
    EXPECT_EQ(none->systems, 0U);
    EXPECT_EQ(none->expected, 0.0);
    EXPECT_EQ(none->high, 0.0);
    const auto one = coarse_systems(marks_at({{3.0, 4.0}}));
    EXPECT_EQ(one->system, std::vector<std::uint32_t>{0});
    EXPECT_EQ(one->expected, 1.0);
    EXPECT_EQ(one->low, 1.0);
    EXPECT_EQ(one->high, 1.0);
}

TEST(CoarseSystems, MarksBeyondReachOfOneAnotherAreCertainlySystemsOfTheirOwn) {
    const auto found = coarse_systems(marks_at({{0.0, 0.0}, {25.1, 0.0}, {0.0, 300.0}}));
    EXPECT_EQ(found->systems, 3U);
    EXPECT_EQ(found->low, 3.0);
    EXPECT_EQ(found->high, 3.0);
}

TEST(CoarseSystems, FarRowsOfMoundsAreSystemsNumberedBySize) {
    std::vector<LocalPoint> places;
    add_row(places, {0.0, 0.0}, 8);
    add_row(places, {200.0, 0.0}, 14);
    add_row(places, {0.0, 90.0}, 11);
    const auto found = coarse_systems(marks_at(places));
    std::vector<std::uint32_t> expected(8, 2);
    expected.insert(expected.end(), 14, 0);
    expected.insert(expected.end(), 11, 1);
    EXPECT_EQ(found->system, expected);
    EXPECT_TRUE(found->coarse);
}

TEST(CoarseSystems, ABarrierBetweenTwoHalvesOfARowParts) {
    std::vector<LocalPoint> places;
    add_row(places, {0.0, 0.0}, 12);
    const std::vector<CoarseMark> marks = marks_at(places);
    EXPECT_EQ(coarse_systems(marks)->systems, 1U);
    const std::vector<Barrier> ditch{{"ditch", Polyline{{{11.0, -500.0}, {11.0, 500.0}}}}};
    CoarseOptions options;
    options.barriers = ditch;
    const auto found = coarse_systems(marks, options);
    EXPECT_EQ(found->systems, 2U);
    for (std::size_t i = 0; i < 12; ++i) EXPECT_EQ(found->system[i] == found->system[0], i < 6) << i;
}

TEST(CoarseSystems, WhatABarrierOfManyVerticesPartsIsNoNeighbour) {
    std::vector<LocalPoint> places;
    for (const CoarseMark& mark : simulated_marks(5, 600)) places.push_back(mark.take_off);
    LocalPoint middle = places.front();
    for (const LocalPoint place : places) middle = middle + (place - middle) * (1.0 / static_cast<double>(places.size()));
    Barrier lane{"lane", {}};
    for (int i = -60; i <= 60; ++i) lane.line.vertices.push_back(middle + LocalVector{7.0 * i, 30.0 * std::sin(0.3 * i)});
    lane.line.vertices.push_back(middle + LocalVector{420.0, 900.0});  // one long piece
    const std::vector<Barrier> barriers{lane};
    const auto meets = [&](LocalPoint a, LocalPoint b) {
        for (std::size_t i = 1; i < lane.line.vertices.size(); ++i)
            if (segments_meet(a, b, lane.line.vertices[i - 1], lane.line.vertices[i])) return true;
        return false;
    };
    const auto all = *coarse_neighbours(places, 8, Metres::of(25.0));
    auto left = all;
    ASSERT_TRUE(drop_across(barriers, places, left));
    std::size_t dropped = 0;
    for (std::size_t i = 0; i < places.size(); ++i) {
        std::vector<std::uint32_t> expected;
        for (std::size_t k = 0; k < all.count[i]; ++k)
            if (!meets(places[i], places[all.index[i * 8 + k]])) expected.push_back(all.index[i * 8 + k]);
        dropped += all.count[i] - expected.size();
        ASSERT_EQ(left.count[i], expected.size());
        EXPECT_TRUE(std::equal(expected.begin(), expected.end(), left.index.begin() + static_cast<std::ptrdiff_t>(i * 8)));
    }
    EXPECT_GT(dropped, 20U) << "the lane runs through the mounds";
}

TEST(CoarseSystems, MarksInOneSpotAreOneSystemHoweverMany) {
    std::vector<LocalPoint> places(100, LocalPoint{7.0, 7.0});
    EXPECT_EQ(coarse_systems(marks_at(places))->systems, 1U);
    add_row(places, {300.0, 0.0}, 9);
    const auto found = coarse_systems(marks_at(places));
    EXPECT_EQ(found->systems, 2U);
    EXPECT_EQ(std::count(found->system.begin(), found->system.end(), 0U), 100);
}

TEST(CoarseSystems, RenumberedMarksHaveTheSameSystems) {
    for (const FieldKind kind : all_field_kinds()) {
        std::vector<CoarseMark> marks = simulated_marks(11, 900, kind);
        // as a receiver that rounds would have it: many marks equally far, some in one spot with different fans
        for (CoarseMark& mark : marks) mark.take_off = {std::round(mark.take_off.east_m), std::round(mark.take_off.north_m)};
        const auto before = coarse_systems(marks);
        const std::vector<std::uint32_t> order = drawn_order(marks.size(), 3);
        std::vector<CoarseMark> renumbered;
        for (const std::uint32_t i : order) renumbered.push_back(marks[i]);
        const auto after = coarse_systems(renumbered);
        for (std::size_t i = 0; i < order.size(); ++i)
            ASSERT_EQ(after->system[i], before->system[order[i]]) << to_text(kind);
        EXPECT_EQ(after->expected, before->expected);
    }
}

TEST(CoarseSystems, AMovedAndTurnedFieldHasTheSamePartition) {
    const Survey survey = test::simulated_survey(4, 800);
    const CoarseSurvey before = coarse_marks_of(survey);
    const CoarseSurvey after = coarse_marks_of(test::moved(survey, 37.0, {1200.0, -800.0}));
    EXPECT_TRUE(same_partition(coarse_systems(before.marks)->system, coarse_systems(after.marks)->system));
}

TEST(CoarseSystems, WhatLiesFarAwayChangesNothingHere) {
    std::vector<CoarseMark> marks = simulated_marks(8, 700);
    const std::size_t here = marks.size();
    const auto alone = coarse_systems(marks);
    for (CoarseMark far : simulated_marks(9, 900, FieldKind::crowded_growth)) {
        far.take_off = far.take_off + LocalVector{-5000.0, -3000.0};
        marks.push_back(far);
    }
    auto beside = coarse_systems(marks)->system;
    EXPECT_TRUE(std::none_of(beside.begin() + static_cast<std::ptrdiff_t>(here), beside.end(), [&](std::uint32_t system) {
        return std::find(beside.begin(), beside.begin() + static_cast<std::ptrdiff_t>(here), system) !=
               beside.begin() + static_cast<std::ptrdiff_t>(here);
    }));
    beside.resize(here);
    EXPECT_TRUE(same_partition(alone->system, beside));
}

TEST(CoarseSystems, NumbersFallInSizeAndTheIntervalHoldsTheExpectedNumber) {
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        const auto found = *coarse_systems(simulated_marks(seed, 500));
        std::vector<std::size_t> size(found.systems, 0);
        for (const std::uint32_t system : found.system) ++size.at(system);
        EXPECT_TRUE(std::is_sorted(size.rbegin(), size.rend()));
        EXPECT_GT(size.back(), 0U);
        EXPECT_LE(1.0, found.low);
        EXPECT_LE(found.low, found.expected);
        EXPECT_LE(found.expected, found.high);
        EXPECT_LE(found.high, static_cast<double>(found.system.size()));
    }
}

TEST(CoarseSystems, NeighboursAreThoseOfALookAtEveryPair) {
    Random random(21);
    std::vector<LocalPoint> places;
    for (int i = 0; i < 300; ++i) places.push_back({random.uniform(0.0, 80.0), random.uniform(0.0, 80.0)});
    const auto rows = *coarse_neighbours(places, 6, Metres::of(7.0));
    for (std::uint32_t i = 0; i < places.size(); ++i) {
        std::vector<std::pair<double, std::uint32_t>> near;
        for (std::uint32_t j = 0; j < places.size(); ++j)
            if (j != i && distance_m(places[i], places[j]) <= 7.0) near.emplace_back(distance_m(places[i], places[j]), j);
        std::sort(near.begin(), near.end());
        near.resize(std::min<std::size_t>(near.size(), 6));
        ASSERT_EQ(rows.count[i], near.size());
        for (std::size_t k = 0; k < near.size(); ++k) EXPECT_EQ(rows.index[i * rows.row + k], near[k].second);
    }
}

TEST(CoarseSystems, AreNothingWhenStoppedAtAnyStep) {
    const std::vector<CoarseMark> marks = simulated_marks(2, 12000);
    std::set<double> shares;
    Progress listening;
    listening.report = [&](double share, std::string_view) { shares.insert(share); };
    ASSERT_TRUE(coarse_systems(marks, {}, listening));
    ASSERT_GE(shares.size(), 4U);
    for (const double share : shares) {
        if (share == 1.0) continue;
        std::stop_source source;
        Progress progress;
        progress.stop = source.get_token();
        progress.report = [&](double now, std::string_view) {
            EXPECT_LE(now, share) << "went on after it was stopped";
            if (now == share) source.request_stop();
        };
        EXPECT_FALSE(coarse_systems(marks, {}, progress)) << "stopped at " << share;
    }
}

TEST(JoinByEvidence, JoinsByTheSumOfWhatStandsBetween) {
    CoarseJoiningOptions options;
    options.threshold = 1.0F;
    // 0-1 and 2-3 are sure; between the pairs one link speaks for, three against: together they speak against
    const std::vector<CoarseLink> links{{0, 1, 5.0F},  {2, 3, 4.0F},  {0, 2, 3.0F},
                                        {1, 2, -1.0F}, {1, 3, -1.0F}, {0, 3, -0.5F}};
    EXPECT_EQ(*join_by_evidence(5, links, options), (std::vector<std::uint32_t>{0, 0, 1, 1, 2}));
    options.threshold = 0.4F;
    EXPECT_EQ(*join_by_evidence(5, links, options), (std::vector<std::uint32_t>{0, 0, 0, 0, 1}));
}

TEST(JoinByEvidence, EndsAfterItsRoundsOnEvidenceThatGrowsAlongARow) {
    // each thing's best is the next: only the last two are each other's best, so rounds alone would need one a thing
    constexpr std::uint32_t things = 50000;
    std::vector<CoarseLink> links;
    for (std::uint32_t i = 0; i + 1 < things; ++i) links.push_back({i, i + 1, 3.0F + static_cast<float>(i)});
    const auto label = *join_by_evidence(things, links, {});
    EXPECT_EQ(label, std::vector<std::uint32_t>(things, 0));
}

TEST(SpaceCurve, VisitsQuarterAfterQuarterAndEqualCellsByPlace) {
    // four squares of 1/16 m cells: south-west, south-east, north-west, north-east
    const std::vector<LocalPoint> places{{0.07, 0.07}, {0.0, 0.07}, {0.07, 0.0}, {0.01, 0.0}, {0.0, 0.0}};
    EXPECT_EQ(order_along_curve(places), (std::vector<std::uint32_t>{4, 3, 2, 1, 0}));
    EXPECT_TRUE(order_along_curve({}).empty());
}

}  // namespace
}  // namespace plugside
