// The ground of a field: what bounds it, what a run does not cross, what is kept clear of.
//
// boundary:   the field's own area; empty when nobody drew it (then nothing is outside).
// barriers:   lines that a run does not cross (road, ditch, wall); name says which.
// crossings:  gaps of a barrier where a run passes all the same (a culvert, a filled ditch), half a width to each side along it.
// gates:      gaps of barriers, boundaries and keep-clear edges where a person passes.
// untreated:  pieces left alone on purpose, to compare with afterwards: nothing is set there.
// keep_clear: areas in which nothing is set, with the reason in the person's words and what it is.
// Source:     common practice of the trade.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/geometry/polygon.h"
#include "core/geometry/polyline.h"
#include "core/units/metres.h"

namespace plugside {

struct Barrier {
    std::string name;
    Polyline line;
    friend bool operator==(const Barrier&, const Barrier&) = default;
};

// What stands in a keep-clear area; `building` and `well` switch on distance cautions.
enum class KeepClearKind { building, well, play_area, utility, other };

struct KeepClearArea {
    std::string name;
    std::string reason;
    KeepClearKind kind = KeepClearKind::other;
    Polygon area;
    friend bool operator==(const KeepClearArea&, const KeepClearArea&) = default;
};

struct Gap {
    std::string name;
    LocalPoint at;
    Metres width = Metres::of(1.0);  // > 0
    friend bool operator==(const Gap&, const Gap&) = default;
};

struct Ground {
    MultiPolygon boundary;
    std::vector<Barrier> barriers;
    std::vector<KeepClearArea> keep_clear;
    std::vector<Gap> crossings;
    std::vector<Gap> gates;
    MultiPolygon untreated;
    friend bool operator==(const Ground&, const Ground&) = default;
};

// What is left of the barriers where a run does not pass, and where a person does not: each barrier without the stretches that lie
// within half a width of a crossing (a gate). A stretch shorter than a centimetre is left out. O(vertices x gaps).
[[nodiscard]] std::vector<Barrier> barriers_to_runs(const Ground& ground);
[[nodiscard]] std::vector<Barrier> barriers_to_people(const Ground& ground);

// Whether a place lies in a keep-clear area or in an untreated piece. O(vertices).
[[nodiscard]] bool nothing_is_set_at(const Ground& ground, LocalPoint place);

// "building", "well", "play area", "utility", "other".
[[nodiscard]] std::string to_text(KeepClearKind kind);
[[nodiscard]] std::optional<KeepClearKind> keep_clear_kind_from_text(const std::string& text);

}  // namespace plugside
