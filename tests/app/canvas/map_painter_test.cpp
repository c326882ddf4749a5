#include "app/canvas/map_painter.h"

#include <QElapsedTimer>
#include <algorithm>
#include <random>

#include "app/canvas/map_layers.h"
#include "tests/app/application.h"
#include "tests/app/example_plan.h"

namespace plugside {
namespace {

class MapPainter : public OnScreen {
protected:
    [[nodiscard]] QImage painted(const ExampleField& example, const MapShow& show = {}, bool with_plan = true) const {
        QImage image(view_.size().toSize(), QImage::Format_RGB32);
        QPainter painter(&image);
        paint_map(painter, example.field, with_plan ? &example.plan : nullptr, style_, view_, show);
        return image;
    }
    [[nodiscard]] QColor at(const QImage& image, LocalPoint place, QPointF offset = {}) const {
        return image.pixelColor((view_.to_screen(place) + offset).toPoint());
    }
    // Pixels of the run's own colour along a stretch of easting 3 m south of the row.
    [[nodiscard]] int run_pixels(const QImage& image, double from_east, double to_east) const {
        int count = 0;
        const int y = view_.to_screen({0.0, -3.0}).toPoint().y();
        for (int x = static_cast<int>(view_.to_screen({from_east, 0.0}).x()); x < view_.to_screen({to_east, 0.0}).x(); ++x) {
            bool run = false;
            for (int dy = -1; dy <= 1; ++dy) run = run || is_near(image.pixelColor(x, y + dy), style_.run);
            count += run ? 1 : 0;
        }
        return count;
    }
    static bool is_near(const QColor& a, const QColor& b) {
        return std::abs(a.red() - b.red()) + std::abs(a.green() - b.green()) + std::abs(a.blue() - b.blue()) < 40;
    }

