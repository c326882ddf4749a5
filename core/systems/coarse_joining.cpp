#include "core/systems/coarse_joining.h"

#include <algorithm>
#include <cassert>
#include <numeric>
#include <tuple>

#include "core/systems/disjoint_sets.h"

namespace plugside {

namespace {

// What stands between two groups.
struct Bond {
    std::uint32_t first;
    std::uint32_t second;
    float sum;
};

constexpr std::uint32_t none = 0xFFFFFFFFU;

class Agglomeration {
public:
    Agglomeration(std::size_t things, const std::vector<CoarseLink>& links, const CoarseJoiningOptions& options)
        : options_(options), groups_(things), group_(things) {
        std::iota(group_.begin(), group_.end(), 0U);
        bonds_.reserve(links.size());
        for (const CoarseLink& link : links) {
            assert(link.first < link.second && link.second < things);
            bonds_.push_back({link.first, link.second, link.score});
        }
    }

    // Joins all groups that are each other's best; whether there were any.
    bool join_mutual_bests() {
        std::vector<std::uint32_t> best(groups_, none);
        std::vector<float> strength(groups_, options_.threshold);
        for (std::uint32_t e = 0; e < bonds_.size(); ++e) {
            const float value = bonds_[e].sum;
            for (const std::uint32_t end : {bonds_[e].first, bonds_[e].second})
                if (value > strength[end]) {  // the first of equals: bonds stand by first, then second group
                    strength[end] = value;
                    best[end] = e;
                }
        }
        DisjointSets joined(groups_);
        bool any = false;
        for (std::uint32_t e = 0; e < bonds_.size(); ++e)
            if (best[bonds_[e].first] == e && best[bonds_[e].second] == e)
                any |= joined.join(bonds_[e].first, bonds_[e].second);
        if (any) contract(joined);
        return any;
    }

    void join_what_is_left() {
        std::vector<std::uint32_t> order(bonds_.size());
        std::iota(order.begin(), order.end(), 0U);
        std::sort(order.begin(), order.end(), [&](std::uint32_t a, std::uint32_t b) {
            return std::tuple(-bonds_[a].sum, a) < std::tuple(-bonds_[b].sum, b);
        });
        DisjointSets joined(groups_);
        for (const std::uint32_t e : order)
            if (bonds_[e].sum > options_.threshold) joined.join(bonds_[e].first, bonds_[e].second);
        contract(joined);
    }

    [[nodiscard]] const std::vector<std::uint32_t>& labels() const { return group_; }

private:
    // Groups that were joined become one, and the bonds between the same two groups one bond.
    void contract(DisjointSets& joined) {
        const std::vector<std::uint32_t> merged = joined.labels();
        groups_ = merged.empty() ? 0 : *std::max_element(merged.begin(), merged.end()) + 1U;
        for (std::uint32_t& group : group_) group = merged[group];
        for (Bond& bond : bonds_) std::tie(bond.first, bond.second) = std::minmax({merged[bond.first], merged[bond.second]});
        std::erase_if(bonds_, [](const Bond& bond) { return bond.first == bond.second; });
        sort_bonds();
        std::size_t kept = 0;
        for (const Bond& bond : bonds_) {
            if (kept > 0 && bonds_[kept - 1].first == bond.first && bonds_[kept - 1].second == bond.second) {
                bonds_[kept - 1].sum += bond.sum;
            } else {
                bonds_[kept++] = bond;
            }
        }
        bonds_.resize(kept);
    }

    // By first, then second group; equal ones by what they say, so that sums do not depend on an earlier order.
    void sort_bonds() {
        std::vector<std::uint32_t> start(groups_ + 1, 0);
        for (const Bond& bond : bonds_) ++start[bond.first + 1];
        std::partial_sum(start.begin(), start.end(), start.begin());
        std::vector<Bond> sorted(bonds_.size());
        std::vector<std::uint32_t> next(start.begin(), start.end() - 1);
        for (const Bond& bond : bonds_) sorted[next[bond.first]++] = bond;
        for (std::size_t group = 0; group < groups_; ++group)
            std::sort(sorted.begin() + start[group], sorted.begin() + start[group + 1],
                      [](const Bond& a, const Bond& b) { return std::tie(a.second, a.sum) < std::tie(b.second, b.sum); });
        bonds_.swap(sorted);
    }

    CoarseJoiningOptions options_;
    std::size_t groups_;
    std::vector<std::uint32_t> group_;
    std::vector<Bond> bonds_;
};

}  // namespace

std::optional<std::vector<std::uint32_t>> join_by_evidence(std::size_t things, std::vector<CoarseLink> links,
                                                           const CoarseJoiningOptions& options, const Progress& progress) {
    Agglomeration groups(things, links, options);
    std::vector<CoarseLink>().swap(links);
    bool more = true;
    for (int round = 0; more && round < options.most_rounds; ++round) {
        if (progress.stopped()) return std::nullopt;
        more = groups.join_mutual_bests();
    }
    if (more) groups.join_what_is_left();
    if (progress.stopped()) return std::nullopt;
    return groups.labels();
}

}  // namespace plugside
