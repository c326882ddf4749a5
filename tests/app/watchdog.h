// How long each event keeps the window's thread: what the tests and benchmarks know of a window that does not answer.
//
// Block:   one event from the moment the thread takes it up until it can take up the next, with all that is sent on inside it. Time
//          passed holds what other programs took of the machine; time worked is the thread's own (CLOCK_THREAD_CPUTIME_ID), by which
//          bars are judged. While a loop inside an event waits (a dialogue), the thread is free: the event's waits do not count, nor do
//          the events that such a loop takes up count as part of it.
// handled: who was told what, outermost first, each further part while it took half of the whole or more: "QShortcut
//          Shortcut", "QWidgetWindow \"MainWindowClassWindow\" UpdateRequest > MapView Paint". A widget without a name of its own is told by
//          what it says.
// Turn:    events taken up one behind the other before the thread looked for new ones: what a key pressed meanwhile waits at most.
// Act:     what a script was doing, as it told by `act`.
// Cost:    about a microsecond an event.
#pragma once

#include <time.h>

#include <QAbstractEventDispatcher>
#include <QApplication>
#include <QEvent>
#include <QMetaEnum>
#include <QPointer>
#include <QThread>
#include <QWidget>
#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace plugside {

// Time passed, and time that this thread worked, since it was made.
class ThreadTime {
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

class Watchdog {
public:
    struct Block {
        double worked_ms = 0.0;
        double passed_ms = 0.0;
        std::string handled;
    };
    struct Act {
        std::string name;
        std::size_t events = 0;
        Block worst;          // by time worked
        double passed_ms = 0.0;  // of the block that took longest, whoever had the machine
        double turn_ms = 0.0;    // worked in the longest turn
    };

    // What follows is part of that act.
    void act(std::string name) {
        end_turn();
        acts_.push_back({std::move(name), 0, {}, 0.0, 0.0});
    }
    void forget() { acts_ = {{}}; }
    // In the order told; the first has no name and holds what came before any was.
    [[nodiscard]] const std::vector<Act>& acts() const { return acts_; }
    [[nodiscard]] Block worst() const {
        return std::max_element(acts_.begin(), acts_.end(), [](const Act& a, const Act& b) {
                   return a.worst.worked_ms < b.worst.worked_ms;
               })->worst;
    }
    // The worst acts first.
    [[nodiscard]] std::vector<Act> by_worst() const {
        std::vector<Act> acts = acts_;
        std::stable_sort(acts.begin(), acts.end(),
                         [](const Act& a, const Act& b) { return a.worst.worked_ms > b.worst.worked_ms; });
        return acts;
    }

    // Around the handling of one event, by WatchedApplication.
    void begin(QObject* receiver, QEvent::Type type) {
        const int level = QThread::currentThread()->loopLevel();
        wake();
        if (!open_.empty() && level > open_.back().level) end_laps();
        open_.push_back({receiver, receiver->metaObject(), receiver->objectName(), type, level, {}, 0.0, 0.0, {}});
    }
    void end() {
        Handled handled = std::move(open_.back());
        open_.pop_back();
        handled.end_lap();
        const bool of_an_open_one = !open_.empty() && open_.back().level == handled.level;
        if (of_an_open_one) {
            if (handled.worked_ms > open_.back().part.worked_ms && handled.worked_ms > worth_naming_ms)
                open_.back().part = {handled.worked_ms, handled.passed_ms, words_of(handled)};
            return;
        }
        take(handled);
        for (Handled& waiting : open_) waiting.lap = ThreadTime();
    }
    // The thread goes to sleep in a loop, and has woken: some loops tell of the second only after the events that woke them.
    void sleep() {
        end_laps();
        end_turn();
        asleep_ = true;
    }
    void wake() {
        if (std::exchange(asleep_, false))
            for (Handled& handled : open_) handled.lap = ThreadTime();
    }
    void end_turn() {
        acts_.back().turn_ms = std::max(acts_.back().turn_ms, std::exchange(turn_ms_, 0.0));
    }

private:
    static constexpr double worth_naming_ms = 0.2;
    void end_laps() {
        for (auto& handled : open_) handled.end_lap();
    }

    struct Handled {
        QPointer<QObject> receiver;
        const QMetaObject* kind;
        QString name;
        QEvent::Type type;
        int level;  // of event loops inside each other
        ThreadTime lap;
        double worked_ms;  // the longest lap
        double passed_ms;
        Block part;  // the one sent on inside it that took longest

        void end_lap() {
            worked_ms = std::max(worked_ms, lap.worked_ms());
            passed_ms = std::max(passed_ms, lap.passed_ms());
        }
    };

    static std::string words_of(const Handled& handled) {
        QString words = QString::fromLatin1(handled.kind->className());
        QString name = handled.name;
        if (const auto* widget = qobject_cast<QWidget*>(handled.receiver.data()); widget && name.isEmpty()) {
            name = widget->accessibleName();
            if (name.isEmpty()) name = widget->property("text").toString();
            name.truncate(40);
        }
        if (!name.isEmpty()) words += QStringLiteral(" \"%1\"").arg(name);
        const char* type = QMetaEnum::fromType<QEvent::Type>().valueToKey(handled.type);
        words += QLatin1Char(' ') + (type ? QString::fromLatin1(type) : QString::number(handled.type));
        std::string told = words.toStdString();
        if (handled.part.worked_ms >= 0.5 * handled.worked_ms && !handled.part.handled.empty())
            told += " > " + handled.part.handled;
        return told;
    }

    void take(const Handled& handled) {
        Act& act = acts_.back();
        ++act.events;
        turn_ms_ += handled.worked_ms;
        act.passed_ms = std::max(act.passed_ms, handled.passed_ms);
        if (handled.worked_ms <= act.worst.worked_ms) return;
        act.worst = {handled.worked_ms, handled.passed_ms, words_of(handled)};
    }

    std::vector<Handled> open_;  // being handled, each inside the one before
    std::vector<Act> acts_{{}};
    double turn_ms_ = 0.0;
    bool asleep_ = false;
};

// An application whose thread is watched.
class WatchedApplication : public QApplication {
public:
    WatchedApplication(int& words, char** list) : QApplication(words, list) {
        QAbstractEventDispatcher* loop = QAbstractEventDispatcher::instance();
        connect(loop, &QAbstractEventDispatcher::aboutToBlock, this, [this] { watchdog_.sleep(); });
        connect(loop, &QAbstractEventDispatcher::awake, this, [this] {
            watchdog_.wake();
            watchdog_.end_turn();
        });
    }
    [[nodiscard]] Watchdog& watchdog() { return watchdog_; }

    bool notify(QObject* receiver, QEvent* event) override {
        if (receiver == nullptr || QThread::currentThread() != thread()) return QApplication::notify(receiver, event);
        watchdog_.begin(receiver, event->type());
        const bool taken = QApplication::notify(receiver, event);
        watchdog_.end();
        return taken;
    }

private:
    Watchdog watchdog_;
};

}  // namespace plugside
