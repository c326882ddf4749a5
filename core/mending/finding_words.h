// What was found, as findings with their sentences: one function a kind. A part of findings.h.
#pragma once

#include "core/mending/compass_offset.h"
#include "core/mending/double_marks.h"
#include "core/mending/earlier_walk.h"
#include "core/mending/other_diggers.h"
#include "core/mending/outside_field.h"
#include "core/mending/receiver_faults.h"
#include "core/mending/reversed_bearings.h"
#include "core/survey/finding.h"

namespace plugside {

// A finding and how many marks hang on it.
struct WeighedFinding {
    Finding finding;
    double effect = 1.0;
};

class FindingWords {
public:
    FindingWords(const Survey& survey, const WalkMarks& walk) : survey_(survey), walk_(walk) {}

    [[nodiscard]] WeighedFinding of(const MarkGroup& group) const;
    [[nodiscard]] WeighedFinding of(const MarkedBefore& match) const;
    [[nodiscard]] WeighedFinding of(const ReversedFan& fan) const;
    [[nodiscard]] WeighedFinding of(const WrongEndWalk& walk) const;
    [[nodiscard]] WeighedFinding of(const CompassOffset& offset) const;
    [[nodiscard]] WeighedFinding of(const TrackJump& jump) const;
    [[nodiscard]] WeighedFinding of(const JumpedMark& jump) const;
    [[nodiscard]] WeighedFinding of(const FarMark& far) const;
    [[nodiscard]] WeighedFinding of(const FrozenRun& frozen) const;
    [[nodiscard]] WeighedFinding of(const OutsideMark& outside) const;
    [[nodiscard]] WeighedFinding of(const OtherDigger& digger) const;

private:
    [[nodiscard]] const Mound& mound(std::size_t mark) const { return survey_.mounds[walk_.marks[mark].mound]; }
    [[nodiscard]] const std::string& name(std::size_t mark) const { return mound(mark).name; }
    [[nodiscard]] std::vector<std::string> names(const std::vector<std::size_t>& marks) const;
    [[nodiscard]] std::string fans_in_words(const std::vector<std::size_t>& marks) const;
    [[nodiscard]] std::vector<std::string> fans_of_walk(std::size_t walk) const;
    [[nodiscard]] LocalPoint middle_of_walk(std::size_t walk) const;

    const Survey& survey_;
    const WalkMarks& walk_;
};

}  // namespace plugside
