#include "core/sets/water_table.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "core/sets/label_limits.h"
#include "core/words/words.h"

namespace plugside {

namespace {

enum class Column { day, rain, irrigation, other };

struct Columns {
    std::vector<Column> order{Column::day, Column::rain, Column::irrigation};
    std::array<double, 3> mm{};  // of a bare number, by column
};

struct Line {
    std::size_t number = 0;
    std::string text;
    std::vector<std::string> cells;
};

std::string trimmed(const std::string& text) {
    const std::size_t from = text.find_first_not_of(" \t\r");
    if (from == std::string::npos) return {};
    return text.substr(from, text.find_last_not_of(" \t\r") - from + 1);
}

std::string folded(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(),
                   [](char letter) { return static_cast<char>(letter >= 'A' && letter <= 'Z' ? letter + 32 : letter); });
    return text;
}

std::vector<std::string> cells_of(const std::string& line) {
    char between = ' ';
    for (const char mark : {'\t', ';', '|', ','})
        if (line.find(mark) != std::string::npos) {
            between = mark;
            break;
        }
    std::vector<std::string> cells;
    for (std::size_t from = 0; from <= line.size();) {
        const std::size_t end = std::min(line.find(between, from), line.size());
        const std::string cell = trimmed(line.substr(from, end - from));
        const bool unit_alone = between == ' ' && !cells.empty() && (cell == "mm" || cell == "in");
        if (unit_alone) {
            cells.back() += " " + cell;
        } else if (between != ' ' || !cell.empty()) {
            cells.push_back(cell);
        }
        from = end + 1;
    }
    if (between != ',')
        for (std::string& cell : cells) std::replace(cell.begin(), cell.end(), ',', '.');
    return cells;
}

bool has_word(const std::string& cell, std::initializer_list<const char*> words) {
    return std::any_of(words.begin(), words.end(), [&](const char* word) { return cell.find(word) != std::string::npos; });
}

// What a line without figures says of the columns.
Columns heading(const Line& line, Columns columns) {
    columns.order.clear();
    for (const std::string& written : line.cells) {
        const std::string cell = folded(written);
        Column column = Column::other;
        if (has_word(cell, {"date", "day", "fecha", "dia", "d\u00eda"})) column = Column::day;
        if (has_word(cell, {"rain", "precip", "lluvia"})) column = Column::rain;
        if (has_word(cell, {"irrig", "riego"})) column = Column::irrigation;
        columns.order.push_back(column);
        if (column == Column::other || column == Column::day) continue;
        if (has_word(cell, {"mm"})) columns.mm[static_cast<std::size_t>(column)] = 1.0;
        if (has_word(cell, {"(in", " in", "inch", "pulg"})) columns.mm[static_cast<std::size_t>(column)] = 25.4;
    }
    return columns;
}

struct Millimetres {
    bool read = false;
    std::optional<double> value;
};

Millimetres millimetres(std::string cell, double mm_of_bare) {
    if (cell.empty() || cell == "-") return {true, std::nullopt};
    double unit = mm_of_bare;
    for (const auto& [ending, mm] : {std::pair("mm", 1.0), std::pair("in", 25.4), std::pair("\"", 25.4)})
        if (cell.ends_with(ending)) {
            unit = mm;
            cell = trimmed(cell.substr(0, cell.size() - std::string(ending).size()));
            break;
        }
    double number = 0.0;
    const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), number);
    if (error != std::errc() || end != cell.data() + cell.size() || !std::isfinite(number) || number < 0.0) return {};
    return {true, number * unit};
}

// The three numbers of "4/10/2025".
std::optional<std::array<int, 3>> slashed(const std::string& cell) {
    std::array<int, 3> numbers{};
    const char* at = cell.data();
    const char* const end = cell.data() + cell.size();
    for (std::size_t i = 0; i < 3; ++i) {
        const auto [stop, error] = std::from_chars(at, end, numbers.at(i));
        if (error != std::errc()) return std::nullopt;
        at = stop;
        if (i < 2 && (at == end || *at++ != '/')) return std::nullopt;
    }
    if (at != end) return std::nullopt;
    return numbers;
}

