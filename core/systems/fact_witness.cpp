#include "core/systems/fact_witness.h"

#include <algorithm>
#include <cassert>
#include <limits>
#include <queue>

namespace plugside {

namespace {

constexpr int most_orders = 12;
constexpr double foreign_group_m = 1000.0;  // a path goes round marks of other groups if there is any way

}  // namespace

FactWitness::FactWitness(std::size_t marks, const std::vector<Link>& links)
    : removed(links.size(), false),
      forced(links.size(), false),
      marks_(marks),
      links_(links),
      rows_(rows_of(marks, links)),
      in_(links.size(), false),
      part_(marks),
      group_(marks) {}

std::uint32_t FactWitness::add_link(const Link& link) {
    links_.push_back(link);
    removed.push_back(false);
    forced.push_back(false);
    in_.push_back(false);
    rows_ = rows_of(marks_, links_);
    return static_cast<std::uint32_t>(links_.size() - 1);
}

std::uint32_t FactWitness::find_link(std::uint32_t a, std::uint32_t b) const {
    for (std::uint32_t k = rows_.start[a]; k < rows_.start[a + 1]; ++k) {
        const Link& link = links_[rows_.link[k]];
        if ((link.first == a ? link.second : link.first) == b) return rows_.link[k];
    }
    return no_link;
}

std::vector<bool> FactWitness::blocked_for(std::uint32_t mark) {
    std::vector<bool> blocked(marks_, false);
    const std::uint32_t own = group_.representative(mark);
    for (const Pair& pair : apart) {
        const std::uint32_t a = group_.representative(pair.first);
        const std::uint32_t b = group_.representative(pair.second);
        if (a == own) blocked[b] = true;
        if (b == own) blocked[a] = true;
    }
    return blocked;
}

void FactWitness::take(std::uint32_t link) {
    if (!part_.join(links_[link].first, links_[link].second)) return;
    group_.join(links_[link].first, links_[link].second);
    in_[link] = true;
}

bool FactWitness::shortest_path(std::uint32_t a, std::uint32_t b, const std::vector<bool>& blocked,
                                std::vector<std::uint32_t>& path) {
    using Step = std::pair<double, std::uint32_t>;
    std::vector<double> best(marks_, std::numeric_limits<double>::infinity());
    std::vector<std::uint32_t> by(marks_, no_link);
    std::priority_queue<Step, std::vector<Step>, std::greater<>> open;
    const std::uint32_t own = group_.representative(a);
    best[a] = 0.0;
    open.emplace(0.0, a);
    while (!open.empty() && open.top().second != b) {
        const auto [length, mark] = open.top();
        open.pop();
        if (length > best[mark]) continue;
        for (std::uint32_t k = rows_.start[mark]; k < rows_.start[mark + 1]; ++k) {
            const std::uint32_t e = rows_.link[k];
            if (removed[e]) continue;
            const std::uint32_t next = links_[e].first == mark ? links_[e].second : links_[e].first;
            const std::uint32_t group = group_.representative(next);
            if (blocked[group]) continue;
            const bool foreign = group != own && group != group_.representative(mark) && spoken_of_[group];
            const double there = length + (in_[e] ? 0.0 : links_[e].length_m + (foreign ? foreign_group_m : 0.0));
            if (there >= best[next]) continue;
            best[next] = there;
            by[next] = e;
            open.emplace(there, next);
        }
    }
    path.clear();
    if (open.empty()) return false;
    for (std::uint32_t mark = b; mark != a;
         mark = links_[by[mark]].first == mark ? links_[by[mark]].second : links_[by[mark]].first)
        path.push_back(by[mark]);
    return true;
}

bool FactWitness::join_pair(std::uint32_t a, std::uint32_t b) {
    if (joins(a, b)) return true;
    std::vector<bool> blocked = blocked_for(a);
    std::vector<std::uint32_t> path;
    const std::uint32_t own = group_.representative(a);
    for (int tries = 0; tries < most_orders; ++tries) {
        if (!shortest_path(a, b, blocked, path)) return false;
        std::vector<bool> on_path(marks_, false);
        for (const std::uint32_t e : path)
            for (const std::uint32_t mark : {links_[e].first, links_[e].second}) on_path[group_.representative(mark)] = true;
        bool clash = false;
        for (const Pair& pair : apart) {
            const std::uint32_t one = group_.representative(pair.first);
            const std::uint32_t other = group_.representative(pair.second);
            if (!on_path[one] || !on_path[other]) continue;
            blocked[one == own ? other : one] = true;
            clash = true;
        }
        if (clash) continue;
        for (const std::uint32_t e : path) take(e);
        return true;
    }
    return false;
}

std::optional<FactWitness::Pair> FactWitness::build(const std::vector<Pair>& order) {
    part_ = DisjointSets(marks_);
    group_ = DisjointSets(marks_);
    in_.assign(links_.size(), false);
    for (std::uint32_t e = 0; e < links_.size(); ++e)
        if (forced[e]) take(e);
    for (const Pair& pair : order) group_.join(pair.first, pair.second);
    spoken_of_.assign(marks_, false);
    for (const auto* pairs : {&same, &apart})
        for (const Pair& pair : *pairs)
            spoken_of_[group_.representative(pair.first)] = spoken_of_[group_.representative(pair.second)] = true;
    for (const Pair& pair : order)
        if (!join_pair(pair.first, pair.second)) return pair;
    return std::nullopt;
}

bool FactWitness::broken() {
    for (std::uint32_t e = 0; e < links_.size(); ++e)
        if ((in_[e] && removed[e]) || (forced[e] && !in_[e])) return true;
    return std::any_of(apart.begin(), apart.end(), [&](const Pair& pair) { return joins(pair.first, pair.second); });
}

std::optional<FactWitness::Pair> FactWitness::mend() {
    if (spoken_of_.empty()) spoken_of_.assign(marks_, false);
    if (!broken()) {
        // what is new is at the end: most facts only lengthen the forest
        bool whole = true;
        for (const Pair& pair : same) {
            if (joins(pair.first, pair.second)) continue;
            group_.join(pair.first, pair.second);
            spoken_of_[group_.representative(pair.first)] = true;
            whole = whole && join_pair(pair.first, pair.second);
        }
        if (whole && !broken()) return std::nullopt;
    }
    std::vector<Pair> order = same;
    std::optional<Pair> stuck;
    for (int tries = 0; tries < most_orders; ++tries) {
        stuck = build(order);
        if (!stuck) {
            assert(!broken());
            return std::nullopt;
        }
        const auto at = std::find_if(order.begin(), order.end(), [&](const Pair& pair) { return pair.fact == stuck->fact; });
        std::rotate(order.begin(), at, at + 1);
    }
    return stuck;
}

std::vector<std::uint32_t> FactWitness::within_reach(std::uint32_t from) {
    const std::vector<bool> blocked = blocked_for(from);
    std::vector<bool> seen(marks_, false);
    std::vector<std::uint32_t> reached(1, from);
    seen[from] = true;
    for (std::size_t at = 0; at < reached.size(); ++at)
        for (std::uint32_t k = rows_.start[reached[at]]; k < rows_.start[reached[at] + 1]; ++k) {
            const std::uint32_t e = rows_.link[k];
            const std::uint32_t next = links_[e].first == reached[at] ? links_[e].second : links_[e].first;
            if (removed[e] || seen[next] || blocked[group_.representative(next)]) continue;
            seen[next] = true;
            reached.push_back(next);
        }
    return reached;
}

}  // namespace plugside
