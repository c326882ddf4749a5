#include "core/walking/line_of_travel.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <limits>

#include "core/geometry/near_places.h"

namespace plugside {

namespace {

constexpr double step_m = 1.0;
constexpr double at_mark_m = 0.75;
constexpr double longest_string_m = 20.0;
constexpr double deepest_m = 10.0;
constexpr double unrest_m = 2.0;
constexpr double most_way_m = 48.0;
constexpr double beyond_marks_m = 1.5;
constexpr double least_gain_m = 0.3;
constexpr double far_off_m = 15.0;
constexpr double near_way_m = 15.0;
constexpr double clock_slack_s = 30.0;

struct Node {
    LocalPoint at;
    double way_m;
    std::optional<UtcTime> time;
};

// Vertices at most a step apart.
std::vector<Node> nodes_of(const SearchedPiece& piece) {
    std::vector<Node> nodes;
    const auto& v = piece.track.vertices;
    for (std::size_t i = 0; i < v.size(); ++i) {
        if (i > 0) {
            const auto parts = static_cast<int>(std::ceil(distance_m(v[i - 1], v[i]) / step_m));
            for (int k = 1; k < parts; ++k) {
                const double share = static_cast<double>(k) / parts;
                Node node{v[i - 1] + (v[i] - v[i - 1]) * share, std::lerp(piece.way_m[i - 1], piece.way_m[i], share), {}};
                if (piece.time[i - 1] && piece.time[i])
                    node.time = *piece.time[i - 1] +
                                std::chrono::milliseconds(std::llround(
                                    share * static_cast<double>((*piece.time[i] - *piece.time[i - 1]).count())));
                nodes.push_back(node);
            }
        }
        nodes.push_back({v[i], piece.way_m[i], piece.time[i]});
    }
    return nodes;
}

struct MarkPlace {
    std::size_t mark;
    std::size_t piece;
    std::size_t node;
};

// Where on the track each mark was made.
class MarkFinder {
public:
    explicit MarkFinder(const std::vector<std::vector<Node>>& pieces) : pieces_(pieces), near_(places_of(pieces)) {
        for (std::size_t p = 0; p < pieces.size(); ++p)
            for (std::size_t n = 0; n < pieces[p].size(); ++n) {
                address_.push_back({0, p, n});
                if (pieces[p][n].time) timed_.push_back(address_.back());
            }
        std::stable_sort(timed_.begin(), timed_.end(),
                         [&](const MarkPlace& a, const MarkPlace& b) { return time(a) < time(b); });
    }
    [[nodiscard]] std::optional<MarkPlace> find(std::size_t number, const MarkOnWalk& mark) const {
        std::optional<MarkPlace> found;
        if (mark.time && !timed_.empty()) found = by_time(mark);
        if (!found) found = by_place(mark.at);
        if (found) found->mark = number;
        return found;
    }

private:
    static NearPlaces places_of(const std::vector<std::vector<Node>>& pieces) {
        std::vector<LocalPoint> places;
        for (const auto& piece : pieces)
            for (const Node& node : piece) places.push_back(node.at);
        return NearPlaces(std::move(places));
    }
    [[nodiscard]] const Node& node(const MarkPlace& p) const { return pieces_[p.piece][p.node]; }
    [[nodiscard]] UtcTime time(const MarkPlace& p) const { return *node(p).time; }
    // The nearest place of the track within half a minute of the mark's time.
    [[nodiscard]] std::optional<MarkPlace> by_time(const MarkOnWalk& mark) const {
        const auto slack = std::chrono::milliseconds(static_cast<long>(clock_slack_s * 1000));
        const auto at = std::lower_bound(timed_.begin(), timed_.end(), *mark.time,
                                         [&](const MarkPlace& p, UtcTime t) { return time(p) < t; });
        std::optional<MarkPlace> best;
        double best_m = far_off_m;
        const auto look = [&](const MarkPlace& p) {
            // a second off counts as much as a quarter of a metre: clocks agree, receivers wander
            const double off_s = std::abs(std::chrono::duration<double>(time(p) - *mark.time).count());
            const double m = distance_m(node(p).at, mark.at) + 0.25 * off_s;
            if (m >= best_m) return;
            best_m = m;
            best = p;
        };
        for (auto i = at; i != timed_.end() && time(*i) - *mark.time <= slack; ++i) look(*i);
        for (auto i = at; i != timed_.begin() && *mark.time - time(*std::prev(i)) <= slack; --i) look(*std::prev(i));
        return best;
    }
    [[nodiscard]] std::optional<MarkPlace> by_place(LocalPoint at) const {
        const auto found = near_.nearest(at, 1);
        if (found.empty() || found.front().distance_m > far_off_m) return std::nullopt;
        return address_[found.front().index];
    }
    const std::vector<std::vector<Node>>& pieces_;
    NearPlaces near_;
    std::vector<MarkPlace> address_;
    std::vector<MarkPlace> timed_;
};

// The shortest line through one piece's nodes under the rules of the header.
class Shortening {
public:
    Shortening(const std::vector<Node>& nodes, const std::vector<MarkPlace>& marks)
        : nodes_(nodes), marks_(marks), marks_before_(nodes.size() + 1, 0), at_mark_(nodes.size(), false) {
        for (const MarkPlace& m : marks) ++marks_before_[m.node + 1];
        for (std::size_t i = 0; i < nodes.size(); ++i) marks_before_[i + 1] += marks_before_[i];
        for (const MarkPlace& m : marks) {
            for (std::size_t i = m.node + 1; i-- > 0 && nodes[m.node].way_m - nodes[i].way_m <= at_mark_m;)
                at_mark_[i] = true;
            for (std::size_t i = m.node; i < nodes.size() && nodes[i].way_m - nodes[m.node].way_m <= at_mark_m; ++i)
                at_mark_[i] = true;
        }
        if (!nodes.empty()) at_mark_.front() = at_mark_.back() = false;
    }

