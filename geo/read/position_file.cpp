#include "geo/read/position_file.h"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <utility>

#include "core/words/words.h"
#include "geo/read/gpx.h"
#include "geo/read/gpx_marks.h"
#include "geo/read/input_file.h"
#include "geo/read/nmea.h"
#include "geo/read/numbers.h"
#include "geo/read/table.h"

namespace plugside {

namespace {

using namespace std::chrono;

constexpr std::uint64_t read_bytes = 64 * 1024;
constexpr std::uint64_t first_line_bytes = 4 * 1024;
constexpr std::size_t rows_tried = 20;
constexpr std::size_t elements_tried = 20;
// radius of a circular normal distribution that holds 95 and 68 of 100, in standard deviations of one axis: sqrt(-2 ln(1 - p))
constexpr double radii_95 = 2.4477;
constexpr double radii_68 = 1.5096;
constexpr double centimetre_radius_m = 0.05;
constexpr double decimetre_radius_m = 0.75;
constexpr auto errors_hold = seconds(3);
constexpr milliseconds never = -days(2);  // no time of any day

double radius_of(double sd_m) { return radii_95 * sd_m; }

std::optional<double> radius_from_hdop(std::optional<double> hdop) {
    const auto shared = shared_sd_from_hdop(hdop);
    if (!shared) return std::nullopt;
    return radius_of(std::hypot(shared->value(), position_sd_from_hdop(hdop).value()));
}

std::optional<double> radius_of_quality(int quality, std::optional<double> hdop) {
    if (quality == 4) return centimetre_radius_m;
    if (quality == 5) return decimetre_radius_m;
    const auto radius = radius_from_hdop(hdop);
    return radius && quality == 2 ? std::optional(0.5 * *radius) : quality <= 3 ? radius : std::nullopt;
}

struct Line {
    std::string_view text;
    std::uint64_t ends_at = 0;
    std::size_t from_end = 0;  // 1: the last whole one
};

// The whole lines of the bytes; the first may be the rest of one, and is left out where more comes before.
std::vector<Line> whole_lines(const FileEnd& end) {
    std::vector<Line> lines;
    const std::uint64_t begins_at = end.size - std::min<std::uint64_t>(end.size, end.bytes.size());
    std::string_view rest = end.bytes;
    bool in_the_middle = begins_at > 0;
    for (auto stop = rest.find('\n'); stop != std::string_view::npos; stop = rest.find('\n')) {
        const std::string_view text = trimmed(rest.substr(0, stop));
        rest.remove_prefix(stop + 1);
        if (!std::exchange(in_the_middle, false) && !text.empty())
            lines.push_back({text, begins_at + (end.bytes.size() - rest.size()), 0});
    }
    for (std::size_t i = 0; i < lines.size(); ++i) lines[i].from_end = lines.size() - i;
    return lines;
}

// What is later in the file than all that was remarked before.
void remark(PositionReading& reading, const std::string& place, const std::string& sentence) {
    ++reading.not_understood;
    if (reading.remarks.size() == PositionReading::most_remarks) reading.remarks.erase(reading.remarks.begin());
    reading.remarks.push_back(place.empty() ? sentence : place + ": " + sentence);
}

// What is earlier, for those who read from the end.
void remark_earlier(PositionReading& reading, const std::string& place, const std::string& sentence) {
    ++reading.not_understood;
    if (reading.remarks.size() == PositionReading::most_remarks) return;
    reading.remarks.insert(reading.remarks.begin(), place.empty() ? sentence : place + ": " + sentence);
}

std::string line_place(const Line& line) {
    if (line.from_end == 1) return Words::tell("last line");
    return Words::tell("line {1} from the end", {std::to_string(line.from_end)});
}

// Sentence by sentence: what one second tells stands in several of them.
class Sentences {
public:
    explicit Sentences(UtcTime written) : about_(written) {}

