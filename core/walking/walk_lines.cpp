#include "core/walking/walk_lines.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <optional>

#include "core/geometry/area_operations.h"
#include "core/survey/ground_shapes.h"
#include "core/units/bearing.h"
#include "core/walking/way_inside.h"
#include "core/words/words.h"

namespace plugside {

namespace {

constexpr double least_width_m = 1.0;
constexpr double least_line_m = 1.0;

struct Frame {
    LocalVector along{1.0, 0.0};
    [[nodiscard]] double u(LocalPoint p) const { return dot(p - LocalPoint{}, along); }
    [[nodiscard]] double v(LocalPoint p) const { return dot(p - LocalPoint{}, turned_right(along)); }
    [[nodiscard]] LocalPoint at(double u, double v) const { return LocalPoint{} + along * u + turned_right(along) * v; }
};

struct Span {
    double low = std::numeric_limits<double>::infinity();
    double high = -std::numeric_limits<double>::infinity();
    void take(double x) {
        low = std::min(low, x);
        high = std::max(high, x);
    }
    [[nodiscard]] double width() const { return high - low; }
};

Span across(const Polygon& piece, const Frame& frame) {
    Span span;
    for (const LocalPoint p : piece.outer.vertices) span.take(frame.v(p));
    return span;
}

// Along the side for which the piece is narrowest, of all its sides, and of whole turns of 3 degrees for round pieces: the
// least width lies along a side of the hull, and every side of the hull of a field is nearly one of its sides.
Frame frame_of(const Polygon& piece) {
    Frame best;
    double least = std::numeric_limits<double>::infinity();
    const auto try_along = [&](LocalVector direction) {
        const double length = direction.length_m();
        if (!(length > 1e-6)) return;
        const Frame frame{direction * (1.0 / length)};
        if (const double width = across(piece, frame).width(); width < least - 1e-9) {
            least = width;
            best = frame;
        }
    };
    const auto& v = piece.outer.vertices;
    for (std::size_t i = 0; i < v.size() && v.size() <= 500; ++i) try_along(v[(i + 1) % v.size()] - v[i]);
    for (int turn = 0; turn < 60; ++turn) try_along(Bearing::degrees(3.0 * turn).unit());
    return best;
}

struct Line {
    LocalPoint from;
    LocalPoint to;
};

// Where a line at `v` runs inside the piece: between every other crossing of its rings.
void add_lines(const Polygon& piece, const Frame& frame, double v, std::vector<Line>& lines) {
    std::vector<double> crossings;
    const auto cross_ring = [&](const Ring& ring) {
        const auto& p = ring.vertices;
        for (std::size_t i = 0; i < p.size(); ++i) {
            const double a = frame.v(p[i]) - v;
            const double b = frame.v(p[(i + 1) % p.size()]) - v;
            if ((a < 0.0) != (b < 0.0))
                crossings.push_back(std::lerp(frame.u(p[i]), frame.u(p[(i + 1) % p.size()]), a / (a - b)));
        }
    };
    cross_ring(piece.outer);
    for (const Ring& hole : piece.holes) cross_ring(hole);
    std::sort(crossings.begin(), crossings.end());
    for (std::size_t i = 0; i + 1 < crossings.size(); i += 2)
        if (crossings[i + 1] - crossings[i] >= least_line_m)
            lines.push_back({frame.at(crossings[i], v), frame.at(crossings[i + 1], v)});
}

std::vector<Line> lines_in(const Polygon& piece, Metres spacing) {
    const Frame frame = frame_of(piece);
    const Span span = across(piece, frame);
    std::vector<Line> lines;
    if (span.width() < least_width_m) return lines;
    const double count = std::max(1.0, std::ceil(span.width() / spacing.value() - 1e-9));
    for (double k = 0.0; k < count; k += 1.0) add_lines(piece, frame, span.low + span.width() * (k + 0.5) / count, lines);
    return lines;
}

double way_m(const Polygon& piece, LocalPoint from, LocalPoint to) {
    double sum = 0.0;
    LocalPoint here = from;
    for (const LocalPoint p : way_inside(piece, from, to)) {
        sum += distance_m(here, p);
        here = p;
    }
    return sum + distance_m(here, to);
}

// Back and forth: on to the end that is left and soonest reached, each time; looked for among the few nearest.
void put_in_order(const Polygon& piece, std::vector<Line>& lines) {
    constexpr std::size_t looked_at = 6;
    struct End {
        double straight_m;
        std::size_t line;
        bool far;  // the line is to be walked from its other end
    };
    for (std::size_t i = 1; i < lines.size(); ++i) {
        const LocalPoint here = lines[i - 1].to;
        std::vector<End> ends;
        for (std::size_t k = i; k < lines.size(); ++k) {
            ends.push_back({distance_m(here, lines[k].from), k, false});
            ends.push_back({distance_m(here, lines[k].to), k, true});
        }
        const auto few = ends.begin() + static_cast<std::ptrdiff_t>(std::min(looked_at, ends.size()));
        std::partial_sort(ends.begin(), few, ends.end(), [](const End& a, const End& b) {
            return a.straight_m != b.straight_m ? a.straight_m < b.straight_m : a.line < b.line;
        });
        End best = ends.front();
        double best_m = std::numeric_limits<double>::infinity();
        for (auto end = ends.begin(); end != few && end->straight_m < best_m; ++end)
            if (const double m = way_m(piece, here, end->far ? lines[end->line].to : lines[end->line].from);
                m < best_m - 1e-9) {
                best_m = m;
                best = *end;
            }
        if (best.far) std::swap(lines[best.line].from, lines[best.line].to);
        std::rotate(lines.begin() + static_cast<std::ptrdiff_t>(i), lines.begin() + static_cast<std::ptrdiff_t>(best.line),
                    lines.begin() + static_cast<std::ptrdiff_t>(best.line) + 1);
    }
}

// The lines' numbers at which each walker begins: stretches of about equal length.
std::vector<std::size_t> shares_of(const std::vector<Line>& lines, std::size_t walkers) {
    double all = 0.0;
    for (const Line& line : lines) all += distance_m(line.from, line.to);
    std::vector<std::size_t> begins{0};
    double done = 0.0;
    for (std::size_t i = 0; i + 1 < lines.size() && begins.size() < walkers; ++i) {
        done += distance_m(lines[i].from, lines[i].to);
        if (done >= all * static_cast<double>(begins.size()) / static_cast<double>(walkers) - 1e-6) begins.push_back(i + 1);
    }
    return begins;
}

WalkRoute route_of(const Polygon& piece, const std::vector<Line>& lines, std::size_t from, std::size_t to, double pace) {
    WalkRoute route;
    auto& way = route.way.vertices;
    for (std::size_t i = from; i < to; ++i) {
        if (!way.empty())
            for (const LocalPoint p : way_inside(piece, way.back(), lines[i].from)) way.push_back(p);
        way.push_back(lines[i].from);
        way.push_back(lines[i].to);
    }
    route.lines = to - from;
    route.length = length(route.way);
    route.seconds = route.length.value() / pace;
    return route;
}

// Straight through a gate, across what it opens, as far as the berth reaches: the berth alone would close a narrow gate.
MultiPolygon passage(const Ground& ground, const Gap& gate, Metres berth) {
    const auto edge = nearest_edge(ground, gate.at, gate.width);
    if (!edge) return {};
    const std::vector<LocalPoint> corners = corners_of(ground, edge->corner.shape, edge->corner.ring);
    const LocalVector along = corners[(edge->corner.corner + 1) % corners.size()] - corners[edge->corner.corner];
    if (along.length_m() == 0.0) return {};
    const LocalVector across = turned_right(along) * ((berth.value() + 0.2) / along.length_m());
    const double half_m = std::max(0.05, 0.5 * gate.width.value() - 0.05);
    return buffered({{{gate.at - across, gate.at + across}}}, Metres::of(half_m));
}

MultiPolygon ground_to_walk(const Ground& ground, const MultiPolygon& part, Metres berth) {
    MultiPolygon area = part.empty() ? ground.boundary : part;
    if (!part.empty() && !ground.boundary.empty()) area = intersection(area, ground.boundary);
    std::vector<Polyline> obstacles;
    std::vector<MultiPolygon> taken;
    for (const Barrier& barrier : barriers_to_people(ground)) obstacles.push_back(barrier.line);
    for (const KeepClearArea& keep : ground.keep_clear) {
        Polyline edge{keep.area.outer.vertices};
        if (!edge.vertices.empty()) edge.vertices.push_back(edge.vertices.front());
        obstacles.push_back(std::move(edge));
        taken.push_back({{keep.area}});
    }
    taken.push_back(buffered(obstacles, berth));
    MultiPolygon blocked = union_of(taken);
    for (const Gap& gate : ground.gates) blocked = difference(blocked, passage(ground, gate, berth));
    return blocked.empty() ? area : difference(area, blocked);
}

void name_routes(WalkLines& result, std::size_t walkers) {
    for (WalkRoute& route : result.routes) {
        const std::string piece = std::to_string(route.piece + 1), walker = std::to_string(route.walker + 1);
        if (result.pieces > 1)
            route.name =
                walkers > 1 ? Words::tell("Piece {1}, walker {2}", {piece, walker}) : Words::tell("Piece {1}", {piece});
        else
            route.name = walkers > 1 ? Words::tell("Walker {1}", {walker}) : Words::tell("Walk");
    }
}

}  // namespace

Probability seen_between_lines(const DetectionCurve& curve, Metres spacing) {
    assert(spacing.value() > 0.0);
    constexpr int places = 200;
    constexpr double furthest_m = 60.0;
    double sum = 0.0;
    for (int i = 0; i < places; ++i) {
        const double x = 0.5 * spacing.value() * (i + 0.5) / places;
        double left = 1.0;
        for (double line = 0.0; line * spacing.value() < furthest_m + spacing.value(); line += 1.0) {
            left *= 1.0 - curve.chance(x + line * spacing.value());
            left *= 1.0 - curve.chance((line + 1.0) * spacing.value() - x);
            if (left < 1e-9) break;
        }
        sum += 1.0 - left;
    }
    return Probability::of(sum / places);
}

Metres line_spacing(const DetectionCurve& curve, Probability see) {
    assert(see.value() > 0.0 && see.value() < 1.0);
    double close = 0.1;
    double wide = 500.0;
    for (int i = 0; i < 60; ++i) {
        const double middle = std::sqrt(close * wide);
        (seen_between_lines(curve, Metres::of(middle)) >= see ? close : wide) = middle;
    }
    return Metres::of(close);
}

WalkLines walk_lines(const Ground& ground, const MultiPolygon& part, const WalkLineOptions& options) {
    assert(options.pace_m_per_s > 0.0 && options.walkers > 0);
    WalkLines result;
    result.spacing = line_spacing(options.curve, options.see);
    std::vector<double> seconds(options.walkers, 0.0);
    for (const Polygon& piece : ground_to_walk(ground, part, options.berth).parts) {
        std::vector<Line> lines = lines_in(piece, result.spacing);
        if (lines.empty()) continue;
        put_in_order(piece, lines);
        std::vector<std::size_t> begins = shares_of(lines, options.walkers);
        begins.push_back(lines.size());
        for (std::size_t w = 0; w + 1 < begins.size(); ++w) {
            WalkRoute route = route_of(piece, lines, begins[w], begins[w + 1], options.pace_m_per_s);
            route.piece = result.pieces;
            route.walker = w;
            seconds[w] += route.seconds;
            result.length = result.length + route.length;
            result.routes.push_back(std::move(route));
        }
        ++result.pieces;
    }
    result.seconds = *std::max_element(seconds.begin(), seconds.end());
    name_routes(result, options.walkers);
    if (result.pieces > 1)
        result.sentences.push_back(Words::tell(
            "The ground falls into {1} pieces between which no way is known: look for a gate or crossing on the spot.",
            {std::to_string(result.pieces)}));
    return result;
}

}  // namespace plugside
