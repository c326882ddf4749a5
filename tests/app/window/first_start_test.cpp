// The first start: the sample with its walk-through, done by keys and by mouse, left at any time, and nothing of it left behind.
#include <QMenu>
#include <QPushButton>
#include <filesystem>

#include "app/session/project_places.h"
#include "app/stages/key_button.h"
#include "app/window/main_window.h"
#include "app/window/walk_through_panel.h"
#include "tests/app/application.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

class FirstStart : public OnScreen {
protected:
    FirstStart() {
        std::filesystem::remove_all(unnamed_projects());
        start();
    }
    void start(const FieldSession::Files& files = {}, bool sample_wanted = false) {
        window_.reset();
        window_ = std::make_unique<MainWindow>();
        window_->set_ask([this](const QString& question, const QStringList&) {
            asked_ << question;
            return 0;
        });
        window_->resize(1280, 800);
        window_->show();
        window_->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
        window_->begin(files, sample_wanted);
    }
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 120000); }
    bool planned() {
        return wait_for([&] { return window_->session().plan_is_current() && !window_->session().judging(); });
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : window_.get(), key, modifiers);
    }
    std::optional<Lesson> at() { return window_->walk_through().at(); }
    WalkThroughPanel& panel() { return *window_->findChild<WalkThroughPanel*>(); }
    // The questions are worked out beside the window's thread.
    bool asked_what_would_help() {
        return wait_for([&] { return !window_->slip().systems().corrections().questions().empty(); });
    }
    QPushButton* button(const QString& begins_with) {
        for (QPushButton* each : window_->findChildren<QPushButton*>())
            if (each->isVisible() && each->text().startsWith(begins_with)) return each;
        return nullptr;
    }
    KeyButton* key(const QString& wanted) {
        for (KeyButton* each : window_->findChildren<KeyButton*>())
            if (each->isVisible() && each->key() == wanted) return each;
        return nullptr;
    }
    void expect_nothing_left() {
        EXPECT_FALSE(window_->session().field());
        EXPECT_FALSE(window_->keeper().file());
        EXPECT_TRUE(recent_projects().empty());
        EXPECT_TRUE(!std::filesystem::exists(unnamed_projects()) || std::filesystem::is_empty(unnamed_projects()));
        EXPECT_EQ(QSettings().allKeys(), QStringList{QStringLiteral("walk-through/shown")});
        EXPECT_TRUE(window_->imagery().named().empty());
        EXPECT_EQ(window_->windowTitle(), QStringLiteral("Plugside"));
        EXPECT_TRUE(asked_.isEmpty());
    }

    std::unique_ptr<MainWindow> window_;
    QStringList asked_;
};

TEST_F(FirstStart, TheSampleOpensOnceWithItsPictureAndItsFirstLesson) {
    ASSERT_TRUE(planned());
    EXPECT_EQ(at(), Lesson::look);
    EXPECT_TRUE(panel().isVisible());
    EXPECT_TRUE(wait_for([&] { return window_->imagery().pictures().size() == 1; }));
    start();
    EXPECT_FALSE(at());
    EXPECT_FALSE(window_->session().file_work().running());
    ASSERT_NE(button("see the job"), nullptr) << "a second start offers it";
    QTest::mouseClick(button("see the job"), Qt::LeftButton);
    ASSERT_TRUE(planned());
    EXPECT_EQ(at(), Lesson::look);
}

TEST_F(FirstStart, FilesOnTheCommandLineAreNoFirstStart) {
    QSettings().clear();
    start({std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "sample-projects" / "creek-meadow" / "walk.gpx"});
    ASSERT_TRUE(planned());
    EXPECT_FALSE(at());
    EXPECT_TRUE(window_->keeper().file());
}

