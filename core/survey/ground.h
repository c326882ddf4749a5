// The ground of a field: what bounds it, what a run does not cross, what is kept clear of.
//
// boundary:   the field's own area; empty when nobody drew it (then nothing is outside).
// barriers:   lines that a run does not cross (road, ditch, wall); name says which.
// keep_clear: areas in which nothing is set, with the reason in the person's words and what it is.
// Source:     common practice of the trade.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/geometry/polygon.h"
#include "core/geometry/polyline.h"

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

struct Ground {
    MultiPolygon boundary;
    std::vector<Barrier> barriers;
    std::vector<KeepClearArea> keep_clear;
    friend bool operator==(const Ground&, const Ground&) = default;
};

// "building", "well", "play area", "utility", "other".
[[nodiscard]] std::string to_text(KeepClearKind kind);
[[nodiscard]] std::optional<KeepClearKind> keep_clear_kind_from_text(const std::string& text);

}  // namespace plugside