    MapStyle style_ = style_of(Theme::light);
    ViewTransform view_{{0.0, 0.0}, 20.0, {1200.0, 700.0}};
};

TEST_F(MapPainter, AFreshFanIsSoilColouredAndLiesOnTheSideItWasThrownTo) {
    const ExampleField example = example_field();
    const QImage image = painted(example, {}, false);
    const struct {
        std::size_t mound;
        QPointF towards;
    } fans[] = {{0, {0.0, -1.0}}, {1, {1.0, 0.0}}, {3, {-1.0, 0.0}}};
    for (const auto& fan : fans) {
        const LocalPoint plug = example.field.survey.mounds[fan.mound].plug;
        EXPECT_TRUE(is_near(at(image, plug, fan.towards * 8.0), style_.soil)) << fan.mound;
        EXPECT_TRUE(is_near(at(image, plug, fan.towards * -8.0), style_.field)) << fan.mound;
    }
}

TEST_F(MapPainter, AnOlderFanIsLighterAndAMarkWithoutAFanIsADisc) {
    const ExampleField example = example_field();
    const QImage image = painted(example, {}, false);
    EXPECT_TRUE(is_near(at(image, {-5.0, 0.0}, {0.0, 8.0}), style_.dry_soil));
    for (const QPointF side : {QPointF(3.0, 0.0), QPointF(-3.0, 0.0), QPointF(0.0, 3.0), QPointF(0.0, -3.0)})
        EXPECT_TRUE(is_near(at(image, {15.0, 0.0}, side), style_.dry_soil));
}

TEST_F(MapPainter, ARunIsSolidWhenLikelyBrokenWhenDoubtfulAndLeftOutBelowOneHalf) {
    MapShow show;
    show.sets = false;
    const QImage image = painted(example_field(), show);
    const int likely = run_pixels(image, -24.5, -15.5);
    const int doubtful = run_pixels(image, -4.5, 4.5);
    EXPECT_GE(likely, 178);
    EXPECT_GT(doubtful, 40);
    EXPECT_LT(doubtful, 150);
    EXPECT_EQ(run_pixels(image, 15.5, 24.5), 0);
    show.unlikely_runs = true;
    const QImage asked_for = painted(example_field(), show);
    int changed = 0;
    const int y = view_.to_screen({0.0, -3.0}).toPoint().y();
    for (int x = static_cast<int>(view_.to_screen({15.5, 0.0}).x()); x < view_.to_screen({24.5, 0.0}).x(); ++x)
        changed += asked_for.pixelColor(x, y) == image.pixelColor(x, y) ? 0 : 1;
    EXPECT_GT(changed, 30);
}

TEST_F(MapPainter, TheBandIsAsWideAsNineCasesInTenAreSpread) {
    MapShow show;
    show.sets = false;
    show.names = false;
    show.systems = false;
    show.track = false;
    const QImage image = painted(example_field(), show);
    // sd .3 m in the middle of the run: 1.645 * .3 * 20 px = 9.9 px to each side
    const LocalPoint middle{-20.0, -3.0};
    EXPECT_FALSE(is_near(at(image, middle, {0.0, 8.0}), style_.field));
    EXPECT_TRUE(is_near(at(image, middle, {0.0, 12.0}), style_.field));
}

TEST_F(MapPainter, APlanOfAnotherSurveyIsNotDrawn) {
    ExampleField example = example_field();
    const QImage bare = painted(example, {}, false);
    example.plan.mounds.pop_back();
    EXPECT_EQ(painted(example), bare);
}

TEST_F(MapPainter, AStalePlanIsPaler) {
    MapShow show;
    show.sets = false;
    const QImage fresh = painted(example_field(), show);
    show.plan_opacity = 0.5;
    const QImage stale = painted(example_field(), show);
    const LocalPoint on_run{-20.0, -3.0};
    EXPECT_GT(at(stale, on_run).lightness(), at(fresh, on_run).lightness() + 30);
}

TEST_F(MapPainter, ADecisionNewerThanThePlanShowsOnItsFlag) {
    ExampleField example = example_field();
    std::vector<FlagPlace> flags;
    QImage image(view_.size().toSize(), QImage::Format_RGB32);
    QPainter painter(&image);
    decide(example.field.survey, {example.plan.probes[0].key, SetChoice::kept, std::nullopt});
    paint_map(painter, example.field, &example.plan, style_, view_, {}, {}, &flags);
    painter.end();
    ASSERT_EQ(flags.size(), 3U);
    const auto corner = [&](std::size_t i) {
        return image.pixelColor((flags[i].cloth.topLeft() + QPointF(4.0, 3.0)).toPoint());
    };
    EXPECT_TRUE(is_near(corner(0), style_.act));
    EXPECT_TRUE(is_near(corner(1), style_.slip));
    for (std::size_t i = 0; i < flags.size(); ++i)
        for (std::size_t j = i + 1; j < flags.size(); ++j) EXPECT_FALSE(flags[i].cloth.intersects(flags[j].cloth));
}

TEST_F(MapPainter, AMovedSetIsDrawnWhereItWasMovedTo) {
    ExampleField example = example_field();
    const ProbeSite& site = example.plan.probes[1];  // fan to the east: the axis points west
    EXPECT_EQ(ladder_middle(example.field.survey, site), site.middle);
    decide(example.field.survey, {site.key, SetChoice::moved, LadderPlace{Metres::of(0.55), Metres::of(0.1)}});
    const LocalPoint moved = ladder_middle(example.field.survey, site);
    EXPECT_NEAR(moved.east_m, site.middle.east_m - 0.2, 1e-9);
    EXPECT_NEAR(moved.north_m, site.middle.north_m + 0.1, 1e-9);  // right of west is north
}

TEST_F(MapPainter, StopsSoonAndPaintsTwentyThousandMarksInTime) {
    FieldSurvey field;
    std::mt19937 generator(3);
    std::uniform_real_distribution<double> east(-1000.0, 1000.0);
    for (int i = 0; i < 20000; ++i)
        field.survey.mounds.push_back(example_mound("M", {east(generator), east(generator)}, i % 360, Freshness::fresh));
    const ViewTransform whole = ViewTransform::fitting(ground_box(field), view_.size(), 20.0);
    QImage image(view_.size().toSize(), QImage::Format_RGB32);
    QPainter painter(&image);
    QElapsedTimer clock;
    clock.start();
    paint_map(painter, field, nullptr, style_, whole, {});
    // generous for a busy machine and for sanitizers; on two quiet cores it takes a small part of this
    EXPECT_LT(clock.elapsed(), 5000);
    std::stop_source stop;
    stop.request_stop();
    clock.restart();
    paint_map(painter, field, nullptr, style_, whole, {}, stop.get_token());
    EXPECT_LT(clock.elapsed(), 100);
}

TEST_F(MapPainter, AWholePictureIsNotEmptyAndGrowsWithNothingToo) {
    const ExampleField example = example_field();
    const QImage picture = map_picture(example.field, &example.plan, {640, 480}, style_, true);
    EXPECT_EQ(picture.size(), QSize(640, 480));
    EXPECT_FALSE(map_picture(FieldSurvey{}, nullptr, {64, 48}, style_, false).isNull());
}

}  // namespace
}  // namespace plugside
