// Small surveys for the tests: by hand, or simulated with a fixed seed.
#pragma once

#include <cmath>
#include <numbers>
#include <string>
#include <vector>

#include "core/simulation/burrow_simulator.h"
#include "core/survey/survey.h"

namespace plugside::test {

inline Mound mound_at(double east_m, double north_m, std::optional<double> fan_degrees = {}) {
    Mound mound;
    mound.plug = {east_m, north_m};
    if (fan_degrees) mound.fan = Bearing::degrees(*fan_degrees);
    return mound;
}

inline Survey survey_of(std::vector<Mound> mounds) {
    Survey survey;
    survey.walks.push_back({"walk 1", "walk.gpx", {}});
    for (std::size_t i = 0; i < mounds.size(); ++i) {
        if (mounds[i].name.empty()) mounds[i].name = "M" + std::to_string(i + 1);
        survey.mounds.push_back(mounds[i]);
    }
    return survey;
}

// Mounds every 2 m along a straight run to the east, laterals to the north and south in turn, marked one after another with
// a good receiver that says so.
inline Survey straight_run(std::size_t mounds) {
    std::vector<Mound> row;
    for (std::size_t i = 0; i < mounds; ++i) {
        const bool north = i % 2 == 0;
        row.push_back(mound_at(2.0 * static_cast<double>(i), north ? 0.28 : -0.28, north ? 0.0 : 180.0));
        row.back().shared_sd = Metres::of(0.2);
        row.back().time = UtcTime{std::chrono::seconds(1744290000 + 15 * static_cast<long long>(i))};
    }
    return survey_of(row);
}

inline Survey simulated_survey(std::uint64_t seed, std::size_t mounds, FieldKind kind = FieldKind::meander) {
    SimulationOptions options;
    options.kind = kind;
    options.seed = seed;
    options.mounds_wanted = mounds;
    return simulate_field(options).survey;
}

inline LocalPoint moved(LocalPoint place, double turn_degrees, LocalVector step) {
    const double turn = turn_degrees * std::numbers::pi / 180.0;  // clockwise
    return LocalPoint{place.east_m * std::cos(turn) + place.north_m * std::sin(turn),
                      -place.east_m * std::sin(turn) + place.north_m * std::cos(turn)} +
           step;
}

// The same field lying elsewhere: turned clockwise about the origin, then shifted.
inline Survey moved(Survey survey, double turn_degrees, LocalVector step) {
    for (Mound& mound : survey.mounds) {
        mound.plug = moved(mound.plug, turn_degrees, step);
        if (mound.fan) mound.fan = mound.fan->turned(turn_degrees);
    }
    for (Walk& walk : survey.walks)
        for (TrackSegment& segment : walk.segments)
            for (TrackPoint& point : segment) point.at = moved(point.at, turn_degrees, step);
    for (Barrier& barrier : survey.ground.barriers)
        for (LocalPoint& vertex : barrier.line.vertices) vertex = moved(vertex, turn_degrees, step);
    return survey;
}

}  // namespace plugside::test
