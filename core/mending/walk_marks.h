// The marks that are looked at for faults, in an order of their own: by walk, time and name, whatever the survey's order.
//
// Left out: marks that are set aside.
// surroundings: spacing_m, the median distance from a gopher's mark to the nearest other; density_m2 of each gopher's mark,
// from the
//          distance to its sixth nearest (0 for others' signs). Both without marks in one spot (under 5 cm apart).
// Degenerate input: no mark gives an empty list; a lonely mark has the density of one mark in 100 m2 and spacing 2 m.
// Cost:    O(n log n).
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/mending/position_quality.h"
#include "core/survey/survey.h"

namespace plugside {

struct WalkMark {
    std::size_t mound = 0;  // index into Survey::mounds
    PlacedMark place;
    double density_m2 = 0.01;
};

struct WalkMarks {
    std::vector<WalkMark> marks;
    double spacing_m = 2.0;
    std::vector<std::size_t> walk_begin;  // of each walk of the survey: its first mark in `marks`; one more entry at the end
};

[[nodiscard]] WalkMarks walk_marks(const Survey& survey, const PlaceError& usual = {});

// Some of the walk's marks in the order of a space-filling curve, for questions about neighbours: `mark` holds what `number`
// held.
struct MarksAlongCurve {
    std::vector<LocalPoint> at;
    std::vector<std::size_t> mark;
};
[[nodiscard]] MarksAlongCurve along_curve(const std::vector<LocalPoint>& places, const std::vector<std::size_t>& number);

// The name of a walk for a person and for an id: its own id, or "walk 3" where the survey has none.
[[nodiscard]] std::string walk_name(const Survey& survey, std::size_t walk);
[[nodiscard]] std::string walk_shown(const Survey& survey, std::size_t walk);  // the same in the language at hand
[[nodiscard]] std::string walk_name_shown(const std::string& name);            // "walk 2" of a walk without a name, too

}  // namespace plugside
