#include "app/session/field_session.h"

#include <QSignalSpy>
#include <algorithm>
#include <fstream>
#include <random>
#include <utility>

#include "core/sets/work_order.h"
#include "core/simulation/burrow_simulator.h"
#include "tests/app/application.h"
#include "tests/app/example_plan.h"

namespace plugside {
namespace {

class FieldSessionTest : public OnScreen {
protected:
    // Decisions as a set: undoing one puts it back, not into the same row.
    static std::vector<SetDecision> sorted(std::vector<SetDecision> decisions) {
        std::sort(decisions.begin(), decisions.end(),
                  [](const SetDecision& a, const SetDecision& b) { return a.probe < b.probe; });
        return decisions;
    }
    std::vector<SetDecision> decisions() { return sorted(session_.field()->survey.decisions); }
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 120000); }

    FieldSession session_;
};

TEST_F(FieldSessionTest, AllUndoneIsAsReadAndAllRedoneIsAsDecided) {
    std::mt19937 generator(41);
    for (int round = 0; round < 20; ++round) {
        ExampleField example = example_field();
        session_.adopt(example.field, {});
        const auto read = decisions();
        std::vector<std::vector<SetDecision>> states{read};
        for (int i = 0; i < 30; ++i) {
            const ProbeKey& probe = example.plan.probes[generator() % example.plan.probes.size()].key;
            const auto choice = static_cast<SetChoice>(generator() % 4);
            const int before = session_.history().index();
            session_.decide_on(probe, choice,
                               LadderPlace{Metres::of(0.01 * static_cast<double>(generator() % 50)), Metres()});
            if (session_.history().index() > before) states.push_back(decisions());
        }
        const auto last = states.size();
        for (std::size_t i = last; i-- > 1;) {
            EXPECT_EQ(decisions(), states[i]);
            session_.history().undo();
        }
        EXPECT_EQ(decisions(), read);
        EXPECT_FALSE(session_.not_handed_out());
        while (session_.history().canRedo()) session_.history().redo();
        EXPECT_EQ(decisions(), states.back());
    }
}

TEST_F(FieldSessionTest, EveryEditRaisesTheRevisionSoThatAnUndoneSurveyIsNotMistakenForAnother) {
    const ExampleField example = example_field();
    session_.adopt(example.field, {});
    std::uint64_t last = session_.field()->survey.revision;
    const auto grew = [&] {
        const std::uint64_t now = session_.field()->survey.revision;
        return std::exchange(last, now) < now;
    };
    session_.decide_on(example.plan.probes[0].key, SetChoice::kept);
    EXPECT_TRUE(grew());
    session_.history().undo();
    EXPECT_TRUE(grew());
    session_.history().redo();
    EXPECT_TRUE(grew());
}

TEST_F(FieldSessionTest, HowTheWorkIsDoneIsEditedAndUndoneUnderAPlanThatStaysCurrent) {
    session_.adopt(example_field().field, {});
    ASSERT_TRUE(wait_for([&] { return session_.plan_is_current() && session_.findings(); }));
    const auto plan = session_.plan();
    const auto revision = session_.field()->survey.revision;
    QSignalSpy started(&session_.planning(), &BackgroundWork::started);
    WorkOrder order;
    order.method = "paired-traps";
    session_.edit(SurveyPart(HeldWork(order)), QStringLiteral("method"));
    EXPECT_EQ(session_.field()->survey.work->method, "paired-traps");
    EXPECT_TRUE(session_.plan_is_current());
    EXPECT_TRUE(session_.not_handed_out());
    session_.edit(SurveyPart(HeldWork(order)), QStringLiteral("the same"));
    EXPECT_EQ(session_.history().count(), 1) << "nothing changed";
    session_.history().undo();
    EXPECT_TRUE(*session_.field()->survey.work == WorkOrder{});
    EXPECT_TRUE(session_.plan_is_current());
    EXPECT_EQ(session_.plan(), plan);
    EXPECT_EQ(session_.field()->survey.revision, revision);
    EXPECT_EQ(started.count(), 0) << "no plan depends on it";
    // a plan that is being made meanwhile is of the same revision, and is taken
    session_.decide_on(example_field().plan.probes.front().key, SetChoice::kept);
    session_.history().redo();
    session_.edit(SurveyPart(HeldWork(order)), QStringLiteral("method"));
    ASSERT_TRUE(wait_for([&] { return session_.plan_is_current(); }));
    EXPECT_EQ(session_.field()->survey.work->method, "paired-traps");
}

