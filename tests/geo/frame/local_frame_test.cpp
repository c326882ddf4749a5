#include "geo/frame/local_frame.h"

#include <geodesic.h>
#include <gtest/gtest.h>

#include <atomic>
#include <cmath>
#include <random>
#include <sstream>
#include <thread>

#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

// PROJ carries the geodesic routines of GeographicLib as C; they share no code with the transverse Mercator.
double geodesic_m(GeographicPoint a, GeographicPoint b) {
    geod_geodesic earth;
    geod_init(&earth, 6378137.0, 1.0 / 298.257223563);
    double distance = 0.0;
    geod_inverse(&earth, a.latitude_degrees, a.longitude_degrees, b.latitude_degrees, b.longitude_degrees, &distance,
                 nullptr, nullptr);
    return distance;
}

GeographicPoint walked(GeographicPoint from, double azimuth_degrees, double metres) {
    geod_geodesic earth;
    geod_init(&earth, 6378137.0, 1.0 / 298.257223563);
    GeographicPoint to;
    geod_direct(&earth, from.latitude_degrees, from.longitude_degrees, azimuth_degrees, metres, &to.latitude_degrees,
                &to.longitude_degrees, nullptr);
    return to;
}

// Zone edges of UTM lie at multiples of 6 degrees; the others are ordinary, near a pole, and across the 180th meridian.
const std::vector<GeographicPoint> field_centres = {{-120.0, 38.5},   {-119.999, 46.0}, {-96.0, -33.0}, {0.0, 0.0},
                                                    {179.9999, 65.0}, {-180.0, -45.0},  {12.34, 80.0},  {-0.0001, 51.5}};

TEST(LocalFrame, keeps_ground_distances_to_a_millionth_across_ten_kilometres) {
    for (const GeographicPoint& centre : field_centres) {
        const LocalFrame frame = LocalFrame::centred_on(centre);
        std::mt19937_64 random(20250301);
        std::uniform_real_distribution<double> azimuth(0.0, 360.0);
        std::uniform_real_distribution<double> reach(0.0, 5000.0);
        for (int i = 0; i < 200; ++i) {
            const GeographicPoint a = walked(centre, azimuth(random), reach(random));
            const GeographicPoint b = walked(centre, azimuth(random), reach(random));
            const double ground = geodesic_m(a, b);
            EXPECT_NEAR(distance_m(frame.to_local(a), frame.to_local(b)), ground, 1e-6 * ground + 1e-7)
                << "about " << centre.longitude_degrees << ", " << centre.latitude_degrees;
        }
    }
}

TEST(LocalFrame, goes_there_and_back_within_a_hundred_billionth_of_a_degree) {
    for (const GeographicPoint& centre : field_centres) {
        const LocalFrame frame = LocalFrame::centred_on(centre);
        for (const double east : {-5000.0, -1.0, 0.0, 0.001, 4999.0})
            for (const double north : {-5000.0, 0.0, 3.0, 5000.0}) {
                const GeographicPoint place = frame.to_geographic({east, north});
                EXPECT_GE(place.longitude_degrees, -180.0);
                EXPECT_LT(place.longitude_degrees, 180.0);
                const LocalPoint back = frame.to_local(place);
                const GeographicPoint again = frame.to_geographic(back);
                EXPECT_NEAR(std::remainder(again.longitude_degrees - place.longitude_degrees, 360.0), 0.0, 1e-11);
                EXPECT_NEAR(again.latitude_degrees, place.latitude_degrees, 1e-11);
                EXPECT_NEAR(back.east_m, east, 1e-6);
                EXPECT_NEAR(back.north_m, north, 1e-6);
            }
    }
}