    void take(const Line& line, PositionReading& reading) {
        const auto sentence = read_nmea_line(line.text);
        if (!sentence) {
            remark(reading, line_place(line), sentence.error());
            return;
        }
        if (const auto errors = nmea_errors(*sentence)) take_errors(*errors, reading);
        if (sentence->type != "GGA" && sentence->type != "RMC") return;
        const auto position = nmea_position(*sentence);
        if (!position) {
            remark(
                reading, line_place(line),
                Words::tell("the place or time of {1} was not understood.", {quoted_for_display(std::string(line.text))}));
            return;
        }
        take_position(*position, line.ends_at, reading);
    }

private:
    void take_errors(const NmeaErrors& errors, PositionReading& reading) {
        errors_ = errors;
        if (reading.last && reading.last->time && in_day(*reading.last->time) == errors.time_of_day)
            reading.last->radius_m = radius_of_errors();
    }
    void take_position(const NmeaPosition& position, std::uint64_t ends_at, PositionReading& reading) {
        if (position.day) about_ = *position.day + position.time_of_day;
        if (!position.at) {
            reading.lost = true;
            lost_at_ = position.time_of_day;
            return;
        }
        if (position.hdop || position.quality > 1) {
            radius_ = radius_of_quality(position.quality, position.hdop);
            radius_of_ = position.time_of_day;
        }
        ReceiverPosition now{*position.at, time_of(position.time_of_day), std::nullopt, position.quality < 6, ends_at};
        if (std::chrono::abs(radius_of_ - position.time_of_day) <= errors_hold) now.radius_m = radius_;
        if (errors_.time_of_day == position.time_of_day) now.radius_m = radius_of_errors();
        reading.last = now;
        // of two sentences of one second the one that has no place is believed
        reading.lost = lost_at_ == position.time_of_day;
        if (!reading.lost) lost_at_ = never;
    }
    [[nodiscard]] double radius_of_errors() const {
        return radius_of(std::hypot(errors_.latitude_sd_m, errors_.longitude_sd_m) / std::sqrt(2.0));
    }
    static milliseconds in_day(UtcTime time) { return time - floor<days>(time); }
    // With the day of the latest sentence that has one, else the day that lies nearest to when the file was written.
    [[nodiscard]] UtcTime time_of(milliseconds time_of_day) const {
        UtcTime best = floor<days>(about_) + time_of_day;
        for (const auto other : {best - days(1), best + days(1)})
            if (std::chrono::abs(other - about_) < std::chrono::abs(best - about_)) best = other;
        return best;
    }

