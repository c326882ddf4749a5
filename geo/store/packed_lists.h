// Lists that stand in one cell of a project file: places, tracks, rings, names.
//
// Form:      numbers with the low byte first; a list is its count (32 bits), then what it holds: a place two numbers of 64 bits
//            (east, north, metres), a time milliseconds since 1970 UTC in 64 bits behind a byte that says whether it is there, a
//            text its count of bytes and the bytes, a ring a list of places.
// Guarantee: unpacking what was packed gives the same, to the bit.
// Errors:    nothing for bytes that are none of it: cut short, longer than said, a place off the earth, a time of no year. Counts are judged
//            by what is left to read before anything is made room for.
// Cost:      linear.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/geometry/point.h"
#include "core/survey/walk.h"

namespace plugside {

using Texts = std::vector<std::string>;
using Places = std::vector<LocalPoint>;
using Rings = std::vector<Places>;

// No place of a plane lies further out: more than twice round the earth.
inline constexpr double furthest_place_m = 1e8;
// Milliseconds of the years 1 to 9999.
[[nodiscard]] constexpr bool is_project_time(std::int64_t milliseconds) {
    return milliseconds >= -62'135'596'800'000 && milliseconds < 253'402'300'800'000;
}

[[nodiscard]] std::string packed(const Texts& texts);
[[nodiscard]] std::string packed(const Places& places);
[[nodiscard]] std::string packed(const Rings& rings);
[[nodiscard]] std::string packed(const TrackSegment& segment);

[[nodiscard]] std::optional<Texts> unpacked_texts(std::string_view bytes);
[[nodiscard]] std::optional<Places> unpacked_places(std::string_view bytes);
[[nodiscard]] std::optional<Rings> unpacked_rings(std::string_view bytes);
[[nodiscard]] std::optional<TrackSegment> unpacked_segment(std::string_view bytes);

}  // namespace plugside
