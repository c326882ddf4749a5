#include "app/planning/background_work.h"

#include <memory>
#include <utility>

#ifdef __linux__
#include <sys/resource.h>
#include <unistd.h>
#endif

#include "app/planning/call_there.h"
#include "core/words/words.h"

namespace plugside {

namespace {

constexpr qint64 least_pause_ms = 50;

// Threads that this one starts are as modest as it is.
void give_way() {
#ifdef __linux__
    constexpr int modest = 10;
    setpriority(PRIO_PROCESS, static_cast<id_t>(gettid()), modest);
#endif
}

}  // namespace

BackgroundWork::BackgroundWork(QObject* parent, Overlap overlap, Haste haste)
    : QObject(parent), overlap_(overlap), haste_(haste) {}

BackgroundWork::~BackgroundWork() {
    for (Job& job : jobs_) job.thread.request_stop();
    jobs_.clear();  // joins
}

void BackgroundWork::start(Work work) {
    start_in_stages([work = std::move(work)](const Progress& progress, const Meanwhile&) { return work(progress); });
}

void BackgroundWork::start_in_stages(WorkInStages work) {
    for (Job& job : jobs_) job.thread.request_stop();
    const std::uint64_t ticket = ++ticket_;
    running_ = true;
    share_done_ = 0.0;
    doing_.clear();
    static const WorkInStages nothing = [](const Progress&, const Meanwhile&) -> Apply { return {}; };
    std::promise<void> over;
    std::shared_future<void> is_over = over.get_future().share();
    std::shared_future<void> before;
    if (overlap_ == Overlap::none && !jobs_.empty()) before = jobs_.back().over;
    jobs_.push_back({ticket, std::move(is_over),
                     std::jthread([this, ticket, before, haste = haste_, over = std::move(over),
                                   work = std::move(work)](const std::stop_token& stop) mutable {
                         if (haste == Haste::gives_way) give_way();
                         if (before.valid()) before.wait();
                         run(ticket, before.valid() && stop.stop_requested() ? nothing : work, stop);
                         over.set_value();
                     })});
    Q_EMIT started();
}

void BackgroundWork::run(std::uint64_t ticket, const WorkInStages& work, const std::stop_token& stop) {
    QElapsedTimer since_last;
    Progress progress;
    progress.stop = stop;
    progress.report = [this, ticket, &since_last](double share_done, std::string_view doing) {
        if (since_last.isValid() && since_last.elapsed() < least_pause_ms) return;
        since_last.start();
        const QString words = QString::fromStdString(Words::shown(std::string(doing)));
        call_there(this, [this, ticket, share_done, words] { show_progress(ticket, share_done, words); });
    };
    const Meanwhile meanwhile = [this, ticket](Apply apply) {
        call_there(this, [this, ticket, apply = std::move(apply)] { apply_meanwhile(ticket, apply); });
    };
    Apply apply = work(progress, meanwhile);
    call_there(this, [this, ticket, apply = std::move(apply)] { finish(ticket, apply); });
}

void BackgroundWork::stop() {
    for (Job& job : jobs_) job.thread.request_stop();
    ++ticket_;
    if (!std::exchange(running_, false)) return;
    Q_EMIT ended();
}

void BackgroundWork::finish(std::uint64_t ticket, const Apply& apply) {
    std::erase_if(jobs_, [ticket](const Job& job) { return job.ticket == ticket; });
    if (ticket != ticket_ || !running_) return;
    running_ = false;
    if (apply) apply();
    // applying may have started the next piece of work
    if (!running_) Q_EMIT ended();
}

void BackgroundWork::apply_meanwhile(std::uint64_t ticket, const Apply& apply) const {
    if (ticket == ticket_ && running_ && apply) apply();
}

void BackgroundWork::show_progress(std::uint64_t ticket, double share_done, const QString& doing) {
    if (ticket != ticket_ || !running_) return;
    share_done_ = share_done;
    doing_ = doing;
    Q_EMIT progressed();
}

}  // namespace plugside