    UtcTime about_;  // of the latest sentence with a day, else when the file was written
    NmeaErrors errors_{never, 0.0, 0.0};
    std::optional<double> radius_;
    milliseconds radius_of_ = never;
    milliseconds lost_at_ = never;
};

PositionReading read_sentences(const FileEnd& end) {
    PositionReading reading;
    Sentences sentences(end.written);
    for (const Line& line : whole_lines(end)) sentences.take(line, reading);
    return reading;
}

// An element of GPX alone, as a waypoint of a file of its own; nothing where it is not closed yet.
struct Element {
    std::string text;
    std::uint64_t ends_at = 0;
};

std::optional<Element> element_at(const FileEnd& end, std::size_t start, std::string_view name) {
    const std::string_view bytes = end.bytes;
    const auto head = bytes.find('>', start);
    if (head == std::string_view::npos) return std::nullopt;
    const std::size_t inside = start + 1 + name.size();
    const std::uint64_t begins_at = end.size - std::min<std::uint64_t>(end.size, bytes.size());
    if (bytes[head - 1] == '/')
        return Element{"<wpt" + std::string(bytes.substr(inside, head + 1 - inside)), begins_at + head + 1};
    const std::string closing = "</" + std::string(name) + ">";
    const auto close = bytes.find(closing, head);
    if (close == std::string_view::npos) return std::nullopt;
    std::string text = "<wpt" + std::string(bytes.substr(inside, close - inside)) + "</wpt>";
    // other namespaces are not declared here, and nothing of a position stands in them
    if (const auto more = text.find("<extensions>"); more != std::string::npos)
        if (const auto over = text.find("</extensions>", more); over != std::string::npos)
            text.erase(more, over + std::string_view("</extensions>").size() - more);
    return Element{std::move(text), begins_at + close + closing.size()};
}

PositionReading read_elements(const FileEnd& end, const std::string& name) {
    PositionReading reading;
    std::string_view before = end.bytes;
    bool later_ones = false;
    for (std::size_t tried = 0; tried < elements_tried && !reading.last; ++tried) {
        std::size_t start = std::string_view::npos;
        std::string_view kind;
        for (const std::string_view one : {"trkpt", "wpt", "rtept"})
            if (const auto found = before.rfind("<" + std::string(one));
                found != std::string_view::npos && (kind.empty() || found > start)) {
                start = found;
                kind = one;
            }
        if (kind.empty()) break;
        const auto element = element_at(end, start, kind);
        before = before.substr(0, start);
        if (!element) continue;
        const auto gpx = read_gpx_text(
            "<gpx version=\"1.1\" creator=\"\" xmlns=\"http://www.topografix.com/GPX/1/1\">" + element->text + "</gpx>",
            name);
        if (!gpx || gpx->waypoints.size() != 1) {
            later_ones = true;
            remark_earlier(
                reading, "",
                gpx ? Words::tell("a <{1}> near the end: found other elements in it, expected one position.",
                                  {std::string(kind)})
                    : Words::tell("a <{1}> near the end: found {2}, expected {3}.",
                                  {std::string(kind), Words::shown(gpx.error().found), Words::shown(gpx.error().expected)}));
            continue;
        }
        const GpxWaypoint& point = gpx->waypoints.front();
        reading.last = ReceiverPosition{point.at, point.time, radius_from_hdop(point.hdop), true, element->ends_at};
        reading.lost = point.fix == "none" || (later_ones && !point.time);
    }
    return reading;
}

std::optional<double> radius_of_mark(const Mound& mound) {
    if (!mound.receiver) return std::nullopt;
    if (mound.receiver->accuracy_m && *mound.receiver->accuracy_m > 0.0)
        return radius_of(*mound.receiver->accuracy_m / radii_68);
    return radius_from_hdop(mound.receiver->hdop);
}

PositionReading read_rows(const FileEnd& end, const std::string& name) {
    PositionReading reading;
    std::vector<Line> lines = whole_lines(end);
    if (lines.empty()) return reading;
    if (lines.size() > rows_tried) lines.erase(lines.begin(), lines.end() - static_cast<std::ptrdiff_t>(rows_tried));
    std::string sample = end.first_line + "\n";
    for (const Line& line : lines)
        if (line.text != trimmed(end.first_line)) sample += std::string(line.text) + "\n";
    const auto guess = guess_table_text(sample, name);
    if (!guess) {
        remark(reading, "", sentence(guess.error()));
        return reading;
    }
    const std::string heading = guess->header_row ? end.first_line + "\n" : std::string();
    for (auto line = lines.rbegin(); line != lines.rend() && !reading.last; ++line) {
        if (guess->header_row && line->text == trimmed(end.first_line)) continue;
        const auto table = read_table_text(heading + std::string(line->text) + "\n", name, *guess);
        const GeographicMark* mark = nullptr;
        if (table)
            for (const GeographicWalk& walk : table->walks)
                if (!walk.marks.empty()) mark = &walk.marks.back();
        if (mark == nullptr) {
            remark_earlier(
                reading, line_place(*line),
                table ? Words::tell("found {1}, expected a position.", {quoted_for_display(std::string(line->text))})
                      : Words::tell("found {1}, expected {2}.",
                                    {Words::shown(table.error().found), Words::shown(table.error().expected)}));
            continue;
        }
        reading.last = ReceiverPosition{mark->at, mark->mound.time, radius_of_mark(mark->mound), true, line->ends_at};
        reading.lost = reading.not_understood > 0 && !reading.last->time;
    }
    return reading;
}

}  // namespace

tl::expected<FileEnd, Refusal> end_of_file(const std::filesystem::path& file) {
    const std::string expected = Words::later("a file that a receiver's program writes: NMEA sentences, GPX, or a table");
    if (auto plain = plain_file(file, expected, std::nullopt); !plain) return tl::unexpected(plain.error());
    std::error_code error;
    const auto written = std::filesystem::last_write_time(file, error);
    std::ifstream stream(file, std::ios::binary | std::ios::ate);
    if (error || !stream)
        return tl::unexpected(Refusal{Refusal::Code::unreadable, file.string(), "",
                                      Words::later("a file that may not be opened"), Words::later("a readable file")});
    FileEnd end;
    end.size = static_cast<std::uint64_t>(stream.tellg());
    end.written = floor<milliseconds>(file_clock::to_sys(written));
    const auto bytes = [&stream](std::uint64_t from, std::uint64_t count) {
        std::string read(count, '\0');
        stream.clear();
        stream.seekg(static_cast<std::streamoff>(from));
        stream.read(read.data(), static_cast<std::streamsize>(count));
        read.resize(static_cast<std::size_t>(std::max<std::streamsize>(stream.gcount(), 0)));
        return read;
    };
    const std::uint64_t last = std::min(end.size, read_bytes);
    end.bytes = bytes(end.size - last, last);
    end.size = end.size - last + end.bytes.size();  // it may have been cut off meanwhile
    end.first_line = bytes(0, std::min(end.size, first_line_bytes));
    end.first_line = std::string(trimmed(end.first_line.substr(0, end.first_line.find('\n'))));
    return end;
}

PositionReading read_positions(const FileEnd& end, const std::string& name) {
    std::string_view start = trimmed(end.first_line);
    if (start.substr(0, 3) == "\xEF\xBB\xBF") start.remove_prefix(3);
    if (end.bytes.find('\0') != std::string::npos) {
        PositionReading reading;
        remark(reading, "",
               Words::tell("{1} is no text: expected NMEA sentences, GPX, or a table.", {quoted_for_display(name)}));
        return reading;
    }
    if (start.substr(0, 1) == "<") return read_elements(end, name);
    if (start.substr(0, 1) == "$" || end.bytes.find("\n$") != std::string::npos) return read_sentences(end);
    return read_rows(end, name);
}

}  // namespace plugside
