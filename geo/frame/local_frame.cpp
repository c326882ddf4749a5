#include "geo/frame/local_frame.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "geo/frame/transverse_mercator.h"

namespace plugside {

namespace {

// At the poles the plane's north has no meridian to follow: 11 km away from them it has.
constexpr double furthest_centre_latitude = 89.9;

TransverseMercatorParameters centred_parameters(GeographicPoint centre) {
    TransverseMercatorParameters parameters;
    parameters.origin_longitude_degrees = normalised_longitude(centre.longitude_degrees);
    parameters.origin_latitude_degrees =
        std::clamp(centre.latitude_degrees, -furthest_centre_latitude, furthest_centre_latitude);
    return parameters;
}

[[maybe_unused]] bool on_earth(GeographicPoint place) {
    return std::isfinite(place.longitude_degrees) && std::isfinite(place.latitude_degrees) &&
           std::abs(place.longitude_degrees) <= 180.0 && std::abs(place.latitude_degrees) <= 90.0;
}

}  // namespace

struct LocalFrame::Projection {
    TransverseMercator mercator;
};

LocalFrame LocalFrame::centred_on(GeographicPoint centre) {
    assert(on_earth(centre));
    LocalFrame frame;
    frame.projection_ = std::make_unique<Projection>(Projection{TransverseMercator(centred_parameters(centre))});
    return frame;
}

LocalFrame LocalFrame::around(const std::vector<GeographicPoint>& places) {
    if (places.empty()) return {};
    // The widest gap between neighbouring longitudes is outside the field; the box is what remains of the circle.
    std::vector<double> longitudes;
    longitudes.reserve(places.size());
    double south = 90.0;
    double north = -90.0;
    for (const GeographicPoint& place : places) {
        assert(on_earth(place));
        longitudes.push_back(normalised_longitude(place.longitude_degrees));
        south = std::min(south, place.latitude_degrees);
        north = std::max(north, place.latitude_degrees);
    }
    std::sort(longitudes.begin(), longitudes.end());
    double west = longitudes.front();
    double east = longitudes.back();
    double widest_gap = 360.0 - (east - west);
    for (std::size_t i = 1; i < longitudes.size(); ++i) {
        const double gap = longitudes[i] - longitudes[i - 1];
        if (gap <= widest_gap) continue;
        widest_gap = gap;
        west = longitudes[i];
        east = longitudes[i - 1] + 360.0;
    }
    return centred_on({normalised_longitude(0.5 * (west + east)), 0.5 * (south + north)});
}

LocalFrame::LocalFrame() : projection_(std::make_unique<Projection>(Projection{TransverseMercator({})})) {}
LocalFrame::LocalFrame(const LocalFrame& other) : projection_(std::make_unique<Projection>(*other.projection_)) {}
LocalFrame::LocalFrame(LocalFrame&&) noexcept = default;
LocalFrame& LocalFrame::operator=(const LocalFrame& other) {
    if (this != &other) projection_ = std::make_unique<Projection>(*other.projection_);
    return *this;
}
LocalFrame& LocalFrame::operator=(LocalFrame&&) noexcept = default;
LocalFrame::~LocalFrame() = default;

GeographicPoint LocalFrame::centre() const {
    const TransverseMercatorParameters& p = projection_->mercator.parameters();
    return {p.origin_longitude_degrees, p.origin_latitude_degrees};
}

LocalPoint LocalFrame::to_local(GeographicPoint place) const {
    assert(on_earth(place));
    const auto local = projection_->mercator.forward(place);
    assert(local.has_value());
    return local.value_or(LocalPoint{});
}

GeographicPoint LocalFrame::to_geographic(LocalPoint place) const {
    const auto geographic = projection_->mercator.inverse(place);
    assert(geographic.has_value());
    return geographic.value_or(centre());
}

double LocalFrame::convergence_degrees(LocalPoint place) const {
    const auto convergence = projection_->mercator.convergence_degrees(to_geographic(place));
    assert(convergence.has_value());
    return convergence.value_or(0.0);
}

Bearing LocalFrame::plane_bearing(Bearing true_bearing, LocalPoint place) const {
    return true_bearing.turned(convergence_degrees(place));
}

Bearing LocalFrame::true_bearing(Bearing plane_bearing, LocalPoint place) const {
    return plane_bearing.turned(-convergence_degrees(place));
}

}  // namespace plugside
