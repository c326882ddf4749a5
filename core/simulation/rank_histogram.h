// Rank histograms: whether a sampler draws from the distribution that it says it draws from.
//
// Use:     draw a quantity from its prior, make data with it, draw from the posterior given the data; the rank of the first
//          number among `draws` independent ones of the posterior is even over 0..draws when everything is right. Many such
//          ranks make the histogram; a slope is a bias, a U draws that are too narrow, a hump draws that are too wide.
// Ties:    a number equal to some of the draws (counts do that) takes one of the ranks between them at random.
// Bins:    neighbouring ranks together, as near equal as they go; each bin's expected count is its share of the ranks.
// Test:    Pearson's chi-square against even ranks, bins - 1 degrees of freedom. Draws of one chain are not independent:
//          thin them first, or the ranks are uneven although nothing is wrong. The p-value is good from about 5 expected a
//          bin.
// Degenerate input: no rank: statistic 0, p-value 1. One bin: the same. More bins than ranks: as many as ranks.
// Precondition: rank <= draws (asserts).
// Cost:    O(draws) a rank; O(bins) the test.
// Source:  Talts, Betancourt, Simpson, Vehtari & Gelman 2018, Validating Bayesian inference algorithms with simulation-based
//          calibration, arXiv:1804.06788.
#pragma once

#include <cstddef>
#include <vector>

#include "core/simulation/random.h"

namespace plugside {

// Rank of `truth` among `draws`, 0 .. draws.size().
[[nodiscard]] std::size_t rank_among(double truth, const std::vector<double>& draws, Random& random);

// Chance that a chi-square of so many degrees of freedom exceeds `statistic`. degrees >= 1, statistic >= 0.
[[nodiscard]] double chi_square_tail(double statistic, std::size_t degrees);

class RankHistogram {
public:
    RankHistogram(std::size_t draws, std::size_t bins);

    void add(std::size_t rank);

    struct Evenness {
        double statistic = 0.0;
        std::size_t degrees = 0;
        double p_value = 1.0;
    };
    [[nodiscard]] Evenness evenness() const;

    [[nodiscard]] const std::vector<std::size_t>& counts() const { return counts_; }
    [[nodiscard]] double expected(std::size_t bin) const;
    [[nodiscard]] std::size_t ranks() const { return added_; }

private:
    std::size_t possible_ranks_;
    std::vector<std::size_t> counts_;
    std::size_t added_ = 0;
};

}  // namespace plugside
