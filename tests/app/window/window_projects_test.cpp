// Projects in the window: opened, left and gone on with, and what is asked where something would be lost.
#include <QMenu>
#include <QMimeData>
#include <QProcess>
#include <QPushButton>
#include <QUrl>
#include <csignal>

#include "app/session/project_places.h"
#include "app/window/main_window.h"
#include "app/window/recent_projects.h"
#include "tests/app/application.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using testing_support::TemporaryFolder;

const std::filesystem::path meadow = PLUGSIDE_SOURCE_DIR "/sample-projects/creek-meadow";

class WindowProjects : public OnScreen {
protected:
    WindowProjects() { make_window(); }
    void make_window() {
        window_.reset();
        window_ = std::make_unique<MainWindow>();
        window_->set_ask([this](const QString& question, const QStringList& answers) {
            asked_ << question;
            return answer_ < 0 ? static_cast<int>(answers.size()) - 1 : answer_;
        });
        window_->show();
        window_->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    }
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 120000); }
    void open_sample() {
        window_->open_files({meadow / "walk.gpx", meadow / "ground.gpkg"});
        ASSERT_TRUE(wait_for([&] { return window_->session().plan_is_current(); }));
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus != nullptr ? focus : window_.get(), key, modifiers);
    }
    void decide_three_sets() {
        press(Qt::Key_5);
        for (const Qt::Key key : {Qt::Key_K, Qt::Key_D, Qt::Key_K}) {
            press(key);
            ASSERT_TRUE(wait_for([&] { return window_->session().plan_is_current(); }));
        }
    }

    TemporaryFolder folder_;
    QStringList asked_;
    int answer_ = -1;  // the last one: stay
    std::unique_ptr<MainWindow> window_;
};

TEST_F(WindowProjects, ThreeSetsDecidedAreThereWhenTheProjectIsOpenedAgain) {
    open_sample();
    decide_three_sets();
    const auto decisions = window_->session().field()->survey.decisions;
    EXPECT_EQ(decisions.size(), 3U);
    const auto file = *window_->keeper().file();
    EXPECT_TRUE(window_->close());
    EXPECT_TRUE(asked_.isEmpty()) << asked_.join("\n").toStdString();
    make_window();
    window_->open_files({file});
    ASSERT_TRUE(wait_for([&] { return window_->session().plan_is_current(); }));
    EXPECT_EQ(window_->session().field()->survey.decisions, decisions);
    EXPECT_EQ(set_progress(window_->session().field()->survey, *window_->session().plan()).decided, 3U);
    EXPECT_TRUE(window_->windowTitle().startsWith(QString::fromStdString(window_->session().field()->field_name)));
    EXPECT_FALSE(window_->session().history().canUndo());
    press(Qt::Key_5);
    press(Qt::Key_K);
    EXPECT_EQ(window_->session().field()->survey.decisions.size(), 4U);
}

TEST_F(WindowProjects, ClosingAsksOnlyWhereTheLastChangesAreNotInTheFile) {
    open_sample();
    decide_three_sets();
    ASSERT_TRUE(window_->keeper().settle());
    const auto file = *window_->keeper().file();
    std::filesystem::rename(file, folder_ / "away.plugside");
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(window_->close());
    ASSERT_EQ(asked_.size(), 1);
    EXPECT_TRUE(asked_.front().contains("not in its project file")) << asked_.front().toStdString();
    EXPECT_TRUE(window_->isWindowModified());
    EXPECT_TRUE(window_->slip().notice().contains("tried again"));
    std::filesystem::rename(folder_ / "away.plugside", file);
    answer_ = 0;  // wait and try again
    EXPECT_TRUE(window_->close());
    EXPECT_EQ(asked_.size(), 2);
    EXPECT_TRUE(window_->keeper().kept());
}

TEST_F(WindowProjects, ClosingWithoutTheLastChangesIsPossibleAfterTheQuestion) {
    open_sample();
    ASSERT_TRUE(window_->keeper().settle());
    std::filesystem::remove(*window_->keeper().file());
    press(Qt::Key_5);
    press(Qt::Key_D);
    answer_ = 2;
    EXPECT_TRUE(window_->close());
    EXPECT_EQ(asked_.size(), 1);
}

