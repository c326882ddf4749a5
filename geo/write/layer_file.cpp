#include "geo/write/layer_file.h"

#include <cpl_conv.h>
#include <ogrsf_frmts.h>

#include "core/words/words.h"
#include "geo/frame/vector_library.h"
#include "geo/read/numbers.h"
#include "geo/write/layer_features.h"
#include "geo/write/safe_file.h"

namespace plugside {

namespace {

bool index(GDALDataset& data, const LayerContent& content) {
    if (content.kind == ShapeKind::none) return true;
    const std::string sql = std::string("SELECT CreateSpatialIndex('") + content.name + "', 'geom')";
    OGRLayer* answer = data.ExecuteSQL(sql.c_str(), nullptr, nullptr);
    if (answer == nullptr) return false;
    data.ReleaseResultSet(answer);
    return true;
}

// False when the library failed (its messages say why) or on a stop.
bool write_all(GDALDataset& data, const std::vector<LayerContent>& layers, const Progress& progress) {
    RowCount count(layers, progress);
    if (data.StartTransaction() != OGRERR_NONE) return false;
    for (const LayerContent& content : layers) {
        if (progress.stopped()) return false;
        OGRLayer* layer = create_layer(data, content, {"SPATIAL_INDEX=NO", "GEOMETRY_NAME=geom"});
        if (layer == nullptr || !write_rows(*layer, content, count, Blanks::as_nulls)) return false;
    }
    for (const LayerContent& layer : layers)
        if (progress.stopped() || !index(data, layer)) return false;
    return !progress.stopped() && data.CommitTransaction() == OGRERR_NONE;
}

// GeoPackage asks for milliseconds, also when there are none.
std::string file_stamp(UtcTime time) {
    std::string text = format_utc_time(time);
    if (text.find('.') == std::string::npos) text.insert(text.size() - 1, ".000");
    return text;
}

}  // namespace

tl::expected<void, Refusal> write_layer_file(const std::filesystem::path& file, const std::vector<LayerContent>& layers,
                                             UtcTime stamp, const Progress& progress) {
    auto safe = SafeFile::beside(file);
    if (!safe) return tl::unexpected(safe.error());
    prepare_vector_library();
    const LibraryMessages messages;
    const CPLConfigOptionSetter pinned_clock("OGR_CURRENT_DATE", file_stamp(stamp).c_str(), false);
    const CPLConfigOptionSetter cache("OGR_SQLITE_CACHE", "512", false);
    // The unfinished file is worth nothing: it is synced once, when it is whole.
    const CPLConfigOptionSetter unsynced("OGR_SQLITE_SYNCHRONOUS", "OFF", false);
    const bool written = written_by("GPKG", safe->temporary(), {"VERSION=1.3", "ADD_GPKG_OGR_CONTENTS=NO"},
                                    [&](GDALDataset& data) { return write_all(data, layers, progress); });
    if (progress.stopped())
        return tl::unexpected(Refusal{Refusal::Code::stopped, file.string(), "", Words::later("a request to stop"), ""});
    if (!written || !messages.failure().empty())
        return tl::unexpected(safe->cannot_write(Words::tell("an error while writing ({1})", {messages.failure()})));
    return safe->commit();
}

}  // namespace plugside
