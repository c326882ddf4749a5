// Confidence intervals for shares (plots still active of plots read) and counts (mounds on a plot).
//
// Units:      shares 0..1; counts >= 0. `level` is the two-sided confidence, 0 < level < 1; .95 unless the reader is told
// otherwise. Preconditions: 0 <= successes <= trials, trials >= 1; count >= 0; 0 < level < 1; anything else asserts. What a
// file or a person
//             says is checked before it comes here.
// Degenerate input: none or all of the trials give an interval that ends at 0 or 1.
// Which one:  Wilson for a share that is shown (close to its level on average); Clopper-Pearson where falling below the
// level is
//             not acceptable (it is wider); Newcombe's for a difference of two independent shares; Garwood for a count.
// Accuracy:   1e-12 relative or better, by the quantiles of Boost.Math.
// Cost:       O(1).
// Source:     Wilson 1927; Clopper & Pearson 1934; Newcombe 1998, Statistics in Medicine 17:857-872 (single share, methods 3
// and 5)
//             and 17:873-890 (difference, method 10); Garwood 1936.
#pragma once

namespace plugside {

struct Share {
    long successes = 0;
    long trials = 0;
    [[nodiscard]] double value() const { return static_cast<double>(successes) / static_cast<double>(trials); }
};

struct Interval {
    double low = 0.0;
    double high = 0.0;
    friend constexpr bool operator==(Interval, Interval) = default;
};

[[nodiscard]] Interval wilson_interval(Share share, double level = 0.95);
[[nodiscard]] Interval clopper_pearson_interval(Share share, double level = 0.95);

// For a.value() - b.value(), -1..1.
[[nodiscard]] Interval newcombe_difference_interval(Share a, Share b, double level = 0.95);

// For the mean of a Poisson count.
[[nodiscard]] Interval garwood_interval(long count, double level = 0.95);

}  // namespace plugside
