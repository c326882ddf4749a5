#include "core/simulation/planted_faults.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <map>
#include <numbers>
#include <set>

namespace plugside {

namespace {

using std::chrono::milliseconds;

double seconds_between(UtcTime from, UtcTime to) { return static_cast<double>((to - from).count()) / 1000.0; }
UtcTime later_by(UtcTime time, double seconds) { return time + milliseconds{std::llround(seconds * 1000.0)}; }

LocalVector jitter(double sd_m, Random& random) {
    const double east = random.normal(0.0, sd_m);
    return {east, random.normal(0.0, sd_m)};
}

LocalVector step(double from_m, double to_m, Random& random) {
    const Bearing way = Bearing::degrees(random.uniform(0.0, 360.0));
    return way.unit() * random.uniform(from_m, to_m);
}

Bearing read_fan(Bearing truth, double sd_degrees, Random& random) {
    const double sd = sd_degrees * std::numbers::pi / 180.0;
    return Bearing::degrees(std::round(random.von_mises_degrees(truth.degrees(), 1.0 / (sd * sd)) / 5.0) * 5.0);
}

void write_fan(Mound& mark, Bearing fan) {
    mark.fan = fan;
    std::array<char, 24> words{};
    std::snprintf(words.data(), words.size(), "fan %.0f", fan.degrees());
    mark.note = words.data();
    if (mark.freshness == Freshness::fresh || mark.freshness == Freshness::older) mark.note += " " + to_text(mark.freshness);
}

// The marks of true mounds of one walk in the order of the clock.
struct SeenMound {
    std::size_t mark = 0;   // index into Survey::mounds
    std::size_t truth = 0;  // index into FieldTruth::mounds
};
std::vector<std::vector<SeenMound>> seen_by_walk(const SimulatedField& field) {
    std::vector<std::vector<SeenMound>> seen(field.survey.walks.size());
    for (std::size_t i = 0; i < field.truth.mounds.size(); ++i)
        if (const auto mark = field.truth.mounds[i].seen_as) seen[field.survey.mounds[*mark].walk].push_back({*mark, i});
    for (auto& walk : seen)
        std::sort(walk.begin(), walk.end(), [&](const SeenMound& a, const SeenMound& b) {
            return std::pair(field.survey.mounds[a.mark].time, a.mark) < std::pair(field.survey.mounds[b.mark].time, b.mark);
        });
    return seen;
}

// The receiver's error through time, to be asked in the order of the clock.
class Drift {
public:
    Drift(const Receiver& receiver, Random& random)
        : receiver_(receiver), random_(random), at_(jitter(receiver.shared_sd_m, random)) {}
    LocalVector after(double seconds) {
        const double memory = std::exp(-std::max(seconds, 0.0) / receiver_.shared_memory_s);
        at_ = at_ * memory + jitter(receiver_.shared_sd_m * std::sqrt(1.0 - memory * memory), random_);
        return at_;
    }

private:
    const Receiver& receiver_;
    Random& random_;
    LocalVector at_;
};

class FaultPlanter {
public:
    FaultPlanter(SimulatedField& field, const FaultsToPlant& wanted, Random& random)
        : field_(field), wanted_(wanted), random_(random), seen_(seen_by_walk(field)) {}

    PlantedFaults plant() {
        if (wanted_.diggers_as_gophers) call_diggers_gophers();
        turn_compass();
        read_from_wrong_end();
        const auto first_marks = static_cast<double>(first_count());
        freeze();
        jump();
        reverse_single(std::llround(first_marks * wanted_.reversed));
        press_twice(std::llround(first_marks * wanted_.pressed_twice));
        meet_again(std::llround(first_marks * wanted_.met_again));
        if (!field_.survey.ground.boundary.empty()) press_outside();
        if (wanted_.marked_later > 0.0) walk_again();
        return std::move(planted_);
    }

private:
    Mound& mound(const SeenMound& seen) { return field_.survey.mounds[seen.mark]; }
    [[nodiscard]] std::size_t first_count() const {
        std::size_t count = 0;
        for (const auto& walk : seen_) count += walk.size();
        return count;
    }
    LocalVector error_of(const SeenMound& seen) { return mound(seen).plug - field_.truth.mounds[seen.truth].plug; }

