// Correcting systems in the window: by mouse, by keys alone, taken back, lifted; every correction a constraint of the next plan.
#include <map>
#include <set>

#include "app/canvas/mound_glyph.h"
#include "app/window/main_window.h"
#include "core/plan/make_plan.h"
#include "tests/app/application.h"
#include "tests/app/same_plan.h"

namespace plugside {
namespace {

class Corrections : public OnScreen {
protected:
    void SetUp() override {
        const std::filesystem::path sample = std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "sample-projects" / "creek-meadow";
        window_.open_files({sample / "walk.gpx", sample / "ground.gpkg"});
        ASSERT_TRUE(planned());
        window_.resize(1280, 800);
        window_.show();
        window_.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
        press(Qt::Key_3);
        ASSERT_EQ(window_.choices().step(), Step::systems);
        press(Qt::Key_L);
    }
    bool planned() {
        return QTest::qWaitFor([&] { return window_.session().plan_is_current(); }, 120000);
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &window_, key, modifiers);
    }
    const Survey& survey() { return window_.session().field()->survey; }
    const Plan& plan() { return *window_.session().plan(); }
    CorrectionsView& view() { return window_.slip().systems().corrections(); }
    NearbyPreview& preview() { return window_.correcting().preview(); }
    bool looked() {
        return QTest::qWaitFor([&] { return preview().picture() && preview().picture()->asked == preview().asked(); }, 120000);
    }
    QPoint on_map(LocalPoint place) { return window_.map().view().to_screen(place).toPoint(); }
    // Two marks of one system, far enough apart to be clicked one by one.
    std::pair<std::size_t, std::size_t> two_of_one_system() {
        for (const BurrowSystem& system : plan().systems)
            for (const std::size_t a : system.mounds)
                for (const std::size_t b : system.mounds)
                    if (distance_m(survey().mounds[a].plug, survey().mounds[b].plug) >
                        window_.map().view().ground_length(40.0).value())
                        return {a, b};
        return {0, 1};
    }

    MainWindow window_;
};

TEST_F(Corrections, TwoAnimalsAreToldApartInThreeActs) {
    const auto [a, b] = two_of_one_system();
    window_.choices().pick_mound(a);  // as a click does
    press(Qt::Key_T);
    QTest::mouseClick(&window_.map(), Qt::LeftButton, {}, on_map(survey().mounds[b].plug));
    ASSERT_EQ(survey().known.size(), 1U);
    EXPECT_EQ(survey().known[0].kind, FactKind::different_systems);
    const std::vector<std::string> marks = survey().known[0].marks;
    ASSERT_TRUE(planned());
    std::vector<std::optional<std::size_t>> systems;
    for (std::size_t i = 0; i < survey().mounds.size(); ++i)
        if (survey().mounds[i].name == marks[0] || survey().mounds[i].name == marks[1])
            systems.push_back(plan().mounds[i].system);
    ASSERT_EQ(systems.size(), 2U);
    EXPECT_NE(systems[0], systems[1]);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(survey().known.empty());
}

TEST_F(Corrections, TheSameIsSaidByKeysAlone) {
    press(Qt::Key_M, Qt::ControlModifier);
    press(Qt::Key_Space);
    ASSERT_TRUE(window_.choices().mound());
    const std::string first = survey().mounds[*window_.choices().mound()].name;
    press(Qt::Key_O);
    press(Qt::Key_BracketRight);
    press(Qt::Key_Return);
    ASSERT_EQ(survey().known.size(), 1U);
    EXPECT_EQ(survey().known[0].kind, FactKind::same_system);
    EXPECT_EQ(survey().known[0].marks.front(), first);
    EXPECT_EQ(view().listed(), 1);
}

TEST_F(Corrections, AFanIsTurnedByDraggingAndByTyping) {
    std::size_t with_fan = 0;
    while (!survey().mounds[with_fan].fan || why_not_used(survey(), survey().mounds[with_fan])) ++with_fan;
    window_.choices().pick_mound(with_fan);
    const Mound before = survey().mounds[with_fan];
    press(Qt::Key_P);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("S 45 E"));
    press(Qt::Key_Return);
    EXPECT_NEAR(survey().mounds[with_fan].fan->degrees(), 135.0, 0.2);
    press(Qt::Key_Z, Qt::ControlModifier);
    window_.map().setFocus();
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(survey().mounds[with_fan].fan, before.fan);
    const ViewTransform& view = window_.map().view();
    const LocalVector out = before.fan->unit();
    const QPointF handle =
        view.to_screen(before.plug) + QPointF(out.east_m, -out.north_m) * (mound_reach_px(view.pixels_per_metre()) + 8.0);
    const QPoint east = on_map(before.plug) + QPoint(60, 0);
    QTest::mousePress(&window_.map(), Qt::LeftButton, {}, handle.toPoint());
    QTest::mouseMove(&window_.map(), east);
    QTest::mouseRelease(&window_.map(), Qt::LeftButton, {}, east);
    EXPECT_NEAR(survey().mounds[with_fan].fan->degrees(), 90.0, 1.0);
    EXPECT_EQ(survey().mounds[with_fan].plug, before.plug);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(survey().mounds[with_fan].fan, before.fan);
}

