// The mark nearest to a place on the ground.
//
// Result: the index of the nearest of the places within `reach`, the lowest index of equals; nothing when none is that near.
// Cost:   O(n) to build; a search looks at the cells that `reach` touches, or at every place when that is less.
#pragma once

#include <cstddef>
#include <optional>
#include <unordered_map>
#include <vector>

#include "core/geometry/point.h"
#include "core/units/metres.h"

namespace plugside {

class MarkFinder {
public:
    MarkFinder() = default;
    explicit MarkFinder(std::vector<LocalPoint> places);
    [[nodiscard]] std::optional<std::size_t> nearest(LocalPoint to, Metres reach) const;

private:
    std::vector<LocalPoint> places_;
    std::unordered_map<long long, std::vector<std::size_t>> cells_;
};

}  // namespace plugside