// GDA technical manual, Flinders Peak to Buninyong [memory]: 54972.271 m, azimuth 306 52 05.37. The ellipsoid is GRS80
// there and WGS 84 here: they differ by a tenth of a millimetre in the polar radius, which does not show at a millimetre.
TEST(LocalFrame, agrees_with_the_printed_line_from_Flinders_Peak_to_Buninyong) {
    const GeographicPoint flinders{144.0 + 25.0 / 60 + 29.52440 / 3600, -(37.0 + 57.0 / 60 + 3.72030 / 3600)};
    const GeographicPoint buninyong{143.0 + 55.0 / 60 + 35.38390 / 3600, -(37.0 + 39.0 / 60 + 10.15610 / 3600)};
    EXPECT_NEAR(geodesic_m(flinders, buninyong), 54972.271, 0.001);
    const LocalFrame frame = LocalFrame::centred_on(flinders);
    const LocalPoint origin = frame.to_local(flinders);
    EXPECT_NEAR(origin.east_m, 0.0, 1e-8);
    EXPECT_NEAR(origin.north_m, 0.0, 1e-8);
    // x^2 / 6R^2 for x = 44 km is 8e-6: the chord is longer than the ground by at most that share.
    const LocalPoint far = frame.to_local(buninyong);
    EXPECT_NEAR(distance_m(origin, far), 54972.271, 54972.271 * 9e-6);
    const GeographicPoint near = walked(flinders, 306.0 + 52.0 / 60 + 5.37 / 3600, 1000.0);
    const auto bearing = Bearing::along(frame.to_local(near) - origin);
    ASSERT_TRUE(bearing.has_value());
    EXPECT_NEAR(bearing->degrees(), 306.0 + 52.0 / 60 + 5.37 / 3600, 1e-4);
}

// GeographicLib's own 20 GeodTest rows, read at test time from its Python package, which shares no code with PROJ's C: the
// long lines check the geodesics of this test, the short ones the plane, in distance and in bearing.
TEST(LocalFrame, agrees_with_the_lines_of_the_GeodTest_rows) {
    const testing_support::TemporaryFolder folder;
    const int code = testing_support::run(
        "/usr/bin/python3 '" + std::string(PLUGSIDE_SOURCE_DIR) + "/tests/published/geodesic_rows.py'", folder / "rows.txt");
    ASSERT_EQ(code, 0) << testing_support::content_of(folder / "rows.txt");
    std::istringstream rows(testing_support::content_of(folder / "rows.txt"));
    int count = 0;
    double azimuth = 0.0, metres = 0.0, far_metres = 0.0;
    GeographicPoint start, end, far;
    while (rows >> start.longitude_degrees >> start.latitude_degrees >> azimuth >> metres >> end.longitude_degrees >>
           end.latitude_degrees >> far.longitude_degrees >> far.latitude_degrees >> far_metres) {
        ++count;
        SCOPED_TRACE(count);
        EXPECT_NEAR(geodesic_m(start, far), far_metres, 1e-6);
        const LocalFrame frame = LocalFrame::around({start, end});
        const LocalPoint from = frame.to_local(start);
        const LocalPoint to = frame.to_local(end);
        EXPECT_NEAR(distance_m(from, to), metres, 1e-6 * metres);
        const Bearing straight = *Bearing::along(to - from);
        EXPECT_NEAR(turn_degrees(frame.plane_bearing(Bearing::degrees(azimuth), from), straight), 0.0, 2e-4);
    }
    EXPECT_EQ(count, 20);
}

TEST(LocalFrame, turns_bearings_at_the_edge_so_that_true_north_follows_the_meridian) {
    for (const GeographicPoint& centre : field_centres) {
        const LocalFrame frame = LocalFrame::centred_on(centre);
        for (const double east : {-4000.0, 0.0, 4000.0}) {
            const LocalPoint start{east, 100.0};
            const GeographicPoint place = frame.to_geographic(start);
            for (const double azimuth : {0.0, 45.0, 135.0, 300.0}) {
                const auto seen = Bearing::along(frame.to_local(walked(place, azimuth, 10.0)) - start);
                ASSERT_TRUE(seen.has_value());
                const Bearing told = frame.plane_bearing(Bearing::degrees(azimuth), start);
                EXPECT_NEAR(turn_degrees(told, *seen), 0.0, 1e-4);
                EXPECT_NEAR(turn_degrees(frame.true_bearing(told, start), Bearing::degrees(azimuth)), 0.0, 1e-12);
            }
        }
        EXPECT_NEAR(frame.convergence_degrees({0.0, 0.0}), 0.0, 1e-9);
    }
}