    TravelPiece make() {
        const std::size_t n = nodes_.size();
        std::vector<double> best(n, std::numeric_limits<double>::infinity());
        std::vector<std::size_t> from(n, 0);
        best[0] = 0.0;
        for (std::size_t j = 1; j < n; ++j) {
            if (at_mark_[j]) continue;
            // where no rule lets the line pass, it goes through the mark after all
            best[j] = best[j - 1] + distance_m(nodes_[j - 1].at, nodes_[j].at);
            from[j] = j - 1;
            for (std::size_t i = j - 1; i-- > 0 && nodes_[j].way_m - nodes_[i].way_m <= most_way_m;) {
                const double room_m = best[j] - best[i] - least_gain_m;
                if (!(room_m > 0.0) || marks_before_[j] == marks_before_[i + 1]) continue;
                const LocalVector way = nodes_[j].at - nodes_[i].at;
                const double squared = dot(way, way);
                if (squared >= room_m * room_m || !may_skip(i, j)) continue;
                const double length = best[i] + std::sqrt(squared) + least_gain_m;
                const double cost = length + overshoot_m(i, j);
                if (cost >= best[j]) continue;
                best[j] = cost;
                from[j] = i;
            }
            if (!(best[j] < std::numeric_limits<double>::infinity())) pass_through(j, best, from);
        }
        TravelPiece piece;
        for (std::size_t j = n; j-- > 0;) {
            piece.line.vertices.push_back(nodes_[j].at);
            piece.way_m.push_back(nodes_[j].way_m);
            if (j == 0) break;
            j = from[j] + 1;
        }
        std::reverse(piece.line.vertices.begin(), piece.line.vertices.end());
        std::reverse(piece.way_m.begin(), piece.way_m.end());
        return piece;
    }

private:
    void pass_through(std::size_t j, std::vector<double>& best, std::vector<std::size_t>& from) const {
        std::size_t i = j - 1;
        while (!(best[i] < std::numeric_limits<double>::infinity())) --i;  // node 0 is always reached
        best[j] = best[i] + distance_m(nodes_[i].at, nodes_[j].at);
        from[j] = i;
    }
    // Whether the way from one node to the next is the shorter of straight and `other`, but for a receiver's unrest.
    [[nodiscard]] static bool about(double way_m, double other_m) { return way_m <= 1.1 * other_m + unrest_m; }

