// Where a receiver is now, from a file that its program goes on writing: sentences of NMEA 0183 (nmea.h), a GPX track or waypoints, or a
// table with a position a row.
//
// Read:    the file's last 64 KiB, and of a table its first row; only what is whole: lines that are ended, elements that are closed. So
//          a file that is cut off, replaced or caught in the middle of a line is no special case, and reading costs the same whatever
//          its size.
// last:    the latest position that could be understood. Its `time` is the receiver's own; sentences without a day get the day that
//          lies nearest to when the file was written. `ends_at` and the rest tell whether it is the one of an earlier reading.
// radius:  within which the true place lies in 95 of 100, in metres: from the receiver's own errors (GST; a table's accuracy, taken as the
//          radius of 68 in 100, as telephones tell it), else from hdop by the rule of gpx_marks.h, half of it with corrections, 5 cm
//          and 75 cm for phase solutions (our assumption). Nothing where neither is told.
// lost:    what came after `last` says that the receiver has no place; or was not understood, and `last` has no time to tell its age by.
// remarks: what was not understood in these last bytes, at most `most_remarks`; places are lines counted from the end ("line 3 from the
//          end") as the lines before are not read.
// Errors:  a Refusal: no plain file, cannot be opened, no text.
// Cost:    O(1): 64 KiB.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

#include "core/survey/mound.h"
#include "core/survey/refusal.h"
#include "geo/frame/local_frame.h"

namespace plugside {

struct ReceiverPosition {
    GeographicPoint at;
    std::optional<UtcTime> time;
    std::optional<double> radius_m;
    bool by_receiver = true;    // false: guessed without satellites, typed in or made up, as the receiver says itself
    std::uint64_t ends_at = 0;  // bytes of the file up to its end
    friend bool operator==(const ReceiverPosition&, const ReceiverPosition&) = default;
};

struct PositionReading {
    static constexpr std::size_t most_remarks = 5;
    std::optional<ReceiverPosition> last;
    bool lost = false;
    std::vector<std::string> remarks;
    std::size_t not_understood = 0;  // lines or elements
    friend bool operator==(const PositionReading&, const PositionReading&) = default;
};

// The end of a file as it was at one moment.
struct FileEnd {
    std::string first_line;  // without its end; at most 4 KiB
    std::string bytes;       // the last of them
    std::uint64_t size = 0;  // of the whole file
    UtcTime written;
};

[[nodiscard]] tl::expected<FileEnd, Refusal> end_of_file(const std::filesystem::path& file);

// `name` is what sentences call the file.
[[nodiscard]] PositionReading read_positions(const FileEnd& end, const std::string& name);

}  // namespace plugside
