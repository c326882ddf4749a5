#include "geo/read/vector_layers.h"

#include <algorithm>
#include <array>

#include "core/words/words.h"
#include "geo/read/answer_rows.h"
#include "geo/read/plan_rows.h"
#include "geo/read/work_rows.h"

namespace plugside {

namespace {

constexpr std::array<std::string_view, 16> layers_read{"field_boundaries",
                                                       "barriers",
                                                       "keep_clear_areas",
                                                       "mounds",
                                                       "walk_tracks",
                                                       "set_decisions",
                                                       "set_points",
                                                       "survey_summary",
                                                       "finding_answers",
                                                       "findings",
                                                       "note_rules",
                                                       "crossings",
                                                       "gates",
                                                       "untreated_areas",
                                                       "known_facts",
                                                       "work_order"};
constexpr std::array<std::string_view, 7> layers_computed_anew{
    "burrow_systems", "main_runs", "probe_points", "unwalked_areas", "rounds", "system_alternatives", "walked_areas"};

template <std::size_t n>
bool is_one_of(std::string_view name, const std::array<std::string_view, n>& names) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

// One of each layer that is read; empty where the file has none.
class Interpreter {
public:
    Interpreter(const std::filesystem::path& file, std::vector<ReadLayer> layers, FindingList& findings)
        : file_(file.string()), file_name_(file.filename().string()), layers_(std::move(layers)), findings_(findings) {
        result_.file = file_;
    }

    tl::expected<GeographicFile, Refusal> interpret() {
        if (auto read = read_named(); !read) return tl::unexpected(read.error());
        return std::move(result_);
    }

private:
    [[nodiscard]] const ReadLayer& layer(std::string_view name) const {
        static const ReadLayer none;
        const auto found = std::find_if(layers_.begin(), layers_.end(), [&](const ReadLayer& l) { return l.name == name; });
        return found == layers_.end() ? none : *found;
    }

    [[nodiscard]] std::string unknown_names() const {
        std::string names;
        for (const ReadLayer& each : layers_)
            if (!is_one_of(each.name, layers_read) && !is_one_of(each.name, layers_computed_anew))
                names.append(names.empty() ? "" : ", ").append(each.name);
        return quoted_for_display(names, 200);
    }

    [[nodiscard]] Refusal wrong_shape(const ReadRow& row, const std::string& expected) const {
        std::string found = Words::later("a feature without a shape");
        if (!row.shape.points.empty()) found = Words::later("a point");
        if (!row.shape.lines.empty()) found = Words::later("a line");
        if (!row.shape.polygons.empty()) found = Words::later("a polygon");
        return {Refusal::Code::wrong_format, file_, row.place, found, expected};
    }

    tl::expected<void, Refusal> read_named() {
        if (unknown_names() != "\"\"")
            findings_.add("", Words::tell("layers that are not known here are not used: {1}", {unknown_names()}));
        if (auto ground = read_ground(); !ground) return ground;
        NamedWalks walks = walks_from(layer("walk_tracks"), file_name_, findings_);
        if (auto marks = add_marks(layer("mounds"), file_, walks, findings_); !marks) return marks;
        result_.walks = std::move(walks.walks);
        result_.decisions = decisions_from(layer("set_decisions"), layer("set_points"), findings_);
        result_.answers = answers_from(layer("finding_answers"), findings_);
        result_.known = facts_from(layer("known_facts"), findings_);
        result_.note_rules = rules_from(layer("note_rules"), findings_);
        result_.work = work_from(layer("work_order"), findings_);
        result_.of_reading = findings_of_reading(layer("findings"), findings_);
        const ReadLayer& summary = layer("survey_summary");
        if (summary.rows.empty()) return {};
        result_.title = text_of(summary.value(summary.rows.front(), "field_name"));
        if (const auto* revision = std::get_if<std::int64_t>(&summary.value(summary.rows.front(), "survey_revision")))
            result_.revision = static_cast<std::uint64_t>(*revision);
        return {};
    }

    tl::expected<void, Refusal> read_ground() {
        for (const ReadRow& row : layer("field_boundaries").rows) {
            if (row.shape.polygons.empty() || !row.shape.lines.empty() || !row.shape.points.empty())
                return tl::unexpected(wrong_shape(row, Words::later("a polygon")));
            for (const GeographicPolygon& part : row.shape.polygons) result_.ground.boundary.push_back(part);
        }
        const ReadLayer& barriers = layer("barriers");
        for (const ReadRow& row : barriers.rows) {
            if (row.shape.lines.empty() || !row.shape.polygons.empty() || !row.shape.points.empty())
                return tl::unexpected(wrong_shape(row, Words::later("a line")));
            for (const GeographicLine& line : row.shape.lines)
                result_.ground.barriers.push_back({text_of(barriers.value(row, "name")), line});
        }
        for (const ReadRow& row : layer("untreated_areas").rows) {
            if (row.shape.polygons.empty() || !row.shape.lines.empty() || !row.shape.points.empty())
                return tl::unexpected(wrong_shape(row, Words::later("a polygon")));
            for (const GeographicPolygon& part : row.shape.polygons) result_.ground.untreated.push_back(part);
        }
        if (auto gaps = read_gaps("crossings", result_.ground.crossings); !gaps) return gaps;
        if (auto gaps = read_gaps("gates", result_.ground.gates); !gaps) return gaps;
        return read_keep_clear();
    }

