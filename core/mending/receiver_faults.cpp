#include "core/mending/receiver_faults.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/near_places.h"

namespace plugside {

namespace {

double seconds(UtcTime from, UtcTime to) { return static_cast<double>((to - from).count()) / 1000.0; }

// The value that nine in ten do not exceed; 0 of none.
double nine_in_ten(std::vector<double> values) {
    if (values.empty()) return 0.0;
    const auto place = values.begin() + static_cast<std::ptrdiff_t>(values.size() * 9 / 10);
    std::nth_element(values.begin(), place, values.end());
    return *place;
}

// Metres a second where both points have a time that differs, else metres a step.
double pace(const TrackPoint& a, const TrackPoint& b) {
    const double step_m = distance_m(a.at, b.at);
    const double step_s = a.time && b.time ? seconds(*a.time, *b.time) : 0.0;
    return step_s > 0.0 ? step_m / step_s : step_m;
}

class TrackJumps {
public:
    TrackJumps(const Walk& walk, std::size_t number, const ReceiverFaultOptions& options)
        : walk_(walk), number_(number), options_(options) {
        std::vector<double> paces;
        for (const TrackSegment& segment : walk.segments)
            for (std::size_t i = 1; i < segment.size(); ++i) paces.push_back(pace(segment[i - 1], segment[i]));
        usual_ = nine_in_ten(std::move(paces));
    }

    bool find(std::vector<TrackJump>& jumps, const Progress& progress) const {
        for (std::size_t s = 0; s < walk_.segments.size(); ++s) {
            const TrackSegment& segment = walk_.segments[s];
            for (std::size_t i = 0; i + 2 < segment.size(); ++i) {
                if (i % 65536 == 0 && progress.stopped()) return false;
                if (!is_leap(segment[i], segment[i + 1])) continue;
                const auto back = way_back(segment, i);
                if (!back) continue;
                jumps.push_back({number_, s, i + 1, *back, segment[i + 1].at, distance_m(segment[i].at, segment[i + 1].at)});
                i = *back - 1;
            }
        }
        return true;
    }

private:
    [[nodiscard]] bool is_leap(const TrackPoint& a, const TrackPoint& b) const {
        return distance_m(a.at, b.at) > options_.least_jump_m && pace(a, b) > options_.times_usual * usual_;
    }
    // The first point after a leap at which the track goes on near where it left.
    [[nodiscard]] std::optional<std::size_t> way_back(const TrackSegment& segment, std::size_t left) const {
        constexpr std::size_t most_points = 10;
        for (std::size_t j = left + 1; j + 1 < segment.size() && j <= left + most_points; ++j)
            if (is_leap(segment[j], segment[j + 1]) &&
                2.0 * distance_m(segment[left].at, segment[j + 1].at) < distance_m(segment[left].at, segment[left + 1].at))
                return j + 1;
        return std::nullopt;
    }

    const Walk& walk_;
    std::size_t number_;
    const ReceiverFaultOptions& options_;
    double usual_ = 0.0;
};

// Where a walk's track was at a time, its jumps left out.
class TimedTrack {
public:
    TimedTrack(const Walk& walk, std::size_t number, const std::vector<TrackJump>& jumps) {
        auto jump = std::lower_bound(jumps.begin(), jumps.end(), number,
                                     [](const TrackJump& j, std::size_t n) { return j.walk < n; });
        bool in_order = true;
        for (std::size_t s = 0; s < walk.segments.size(); ++s)
            for (std::size_t i = 0; i < walk.segments[s].size(); ++i) {
                while (jump != jumps.end() && jump->walk == number && std::pair(jump->segment, jump->end) <= std::pair(s, i))
                    ++jump;
                if (jump != jumps.end() && jump->walk == number && jump->segment == s && i >= jump->begin) continue;
                const TrackPoint& point = walk.segments[s][i];
                if (!point.time) continue;
                in_order = in_order && (points_.empty() || points_.back().time <= point.time);
                points_.push_back(point);
            }
        if (!in_order)
            std::stable_sort(points_.begin(), points_.end(),
                             [](const TrackPoint& a, const TrackPoint& b) { return a.time < b.time; });
    }

