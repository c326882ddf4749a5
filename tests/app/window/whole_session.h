// A person who does everything that the window is for, with mouse and keys, one act after the other: what keeps the window's thread is
// told of each by the watchdog. The same script serves fields of any size.
//
// The hand does not wait for plans within an act, as a person does not; where a step needs a plan (`settle`) it waits for it.
#pragma once

#include <QLineEdit>
#include <QSlider>
#include <QTemporaryDir>
#include <QTest>
#include <cmath>
#include <functional>
#include <string>

#include "app/canvas/mound_glyph.h"
#include "app/stages/imagery_list.h"
#include "app/window/main_window.h"
#include "tests/app/watchdog.h"

namespace plugside {

class WholeSession {
public:
    WholeSession(Watchdog& watchdog, FieldSession::Files walk, FieldSession::Files pictures)
        : watchdog_(watchdog), walk_(std::move(walk)), pictures_(std::move(pictures)) {
        window_.resize(1280, 800);
        window_.show();
        come_forward();
    }
    // Keys go to the window that is in front: a dialogue was before.
    void come_forward() {
        window_.activateWindow();
        static_cast<void>(QTest::qWaitForWindowActive(&window_));
    }

    void run() {
        open();
        look_about();
        look_at_the_walk();
        draw_the_ground();
        correct_systems();
        answer_questions();
        review_sets();
        undo_and_redo();
        lay_imagery();
        change_looks();
        hand_out();
        go_on_with_the_project();
    }

    MainWindow& window() { return window_; }
    // Longest waits for what is made beside the window's thread.
    [[nodiscard]] bool settle() {
        return turn_until([this] {
            return window_.session().plan_is_current() && !window_.session().judging() &&
                   !window_.session().looking_back().running() && window_.map().settled();
        });
    }

    // As long as a look is being put on.
    [[nodiscard]] bool dressed() {
        return turn_until([this] { return !window_.dresser().at_work(); });
    }

    // As a person goes to a mark: picked by key, then closer.
    void near_a_mark(std::size_t mark) {
        window_.map().setFocus();
        press(Qt::Key_F);
        window_.choices().pick_mound(mark > 0 ? mark - 1 : 0);
        press(Qt::Key_BracketRight);
        const QPoint at = on_map(mark);
        move(at);
        for (int k = 0; k < 30 && window_.map().view().pixels_per_metre() < 12.0; ++k) press(Qt::Key_Plus);
        turn(50);
    }
    void open() {
        act("open walk and ground");
        window_.open_files(walk_);
        static_cast<void>(turn_until([this] { return window_.session().field() != nullptr; }));
        act("first plan arrives");
        static_cast<void>(settle());
    }

    void look_about() {
        act("map: hover");
        const QSize size = window_.map().size();
        for (int k = 0; k <= 40; ++k) move({size.width() * k / 40, size.height() * ((k * 7) % 40) / 40});
        act("map: pan");
        drag({size.width() / 2, size.height() / 2}, {size.width() / 2 + 160, size.height() / 2 + 90}, 20);
        act("map: zoom");
        for (int k = 0; k < 12; ++k) wheel(120);
        for (int k = 0; k < 12; ++k) wheel(-120);
        press(Qt::Key_Plus);
        press(Qt::Key_F);
        act("map: turn, tape, glass");
        press(Qt::Key_Period);
        press(Qt::Key_Period);
        press(Qt::Key_Comma);
        for (int k = 1; k < 6; ++k) click({size.width() * k / 6, size.height() / 3});
        press(Qt::Key_Escape);
        press(Qt::Key_Q);
        for (int k = 0; k < 20; ++k) move({200 + 12 * k, 220 + 6 * k});
        press(Qt::Key_Q);
        act("map: mark by mark");
        press(Qt::Key_M, Qt::ControlModifier);
        press(Qt::Key_Space);
        for (int k = 0; k < 6; ++k) press(Qt::Key_BracketRight);
        for (const Qt::Key key : {Qt::Key_Right, Qt::Key_Down, Qt::Key_Left, Qt::Key_Up}) press(key, Qt::AltModifier);
        press(Qt::Key_C);
        press(Qt::Key_C);
        press(Qt::Key_F);
    }

