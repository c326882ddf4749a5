#include "geo/write/map_files.h"

#include <cpl_conv.h>
#include <cpl_vsi.h>
#include <ogrsf_frmts.h>

#include <atomic>
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

// A file of the library in memory, removed with the object: its writers of these formats do not tell when a disk is full.
class MemoryFile {
public:
    explicit MemoryFile(const char* ending) : name_("/vsimem/plugside-" + std::to_string(next_number()) + ending) {}
    MemoryFile(const MemoryFile&) = delete;
    MemoryFile& operator=(const MemoryFile&) = delete;
    ~MemoryFile() { VSIUnlink(name_.c_str()); }
    [[nodiscard]] const std::string& name() const { return name_; }
    [[nodiscard]] std::string_view content() const {
        vsi_l_offset size = 0;
        const GByte* bytes = VSIGetMemFileBuffer(name_.c_str(), &size, FALSE);
        if (bytes == nullptr) return {};
        return {reinterpret_cast<const char*>(bytes), static_cast<std::size_t>(size)};
    }

private:
    static unsigned next_number() {
        static std::atomic<unsigned> last{0};
        return ++last;
    }
    std::string name_;
};

tl::expected<void, Refusal> written(const char* driver, const char* ending, const std::vector<std::string>& options,
                                    const std::filesystem::path& file, const Progress& progress, const Fill& fill) {
    prepare_vector_library();
    const LibraryMessages messages;
    // In KML the columns that are a feature's own name and description.
    const CPLConfigOptionSetter name("LIBKML_NAME_FIELD", "name", false);
    const CPLConfigOptionSetter description("LIBKML_DESCRIPTION_FIELD", "instruction", false);
    const MemoryFile memory(ending);
    const bool done = written_by(driver, memory.name(), options, fill);
    if (progress.stopped())
        return tl::unexpected(Refusal{Refusal::Code::stopped, file.string(), "", Words::later("a request to stop"), ""});
    if (!done || !messages.failure().empty() || memory.content().empty())
        return tl::unexpected(Refusal{Refusal::Code::cannot_write, file.string(), "",
                                      Words::tell("an error while writing ({1})", {messages.failure()}),
                                      Words::later("a file that can be written")});
    return write_text_file(file, memory.content());
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
    return written("LIBKML", ".kml", {"NAME=" + title_or_plan(title)}, file, progress, [&](GDALDataset& data) {
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
    return written("GeoJSON", ".geojson", {}, file, progress, [&](GDALDataset& data) {
        if (progress.stopped()) return false;
        RowCount count({all}, progress);
        OGRLayer* into = create_layer(data, all, {"RFC7946=YES", "COORDINATE_PRECISION=9"}, ShapesOfLayer::any);
        return into != nullptr && write_rows(*into, all, count, Blanks::left_out, AtThe180th::cut);
    });
}

}  // namespace plugside
