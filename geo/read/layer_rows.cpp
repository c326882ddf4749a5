#include "geo/read/layer_rows.h"

#include <ogrsf_frmts.h>

#include <cmath>
#include <memory>
#include <optional>

#include "core/words/words.h"
#include "geo/frame/transverse_mercator.h"
#include "geo/frame/vector_library.h"
#include "geo/read/coordinate_place.h"
#include "geo/read/layer_source.h"
#include "geo/read/reference_systems.h"

namespace plugside {

namespace {

// What stops the reading of a layer; caught below, never leaves this file.
struct Stop {
    Refusal refusal;
};

// Takes shapes apart into points, lines and polygons in longitude and latitude.
class ShapeReader {
public:
    ShapeReader(const std::string& file, const std::string& place, FindingList& findings)
        : file_(file), place_(place), findings_(findings) {}

    RowShape read(const OGRGeometry& geometry) {
        add(geometry);
        return std::move(shape_);
    }
    bool exchanged() const { return exchanged_; }

private:
    [[noreturn]] void refuse(Refusal::Code code, const std::string& found, const std::string& expected) const {
        throw Stop{{code, file_, place_, found, expected}};
    }

    GeographicPoint checked(double x, double y) const {
        if (!std::isfinite(x) || !std::isfinite(y))
            refuse(Refusal::Code::malformed, Words::later("a place that is no number"),
                   Words::later("longitude and latitude in degrees"));
        // Rounding in a transformation may pass the edge of the range by a hair.
        if (std::abs(x) > 180.0 + 1e-9 || std::abs(y) > 90.0 + 1e-9)
            refuse(Refusal::Code::out_of_range, Words::tell("a place at {1}, {2}", {std::to_string(x), std::to_string(y)}),
                   Words::later("a longitude from -180 to 180 and a latitude from -90 to 90"));
        return {normalised_longitude(x), std::clamp(y, -90.0, 90.0)};
    }

    GeographicLine places(const OGRSimpleCurve& curve) const {
        GeographicLine line;
        line.reserve(static_cast<std::size_t>(curve.getNumPoints()));
        for (int i = 0; i < curve.getNumPoints(); ++i) line.push_back(checked(curve.getX(i), curve.getY(i)));
        return line;
    }

    GeographicLine ring(const OGRLinearRing& curve) const {
        GeographicLine line = places(curve);
        if (line.size() > 1 && line.front() == line.back()) line.pop_back();
        if (line.size() < 3)
            refuse(Refusal::Code::malformed, Words::tell("a ring of {1} places", {std::to_string(line.size())}),
                   Words::later("at least three"));
        return line;
    }

    void add(const OGRGeometry& geometry) {
        if (geometry.IsEmpty()) return;
        const OGRwkbGeometryType kind = wkbFlatten(geometry.getGeometryType());
        if (kind == wkbPoint) {
            add_point(geometry.toPoint()->getX(), geometry.toPoint()->getY());
        } else if (kind == wkbLineString) {
            shape_.lines.push_back(places(*geometry.toLineString()));
        } else if (kind == wkbPolygon) {
            add_polygon(*geometry.toPolygon());
        } else if (OGR_GT_IsSubClassOf(kind, wkbGeometryCollection)) {
            for (const OGRGeometry* part : *geometry.toGeometryCollection()) add(*part);
        } else {
            refuse(Refusal::Code::wrong_format, Words::tell("a shape of kind {1}", {geometry.getGeometryName()}),
                   Words::later("points, lines or polygons"));
        }
    }

    void add_point(double x, double y) {
        const auto place = place_on_earth(x, y);
        exchanged_ = exchanged_ || (place && place->exchanged);
        shape_.points.push_back(place && place->exchanged ? place->at : checked(x, y));
    }

    void add_polygon(const OGRPolygon& polygon) {
        GeographicPolygon shape;
        for (const OGRLinearRing* curve : polygon) shape.rings.push_back(ring(*curve));
        const LibraryMessages quiet;  // the library tells where a polygon is not valid; the finding is ours
        const OGRPolygon whole = unbroken(shape);
        if (whole.IsValid()) {
            shape_.polygons.push_back(std::move(shape));
            return;
        }
        const std::unique_ptr<OGRGeometry> repaired(whole.MakeValid());
        const std::size_t before = shape_.polygons.size();
        if (repaired && repaired->IsValid()) add_polygons_of(*repaired);
        if (shape_.polygons.size() == before)
            refuse(Refusal::Code::malformed, Words::later("a polygon that crosses itself and cannot be repaired"),
                   Words::later("a simple polygon"));
        findings_.add(place_, Words::later("the polygon crosses or touches itself; it was repaired, look at it on the map"));
    }

