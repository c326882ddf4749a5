#include "geo/read/traceable_lines.h"

#include <algorithm>
#include <cmath>

#include "core/words/words.h"
#include "geo/read/layer_rows.h"
#include "geo/read/row_marks.h"
#include "geo/read/vector_layers.h"

namespace plugside {

namespace {

constexpr double furthest_m = 50'000.0;
constexpr double furthest_degrees = 20.0;  // of longitude: what the plane is sure of

std::string name_of(const ReadLayer& layer, const ReadRow& row) {
    for (std::size_t i = 0; i < layer.columns.size() && i < row.values.size(); ++i)
        if (const auto* text = std::get_if<std::string>(&row.values[i]);
            text != nullptr && !text->empty() && role_named(layer.columns[i]) == ColumnRole::name)
            return layer.name.empty() ? *text : layer.name + ", " + *text;
    return layer.name;
}

bool is_near(const LocalFrame& frame, const GeographicLine& line) {
    return !line.empty() && std::all_of(line.begin(), line.end(), [&](const GeographicPoint& place) {
        const double apart = std::remainder(place.longitude_degrees - frame.centre().longitude_degrees, 360.0);
        if (!(std::abs(apart) < furthest_degrees)) return false;
        const LocalPoint at = frame.to_local(place);
        return std::hypot(at.east_m, at.north_m) <= furthest_m;
    });
}

void take(std::vector<Traceable>& lines, const LocalFrame& frame, const ReadLayer& layer, const ReadRow& row) {
    for (const GeographicLine& line : row.shape.lines)
        if (line.size() > 1 && is_near(frame, line))
            lines.push_back({name_of(layer, row), {to_local(frame, line).vertices, false}, {}});
    for (const GeographicPolygon& area : row.shape.polygons) {
        if (area.rings.empty() || !is_near(frame, area.rings.front())) continue;
        Polygon local = to_local(frame, area);
        Traceable outline{name_of(layer, row), {std::move(local.outer.vertices), true}, {}};
        for (Ring& hole : local.holes) outline.holes.push_back(std::move(hole.vertices));
        lines.push_back(std::move(outline));
    }
}

}  // namespace

tl::expected<std::vector<Traceable>, Refusal> read_traceable(const std::filesystem::path& file, const LocalFrame& frame,
                                                             const Progress& progress) {
    const char* const expected = Words::later("a file of layers with lines or areas: GeoPackage, GeoJSON, KML, Shapefile");
    const auto kind = kind_of_file(file);
    if (!kind) return tl::unexpected(kind.error());
    if (!is_layer_file(*kind))
        return tl::unexpected(
            Refusal{Refusal::Code::wrong_format, file.string(), "", Words::later("a file of another kind"), expected});
    FindingList findings(file.filename().string());
    const auto layers = read_layer_rows(
        file, *kind, [](const std::string&) { return true; }, findings, progress);
    if (!layers) return tl::unexpected(layers.error());
    std::vector<Traceable> lines;
    bool any = false;
    for (const ReadLayer& layer : *layers)
        for (const ReadRow& row : layer.rows) {
            any = any || !row.shape.lines.empty() || !row.shape.polygons.empty();
            take(lines, frame, layer, row);
        }
    if (lines.empty())
        return tl::unexpected(Refusal{
            Refusal::Code::wrong_format, file.string(), "",
            any ? Words::later("lines that all lie further than 50 km from the field") : Words::later("no line and no area"),
            expected});
    return lines;
}

}  // namespace plugside