    [[nodiscard]] std::optional<LocalPoint> at(UtcTime time) const {
        constexpr double most_gap_s = 60.0;
        const auto after = std::lower_bound(points_.begin(), points_.end(), time,
                                            [](const TrackPoint& p, UtcTime t) { return *p.time < t; });
        if (after == points_.end()) {
            if (points_.empty() || seconds(*points_.back().time, time) > 0.5 * most_gap_s) return std::nullopt;
            return points_.back().at;
        }
        if (after == points_.begin()) {
            if (seconds(time, *after->time) > 0.5 * most_gap_s) return std::nullopt;
            return after->at;
        }
        const auto before = std::prev(after);
        const double gap_s = seconds(*before->time, *after->time);
        if (gap_s > most_gap_s) return std::nullopt;
        const double share = gap_s > 0.0 ? seconds(*before->time, time) / gap_s : 0.0;
        return before->at + (after->at - before->at) * share;
    }

private:
    std::vector<TrackPoint> points_;
};

class WalkFaults {
public:
    WalkFaults(const Survey& survey, const WalkMarks& walk, std::size_t number, const ReceiverFaultOptions& options,
               ReceiverFaults& faults)
        : survey_(survey),
          walk_(walk),
          number_(number),
          options_(options),
          faults_(faults),
          begin_(walk.walk_begin[number]),
          end_(walk.walk_begin[number + 1]) {}

    void find() {
        const Walk none;
        const Walk& walk = number_ < survey_.walks.size() ? survey_.walks[number_] : none;
        const TimedTrack track(walk, number_, faults_.track);
        for (std::size_t i = begin_; i < end_; ++i) {
            const auto& place = walk_.marks[i].place;
            was_at_.push_back(place.time ? track.at(*place.time) : std::nullopt);
        }
        const std::size_t before = faults_.frozen.size();
        find_frozen();
        for (std::size_t f = before; f < faults_.frozen.size(); ++f)
            for (const std::size_t mark : faults_.frozen[f].marks) frozen_.push_back(mark);
        find_off_track();
        find_by_speed();
        find_far(walk);
    }

private:
    [[nodiscard]] const PlacedMark& place(std::size_t mark) const { return walk_.marks[mark].place; }
    [[nodiscard]] bool is_frozen(std::size_t mark) const { return std::binary_search(frozen_.begin(), frozen_.end(), mark); }

    void find_frozen() {
        for (std::size_t i = begin_; i < end_;) {
            std::size_t j = i + 1;
            while (j < end_ && seconds_between(place(j - 1), place(j)).value_or(0.0) >= 5.0 &&
                   distance_m(place(i).at, place(j).at) <= options_.frozen_within_m)
                ++j;
            if (j - i >= 3) keep_frozen(i, j);
            i = j;
        }
    }

    void keep_frozen(std::size_t from, std::size_t to) {
        FrozenRun run;
        run.seconds = seconds_between(place(from), place(to - 1)).value_or(0.0);
        double went_m = 0.0;
        bool all_known = true;
        for (std::size_t i = from; i < to; ++i) {
            run.marks.push_back(i);
            const auto& was = was_at_[i - begin_];
            all_known = all_known && was;
            if (was) run.should_be.push_back(*was);
        }
        for (const LocalPoint at : run.should_be) went_m = std::max(went_m, distance_m(at, run.should_be.front()));
        constexpr double track_went_on_m = 2.0;
        if (!all_known || went_m < track_went_on_m) run.should_be.clear();
        faults_.frozen.push_back(std::move(run));
    }

