// Food over a made-up field: smooth, in patches of about `patch_m`, 0 (poor) to 1 (rich).
//
// Form:   a sum of cosines of random direction and wave length (a Gaussian field with a Gaussian correlation of that
//         length), pushed through a logistic curve. All numbers: our assumption.
// Cost:   O(waves) a question.
#pragma once

#include <array>

#include "core/geometry/point.h"
#include "core/simulation/random.h"

namespace plugside {

struct FoodOptions {
    double patch_m = 8.0;   // over this distance the field forgets itself, > 0
    double contrast = 4.0;  // steepness between poor and rich, > 0
    double scarcity = 0.3;  // 0: half of the ground is rich; 1: a sixth of it
};

class FoodField {
public:
    FoodField(const FoodOptions& options, Random& random);
    [[nodiscard]] double richness(LocalPoint place) const;
    // Towards richer ground, of any length; nearly none on even ground.
    [[nodiscard]] LocalVector slope(LocalPoint place) const;

private:
    struct Wave {
        LocalVector turns;  // radians a metre
        double phase;
    };
    FoodOptions options_;
    std::array<Wave, 40> waves_{};
};

}  // namespace plugside
