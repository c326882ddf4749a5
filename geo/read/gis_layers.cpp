#include "geo/read/gis_layers.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "core/words/words.h"
#include "geo/read/gpx_marks.h"
#include "geo/read/layer_rows.h"
#include "geo/read/numbers.h"
#include "geo/read/vector_layers.h"

namespace plugside {

namespace {

constexpr std::array<std::string_view, 10> walk_words{"track",     "walk", "route", "path",  "trk",
                                                      "recorrido", "ruta", "camin", "traza", "huella"};
constexpr std::array<std::string_view, 20> keep_clear_words{
    "keep", "clear",  "exclu", "well",  "house", "build", "play",   "util",     "buffer", "pozo",
    "casa", "edific", "excl",  "no_go", "nogo",  "avoid", "evitar", "vivienda", "juego",  "protec"};

template <std::size_t n>
bool says(const std::string& name, const std::array<std::string_view, n>& words) {
    std::string lower = name;
    for (char& c : lower)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return std::any_of(words.begin(), words.end(),
                       [&](std::string_view word) { return lower.find(word) != std::string::npos; });
}

// Places come from shapes: a column of coordinates is none of a layer's meanings.
ColumnRole role_of_column(const std::string& heading) {
    const ColumnRole role = role_named(heading);
    const bool place = role == ColumnRole::longitude || role == ColumnRole::latitude || role == ColumnRole::easting ||
                       role == ColumnRole::northing;
    return place ? ColumnRole::none : role;
}

LayerGuess guess_of(const ReadLayer& layer) {
    LayerGuess guess;
    guess.layer = layer.name;
    guess.columns = layer.columns;
    guess.has_reference_system = layer.has_reference_system;
    if (says(layer.name, walk_words)) guess.lines = LineUse::walks;
    if (says(layer.name, keep_clear_words)) guess.polygons = PolygonUse::keep_clear;
    for (const std::string& column : layer.columns) {
        const ColumnRole role = role_of_column(column);
        const bool taken = std::find(guess.roles.begin(), guess.roles.end(), role) != guess.roles.end();
        guess.roles.push_back(taken && role != ColumnRole::note ? ColumnRole::none : role);
    }
    return guess;
}

std::string text_in(const Value& value) {
    if (const auto* text = std::get_if<std::string>(&value)) return *text;
    if (const auto* whole = std::get_if<std::int64_t>(&value)) return std::to_string(*whole);
    if (const auto* time = std::get_if<UtcTime>(&value)) return format_utc_time(*time);
    const auto* number = std::get_if<double>(&value);
    if (number == nullptr || !std::isfinite(*number)) return {};
    std::string text = std::to_string(*number);  // six places: a millionth of a degree of a fan is more than anyone reads
    while (text.back() == '0') text.pop_back();
    if (text.back() == '.') text.pop_back();
    return text;
}

// Columns that every KML file has and nobody filled, and those that are empty all the way down.
bool says_nothing(const std::string& column, const ReadLayer& layer, std::size_t index) {
    constexpr std::array<std::string_view, 8> of_kml{"begin",   "end",        "altitudeMode", "tessellate",
                                                     "extrude", "visibility", "drawOrder",    "icon"};
    if (std::find(of_kml.begin(), of_kml.end(), column) != of_kml.end()) return true;
    return std::all_of(layer.rows.begin(), layer.rows.end(),
                       [&](const ReadRow& row) { return text_in(row.values[index]).empty(); });
}

class LayerInterpreter {
public:
    LayerInterpreter(const std::string& file, FindingList& findings, GeographicFile& result)
        : file_(file), file_name_(std::filesystem::path(file).filename().string()), findings_(findings), result_(result) {}

