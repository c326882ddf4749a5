// Field sheets as pages: whole cards, two or more a page, and on each page who decides.
#include "app/sheets/sheet_pages.h"

#include <map>

#include "app/sheets/lettering.h"
#include "app/sheets/set_card.h"
#include "app/sheets/sheet_pager.h"
#include "core/sets/set_code.h"
#include "tests/app/application.h"
#include "tests/app/sheets/sheet_example.h"

namespace plugside {
namespace {

class FieldSheets : public OnScreen {
protected:
    static std::vector<Figure> pages_of(const SheetInput& input) {
        const auto contents = sheet_contents(input);
        auto pages = sheet_pages(input, *contents);
        EXPECT_TRUE(pages);
        return pages ? std::move(*pages) : std::vector<Figure>();
    }
    static std::vector<WordsAt> words_on(const Figure& page) {
        std::vector<WordsAt> found;
        for (const Shape& shape : page.shapes())
            if (const auto* words = std::get_if<WordsAt>(&shape)) found.push_back(*words);
        return found;
    }
    static QString text_on(const Figure& page) {
        QStringList texts;
        for (const WordsAt& words : words_on(page)) texts << words.text;
        return texts.join(QLatin1Char(' '));
    }
    // Frames of cards: the boxes with the heaviest line.
    static std::vector<QRectF> cards_on(const Figure& page) {
        std::vector<QRectF> cards;
        for (const Shape& shape : page.shapes())
            if (const auto* stroke = std::get_if<Stroke>(&shape);
                stroke && stroke->closed && stroke->width_mm == 0.6 && stroke->points.size() == 4)
                cards.emplace_back(stroke->points[0], stroke->points[2]);
        return cards;
    }
};

TEST_F(FieldSheets, BreakNoLineWithinALength) {
    const LetteringMeasure measure;
    const QString told = QStringLiteral("then 2 1/4 in nearer, 5,7 cm o 12 1/2 pulg, 3 ft 4 in apart; 2 insects, 9 of 10");
    for (double width = 30.0; width < 120.0; width += 1.0) {
        const QStringList lines = measure.lines(told, width, {10.0, false, Ink::black});
        EXPECT_EQ(lines.join(QLatin1Char(' ')), told);
        for (const QString& line : lines)
            for (const char* rest : {"1/4", "1/2", "in ", "cm", "pulg", "ft"})
                EXPECT_FALSE(line.startsWith(QLatin1String(rest))) << line.toStdString();
    }
}

TEST_F(FieldSheets, KeepEveryCardWholeAndTwoOrMoreOnAPage) {
    const ExampleField example = field_with_sets(23);
    for (const Paper paper : {Paper::letter, Paper::a4})
        for (const Language language : {Language::english, Language::spanish}) {
            SheetInput input = sheets_of(example, language, LengthUnits::metres, paper);
            input.pages = {false, false, false, false, true, false, {}};
            std::size_t cards = 0;
            const std::vector<Figure> pages = pages_of(input);
            for (std::size_t i = 0; i < pages.size(); ++i) {
                const QRectF inside(QPointF(0.0, 0.0), size_mm(paper));
                const std::vector<QRectF> on_page = cards_on(pages[i]);
                EXPECT_TRUE(on_page.size() >= 2U || i + 1 == pages.size());
                for (const QRectF& card : on_page) EXPECT_TRUE(inside.contains(card)) << i;
                for (std::size_t a = 1; a < on_page.size(); ++a) EXPECT_FALSE(on_page[a].intersects(on_page[a - 1]));
                cards += on_page.size();
            }
            EXPECT_EQ(cards, 23U);
        }
}

TEST_F(FieldSheets, KeepAllWordsOnThePageAndNoneSmallerThanNinePoints) {
    ExampleField example = field_with_both_kinds();
    example.field.field_name =
        "A field with a very long name that somebody typed without thinking of paper, north of the old road to the mill";
    for (const Paper paper : {Paper::letter, Paper::a4})
        for (const Language language : {Language::english, Language::spanish})
            for (const Figure& page : pages_of(sheets_of(example, language, LengthUnits::feet_and_inches, paper))) {
                const LetteringMeasure measure;
                for (const WordsAt& words : words_on(page)) {
                    EXPECT_GE(words.lettering.size_pt, 9.0);
                    const double width = measure.width_mm(words.text, words.lettering);
                    const double left = words.baseline.x() - (words.side == Side::left    ? 0.0
                                                              : words.side == Side::right ? width
                                                                                          : 0.5 * width);
                    EXPECT_GE(left, page_edge_mm - 0.6) << words.text.toStdString();
                    EXPECT_LE(left + width, size_mm(paper).width() - page_edge_mm + 0.6) << words.text.toStdString();
                }
            }
}

TEST_F(FieldSheets, SayOnEachPageTheFieldTheAnimalsThePageAndWhoDecides) {
    const ExampleField example = field_with_sets(9);
    const std::vector<Figure> pages = pages_of(sheets_of(example));
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const QString text = text_on(pages[i]);
        EXPECT_TRUE(text.contains(QStringLiteral("Example field")));
        EXPECT_TRUE(text.contains(QStringLiteral("1 to 3 animals (90 in 100) on 0.15 acres walked")));
        EXPECT_TRUE(text.contains(QStringLiteral("page %1 of %2").arg(i + 1).arg(pages.size())));
        EXPECT_TRUE(text.contains(QStringLiteral("The label, local rules and a licensed applicator decide.")));
    }
}

TEST_F(FieldSheets, NameEachSetByItsCodeOnCardListAndLog) {
    const ExampleField example = field_with_sets(7);
    std::map<QString, int> seen;
    for (const Figure& page : pages_of(sheets_of(example)))
        for (const WordsAt& words : words_on(page))
            if (const auto name = read_set_code(words.text.toStdString())) ++seen[words.text];
    ASSERT_EQ(seen.size(), 7U);
    for (const auto& [code, times] : seen) EXPECT_EQ(times, 3) << code.toStdString();
}

TEST_F(FieldSheets, PrintWhatWasChosenAndNoDroppedSet) {
    ExampleField example = field_with_sets(6);
    example.plan.sets[1].choice = SetChoice::dropped;
    SheetInput input = sheets_of(example);
    EXPECT_EQ(sheet_contents(input)->cards.size(), 5U);
    input.pages.sets = {1, 2, 5};
    const auto contents = sheet_contents(input);
    ASSERT_EQ(contents->cards.size(), 2U);
    EXPECT_EQ(contents->cards[1].number, 5);
    input.pages = {false, false, false, true, false, false, {}};
    EXPECT_EQ(pages_of(input).size(), 1U);
}

TEST_F(FieldSheets, TellWhichSetsACautionHoldsFor) {
    const ExampleField example = field_with_both_kinds();
    const auto contents = sheet_contents(sheets_of(example));
    ASSERT_EQ(contents->cautions.size(), 2U);
    EXPECT_EQ(contents->cautions[0].caution.word, QStringLiteral("STOP"));
    EXPECT_EQ(contents->cautions[0].where, QStringLiteral("At 4"));
    // what holds everywhere is not told on each card again
    ASSERT_EQ(contents->cards[3].cautions.size(), 1U);
    EXPECT_EQ(contents->cards[3].cautions[0].weight, CautionWeight::stop);
}

TEST_F(FieldSheets, ReadRungsFromTheTapeAndFromTheMiddleOfTheRow) {
    const ExampleField example = field_with_both_kinds();
    const auto contents = sheet_contents(sheets_of(example, Language::english, LengthUnits::metres));
    const auto readings = [&](std::size_t card) {
        QStringList texts;
        for (const RungToTick& rung : contents->cards[card].rungs) texts << rung.reading;
        return texts.mid(0, 4);
    };
    EXPECT_EQ(readings(0), QStringList({"35 cm", "40 cm", "30 cm", "45 cm"}));
    EXPECT_EQ(readings(3), QStringList({"middle", "5.7 cm L", "5.7 cm R", "11.4 cm L"}));
    EXPECT_EQ(fine_reading(Metres::from_inches(2.25), LengthUnits::feet_and_inches), QStringLiteral("2 1/4 in"));
    EXPECT_EQ(fine_reading(Metres::from_inches(0.5), LengthUnits::feet_and_inches), QStringLiteral("1/2 in"));
    EXPECT_EQ(fine_reading(Metres::from_inches(31.0), LengthUnits::feet_and_inches), QStringLiteral("31 in"));
    EXPECT_EQ(fine_reading(Metres::of(-0.05), LengthUnits::metres), QStringLiteral("-5 cm"));
}

TEST_F(FieldSheets, StopWhenTheyAreStopped) {
    const ExampleField example = field_with_sets(30);
    std::stop_source source;
    source.request_stop();
    Progress progress;
    progress.stop = source.get_token();
    EXPECT_FALSE(sheet_contents(sheets_of(example), progress));
    const auto contents = sheet_contents(sheets_of(example));
    EXPECT_FALSE(sheet_pages(sheets_of(example), *contents, progress));
}

}  // namespace
}  // namespace plugside