    tl::expected<void, Refusal> read_gaps(const char* name, std::vector<GeographicGap>& gaps) {
        const ReadLayer& from = layer(name);
        for (const ReadRow& row : from.rows) {
            if (row.shape.points.empty() || !row.shape.lines.empty() || !row.shape.polygons.empty())
                return tl::unexpected(wrong_shape(row, Words::later("a point")));
            const auto width = number_of(from.value(row, "width_m"));
            const bool usable = width && *width > 0.0 && *width < 10000.0;
            if (!usable)
                findings_.add(row.place, Words::later("the width of this gap is no length above 0; a metre is taken"));
            for (const GeographicPoint at : row.shape.points)
                gaps.push_back({text_of(from.value(row, "name")), at, usable ? *width : 1.0});
        }
        return {};
    }

    tl::expected<void, Refusal> read_keep_clear() {
        const ReadLayer& areas = layer("keep_clear_areas");
        for (const ReadRow& row : areas.rows) {
            if (row.shape.polygons.empty() || !row.shape.lines.empty() || !row.shape.points.empty())
                return tl::unexpected(wrong_shape(row, Words::later("a polygon")));
            const std::string kind = text_of(areas.value(row, "kind"));
            const auto known = keep_clear_kind_from_text(kind);
            if (!known && !kind.empty())
                findings_.add(row.place,
                              Words::tell("the kind of keep-clear area {1} is not known; it is kept clear as \"other\"",
                                          {quoted_for_display(kind)}));
            for (const GeographicPolygon& part : row.shape.polygons)
                result_.ground.keep_clear.push_back({text_of(areas.value(row, "name")), text_of(areas.value(row, "reason")),
                                                     known.value_or(KeepClearKind::other), part});
        }
        return {};
    }

    std::string file_;
    std::string file_name_;
    std::vector<ReadLayer> layers_;
    FindingList& findings_;
    GeographicFile result_;
};

}  // namespace

bool is_layer_file(FileKind kind) {
    return kind == FileKind::geopackage || kind == FileKind::geojson || kind == FileKind::kml ||
           kind == FileKind::shapefile || kind == FileKind::flatgeobuf;
}

bool has_our_layers(const std::vector<ReadLayer>& layers) {
    return std::any_of(layers.begin(), layers.end(), [](const ReadLayer& layer) {
        // a farm's own layer may well be called so
        if (layer.name == "findings") return false;
        return is_one_of(layer.name, layers_read) || is_one_of(layer.name, layers_computed_anew);
    });
}

tl::expected<GeographicFile, Refusal> read_vector_layers(const std::filesystem::path& file, FileKind kind,
                                                         const std::vector<LayerGuess>& guesses, const Progress& progress) {
    const auto listed = list_layers(file, kind);
    if (!listed) return tl::unexpected(listed.error());
    // What a simulation knows is no survey: a plan made from it would prove nothing.
    const bool truth = std::any_of(listed->begin(), listed->end(), [](const ReadLayer& layer) {
        return layer.name == "true_mounds" || layer.name == "truth_summary";
    });
    if (truth) {
        std::string names;
        for (const ReadLayer& layer : *listed) names.append(names.empty() ? "" : ", ").append(layer.name);
        return tl::unexpected(Refusal{Refusal::Code::wrong_format, file.string(), "",
                                      Words::tell("the layers {1}", {quoted_for_display(names, 200)}),
                                      Words::later("one of field_boundaries, barriers, keep_clear_areas, mounds")});
    }
    // Of KML, Shapefile and FlatGeobuf no program of ours writes any: a layer's name there is the farm's own.
    const bool may_be_ours = kind == FileKind::geopackage || kind == FileKind::geojson;
    if (!may_be_ours || !has_our_layers(*listed)) return read_gis_layers(file, guesses, progress);
    FindingList findings(file.filename().string());
    const auto wanted = [&](const std::string& name) { return is_one_of(name, layers_read); };
    auto layers = read_layer_rows(file, kind, wanted, findings, progress);
    if (!layers) return tl::unexpected(layers.error());
    auto result = Interpreter(file, std::move(*layers), findings).interpret();
    if (result) result->findings = findings.listed();
    return result;
}

}  // namespace plugside
