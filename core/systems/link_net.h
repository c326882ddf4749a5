// Log weights of candidate links and of systems' roots from what lies about them: a small net whose messages go between links that
// share a mark, around triangles and across crossings; learnt on simulated fields (resources/network_weights.txt says which).
//
// Result:  for each link the log weight of a run along it, for each mark that of being the root of its system, such that a weighted
//          random forest (forest_sampler.h) with these weights falls into the true systems with the highest likelihood: the net was
//          learnt by the exact likelihood of the true partition, a ratio of determinants (forest_matrix.h).
// Shape:   a state of 24 numbers a link, 12 a mark; four rounds. In each, every mark adds up its links' gated values as vectors: times
//          cos and sin of 0..4 times the link's direction; every link reads the sums of both ends in its own direction, so that a
//          turned field gives the same weights; every mark hears the mean of what the 128 marks about it make of their sums,
//          which tells what kind of field this is hereabouts.
// Values:  link weights within (-8, 8), root weights within (-4, 4), rounded to 1/1024 so that the order in which floats are summed
//          hardly shows.
// Locality: a weight depends on marks within four times their surroundings only.
// Cost:    about 9,000 multiplications a link and round; two threads.
// Errors:  the resource is part of the program: what does not parse asserts.
#pragma once

#include <array>
#include <string_view>
#include <vector>

#include "core/plan/progress.h"
#include "core/systems/link_net_input.h"

namespace plugside {

// A layer y = W x + b, kept by inputs: weight[input * outputs + output].
struct DenseLayer {
    std::size_t inputs = 0;
    std::size_t outputs = 0;
    std::vector<float> weight;
    std::vector<float> bias;  // empty: none
};

struct LinkNetRound {
    DenseLayer gates, values;    // state -> 8 each, summed at marks
    DenseLayer surroundings;     // sums and old mark state -> 12, averaged over the marks that surround each
    DenseLayer mark;             // sums, old mark state and that average -> mark state
    DenseLayer triangle_gates, triangle_values;
    DenseLayer crossing;
    DenseLayer own, end_one, end_other, around;  // to the hidden numbers: own state; what the ends read; triangles and crossings
    DenseLayer out;
};

struct LinkNetWeights {
    std::vector<float> link_mean, link_sd, mark_mean, mark_sd;
    DenseLayer link_in, mark_in;
    std::vector<LinkNetRound> rounds;
    DenseLayer hidden, score, root;
};

[[nodiscard]] LinkNetWeights parse_link_net(std::string_view text);

struct LinkScores {
    std::vector<double> log_weight;  // of each link
    std::vector<double> log_root;    // of each mark
};

[[nodiscard]] LinkScores link_scores(const LinkNetInput& input, const LinkNetWeights& weights, const Progress& progress = {});

}  // namespace plugside
