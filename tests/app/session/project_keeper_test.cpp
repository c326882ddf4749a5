// What is done to a field is in its project file at once, without anybody saving.
#include "app/session/project_keeper.h"

#include <QSignalSpy>
#include <fstream>
#include <random>

#include "app/commands/known_facts.h"
#include "app/session/project_places.h"
#include "tests/app/application.h"
#include "tests/app/example_plan.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using testing_support::TemporaryFolder;

const std::filesystem::path meadow = PLUGSIDE_SOURCE_DIR "/sample-projects/creek-meadow";

class ProjectKeeperTest : public OnScreen {
protected:
    ProjectKeeperTest() {
        QObject::connect(&keeper_, &ProjectKeeper::refused, [this](const QString& sentence) { refused_ << sentence; });
        QObject::connect(&session_, &FieldSession::field_replaced, [this] { imagery_.lie_on(session_.field()->frame); });
    }
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 120000); }
    void open_example() {
        session_.adopt(example_field().field, {"/media/card/example.gpx"});
        session_.planning().stop();
    }
    // What a copy of the file gives: the file itself is open.
    Project in_the_file() {
        EXPECT_TRUE(keeper_.settle()) << keeper_.why_not().toStdString();
        return in_a_copy_of(*keeper_.file());
    }
    Project in_a_copy_of(const std::filesystem::path& file) {
        const auto copy = next_copy();
        std::filesystem::copy_file(file, copy);
        const auto store = ProjectStore::open(copy);
        EXPECT_TRUE(store) << sentence(store.error());
        Project project = store ? *store->project() : Project{};
        return project;
    }
    std::filesystem::path next_copy() { return folder_ / ("copy " + std::to_string(++copies_) + ".plugside"); }
    std::filesystem::path last_copy() { return folder_ / ("copy " + std::to_string(copies_) + ".plugside"); }
    void decide(const char* mound, SetChoice choice) {
        session_.decide_on({ProbeKind::plug_side, mound, ""}, choice);
        session_.planning().stop();
    }
    void open(const std::filesystem::path& file) {
        keeper_.open(file);
        ASSERT_TRUE(wait_for([&] { return !keeper_.opening(); }));
    }

    TemporaryFolder folder_;
    FieldSession session_;
    Imagery imagery_{folder_.path() / "copies"};
    Choices choices_;
    ProjectKeeper keeper_{session_, imagery_, choices_};
    QStringList refused_;
    int copies_ = 0;
};

TEST_F(ProjectKeeperTest, AFieldHasAProjectBeforeAnybodyNamedOne) {
    EXPECT_FALSE(keeper_.file());
    EXPECT_TRUE(keeper_.kept());
    open_example();
    ASSERT_TRUE(keeper_.file());
    EXPECT_FALSE(keeper_.named());
    EXPECT_TRUE(in_the_file() == keeper_.snapshot());
    EXPECT_EQ(keeper_.file()->filename().string().rfind("example-field ", 0), 0U) << *keeper_.file();
    EXPECT_EQ(recent_projects(), std::vector{*keeper_.file()});
}

TEST_F(ProjectKeeperTest, EveryActUndoneAndRedoneIsInTheFileAtOnce) {
    open_example();
    std::mt19937 random(7);
    const char* const mounds[] = {"M001", "M002", "M003", "M004"};
    for (int act = 0; act < 40; ++act) {
        switch (random() % 6) {
            case 0: session_.history().undo(); break;
            case 1: session_.history().redo(); break;
            case 2: {
                Ground ground = session_.field()->survey.ground;
                ground.barriers.push_back({"ditch", {{{0.0, static_cast<double>(act)}, {9.0, 9.0}}}});
                session_.edit(SurveyPart(ground), "barrier");
                break;
            }
            case 3: {
                KnownFact fact;
                fact.kind = FactKind::not_a_gopher;
                fact.marks = {mounds[random() % 4]};
                session_.edit(SurveyPart(said(session_.field()->survey.known, fact)), "said");
                break;
            }
            case 4: {
                Mend moved;
                moved.kind = MendKind::move;
                moved.marks = {mounds[random() % 4]};
                moved.to = {{static_cast<double>(act), 1.0}};
                session_.mend(moved, "moved");
                break;
            }
            default: decide(mounds[random() % 4], static_cast<SetChoice>(random() % 3)); break;
        }
        session_.planning().stop();
        ASSERT_TRUE(in_the_file() == keeper_.snapshot()) << "act " << act;
    }
    EXPECT_TRUE(refused_.isEmpty());
}

