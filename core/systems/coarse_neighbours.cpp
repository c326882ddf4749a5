#include "core/systems/coarse_neighbours.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <nanoflann.hpp>
#include <utility>

#include "core/systems/barrier_cells.h"
#include "core/systems/two_threads.h"

namespace plugside {

namespace {

constexpr std::size_t most_nearest = 64;

struct PlaceSpan {
    std::span<const LocalPoint> places;
    [[nodiscard]] std::size_t kdtree_get_point_count() const { return places.size(); }
    [[nodiscard]] double kdtree_get_pt(std::size_t index, std::size_t axis) const {
        return axis == 0 ? places[index].east_m : places[index].north_m;
    }
    template <class Box>
    bool kdtree_get_bbox(Box& /*box*/) const {
        return false;
    }
};

using Tree =
    nanoflann::KDTreeSingleIndexAdaptor<nanoflann::L2_Simple_Adaptor<double, PlaceSpan>, PlaceSpan, 2, std::uint32_t>;

void fill_row(const Tree& tree, std::span<const LocalPoint> places, double reach_m, std::size_t i, CoarseNeighbours& rows) {
    std::array<std::uint32_t, most_nearest + 1> found{};
    std::array<double, most_nearest + 1> squared{};
    const double query[2] = {places[i].east_m, places[i].north_m};
    const std::size_t wanted = std::min(rows.row + 1, places.size());
    const std::size_t got = tree.knnSearch(query, wanted, found.data(), squared.data());
    std::array<std::pair<double, std::uint32_t>, most_nearest + 1> near{};
    std::size_t kept = 0;
    for (std::size_t k = 0; k < got; ++k)
        if (found[k] != i && squared[k] <= reach_m * reach_m) near[kept++] = {squared[k], found[k]};
    std::sort(near.begin(), near.begin() + static_cast<std::ptrdiff_t>(kept));
    kept = std::min(kept, rows.row);
    rows.count[i] = static_cast<std::uint8_t>(kept);
    for (std::size_t k = 0; k < kept; ++k) {
        rows.index[i * rows.row + k] = near[k].second;
        rows.distance_m[i * rows.row + k] = static_cast<float>(std::sqrt(near[k].first));
    }
}

}  // namespace

std::optional<CoarseNeighbours> coarse_neighbours(std::span<const LocalPoint> places, std::size_t nearest, Metres reach,
                                                  const Progress& progress) {
    assert(nearest >= 1 && nearest <= most_nearest);
    CoarseNeighbours rows;
    rows.row = nearest;
    rows.index.resize(places.size() * nearest);
    rows.distance_m.resize(places.size() * nearest);
    rows.count.resize(places.size(), 0);
    if (places.empty()) return rows;
    const PlaceSpan cloud{places};
    const Tree tree(2, cloud, nanoflann::KDTreeSingleIndexAdaptorParams(10));  // builds itself
    const bool done = on_two_threads(places.size(), progress, [&](std::size_t begin, std::size_t end) {
        for (std::size_t i = begin; i < end; ++i) fill_row(tree, places, reach.value(), i, rows);
    });
    if (!done) return std::nullopt;
    return rows;
}

bool drop_across(std::span<const Barrier> barriers, std::span<const LocalPoint> places, CoarseNeighbours& rows,
                 const Progress& progress) {
    if (barriers.empty()) return true;
    const BarrierCells cells(barriers);
    return on_two_threads(places.size(), progress, [&](std::size_t begin, std::size_t end) {
        for (std::size_t i = begin; i < end; ++i) {
            std::uint8_t kept = 0;
            for (std::size_t entry = i * rows.row; entry < i * rows.row + rows.count[i]; ++entry) {
                if (cells.between(places[i], places[rows.index[entry]])) continue;
                rows.index[i * rows.row + kept] = rows.index[entry];
                rows.distance_m[i * rows.row + kept++] = rows.distance_m[entry];
            }
            rows.count[i] = kept;
        }
    });
}

}  // namespace plugside
