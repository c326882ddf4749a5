#include <gtest/gtest.h>

#include <random>

#include "app/canvas/map_furniture.h"
#include "app/canvas/mark_finder.h"
#include "app/canvas/system_tints.h"

namespace plugside {
namespace {

TEST(MarkFinder, FindsWhatLookingAtEveryMarkFinds) {
    std::mt19937 generator(31);
    std::uniform_real_distribution<double> metres(-150.0, 150.0);
    std::vector<LocalPoint> places;
    for (int i = 0; i < 700; ++i) places.push_back({metres(generator), metres(generator)});
    places.push_back(places.front());  // two marks on one spot
    const MarkFinder finder(places);
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
    EXPECT_EQ(MarkFinder().nearest({0.0, 0.0}, Metres::of(10.0)), std::nullopt);
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
