#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "app/canvas/map_furniture.h"
#include "app/canvas/mark_pyramid.h"
#include "app/canvas/system_tints.h"

namespace plugside {
namespace {

std::vector<Mound> marks_at(const std::vector<LocalPoint>& places) {
    std::vector<Mound> marks(places.size());
    for (std::size_t i = 0; i < places.size(); ++i) {
        marks[i].plug = places[i];
        marks[i].kind = i % 7 == 3 ? SignKind::mole : SignKind::gopher_mound;
        marks[i].freshness = i % 5 == 0 ? Freshness::fresh : i % 5 == 1 ? Freshness::crushed : Freshness::older;
    }
    return marks;
}

std::vector<LocalPoint> scattered(std::size_t count, double half_m) {
    std::mt19937 generator(77);
    std::uniform_real_distribution<double> metres(-half_m, half_m);
    std::vector<LocalPoint> places(count);
    for (LocalPoint& place : places) place = {metres(generator), metres(generator)};
    return places;
}

GroundBox box_of(LocalPoint a, LocalPoint b) {
    GroundBox box;
    box.add(a);
    box.add(b);
    return box;
}

TEST(MarkPyramid, EachLevelCountsEveryMarkOnceAndPutsTheMostTellingForward) {
    const std::vector<Mound> marks = marks_at(scattered(3000, 900.0));
    const MarkPyramid pyramid(marks);
    const GroundBox all = box_of({-1000.0, -1000.0}, {1000.0, 1000.0});
    const std::size_t coarsest = pyramid.level_of(1e9);
    ASSERT_GE(coarsest, 5U);
    for (std::size_t level = 0; level <= coarsest; ++level) {
        const double side = MarkPyramid::cell_m(level);
        std::size_t counted = 0;
        for (const MarkPyramid::Cell& cell : pyramid.cells(level, all)) {
            const LocalPoint middle = cell.middle(side);
            std::size_t inside = 0;
            int greatest = -1;
            for (const Mound& mark : marks) {
                if (std::abs(mark.plug.east_m - middle.east_m) >= 0.5 * side ||
                    std::abs(mark.plug.north_m - middle.north_m) >= 0.5 * side)
                    continue;
                ++inside;
                greatest = std::max(greatest, MarkPyramid::weight(mark));
            }
            ASSERT_EQ(cell.count, inside) << level;
            ASSERT_EQ(MarkPyramid::weight(marks[cell.foremost]), greatest) << level;
            counted += cell.count;
        }
        EXPECT_EQ(counted, marks.size()) << level;
    }
    EXPECT_LE(pyramid.cells(coarsest, all).size(), 64U);
}

TEST(MarkPyramid, GivesTheMarksOfABoxAndNothingWhereTheyAreTooMany) {
    const std::vector<Mound> marks = marks_at(scattered(2000, 300.0));
    const MarkPyramid pyramid(marks);
    const MarkPyramid gophers(marks, false);
    std::mt19937 generator(5);
    std::uniform_real_distribution<double> metres(-350.0, 350.0);
    for (int i = 0; i < 200; ++i) {
        const GroundBox box = box_of({metres(generator), metres(generator)}, {metres(generator), metres(generator)});
        std::vector<std::uint32_t> inside, of_gophers;
        for (std::uint32_t k = 0; k < marks.size(); ++k) {
            if (!box.meets(box_of(marks[k].plug, marks[k].plug))) continue;
            inside.push_back(k);
            if (is_gopher_sign(marks[k].kind)) of_gophers.push_back(k);
        }
        auto found = pyramid.within(box, marks.size());
        auto without = gophers.within(box, marks.size());
        ASSERT_TRUE(found && without);
        std::sort(found->begin(), found->end());
        std::sort(without->begin(), without->end());
        EXPECT_EQ(*found, inside);
        EXPECT_EQ(*without, of_gophers);
        if (!inside.empty()) {
            EXPECT_FALSE(pyramid.within(box, inside.size() - 1));
        }
    }
}

TEST(MarkPyramid, FindsTheNearestThatLookingAtEveryMarkFinds) {
    std::mt19937 generator(31);
    std::uniform_real_distribution<double> metres(-150.0, 150.0);
    std::vector<LocalPoint> places;
    for (int i = 0; i < 700; ++i) places.push_back({metres(generator), metres(generator)});
    places.push_back(places.front());  // two marks on one spot
    const MarkPyramid finder(marks_at(places));
    for (int i = 0; i < 600; ++i) {
        const LocalPoint to{metres(generator), metres(generator)};
        const double reach = std::abs(metres(generator)) * (i % 3 == 0 ? 0.02 : 0.3);
        std::optional<std::size_t> expected;
        for (std::size_t k = 0; k < places.size(); ++k)
            if (distance_m(places[k], to) <= reach &&
                (!expected || distance_m(places[k], to) < distance_m(places[*expected], to)))
                expected = k;
        EXPECT_EQ(finder.nearest(to, Metres::of(reach)), expected);
    }
    EXPECT_EQ(MarkPyramid().nearest({0.0, 0.0}, Metres::of(10.0)), std::nullopt);
}

TEST(SystemTints, NeighboursDifferAsLongAsFourTintsCanDoIt) {
    Plan plan;
    for (int row = 0; row < 6; ++row)
        for (int column = 0; column < 6; ++column) {
            const double east = column * 30.0;
            const double north = row * 30.0;
            BurrowSystem system;
            system.outline.parts = {
                {Ring{{{east, north}, {east + 28.0, north}, {east + 28.0, north + 5.0}, {east, north + 5.0}}}, {}}};
            plan.systems.push_back(system);
        }
    const auto tints = system_tints(plan);
    for (std::size_t i = 0; i + 1 < tints.size(); ++i)
        if (i % 6 != 5) {
            EXPECT_NE(tints[i], tints[i + 1]) << i;
        }
    EXPECT_TRUE(system_tints(Plan{}).empty());
}

TEST(ScaleBar, IsARoundLengthThatFitsInTheUnitsChosen) {
    for (const LengthUnits units : {LengthUnits::feet_and_inches, LengthUnits::metres})
        for (double scale = 0.01; scale < 400.0; scale *= 1.37) {
            const ViewTransform view({0.0, 0.0}, scale, {800.0, 600.0});
            const ScaleStep step = scale_step(view, 170.0, units);
            EXPECT_LE(view.pixels(step.length), 170.0 + 1e-6);
            EXPECT_GT(view.pixels(step.length), 170.0 / 2.6);
            const QString first = step.label.left(1);
            EXPECT_TRUE(first == "1" || first == "2" || first == "5") << step.label.toStdString();
        }
    const ViewTransform view({0.0, 0.0}, 10.0, {800.0, 600.0});
    EXPECT_EQ(scale_step(view, 170.0, LengthUnits::metres).label, "10 m");
    EXPECT_EQ(scale_step(view, 170.0, LengthUnits::feet_and_inches).label, "50 ft");
}

}  // namespace
}  // namespace plugside
