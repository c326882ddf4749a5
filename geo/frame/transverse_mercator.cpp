#include "geo/frame/transverse_mercator.h"

#include <proj.h>

#include <array>
#include <charconv>
#include <cmath>
#include <mutex>
#include <stdexcept>
#include <string>

namespace plugside {

namespace {

std::string parameter(const char* name, double value) {
    std::array<char, 40> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value).ptr;
    return std::string(" +") + name + "=" + std::string(digits.data(), end);
}

}  // namespace

struct TransverseMercator::Library {
    PJ_CONTEXT* context = nullptr;
    PJ* projection = nullptr;
    mutable std::mutex one_at_a_time;  // PROJ keeps its last error, and what it derives from the projection, in it

    explicit Library(const TransverseMercatorParameters& p) : context(proj_context_create()) {
        proj_context_set_enable_network(context, 0);
        proj_log_level(context, PJ_LOG_NONE);
        // Numbers only, no names: nothing is looked up in PROJ's data base, so none is needed on the machine.
        const std::string definition =
            "+proj=tmerc" + parameter("a", p.semi_major_m) + parameter("rf", p.inverse_flattening) +
            parameter("lon_0", p.origin_longitude_degrees) + parameter("lat_0", p.origin_latitude_degrees) +
            parameter("k_0", p.scale) + parameter("x_0", p.false_easting_m) + parameter("y_0", p.false_northing_m);
        projection = proj_create(context, definition.c_str());
        if (projection == nullptr) {
            proj_context_destroy(context);
            throw std::runtime_error("PROJ cannot make the projection " + definition);
        }
    }
    ~Library() {
        proj_destroy(projection);
        proj_context_destroy(context);
    }
    Library(const Library&) = delete;
    Library& operator=(const Library&) = delete;

    // Radians in and out on the geographic side, as PROJ's plain operations have it.
    [[nodiscard]] std::optional<PJ_XY> transform(PJ_DIRECTION direction, double first, double second) const {
        const std::scoped_lock lock(one_at_a_time);
        proj_errno_reset(projection);
        const PJ_COORD result = proj_trans(projection, direction, proj_coord(first, second, 0.0, 0.0));
        if (!std::isfinite(result.xy.x) || !std::isfinite(result.xy.y)) return std::nullopt;
        return result.xy;
    }
};

TransverseMercator::TransverseMercator(const TransverseMercatorParameters& parameters)
    : parameters_(parameters), library_(std::make_unique<Library>(parameters)) {}
TransverseMercator::TransverseMercator(const TransverseMercator& other) : TransverseMercator(other.parameters_) {}
TransverseMercator& TransverseMercator::operator=(const TransverseMercator& other) {
    if (this != &other) *this = TransverseMercator(other);
    return *this;
}
TransverseMercator::TransverseMercator(TransverseMercator&&) noexcept = default;
TransverseMercator& TransverseMercator::operator=(TransverseMercator&&) noexcept = default;
TransverseMercator::~TransverseMercator() = default;

std::optional<LocalPoint> TransverseMercator::forward(GeographicPoint place) const {
    const double longitude = unwrapped_longitude(place.longitude_degrees, parameters_.origin_longitude_degrees);
    if (std::abs(longitude - parameters_.origin_longitude_degrees) > 80.0) return std::nullopt;
    const auto plane = library_->transform(PJ_FWD, proj_torad(longitude), proj_torad(place.latitude_degrees));
    if (!plane) return std::nullopt;
    return LocalPoint{plane->x, plane->y};
}

std::optional<GeographicPoint> TransverseMercator::inverse(LocalPoint place) const {
    const auto radians = library_->transform(PJ_INV, place.east_m, place.north_m);
    if (!radians) return std::nullopt;
    return GeographicPoint{normalised_longitude(proj_todeg(radians->x)), proj_todeg(radians->y)};
}

std::optional<double> TransverseMercator::convergence_degrees(GeographicPoint place) const {
    const double longitude = unwrapped_longitude(place.longitude_degrees, parameters_.origin_longitude_degrees);
    const std::scoped_lock lock(library_->one_at_a_time);
    proj_errno_reset(library_->projection);
    const PJ_FACTORS factors =
        proj_factors(library_->projection, proj_coord(proj_torad(longitude), proj_torad(place.latitude_degrees), 0.0, 0.0));
    if (proj_errno(library_->projection) != 0) return std::nullopt;
    // The direction in which a step due north goes on the plane. It is independent of the library's sign convention.
    return proj_todeg(std::atan2(factors.dx_dphi, factors.dy_dphi));
}

double normalised_longitude(double degrees) {
    if (degrees >= -180.0 && degrees < 180.0) return degrees;
    double folded = std::fmod(degrees + 180.0, 360.0);
    if (folded < 0.0) folded += 360.0;
    return folded >= 360.0 ? -180.0 : folded - 180.0;
}

double unwrapped_longitude(double degrees, double centre) {
    if (degrees - centre > 180.0) return degrees - 360.0;
    if (degrees - centre < -180.0) return degrees + 360.0;
    return degrees;
}

}  // namespace plugside
