// Which mounds are one animal's, how many animals there are, and which links carry a run, with their chances.
//
// Method:  candidate links between neighbouring take-offs; log weights of links and roots from the net (link_weights.h: or from the
//          first form's stages); forests drawn exactly (ForestSampler) with these tell the systems; forests drawn at several settings
//          of a common shift, which the marks of a field hardly decide, tell how many there are; the consensus partition.
// Known:   what a person said (Survey::known) is obeyed in every draw, by chains where it speaks of whole systems (network_draws.h);
//          links that it calls for are added to the candidates.
// Result:  `system` numbers 0.. by number of mounds, largest first (ties by the marks' keys), so that renumbering, moving or
//          turning the field changes nothing.
// Draws:   at most 200 are kept whole (drawn_links, drawn_system), fewer of a field above 100,000 marks, never under 20 if drawn; and
//          as many of those that tell the number (drawn_for_number), evenly of all settings.
// Degenerate input: no mark: nothing; one mark: one system, certain.
// Errors:  returns nothing when stopped.
// Cost:    near-linear in marks; two threads.
#pragma once

#include <optional>

#include "core/plan/plan.h"
#include "core/plan/progress.h"
#include "core/systems/co_membership.h"
#include "core/systems/link_weights.h"
#include "core/systems/marks.h"
#include "core/systems/network_draws.h"
#include "core/systems/survey_likeness.h"

namespace plugside {

struct SystemPosterior {
    std::vector<Mark> marks;
    std::vector<Link> links;
    std::vector<double> link_probability;      // share of draws in which the link is in the forest
    SurveyScales scales;
    SystemsEstimate estimate;
    std::vector<std::vector<CoMembership::Near>> together;  // of each mark: marks it met in some draw, with the share of draws
    std::vector<std::uint32_t> system;         // of each mark, in the consensus
    std::uint32_t systems = 0;
    std::vector<double> belongs;               // of each mark: mean share with the others of its system; 1 alone
    std::vector<double> single;                // of each system: share of draws that hold all its marks together
    std::vector<std::vector<std::uint32_t>> drawn_links;   // of each draw kept: its links, ascending
    std::vector<std::vector<std::uint32_t>> drawn_system;  // of the same draws: label of each mark's tree
    std::vector<std::vector<std::uint32_t>> drawn_for_number;  // the same of draws whose trees `estimate` counts; a plan takes them
                                                               // (Plan::drawn)
    std::optional<LikenessValues> likeness;    // to fields that were learnt from; nothing of few marks
    double expected_index = 1.0;               // adjusted Rand index that the consensus claims
    NetworkConvergence convergence;            // of the chains that facts call for; exact draws are converged by nature
    std::vector<FactConflict> conflicts;       // facts of Survey::known that were set aside, with the reason
};

// What speaks for each candidate link, before anything is drawn: weighed once, for a first look and for the whole.
struct WeighedLinks {
    std::vector<Mark> marks;
    std::vector<Link> links;
    LinkScores scores;
};
[[nodiscard]] WeighedLinks weigh_links(const Survey& survey, const PlanOptions& options, const LinkWeights& weights,
                                       const Progress& progress = {});

// first_look: a few draws, no shift foretold, the spacing read off neighbours' distances: what can be had at once. Chances are coarse.
enum class Thoroughness { first_look, whole };
[[nodiscard]] std::optional<SystemPosterior> infer_systems(const Survey& survey, const PlanOptions& options,
                                                           const LinkWeights& weights, WeighedLinks weighed,
                                                           Thoroughness thoroughness, const Progress& progress = {});
[[nodiscard]] std::optional<SystemPosterior> infer_systems(const Survey& survey, const PlanOptions& options,
                                                           const LinkWeights& weights, const Progress& progress = {});

}  // namespace plugside
