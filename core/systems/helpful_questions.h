// Which few questions to a person would narrow the number of animals most: are these two mounds one animal's?
//
// Worth:    of the drawn numbers of animals, those where the two hang together against those where they do not: their answer takes
//           p (1 - p) (difference of means)^2 off the variance, p the share of draws where they hang together. What an answer narrows
//           is told as the share of the interval's width that it takes away on average, 1 - sqrt(1 - share of the variance).
// Asked:    of neighbouring marks (of the eight nearest) with p between .1 and .9; the worthiest first, and no second one about the
//           same two systems. What narrows less than `least_narrowing` is not asked: with n draws chance alone gives about 1 / (2n).
// Degenerate input: fewer than 20 draws, one mark: no question.
// Cost:     O(draws x marks x 8).
// Source:   expected reduction of variance, as in the design of experiments (Lindley 1956 [memory]).
#pragma once

#include <cstddef>
#include <vector>

#include "core/plan/plan.h"
#include "core/systems/count_in_part.h"

namespace plugside {

struct HelpfulQuestion {
    std::size_t first = 0;  // mounds of the survey
    std::size_t second = 0;
    Probability one;       // that they are one animal's, as things stand
    double narrows = 0.0;  // 0..1: how much of the interval's width an answer takes away on average
};

struct QuestionOptions {
    std::size_t most = 5;
    double least_narrowing = 0.02;
};

// `plan` with its draws (Plan::drawn); without them no question.
[[nodiscard]] std::vector<HelpfulQuestion> helpful_questions(const Plan& plan, const QuestionOptions& options = {});

}  // namespace plugside
