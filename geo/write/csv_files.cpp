#include "geo/write/csv_files.h"

#include <array>
#include <cassert>
#include <charconv>
#include <fstream>
#include <string_view>
#include <utility>

#include "core/words/words.h"
#include "geo/write/layer_features.h"
#include "geo/write/safe_files.h"

namespace plugside {

namespace {

constexpr const char* line_end = "\r\n";
constexpr std::array<std::pair<std::string_view, const char*>, 5> units_by_ending{{{"_m2", " (m2)"},
                                                                                   {"_m", " (m)"},
                                                                                   {"_deg", " (deg)"},
                                                                                   {"_lon", " longitude (deg, WGS 84)"},
                                                                                   {"_lat", " latitude (deg, WGS 84)"}}};
constexpr const char* true_degrees = " (deg_true)";  // from true north, clockwise
constexpr std::array<std::pair<std::string_view, const char*>, 6> units_by_name{{{"axis_bearing", true_degrees},
                                                                                 {"fan_bearing", true_degrees},
                                                                                 {"hit_probability", " (0 to 1)"},
                                                                                 {"belongs", " (0 to 1)"},
                                                                                 {"expected_rungs", " (holes)"},
                                                                                 {"time", " (UTC)"}}};

std::string fixed_degrees(double degrees) {
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), degrees, std::chars_format::fixed, 10).ptr;
    return {text.data(), end};
}

std::string longitude_text(double degrees) {
    std::string text = fixed_degrees(degrees);
    return text == "180.0000000000" ? "-" + text : text;  // rounding can reach the meridian
}

std::string number_text(double number) {
    std::array<char, 40> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), number).ptr;
    return {text.data(), end};
}

std::string cell_of(const Value& value) {
    if (const auto* whole = std::get_if<std::int64_t>(&value)) return std::to_string(*whole);
    if (const auto* number = std::get_if<double>(&value)) return number_text(*number);
    if (const auto* text = std::get_if<std::string>(&value)) return csv_cell(never_a_formula(*text));
    assert(std::holds_alternative<std::monostate>(value));
    return {};
}

std::string header_of(const LayerContent& layer) {
    std::string line = layer.kind == ShapeKind::point ? "\"longitude (deg, WGS 84)\",\"latitude (deg, WGS 84)\"" : "";
    for (const Column& column : layer.columns)
        line.append(line.empty() ? "" : ",").append(csv_cell(heading_of(column.name)));
    return line + line_end;
}

std::string line_of(const LayerContent& layer, const Row& row) {
    std::string line;
    if (layer.kind == ShapeKind::point) {
        const auto* place = std::get_if<GeographicPoint>(&row.shape);
        line =
            place == nullptr ? "," : longitude_text(place->longitude_degrees) + "," + fixed_degrees(place->latitude_degrees);
    }
    bool first = line.empty();
    for (const Value& value : row.values) {
        line.append(first ? "" : ",").append(cell_of(value));
        first = false;
    }
    return line + line_end;
}

// False when the disk failed or on a stop.
bool write_table(const LayerContent& layer, const std::filesystem::path& file, RowCount& count) {
    std::ofstream stream(file, std::ios::binary);
    stream << header_of(layer);
    for (const Row& row : layer.rows) {
        stream << line_of(layer, row);
        if (!stream || !count.next()) return false;
    }
    stream.close();
    return static_cast<bool>(stream);
}

}  // namespace

std::string heading_of(const std::string& column) {
    for (const auto& [name, unit] : units_by_name)
        if (column == name) return column + unit;
    for (const auto& [ending, unit] : units_by_ending)
        if (column.ends_with(ending)) return column.substr(0, column.size() - ending.size()) + unit;
    return column;
}

std::string csv_cell(const std::string& text) {
    if (text.find_first_of("\",\r\n") == std::string::npos) return text;
    std::string quoted = "\"";
    for (const char c : text) quoted.append(c == '"' ? 2 : 1, c);
    return quoted + "\"";
}

std::string never_a_formula(const std::string& text) {
    const bool taken_for_one = !text.empty() && std::string_view("=+-@\t\r'").find(text.front()) != std::string_view::npos;
    return taken_for_one ? "'" + text : text;
}

tl::expected<std::vector<std::filesystem::path>, Refusal> write_csv(const std::vector<LayerContent>& layers,
                                                                    const std::filesystem::path& file,
                                                                    const Progress& progress) {
    auto safe = SafeFiles::beside(file);
    if (!safe) return tl::unexpected(safe.error());
    RowCount count(layers, progress);
    bool written = true;
    for (const LayerContent& layer : layers) {
        const std::string name = file.stem().string() + "_" + layer.name + ".csv";
        written = written && !progress.stopped() && write_table(layer, safe->folder() / name, count);
    }
    if (progress.stopped())
        return tl::unexpected(Refusal{Refusal::Code::stopped, file.string(), "", Words::later("a request to stop"), ""});
    if (!written) return tl::unexpected(safe->cannot_write(Words::tell("a disk that took only a part of it")));
    return safe->commit();
}

}  // namespace plugside
