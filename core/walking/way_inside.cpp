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
};

// First and last meeting of a straight way with a ring, where these are two.
struct Detour {
    const Ring* ring;
    Meeting in;
    Meeting out;
};

std::optional<Detour> detour_on(const Ring& ring, LocalPoint from, LocalPoint to) {
    const LocalVector way = to - from;
    std::vector<Meeting> meetings;
    const auto& v = ring.vertices;
    for (std::size_t i = 0; i < v.size(); ++i) {
        const LocalVector side = v[(i + 1) % v.size()] - v[i];
        const double across = cross(way, side);
        if (across == 0.0) continue;
        const double share = cross(v[i] - from, side) / across;
        const double along_side = cross(v[i] - from, way) / across;
        if (share < 1e-9 || share > 1.0 - 1e-9 || along_side < 0.0 || along_side >= 1.0) continue;
        meetings.push_back({share, i, from + way * share});
    }
    if (meetings.size() < 2) return std::nullopt;
    const auto [first, last] = std::minmax_element(meetings.begin(), meetings.end(),
                                                   [](const Meeting& a, const Meeting& b) { return a.share < b.share; });
    if ((last->share - first->share) * way.length_m() < 1e-3) return std::nullopt;
    return Detour{&ring, *first, *last};
}

double length_m(const std::vector<LocalPoint>& way) {
    double sum = 0.0;
    for (std::size_t i = 1; i < way.size(); ++i) sum += distance_m(way[i - 1], way[i]);
    return sum;
}

std::vector<LocalPoint> along_ring(const Detour& detour) {
    const auto& v = detour.ring->vertices;
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

// The first ring that the straight way meets.
std::optional<Detour> first_detour(const Polygon& area, LocalPoint from, LocalPoint to) {
    std::optional<Detour> first = detour_on(area.outer, from, to);
    for (const Ring& hole : area.holes)
        if (const auto met = detour_on(hole, from, to); met && (!first || met->in.share < first->in.share)) first = met;
    return first;
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
