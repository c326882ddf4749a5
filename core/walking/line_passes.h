// How often, in what order and how near the lines of travel pass a place.
//
// Pass:   an unbroken stretch of a line that stays within reach of the place; it counts once, with its least distance. Two
//         stretches of one line are one pass when less than 5 m of way lies between them.
// Order:  walk after walk, along each.
// Cost:   O(n log n) to build for n metres of line / 2, about O(log n + found) a place.
#pragma once

#include <cstddef>
#include <vector>

#include "core/geometry/near_places.h"
#include "core/walking/line_of_travel.h"

namespace plugside {

struct LinePass {
    std::size_t walk = 0;
    std::size_t piece = 0;
    double from_way_m = 0.0;
    double to_way_m = 0.0;
    double distance_m = 0.0;
};

class LinePasses {
public:
    explicit LinePasses(const std::vector<std::vector<TravelPiece>>& walks);
    [[nodiscard]] std::vector<LinePass> near(LocalPoint place, Metres reach) const;
    // Distance to the nearest line, if within reach.
    [[nodiscard]] bool any_within(LocalPoint place, Metres reach) const;

private:
    struct Step {
        std::size_t walk;
        std::size_t piece;
        LocalPoint from;
        LocalPoint to;
        double from_way_m;
        double to_way_m;
    };
    static std::vector<Step> steps_of(const std::vector<std::vector<TravelPiece>>& walks);
    static std::vector<LocalPoint> middles_of(const std::vector<Step>& steps);
    std::vector<Step> steps_;
    NearPlaces near_;
};

}  // namespace plugside
