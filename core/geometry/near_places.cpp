#include "core/geometry/near_places.h"

#include <algorithm>
#include <cmath>
#include <nanoflann.hpp>

namespace plugside {

namespace {

struct PlaceCloud {
    std::vector<LocalPoint> places;
    [[nodiscard]] std::size_t kdtree_get_point_count() const { return places.size(); }
    [[nodiscard]] double kdtree_get_pt(std::size_t index, std::size_t axis) const {
        return axis == 0 ? places[index].east_m : places[index].north_m;
    }
    template <class Box>
    bool kdtree_get_bbox(Box& /*box*/) const {
        return false;
    }
};

using KdTree =
    nanoflann::KDTreeSingleIndexAdaptor<nanoflann::L2_Simple_Adaptor<double, PlaceCloud>, PlaceCloud, 2, std::size_t>;

void sort_found(std::vector<NearPlaces::Found>& found) {
    std::sort(found.begin(), found.end(), [](const NearPlaces::Found& a, const NearPlaces::Found& b) {
        return a.distance_m != b.distance_m ? a.distance_m < b.distance_m : a.index < b.index;
    });
}

}  // namespace

struct NearPlaces::Tree {
    explicit Tree(std::vector<LocalPoint> places)
        : cloud{std::move(places)}, index(2, cloud, nanoflann::KDTreeSingleIndexAdaptorParams(12)) {}
    PlaceCloud cloud;
    KdTree index;
};

NearPlaces::NearPlaces(std::vector<LocalPoint> places) : tree_(std::make_unique<Tree>(std::move(places))) {}
NearPlaces::NearPlaces(NearPlaces&&) noexcept = default;
NearPlaces& NearPlaces::operator=(NearPlaces&&) noexcept = default;
NearPlaces::~NearPlaces() = default;

std::vector<NearPlaces::Found> NearPlaces::nearest(LocalPoint from, std::size_t most) const {
    const std::size_t count = std::min(most, tree_->cloud.places.size());
    if (count == 0) return {};
    std::vector<std::size_t> indexes(count);
    std::vector<double> squared(count);
    const double query[2] = {from.east_m, from.north_m};
    const std::size_t got = tree_->index.knnSearch(query, count, indexes.data(), squared.data());
    std::vector<Found> found(got);
    for (std::size_t i = 0; i < got; ++i) found[i] = {indexes[i], std::sqrt(squared[i])};
    sort_found(found);
    return found;
}

std::vector<NearPlaces::Found> NearPlaces::within(LocalPoint from, double radius_m) const {
    if (tree_->cloud.places.empty()) return {};
    std::vector<std::pair<std::size_t, double>> matches;
    const double query[2] = {from.east_m, from.north_m};
    // nanoflann leaves out the rim itself
    const double reach = std::nextafter(radius_m * radius_m, std::numeric_limits<double>::infinity());
    tree_->index.radiusSearch(query, reach, matches, nanoflann::SearchParams());
    std::vector<Found> found;
    found.reserve(matches.size());
    for (const auto& [index, squared] : matches) found.push_back({index, std::sqrt(squared)});
    sort_found(found);
    return found;
}

}  // namespace plugside
