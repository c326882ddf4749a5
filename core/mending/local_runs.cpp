#include "core/mending/local_runs.h"

#include <cmath>
#include <numbers>

#include "core/geometry/near_places.h"

namespace plugside {

namespace {

constexpr std::size_t neighbours = 7;
constexpr double least_step_m = 0.3;  // nearer marks say nothing of a direction

class TripleFinder {
public:
    TripleFinder(const Survey& survey, const WalkMarks& walk, const TripleRule& rule)
        : survey_(survey),
          walk_(walk),
          least_cosine_(std::cos((180.0 - rule.least_angle_degrees) * std::numbers::pi / 180.0)),
          rule_(rule) {}

    [[nodiscard]] std::optional<Triple> best_about(std::size_t mark, const std::vector<std::size_t>& near) const {
        std::optional<Triple> best;
        double best_way_m = 0.0;
        for (std::size_t a = 0; a < near.size(); ++a)
            for (std::size_t b = 0; b < a; ++b) {
                const double way_m = distance_m(place(mark), place(near[a])) + distance_m(place(mark), place(near[b]));
                if (best && way_m >= best_way_m) continue;
                if (const auto triple = triple_of(mark, std::min(near[a], near[b]), std::max(near[a], near[b]))) {
                    best = triple;
                    best_way_m = way_m;
                }
            }
        return best;
    }

private:
    [[nodiscard]] LocalPoint place(std::size_t mark) const { return walk_.marks[mark].place.at; }
    [[nodiscard]] LocalVector fan_step(std::size_t mark) const {
        const auto& fan = survey_.mounds[walk_.marks[mark].mound].fan;
        return fan ? fan->unit() : LocalVector{};
    }

    [[nodiscard]] std::optional<Triple> triple_of(std::size_t mark, std::size_t one, std::size_t other) const {
        const LocalVector to_one = place(one) - place(mark), to_other = place(other) - place(mark);
        const double one_m = to_one.length_m(), other_m = to_other.length_m();
        if (one_m < least_step_m || other_m < least_step_m) return std::nullopt;
        if (-dot(to_one, to_other) < least_cosine_ * one_m * other_m) return std::nullopt;
        const LocalVector line = place(other) - place(one);
        const LocalVector along = line * (1.0 / line.length_m());
        const LocalVector fan = fan_step(mark);
        const LocalVector across = dot(turned_right(along), fan) >= 0.0 ? turned_right(along) : turned_right(along) * -1.0;
        const double off = turn_degrees(*Bearing::along(across), *Bearing::along(fan));
        if (std::abs(off) > rule_.most_off_across_degrees) return std::nullopt;
        const double share = dot(place(mark) - place(one), along) / line.length_m();
        Triple triple{.mark = mark, .one = one, .other = other};
        triple.length_m = line.length_m();
        triple.across_degrees = off;
        triple.offset_m = dot(place(mark) - place(one), across);
        triple.part_mark = dot(fan, across);
        triple.part_one = -(1.0 - share) * dot(fan_step(one), across);
        triple.part_other = -share * dot(fan_step(other), across);
        triple.place_sd_m = place_sd_m(walk_.marks[mark].place, walk_.marks[one].place, walk_.marks[other].place, share);
        return triple;
    }

    // Of the first less a mean of the other two.
    [[nodiscard]] static double place_sd_m(const PlacedMark& mark, const PlacedMark& one, const PlacedMark& other,
                                           double share) {
        const auto whole = [](const PlacedMark& m) {
            return m.error.own_m * m.error.own_m + m.error.shared_m * m.error.shared_m;
        };
        const double rest = 1.0 - share;
        const double variance = whole(mark) + rest * rest * whole(one) + share * share * whole(other) -
                                2.0 * rest * shared_covariance_m2(mark, one) -
                                2.0 * share * shared_covariance_m2(mark, other) +
                                2.0 * rest * share * shared_covariance_m2(one, other);
        return std::sqrt(std::max(variance, 1e-6));
    }

    const Survey& survey_;
    const WalkMarks& walk_;
    double least_cosine_;
    TripleRule rule_;
};

}  // namespace

std::vector<Triple> triples_of(const Survey& survey, const WalkMarks& walk, const TripleRule& rule) {
    std::vector<std::size_t> number;
    std::vector<LocalPoint> places;
    for (std::size_t i = 0; i < walk.marks.size(); ++i)
        if (is_gopher_sign(survey.mounds[walk.marks[i].mound].kind)) {
            number.push_back(i);
            places.push_back(walk.marks[i].place.at);
        }
    const auto [along, mark] = along_curve(places, number);
    const NearPlaces near(along);
    const TripleFinder finder(survey, walk, rule);
    std::vector<Triple> triples;
    for (std::size_t i = 0; i < along.size(); ++i) {
        if (!survey.mounds[walk.marks[mark[i]].mound].fan) continue;
        std::vector<std::size_t> about;
        for (const NearPlaces::Found& found : near.nearest(along[i], neighbours + 1))
            if (found.index != i) about.push_back(mark[found.index]);
        if (const auto triple = finder.best_about(mark[i], about)) triples.push_back(*triple);
    }
    return triples;
}

}  // namespace plugside
