#include "geo/write/shapefiles.h"

#include <ogrsf_frmts.h>

#include <array>
#include <cassert>
#include <cstring>
#include <fstream>
#include <utility>

#include "core/words/words.h"
#include "geo/frame/vector_library.h"
#include "geo/read/numbers.h"
#include "geo/write/layer_features.h"
#include "geo/write/safe_files.h"

namespace plugside {

namespace {

constexpr std::size_t longest_name = 10;
constexpr std::size_t longest_text = 254;

constexpr std::array<std::pair<const char*, const char*>, 20> short_names{{{"axis_bearing", "axis_deg"},
                                                                           {"bearings_from", "north_read"},
                                                                           {"expected_rungs", "exp_rungs"},
                                                                           {"fan_bearing", "fan_deg"},
                                                                           {"hit_probability", "hit_prob"},
                                                                           {"instruction", "instruct"},
                                                                           {"ladder_angle_deg", "lad_angle"},
                                                                           {"ladder_half_m", "lad_half_m"},
                                                                           {"mound_count", "mounds"},
                                                                           {"not_used_because", "not_used"},
                                                                           {"position_sd_m", "pos_sd_m"},
                                                                           {"probability", "prob"},
                                                                           {"probability_single", "p_single"},
                                                                           {"run_length_m", "run_len_m"},
                                                                           {"shared_sd_m", "shr_sd_m"},
                                                                           {"take_off_lat", "toff_lat"},
                                                                           {"take_off_lon", "toff_lon"},
                                                                           {"take_off_sd_across_m", "toff_sd_ac"},
                                                                           {"take_off_sd_along_m", "toff_sd_al"},
                                                                           {"visit_order", "visit"}}};

// Cuts before the character that would reach over the end; true when anything was cut.
bool cut_to(std::string& text, std::size_t most) {
    if (text.size() <= most) return false;
    std::size_t end = most;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) --end;
    text.resize(end);
    return true;
}

std::size_t make_fit(LayerContent& layer) {
    std::size_t cut = 0;
    for (Column& column : layer.columns) {
        const char* name = short_name(column.name);
        assert(name != nullptr);
        column.name = name;
    }
    for (Row& row : layer.rows)
        for (Value& value : row.values)
            if (auto* text = std::get_if<std::string>(&value)) cut += cut_to(*text, longest_text) ? 1U : 0U;
    return cut;
}

std::string legend_of(const std::vector<LayerContent>& layers, const std::string& stem, std::size_t cut) {
    std::string text =
        Words::tell("Names of columns in these Shapefiles, which hold ten characters at most, and what they stand for.");
    text += "\n" + Words::tell("WGS 84 longitude and latitude; texts in UTF-8; times in UTC, written as texts.") + "\n";
    text +=
        Words::tell("Texts that were cut at {1} bytes: {2}.", {std::to_string(longest_text), std::to_string(cut)}) + "\n";
    for (const LayerContent& layer : layers) {
        text.append("\n").append(stem).append("_").append(layer.name).append(".shp\n");
        for (const Column& column : layer.columns) {
            std::string name = short_name(column.name);
            name.resize(longest_name + 2, ' ');
            text.append("  ").append(name).append(column.name).append("\n");
        }
    }
    return text;
}

// The layers of the library are named as the layers are: a file's stem may hold a point, which the library would cut at.
tl::expected<void, Refusal> give_stem(const SafeFiles& safe, const std::string& stem) {
    std::vector<std::filesystem::path> names;
    for (const auto& entry : std::filesystem::directory_iterator(safe.folder())) names.push_back(entry.path());
    for (const std::filesystem::path& name : names) {
        std::error_code error;
        std::filesystem::rename(name, safe.folder() / (stem + "_" + name.filename().string()), error);
        if (error) return tl::unexpected(safe.cannot_write(Words::tell("a name that cannot be taken")));
    }
    return {};
}

bool write_all(GDALDataset& data, const std::vector<LayerContent>& layers, UtcTime stamp, const Progress& progress) {
    const std::string day = "DBF_DATE_LAST_UPDATE=" + format_utc_time(stamp).substr(0, 10);
    RowCount count(layers, progress);
    for (const LayerContent& layer : layers) {
        if (progress.stopped()) return false;
        OGRLayer* into = create_layer(data, layer, {"ENCODING=UTF-8", day});
        if (into == nullptr || !write_rows(*into, layer, count, Blanks::left_out, AtThe180th::cut)) return false;
    }
    return true;
}

}  // namespace

const char* short_name(const char* column) {
    if (std::strlen(column) <= longest_name) return column;
    for (const auto& [name, shortened] : short_names)
        if (std::strcmp(name, column) == 0) return shortened;
    return nullptr;
}

tl::expected<ShapefilesWritten, Refusal> write_shapefiles(const std::vector<LayerContent>& layers, UtcTime stamp,
                                                          const std::filesystem::path& file, const Progress& progress) {
    auto safe = SafeFiles::beside(file);
    if (!safe) return tl::unexpected(safe.error());
    const std::string stem = file.stem().string();
    std::vector<LayerContent> fit = layers;
    ShapefilesWritten result;
    for (LayerContent& layer : fit) result.texts_cut += make_fit(layer);
    prepare_vector_library();
    const LibraryMessages messages;
    const bool written = written_by("ESRI Shapefile", safe->folder(), {},
                                    [&](GDALDataset& data) { return write_all(data, fit, stamp, progress); });
    if (progress.stopped())
        return tl::unexpected(Refusal{Refusal::Code::stopped, file.string(), "", Words::later("a request to stop"), ""});
    std::ofstream legend(safe->folder() / "legend.txt", std::ios::binary);
    legend << legend_of(layers, stem, result.texts_cut);
    legend.close();
    if (!written || !legend || !messages.failure().empty())
        return tl::unexpected(safe->cannot_write(Words::tell("an error while writing ({1})", {messages.failure()})));
    if (const auto named = give_stem(*safe, stem); !named) return tl::unexpected(named.error());
    auto placed = safe->commit();
    if (!placed) return tl::unexpected(placed.error());
    result.files = std::move(*placed);
    return result;
}

}  // namespace plugside
