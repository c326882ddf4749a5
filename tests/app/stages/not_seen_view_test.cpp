#include "app/stages/not_seen_view.h"

#include <QTest>

#include "app/canvas/map_layers.h"
#include "app/canvas/map_painter.h"
#include "tests/app/application.h"
#include "tests/app/example_plan.h"

namespace plugside {
namespace {

// The example's walk along the north of -8 in a field 80 m wide and 60 m high.
FieldSurvey walked_field() {
    FieldSurvey field = example_field().field;
    Polygon whole;
    whole.outer = {{{-40.0, -20.0}, {40.0, -20.0}, {40.0, 40.0}, {-40.0, 40.0}}};
    field.survey.ground.boundary.parts = {whole};
    return field;
}

class NotSeenTest : public OnScreen {
protected:
    bool looked_back() {
        return QTest::qWaitFor([&] { return session_.looked_back(); }, 120000);
    }

    FieldSession session_;
    Choices choices_;
};

TEST_F(NotSeenTest, IsWorkedOutAfterThePlanAndToldInPlainWords) {
    NotSeenView view(session_, choices_);
    session_.adopt(walked_field(), {});
    ASSERT_TRUE(looked_back());
    ASSERT_NE(session_.not_seen(), nullptr);
    EXPECT_GT(session_.not_seen()->unwalked_m2, 1000.0);
    for (const char* words : {"Walked:", "Not walked:", "mounds", "animals", "expected", "assumed"})
        EXPECT_TRUE(view.told().contains(words)) << words << "\n" << view.told().toStdString();
}

TEST_F(NotSeenTest, ADecisionOnASetDoesNotStartItAnew) {
    session_.adopt(walked_field(), {});
    ASSERT_TRUE(looked_back());
    const auto before = session_.not_seen();
    ASSERT_FALSE(session_.plan()->sets.empty());
    session_.decide_on(session_.plan()->probes[session_.plan()->sets[0].probe].key, SetChoice::kept);
    ASSERT_TRUE(QTest::qWaitFor([&] { return session_.plan_is_current(); }, 120000));
    EXPECT_FALSE(session_.looking_back().running());
    EXPECT_EQ(session_.not_seen(), before);
}

TEST_F(NotSeenTest, WithoutATrackItSaysThatNothingCanBeTold) {
    NotSeenView view(session_, choices_);
    FieldSurvey field = walked_field();
    field.survey.walks[0].segments.clear();
    session_.adopt(std::move(field), {});
    ASSERT_TRUE(looked_back());
    EXPECT_EQ(session_.not_seen(), nullptr);
    bool said = false;
    for (const QLabel* label : view.findChildren<QLabel*>()) said = said || label->text().contains("no track");
    EXPECT_TRUE(said);
}

// The share of points on a line 12 px long about `place` that are not the field's own colour.
int hatched(const QImage& image, const ViewTransform& view, LocalPoint place, const MapStyle& style) {
    const QPoint at = view.to_screen(place).toPoint();
    int marked = 0;
    for (int dx = -12; dx < 12; ++dx)
        for (int dy = -12; dy < 12; ++dy) {
            const QColor seen = image.pixelColor(at + QPoint(dx, dy));
            marked += std::abs(seen.lightness() - style.field.lightness()) > 12 ? 1 : 0;
        }
    return marked;
}

TEST_F(NotSeenTest, GroundNotSeenIsHatchedOnTheMapAndGroundSeenIsNot) {
    FieldSurvey field = walked_field();
    field.survey.mounds.clear();
    const ViewTransform view{{0.0, 10.0}, 9.0, {800.0, 600.0}};
    // seen in the south, half seen in the middle, not at all in the north
    auto surface = std::make_shared<SeenSurface>();
    surface->south_west = {-40.0, -20.0};
    surface->cell_m = 2.0;
    surface->columns = 40;
    surface->rows = 30;
    for (std::size_t row = 0; row < surface->rows; ++row)
        surface->chance.insert(surface->chance.end(), surface->columns, row < 10 ? 0.95F : row < 20 ? 0.3F : 0.0F);
    for (const Theme theme : {Theme::light, Theme::sunlight}) {
        const MapStyle& style = style_of(theme);
        const auto painted = [&](bool shown) {
            QImage image(800, 600, QImage::Format_RGB32);
            QPainter painter(&image);
            MapShow show;
            show.seen = surface;
            show.unwalked = shown;
            show.track = false;
            paint_map(painter, field, nullptr, style, view, show);
            return image;
        };
        const QImage image = painted(true);
        const int seen = hatched(image, view, {0.0, -10.0}, style);
        const int half = hatched(image, view, {0.0, 10.0}, style);
        const int none = hatched(image, view, {0.0, 30.0}, style);
        EXPECT_EQ(seen, 0);
        EXPECT_GT(half, 40);
        EXPECT_GT(none, half * 3 / 2);
        const QImage bare = painted(false);
        EXPECT_EQ(hatched(bare, view, {0.0, 30.0}, style), 0);
    }
}

}  // namespace
}  // namespace plugside
