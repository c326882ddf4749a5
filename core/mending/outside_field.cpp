#include "core/mending/outside_field.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace plugside {

namespace {

struct Edge {
    LocalPoint a, b;
};

// The boundary's edges by bands from south to north, so that a place asks only those at its own height.
class BoundaryBands {
public:
    explicit BoundaryBands(const MultiPolygon& boundary) {
        for (const Polygon& part : boundary.parts) {
            add(part.outer);
            for (const Ring& hole : part.holes) add(hole);
        }
        south_ = std::numeric_limits<double>::infinity();
        double north = -south_;
        for (const Edge& edge : edges_) {
            south_ = std::min({south_, edge.a.north_m, edge.b.north_m});
            north = std::max({north, edge.a.north_m, edge.b.north_m});
        }
        const std::size_t bands = std::clamp<std::size_t>(edges_.size() / 4, 1, 4096);
        height_m_ = edges_.empty() ? 1.0 : std::max((north - south_) / static_cast<double>(bands), 1e-6);
        bands_.resize(bands);
        for (const Edge& edge : edges_)
            for (std::size_t b = band(std::min(edge.a.north_m, edge.b.north_m));
                 b <= band(std::max(edge.a.north_m, edge.b.north_m)); ++b)
                bands_[b].push_back(edge);
    }

    // Even-odd rule.
    [[nodiscard]] bool contains(LocalPoint place) const {
        bool inside = false;
        for (const Edge& edge : bands_[band(place.north_m)]) {
            if ((edge.a.north_m > place.north_m) == (edge.b.north_m > place.north_m)) continue;
            const double share = (place.north_m - edge.a.north_m) / (edge.b.north_m - edge.a.north_m);
            if (place.east_m < edge.a.east_m + share * (edge.b.east_m - edge.a.east_m)) inside = !inside;
        }
        return inside;
    }

    [[nodiscard]] std::optional<LocalPoint> nearest(LocalPoint place, double reach_m) const {
        std::optional<LocalPoint> best;
        double best_m = reach_m;
        for (std::size_t b = band(place.north_m - reach_m); b <= band(place.north_m + reach_m); ++b)
            for (const Edge& edge : bands_[b]) {
                const LocalVector along = edge.b - edge.a;
                const double square = dot(along, along);
                const double share = square > 0.0 ? std::clamp(dot(place - edge.a, along) / square, 0.0, 1.0) : 0.0;
                const LocalPoint on = edge.a + along * share;
                const double far_m = distance_m(place, on);
                if (far_m > best_m || (best && far_m == best_m)) continue;
                best_m = far_m;
                best = on;
            }
        return best;
    }

private:
    void add(const Ring& ring) {
        for (std::size_t i = 0; i < ring.vertices.size(); ++i)
            edges_.push_back({ring.vertices[i], ring.vertices[(i + 1) % ring.vertices.size()]});
    }
    [[nodiscard]] std::size_t band(double north_m) const {
        const double place = std::clamp((north_m - south_) / height_m_, 0.0, static_cast<double>(bands_.size() - 1));
        return static_cast<std::size_t>(place);
    }

    std::vector<Edge> edges_;
    double south_ = 0.0;
    double height_m_ = 1.0;
    std::vector<std::vector<Edge>> bands_;
};

}  // namespace

std::vector<OutsideMark> outside_field(const Survey& survey, const WalkMarks& walk, double reach_m) {
    std::vector<OutsideMark> outside;
    if (survey.ground.boundary.empty()) return outside;
    const BoundaryBands boundary(survey.ground.boundary);
    for (std::size_t i = 0; i < walk.marks.size(); ++i) {
        const PlacedMark& place = walk.marks[i].place;
        if (!is_gopher_sign(survey.mounds[walk.marks[i].mound].kind) || boundary.contains(place.at)) continue;
        // the even-odd rule takes ground in two overlapping parts for outside
        if (survey.ground.boundary.parts.size() > 1 && contains(survey.ground.boundary, place.at)) continue;
        OutsideMark mark;
        mark.mark = i;
        mark.edge = boundary.nearest(place.at, reach_m);
        if (mark.edge) {
            mark.out_m = distance_m(place.at, *mark.edge);
            const double sd_m = std::hypot(place.error.own_m, place.error.shared_m);
            const double tail = 0.5 * std::erfc(*mark.out_m / sd_m / std::numbers::sqrt2);
            constexpr double inside_to_outside = 5.0;
            mark.inside_chance = inside_to_outside * tail / (inside_to_outside * tail + 1.0 - tail);
        }
        outside.push_back(mark);
    }
    return outside;
}

}  // namespace plugside
