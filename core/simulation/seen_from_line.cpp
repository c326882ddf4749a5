#include "core/simulation/seen_from_line.h"

#include <algorithm>
#include <cassert>
#include <chrono>
#include <cmath>
#include <limits>

namespace plugside {

namespace {

struct Axis {
    LocalPoint origin;
    LocalVector along;
    [[nodiscard]] LocalPoint at(double u, double v) const { return origin + along * u + turned_right(along) * v; }
};

struct Span {
    double low = std::numeric_limits<double>::infinity();
    double high = -std::numeric_limits<double>::infinity();
    void take(double x) {
        low = std::min(low, x);
        high = std::max(high, x);
    }
};

Axis axis_of(const Polygon& boundary) {
    const auto& v = boundary.outer.vertices;
    Axis axis{v[0], {1.0, 0.0}};
    double longest = 0.0;
    for (std::size_t i = 0; i < v.size(); ++i) {
        const LocalVector side = v[(i + 1) % v.size()] - v[i];
        if (side.length_m() <= longest) continue;
        longest = side.length_m();
        axis.along = side * (1.0 / longest);
    }
    return axis;
}

struct Leg {
    LocalPoint from;
    LocalPoint to;
    double blind_from_m = 0.0;  // a stretch passed without looking; none where both are equal
    double blind_to_m = 0.0;
};

// Where a line square off from the axis lies inside the boundary, by its first and last crossing.
std::optional<Span> inside(const Polygon& boundary, const Axis& axis, double v) {
    Span span;
    const auto& p = boundary.outer.vertices;
    for (std::size_t i = 0; i < p.size(); ++i) {
        const LocalVector a = p[i] - axis.origin;
        const LocalVector b = p[(i + 1) % p.size()] - axis.origin;
        const double va = dot(a, turned_right(axis.along)) - v;
        const double vb = dot(b, turned_right(axis.along)) - v;
        if ((va < 0.0) == (vb < 0.0)) continue;
        const double share = va / (va - vb);
        span.take(std::lerp(dot(a, axis.along), dot(b, axis.along), share));
    }
    if (!(span.high > span.low)) return std::nullopt;
    return span;
}

std::vector<Leg> legs_of(const Polygon& boundary, const LineWalk& walk, Random& random) {
    const Axis axis = axis_of(boundary);
    Span across;
    for (const LocalPoint p : boundary.outer.vertices) across.take(dot(p - axis.origin, turned_right(axis.along)));
    const double width = across.high - across.low;
    std::vector<Leg> legs;
    bool forward = true;
    for (double v = across.low + 0.5 * walk.line_gap_m; v < across.low + walk.walked_share * width; v += walk.line_gap_m) {
        const auto span = inside(boundary, axis, v);
        if (!span) continue;
        Leg leg{axis.at(forward ? span->low : span->high, v), axis.at(forward ? span->high : span->low, v)};
        if (!legs.empty()) legs.push_back({legs.back().to, leg.from});
        const double length = distance_m(leg.from, leg.to);
        if (random.chance(walk.gap_chance) && length > 3.0 * walk.gap_m) {
            leg.blind_from_m = random.uniform(0.1 * length, 0.9 * length - walk.gap_m);
            leg.blind_to_m = leg.blind_from_m + walk.gap_m;
        }
        legs.push_back(leg);
        forward = !forward;
    }
    return legs;
}

class LineWalker {
public:
    LineWalker(const LineWalk& walk, SimulatedField& field, Random& random) : walk_(walk), field_(field), random_(random) {
        shared_ = {random.normal(0.0, walk.shared_sd_m), random.normal(0.0, walk.shared_sd_m)};
    }

    void walk_leg(const Leg& leg) {
        const double length = distance_m(leg.from, leg.to);
        if (!(length > 0.0)) return;
        const LocalVector along = (leg.to - leg.from) * (1.0 / length);
        go_to(leg.from);
        std::vector<std::pair<double, std::size_t>> seen = look_about(leg, along, length);
        bool blind_ahead = leg.blind_to_m > leg.blind_from_m;
        for (std::size_t i = 0; i < seen.size(); ++i) {
            const auto [at_m, mound] = seen[i];
            if (blind_ahead && at_m > leg.blind_from_m) pass_blind(leg, along, blind_ahead);
            if (field_.truth.mounds[mound].seen_as) continue;  // reached from another already
            const double before_m = i > 0 ? 0.5 * (at_m + seen[i - 1].first) : 0.0;
            const double after_m = i + 1 < seen.size() ? 0.5 * (at_m + seen[i + 1].first) : length;
            go_to(leg.from + along * std::max(before_m, at_m - walk_.lead_m));
            visit(mound);
            go_to(leg.from + along * std::min(after_m, at_m + walk_.lead_m));
        }
        if (blind_ahead) pass_blind(leg, along, blind_ahead);
        go_to(leg.to);
    }

    [[nodiscard]] Walk finished() { return std::move(record_); }

private:
    [[nodiscard]] std::vector<std::pair<double, std::size_t>> look_about(const Leg& leg, LocalVector along, double length) {
        std::vector<std::pair<double, std::size_t>> seen;
        for (std::size_t i = 0; i < field_.truth.mounds.size(); ++i) {
            const TrueMound& mound = field_.truth.mounds[i];
            if (mound.seen_as) continue;
            const double at_m = dot(mound.plug - leg.from, along);
            if (at_m < 0.0 || at_m > length || (at_m > leg.blind_from_m && at_m < leg.blind_to_m)) continue;
            const double off_m = std::abs(cross(along, mound.plug - leg.from));
            if (off_m <= walk_.most_off_m && random_.chance(walk_.curve.chance(off_m))) seen.emplace_back(at_m, i);
        }
        std::sort(seen.begin(), seen.end());
        return seen;
    }

