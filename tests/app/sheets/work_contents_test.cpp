// How the work is done, on field sheets: the method's steps, conditions with their days, judged cautions, what to load.
#include "app/sheets/work_contents.h"

#include <set>

#include "app/sheets/sheet_pages.h"
#include "core/sets/method.h"
#include "tests/app/application.h"
#include "tests/app/sheets/sheet_example.h"

namespace plugside {
namespace {

class WorkOnPaper : public OnScreen {
protected:
    WorkOnPaper() {
        work_.method = "trap-in-lateral";
        work_.conditions.soil_moisture = {SoilMoisture::wet, made_in_october() - std::chrono::hours(2)};
        work_.conditions.rain_due = {true, made_in_october() - std::chrono::hours(50)};
        work_.conditions.children = {std::nullopt, made_in_october() - std::chrono::hours(1)};
        work_.licence = {Licence{LicenceKind::private_applicator, "Ana Ejemplo", "LIC-48213", {}}, made_in_october()};
        work_.signed_off.push_back(
            {"kill-trap-law", "trap-in-lateral", {}, "Ana Ejemplo", "the county's page was read", made_in_october()});
    }
    SheetInput input(Language language = Language::english) const {
        SheetInput made = sheets_of(example_, language);
        made.work = work_;
        return made;
    }
    static QString text_on(const std::vector<Figure>& pages) {
        QStringList texts;
        for (const Figure& page : pages)
            for (const Shape& shape : page.shapes())
                if (const auto* words = std::get_if<WordsAt>(&shape)) texts << words->text;
        return texts.join(QLatin1Char(' '));
    }
    ExampleField example_ = field_with_sets(12);
    WorkOrder work_;
};

TEST_F(WorkOnPaper, EachCardHasTheMethodsStepsAfterTheSearch) {
    for (const Language language : {Language::english, Language::spanish}) {
        const auto contents = sheet_contents(input(language));
        const LanguageHere here(language);
        const auto method = built_in_method("trap-in-lateral");
        ASSERT_TRUE(method);
        for (const SetCard& card : contents->cards) {
            EXPECT_EQ(card.method.toStdString(), method->name);
            ASSERT_EQ(card.steps.size() + 1, static_cast<qsizetype>(method->steps.size()));
            for (qsizetype i = 0; i < card.steps.size(); ++i)
                EXPECT_EQ(card.steps[i].toStdString(), method->steps[static_cast<std::size_t>(i) + 1].text);
            EXPECT_FALSE(card.cover.isEmpty());
        }
        ASSERT_EQ(contents->methods.size(), 1U);
        EXPECT_EQ(contents->methods[0].steps.size(), method->steps.size());
        const auto pages = sheet_pages(input(language), *contents);
        EXPECT_TRUE(text_on(*pages).contains(contents->methods[0].steps.back().text.section(QLatin1Char(' '), 0, 2)));
    }
}

TEST_F(WorkOnPaper, EveryMethodStillGivesTwoCardsAPage) {
    for (const std::string& id : built_in_method_ids())
        for (const Language language : {Language::english, Language::spanish})
            for (const Paper paper : {Paper::letter, Paper::a4}) {
                work_.method = id;
                SheetInput wanted = input(language);
                wanted.paper = paper;
                wanted.pages = {false, false, false, false, true, false, {}};
                const auto pages = sheet_pages(wanted, *sheet_contents(wanted));
                EXPECT_LE(pages->size(), 6U) << id;
            }
}

TEST_F(WorkOnPaper, ConditionsStandWithTheirDayAndWhatIsTooOldIsAskedAgain) {
    const auto contents = sheet_contents(input());
    const auto row = [&](Question question) {
        const QString asked = QString::fromStdString(asked_as(question));
        for (const ConditionRow& one : contents->conditions)
            if (one.question == asked) return one;
        return ConditionRow{};
    };
    EXPECT_EQ(row(Question::soil_moisture).answer.toStdString(), answer_shown("wet"));
    EXPECT_TRUE(row(Question::soil_moisture).told.startsWith(QStringLiteral("1 October 2026")));
    EXPECT_TRUE(row(Question::rain_due).told.contains(QStringLiteral("too old, ask again")));
    EXPECT_EQ(row(Question::children).answer, QStringLiteral("not known"));
}

TEST_F(WorkOnPaper, CautionsAreThoseJudgedAndWhatIsNotAnsweredSaysSo) {
    const auto contents = sheet_contents(input());
    ASSERT_FALSE(contents->cautions.empty());
    const JudgedPlan judged = judge(example_.field.survey, work_, example_.plan, made_in_october());
    std::set<std::string> shown;
    for (const JudgedSet& set : judged.sets)
        for (const Judgement* judgement : set.shown()) shown.insert(find_caution(judgement->caution)->sentence);
    std::set<std::string> printed;
    bool unanswered = false;
    for (const CautionRow& row : contents->cautions) {
        printed.insert(row.caution.sentence.toStdString());
        unanswered = unanswered || row.caution.word.contains(QStringLiteral("NOT ANSWERED"));
    }
    EXPECT_EQ(printed, shown);
    EXPECT_TRUE(unanswered);
}

TEST_F(WorkOnPaper, NamesNumbersAndReasonsOfLicenceAndSignatureStayAway) {
    const auto contents = sheet_contents(input());
    const auto pages = sheet_pages(input(), *contents);
    const QString text = text_on(*pages);
    for (const char* secret : {"Ana", "LIC-48213", "county's page"})
        EXPECT_FALSE(text.contains(QLatin1String(secret))) << secret;
}

TEST_F(WorkOnPaper, TellsWhatToLoadAndHowLongItTakes) {
    const auto contents = sheet_contents(input());
    QStringList load;
    for (const LoadRow& row : contents->load) load << row.what;
    EXPECT_TRUE(load.join(QLatin1Char('\n')).contains(QStringLiteral("traps")));
    ASSERT_FALSE(contents->load_remarks.isEmpty());
    EXPECT_TRUE(contents->load_remarks.front().startsWith(QStringLiteral("Working time:")));
}

TEST_F(WorkOnPaper, EveryAnswerHasWords) {
    Conditions told;
    const UtcTime at = made_in_october();
    told = {{SoilMoisture::dry, at},
            {false, at},
            {true, at},
            {std::vector<WaterDay>{{{}, 3.0, 0.0}}, at},
            {12.5, at},
            {SoilTexture::clay, at},
            {true, at},
            {false, at},
            {std::string("alfalfa"), at},
            {SiteUse::pasture, at},
            {std::set<PropertyUse>{PropertyUse::home}, at},
            {Visits{true, {}, {}, "school days"}, at},
            {Visits{}, at},
            {Visits{}, at},
            {Visits{}, at},
            {true, at},
            {},
            {true, at},
            {WildlifeAnswer::awaited, at},
            "the county office",
            {true, at},
            {UtilitiesCall::marked, at},
            "ticket 12",
            {true, at},
            {true, at},
            {OfficeAnswer::not_asked, at}};
    for (const Question question : all_questions()) {
        if (question >= Question::licence) continue;
        EXPECT_FALSE(answer_words(told, question).isEmpty()) << to_text(question);
    }
    EXPECT_EQ(answer_words(told, Question::soil_temperature), QStringLiteral("12.5 °C (55 °F)"));
    EXPECT_EQ(answer_words(told, Question::children), QStringLiteral("yes, school days"));
    EXPECT_TRUE(answer_words(Conditions(), Question::frost).isEmpty());
}

}  // namespace
}  // namespace plugside
