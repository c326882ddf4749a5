// Something in a walk that looks wrong or needs a person's eye: what, why, what is proposed, how sure.
//
// id:       stable: the kind and the names of the marks, so that an answer (mend.h) still belongs to it when the walk is
// read again. marks:    names, the one in question first. at:       where on the field's plane. found, why, proposed:
// sentences with a stop: "M014 lies 0.4 m from M012, marked 20 s later." "Both fans point south-east." "Take
//           both as one mound, between the two places."
// mend:     what accepting it does; absent where a person can only look.
// sure:     the chance that the proposal is right.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/geometry/point.h"
#include "core/survey/mend.h"
#include "core/units/probability.h"

namespace plugside {

enum class FindingKind {
    double_mark,       // one mound marked twice
    reversed_bearing,  // a fan read from the wrong end
    other_digger,      // perhaps not a gopher's
    outside_field,
    earlier_walk,         // marked on an earlier walk already
    swapped_coordinates,  // latitude for longitude
    lost_sign,            // east for west, or south for north
    degrees_and_minutes,  // degrees and minutes read as decimal degrees
    jump,                 // a spike of the receiver
    frozen_receiver,      // one place for many marks
    far_from_track,
    compass_offset,  // all of one walker's bearings turned alike
};

// "double mark", "reversed bearing", "other digger", "outside field", "earlier walk", "swapped coordinates", "lost sign",
// "degrees and minutes", "jump", "frozen receiver", "far from track", "compass offset"
[[nodiscard]] std::string to_text(FindingKind kind);
[[nodiscard]] std::optional<FindingKind> finding_kind_from_text(const std::string& text);

struct Finding {
    std::string id;
    FindingKind kind = FindingKind::double_mark;
    std::vector<std::string> marks;
    LocalPoint at;
    std::string found;
    std::string why;
    std::string proposed;
    std::optional<Mend> mend;
    Probability sure;
    friend bool operator==(const Finding&, const Finding&) = default;
};

// The kind's words and the marks' names: "double mark: M014, M012".
[[nodiscard]] std::string finding_id(FindingKind kind, const std::vector<std::string>& marks);

}  // namespace plugside
