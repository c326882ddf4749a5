#include "core/systems/neighbour_graph.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/geometry/near_places.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

std::vector<Mark> simulated_marks(std::uint64_t seed, std::size_t mounds) {
    return marks_of(test::simulated_survey(seed, mounds), {});
}

TEST(NeighbourGraph, HasThePairsThatBruteForceFinds) {
    const std::vector<Mark> marks = simulated_marks(4, 120);
    const NeighbourGraphOptions options{.nearest = 5, .reach = Metres::of(12.0)};
    std::vector<std::pair<std::uint32_t, std::uint32_t>> wanted;
    for (std::uint32_t i = 0; i < marks.size(); ++i) {
        std::vector<std::pair<double, std::uint32_t>> others;
        for (std::uint32_t j = 0; j < marks.size(); ++j)
            if (j != i) others.emplace_back(distance_m(marks[i].take_off, marks[j].take_off), j);
        std::sort(others.begin(), others.end());
        for (std::size_t k = 0; k < 5 && k < others.size(); ++k)
            if (others[k].first <= 12.0) wanted.emplace_back(std::min(i, others[k].second), std::max(i, others[k].second));
    }
    std::sort(wanted.begin(), wanted.end());
    wanted.erase(std::unique(wanted.begin(), wanted.end()), wanted.end());
    std::vector<std::pair<std::uint32_t, std::uint32_t>> got;
    for (const Link& link : candidate_links(marks, {}, options)) {
        got.emplace_back(link.first, link.second);
        EXPECT_NEAR(link.length_m, distance_m(marks[link.first].take_off, marks[link.second].take_off), 1e-12);
    }
    EXPECT_EQ(got, wanted);
}

TEST(NeighbourGraph, NoLinkCrossesABarrier) {
    const std::vector<Mark> marks = simulated_marks(9, 150);
    const Barrier ditch{"ditch", {{marks[10].plug, marks[70].plug, marks[100].plug}}};
    std::size_t left_out = candidate_links(marks, {}).size();
    for (const Link& link : candidate_links(marks, {ditch})) {
        --left_out;
        for (std::size_t i = 1; i < ditch.line.vertices.size(); ++i)
            EXPECT_FALSE(segments_meet(marks[link.first].plug, marks[link.second].plug, ditch.line.vertices[i - 1],
                                       ditch.line.vertices[i]));
    }
    EXPECT_GT(left_out, 0U);
}

TEST(NeighbourGraph, FewAndCoincidentMarksAreNoSpecialTrouble) {
    EXPECT_TRUE(candidate_links({}, {}).empty());
    EXPECT_TRUE(candidate_links(marks_of(test::survey_of({test::mound_at(1, 1)}), {}), {}).empty());
    const std::vector<Mark> heap = marks_of(test::survey_of(std::vector<Mound>(30, test::mound_at(2, 3))), {});
    ASSERT_EQ(heap.size(), 30U);
    for (const Link& link : candidate_links(heap, {})) EXPECT_EQ(link.length_m, 0.0);
    std::vector<std::uint64_t> keys;
    for (const Mark& mark : heap) keys.push_back(mark.key);
    std::sort(keys.begin(), keys.end());
    EXPECT_EQ(std::unique(keys.begin(), keys.end()), keys.end()) << "coincident marks draw their own numbers";
}

TEST(NearPlaces, FindsWhatBruteForceFinds) {
    std::vector<LocalPoint> places;
    for (const Mark& mark : simulated_marks(6, 200)) places.push_back(mark.plug);
    places.push_back(places.front());
    const NearPlaces near(places);
    for (const LocalPoint from : {places[0], places[50], LocalPoint{-3.0, 7.5}}) {
        std::vector<NearPlaces::Found> all;
        for (std::size_t i = 0; i < places.size(); ++i) all.push_back({i, distance_m(from, places[i])});
        std::sort(all.begin(), all.end(), [](const auto& a, const auto& b) {
            return a.distance_m != b.distance_m ? a.distance_m < b.distance_m : a.index < b.index;
        });
        const auto nearest = near.nearest(from, 9);
        ASSERT_EQ(nearest.size(), 9U);
        for (std::size_t k = 0; k < 9; ++k) EXPECT_NEAR(nearest[k].distance_m, all[k].distance_m, 1e-9);
        const auto within = near.within(from, 6.0);
        const auto count = std::count_if(all.begin(), all.end(), [](const auto& found) { return found.distance_m <= 6.0; });
        EXPECT_EQ(static_cast<std::ptrdiff_t>(within.size()), count);
    }
    EXPECT_TRUE(NearPlaces({}).nearest({0, 0}, 3).empty());
    EXPECT_TRUE(NearPlaces({}).within({0, 0}, 3.0).empty());
}

}  // namespace
}  // namespace plugside
