// Whether several chains tell the same story, and how many independent draws theirs are worth.
//
// split_r_hat: each chain is cut in two halves; the square root of (within + between) over within. 1 when all halves look
// alike; above
//              1.01 is a warning (the source's bound).
// effective_sample_size: draws of all chains together over 1 + twice the summed autocorrelation, the sum cut by Geyer's
//              initial monotone sequence; counts chains apart from one another as few. Streams that alternate may count for
//              more than their draws, at most draws x log10(draws).
// Preconditions: chains of one length (asserts); a chain shorter than 4 says nothing.
// Degenerate input: no chain or too short: R-hat 1, size 0. All draws alike: R-hat 1, size = draws. Chains each standing
// still at a
//              value of its own: R-hat infinite, size = number of chains.
// Left out: rank-normalisation and folding; our streams are counts and shares with light tails.
// Cost:        O(draws x lags until the autocorrelation dies).
// Source:      Vehtari, Gelman, Simpson, Carpenter & Buerkner 2021, Rank-normalization, folding, and localization: an
// improved
//              R-hat, Bayesian Analysis 16; Geyer 1992, Practical Markov chain Monte Carlo, Statistical Science 7 [memory].
#pragma once

#include <vector>

namespace plugside {

using ChainDraws = std::vector<std::vector<double>>;  // of each chain, in order

[[nodiscard]] double split_r_hat(const ChainDraws& chains);
[[nodiscard]] double effective_sample_size(const ChainDraws& chains);

}  // namespace plugside