    // There are marks between the two.
    [[nodiscard]] bool may_skip(std::size_t i, std::size_t j) const {
        const LocalPoint a = nodes_[i].at;
        const LocalPoint b = nodes_[j].at;
        const auto first = std::lower_bound(marks_.begin(), marks_.end(), i + 1,
                                            [](const MarkPlace& m, std::size_t node) { return m.node < node; });
        Stop before{a, a, 0.0, nodes_[i].way_m};
        double off_since_m = nodes_[i].way_m;  // way at which the line was left last
        double deepest = 0.0;
        for (auto m = first; m != marks_.end() && m->node < j; ++m) {
            const Stop stop = stop_at(m->node, a, b);
            if (stop.depth_m > deepest_m || !comes(before, stop, off_since_m)) return false;
            deepest = std::max(deepest, stop.depth_m);
            before = stop;
        }
        if (!comes(before, {b, b, 0.0, nodes_[j].way_m}, off_since_m)) return false;
        for (std::size_t k = i + 1; k < j; ++k)
            if (distance_to_segment_m(nodes_[k].at, a, b) > deepest + beyond_marks_m) return false;
        return true;
    }

    // How far the way between two marks on one side of the chord goes to the other side of it, summed over such ways: of
    // all lines of one length that could have been walked, the one the walker came back to is the furthest from the marks.
    [[nodiscard]] double overshoot_m(std::size_t i, std::size_t j) const {
        const LocalVector side = nodes_[j].at - nodes_[i].at;
        const double length = side.length_m();
        if (length < step_m) return 0.0;
        const auto off = [&](std::size_t k) { return cross(side, nodes_[k].at - nodes_[i].at) / length; };
        auto next = std::lower_bound(marks_.begin(), marks_.end(), i + 1,
                                     [](const MarkPlace& m, std::size_t node) { return m.node < node; });
        double side_before = off(next->node);
        double sum = 0.0;
        double beyond = 0.0;
        for (std::size_t k = i + 1; k < j; ++k) {
            const bool mark_left = next != marks_.end() && next->node < j;
            const double side_next = mark_left ? off(next->node) : side_before;
            if (side_before * side_next > 0.0) beyond = std::max(beyond, side_next > 0.0 ? -off(k) : off(k));
            if (!mark_left || next->node > k) continue;
            sum += beyond;
            beyond = 0.0;
            side_before = side_next;
            while (next != marks_.end() && next->node <= k) ++next;
        }
        return sum + beyond;
    }

