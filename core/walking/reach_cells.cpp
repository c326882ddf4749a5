#include "core/walking/reach_cells.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <limits>

namespace plugside {

namespace {

constexpr double steps_a_reach = 12.0;
constexpr double most_knots = 1e8;

// Squared distances at the knots, as far as they matter for the outline.
struct Net {
    LocalPoint south_west;
    double step_m = 0.0;
    std::size_t columns = 0;
    std::size_t rows = 0;
    float reach2 = 0.0F;
    std::vector<float> distance2;

    [[nodiscard]] bool inside(std::size_t c, std::size_t r) const { return distance2[r * columns + c] <= reach2; }
    [[nodiscard]] LocalPoint place(std::size_t c, std::size_t r) const {
        return south_west + LocalVector{static_cast<double>(c) * step_m, static_cast<double>(r) * step_m};
    }
};

std::optional<Net> net_about(const std::vector<Polyline>& lines, double reach_m) {
    constexpr double far = std::numeric_limits<double>::infinity();
    double west = far;
    double south = far;
    double east = -far;
    double north = -far;
    for (const Polyline& line : lines)
        for (const LocalPoint p : line.vertices) {
            west = std::min(west, p.east_m);
            east = std::max(east, p.east_m);
            south = std::min(south, p.north_m);
            north = std::max(north, p.north_m);
        }
    Net net;
    if (!(east >= west)) return net;
    net.step_m = reach_m / steps_a_reach;
    const double room = reach_m + 2.5 * net.step_m;
    net.south_west = {west - room, south - room};
    const double columns = std::ceil((east - west + 2.0 * room) / net.step_m) + 1.0;
    const double rows = std::ceil((north - south + 2.0 * room) / net.step_m) + 1.0;
    if (!(columns * rows <= most_knots)) return std::nullopt;
    net.columns = static_cast<std::size_t>(columns);
    net.rows = static_cast<std::size_t>(rows);
    net.reach2 = static_cast<float>(reach_m * reach_m);
    net.distance2.assign(net.columns * net.rows, std::numeric_limits<float>::max());
    return net;
}

// Lowers the knots about one segment. Along a row the knots within `look` of the segment form one stretch.
void lower(Net& net, LocalPoint a, LocalPoint b, double look_m) {
    const double ax = (a.east_m - net.south_west.east_m) / net.step_m;
    const double ay = (a.north_m - net.south_west.north_m) / net.step_m;
    const double bx = (b.east_m - net.south_west.east_m) / net.step_m - ax;
    const double by = (b.north_m - net.south_west.north_m) / net.step_m - ay;
    const double look = look_m / net.step_m;
    const double length2 = bx * bx + by * by;
    const auto scale2 = static_cast<float>(net.step_m * net.step_m);
    const auto bxf = static_cast<float>(bx);
    const auto byf = static_cast<float>(by);
    const auto over = static_cast<float>(length2 > 0.0 ? 1.0 / length2 : 0.0);
    const auto from_row = static_cast<std::size_t>(std::max(0.0, std::ceil(std::min(ay, ay + by) - look)));
    const auto to_row = std::min(net.rows - 1, static_cast<std::size_t>(std::max(ay, ay + by) + look));
    const auto from = static_cast<std::size_t>(std::max(0.0, std::ceil(std::min(ax, ax + bx) - look)));
    const auto to = std::min(net.columns - 1, static_cast<std::size_t>(std::max(ax, ax + bx) + look));
    for (std::size_t r = from_row; r <= to_row; ++r) {
        const auto y = static_cast<float>(static_cast<double>(r) - ay);
        const auto x0 = static_cast<float>(static_cast<double>(from) - ax);
        float* const row = net.distance2.data() + r * net.columns + from;
        for (std::size_t k = 0; k <= to - from; ++k) {
            const float x = x0 + static_cast<float>(k);
            const float share = std::min(1.0F, std::max(0.0F, (x * bxf + y * byf) * over));
            const float dx = x - share * bxf;
            const float dy = y - share * byf;
            row[k] = std::min(row[k], (dx * dx + dy * dy) * scale2);
        }
    }
}

bool measure(Net& net, const std::vector<Polyline>& lines, double look_m, const std::stop_token& stop) {
    constexpr double longest_steps = 40.0;  // a long slanting segment has a large box: cut it
    std::size_t done = 0;
    for (const Polyline& line : lines) {
        const auto& v = line.vertices;
        if (v.size() == 1) lower(net, v[0], v[0], look_m);
        for (std::size_t i = 1; i < v.size(); ++i) {
            if (++done % 4096 == 0 && stop.stop_requested()) return false;
            const double parts = std::max(1.0, std::ceil(distance_m(v[i - 1], v[i]) / (longest_steps * net.step_m)));
            for (double k = 0.0; k < parts; k += 1.0)
                lower(net, v[i - 1] + (v[i] - v[i - 1]) * (k / parts), v[i - 1] + (v[i] - v[i - 1]) * ((k + 1.0) / parts),
                      look_m);
        }
    }
    return !stop.stop_requested();
}

// Which stretches of inner knots hang together along rows and columns.
class Parts {
public:
    explicit Parts(const Net& net) : first_of_row_(net.rows + 1, 0) {
        for (std::size_t r = 0; r < net.rows; ++r) {
            first_of_row_[r] = runs_.size();
            for (std::size_t c = 0; c < net.columns; ++c) {
                if (!net.inside(c, r)) continue;
                const std::size_t from = c;
                while (c + 1 < net.columns && net.inside(c + 1, r)) ++c;
                runs_.push_back({from, c});
                parent_.push_back(parent_.size());
            }
            if (r > 0) join_rows(first_of_row_[r - 1], first_of_row_[r], runs_.size());
        }
        first_of_row_[net.rows] = runs_.size();
    }
    [[nodiscard]] std::size_t of(std::size_t c, std::size_t r) {
        std::size_t run = first_of_row_[r];
        std::size_t count = first_of_row_[r + 1] - run;
        while (count > 1) {
            const std::size_t half = count / 2;
            if (runs_[run + half].from <= c) {
                run += half;
                count -= half;
            } else {
                count = half;
            }
        }
        return root(run);
    }

private:
    struct Run {
        std::size_t from;
        std::size_t to;
    };
    std::size_t root(std::size_t run) {
        while (parent_[run] != run) run = parent_[run] = parent_[parent_[run]];
        return run;
    }
    void join_rows(std::size_t below, std::size_t above, std::size_t end) {
        std::size_t i = below;
        std::size_t j = above;
        while (i < above && j < end) {
            if (runs_[i].from <= runs_[j].to && runs_[j].from <= runs_[i].to) parent_[root(j)] = root(i);
            if (runs_[i].to < runs_[j].to)
                ++i;
            else
                ++j;
        }
    }
    std::vector<std::size_t> first_of_row_;
    std::vector<Run> runs_;
    std::vector<std::size_t> parent_;
};

// A step of the outline through one square, from side to side, with the inside on its left. Sides are numbered by the knot
// they start at: 2 n eastwards, 2 n + 1 northwards.
struct OutlineStep {
    std::uint64_t from;
    std::uint64_t to;
    friend bool operator<(const OutlineStep& a, const OutlineStep& b) { return a.from < b.from; }
};

std::vector<OutlineStep> outline_steps(const Net& net) {
    std::vector<OutlineStep> steps;
    for (std::size_t r = 0; r + 1 < net.rows; ++r)
        for (std::size_t c = 0; c + 1 < net.columns; ++c) {
            const std::array<bool, 4> in{net.inside(c, r), net.inside(c + 1, r), net.inside(c + 1, r + 1),
                                         net.inside(c, r + 1)};
            if (in[0] == in[1] && in[1] == in[2] && in[2] == in[3]) continue;
            const std::uint64_t knot = r * net.columns + c;
            const std::array<std::uint64_t, 4> side{2 * knot, 2 * (knot + 1) + 1, 2 * (knot + net.columns), 2 * knot + 1};
            // round the square against the clock: the outline comes in where the inside begins behind it, and leaves by the
            // side before, so that inner corners across from each other stay apart
            for (std::size_t k = 0; k < 4; ++k) {
                if (in[k] || !in[(k + 1) % 4]) continue;  // side k goes from outside to inside
                std::size_t leaves = (k + 1) % 4;
                while (in[(leaves + 1) % 4]) leaves = (leaves + 1) % 4;
                steps.push_back({side[leaves], side[k]});
            }
        }
    std::sort(steps.begin(), steps.end());
    return steps;
}

class Tracer {
public:
    explicit Tracer(const Net& net) : net_(net), steps_(outline_steps(net)), used_(steps_.size(), false), parts_(net) {}

