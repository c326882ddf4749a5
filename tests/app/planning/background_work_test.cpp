#include "app/planning/background_work.h"

#include <QSignalSpy>
#include <algorithm>
#include <atomic>
#include <vector>

#include "tests/app/application.h"

namespace plugside {
namespace {

using BackgroundWorkTest = OnScreen;

TEST_F(BackgroundWorkTest, ItsResultIsAppliedOnTheThreadThatStartedIt) {
    BackgroundWork work;
    QThread* const here = QThread::currentThread();
    QThread* worked = nullptr;
    QThread* applied = nullptr;
    work.start([&](const Progress&) -> BackgroundWork::Apply {
        worked = QThread::currentThread();
        return [&] { applied = QThread::currentThread(); };
    });
    EXPECT_TRUE(QTest::qWaitFor([&] { return applied != nullptr; }, 5000));
    EXPECT_EQ(applied, here);
    EXPECT_NE(worked, here);
    EXPECT_FALSE(work.running());
}

TEST_F(BackgroundWorkTest, WorkThatWasOvertakenIsForgotten) {
    BackgroundWork work;
    std::atomic<bool> go{false};
    bool first = false;
    bool second = false;
    work.start([&](const Progress&) -> BackgroundWork::Apply {
        while (!go) std::this_thread::yield();
        return [&] { first = true; };
    });
    work.start([&](const Progress&) -> BackgroundWork::Apply { return [&] { second = true; }; });
    EXPECT_TRUE(QTest::qWaitFor([&] { return second; }, 5000));
    go = true;
    QTest::qWait(100);
    EXPECT_FALSE(first);
}

TEST_F(BackgroundWorkTest, WithoutOverlapOneWorksAtATimeAndWhatWasOvertakenWhileItWaitedNeverBegins) {
    BackgroundWork work(nullptr, BackgroundWork::Overlap::none);
    std::atomic<int> at_work{0};
    std::atomic<int> most_at_work{0};
    std::atomic<int> begun{0};
    std::atomic<bool> go{false};
    int applied = 0;
    for (int k = 1; k <= 8; ++k)
        work.start([&, k](const Progress&) -> BackgroundWork::Apply {
            ++begun;
            most_at_work = std::max(most_at_work.load(), ++at_work);
            while (!go) std::this_thread::yield();  // heeds no stop
            --at_work;
            return [&, k] { applied = k; };
        });
    EXPECT_TRUE(QTest::qWaitFor([&] { return begun >= 1; }, 5000));
    QTest::qWait(30);
    EXPECT_EQ(begun, 1);
    go = true;
    EXPECT_TRUE(QTest::qWaitFor([&] { return applied == 8; }, 5000));
    EXPECT_EQ(most_at_work, 1);
    EXPECT_LE(begun, 2);  // the first, and the last
    EXPECT_FALSE(work.running());
}

TEST_F(BackgroundWorkTest, WhatItHandsOverMeanwhileIsAppliedBeforeItsResult) {
    BackgroundWork work;
    std::vector<int> applied;
    std::atomic<bool> go{false};
    work.start_in_stages([&](const Progress&, const BackgroundWork::Meanwhile& meanwhile) -> BackgroundWork::Apply {
        meanwhile([&] { applied.push_back(1); });
        while (!go) std::this_thread::yield();
        return [&] { applied.push_back(2); };
    });
    EXPECT_TRUE(QTest::qWaitFor([&] { return !applied.empty(); }, 5000));
    EXPECT_TRUE(work.running());
    EXPECT_EQ(applied, std::vector<int>{1});
    go = true;
    EXPECT_TRUE(QTest::qWaitFor([&] { return !work.running(); }, 5000));
    EXPECT_EQ(applied, (std::vector<int>{1, 2}));
}

TEST_F(BackgroundWorkTest, WhatOvertakenOrStoppedWorkHandsOverIsForgotten) {
    BackgroundWork work;
    std::atomic<bool> go{false};
    std::atomic<int> ended{0};
    int applied = 0;
    const auto late = [&](const Progress&, const BackgroundWork::Meanwhile& meanwhile) -> BackgroundWork::Apply {
        while (!go) std::this_thread::yield();
        meanwhile([&] { ++applied; });
        ++ended;
        return {};
    };
    work.start_in_stages(late);
    work.start_in_stages(late);
    work.stop();
    go = true;
    EXPECT_TRUE(QTest::qWaitFor([&] { return ended == 2; }, 5000));
    QTest::qWait(50);
    EXPECT_EQ(applied, 0);
}

TEST_F(BackgroundWorkTest, StoppedWorkIsToldSoAndAppliesNothing) {
    BackgroundWork work;
    QSignalSpy ended(&work, &BackgroundWork::ended);
    std::atomic<bool> was_told{false};
    bool applied = false;
    work.start([&](const Progress& progress) -> BackgroundWork::Apply {
        while (!progress.stopped()) std::this_thread::yield();
        was_told = true;
        return [&] { applied = true; };
    });
    work.stop();
    EXPECT_EQ(ended.count(), 1);
    EXPECT_TRUE(QTest::qWaitFor([&] { return was_told.load(); }, 5000));
    QTest::qWait(50);
    EXPECT_FALSE(applied);
}

TEST_F(BackgroundWorkTest, ProgressArrivesWhileItWorksAndNotMoreOftenThanCanBeRead) {
    BackgroundWork work;
    QSignalSpy progressed(&work, &BackgroundWork::progressed);
    std::atomic<bool> go{false};
    work.start([&](const Progress& progress) -> BackgroundWork::Apply {
        for (int i = 0; i < 100000; ++i) progress.say(0.5, "drawing forests");
        while (!go) std::this_thread::yield();
        return {};
    });
    EXPECT_TRUE(progressed.wait(5000));
    EXPECT_EQ(work.doing(), "drawing forests");
    EXPECT_DOUBLE_EQ(work.share_done(), 0.5);
    EXPECT_LT(progressed.count(), 200);
    go = true;
    EXPECT_TRUE(QTest::qWaitFor([&] { return !work.running(); }, 5000));
}

}  // namespace
}  // namespace plugside
