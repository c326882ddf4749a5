#include "core/systems/forest_sampler.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <tuple>

#include "core/systems/keyed_random.h"

namespace plugside {

ForestSampler::ForestSampler(const std::vector<std::uint64_t>& keys, const std::vector<Link>& links,
                             const std::vector<double>& log_weight, double root_weight)
    : ForestSampler(keys, links, log_weight, std::vector<double>(keys.size(), std::log(root_weight))) {}

ForestSampler::ForestSampler(const std::vector<std::uint64_t>& keys, const std::vector<Link>& links,
                             const std::vector<double>& log_weight, const std::vector<double>& log_root_weight)
    : keys_(keys) {
    assert(log_weight.size() == links.size() && log_root_weight.size() == keys.size());
    constexpr double most_over_root = 12.0;
    const LinkRows rows = rows_of(keys.size(), links);
    start_.assign(keys.size() + 1, 0);
    exits_.reserve(2 * links.size());
    for (std::uint32_t i = 0; i < keys.size(); ++i) {
        // in an order of the link's own, so that the arrow a number stands for does not depend on the numbering
        std::vector<std::tuple<double, std::uint64_t, std::uint32_t>> order;
        for (std::uint32_t at = rows.start[i]; at < rows.start[i + 1]; ++at) {
            const std::uint32_t e = rows.link[at];
            const std::uint32_t to = links[e].first == i ? links[e].second : links[e].first;
            order.emplace_back(links[e].length_m, keys[to], e);
        }
        std::sort(order.begin(), order.end());
        double total = std::exp(log_root_weight[i]);
        for (const auto& [length, key, e] : order) {
            const double weight = std::exp(std::min(log_weight[e], most_over_root + log_root_weight[i]));
            total += weight;
            exits_.push_back({weight, e, links[e].first == i ? links[e].second : links[e].first});
        }
        double sum = 0.0;
        for (std::size_t at = start_[i]; at < exits_.size(); ++at) {
            sum += exits_[at].up_to / total;
            exits_[at].up_to = sum;
        }
        start_[i + 1] = static_cast<std::uint32_t>(exits_.size());
    }
}

const ForestSampler::Exit* ForestSampler::choose(std::size_t mark, std::uint64_t stream, std::uint32_t turn) const {
    const double u = uniform_of(stream + turn);
    for (std::size_t at = start_[mark]; at < start_[mark + 1]; ++at)
        if (u < exits_[at].up_to) return &exits_[at];
    return nullptr;  // the root
}

Forest ForestSampler::draw(std::uint64_t draw) const {
    const std::size_t n = keys_.size();
    constexpr std::uint32_t unknown = 0xFFFFFFFFU;
    Forest forest;
    forest.arrow.assign(n, no_link);
    forest.tree.assign(n, unknown);
    std::vector<const Exit*> exit_of(n, nullptr);
    std::vector<std::uint32_t> turns(n, 0);
    std::vector<std::uint64_t> stream(n);
    for (std::size_t i = 0; i < n; ++i) stream[i] = mixed(keys_[i], draw + 1);
    for (std::uint32_t i = 0; i < n; ++i) {
        std::uint32_t at = i;
        while (forest.tree[at] == unknown) {  // walk until a finished tree or a root; later visits overwrite, which pops cycles
            exit_of[at] = choose(at, stream[at], turns[at]++);
            if (exit_of[at] == nullptr) {
                forest.tree[at] = at;
                ++forest.trees;
                break;
            }
            at = exit_of[at]->to;
        }
        const std::uint32_t root = forest.tree[at];
        for (at = i; forest.tree[at] == unknown; at = exit_of[at]->to) {
            forest.tree[at] = root;
            forest.arrow[at] = exit_of[at]->link;
        }
    }
    return forest;
}

}  // namespace plugside