    tl::expected<void, Refusal> take(const ReadLayer& layer, const LayerGuess& guess) {
        if (!layer.has_shapes) {
            findings_.add(Words::tell("layer {1}", {layer.name}), Words::later("the layer has no shapes; it is not used"));
            return {};
        }
        guess_ = &guess;
        walk_ = {file_name_ + (layer.name.empty() ? "" : ", " + layer.name), {}, {}};
        points_ = lines_ = polygons_ = 0;
        for (const ReadRow& row : layer.rows) {
            if (row.shape.empty())
                return tl::unexpected(Refusal{Refusal::Code::wrong_format, file_, row.place,
                                              Words::later("a feature without a shape"),
                                              Words::later("a point, a line or a polygon")});
            take_points(row);
            take_lines(row);
            take_polygons(row);
        }
        tell(layer);
        if (!waypoints_.waypoints.empty()) walk_.marks = marks_of(waypoints_, file_, findings_);
        waypoints_ = {};
        if (!walk_.marks.empty() || !walk_.segments.empty()) result_.walks.push_back(std::move(walk_));
        return {};
    }

private:
    // Every cell of a role, joined where several columns have it.
    std::string text(const ReadRow& row, ColumnRole role) const {
        std::string text;
        for (std::size_t i = 0; i < row.values.size() && i < guess_->roles.size(); ++i) {
            if (guess_->roles[i] != role) continue;
            const std::string part = text_in(row.values[i]);
            if (!part.empty()) text.append(text.empty() ? "" : "; ").append(part);
        }
        return text;
    }

    std::optional<UtcTime> time_of(const ReadRow& row) {
        const std::string day = text(row, ColumnRole::date);
        const std::string clock = text(row, ColumnRole::time);
        if (day.empty() && clock.empty()) return std::nullopt;
        auto time = parse_utc_time(clock);
        if (!time) time = parse_time(clock, guess_->times);
        if (!time) time = parse_time(day + " " + clock, guess_->times);
        if (!time)
            findings_.add(row.place, Words::tell("the time {1} was not understood",
                                                 {quoted_for_display(std::string(trimmed(day + " " + clock)))}));
        return time;
    }

    void take_points(const ReadRow& row) {
        points_ += row.shape.points.size();
        if (guess_->points == PointUse::not_used) return;
        for (const GeographicPoint place : row.shape.points) {
            const MarkTexts texts{
                text(row, ColumnRole::name),       text(row, ColumnRole::fan_bearing), text(row, ColumnRole::freshness),
                text(row, ColumnRole::kind),       text(row, ColumnRole::note),        text(row, ColumnRole::hdop),
                text(row, ColumnRole::satellites), text(row, ColumnRole::accuracy),    text(row, ColumnRole::picture)};
            GpxWaypoint waypoint = waypoint_of(texts, '.', row.place, findings_);
            waypoint.called = row.place;
            waypoint.at = place;
            waypoint.exchanged = row.exchanged;
            waypoint.time = time_of(row);
            waypoints_.waypoints.push_back(std::move(waypoint));
        }
    }

    void take_lines(const ReadRow& row) {
        lines_ += row.shape.lines.size();
        for (const GeographicLine& line : row.shape.lines) {
            if (guess_->lines == LineUse::barriers) result_.ground.barriers.push_back({text(row, ColumnRole::name), line});
            if (guess_->lines != LineUse::walks) continue;
            auto& segment = walk_.segments.emplace_back();
            for (const GeographicPoint place : line) segment.push_back({place, std::nullopt});
        }
    }

    void take_polygons(const ReadRow& row) {
        polygons_ += row.shape.polygons.size();
        for (const GeographicPolygon& area : row.shape.polygons) {
            if (guess_->polygons == PolygonUse::boundary) result_.ground.boundary.push_back(area);
            if (guess_->polygons != PolygonUse::keep_clear) continue;
            const auto kind = keep_clear_kind_from_text(text(row, ColumnRole::kind));
            result_.ground.keep_clear.push_back(
                {text(row, ColumnRole::name), text(row, ColumnRole::note), kind.value_or(KeepClearKind::other), area});
        }
    }

