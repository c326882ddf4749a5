#include "core/simulation/rank_histogram.h"

#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <cassert>

namespace plugside {

std::size_t rank_among(double truth, const std::vector<double>& draws, Random& random) {
    const auto less = std::count_if(draws.begin(), draws.end(), [&](double draw) { return draw < truth; });
    const auto equal = std::count(draws.begin(), draws.end(), truth);
    return static_cast<std::size_t>(less) + random.below(static_cast<std::size_t>(equal) + 1);
}

double chi_square_tail(double statistic, std::size_t degrees) {
    assert(degrees >= 1 && statistic >= 0.0);
    const boost::math::chi_squared_distribution<double> distribution(static_cast<double>(degrees));
    return boost::math::cdf(boost::math::complement(distribution, statistic));
}

RankHistogram::RankHistogram(std::size_t draws, std::size_t bins)
    : possible_ranks_(draws + 1), counts_(std::clamp<std::size_t>(bins, 1, draws + 1), 0) {}

void RankHistogram::add(std::size_t rank) {
    assert(rank < possible_ranks_);
    ++counts_[rank * counts_.size() / possible_ranks_];
    ++added_;
}

double RankHistogram::expected(std::size_t bin) const {
    // first rank whose bin this is: the least r with r * bins >= bin * ranks
    const auto first = [&](std::size_t b) { return (b * possible_ranks_ + counts_.size() - 1) / counts_.size(); };
    return static_cast<double>(added_) * static_cast<double>(first(bin + 1) - first(bin)) /
           static_cast<double>(possible_ranks_);
}

RankHistogram::Evenness RankHistogram::evenness() const {
    Evenness evenness;
    evenness.degrees = counts_.size() - 1;
    if (added_ == 0 || evenness.degrees == 0) return evenness;
    for (std::size_t bin = 0; bin < counts_.size(); ++bin) {
        const double off = static_cast<double>(counts_[bin]) - expected(bin);
        evenness.statistic += off * off / expected(bin);
    }
    evenness.p_value = chi_square_tail(evenness.statistic, evenness.degrees);
    return evenness;
}

}  // namespace plugside
