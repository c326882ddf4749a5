#include "geo/read/table.h"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <map>
#include <optional>

#include "core/words/words.h"
#include "geo/read/coordinate_place.h"
#include "geo/read/degrees_text.h"
#include "geo/read/delimited_text.h"
#include "geo/read/gpx_marks.h"
#include "geo/read/input_file.h"
#include "geo/read/numbers.h"
#include "geo/read/reference_systems.h"

namespace plugside {

namespace {

constexpr std::uintmax_t largest_table = 128ULL * 1024 * 1024;

tl::expected<std::string, Refusal> bytes_of(const std::filesystem::path& file) {
    const auto kind = kind_of_file(file);
    if (!kind) return tl::unexpected(kind.error());
    const std::string name = file.string();
    const auto refuse = [&](Refusal::Code code, const char* found, const char* expected) {
        return tl::unexpected(Refusal{code, name, "", found, expected});
    };
    if (*kind != FileKind::table)
        return refuse(Refusal::Code::wrong_format, Words::later("a file of another kind"), Words::later("a table of marks"));
    std::error_code error;
    const auto size = std::filesystem::file_size(file, error);
    if (error || size > largest_table)
        return refuse(Refusal::Code::too_large, Words::later("a table over 128 MiB"),
                      Words::later("the marks of one field"));
    std::string bytes(size, '\0');
    std::ifstream stream(file, std::ios::binary);
    stream.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    if (stream.bad())
        return refuse(Refusal::Code::unreadable, Words::later("an error while reading"), Words::later("a readable file"));
    bytes.resize(static_cast<std::size_t>(stream.gcount()));
    return bytes;
}

// Where each role stands.
class Columns {
public:
    explicit Columns(const std::vector<ColumnRole>& roles) {
        for (std::size_t i = 0; i < roles.size(); ++i) places_[roles[i]].push_back(i);
    }
    bool has(ColumnRole role) const { return places_.count(role) > 0; }
    // The cells of all columns of that role; more than one are joined ("note" may be several).
    std::string text(const TextRow& row, ColumnRole role) const {
        std::string text;
        const auto found = places_.find(role);
        if (found == places_.end()) return text;
        for (const std::size_t column : found->second) {
            if (column >= row.cells.size() || row.cells[column].empty()) continue;
            text.append(text.empty() ? "" : "; ").append(row.cells[column]);
        }
        return text;
    }

private:
    std::map<ColumnRole, std::vector<std::size_t>> places_;
};

class TableReader {
public:
    TableReader(const std::string& name, const TableGuess& guess)
        : name_(name), guess_(guess), columns_(guess.roles), findings_(std::filesystem::path(name).filename().string()) {}

    std::optional<Refusal> prepare() {
        const bool geographic = columns_.has(ColumnRole::longitude) && columns_.has(ColumnRole::latitude);
        plane_ = !geographic && columns_.has(ColumnRole::easting) && columns_.has(ColumnRole::northing);
        if (!geographic && !plane_)
            return Refusal{Refusal::Code::malformed, name_, "",
                           Words::later("a table without columns of longitude and latitude"),
                           Words::later("two columns that say where each mark is")};
        if (!plane_) return std::nullopt;
        const char* expected = Words::later("the reference system of easting and northing, such as EPSG:32610");
        if (guess_.reference_system.empty())
            return Refusal{Refusal::Code::needs_reference_system, name_, "",
                           Words::later("eastings and northings without a reference system"), expected};
        system_ = ToGeographic::from(guess_.reference_system);
        if (!system_)
            return Refusal{Refusal::Code::needs_reference_system, name_, "",
                           Words::tell("the reference system {1}", {quoted_for_display(guess_.reference_system)}), expected};
        return std::nullopt;
    }

