#include "core/geometry/convex_hull.h"

#include <algorithm>

namespace plugside {

// Andrew's monotone chain (A. M. Andrew 1979 [memory]).
std::vector<LocalPoint> convex_hull(std::vector<LocalPoint> places) {
    std::sort(places.begin(), places.end(),
              [](LocalPoint a, LocalPoint b) { return a.east_m != b.east_m ? a.east_m < b.east_m : a.north_m < b.north_m; });
    places.erase(std::unique(places.begin(), places.end()), places.end());
    if (places.size() < 3) return places;
    std::vector<LocalPoint> hull;
    for (int half = 0; half < 2; ++half) {
        const std::size_t base = hull.size();
        for (const LocalPoint place : places) {
            while (hull.size() >= base + 2 && cross(hull.back() - hull[hull.size() - 2], place - hull.back()) <= 0.0)
                hull.pop_back();
            hull.push_back(place);
        }
        hull.pop_back();
        std::reverse(places.begin(), places.end());
    }
    return hull;
}

}  // namespace plugside
