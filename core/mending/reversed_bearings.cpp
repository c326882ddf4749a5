#include "core/mending/reversed_bearings.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/geometry/near_places.h"
#include "core/geometry/space_curve.h"

namespace plugside {

namespace {

constexpr std::size_t neighbours = 8;

double normal_density(double x, double sd) {
    return std::exp(-0.5 * x * x / (sd * sd)) / (sd * std::sqrt(2.0 * std::numbers::pi));
}

// How well a mark's take-off lies in line with neighbouring ones, with its own walk's fans as read (+1) or turned round
// (-1).
class LineUp {
public:
    LineUp(const Survey& survey, const WalkMarks& walk, double lateral_m) : walk_(walk), near_(walk.marks.size()) {
        std::vector<LocalPoint> places, along;
        for (const WalkMark& mark : walk.marks) {
            const auto& fan = survey.mounds[mark.mound].fan;
            fan_.push_back(fan && is_gopher_sign(survey.mounds[mark.mound].kind) ? fan->unit() : LocalVector{});
            lateral_.push_back(fan_.back() * lateral_m);
            places.push_back(mark.place.at);
        }
        const std::vector<std::uint32_t> order = order_along_curve(places);
        for (const std::uint32_t i : order) along.push_back(places[i]);
        const NearPlaces near(along);
        for (std::size_t k = 0; k < along.size(); ++k)
            if (has_fan(order[k]))
                for (const NearPlaces::Found& found : near.nearest(along[k], neighbours + 1))
                    if (found.index != k && has_fan(order[found.index])) near_[order[k]].push_back(order[found.index]);
    }
    [[nodiscard]] bool has_fan(std::size_t mark) const { return fan_[mark] != LocalVector{}; }

    [[nodiscard]] double log_ratio(std::size_t mark) const { return std::log(in_line(mark, 1.0) / in_line(mark, -1.0)); }

private:
    [[nodiscard]] double in_line(std::size_t mark, double side) const {
        double sum = 0.02;  // no neighbour is on its run
        const PlacedMark& here = walk_.marks[mark].place;
        for (const std::size_t other : near_[mark]) {
            const PlacedMark& there = walk_.marks[other].place;
            const double its_side = there.walk == here.walk ? side : 1.0;
            const LocalVector way = (there.at - lateral_[other] * its_side) - (here.at - lateral_[mark] * side);
            const double sd = 0.3 + 0.15 * way.length_m() + 0.7 * relative_sd_m(here, there);
            const double off = std::hypot(dot(way, fan_[mark]), dot(way, fan_[other])) / sd;
            sum += std::exp(-0.5 * off * off - way.length_m() / walk_.spacing_m);
        }
        return sum;
    }

    const WalkMarks& walk_;
    std::vector<LocalVector> fan_, lateral_;
    std::vector<std::vector<std::size_t>> near_;
};

// What the offsets of triples look like on this walk: a run, bent by so much, or no run at all.
struct OffsetSpread {
    double bend_m = 0.3;  // sd of a run about the straight line between two neighbours
    double no_run_share = 0.5;
    [[nodiscard]] double density(double off_m, double place_sd_m) const {
        constexpr double no_run_sd_m = 1.0;
        return (1.0 - no_run_share) * normal_density(off_m, std::hypot(place_sd_m, bend_m)) +
               no_run_share * normal_density(off_m, std::hypot(place_sd_m, no_run_sd_m));
    }
};

OffsetSpread fit_spread(const std::vector<Triple>& triples, double lateral_m) {
    constexpr std::array<double, 8> bends{0.05, 0.08, 0.12, 0.18, 0.27, 0.4, 0.6, 0.9};
    constexpr std::array<double, 6> shares{0.03, 0.1, 0.2, 0.35, 0.5, 0.7};
    const std::size_t step = std::max<std::size_t>(triples.size() / 2000, 1);  // 2,000 of them tell as much as all
    OffsetSpread best;
    double best_log = 0.0;
    bool first = true;
    for (const double bend : bends)
        for (const double share : shares) {
            const OffsetSpread spread{bend, share};
            double sum = 0.0;
            for (std::size_t i = 0; i < triples.size(); i += step)
                sum +=
                    std::log(spread.density(triples[i].offset_m - lateral_m * triples[i].fan_off(), triples[i].place_sd_m));
            if (!first && sum <= best_log) continue;
            first = false;
            best_log = sum;
            best = spread;
        }
    return best;
}

}  // namespace

std::vector<WrongEndWalk> fan_agreement(const Survey& survey, const WalkMarks& walk, const ReversedOptions& options,
                                        const Progress& progress) {
    const LineUp line_up(survey, walk, options.lateral_m);
    std::vector<WrongEndWalk> walks;
    for (std::size_t w = 0; w + 1 < walk.walk_begin.size(); ++w) {
        WrongEndWalk result{.walk = w};
        double sum = 0.0, squares = 0.0;
        for (std::size_t i = walk.walk_begin[w]; i < walk.walk_begin[w + 1]; ++i) {
            if (i % 1024 == 0 && progress.stopped()) return {};
            if (!line_up.has_fan(i)) continue;
            const double ratio = line_up.log_ratio(i);
            ++result.fans;
            sum += ratio;
            squares += ratio * ratio;
        }
        if (result.fans < options.least_fans || squares <= 0.0) continue;
        result.agreement = sum / std::sqrt(squares);
        walks.push_back(result);
    }
    return walks;
}

std::vector<ReversedFan> reversed_fans(const Survey& survey, const WalkMarks& walk, const ReversedOptions& options,
                                       const Progress& progress) {
    const std::vector<Triple> triples = triples_of(survey, walk);
    if (triples.size() < 10 || progress.stopped()) return {};
    const OffsetSpread spread = fit_spread(triples, options.lateral_m);
    std::vector<double> log_odds(walk.marks.size(), std::log(options.usual_share / (1.0 - options.usual_share)));
    for (const Triple& triple : triples) {
        const double as_read = triple.offset_m - options.lateral_m * triple.fan_off();
        const double likely = spread.density(as_read, triple.place_sd_m);
        const auto turn = [&](std::size_t mark, double part) {
            log_odds[mark] += std::log(spread.density(as_read + 2.0 * options.lateral_m * part, triple.place_sd_m) / likely);
        };
        turn(triple.mark, triple.part_mark);
        turn(triple.one, triple.part_one);
        turn(triple.other, triple.part_other);
    }
    std::vector<ReversedFan> result;
    for (const Triple& triple : triples) {
        const double chance = 1.0 / (1.0 + std::exp(-log_odds[triple.mark]));
        if (chance < options.least_chance) continue;
        const double as_read = triple.offset_m - options.lateral_m * triple.fan_off();
        const double turned = as_read + 2.0 * options.lateral_m * triple.part_mark;
        // a neighbour with a turned fan throws doubt on this one; the one that explains more is named
        if (std::abs(turned) >= std::abs(as_read)) continue;
        result.push_back({triple.mark, chance, std::abs(as_read), std::abs(turned), triple.one, triple.other});
    }
    std::sort(result.begin(), result.end(), [](const ReversedFan& a, const ReversedFan& b) { return a.mark < b.mark; });
    return result;
}

}  // namespace plugside
