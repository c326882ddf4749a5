#include "core/walking/coverage.h"

#include <utility>

#include "core/geometry/area_operations.h"

namespace plugside {

namespace {

std::vector<Polyline> lines_of(const std::vector<Walk>& walks) {
    std::vector<Polyline> lines;
    for (const Walk& walk : walks) {
        for (const TrackSegment& segment : walk.segments) {
            Polyline line;
            line.vertices.reserve(segment.size());
            for (const TrackPoint& point : segment) line.vertices.push_back(point.at);
            lines.push_back(std::move(line));
        }
    }
    return lines;
}

}  // namespace

std::optional<Coverage> coverage_of(const std::vector<Walk>& walks, const MultiPolygon& boundary, Metres reach,
                                    const Progress& progress) {
    std::optional<MultiPolygon> seen = buffered(lines_of(walks), reach, progress.stop);
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
