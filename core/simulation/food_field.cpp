#include "core/simulation/food_field.h"

#include <cmath>
#include <numbers>

namespace plugside {

FoodField::FoodField(const FoodOptions& options, Random& random) : options_(options) {
    for (Wave& wave : waves_) {
        const double east = random.normal(0.0, 1.0 / options.patch_m);
        const double north = random.normal(0.0, 1.0 / options.patch_m);
        wave = {{east, north}, random.uniform(0.0, 2.0 * std::numbers::pi)};
    }
}

double FoodField::richness(LocalPoint place) const {
    double sum = 0.0;
    for (const Wave& wave : waves_) sum += std::cos(dot(wave.turns, place - LocalPoint{}) + wave.phase);
    const double standard = sum * std::sqrt(2.0 / static_cast<double>(waves_.size()));
    return 1.0 / (1.0 + std::exp(-options_.contrast * (standard - options_.scarcity)));
}

LocalVector FoodField::slope(LocalPoint place) const {
    LocalVector sum;
    for (const Wave& wave : waves_) sum = sum + wave.turns * -std::sin(dot(wave.turns, place - LocalPoint{}) + wave.phase);
    return sum;
}

}  // namespace plugside
