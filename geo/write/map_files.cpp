#include "geo/write/map_files.h"

#include <cpl_conv.h>
#include <ogrsf_frmts.h>

#include <algorithm>
#include <optional>
#include <string_view>

#include "core/words/words.h"
#include "geo/frame/vector_library.h"
#include "geo/write/gpx_text.h"
#include "geo/write/layer_features.h"
#include "geo/write/safe_file.h"

namespace plugside {

namespace {

using Fill = std::function<bool(GDALDataset&)>;

tl::expected<void, Refusal> written(const char* driver, const std::vector<std::string>& options,
                                    const std::filesystem::path& file, const Progress& progress, const Fill& fill) {
    auto safe = SafeFile::beside(file);
    if (!safe) return tl::unexpected(safe.error());
    prepare_vector_library();
    const LibraryMessages messages;
    // In KML the columns that are a feature's own name and description.
    const CPLConfigOptionSetter name("LIBKML_NAME_FIELD", "name", false);
    const CPLConfigOptionSetter description("LIBKML_DESCRIPTION_FIELD", "instruction", false);
    const bool done = written_by(driver, safe->temporary(), options, fill);
    if (progress.stopped())
        return tl::unexpected(Refusal{Refusal::Code::stopped, file.string(), "", Words::later("a request to stop"), ""});
    if (!done || !messages.failure().empty())
        return tl::unexpected(safe->cannot_write(Words::tell("an error while writing ({1})", {messages.failure()})));
    return safe->commit();
}

std::optional<std::size_t> column_named(const LayerContent& layer, std::string_view name) {
    for (std::size_t i = 0; i < layer.columns.size(); ++i)
        if (layer.columns[i].name == name) return i;
    return std::nullopt;
}

std::string text_in(const Row& row, std::optional<std::size_t> column) {
    const auto* text = column ? std::get_if<std::string>(&row.values[*column]) : nullptr;
    return text != nullptr ? *text : std::string();
}

// Whatever a list of features calls each by.
LayerContent with_names(LayerContent layer) {
    if (column_named(layer, "name")) return layer;
    const auto own = column_named(layer, "mound_id") ? column_named(layer, "mound_id") : column_named(layer, "letter");
    const auto from = column_named(layer, "from_mound");
    const auto to = column_named(layer, "to_mound");
    if (!own && !from) return layer;
    layer.columns.push_back({"name", ColumnKind::text});
    for (Row& row : layer.rows) {
        std::string name = own ? text_in(row, own) : text_in(row, from);
        const std::string other = own ? "" : text_in(row, to);
        if (!other.empty()) name.append(" - ").append(other);
        row.values.emplace_back(name);
    }
    return layer;
}

// All rows under the columns of all layers, each with its layer's name.
LayerContent one_layer(const std::vector<LayerContent>& layers, const std::string& title) {
    LayerContent all{title.c_str(), ShapeKind::none, {{"layer", ColumnKind::text}}, {}};
    for (const LayerContent& layer : layers)
        for (const Column& column : layer.columns)
            if (!column_named(all, column.name)) all.columns.push_back(column);
    for (const LayerContent& layer : layers) {
        std::vector<std::size_t> place;
        for (const Column& column : layer.columns) place.push_back(*column_named(all, column.name));
        for (const Row& row : layer.rows) {
            Row wide{row.shape, std::vector<Value>(all.columns.size())};
            wide.values.front() = std::string(layer.name);
            for (std::size_t i = 0; i < place.size(); ++i) wide.values[place[i]] = row.values[i];
            all.rows.push_back(std::move(wide));
        }
    }
    return all;
}

std::string title_or_plan(const std::string& title) {
    const std::string plain = gpx_text::xml_characters(title);
    return plain.empty() ? "plan" : plain;
}

}  // namespace

tl::expected<void, Refusal> write_kml(const std::vector<LayerContent>& layers, const std::string& title,
                                      const std::filesystem::path& file, const Progress& progress) {
    return written("LIBKML", {"NAME=" + title_or_plan(title)}, file, progress, [&](GDALDataset& data) {
        RowCount count(layers, progress);
        for (const LayerContent& layer : layers) {
            if (progress.stopped()) return false;
            const LayerContent named = with_names(layer);
            OGRLayer* into = create_layer(data, named, {"FOLDER=YES"});
            if (into == nullptr || !write_rows(*into, named, count, Blanks::left_out, AtThe180th::cut)) return false;
        }
        return true;
    });
}

tl::expected<void, Refusal> write_geojson(const std::vector<LayerContent>& layers, const std::string& title,
                                          const std::filesystem::path& file, const Progress& progress) {
    const std::string name = title_or_plan(title);
    const LayerContent all = one_layer(layers, name);
    return written("GeoJSON", {}, file, progress, [&](GDALDataset& data) {
        if (progress.stopped()) return false;
        RowCount count({all}, progress);
        OGRLayer* into = create_layer(data, all, {"RFC7946=YES", "COORDINATE_PRECISION=9"}, ShapesOfLayer::any);
        return into != nullptr && write_rows(*into, all, count, Blanks::left_out, AtThe180th::cut);
    });
}

}  // namespace plugside