    void look_at_the_walk() {
        act("walk: parts");
        press(Qt::Key_1);
        for (const Qt::Key key : {Qt::Key_V, Qt::Key_L, Qt::Key_T, Qt::Key_W, Qt::Key_V}) press(key);
        press(Qt::Key_G);
        press(Qt::Key_G);
        act("walk: files read");
        click_button(QStringLiteral("files read"));
        static_cast<void>(turn_until([this] { return window_.reading().isVisible(); }));
        turn(300);
        press(Qt::Key_Escape);
        act("walk: findings");
        press(Qt::Key_L);
        for (int k = 0; k < 6; ++k) press(Qt::Key_N);
        press(Qt::Key_A);
        press(Qt::Key_R);
        press(Qt::Key_A, Qt::ShiftModifier);
        press(Qt::Key_R, Qt::ShiftModifier);
        act("walk: notes");
        press(Qt::Key_T);
        for (int k = 0; k < 8; ++k) press(Qt::Key_Down);
        press(Qt::Key_Home);
        press(Qt::Key_End);
        act("walk: who dug");
        press(Qt::Key_V);
        window_.choices().pick_mound(0);
        press(Qt::Key_I);
        press(Qt::Key_1);
        press(Qt::Key_1);
        press(Qt::Key_Escape);
    }

    void draw_the_ground() {
        act("ground: boundary");
        press(Qt::Key_2);
        const QSize size = window_.map().size();
        const auto at = [size](double x, double y) {
            return QPoint(static_cast<int>(x * size.width()), static_cast<int>(y * size.height()));
        };
        press(Qt::Key_B);
        draw_line({at(.1, .2), at(.3, .1), at(.6, .1), at(.9, .2), at(.9, .7), at(.7, .9), at(.3, .9), at(.1, .7)});
        act("ground: barrier");
        press(Qt::Key_D);
        draw_line({at(.35, .15), at(.45, .4), at(.4, .6), at(.5, .85)});
        act("ground: crossing, gate");
        press(Qt::Key_X);
        click(at(.45, .4));
        press(Qt::Key_T);
        click(at(.9, .45));
        act("ground: keep clear, untreated, hole, split");
        press(Qt::Key_K);
        draw_line({at(.6, .3), at(.7, .3), at(.7, .4), at(.6, .4)});
        press(Qt::Key_U);
        draw_line({at(.15, .6), at(.25, .6), at(.25, .7)});
        press(Qt::Key_H);
        draw_line({at(.62, .32), at(.66, .32), at(.66, .36)});
        press(Qt::Key_Y);
        draw_line({at(.2, .55), at(.2, .75)});
        act("ground: a leg typed");
        press(Qt::Key_D);
        click(at(.2, .3));
        press(Qt::Key_N);
        type(QStringLiteral("12 m 90"));
        press(Qt::Key_Return);
        window_.map().setFocus();
        press(Qt::Key_Return);
        act("ground: a corner dragged");
        window_.drawing().pick(GroundShape{GroundKind::barrier, window_.session().field()->survey.ground.barriers.size() - 1});
        drag(at(.2, .3), at(.24, .4), 20);
        press(Qt::Key_Delete);
        press(Qt::Key_Escape);
    }

    void correct_systems() {
        act("systems: pick and table");
        press(Qt::Key_3);
        near_a_mark(first_with_fan());
        for (int k = 0; k < 3; ++k) click(on_map(first_with_fan() + static_cast<std::size_t>(k)));
        press(Qt::Key_V);
        press(Qt::Key_L);
        act("systems: one, two, run, no gopher's, older");
        say_of_two(Qt::Key_O, 0);
        say_of_two(Qt::Key_T, 3);
        say_of_two(Qt::Key_R, 6);
        window_.choices().pick_mound(first_with_fan() + 9);
        press(Qt::Key_N);
        window_.choices().pick_mound(first_with_fan() + 10);
        press(Qt::Key_A);
        act("systems: no run, set aside");
        const QSize size = window_.map().size();
        press(Qt::Key_X);
        draw_line({{size.width() / 4, size.height() / 4}, {size.width() / 4, size.height() / 2}});
        press(Qt::Key_Z);
        draw_line({{5, 5}, {60, 5}, {60, 60}, {5, 60}});
        act("systems: a fan typed");
        window_.choices().pick_mound(first_with_fan());
        press(Qt::Key_P);
        type(QStringLiteral("S 45 E"));
        press(Qt::Key_Return);
        window_.map().setFocus();
        act("systems: a fan dragged");
        const std::size_t mark = first_with_fan();
        near_a_mark(mark);
        window_.choices().pick_mound(mark);
        const QPoint plug = on_map(mark);
        drag(fan_handle(mark), plug + QPoint(60, 20), 30);
        act("systems: a mark dragged");
        window_.choices().pick_mound(mark);
        drag(on_map(mark), on_map(mark) + QPoint(40, 25), 30);
        act("systems: plan after corrections");
        static_cast<void>(settle());
    }

    void answer_questions() {
        act("questions");
        press(Qt::Key_L);
        const CorrectionsView& view = window_.slip().systems().corrections();
        static_cast<void>(turn_until([&] { return !view.asking(); }));
        press(Qt::Key_PageDown);
        press(Qt::Key_Y);
        for (QListWidget* list : window_.slip().systems().corrections().findChildren<QListWidget*>())
            if (list->count() > 0) list->setCurrentRow(list->count() - 1);
        press(Qt::Key_Delete);
        press(Qt::Key_Escape);
    }