    // A mark without a fault so far, or nothing after some tries.
    std::optional<std::pair<std::size_t, std::size_t>> draw_free() {
        for (int attempt = 0; attempt < 200; ++attempt) {
            const std::size_t walk = random_.below(seen_.size());
            if (seen_[walk].empty()) continue;
            const std::size_t place = random_.below(seen_[walk].size());
            if (!used_.contains(seen_[walk][place].mark)) return std::pair(walk, place);
        }
        return std::nullopt;
    }

    // The mean square difference of errors, in each direction, of marks `steps` apart in the order of the clock; how long
    // apart.
    std::pair<double, double> error_change(std::size_t walk, std::size_t steps) {
        double squares = 0.0, seconds = 0.0, count = 0.0;
        for (std::size_t k = steps; k < seen_[walk].size(); ++k) {
            const auto &a = seen_[walk][k - steps], &b = seen_[walk][k];
            if (used_.contains(a.mark) || used_.contains(b.mark)) continue;
            squares += 0.5 * std::pow((error_of(b) - error_of(a)).length_m(), 2.0);
            seconds += seconds_between(*mound(a).time, *mound(b).time);
            count += 1.0;
        }
        return count > 0.0 ? std::pair(squares / count, seconds / count) : std::pair(0.0, 0.0);
    }
    // The jitter of a walk's receiver: how errors differ from mark to mark, carried back to no time between.
    double own_sd_m(std::size_t walk) {
        const auto [found, fresh] = own_sd_m_.emplace(walk, 0.0);
        if (fresh) found->second = measured_own_sd_m(walk);
        return found->second;
    }
    double measured_own_sd_m(std::size_t walk) {
        const auto [next_m2, next_s] = error_change(walk, 1);
        const auto [third_m2, third_s] = error_change(walk, 3);
        if (third_s <= next_s) return 0.3;
        return std::sqrt(std::max(next_m2 - (third_m2 - next_m2) * next_s / (third_s - next_s), 0.005) / 2.0);
    }

    std::string new_name() {
        std::array<char, 24> text{};
        std::snprintf(text.data(), text.size(), "X%03zu", ++new_marks_);
        return text.data();
    }

    Mound second_mark(const SeenMound& seen, UtcTime time) {
        Mound again = mound(seen);
        again.name = new_name();
        again.time = time;
        if (again.fan) write_fan(again, read_fan(*again.fan, wanted_.fan_sd_degrees, random_));
        return again;
    }

    void call_diggers_gophers() {
        for (Mound& mark : field_.survey.mounds) {
            if (is_gopher_sign(mark.kind) || mark.kind == SignKind::other) continue;
            const bool told = random_.chance(0.5);
            if (mark.kind == SignKind::mole) mark.note = told ? "round" : "";
            if (mark.kind == SignKind::ground_squirrel) mark.note = told ? "open hole" : "";
            if (mark.kind == SignKind::vole) mark.note = told ? "runway in the grass" : "";
            mark.kind = SignKind::gopher_mound;
            planted_.diggers.push_back(mark.name);
        }
    }

    void turn_compass() {
        if (!wanted_.turned_walk) return;
        for (Mound& mark : field_.survey.mounds)
            if (mark.walk == *wanted_.turned_walk && mark.fan) write_fan(mark, mark.fan->turned(wanted_.turned_degrees));
    }

    void read_from_wrong_end() {
        if (!wanted_.wrong_end_walk) return;
        for (Mound& mark : field_.survey.mounds)
            if (mark.walk == *wanted_.wrong_end_walk && mark.fan) write_fan(mark, mark.fan->reversed());
    }

    void freeze() {
        for (std::size_t n = 0; n < wanted_.frozen_stretches; ++n) {
            const auto start = draw_free();
            if (!start) return;
            const std::size_t length = 3 + random_.below(4);
            const auto& walk = seen_[start->first];
            if (start->second + length > walk.size()) continue;
            const auto stretch = std::vector(walk.begin() + static_cast<std::ptrdiff_t>(start->second),
                                             walk.begin() + static_cast<std::ptrdiff_t>(start->second + length));
            if (std::any_of(stretch.begin(), stretch.end(), [&](const SeenMound& s) { return used_.contains(s.mark); }))
                continue;
            // what was marked in between froze with the rest
            const auto from = mound(stretch.front()).time, to = mound(stretch.back()).time;
            const LocalPoint stood = mound(stretch.front()).plug;
            planted_.frozen.emplace_back();
            for (Mound& mark : field_.survey.mounds)
                if (mark.walk == start->first && mark.time >= from && mark.time <= to) {
                    mark.plug = stood;
                    if (mark.time > from) planted_.frozen.back().push_back(mark.name);
                }
            for (const SeenMound& seen : stretch) used_.insert(seen.mark);
            if (!random_.chance(0.5)) continue;  // half of the receivers keep a track that goes on
            for (TrackSegment& segment : field_.survey.walks[start->first].segments)
                for (TrackPoint& point : segment)
                    if (point.time >= from && point.time <= to) point.at = stood;
        }
    }