    void find_off_track() {
        std::vector<double> off;
        for (std::size_t i = begin_; i < end_; ++i)
            if (was_at_[i - begin_] && !is_frozen(i)) off.push_back(distance_m(place(i).at, *was_at_[i - begin_]));
        const double usual_m = nine_in_ten(off);
        const double limit_m = std::max(options_.least_jump_m, options_.times_usual * usual_m);
        for (std::size_t i = begin_; i < end_; ++i) {
            if (!was_at_[i - begin_] || is_frozen(i)) continue;
            const double out_m = distance_m(place(i).at, *was_at_[i - begin_]);
            if (out_m > limit_m) faults_.jumped.push_back({i, out_m, usual_m, was_at_[i - begin_]});
        }
    }

    void find_by_speed() {
        std::vector<double> speeds;
        const auto speed = [&](std::size_t i, std::size_t j) -> std::optional<double> {
            const auto wait = seconds_between(place(i), place(j));
            if (!wait || *wait <= 0.0) return std::nullopt;
            return distance_m(place(i).at, place(j).at) / *wait;
        };
        for (std::size_t i = begin_ + 1; i < end_; ++i)
            if (const auto found = speed(i - 1, i)) speeds.push_back(*found);
        const double usual = nine_in_ten(speeds);
        for (std::size_t i = begin_ + 1; i + 1 < end_; ++i) {
            if (was_at_[i - begin_] || is_frozen(i)) continue;
            const auto in = speed(i - 1, i), out = speed(i, i + 1);
            const double limit = std::max(options_.times_usual * usual, 2.0);  // m/s: faster than a walk
            const double out_m =
                std::min(distance_m(place(i - 1).at, place(i).at), distance_m(place(i).at, place(i + 1).at));
            const bool goes_on = 2.0 * distance_m(place(i - 1).at, place(i + 1).at) < 2.0 * out_m + options_.least_jump_m;
            if (in && out && *in > limit && *out > limit && out_m > options_.least_jump_m && goes_on)
                faults_.jumped.push_back({i, out_m, usual, std::nullopt});
        }
    }

    void find_far(const Walk& walk) {
        std::vector<std::size_t> timeless;
        for (std::size_t i = begin_; i < end_; ++i)
            if (!place(i).time) timeless.push_back(i);
        if (timeless.empty()) return;
        std::vector<LocalPoint> points;
        for (const TrackSegment& segment : walk.segments)
            for (const TrackPoint& point : segment) points.push_back(point.at);
        if (points.size() < 2) return;
        const NearPlaces near(std::move(points));
        std::vector<double> off;
        for (const std::size_t i : timeless) off.push_back(near.nearest(place(i).at, 1).front().distance_m);
        const double limit_m = std::max(options_.least_far_m, options_.times_usual * nine_in_ten(off));
        for (std::size_t k = 0; k < timeless.size(); ++k)
            if (off[k] > limit_m) faults_.far.push_back({timeless[k], off[k]});
    }

    const Survey& survey_;
    const WalkMarks& walk_;
    std::size_t number_;
    const ReceiverFaultOptions& options_;
    ReceiverFaults& faults_;
    std::size_t begin_, end_;
    std::vector<std::optional<LocalPoint>> was_at_;  // of the walk's marks
    std::vector<std::size_t> frozen_;                // ascending
};

}  // namespace

ReceiverFaults receiver_faults(const Survey& survey, const WalkMarks& walk, const ReceiverFaultOptions& options,
                               const Progress& progress) {
    ReceiverFaults faults;
    for (std::size_t w = 0; w < survey.walks.size(); ++w)
        if (!TrackJumps(survey.walks[w], w, options).find(faults.track, progress)) return {};
    for (std::size_t w = 0; w + 1 < walk.walk_begin.size(); ++w) {
        if (progress.stopped()) return {};
        WalkFaults(survey, walk, w, options, faults).find();
    }
    return faults;
}

}  // namespace plugside
