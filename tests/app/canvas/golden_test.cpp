// The map as it was last looked at and found good: marks, runs with their corridors, systems, sets, ground, what was not seen, imagery, in
// both themes, at a large and a small scale, and with text twice as large. How to make them anew stands in DEVELOPERS.md.
#include <QFont>
#include <QGuiApplication>
#include <cmath>
#include <random>

#include "app/canvas/imagery_scene.h"
#include "app/canvas/map_furniture.h"
#include "app/canvas/map_painter.h"
#include "app/words/language.h"
#include "core/survey/decision.h"
#include "tests/app/application.h"
#include "tests/app/canvas/golden_pictures.h"
#include "tests/app/example_plan.h"

namespace plugside {
namespace {

constexpr QSize small_picture(460, 320);

Polygon box_of(double west, double south, double east, double north) {
    return {Ring{{{west, south}, {east, south}, {east, north}, {west, north}}}, {}};
}

// The example with ground of every kind about it, and each decision on a set.
ExampleField on_ground() {
    ExampleField example = example_field();
    Ground& ground = example.field.survey.ground;
    ground.boundary.parts = {box_of(-33.0, -20.0, 33.0, 21.0)};
    ground.barriers = {{"ditch", Polyline{{{-33.0, -12.0}, {0.0, -14.0}, {33.0, -12.0}}}}};
    ground.crossings = {{"culvert", {0.0, -14.0}, Metres::of(3.0)}};
    ground.gates = {{"gate", {33.0, 5.0}, Metres::of(4.0)}};
    ground.keep_clear = {{"well", "drinking water", KeepClearKind::well, box_of(12.0, 8.0, 24.0, 18.0)}};
    ground.untreated.parts = {box_of(-30.0, 8.0, -18.0, 18.0)};
    Survey& survey = example.field.survey;
    decide(survey, {example.plan.probes[0].key, SetChoice::kept, std::nullopt});
    decide(survey, {example.plan.probes[1].key, SetChoice::moved, LadderPlace{Metres::of(0.55), Metres::of(0.1)}});
    decide(survey, {example.plan.probes[2].key, SetChoice::dropped, std::nullopt});
    return example;
}

// Nine thousand marks in heaps, the same on every machine: generators are standardised, distributions are not.
FieldSurvey many_marks() {
    FieldSurvey field;
    std::mt19937 generator(11);
    const auto share = [&generator] { return static_cast<double>(generator()) / 4294967296.0; };
    for (int i = 0; i < 9000; ++i) {
        const double heap = std::floor(share() * 12.0);
        const LocalPoint at{90.0 * std::cos(heap) * (1.0 + heap / 6.0) + 60.0 * (share() + share() - 1.0),
                            90.0 * std::sin(heap) * (1.0 + heap / 6.0) + 60.0 * (share() + share() - 1.0)};
        const Freshness freshness = i % 3 == 0 ? Freshness::fresh : i % 3 == 1 ? Freshness::older : Freshness::unknown;
        field.survey.mounds.push_back(
            example_mound("M", at, i % 5 == 0 ? std::nullopt : std::optional(1.0 * (i % 360)), freshness));
    }
    return field;
}

// A picture of the ground in squares of two greens with a diagonal road.
std::shared_ptr<const ImageryScene> some_imagery() {
    auto tile = std::make_shared<ImageryTile>();
    tile->size = 64;
    tile->rgba.resize(64 * 64 * 4);
    for (std::size_t y = 0; y < 64; ++y)
        for (std::size_t x = 0; x < 64; ++x) {
            const bool road = (x > y ? x - y : y - x) < 4;
            const bool dark = (x / 8 + y / 8) % 2 == 0;
            const std::size_t at = 4 * (64 * y + x);
            tile->rgba[at] = road ? 200 : dark ? 70 : 110;
            tile->rgba[at + 1] = road ? 190 : dark ? 110 : 150;
            tile->rgba[at + 2] = road ? 170 : dark ? 60 : 80;
            tile->rgba[at + 3] = 255;
        }
    auto scene = std::make_shared<ImageryScene>();
    scene->pieces.push_back({tile, {-32.0, -32.0}, 64.0});
    scene->share = 0.55;
    return scene;
}

std::shared_ptr<const SeenSurface> half_seen_surface() {
    auto surface = std::make_shared<SeenSurface>();
    surface->south_west = {-33.0, -20.0};
    surface->cell_m = 1.0;
    surface->columns = 66;
    surface->rows = 41;
    for (std::size_t row = 0; row < surface->rows; ++row)
        for (std::size_t column = 0; column < surface->columns; ++column)
            surface->chance.push_back(column < 22 ? 0.95F : column < 44 ? 0.3F : 0.02F);
    return surface;
}

class GoldenPictures : public OnScreen {
protected:
    GoldenPictures() : font_before_(QGuiApplication::font()) {
        speak(Language::english);
        // the one font that a bare system with fonts-dejavu-core has
        QFont font(QStringLiteral("DejaVu Sans"));
        font.setHintingPreference(QFont::PreferNoHinting);
        QGuiApplication::setFont(font);
    }
    ~GoldenPictures() override { QGuiApplication::setFont(font_before_); }