    MultiPolygon trace() {
        std::vector<std::pair<std::size_t, Ring>> outer;
        std::vector<std::pair<std::size_t, Ring>> holes;
        for (std::size_t i = 0; i < steps_.size(); ++i) {
            if (used_[i]) continue;
            const std::size_t part = part_beside(steps_[i].from);
            Ring ring = ring_from(i);
            const double area2 = signed_area2(ring);
            if (ring.vertices.size() < 3 || area2 == 0.0) continue;
            (area2 > 0.0 ? outer : holes).emplace_back(part, std::move(ring));
        }
        const auto by_part = [](const auto& a, const auto& b) { return a.first < b.first; };
        std::stable_sort(outer.begin(), outer.end(), by_part);
        MultiPolygon result;
        for (auto& [part, ring] : outer) result.parts.push_back({std::move(ring), {}});
        for (auto& hole : holes) {
            const auto found = std::lower_bound(outer.begin(), outer.end(), hole, by_part);
            if (found != outer.end() && found->first == hole.first)
                result.parts[static_cast<std::size_t>(found - outer.begin())].holes.push_back(std::move(hole.second));
        }
        return result;
    }

private:
    struct Side {
        std::size_t c0, r0, c1, r1;
    };
    [[nodiscard]] Side ends_of(std::uint64_t side) const {
        const std::uint64_t knot = side / 2;
        const std::size_t c = knot % net_.columns;
        const std::size_t r = knot / net_.columns;
        return side % 2 == 0 ? Side{c, r, c + 1, r} : Side{c, r, c, r + 1};
    }
    [[nodiscard]] std::size_t part_beside(std::uint64_t side) {
        const Side s = ends_of(side);
        return net_.inside(s.c0, s.r0) ? parts_.of(s.c0, s.r0) : parts_.of(s.c1, s.r1);
    }
    [[nodiscard]] LocalPoint crossing(std::uint64_t side) const {
        const Side s = ends_of(side);
        const double d0 = std::sqrt(static_cast<double>(net_.distance2[s.r0 * net_.columns + s.c0]));
        const double d1 = std::sqrt(static_cast<double>(net_.distance2[s.r1 * net_.columns + s.c1]));
        // never quite at a knot, where rings of two squares would touch
        const double share = std::clamp((std::sqrt(static_cast<double>(net_.reach2)) - d0) / (d1 - d0), 1e-3, 1.0 - 1e-3);
        const LocalPoint a = net_.place(s.c0, s.r0);
        return a + (net_.place(s.c1, s.r1) - a) * share;
    }
    Ring ring_from(std::size_t first) {
        Ring ring;
        for (std::size_t i = first; !used_[i];) {
            used_[i] = true;
            ring.vertices.push_back(crossing(steps_[i].from));
            i = static_cast<std::size_t>(std::lower_bound(steps_.begin(), steps_.end(), OutlineStep{steps_[i].to, 0}) -
                                         steps_.begin());
        }
        return ring;
    }
    [[nodiscard]] static double signed_area2(const Ring& ring) {
        double sum = 0.0;
        for (std::size_t i = 0; i < ring.vertices.size(); ++i)
            sum +=
                cross(ring.vertices[i] - ring.vertices[0], ring.vertices[(i + 1) % ring.vertices.size()] - ring.vertices[0]);
        return sum;
    }
    const Net& net_;
    std::vector<OutlineStep> steps_;
    std::vector<bool> used_;
    Parts parts_;
};

}  // namespace

std::optional<MultiPolygon> within_reach_by_cells(const std::vector<Polyline>& lines, Metres reach,
                                                  const std::stop_token& stop) {
    if (!(reach.value() > 0.0)) return MultiPolygon{};
    std::optional<Net> net = net_about(lines, reach.value());
    if (!net) return std::nullopt;
    if (net->distance2.empty()) return MultiPolygon{};
    if (!measure(*net, lines, reach.value() + 1.5 * net->step_m, stop)) return std::nullopt;
    return Tracer(*net).trace();
}

}  // namespace plugside