    void visit(std::size_t mound) {
        for (std::optional<std::size_t> next = mound; next;) {
            const LocalPoint here = field_.truth.mounds[*next].plug;
            go_to(here);
            mark(*next);
            next = walk_.follows ? nearest_unmarked(here) : std::nullopt;
        }
    }
    [[nodiscard]] std::optional<std::size_t> nearest_unmarked(LocalPoint here) const {
        std::optional<std::size_t> best;
        double best_m = walk_.follow_m;
        for (std::size_t i = 0; i < field_.truth.mounds.size(); ++i)
            if (const double m = distance_m(here, field_.truth.mounds[i].plug);
                !field_.truth.mounds[i].seen_as && m < best_m) {
                best = i;
                best_m = m;
            }
        return best;
    }

    void pass_blind(const Leg& leg, LocalVector along, bool& ahead) {
        ahead = false;
        go_to(leg.from + along * leg.blind_from_m);
        at_ = leg.from + along * leg.blind_to_m;
        clock_s_ += std::max(180.0, walk_.gap_m / walk_.pace_m_per_s);
        tracked_s_ = clock_s_;
        drift(180.0);
    }

    void go_to(LocalPoint place) {
        if (!started_) {
            at_ = place;
            started_ = true;
        }
        const double leg_s = distance_m(at_, place) / walk_.pace_m_per_s;
        for (double due = tracked_s_ + walk_.track_every_s; due <= clock_s_ + leg_s; due += walk_.track_every_s) {
            drift(walk_.track_every_s);
            const double share = leg_s > 0.0 ? std::clamp((due - clock_s_) / leg_s, 0.0, 1.0) : 0.0;
            record_.segments.front().push_back({at_ + (place - at_) * share + shared_ + own(0.3), time_at(due)});
            tracked_s_ = due;
        }
        at_ = place;
        clock_s_ += leg_s;
    }

    void mark(std::size_t number) {
        TrueMound& truth = field_.truth.mounds[number];
        truth.seen_as = field_.survey.mounds.size();
        Mound mound;
        mound.name = "M" + std::to_string(field_.survey.mounds.size() + 1);
        mound.plug = at_ + shared_ + own(1.0);
        mound.fan = truth.fan;
        mound.time = time_at(clock_s_);
        field_.survey.mounds.push_back(std::move(mound));
        clock_s_ += walk_.seconds_a_mark;
    }

    void drift(double seconds) {
        const double memory = std::exp(-seconds / walk_.shared_memory_s);
        const double fresh = walk_.shared_sd_m * std::sqrt(1.0 - memory * memory);
        shared_ = shared_ * memory + LocalVector{random_.normal(0.0, fresh), random_.normal(0.0, fresh)};
    }
    [[nodiscard]] LocalVector own(double share) {
        return {random_.normal(0.0, share * walk_.own_sd_m), random_.normal(0.0, share * walk_.own_sd_m)};
    }
    [[nodiscard]] static UtcTime time_at(double seconds) {
        // from 10 April 2025, 13:00 UTC on: an arbitrary spring morning
        return UtcTime{std::chrono::milliseconds{1744290000000 + std::llround(seconds * 1000.0)}};
    }

    const LineWalk& walk_;
    SimulatedField& field_;
    Random& random_;
    Walk record_{"walk 1", "walk.gpx", {{}}};
    LocalVector shared_;
    LocalPoint at_;
    bool started_ = false;
    double clock_s_ = 0.0;
    double tracked_s_ = 0.0;
};

}  // namespace

LineWalk draw_line_walk(Random& random) {
    LineWalk walk;
    walk.curve.scale = Metres::of(random.uniform(1.5, 4.0));
    if (random.chance(0.5)) {
        walk.curve.shape = CurveShape::hazard_rate;
        walk.curve.steepness = random.uniform(2.0, 5.0);
    }
    walk.line_gap_m = random.uniform(5.0, 14.0);
    walk.lead_m = random.uniform(0.0, 2.5);
    walk.pace_m_per_s = random.uniform(0.7, 1.2);
    walk.seconds_a_mark = random.uniform(8.0, 20.0);
    walk.track_every_s = random.uniform(1.0, 4.0);
    walk.shared_sd_m = random.uniform(1.0, 3.0);
    walk.shared_memory_s = 60.0 * random.log_uniform(4.0, 25.0);
    walk.own_sd_m = random.log_uniform(0.1, 0.6);
    return walk;
}

SimulatedField seen_from_line(SimulatedField field, const LineWalk& walk, Random& random) {
    assert(!field.survey.ground.boundary.empty() && field.survey.ground.boundary.parts.front().outer.vertices.size() >= 3);
    field.survey.walks.clear();
    field.survey.mounds.clear();
    for (TrueMound& mound : field.truth.mounds) mound.seen_as.reset();
    LineWalker walker(walk, field, random);
    for (const Leg& leg : legs_of(field.survey.ground.boundary.parts.front(), walk, random)) walker.walk_leg(leg);
    field.survey.walks.push_back(walker.finished());
    return field;
}

}  // namespace plugside