TEST_F(FirstStart, TheFiveLessonsAreDoneByKeysAloneAndMoveOn) {
    ASSERT_TRUE(planned());
    press(Qt::Key_M, Qt::ControlModifier);
    press(Qt::Key_Space);
    EXPECT_EQ(at(), Lesson::draw);
    press(Qt::Key_2);
    press(Qt::Key_D);
    press(Qt::Key_Space);
    for (int i = 0; i < 4; ++i) press(Qt::Key_Right);
    press(Qt::Key_Space);
    press(Qt::Key_Return);
    EXPECT_EQ(at(), Lesson::correct);
    ASSERT_TRUE(planned());
    press(Qt::Key_3);
    press(Qt::Key_L);
    ASSERT_TRUE(asked_what_would_help());
    press(Qt::Key_Y);
    EXPECT_EQ(at(), Lesson::decide);
    ASSERT_TRUE(planned());
    press(Qt::Key_5);
    press(Qt::Key_K);
    EXPECT_EQ(at(), Lesson::hand_out);
    ASSERT_TRUE(planned());
    press(Qt::Key_S, Qt::ControlModifier);
    ASSERT_NE(window_->hand_out_dialog(), nullptr);
    EXPECT_FALSE(window_->hand_out_dialog()->chosen().file_of(HandOutFormat::geopackage).string().starts_with(
        std::filesystem::temp_directory_path().string() + "/"))
        << "what is handed out does not go with the sample's own folder";
    QTest::keyClick(window_->hand_out_dialog(), Qt::Key_Escape);
    EXPECT_EQ(at(), Lesson::over);
    window_->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    window_->map().setFocus();
    press(Qt::Key_Escape);
    EXPECT_FALSE(at());
    expect_nothing_left();
}

TEST_F(FirstStart, TheSameIsDoneByMouseAlone) {
    ASSERT_TRUE(planned());
    const auto click_key = [&](const QString& wanted) {
        ASSERT_NE(key(wanted), nullptr) << wanted.toStdString();
        QTest::mouseClick(key(wanted), Qt::LeftButton);
    };
    const auto go_to = [&](Step step) {
        for (StepButton* each : window_->findChildren<StepButton*>())
            if (each->step() == step) QTest::mouseClick(each, Qt::LeftButton);
    };
    const MapView& map = window_->map();
    QTest::mouseClick(&window_->map(), Qt::LeftButton, {},
                      map.view().to_screen(window_->session().field()->survey.mounds.front().plug).toPoint());
    EXPECT_EQ(at(), Lesson::draw);
    go_to(Step::ground);
    click_key("D");
    QTest::mouseClick(&window_->map(), Qt::LeftButton, {}, {200, 300}, 600);
    QTest::mouseClick(&window_->map(), Qt::LeftButton, {}, {300, 340}, 600);
    QTest::mouseDClick(&window_->map(), Qt::LeftButton, {}, {300, 340});
    EXPECT_EQ(at(), Lesson::correct);
    ASSERT_TRUE(planned());
    go_to(Step::systems);
    QTest::mouseClick(window_->slip().systems().corrections_key(), Qt::LeftButton);
    ASSERT_TRUE(asked_what_would_help());
    click_key("D");
    EXPECT_EQ(at(), Lesson::decide);
    ASSERT_TRUE(planned());
    go_to(Step::sets);
    click_key("K");
    EXPECT_EQ(at(), Lesson::hand_out);
    ASSERT_TRUE(planned());
    QTest::mouseClick(button("hand out"), Qt::LeftButton);
    ASSERT_NE(window_->hand_out_dialog(), nullptr);
    window_->hand_out_dialog()->reject();
    EXPECT_EQ(at(), Lesson::over);
    ASSERT_NE(button("stay"), nullptr);
    QTest::mouseClick(button("stay"), Qt::LeftButton);
    EXPECT_FALSE(at());
    EXPECT_TRUE(window_->sample_is_open());
    EXPECT_TRUE(window_->windowTitle().contains("nothing of it is kept"));
    window_->leave_sample();
    expect_nothing_left();
}

