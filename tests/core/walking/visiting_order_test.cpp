#include "core/walking/visiting_order.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <numeric>
#include <random>
#include <sstream>
#include <string>

#include "core/walking/walking_ways.h"
#include "tests/core/walking/walking_fields.h"

namespace plugside {
namespace {

using Order = std::vector<std::size_t>;

std::vector<LocalPoint> scattered(std::size_t count, std::uint64_t seed, double side = 500.0) {
    std::mt19937_64 random(seed);
    std::uniform_real_distribution<double> anywhere(0.0, side);
    std::vector<LocalPoint> places(count);
    for (LocalPoint& p : places) p = {anywhere(random), anywhere(random)};
    return places;
}

void expect_permutation(Order order, std::size_t count) {
    std::sort(order.begin(), order.end());
    Order all(count);
    std::iota(all.begin(), all.end(), std::size_t{0});
    EXPECT_EQ(order, all);
}

// A published problem in TSPLIB's format (Reinelt 1991), as far as the four problems here use it.
struct PublishedProblem {
    std::size_t count = 0;
    std::vector<LocalPoint> coordinates;     // as printed: first number east, second north
    std::vector<std::vector<long>> lengths;  // whole numbers, as the published optima count them
};

std::vector<std::vector<long>> lower_triangle(const std::vector<long>& weights, std::size_t count) {
    std::vector<std::vector<long>> lengths(count, std::vector<long>(count));
    std::size_t k = 0;
    for (std::size_t i = 0; i < count; ++i)
        for (std::size_t j = 0; j <= i; ++j) lengths[i][j] = lengths[j][i] = weights.at(k++);
    return lengths;
}

// TSPLIB 95, section 2.4: degrees and minutes as DDD.MM, a sphere of 6378.388 km, pi = 3.141592.
long geographical_length(LocalPoint a, LocalPoint b) {
    const auto radians = [](double x) {
        const double degrees = std::trunc(x);
        return 3.141592 * (degrees + 5.0 * (x - degrees) / 3.0) / 180.0;
    };
    const double q1 = std::cos(radians(a.north_m) - radians(b.north_m));
    const double q2 = std::cos(radians(a.east_m) - radians(b.east_m));
    const double q3 = std::cos(radians(a.east_m) + radians(b.east_m));
    return static_cast<long>(6378.388 * std::acos(0.5 * ((1.0 + q1) * q2 - (1.0 - q1) * q3)) + 1.0);
}

PublishedProblem published(const std::string& file) {
    PublishedProblem problem;
    std::ifstream stream(file);
    EXPECT_TRUE(stream) << file << " is missing: it comes with a package of cmake/packages.txt";
    std::vector<long> weights;
    std::string kind;
    for (std::string line; std::getline(stream, line);) {
        std::string key = line.substr(0, line.find_first_of(": \r"));
        std::string value = line.substr(std::min(line.size(), line.find(':') + 1));
        if (key == "DIMENSION") problem.count = std::stoul(value);
        if (key == "EDGE_WEIGHT_TYPE") kind = value.substr(value.find_first_not_of(' '));
        if (key == "EDGE_WEIGHT_SECTION") {
            weights.resize(problem.count * (problem.count + 1) / 2);
            for (long& weight : weights) stream >> weight;
        }
        if (key == "NODE_COORD_SECTION" || key == "DISPLAY_DATA_SECTION") {
            problem.coordinates.resize(problem.count);
            for (LocalPoint& p : problem.coordinates) {
                std::size_t number = 0;
                stream >> number >> p.east_m >> p.north_m;
            }
        }
    }
    if (!weights.empty()) {
        problem.lengths = lower_triangle(weights, problem.count);
        return problem;
    }
    const bool on_a_plane = kind.rfind("EUC_2D", 0) == 0;
    problem.lengths.assign(problem.count, std::vector<long>(problem.count, 0));
    for (std::size_t i = 0; i < problem.count; ++i)
        for (std::size_t j = 0; j < problem.count; ++j) {
            const LocalPoint a = problem.coordinates[i];
            const LocalPoint b = problem.coordinates[j];
            if (i != j) problem.lengths[i][j] = on_a_plane ? std::lround(distance_m(a, b)) : geographical_length(a, b);
        }
    return problem;
}

long published_length(const PublishedProblem& problem, const Order& order) {
    long sum = 0;
    for (std::size_t i = 0; i < order.size(); ++i) sum += problem.lengths[order[i]][order[(i + 1) % order.size()]];
    return sum;
}

Order order_by_published_lengths(const PublishedProblem& problem, std::uint64_t key) {
    VisitingOptions options;
    options.key = key;
    const DistanceBetween length = [&](std::size_t a, std::size_t b) {
        return Metres::of(static_cast<double>(problem.lengths[a][b]));
    };
    return visiting_order(problem.count, length, options);
}

// Optima of TSPLIB (Reinelt 1991, ORSA Journal on Computing 3:376-384). berlin52's last place is from memory; its optimum
// fits.
TEST(VisitingOrder, stays_within_two_percent_of_the_published_optima_over_twenty_keys_and_never_below) {
    const std::string examples = "/usr/share/doc/glpk-utils/examples/tsp/";
    const std::vector<std::pair<std::string, long>> optima{{PLUGSIDE_SOURCE_DIR "/tests/published/berlin52.tsp", 7542},
                                                           {examples + "dantzig42.tsp", 699},
                                                           {examples + "gr120.tsp", 6942},
                                                           {examples + "ulysses16.tsp", 6859},
                                                           {examples + "ulysses22.tsp", 7013}};
    for (const auto& [file, optimum] : optima) {
        const PublishedProblem problem = published(file);
        ASSERT_GT(problem.count, 0U) << file;
        constexpr int keys = 20;
        long sum = 0;
        for (int key = 0; key < keys; ++key) {
            const Order order = order_by_published_lengths(problem, static_cast<std::uint64_t>(key));
            expect_permutation(order, problem.count);
            const long length = published_length(problem, order);
            EXPECT_GE(length, optimum) << file << ", key " << key;
            sum += length;
        }
        const double over = static_cast<double>(sum) / (keys * static_cast<double>(optimum)) - 1.0;
        RecordProperty(file.substr(file.rfind('/') + 1), std::to_string(100.0 * over) + " % over");
        EXPECT_LE(over, 0.02) << file;
    }
}

TEST(VisitingOrder, finds_a_way_within_two_percent_for_the_places_of_berlin_as_they_lie) {
    const PublishedProblem problem = published(PLUGSIDE_SOURCE_DIR "/tests/published/berlin52.tsp");
    const long length = published_length(problem, visiting_order(problem.coordinates));
    EXPECT_GE(length, 7542);
    EXPECT_LE(static_cast<double>(length), 1.02 * 7542.0);
}

// Held & Karp's exact recurrence over subsets, for the open way from a start.
double exact_open_way(const std::vector<LocalPoint>& places, LocalPoint start) {
    const std::size_t n = places.size();
    std::vector<std::vector<double>> best(std::size_t{1} << n, std::vector<double>(n, INFINITY));
    for (std::size_t i = 0; i < n; ++i) best[std::size_t{1} << i][i] = distance_m(start, places[i]);
    for (std::size_t seen = 1; seen < best.size(); ++seen)
        for (std::size_t i = 0; i < n; ++i)
            for (std::size_t j = 0; j < n && std::isfinite(best[seen][i]); ++j) {
                if ((seen >> j & 1U) != 0U) continue;
                double& longer = best[seen | std::size_t{1} << j][j];
                longer = std::min(longer, best[seen][i] + distance_m(places[i], places[j]));
            }
    return *std::min_element(best.back().begin(), best.back().end());
}

TEST(VisitingOrder, an_open_way_past_ten_places_is_close_to_the_exact_one) {
    double sum_found = 0.0;
    double sum_exact = 0.0;
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
        const std::vector<LocalPoint> places = scattered(10, seed);
        VisitingOptions options;
        options.start = LocalPoint{0, 0};
        const Order order = visiting_order(places, options);
        expect_permutation(order, places.size());
        const double found = tour_length(places, order, options).value();
        const double exact = exact_open_way(places, *options.start);
        EXPECT_GE(found, exact - 1e-9) << "seed " << seed;
        EXPECT_LE(found, 1.05 * exact) << "seed " << seed;
        sum_found += found;
        sum_exact += exact;
    }
    EXPECT_LE(sum_found, 1.01 * sum_exact);
}

TEST(VisitingOrder, few_places_are_each_visited_once) {
    for (std::size_t count = 0; count <= 9; ++count) {
        const std::vector<LocalPoint> places = scattered(count, 40 + count);
        expect_permutation(visiting_order(places), count);
        VisitingOptions options;
        options.start = LocalPoint{-10, 3};
        expect_permutation(visiting_order(places, options), count);
        const Order by_function = visiting_order(
            count, [&](std::size_t a, std::size_t b) { return Metres::of(distance_m(places[a], places[b])); });
        expect_permutation(by_function, count);
    }
}

TEST(VisitingOrder, places_on_one_spot_are_each_visited_once) {
    const std::vector<LocalPoint> same(40, LocalPoint{3, 4});
    expect_permutation(visiting_order(same), 40);
    EXPECT_EQ(tour_length(same, visiting_order(same)).value(), 0.0);
    std::vector<LocalPoint> mixed = scattered(30, 5);
    mixed.insert(mixed.end(), 30, LocalPoint{100, 100});
    expect_permutation(visiting_order(mixed), 60);
}

TEST(VisitingOrder, places_on_one_line_are_walked_along_it) {
    std::vector<LocalPoint> row;
    for (const int i : {4, 0, 7, 2, 9, 1, 3, 8, 5, 6}) row.push_back({2.0 * i, 1.0 * i});
    VisitingOptions options;
    options.start = LocalPoint{-2, -1};
    const Order order = visiting_order(row, options);
    for (std::size_t i = 1; i < order.size(); ++i) EXPECT_LT(row[order[i - 1]].east_m, row[order[i]].east_m);
    EXPECT_NEAR(tour_length(row, visiting_order(row)).value(), 2.0 * std::hypot(18.0, 9.0), 1e-9);
}

TEST(VisitingOrder, is_the_same_way_when_the_places_are_renumbered_moved_and_turned) {
    const std::vector<LocalPoint> places = scattered(80, 12);
    Order numbers(places.size());
    std::iota(numbers.begin(), numbers.end(), std::size_t{0});
    std::shuffle(numbers.begin(), numbers.end(), std::mt19937_64(3));
    std::vector<LocalPoint> others;
    for (const std::size_t i : numbers) {
        const LocalPoint p = places[i];
        others.push_back({0.6 * p.east_m - 0.8 * p.north_m + 71.0, 0.8 * p.east_m + 0.6 * p.north_m - 30.0});
    }
    Order renumbered;
    for (const std::size_t i : visiting_order(others)) renumbered.push_back(numbers[i]);
    EXPECT_EQ(renumbered, visiting_order(places));
}

TEST(VisitingOrder, long_ways_are_near_the_length_expected_of_the_shortest) {
    const std::vector<LocalPoint> places = scattered(5000, 21);
    const Order order = visiting_order(places);
    expect_permutation(order, places.size());
    // Random uniform places: the shortest tour tends to .7124 sqrt(n A) (Johnson & McGeoch 1997 [memory]), a little more for
    // the edge.
    const double expected = 0.7124 * std::sqrt(5000.0 * 500.0 * 500.0) * (1.0 + 0.33 / std::sqrt(5000.0));
    EXPECT_LT(tour_length(places, order).value(), 1.03 * expected);
    EXPECT_GT(tour_length(places, order).value(), 0.97 * expected);
}

TEST(VisitingOrder, never_uses_more_moves_than_it_is_granted) {
    const std::vector<LocalPoint> places = scattered(300, 9);
    VisitingOptions none;
    none.most_moves = 0;
    VisitingOptions some;
    some.most_moves = 500;
    const double without = tour_length(places, visiting_order(places, none)).value();
    const double with_some = tour_length(places, visiting_order(places, some)).value();
    const double with_all = tour_length(places, visiting_order(places)).value();
    EXPECT_LT(with_some, without);
    EXPECT_LT(with_all, with_some);
}

TEST(VisitingOrder, tells_ever_shorter_orders_from_the_first_on_and_ends_with_the_shortest) {
    const std::vector<LocalPoint> places = scattered(300, 9);
    for (const bool from_the_end : {false, true}) {
        VisitingOptions options;
        (from_the_end ? options.end : options.start) = LocalPoint{0, 0};
        std::vector<double> told;
        options.better = [&](const Order& order) {
            expect_permutation(order, places.size());
            told.push_back(tour_length(places, order, options).value());
        };
        const Order order = visiting_order(places, options);
        ASSERT_GT(told.size(), 3U);
        for (std::size_t i = 1; i < told.size(); ++i) EXPECT_LT(told[i], told[i - 1]);
        EXPECT_LE(tour_length(places, order, options).value(), told.back());
    }
}

TEST(VisitingOrder, ends_with_what_it_has_when_it_is_stopped) {
    const std::vector<LocalPoint> places = scattered(300, 9);
    std::stop_source source;
    VisitingOptions options;
    options.stop = source.get_token();
    Order told;
    options.better = [&](const Order& order) {
        told = order;
        source.request_stop();
    };
    EXPECT_EQ(visiting_order(places, options), told);
}

// Every order of few places.
double shortest_by_all_orders(const std::vector<LocalPoint>& places, const VisitingOptions& options) {
    Order order(places.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    double best = INFINITY;
    do best = std::min(best, tour_length(places, order, options).value());
    while (std::next_permutation(order.begin(), order.end()));
    return best;
}

TEST(VisitingOrder, is_the_best_of_all_orders_of_six_places_among_barriers_from_a_start_to_an_end) {
    double sum_found = 0.0;
    double sum_best = 0.0;
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        std::mt19937_64 random(seed);
        Ground ground;
        ground.barriers = test::random_barriers(8, 100.0, random);
        const WalkingWays ways(ground);
        const std::vector<LocalPoint> places = test::random_places(6, 100.0, random);
        VisitingOptions options;
        options.ways = &ways;
        if (seed % 4 != 0) options.start = LocalPoint{-1, -1};
        if (seed % 4 == 1) options.end = options.start;
        if (seed % 4 == 2) options.end = LocalPoint{101, 50};
        if (!cut_off_places(places, options).empty()) continue;
        const Order order = visiting_order(places, options);
        expect_permutation(order, places.size());
        const double found = tour_length(places, order, options).value();
        const double best = shortest_by_all_orders(places, options);
        EXPECT_GE(found, best - 1e-9) << "seed " << seed;
        EXPECT_LE(found, 1.03 * best + 1e-9) << "seed " << seed;
        sum_found += found;
        sum_best += best;
    }
    EXPECT_GT(sum_best, 3000.0);
    EXPECT_LE(sum_found, 1.002 * sum_best);
}

TEST(VisitingOrder, a_ditch_keeps_the_two_sides_apart_and_a_gate_joins_them) {
    Ground ground;
    ground.barriers = {{"ditch", {{{0, -1000}, {0, 1000}}}}};
    ground.gates = {{"plank", {0, 0}, Metres::of(2.0)}};
    const WalkingWays ways(ground);
    std::vector<LocalPoint> places;
    for (int i = 0; i < 12; ++i) places.push_back({i % 2 == 0 ? -1.0 : 1.0, 10.0 + 5.0 * i});
    VisitingOptions options;
    options.ways = &ways;
    options.start = LocalPoint{-5, 0};
    options.end = LocalPoint{5, 0};
    const Order order = visiting_order(places, options);
    int changes = 0;
    for (std::size_t i = 1; i < order.size(); ++i) changes += order[i] % 2 == order[i - 1] % 2 ? 0 : 1;
    EXPECT_EQ(changes, 1);
    EXPECT_TRUE(cut_off_places(places, options).empty());
}

TEST(VisitingOrder, places_that_no_way_joins_are_visited_in_one_stretch_and_named) {
    Ground ground;
    ground.barriers = {{"wall", {{{40, -10}, {40, 110}}}}};
    ground.boundary.parts = {{{{{0, 0}, {100, 0}, {100, 100}, {0, 100}}}, {}}};
    const WalkingWays ways(ground);
    const std::vector<LocalPoint> places = scattered(60, 4, 100.0);
    VisitingOptions options;
    options.ways = &ways;
    const auto west = [&](std::size_t i) { return places[i].east_m < 40.0; };
    Order in_the_west;
    for (std::size_t i = 0; i < places.size(); ++i)
        if (west(i)) in_the_west.push_back(i);
    EXPECT_EQ(cut_off_places(places, options), in_the_west) << "fewer than in the east";
    const Order round = visiting_order(places, options);
    int changes = 0;
    for (std::size_t i = 0; i < round.size(); ++i) changes += west(round[i]) == west(round[(i + 1) % round.size()]) ? 0 : 1;
    EXPECT_EQ(changes, 2);
    options.start = LocalPoint{1, 1};
    EXPECT_EQ(cut_off_places(places, options).size(), places.size() - in_the_west.size());
    const Order order = visiting_order(places, options);
    expect_permutation(order, places.size());
    for (std::size_t i = 0; i < in_the_west.size(); ++i) EXPECT_TRUE(west(order[i]));
}

TEST(VisitingOrder, among_barriers_is_the_same_when_the_field_is_renumbered_moved_and_turned) {
    std::mt19937_64 random(6);
    Ground ground;
    ground.barriers = test::random_barriers(12, 500.0, random);
    const std::vector<LocalPoint> places = scattered(80, 12);
    const auto elsewhere = [](LocalPoint p) {
        return LocalPoint{0.6 * p.east_m - 0.8 * p.north_m + 71.0, 0.8 * p.east_m + 0.6 * p.north_m - 30.0};
    };
    Ground moved = ground;
    for (Barrier& barrier : moved.barriers)
        for (LocalPoint& vertex : barrier.line.vertices) vertex = elsewhere(vertex);
    std::vector<LocalPoint> others;
    for (std::size_t i = places.size(); i-- > 0;) others.push_back(elsewhere(places[i]));
    const WalkingWays here(ground);
    const WalkingWays there(moved);
    VisitingOptions options;
    options.ways = &here;
    const Order order = visiting_order(places, options);
    options.ways = &there;
    Order renumbered;
    for (const std::size_t i : visiting_order(others, options)) renumbered.push_back(places.size() - 1 - i);
    EXPECT_EQ(renumbered, order);
}

TEST(VisitingOrder, a_start_on_a_barrier_and_places_on_one_spot_on_it_do_no_harm) {
    Ground ground;
    ground.barriers = {{"ditch", {{{0, 0}, {100, 0}}}}};
    const WalkingWays ways(ground);
    VisitingOptions options;
    options.ways = &ways;
    options.start = LocalPoint{50, 0};
    std::vector<LocalPoint> places = scattered(30, 3, 100.0);
    places.insert(places.end(), 5, LocalPoint{20, 0});
    expect_permutation(visiting_order(places, options), places.size());
    EXPECT_TRUE(cut_off_places(places, options).empty());
    for (std::size_t count = 0; count < 4; ++count)
        expect_permutation(visiting_order(std::vector<LocalPoint>(count, LocalPoint{50, 0}), options), count);
}

}  // namespace
}  // namespace plugside