    tl::expected<GeographicFile, Refusal> read(const std::vector<TextRow>& rows, const Progress& progress) {
        GeographicFile file;
        file.file = name_;
        for (const std::string& sentence : guess_.assumed) findings_.add("", sentence);
        for (std::size_t i = guess_.header_row ? 1 : 0; i < rows.size(); ++i) {
            if (i % 4096 == 0) {
                if (progress.stopped())
                    return tl::unexpected(Refusal{Refusal::Code::stopped, name_, "", Words::later("a request to stop"), ""});
                progress.say(static_cast<double>(i) / static_cast<double>(rows.size()), Words::later("reading the table"));
            }
            if (auto refusal = take(rows[i])) return tl::unexpected(*refusal);
        }
        for (auto& [source, marks] : walks_) {
            GpxFile as_file;
            as_file.waypoints = std::move(marks);
            file.walks.push_back({source, {}, marks_of(as_file, name_, findings_)});
        }
        if (walks_.empty()) findings_.add("", Words::later("the table has no row with a place, so no mounds"));
        file.findings = findings_.listed();
        return file;
    }

private:
    std::optional<Refusal> take(const TextRow& row) {
        const std::string mark_name = columns_.text(row, ColumnRole::name);
        std::string where = Words::tell("line {1}", {std::to_string(row.line)});
        const std::string called = where;
        if (!mark_name.empty()) {
            const std::string quoted = quoted_for_display(mark_name);
            where += ", " + quoted.substr(1, quoted.size() - 2);
        }
        const std::string first = columns_.text(row, plane_ ? ColumnRole::easting : ColumnRole::longitude);
        const std::string second = columns_.text(row, plane_ ? ColumnRole::northing : ColumnRole::latitude);
        if (first.empty() && second.empty()) {
            findings_.add(where, Words::later("the row says no place; it is not used"));
            return std::nullopt;
        }
        if (row.cells.size() > guess_.roles.size())
            findings_.add(where,
                          Words::later("the row has more cells than the table has columns; those beyond are not used"));
        auto place = plane_ ? plane_place(first, second, where) : degrees_place(first, second, where);
        if (!place) return place.error();
        MarkTexts texts{mark_name,
                        columns_.text(row, ColumnRole::fan_bearing),
                        columns_.text(row, ColumnRole::freshness),
                        columns_.text(row, ColumnRole::kind),
                        columns_.text(row, ColumnRole::note),
                        columns_.text(row, ColumnRole::hdop),
                        columns_.text(row, ColumnRole::satellites),
                        columns_.text(row, ColumnRole::accuracy),
                        columns_.text(row, ColumnRole::picture)};
        GpxWaypoint waypoint = waypoint_of(texts, guess_.decimal, where, findings_);
        waypoint.called = called;
        waypoint.at = place->at;
        waypoint.exchanged = place->exchanged;
        waypoint.time = time_of(row, where);
        walk_of(row).push_back(std::move(waypoint));
        return std::nullopt;
    }

    std::vector<GpxWaypoint>& walk_of(const TextRow& row) {
        const std::string walker = columns_.text(row, ColumnRole::walker);
        std::string source = std::filesystem::path(name_).filename().string();
        if (!walker.empty()) source += ", " + walker;
        const auto [known, is_new] = walk_by_source_.try_emplace(source, walks_.size());
        if (is_new) walks_.push_back({source, {}});
        return walks_[known->second].second;
    }

    std::optional<UtcTime> time_of(const TextRow& row, const std::string& where) {
        const std::string day = columns_.text(row, ColumnRole::date);
        const std::string clock = columns_.text(row, ColumnRole::time);
        if (day.empty() && clock.empty()) return std::nullopt;
        auto time = parse_time(clock, guess_.times);
        if (!time) time = parse_time(day + " " + clock, guess_.times);
        if (!time && clock.empty()) time = parse_time(day, guess_.times);
        if (!time)
            findings_.add(where, Words::tell("the time {1} was not understood",
                                             {quoted_for_display(day + (day.empty() || clock.empty() ? "" : " ") + clock)}));
        return time;
    }

    std::optional<double> number(const std::string& text) const {
        std::string pointed = text;
        std::replace(pointed.begin(), pointed.end(), guess_.decimal, '.');
        return parse_number(pointed);
    }

    tl::expected<PlaceOnEarth, Refusal> plane_place(const std::string& easting, const std::string& northing,
                                                    const std::string& where) const {
        const auto refuse = [&](Refusal::Code code, const std::string& found, const std::string& expected) {
            return tl::unexpected(Refusal{code, name_, where, found, expected});
        };
        const auto east = number(easting);
        if (!east)
            return refuse(Refusal::Code::malformed, Words::tell("easting {1}", {quoted_for_display(easting)}),
                          Words::later("a number of metres"));
        const auto north = number(northing);
        if (!north)
            return refuse(Refusal::Code::malformed, Words::tell("northing {1}", {quoted_for_display(northing)}),
                          Words::later("a number of metres"));
        const auto at = system_->place(*east, *north);
        if (!at)
            return refuse(
                Refusal::Code::out_of_range,
                Words::tell("easting {1}, northing {2}", {quoted_for_display(easting), quoted_for_display(northing)}),
                Words::tell("a place that {1} can tell", {guess_.reference_system}));
        return PlaceOnEarth{*at, false};
    }