TEST_F(WindowProjects, AStartOffersTheProjectsOpenedLast) {
    open_sample();
    ASSERT_TRUE(window_->keeper().settle());
    const auto file = *window_->keeper().file();
    EXPECT_TRUE(window_->findChild<RecentProjects*>()->isHidden());
    make_window();
    auto* recent = window_->findChild<RecentProjects*>();
    ASSERT_TRUE(recent->isVisible());
    const auto buttons = recent->findChildren<QPushButton*>();
    ASSERT_EQ(buttons.size(), 1);
    EXPECT_TRUE(buttons.front()->text().startsWith(as_text(file.stem())));
    buttons.front()->click();
    ASSERT_TRUE(wait_for([&] { return window_->session().field() != nullptr; }));
    EXPECT_EQ(*window_->keeper().file(), file);
    EXPECT_FALSE(recent->isVisible());
}

TEST_F(WindowProjects, AProjectIsOpenedByDroppingItAndNotTogetherWithOtherFiles) {
    open_sample();
    window_->keeper().keep_as(folder_ / "meadow.plugside");
    ASSERT_TRUE(wait_for([&] { return window_->keeper().named(); }));
    EXPECT_TRUE(window_->windowTitle().contains("meadow.plugside"));
    make_window();
    const auto drop = [&](const QStringList& names) {
        QMimeData data;
        QList<QUrl> urls;
        for (const QString& name : names) urls << QUrl::fromLocalFile(name);
        data.setUrls(urls);
        QDragEnterEvent enter({300, 300}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(window_.get(), &enter);
        EXPECT_TRUE(enter.isAccepted());
        QDropEvent event(QPointF(300.0, 300.0), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(window_.get(), &event);
    };
    drop({as_text(folder_ / "meadow.plugside"), as_text(meadow / "walk.gpx")});
    ASSERT_TRUE(wait_for([&] { return !window_->slip().notice().isEmpty(); }));
    EXPECT_TRUE(window_->slip().notice().contains("meadow.plugside is a project"));
    EXPECT_EQ(window_->session().field(), nullptr);
    drop({as_text(folder_ / "meadow.plugside")});
    ASSERT_TRUE(wait_for([&] { return window_->session().field() != nullptr; }));
    EXPECT_EQ(*window_->keeper().file(), folder_ / "meadow.plugside");
}

TEST_F(WindowProjects, TheProjectMenuTellsWhereTheFieldIsKept) {
    open_sample();
    ASSERT_TRUE(window_->keeper().settle());
    auto* menu = window_->findChild<QMenu*>();
    ASSERT_NE(menu, nullptr);
    Q_EMIT menu->aboutToShow();
    ASSERT_GE(menu->actions().size(), 3);
    EXPECT_TRUE(menu->actions().front()->text().startsWith("kept in")) << menu->actions().front()->text().toStdString();
    EXPECT_TRUE(menu->actions()[1]->isEnabled());
}

// The program itself, ended as hard as can be while it is open: what it had read is in its project, and nothing blocks it.
TEST_F(WindowProjects, AProgramThatIsKilledLeavesItsFieldInAProjectThatOpens) {
    QProcess program;
    QProcessEnvironment surroundings = QProcessEnvironment::systemEnvironment();
    surroundings.insert("XDG_DATA_HOME", as_text(folder_.path()));
    surroundings.insert("XDG_CONFIG_HOME", as_text(folder_.path()));
    surroundings.insert("QT_QPA_PLATFORM", "offscreen");
    program.setProcessEnvironment(surroundings);
    program.start(QStringLiteral(PLUGSIDE_BINARY_DIR "/plugside"), {as_text(meadow / "walk.gpx")});
    ASSERT_TRUE(program.waitForStarted());
    std::filesystem::path project;
    ASSERT_TRUE(wait_for([&] {
        std::error_code error;
        for (const auto& entry : std::filesystem::recursive_directory_iterator(folder_.path(), error))
            if (entry.path().extension() == project_ending && entry.file_size(error) > 0) project = entry.path();
        return !project.empty();
    }));
    const auto while_open = ProjectStore::open(project);
    ASSERT_FALSE(while_open);
    EXPECT_EQ(while_open.error().code, Refusal::Code::in_use);
    ASSERT_EQ(kill(static_cast<pid_t>(program.processId()), SIGKILL), 0);
    program.waitForFinished();
    const auto opened = ProjectStore::open(project);
    ASSERT_TRUE(opened) << sentence(opened.error());
    EXPECT_GT(opened->project()->field->survey.mounds.size(), 100U);
}

}  // namespace
}  // namespace plugside