    void review_sets() {
        act("sets: keep and drop");
        press(Qt::Key_5);
        turn(50);
        for (int k = 0; k < 10; ++k) press(k % 4 == 3 ? Qt::Key_D : Qt::Key_K);
        press(Qt::Key_U);
        for (int k = 0; k < 4; ++k) press(Qt::Key_PageDown);
        press(Qt::Key_PageUp);
        act("sets: moved by keys and by hand");
        press(Qt::Key_M);
        for (int k = 0; k < 6; ++k) press(Qt::Key_Up);
        press(Qt::Key_Right, Qt::ShiftModifier);
        press(Qt::Key_Return);
        press(Qt::Key_N);
        if (const auto ladder = window_.slip().sets().ladder()) {
            const QPoint at = window_.map().view().to_screen(ladder->middle).toPoint();
            drag(at, at + QPoint(14, -9), 20);
            press(Qt::Key_Return);
        }
        act("sets: why, one instead, side by side");
        press(Qt::Key_N);
        press(Qt::Key_W);
        press(Qt::Key_I);
        press(Qt::Key_A);
        press(Qt::Key_Right);
        press(Qt::Key_Left);
        press(Qt::Key_W);
        act("sets: show only, several at once");
        press(Qt::Key_O);
        press(Qt::Key_O);
        press(Qt::Key_T);
        press(Qt::Key_K);
        press(Qt::Key_T);
        press(Qt::Key_D);
        press(Qt::Key_Escape);
        act("sets: walking order");
        press(Qt::Key_R);
        ToursView& view = window_.slip().sets().tours();
        const auto worked_out = [this] { return window_.tours().holds() && !window_.tours().working(); };
        static_cast<void>(turn_until(worked_out));
        view.set_place(ToursView::End::start, window_.map().view().to_local(QPointF(60.0, 60.0)));
        view.people().enter(QStringLiteral("2"));
        static_cast<void>(turn_until([this] { return window_.tours().holds(); }));
        turn(300);
        if (window_.tours().working()) window_.tours().stop();
        static_cast<void>(turn_until(worked_out));
        for (int row = 0; row < view.tours().count(); ++row) view.tours().setCurrentRow(row);
        turn(100);
        window_.tours().keep();
        static_cast<void>(turn_until(worked_out));
        press(Qt::Key_Escape);
    }

    void undo_and_redo() {
        act("undo all");
        window_.map().setFocus();
        while (window_.session().history().canUndo()) press(Qt::Key_Z, Qt::ControlModifier);
        act("redo all");
        while (window_.session().history().canRedo()) press(Qt::Key_Y, Qt::ControlModifier);
    }

    void lay_imagery() {
        act("imagery laid");
        window_.add_imagery(pictures_);
        static_cast<void>(turn_until([this] { return window_.imagery().pictures().size() >= pictures_.size(); }));
        turn(500);
        act("imagery: tone");
        if (auto* list = window_.findChild<ImageryList*>()) {
            list->tone().setFocus();
            for (int k = 0; k < 8; ++k) press(k % 2 == 0 ? Qt::Key_Right : Qt::Key_PageUp);
        }
        window_.map().setFocus();
        for (int k = 0; k < 6; ++k) wheel(120);
        drag({300, 300}, {420, 360}, 15);
        press(Qt::Key_F);
        turn(300);
    }

    void change_looks() {
        act("steps");
        for (const Qt::Key key : {Qt::Key_1, Qt::Key_2, Qt::Key_3, Qt::Key_4, Qt::Key_5}) press(key);
        act("method: its parts");
        press(Qt::Key_4);
        for (const Qt::Key key : {Qt::Key_N, Qt::Key_M, Qt::Key_L, Qt::Key_A, Qt::Key_O, Qt::Key_A}) press(key);
        press(Qt::Key_5);
        act("units");
        press(Qt::Key_U, Qt::ControlModifier);
        press(Qt::Key_U, Qt::ControlModifier);
        act("theme");
        for (int k = 0; k < 2; ++k) {
            press(Qt::Key_L, Qt::ControlModifier);
            static_cast<void>(dressed());
        }
        act("text larger and smaller");
        for (const Qt::Key key : {Qt::Key_Plus, Qt::Key_Plus, Qt::Key_0}) {
            press(key, Qt::ControlModifier);
            static_cast<void>(dressed());
        }
        act("keys");
        press(Qt::Key_F1);
        press(Qt::Key_F1);
        act("language");
        for (int k = 0; k < 2; ++k) {
            press(Qt::Key_E, Qt::ControlModifier);
            turn(100);
            static_cast<void>(dressed());
        }
        act("plan after all edits");
        static_cast<void>(settle());
    }

