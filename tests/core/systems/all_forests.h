// All forests of a small graph, by enumeration, and the law of NetworkChain on them.
#pragma once

#include <cmath>
#include <cstdint>
#include <vector>

#include "core/systems/disjoint_sets.h"
#include "core/systems/network_chain.h"

namespace plugside {

struct SmallGraph {
    std::uint32_t marks = 0;
    std::vector<Link> links;
    std::vector<double> log_weight;
    std::vector<double> log_root;
};

// Bit e set: link e is in the forest.
using LinkSet = std::uint32_t;

inline LinkSet set_of(const std::vector<std::uint32_t>& links) {
    LinkSet set = 0;
    for (const std::uint32_t e : links) set |= LinkSet{1} << e;
    return set;
}

inline std::vector<std::uint32_t> links_of(LinkSet set) {
    std::vector<std::uint32_t> links;
    for (std::uint32_t e = 0; set >> e != 0; ++e)
        if ((set >> e & 1U) != 0) links.push_back(e);
    return links;
}

// The weight of a set of links under the chain's law; 0 for what is no forest or breaks a hard term.
inline double forest_weight(const SmallGraph& graph, const NetworkTerms& terms, LinkSet set) {
    DisjointSets joined(graph.marks);
    double log_sum = 0.0;
    for (std::uint32_t e = 0; e < graph.links.size(); ++e) {
        const bool in = (set >> e & 1U) != 0;
        if (!in && !terms.forced.empty() && terms.forced[e]) return 0.0;
        if (!in) continue;
        if (!joined.join(graph.links[e].first, graph.links[e].second)) return 0.0;
        log_sum += graph.log_weight[e];
    }
    std::vector<double> root(graph.marks, 0.0);
    std::vector<std::uint32_t> catches(graph.marks, 0);
    for (std::uint32_t i = 0; i < graph.marks; ++i) {
        root[joined.representative(i)] += std::exp(graph.log_root[i]);
        if (!terms.catches.empty()) catches[joined.representative(i)] += terms.catches[i];
    }
    for (std::uint32_t i = 0; i < graph.marks; ++i) {
        if (root[i] > 0.0) log_sum += std::log(root[i]);
        if (catches[i] > 1) log_sum += (catches[i] - 1) * terms.log_per_extra_catch;
    }
    for (const auto& pair : terms.pairs) {
        const bool together = joined.representative(pair.first) == joined.representative(pair.second);
        if (std::isinf(pair.log_together) && together != (pair.log_together > 0.0)) return 0.0;
        if (!std::isinf(pair.log_together) && together) log_sum += pair.log_together;
    }
    return std::exp(log_sum);
}

struct AllForests {
    std::vector<LinkSet> sets;
    std::vector<double> share;  // sums to 1
};

inline AllForests all_forests(const SmallGraph& graph, const NetworkTerms& terms = {}) {
    AllForests all;
    double total = 0.0;
    for (LinkSet set = 0; set < LinkSet{1} << graph.links.size(); ++set) {
        const double weight = forest_weight(graph, terms, set);
        if (weight <= 0.0) continue;
        all.sets.push_back(set);
        all.share.push_back(weight);
        total += weight;
    }
    for (double& share : all.share) share /= total;
    return all;
}

}  // namespace plugside
