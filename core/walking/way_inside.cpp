#include "core/walking/way_inside.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/geometry/polyline.h"

namespace plugside {

namespace {

struct Meeting {
    double share;      // of the straight way
    std::size_t side;  // of the ring, from its vertex of the same index
    LocalPoint at;
    const Ring* ring;
};

void add_meetings(const Ring& ring, LocalPoint from, LocalPoint to, std::vector<Meeting>& meetings) {
    constexpr double touch = 1e-7;  // lines end on the edge, give or take rounding
    const LocalVector way = to - from;
    const auto& v = ring.vertices;
    for (std::size_t i = 0; i < v.size(); ++i) {
        const LocalVector side = v[(i + 1) % v.size()] - v[i];
        const double across = cross(way, side);
        if (across == 0.0) continue;
        const double share = cross(v[i] - from, side) / across;
        const double along_side = cross(v[i] - from, way) / across;
        if (share < -touch || share > 1.0 + touch || along_side < -touch || along_side > 1.0 + touch) continue;
        meetings.push_back({share, i, from + way * std::clamp(share, 0.0, 1.0), &ring});
    }
}

// The first stretch of the straight way that lies outside, from ring to ring.
struct Detour {
    Meeting in;
    Meeting out;
};

std::optional<Detour> first_detour(const Polygon& area, LocalPoint from, LocalPoint to) {
    constexpr double least_m = 1e-3;
    std::vector<Meeting> meetings;
    add_meetings(area.outer, from, to, meetings);
    for (const Ring& hole : area.holes) add_meetings(hole, from, to, meetings);
    std::stable_sort(meetings.begin(), meetings.end(), [](const Meeting& a, const Meeting& b) { return a.share < b.share; });
    for (std::size_t i = 0; i + 1 < meetings.size(); ++i)
        for (std::size_t k = i + 1; k < meetings.size(); ++k) {
            if (distance_m(meetings[i].at, meetings[k].at) < least_m) continue;
            if (contains(area, midpoint(meetings[i].at, meetings[k].at))) break;
            if (meetings[i].ring == meetings[k].ring) return Detour{meetings[i], meetings[k]};
        }
    return std::nullopt;
}

double length_m(const std::vector<LocalPoint>& way) {
    double sum = 0.0;
    for (std::size_t i = 1; i < way.size(); ++i) sum += distance_m(way[i - 1], way[i]);
    return sum;
}

std::vector<LocalPoint> along_ring(const Detour& detour) {
    const auto& v = detour.in.ring->vertices;
    std::vector<LocalPoint> ahead{detour.in.at};
    for (std::size_t i = detour.in.side; i != detour.out.side;) {
        i = (i + 1) % v.size();
        ahead.push_back(v[i]);
    }
    ahead.push_back(detour.out.at);
    std::vector<LocalPoint> back{detour.in.at};
    for (std::size_t i = detour.in.side; i != detour.out.side; i = (i + v.size() - 1) % v.size()) back.push_back(v[i]);
    back.push_back(detour.out.at);
    return length_m(ahead) <= length_m(back) ? ahead : back;
}

}  // namespace

std::vector<LocalPoint> way_inside(const Polygon& area, LocalPoint from, LocalPoint to) {
    constexpr int most_rings = 50;
    std::vector<LocalPoint> way;
    LocalPoint here = from;
    for (int i = 0; i < most_rings; ++i) {
        const auto detour = first_detour(area, here, to);
        if (!detour) break;
        const std::vector<LocalPoint> round = along_ring(*detour);
        way.insert(way.end(), round.begin(), round.end());
        here = way.back();
    }
    return way;
}

}  // namespace plugside