    void hand_out() {
        act("hand out: dialogue");
        press(Qt::Key_S, Qt::ControlModifier);
        HandOutDialog* dialog = window_.hand_out_dialog();
        if (dialog == nullptr) return;
        turn(50);
        dialog->set_folder(folder_.path());
        act("hand out: written");
        QTest::keyClick(dialog, Qt::Key_Return);
        turn(20);
        static_cast<void>(turn_until([this] { return !window_.session().file_work().running(); }));
        come_forward();
    }

    void go_on_with_the_project() {
        act("project named");
        const std::filesystem::path project = folder_.filePath(QStringLiteral("field.plugside")).toStdString();
        window_.keeper().keep_as(project);
        static_cast<void>(turn_until([this] { return window_.keeper().named() && window_.keeper().kept(); }));
        act("another field in its place");
        window_.set_ask([](const QString&, const QStringList&) { return 1; });
        window_.open_files(walk_);
        static_cast<void>(turn_until([this] { return !window_.keeper().named(); }));
        act("project opened");
        window_.open_project(project);
        static_cast<void>(turn_until([this] { return window_.keeper().named(); }));
        act("plan of the project");
        static_cast<void>(turn_until([this] { return window_.session().plan() && window_.map().settled(); }));
        watchdog_.act("end");
    }

private:
    void act(const char* name) {
        QApplication::processEvents();
        watchdog_.act(name);
    }
    static void turn(int ms) { QTest::qWait(ms); }
    static bool turn_until(const std::function<bool()>& done) { return QTest::qWaitFor(done, 600000); }

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &window_, key, modifiers);
        QApplication::processEvents();
    }
    static void type(const QString& text) {
        QTest::keyClicks(QApplication::focusWidget(), text);
        QApplication::processEvents();
    }
    void move(QPoint at) {
        QTest::mouseMove(&window_.map(), at);
        QApplication::processEvents();
    }
    void wheel(int notch) {
        const QPointF at(window_.map().width() / 2.0, window_.map().height() / 2.0);
        QWheelEvent event(at, window_.map().mapToGlobal(at), {}, {0, notch}, Qt::NoButton, {}, Qt::NoScrollPhase, false);
        QApplication::sendEvent(&window_.map(), &event);
        QApplication::processEvents();
    }
    // Far enough apart in time that two are never a double click.
    void click(QPoint at) {
        move(at);
        QTest::mouseClick(&window_.map(), Qt::LeftButton, {}, at, 600);
        QApplication::processEvents();
    }
    void click_button(const QString& text) {
        for (QAbstractButton* button : window_.slip().findChildren<QAbstractButton*>())
            if (button->isVisible() && button->text().startsWith(text)) {
                QTest::mouseClick(button, Qt::LeftButton);
                QApplication::processEvents();
                return;
            }
    }
    void drag(QPoint from, QPoint to, int steps) {
        move(from);
        QTest::mousePress(&window_.map(), Qt::LeftButton, {}, from);
        for (int k = 1; k <= steps; ++k) {
            move(from + (to - from) * k / steps);
            turn(8);
        }
        QTest::mouseRelease(&window_.map(), Qt::LeftButton, {}, to);
        QApplication::processEvents();
    }
    void draw_line(const std::vector<QPoint>& corners) {
        for (const QPoint corner : corners) {
            for (int k = 3; k > 0; --k) move(corner + QPoint(6 * k, 4 * k));
            click(corner);
        }
        press(Qt::Key_Return);
    }
    std::size_t first_with_fan() {
        const Survey& survey = window_.session().field()->survey;
        std::size_t mark = 0;
        while (mark + 12 < survey.mounds.size() && (!survey.mounds[mark].fan || why_not_used(survey, survey.mounds[mark]))) ++mark;
        return mark;
    }
    QPoint on_map(std::size_t mark) {
        return window_.map().view().to_screen(window_.session().field()->survey.mounds[mark].plug).toPoint();
    }
    QPoint fan_handle(std::size_t mark) {
        const Mound& mound = window_.session().field()->survey.mounds[mark];
        const ViewTransform& view = window_.map().view();
        const LocalVector out = mound.fan->unit();
        return (view.to_screen(mound.plug) +
                QPointF(out.east_m, -out.north_m) * (mound_reach_px(view.pixels_per_metre()) + 8.0))
            .toPoint();
    }
    void say_of_two(Qt::Key key, std::size_t from) {
        const std::size_t mark = first_with_fan() + from;
        window_.choices().pick_mound(mark);
        press(key);
        window_.map().setFocus();
        press(Qt::Key_BracketRight);
        press(Qt::Key_Return);
    }

    Watchdog& watchdog_;
    FieldSession::Files walk_;
    FieldSession::Files pictures_;
    QTemporaryDir folder_;
    MainWindow window_;
};

}  // namespace plugside
