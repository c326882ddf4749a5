#include "app/stages/notes_view.h"

#include <QElapsedTimer>
#include <QTest>
#include <algorithm>

#include "app/stages/note_meanings.h"
#include "tests/app/application.h"
#include "tests/app/example_plan.h"

namespace plugside {
namespace {

FieldSurvey noted_field() {
    FieldSurvey field = example_field().field;
    const std::vector<std::string> notes{"fan 0 kv",      "fan 90 kv", "fan 180 older", "dog, fan 270 fresh",
                                         "zz crushed qq", "",          "mole"};
    for (std::size_t i = 0; i < notes.size(); ++i) {
        field.survey.mounds[i].note = notes[i];
        field.survey.mounds[i].mentions = read_note(notes[i]).mentions;
    }
    return field;
}

int meaning_of(const std::string& means) {
    const auto all = note_meanings();
    for (std::size_t i = 0; i < all.size(); ++i)
        if (all[i].means == means) return static_cast<int>(i);
    ADD_FAILURE() << means;
    return 0;
}

class NotesViewTest : public OnScreen {
protected:
    void open(FieldSurvey field) {
        session_.adopt(std::move(field), {});
        view_.resize(340, 620);
        view_.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&view_));
        ASSERT_TRUE(sorted());
    }
    bool sorted() {
        return QTest::qWaitFor([&] { return view_.model().count(NotesShown::with_a_rest).has_value(); }, 20000);
    }
    bool counted_up() {
        return QTest::qWaitFor([&] { return view_.effect().has_value(); }, 20000);
    }
    [[nodiscard]] const Survey& survey() const { return session_.field()->survey; }

    FieldSession session_;
    Choices choices_;
    NotesView view_{session_, choices_};
};

TEST_F(NotesViewTest, AllThatCanBeSaidIsReadByTheGrammarAsWhatItSays) {
    for (const NoteMeaning& meaning : note_meanings()) {
        const NoteReading reading = read_note(told_meaning(meaning, 135));
        EXPECT_TRUE(reading.rest.empty()) << meaning.means;
        EXPECT_EQ(reading.fan_degrees.has_value(), meaning.wants_bearing) << meaning.means;
    }
    EXPECT_EQ(read_note("old").freshness, Freshness::older);
    EXPECT_EQ(read_note("gopher mound").kind, SignKind::gopher_mound);
    EXPECT_EQ(read_note("surface plug").kind, SignKind::surface_plug);
    EXPECT_EQ(read_note("not a mound").kind, SignKind::other);
    EXPECT_TRUE(read_note("no fan").no_fan);
    EXPECT_EQ(read_note(told_meaning(note_meanings()[1], 135)).fan_degrees, 135.0);
}

TEST_F(NotesViewTest, FiltersKeepTheNotesWithARestAndThoseThatSpeakOfSomebody) {
    open(noted_field());
    EXPECT_EQ(view_.model().count(NotesShown::with_a_rest), 3U);
    EXPECT_EQ(view_.model().count(NotesShown::all), 6U);
    EXPECT_EQ(view_.model().count(NotesShown::with_mentions), 1U);
    EXPECT_EQ(view_.model().said(), QStringList{"dog (1 mark)"});
    EXPECT_EQ(view_.model().row(0).values, "fan 0");
    view_.model().show_only(NotesShown::with_mentions);
    ASSERT_EQ(view_.model().rowCount(), 1);
    EXPECT_EQ(view_.model().mound_of(0), 3U);
}

TEST_F(NotesViewTest, ThePiecesOfANoteAreTheNote) {
    const std::string note = "  fan 135, kv! zz (dog) señal 2\"";
    QString whole;
    for (const NotePiece& piece : pieces_of(note, read_note(note))) whole += piece.text;
    EXPECT_EQ(whole, QString::fromStdString(note));
    for (const NotePiece& word : words_of(note, read_note(note))) EXPECT_FALSE(word.text.trimmed().isEmpty());
}

