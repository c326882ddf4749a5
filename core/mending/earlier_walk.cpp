#include "core/mending/earlier_walk.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "core/geometry/near_places.h"
#include "core/mending/double_marks.h"

namespace plugside {

namespace {

constexpr std::size_t step_of_stretches = 8;  // marks that share one shift
constexpr std::size_t margin = 8;             // marks before and after that help to find it

struct Candidate {
    std::size_t earlier = 0;  // into WalkMarks::marks
    LocalVector off;          // later - earlier
    double fans = 1.0;
};

struct Stretch {
    std::vector<std::size_t> own;                    // marks that are matched by it
    std::vector<std::vector<Candidate>> candidates;  // of own and margin marks
    std::vector<std::size_t> marks;                  // the same marks
    std::optional<LocalVector> shift;
};

class Overlay {
public:
    Overlay(const Survey& survey, const WalkMarks& walk, const EarlierWalkOptions& options)
        : survey_(survey), walk_(walk), options_(options) {}

    [[nodiscard]] double sd_m(std::size_t later, std::size_t earlier) const {
        const double one = walk_.marks[later].place.error.own_m, other = walk_.marks[earlier].place.error.own_m;
        return std::sqrt(one * one + other * other + options_.drift_left_m * options_.drift_left_m);
    }
    // Likeness of resting on this earlier mark over resting anywhere among mounds.
    [[nodiscard]] double likeness(std::size_t later, const Candidate& candidate, LocalVector shift) const {
        const double sd = sd_m(later, candidate.earlier), off_m = (candidate.off - shift).length_m();
        const double same = std::exp(-0.5 * off_m * off_m / (sd * sd)) / (2.0 * std::numbers::pi * sd * sd);
        return same / walk_.marks[candidate.earlier].density_m2 * candidate.fans;
    }
    // How much better the marks of the stretch rest with this shift than by chance, as a log.
    [[nodiscard]] double gain(const Stretch& stretch, LocalVector shift, double share) const {
        double sum = 0.0;
        for (std::size_t k = 0; k < stretch.marks.size(); ++k) {
            double rests = 0.0;
            for (const Candidate& candidate : stretch.candidates[k]) rests += likeness(stretch.marks[k], candidate, shift);
            sum += std::log(1.0 - share + share * rests);
        }
        return sum;
    }

    [[nodiscard]] Stretch stretch_of(const std::vector<std::size_t>& marks, std::size_t begin, const NearPlaces& near,
                                     const std::vector<std::size_t>& earlier) const {
        Stretch stretch;
        const std::size_t end = std::min(begin + step_of_stretches, marks.size());
        for (std::size_t k = begin > margin ? begin - margin : 0; k < std::min(end + margin, marks.size()); ++k) {
            const std::size_t mark = marks[k];
            if (k >= begin && k < end) stretch.own.push_back(mark);
            stretch.marks.push_back(mark);
            stretch.candidates.emplace_back();
            const Mound& mound = survey_.mounds[walk_.marks[mark].mound];
            for (const NearPlaces::Found& found : near.nearest(mound.plug, 60)) {
                if (found.distance_m > options_.farthest_shift_m) break;
                const std::size_t other = earlier[found.index];
                const Mound& before = survey_.mounds[walk_.marks[other].mound];
                stretch.candidates.back().push_back(
                    {other, mound.plug - before.plug, same_fan_ratio(mound.fan, before.fan, options_.fan_sd_degrees)});
            }
        }
        return stretch;
    }

    void find_shift(Stretch& stretch, double share) const {
        stretch.shift.reset();
        double best = 0.0;
        for (const LocalVector start : fullest_cells(stretch)) {
            LocalVector shift = start;
            for (int round = 0; round < 4; ++round) shift = mean_rest(stretch, shift, share);
            const double found = gain(stretch, shift, share);
            if (found <= best) continue;
            best = found;
            stretch.shift = shift;
        }
        // the best of all the places that a stretch could be laid on is a few of these better than chance by chance alone
        const double tried = std::log(std::pow(2.0 * options_.farthest_shift_m / 0.8, 2.0)) + 2.0;
        if (best < tried) stretch.shift.reset();
    }

private:
    // Where the steps from earlier marks to later ones gather, on a grid of 0.6 m: the five fullest cells.
    [[nodiscard]] std::vector<LocalVector> fullest_cells(const Stretch& stretch) const {
        constexpr double cell_m = 0.6;
        const int half = static_cast<int>(options_.farthest_shift_m / cell_m) + 2;
        const std::size_t side = static_cast<std::size_t>(2 * half + 1);
        std::vector<double> votes(side * side, 0.0);
        for (const auto& candidates : stretch.candidates)
            for (const Candidate& candidate : candidates) {
                const int east = static_cast<int>(std::lround(candidate.off.east_m / cell_m)) + half;
                const int north = static_cast<int>(std::lround(candidate.off.north_m / cell_m)) + half;
                for (int de = -1; de <= 1; ++de)
                    for (int dn = -1; dn <= 1; ++dn)
                        votes[static_cast<std::size_t>(std::clamp(north + dn, 0, 2 * half)) * side +
                              static_cast<std::size_t>(std::clamp(east + de, 0, 2 * half))] +=
                            candidate.fans * (de == 0 ? 1.0 : 0.6) * (dn == 0 ? 1.0 : 0.6);
            }
        std::vector<std::size_t> order(votes.size());
        for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
        const std::size_t most = std::min<std::size_t>(6, order.size());
        std::partial_sort(order.begin(), order.begin() + static_cast<std::ptrdiff_t>(most), order.end(),
                          [&](std::size_t a, std::size_t b) { return votes[a] != votes[b] ? votes[a] > votes[b] : a < b; });
        std::vector<LocalVector> cells;
        for (std::size_t k = 0; k < most; ++k)
            cells.push_back({(static_cast<double>(order[k] % side) - half) * cell_m,
                             (static_cast<double>(order[k] / side) - half) * cell_m});
        return cells;
    }

