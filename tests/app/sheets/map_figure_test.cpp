// The map on paper: to a round scale, with every number, a grid, both norths.
#include "app/sheets/map_figure.h"

#include "app/sheets/sheet_pages.h"
#include "geo/frame/declination.h"
#include "tests/app/application.h"
#include "tests/app/sheets/sheet_example.h"

namespace plugside {
namespace {

class MapOnPaper : public OnScreen {
protected:
    static constexpr QSizeF room{190.0, 240.0};

    static std::vector<MapPage> pages_of(const SheetInput& input) {
        const auto contents = sheet_contents(input);
        auto pages = map_pages(input, *contents, room);
        EXPECT_TRUE(pages);
        return pages ? std::move(*pages) : std::vector<MapPage>();
    }
    static QStringList texts(const Figure& figure) {
        QStringList found;
        for (const Shape& shape : figure.shapes())
            if (const auto* words = std::get_if<WordsAt>(&shape)) found << words->text;
        return found;
    }
    // The feet of flags, in walking order.
    static std::vector<QPointF> feet(const NumberedMap& map) {
        std::vector<QPointF> places;
        for (const Shape& shape : map.figure.shapes())
            if (const auto* disc = std::get_if<Disc>(&shape); disc && disc->radius_mm == 0.7) places.push_back(disc->centre);
        return places;
    }
};

TEST_F(MapOnPaper, HasItsSetsAsFarApartAsItsScaleSays) {
    const ExampleField example = field_with_sets(25);
    const SheetInput input = sheets_of(example);
    const auto contents = sheet_contents(input);
    for (const int scale : {250, 500, 1000}) {
        const NumberedMap map = map_figure(input, *contents, room, {{16.0, 45.0}, scale}, {0.0, 0.0}, {});
        const std::vector<QPointF> feet = this->feet(map);
        ASSERT_EQ(feet.size(), contents->cards.size());
        for (std::size_t i = 1; i < feet.size(); ++i) {
            const LocalVector step = contents->cards[i].middle - contents->cards[0].middle;
            EXPECT_NEAR(feet[i].x() - feet[0].x(), step.east_m * 1000.0 / scale, 0.05);
            EXPECT_NEAR(feet[0].y() - feet[i].y(), step.north_m * 1000.0 / scale, 0.05);
        }
    }
}

TEST_F(MapOnPaper, TakesTheLargestRoundScaleAtWhichAllHasRoom) {
    ExampleField example = field_with_sets(25);
    // 60 m from west to east, 70 m from south to north
    EXPECT_EQ(pages_of(sheets_of(example)).front().scale, 500);
    example.field.survey.ground.boundary.parts = {
        {Ring{{{-200.0, -100.0}, {200.0, -100.0}, {200.0, 300.0}, {-200.0, 300.0}}}, {}}};
    const auto pages = pages_of(sheets_of(example));
    EXPECT_EQ(pages.front().scale, 2500);
    ASSERT_GT(pages.size(), 1U) << "numbers of 25 sets 3 mm apart have no room";
    for (std::size_t i = 1; i < pages.size(); ++i) EXPECT_LT(pages[i].scale, pages.front().scale);
    EXPECT_TRUE(texts(pages.front().figure).contains(QStringLiteral("map 2")));
}

TEST_F(MapOnPaper, HasTheNumberOfEverySetOnSomeMap) {
    ExampleField example = field_with_sets(200);
    example.field.survey.ground.boundary.parts = {
        {Ring{{{-300.0, -100.0}, {300.0, -100.0}, {300.0, 500.0}, {-300.0, 500.0}}}, {}}};
    QStringList numbers;
    for (const MapPage& page : pages_of(sheets_of(example))) numbers << texts(page.figure);
    for (int set = 1; set <= 200; ++set) EXPECT_TRUE(numbers.contains(QString::number(set))) << set;
}

// declination_test checks the model itself against published values
TEST_F(MapOnPaper, TellsTheDeclinationOfItsPlaceAndDay) {
    const ExampleField example = field_with_sets(5);
    const SheetInput input = sheets_of(example);
    const double degrees = *declination_degrees(example.field.frame.to_geographic({0.0, 0.0}), input.made_at);
    ASSERT_GT(degrees, 0.0);
    EXPECT_EQ(
        north_words(input, {0.0, 0.0}),
        QStringLiteral(
            "On 1 October 2026 magnetic north (MN) lies %1° east of true north (TN): the declination, by the World Magnetic "
            "Model 2025. Bearings are from true north.")
            .arg(degrees, 0, 'f', 1));
    const SheetInput late{example.field,
                          example.plan,
                          input.units,
                          input.language,
                          input.paper,
                          {},
                          input.made_at + std::chrono::hours(24 * 365 * 5)};
    EXPECT_TRUE(north_words(late, {0.0, 0.0}).contains(QStringLiteral("2025 to 2029")));
}

TEST_F(MapOnPaper, LabelsItsGridInTheUnitsOfTheTape) {
    EXPECT_NEAR(grid_step(500, LengthUnits::metres).value(), 20.0, 1e-9);
    EXPECT_NEAR(grid_step(1000, LengthUnits::metres).value(), 50.0, 1e-9);
    EXPECT_NEAR(grid_step(1000, LengthUnits::feet_and_inches).feet(), 100.0, 1e-9);
    const ExampleField example = field_with_sets(25);
    EXPECT_TRUE(texts(pages_of(sheets_of(example, Language::english, LengthUnits::metres)).front().figure)
                    .contains(QStringLiteral("20")));
}

// Two rows of five with a ditch between them, and a footbridge 10 m west of both.
TEST_F(MapOnPaper, LeadsFromSetToSetAroundABarrierAndThroughItsGate) {
    ExampleField example = field_with_sets(10);
    Ground& ground = example.field.survey.ground;
    ground = {};
    ground.barriers = {{"ditch", Polyline{{{-40.0, 34.0}, {200.0, 34.0}}}}};
    const auto ways_on_map = [&](const SheetContents& contents, const SheetInput& input) {
        const NumberedMap map = map_figure(input, contents, room, {{16.0, 34.0}, 1000}, {0.0, 0.0}, {});
        std::vector<std::vector<QPointF>> ways;
        for (const Shape& shape : map.figure.shapes())
            if (const auto* stroke = std::get_if<Stroke>(&shape); stroke && stroke->dashes_mm == way_dashes_mm)
                ways.push_back(stroke->points);
        return ways;
    };
    const SheetInput input = sheets_of(example, Language::english, LengthUnits::metres);
    // along each row, and around the ditch's end between: 72 m to it from (32, 30), 40 m on to (0, 38)
    const auto around = sheet_contents(input);
    EXPECT_EQ(ways_on_map(*around, input).size(), 1U);
    ground.gates = {{"footbridge", {-10.0, 34.0}, Metres::of(1.0)}};
    const auto contents = sheet_contents(input);
    const auto ways = ways_on_map(*contents, input);
    ASSERT_EQ(ways.size(), 1U);
    const QPointF bridge(0.5 * (room.width() + grid_room_mm) + (-10.0 - 16.0), 0.5 * (room.height() - grid_room_mm));
    int crossed = 0;
    for (std::size_t i = 1; i < ways[0].size(); ++i) {
        const QPointF a = ways[0][i - 1], b = ways[0][i];
        if ((a.y() < bridge.y()) == (b.y() < bridge.y())) continue;
        ++crossed;
        const double x = a.x() + (b.x() - a.x()) * (bridge.y() - a.y()) / (b.y() - a.y());
        EXPECT_NEAR(x, bridge.x(), 0.5) << "within half a metre of the bridge's middle";
    }
    EXPECT_EQ(crossed, 1);
    EXPECT_TRUE(contents->cards[5].from_before.startsWith(QStringLiteral("52 m on foot; straight 33 m, ")))
        << contents->cards[5].from_before.toStdString();
    EXPECT_FALSE(contents->cards[4].from_before.contains(QStringLiteral("on foot")));
    EXPECT_TRUE(contents->way.contains(QStringLiteral("on foot around barriers and through gates")));
    // walled in: the way ends, and says so
    ground.boundary.parts = {{Ring{{{-30.0, -10.0}, {60.0, -10.0}, {60.0, 60.0}, {-30.0, 60.0}}}, {}}};
    ground.gates.clear();
    const auto walled = sheet_contents(input);
    EXPECT_EQ(ways_on_map(*walled, input).size(), 2U);
    EXPECT_TRUE(walled->cards[5].from_before.startsWith(QStringLiteral("no way on foot is drawn; straight 33 m")));
    EXPECT_TRUE(walled->way.contains(QStringLiteral("without the stretches where no gate is drawn")));
}

TEST_F(MapOnPaper, OfAFieldWithOneSetOrNoneIsDrawnToo) {
    for (const int count : {0, 1}) {
        ExampleField example = field_with_sets(count);
        EXPECT_EQ(pages_of(sheets_of(example)).size(), 1U);
        example.field.survey.mounds.clear();
        example.plan.mounds.clear();
        if (count == 0) {
            EXPECT_EQ(pages_of(sheets_of(example)).size(), 1U);
        }
    }
}

}  // namespace
}  // namespace plugside
