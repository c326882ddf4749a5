#include "core/walking/thinned_track.h"

#include <algorithm>
#include <utility>
#include <vector>

namespace plugside {

namespace {

constexpr std::size_t stretch = 1000;

void keep_between(const std::vector<LocalPoint>& v, std::size_t from, std::size_t to, double tolerance_m,
                  std::vector<bool>& keep) {
    std::vector<std::pair<std::size_t, std::size_t>> open{{from, to}};
    while (!open.empty()) {
        const auto [a, b] = open.back();
        open.pop_back();
        double furthest = tolerance_m;
        std::size_t at = 0;
        for (std::size_t i = a + 1; i < b; ++i)
            if (const double m = distance_to_segment_m(v[i], v[a], v[b]); m > furthest) {
                furthest = m;
                at = i;
            }
        if (at == 0) continue;
        keep[at] = true;
        open.emplace_back(a, at);
        open.emplace_back(at, b);
    }
}

}  // namespace

Polyline simplified(const Polyline& line, Metres tolerance) {
    const auto& v = line.vertices;
    if (v.size() < 3) return line;
    std::vector<bool> keep(v.size(), false);
    keep.back() = true;
    for (std::size_t from = 0; from + 1 < v.size(); from += stretch) {
        keep[from] = true;
        keep_between(v, from, std::min(from + stretch, v.size() - 1), tolerance.value(), keep);
    }
    Polyline result;
    for (std::size_t i = 0; i < v.size(); ++i)
        if (keep[i]) result.vertices.push_back(v[i]);
    return result;
}

}  // namespace plugside