    void jump() {
        for (std::size_t n = 0; n < wanted_.jumped_marks; ++n)
            if (const auto free = draw_free()) {
                const SeenMound& seen = seen_[free->first][free->second];
                mound(seen).plug = mound(seen).plug + step(15.0, 60.0, random_);
                planted_.jumped.push_back(mound(seen).name);
                used_.insert(seen.mark);
            }
        for (std::size_t n = 0; n < wanted_.jumped_track_points; ++n) {
            Walk& walk = field_.survey.walks[random_.below(field_.survey.walks.size())];
            if (walk.segments.empty() || walk.segments.front().size() < 20) continue;
            TrackSegment& segment = walk.segments.front();
            TrackPoint& point = segment[5 + random_.below(segment.size() - 10)];
            point.at = point.at + step(25.0, 90.0, random_);
            planted_.jumped_track_points.push_back(point.at);
        }
    }

    void reverse_single(long long count) {
        for (; count > 0; --count) {
            const auto free = draw_free();
            if (!free) return;
            Mound& mark = mound(seen_[free->first][free->second]);
            if (!mark.fan) continue;
            write_fan(mark, mark.fan->reversed());
            planted_.reversed.push_back(mark.name);
            used_.insert(seen_[free->first][free->second].mark);
        }
    }

    void press_twice(long long count) {
        for (; count > 0; --count) {
            const auto free = draw_free();
            if (!free) return;
            const SeenMound seen = seen_[free->first][free->second];
            const double wait_s = random_.uniform(2.0, 6.0);
            Mound again = second_mark(seen, later_by(*mound(seen).time, wait_s));
            again.plug = mound(seen).plug + jitter(own_sd_m(free->first) * std::numbers::sqrt2, random_);
            keep_again(planted_.pressed_twice, seen, std::move(again));
        }
    }

    // Another mark of the same walk that shows where the walker came by the mound once more, minutes later.
    std::optional<SeenMound> came_by_later(std::size_t walk, const SeenMound& seen) {
        std::vector<SeenMound> near;
        for (const SeenMound& other : seen_[walk]) {
            const double wait_s = seconds_between(*mound(seen).time, *mound(other).time);
            const double far_m = distance_m(field_.truth.mounds[other.truth].plug, field_.truth.mounds[seen.truth].plug);
            if (wait_s > 100.0 && wait_s < 1200.0 && far_m < 5.0 && !used_.contains(other.mark)) near.push_back(other);
        }
        if (near.empty()) return std::nullopt;
        return near[random_.below(near.size())];
    }

    void meet_again(long long count) {
        for (int attempts = 0; count > 0 && attempts < 2000; ++attempts) {
            const auto free = draw_free();
            if (!free) return;
            const SeenMound seen = seen_[free->first][free->second];
            const auto by = came_by_later(free->first, seen);
            if (!by) continue;
            Mound again = second_mark(seen, later_by(*mound(*by).time, random_.uniform(10.0, 25.0)));
            again.plug = field_.truth.mounds[seen.truth].plug + error_of(*by) + jitter(own_sd_m(free->first), random_);
            keep_again(planted_.met_again, seen, std::move(again));
            --count;
        }
    }

    void keep_again(std::vector<MarkedAgain>& list, const SeenMound& seen, Mound again) {
        list.push_back({again.name, mound(seen).name, seconds_between(*mound(seen).time, *again.time)});
        used_.insert(seen.mark);
        field_.survey.mounds.push_back(std::move(again));
    }

