#include "geo/write/layer_features.h"

#include <ogrsf_frmts.h>

#include <chrono>
#include <cmath>
#include <memory>

#include "core/words/words.h"

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

// On the 180th meridian only lines and areas have a vertex; a point has one name.
constexpr double west_from_degrees = 180.0 - 5e-10;

bool on_the_180th(GeographicPoint place) { return std::abs(place.longitude_degrees) >= west_from_degrees; }

// A shape that touches the meridian from one side has all of its vertices there by that side's name: nothing is to be cut.
void name_by_one_side(const std::vector<GeographicLine*>& lines) {
    bool east = false;
    bool west = false;
    for (const GeographicLine* line : lines)
        for (const GeographicPoint place : *line)
            if (!on_the_180th(place)) (place.longitude_degrees > 0.0 ? east : west) = true;
    if (east == west) return;
    for (GeographicLine* line : lines)
        for (GeographicPoint& place : *line)
            if (on_the_180th(place)) place.longitude_degrees = east ? 180.0 : -180.0;
}

Shape named_by_one_side(Shape shape) {
    if (auto* line = std::get_if<GeographicLine>(&shape)) name_by_one_side({line});
    if (auto* lines = std::get_if<std::vector<GeographicLine>>(&shape))
        for (GeographicLine& line : *lines) name_by_one_side({&line});
    if (auto* polygons = std::get_if<std::vector<GeographicPolygon>>(&shape))
        for (GeographicPolygon& part : *polygons) {
            std::vector<GeographicLine*> rings;
            for (GeographicLine& ring : part.rings) rings.push_back(&ring);
            name_by_one_side(rings);
        }
    return shape;
}

class OptionList {
public:
    explicit OptionList(const std::vector<std::string>& options) {
        for (const std::string& option : options) list_ = CSLAddString(list_, option.c_str());
    }
    OptionList(const OptionList&) = delete;
    OptionList& operator=(const OptionList&) = delete;
    ~OptionList() { CSLDestroy(list_); }
    [[nodiscard]] char** list() const { return list_; }

private:
    char** list_ = nullptr;
};

Geometry cut_at_the_180th_meridian(Geometry shape) {
    if (auto* point = dynamic_cast<OGRPoint*>(shape.get())) {
        if (point->getX() >= west_from_degrees) point->setX(-180.0);
        return shape;
    }
    const OptionList options({"WRAPDATELINE=YES"});
    Geometry cut(OGRGeometryFactory::transformWithOptions(shape.get(), nullptr, options.list()));
    return cut ? std::move(cut) : std::move(shape);
}

Geometry geometry_of(const Shape& shape, AtThe180th meridian) {
    const bool cut = meridian == AtThe180th::cut;
    Geometry geometry = std::visit(ToGeometry{}, cut ? named_by_one_side(shape) : shape);
    return geometry && cut ? cut_at_the_180th_meridian(std::move(geometry)) : std::move(geometry);
}

bool write_row(OGRLayer& layer, const Row& row, Blanks blanks, AtThe180th meridian) {
    OGRFeature feature(layer.GetLayerDefn());
    for (std::size_t i = 0; i < row.values.size(); ++i)
        if (blanks == Blanks::as_nulls || !std::holds_alternative<std::monostate>(row.values[i]))
            set_value(feature, static_cast<int>(i), row.values[i]);
    if (Geometry geometry = geometry_of(row.shape, meridian)) feature.SetGeometryDirectly(geometry.release());
    return layer.CreateFeature(&feature) == OGRERR_NONE;
}

}  // namespace

OGRLayer* create_layer(GDALDataset& data, const LayerContent& content, const std::vector<std::string>& options,
                       ShapesOfLayer shapes) {
    OGRSpatialReference earth;
    earth.importFromEPSG(4326);
    earth.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    const bool none = content.kind == ShapeKind::none && shapes == ShapesOfLayer::of_its_kind;
    OGRLayer* layer =
        data.CreateLayer(content.name, none ? nullptr : &earth,
                         shapes == ShapesOfLayer::any ? wkbUnknown : library_kind(content.kind), OptionList(options).list());
    if (layer == nullptr) return nullptr;
    for (const Column& column : content.columns) {
        OGRFieldDefn field(column.name, library_kind(column.kind));
        if (layer->CreateField(&field) != OGRERR_NONE) return nullptr;
    }
    return layer;
}

std::string kml_of(const Shape& shape) {
    const Geometry geometry = geometry_of(shape, AtThe180th::cut);
    if (!geometry) return {};
    char* text = geometry->exportToKML();
    std::string kml = text != nullptr ? text : "";
    CPLFree(text);
    return kml;
}

RowCount::RowCount(const std::vector<LayerContent>& layers, const Progress& progress) : progress_(progress) {
    for (const LayerContent& layer : layers) rows_ += layer.rows.size();
}

bool RowCount::next() {
    if (++written_ % 1000 == 0)
        progress_.say(static_cast<double>(written_) / static_cast<double>(rows_), Words::later("writing the layers"));
    return !progress_.stopped();
}

bool write_rows(OGRLayer& layer, const LayerContent& content, RowCount& count, Blanks blanks, AtThe180th meridian) {
    for (const Row& row : content.rows)
        if (!write_row(layer, row, blanks, meridian) || !count.next()) return false;
    return true;
}

bool written_by(const char* driver, const std::filesystem::path& file, const std::vector<std::string>& options,
                const std::function<bool(GDALDataset&)>& fill) {
    GDALDriver* found = GetGDALDriverManager()->GetDriverByName(driver);
    if (found == nullptr) return false;
    GDALDataset* data = found->Create(file.c_str(), 0, 0, 0, GDT_Unknown, OptionList(options).list());
    if (data == nullptr) return false;
    const bool filled = fill(*data);
    GDALClose(data);
    return filled;
}

}  // namespace plugside
