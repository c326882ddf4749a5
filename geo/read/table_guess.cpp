#include <algorithm>
#include <array>
#include <cmath>

#include "core/words/words.h"
#include "geo/read/degrees_text.h"
#include "geo/read/delimited_text.h"
#include "geo/read/notes_grammar.h"
#include "geo/read/numbers.h"
#include "geo/read/table.h"

namespace plugside {

namespace {

constexpr std::size_t rows_looked_at = 300;

// How well a separator parts the rows: the number of rows that have as many cells as most rows have, if that is two or more.
std::size_t fit_of(const std::vector<TextRow>& rows, std::size_t& cells) {
    std::vector<std::size_t> counts;
    for (const TextRow& row : rows) counts.push_back(row.cells.size());
    std::sort(counts.begin(), counts.end());
    cells = counts.empty() ? 0 : counts[counts.size() / 2];
    if (cells < 2) return 0;
    return static_cast<std::size_t>(std::count(counts.begin(), counts.end(), cells));
}

// Degrees, or a number of metres: whatever may be a coordinate, with either decimal sign.
bool could_be_place(const std::string& cell, char decimal) {
    if (cell.empty()) return false;
    if (parse_degrees(cell, decimal)) return true;
    std::string pointed = cell;
    std::replace(pointed.begin(), pointed.end(), decimal, '.');
    return parse_number(pointed).has_value();
}

struct Parted {
    char separator = ',';
    std::vector<TextRow> rows;
    std::size_t cells = 0;
};

// Commas that are decimal signs part every row alike too: what the other separators part as well goes first. Nothing parts
// the text: nothing, or what was wrong with it under the separator that its first line has most of.
tl::expected<std::optional<Parted>, Refusal> best_parted(std::string_view text, const std::string& name) {
    std::optional<Parted> best;
    std::size_t best_fit = 0;
    std::optional<Refusal> refusal;
    std::ptrdiff_t most = 0;
    const std::string_view first_line = text.substr(0, text.find_first_of("\r\n"));
    for (const char separator : {'\t', ';', '|', ',', ' '}) {
        auto rows = split_delimited(text, separator, name, rows_looked_at);
        if (!rows) {
            const auto count = std::count(first_line.begin(), first_line.end(), separator);
            if (separator != ' ' && count > most) refusal = rows.error();
            most = std::max(most, separator != ' ' ? count : 0);
            continue;
        }
        std::size_t cells = 0;
        const std::size_t fit = fit_of(*rows, cells);
        if (fit <= best_fit + best_fit / 4) continue;
        best_fit = fit;
        best = Parted{separator, std::move(*rows), cells};
    }
    if (refusal) return tl::unexpected(*refusal);
    return best;
}

char decimal_of(const Parted& parted) {
    if (parted.separator == ',') return '.';
    std::size_t commas = 0;
    std::size_t points = 0;
    for (const TextRow& row : parted.rows)
        for (const std::string& cell : row.cells) {
            if (cell.find(',') != std::string::npos && could_be_place(cell, ',')) ++commas;
            if (cell.find('.') != std::string::npos && could_be_place(cell, '.')) ++points;
        }
    return commas > points ? ',' : '.';
}

// What the cells below the heading say of a column.
class ColumnLook {
public:
    ColumnLook(const Parted& parted, std::size_t column, bool header_row, char decimal) {
        for (std::size_t i = header_row ? 1 : 0; i < parted.rows.size(); ++i) {
            const auto& cells = parted.rows[i].cells;
            if (column < cells.size() && !cells[column].empty()) look(cells[column], decimal);
        }
    }
    bool filled() const { return cells_ > 0; }
    bool all_places() const { return filled() && places_ == cells_; }
    bool all_numbers() const { return filled() && numbers_ == cells_; }
    bool all_texts() const { return filled() && places_ == 0; }
    double largest() const { return largest_; }
    bool fractions() const { return fractions_ * 2 > cells_; }
    std::optional<Axis> axis() const { return axis_; }
    bool packed() const { return all_numbers() && packed_ == cells_ && largest_ > 360.0; }
    bool all_times(const TimeWriting& writing) const {
        return filled() && std::all_of(texts_.begin(), texts_.end(),
                                       [&](const std::string& text) { return parse_time(text, writing).has_value(); });
    }
    const std::vector<std::string>& texts() const { return texts_; }

private:
    void look(const std::string& cell, char decimal) {
        ++cells_;
        texts_.push_back(cell);
        std::string pointed = cell;
        std::replace(pointed.begin(), pointed.end(), decimal, '.');
        if (const auto number = parse_number(pointed)) {
            ++numbers_;
            ++places_;
            largest_ = std::max(largest_, std::abs(*number));
            if (unpacked_minutes(*number)) ++packed_;
            if (pointed.find('.') != std::string::npos) ++fractions_;
        } else if (const auto degrees = parse_degrees(cell, decimal)) {
            ++places_;
            ++fractions_;
            largest_ = std::max(largest_, std::abs(degrees->degrees));
            if (degrees->axis) axis_ = degrees->axis;
        }
    }