TEST_F(FieldSessionTest, FindingsThatAreBeingJudgedComeAfterAnEditOfTheWork) {
    session_.adopt(example_field().field, {});
    ASSERT_TRUE(session_.judging());
    WorkOrder order;
    order.method = "fumigant";
    session_.edit(SurveyPart(HeldWork(order)), QStringLiteral("method"));
    EXPECT_TRUE(wait_for([&] { return session_.findings() != nullptr; }));
}

TEST_F(FieldSessionTest, AStalePlanIsNeverApplied) {
    ExampleField example = example_field();
    session_.adopt(example.field, {});
    session_.planning().stop();
    auto plan = std::make_shared<Plan>(example.plan);
    plan->revision = session_.field()->survey.revision;
    EXPECT_TRUE(session_.accept(plan));
    EXPECT_TRUE(session_.plan_is_current());
    session_.decide_on(example.plan.probes[0].key, SetChoice::dropped);
    session_.planning().stop();
    EXPECT_FALSE(session_.plan_is_current());
    auto late = std::make_shared<Plan>(example.plan);
    late->revision = plan->revision;
    EXPECT_FALSE(session_.accept(late));
    EXPECT_EQ(session_.plan(), plan);
    // of the right revision, but of a field with other marks
    auto foreign = std::make_shared<Plan>(example.plan);
    foreign->revision = session_.field()->survey.revision;
    foreign->mounds.pop_back();
    EXPECT_FALSE(session_.accept(foreign));
    EXPECT_FALSE(session_.accept(nullptr));
}

TEST_F(FieldSessionTest, ADecisionIsFollowedByAPlanOfTheNewSurvey) {
    session_.adopt(example_field().field, {});
    ASSERT_TRUE(wait_for([&] { return session_.plan_is_current(); }));
    ASSERT_FALSE(session_.plan()->probes.empty());
    const ProbeKey probe = session_.plan()->probes.front().key;
    session_.decide_on(probe, SetChoice::dropped);
    EXPECT_FALSE(session_.plan_is_current());
    ASSERT_TRUE(wait_for([&] { return session_.plan_is_current(); }));
    EXPECT_EQ(session_.plan()->revision, session_.field()->survey.revision);
}

// A survey whose plan takes long enough to look at what is shown before it.
FieldSurvey large_field(std::size_t mounds) {
    FieldSurvey field = example_field().field;
    SimulationOptions options;
    options.mounds_wanted = mounds;
    field.survey = simulate_field(options).survey;
    return field;
}

TEST_F(FieldSessionTest, AFirstLookIsShownUntilTheWholePlanIsThereAndIsNotHandedOut) {
    session_.adopt(large_field(1500), {});
    ASSERT_TRUE(wait_for([&] { return session_.plan() != nullptr; }));
    EXPECT_TRUE(session_.plan_is_first_look());
    EXPECT_FALSE(session_.plan_is_current());
    EXPECT_EQ(session_.plan()->revision, session_.field()->survey.revision);
    const QTemporaryDir folder;
    FieldSession::HandOut where;
    where.files = {{HandOutFormat::geopackage, folder.filePath("plan.gpkg").toStdString()}};
    session_.hand_out(where);
    EXPECT_FALSE(session_.file_work().running());
    ASSERT_TRUE(wait_for([&] { return session_.plan_is_current(); }));
    EXPECT_FALSE(session_.plan_is_first_look());
}

