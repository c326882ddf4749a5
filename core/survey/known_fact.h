// What a person knows of the systems and says: one statement. Part of the survey, like decisions: it names marks that the
// person can see, and holds for every later plan.
//
// Kinds and what each speaks of:
//   same_system, different_systems   two marks
//   run_here                         two marks that a run joins directly, or a line drawn along the run
//   no_run_across                    a line that no run crosses
//   not_a_gopher                     one mark
//   probe_found, probe_nothing       two marks between which the probe was pushed
//   caught_here                      one mark; said once an animal caught there
// log_strength: absent: certain, obeyed in every draw. Present: how much less likely a network is that goes against it, as
//               a natural logarithm > 0 (2.3: ten times). What a probe met and where an animal was caught are never certain to mean
//               what they seem to: without a strength they take the inference's own (known_links).
// said_by, said_at: who said it and when, where known.
// Equality: all members.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/geometry/polyline.h"
#include "core/survey/mound.h"

namespace plugside {

enum class FactKind {
    same_system,
    different_systems,
    run_here,
    no_run_across,
    not_a_gopher,
    probe_found,
    probe_nothing,
    caught_here,
};

struct KnownFact {
    FactKind kind = FactKind::same_system;
    std::vector<std::string> marks;  // names of mounds
    std::optional<Polyline> line;
    std::optional<double> log_strength;
    std::string said_by;  // empty: not known
    std::optional<UtcTime> said_at;

    [[nodiscard]] bool certain() const;
    friend bool operator==(const KnownFact&, const KnownFact&) = default;
};

// "same system", "different systems", "run here", "no run across", "not a gopher", "probe found", "probe nothing", "caught
// here".
[[nodiscard]] std::string to_text(FactKind kind);
[[nodiscard]] std::optional<FactKind> fact_kind_from_text(const std::string& text);

// A sentence without its stop: "M001 and M002 are one system"; "... , likely" where it is not certain.
[[nodiscard]] std::string to_text(const KnownFact& fact);

// What is wrong with a fact's own form (too few marks, the same mark twice, no line, a strength that is none); nothing if
// all is well.
[[nodiscard]] std::optional<std::string> what_is_missing(const KnownFact& fact);

}  // namespace plugside
