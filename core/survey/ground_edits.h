// What a hand does to the ground: every act takes a ground and gives the new one, or a sentence that says why it cannot be done. The
// ground that was given is never changed, so that an act is undone by keeping it.
//
// Corners: an area keeps at least three, a line two; a gap is its place.
// Mending: an outline that crosses itself is not taken as it is: `faults_of` says so and where, `mended` proposes areas that are valid
//          and cover what an even-odd reader sees. No act mends by itself.
// split:   an area along a drawn line that crosses it from edge to edge; the parts keep name, kind and reason. A line, at a place.
// join:    two shapes of one kind that touch or overlap (areas), or whose ends lie within a centimetre (lines); the first one's name.
// hole:    cut out of the boundary part, keep-clear area or untreated piece that holds it.
// band:    everything within half a width of a line, as an area (a ditch as keep-clear).
// Errors:  std::string, a sentence for a person.
// Cost:    O(corners), with GEOS' overlay for split, join, holes and mending.
#pragma once

#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/survey/ground_shapes.h"

namespace plugside {

using EditedGround = tl::expected<Ground, std::string>;

// A new shape from drawn corners: an area, a line, or the place of a gap (the first corner), added last of its kind. Names and reasons
// are given afterwards (renamed).
[[nodiscard]] EditedGround with_shape(const Ground& ground, GroundKind kind, const std::vector<LocalPoint>& corners);
[[nodiscard]] EditedGround without_shape(const Ground& ground, GroundShape shape);

[[nodiscard]] EditedGround corner_moved(const Ground& ground, GroundCorner corner, LocalPoint to);
[[nodiscard]] EditedGround corner_added(const Ground& ground, GroundCorner after, LocalPoint at);
[[nodiscard]] EditedGround corner_removed(const Ground& ground, GroundCorner corner);
[[nodiscard]] EditedGround shape_shifted(const Ground& ground, GroundShape shape, LocalVector by);

[[nodiscard]] EditedGround split_along(const Ground& ground, GroundShape shape, const std::vector<LocalPoint>& line);
[[nodiscard]] EditedGround joined(const Ground& ground, GroundShape first, GroundShape second);
[[nodiscard]] EditedGround with_hole(const Ground& ground, GroundShape shape, const std::vector<LocalPoint>& corners);
[[nodiscard]] EditedGround with_band(const Ground& ground, GroundKind kind, const std::vector<LocalPoint>& line,
                                     Metres width);

// Name of a barrier, gap or keep-clear area; reason and kind of a keep-clear area; width of a gap.
struct ShapeWords {
    std::string name;
    std::string reason;
    KeepClearKind kind = KeepClearKind::other;
    Metres width = Metres::of(1.0);
    friend bool operator==(const ShapeWords&, const ShapeWords&) = default;
};
[[nodiscard]] ShapeWords words_of(const Ground& ground, GroundShape shape);
[[nodiscard]] EditedGround with_words(const Ground& ground, GroundShape shape, const ShapeWords& words);

// What is wrong with an area's outline: it crosses or touches itself, a hole lies outside, ... with the place; empty: nothing.
struct ShapeFault {
    GroundShape shape;
    LocalPoint at;
    std::string sentence;
};
[[nodiscard]] std::vector<ShapeFault> faults_of(const Ground& ground);
// The ground with that shape's area mended: one shape becomes as many as there are parts.
[[nodiscard]] EditedGround mended(const Ground& ground, GroundShape shape);

}  // namespace plugside
