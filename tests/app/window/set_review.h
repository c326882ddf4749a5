// A person who goes through the sets of a field, with the acts counted (a key pressed, a click, a drag), the longest time that the
// window's thread was kept from the next event, and the longest that it worked itself: on a machine whose cores others use too the first
// holds their time as well.
#pragma once

#include <gtest/gtest.h>
#include <time.h>

#include <QAbstractEventDispatcher>
#include <algorithm>
#include <functional>
#include <optional>
#include <string>

#include "app/window/main_window.h"
#include "core/simulation/burrow_simulator.h"
#include "tests/app/application.h"

namespace plugside {

class SetReview {
public:
    SetReview() {
        QAbstractEventDispatcher* loop = QAbstractEventDispatcher::instance();
        QObject::connect(loop, &QAbstractEventDispatcher::awake, &listener_, [this] { since_awake_ = Watch(); });
        QObject::connect(loop, &QAbstractEventDispatcher::aboutToBlock, &listener_, [this] {
            if (since_awake_) lap(*since_awake_, "events");
        });
    }

    void open(const FieldSession::Files& files) {
        window_.open_files(files);
        ASSERT_TRUE(planned());
        show();
    }
    // A made-up walk with so many mounds.
    void open_simulated(std::size_t mounds) {
        SimulationOptions options;
        options.mounds_wanted = mounds;
        options.seed = 7;
        options.with_ground = true;
        FieldSurvey field;
        field.field_name = "Made-up field";
        field.frame = LocalFrame::centred_on({-104.9, 41.0});
        field.survey = simulate_field(options).survey;
        open(std::move(field));
    }
    void open(FieldSurvey field) {
        window_.session().adopt(std::move(field), {"a field"});
        ASSERT_TRUE(planned());
        show();
    }
    bool planned() {
        return wait_for([this] { return window_.session().plan_is_current(); });
    }
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 120000); }

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        timed("key", [&] {
            QWidget* focus = QApplication::focusWidget();
            QTest::keyClick(focus ? focus : &window_, key, modifiers);
        });
        ++acts_;
    }
    void click(QWidget* widget, QPoint at = {}) {
        timed("click", [&] { QTest::mouseClick(widget, Qt::LeftButton, {}, at); });
        ++acts_;
    }
    // The hand goes in `steps`; each of them is looked at.
    void drag(QWidget* widget, QPoint from, QPoint to, int steps = 8) {
        timed("press", [&] { QTest::mousePress(widget, Qt::LeftButton, {}, from); });
        for (int k = 1; k <= steps; ++k) {
            const QPoint at = from + (to - from) * k / steps;
            const Watch step;
            QTest::mouseMove(widget, at);
            QApplication::processEvents();
            worst_step_ms_ = std::max(worst_step_ms_, step.passed_ms());
            worst_step_work_ms_ = std::max(worst_step_work_ms_, step.worked_ms());
        }
        timed("release", [&] { QTest::mouseRelease(widget, Qt::LeftButton, {}, to); });
        ++acts_;
    }
    // A button of the slip by what it says.
    QAbstractButton* button(const QString& text) {
        for (QAbstractButton* each : window_.slip().sets().findChildren<QAbstractButton*>())
            if (each->isVisible() && each->text().startsWith(text)) return each;
        return nullptr;
    }
    void click_button(const QString& text) {
        QAbstractButton* found = button(text);
        ASSERT_NE(found, nullptr) << text.toStdString();
        click(found, found->rect().center());
    }

    MainWindow& window() { return window_; }
    SetsPage& page() { return window_.slip().sets(); }
    const Survey& survey() { return window_.session().field()->survey; }
    const Plan& plan() { return *window_.session().plan(); }
    SetProgress progress() { return set_progress(survey(), plan()); }
    std::size_t at_hand() { return set_at(plan(), *window_.choices().set()).value_or(plan().sets.size()); }
    QPoint ladder_on_map() { return window_.map().view().to_screen(page().ladder()->middle).toPoint(); }

    [[nodiscard]] int acts() const { return acts_; }
    [[nodiscard]] double worst_ms() const { return worst_ms_; }
    [[nodiscard]] double worst_work_ms() const { return worst_work_ms_; }
    [[nodiscard]] double worst_step_ms() const { return worst_step_ms_; }
    [[nodiscard]] double worst_step_work_ms() const { return worst_step_work_ms_; }
    [[nodiscard]] const std::string& worst_of() const { return worst_of_; }
    void begin_counting() {
        acts_ = 0;
        worst_ms_ = worst_work_ms_ = worst_step_ms_ = worst_step_work_ms_ = 0.0;
    }

private:
    void show() {
        window_.resize(1280, 800);
        window_.show();
        window_.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
    }
    // Time passed, and time that this thread worked.
    class Watch {
    public:
        [[nodiscard]] double passed_ms() const { return ms_of(CLOCK_MONOTONIC) - passed_from_; }
        [[nodiscard]] double worked_ms() const { return ms_of(CLOCK_THREAD_CPUTIME_ID) - worked_from_; }

    private:
        static double ms_of(clockid_t clock) {
            timespec now{};
            clock_gettime(clock, &now);
            return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
        }
        double passed_from_ = ms_of(CLOCK_MONOTONIC);
        double worked_from_ = ms_of(CLOCK_THREAD_CPUTIME_ID);
    };
    void lap(const Watch& watch, const char* what) {
        worst_ms_ = std::max(worst_ms_, watch.passed_ms());
        if (watch.worked_ms() <= worst_work_ms_) return;
        worst_work_ms_ = watch.worked_ms();
        worst_of_ = what;
    }
    void timed(const char* what, const std::function<void()>& act) {
        const Watch watch;
        act();
        lap(watch, what);
        QApplication::processEvents();
    }

    std::optional<Watch> since_awake_;
    int acts_ = 0;
    double worst_ms_ = 0.0;
    double worst_work_ms_ = 0.0;
    double worst_step_ms_ = 0.0;
    double worst_step_work_ms_ = 0.0;
    std::string worst_of_;
    MainWindow window_;
    QObject listener_;  // gone before what it tells of
};

// Thirty sets by keys alone: most kept, some dropped, some with the ladder shifted first.
inline void review_thirty_by_keys(SetReview& review) {
    review.press(Qt::Key_5);
    review.begin_counting();
    for (int set = 0; set < 30; ++set) {
        if (set % 6 == 5) {
            review.press(set % 12 == 5 ? Qt::Key_Up : Qt::Key_Left, Qt::ControlModifier);
            review.press(Qt::Key_K);
        } else {
            review.press(set % 5 == 4 ? Qt::Key_D : Qt::Key_K);
        }
    }
}

// The same by mouse alone; ladders are dragged on the map and in the close-up.
inline void review_thirty_by_mouse(SetReview& review) {
    review.press(Qt::Key_5);
    review.begin_counting();
    for (int set = 0; set < 30; ++set) {
        if (set % 12 == 5) {
            const QPoint ladder = review.ladder_on_map();
            review.drag(&review.window().map(), ladder, ladder + QPoint(5, -4));
        } else if (set % 12 == 11) {
            CloseUp& close_up = review.page().close_up();
            const QPoint ladder = close_up.ladder_at().toPoint();
            review.drag(&close_up, ladder, ladder + QPoint(6, -14));
        }
        review.click_button(set % 5 == 4 && set % 6 != 5 ? QStringLiteral("drop") : QStringLiteral("keep"));
    }
}

}  // namespace plugside
