#include "core/walking/searched_track.h"

#include <algorithm>
#include <chrono>

namespace plugside {

namespace {

std::optional<double> seconds_between(const TrackPoint& a, const TrackPoint& b) {
    if (!a.time || !b.time) return std::nullopt;
    return std::chrono::duration<double>(*b.time - *a.time).count();
}

double usual_step_s(const Walk& walk) {
    std::vector<double> steps;
    for (const TrackSegment& segment : walk.segments)
        for (std::size_t i = 1; i < segment.size(); ++i)
            if (const auto s = seconds_between(segment[i - 1], segment[i])) steps.push_back(*s);
    if (steps.empty()) return 0.0;
    const auto middle = steps.begin() + static_cast<std::ptrdiff_t>(steps.size() / 2);
    std::nth_element(steps.begin(), middle, steps.end());
    return *middle;
}

// Whether each step of a segment (to the vertex of the same index) was driven: by the mean speed over a stretch about it.
std::vector<bool> driven_steps(const TrackSegment& segment, const SearchLimits& limits) {
    std::vector<bool> driven(segment.size(), false);
    std::vector<double> way(segment.size(), 0.0);
    for (std::size_t i = 1; i < segment.size(); ++i) way[i] = way[i - 1] + distance_m(segment[i - 1].at, segment[i].at);
    std::size_t from = 0;
    for (std::size_t to = 1; to < segment.size(); ++to) {
        while (from + 1 < to && seconds_between(segment[from + 1], segment[to]).value_or(0.0) >= limits.driving_over_s)
            ++from;
        const auto seconds = seconds_between(segment[from], segment[to]);
        if (!seconds || *seconds < limits.driving_over_s) continue;
        if (way[to] - way[from] > limits.driving_m_per_s * *seconds)
            std::fill(driven.begin() + static_cast<std::ptrdiff_t>(from) + 1,
                      driven.begin() + static_cast<std::ptrdiff_t>(to) + 1, true);
    }
    return driven;
}

class Cutter {
public:
    Cutter(const SearchLimits& limits, double usual_s) : limits_(limits), usual_s_(usual_s) {}

    void add(const TrackSegment& segment) {
        const std::vector<bool> driven = driven_steps(segment, limits_);
        for (std::size_t i = 0; i < segment.size(); ++i) {
            if (i > 0) step(segment[i - 1], segment[i], driven[i]);
            keep(segment[i], i + 1 == segment.size());
        }
        end_piece();
    }
    SearchedTrack result() { return std::move(result_); }

private:
    void step(const TrackPoint& from, const TrackPoint& to, bool driven) {
        const double m = distance_m(from.at, to.at);
        const auto seconds = seconds_between(from, to);
        way_m_ += m;
        const bool gap =
            seconds && *seconds > limits_.gap_s && *seconds > limits_.gap_usual_steps * usual_s_ && m > limits_.gap_m;
        if (gap || driven) {
            (gap ? result_.gaps_m : result_.driven_m) += m;
            end_piece();
            return;
        }
        result_.searched_m += m;
        result_.seconds += seconds.value_or(0.0);
    }
    void keep(const TrackPoint& point, bool last) {
        if (!piece_.track.vertices.empty() && distance_m(piece_.track.vertices.back(), point.at) < limits_.standing_m &&
            !last)
            return;
        if (last && !piece_.track.vertices.empty() && piece_.track.vertices.back() == point.at) return;
        piece_.track.vertices.push_back(point.at);
        piece_.way_m.push_back(way_m_);
        piece_.time.push_back(point.time);
    }
    void end_piece() {
        if (!piece_.track.vertices.empty()) result_.pieces.push_back(std::move(piece_));
        piece_ = {};
    }

    const SearchLimits& limits_;
    double usual_s_;
    double way_m_ = 0.0;
    SearchedPiece piece_;
    SearchedTrack result_;
};

}  // namespace

SearchedTrack searched_track(const Walk& walk, const SearchLimits& limits) {
    Cutter cutter(limits, usual_step_s(walk));
    for (const TrackSegment& segment : walk.segments) cutter.add(segment);
    return cutter.result();
}

}  // namespace plugside
