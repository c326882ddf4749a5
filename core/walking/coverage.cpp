#include "core/walking/coverage.h"

#include <algorithm>
#include <utility>

#include "core/geometry/area_operations.h"
#include "core/walking/reach_cells.h"
#include "core/walking/searched_track.h"
#include "core/walking/thinned_track.h"

namespace plugside {

namespace {

// The searched parts, thinned as far as the area allows.
std::vector<Polyline> lines_of(const std::vector<Walk>& walks, Metres reach) {
    const Metres tolerance = std::min(Metres::of(0.25), reach / 20.0);
    std::vector<Polyline> lines;
    for (const Walk& walk : walks)
        for (const SearchedPiece& piece : searched_track(walk).pieces) lines.push_back(simplified(piece.track, tolerance));
    return lines;
}

std::optional<MultiPolygon> seen_ground(const std::vector<Polyline>& lines, Metres reach, const Progress& progress) {
    constexpr std::size_t many = 2000;  // vertices; from here on the net is faster
    std::size_t vertices = 0;
    for (const Polyline& line : lines) vertices += line.vertices.size();
    if (vertices > many) {
        if (auto seen = within_reach_by_cells(lines, reach, progress.stop)) return seen;
        if (progress.stopped()) return std::nullopt;
    }
    return buffered(lines, reach, progress.stop);
}

}  // namespace

std::optional<Coverage> coverage_of(const std::vector<Walk>& walks, const MultiPolygon& boundary, Metres reach,
                                    const Progress& progress) {
    std::optional<MultiPolygon> seen = seen_ground(lines_of(walks, reach), reach, progress);
    if (!seen) return std::nullopt;
    Coverage coverage;
    if (boundary.empty()) {
        coverage.walked = std::move(*seen);
    } else {
        coverage.walked = intersection(*seen, boundary);
        if (progress.stopped()) return std::nullopt;
        coverage.unwalked = difference(boundary, *seen);
    }
    if (progress.stopped()) return std::nullopt;
    coverage.walked_area_m2 = area_m2(coverage.walked);
    coverage.unwalked_area_m2 = area_m2(coverage.unwalked);
    return coverage;
}

}  // namespace plugside