TEST_F(NotesViewTest, OneNotePutRightChangesThatMarkAloneAndUndoneAllIsAsRead) {
    open(noted_field());
    const Survey before = survey();
    view_.show_note_of(0);
    EXPECT_EQ(view_.words().picked(), "kv");
    view_.say(meaning_of("old"));
    view_.correct_this_note();
    EXPECT_EQ(survey().mounds[0].freshness, Freshness::older);
    ASSERT_TRUE(survey().mounds[0].recorded.has_value());
    EXPECT_EQ(survey().mounds[0].recorded->freshness, Freshness::fresh);
    for (std::size_t i = 1; i < before.mounds.size(); ++i) EXPECT_EQ(survey().mounds[i], before.mounds[i]) << i;
    EXPECT_EQ(session_.history().count(), 1);
    session_.history().undo();
    EXPECT_EQ(survey().mounds, before.mounds);
    EXPECT_EQ(survey().answers, before.answers);
    EXPECT_EQ(survey().note_rules, before.note_rules);
    session_.history().redo();
    EXPECT_EQ(survey().mounds[0].freshness, Freshness::older);
}

TEST_F(NotesViewTest, ARuleOfTheWalkChangesJustTheMarksThatWereToldAndIsLiftedAgain) {
    open(noted_field());
    const Survey before = survey();
    view_.show_note_of(1);
    view_.say(meaning_of("mole"));
    ASSERT_TRUE(counted_up());
    const RuleEffect told = *view_.effect();
    EXPECT_EQ(told.taken_otherwise, (std::vector<std::size_t>{0, 1}));
    view_.correct_the_walk();
    for (std::size_t i = 0; i < before.mounds.size(); ++i) {
        const bool was_told =
            std::find(told.taken_otherwise.begin(), told.taken_otherwise.end(), i) != told.taken_otherwise.end();
        EXPECT_EQ(survey().mounds[i] != before.mounds[i], was_told) << i;
    }
    ASSERT_EQ(survey().note_rules.size(), 1U);
    view_.show_corrections(true);
    view_.lift();
    EXPECT_EQ(survey().mounds, before.mounds);
    EXPECT_TRUE(survey().note_rules.empty());
    session_.history().undo();
    EXPECT_EQ(survey().mounds[0].kind, SignKind::mole);
}

TEST_F(NotesViewTest, TheWholeRestIsTakenAtOnce) {
    open(noted_field());
    view_.show_note_of(4);
    EXPECT_EQ(view_.words().left_over(), (std::vector<std::string>{"zz", "qq"}));
    view_.say(meaning_of(""));
    view_.take_all_of_the_rest();
    view_.correct_this_note();
    EXPECT_EQ(survey().note_rules.size(), 2U);
    ASSERT_TRUE(QTest::qWaitFor([&] { return view_.model().count(NotesShown::with_a_rest) == 2U; }, 20000));
}

TEST_F(NotesViewTest, WordsArePickedByKeys) {
    open(noted_field());
    view_.model().show_only(NotesShown::all);
    view_.show_note_of(3);
    QTest::keyClick(&view_.words(), Qt::Key_Home);
    EXPECT_EQ(view_.words().picked(), "dog");
    QTest::keyClick(&view_.words(), Qt::Key_Right);
    QTest::keyClick(&view_.words(), Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_EQ(view_.words().picked(), "fan 270");
}

TEST_F(NotesViewTest, TenThousandNotesAreNotReadBeforeTheyAreShown) {
    FieldSurvey field = noted_field();
    Mound mound = field.survey.mounds[0];
    for (int i = 0; i < 10000; ++i) {
        mound.name = "N" + std::to_string(i);
        mound.plug = {8.0 * (i % 100), 30.0 + 8.0 * (i / 100)};
        mound.note = "fan " + std::to_string(i % 360) + (i % 7 == 0 ? " kv" : " fresh");
        field.survey.mounds.push_back(mound);
    }
    open(std::move(field));
    view_.model().show_only(NotesShown::all);
    EXPECT_EQ(view_.model().rowCount(), 10006);
    QElapsedTimer clock;
    clock.start();
    view_.grab();
    // generous for a busy machine and for sanitizers
    EXPECT_LT(clock.elapsed(), 3000);
    EXPECT_LT(view_.model().rows_read(), 200U);
    view_.say(meaning_of("old"));
    view_.show_note_of(8);
    view_.words().pick(view_.words().words() - 1, view_.words().words() - 1);
    ASSERT_TRUE(counted_up());
    clock.restart();
    view_.correct_the_walk();
    RecordProperty("correcting_ten_thousand_ms", static_cast<int>(clock.elapsed()));
    EXPECT_LT(clock.elapsed(), 5000);
}

}  // namespace
}  // namespace plugside
