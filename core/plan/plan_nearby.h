// What changes about a mound that is being moved or a line that is being drawn, while the hand is still on it: a first look
// at the marks nearest to the touched places alone.
//
// edit:    what the hand would have otherwise than the survey has it: nothing of the survey is copied for it but those marks.
// touched: places that the edit changed: where a mound was and is, the corners of a line.
// letters: a system that is still there keeps the letter that it has in the plan shown; a new one gets a letter that nowhere in
//          the field stands for another.
// Result:  of the `most_marks` usable marks nearest to any of them the systems that hold one within half the reach of those
// marks,
//          with their runs, ladders and sets; the others would be cut by the edge and are left out, as are their marks'
//          systems. Plan::first_look is set; its mounds are `mounds`, indexes of the survey's, ascending; numbers of
//          systems, ranks and the estimate are of these marks alone.
// Not the whole plan: the net hears marks up to four times its surroundings away, so that a mound's move changes weights, if
// ever so
//          little, among up to 2,000 marks; what is told here agrees with the whole as a first look does. Whoever shows it
//          makes the whole plan as well.
// Facts and decisions that name a mark beyond these are left out.
// Degenerate input: no touched place or no usable mark: a plan of nothing.
// Cost:    O(marks) to find the nearest, then that of a first look at most_marks, whatever the size of the survey.
// Errors:  none; nothing only when stopped.
#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

#include "core/plan/make_plan.h"
#include "core/plan/system_letters.h"

namespace plugside {

struct NearbyPlan {
    std::vector<std::size_t> mounds;
    Plan plan;
};

struct NearbyWishes {
    std::size_t most_marks = 80;
    std::shared_ptr<const SystemLetters> letters;  // of the plan shown; null: none
};

struct EditInHand {
    std::optional<std::pair<std::size_t, Mound>> mound;  // in place of that one of the survey
    std::optional<Ground> ground;                        // in place of the survey's
    std::optional<KnownFact> said;                       // beside what was said before
};

[[nodiscard]] std::optional<NearbyPlan> plan_nearby(const Survey& survey, const EditInHand& edit,
                                                    const std::vector<LocalPoint>& touched, const PlanOptions& options = {},
                                                    const NearbyWishes& wishes = {}, const Progress& progress = {});
// Of a survey as it stands.
[[nodiscard]] std::optional<NearbyPlan> plan_nearby(const Survey& survey, const std::vector<LocalPoint>& touched,
                                                    const PlanOptions& options = {}, const NearbyWishes& wishes = {},
                                                    const Progress& progress = {});

}  // namespace plugside
