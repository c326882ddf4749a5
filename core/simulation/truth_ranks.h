// Where the truth of a simulated field stands among what was drawn of it: even over many fields if the draws are what they
// say.
//
// Quantities: systems: number of true systems with a mark used, among the drawn numbers of systems (Plan::drawn);
//             pairs together: number of pairs of marks that are truly one animal's, among the drawn numbers of pairs
//             together, of the draws that tell the systems (SystemPosterior::drawn_system).
// Place:      (rank + a random part of 1) / (draws + 1), in [0, 1): ranks among different numbers of draws compare.
// Marks:      gophers' marks that were used; another digger's mark taken for a gopher's counts in the drawn numbers of
//             systems only.
// Reading:    full near 1: the draws are too low; near 0: too high; at both ends: too narrow; in the middle: too wide.
// Degenerate input: no mark used, no draws: nothing.
// Preconditions: plan and posterior were made together from field.survey.
// Cost:       O(draws x marks).
// Source:     rank_histogram.h. The truth comes from a simulator, not from the model: uneven ranks say how far the two
//             differ.
#pragma once

#include <array>
#include <optional>
#include <string_view>
#include <vector>

#include "core/plan/plan.h"
#include "core/simulation/rank_histogram.h"
#include "core/simulation/truth.h"
#include "core/systems/system_posterior.h"

namespace plugside {

inline constexpr std::size_t truth_rank_count = 2;
inline constexpr std::array<std::string_view, truth_rank_count> truth_rank_names{"systems", "pairs together"};

using TruthPlaces = std::array<std::optional<double>, truth_rank_count>;

// `seed` decides the random parts.
[[nodiscard]] TruthPlaces truth_places(const Plan& plan, const SystemPosterior& posterior, const SimulatedField& field,
                                       std::uint64_t seed);

inline constexpr std::size_t truth_rank_bins = 10;
// Of places: those that are there.
[[nodiscard]] RankHistogram histogram_of_places(const std::vector<std::optional<double>>& places);

}  // namespace plugside
