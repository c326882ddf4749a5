// The chain's redraws: the links of a block of marks afresh, given all links outside it. See network_chain.h.
//
// The marks that links outside the block hold together are groups; the law of the block's links, given the others and
// without pairs and catches, is that of rooted forests over the groups, a group's root weight being the sum over its marks.
#include <algorithm>
#include <cmath>

#include "core/systems/network_chain.h"

namespace plugside {

namespace {

constexpr std::uint32_t unseen = 0xFFFFFFFFU;

}  // namespace

// The first marks about a mark drawn evenly, nearest in steps over candidate links: the same from every forest.
void NetworkChain::choose_block(std::size_t most_marks) {
    ++block_stamp_;
    block_.assign(1, below(degree_.size()));
    in_block_[block_[0]] = block_stamp_;
    if (most_marks == degree_.size()) {
        for (std::uint32_t i = 0; i < degree_.size(); ++i)
            if (i != block_[0]) block_.push_back(i);
        std::fill(in_block_.begin(), in_block_.end(), block_stamp_);
    }
    for (std::size_t at = 0; at < block_.size() && block_.size() < most_marks; ++at)
        for (std::uint32_t k = rows_.start[block_[at]]; k < rows_.start[block_[at] + 1] && block_.size() < most_marks; ++k) {
            const std::uint32_t next = other(rows_.link[k], block_[at]);
            if (in_block_[next] == block_stamp_) continue;
            in_block_[next] = block_stamp_;
            block_.push_back(next);
        }
    block_links_.clear();
    old_links_.clear();
    for (const std::uint32_t mark : block_)
        for (std::uint32_t k = rows_.start[mark]; k < rows_.start[mark + 1]; ++k) {
            const std::uint32_t e = rows_.link[k];
            const std::uint32_t far = other(e, mark);
            if (far < mark || in_block_[far] != block_stamp_ || forced(e)) continue;
            block_links_.push_back(e);
            if (in_[e]) old_links_.push_back(e);
        }
}

// Groups of the forest without the block's links, over all trees that the block touches.
void NetworkChain::group_what_stays() {
    members_.clear();
    group_start_.assign(1, 0);
    group_sums_.clear();
    old_labels_.clear();
    const std::uint32_t stamp = ++now_;
    side_stamp_ = stamp;
    for (const std::uint32_t from : block_) {
        if (stamp_[from] == stamp) continue;
        const auto group = static_cast<std::uint32_t>(group_sums_.size());
        Sums sums;
        stamp_[from] = stamp;
        members_.push_back(from);
        for (std::size_t at = group_start_.back(); at < members_.size(); ++at) {
            const std::uint32_t mark = members_[at];
            group_of_[mark] = group;
            const Sums own = sums_of_mark(mark);
            sums.root += own.root;
            sums.marks += own.marks;
            sums.catches += own.catches;
            sums.spoken_of += own.spoken_of;
            for (std::uint32_t k = rows_.start[mark]; k < rows_.start[mark] + degree_[mark]; ++k) {
                const std::uint32_t next = other(joined_[k], mark);
                if (stamp_[next] == stamp) continue;
                stamp_[next] = stamp;
                members_.push_back(next);
            }
        }
        group_start_.push_back(static_cast<std::uint32_t>(members_.size()));
        group_sums_.push_back(sums);
        old_labels_.push_back(tree_[from]);
    }
    std::sort(old_labels_.begin(), old_labels_.end());
    old_labels_.erase(std::unique(old_labels_.begin(), old_labels_.end()), old_labels_.end());
}

void NetworkChain::gather_exits() {
    exit_start_.assign(group_sums_.size() + 1, 0);
    for (const std::uint32_t e : block_links_) {
        if (group_of_[ends_[e].a] == group_of_[ends_[e].b]) continue;
        ++exit_start_[group_of_[ends_[e].a] + 1];
        ++exit_start_[group_of_[ends_[e].b] + 1];
    }
    for (std::size_t g = 1; g < exit_start_.size(); ++g) exit_start_[g] += exit_start_[g - 1];
    exits_.resize(exit_start_.back());
    way_.assign(exit_start_.begin(), exit_start_.end() - 1);
    for (const std::uint32_t e : block_links_) {
        const std::uint32_t a = group_of_[ends_[e].a];
        const std::uint32_t b = group_of_[ends_[e].b];
        if (a == b) continue;
        exits_[way_[a]++] = {weight_[e], e, b};
        exits_[way_[b]++] = {weight_[e], e, a};
    }
    for (std::size_t g = 0; g < group_sums_.size(); ++g) {
        double sum = group_sums_[g].root;
        for (std::uint32_t k = exit_start_[g]; k < exit_start_[g + 1]; ++k) {
            sum += exits_[k].weight;
            exits_[k].weight = sum;  // cumulative from here on; what lies below the first is the root's
        }
    }
}

// Wilson's algorithm: way_ holds each group's exit (or unseen at a root), root_of_group_ its root.
void NetworkChain::draw_groups() {
    const std::size_t groups = group_sums_.size();
    way_.assign(groups, unseen);
    root_of_group_.assign(groups, unseen);
    for (std::uint32_t from = 0; from < groups; ++from) {
        std::uint32_t at = from;
        while (root_of_group_[at] == unseen) {
            const std::uint32_t begin = exit_start_[at];
            const std::uint32_t end = exit_start_[at + 1];
            const double total = begin == end ? group_sums_[at].root : exits_[end - 1].weight;
            const double u = uniform() * total;
            way_[at] = unseen;
            if (u < group_sums_[at].root || begin == end) {
                root_of_group_[at] = at;
                break;
            }
            std::uint32_t k = begin;
            while (k + 1 < end && exits_[k].weight <= u) ++k;
            way_[at] = k;
            at = exits_[k].to;
        }
        const std::uint32_t root = root_of_group_[at];
        for (at = from; root_of_group_[at] == unseen; at = exits_[way_[at]].to) root_of_group_[at] = root;
    }
}

// The log ratio of what pairs and catches say of the drawn forest and of the old one.
double NetworkChain::terms_ratio() {
    double change = 0.0;
    if (terms_.log_per_extra_catch != 0.0) {
        for (const std::uint32_t label : old_labels_) change -= catch_term(sums_[label].catches);
        exit_start_.assign(group_sums_.size(), 0);
        for (std::size_t g = 0; g < group_sums_.size(); ++g) exit_start_[root_of_group_[g]] += group_sums_[g].catches;
        for (const std::uint32_t catches : exit_start_) change += catch_term(catches);
    }
    for (const std::uint32_t mark : members_)
        for (std::uint32_t k = pair_start_[mark]; k < pair_start_[mark + 1]; ++k) {
            const std::uint32_t far = pair_of_[k].first;
            if (far < mark || stamp_[far] != side_stamp_) continue;  // a tree out of the block's reach stays apart
            const bool before = tree_[mark] == tree_[far];
            const bool after = root_of_group_[group_of_[mark]] == root_of_group_[group_of_[far]];
            if (before != after) change += after ? pair_of_[k].second : -pair_of_[k].second;
        }
    return change;
}

void NetworkChain::take_drawn() {
    for (const std::uint32_t k : way_)
        if (k != unseen) attach(exits_[k].link);
    for (const std::uint32_t label : old_labels_) free_labels_.push_back(label);
    const std::size_t groups = group_sums_.size();
    for (std::uint32_t g = 0; g < groups; ++g)
        if (root_of_group_[g] == g) way_[g] = new_label(Sums{});
    for (std::uint32_t g = 0; g < groups; ++g) {
        const std::uint32_t label = way_[root_of_group_[g]];
        Sums& sums = sums_[label];
        sums.root += group_sums_[g].root;
        sums.marks += group_sums_[g].marks;
        sums.catches += group_sums_[g].catches;
        sums.spoken_of += group_sums_[g].spoken_of;
        for (std::uint32_t at = group_start_[g]; at < group_start_[g + 1]; ++at) tree_[members_[at]] = label;
    }
}

bool NetworkChain::redraw(std::size_t most_marks) {
    if (degree_.empty()) return false;
    choose_block(most_marks);
    for (const std::uint32_t e : old_links_) detach(e);
    group_what_stays();
    gather_exits();
    draw_groups();
    if (accept(terms_ratio())) {
        take_drawn();
        return true;
    }
    for (const std::uint32_t e : old_links_) attach(e);
    return false;
}

}  // namespace plugside
