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
        for (const CoMembership::Near& near : row) index.expected_together += 0.5 * near.share;
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

std::vector<std::uint32_t> best_cut(const Table& table, const ExpectedIndex& index, GroupCount groups) {
    Agglomeration agglomeration(table);
    std::vector<Agglomeration::Merge> merges;
    double pairs = 0.0;
    double shares = 0.0;
    double best = -2.0;  // below any index
    std::size_t best_merges = 0;
    Agglomeration::Merge merge;
    if (table.size() <= groups.high) best = index.of(0.0, 0.0);
    while (table.size() - merges.size() > groups.low && agglomeration.next(merge)) {
        merges.push_back(merge);
        pairs += merge.pairs;
        shares += merge.shares;
        const double now = index.of(pairs, shares);
        const bool too_many = table.size() - merges.size() > groups.high;
        if (now > best || too_many) {
            best = too_many ? best : now;
            best_merges = merges.size();
        }
    }
    DisjointSets joined(table.size());
    for (std::size_t i = 0; i < best_merges; ++i) joined.join(merges[i].into, merges[i].from);
    return joined.labels();
}

// Single marks move to the group that raises the expected index most; a group never empties.
class Polisher {
public:
    Polisher(const Table& table, const ExpectedIndex& index, std::vector<std::uint32_t>& label)
        : table_(table), index_(index), label_(label) {
        std::uint32_t groups = 0;
        for (const std::uint32_t l : label_) groups = std::max(groups, l + 1);
        size_.assign(groups, 0.0);
        for (const std::uint32_t l : label_) ++size_[l];
        for (const double size : size_) pairs_ += 0.5 * size * (size - 1.0);
        for (std::uint32_t a = 0; a < table_.size(); ++a)
            for (const CoMembership::Near& near : table_[a])
                if (label_[near.mark] == label_[a]) shares_ += 0.5 * near.share;
    }

    void run(int sweeps) {
        for (int sweep = 0; sweep < sweeps; ++sweep) {
            bool moved = false;
            for (std::uint32_t a = 0; a < table_.size(); ++a) moved = improve(a) || moved;
            if (!moved) break;
        }
    }
    [[nodiscard]] double expected_index() const { return index_.of(pairs_, shares_); }

private:
    bool improve(std::uint32_t a) {
        std::vector<std::pair<std::uint32_t, double>> to;  // group, shares with it
        for (const CoMembership::Near& near : table_[a]) {
            const std::uint32_t group = label_[near.mark];
            const auto found = std::find_if(to.begin(), to.end(), [&](const auto& entry) { return entry.first == group; });
            if (found == to.end())
                to.emplace_back(group, near.share);
            else
                found->second += near.share;
        }
        const std::uint32_t from = label_[a];
        if (size_[from] <= 1.0) return false;
        double with_own = 0.0;
        for (const auto& [group, share] : to)
            if (group == from) with_own = share;
        const double pairs_without = pairs_ - (size_[from] - 1.0);
        const double shares_without = shares_ - with_own;
        double best = index_.of(pairs_, shares_) + 1e-12;
        std::uint32_t best_group = from;
        double best_pairs = pairs_;
        double best_shares = shares_;
        const auto consider = [&](std::uint32_t group, double pairs, double shares) {
            const double value = index_.of(pairs, shares);
            if (value <= best) return;
            best = value;
            best_group = group;
            best_pairs = pairs;
            best_shares = shares;
        };
        for (const auto& [group, share] : to)
            if (group != from) consider(group, pairs_without + size_[group], shares_without + share);
        if (best_group == from) return false;
        --size_[from];
        ++size_[best_group];
        label_[a] = best_group;
        pairs_ = best_pairs;
        shares_ = best_shares;
        return true;
    }

    const Table& table_;
    const ExpectedIndex& index_;
    std::vector<std::uint32_t>& label_;
    std::vector<double> size_;
    double pairs_ = 0.0;
    double shares_ = 0.0;
};

}  // namespace

Consensus consensus_of(const Table& table, GroupCount groups) {
    Consensus consensus;
    if (table.empty()) return consensus;
    if (table.size() == 1) return {{0}, 1, 1.0};
    const ExpectedIndex index = index_of(table);
    consensus.label = best_cut(table, index, groups);
    Polisher polisher(table, index, consensus.label);
    polisher.run(6);
    consensus.expected_index = polisher.expected_index();
    std::vector<std::uint32_t> renamed(table.size(), no_group);
    for (std::uint32_t& label : consensus.label) {
        if (renamed[label] == no_group) renamed[label] = consensus.groups++;
        label = renamed[label];
    }
    return consensus;
}

}  // namespace plugside
