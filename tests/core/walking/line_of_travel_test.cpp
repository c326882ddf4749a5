#include "core/walking/line_of_travel.h"

#include <gtest/gtest.h>

#include <chrono>

namespace plugside {
namespace {

UtcTime at_second(double s) { return UtcTime{std::chrono::milliseconds{static_cast<long>(s * 1000.0)}}; }

// Walks through the places at a metre a second with a fix every second; stays at each mark for ten.
struct Walker {
    Walk walk{"walk 1", "walk.gpx", {{}}};
    std::vector<MarkOnWalk> marks;
    LocalPoint here;
    double clock = 0.0;

    explicit Walker(LocalPoint from) : here(from) { fix(); }
    void fix() { walk.segments[0].push_back({here, at_second(clock)}); }
    Walker& to(LocalPoint place) {
        const LocalPoint from = here;
        const double length = distance_m(from, place);
        for (double m = 1.0; m < length; m += 1.0) {
            here = from + (place - from) * (m / length);
            clock += 1.0;
            fix();
        }
        clock += 1.0;
        here = place;
        fix();
        return *this;
    }
    Walker& mark() {
        marks.push_back({here, at_second(clock)});
        for (int i = 0; i < 10; ++i) {
            clock += 1.0;
            fix();
        }
        return *this;
    }
    [[nodiscard]] LineOfTravel line() const { return line_of_travel(searched_track(walk), marks); }
};

TEST(LineOfTravel, takes_square_detours_out_and_measures_from_the_line) {
    Walker walker({0, 0});
    walker.to({10, 0}).to({10, 3}).mark().to({10, 0}).to({25, 0}).to({25, -4}).mark().to({25, 0}).to({50, 0});
    const LineOfTravel line = walker.line();
    ASSERT_EQ(line.pieces.size(), 1U);
    EXPECT_NEAR(length(line.pieces[0].line).value(), 50.0, 0.5);
    ASSERT_EQ(line.marks.size(), 2U);
    EXPECT_NEAR(line.marks[0].distance.value(), 3.0, 0.1);
    EXPECT_NEAR(line.marks[1].distance.value(), 4.0, 0.1);
    EXPECT_FALSE(line.marks[1].followed);
}

TEST(LineOfTravel, takes_slanted_detours_out) {
    Walker walker({0, 0});
    walker.to({10, 0}).to({14, 3}).mark().to({18, 0}).to({30, 0}).to({33, 2}).mark().to({36, 0}).to({50, 0});
    const LineOfTravel line = walker.line();
    EXPECT_NEAR(length(line.pieces[0].line).value(), 50.0, 0.5);
    EXPECT_NEAR(line.marks[0].distance.value(), 3.0, 0.2);
    EXPECT_NEAR(line.marks[1].distance.value(), 2.0, 0.2);
}

TEST(LineOfTravel, keeps_the_turn_at_a_lines_end_with_marks_beside_it) {
    Walker walker({0, 0});
    walker.to({30, 0})
        .to({30, 1.5})
        .mark()
        .to({30, 0})
        .to({40, 0})
        .to({40, 8})
        .to({32, 8})
        .to({32, 7})
        .mark()
        .to({32, 8})
        .to({0, 8});
    const LineOfTravel line = walker.line();
    EXPECT_NEAR(length(line.pieces[0].line).value(), 40.0 + 8.0 + 40.0, 2.5);
    EXPECT_NEAR(line.marks[0].distance.value(), 1.5, 0.2);
    EXPECT_NEAR(line.marks[1].distance.value(), 1.0, 0.2);
}

TEST(LineOfTravel, tells_who_goes_from_mark_to_mark) {
    Walker follows({0, 0});
    follows.to({10, 0}).to({10, 5}).mark().to({13, 5}).mark().to({16, 5}).mark().to({16, 0}).to({40, 0});
    const LineOfTravel followed = follows.line();
    ASSERT_EQ(followed.marks.size(), 3U);
    EXPECT_FALSE(followed.marks[0].followed);
    EXPECT_TRUE(followed.marks[1].followed);
    EXPECT_TRUE(followed.marks[2].followed);
    Walker returns({0, 0});
    for (const double east : {10.0, 13.0, 16.0}) returns.to({east, 0}).to({east, 5}).mark().to({east, 0});
    returns.to({40, 0});
    for (const MarkBesideLine& mark : returns.line().marks) EXPECT_FALSE(mark.followed);
}

TEST(LineOfTravel, without_times_marks_belong_to_the_nearest_place_of_the_track) {
    Walker walker({0, 0});
    walker.to({10, 0}).to({10, 3}).mark().to({10, 0}).to({30, 0});
    for (TrackPoint& point : walker.walk.segments[0]) point.time.reset();
    walker.marks[0].time.reset();
    walker.marks.push_back({{15, 40}, {}});  // far off the track: belongs to none
    const LineOfTravel line = walker.line();
    ASSERT_EQ(line.marks.size(), 1U);
    EXPECT_NEAR(line.marks[0].distance.value(), 3.0, 0.1);
}

TEST(LineOfTravel, of_nothing_is_nothing_and_without_marks_is_the_track) {
    EXPECT_TRUE(line_of_travel({}, {}).pieces.empty());
    Walker walker({0, 0});
    walker.to({20, 0}).to({20, 20});
    EXPECT_NEAR(length(walker.line().pieces[0].line).value(), 40.0, 1e-6);
}

TEST(SearchedTrack, leaves_out_gaps_and_driving_and_keeps_the_rest) {
    Walker walker({0, 0});
    walker.to({50, 0});
    walker.clock += 300.0;  // the receiver was off
    walker.here = {150, 0};
    walker.fix();
    walker.to({200, 0});
    for (int i = 1; i <= 30; ++i) {  // 6 m/s
        walker.here = {200.0 + 6.0 * i, 0};
        walker.clock += 1.0;
        walker.fix();
    }
    const SearchedTrack track = searched_track(walker.walk);
    EXPECT_NEAR(track.gaps_m, 100.0, 1e-6);
    EXPECT_NEAR(track.searched_m + track.driven_m, 100.0 + 180.0, 1e-6);
    EXPECT_NEAR(track.driven_m, 180.0, 12.0);  // a few steps about the change belong to either
    ASSERT_GE(track.pieces.size(), 2U);
    EXPECT_NEAR(track.pieces[0].track.vertices.back().east_m, 50.0, 0.6);
}

TEST(SearchedTrack, a_pause_in_one_place_is_no_gap) {
    Walker walker({0, 0});
    walker.to({20, 0});
    walker.clock += 900.0;
    walker.fix();
    walker.to({40, 0});
    EXPECT_EQ(searched_track(walker.walk).gaps_m, 0.0);
    EXPECT_EQ(searched_track(walker.walk).pieces.size(), 1U);
}

}  // namespace
}  // namespace plugside
