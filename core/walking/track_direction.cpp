#include "core/walking/track_direction.h"

#include <limits>

namespace plugside {

namespace {

// The place `span_m` of way from a fix on, or the segment's end.
LocalPoint along(const TrackSegment& segment, std::size_t from, int step, double span_m) {
    std::size_t i = from;
    double way_m = 0.0;
    while (step > 0 ? i + 1 < segment.size() : i > 0) {
        const std::size_t next = step > 0 ? i + 1 : i - 1;
        const double length = distance_m(segment[i].at, segment[next].at);
        if (way_m + length >= span_m && length > 0.0)
            return segment[i].at + (segment[next].at - segment[i].at) * ((span_m - way_m) / length);
        way_m += length;
        i = next;
    }
    return segment[i].at;
}

}  // namespace

std::optional<Bearing> track_direction(const std::vector<Walk>& walks, LocalPoint at, Metres half_span) {
    double least = std::numeric_limits<double>::infinity();
    const TrackSegment* nearest = nullptr;
    std::size_t fix = 0;
    for (const Walk& walk : walks)
        for (const TrackSegment& segment : walk.segments)
            for (std::size_t i = 0; i < segment.size(); ++i)
                if (const double away = distance_m(segment[i].at, at); away < least) {
                    least = away;
                    nearest = &segment;
                    fix = i;
                }
    if (nearest == nullptr) return std::nullopt;
    return Bearing::along(along(*nearest, fix, 1, half_span.value()) - along(*nearest, fix, -1, half_span.value()));
}

}  // namespace plugside