    struct Stop {
        LocalPoint at;
        LocalPoint foot;  // on the chord
        double depth_m;
        double way_m;
    };
    [[nodiscard]] Stop stop_at(std::size_t node, LocalPoint a, LocalPoint b) const {
        const LocalPoint at = nodes_[node].at;
        const LocalVector side = b - a;
        const double length2 = dot(side, side);
        const LocalPoint foot = a + side * (length2 > 0.0 ? std::clamp(dot(at - a, side) / length2, 0.0, 1.0) : 0.0);
        return {at, foot, distance_m(at, foot), nodes_[node].way_m};
    }
    // From one stop to the next, straight or back by the chord; a string of straight ways must be short.
    [[nodiscard]] static bool comes(const Stop& from, const Stop& to, double& off_since_m) {
        const double way = to.way_m - from.way_m;
        const double straight = distance_m(from.at, to.at);
        const double by_chord = from.depth_m + distance_m(from.foot, to.foot) + to.depth_m;
        if (!about(way, by_chord)) return false;
        // the shortest way that touches the chord between two stops on its one side
        const bool one_side = dot(from.at - from.foot, to.at - to.foot) > 0.0;
        const double touching = one_side ? std::hypot(distance_m(from.foot, to.foot), from.depth_m + to.depth_m) : straight;
        const bool touched = 2.0 * way > straight + touching || touching - straight < 0.5 * unrest_m;
        if (to.depth_m > 0.0 && touched) off_since_m = to.way_m - to.depth_m;
        return to.way_m - off_since_m <= longest_string_m;
    }
    const std::vector<Node>& nodes_;
    const std::vector<MarkPlace>& marks_;
    std::vector<int> marks_before_;
    std::vector<bool> at_mark_;
};

// Distance from the line where the way is near the mark's own; the nearest foot comes back, too.
struct Foot {
    double distance_m = std::numeric_limits<double>::infinity();
    LocalPoint at;
};

Foot foot_on(const TravelPiece& piece, double way_m, LocalPoint mark) {
    Foot foot;
    const auto& v = piece.line.vertices;
    if (v.size() == 1) return {distance_m(v.front(), mark), v.front()};
    const auto first = std::lower_bound(piece.way_m.begin(), piece.way_m.end(), way_m - near_way_m) - piece.way_m.begin();
    for (std::size_t k = static_cast<std::size_t>(std::max<std::ptrdiff_t>(1, first)); k < v.size(); ++k) {
        const LocalVector side = v[k] - v[k - 1];
        const double length2 = dot(side, side);
        const double share = length2 > 0.0 ? std::clamp(dot(mark - v[k - 1], side) / length2, 0.0, 1.0) : 0.0;
        const LocalPoint at = v[k - 1] + side * share;
        if (const double m = distance_m(at, mark); m < foot.distance_m) foot = {m, at};
        if (piece.way_m[k] > way_m + near_way_m) break;
    }
    return foot;
}

double usual_fix_m(const SearchedPiece& piece) {
    std::vector<double> steps;
    for (std::size_t i = 1; i < piece.track.vertices.size(); ++i)
        steps.push_back(distance_m(piece.track.vertices[i - 1], piece.track.vertices[i]));
    if (steps.empty()) return 0.0;
    const auto middle = steps.begin() + static_cast<std::ptrdiff_t>(steps.size() / 2);
    std::nth_element(steps.begin(), middle, steps.end());
    return *middle;
}

void add_marks(const std::vector<Node>& nodes, const std::vector<MarkPlace>& places, const std::vector<MarkOnWalk>& marks,
               std::size_t piece, double usual_fix_m, LineOfTravel& result) {
    const double clearly_m = std::max(1.5, 2.5 * usual_fix_m);
    std::optional<Foot> before;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const LocalPoint at = marks[places[i].mark].at;
        const double way_m = nodes[places[i].node].way_m;
        const Foot foot = foot_on(result.pieces[piece], way_m, at);
        MarkBesideLine mark{places[i].mark, piece, way_m, Metres::of(foot.distance_m), false, false};
        if (before) {
            const double straight = distance_m(marks[places[i - 1].mark].at, at);
            // the shortest way that touches the line; marks on different sides have it crossed in any case
            const bool one_side = dot(marks[places[i - 1].mark].at - before->at, at - foot.at) > 0.0;
            const double by_line =
                one_side ? std::hypot(distance_m(before->at, foot.at), before->distance_m + foot.distance_m) : straight;
            const double walked = way_m - nodes[places[i - 1].node].way_m;
            mark.told = by_line - straight > clearly_m;
            mark.followed = mark.told && walked < 0.5 * (by_line + straight);
        }
        result.marks.push_back(mark);
        before = foot;
    }
}

}  // namespace

LineOfTravel line_of_travel(const SearchedTrack& track, const std::vector<MarkOnWalk>& marks) {
    std::vector<std::vector<Node>> pieces;
    for (const SearchedPiece& piece : track.pieces) pieces.push_back(nodes_of(piece));
    LineOfTravel result;
    if (pieces.empty()) return result;
    const MarkFinder finder(pieces);
    std::vector<std::vector<MarkPlace>> places(pieces.size());
    for (std::size_t i = 0; i < marks.size(); ++i)
        if (const auto found = finder.find(i, marks[i])) places[found->piece].push_back(*found);
    for (std::size_t p = 0; p < pieces.size(); ++p) {
        std::stable_sort(places[p].begin(), places[p].end(),
                         [](const MarkPlace& a, const MarkPlace& b) { return a.node < b.node; });
        result.pieces.push_back(Shortening(pieces[p], places[p]).make());
        add_marks(pieces[p], places[p], marks, p, usual_fix_m(track.pieces[p]), result);
    }
    return result;
}

}  // namespace plugside
