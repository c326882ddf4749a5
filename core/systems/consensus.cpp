#include "core/systems/consensus.h"

#include <algorithm>
#include <queue>
#include <tuple>
#include <unordered_map>

#include "core/systems/disjoint_sets.h"

namespace plugside {

namespace {

using Table = std::vector<std::vector<CoMembership::Near>>;
constexpr std::uint32_t no_group = 0xFFFFFFFFU;

// The adjusted Rand index of expected pair counts, from what a partition puts together.
struct ExpectedIndex {
    double all_pairs = 0.0;
    double expected_together = 0.0;  // sum of shares over all pairs

    [[nodiscard]] double of(double pairs_together, double shares_together) const {
        const double by_chance = pairs_together * expected_together / all_pairs;
        const double most = 0.5 * (pairs_together + expected_together);
        return most - by_chance <= 1e-12 ? 1.0 : (shares_together - by_chance) / (most - by_chance);
    }
};

ExpectedIndex index_of(const Table& table) {
    ExpectedIndex index;
    const auto n = static_cast<double>(table.size());
    index.all_pairs = 0.5 * n * (n - 1.0);
    for (const auto& row : table)
        for (const CoMembership::Near& near : row) index.expected_together += 0.5 * std::clamp(near.share, 0.0, 1.0);
    return index;
}

// Average linkage: merges in order of the highest mean share between groups.
class Agglomeration {
public:
    explicit Agglomeration(const Table& table) : shares_(table.size()), size_(table.size(), 1) {
        for (std::uint32_t a = 0; a < table.size(); ++a)
            for (const CoMembership::Near& near : table[a]) {
                shares_[a].emplace(near.mark, near.share);
                if (a < near.mark) queue_.emplace(near.share, a, near.mark);
            }
    }

    struct Merge {
        std::uint32_t into = 0, from = 0;
        double pairs = 0.0, shares = 0.0;
    };
    // Nothing left to merge: false.
    bool next(Merge& merge) {
        while (!queue_.empty()) {
            auto [mean, a, b] = queue_.top();
            queue_.pop();
            if (size_[a] == 0 || size_[b] == 0) continue;
            const auto found = shares_[a].find(b);
            if (found == shares_[a].end() || mean != found->second / pairs_between(a, b)) continue;  // out of date
            if (shares_[a].size() < shares_[b].size()) std::swap(a, b);
            merge = {a, b, pairs_between(a, b), found->second};
            join(a, b);
            return true;
        }
        return false;
    }

private:
    [[nodiscard]] double pairs_between(std::uint32_t a, std::uint32_t b) const {
        return static_cast<double>(size_[a]) * static_cast<double>(size_[b]);
    }

    void join(std::uint32_t a, std::uint32_t b) {
        shares_[a].erase(b);
        shares_[b].erase(a);
        for (const auto& [other, share] : shares_[b]) {
            shares_[other].erase(b);
            shares_[a][other] += share;
            shares_[other][a] += share;
        }
        shares_[b].clear();
        size_[a] += size_[b];
        size_[b] = 0;
        for (const auto& [other, share] : shares_[a]) queue_.emplace(share / pairs_between(a, other), std::min(a, other), std::max(a, other));
    }

    std::vector<std::unordered_map<std::uint32_t, double>> shares_;
    std::vector<std::uint32_t> size_;
    struct LowerMeanLater {
        bool operator()(const std::tuple<double, std::uint32_t, std::uint32_t>& a,
                        const std::tuple<double, std::uint32_t, std::uint32_t>& b) const {
            if (std::get<0>(a) != std::get<0>(b)) return std::get<0>(a) < std::get<0>(b);
            return std::tie(std::get<1>(a), std::get<2>(a)) > std::tie(std::get<1>(b), std::get<2>(b));
        }
    };
    std::priority_queue<std::tuple<double, std::uint32_t, std::uint32_t>,
                        std::vector<std::tuple<double, std::uint32_t, std::uint32_t>>, LowerMeanLater>
        queue_;
};

std::vector<std::uint32_t> groups_by_linkage(const Table& table, double least_share) {
    Agglomeration agglomeration(table);
    Agglomeration::Merge merge;
    DisjointSets joined(table.size());
    while (agglomeration.next(merge) && merge.shares >= least_share * merge.pairs) joined.join(merge.into, merge.from);
    return joined.labels();
}

// Single marks move to the group with which they have most more than the least share; a group never empties. True if one moved.
bool move_single_marks(const Table& table, double least_share, std::vector<double>& size, std::vector<std::uint32_t>& label) {
    bool moved = false;
    std::vector<std::pair<std::uint32_t, double>> with;  // group, shares with it
    for (std::uint32_t a = 0; a < table.size(); ++a) {
        const std::uint32_t from = label[a];
        if (size[from] <= 1.0) continue;
        with.clear();
        double best = -least_share * (size[from] - 1.0);
        for (const CoMembership::Near& near : table[a]) {
            const std::uint32_t group = label[near.mark];
            if (group == from) best += near.share;
            const auto found = std::find_if(with.begin(), with.end(), [&](const auto& entry) { return entry.first == group; });
            if (found == with.end())
                with.emplace_back(group, near.share);
            else
                found->second += near.share;
        }
        best += 1e-12;
        std::uint32_t to = from;
        for (const auto& [group, shares] : with) {
            const double gain = shares - least_share * size[group];
            if (group == from || gain <= best) continue;
            best = gain;
            to = group;
        }
        if (to == from) continue;
        --size[from];
        ++size[to];
        label[a] = to;
        moved = true;
    }
    return moved;
}

double index_claimed(const Table& table, const std::vector<std::uint32_t>& label, const std::vector<double>& size) {
    double pairs = 0.0;
    double shares = 0.0;
    for (const double marks : size) pairs += 0.5 * marks * (marks - 1.0);
    for (std::uint32_t a = 0; a < table.size(); ++a)
        for (const CoMembership::Near& near : table[a])
            if (label[near.mark] == label[a]) shares += 0.5 * std::clamp(near.share, 0.0, 1.0);
    return index_of(table).of(pairs, shares);
}

}  // namespace

Consensus consensus_of(const Table& table, double least_share) {
    constexpr int most_sweeps = 6;
    Consensus consensus;
    if (table.empty()) return consensus;
    if (table.size() == 1) return {{0}, 1, 1.0};
    consensus.label = groups_by_linkage(table, least_share);
    std::vector<double> size(table.size(), 0.0);
    for (const std::uint32_t l : consensus.label) ++size[l];
    for (int sweep = 0; sweep < most_sweeps && move_single_marks(table, least_share, size, consensus.label);) ++sweep;
    consensus.expected_index = index_claimed(table, consensus.label, size);
    std::vector<std::uint32_t> renamed(table.size(), no_group);
    for (std::uint32_t& label : consensus.label) {
        if (renamed[label] == no_group) renamed[label] = consensus.groups++;
        label = renamed[label];
    }
    return consensus;
}

}  // namespace plugside
