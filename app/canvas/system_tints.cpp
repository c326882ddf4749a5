#include "app/canvas/system_tints.h"

#include <algorithm>
#include <array>
#include <numeric>

#include "app/canvas/view_transform.h"

namespace plugside {

std::vector<std::size_t> system_tints(const Plan& plan) {
    std::vector<GroundBox> boxes(plan.systems.size());
    for (std::size_t i = 0; i < plan.systems.size(); ++i) {
        for (const Polygon& part : plan.systems[i].outline.parts)
            for (const LocalPoint vertex : part.outer.vertices) boxes[i].add(vertex);
        boxes[i] = boxes[i].grown(Metres::of(3.0));
    }
    // swept from west to east, so only systems that share a stretch of easting are compared
    std::vector<std::size_t> order(boxes.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return boxes[a].low().east_m < boxes[b].low().east_m; });
    std::vector<std::size_t> tints(boxes.size(), 0);
    std::vector<std::size_t> open;
    for (const std::size_t system : order) {
        std::erase_if(open, [&](std::size_t other) { return boxes[other].high().east_m < boxes[system].low().east_m; });
        std::array<int, 4> taken{};
        for (const std::size_t other : open)
            if (boxes[other].meets(boxes[system])) ++taken.at(tints[other]);
        // start from another tint each time: far-apart systems then use all four
        const std::size_t start = system % taken.size();
        std::size_t best = start;
        for (std::size_t k = 1; k < taken.size(); ++k)
            if (taken.at((start + k) % taken.size()) < taken.at(best)) best = (start + k) % taken.size();
        tints[system] = best;
        open.push_back(system);
    }
    return tints;
}

}  // namespace plugside
