// A change to how marks are taken: proposed by a finding (finding.h) or made by a person. Nothing that was recorded is lost.
//
// Kinds and what each uses:
//   set_aside  marks take no part; `because`
//   take_back  marks take part again
//   one_mound  the first mark stands for all, at to[0]; where that is an average of their places, its own error is
//              `position_sd`; the others are set aside as the same mound
//   move       marks[i] stands at to[i]
//   fan        marks' fans point to `fan`; without one they have none that can be read
//   turn_fans  marks' fans are turned by `turn_degrees` clockwise
//   sign       marks are what `sign` says
//   freshness  marks look as `freshness` says
// marks:      names of mounds; a name that is not in the survey is passed over.
// MendAnswer: what a person said to a finding: accepted, its mend holds; refused, it does not and the finding is not open
// any
//             more. `finding` is the finding's id, or an id of the person's own mend (own_mend_id).
// put_right:  every mound as recorded, then each accepted mend in the order answered; so that any answer can be taken back.
// Whatever
//             a mend changes is kept in Mound::recorded. Idempotent. O(mounds + answers).
#pragma once

#include <string>
#include <vector>

#include "core/survey/mound.h"

namespace plugside {

struct Survey;

enum class MendKind { set_aside, take_back, one_mound, move, fan, turn_fans, sign, freshness };

struct Mend {
    MendKind kind = MendKind::set_aside;
    std::vector<std::string> marks;
    std::vector<LocalPoint> to;
    std::optional<Bearing> fan;
    double turn_degrees = 0.0;
    std::optional<SignKind> sign;
    std::optional<Freshness> freshness;
    std::string because;  // a reason that goes on after "set aside: ", without a stop
    std::optional<Metres> position_sd = {};
    friend bool operator==(const Mend&, const Mend&) = default;
};

enum class Answer { accepted, refused };

struct MendAnswer {
    std::string finding;
    Answer answer = Answer::accepted;
    Mend mend;
    friend bool operator==(const MendAnswer&, const MendAnswer&) = default;
};

// "set aside", "take back", "one mound", "move", "fan", "turn fans", "sign", "freshness"; "accepted", "refused".
[[nodiscard]] std::string to_text(MendKind kind);
[[nodiscard]] std::optional<MendKind> mend_kind_from_text(const std::string& text);
[[nodiscard]] std::string to_text(Answer answer);
[[nodiscard]] std::optional<Answer> answer_from_text(const std::string& text);

// The id of a person's own mend of one kind on one mark: a later one takes its place.
[[nodiscard]] std::string own_mend_id(MendKind kind, const std::string& mark);

// Why a mark is set aside that is one mound with `mark`: in English, as files keep it.
[[nodiscard]] std::string same_mound_as(const std::string& mark);

void put_right(Survey& survey);

// Puts `answer` in place of an earlier one to the same finding, puts the survey right and raises its revision.
void answer_finding(Survey& survey, MendAnswer answer);
// The finding is open again. Without an answer to it nothing changes.
void take_answer_back(Survey& survey, const std::string& finding);
[[nodiscard]] const MendAnswer* answer_to(const Survey& survey, const std::string& finding);

}  // namespace plugside