    // What the layer was taken for, so that a person can say otherwise.
    void tell(const ReadLayer& layer) {
        const std::string place = Words::tell("layer {1}", {layer.name});
        if (points_ > 0)
            findings_.add(place, guess_->points == PointUse::mounds ? Words::later("its points are taken as mounds")
                                                                    : Words::later("its points are not used"));
        if (lines_ > 0)
            findings_.add(place, guess_->lines == LineUse::walks      ? Words::later("its lines are taken as walks")
                                 : guess_->lines == LineUse::barriers ? Words::later("its lines are taken as barriers")
                                                                      : Words::later("its lines are not used"));
        if (polygons_ > 0)
            findings_.add(place, guess_->polygons == PolygonUse::boundary
                                     ? Words::later("its polygons are taken as the field boundary")
                                 : guess_->polygons == PolygonUse::keep_clear
                                     ? Words::later("its polygons are taken as keep-clear areas")
                                     : Words::later("its polygons are not used"));
        if (points_ == 0 || guess_->points == PointUse::not_used) return;
        for (std::size_t i = 0; i < guess_->columns.size() && i < guess_->roles.size(); ++i)
            if (guess_->roles[i] == ColumnRole::none && !says_nothing(guess_->columns[i], layer, i))
                findings_.add(place, Words::tell("the column {1} is not used", {quoted_for_display(guess_->columns[i])}));
    }

    const std::string& file_;
    std::string file_name_;
    FindingList& findings_;
    GeographicFile& result_;
    const LayerGuess* guess_ = nullptr;
    GeographicWalk walk_;
    GpxFile waypoints_;
    std::size_t points_ = 0, lines_ = 0, polygons_ = 0;
};

}  // namespace

tl::expected<std::vector<LayerGuess>, Refusal> guess_layers(const std::filesystem::path& file) {
    const auto kind = kind_of_file(file);
    if (!kind) return tl::unexpected(kind.error());
    if (!is_layer_file(*kind))
        return tl::unexpected(Refusal{Refusal::Code::wrong_format, file.string(), "", Words::later("a file of another kind"),
                                      Words::later("a file of layers")});
    const auto layers = list_layers(file, *kind);
    if (!layers) return tl::unexpected(layers.error());
    std::vector<LayerGuess> guesses;
    if (has_our_layers(*layers)) return guesses;
    for (const ReadLayer& layer : *layers) guesses.push_back(guess_of(layer));
    return guesses;
}

tl::expected<GeographicFile, Refusal> read_gis_layers(const std::filesystem::path& file,
                                                      const std::vector<LayerGuess>& guesses, const Progress& progress) {
    const auto kind = kind_of_file(file);
    if (!kind) return tl::unexpected(kind.error());
    FindingList findings(file.filename().string());
    const auto guess_for = [&](const std::string& layer) -> const LayerGuess* {
        const auto found =
            std::find_if(guesses.begin(), guesses.end(), [&](const LayerGuess& g) { return g.layer == layer; });
        return found == guesses.end() ? nullptr : &*found;
    };
    const auto system = [&](const std::string& layer) {
        const LayerGuess* guess = guess_for(layer);
        return guess == nullptr ? std::string() : guess->reference_system;
    };
    const auto wanted = [&](const std::string& layer) {
        const LayerGuess* guess = guess_for(layer);
        return guess == nullptr || guess->points != PointUse::not_used || guess->lines != LineUse::not_used ||
               guess->polygons != PolygonUse::not_used;
    };
    auto layers = read_layer_rows(file, *kind, wanted, findings, progress, system);
    if (!layers) return tl::unexpected(layers.error());
    GeographicFile result;
    const std::string name = file.string();
    result.file = name;
    LayerInterpreter interpreter(name, findings, result);
    if (std::none_of(layers->begin(), layers->end(), [](const ReadLayer& layer) { return layer.has_shapes; }))
        return tl::unexpected(Refusal{Refusal::Code::wrong_format, name, "",
                                      Words::later("a file without a layer of shapes"),
                                      Words::later("points, lines or polygons of a field")});
    for (const ReadLayer& layer : *layers) {
        const LayerGuess* given = guess_for(layer.name);
        if (auto taken = interpreter.take(layer, given != nullptr ? *given : guess_of(layer)); !taken)
            return tl::unexpected(taken.error());
    }
    result.findings = findings.listed();
    return result;
}

}  // namespace plugside
