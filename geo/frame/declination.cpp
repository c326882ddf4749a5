#include "geo/frame/declination.h"

#include <array>
#include <cassert>
#include <charconv>
#include <cmath>
#include <cstdio>
#include <numbers>
#include <string>
#include <string_view>

#include "core/words/words.h"

namespace plugside {

namespace embedded {
extern const char magnetic_model_2025[];
}

namespace {

constexpr std::size_t degrees_of_model = 12;
constexpr double epoch = 2025.0;
constexpr double last_year = 2030.0;
constexpr double reference_radius_km = 6371.2;
constexpr double equator_radius_km = 6378.137;
constexpr double flattening = 1.0 / 298.257223563;
constexpr double degree = std::numbers::pi / 180.0;

struct Coefficient {
    double g = 0.0;
    double h = 0.0;
    double g_a_year = 0.0;
    double h_a_year = 0.0;
};

using ByDegreeAndOrder = std::array<std::array<double, degrees_of_model + 1>, degrees_of_model + 1>;
using Model = std::array<std::array<Coefficient, degrees_of_model + 1>, degrees_of_model + 1>;

double next_number(std::string_view& text) {
    while (!text.empty() && (text.front() == '\t' || text.front() == '\n')) text.remove_prefix(1);
    double value = 0.0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    assert(error == std::errc());
    static_cast<void>(error);
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    return value;
}

Model parsed(std::string_view text) {
    while (!text.empty() && text.front() == '#') text.remove_prefix(text.find('\n') + 1);
    Model model{};
    for (std::size_t n = 1; n <= degrees_of_model; ++n)
        for (std::size_t m = 0; m <= n; ++m) {
            [[maybe_unused]] const double row_n = next_number(text);
            [[maybe_unused]] const double row_m = next_number(text);
            assert(row_n == static_cast<double>(n) && row_m == static_cast<double>(m));
            Coefficient& c = model[n][m];
            c.g = next_number(text);
            c.h = next_number(text);
            c.g_a_year = next_number(text);
            c.h_a_year = next_number(text);
        }
    return model;
}

const Model& model() {
    static const Model once = parsed(embedded::magnetic_model_2025);
    return once;
}

// Schmidt's functions of the geocentric latitude, their slope with it, and, for orders from 1, themselves over its cosine:
// the last has no pole at the poles.
struct Functions {
    ByDegreeAndOrder value{};
    ByDegreeAndOrder slope{};
    ByDegreeAndOrder over_cosine{};
};

Functions functions_at(double sine, double cosine) {
    Functions f;
    f.value[0][0] = 1.0;
    for (std::size_t n = 1; n <= degrees_of_model; ++n) {
        const auto nd = static_cast<double>(n);
        const double k = n == 1 ? 1.0 : std::sqrt((2.0 * nd - 1.0) / (2.0 * nd));
        f.value[n][n] = k * cosine * f.value[n - 1][n - 1];
        f.slope[n][n] = k * (cosine * f.slope[n - 1][n - 1] - sine * f.value[n - 1][n - 1]);
        f.over_cosine[n][n] = k * f.value[n - 1][n - 1];
        for (std::size_t m = 0; m < n; ++m) {
            const auto md = static_cast<double>(m);
            const double norm = std::sqrt(nd * nd - md * md);
            const double a = (2.0 * nd - 1.0) / norm;
            const double b = m + 1 < n ? std::sqrt((nd - 1.0) * (nd - 1.0) - md * md) / norm : 0.0;
            const std::size_t before = n >= 2 ? n - 2 : 0;
            f.value[n][m] = a * sine * f.value[n - 1][m] - b * f.value[before][m];
            f.slope[n][m] = a * (cosine * f.value[n - 1][m] + sine * f.slope[n - 1][m]) - b * f.slope[before][m];
            if (m > 0) f.over_cosine[n][m] = a * sine * f.over_cosine[n - 1][m] - b * f.over_cosine[before][m];
        }
    }
    return f;
}

struct Geocentric {
    double radius_km = 0.0;
    double latitude = 0.0;  // radians
};

Geocentric geocentric(double latitude, double height_km) {
    const double squared_eccentricity = flattening * (2.0 - flattening);
    const double sine = std::sin(latitude);
    const double across = equator_radius_km / std::sqrt(1.0 - squared_eccentricity * sine * sine);
    const double from_axis = (across + height_km) * std::cos(latitude);
    const double from_equator = (across * (1.0 - squared_eccentricity) + height_km) * sine;
    return {std::hypot(from_axis, from_equator), std::atan2(from_equator, from_axis)};
}

MagneticField field_at(double latitude, double longitude, double height_km, double years) {
    const Geocentric at = geocentric(latitude, height_km);
    const Functions f = functions_at(std::sin(at.latitude), std::cos(at.latitude));
    const Model& coefficients = model();
    double north = 0.0;
    double east = 0.0;
    double down = 0.0;
    const double shrink = reference_radius_km / at.radius_km;
    double scale = shrink * shrink;
    for (std::size_t n = 1; n <= degrees_of_model; ++n) {
        scale *= shrink;
        for (std::size_t m = 0; m <= n; ++m) {
            const Coefficient& c = coefficients[n][m];
            const double g = c.g + years * c.g_a_year;
            const double h = c.h + years * c.h_a_year;
            const auto md = static_cast<double>(m);
            const double with = g * std::cos(md * longitude) + h * std::sin(md * longitude);
            const double beside = g * std::sin(md * longitude) - h * std::cos(md * longitude);
            north -= scale * with * f.slope[n][m];
            east += scale * md * beside * f.over_cosine[n][m];
            down -= scale * static_cast<double>(n + 1) * with * f.value[n][m];
        }
    }
    const double tilt = at.latitude - latitude;
    MagneticField field;
    field.north_nt = north * std::cos(tilt) - down * std::sin(tilt);
    field.east_nt = east;
    field.down_nt = north * std::sin(tilt) + down * std::cos(tilt);
    field.declination_degrees = std::atan2(field.east_nt, field.north_nt) / degree;
    field.inclination_degrees = std::atan2(field.down_nt, std::hypot(field.north_nt, field.east_nt)) / degree;
    return field;
}

std::string shown(double value) {
    std::array<char, 40> text{};
    std::snprintf(text.data(), text.size(), "%.7g", value);
    return text.data();
}

Refusal refused(const std::string& found, const std::string& expected) {
    return {Refusal::Code::out_of_range, "", "", found, expected};
}

}  // namespace

tl::expected<MagneticField, Refusal> magnetic_field(GeographicPoint place, double year, Metres height) {
    if (!(year >= epoch && year <= last_year))
        return tl::unexpected(refused(Words::tell("the year {1}", {shown(year)}),
                                      Words::later("2025.0 to 2030.0, for which the magnetic model holds")));
    if (!(std::abs(place.latitude_degrees) <= 90.0))
        return tl::unexpected(
            refused(Words::tell("latitude {1}", {shown(place.latitude_degrees)}), Words::later("degrees from -90 to 90")));
    if (!(std::abs(place.longitude_degrees) <= 360.0))
        return tl::unexpected(refused(Words::tell("longitude {1}", {shown(place.longitude_degrees)}),
                                      Words::later("degrees from -360 to 360")));
    if (!(height.value() >= -10'000.0 && height.value() <= 600'000.0))
        return tl::unexpected(
            refused(Words::tell("a height of {1} m", {shown(height.value())}), Words::later("-10,000 to 600,000 m")));
    return field_at(place.latitude_degrees * degree, place.longitude_degrees * degree, height.value() / 1000.0,
                    year - epoch);
}

double decimal_year(UtcTime time) {
    using namespace std::chrono;
    const year whole = year_month_day(floor<days>(time)).year();
    const auto start = sys_days(whole / January / 1);
    const auto end = sys_days((whole + years(1)) / January / 1);
    return static_cast<double>(static_cast<int>(whole)) + duration<double>(time - start) / duration<double>(end - start);
}

tl::expected<double, Refusal> declination_degrees(GeographicPoint place, UtcTime time) {
    const auto field = magnetic_field(place, decimal_year(time));
    if (!field) return tl::unexpected(field.error());
    return field->declination_degrees;
}

Bearing true_from_magnetic(Bearing magnetic, double declination) { return magnetic.turned(declination); }

Bearing magnetic_from_true(Bearing true_bearing, double declination) { return true_bearing.turned(-declination); }

}  // namespace plugside
