#include "geo/imagery/ground_to_pixel.h"

#include <cpl_error.h>
#include <ogr_spatialref.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace plugside {

namespace {

struct WayCloser {
    void operator()(OGRCoordinateTransformation* way) const { OGRCoordinateTransformation::DestroyCT(way); }
};
using SystemWay = std::unique_ptr<OGRCoordinateTransformation, WayCloser>;

std::string digits(double value) {
    std::array<char, 40> text{};
    return {text.data(), std::to_chars(text.data(), text.data() + text.size(), value).ptr};
}

// LocalFrame's plane as a reference system of its own.
OGRSpatialReference plane_system(GeographicPoint centre) {
    OGRSpatialReference plane;
    plane.importFromProj4(("+proj=tmerc +lat_0=" + digits(centre.latitude_degrees) + " +lon_0=" +
                           digits(centre.longitude_degrees) + " +k=1 +x_0=0 +y_0=0 +datum=WGS84 +units=m +no_defs")
                              .c_str());
    plane.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    return plane;
}

// The same choice among the library's ways for all of a field: the one made for the ground about its centre.
OGRCoordinateTransformationOptions options_near(GeographicPoint centre) {
    OGRCoordinateTransformationOptions options;
    const double reach = std::min(1.0 / std::max(std::cos(centre.latitude_degrees * 0.017453292519943295), 0.01), 20.0);
    const double west = centre.longitude_degrees - reach;
    const double east = centre.longitude_degrees + reach;
    options.SetAreaOfInterest(west < -180.0 ? west + 360.0 : west, std::max(centre.latitude_degrees - 1.0, -90.0),
                              east > 180.0 ? east - 360.0 : east, std::min(centre.latitude_degrees + 1.0, 90.0));
    return options;
}

void transform(OGRCoordinateTransformation& way, std::vector<double>& x, std::vector<double>& y) {
    std::vector<int> success(x.size(), 0);
    way.Transform(static_cast<int>(x.size()), x.data(), y.data(), nullptr, success.data());
    for (std::size_t i = 0; i < x.size(); ++i)
        if (success[i] == 0) x[i] = y[i] = HUGE_VAL;
}

}  // namespace

struct GroundToPixel::Way {
    PicturePlacement placement;  // of pixels on the picture's own plane, with y upwards
    SystemWay to_system;         // null: the picture's plane is the field's
    SystemWay from_system;
    bool geographic = false;
    double middle_longitude = 0.0;
};

GroundToPixel::GroundToPixel(std::unique_ptr<Way> way) : way_(std::move(way)) {}
GroundToPixel::GroundToPixel(GroundToPixel&&) noexcept = default;
GroundToPixel& GroundToPixel::operator=(GroundToPixel&&) noexcept = default;
GroundToPixel::~GroundToPixel() = default;

std::optional<GroundToPixel> GroundToPixel::of(const ImageryOpening& opening) {
    const GeoTransform& t = opening.placement;
    auto way = std::make_unique<Way>();
    way->placement = {{t[0], t[3]}, {t[1], t[4]}, {t[2], t[5]}};
    way->geographic = opening.geographic;
    way->middle_longitude = opening.middle_longitude;
    if (opening.definition.empty()) return GroundToPixel(std::move(way));
    CPLErrorHandlerPusher quiet(CPLQuietErrorHandler);
    OGRSpatialReference system;
    if (system.importFromWkt(opening.definition.c_str()) != OGRERR_NONE) return std::nullopt;
    system.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    const OGRSpatialReference plane = plane_system(opening.frame_centre);
    const auto options = options_near(opening.frame_centre);
    way->to_system.reset(OGRCreateCoordinateTransformation(&plane, &system, options));
    way->from_system.reset(OGRCreateCoordinateTransformation(&system, &plane, options));
    if (!way->to_system || !way->from_system) return std::nullopt;
    return GroundToPixel(std::move(way));
}

std::vector<std::optional<PicturePixel>> GroundToPixel::pixels(const std::vector<LocalPoint>& places) const {
    std::vector<double> x(places.size());
    std::vector<double> y(places.size());
    for (std::size_t i = 0; i < places.size(); ++i) {
        x[i] = places[i].east_m;
        y[i] = places[i].north_m;
    }
    CPLErrorHandlerPusher quiet(CPLQuietErrorHandler);
    if (way_->to_system) transform(*way_->to_system, x, y);
    std::vector<std::optional<PicturePixel>> found(places.size());
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (way_->geographic && std::isfinite(x[i])) x[i] += 360.0 * std::round((way_->middle_longitude - x[i]) / 360.0);
        if (std::isfinite(x[i]) && std::isfinite(y[i])) found[i] = way_->placement.to_pixel({x[i], y[i]});
    }
    return found;
}

std::vector<std::optional<LocalPoint>> GroundToPixel::places(const std::vector<PicturePixel>& pixels) const {
    std::vector<double> x(pixels.size());
    std::vector<double> y(pixels.size());
    for (std::size_t i = 0; i < pixels.size(); ++i) {
        const LocalPoint at = way_->placement.to_ground(pixels[i]);
        x[i] = at.east_m;
        y[i] = at.north_m;
    }
    CPLErrorHandlerPusher quiet(CPLQuietErrorHandler);
    if (way_->from_system) transform(*way_->from_system, x, y);
    std::vector<std::optional<LocalPoint>> found(pixels.size());
    for (std::size_t i = 0; i < pixels.size(); ++i)
        if (std::isfinite(x[i]) && std::isfinite(y[i])) found[i] = LocalPoint{x[i], y[i]};
    return found;
}

}  // namespace plugside
