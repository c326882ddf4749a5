// What a person's day costs in way and time, with the loads fetched in between. Inside core only; the sharing is shared_work.h.
//
// Nodes:    the places, then what WorkOptions names (start, end, vehicle, wishes).
// Loads:    for a given order, the stops at the vehicle that add least way (dynamic programming over where loads begin).
// Unreachable: stretches that no way joins count as 10,000 km.
// Cost:     O(places of the day), times `carry` where loads are fetched.
#pragma once

#include <optional>
#include <vector>

#include "core/walking/shared_work.h"
#include "core/walking/ways_between.h"

namespace plugside {

class WorkDayCost {
public:
    WorkDayCost(const std::vector<LocalPoint>& places, const std::vector<double>& minutes_at, const WorkOptions& options);

    struct Cost {
        double metres = 0.0;
        double minutes = 0.0;
        std::vector<std::size_t> loads_before;
    };
    [[nodiscard]] Cost of(const std::vector<std::size_t>& places, std::size_t person);
    [[nodiscard]] double minutes(const std::vector<std::size_t>& places, std::size_t person) {
        return of(places, person).minutes;
    }
    [[nodiscard]] double metres(std::size_t a, std::size_t b);
    [[nodiscard]] std::optional<LocalPoint> start_of(std::size_t person) const;

private:
    using Node = std::optional<std::size_t>;
    double between(Node a, Node b);
    [[nodiscard]] std::size_t load_at(std::size_t place) const;
    double way_with_loads(const std::vector<std::size_t>& places, Node start, Node vehicle,
                          std::vector<std::size_t>& loads_before);

    const WorkOptions& options_;
    const std::vector<double>& minutes_at_;
    WalkingWays open_;
    std::vector<Node> start_;  // of each person
    Node end_;
    Node vehicle_;
    std::optional<WaysBetween> ways_;
};

}  // namespace plugside
