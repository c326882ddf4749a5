// What a person knows, as the inference takes it: links that are there in any case, links that cannot be, pairs of marks
// that hang together or do not, links weighed up or down, catches. And what contradicts what.
//
// same_system       a pair that must be in one tree; likely: log_together = + strength
// different_systems a pair that must not; likely: - strength
// run_here          a forced link, added to the candidates if it is none; likely: the link's log weight + strength
// no_run_across     links that meet the line (straight between the plugs) removed; likely: their log weight - strength
// probe_found, probe_nothing  the link's log weight + or - strength, without one the options' own; a link that is found is
// added caught_here       a catch at the mark; each further one in a tree costs log_per_extra_catch not_a_gopher      takes
// its mark out before there are marks: every other fact that speaks of it is set aside
//
// Contradictions: facts are taken in the order given. One that cannot hold beside those taken before it is set aside whole,
// the
//          later one always (but not_a_gopher always holds), and named with those it contradicts. A run that would close a
//          ring is set aside too: a network has none. A pair that no candidate links can join gets a link between the
//          nearest marks of the two parts; where a line or barrier forbids each such link, the pair is set aside.
// Guarantee: `witness` is a forest of candidate, added and forced links that obeys all that was taken for certain.
// Limits:  whether pairs can be joined past others that must be apart is a hard problem in general; paths are looked for
// shortest
//          first, in several orders of the pairs. So a fact may be set aside that a cleverer search would have kept; none is
//          kept wrongly.
// Degenerate input: no facts: nothing known.
// Cost:    near O(links) a fact; a pair without candidate links between looks through the marks of both parts.
#pragma once

#include <cmath>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/survey/ground.h"
#include "core/survey/known_fact.h"
#include "core/systems/network_chain.h"

namespace plugside {

// A KnownFact whose names are replaced by indexes of marks.
struct MarkFact {
    FactKind kind = FactKind::same_system;
    std::uint32_t first = no_mark;
    std::uint32_t second = no_mark;
    std::optional<Polyline> line;
    std::optional<double> log_strength;
    std::size_t fact = 0;  // index of the KnownFact
    std::string text;
};

struct FactConflict {
    std::string sentence;
    std::size_t set_aside = 0;      // index of the KnownFact
    std::vector<std::size_t> with;  // of those it contradicts, ascending; empty: the ground or the survey itself
};

struct ResolvedFacts {
    std::vector<MarkFact> facts;  // a run drawn as a line becomes one fact for each two successive marks
    std::vector<FactConflict> conflicts;
};

// `names` and `places` (plugs) of the marks. A drawn run speaks of the marks within `beside_line` of it, in their order
// along it; default: our assumption, a lateral's length and a receiver's error.
[[nodiscard]] ResolvedFacts resolved_facts(const std::vector<KnownFact>& facts, const std::vector<std::string>& names,
                                           const std::vector<LocalPoint>& places, Metres beside_line = Metres::of(1.5));

struct KnownLinksOptions {
    // 3 short sharings among 14 animals followed: a New Mexico activity study, abstract
    double log_per_extra_catch = std::log(3.0 / 14.0);
    // a row of holes between true neighbours meets the run in 92 of 100 in simulation; that one hole in 20 rows only seems
    // to: our assumption
    double log_found = std::log(0.92 / 0.05);
    double log_nothing = std::log(0.95 / 0.08);
};

struct KnownLinks {
    std::vector<Link> added;            // numbered on from the candidates; ranks are 0
    std::vector<std::uint32_t> forced;  // ascending, as are the removed
    std::vector<std::uint32_t> removed;
    std::vector<double> log_weight_change;  // of each link, candidates and added; empty: none
    std::vector<NetworkTerms::Pair> pairs;
    std::vector<std::uint32_t> catches;  // of each mark; empty: none
    double log_per_extra_catch = 0.0;
    std::vector<std::uint32_t> witness;
    std::vector<FactConflict> conflicts;
};

[[nodiscard]] KnownLinks known_links(const std::vector<LocalPoint>& places, const std::vector<Link>& links,
                                     const std::vector<MarkFact>& facts, const std::vector<Barrier>& barriers = {},
                                     const KnownLinksOptions& options = {});

}  // namespace plugside