TEST_F(FieldSessionTest, ADecisionMadeOnAFirstLookIsInTheWholePlan) {
    session_.adopt(large_field(1500), {});
    ASSERT_TRUE(wait_for([&] { return session_.plan_is_first_look(); }));
    const auto first = session_.plan();
    const ProbeKey probe = first->probes[first->sets.front().probe].key;
    session_.decide_on(probe, SetChoice::kept);
    ASSERT_TRUE(wait_for([&] { return session_.plan_is_current(); }));
    const auto plan = session_.plan();
    EXPECT_TRUE(std::any_of(plan->sets.begin(), plan->sets.end(), [&](const SetPoint& set) {
        return plan->probes[set.probe].key == probe && set.choice == SetChoice::kept;
    }));
}

TEST_F(FieldSessionTest, AWholePlanIsNotReplacedByAFirstLookAndLettersStayWhenADecisionIsMade) {
    session_.adopt(large_field(300), {});
    ASSERT_TRUE(wait_for([&] { return session_.plan_is_current(); }));
    const auto whole = session_.plan();
    auto first = std::make_shared<Plan>(*whole);
    first->first_look = true;
    EXPECT_FALSE(session_.accept(first));
    bool saw_first_look = false;
    QObject::connect(&session_, &FieldSession::plan_changed, &session_,
                     [&] { saw_first_look |= session_.plan_is_first_look(); });
    session_.decide_on(whole->probes[whole->sets.front().probe].key, SetChoice::dropped);
    ASSERT_TRUE(wait_for([&] { return session_.plan_is_current(); }));
    EXPECT_FALSE(saw_first_look) << "the outdated whole plan is the better picture";
    ASSERT_EQ(session_.plan()->systems.size(), whole->systems.size());
    for (std::size_t s = 0; s < whole->systems.size(); ++s)
        EXPECT_EQ(session_.plan()->systems[s].letter, whole->systems[s].letter);
}

TEST_F(FieldSessionTest, ARefusedFileLeavesTheFieldAndItsHistoryAsTheyWere) {
    const ExampleField example = example_field();
    session_.adopt(example.field, {});
    session_.decide_on(example.plan.probes[0].key, SetChoice::kept);
    const auto before = session_.field();
    const QTemporaryDir folder;
    const std::filesystem::path file = folder.filePath("broken.gpx").toStdString();
    std::ofstream(file) << "<gpx><wpt lat=\"abc\"";
    QSignalSpy refused(&session_, &FieldSession::refused);
    session_.open({file});
    ASSERT_TRUE(wait_for([&] { return refused.count() == 1; }));
    EXPECT_TRUE(refused.front().front().toString().contains("broken.gpx"));
    EXPECT_EQ(session_.field(), before);
    EXPECT_TRUE(session_.not_handed_out());
    EXPECT_TRUE(session_.history().canUndo());
}

TEST_F(FieldSessionTest, OnlyAWrittenGeoPackageCountsAsHandedOut) {
    const ExampleField example = example_field();
    session_.adopt(example.field, {});
    session_.decide_on(example.plan.probes[0].key, SetChoice::kept);
    ASSERT_TRUE(wait_for([&] { return session_.plan_is_current(); }));
    const QTemporaryDir folder;
    QSignalSpy handed_out(&session_, &FieldSession::handed_out);
    QSignalSpy refused(&session_, &FieldSession::refused);
    FieldSession::HandOut where;
    where.files = {{HandOutFormat::gpx_waypoints, folder.filePath("sets.gpx").toStdString()}};
    session_.hand_out(where);
    ASSERT_TRUE(wait_for([&] { return handed_out.count() + refused.count() == 1; }));
    EXPECT_EQ(refused.count(), 0);
    EXPECT_TRUE(session_.not_handed_out());
    where.files.push_back({HandOutFormat::geopackage, folder.filePath("no/such/folder/plan.gpkg").toStdString()});
    session_.hand_out(where);
    ASSERT_TRUE(wait_for([&] { return refused.count() == 1; }));
    EXPECT_TRUE(session_.not_handed_out());
    where.files.back().file = folder.filePath("plan.gpkg").toStdString();
    session_.hand_out(where);
    ASSERT_TRUE(wait_for([&] { return handed_out.count() == 2; }));
    EXPECT_FALSE(session_.not_handed_out());
}

}  // namespace
}  // namespace plugside
