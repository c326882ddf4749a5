// Where a receiver is, followed in a file that its program goes on writing (position_file.h), looked at twice a second away from the
// window's thread.
//
// Age:  a place is as old as the receiver's own time says, or as its arrival, whichever is older: of sentences that are copied, replayed
//       or written late the own time tells, of ones without a time the arrival, which is when the file was written as the place was
//       first seen at its end. Where the receiver's clock is ahead of this computer's, the arrival counts.
// Shown as: `now` for ten seconds; `old` for a minute, with its age; `past` afterwards, and at once where the receiver says that it has
//       none: then it is where one was.
// File: cut off, replaced, gone for a while or not understood: what is told follows it; a refusal is told until it can be read again.
// Destruction waits for the look at the file that is being taken.
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <QTimer>
#include <chrono>
#include <filesystem>
#include <optional>
#include <thread>

#include "geo/read/position_file.h"

namespace plugside {

struct FollowedPosition {
    ReceiverPosition told;
    UtcTime arrived;           // as the file was written when it was first seen
    UtcTime as_of;             // how old it is
    bool clock_ahead = false;  // of this computer's
    bool lost = false;
    friend bool operator==(const FollowedPosition&, const FollowedPosition&) = default;
};

// What is to be made of a reading at `now`; `before` is what was made of the one before it, of the same file.
[[nodiscard]] std::optional<FollowedPosition> position_followed(const PositionReading& reading, UtcTime written, UtcTime now,
                                                                const std::optional<FollowedPosition>& before);

enum class PositionAge { now, old, past };
[[nodiscard]] PositionAge age_of(const FollowedPosition& position, UtcTime now);
[[nodiscard]] UtcTime utc_now();

class PositionFollower : public QObject {
    Q_OBJECT

public:
    explicit PositionFollower(QObject* parent = nullptr);
    ~PositionFollower() override;

    void follow(const std::filesystem::path& file);
    void stop();
    // Nothing while none is followed.
    [[nodiscard]] const std::optional<std::filesystem::path>& file() const { return file_; }
    [[nodiscard]] const std::optional<FollowedPosition>& position() const { return position_; }
    // What was not understood of late, or why the file cannot be read; empty where all is well.
    [[nodiscard]] const QStringList& remarks() const { return remarks_; }
    [[nodiscard]] bool looked() const { return looked_; }

Q_SIGNALS:
    void changed();  // and every second, as places grow old

private:
    using Look = tl::expected<std::pair<PositionReading, UtcTime>, Refusal>;
    void watch(const std::filesystem::path& file, std::uint64_t ticket, const std::stop_token& stop);
    void take(const Look& look, std::uint64_t ticket);

    std::optional<std::filesystem::path> file_;
    std::optional<FollowedPosition> position_;
    QStringList remarks_;
    bool looked_ = false;
    std::uint64_t ticket_ = 0;
    QTimer growing_old_;
    std::jthread watcher_;  // last: it ends before what it speaks to goes
};

}  // namespace plugside
