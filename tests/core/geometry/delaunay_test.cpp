#include "core/geometry/delaunay.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>
#include <set>

namespace plugside {
namespace {

using Edge = std::array<std::size_t, 2>;

std::vector<LocalPoint> scattered(std::size_t count, std::uint64_t seed) {
    std::mt19937_64 random(seed);
    std::uniform_real_distribution<double> anywhere(-200.0, 200.0);
    std::vector<LocalPoint> places(count);
    for (LocalPoint& p : places) p = {anywhere(random), anywhere(random)};
    return places;
}

// Empty-circle rule by brute force: i and j are neighbours if some circle through both holds no other place.
bool neighbours_by_brute_force(const std::vector<LocalPoint>& places, std::size_t i, std::size_t j) {
    // Centres are m + t * n along the bisector; every other place k forbids a half line of t.
    const LocalPoint m = midpoint(places[i], places[j]);
    const LocalVector n = turned_right(places[j] - places[i]);
    const double half_squared = 0.25 * dot(n, n);
    double low = -INFINITY;
    double high = INFINITY;
    for (std::size_t k = 0; k < places.size(); ++k) {
        if (k == i || k == j) continue;
        const LocalVector q = places[k] - m;
        const double side = dot(q, n);
        const double t = (dot(q, q) - half_squared) / (2.0 * side);
        if (side > 0.0) high = std::min(high, t);
        if (side < 0.0) low = std::max(low, t);
    }
    return low < high;
}

bool is_connected(std::size_t count, const std::vector<Edge>& edges) {
    std::vector<std::size_t> component(count);
    std::iota(component.begin(), component.end(), std::size_t{0});
    for (std::size_t round = 0; round < count; ++round)
        for (const auto& [i, j] : edges) component[i] = component[j] = std::min(component[i], component[j]);
    return std::all_of(component.begin(), component.end(), [](std::size_t c) { return c == 0; });
}

TEST(Delaunay, edges_are_those_of_the_empty_circle_rule) {
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        const std::vector<LocalPoint> places = scattered(4 + 5 * seed, seed);
        std::vector<Edge> expected;
        for (std::size_t i = 0; i < places.size(); ++i)
            for (std::size_t j = i + 1; j < places.size(); ++j)
                if (neighbours_by_brute_force(places, i, j)) expected.push_back({i, j});
        EXPECT_EQ(delaunay_edges(places), expected) << "seed " << seed;
    }
}

TEST(Delaunay, no_place_and_one_place_have_no_edge_and_two_have_one) {
    EXPECT_TRUE(delaunay_edges({}).empty());
    EXPECT_TRUE(delaunay_edges({{3, 4}}).empty());
    EXPECT_EQ(delaunay_edges({{3, 4}, {1, 1}}), (std::vector<Edge>{{0, 1}}));
}

TEST(Delaunay, places_on_one_spot_are_linked_to_one_another) {
    EXPECT_EQ(delaunay_edges({{3, 4}, {3, 4}, {3, 4}}), (std::vector<Edge>{{0, 1}, {1, 2}}));
    const std::vector<LocalPoint> places{{0, 0}, {10, 0}, {0, 10}, {10, 0}};
    EXPECT_EQ(delaunay_edges(places), (std::vector<Edge>{{0, 1}, {0, 2}, {1, 2}, {1, 3}}));
}

TEST(Delaunay, places_on_one_line_are_linked_along_it) {
    const std::vector<LocalPoint> level{{5, 2}, {1, 2}, {9, 2}, {3, 2}};
    EXPECT_EQ(delaunay_edges(level), (std::vector<Edge>{{0, 2}, {0, 3}, {1, 3}}));
    const std::vector<LocalPoint> upright{{2, 5}, {2, 1}, {2, 9}, {2, 3}};
    EXPECT_EQ(delaunay_edges(upright), (std::vector<Edge>{{0, 2}, {0, 3}, {1, 3}}));
    const std::vector<LocalPoint> oblique{{1, 2}, {2, 4}, {4, 8}, {3, 6}};
    EXPECT_EQ(delaunay_edges(oblique), (std::vector<Edge>{{0, 1}, {1, 3}, {2, 3}}));
}

TEST(Delaunay, nearly_collinear_places_are_all_joined) {
    for (const double wobble : {1e-3, 1e-6, 1e-9, 1e-12, 1e-15}) {
        std::mt19937_64 random(77);
        std::uniform_real_distribution<double> off(-wobble, wobble);
        std::vector<LocalPoint> places;
        for (int i = 0; i < 200; ++i) places.push_back({1.1 * i + off(random), 0.3 * i + off(random)});
        const std::vector<Edge> edges = delaunay_edges(places);
        EXPECT_TRUE(is_connected(places.size(), edges)) << "wobble " << wobble;
        EXPECT_LE(edges.size(), 3 * places.size()) << "wobble " << wobble;
        for (std::size_t i = 1; i < places.size(); ++i) {
            const bool linked = std::binary_search(edges.begin(), edges.end(), Edge{i - 1, i});
            EXPECT_TRUE(linked) << "wobble " << wobble << ", place " << i;
        }
    }
}

// On a lattice every square has four corners on one circle: either diagonal will do, but one of them is there.
TEST(Delaunay, a_lattice_has_its_sides_and_one_diagonal_a_square) {
    std::vector<LocalPoint> places;
    for (int row = 0; row < 10; ++row)
        for (int column = 0; column < 10; ++column) places.push_back({4.0 * column, 4.0 * row});
    const std::vector<Edge> edges = delaunay_edges(places);
    EXPECT_EQ(edges.size(), 90U + 90U + 81U);
    EXPECT_TRUE(is_connected(places.size(), edges));
}

// Euler: a triangulation of n places of which h lie on the hull has 3n - 3 - h edges.
TEST(Delaunay, twenty_thousand_places_obey_eulers_formula_within_a_percent) {
    const std::vector<LocalPoint> places = scattered(20000, 99);
    const std::vector<Edge> edges = delaunay_edges(places);
    EXPECT_LE(edges.size(), 3 * places.size() - 6);
    EXPECT_GE(edges.size(), 3 * places.size() - 3 - 100);
}

}  // namespace
}  // namespace plugside
