// The cautions judged: each rule of resources/cautions.*.tsv against the map, the inferred systems, the conditions, the method and the label.
//
// Verdict:  holds; does not hold; not known, which asks for the answers that would decide it (never a guess: Kleene's three-valued logic, so that
//           a rule whose one answer already decides it asks for no more).
// Weights:  stop: with this set in it the plan is not to be handed out; hold back: wants a signed reason (work_order.h); mind: shown.
//           A stop, and a hold-back, that is not known stays open like one that holds until it is answered; a hold-back can be signed all
//           the same.
// Geometry: distances to buildings, wells, play areas are from the whole inferred system with its uncertainty (system_reach.h), with what may be one
//           with it: a chance above 1 in 20 that a run of it lies within 100 ft (30.48 m). `where` is the part of the system that is the reason.
// Not said: that anything is in order. A rule that does not hold says that this one thing does not speak against the set.
// Cost:     of a plan O(sets x rules + systems x areas x vertices near them).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/plan/plan.h"
#include "core/sets/cautions.h"
#include "core/sets/system_reach.h"
#include "core/sets/work_order.h"

namespace plugside {

enum class Verdict { holds, does_not_hold, not_known };

struct Judgement {
    std::string caution;  // id; texts by find_caution
    CautionWeight weight = CautionWeight::mind;
    Verdict verdict = Verdict::not_known;
    std::string because;               // a sentence: what decided it, or what is not known
    std::vector<Question> ask;         // only where not known
    std::optional<ReachReason> where;  // only where geometry made it hold
    std::optional<SignedOverride> signed_off;
};

// Open: holds or is not known, and no signature covers it.
[[nodiscard]] bool is_open(const Judgement& judgement);

// What a set is judged by. `method` absent: none chosen; then only what holds for every method is judged, and `method` is asked for.
struct JudgedSet {
    std::size_t set = 0;                // index into plan.sets
    std::string method;                 // id
    std::vector<Judgement> judgements;  // of every rule, in the order of the table

    [[nodiscard]] bool stopped() const;    // a stop holds
    [[nodiscard]] bool held_back() const;  // a hold-back holds that nobody signed
    [[nodiscard]] std::vector<Question> asks() const;
    // What is to be shown with it: those that hold or are not known, the weightiest first.
    [[nodiscard]] std::vector<const Judgement*> shown() const;
};

struct JudgedPlan {
    std::vector<JudgedSet> sets;  // those that stand: kept, moved or still proposed; in the order of plan.sets
    [[nodiscard]] bool has_stops() const;
    [[nodiscard]] std::vector<std::size_t> stopped() const;  // indexes into plan.sets
    [[nodiscard]] std::vector<std::size_t> held_back() const;
    // Every answer that some rule asks for, in the order of the questions, each once.
    [[nodiscard]] std::vector<Question> asks() const;
};

// `plan` was made from `survey` (whose decisions may have changed since). `now`: to judge ages and dates.
[[nodiscard]] JudgedPlan judge(const Survey& survey, const WorkOrder& work, const Plan& plan, UtcTime now,
                               const std::vector<Application>& season = {});
// One set, as in the whole; `method`: in place of the one chosen, to look what it would meet.
[[nodiscard]] JudgedSet judge_set(const Survey& survey, const WorkOrder& work, const Plan& plan, std::size_t set,
                                  UtcTime now, const std::optional<std::string>& method = {},
                                  const std::vector<Application>& season = {});

}  // namespace plugside
