// What else the draws leave open beside the consensus: systems that may be one animal's, a system that may be two, mounds
// that may be another's.
//
// One:      two neighbouring systems of the consensus (joined by a candidate link) are one in a draw when one tree of it
//           holds more than half of the marks of each. Told from `least_share` of the draws kept on.
// Two:      in a draw a system falls into pieces, its marks by tree; a piece is sizable with at least two marks and a
//           fifth of the system's. It is two (or more) in a draw with at least two sizable pieces. Told from
//           `least_share` on, with the likeliest split: an anchor is the mark that lies in sizable pieces most often; of
//           the draws with two sizable pieces of which one is the anchor's, the one whose parting of anchor's piece and
//           the rest differs from all the others' in the fewest marks; told is the part with fewer marks (of equals the
//           one without the anchor).
// Doubtful: a mark whose chance of belonging to its system (SystemPosterior::belongs: its mean share with the others) is
//           below `doubtful_below`, with the other system that it shares most with, by the mean share with all of that
//           one's marks, where that share is at least `least_share`.
// Order:    the most likely alternative first, the most doubtful mark first; ties by system, by mound.
// Chances:  shares of the draws that tell the systems, as calibrated as SystemPosterior::together is.
// Degenerate input: no draws, no marks, one system: nothing of what needs more.
// Cost:     O(draws x (marks + neighbouring pairs of systems) + pairs of marks that met).
#pragma once

#include "core/plan/plan.h"
#include "core/systems/system_posterior.h"

namespace plugside {

struct AlternativeOptions {
    double least_share = 0.10;    // rarer alternatives are not worth a line: our assumption
    double doubtful_below = 0.5;  // less likely there than not
};

// Indexes of the result: systems as numbered in the posterior, which a plan keeps; mounds of the survey.
[[nodiscard]] Alternatives alternatives_of(const SystemPosterior& posterior, const AlternativeOptions& options = {});

}  // namespace plugside
