// A Markov chain over networks of runs, for what a person knows of whole systems.
//
// Law:     a forest F over the marks has the chance, up to a constant,
//            prod over links in F of exp(log_weight) x prod over its trees of (sum of exp(log_root) over the tree's marks)
//            x prod over pairs that lie in one tree of exp(log_together)
//            x prod over trees with c > 1 catches of exp((c - 1) log_per_extra_catch),
//          over the forests that hold every forced link. Without pairs and catches this is the law that ForestSampler draws
//          from, its roots summed out. log_together of +infinity: must be in one tree; of -infinity: must not.
// Moves:   each leaves the law as it is and each visits forests that obey the hard terms only, the start included:
//            toggle     a link drawn evenly: a link of the forest may go, one between two trees may come (Metropolis), one
//                       that closes a cycle comes while a link of that cycle goes, drawn in proportion to 1 / weight
//                       (Gibbs);
//            reattach   at a mark drawn evenly, one of its links gives way to another of its candidates (Metropolis);
//            place      a mark with at most two links is taken out (its two neighbours joined directly) and put back alone,
//            at the
//                       end of a link, or into a link, in proportion to the law (Gibbs);
//            redraw     the links among some ten marks about a mark are drawn afresh by Wilson's algorithm given all others,
//            and kept
//                       by what pairs and catches say (Metropolis);
//            redraw_all the same with all marks: reaches every forest from every forest, so that the chain has one law only.
// Keys:    a stream of its own from `seed`; the caller keys it (by the marks' keys) and puts marks and links in an order of
// their own. Preconditions: log weights finite, at most one link a pair of marks, `start` a forest with the forced links
// that obeys the
//          hard terms (asserts).
// Degenerate input: no mark, no link: every move does nothing.
// Cost:    O(marks of the trees touched) a move, about a microsecond on trees of fifteen marks; redraw some ten, redraw_all
// O(n + m). Source:  Metropolis et al. 1953, Geman & Geman 1984; Wilson 1996 for the redraw [memory].
#pragma once

#include <cstdint>
#include <vector>

#include "core/systems/keyed_random.h"
#include "core/systems/neighbour_graph.h"

namespace plugside {

// What is said about whole trees, and which links are there in any case.
struct NetworkTerms {
    struct Pair {
        std::uint32_t first = 0;
        std::uint32_t second = 0;
        double log_together = 0.0;  // may be infinite
        friend bool operator==(const Pair&, const Pair&) = default;
    };
    std::vector<Pair> pairs;
    std::vector<std::uint32_t> catches;  // of each mark; empty: none
    double log_per_extra_catch = 0.0;    // finite
    std::vector<bool> forced;            // of each link; empty: none
};

class NetworkChain {
public:
    enum class Move : std::uint8_t { toggle, reattach, place, redraw, redraw_all };

    NetworkChain(std::size_t marks, const std::vector<Link>& links, const std::vector<double>& log_weight,
                 const std::vector<double>& log_root, NetworkTerms terms, const std::vector<std::uint32_t>& start,
                 std::uint64_t seed);

    // One move of this kind; whether the forest was given a chance to be another one.
    bool make(Move move);
    // So many moves of mixed kinds.
    void run(std::size_t moves);
    // New weights on the same forest, e.g. when a sampler of weights is wound around this chain.
    void set_log_weights(const std::vector<double>& log_weight);

    [[nodiscard]] std::vector<std::uint32_t> links() const;  // ascending
    [[nodiscard]] std::size_t link_count() const { return link_count_; }
    [[nodiscard]] const std::vector<std::uint32_t>& tree() const { return tree_; }  // any number below the number of marks
    [[nodiscard]] bool has(std::uint32_t link) const { return in_[link]; }

private:
    struct Sums {
        double root = 0.0;
        std::uint32_t marks = 0;
        std::uint32_t catches = 0;
        std::uint32_t spoken_of = 0;  // marks that a pair speaks of
    };
    struct End {
        std::uint32_t a = 0, b = 0;
    };
    struct Split {
        Sums side, rest;
        std::uint32_t end = 0;  // the link's end on the side that was walked, the smaller one
    };
    struct Exit {
        double weight = 0.0;
        std::uint32_t link = no_link;
        std::uint32_t to = 0;
    };
    struct Placement {
        double up_to = 0.0;
        std::uint32_t link = no_link;    // none: alone
        std::uint32_t second = no_link;  // set: into the link `instead`
        std::uint32_t instead = no_link;
    };

