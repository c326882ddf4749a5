// The watchdog itself: it catches a planted block, names who had it, and lets go what does not keep the thread.
#include "tests/app/watchdog.h"

#include <QDialog>
#include <QLabel>
#include <QPushButton>
#include <QTimer>

#include "tests/app/application.h"

namespace plugside {
namespace {

constexpr double planted_ms = 60.0;

void work_for(double ms) {
    const ThreadTime time;
    while (time.worked_ms() < ms) {
    }
}

class Blocker : public QWidget {
public:
    using QWidget::QWidget;

protected:
    void mousePressEvent(QMouseEvent*) override { work_for(planted_ms); }
};

class WatchdogTest : public OnScreen {
protected:
    WatchdogTest() { watchdog().forget(); }
    ~WatchdogTest() override { watchdog().forget(); }
    static Watchdog& watchdog() { return application().watchdog(); }
};

TEST_F(WatchdogTest, APlantedBlockIsCaughtAndNamedInItsAct) {
    Blocker blocker;
    blocker.setObjectName(QStringLiteral("planted"));
    blocker.show();
    watchdog().act("before");
    QApplication::processEvents();
    watchdog().act("the press");
    QTest::mousePress(&blocker, Qt::LeftButton);
    watchdog().act("after");
    QApplication::processEvents();
    const Watchdog::Act worst = watchdog().by_worst().front();
    EXPECT_EQ(worst.name, "the press");
    EXPECT_GE(worst.worst.worked_ms, planted_ms);
    EXPECT_GE(worst.worst.passed_ms, worst.worst.worked_ms - 1.0);
    EXPECT_GE(worst.turn_ms, planted_ms);
    EXPECT_NE(worst.worst.handled.find("QWidget \"planted\" MouseButtonPress"), std::string::npos) << worst.worst.handled;
    EXPECT_EQ(watchdog().worst().handled, worst.worst.handled);
}

TEST_F(WatchdogTest, WhatIsSentOnInsideAnEventIsNamedWithIt) {
    QWidget outer;
    auto* button = new QPushButton(QStringLiteral("work"), &outer);
    QObject::connect(button, &QPushButton::clicked, [] { work_for(planted_ms); });
    QObject sender;
    watchdog().act("click");
    QMetaObject::invokeMethod(
        &sender, [&] { QTest::mouseClick(button, Qt::LeftButton); }, Qt::QueuedConnection);
    QApplication::processEvents();
    const std::string handled = watchdog().worst().handled;
    EXPECT_EQ(handled, "QObject MetaCall > QPushButton \"work\" MouseButtonRelease");
}

TEST_F(WatchdogTest, AThreadThatWaitsIsNotKept) {
    watchdog().act("a dialogue that waits");
    QObject sender;
    QDialog dialogue;
    QMetaObject::invokeMethod(
        &sender,
        [&] {
            QTimer::singleShot(1500, &dialogue, &QDialog::accept);
            dialogue.exec();
        },
        Qt::QueuedConnection);
    QApplication::processEvents();
    const Watchdog::Act act = watchdog().acts().back();
    EXPECT_GT(act.events, 2U);
    EXPECT_LT(act.passed_ms, 1400.0) << "the wait of the loop inside is not time that the thread was kept";
}

TEST_F(WatchdogTest, WorkInsideADialogueIsNotPutDownToTheEventThatOpenedIt) {
    watchdog().act("work in a dialogue");
    QObject opener;
    QObject worker;
    worker.setObjectName(QStringLiteral("worker"));
    QDialog dialogue;
    QMetaObject::invokeMethod(
        &opener,
        [&] {
            QMetaObject::invokeMethod(
                &worker,
                [&] {
                    work_for(planted_ms);
                    dialogue.accept();
                },
                Qt::QueuedConnection);
            dialogue.exec();
        },
        Qt::QueuedConnection);
    QApplication::processEvents();
    EXPECT_EQ(watchdog().worst().handled, "QObject \"worker\" MetaCall");
}

TEST_F(WatchdogTest, ReceiversThatAreGoneWhenTheEventIsDoneAreNamedAllTheSame) {
    auto* gone = new QObject;
    gone->setObjectName(QStringLiteral("gone"));
    watchdog().act("gone");
    QMetaObject::invokeMethod(
        gone,
        [gone] {
            work_for(planted_ms);
            delete gone;
        },
        Qt::QueuedConnection);
    QApplication::processEvents();
    EXPECT_EQ(watchdog().worst().handled, "QObject \"gone\" MetaCall");
}

}  // namespace
}  // namespace plugside