TEST(LocalFrame, has_a_convergence_under_a_tenth_of_a_degree_within_five_kilometres_up_to_latitude_60) {
    const LocalFrame frame = LocalFrame::centred_on({10.0, 60.0});
    // 5 km east at latitude 60: 5000 / 6378137 * tan 60 = 0.0778 degrees on a sphere (closed form).
    EXPECT_NEAR(frame.convergence_degrees({5000.0, 0.0}), -0.0778, 0.0005);
    EXPECT_NEAR(frame.convergence_degrees({-5000.0, 0.0}), 0.0778, 0.0005);
}

TEST(LocalFrame, is_centred_on_the_middle_of_the_places_the_short_way_round) {
    const LocalFrame across = LocalFrame::around({{179.9, 10.0}, {-179.8, 10.2}});
    EXPECT_NEAR(across.centre().longitude_degrees, -179.95, 1e-9);
    EXPECT_NEAR(across.centre().latitude_degrees, 10.1, 1e-12);
    const LocalPoint west = across.to_local({179.9, 10.0});
    const LocalPoint east = across.to_local({-179.8, 10.2});
    EXPECT_LT(west.east_m, 0.0);
    EXPECT_GT(east.east_m, 0.0);
    EXPECT_LT(distance_m(west, east), 50000.0);

    const LocalFrame plain = LocalFrame::around({{10.0, 50.0}, {10.2, 50.1}, {10.1, 50.3}});
    EXPECT_NEAR(plain.centre().longitude_degrees, 10.1, 1e-9);
    EXPECT_NEAR(plain.centre().latitude_degrees, 50.15, 1e-9);
    EXPECT_EQ(LocalFrame::around({}).centre(), (GeographicPoint{0.0, 0.0}));
    EXPECT_EQ(LocalFrame::around({{5.0, 6.0}, {5.0, 6.0}}).centre(), (GeographicPoint{5.0, 6.0}));
}

TEST(LocalFrame, is_held_off_the_poles) {
    EXPECT_EQ(LocalFrame::centred_on({20.0, 90.0}).centre().latitude_degrees, 89.9);
    EXPECT_EQ(LocalFrame::centred_on({20.0, -89.95}).centre().latitude_degrees, -89.9);
}

TEST(LocalFrame, is_a_value_that_copies_and_moves) {
    LocalFrame frame = LocalFrame::centred_on({-120.5, 38.0});
    const LocalFrame copy = frame;
    frame = LocalFrame::centred_on({0.0, 0.0});
    EXPECT_EQ(copy.centre(), (GeographicPoint{-120.5, 38.0}));
    LocalFrame moved = std::move(frame);
    EXPECT_EQ(moved.centre(), (GeographicPoint{0.0, 0.0}));
    moved = copy;
    EXPECT_EQ(moved.to_local({-120.5, 38.001}), copy.to_local({-120.5, 38.001}));
}

// The window shows places of a field while work beside it writes or reads on the same one.
TEST(LocalFrame, gives_several_threads_at_once_what_it_gives_one) {
    const LocalFrame expected = LocalFrame::centred_on({-120.5, 38.0});
    const auto place = [](int thread, int step) { return LocalPoint{10.0 * step, 500.0 * thread - 7.0 * step}; };
    for (int round = 0; round < 20; ++round) {
        const LocalFrame shared = LocalFrame::centred_on({-120.5, 38.0});
        std::atomic<int> wrong = 0;
        {
            std::vector<std::jthread> threads;
            for (int thread = 0; thread < 4; ++thread)
                threads.emplace_back([&, thread, own = expected] {
                    for (int step = 0; step < 200; ++step) {
                        const LocalPoint at = place(thread, step);
                        const bool same = shared.convergence_degrees(at) == own.convergence_degrees(at) &&
                                          shared.to_geographic(at) == own.to_geographic(at) &&
                                          shared.to_local(own.to_geographic(at)) == own.to_local(own.to_geographic(at));
                        if (!same) ++wrong;
                    }
                });
        }
        EXPECT_EQ(wrong, 0);
    }
}

}  // namespace
}  // namespace plugside
