#include "geo/write/map_files.h"

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

// A file of the library in memory, removed with the object: its writer of this format does not tell when a disk is full.
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

Refusal stopped(const std::filesystem::path& file) {
    return {Refusal::Code::stopped, file.string(), "", Words::later("a request to stop"), ""};
}

tl::expected<void, Refusal> written(const char* driver, const char* ending, const std::filesystem::path& file,
                                    const Progress& progress, const Fill& fill) {
    prepare_vector_library();
    const LibraryMessages messages;
    const MemoryFile memory(ending);
    const bool done = written_by(driver, memory.name(), {}, fill);
    if (progress.stopped()) return tl::unexpected(stopped(file));
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

// Escaped for XML; line ends stay.
std::string escaped(std::string_view text) {
    std::string result;
    while (true) {
        const std::size_t end = text.find_first_of("\r\n");
        result += gpx_text::xml_text(text.substr(0, end));
        if (end == std::string_view::npos) return result;
        result += text[end] == '\n' ? "\n" : "&#13;";  // a bare CR would be read as a line end (XML 1.0, 2.11)
        text.remove_prefix(end + 1);
    }
}

std::string in_kml(const Value& value) {
    if (const auto* whole = std::get_if<std::int64_t>(&value)) return std::to_string(*whole);
    if (const auto* number = std::get_if<double>(&value)) return gpx_text::decimal_text(*number);
    if (const auto* text = std::get_if<std::string>(&value)) return escaped(*text);
    return {};
}

// The elements in the schema's order: name, description, extended data, shape.
std::string placemark(const LayerContent& layer, const Row& row) {
    std::string name, description, data;
    for (std::size_t i = 0; i < layer.columns.size(); ++i) {
        const std::string_view column = layer.columns[i].name;
        const std::string value = in_kml(row.values[i]);
        if (value.empty()) continue;
        if (column == "name")
            name = "<name>" + value + "</name>";
        else if (column == "instruction")
            description = "<description>" + value + "</description>";
        else
            data.append("<Data")
                .append(" name=\"")
                .append(column)
                .append("\"><value>")
                .append(value)
                .append("</value></Data>");
    }
    if (!data.empty()) data = "<ExtendedData>" + data + "</ExtendedData>";
    return "<Placemark>" + name + description + data + kml_of(row.shape) + "</Placemark>\n";
}

constexpr const char* kml_opening =
    "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<kml xmlns=\"http://www.opengis.net/kml/2.2\"><Document>\n";

}  // namespace

tl::expected<void, Refusal> write_kml(const std::vector<LayerContent>& layers, const std::string& title,
                                      const std::filesystem::path& file, const Progress& progress) {
    std::string text = kml_opening + ("<name>" + escaped(title_or_plan(title)) + "</name>\n");
    RowCount count(layers, progress);
    for (const LayerContent& layer : layers) {
        const LayerContent named = with_names(layer);
        text.append("<Folder><name>").append(layer.name).append("</name>\n");
        for (const Row& row : named.rows) {
            text += placemark(named, row);
            if (!count.next()) return tl::unexpected(stopped(file));
        }
        text += "</Folder>\n";
    }
    if (progress.stopped()) return tl::unexpected(stopped(file));
    return write_text_file(file, text + "</Document></kml>\n");
}

tl::expected<void, Refusal> write_geojson(const std::vector<LayerContent>& layers, const std::string& title,
                                          const std::filesystem::path& file, const Progress& progress) {
    const std::string name = title_or_plan(title);
    const LayerContent all = one_layer(layers, name);
    return written("GeoJSON", ".geojson", file, progress, [&](GDALDataset& data) {
        if (progress.stopped()) return false;
        RowCount count({all}, progress);
        OGRLayer* into = create_layer(data, all, {"RFC7946=YES", "COORDINATE_PRECISION=9"}, ShapesOfLayer::any);
        return into != nullptr && write_rows(*into, all, count, Blanks::left_out, AtThe180th::cut);
    });
}

}  // namespace plugside
