// The reference systems that a search finds, and where each would put a file's marks.
//
// Search:   as geo/read/reference_systems.h: a place code or words of a name, "32614", "UTM 14".
// Empty:    nothing is searched; proposed is what puts the marks within a field's reach of `others`: longitude and latitude
//           where the numbers could be degrees, else the UTM zones around the others. None of it is taken without a person.
// Order:    what lies nearest to the others first where there are any; systems whose places are the same to a few metres by
// the
//           way receivers work first (WGS 84), then as found.
// Cost:     the place of one system takes some milliseconds; `most_placed` are placed. For a thread of its own.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "app/reading/place_words.h"
#include "core/plan/progress.h"
#include "geo/read/reference_systems.h"

namespace plugside {

struct SystemMatch {
    ReferenceSystem system;
    bool placed = false;                // looked for its place
    std::optional<GeographicPoint> at;  // of the first marks' middle; nothing where the system has no such place
    std::optional<std::pair<NamedPlace, double>> nearest;
};

struct SystemSearch {
    std::string words;
    std::vector<std::array<double, 2>> places;  // in the file's own numbers
    std::vector<NamedPlace> others;
};

[[nodiscard]] std::vector<SystemMatch> match_systems(const SystemSearch& search, const Progress& progress = {});

// The middle of the file's first places in that system.
[[nodiscard]] std::optional<GeographicPoint> middle_in(const std::string& code,
                                                       const std::vector<std::array<double, 2>>& places);

}  // namespace plugside
