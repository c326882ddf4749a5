// Made-up fields of walls and places for the tests of ways on foot, and the shortest way by a full visibility graph.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <random>
#include <vector>

#include "core/survey/ground.h"

namespace plugside::test {

inline std::vector<LocalPoint> random_places(std::size_t count, double side_m, std::mt19937_64& random) {
    std::uniform_real_distribution<double> anywhere(0.0, side_m);
    std::vector<LocalPoint> places(count);
    for (LocalPoint& p : places) p = {anywhere(random), anywhere(random)};
    return places;
}

// Bent lines at random, each of two to five vertices; they may cross.
inline std::vector<Barrier> random_barriers(int count, double side_m, std::mt19937_64& random) {
    std::uniform_real_distribution<double> anywhere(0.0, side_m), turn(-1.2, 1.2), heading(0.0, 2.0 * std::numbers::pi),
        step(0.05 * side_m, 0.25 * side_m);
    std::vector<Barrier> barriers;
    for (int i = 0; i < count; ++i) {
        Barrier barrier{"ditch", {{{anywhere(random), anywhere(random)}}}};
        double way = heading(random);
        for (std::size_t more = 1 + random() % 4; more > 0; --more, way += turn(random))
            barrier.line.vertices.push_back(barrier.line.vertices.back() +
                                            LocalVector{std::sin(way), std::cos(way)} * step(random));
        barriers.push_back(barrier);
    }
    return barriers;
}

// Shortest ways that touch walls, from everything that can see everything: no cells, no pruning, no berth. Lines may cross one another but
// share no vertex. A way may pass a vertex in the middle of a line only on the outer side of its bend.
class FullVisibility {
public:
    explicit FullVisibility(const std::vector<Barrier>& barriers) {
        for (const Barrier& barrier : barriers) {
            const auto& v = barrier.line.vertices;
            for (std::size_t i = 0; i < v.size(); ++i) {
                if (i + 1 < v.size()) walls_.push_back({v[i], v[i + 1]});
                nodes_.push_back({v[i], i > 0 ? v[i - 1] : v[i], i + 1 < v.size() ? v[i + 1] : v[i]});
            }
        }
    }

    [[nodiscard]] double metres(LocalPoint from, LocalPoint to) const {
        std::vector<Node> nodes = nodes_;
        nodes.push_back({from, from, from});
        nodes.push_back({to, to, to});
        const std::size_t n = nodes.size();
        std::vector<double> best(n, std::numeric_limits<double>::infinity());
        std::vector<bool> done(n, false);
        best[n - 2] = 0.0;
        for (;;) {
            std::size_t here = n;
            for (std::size_t i = 0; i < n; ++i)
                if (!done[i] && std::isfinite(best[i]) && (here == n || best[i] < best[here])) here = i;
            if (here == n || here == n - 1) return best[n - 1];
            done[here] = true;
            for (std::size_t i = 0; i < n; ++i)
                if (!done[i] && joined(nodes[here], nodes[i]))
                    best[i] = std::min(best[i], best[here] + distance_m(nodes[here].at, nodes[i].at));
        }
    }

private:
    struct Wall {
        LocalPoint from, to;
    };
    struct Node {
        LocalPoint at, before, after;
    };
    static bool cross_properly(LocalPoint a, LocalPoint b, LocalPoint c, LocalPoint d) {
        const auto side = [](LocalPoint p, LocalPoint q, LocalPoint r) { return cross(q - p, r - p); };
        return side(a, b, c) * side(a, b, d) < 0.0 && side(c, d, a) * side(c, d, b) < 0.0;
    }
    // Whether a way that leaves the node towards `other` is on the outer side of the bend there (or along the wall).
    static bool outside_bend(const Node& node, LocalPoint other) {
        if (node.at == node.before || node.at == node.after || other == node.before || other == node.after) return true;
        return !inside_wedge(node, other);
    }
    static double bend(const Node& node) { return cross(node.at - node.before, node.after - node.at); }
    static bool inside_wedge(const Node& node, LocalPoint other) {
        const LocalVector to_before = node.before - node.at;
        const LocalVector to_after = node.after - node.at;
        const LocalVector to_other = other - node.at;
        const double orientation = cross(to_before, to_after);
        return cross(to_before, to_other) * orientation > 0.0 && cross(to_other, to_after) * orientation > 0.0;
    }
    [[nodiscard]] bool joined(const Node& a, const Node& b) const {
        if (!outside_bend(a, b.at) || !outside_bend(b, a.at)) return false;
        const bool along_wall = b.at == a.before || b.at == a.after;
        if (along_wall && bend(a) * bend(b) < 0.0)
            return false;  // their outer sides lie on the two sides of the wall between
        return std::none_of(walls_.begin(), walls_.end(),
                            [&](const Wall& wall) { return cross_properly(a.at, b.at, wall.from, wall.to); });
    }

    std::vector<Wall> walls_;
    std::vector<Node> nodes_;
};

}  // namespace plugside::test
