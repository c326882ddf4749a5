// Which sets of a plan still matter: those that every wish of a filter lets through.
//
// undecided:   proposed only.
// cautioned:   with a caution that the map decides for this very place (those that hold at every set would let all through).
// under, at_least: chance in 100, as it is shown.
// system:      by its letter, which stays from plan to plan.
// No wish lets everything through.
// Cost: O(sets).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/plan/plan.h"

namespace plugside {

struct SetFilter {
    bool undecided = false;
    bool cautioned = false;
    std::optional<int> under;
    std::optional<int> at_least;
    std::optional<std::string> system;
    friend bool operator==(const SetFilter&, const SetFilter&) = default;
};

[[nodiscard]] bool lets_all_through(const SetFilter& filter);

[[nodiscard]] bool lets_through(const SetFilter& filter, const Plan& plan, std::size_t set, SetChoice choice);

// Indexes into plan.sets, ascending. `choices`: of each of plan.sets.
[[nodiscard]] std::vector<std::size_t> sets_through(const SetFilter& filter, const Plan& plan,
                                                    const std::vector<SetChoice>& choices);

}  // namespace plugside
