// The close-up on paper is to the scale that it names.
#include "app/sheets/close_up_figure.h"

#include <cmath>

#include "app/sheets/lettering.h"
#include "app/sheets/mound_figure.h"
#include "tests/app/application.h"
#include "tests/app/sheets/sheet_example.h"

namespace plugside {
namespace {

constexpr double most_off_mm = 0.2;

class CloseUpOnPaper : public OnScreen {
protected:
    static CloseUpFigure drawn(const ExampleField& example, std::size_t probe, LengthUnits units,
                               QSizeF size = {86.0, 82.0}) {
        return close_up_figure(close_up_scene(example.field, example.plan, example.plan.probes[probe]), units, size);
    }
    static std::vector<Disc> discs(const Figure& figure) {
        std::vector<Disc> found;
        for (const Shape& shape : figure.shapes())
            if (const auto* disc = std::get_if<Disc>(&shape); disc && disc->line) found.push_back(*disc);
        return found;
    }
    // Rungs are drawn last, the first one on top and filled.
    static std::vector<QPointF> rungs(const Figure& figure, std::size_t count) {
        std::vector<QPointF> places;
        const std::vector<Disc> all = discs(figure);
        for (std::size_t i = 0; i < count; ++i) places.push_back(all[all.size() - 1 - i].centre);
        return places;
    }
    static QStringList texts(const Figure& figure) {
        QStringList found;
        for (const Shape& shape : figure.shapes())
            if (const auto* words = std::get_if<WordsAt>(&shape)) found << words->text;
        return found;
    }
};

TEST_F(CloseUpOnPaper, OnThePlugSideEveryRungLiesAsFarFromThePlugAsItIsTaped) {
    const ExampleField example = field_with_both_kinds();
    for (const LengthUnits units : {LengthUnits::feet_and_inches, LengthUnits::metres}) {
        const CloseUpFigure drawn = this->drawn(example, 0, units);
        const ProbeSite& site = example.plan.probes[0];
        const std::vector<QPointF> rungs = this->rungs(drawn.figure, site.rungs.size());
        const auto all = discs(drawn.figure);
        const auto plug =
            std::find_if(all.begin(), all.end(), [](const Disc& disc) { return disc.radius_mm == plug_radius_mm; });
        ASSERT_NE(plug, all.end());
        for (std::size_t i = 0; i < rungs.size(); ++i) {
            const double taped_mm = (site.ladder.along.value() + site.rungs[i].value()) * 1000.0 / drawn.scale;
            EXPECT_NEAR(plug->centre.y() - rungs[i].y(), taped_mm, most_off_mm);
            EXPECT_NEAR(rungs[i].x(), plug->centre.x(), most_off_mm);
        }
    }
}

TEST_F(CloseUpOnPaper, BetweenMoundsTheRowIsToScaleAndTheWholeTapeStandsBesideIt) {
    const ExampleField example = field_with_both_kinds();
    const CloseUpFigure drawn = this->drawn(example, 3, LengthUnits::metres);
    const ProbeSite& site = example.plan.probes[3];
    const std::vector<QPointF> rungs = this->rungs(drawn.figure, site.rungs.size());
    for (std::size_t i = 1; i < rungs.size(); ++i) {
        EXPECT_NEAR(rungs[i].x() - rungs[0].x(), site.rungs[i].value() * 1000.0 / drawn.scale, most_off_mm);
        EXPECT_NEAR(rungs[i].y(), rungs[0].y(), most_off_mm);
    }
    EXPECT_FALSE(drawn.broken);
    ASSERT_TRUE(drawn.tape_scale);
    // M001 and M002 are 10 m apart
    std::vector<double> uprights;
    for (const Shape& shape : drawn.figure.shapes())
        if (const auto* stroke = std::get_if<Stroke>(&shape); stroke && stroke->points.size() == 2 &&
                                                              stroke->width_mm == 0.5 &&
                                                              stroke->points[0].x() == stroke->points[1].x())
            uprights.push_back(std::abs(stroke->points[0].y() - stroke->points[1].y()));
    ASSERT_EQ(uprights.size(), 1U);
    EXPECT_NEAR(uprights[0], 10.0 * 1000.0 / *drawn.tape_scale, most_off_mm);
    EXPECT_TRUE(texts(drawn.figure).contains(QStringLiteral("42 cm")));
    EXPECT_TRUE(texts(drawn.figure).contains(QStringLiteral("15 cm right")));
}

TEST_F(CloseUpOnPaper, ScalesAreRoundAndSmallerWhereThereIsLessRoom) {
    const ExampleField example = field_with_both_kinds();
    EXPECT_EQ(drawn(example, 0, LengthUnits::feet_and_inches).scale, 12.0);
    EXPECT_EQ(drawn(example, 0, LengthUnits::metres).scale, 15.0);
    EXPECT_EQ(drawn(example, 0, LengthUnits::metres, {86.0, 120.0}).scale, 10.0);
    EXPECT_EQ(drawn(example, 0, LengthUnits::feet_and_inches, {86.0, 50.0}).scale, 24.0);
}

TEST_F(CloseUpOnPaper, AWayThatHasNoRoomIsBrokenAndSaysSo) {
    ExampleField example = field_with_both_kinds();
    example.plan.probes[3].ladder.along = Metres::of(5.0);
    const CloseUpFigure drawn = this->drawn(example, 3, LengthUnits::metres);
    EXPECT_TRUE(drawn.broken);
    EXPECT_TRUE(texts(drawn.figure).contains(QStringLiteral("5.00 m")));
}

TEST_F(CloseUpOnPaper, EverythingLiesInsideOfItsPlaceAndNoWordsAreSmall) {
    ExampleField example = field_with_both_kinds();
    for (const double along : {0.05, 0.35, 1.2, 4.0, 9.5})
        for (const double across : {-0.6, 0.0, 0.5})
            for (const std::size_t probe : {std::size_t{0}, std::size_t{3}}) {
                example.plan.probes[probe].ladder.along = Metres::of(along);
                example.plan.probes[probe].ladder.across = Metres::of(across);
                const CloseUpFigure drawn = this->drawn(example, probe, LengthUnits::feet_and_inches);
                const QRectF place(QPointF(-0.01, -0.01), drawn.figure.size_mm() + QSizeF(0.02, 0.02));
                for (const Shape& shape : drawn.figure.shapes()) {
                    if (const auto* disc = std::get_if<Disc>(&shape)) {
                        EXPECT_TRUE(place.contains(disc->centre));
                    }
                    if (const auto* words = std::get_if<WordsAt>(&shape)) {
                        EXPECT_TRUE(place.contains(words->baseline)) << words->text.toStdString();
                        EXPECT_GE(words->lettering.size_pt, least_words_pt);
                    }
                }
            }
}

// A ladder that begins at the plug has numbers where the plug's name stands.
TEST_F(CloseUpOnPaper, TheNamesOfMoundsLeaveTheNumbersOfRungsReadable) {
    ExampleField example = field_with_both_kinds();
    ProbeSite& site = example.plan.probes[0];
    for (const double along : {0.05, 0.1, 0.15, 0.2, 0.25}) {
        site.ladder.along = Metres::of(along);
        site.middle = example.field.survey.mounds[0].plug + site.axis.unit() * along;
        const CloseUpFigure drawn = this->drawn(example, 0, LengthUnits::metres);
        const LetteringMeasure measure;
        const auto box = [&](const WordsAt& words) {
            const double width = measure.width_mm(words.text, words.lettering);
            return QRectF(words.baseline.x() - 0.5 * width, words.baseline.y() - 2.3, width, 2.3);
        };
        std::vector<QRectF> numbers;
        std::optional<QRectF> name;
        for (const Shape& shape : drawn.figure.shapes()) {
            const auto* words = std::get_if<WordsAt>(&shape);
            if (words == nullptr || words->side != Side::middle) continue;
            bool is_number = false;
            words->text.toInt(&is_number);
            if (is_number) numbers.push_back(box(*words));
            if (words->text == QStringLiteral("M001")) name = box(*words);
        }
        ASSERT_TRUE(name);
        ASSERT_EQ(numbers.size(), site.rungs.size());
        for (const QRectF& number : numbers) EXPECT_FALSE(number.intersects(*name)) << along;
    }
}

}  // namespace
}  // namespace plugside