TEST_F(ProjectKeeperTest, ActsThatFollowEachOtherFasterThanTheDiskAreAllThereInTheEnd) {
    open_example();
    for (int act = 0; act < 300; ++act) decide("M001", act % 2 == 0 ? SetChoice::kept : SetChoice::dropped);
    EXPECT_FALSE(keeper_.kept());
    EXPECT_TRUE(in_the_file() == keeper_.snapshot());
    EXPECT_TRUE(keeper_.kept());
    EXPECT_EQ(session_.field()->survey.decisions.front().choice, SetChoice::dropped);
}

TEST_F(ProjectKeeperTest, AProjectOpenedAgainIsAsItWasLeftAndItsHistoryBeginsEmpty) {
    open_example();
    decide("M001", SetChoice::kept);
    decide("M002", SetChoice::dropped);
    choices_.use(LengthUnits::metres);
    imagery_.set_tone(0.25);
    const Project left = in_the_file();
    const auto file = folder_.path() / "named.plugside";
    keeper_.keep_as(file);
    ASSERT_TRUE(wait_for([&] { return keeper_.named(); }));
    session_.adopt(FieldSurvey{}, {});  // of the same opening: emptied
    ASSERT_TRUE(keeper_.settle());
    std::filesystem::copy_file(last_copy(), folder_ / "other.plugside");
    choices_.use(LengthUnits::feet_and_inches);
    open(folder_ / "other.plugside");
    EXPECT_TRUE(keeper_.snapshot() == left);
    EXPECT_FALSE(session_.history().canUndo());
    EXPECT_TRUE(session_.not_handed_out());
    EXPECT_EQ(choices_.units(), LengthUnits::metres);
    EXPECT_EQ(*keeper_.file(), folder_ / "other.plugside");
    EXPECT_EQ(recent_projects(), (std::vector<std::filesystem::path>{folder_ / "other.plugside", file}));
    EXPECT_TRUE(refused_.isEmpty());
    // and it goes on from there
    decide("M003", SetChoice::kept);
    EXPECT_EQ(in_the_file().field->survey.decisions.size(), 3U);
}

TEST_F(ProjectKeeperTest, ANameMovesTheUnnamedProjectAndCopiesANamedOne) {
    open_example();
    ASSERT_TRUE(keeper_.settle());
    const auto unnamed = *keeper_.file();
    keeper_.keep_as(folder_ / "first");
    ASSERT_TRUE(wait_for([&] { return keeper_.named(); }));
    EXPECT_EQ(*keeper_.file(), folder_ / "first.plugside");
    decide("M001", SetChoice::kept);
    EXPECT_EQ(in_the_file().field->survey.decisions.size(), 1U);
    EXPECT_FALSE(std::filesystem::exists(unnamed));
    keeper_.keep_as(folder_ / "second.plugside");
    ASSERT_TRUE(wait_for([&] { return *keeper_.file() == folder_ / "second.plugside"; }));
    decide("M002", SetChoice::kept);
    EXPECT_EQ(in_the_file().field->survey.decisions.size(), 2U);
    EXPECT_EQ(in_a_copy_of(folder_ / "first.plugside").field->survey.decisions.size(), 1U);
}

