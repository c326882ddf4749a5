// The nearest of a fixed set of places.
//
// Result:   by distance, then index: ties do not depend on how the tree was built.
// Degenerate input: no places finds none; places on one spot are all found.
// Cost:     O(n log n) to build, about O(log n + k) a query; a k-d tree of nanoflann inside.
// Lifetime: keeps its own copy of the places.
#pragma once

#include <cstddef>
#include <memory>
#include <vector>

#include "core/geometry/point.h"

namespace plugside {

class NearPlaces {
public:
    struct Found {
        std::size_t index = 0;
        double distance_m = 0.0;
        friend bool operator==(const Found&, const Found&) = default;
    };

    explicit NearPlaces(std::vector<LocalPoint> places);
    NearPlaces(NearPlaces&&) noexcept;
    NearPlaces& operator=(NearPlaces&&) noexcept;
    ~NearPlaces();

    // The `most` nearest to `from`, nearest first (a place of the set itself is found at distance 0).
    [[nodiscard]] std::vector<Found> nearest(LocalPoint from, std::size_t most) const;
    // All within `radius_m` (inclusive), nearest first.
    [[nodiscard]] std::vector<Found> within(LocalPoint from, double radius_m) const;

private:
    struct Tree;
    std::unique_ptr<Tree> tree_;
};

}  // namespace plugside
