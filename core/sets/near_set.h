// What counts as near a set: shared by the cautions of a plan and by the rules of a way of working.
#pragma once

#include "core/plan/plan.h"

namespace plugside {

inline constexpr Metres near_the_system = Metres::of(30.48);  // 100 ft: a federal fumigant label text of 2018
inline constexpr Metres near_a_probe =
    Metres::of(4.9);  // 16 ft, a recreational receiver's error under open sky: GPS.gov [memory]

// Least distance of the ladder's middle and rungs to the area: 0 inside; infinite for an area without vertices.
[[nodiscard]] Metres distance_of_row(const ProbeSite& probe, const Polygon& area);

// Whether what the walker noted of a mark counts for the set: it is of the same system, or lies within 100 ft (our assumption).
[[nodiscard]] bool counts_for(const Mound& mound, std::size_t index, const Plan& plan, const ProbeSite& probe);

}  // namespace plugside