    std::size_t cells_ = 0, places_ = 0, numbers_ = 0, packed_ = 0, fractions_ = 0;
    double largest_ = 0.0;
    std::optional<Axis> axis_;
    std::vector<std::string> texts_;
};

bool has(const std::vector<ColumnRole>& roles, ColumnRole role) {
    return std::find(roles.begin(), roles.end(), role) != roles.end();
}

class Guesser {
public:
    Guesser(Parted parted, TextEncoding encoding) : parted_(std::move(parted)) {
        guess_.separator = parted_.separator;
        guess_.encoding = encoding;
        guess_.decimal = decimal_of(parted_);
    }

    TableGuess guess() {
        std::size_t columns = 0;
        for (const TextRow& row : parted_.rows) columns = std::max(columns, row.cells.size());
        guess_.roles.assign(std::min(columns, parted_.cells + 20), ColumnRole::none);
        read_heading();
        for (std::size_t column = 0; column < guess_.roles.size(); ++column)
            looks_.emplace_back(parted_, column, guess_.header_row, guess_.decimal);
        settle_x_and_y();
        find_places();
        find_packed();
        find_times();
        if (!guess_.header_row) find_texts();
        return std::move(guess_);
    }

private:
    void read_heading() {
        const auto& first = parted_.rows.front().cells;
        std::size_t named = 0;
        std::size_t places = 0;
        for (const std::string& cell : first) {
            named += role_named(cell) != ColumnRole::none ? 1U : 0U;
            places += could_be_place(cell, guess_.decimal) ? 1U : 0U;
        }
        // "S 38 15" in a first row is a place and no heading; "E" and "N" alone are headings.
        guess_.header_row = named >= 2 || (named > 0 && places == 0) || places == 0;
        if (!guess_.header_row)
            return guess_.assumed.emplace_back(Words::later("the first row is taken as a mark, not as headings")), void();
        for (std::size_t i = 0; i < guess_.roles.size() && i < first.size(); ++i) {
            const ColumnRole role = role_named(first[i]);
            // a second column of the same meaning is left for the person, but for notes, which may be several
            if (role == ColumnRole::note || !has(guess_.roles, role)) guess_.roles[i] = role;
        }
    }

    // x and y are read as longitude and latitude by their headings; metres among them show that they are not.
    void settle_x_and_y() {
        for (std::size_t i = 0; i < guess_.roles.size(); ++i) {
            ColumnRole& role = guess_.roles[i];
            const bool metres = looks_[i].all_numbers() && looks_[i].largest() > 360.0 && !looks_[i].packed();
            if (role == ColumnRole::longitude && metres) role = ColumnRole::easting;
            if (role == ColumnRole::latitude && metres) role = ColumnRole::northing;
            const bool degrees = looks_[i].all_places() && looks_[i].largest() <= 180.0 && looks_[i].fractions();
            if (role == ColumnRole::easting && degrees) role = ColumnRole::longitude;
            if (role == ColumnRole::northing && degrees) role = ColumnRole::latitude;
        }
    }

    void find_places() {
        const bool geographic = has(guess_.roles, ColumnRole::longitude) && has(guess_.roles, ColumnRole::latitude);
        const bool plane = has(guess_.roles, ColumnRole::easting) && has(guess_.roles, ColumnRole::northing);
        if (geographic || plane) return;
        std::vector<std::size_t> open;
        for (std::size_t i = 0; i < looks_.size(); ++i) {
            if (guess_.roles[i] != ColumnRole::none || !looks_[i].all_places() || !looks_[i].fractions()) continue;
            if (looks_[i].axis() == Axis::longitude && !has(guess_.roles, ColumnRole::longitude))
                guess_.roles[i] = ColumnRole::longitude;
            else if (looks_[i].axis() == Axis::latitude && !has(guess_.roles, ColumnRole::latitude))
                guess_.roles[i] = ColumnRole::latitude;
            else
                open.push_back(i);
        }
        if (open.size() < 2 || has(guess_.roles, ColumnRole::longitude) || has(guess_.roles, ColumnRole::latitude)) return;
        const auto [first, second] = std::pair(open[0], open[1]);
        if (looks_[first].largest() > 360.0 && looks_[second].largest() > 360.0) {
            guess_.roles[first] = ColumnRole::easting;
            guess_.roles[second] = ColumnRole::northing;
            guess_.assumed.push_back(
                Words::tell("columns {1} and {2} are taken as easting and northing, by their size and order",
                            {std::to_string(first + 1), std::to_string(second + 1)}));
            return;
        }
        const bool longitude_first = looks_[first].largest() > 90.0 && looks_[second].largest() <= 90.0;
        guess_.roles[first] = longitude_first ? ColumnRole::longitude : ColumnRole::latitude;
        guess_.roles[second] = longitude_first ? ColumnRole::latitude : ColumnRole::longitude;
        const std::string one = std::to_string(first + 1), other = std::to_string(second + 1);
        guess_.assumed.push_back(
            longitude_first ? Words::tell("columns {1} and {2} are taken as longitude and latitude, by their size and order",
                                          {one, other})
                            : Words::tell("columns {1} and {2} are taken as latitude and longitude, by their size and order",
                                          {one, other}));
    }

