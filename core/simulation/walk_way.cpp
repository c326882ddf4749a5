#include "core/simulation/walk_way.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/simulation/walk_simulator.h"

namespace plugside {

namespace {

// How far off the next mound may be for a walker to go straight to it instead of back to the line. Our assumption.
constexpr double follow_m = 4.0;

class WayMaker {
public:
    WayMaker(const FieldDomain& domain, FieldPart part, const WalkerHabits& habits)
        : domain_(domain), part_(part), habits_(habits) {}

    void add(WayStop stop) {
        cells_[cell_of(stop.at)].push_back(stops_.size());
        stops_.push_back(stop);
        done_.push_back(false);
    }

    std::vector<WayStop> make() {
        const double width_m = 2.0 * domain_.half_short_m() / static_cast<double>(part_.of);
        const double from_m = -domain_.half_short_m() + width_m * static_cast<double>(part_.number);
        const auto lines = static_cast<std::size_t>(std::max(1.0, std::ceil(width_m / habits_.line_gap_m)));
        const double gap_m = width_m / static_cast<double>(lines);
        std::vector<std::vector<std::size_t>> by_line(lines);
        for (std::size_t i = 0; i < stops_.size(); ++i) {
            const double line = std::floor((across(stops_[i].at) - from_m) / gap_m);
            by_line[static_cast<std::size_t>(std::clamp(line, 0.0, static_cast<double>(lines - 1)))].push_back(i);
        }
        for (std::size_t line = 0; line < lines; ++line) {
            const double forward = line % 2 == 0 ? 1.0 : -1.0;
            const double line_across = from_m + gap_m * (static_cast<double>(line) + 0.5);
            const double end = domain_.half_long_m() - 2.0;
            std::sort(by_line[line].begin(), by_line[line].end(), [&](std::size_t a, std::size_t b) {
                const double at_a = forward * along(stops_[a].at);
                const double at_b = forward * along(stops_[b].at);
                return at_a != at_b ? at_a < at_b : a < b;
            });
            way_.push_back({domain_.at(-forward * end, line_across), {}, {}});
            for (const std::size_t i : by_line[line]) visit_from_line(i, line_across);
            way_.push_back({domain_.at(forward * end, line_across), {}, {}});
        }
        return std::move(way_);
    }

private:
    using Cell = std::pair<long, long>;
    [[nodiscard]] double along(LocalPoint p) const { return dot(p - LocalPoint{}, domain_.axis()); }
    [[nodiscard]] double across(LocalPoint p) const { return dot(p - LocalPoint{}, turned_right(domain_.axis())); }
    [[nodiscard]] static Cell cell_of(LocalPoint p) {
        return {std::lround(std::floor(p.east_m / follow_m)), std::lround(std::floor(p.north_m / follow_m))};
    }

    void visit_from_line(std::size_t first, double line_across) {
        if (done_[first]) return;
        const double leaves_at = along(stops_[first].at);
        way_.push_back({domain_.at(leaves_at, line_across), {}, {}});
        std::optional<std::size_t> next = first;
        while (next) {
            done_[*next] = true;
            way_.push_back(stops_[*next]);
            next = habits_.follows_mounds ? nearest_left(stops_[*next].at) : std::nullopt;
        }
        way_.push_back({domain_.at(leaves_at, line_across), {}, {}});  // back to where the line was left
    }

    [[nodiscard]] std::optional<std::size_t> nearest_left(LocalPoint p) const {
        std::optional<std::size_t> best;
        double best_m = follow_m;
        const Cell centre = cell_of(p);
        for (long c = centre.first - 1; c <= centre.first + 1; ++c)
            for (long r = centre.second - 1; r <= centre.second + 1; ++r) {
                const auto cell = cells_.find({c, r});
                if (cell == cells_.end()) continue;
                for (const std::size_t i : cell->second)
                    if (const double away = distance_m(stops_[i].at, p); !done_[i] && away < best_m) {
                        best = i;
                        best_m = away;
                    }
            }
        return best;
    }

    const FieldDomain& domain_;
    FieldPart part_;
    const WalkerHabits& habits_;
    std::vector<WayStop> stops_;
    std::vector<bool> done_;
    std::map<Cell, std::vector<std::size_t>> cells_;
    std::vector<WayStop> way_;
};

}  // namespace

std::size_t part_of(LocalPoint place, const FieldDomain& domain, std::size_t parts) {
    const double across = dot(place - LocalPoint{}, turned_right(domain.axis()));
    const double width_m = 2.0 * domain.half_short_m() / static_cast<double>(parts);
    const double part = std::floor((across + domain.half_short_m()) / width_m);
    return static_cast<std::size_t>(std::clamp(part, 0.0, static_cast<double>(parts - 1)));
}

std::vector<WayStop> walk_way(const FieldDomain& domain, FieldPart part, const WalkerHabits& habits, const FieldTruth& truth,
                              const std::vector<bool>& seen, const std::vector<OtherSign>& others) {
    WayMaker maker(domain, part, habits);
    for (std::size_t i = 0; i < truth.mounds.size(); ++i)
        if (seen[i] && part_of(truth.mounds[i].plug, domain, part.of) == part.number)
            maker.add({truth.mounds[i].plug, i, {}});
    for (std::size_t i = 0; i < others.size(); ++i)
        if (part_of(others[i].at, domain, part.of) == part.number) maker.add({others[i].at, {}, i});
    return maker.make();
}

}  // namespace plugside
