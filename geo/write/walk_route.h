// Walking lines as GPX 1.1 routes that a handheld follows: one rte a route, its points in walking order.
//
// Text:    the route's name, and as its description lines, length and time; points are named P001, P002, ... on each route.
// Schema:  valid against GPX 1.1: longitude in [-180, 180), element order as the schema has it. No route gives a valid file
//          without one.
// Safety, errors: as geopackage_layers.h.
#pragma once

#include <filesystem>
#include <string>
#include <tl/expected.hpp>

#include "core/survey/refusal.h"
#include "core/units/display.h"
#include "core/walking/walk_lines.h"
#include "geo/frame/local_frame.h"

namespace plugside {

// "5 lines, 620 m, about 11 min at a searching pace"
[[nodiscard]] std::string route_in_words(const WalkRoute& route, LengthUnits units);

[[nodiscard]] tl::expected<void, Refusal> write_walk_route(const WalkLines& lines, const LocalFrame& frame,
                                                           const std::string& title, const std::filesystem::path& file,
                                                           LengthUnits units);

}  // namespace plugside
