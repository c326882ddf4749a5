#include "app/window/dresser.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>

#include "app/window/look_sheet.h"
#include "tests/app/application.h"

namespace plugside {
namespace {

// A window with two marked parts within each other; the inner one holds labels and is hidden.
struct Parts {
    Parts() {
        dress_by_parts(*outer);
        dress_by_parts(*inner);
        (new QVBoxLayout(&window))->addWidget(outer);
        auto* column = new QVBoxLayout(outer);
        column->addWidget(seen);
        column->addWidget(inner);
        auto* within = new QVBoxLayout(inner);
        for (int i = 0; i < 400; ++i) {
            many.push_back(new QLabel(QString::number(i), inner));
            within->addWidget(many.back());
        }
        inner->hide();
        window.resize(300, 200);
        window.show();
    }
    QWidget window;
    QWidget* outer = new QWidget(&window);
    QLabel* seen = new QLabel(QStringLiteral("seen"), outer);
    QWidget* inner = new QWidget(outer);
    std::vector<QLabel*> many;
    Dresser dresser{window};
};

const QString light = look_sheet(style_of(Theme::light));
const QString sunlight = look_sheet(style_of(Theme::sunlight));

TEST(Dresser, gives_every_part_its_sheet_and_those_that_are_marked_none) {
    application();
    Parts parts;
    parts.dresser.put_on(style_of(Theme::light));
    parts.dresser.finish();
    EXPECT_FALSE(parts.dresser.at_work());
    EXPECT_EQ(parts.seen->styleSheet(), light);
    for (const QLabel* one : parts.many) EXPECT_EQ(one->styleSheet(), light);
    for (const QWidget* marked : std::initializer_list<QWidget*>{&parts.window, parts.outer, parts.inner})
        EXPECT_TRUE(marked->styleSheet().isEmpty());
}

TEST(Dresser, dresses_what_is_seen_first_and_shows_it_while_the_hidden_still_wait) {
    application();
    Parts parts;
    parts.dresser.put_on(style_of(Theme::light));
    parts.dresser.finish();
    parts.dresser.put_on(style_of(Theme::sunlight));
    EXPECT_TRUE(parts.dresser.at_work());
    EXPECT_FALSE(parts.window.updatesEnabled()) << "the picture of before stays";
    for (int turn = 0; turn < 1000 && parts.seen->styleSheet() != sunlight; ++turn) QApplication::processEvents();
    EXPECT_TRUE(parts.window.updatesEnabled());
    EXPECT_TRUE(parts.dresser.at_work()) << "four hundred labels are more than a turn's work";
    ASSERT_TRUE(QTest::qWaitFor([&] { return !parts.dresser.at_work(); }));
    for (const QLabel* one : parts.many) EXPECT_EQ(one->styleSheet(), sunlight);
}

TEST(Dresser, begins_anew_with_another_sheet_while_one_is_being_put_on) {
    application();
    Parts parts;
    parts.dresser.put_on(style_of(Theme::light));
    QApplication::processEvents();
    parts.dresser.put_on(style_of(Theme::sunlight));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !parts.dresser.at_work(); }));
    for (const QLabel* one : parts.many) EXPECT_EQ(one->styleSheet(), sunlight);
    EXPECT_TRUE(parts.window.updatesEnabled());
}

TEST(Dresser, dresses_what_comes_later_and_does_not_stumble_over_what_has_gone) {
    application();
    Parts parts;
    parts.dresser.put_on(style_of(Theme::light));
    delete parts.many[7];
    parts.many.erase(parts.many.begin() + 7);
    delete parts.seen;
    parts.dresser.finish();
    EXPECT_TRUE(parts.window.updatesEnabled());
    auto* late = new QLineEdit(parts.outer);
    parts.outer->layout()->addWidget(late);
    late->show();
    EXPECT_EQ(late->styleSheet(), light);
    EXPECT_EQ(late->palette().color(QPalette::PlaceholderText), style_of(Theme::light).quiet_ink);
    QWidget dialogue(&parts.window, Qt::Dialog);
    dialogue.show();
    EXPECT_EQ(dialogue.styleSheet(), light);
}

TEST(Dresser, lets_go_of_a_picture_that_was_held_once_what_came_into_sight_is_dressed) {
    application();
    Parts parts;
    parts.seen->hide();
    parts.window.setUpdatesEnabled(false);
    parts.dresser.put_on(style_of(Theme::light));
    parts.seen->show();
    parts.dresser.show_when_dressed();
    EXPECT_FALSE(parts.window.updatesEnabled());
    for (int turn = 0; turn < 1000 && !parts.window.updatesEnabled(); ++turn) QApplication::processEvents();
    EXPECT_EQ(parts.seen->styleSheet(), light);
    EXPECT_TRUE(parts.dresser.at_work());
    parts.dresser.finish();
    parts.window.setUpdatesEnabled(false);
    parts.dresser.show_when_dressed();
    EXPECT_TRUE(parts.window.updatesEnabled()) << "nothing waits";
}

TEST(Dresser, has_nothing_to_do_where_the_sheet_is_on_already) {
    application();
    Parts parts;
    parts.dresser.put_on(style_of(Theme::light));
    parts.dresser.finish();
    parts.dresser.put_on(style_of(Theme::light));
    EXPECT_FALSE(parts.dresser.at_work());
    EXPECT_TRUE(parts.window.updatesEnabled());
}

}  // namespace
}  // namespace plugside
