// The Walk step by keys alone.
#include <QLabel>
#include <fstream>

#include "app/stages/mound_facts.h"
#include "app/window/main_window.h"
#include "tests/app/application.h"

namespace plugside {
namespace {

class WalkKeys : public OnScreen {
protected:
    void open_sample() {
        window_.open_files({sample_ / "walk.gpx", sample_ / "ground.gpkg"});
        wait_and_show();
    }
    // The same walk, in which one note speaks of a mole's hill.
    void open_sample_with_a_doubt() {
        std::ifstream walk(sample_ / "walk.gpx");
        std::string text((std::istreambuf_iterator<char>(walk)), std::istreambuf_iterator<char>());
        text.replace(text.find("<cmt>crushed</cmt>"), 18, "<cmt>round hill, hole in the middle</cmt>");
        const std::filesystem::path doubtful = folder_.filePath("walk.gpx").toStdString();
        std::ofstream(doubtful) << text;
        window_.open_files({doubtful});
        wait_and_show();
    }
    void wait_and_show() {
        ASSERT_TRUE(wait_for([&] { return window_.session().looked_back() && window_.session().findings(); }));
        window_.show();
        window_.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &window_, key, modifiers);
    }
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 120000); }
    WalkPage& walk() { return window_.slip().walk(); }

    const std::filesystem::path sample_ = std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "sample-projects" / "creek-meadow";
    QTemporaryDir folder_;
    MainWindow window_;
};

TEST_F(WalkKeys, EachPartOfTheWalkHasItsKey) {
    open_sample();
    const std::vector<std::pair<Qt::Key, WalkPart>> parts{{Qt::Key_V, WalkPart::read},
                                                          {Qt::Key_T, WalkPart::notes},
                                                          {Qt::Key_W, WalkPart::not_seen},
                                                          {Qt::Key_L, WalkPart::to_look_at}};
    for (const auto& [key, part] : parts) {
        press(key);
        EXPECT_EQ(walk().part(), part);
    }
    EXPECT_FALSE(walk().notes().isVisible());
    EXPECT_TRUE(walk().findings().isVisible());
}

TEST_F(WalkKeys, TheQuestionsAboutADiggerAreAnsweredByDigitsAndLeftByEscape) {
    open_sample();
    press(Qt::Key_V);
    window_.choices().pick_mound(4);
    press(Qt::Key_I);
    ASSERT_NE(walk().digger_key(), nullptr);
    press(Qt::Key_1);
    press(Qt::Key_2);
    EXPECT_EQ(window_.choices().step(), Step::walk);
    EXPECT_EQ(walk().digger_key()->question(), 3U);
    press(Qt::Key_Backspace);
    EXPECT_EQ(walk().digger_key()->question(), 2U);
    press(Qt::Key_2);
    press(Qt::Key_1);
    ASSERT_NE(walk().digger_key()->end(), nullptr);
    press(Qt::Key_Return);
    EXPECT_EQ(walk().digger_key(), nullptr);
    EXPECT_EQ(window_.session().field()->survey.mounds[4].kind, SignKind::mole);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(window_.session().field()->survey.mounds[4].kind, SignKind::gopher_mound);
    press(Qt::Key_I);
    ASSERT_NE(walk().digger_key(), nullptr);
    press(Qt::Key_Escape);
    EXPECT_EQ(walk().digger_key(), nullptr);
    // the digits go to the steps again
    press(Qt::Key_3);
    EXPECT_EQ(window_.choices().step(), Step::systems);
}

TEST_F(WalkKeys, WhatLooksWrongIsPickedWhenItIsLookedAt) {
    open_sample_with_a_doubt();
    ASSERT_FALSE(window_.session().findings()->empty());
    press(Qt::Key_L);
    ASSERT_NE(walk().findings().at_hand(), nullptr);
    ASSERT_TRUE(window_.choices().mound().has_value());
    EXPECT_EQ(window_.session().field()->survey.mounds[*window_.choices().mound()].name,
              walk().findings().at_hand()->marks.front());
    press(Qt::Key_I);
    ASSERT_NE(walk().digger_key(), nullptr);
    EXPECT_EQ(walk().digger_key()->mark(), walk().findings().at_hand()->marks.front());
    // a finding that is not seen is not answered
    const std::size_t open = walk().findings().open_findings();
    press(Qt::Key_A);
    press(Qt::Key_Escape);
    press(Qt::Key_V);
    press(Qt::Key_A);
    EXPECT_EQ(walk().findings().open_findings(), open);
    press(Qt::Key_L);
    press(Qt::Key_A);
    EXPECT_EQ(walk().findings().open_findings(), open - 1);
}

TEST_F(WalkKeys, TheHatchingIsShownAndHiddenByItsKey) {
    open_sample();
    ASSERT_TRUE(window_.map().show_choices().unwalked);
    const QImage hatched = window_.map().grab().toImage();
    press(Qt::Key_G);
    EXPECT_FALSE(window_.map().show_choices().unwalked);
    EXPECT_NE(window_.map().grab().toImage(), hatched);
    press(Qt::Key_G);
    EXPECT_TRUE(window_.map().show_choices().unwalked);
}

TEST_F(WalkKeys, APickOnTheMapBringsUpItsNote) {
    open_sample();
    press(Qt::Key_T);
    walk().notes().model().show_only(NotesShown::all);
    window_.choices().pick_mound(9);
    const auto row = walk().notes().model().row_of(9);
    ASSERT_TRUE(row.has_value());
    const auto* list = walk().notes().findChild<QListView*>();
    ASSERT_NE(list, nullptr);
    EXPECT_EQ(list->currentIndex().row(), *row);
}

}  // namespace
}  // namespace plugside
