#include "core/sets/system_reach.h"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <limits>
#include <numbers>

namespace plugside {

namespace {

using Piece = SystemReach::Piece;

constexpr double least_chance = 0.05;  // 1 in 20
constexpr double infinite = std::numeric_limits<double>::infinity();

// Least distance of two closed segments, metres.
double segment_distance_m(LocalPoint a, LocalPoint b, LocalPoint c, LocalPoint d) {
    if (segments_meet(a, b, c, d)) return 0.0;
    return std::min({distance_to_segment_m(a, c, d), distance_to_segment_m(b, c, d), distance_to_segment_m(c, a, b),
                     distance_to_segment_m(d, a, b)});
}

LocalPoint at(const Piece& piece, double t) { return piece.from + t * (piece.to - piece.from); }
double half_at(const Piece& piece, double t) { return piece.from_half_m + t * (piece.to_half_m - piece.from_half_m); }

double sd_at(const Piece& piece, double t) { return piece.from_sd_m + t * (piece.to_sd_m - piece.from_sd_m); }

template <typename Use>
void for_edges(const Polygon& area, Use use) {
    const auto of_ring = [&](const Ring& ring) {
        const auto& v = ring.vertices;
        for (std::size_t i = 0; i < v.size(); ++i) use(v[i], v[(i + 1) % v.size()]);
    };
    of_ring(area.outer);
    for (const Ring& hole : area.holes) of_ring(hole);
}

// Where in 0..1 a function without a second valley is least.
template <typename Function>
double valley_of(Function value) {
    double low = 0.0;
    double high = 1.0;
    for (int i = 0; i < 48; ++i) {  // to a hundred-millionth of the piece
        const double third = (high - low) / 3.0;
        if (value(low + third) <= value(high - third)) {
            high -= third;
        } else {
            low += third;
        }
    }
    const double inside = 0.5 * (low + high);
    return std::min({0.0, inside, 1.0}, [&](double a, double b) { return value(a) < value(b); });
}

// Distance to an edge less the corridor's half width: convex along the piece, since the distance to a segment is.
struct ToEdge {
    const Piece& piece;
    LocalPoint a;
    LocalPoint b;
    double operator()(double t) const { return distance_to_segment_m(at(piece, t), a, b) - half_at(piece, t); }
};

double least_to_edge(const Piece& piece, LocalPoint a, LocalPoint b, double enough) {
    const ToEdge to_edge{piece, a, b};
    const double bound = segment_distance_m(piece.from, piece.to, a, b) - std::max(piece.from_half_m, piece.to_half_m);
    if (bound > enough) return bound;
    const double ends = std::min(to_edge(0.0), to_edge(1.0));
    return ends <= enough ? ends : to_edge(valley_of(to_edge));
}

struct Span {
    double from;
    double to;
};

// The part of the piece along which the edge is within reach.
std::optional<Span> span_within(const Piece& piece, LocalPoint a, LocalPoint b, double reach_m) {
    const ToEdge to_edge{piece, a, b};
    const double bound = segment_distance_m(piece.from, piece.to, a, b) - std::max(piece.from_half_m, piece.to_half_m);
    if (bound > reach_m) return std::nullopt;
    const bool from_in = to_edge(0.0) <= reach_m;
    const bool to_in = to_edge(1.0) <= reach_m;
    if (from_in && to_in) return Span{0.0, 1.0};
    const double inside = from_in ? 0.0 : to_in ? 1.0 : valley_of(to_edge);
    if (to_edge(inside) > reach_m) return std::nullopt;
    const auto end = [&](double far) {
        if (to_edge(far) <= reach_m) return far;
        double in = inside;
        for (int i = 0; i < 50; ++i) (to_edge(0.5 * (in + far)) <= reach_m ? in : far) = 0.5 * (in + far);
        return in;
    };
    return Span{end(0.0), end(1.0)};
}

// All parts of the piece that are within reach of the area or inside it, in order, apart from one another.
std::vector<Span> spans_within(const Piece& piece, const Polygon& area, double reach_m) {
    std::vector<Span> near;
    for_edges(area, [&](LocalPoint a, LocalPoint b) {
        if (const auto span = span_within(piece, a, b, reach_m)) near.push_back(*span);
    });
    std::sort(near.begin(), near.end(), [](Span a, Span b) { return a.from < b.from; });
    std::vector<Span> all;
    const auto take = [&](Span span) {
        if (!all.empty() && span.from <= all.back().to + 1e-9) {
            all.back().to = std::max(all.back().to, span.to);
        } else {
            all.push_back(span);
        }
    };
    // no edge is within reach between two parts: there all is inside, or all outside
    double reached = 0.0;
    near.push_back({1.0, 1.0});
    for (std::size_t i = 0; i < near.size(); ++i) {
        if (near[i].from > reached && contains(area, at(piece, 0.5 * (reached + near[i].from))))
            take({reached, near[i].from});
        if (i + 1 < near.size()) take(near[i]);
        reached = std::max(reached, near[i].to);
    }
    return all;
}

// Standard deviations by which the place would have to be off to lie beyond reach: the less, the likelier it is within.
double deviations_short(const Piece& piece, double t, double distance_m, double reach_m) {
    return (distance_m - reach_m) / std::max(sd_at(piece, t), 1e-9);
}

LocalPoint nearest_on(LocalPoint place, LocalPoint a, LocalPoint b) {
    const LocalVector along = b - a;
    const double square = dot(along, along);
    return square > 0.0 ? a + std::clamp(dot(place - a, along) / square, 0.0, 1.0) * along : a;
}

// What is known of the reason so far.
struct Nearest {
    double margin_m = infinite;    // least distance less the corridor's half width
    double deviations = infinite;  // least that the place would have to be off to lie beyond reach
};

void take_nearest(const Piece& piece, Span within, const Polygon& area, double reach_m, ReachReason& reason,
                  Nearest& so_far) {
    const auto offer = [&](double t, LocalPoint to, double distance_m) {
        so_far.deviations = std::min(so_far.deviations, deviations_short(piece, t, distance_m, reach_m));
        if (distance_m - half_at(piece, t) >= so_far.margin_m) return;
        so_far.margin_m = distance_m - half_at(piece, t);
        reason.from = at(piece, t);
        reason.to = to;
        reason.apart = Metres::of(distance_m);
    };
    const Piece part{at(piece, within.from), at(piece, within.to), 0.0, 0.0, 0.0, 0.0};
    const double widest = std::max(half_at(piece, within.from), half_at(piece, within.to));
    const double least_sd = std::max(std::min(sd_at(piece, within.from), sd_at(piece, within.to)), 1e-9);
    const double most_sd = std::max(sd_at(piece, within.from), sd_at(piece, within.to));
    for_edges(area, [&](LocalPoint a, LocalPoint b) {
        // what this edge could bring at best
        const double apart = segment_distance_m(part.from, part.to, a, b);
        const double likeliest_bound = (apart - reach_m) / (apart < reach_m ? least_sd : most_sd);
        if (apart - widest >= so_far.margin_m && likeliest_bound >= so_far.deviations) return;
        const auto in_span = [&](double share) { return within.from + share * (within.to - within.from); };
        const auto to_edge = [&](double t) { return distance_to_segment_m(at(piece, t), a, b); };
        const double likeliest = in_span(valley_of(
            [&](double share) { return deviations_short(piece, in_span(share), to_edge(in_span(share)), reach_m); }));
        const double nearest =
            in_span(valley_of([&](double share) { return to_edge(in_span(share)) - half_at(piece, in_span(share)); }));
        for (const double t : {nearest, likeliest}) offer(t, nearest_on(at(piece, t), a, b), to_edge(t));
    });
    for (const double t : {within.from, 0.5 * (within.from + within.to), within.to})
        if (contains(area, at(piece, t))) offer(t, at(piece, t), 0.0);
}

void add_part(ReachReason& reason, const Piece& piece, Span span) {
    const LocalPoint from = at(piece, span.from);
    const double half = std::max(half_at(piece, span.from), half_at(piece, span.to));
    if (!reason.parts.empty() && distance_m(reason.parts.back().vertices.back(), from) < 1e-6) {
        reason.parts.back().vertices.push_back(at(piece, span.to));
        reason.half_width_m.back() = std::max(reason.half_width_m.back(), half);
        return;
    }
    reason.parts.push_back({{from, at(piece, span.to)}});
    reason.half_width_m.push_back(half);
}

double normal_share_below(double z) { return 0.5 * std::erfc(-z / std::numbers::sqrt2); }

}  // namespace

SystemReach::SystemReach(std::size_t system, Probability there)
    : system_(system), there_(there), low_{infinite, infinite}, high_{-infinite, -infinite} {
    if (there.value() > least_chance)
        deviations_ = boost::math::quantile(boost::math::normal_distribution<double>(), 1.0 - least_chance / there.value());
}

SystemReach::SystemReach(const Survey& survey, const Plan& plan, std::size_t system, Probability there)
    : SystemReach(system, there) {
    for (const MainRun& run : plan.runs) {
        if (run.system != system) continue;
        for (std::size_t i = 1; i < run.line.vertices.size(); ++i)
            add(run.line.vertices[i - 1], run.line.vertices[i], run.sd_m.at(i - 1), run.sd_m.at(i));
    }
    if (system >= plan.systems.size()) return;
    for (const std::size_t mound : plan.systems[system].mounds) add_mound(survey, plan, mound);
}

SystemReach SystemReach::of_mound(const Survey& survey, const Plan& plan, std::size_t mound, Probability there) {
    SystemReach reach(plan.mounds.at(mound).system.value_or(plan.systems.size()), there);
    reach.add_mound(survey, plan, mound);
    return reach;
}

void SystemReach::add_mound(const Survey& survey, const Plan& plan, std::size_t mound) {
    const MoundInPlan& in_plan = plan.mounds.at(mound);
    const double sd = std::max({in_plan.take_off_sd_along.value(), in_plan.take_off_sd_across.value(),
                                survey.mounds.at(mound).position_sd.value()});
    add(survey.mounds[mound].plug, in_plan.take_off, sd, sd);
}

void SystemReach::add(LocalPoint from, LocalPoint to, double from_sd_m, double to_sd_m) {
    if (there_.value() <= least_chance) return;
    const Piece piece{from, to, from_sd_m, to_sd_m, deviations_ * from_sd_m, deviations_ * to_sd_m};
    pieces_.push_back(piece);
    for (const double t : {0.0, 1.0}) {
        const LocalPoint place = at(piece, t);
        const double half = std::max(half_at(piece, t), 0.0);
        low_ = {std::min(low_.east_m, place.east_m - half), std::min(low_.north_m, place.north_m - half)};
        high_ = {std::max(high_.east_m, place.east_m + half), std::max(high_.north_m, place.north_m + half)};
    }
}

// No more than the true distance of area and corridors: between their boxes.
double SystemReach::box_distance_m(const Polygon& area) const {
    LocalPoint low{infinite, infinite};
    LocalPoint high{-infinite, -infinite};
    for (const LocalPoint vertex : area.outer.vertices) {
        low = {std::min(low.east_m, vertex.east_m), std::min(low.north_m, vertex.north_m)};
        high = {std::max(high.east_m, vertex.east_m), std::max(high.north_m, vertex.north_m)};
    }
    const double east = std::max({low.east_m - high_.east_m, low_.east_m - high.east_m, 0.0});
    const double north = std::max({low.north_m - high_.north_m, low_.north_m - high.north_m, 0.0});
    return std::hypot(east, north);
}

bool SystemReach::may_come_within(Metres reach, const Polygon& area) const {
    const double reach_m = reach.value();
    if (box_distance_m(area) > reach_m) return false;
    return std::any_of(pieces_.begin(), pieces_.end(), [&](const Piece& piece) {
        if (contains(area, piece.from)) return true;
        bool within = false;
        for_edges(area,
                  [&](LocalPoint a, LocalPoint b) { within = within || least_to_edge(piece, a, b, reach_m) <= reach_m; });
        return within;
    });
}

std::optional<ReachReason> SystemReach::why_within(Metres reach, const Polygon& area) const {
    if (box_distance_m(area) > reach.value()) return std::nullopt;
    ReachReason reason;
    Nearest so_far;
    for (const Piece& piece : pieces_)
        for (const Span span : spans_within(piece, area, reach.value())) {
            add_part(reason, piece, span);
            take_nearest(piece, span, area, reach.value(), reason, so_far);
        }
    if (reason.parts.empty()) return std::nullopt;
    reason.system = system_;
    reason.chance = Probability::of(there_.value() * normal_share_below(-so_far.deviations));
    return reason;
}

std::optional<Metres> SystemReach::nearest(const Polygon& area, std::optional<Metres> below) const {
    double least = below ? below->value() : infinite;
    if (box_distance_m(area) >= least) return std::nullopt;
    bool found = false;
    for (const Piece& piece : pieces_) {
        if (contains(area, piece.from)) return Metres::of(0.0);
        for_edges(area, [&](LocalPoint a, LocalPoint b) {
            if (segment_distance_m(piece.from, piece.to, a, b) - std::max(piece.from_half_m, piece.to_half_m) >= least)
                return;
            const ToEdge to_edge{piece, a, b};
            const double here = to_edge(valley_of(to_edge));
            if (here >= least) return;
            least = here;
            found = true;
        });
    }
    if (!found) return std::nullopt;
    return Metres::of(std::max(least, 0.0));
}

std::vector<SystemReach> reaches_of(const Survey& survey, const Plan& plan, std::size_t system) {
    std::vector<SystemReach> reaches;
    reaches.emplace_back(survey, plan, system);
    for (const JoinedSystems& joined : plan.alternatives.joined) {
        if (joined.one.value() <= least_chance) continue;
        if (joined.first == system) reaches.emplace_back(survey, plan, joined.second, joined.one);
        if (joined.second == system) reaches.emplace_back(survey, plan, joined.first, joined.one);
    }
    for (const DoubtfulMound& doubtful : plan.alternatives.doubtful)
        if (doubtful.runner_up == system && doubtful.of_runner_up.value() > least_chance)
            reaches.push_back(SystemReach::of_mound(survey, plan, doubtful.mound, doubtful.of_runner_up));
    return reaches;
}

}  // namespace plugside