    void find_packed() {
        bool packed = false;
        for (std::size_t i = 0; i < looks_.size(); ++i)
            if (guess_.roles[i] == ColumnRole::longitude || guess_.roles[i] == ColumnRole::latitude)
                packed = packed || looks_[i].packed();
        guess_.packed_minutes = packed;
        if (packed)
            guess_.assumed.emplace_back(Words::later(
                "the coordinates are taken as degrees and minutes in one number (3815.5 is 38 degrees 15.5 minutes)"));
    }

    void find_times() {
        for (std::size_t i = 0; i < looks_.size(); ++i) {
            const ColumnRole role = guess_.roles[i];
            if (role == ColumnRole::note || role == ColumnRole::name || !looks_[i].filled()) continue;
            if (role != ColumnRole::time && role != ColumnRole::date && role != ColumnRole::none) continue;
            const bool clock = role == ColumnRole::date;
            for (const DateOrder order : {DateOrder::year_first, DateOrder::day_first, DateOrder::month_first}) {
                if (!dated(looks_[i], order, clock)) continue;
                if (role == ColumnRole::none) guess_.roles[i] = ColumnRole::time;
                guess_.times.order = order;
                // both orders may fit: then the day is taken to come first only where nothing is said otherwise
                if (order == DateOrder::day_first && dated(looks_[i], DateOrder::month_first, clock))
                    guess_.assumed.emplace_back(Words::later("dates such as 1/3/2026 are taken with the day first"));
                return;
            }
        }
    }

    static bool dated(const ColumnLook& look, DateOrder order, bool without_clock) {
        const TimeWriting writing{order, 0};
        if (!without_clock) return look.all_times(writing);
        return std::all_of(look.texts().begin(), look.texts().end(),
                           [&](const std::string& text) { return parse_time(text + " 00:00", writing).has_value(); });
    }

    void find_texts() {
        for (std::size_t i = 0; i < looks_.size(); ++i) {
            if (guess_.roles[i] != ColumnRole::none || !looks_[i].filled()) continue;
            if (!has(guess_.roles, ColumnRole::name) && i == 0)
                guess_.roles[i] = ColumnRole::name;
            else if (looks_[i].all_texts() && says_a_sign(looks_[i]))
                guess_.roles[i] = ColumnRole::note;
            else if (!has(guess_.roles, ColumnRole::name) && looks_[i].all_texts())
                guess_.roles[i] = ColumnRole::name;
            else if (looks_[i].all_texts())
                guess_.roles[i] = ColumnRole::note;
        }
    }

    static bool says_a_sign(const ColumnLook& look) {
        return std::any_of(look.texts().begin(), look.texts().end(), [](const std::string& text) {
            const NoteReading reading = read_note(text);
            return reading.fan_degrees || reading.freshness || reading.kind;
        });
    }

    Parted parted_;
    TableGuess guess_;
    std::vector<ColumnLook> looks_;
};

}  // namespace

tl::expected<TableGuess, Refusal> guess_table_text(std::string_view bytes, const std::string& name) {
    const TextEncoding encoding = guess_encoding(bytes);
    const std::string text = to_utf_8(bytes, encoding);
    auto parted = best_parted(text, name);
    if (!parted) return tl::unexpected(parted.error());
    if (!*parted) {
        const auto first = trimmed(std::string_view(text).substr(0, 200));
        return tl::unexpected(
            Refusal{Refusal::Code::wrong_format, name, "",
                    Words::tell("a text that no separator parts into columns ({1})",
                                {quoted_for_display(std::string(first.substr(0, first.find_first_of("\r\n"))))}),
                    Words::later("a table of marks, or a GPX, GeoPackage or GeoJSON file")});
    }
    return Guesser(std::move(**parted), encoding).guess();
}

}  // namespace plugside
