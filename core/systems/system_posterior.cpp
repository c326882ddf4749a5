#include "core/systems/system_posterior.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <cmath>
#include <map>
#include <numeric>
#include <thread>

#include "core/systems/co_membership.h"
#include "core/systems/consensus.h"
#include "core/systems/forest_sampler.h"

namespace plugside {

namespace {

// The shift common to all links is taken at the middles of five equally likely fifths of a normal distribution.
constexpr std::array<double, 5> shift_quantiles{-1.281552, -0.524401, 0.0, 0.524401, 1.281552};

int draws_for(std::size_t marks, int wanted) {
    if (wanted > 0) return wanted;
    const double by_size = 400.0 * std::sqrt(600.0 / static_cast<double>(std::max<std::size_t>(marks, 1)));
    return std::clamp(static_cast<int>(by_size), 100, 400) / 5 * 5;
}

struct Draws {
    std::vector<std::vector<std::uint32_t>> tree;  // one a draw
    std::vector<std::uint32_t> trees;
    std::vector<std::uint32_t> link_times;
};

// Draws forests on two threads; what a draw is depends only on its number.
std::optional<Draws> draw_forests(const SystemPosterior& posterior, const std::vector<double>& log_weight, const LinkWeights& weights,
                                  int count, const Progress& progress) {
    std::vector<std::uint64_t> keys;
    keys.reserve(posterior.marks.size());
    for (const Mark& mark : posterior.marks) keys.push_back(mark.key);
    std::vector<ForestSampler> samplers;
    samplers.reserve(shift_quantiles.size());
    for (const double quantile : shift_quantiles)
        samplers.emplace_back(keys, posterior.links, log_weight, std::exp(-weights.shift_mean - quantile * weights.shift_sd));
    Draws draws;
    draws.tree.resize(static_cast<std::size_t>(count));
    draws.trees.resize(static_cast<std::size_t>(count));
    std::array<std::vector<std::uint32_t>, 2> link_times;
    std::atomic<int> next{0};
    const auto work = [&](std::size_t worker) {
        auto& times = link_times.at(worker);
        times.assign(posterior.links.size(), 0);
        for (int d = next++; d < count && !progress.stopped(); d = next++) {
            Forest forest = samplers[static_cast<std::size_t>(d) % samplers.size()].draw(static_cast<std::uint64_t>(d));
            for (const std::uint32_t link : forest.arrow)
                if (link != no_link) ++times[link];
            draws.trees[static_cast<std::size_t>(d)] = forest.trees;
            draws.tree[static_cast<std::size_t>(d)] = std::move(forest.tree);
            if (worker == 0) progress.say(0.2 + 0.4 * d / count, "drawing networks of runs");
        }
    };
    {
        const std::jthread helper(work, 1);
        work(0);
    }
    if (progress.stopped()) return std::nullopt;
    draws.link_times.resize(posterior.links.size());
    for (std::size_t e = 0; e < posterior.links.size(); ++e)
        draws.link_times[e] = link_times[0][e] + link_times[1][e];
    return draws;
}

SystemsEstimate estimate_of(std::vector<std::uint32_t> trees, const SurveyScales& scales, std::size_t marks) {
    SystemsEstimate estimate;
    estimate.draws = static_cast<int>(trees.size());
    estimate.link_length = Metres::of(scales.spacing_m);
    if (trees.empty()) return estimate;
    std::sort(trees.begin(), trees.end());
    const auto quantile = [&](double share) {
        const double at = share * static_cast<double>(trees.size() - 1);
        return static_cast<int>(trees[static_cast<std::size_t>(std::lround(at))]);
    };
    const double tail = 0.5 * (1.0 - estimate.interval);
    estimate.low = quantile(tail);
    estimate.high = quantile(1.0 - tail);
    estimate.most_likely = quantile(0.5);
    estimate.expected = std::accumulate(trees.begin(), trees.end(), 0.0) / static_cast<double>(trees.size());
    estimate.mounds_per_system = static_cast<double>(marks) / estimate.expected;
    return estimate;
}

// Renumbers the systems by size, largest first.
void order_systems(SystemPosterior& posterior) {
    struct Standing {
        std::size_t marks = 0;
        std::uint64_t key = ~0ULL;
        std::uint32_t label = 0;
    };
    std::vector<Standing> standing(posterior.systems);
    for (std::uint32_t s = 0; s < posterior.systems; ++s) standing[s].label = s;
    for (std::size_t i = 0; i < posterior.marks.size(); ++i) {
        Standing& own = standing[posterior.system[i]];
        ++own.marks;
        own.key = std::min(own.key, posterior.marks[i].key);
    }
    std::sort(standing.begin(), standing.end(), [](const Standing& a, const Standing& b) {
        return a.marks != b.marks ? a.marks > b.marks : a.key < b.key;
    });
    std::vector<std::uint32_t> number(posterior.systems);
    for (std::uint32_t rank = 0; rank < standing.size(); ++rank) number[standing[rank].label] = rank;
    for (std::uint32_t& label : posterior.system) label = number[label];
}

void measure_agreement(SystemPosterior& posterior, const Draws& draws,
                       const std::vector<std::vector<CoMembership::Near>>& table) {
    const std::size_t n = posterior.marks.size();
    std::vector<std::size_t> size(posterior.systems, 0);
    for (const std::uint32_t s : posterior.system) ++size[s];
    posterior.belongs.assign(n, 1.0);
    for (std::size_t i = 0; i < n; ++i) {
        const std::size_t others = size[posterior.system[i]] - 1;
        if (others == 0) continue;
        double sum = 0.0;
        for (const CoMembership::Near& near : table[i])
            if (posterior.system[near.mark] == posterior.system[i]) sum += near.share;
        posterior.belongs[i] = std::min(1.0, sum / static_cast<double>(others));
    }
    std::vector<std::uint32_t> together(posterior.systems, 0);
    constexpr std::uint32_t unseen = 0xFFFFFFFFU;
    for (const auto& tree : draws.tree) {
        std::vector<std::uint32_t> tree_of(posterior.systems, unseen);
        std::vector<bool> split(posterior.systems, false);
        for (std::size_t i = 0; i < n; ++i) {
            std::uint32_t& expected = tree_of[posterior.system[i]];
            if (expected == unseen) expected = tree[i];
            if (expected != tree[i]) split[posterior.system[i]] = true;
        }
        for (std::uint32_t s = 0; s < posterior.systems; ++s) together[s] += split[s] ? 0U : 1U;
    }
    for (const std::uint32_t times : together)
        posterior.single.push_back(static_cast<double>(times) / static_cast<double>(draws.tree.size()));
}

}  // namespace

std::optional<SystemPosterior> infer_systems(const Survey& survey, const PlanOptions& options, const LinkWeights& weights,
                                             const Progress& progress) {
    SystemPosterior posterior;
    posterior.marks = marks_of(survey, options);
    if (posterior.marks.empty()) return posterior;
    posterior.links = candidate_links(posterior.marks, survey.ground.barriers);
    progress.say(0.05, "fitting the survey's scales");
    posterior.scales = fit_scales(posterior.marks, posterior.links, progress);
    progress.say(0.15, "weighing links");
    const std::vector<double> log_weight = log_weights(
        posterior.marks, posterior.links,
        link_features(posterior.marks, posterior.links, posterior.scales, options.fan_sd_degrees), weights);
    const std::optional<Draws> draws = draw_forests(posterior, log_weight, weights,
                                                    draws_for(posterior.marks.size(), options.draws), progress);
    if (!draws) return std::nullopt;
    CoMembership pairs(posterior.marks.size());
    for (const auto& tree : draws->tree) {
        if (progress.stopped()) return std::nullopt;
        pairs.add(tree);
    }
    progress.say(0.7, "finding the systems");
    const auto table = pairs.table();
    posterior.estimate = estimate_of(draws->trees, posterior.scales, posterior.marks.size());
    const Consensus consensus =
        consensus_of(table, {static_cast<std::size_t>(posterior.estimate.low), static_cast<std::size_t>(posterior.estimate.high)});
    if (progress.stopped()) return std::nullopt;
    posterior.system = consensus.label;
    posterior.systems = consensus.groups;
    posterior.expected_index = consensus.expected_index;
    for (const std::uint32_t times : draws->link_times)
        posterior.link_probability.push_back(static_cast<double>(times) / static_cast<double>(draws->tree.size()));
    order_systems(posterior);
    measure_agreement(posterior, *draws, table);
    return posterior;
}

}  // namespace plugside
