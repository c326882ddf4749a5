#include "geo/write/layer_file.h"

#include <cpl_conv.h>
#include <ogrsf_frmts.h>

#include <chrono>
#include <cmath>
#include <memory>

#include "core/words/words.h"
#include "geo/frame/vector_library.h"
#include "geo/read/numbers.h"
#include "geo/write/safe_file.h"

namespace plugside {

namespace {

using Geometry = std::unique_ptr<OGRGeometry>;

std::unique_ptr<OGRLineString> line_string(const GeographicLine& line) {
    auto string = std::make_unique<OGRLineString>();
    string->setNumPoints(static_cast<int>(line.size()), FALSE);
    for (std::size_t i = 0; i < line.size(); ++i)
        string->setPoint(static_cast<int>(i), line[i].longitude_degrees, line[i].latitude_degrees);
    return string;
}

std::unique_ptr<OGRPolygon> polygon(const GeographicPolygon& shape) {
    auto result = std::make_unique<OGRPolygon>();
    for (const GeographicLine& vertices : shape.rings) {
        auto ring = std::make_unique<OGRLinearRing>();
        for (const GeographicPoint vertex : vertices) ring->addPoint(vertex.longitude_degrees, vertex.latitude_degrees);
        ring->closeRings();
        result->addRingDirectly(ring.release());
    }
    return result;
}

struct ToGeometry {
    Geometry operator()(std::monostate) const { return nullptr; }
    Geometry operator()(GeographicPoint place) const {
        return std::make_unique<OGRPoint>(place.longitude_degrees, place.latitude_degrees);
    }
    Geometry operator()(const GeographicLine& line) const {
        if (line.size() < 2) return nullptr;  // one place is no line
        return line_string(line);
    }
    Geometry operator()(const std::vector<GeographicLine>& lines) const {
        auto result = std::make_unique<OGRMultiLineString>();
        for (const GeographicLine& line : lines) result->addGeometryDirectly(line_string(line).release());
        return result;
    }
    Geometry operator()(const std::vector<GeographicPolygon>& polygons) const {
        auto result = std::make_unique<OGRMultiPolygon>();
        for (const GeographicPolygon& part : polygons) result->addGeometryDirectly(polygon(part).release());
        return result;
    }
};

OGRwkbGeometryType library_kind(ShapeKind kind) {
    switch (kind) {
        case ShapeKind::none: return wkbNone;
        case ShapeKind::point: return wkbPoint;
        case ShapeKind::line: return wkbLineString;
        case ShapeKind::lines: return wkbMultiLineString;
        case ShapeKind::polygons: return wkbMultiPolygon;
    }
    return wkbNone;
}

OGRFieldType library_kind(ColumnKind kind) {
    switch (kind) {
        case ColumnKind::whole_number: return OFTInteger64;
        case ColumnKind::number: return OFTReal;
        case ColumnKind::text: return OFTString;
        case ColumnKind::time: return OFTDateTime;
    }
    return OFTString;
}

void set_time(OGRFeature& feature, int column, UtcTime time) {
    const auto day = std::chrono::floor<std::chrono::days>(time);
    const std::chrono::year_month_day date{day};
    const std::chrono::hh_mm_ss clock{time - day};
    constexpr int utc = 100;  // the library's number for it
    const auto milliseconds = clock.seconds().count() * 1000 + clock.subseconds().count();
    feature.SetField(column, static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
                     static_cast<int>(static_cast<unsigned>(date.day())), static_cast<int>(clock.hours().count()),
                     static_cast<int>(clock.minutes().count()), static_cast<float>(milliseconds) / 1000.0F, utc);
}

void set_value(OGRFeature& feature, int column, const Value& value) {
    if (const auto* whole = std::get_if<std::int64_t>(&value))
        feature.SetField(column, static_cast<GIntBig>(*whole));
    else if (const auto* number = std::get_if<double>(&value))
        feature.SetField(column, *number);
    else if (const auto* text = std::get_if<std::string>(&value))
        feature.SetField(column, text->c_str());
    else if (const auto* time = std::get_if<UtcTime>(&value))
        set_time(feature, column, *time);
    else
        feature.SetFieldNull(column);
}

// Writes into an open data set; false when the library failed (its messages say why) or on a stop.
class LayerWriter {
public:
    LayerWriter(GDALDataset& data, const Progress& progress, std::size_t rows)
        : data_(data), progress_(progress), rows_(rows) {
        earth_.importFromEPSG(4326);
        earth_.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    }

