#include "core/mending/double_marks.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <unordered_map>

#include "core/geometry/near_places.h"

namespace plugside {

namespace {

constexpr double pi = std::numbers::pi;

double normal_density(double x, double sd) { return std::exp(-0.5 * x * x / (sd * sd)) / (sd * std::sqrt(2.0 * pi)); }

// How long a walker takes from one mark to the next, as a log-normal with a floor; robust against a few second marks.
struct WaitBetweenMarks {
    double median_s = 20.0;
    double log_sd = 0.4;
    [[nodiscard]] double density(double seconds) const {
        constexpr double of_anything = 0.0001;  // per second: hurry, a mark taken in passing
        return normal_density(std::log(std::max(seconds, 0.1) / median_s), log_sd) / std::max(seconds, 0.1) + of_anything;
    }
};

WaitBetweenMarks wait_between(const WalkMarks& walk, std::size_t begin, std::size_t end) {
    std::vector<double> waits;
    for (std::size_t i = begin + 1; i < end; ++i)
        if (const auto wait = seconds_between(walk.marks[i - 1].place, walk.marks[i].place)) waits.push_back(*wait);
    if (waits.size() < 10) return {};
    std::sort(waits.begin(), waits.end());
    WaitBetweenMarks between;
    between.median_s = std::max(waits[waits.size() / 2], 1.0);
    const double low = std::max(waits[waits.size() / 5], 0.5);  // its fifth: 0.84 sd below
    between.log_sd = std::clamp(std::log(between.median_s / low) / 0.84, 0.2, 1.0);
    return between;
}

// The share of each note among the marks of one walk that have no fan.
using NoteShares = std::unordered_map<std::string, double>;
NoteShares note_shares(const Survey& survey, const WalkMarks& walk, std::size_t begin, std::size_t end) {
    NoteShares shares;
    double total = 0.0;
    for (std::size_t i = begin; i < end; ++i) {
        const Mound& mound = survey.mounds[walk.marks[i].mound];
        if (mound.fan || mound.note.empty()) continue;
        shares[mound.note] += 1.0;
        total += 1.0;
    }
    for (auto& [note, share] : shares) share /= total;
    return shares;
}

struct Pair {
    std::size_t a = 0, b = 0;
    double chance = 0.0;
};

class PairJudge {
public:
    PairJudge(const Survey& survey, const WalkMarks& walk, const DoubleMarkOptions& options)
        : survey_(survey), walk_(walk), options_(options) {
        for (std::size_t w = 0; w + 1 < walk.walk_begin.size(); ++w) {
            waits_.push_back(wait_between(walk, walk.walk_begin[w], walk.walk_begin[w + 1]));
            notes_.push_back(note_shares(survey, walk, walk.walk_begin[w], walk.walk_begin[w + 1]));
        }
    }

    // a < b in the walk's order
    [[nodiscard]] double chance(std::size_t a, std::size_t b) const {
        const WalkMark &first = walk_.marks[a], &second = walk_.marks[b];
        const Mound &one = survey_.mounds[first.mound], &other = survey_.mounds[second.mound];
        const double sd = std::max(relative_sd_m(first.place, second.place), 0.02);
        const double apart_m = distance_m(first.place.at, second.place.at);
        const double same = std::exp(-0.5 * apart_m * apart_m / (sd * sd)) / (2.0 * pi * sd * sd);
        const double density = std::sqrt(first.density_m2 * second.density_m2) * room_left(apart_m, sd);
        const double fans = same_fan_ratio(one.fan, other.fan, options_.fan_sd_degrees);
        const double odds = second_marks(a, b) * same / std::max(density, 1e-6) * fans * note_ratio(one, other);
        return odds / (1.0 + odds);
    }

private:
    // Mounds keep room about them: 1 - exp(-r^2 / 2 room^2), seen through the error of the two places.
    [[nodiscard]] double room_left(double apart_m, double sd) const {
        const double room_m2 = std::pow(0.5 * walk_.spacing_m, 2.0);
        const double wide_m2 = room_m2 + sd * sd;
        return 1.0 - room_m2 / wide_m2 * std::exp(-0.5 * apart_m * apart_m / wide_m2);
    }

