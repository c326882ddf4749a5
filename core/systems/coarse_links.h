// Links between near marks and what each says, by a closed formula that is cheap enough for a million marks.
//
// Spacing: of a mark, the median distance to the second neighbour among the mark and its neighbours: no scale is taken from
//          the whole survey, so that one end of it does not move the other.
// Features: without a unit (see the names), so that nothing is tied to one soil or one animal's size.
// Score:   log-odds that the two are one animal's, a sum of features times weights; the weights were fitted by logistic
//          regression on simulated fields (tests/training/fit_coarse_links). They claim nothing beyond that: neighbouring
//          links share their evidence, which the sum does not know.
// Links:   of each pair that is among the nearest of one of the two, once, first < second.
// Cost:    O(n) on two threads.
// Errors:  returns nothing when stopped.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "core/systems/coarse_neighbours.h"
#include "core/units/bearing.h"

namespace plugside {

inline constexpr std::size_t coarse_feature_count = 8;
// one, log of length over spacing, length over spacing, log of the lower rank, log of the higher rank, sine squared of the
// angle to the fan's axis less a half (sum of both ends), marks in the circle on the link, absolute log of the ratio of the spacings
using CoarseFeatures = std::array<float, coarse_feature_count>;

struct CoarseLink {
    std::uint32_t first = 0;
    std::uint32_t second = 0;
    float score = 0.0F;
    friend bool operator==(const CoarseLink&, const CoarseLink&) = default;
};

struct CoarseGround {
    std::span<const LocalPoint> take_offs;                // along a space-filling curve
    std::span<const std::optional<Bearing>> fans;         // of the same marks
};

// Metres; the reach where a mark has no second neighbour.
[[nodiscard]] std::vector<float> coarse_spacing(const CoarseNeighbours& neighbours, Metres reach);

[[nodiscard]] std::optional<std::vector<CoarseLink>> coarse_links(const CoarseGround& ground, const CoarseNeighbours& neighbours,
                                                                  Metres reach, const Progress& progress = {});

// For fitting the weights: what the score of each link is made of.
[[nodiscard]] CoarseFeatures coarse_features(const CoarseGround& ground, const CoarseNeighbours& neighbours,
                                             std::span<const float> spacing_m, std::uint32_t first, std::uint32_t second);

}  // namespace plugside
