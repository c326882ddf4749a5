#include "core/simulation/truth_ranks.h"

#include <algorithm>
#include <map>
#include <set>

namespace plugside {

namespace {

double pairs_within(const std::map<std::size_t, double>& sizes) {
    double pairs = 0.0;
    for (const auto& [label, size] : sizes) pairs += size * (size - 1.0) / 2.0;
    return pairs;
}

std::optional<double> place_among(double truth, const std::vector<double>& draws, Random& random) {
    if (draws.empty()) return std::nullopt;
    return (static_cast<double>(rank_among(truth, draws, random)) + random.uniform()) /
           (static_cast<double>(draws.size()) + 1.0);
}

}  // namespace

TruthPlaces truth_places(const Plan& plan, const SystemPosterior& posterior, const SimulatedField& field,
                         std::uint64_t seed) {
    std::map<std::size_t, std::size_t> system_of;  // of each mark of the survey that is a gopher's
    for (const TrueMound& mound : field.truth.mounds)
        if (mound.seen_as) system_of[*mound.seen_as] = mound.system;
    std::vector<std::uint32_t> marks;  // used ones
    std::map<std::size_t, double> sizes;
    for (std::uint32_t i = 0; i < posterior.marks.size(); ++i)
        if (const auto of = system_of.find(posterior.marks[i].mound); of != system_of.end()) {
            marks.push_back(i);
            sizes[of->second] += 1.0;
        }
    if (marks.empty() || !plan.drawn) return {};
    std::vector<double> systems, pairs;
    for (const auto& tree : plan.drawn->tree)
        systems.push_back(static_cast<double>(std::set<std::uint32_t>(tree.begin(), tree.end()).size()));
    for (const auto& tree : posterior.drawn_system) {
        std::map<std::size_t, double> drawn;
        for (const std::uint32_t i : marks) drawn[tree[i]] += 1.0;
        pairs.push_back(pairs_within(drawn));
    }
    Random random(seed, 0x72616E6B);
    const auto of_systems = place_among(static_cast<double>(sizes.size()), systems, random);
    return {of_systems, place_among(pairs_within(sizes), pairs, random)};
}

RankHistogram histogram_of_places(const std::vector<std::optional<double>>& places) {
    RankHistogram histogram(truth_rank_bins - 1, truth_rank_bins);
    for (const std::optional<double>& place : places)
        if (place)
            histogram.add(
                std::min(truth_rank_bins - 1, static_cast<std::size_t>(*place * static_cast<double>(truth_rank_bins))));
    return histogram;
}

}  // namespace plugside