    // Across the 180th meridian longitudes jump by 360 degrees; validity is asked of the polygon without the jump.
    static OGRPolygon unbroken(const GeographicPolygon& shape) {
        OGRPolygon polygon;
        const double centre = shape.rings.front().front().longitude_degrees;
        for (const GeographicLine& line : shape.rings) {
            OGRLinearRing curve;
            for (const GeographicPoint vertex : line)
                curve.addPoint(unwrapped_longitude(vertex.longitude_degrees, centre), vertex.latitude_degrees);
            curve.closeRings();
            polygon.addRing(&curve);
        }
        return polygon;
    }

    void add_polygons_of(const OGRGeometry& repaired) {
        const OGRwkbGeometryType kind = wkbFlatten(repaired.getGeometryType());
        if (kind == wkbPolygon && !repaired.IsEmpty()) {
            GeographicPolygon shape;
            for (const OGRLinearRing* curve : *repaired.toPolygon()) {
                GeographicLine line;
                for (int i = 0; i + 1 < curve->getNumPoints(); ++i)
                    line.push_back({normalised_longitude(curve->getX(i)), curve->getY(i)});
                shape.rings.push_back(std::move(line));
            }
            shape_.polygons.push_back(std::move(shape));
        } else if (OGR_GT_IsSubClassOf(kind, wkbGeometryCollection)) {
            for (const OGRGeometry* part : *repaired.toGeometryCollection()) add_polygons_of(*part);
        }
    }

    const std::string& file_;
    const std::string& place_;
    FindingList& findings_;
    RowShape shape_;
    bool exchanged_ = false;
};

Value value_of(const OGRFeature& feature, int column) {
    if (!feature.IsFieldSetAndNotNull(column)) return {};
    switch (feature.GetFieldDefnRef(column)->GetType()) {
        case OFTInteger:
        case OFTInteger64: return static_cast<std::int64_t>(feature.GetFieldAsInteger64(column));
        case OFTReal: return feature.GetFieldAsDouble(column);
        case OFTDateTime: break;
        default: return std::string(feature.GetFieldAsString(column));
    }
    int year = 0, month = 0, day = 0, hour = 0, minute = 0, zone = 0;
    float second = 0.0F;
    if (feature.GetFieldAsDateTime(column, &year, &month, &day, &hour, &minute, &second, &zone) == FALSE) return {};
    const std::chrono::year_month_day date{std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(month)},
                                           std::chrono::day{static_cast<unsigned>(day)}};
    if (!date.ok()) return {};
    const int minutes_east = zone >= 2 ? (zone - 100) * 15 : 0;  // 0 and 1: the file does not say; times are UTC here
    return UtcTime{std::chrono::sys_days{date}} + std::chrono::hours(hour) + std::chrono::minutes(minute - minutes_east) +
           std::chrono::milliseconds(std::lround(static_cast<double>(second) * 1000.0));
}

class LayerReader {
public:
    LayerReader(std::string file, FindingList& findings, const Progress& progress, const SystemOfLayer& assumed)
        : file_(std::move(file)), findings_(findings), progress_(progress), assumed_(assumed) {
        earth_.importFromEPSG(4326);
        earth_.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    }

    ReadLayer read(OGRLayer& source, bool wanted) {
        ReadLayer layer{source.GetName(), has_system(source), source.GetGeomType() != wkbNone, {}, {}};
        const OGRFeatureDefn& definition = *source.GetLayerDefn();
        for (int i = 0; i < definition.GetFieldCount(); ++i)
            layer.columns.emplace_back(definition.GetFieldDefn(i)->GetNameRef());
        if (!wanted) return layer;
        const std::string place = Words::tell("layer {1}", {layer.name});
        const auto to_earth = transformation(source, place);
        const LibraryMessages messages;
        source.ResetReading();
        while (const std::unique_ptr<OGRFeature> feature{source.GetNextFeature()}) {
            if (progress_.stopped()) throw Stop{{Refusal::Code::stopped, file_, "", Words::later("a request to stop"), ""}};
            layer.rows.push_back(row(*feature, place, to_earth.get()));
            if (layer.rows.size() > most_rows)
                throw Stop{{Refusal::Code::too_large, file_, place, Words::later("more than 2,000,000 features"),
                            Words::later("the layers of one field")}};
        }
        if (!messages.failure().empty())
            throw Stop{{Refusal::Code::malformed, file_, place,
                        Words::tell("something that cannot be read ({1})", {quoted_for_display(messages.failure(), 160)}),
                        Words::later("an undamaged layer")}};
        return layer;
    }

private:
    static constexpr std::size_t most_rows = 2'000'000;

    static bool has_system(OGRLayer& source) {
        if (source.GetGeomType() == wkbNone) return true;
        const OGRSpatialReference* system = source.GetSpatialRef();
        const std::string name = system != nullptr && system->GetName() != nullptr ? system->GetName() : "";
        return system != nullptr && name.rfind("Undefined", 0) != 0 && !system->IsLocal();
    }

