#include "core/systems/network_chain.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <numeric>
#include <utility>

namespace plugside {

namespace {

constexpr std::size_t block_marks = 10;

// Rows of pairs by mark, both ways.
void sort_pairs(std::size_t marks, const std::vector<NetworkTerms::Pair>& pairs, std::vector<std::uint32_t>& start,
                std::vector<std::pair<std::uint32_t, double>>& row) {
    start.assign(marks + 1, 0);
    for (const auto& pair : pairs) {
        ++start[pair.first + 1];
        ++start[pair.second + 1];
    }
    std::partial_sum(start.begin(), start.end(), start.begin());
    row.resize(2 * pairs.size());
    std::vector<std::uint32_t> next(start.begin(), start.end() - 1);
    for (const auto& pair : pairs) {
        row[next[pair.first]++] = {pair.second, pair.log_together};
        row[next[pair.second]++] = {pair.first, pair.log_together};
    }
}

[[maybe_unused]] bool obeys(const std::vector<NetworkTerms::Pair>& pairs, const std::vector<std::uint32_t>& tree) {
    return std::all_of(pairs.begin(), pairs.end(), [&](const NetworkTerms::Pair& pair) {
        const bool together = tree[pair.first] == tree[pair.second];
        return !std::isinf(pair.log_together) || together == (pair.log_together > 0.0);
    });
}

}  // namespace

NetworkChain::NetworkChain(std::size_t marks, const std::vector<Link>& links, const std::vector<double>& log_weight,
                           const std::vector<double>& log_root, NetworkTerms terms, const std::vector<std::uint32_t>& start,
                           std::uint64_t seed)
    : terms_(std::move(terms)), rows_(rows_of(marks, links)), state_(mixed(seed)) {
    assert(log_weight.size() == links.size() && log_root.size() == marks);
    assert(terms_.catches.empty() || terms_.catches.size() == marks);
    assert(terms_.forced.empty() || terms_.forced.size() == links.size());
    for (const Link& link : links) ends_.push_back({link.first, link.second});
    for (const double q : log_root) root_.push_back(std::exp(q));
    set_log_weights(log_weight);
    std::erase_if(terms_.pairs, [](const NetworkTerms::Pair& pair) { return pair.first == pair.second; });
    sort_pairs(marks, terms_.pairs, pair_start_, pair_of_);
    joined_.resize(2 * links.size());
    degree_.assign(marks, 0);
    in_.assign(links.size(), false);
    stamp_.assign(marks, 0);
    in_block_.assign(marks, 0);
    group_of_.assign(marks, 0);
    from_link_.assign(marks, no_link);
    tree_.resize(marks);
    for (std::uint32_t i = 0; i < marks; ++i) {
        tree_[i] = i;
        sums_.push_back(sums_of_mark(i));
    }
    for (const std::uint32_t e : start) {
        assert(tree_[ends_[e].a] != tree_[ends_[e].b] && "the start is a forest");
        join(e);
    }
    for (std::uint32_t e = 0; e < links.size(); ++e) assert(!forced(e) || in_[e]);
    assert(obeys(terms_.pairs, tree_));
}

void NetworkChain::set_log_weights(const std::vector<double>& log_weight) {
    log_weight_ = log_weight;
    weight_.resize(log_weight.size());
    for (std::size_t e = 0; e < weight_.size(); ++e) weight_[e] = std::exp(log_weight[e]);
}

std::vector<std::uint32_t> NetworkChain::links() const {
    std::vector<std::uint32_t> links;
    links.reserve(link_count_);
    for (std::uint32_t e = 0; e < in_.size(); ++e)
        if (in_[e]) links.push_back(e);
    return links;
}

double NetworkChain::uniform() {
    state_ += 0x9E3779B97F4A7C15ULL;
    return static_cast<double>(mixed(state_) >> 11U) * 0x1.0p-53;
}

std::uint32_t NetworkChain::below(std::size_t count) {
    return static_cast<std::uint32_t>(std::min(uniform() * static_cast<double>(count), static_cast<double>(count - 1)));
}

bool NetworkChain::accept(double log_ratio) { return log_ratio >= 0.0 || uniform() < std::exp(log_ratio); }

NetworkChain::Sums NetworkChain::sums_of_mark(std::uint32_t mark) const {
    return {root_[mark], 1, terms_.catches.empty() ? 0 : terms_.catches[mark],
            pair_start_[mark + 1] > pair_start_[mark] ? 1U : 0U};
}

// --- the forest ---

void NetworkChain::attach(std::uint32_t link) {
    for (const std::uint32_t mark : {ends_[link].a, ends_[link].b}) joined_[rows_.start[mark] + degree_[mark]++] = link;
    in_[link] = true;
    ++link_count_;
}

void NetworkChain::detach(std::uint32_t link) {
    for (const std::uint32_t mark : {ends_[link].a, ends_[link].b}) {
        std::uint32_t at = rows_.start[mark];
        while (joined_[at] != link) ++at;
        joined_[at] = joined_[rows_.start[mark] + --degree_[mark]];
    }
    in_[link] = false;
    --link_count_;
}

std::uint32_t NetworkChain::new_label(const Sums& sums) {
    const std::uint32_t label = free_labels_.back();
    free_labels_.pop_back();
    sums_[label] = sums;
    return label;
}

void NetworkChain::join(std::uint32_t link) {
    std::uint32_t small = ends_[link].a;
    std::uint32_t large = ends_[link].b;
    if (sums_[tree_[small]].marks > sums_[tree_[large]].marks) std::swap(small, large);
    const std::uint32_t gone = tree_[small];
    const std::uint32_t stays = tree_[large];
    walk_tree(small, no_link);
    for (const std::uint32_t mark : side_) tree_[mark] = stays;
    sums_[stays].root += sums_[gone].root;
    sums_[stays].marks += sums_[gone].marks;
    sums_[stays].catches += sums_[gone].catches;
    sums_[stays].spoken_of += sums_[gone].spoken_of;
    free_labels_.push_back(gone);
    attach(link);
}

void NetworkChain::cut(std::uint32_t link, const Split& split) {
    detach(link);
    sums_[tree_[split.end]] = split.rest;
    const std::uint32_t label = new_label(split.side);
    for (const std::uint32_t mark : side_) tree_[mark] = label;
}

void NetworkChain::walk_tree(std::uint32_t from, std::uint32_t without) {
    side_stamp_ = ++now_;
    side_.assign(1, from);
    stamp_[from] = side_stamp_;
    for (std::size_t at = 0; at < side_.size(); ++at) {
        const std::uint32_t mark = side_[at];
        for (std::uint32_t k = rows_.start[mark]; k < rows_.start[mark] + degree_[mark]; ++k) {
            if (joined_[k] == without) continue;
            const std::uint32_t next = other(joined_[k], mark);
            if (stamp_[next] == side_stamp_) continue;
            stamp_[next] = side_stamp_;
            from_link_[next] = joined_[k];
            side_.push_back(next);
        }
    }
}

// Both sides are walked in turn until the smaller is done, so that cutting a twig off a large tree is cheap.
NetworkChain::Split NetworkChain::split_at(std::uint32_t link) {
    const std::uint32_t stamp_a = ++now_;
    const std::uint32_t stamp_b = ++now_;
    side_.assign(1, ends_[link].a);
    other_side_.assign(1, ends_[link].b);
    stamp_[ends_[link].a] = stamp_a;
    stamp_[ends_[link].b] = stamp_b;
    const auto step = [&](std::vector<std::uint32_t>& walked, std::size_t at, std::uint32_t stamp) {
        const std::uint32_t mark = walked[at];
        for (std::uint32_t k = rows_.start[mark]; k < rows_.start[mark] + degree_[mark]; ++k) {
            if (joined_[k] == link) continue;
            const std::uint32_t next = other(joined_[k], mark);
            if (stamp_[next] == stamp) continue;
            stamp_[next] = stamp;
            walked.push_back(next);
        }
    };
    std::size_t at = 0;
    while (true) {
        if (at == side_.size()) break;
        step(side_, at, stamp_a);
        if (at == other_side_.size()) break;
        step(other_side_, at, stamp_b);
        ++at;
    }
    const bool a_done = at == side_.size();
    if (!a_done) side_.swap(other_side_);
    side_stamp_ = a_done ? stamp_a : stamp_b;
    Split split;
    split.end = a_done ? ends_[link].a : ends_[link].b;
    for (const std::uint32_t mark : side_) {
        const Sums own = sums_of_mark(mark);
        split.side.root += own.root;
        split.side.marks += own.marks;
        split.side.catches += own.catches;
        split.side.spoken_of += own.spoken_of;
    }
    split.rest = rest_of(sums_[tree_[split.end]], split.side, other(link, split.end), link);
    return split;
}

NetworkChain::Sums NetworkChain::rest_of(const Sums& whole, const Sums& side, std::uint32_t from, std::uint32_t without) {
    Sums rest{whole.root - side.root, whole.marks - side.marks, whole.catches - side.catches,
              whole.spoken_of - side.spoken_of};
    if (side.root <= 0.5 * whole.root) return rest;
    // a difference of near numbers loses its digits: sum afresh, leaving the stamps of the side alone
    const std::uint32_t stamp = ++now_;
    other_side_.assign(1, from);
    stamp_[from] = stamp;
    rest.root = 0.0;
    for (std::size_t at = 0; at < other_side_.size(); ++at) {
        const std::uint32_t mark = other_side_[at];
        rest.root += root_[mark];
        for (std::uint32_t k = rows_.start[mark]; k < rows_.start[mark] + degree_[mark]; ++k) {
            const std::uint32_t next = other(joined_[k], mark);
            if (joined_[k] == without || stamp_[next] == stamp) continue;
            stamp_[next] = stamp;
            other_side_.push_back(next);
        }
    }
    return rest;
}

double NetworkChain::pairs_of_side_with(std::uint32_t label) const {
    double sum = 0.0;
    for (const std::uint32_t mark : side_)
        for (std::uint32_t k = pair_start_[mark]; k < pair_start_[mark + 1]; ++k)
            if (tree_[pair_of_[k].first] == label && stamp_[pair_of_[k].first] != side_stamp_) sum += pair_of_[k].second;
    return sum;
}

// --- toggle ---

bool NetworkChain::toggle() {
    if (ends_.empty()) return false;
    const std::uint32_t e = below(ends_.size());
    if (forced(e)) return false;
    const std::uint32_t a = tree_[ends_[e].a];
    const std::uint32_t b = tree_[ends_[e].b];
    if (in_[e]) {
        const Split split = split_at(e);
        double change = -log_weight_[e] + std::log(split.side.root * split.rest.root / sums_[a].root);
        change += catch_term(split.side.catches) + catch_term(split.rest.catches) - catch_term(sums_[a].catches);
        if (split.side.spoken_of > 0 && split.rest.spoken_of > 0) change -= pairs_of_side_with(a);
        if (!accept(change)) return false;
        cut(e, split);
        return true;
    }
    if (a == b) return swap_on_cycle(e);
    double change = log_weight_[e] + std::log(1.0 / sums_[a].root + 1.0 / sums_[b].root);
    change += catch_term(sums_[a].catches + sums_[b].catches) - catch_term(sums_[a].catches) - catch_term(sums_[b].catches);
    if (sums_[a].spoken_of > 0 && sums_[b].spoken_of > 0) {
        const bool a_small = sums_[a].marks <= sums_[b].marks;
        walk_tree(a_small ? ends_[e].a : ends_[e].b, no_link);
        change += pairs_of_side_with(a_small ? b : a);
    }
    if (!accept(change)) return false;
    join(e);
    return true;
}

bool NetworkChain::swap_on_cycle(std::uint32_t link) {
    walk_tree(ends_[link].a, no_link);
    placements_.clear();
    add_placement(1.0 / weight_[link], link, no_link, no_link);
    for (std::uint32_t mark = ends_[link].b; mark != ends_[link].a; mark = other(from_link_[mark], mark))
        if (!forced(from_link_[mark])) add_placement(1.0 / weight_[from_link_[mark]], from_link_[mark], no_link, no_link);
    const std::uint32_t gone = drawn_placement().link;
    if (gone == link) return false;
    detach(gone);
    attach(link);
    return true;
}

// --- reattach ---

// What pairs say to the side at `at` (walked, or else the rest of its tree) joining the tree `label`.
double NetworkChain::pairs_when_hung(bool own_side_walked, std::uint32_t label, std::uint32_t old_label, std::uint32_t at) {
    if (own_side_walked) return pairs_of_side_with(label);
    // the walked side stays behind: count from the other tree's marks to those of the old tree that are not on it
    const std::uint32_t stamp = ++now_;
    double sum = 0.0;
    other_side_.assign(1, at);
    stamp_[at] = stamp;
    for (std::size_t k = 0; k < other_side_.size(); ++k) {
        const std::uint32_t mark = other_side_[k];
        for (std::uint32_t p = pair_start_[mark]; p < pair_start_[mark + 1]; ++p)
            if (tree_[pair_of_[p].first] == old_label && stamp_[pair_of_[p].first] != side_stamp_) sum += pair_of_[p].second;
        for (std::uint32_t l = rows_.start[mark]; l < rows_.start[mark] + degree_[mark]; ++l) {
            const std::uint32_t next = other(joined_[l], mark);
            if (stamp_[next] == stamp) continue;
            stamp_[next] = stamp;
            other_side_.push_back(next);
        }
    }
    return sum;
}

bool NetworkChain::reattach() {
    if (degree_.empty()) return false;
    const std::uint32_t i = below(degree_.size());
    if (degree_[i] == 0) return false;
    // a forced link drawn is a move refused, which is even both ways
    const std::uint32_t x = joined_[rows_.start[i] + below(degree_[i])];
    const std::uint32_t e = rows_.link[rows_.start[i] + below(rows_.start[i + 1] - rows_.start[i])];
    if (in_[e] || forced(x)) return false;
    const std::uint32_t k = other(e, i);
    const std::uint32_t old = tree_[i];
    const Split split = split_at(x);
    const bool own_side_walked = split.end == i;
    double change = log_weight_[e] - log_weight_[x];
    if (tree_[k] == old) {
        const bool on_own_side = (stamp_[k] == side_stamp_) == own_side_walked;
        if (on_own_side || !accept(change)) return false;
        detach(x);
        attach(e);
        return true;
    }
    const Sums& own = own_side_walked ? split.side : split.rest;
    const Sums& left = own_side_walked ? split.rest : split.side;
    const Sums& to = sums_[tree_[k]];
    change += std::log((own.root + to.root) / to.root * (left.root / sums_[old].root));
    change += catch_term(left.catches) - catch_term(sums_[old].catches);
    change += catch_term(own.catches + to.catches) - catch_term(to.catches);
    if (own.spoken_of > 0 && left.spoken_of > 0) change -= pairs_of_side_with(old);
    if (own.spoken_of > 0 && to.spoken_of > 0) change += pairs_when_hung(own_side_walked, tree_[k], old, k);
    if (!accept(change)) return false;
    cut(x, split);
    join(e);
    return true;
}

// --- place ---

// The mark alone, its neighbours joined directly; not when that is more than the move undoes.
bool NetworkChain::take_out(std::uint32_t mark) {
    const std::uint32_t* own = joined_.data() + rows_.start[mark];
    const std::uint32_t degree = degree_[mark];
    if (degree > 2) return false;
    for (std::uint32_t k = 0; k < degree; ++k)
        if (forced(own[k])) return false;
    if (degree == 0) return true;
    const std::uint32_t first = own[0];
    const std::uint32_t a = other(first, mark);
    const std::uint32_t old = tree_[mark];
    if (degree == 2) {
        const std::uint32_t second = own[1];
        const std::uint32_t b = other(second, mark);
        std::uint32_t bridge = no_link;
        for (std::uint32_t k = rows_.start[a]; k < rows_.start[a + 1]; ++k)
            if (other(rows_.link[k], a) == b) bridge = rows_.link[k];
        if (bridge == no_link) return false;
        detach(second);
        attach(bridge);
    }
    detach(first);
    const Sums alone = sums_of_mark(mark);
    sums_[old] = rest_of(sums_[old], alone, a, no_link);
    tree_[mark] = new_label(alone);
    return true;
}

double NetworkChain::placing_factor(std::uint32_t mark, std::uint32_t label) const {
    const bool alone = label == tree_[mark];
    const Sums own = sums_of_mark(mark);
    double log_terms = 0.0;
    for (std::uint32_t k = pair_start_[mark]; k < pair_start_[mark + 1]; ++k) {
        const bool together = !alone && tree_[pair_of_[k].first] == label;
        const double log_together = pair_of_[k].second;
        if (std::isinf(log_together) && together != (log_together > 0.0)) return 0.0;
        if (!std::isinf(log_together) && together) log_terms += log_together;
    }
    if (alone) return own.root;  // its own catches stay together wherever it goes
    const Sums& to = sums_[label];
    if (own.catches > 0)
        log_terms += catch_term(own.catches + to.catches) - catch_term(to.catches) - catch_term(own.catches);
    return (1.0 + own.root / to.root) * (log_terms == 0.0 ? 1.0 : std::exp(log_terms));
}

void NetworkChain::add_placement(double weight, std::uint32_t link, std::uint32_t second, std::uint32_t instead) {
    placements_.push_back({weight + (placements_.empty() ? 0.0 : placements_.back().up_to), link, second, instead});
}

NetworkChain::Placement NetworkChain::drawn_placement() {
    const double at = uniform() * placements_.back().up_to;
    const auto chosen =
        std::find_if(placements_.begin(), placements_.end(), [&](const Placement& p) { return at < p.up_to; });
    return chosen == placements_.end() ? placements_.back() : *chosen;
}

void NetworkChain::list_placements(std::uint32_t mark) {
    placements_.clear();
    add_placement(placing_factor(mark, tree_[mark]), no_link, no_link, no_link);
    const std::uint32_t stamp = ++now_;
    for (std::uint32_t k = rows_.start[mark]; k < rows_.start[mark + 1]; ++k) {
        const std::uint32_t near = other(rows_.link[k], mark);
        stamp_[near] = stamp;
        from_link_[near] = rows_.link[k];
    }
    for (std::uint32_t k = rows_.start[mark]; k < rows_.start[mark + 1]; ++k) {
        const std::uint32_t e = rows_.link[k];
        const std::uint32_t near = other(e, mark);
        const double factor = placing_factor(mark, tree_[near]);
        if (factor == 0.0) continue;
        add_placement(weight_[e] * factor, e, no_link, no_link);
        for (std::uint32_t l = rows_.start[near]; l < rows_.start[near] + degree_[near]; ++l) {
            const std::uint32_t instead = joined_[l];
            const std::uint32_t far = other(instead, near);
            if (far < near || stamp_[far] != stamp || forced(instead)) continue;
            add_placement(weight_[e] * weight_[from_link_[far]] / weight_[instead] * factor, e, from_link_[far], instead);
        }
    }
}

void NetworkChain::put(std::uint32_t mark, const Placement& placement) {
    if (placement.link == no_link) return;
    const std::uint32_t label = tree_[other(placement.link, mark)];
    if (placement.instead != no_link) detach(placement.instead);
    attach(placement.link);
    if (placement.second != no_link) attach(placement.second);
    const Sums own = sums_of_mark(mark);
    free_labels_.push_back(tree_[mark]);
    tree_[mark] = label;
    sums_[label].root += own.root;
    sums_[label].marks += 1;
    sums_[label].catches += own.catches;
    sums_[label].spoken_of += own.spoken_of;
}

bool NetworkChain::place() {
    if (degree_.empty()) return false;
    const std::uint32_t mark = below(degree_.size());
    if (!take_out(mark)) return false;
    list_placements(mark);
    put(mark, drawn_placement());
    return true;
}

// --- all together ---

bool NetworkChain::make(Move move) {
    if (now_ > std::numeric_limits<std::uint32_t>::max() - 64) {
        std::fill(stamp_.begin(), stamp_.end(), 0U);
        now_ = 0;
    }
    switch (move) {
        case Move::toggle: return toggle();
        case Move::reattach: return reattach();
        case Move::place: return place();
        case Move::redraw: return redraw(block_marks);
        case Move::redraw_all: return redraw(degree_.size());
    }
    return false;
}

void NetworkChain::run(std::size_t moves) {
    for (std::size_t k = 0; k < moves; ++k) {
        const double u = uniform();
        make(u < 0.5 ? Move::toggle : u < 0.7 ? Move::reattach : u < 0.9 ? Move::place : Move::redraw);
    }
}

}  // namespace plugside
