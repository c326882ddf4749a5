#include "core/simulation/walk_simulator.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

#include "core/simulation/walk_way.h"
#include "core/units/display.h"

namespace plugside {

namespace {

using std::chrono::milliseconds;

// The receiver's position error, followed through time.
class ReceiverError {
public:
    ReceiverError(const WalkerHabits& habits, Random& random) : habits_(habits), random_(random) {
        shared_ = {random.normal(0.0, habits.shared_sd_m), random.normal(0.0, habits.shared_sd_m)};
    }
    LocalVector shared_after(double seconds) {
        const double memory = std::exp(-seconds / habits_.shared_memory_s);
        const double fresh = habits_.shared_sd_m * std::sqrt(1.0 - memory * memory);
        shared_ = shared_ * memory + LocalVector{random_.normal(0.0, fresh), random_.normal(0.0, fresh)};
        return shared_;
    }
    LocalVector own(double share = 1.0) {
        const double sd = habits_.own_sd_m * share;
        return {random_.normal(0.0, sd), random_.normal(0.0, sd)};
    }

private:
    const WalkerHabits& habits_;
    Random& random_;
    LocalVector shared_;
};

// What the walker writes down at a gopher's mound.
class MarkWriter {
public:
    // `fresh_share`: of the fresh among each system's mounds
    MarkWriter(const WalkerHabits& habits, const std::vector<double>& fresh_share, Random& random)
        : habits_(habits), fresh_share_(fresh_share), random_(random) {}

    void write(const TrueMound& truth, Mound& mark) {
        const bool fresh = random_.chance(fresh_share_[truth.system]);
        if (random_.chance(habits_.no_fan_share)) {
            if (random_.chance(0.7)) {
                mark.freshness = Freshness::crushed;
                mark.note = "crushed";
                return;
            }
            mark.kind = SignKind::surface_plug;
            mark.note = "surface plug";
        } else {
            mark.fan = read_fan(truth.fan);
            mark.note = "fan " + in_words(*mark.fan);
        }
        if (!random_.chance(habits_.age_noted_share)) return;
        mark.freshness = fresh ? Freshness::fresh : Freshness::older;
        mark.note += fresh ? " fresh" : " older";
    }

private:
    [[nodiscard]] Bearing read_fan(Bearing truth) {
        // A von Mises of this concentration has nearly the wanted standard deviation while that is below 25 degrees.
        const double sd = habits_.fan_sd_degrees * 3.14159265358979323846 / 180.0;
        const double seen = random_.von_mises_degrees(truth.degrees(), 1.0 / (sd * sd));
        return Bearing::degrees(std::round(seen / habits_.fan_rounding_degrees) * habits_.fan_rounding_degrees);
    }
    [[nodiscard]] std::string in_words(Bearing fan) const {
        if (habits_.fan_rounding_degrees > 20.0) return compass_point(fan);  // such a reader thinks in points of the compass
        std::array<char, 16> text{};
        std::snprintf(text.data(), text.size(), "%.0f", fan.degrees());
        return text.data();
    }
    const WalkerHabits& habits_;
    const std::vector<double>& fresh_share_;
    Random& random_;
};

// M for the first walker's marks, N and O for those of the others.
std::string mark_name(std::size_t walk, std::size_t number) {
    std::array<char, 24> text{};
    std::snprintf(text.data(), text.size(), "%c%03zu", static_cast<char>('M' + walk % 14), number);
    return text.data();
}

// Signs of other diggers: where they are and what they are.
std::vector<OtherSign> draw_other_signs(const FieldDomain& domain, double wanted, Random& random) {
    std::vector<OtherSign> signs;
    const auto count = static_cast<std::size_t>(random.poisson(wanted));
    while (signs.size() < count) {
        const auto place = domain.open_place(random);
        if (!place) break;
        const double which = random.uniform();
        if (which >= 0.55) {
            signs.push_back({*place, which < 0.8 ? SignKind::ground_squirrel : SignKind::vole});
            continue;
        }
        // a mole's hills stand about a stride apart along a raised ridge: Dalquest 1948
        Bearing ridge = Bearing::degrees(random.uniform(0.0, 360.0));
        LocalPoint hill = *place;
        for (std::size_t i = 2 + random.below(5); i > 0 && signs.size() < count && domain.open(hill); --i) {
            signs.push_back({hill, SignKind::mole});
            ridge = ridge.turned(random.normal(0.0, 15.0));
            hill = hill + ridge.unit() * random.uniform(0.6, 1.0);
        }
    }
    return signs;
}

// The walk as it goes on: the clock, the track that the receiver keeps, the marks that the walker takes.
class WalkRecorder {
public:
    WalkRecorder(const WalkerHabits& habits, ReceiverError error, MarkWriter writer, SimulatedField& field)
        : habits_(habits), number_(field.survey.walks.size()), field_(field), error_(error), writer_(writer) {
        if (number_ == 0) return;
        walk_.id = "walk " + std::to_string(number_ + 1);
        walk_.source = "walk-" + std::to_string(number_ + 1) + ".gpx";
    }

    void go_to(LocalPoint place) {
        if (!started_) at_ = place;
        started_ = true;
        const LocalVector leg = place - at_;
        const double leg_s = leg.length_m() / habits_.pace_m_per_s;
        for (double due = tracked_s_ + track_every_s; due <= clock_s_ + leg_s; due += track_every_s) {
            const LocalVector shift = error_.shared_after(track_every_s) + error_.own(0.3);
            const double share = leg_s > 0.0 ? std::clamp((due - clock_s_) / leg_s, 0.0, 1.0) : 1.0;
            walk_.segments.front().push_back({at_ + leg * share + shift, time_at(due)});
            tracked_s_ = due;
        }
        at_ = place;
        clock_s_ += leg_s;
    }