    void press_outside() {
        const auto& corners = field_.survey.ground.boundary.parts.front().outer.vertices;
        for (std::size_t n = 0; n < wanted_.marks_outside; ++n)
            for (int attempt = 0; attempt < 100; ++attempt) {
                const LocalPoint place = corners[random_.below(corners.size())] + step(12.0, 50.0, random_);
                if (contains(field_.survey.ground.boundary, place)) continue;
                if (distance(place, field_.survey.ground.boundary.parts.front()).value() < 12.0) continue;
                Mound mark;
                mark.name = new_name();
                mark.plug = place;
                mark.time = field_.survey.mounds.front().time;
                if (mark.time) mark.time = later_by(*mark.time, -200.0 - 200.0 * static_cast<double>(n));
                planted_.outside.push_back(mark.name);
                field_.survey.mounds.push_back(std::move(mark));
                break;
            }
    }

    // Two weeks later somebody goes the same ways, with an error of their own.
    void walk_again() {
        constexpr double two_weeks_s = 14.0 * 86400.0;
        const std::size_t number = field_.survey.walks.size();
        Drift drift(wanted_.later_receiver, random_);
        std::optional<UtcTime> last;
        for (std::size_t walk = 0; walk < number; ++walk)
            for (const SeenMound& seen : seen_[walk]) {
                if (!random_.chance(wanted_.marked_later)) continue;
                const UtcTime time = later_by(*mound(seen).time, two_weeks_s);
                Mound again = second_mark(seen, time);
                again.walk = number;
                again.freshness = Freshness::older;
                again.plug = field_.truth.mounds[seen.truth].plug + drift.after(last ? seconds_between(*last, time) : 0.0) +
                             jitter(wanted_.later_receiver.own_sd_m, random_);
                last = time;
                planted_.marked_later.push_back({again.name, mound(seen).name, two_weeks_s});
                field_.survey.mounds.push_back(std::move(again));
            }
        field_.survey.walks.push_back({"walk " + std::to_string(number + 1), "later-walk.gpx", {}});
    }

    SimulatedField& field_;
    const FaultsToPlant& wanted_;
    Random& random_;
    std::vector<std::vector<SeenMound>> seen_;
    std::set<std::size_t> used_;  // marks that have a fault
    std::map<std::size_t, double> own_sd_m_;
    std::size_t new_marks_ = 0;
    PlantedFaults planted_;
};

// What is added to everything recorded at a time: linear between the marks of true mounds, the nearest one's beyond them.
LocalVector change_at(const std::map<UtcTime, LocalVector>& changes, UtcTime time) {
    const auto after = changes.lower_bound(time);
    if (after == changes.begin()) return after->second;
    const auto before = std::prev(after);
    if (after == changes.end()) return before->second;
    const double span = seconds_between(before->first, after->first);
    const double share = span > 0.0 ? seconds_between(before->first, time) / span : 0.0;
    return before->second * (1.0 - share) + after->second * share;
}

}  // namespace

PlantedFaults plant_faults(SimulatedField& field, const FaultsToPlant& wanted, Random& random) {
    if (field.survey.walks.empty() || field.survey.mounds.empty()) return {};
    return FaultPlanter(field, wanted, random).plant();
}

void record_with(SimulatedField& field, const Receiver& receiver, Random& random) {
    const auto seen = seen_by_walk(field);
    for (std::size_t walk = 0; walk < seen.size(); ++walk) {
        if (seen[walk].empty()) continue;
        Drift drift(receiver, random);
        std::map<UtcTime, LocalVector> changes;
        std::set<std::size_t> placed;
        std::optional<UtcTime> last;
        for (const SeenMound& s : seen[walk]) {
            Mound& mark = field.survey.mounds[s.mark];
            const LocalVector old_error = mark.plug - field.truth.mounds[s.truth].plug;
            const LocalVector shared = drift.after(last ? seconds_between(*last, *mark.time) : 0.0);
            last = mark.time;
            changes[*mark.time] = shared - old_error;
            mark.plug = field.truth.mounds[s.truth].plug + shared + jitter(receiver.own_sd_m, random);
            mark.position_sd = Mound{}.position_sd;  // what the first receiver said of itself does not hold for this one
            mark.shared_sd.reset();
            placed.insert(s.mark);
        }
        for (std::size_t i = 0; i < field.survey.mounds.size(); ++i) {
            Mound& mark = field.survey.mounds[i];
            if (mark.walk == walk && mark.time && !placed.contains(i))
                mark.plug = mark.plug + change_at(changes, *mark.time);
        }
        for (TrackSegment& segment : field.survey.walks[walk].segments)
            for (TrackPoint& point : segment)
                if (point.time) point.at = point.at + change_at(changes, *point.time);
    }
}

}  // namespace plugside