    // Expected second marks at b of the mound of a, before place and fan are looked at.
    [[nodiscard]] double second_marks(std::size_t a, std::size_t b) const {
        const PlacedMark &first = walk_.marks[a].place, &second = walk_.marks[b].place;
        const auto wait = seconds_between(first, second);
        if (first.walk != second.walk) return 0.5 * options_.met_again;
        if (!wait) return options_.pressed_twice + options_.met_again;
        const double again = options_.met_again * (1.0 - std::exp(-*wait / 120.0));
        if (b != a + 1) return again;
        constexpr double pressing_s = 5.0;  // our assumption: a second press follows within seconds
        const double ratio = std::exp(-*wait / pressing_s) / pressing_s / waits_[first.walk].density(*wait);
        return again + options_.pressed_twice * std::min(ratio, 1e5);
    }

    [[nodiscard]] double note_ratio(const Mound& one, const Mound& other) const {
        if (one.fan && other.fan) return 1.0;
        if (one.fan || other.fan) return 0.5;
        if (one.note != other.note || one.note.empty()) return 0.7;
        const auto found = notes_[other.walk].find(one.note);
        return found == notes_[other.walk].end() ? 1.0 : std::min(0.3 + 0.7 / found->second, 20.0);
    }

    const Survey& survey_;
    const WalkMarks& walk_;
    const DoubleMarkOptions& options_;
    std::vector<WaitBetweenMarks> waits_;
    std::vector<NoteShares> notes_;
};

// The likeliest pairs first; a pair joins two groups only if all their marks lie within each other's reach.
std::vector<std::vector<std::size_t>> join_pairs(const WalkMarks& walk, std::vector<Pair>& pairs,
                                                 std::vector<double>& chance) {
    std::sort(pairs.begin(), pairs.end(), [](const Pair& x, const Pair& y) {
        return x.chance != y.chance ? x.chance > y.chance : std::pair(x.a, x.b) < std::pair(y.a, y.b);
    });
    std::map<std::size_t, std::size_t> group_of;  // mark -> group
    std::vector<std::vector<std::size_t>> groups;
    const auto group = [&](std::size_t mark) {
        const auto [found, fresh] = group_of.emplace(mark, groups.size());
        if (fresh) {
            groups.push_back({mark});
            chance.push_back(1.0);
        }
        return found->second;
    };
    for (const Pair& pair : pairs) {
        const std::size_t into = group(pair.a), from = group(pair.b);
        if (into == from) continue;
        const bool together = std::all_of(groups[into].begin(), groups[into].end(), [&](std::size_t x) {
            return std::all_of(groups[from].begin(), groups[from].end(), [&](std::size_t y) {
                const PlacedMark &one = walk.marks[x].place, &other = walk.marks[y].place;
                return distance_m(one.at, other.at) <= 4.0 * std::max(relative_sd_m(one, other), 0.02);
            });
        });
        if (!together) continue;
        for (const std::size_t mark : groups[from]) group_of[mark] = into;
        groups[into].insert(groups[into].end(), groups[from].begin(), groups[from].end());
        groups[from].clear();
        chance[into] = std::min({chance[into], chance[from], pair.chance});
    }
    return groups;
}

}  // namespace

double same_fan_ratio(const std::optional<Bearing>& a, const std::optional<Bearing>& b, double fan_sd_degrees) {
    if (!a || !b) return 1.0;
    const double turn = turn_degrees(*a, *b);
    constexpr double even = 1.0 / 360.0;
    // two readings of one fan; now and then one goes wrong altogether
    const double same = 0.95 * normal_density(turn, std::numbers::sqrt2 * fan_sd_degrees) + 0.05 * even;
    // neighbours along a run throw to the same side or to the other, else anyhow
    constexpr double neighbours_sd = 35.0;
    const double two = 0.5 * even + 0.25 * normal_density(turn, neighbours_sd) +
                       0.25 * normal_density(180.0 - std::abs(turn), neighbours_sd);
    return same / two;
}

void put_standing_mark_first(const Survey& survey, const WalkMarks& walk, std::vector<std::size_t>& group) {
    std::sort(group.begin(), group.end(), [&](std::size_t x, std::size_t y) {
        const Mound &one = survey.mounds[walk.marks[x].mound], &other = survey.mounds[walk.marks[y].mound];
        return std::tuple(!one.fan.has_value(), one.time, std::string_view(one.name)) <
               std::tuple(!other.fan.has_value(), other.time, std::string_view(other.name));
    });
}

std::vector<std::size_t> visits_of(const Survey& survey, const WalkMarks& walk) {
    constexpr auto one_visit = std::chrono::minutes(30);
    struct Span {
        std::size_t walk;
        UtcTime from, to;
    };
    const std::size_t walks = walk.walk_begin.size() - 1;
    std::vector<Span> spans;
    for (std::size_t w = 0; w < walks; ++w) {
        std::optional<Span> span;
        const auto take = [&](const std::optional<UtcTime>& time) {
            if (!time) return;
            if (!span) span = Span{w, *time, *time};
            span->from = std::min(span->from, *time);
            span->to = std::max(span->to, *time);
        };
        for (std::size_t i = walk.walk_begin[w]; i < walk.walk_begin[w + 1]; ++i) take(walk.marks[i].place.time);
        if (w < survey.walks.size() && !span)
            for (const TrackSegment& segment : survey.walks[w].segments)
                for (const TrackPoint& point : segment) take(point.time);
        if (span) spans.push_back(*span);
    }
    std::sort(spans.begin(), spans.end(),
              [](const Span& a, const Span& b) { return std::tie(a.from, a.walk) < std::tie(b.from, b.walk); });
    std::vector<std::size_t> visit(walks, 0);
    std::size_t number = 0;
    for (std::size_t k = 0; k < spans.size(); ++k) {
        if (k > 0 && spans[k].from > spans[k - 1].to + one_visit) ++number;
        if (k > 0) spans[k].to = std::max(spans[k].to, spans[k - 1].to);
        visit[spans[k].walk] = number;
    }
    return visit;
}

std::vector<MarkGroup> double_marks(const Survey& survey, const WalkMarks& walk, const DoubleMarkOptions& options,
                                    const Progress& progress) {
    const std::vector<std::size_t> visit = visits_of(survey, walk);
    std::vector<std::size_t> number;
    std::vector<LocalPoint> places;
    double widest_m = 0.0;
    for (std::size_t i = 0; i < walk.marks.size(); ++i) {
        if (!is_gopher_sign(survey.mounds[walk.marks[i].mound].kind)) continue;
        number.push_back(i);
        places.push_back(walk.marks[i].place.at);
        const PlaceError& error = walk.marks[i].place.error;
        widest_m = std::max(widest_m, std::hypot(error.own_m, error.shared_m));
    }
    const auto [along, mark] = along_curve(places, number);
    const NearPlaces near(along);
    const PairJudge judge(survey, walk, options);
    std::vector<Pair> pairs;
    for (std::size_t i = 0; i < along.size(); ++i) {
        if (i % 1024 == 0 && progress.stopped()) return {};
        for (const NearPlaces::Found& found : near.nearest(along[i], options.most_neighbours + 1)) {
            const std::size_t a = std::min(mark[i], mark[found.index]), b = std::max(mark[i], mark[found.index]);
            if (a == b || found.distance_m > 4.0 * std::numbers::sqrt2 * widest_m) continue;
            if (visit[walk.marks[a].place.walk] != visit[walk.marks[b].place.walk]) continue;
            const double chance = judge.chance(a, b);
            if (chance >= options.least_chance) pairs.push_back({a, b, chance});
        }
    }
    std::vector<double> chance;
    std::vector<MarkGroup> result;
    auto groups = join_pairs(walk, pairs, chance);
    for (std::size_t g = 0; g < groups.size(); ++g) {
        if (groups[g].size() < 2) continue;
        put_standing_mark_first(survey, walk, groups[g]);
        std::vector<PlacedMark> together;
        for (const std::size_t i : groups[g]) together.push_back(walk.marks[i].place);
        result.push_back({std::move(groups[g]), chance[g], mean_place(together)});
    }
    return result;
}

}  // namespace plugside
