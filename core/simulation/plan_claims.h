// Every chance that a plan and its posterior tell about a simulated field, each with whether it came true.
//
// What "true" means:
//   links      a candidate link's share of the drawn forests: the two marks are joined (TrueLinks).
//   runs       the presence of a main run in the plan: the same, for its two mounds.
//   pairs      the share of draws in which two marks hang together: both mounds are truly of one system. Every pair that met
//              in some draw, and every candidate link's pair (the 11 nearest) that never met, with chance 0.
//   plug_side, between_mounds
//              a ladder's chance of a hit: TrueGround::try_ladder hits.
//   systems    the chance that all marks of a system of the plan are one animal's: they are. A system of one mark claims
//              nothing.
//   belongs    the mean chance that a mound is one animal's with the others of its system: it is with one of them, drawn
//              evenly, so that the share that comes true is the mean share. A mound alone claims nothing.
// Another digger's mark among those that were used is of no system and joined to nothing.
// Degenerate input: a plan without systems claims nothing.
// Preconditions: plan and posterior were made together from field.survey.
// Cost:   O(pairs log links + ladders).
#pragma once

#include <array>
#include <string_view>
#include <vector>

#include "core/plan/plan.h"
#include "core/simulation/calibration.h"
#include "core/simulation/truth.h"
#include "core/systems/system_posterior.h"

namespace plugside {

enum class ClaimKind : std::size_t { links, runs, pairs, plug_side, between_mounds, systems, belongs };
inline constexpr std::size_t claim_kinds = 7;
[[nodiscard]] std::string_view to_text(ClaimKind kind);  // "links", "runs of the plan", ...

using PlanClaims = std::array<std::vector<Claim>, claim_kinds>;  // by ClaimKind

[[nodiscard]] PlanClaims claims_of(const Plan& plan, const SystemPosterior& posterior, const SimulatedField& field);

}  // namespace plugside