TEST_F(ProjectKeeperTest, AnotherFieldGetsAnotherProjectAndTheFirstStaysWhole) {
    session_.open({meadow / "walk.gpx"});
    ASSERT_TRUE(wait_for([&] { return session_.field() && !session_.file_work().running(); }));
    session_.planning().stop();
    ASSERT_TRUE(keeper_.file());
    const auto first = *keeper_.file();
    const std::string mound = session_.field()->survey.mounds.front().name;
    decide(mound.c_str(), SetChoice::kept);
    const Project before = keeper_.snapshot();
    session_.open({meadow / "walk.gpx"});
    ASSERT_TRUE(wait_for([&] { return keeper_.file() && *keeper_.file() != first; }));
    session_.planning().stop();
    ASSERT_TRUE(keeper_.settle());
    EXPECT_TRUE(in_a_copy_of(first) == before);
    EXPECT_TRUE(in_the_file().field->survey.decisions.empty());
    // files that are added belong to the same project
    const auto second = *keeper_.file();
    session_.add({meadow / "ground.gpkg"});
    ASSERT_TRUE(wait_for([&] { return session_.files().size() == 2 && !session_.file_work().running(); }));
    session_.planning().stop();
    EXPECT_EQ(*keeper_.file(), second);
    EXPECT_EQ(in_the_file().steps.size(), 2U);
    open(first);
    EXPECT_EQ(session_.field()->survey.decisions.size(), 1U);
}

TEST_F(ProjectKeeperTest, AFieldOpenedAgainCanBeAddedToAndReadAnew) {
    session_.open({meadow / "walk.gpx"});
    ASSERT_TRUE(wait_for([&] { return session_.field() && !session_.file_work().running(); }));
    const std::string mound = session_.field()->survey.mounds.front().name;
    decide(mound.c_str(), SetChoice::kept);
    in_the_file();
    open(last_copy());
    session_.add({meadow / "walk.gpx", meadow / "ground.gpkg"});
    ASSERT_TRUE(wait_for([&] { return session_.files().size() == 2 && !session_.file_work().running(); }));
    EXPECT_EQ(session_.field()->survey.walks.size(), 1U);  // the walk was there already
    EXPECT_FALSE(session_.field()->survey.ground.boundary.empty());
    session_.read_again(session_.files(), session_.told());
    ASSERT_TRUE(wait_for([&] { return !session_.file_work().running(); }));
    session_.planning().stop();
    EXPECT_EQ(session_.field()->survey.decisions.size(), 1U);
    EXPECT_TRUE(in_the_file() == keeper_.snapshot());
}

TEST_F(ProjectKeeperTest, WhatCannotBeOpenedIsToldAndTheFieldAtHandStays) {
    open_example();
    ASSERT_TRUE(keeper_.settle());
    const auto field = session_.field();
    const auto file = *keeper_.file();
    std::ofstream(folder_ / "broken.plugside") << "no project";
    open(folder_ / "broken.plugside");
    ASSERT_EQ(refused_.size(), 1);
    EXPECT_TRUE(refused_.back().contains("broken.plugside"));
    keeper_.open(file);
    ASSERT_EQ(refused_.size(), 2);
    EXPECT_TRUE(refused_.back().contains("open here already"));
    EXPECT_EQ(session_.field(), field);
    EXPECT_EQ(*keeper_.file(), file);
    const auto elsewhere =
        ProjectStore::make(folder_ / "elsewhere.plugside", std::make_shared<const Project>(keeper_.snapshot()));
    ASSERT_TRUE(elsewhere);
    open(folder_ / "elsewhere.plugside");
    ASSERT_EQ(refused_.size(), 3);
    EXPECT_TRUE(refused_.back().contains("open already"));
}

TEST_F(ProjectKeeperTest, AChangeThatCannotBeWrittenIsToldOnceStaysInMemoryAndIsTriedAgain) {
    open_example();
    ASSERT_TRUE(keeper_.settle());
    const auto file = *keeper_.file();
    const auto away = folder_ / "away.plugside";
    std::filesystem::rename(file, away);
    decide("M001", SetChoice::kept);
    EXPECT_FALSE(keeper_.settle());
    decide("M002", SetChoice::kept);
    EXPECT_FALSE(keeper_.settle());
    ASSERT_EQ(refused_.size(), 1) << refused_.join("\n").toStdString();
    EXPECT_TRUE(refused_.front().contains("moved, removed or replaced"));
    EXPECT_FALSE(keeper_.why_not().isEmpty());
    EXPECT_EQ(session_.field()->survey.decisions.size(), 2U);
    std::filesystem::rename(away, file);
    keeper_.try_again();
    EXPECT_TRUE(keeper_.settle());
    EXPECT_TRUE(keeper_.why_not().isEmpty());
    EXPECT_EQ(in_the_file().field->survey.decisions.size(), 2U);
}