TEST_F(Corrections, AMovedMoundIsLookedAtWhileTheHandIsOnItAndMovedWhenItLetsGo) {
    const auto [a, b] = two_of_one_system();
    window_.choices().pick_mound(a);
    const LocalPoint before = survey().mounds[a].plug;
    const QPoint from = on_map(before);
    QTest::mousePress(&window_.map(), Qt::LeftButton, {}, from);
    QTest::mouseMove(&window_.map(), from + QPoint(12, 5));
    EXPECT_TRUE(QTest::qWaitFor([&] { return window_.correcting().preview().picture() != nullptr; }, 10000));
    EXPECT_TRUE(window_.correcting().preview().picture()->plan.first_look);
    EXPECT_EQ(survey().mounds[a].plug, before);
    QTest::mouseRelease(&window_.map(), Qt::LeftButton, {}, from + QPoint(12, 5));
    EXPECT_NEAR(distance_m(survey().mounds[a].plug, window_.map().view().to_local(from + QPoint(12, 5))), 0.0, 1e-6);
    EXPECT_EQ(window_.correcting().preview().picture(), nullptr);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(survey().mounds[a].plug, before);
    (void)b;
}

TEST_F(Corrections, TheFirstLookAboutAMovedMoundHasTheLettersOfThePlanOnTheMap) {
    std::map<std::string, std::set<std::string>> marks_of;
    for (const BurrowSystem& system : plan().systems)
        for (const std::size_t mound : system.mounds) marks_of[system.letter].insert(survey().mounds[mound].name);
    const auto [a, b] = two_of_one_system();
    window_.choices().pick_mound(a);
    const QPoint from = on_map(survey().mounds[a].plug);
    QTest::mousePress(&window_.map(), Qt::LeftButton, {}, from);
    for (const QPoint way : {QPoint(12, 5), QPoint(40, -20), QPoint(-30, 10)}) {
        QTest::mouseMove(&window_.map(), from + way);
        ASSERT_TRUE(looked());
        const auto picture = preview().picture();
        ASSERT_FALSE(picture->plan.systems.empty());
        int kept = 0;
        for (const BurrowSystem& system : picture->plan.systems) {
            const auto known = marks_of.find(system.letter);
            if (known == marks_of.end()) continue;  // a new animal has a letter of its own
            ++kept;
            EXPECT_TRUE(std::any_of(system.mounds.begin(), system.mounds.end(), [&](std::size_t mound) {
                return known->second.contains(picture->field.survey.mounds[mound].name);
            })) << system.letter;
        }
        EXPECT_GT(kept, 0);
    }
    QTest::mouseRelease(&window_.map(), Qt::LeftButton, {}, from);
    (void)b;
}