    [[nodiscard]] LocalVector mean_rest(const Stretch& stretch, LocalVector shift, double share) const {
        LocalVector sum;
        double total = 0.0;
        for (std::size_t k = 0; k < stretch.marks.size(); ++k) {
            double rests = 0.0;
            for (const Candidate& candidate : stretch.candidates[k]) rests += likeness(stretch.marks[k], candidate, shift);
            for (const Candidate& candidate : stretch.candidates[k]) {
                const double weight = share * likeness(stretch.marks[k], candidate, shift) / (1.0 - share + share * rests);
                sum = sum + candidate.off * weight;
                total += weight;
            }
        }
        return total > 0.0 ? sum * (1.0 / total) : shift;
    }

    const Survey& survey_;
    const WalkMarks& walk_;
    const EarlierWalkOptions& options_;
};

// Every match of a stretch's own marks with its chance; returns how many matches are expected among them.
double match(const Overlay& overlay, const Stretch& stretch, double share, double least, std::vector<MarkedBefore>* matches) {
    double expected = 0.0;
    if (!stretch.shift) return expected;
    for (std::size_t k = 0; k < stretch.marks.size(); ++k) {
        if (std::find(stretch.own.begin(), stretch.own.end(), stretch.marks[k]) == stretch.own.end()) continue;
        double rests = 0.0;
        for (const Candidate& c : stretch.candidates[k]) rests += overlay.likeness(stretch.marks[k], c, *stretch.shift);
        const double all = 1.0 - share + share * rests;
        expected += share * rests / all;
        if (matches == nullptr) continue;
        for (const Candidate& c : stretch.candidates[k]) {
            const double chance = share * overlay.likeness(stretch.marks[k], c, *stretch.shift) / all;
            if (chance >= least) matches->push_back({stretch.marks[k], c.earlier, chance, *stretch.shift});
        }
    }
    return expected;
}

// Of one visit against all earlier marks.
bool match_visit(const Survey& survey, const WalkMarks& walk, const std::vector<std::size_t>& later,
                 const std::vector<std::size_t>& earlier, const EarlierWalkOptions& options, const Progress& progress,
                 std::vector<MarkedBefore>& matches) {
    std::vector<LocalPoint> places;
    for (const std::size_t i : earlier) places.push_back(walk.marks[i].place.at);
    const NearPlaces near(places);
    const Overlay overlay(survey, walk, options);
    std::vector<Stretch> stretches;
    for (std::size_t begin = 0; begin < later.size(); begin += step_of_stretches) {
        if (progress.stopped()) return false;
        stretches.push_back(overlay.stretch_of(later, begin, near, earlier));
    }
    double share = 0.5;
    for (int round = 0; round < 3; ++round) {
        double expected = 0.0;
        for (Stretch& stretch : stretches) {
            if (progress.stopped()) return false;
            overlay.find_shift(stretch, share);
            expected += match(overlay, stretch, share, 1.0, nullptr);
        }
        share = std::clamp(expected / static_cast<double>(later.size()), 0.05, 0.95);
    }
    for (const Stretch& stretch : stretches) match(overlay, stretch, share, options.least_chance, &matches);
    return true;
}

}  // namespace

std::vector<MarkedBefore> marked_before(const Survey& survey, const WalkMarks& walk, const EarlierWalkOptions& options,
                                        const Progress& progress) {
    const std::vector<std::size_t> visit = visits_of(survey, walk);
    std::size_t visits = 0;
    for (const std::size_t v : visit) visits = std::max(visits, v + 1);
    std::vector<std::vector<std::size_t>> of_visit(visits);
    for (std::size_t i = 0; i < walk.marks.size(); ++i)
        if (is_gopher_sign(survey.mounds[walk.marks[i].mound].kind)) of_visit[visit[walk.marks[i].place.walk]].push_back(i);
    std::vector<MarkedBefore> matches;
    std::vector<std::size_t> earlier;
    for (std::size_t v = 0; v < visits; ++v) {
        if (!earlier.empty() && !of_visit[v].empty() &&
            !match_visit(survey, walk, of_visit[v], earlier, options, progress, matches))
            return {};
        earlier.insert(earlier.end(), of_visit[v].begin(), of_visit[v].end());
    }
    std::sort(matches.begin(), matches.end(), [](const MarkedBefore& a, const MarkedBefore& b) {
        return a.chance != b.chance ? a.chance > b.chance : std::pair(a.later, a.earlier) < std::pair(b.later, b.earlier);
    });
    std::set<std::size_t> taken, matched;
    std::erase_if(matches, [&](const MarkedBefore& m) {
        if (taken.contains(m.earlier) || matched.contains(m.later)) return true;
        taken.insert(m.earlier);
        matched.insert(m.later);
        return false;
    });
    return matches;
}

}  // namespace plugside
