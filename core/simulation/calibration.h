// Whether chances that were told came true as often as they said: bins, scores, and what the scores are made of.
//
// Claim:   a chance 0..1 and whether what it was told of came true. The order of claims does not matter.
// Bins:    `equal_count_bins` cuts at the quantiles of the chances (linear between order statistics); claims equal to a cut
//          stand below it, so that equal chances never stand in two bins, and bins that are left empty by this are left
//          out.
// Error:   expected calibration error: mean over claims of |mean chance - share that came true| of their bin. Chance alone
//          gives even perfect claims an error above 0: `error_of_perfect_claims` is about what to expect of it (normal
//          approximation).
// Scores:  Brier: mean of (chance - came true)^2. Log: mean of -log of the chance given to what happened, natural
//          logarithm, chances held within `least_chance` .. 1 - least_chance, since shares of finite draws can be 0 and 1.
// Parts:   score = reliability - resolution + uncertainty + within, exactly. With f the mean chance and o the share that
//          came true of a bin, b the share over all: Brier: mean (f - o)^2, mean (o - b)^2, b (1 - b); log: mean divergence
//          of o from f, mean divergence of o from b, entropy of b. `within` is what binning hides: the spread of chances
//          inside the bins.
// Degenerate input: no claim: no bin, every figure 0. Fewer claims than bins: a bin each.
// Precondition: chances are 0..1, asserted.
// Cost:    O(n log n).
// Source:  Murphy 1973, J. Applied Meteorology 12:595-600; within: Stephenson, Coelho & Jolliffe 2008, Weather and
//          Forecasting 23:752-757; log: Weijs, van Nooijen & van de Giesen 2010, Monthly Weather Review 138:3387-3399 (all
//          three [memory]).
#pragma once

#include <cstddef>
#include <vector>

#include "core/outcome/intervals.h"

namespace plugside {

struct Claim {
    double chance = 0.0;
    bool came_true = false;
};

struct ReliabilityBin {
    Share came_true;
    double mean_chance = 0.0;
    double least = 0.0;  // chance in the bin
    double greatest = 0.0;
    Interval band;  // Wilson, 95 in 100, for the share that came true, as if claims were independent
};

struct ScoreParts {
    double score = 0.0;
    double reliability = 0.0;
    double resolution = 0.0;
    double uncertainty = 0.0;
    double within = 0.0;
};

struct Calibration {
    std::size_t claims = 0;
    double mean_chance = 0.0;
    double share_true = 0.0;
    std::vector<ReliabilityBin> bins;
    double expected_error = 0.0;
    double error_of_perfect_claims = 0.0;
    ScoreParts brier;
    ScoreParts log;
};

struct CalibrationOptions {
    std::size_t bins = 10;
    double least_chance = 0.001;  // for the log score: below what a few hundred draws can tell from 0
};

[[nodiscard]] std::vector<ReliabilityBin> equal_count_bins(std::vector<Claim> claims, std::size_t bins);

[[nodiscard]] Calibration calibration_of(std::vector<Claim> claims, const CalibrationOptions& options = {});

}  // namespace plugside