std::optional<CalendarDay> day_of(const std::string& cell, bool month_first) {
    if (const auto iso = day_from_text(cell)) return iso;
    const auto numbers = slashed(cell);
    if (!numbers) return std::nullopt;
    const auto [first, second, year] = *numbers;
    const int month = month_first ? first : second;
    const int day = month_first ? second : first;
    if (month < 1 || day < 1 || year < 1900 || year > 9999) return std::nullopt;
    const std::chrono::year_month_day date{std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                                           std::chrono::day(static_cast<unsigned>(day))};
    if (!date.ok()) return std::nullopt;
    return CalendarDay(date);
}

// Whether slashed days begin with the month; nothing where the lines leave both readings, or neither.
std::optional<bool> month_stands_first(const std::vector<Line>& lines) {
    bool month_first = true;
    bool day_first = true;
    for (const Line& line : lines)
        for (const std::string& cell : line.cells)
            if (slashed(cell)) {
                month_first = month_first && day_of(cell, true);
                day_first = day_first && day_of(cell, false);
            }
    if (month_first == day_first) return std::nullopt;
    return month_first;
}

std::vector<Line> lines_of_cells(const std::string& pasted) {
    std::vector<Line> lines;
    std::size_t number = 0;
    for (std::size_t from = 0; from < pasted.size();) {
        const std::size_t end = std::min(pasted.find('\n', from), pasted.size());
        const std::string text = trimmed(pasted.substr(from, end - from));
        from = end + 1;
        ++number;
        if (!text.empty()) lines.push_back({number, text, cells_of(text)});
    }
    return lines;
}

class Reader {
public:
    Reader(std::vector<Line> lines, LengthUnits units) : lines_(std::move(lines)), month_first_(month_stands_first(lines_)) {
        columns_.mm.fill(units == LengthUnits::metres ? 1.0 : 25.4);
    }

    WaterTable read() {
        for (const Line& line : lines_) {
            if (line.text.find_first_of("0123456789") == std::string::npos) {
                columns_ = heading(line, columns_);
                continue;
            }
            take(line);
        }
        std::sort(table_.days.begin(), table_.days.end(),
                  [](const WaterDay& a, const WaterDay& b) { return a.day < b.day; });
        return std::move(table_);
    }

private:
    void refuse(const Line& line, const std::string& found, const char* expected) {
        table_.problems.push_back({Refusal::Code::malformed, "", Words::tell("line {1}", {std::to_string(line.number)}),
                                   quoted_for_display(found), expected});
    }

    void take(const Line& line) {
        WaterDay day;
        bool dated = false;
        for (std::size_t i = 0; i < line.cells.size() && i < columns_.order.size(); ++i) {
            const std::string& cell = line.cells[i];
            const Column column = columns_.order[i];
            if (column == Column::other) continue;
            if (column == Column::day) {
                if (slashed(cell) && !month_first_ && day_of(cell, true) != day_of(cell, false))
                    return refuse(line, cell, Words::later("a day that can be read in one way only, as 2025-04-10"));
                const auto read = day_of(cell, month_first_.value_or(true));
                if (!read) return refuse(line, cell, Words::later("a day as 2025-04-10"));
                day.day = *read;
                dated = true;
                continue;
            }
            const Millimetres water = millimetres(cell, columns_.mm[static_cast<std::size_t>(column)]);
            if (!water.read) return refuse(line, cell, Words::later("millimetres or inches of 0 or more"));
            (column == Column::rain ? day.rain_mm : day.irrigation_mm) = water.value;
        }
        if (!dated) return refuse(line, line.text, Words::later("a day, rain, and irrigation"));
        if (std::any_of(table_.days.begin(), table_.days.end(), [&](const WaterDay& other) { return other.day == day.day; }))
            return refuse(line, line.text, Words::later("each day once"));
        table_.days.push_back(day);
    }

    std::vector<Line> lines_;
    std::optional<bool> month_first_;
    Columns columns_;
    WaterTable table_;
};

}  // namespace

WaterTable water_table(const std::string& pasted, LengthUnits units) { return Reader(lines_of_cells(pasted), units).read(); }

}  // namespace plugside