    [[nodiscard]] double uniform();
    [[nodiscard]] std::uint32_t below(std::size_t count);
    [[nodiscard]] bool accept(double log_ratio);
    [[nodiscard]] std::uint32_t other(std::uint32_t link, std::uint32_t mark) const {
        return ends_[link].a ^ ends_[link].b ^ mark;
    }
    [[nodiscard]] bool forced(std::uint32_t link) const { return !terms_.forced.empty() && terms_.forced[link]; }
    [[nodiscard]] double catch_term(std::uint32_t catches) const {
        return catches > 1 ? (catches - 1) * terms_.log_per_extra_catch : 0.0;
    }
    [[nodiscard]] Sums sums_of_mark(std::uint32_t mark) const;

    void attach(std::uint32_t link);
    void detach(std::uint32_t link);
    std::uint32_t new_label(const Sums& sums);
    void join(std::uint32_t link);                     // two trees become one
    void cut(std::uint32_t link, const Split& split);  // one tree becomes two; the side walked last gets a new label
    void walk_tree(std::uint32_t from, std::uint32_t without);  // into side_, stamped side_stamp_
    Split split_at(std::uint32_t link);                         // leaves the smaller side in side_
    [[nodiscard]] Sums rest_of(const Sums& whole, const Sums& side, std::uint32_t from, std::uint32_t without);
    [[nodiscard]] double pairs_of_side_with(std::uint32_t label) const;

    bool toggle();
    bool swap_on_cycle(std::uint32_t link);
    bool reattach();
    [[nodiscard]] double pairs_when_hung(bool own_side_walked, std::uint32_t label, std::uint32_t old_label,
                                         std::uint32_t at);
    bool place();
    bool take_out(std::uint32_t mark);
    [[nodiscard]] double placing_factor(std::uint32_t mark, std::uint32_t label) const;
    void add_placement(double weight, std::uint32_t link, std::uint32_t second, std::uint32_t instead);
    [[nodiscard]] Placement drawn_placement();
    void list_placements(std::uint32_t mark);
    void put(std::uint32_t mark, const Placement& placement);

    bool redraw(std::size_t most_marks);
    void choose_block(std::size_t most_marks);
    void group_what_stays();
    void gather_exits();
    void draw_groups();
    [[nodiscard]] double terms_ratio();
    void take_drawn();

    std::vector<End> ends_;
    std::vector<double> weight_, log_weight_, root_;
    NetworkTerms terms_;
    std::vector<std::uint32_t> pair_start_;
    std::vector<std::pair<std::uint32_t, double>> pair_of_;  // of each mark: the other mark, log_together
    LinkRows rows_;
    std::vector<std::uint32_t> joined_, degree_;  // forest links of mark i at joined_[rows_.start[i]] onwards
    std::vector<bool> in_;
    std::size_t link_count_ = 0;
    std::vector<std::uint32_t> tree_;
    std::vector<Sums> sums_;
    std::vector<std::uint32_t> free_labels_;
    std::uint64_t state_ = 0;

    // room for walks
    std::vector<std::uint32_t> stamp_, from_link_, side_, other_side_;
    std::uint32_t now_ = 0, side_stamp_ = 0;
    std::vector<Placement> placements_;
    // room for redraws: the block, and the groups of marks that the links outside it hold together
    std::vector<std::uint32_t> block_, in_block_, block_links_, old_links_;
    std::vector<std::uint32_t> members_, group_of_, group_start_, old_labels_;
    std::vector<Sums> group_sums_;
    std::vector<std::uint32_t> exit_start_, way_, root_of_group_;
    std::vector<Exit> exits_;
    std::uint32_t block_stamp_ = 0;
};

}  // namespace plugside