    // The layer's own, else the one that a person chose.
    OGRSpatialReference system_of(OGRLayer& source, const std::string& place) const {
        if (has_system(source)) return *source.GetSpatialRef();
        const std::string chosen = assumed_ ? assumed_(source.GetName()) : std::string();
        OGRSpatialReference system;
        if (!is_reference_system(chosen) || system.importFromEPSG(std::stoi(chosen.substr(5))) != OGRERR_NONE)
            throw Stop{{Refusal::Code::needs_reference_system, file_, place,
                        chosen.empty() ? Words::later("no reference system")
                                       : Words::tell("the reference system {1}", {quoted_for_display(chosen)}),
                        Words::later("one that says where on the earth the coordinates lie, such as WGS 84")}};
        return system;
    }

    // Nothing when the layer is in longitude and latitude of WGS 84 already, or has no shapes.
    std::unique_ptr<OGRCoordinateTransformation> transformation(OGRLayer& source, const std::string& place) const {
        if (source.GetGeomType() == wkbNone) return nullptr;
        OGRSpatialReference own = system_of(source, place);
        const std::string name = own.GetName() != nullptr ? own.GetName() : "";
        own.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
        if (own.IsSame(&earth_)) return nullptr;
        const LibraryMessages quiet;
        std::unique_ptr<OGRCoordinateTransformation> to_earth(OGRCreateCoordinateTransformation(&own, &earth_));
        if (!to_earth)
            throw Stop{{Refusal::Code::wrong_format, file_, place,
                        Words::tell("the reference system {1}", {quoted_for_display(name)}),
                        Words::later("one that can be turned into longitude and latitude")}};
        return to_earth;
    }

    ReadRow row(const OGRFeature& feature, const std::string& layer_place, OGRCoordinateTransformation* to_earth) {
        ReadRow result{Words::tell("{1}, feature {2}", {layer_place, std::to_string(feature.GetFID())}), {}, {}, false};
        for (int i = 0; i < feature.GetFieldCount(); ++i) result.values.push_back(value_of(feature, i));
        const OGRGeometry* geometry = feature.GetGeometryRef();
        if (geometry == nullptr) return result;
        std::unique_ptr<OGRGeometry> linear(geometry->getLinearGeometry());
        if (to_earth != nullptr) {
            const LibraryMessages quiet;
            if (linear->transform(to_earth) != OGRERR_NONE)
                throw Stop{{Refusal::Code::out_of_range, file_, result.place,
                            Words::later("coordinates that their reference system has no place for"),
                            Words::later("coordinates of a field")}};
        }
        ShapeReader reader(file_, result.place, findings_);
        result.shape = reader.read(*linear);
        result.exchanged = reader.exchanged();
        return result;
    }

    std::string file_;
    FindingList& findings_;
    const Progress& progress_;
    const SystemOfLayer& assumed_;
    OGRSpatialReference earth_;
};

std::vector<ReadLayer> read_all(const std::filesystem::path& file, FileKind kind,
                                const std::function<bool(const std::string&)>& wanted, FindingList& findings,
                                const Progress& progress, const SystemOfLayer& assumed) {
    const LibraryMessages messages;
    const LayerSource data = open_layers(file, kind);
    const char* expected = expected_of_layers(kind);
    if (!data || !messages.failure().empty())
        throw Stop{{Refusal::Code::malformed, file.string(), "",
                    messages.failure().empty()
                        ? Words::later("a file of another kind inside")
                        : Words::tell("something that cannot be read ({1})", {quoted_for_display(messages.failure(), 160)}),
                    expected}};
    for (const std::string& warning : messages.warnings())
        findings.add("", Words::tell("the library that reads the file says: {1}", {quoted_for_display(warning, 200)}));
    LayerReader reader(file.string(), findings, progress, assumed);
    std::vector<ReadLayer> layers;
    for (int i = 0; i < data->GetLayerCount(); ++i) {
        OGRLayer& layer = *data->GetLayer(i);
        layers.push_back(reader.read(layer, wanted(layer.GetName())));
        progress.say(static_cast<double>(i + 1) / data->GetLayerCount(), Words::later("reading the layers"));
    }
    return layers;
}

}  // namespace

const Value& ReadLayer::value(const ReadRow& row, std::string_view column) const {
    static const Value null;
    for (std::size_t i = 0; i < columns.size(); ++i)
        if (columns[i] == column) return row.values[i];
    return null;
}

tl::expected<std::vector<ReadLayer>, Refusal> read_layer_rows(const std::filesystem::path& file, FileKind kind,
                                                              const std::function<bool(const std::string&)>& wanted,
                                                              FindingList& findings, const Progress& progress,
                                                              const SystemOfLayer& assumed_system) {
    if (auto refusal = refusal_before_opening(file, kind)) return tl::unexpected(*refusal);
    prepare_vector_library();
    try {
        return read_all(file, kind, wanted, findings, progress, assumed_system);
    } catch (const Stop& stop) {
        return tl::unexpected(stop.refusal);
    }
}

tl::expected<std::vector<ReadLayer>, Refusal> list_layers(const std::filesystem::path& file, FileKind kind) {
    FindingList unused(file.filename().string());
    return read_layer_rows(file, kind, [](const std::string&) { return false; }, unused, {});
}

}  // namespace plugside
