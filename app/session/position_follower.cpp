#include "app/session/position_follower.h"

#include <algorithm>
#include <condition_variable>
#include <mutex>
#include <vector>

#include "app/planning/call_there.h"
#include "app/session/project_places.h"

namespace plugside {

namespace {

using namespace std::chrono;

constexpr auto between_looks = milliseconds(500);
constexpr int told_every_ms = 1000;
constexpr auto is_now_for = seconds(10);
constexpr auto is_told_for = seconds(60);
constexpr auto clocks_agree_within = seconds(2);

}  // namespace

UtcTime utc_now() { return floor<milliseconds>(system_clock::now()); }

std::optional<FollowedPosition> position_followed(const PositionReading& reading, UtcTime written, UtcTime now,
                                                  const std::optional<FollowedPosition>& before) {
    if (!reading.last) {
        // the file was begun anew, or what it holds is none: the place that there was is where one was
        std::optional<FollowedPosition> lost = before;
        if (lost) lost->lost = true;
        return lost;
    }
    FollowedPosition position;
    position.told = *reading.last;
    position.lost = reading.lost;
    const bool the_same = before && before->told == position.told;
    position.arrived = the_same ? before->arrived : std::min(written, now);
    position.as_of = position.arrived;
    if (position.told.time) {
        position.clock_ahead = *position.told.time > now + clocks_agree_within;
        if (!position.clock_ahead) position.as_of = std::min(position.as_of, *position.told.time);
    }
    return position;
}

PositionAge age_of(const FollowedPosition& position, UtcTime now) {
    const auto age = now - position.as_of;
    if (position.lost || age > is_told_for) return PositionAge::past;
    return age > is_now_for ? PositionAge::old : PositionAge::now;
}

PositionFollower::PositionFollower(QObject* parent) : QObject(parent) {
    growing_old_.setInterval(told_every_ms);
    connect(&growing_old_, &QTimer::timeout, this, &PositionFollower::changed);
}

PositionFollower::~PositionFollower() {
    watcher_.request_stop();
    if (watcher_.joinable()) watcher_.join();
}

void PositionFollower::follow(const std::filesystem::path& file) {
    stop();
    file_ = file;
    growing_old_.start();
    watcher_ = std::jthread([this, file, ticket = ticket_](const std::stop_token& stop) { watch(file, ticket, stop); });
    Q_EMIT changed();
}

void PositionFollower::stop() {
    ++ticket_;
    growing_old_.stop();
    watcher_ = std::jthread();
    file_.reset();
    position_.reset();
    remarks_.clear();
    looked_ = false;
    Q_EMIT changed();
}

void PositionFollower::watch(const std::filesystem::path& file, std::uint64_t ticket, const std::stop_token& stop) {
    std::mutex mutex;
    std::condition_variable_any pause;
    std::vector<std::pair<std::uintmax_t, std::filesystem::file_time_type>> seen;  // one, once it was read
    std::optional<Refusal> refused;
    std::unique_lock lock(mutex);
    while (!stop.stop_requested()) {
        std::error_code error;
        const std::pair stamp{std::filesystem::file_size(file, error), std::filesystem::last_write_time(file, error)};
        if (error || seen.empty() || seen.front() != stamp) {
            const auto end = end_of_file(file);
            const bool news = end ? true : refused != end.error();
            refused = end ? std::nullopt : std::optional(end.error());
            seen.clear();
            if (end && !error) seen.push_back(stamp);
            const Look look = end ? Look(std::pair{read_positions(*end, file.filename().string()), end->written})
                                  : Look(tl::unexpected(end.error()));
            if (news) call_there(this, [this, look, ticket] { take(look, ticket); });
        }
        pause.wait_for(lock, stop, between_looks, [] { return false; });
    }
}

void PositionFollower::take(const Look& look, std::uint64_t ticket) {
    if (ticket != ticket_) return;
    looked_ = true;
    remarks_.clear();
    if (look) {
        position_ = position_followed(look->first, look->second, utc_now(), position_);
        for (const std::string& remark : look->first.remarks) remarks_ << QString::fromStdString(remark);
    } else {
        remarks_ << QString::fromStdString(sentence(look.error()));
    }
    Q_EMIT changed();
}

}  // namespace plugside
