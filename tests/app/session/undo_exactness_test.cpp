// What random sequences of acts brought to light, each as it failed: undo and redo that came back to nearly the same.
#include <algorithm>
#include <fstream>

#include "core/plan/make_plan.h"
#include "geo/read/note_corrections.h"
#include "tests/app/application.h"
#include "tests/app/example_plan.h"
#include "tests/app/session/field_export.h"

namespace plugside {
namespace {

using testing_support::TemporaryFolder;

const std::filesystem::path meadow = PLUGSIDE_SOURCE_DIR "/sample-projects/creek-meadow";

class UndoExactness : public OnScreen {
protected:
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 120000); }
    const Survey& survey() const { return session_.field()->survey; }
    void decide(const char* mound, SetChoice choice) {
        session_.decide_on({ProbeKind::plug_side, mound, ""}, choice);
        session_.planning().stop();
    }
    void add(const FieldSession::Files& files) {
        const auto before = session_.field();
        session_.add(files);
        ASSERT_TRUE(wait_for([&] { return session_.field() != before && !session_.file_work().running(); }));
        session_.planning().stop();
    }

    FieldSession session_;
};

TEST_F(UndoExactness, AnEarlierDecisionComesBackIntoItsRow) {
    session_.adopt(example_field().field, {});
    for (const char* mound : {"M001", "M002", "M003"}) decide(mound, SetChoice::kept);
    const auto decided = survey().decisions;
    decide("M001", SetChoice::dropped);
    decide("M002", SetChoice::proposed);
    const auto after = survey().decisions;
    session_.history().undo();
    session_.history().undo();
    EXPECT_EQ(survey().decisions, decided);
    session_.history().redo();
    session_.history().redo();
    EXPECT_EQ(survey().decisions, after);
}

TEST_F(UndoExactness, DecisionsOnSeveralComeBackIntoTheirRows) {
    session_.adopt(example_field().field, {});
    for (const char* mound : {"M001", "M002", "M003", "M004"}) decide(mound, SetChoice::kept);
    const auto decided = survey().decisions;
    session_.decide_on_all({{{ProbeKind::plug_side, "M003", ""}, SetChoice::dropped, {}},
                            {{ProbeKind::plug_side, "M001", ""}, SetChoice::proposed, {}},
                            {{ProbeKind::plug_side, "M006", ""}, SetChoice::kept, {}}},
                           "several");
    session_.history().undo();
    EXPECT_EQ(survey().decisions, decided);
}

// A rule of a magnetic walk turns the fan that it reads; a mark whose fans were turned by hand since is read otherwise. Lifting a
// later rule read all notes again, and the fan of the first came back another.
TEST_F(UndoExactness, ANoteRuleUndoneLeavesWhatEarlierRulesReadAsItWas) {
    FieldSurvey field = example_field().field;
    field.survey.walks.front().bearings_from = North::magnetic_north;
    for (Mound& mound : field.survey.mounds) {
        mound.note = "zz gr";
        mound.time = UtcTime{std::chrono::seconds(1772357400)};
    }
    session_.adopt(field, {});
    session_.use_note_rules({{"", "zz", "fan 90", ""}}, "first");
    Mend turned;
    turned.kind = MendKind::turn_fans;
    turned.marks = {"M002"};
    turned.turn_degrees = 4.0;
    session_.mend(turned, "turn");
    const Survey before = survey();
    session_.use_note_rules(with_rule(before.note_rules, {"", "gr", "fresh", ""}), "second");
    EXPECT_NE(survey().mounds[1].fan, before.mounds[1].fan) << "the case is no case";
    session_.history().undo();
    EXPECT_EQ(survey().answers, before.answers);
    EXPECT_EQ(survey().mounds, before.mounds);
}

TEST_F(UndoExactness, ANoteRuleUndoneGivesBackMentionsThatNoNoteTells) {
    FieldSurvey field = example_field().field;
    field.survey.mounds[0].note = "gr";
    field.survey.mounds[0].mentions = {{MentionCategory::pets, "dog"}};  // told by another of the file's texts
    session_.adopt(field, {});
    session_.use_note_rules({{"", "gr", "fresh", ""}}, "rule");
    session_.history().undo();
    EXPECT_EQ(survey().mounds, field.survey.mounds);
}