    std::optional<DegreesText> angle(const std::string& text) const {
        if (guess_.packed_minutes) {
            const auto packed = number(text);
            if (packed)
                if (const auto degrees = unpacked_minutes(*packed)) return DegreesText{*degrees, std::nullopt};
        }
        return parse_degrees(text, guess_.decimal);
    }

    tl::expected<PlaceOnEarth, Refusal> degrees_place(const std::string& longitude, const std::string& latitude,
                                                      const std::string& where) const {
        const auto refuse = [&](Refusal::Code code, const char* what, const std::string& text, const char* range) {
            return tl::unexpected(Refusal{code, name_, where, Words::shown(what) + " " + quoted_for_display(text),
                                          Words::tell("degrees from {1}", {range})});
        };
        const auto lon = angle(longitude);
        if (!lon || lon->axis == Axis::latitude)
            return refuse(Refusal::Code::malformed, Words::later("longitude"), longitude, Words::later("-180 to 180"));
        const auto lat = angle(latitude);
        if (!lat || lat->axis == Axis::longitude)
            return refuse(Refusal::Code::malformed, Words::later("latitude"), latitude, Words::later("-90 to 90"));
        if (const auto place = place_on_earth(lon->degrees, lat->degrees)) return *place;
        if (std::abs(lon->degrees) > 180.0)
            return refuse(Refusal::Code::out_of_range, Words::later("longitude"), longitude, Words::later("-180 to 180"));
        return refuse(Refusal::Code::out_of_range, Words::later("latitude"), latitude, Words::later("-90 to 90"));
    }

    const std::string& name_;
    const TableGuess& guess_;
    Columns columns_;
    FindingList findings_;
    bool plane_ = false;
    std::optional<ToGeographic> system_;
    std::vector<std::pair<std::string, std::vector<GpxWaypoint>>> walks_;
    std::map<std::string, std::size_t> walk_by_source_;
};

}  // namespace

tl::expected<TablePreview, Refusal> preview_table_text(std::string_view bytes, const std::string& name,
                                                       const TableGuess& guess, std::size_t rows) {
    auto split = split_delimited(to_utf_8(bytes, guess.encoding), guess.separator, name, rows + 1);
    if (!split) return tl::unexpected(split.error());
    TablePreview preview;
    for (std::size_t i = 0; i < split->size(); ++i) {
        preview.columns = std::max(preview.columns, (*split)[i].cells.size());
        if (i == 0 && guess.header_row)
            preview.headings = std::move((*split)[i].cells);
        else if (preview.rows.size() < rows)
            preview.rows.push_back(std::move((*split)[i].cells));
    }
    return preview;
}

tl::expected<GeographicFile, Refusal> read_table_text(std::string_view bytes, const std::string& name,
                                                      const TableGuess& guess, const Progress& progress) {
    TableReader reader(name, guess);
    if (auto refusal = reader.prepare()) return tl::unexpected(*refusal);
    const auto rows = split_delimited(to_utf_8(bytes, guess.encoding), guess.separator, name);
    if (!rows) return tl::unexpected(rows.error());
    return reader.read(*rows, progress);
}

tl::expected<TableGuess, Refusal> guess_table(const std::filesystem::path& file) {
    const auto bytes = bytes_of(file);
    if (!bytes) return tl::unexpected(bytes.error());
    return guess_table_text(*bytes, file.string());
}

tl::expected<TablePreview, Refusal> preview_table(const std::filesystem::path& file, const TableGuess& guess,
                                                  std::size_t rows) {
    const auto bytes = bytes_of(file);
    if (!bytes) return tl::unexpected(bytes.error());
    return preview_table_text(*bytes, file.string(), guess, rows);
}

tl::expected<GeographicFile, Refusal> read_table(const std::filesystem::path& file, const TableGuess& guess,
                                                 const Progress& progress) {
    const auto bytes = bytes_of(file);
    if (!bytes) return tl::unexpected(bytes.error());
    return read_table_text(*bytes, file.string(), guess, progress);
}

}  // namespace plugside