    static MapStyle style(Theme theme, double text_share = 1.0) {
        MapStyle style = style_of(theme);
        style.text_share = text_share;
        return style;
    }
    static QImage painted(const FieldSurvey& field, const Plan* plan, const MapStyle& style, const ViewTransform& view,
                          MapShow show = {}) {
        QImage image(view.size().toSize(), QImage::Format_RGB32);
        QPainter painter(&image);
        show.covered = furniture_places(view, style);
        paint_map(painter, field, plan, style, view, show);
        painter.setRenderHint(QPainter::Antialiasing);
        draw_scale_bar(painter, view, style, LengthUnits::feet_and_inches);
        draw_north_arrow(painter, view, style);
        return image;
    }
    static ViewTransform close_view() { return {{-12.0, -1.0}, 14.0, QSizeF(small_picture)}; }
    static ViewTransform whole_view() { return {{0.0, 0.0}, 6.4, QSizeF(small_picture)}; }

    QFont font_before_;
};

TEST_F(GoldenPictures, OfMarksRunsSystemsAndSetsAtALargeScale) {
    const ExampleField example = on_ground();
    MapShow show;
    show.unlikely_runs = true;
    for (const Theme theme : {Theme::light, Theme::sunlight})
        expect_golden(painted(example.field, &example.plan, style(theme), close_view(), show),
                      theme == Theme::light ? "large-scale" : "large-scale-sunlight");
}

TEST_F(GoldenPictures, OfGroundOfEveryKind) {
    const ExampleField example = on_ground();
    for (const Theme theme : {Theme::light, Theme::sunlight})
        expect_golden(painted(example.field, &example.plan, style(theme), whole_view()),
                      theme == Theme::light ? "ground" : "ground-sunlight");
}

TEST_F(GoldenPictures, OfLaddersUnderTheTape) {
    const ExampleField example = on_ground();
    const ViewTransform view({-15.2, 0.1}, 300.0, QSizeF(small_picture));
    for (const Theme theme : {Theme::light, Theme::sunlight})
        expect_golden(painted(example.field, &example.plan, style(theme), view),
                      theme == Theme::light ? "ladder" : "ladder-sunlight");
}

TEST_F(GoldenPictures, OfWhatWasNotSeen) {
    const ExampleField example = on_ground();
    MapShow show;
    show.seen = half_seen_surface();
    for (const Theme theme : {Theme::light, Theme::sunlight})
        expect_golden(painted(example.field, &example.plan, style(theme), whole_view(), show),
                      theme == Theme::light ? "not-seen" : "not-seen-sunlight");
}

TEST_F(GoldenPictures, OverImagery) {
    const ExampleField example = on_ground();
    MapShow show;
    show.imagery = some_imagery();
    for (const Theme theme : {Theme::light, Theme::sunlight})
        expect_golden(painted(example.field, &example.plan, style(theme), whole_view(), show),
                      theme == Theme::light ? "imagery" : "imagery-sunlight");
}

TEST_F(GoldenPictures, OfManyMarksWithTheirNumbersAtASmallScale) {
    const FieldSurvey field = many_marks();
    for (const Theme theme : {Theme::light, Theme::sunlight})
        expect_golden(
            painted(field, nullptr, style(theme), ViewTransform::fitting(ground_box(field), QSizeF(small_picture), 20.0)),
            theme == Theme::light ? "small-scale" : "small-scale-sunlight");
}

TEST_F(GoldenPictures, OfAMapThatIsTurned) {
    const ExampleField example = on_ground();
    const ViewTransform view({0.0, 0.0}, 6.4, QSizeF(small_picture), 60.0);
    expect_golden(painted(example.field, &example.plan, style(Theme::light), view), "turned");
}

TEST_F(GoldenPictures, WithTextTwiceAsLarge) {
    const ExampleField example = on_ground();
    expect_golden(painted(example.field, &example.plan, style(Theme::light, 2.0), close_view()), "large-text");
}

// The comparison fails on what a person would see: a fan turned, a decision taken back, a mark gone, a picture a few pixels off.
TEST_F(GoldenPictures, ThatDifferAreFound) {
    const ExampleField kept = on_ground();
    const MapStyle look = style(Theme::light);
    const QImage good = painted(kept.field, &kept.plan, look, close_view());
    EXPECT_TRUE(difference_of(good, good).within(small_picture));
    const auto off = [&](const ExampleField& changed) {
        return !difference_of(painted(changed.field, &changed.plan, look, close_view()), good).within(small_picture);
    };
    ExampleField turned = kept;
    turned.field.survey.mounds[1].fan = Bearing::degrees(150.0);
    EXPECT_TRUE(off(turned));
    ExampleField undecided = kept;
    undecided.field.survey.decisions.clear();
    EXPECT_TRUE(off(undecided));
    ExampleField aged = kept;
    aged.field.survey.mounds[0].freshness = Freshness::older;
    EXPECT_TRUE(off(aged));
    ExampleField unsure = kept;
    unsure.plan.runs.erase(unsure.plan.runs.begin());
    EXPECT_TRUE(off(unsure));
    ExampleField renamed = kept;
    renamed.plan.systems[0].letter = "B";
    EXPECT_TRUE(off(renamed));
    EXPECT_FALSE(difference_of(good.copy(2, 0, 458, 320), good.copy(0, 0, 458, 320)).within({458, 320}));
    EXPECT_FALSE(difference_of(good, good.copy(0, 0, 400, 320)).within(small_picture));
}

}  // namespace
}  // namespace plugside
