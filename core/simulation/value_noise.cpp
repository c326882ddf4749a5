#include "core/simulation/value_noise.h"

#include <cmath>

namespace plugside {

namespace {

double eased(double share) { return share * share * (3.0 - 2.0 * share); }

}  // namespace

double ValueNoise::grain(std::int64_t column, std::int64_t row) const {
    std::uint64_t bits = seed_ + static_cast<std::uint64_t>(column) * 0x9E3779B97F4A7C15ULL +
                         static_cast<std::uint64_t>(row) * 0xC2B2AE3D27D4EB4FULL;
    bits = (bits ^ (bits >> 30U)) * 0xBF58476D1CE4E5B9ULL;
    bits = (bits ^ (bits >> 27U)) * 0x94D049BB133111EBULL;
    bits ^= bits >> 31U;
    return static_cast<double>(bits >> 11U) * 0x1.0p-53;
}

double ValueNoise::value(LocalPoint at, double size_m) const {
    const double u = at.east_m / size_m;
    const double v = at.north_m / size_m;
    const double left = std::floor(u);
    const double low = std::floor(v);
    const double x = eased(u - left);
    const double y = eased(v - low);
    const auto column = static_cast<std::int64_t>(left);
    const auto row = static_cast<std::int64_t>(low);
    const double below = (1.0 - x) * grain(column, row) + x * grain(column + 1, row);
    const double above = (1.0 - x) * grain(column, row + 1) + x * grain(column + 1, row + 1);
    return (1.0 - y) * below + y * above;
}

double ValueNoise::cloudy(LocalPoint at, double size_m) const {
    // each lattice is turned and shifted against the others, or their lines would show
    const LocalPoint first{0.788 * at.east_m - 0.616 * at.north_m, 0.616 * at.east_m + 0.788 * at.north_m};
    const LocalPoint second{0.276 * at.east_m - 0.961 * at.north_m + 17.3, 0.961 * at.east_m + 0.276 * at.north_m - 41.7};
    const LocalPoint third{0.921 * at.east_m + 0.389 * at.north_m - 7.9, -0.389 * at.east_m + 0.921 * at.north_m + 23.1};
    return (4.0 * value(first, size_m) + 2.0 * value(second, 0.5 * size_m) + value(third, 0.25 * size_m)) / 7.0;
}

}  // namespace plugside
