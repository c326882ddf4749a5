// Marks that are probably one and the same mound, marked twice or more within one visit of the field.
//
// Evidence: the distance against how well the two marks are placed relative to each other (position_quality.h), against the
// density
//          of other mounds hereabouts and the room that mounds leave one another; the time between marks that follow one
//          another, against this walk's own times; how the fans differ; the same note at mounds without a fan.
// Chance:  that the pair is one mound: odds = expected second marks of a mark * density of the displacement if the same,
// over
//          density of other mounds there; times the ratios for time, fan, note.
// Result:  groups of two and more, no two marks of a group further apart than four relative standard deviations. `first`
// stands for
//          all: one with a fan before one without, then the earliest. `chance` is the least of the pairs that make up the
//          group.
// Limits:  a mound met again minutes later cannot be told from a neighbour where the receiver has drifted by about the
// mounds'
//          spacing in the meantime; then its chance is low and nothing is said.
// Numbers: shares of second marks, room between mounds: our assumption.
// Not looked at: other diggers' signs; walks of different visits (earlier_walk.h).
// Degenerate input: marks without a time are judged by place, fan and note.
// Cost:    O(n log n + pairs within reach); at most `most_neighbours` a mark.
#pragma once

#include "core/mending/walk_marks.h"
#include "core/plan/progress.h"

namespace plugside {

struct DoubleMarkOptions {
    double least_chance = 0.3;     // a person is asked; few are asked in vain (under 1 of 100 mounds)
    double pressed_twice = 0.04;   // share of marks that are pressed twice within seconds
    double met_again = 0.04;       // share that is met and marked once more minutes later
    double fan_sd_degrees = 15.0;  // of one reading by eye: PlanOptions::fan_sd_degrees
    std::size_t most_neighbours = 24;
};

struct MarkGroup {
    std::vector<std::size_t> marks;  // into WalkMarks::marks; the one that stands first
    double chance = 0.0;
    MeanPlace mean;
};

// Which walks belong to one visit: walks whose times overlap or are less than half an hour apart; walks without times are
// one visit with the first. Numbers 0.. in the order of the clock.
[[nodiscard]] std::vector<std::size_t> visits_of(const Survey& survey, const WalkMarks& walk);

[[nodiscard]] std::vector<MarkGroup> double_marks(const Survey& survey, const WalkMarks& walk,
                                                  const DoubleMarkOptions& options = {}, const Progress& progress = {});

// How much likelier two fans are read so at one mound than at two: 1 where either has none.
[[nodiscard]] double same_fan_ratio(const std::optional<Bearing>& a, const std::optional<Bearing>& b, double fan_sd_degrees);

// The mark of `group` that should stand for the others first, then by time and name.
void put_standing_mark_first(const Survey& survey, const WalkMarks& walk, std::vector<std::size_t>& group);

}  // namespace plugside