TEST_F(Corrections, ThePlanAfterAMovedMoundIsTheOneComputedFromNothing) {
    const Survey at_first = survey();
    const auto [a, b] = two_of_one_system();
    window_.choices().pick_mound(a);
    const QPoint from = on_map(survey().mounds[a].plug);
    QTest::mousePress(&window_.map(), Qt::LeftButton, {}, from);
    for (int k = 1; k <= 10; ++k) QTest::mouseMove(&window_.map(), from + QPoint(3 * k, k));
    ASSERT_TRUE(looked());
    QTest::mouseRelease(&window_.map(), Qt::LeftButton, {}, from + QPoint(30, 10));
    EXPECT_FALSE(window_.session().plan_is_current()) << "the plan of before is not taken for the one after";
    Survey afresh = at_first;
    afresh.answers = survey().answers;
    put_right(afresh);
    afresh.revision = survey().revision;
    ASSERT_NE(afresh.mounds[a].plug, at_first.mounds[a].plug);
    const auto whole = make_plan(afresh);
    ASSERT_TRUE(planned());
    ASSERT_TRUE(whole);
    expect_same_plan(plan(), *whole);
    (void)b;
}

TEST_F(Corrections, ALineThatNoRunCrossesIsLookedAtWhileItIsDrawn) {
    press(Qt::Key_X);
    QTest::mouseMove(&window_.map(), QPoint(200, 100));
    QTest::mouseClick(&window_.map(), Qt::LeftButton, {}, QPoint(200, 100), 600);
    QTest::mouseMove(&window_.map(), QPoint(200, 500));
    ASSERT_TRUE(looked());
    EXPECT_TRUE(preview().picture()->plan.first_look);
    EXPECT_TRUE(survey().known.empty());
    EXPECT_TRUE(window_.session().plan_is_current());
    press(Qt::Key_Escape);
    EXPECT_EQ(preview().picture(), nullptr);
}

TEST_F(Corrections, WhatWouldHelpMostIsAnsweredWithAKeyAndLiftedAgain) {
    ASSERT_TRUE(QTest::qWaitFor([&] { return !view().questions().empty(); }, 120000));
    const HelpfulQuestion asked = view().questions().front();
    press(Qt::Key_Y);
    ASSERT_EQ(survey().known.size(), 1U);
    EXPECT_EQ(survey().known[0].marks.front(), survey().mounds[asked.first].name);
    ASSERT_TRUE(planned());
    EXPECT_EQ(plan().mounds[asked.first].system, plan().mounds[asked.second].system);
    for (QListWidget* list : view().findChildren<QListWidget*>()) list->setCurrentRow(0);
    view().lift_picked();
    EXPECT_TRUE(survey().known.empty());
}

TEST_F(Corrections, ACornerIsSetAsideAsOneAct) {
    press(Qt::Key_Z);
    const QSize size = window_.map().size();
    for (const QPoint corner : {QPoint(5, 5), QPoint(size.width() / 2, 5), QPoint(size.width() / 2, size.height() - 5),
                                QPoint(5, size.height() - 5)}) {
        QTest::mouseMove(&window_.map(), corner);
        QTest::mouseClick(&window_.map(), Qt::LeftButton, {}, corner, 600);
    }
    press(Qt::Key_Return);
    const auto aside = std::count_if(survey().mounds.begin(), survey().mounds.end(),
                                     [](const Mound& mound) { return mound.set_aside_because.has_value(); });
    EXPECT_GT(aside, 5);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(std::none_of(survey().mounds.begin(), survey().mounds.end(),
                             [](const Mound& mound) { return mound.set_aside_because.has_value(); }));
}

TEST_F(Corrections, ALineThatNoRunCrossesIsDrawn) {
    press(Qt::Key_X);
    for (const QPoint corner : {QPoint(200, 100), QPoint(200, 500)}) {
        QTest::mouseMove(&window_.map(), corner);
        QTest::mouseClick(&window_.map(), Qt::LeftButton, {}, corner, 600);
    }
    press(Qt::Key_Return);
    ASSERT_EQ(survey().known.size(), 1U);
    EXPECT_EQ(survey().known[0].kind, FactKind::no_run_across);
    EXPECT_TRUE(planned());
}

}  // namespace
}  // namespace plugside