    void mark_mound(std::size_t number) {
        Mound mark = new_mark();
        TrueMound& truth = field_.truth.mounds[number];
        truth.seen_as = field_.survey.mounds.size();
        writer_.write(truth, mark);
        keep(std::move(mark));
    }

    void mark_other(SignKind kind) {
        Mound mark = new_mark();
        mark.kind = kind;
        mark.note = to_text(kind);
        keep(std::move(mark));
    }

    [[nodiscard]] const Walk& walk() const { return walk_; }

private:
    static constexpr double track_every_s = 4.0;

    [[nodiscard]] static UtcTime time_at(double seconds) {
        // from 10 April 2025, 13:00 UTC on: an arbitrary spring morning
        return UtcTime{milliseconds{1744290000000}} + milliseconds{std::llround(seconds) * 1000};
    }
    [[nodiscard]] Mound new_mark() {
        Mound mark;
        mark.name = mark_name(number_, ++marks_);
        mark.walk = number_;
        mark.plug = at_ + error_.shared_after(0.0) + error_.own();
        mark.time = time_at(clock_s_);
        if (habits_.told_own_sd_m) mark.position_sd = Metres::of(*habits_.told_own_sd_m);
        if (habits_.told_shared_sd_m) mark.shared_sd = Metres::of(*habits_.told_shared_sd_m);
        return mark;
    }
    void keep(Mound mark) {
        field_.survey.mounds.push_back(std::move(mark));
        clock_s_ += habits_.seconds_a_mark;
    }

    const WalkerHabits& habits_;
    std::size_t number_;  // of the walk in the survey
    std::size_t marks_ = 0;
    SimulatedField& field_;
    ReceiverError error_;
    MarkWriter writer_;
    Walk walk_{"walk 1", "walk.gpx", {{}}};
    bool started_ = false;
    LocalPoint at_;
    double clock_s_ = 0.0;
    double tracked_s_ = -track_every_s;
};

}  // namespace

WalkerHabits draw_walker_habits(Random& random) {
    constexpr std::array<double, 4> roundings{5.0, 10.0, 22.5, 45.0};
    constexpr std::array<double, 4> up_to{0.35, 0.7, 0.85, 1.0};
    WalkerHabits habits;
    habits.line_gap_m = random.uniform(4.0, 10.0);
    habits.pace_m_per_s = random.uniform(0.7, 1.2);
    habits.seconds_a_mark = random.uniform(8.0, 20.0);
    habits.miss_chance = random.log_uniform(0.01, 0.25);
    habits.follows_mounds = random.chance(0.6);
    habits.shared_sd_m = random.log_uniform(0.3, 3.0);
    habits.shared_memory_s = 60.0 * random.log_uniform(4.0, 25.0);
    habits.own_sd_m = random.log_uniform(0.05, 0.8);
    habits.fan_sd_degrees = random.uniform(6.0, 25.0);
    const double habit = random.uniform();
    for (std::size_t i = roundings.size(); i-- > 0;)
        if (habit < up_to.at(i)) habits.fan_rounding_degrees = roundings.at(i);
    habits.no_fan_share = random.log_uniform(0.02, 0.45);
    habits.age_noted_share = random.uniform(0.7, 1.0);
    habits.others_share = random.uniform(0.02, 0.12);
    const bool tells = random.chance(0.5);
    const double own_factor = random.log_normal(1.0, 0.3);
    const double shared_factor = random.log_normal(1.0, 0.5);
    if (tells) {
        habits.told_own_sd_m = habits.own_sd_m * own_factor;
        habits.told_shared_sd_m = habits.shared_sd_m * shared_factor;
    }
    return habits;
}

std::size_t draw_walker_count(const FieldDomain& domain, Random& random) {
    constexpr double worth_sharing_m2 = 2500.0;
    if (4.0 * domain.half_long_m() * domain.half_short_m() < worth_sharing_m2 || !random.chance(0.25)) return 1;
    return random.chance(0.65) ? 2 : 3;
}

void walk_field(const FieldDomain& domain, const std::vector<WalkerHabits>& walkers, SimulatedField& field, Random& random) {
    const std::size_t parts = walkers.size();
    double others_share = 0.0;
    for (const WalkerHabits& habits : walkers) others_share += habits.others_share / static_cast<double>(parts);
    std::vector<bool> seen;
    for (const TrueMound& mound : field.truth.mounds)
        seen.push_back(!random.chance(walkers[part_of(mound.plug, domain, parts)].miss_chance));
    const auto others = draw_other_signs(domain, others_share * static_cast<double>(field.truth.mounds.size()), random);
    std::vector<ReceiverError> errors;
    for (const WalkerHabits& habits : walkers) errors.emplace_back(habits, random);
    std::vector<double> fresh_share;
    for (std::size_t i = 0; i < field.truth.systems; ++i) fresh_share.push_back(random.uniform(0.1, 0.7));
    for (std::size_t number = 0; number < parts; ++number) {
        const WalkerHabits& habits = walkers[number];
        WalkRecorder recorder(habits, errors[number], MarkWriter(habits, fresh_share, random), field);
        for (const WayStop& stop : walk_way(domain, {number, parts}, habits, field.truth, seen, others)) {
            recorder.go_to(stop.at);
            if (stop.mound) recorder.mark_mound(*stop.mound);
            if (stop.other) recorder.mark_other(others[*stop.other].kind);
        }
        field.survey.walks.push_back(recorder.walk());
    }
}

}  // namespace plugside
