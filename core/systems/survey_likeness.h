// Whether a survey looks like the made-up fields that the inference was learnt on: a check of the data against what the
// model knows.
//
// Values:  nearest_m             median distance from a mound to its nearest, metres (25 where no other lies within reach)
//          nearest_variation     standard deviation of these distances over their mean
//          second_over_nearest, eighth_over_second   ratios of the medians of first, second, eighth distances
//          fans_read             share of mounds with a fan
//          along_fans            of the two nearest mounds of each mound with a fan, the share within 45 degrees of the
//                                fan's axis; a half when fans say nothing
//          fans_agree            mean over mounds with a fan of the cosine of twice the angle between its fan and
//                                that of the nearest mound with one: 1 along one line, 0 at random
//          straightness          mean cosine of the turn between a mound's two best links (1 = straight on)
//          loners                share of mounds whose best link scores below 0
//          best_spread           standard deviation of the mounds' best scores
//          undecided             mean entropy of the links' own chances, bits
//          links_a_mound         mean over mounds of the summed chances of their links
//          tails                 log ratio of the .9 to the .5 quantile of spanning forest links
// Whole:   besides, how far all of them together lie from the middle of the fields that were learnt from: the square root
//          of the mean squared, uncorrelated deviation (a Mahalanobis distance over the root of the number of values), on
//          scales of their own (to_likeness_scale).
// Contrast: besides, a weighted sum of along_fans, fans_agree, straightness and undecided that sets ordinary fields apart
//          best (Fisher's linear discriminant) from the same fields with fans at random, and one from places and fans at
//          random.
// Limits:  learnt by tests/training/learn_likeness for three sizes of survey, as resources/survey_likeness.tsv says: so
//          wide that of a hundred fields about one lies outside some limit (42 of 3,597 fresh ones; of kinds that the
//          limits were not learnt on 88 of 3,597, 40 of them rows along an edge, which the other kinds have nothing
//          like). Fans at random are found out in 20, 29 and 44 of 100 fields of the three sizes, places and fans at
//          random in 18, 28 and 56: such a survey cannot be told from the least telling of the fields that were learnt
//          from, so that silence proves nothing. What a limit is for is the range, not the chance: a survey outside may
//          still be planned well, one inside badly.
// Degenerate input: fewer than 30 marks, or no link: nothing is told, since such a survey can look like anything.
// Errors:  the resource is part of the program: what does not parse asserts.
// Cost:    O(links log links).
// Source:  the idea: posterior predictive checks, Gelman, Meng & Stern 1996 [memory]; the summaries are our own.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/systems/field_summary.h"
#include "core/systems/link_net.h"

namespace plugside {

inline constexpr std::size_t likeness_value_count = 13;
using LikenessValues = std::array<double, likeness_value_count>;

[[nodiscard]] const std::array<std::string_view, likeness_value_count>& likeness_value_names();

// Nothing where nothing can be told. `summary` of the same marks, links and scores.
[[nodiscard]] std::optional<LikenessValues> likeness_values(const std::vector<Mark>& marks, const std::vector<Link>& links,
                                                            const LinkScores& scores, const FieldSummary& summary);

// Of surveys up to `most_marks` marks (the last: and of larger ones).
struct LikenessLimits {
    std::size_t most_marks = 0;
    LikenessValues low{};
    LikenessValues high{};
    LikenessValues middle{};
    std::array<LikenessValues, likeness_value_count> whitening{};  // rows: uncorrelated deviations of variance 1
    double whole = 0.0;                                            // the most that is alike
    struct Contrast {
        LikenessValues weight{};
        double most = 0.0;  // that is alike, of the weighted sum of deviations from the middles
    };
    Contrast fans_at_random, places_at_random;
};

[[nodiscard]] double contrast_of(const LikenessValues& values, const LikenessLimits& limits,
                                 const LikenessLimits::Contrast& contrast);

// Where a value stands on the scale on which its spread is reckoned: lengths, ratios and spreads in logs (those below .001
// as that), shares and cosines as they are. And back.
[[nodiscard]] double to_likeness_scale(std::size_t value_index, double value);
[[nodiscard]] double from_likeness_scale(std::size_t value_index, double scaled);

[[nodiscard]] double distance_from_middle(const LikenessValues& values, const LikenessLimits& limits);

[[nodiscard]] std::vector<LikenessLimits> parse_likeness_limits(std::string_view text);
[[nodiscard]] std::string to_text(const std::vector<LikenessLimits>& limits);
// Those built into the program.
[[nodiscard]] const std::vector<LikenessLimits>& learnt_likeness_limits();

// A sentence for each value outside its limits, the farthest outside first, two at most; where none is, one for a contrast
// beyond its limit (places first), else for the whole. Empty: the survey is like what was learnt from.
[[nodiscard]] std::vector<std::string> unlike_sentences(const LikenessValues& values, std::size_t marks,
                                                        const std::vector<LikenessLimits>& limits);

}  // namespace plugside
