// One kind of work at a time away from the window's thread: planning, reading, handing out.
//
// start: runs `work` on a thread of its own. What it returns, and what it hands over meanwhile, is called on this object's
// thread
//        in that order, unless the work was stopped or other work was started: then it is forgotten.
// stop:  asks the work to end; `ended` follows at once, nothing of it is applied.
// Overlap: work that was started in place of other work begins at once, or, where none is wanted, when the other has seen its stop: then,
//        however quickly pieces follow each other, no more than one of them takes a core; what was overtaken while it waited never begins.
// Haste:   threads give way to the window's and to all else, where the system allows it, unless the hand waits for what they make.
// progressed: at most every 50 ms, on this object's thread.
// Destruction waits for threads that still run (they poll their stop token).
#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QString>
#include <cstdint>
#include <functional>
#include <future>
#include <list>
#include <thread>

#include "core/plan/progress.h"

namespace plugside {

class BackgroundWork : public QObject {
    Q_OBJECT

public:
    using Apply = std::function<void()>;
    using Work = std::function<Apply(const Progress&)>;
    using Meanwhile =
        std::function<void(Apply)>;  // hands over something before the work is done; called on the working thread
    using WorkInStages = std::function<Apply(const Progress&, const Meanwhile&)>;

    enum class Overlap { allowed, none };
    enum class Haste { gives_way, prompt };

    explicit BackgroundWork(QObject* parent = nullptr, Overlap overlap = Overlap::allowed, Haste haste = Haste::gives_way);
    ~BackgroundWork() override;

    void start(Work work);
    void start_in_stages(WorkInStages work);
    void stop();
    [[nodiscard]] bool running() const { return running_; }
    [[nodiscard]] double share_done() const { return share_done_; }
    [[nodiscard]] QString doing() const { return doing_; }

Q_SIGNALS:
    void started();
    void progressed();
    void ended();

private:
    struct Job {
        std::uint64_t ticket = 0;
        std::shared_future<void> over;
        std::jthread thread;
    };
    void run(std::uint64_t ticket, const WorkInStages& work, const std::stop_token& stop);
    void apply_meanwhile(std::uint64_t ticket, const Apply& apply) const;
    void finish(std::uint64_t ticket, const Apply& apply);
    void show_progress(std::uint64_t ticket, double share_done, const QString& doing);

    Overlap overlap_;
    Haste haste_;
    std::list<Job> jobs_;
    std::uint64_t ticket_ = 0;
    bool running_ = false;
    double share_done_ = 0.0;
    QString doing_;
};

}  // namespace plugside