// The ground that a file brought went with the undo of an act made before it, and did not come back with redo.
TEST_F(UndoExactness, GroundThatAFileAddedStaysWithTheActsThatCameAfterIt) {
    session_.open({meadow / "walk.gpx"});
    ASSERT_TRUE(wait_for([&] { return session_.field() && !session_.file_work().running(); }));
    session_.planning().stop();
    Ground drawn;
    drawn.barriers.push_back({"hedge", {{{0.0, 0.0}, {9.0, 9.0}}}});
    session_.edit(SurveyPart(drawn), "draw");
    add({meadow / "ground.gpkg"});
    const Survey added = survey();
    ASSERT_FALSE(added.ground.boundary.empty());
    session_.history().undo();
    EXPECT_EQ(survey().ground, drawn);
    EXPECT_EQ(session_.files().size(), 1U);
    EXPECT_EQ(session_.steps().size(), 1U);
    session_.history().undo();
    EXPECT_EQ(survey().ground, Ground{});
    session_.history().redo();
    session_.history().redo();
    EXPECT_EQ(survey().ground, added.ground);
    EXPECT_EQ(survey().mounds, added.mounds);
    EXPECT_EQ(session_.files().size(), 2U);
    EXPECT_GT(survey().revision, added.revision) << "a plan of before is not one of now";
}

TEST_F(UndoExactness, FilesReadAnewWithMarksElsewhereKeepTheHistory) {
    const TemporaryFolder folder;
    const auto walk = folder.file("walk.csv", "name,lat,lon,lat2\na,41.0001,-104.9,41.0002\nb,41.0003,-104.9,41.0004\n");
    session_.open({walk});
    ASSERT_TRUE(wait_for([&] { return session_.field() && !session_.file_work().running(); }));
    decide("a", SetChoice::kept);
    const Survey read = survey();
    std::ofstream(walk) << "name,lat,lon\na,41.0002,-104.9\nb,41.0004,-104.9\n";
    session_.read_again({walk}, {});
    ASSERT_TRUE(wait_for([&] { return !session_.file_work().running(); }));
    session_.planning().stop();
    EXPECT_NE(survey().mounds.front().plug, read.mounds.front().plug);
    EXPECT_EQ(survey().decisions, read.decisions);
    session_.history().undo();
    EXPECT_EQ(survey().mounds, read.mounds);
    session_.history().undo();
    EXPECT_TRUE(survey().decisions.empty());
}

// Letters follow the plans in between: undone, the plan was the first one's but for the letters.
TEST_F(UndoExactness, SystemsHaveTheLettersAgainThatTheyHadInTheStateThatIsUndoneTo) {
    session_.open({meadow / "walk.gpx", meadow / "ground.gpkg"});
    ASSERT_TRUE(wait_for([&] { return session_.plan_is_current(); }));
    const Plan first = *session_.plan();
    ASSERT_GT(first.systems.size(), 3U);
    const auto name_in = [&](std::size_t system) { return survey().mounds[first.systems[system].mounds.front()].name; };
    // the smallest go into the largest one after the other, so that their letters are free
    std::vector<KnownFact> known;
    for (std::size_t system = 1; system < 4; ++system) {
        known.push_back({FactKind::same_system, {name_in(0), name_in(system)}, {}, {}, "", {}});
        session_.edit(SurveyPart(known), "one animal");
        ASSERT_TRUE(wait_for([&] { return session_.plan_is_current(); }));
    }
    const Plan last = *session_.plan();
    const auto letters = [](const Plan& plan) {
        std::vector<std::string> all;
        for (const BurrowSystem& system : plan.systems) all.push_back(system.letter);
        return all;
    };
    session_.history().setIndex(0);
    ASSERT_TRUE(wait_for([&] { return session_.plan_is_current(); }));
    EXPECT_EQ(letters(*session_.plan()), letters(first));
    session_.history().setIndex(session_.history().count());
    ASSERT_TRUE(wait_for([&] { return session_.plan_is_current(); }));
    EXPECT_EQ(letters(*session_.plan()), letters(last));
}

}  // namespace
}  // namespace plugside