TEST_F(ProjectKeeperTest, ItIsTriedAgainWithoutAnybodyAsking) {
    open_example();
    ASSERT_TRUE(keeper_.settle());
    const auto file = *keeper_.file();
    std::filesystem::rename(file, folder_ / "away.plugside");
    decide("M001", SetChoice::kept);
    EXPECT_FALSE(keeper_.settle());
    std::filesystem::rename(folder_ / "away.plugside", file);
    EXPECT_TRUE(wait_for([&] { return keeper_.kept(); }));
    EXPECT_EQ(in_the_file().field->survey.decisions.size(), 1U);
}

TEST_F(ProjectKeeperTest, WhereTheFileIsGoneANameGivesTheFieldAnotherOne) {
    open_example();
    ASSERT_TRUE(keeper_.settle());
    std::filesystem::remove(*keeper_.file());
    decide("M001", SetChoice::kept);
    EXPECT_FALSE(keeper_.settle());
    keeper_.keep_as(folder_ / "again.plugside");
    ASSERT_TRUE(wait_for([&] { return keeper_.named(); }));
    EXPECT_EQ(in_the_file().field->survey.decisions.size(), 1U);
}

TEST_F(ProjectKeeperTest, PicturesUnderTheGroundComeBackAndThoseThatAreNotThereStayNamed) {
    session_.open({meadow / "walk.gpx"});
    ASSERT_TRUE(wait_for([&] { return session_.field() && !session_.file_work().running(); }));
    session_.planning().stop();
    imagery_.add(meadow / "imagery.tif");
    ASSERT_TRUE(wait_for([&] { return !imagery_.pictures().empty(); }));
    imagery_.show(imagery_.pictures().front().number, false);
    Project project = in_the_file();
    ASSERT_EQ(project.pictures.size(), 1U);
    EXPECT_EQ(project.pictures.front().file, as_kept(meadow / "imagery.tif"));
    EXPECT_FALSE(project.pictures.front().visible);
    project.pictures.insert(project.pictures.begin(), {"/media/card/not-there.tif", true, {}});
    { ASSERT_TRUE(ProjectStore::make(folder_ / "two.plugside", std::make_shared<const Project>(project))); }
    QSignalSpy refused(&imagery_, &Imagery::refused);
    open(folder_ / "two.plugside");
    ASSERT_TRUE(wait_for([&] { return !imagery_.opening(); }));
    EXPECT_EQ(refused.size(), 1);
    ASSERT_EQ(imagery_.pictures().size(), 1U);
    EXPECT_FALSE(imagery_.pictures().front().visible);
    EXPECT_TRUE(in_the_file() == project);
}

TEST_F(ProjectKeeperTest, WhatWaitsToBeHandedOutIsKnownAfterOpeningAgainAndNoMoreOnceItWent) {
    open_example();
    EXPECT_FALSE(in_the_file().not_handed_out);
    session_.plan_again();
    ASSERT_TRUE(wait_for([&] { return session_.plan_is_current(); }));
    session_.decide_on(session_.plan()->probes.front().key, SetChoice::kept);
    in_the_file();
    open(last_copy());
    EXPECT_TRUE(session_.not_handed_out());
    ASSERT_TRUE(wait_for([&] { return session_.plan_is_current(); }));
    QSignalSpy handed_out(&session_, &FieldSession::handed_out);
    FieldSession::HandOut where;
    where.files = {{HandOutFormat::geopackage, folder_ / "plan.gpkg"}};
    session_.hand_out(where);
    ASSERT_TRUE(wait_for([&] { return handed_out.size() == 1; }));
    EXPECT_FALSE(session_.not_handed_out());
    EXPECT_FALSE(keeper_.snapshot().not_handed_out);
    EXPECT_TRUE(keeper_.settle());
}

}  // namespace
}  // namespace plugside