TEST_F(FirstStart, LeavingAtAnyLessonLeavesNothing) {
    for (int skipped = 0; skipped < static_cast<int>(lessons.size()); ++skipped) {
        SCOPED_TRACE(skipped);
        if (skipped > 0) start({}, true);
        ASSERT_TRUE(planned());
        for (int i = 0; i < skipped; ++i) press(Qt::Key_F2);
        ASSERT_EQ(at(), lessons[static_cast<std::size_t>(skipped)]);
        if (skipped % 2 == 0) {
            press(Qt::Key_Escape);
        } else {
            QTest::mouseClick(button("leave"), Qt::LeftButton);
            ASSERT_TRUE(wait_for([&] { return !window_->session().field(); }));
        }
        EXPECT_FALSE(at());
        expect_nothing_left();
    }
}

TEST_F(FirstStart, LeavingWhileTheSampleIsStillBeingReadLeavesNothing) {
    press(Qt::Key_Escape);
    EXPECT_FALSE(at());
    QTest::qWait(300);
    expect_nothing_left();
}

TEST_F(FirstStart, EscapeGivesUpWhatIsInTheHandBeforeItLeaves) {
    ASSERT_TRUE(planned());
    press(Qt::Key_F2);
    press(Qt::Key_2);
    press(Qt::Key_D);
    press(Qt::Key_Escape);
    EXPECT_EQ(at(), Lesson::draw);
    press(Qt::Key_Escape);
    EXPECT_FALSE(at());
}

TEST_F(FirstStart, TheFolderOfTheSampleGoesWithTheWindow) {
    ASSERT_TRUE(planned());
    const std::filesystem::path folder = window_->session().files().front().parent_path();
    EXPECT_TRUE(std::filesystem::exists(folder));
    window_.reset();
    EXPECT_FALSE(std::filesystem::exists(folder));
}

TEST_F(FirstStart, AnotherLanguageSaysTheSameLesson) {
    ASSERT_TRUE(planned());
    press(Qt::Key_F2);
    const QString english = panel().words();
    press(Qt::Key_E, Qt::ControlModifier);
    ASSERT_TRUE(wait_for([&] { return window_->findChild<WalkThroughPanel*>() && panel().words() != english; }));
    EXPECT_EQ(at(), Lesson::draw);
    EXPECT_TRUE(wait_for([&] { return panel().isVisible() && window_->updatesEnabled(); }));
    press(Qt::Key_E, Qt::ControlModifier);
    ASSERT_TRUE(wait_for([&] { return window_->findChild<WalkThroughPanel*>() && panel().words() == english; }));
}

TEST_F(FirstStart, AWalkOfOnesOwnTakesTheSamplesPlaceUnaskedAndIsKept) {
    ASSERT_TRUE(planned());
    window_->open_files({std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "sample-projects" / "creek-meadow" / "walk.gpx"});
    ASSERT_TRUE(wait_for([&] { return window_->session().field() && !window_->sample_is_open(); }));
    EXPECT_TRUE(asked_.isEmpty());
    EXPECT_FALSE(at());
    EXPECT_TRUE(window_->keeper().file());
    ASSERT_TRUE(planned());
    press(Qt::Key_F2);
    EXPECT_EQ(asked_.size(), 1) << "another field is not left unasked";
}

TEST_F(FirstStart, TheRingLiesAboutWhatTheLessonSpeaksOf) {
    ASSERT_TRUE(planned());
    auto* ring = window_->findChild<PlaceRing*>();
    ASSERT_NE(ring, nullptr);
    const auto about = [&](QWidget* place) {
        return wait_for([&] {
            return ring->isVisible() && ring->geometry().contains(place->mapTo(window_.get(), place->rect().center())) &&
                   ring->width() < place->width() + 20;
        });
    };
    EXPECT_TRUE(about(&window_->map()));
    press(Qt::Key_F2);
    press(Qt::Key_2);
    EXPECT_TRUE(about(key("D")));
    press(Qt::Key_Escape);
    EXPECT_TRUE(wait_for([&] { return !window_->findChild<PlaceRing*>()->isVisible(); }));
}

}  // namespace
}  // namespace plugside
