#include "app/canvas/system_tints.h"

#include <algorithm>
#include <array>
#include <limits>
#include <numeric>

#include "app/canvas/view_transform.h"

namespace plugside {

namespace {

constexpr double neighbour_reach_m = 12.0;
constexpr std::size_t most_samples = 24;

struct Outline {
    GroundBox box;  // grown by the neighbours' reach
    std::vector<LocalPoint> samples;
};

Outline outline_of(const BurrowSystem& system) {
    std::vector<LocalPoint> vertices;
    for (const Polygon& part : system.outline.parts)
        vertices.insert(vertices.end(), part.outer.vertices.begin(), part.outer.vertices.end());
    Outline outline;
    for (const LocalPoint vertex : vertices) outline.box.add(vertex);
    outline.box = outline.box.grown(Metres::of(neighbour_reach_m));
    const std::size_t stride = vertices.size() / most_samples + 1;
    for (std::size_t i = 0; i < vertices.size(); i += stride) outline.samples.push_back(vertices[i]);
    return outline;
}

// How much two systems disturb each other in one tint: 1 where they touch, less with the square of their distance.
double disturbance(const Outline& a, const Outline& b) {
    double least = std::numeric_limits<double>::infinity();
    for (const LocalPoint p : a.samples)
        for (const LocalPoint q : b.samples) least = std::min(least, dot(p - q, p - q));
    return 1.0 / (1.0 + least);
}

}  // namespace

std::vector<std::size_t> system_tints(const Plan& plan) {
    std::vector<Outline> outlines;
    outlines.reserve(plan.systems.size());
    for (const BurrowSystem& system : plan.systems) outlines.push_back(outline_of(system));
    // swept from west to east, so only systems that share a stretch of easting are compared
    std::vector<std::size_t> order(outlines.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return outlines[a].box.low().east_m < outlines[b].box.low().east_m;
    });
    std::vector<std::size_t> tints(outlines.size(), 0);
    std::vector<std::size_t> open;
    for (const std::size_t system : order) {
        const Outline& outline = outlines[system];
        std::erase_if(open, [&](std::size_t other) { return outlines[other].box.high().east_m < outline.box.low().east_m; });
        std::array<double, 4> taken{};
        for (const std::size_t other : open)
            if (outlines[other].box.meets(outline.box)) taken.at(tints[other]) += disturbance(outlines[other], outline);
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