    bool write(const LayerContent& content) {
        OGRLayer* layer = create(content);
        if (layer == nullptr) return false;
        for (const Row& row : content.rows) {
            if (progress_.stopped()) return false;
            if (!write_row(*layer, row)) return false;
            if (++written_ % 1000 == 0)
                progress_.say(static_cast<double>(written_) / static_cast<double>(rows_),
                              Words::later("writing the layers"));
        }
        return true;
    }

    bool index(const LayerContent& content) {
        if (content.kind == ShapeKind::none) return true;
        const std::string sql = std::string("SELECT CreateSpatialIndex('") + content.name + "', 'geom')";
        OGRLayer* answer = data_.ExecuteSQL(sql.c_str(), nullptr, nullptr);
        if (answer == nullptr) return false;
        data_.ReleaseResultSet(answer);
        return !progress_.stopped();
    }

private:
    OGRLayer* create(const LayerContent& content) {
        char** options = CSLSetNameValue(nullptr, "SPATIAL_INDEX", "NO");
        options = CSLSetNameValue(options, "GEOMETRY_NAME", "geom");
        OGRLayer* layer = data_.CreateLayer(content.name, content.kind == ShapeKind::none ? nullptr : &earth_,
                                            library_kind(content.kind), options);
        CSLDestroy(options);
        if (layer == nullptr) return nullptr;
        for (const Column& column : content.columns) {
            OGRFieldDefn field(column.name, library_kind(column.kind));
            if (layer->CreateField(&field) != OGRERR_NONE) return nullptr;
        }
        return layer;
    }

    static bool write_row(OGRLayer& layer, const Row& row) {
        OGRFeature feature(layer.GetLayerDefn());
        for (std::size_t i = 0; i < row.values.size(); ++i) set_value(feature, static_cast<int>(i), row.values[i]);
        if (Geometry geometry = std::visit(ToGeometry{}, row.shape)) feature.SetGeometryDirectly(geometry.release());
        return layer.CreateFeature(&feature) == OGRERR_NONE;
    }

    GDALDataset& data_;
    const Progress& progress_;
    OGRSpatialReference earth_;
    std::size_t rows_ = 0;
    std::size_t written_ = 0;
};

bool write_all(GDALDataset& data, const std::vector<LayerContent>& layers, const Progress& progress) {
    std::size_t rows = 0;
    for (const LayerContent& layer : layers) rows += layer.rows.size();
    LayerWriter writer(data, progress, rows);
    if (data.StartTransaction() != OGRERR_NONE) return false;
    for (const LayerContent& layer : layers)
        if (!writer.write(layer)) return false;
    for (const LayerContent& layer : layers)
        if (!writer.index(layer)) return false;
    return data.CommitTransaction() == OGRERR_NONE;
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
    GDALDriver* driver = GetGDALDriverManager()->GetDriverByName("GPKG");
    if (driver == nullptr) return tl::unexpected(safe->cannot_write(Words::later("a vector library without GeoPackage")));
    char** options = CSLSetNameValue(nullptr, "VERSION", "1.3");
    options = CSLSetNameValue(options, "ADD_GPKG_OGR_CONTENTS", "NO");
    GDALDataset* data = driver->Create(safe->temporary().c_str(), 0, 0, 0, GDT_Unknown, options);
    CSLDestroy(options);
    const bool written = data != nullptr && write_all(*data, layers, progress);
    if (data != nullptr) GDALClose(data);
    if (progress.stopped())
        return tl::unexpected(Refusal{Refusal::Code::stopped, file.string(), "", Words::later("a request to stop"), ""});
    if (!written || !messages.failure().empty())
        return tl::unexpected(safe->cannot_write(Words::tell("an error while writing ({1})", {messages.failure()})));
    return safe->commit();
}

}  // namespace plugside
