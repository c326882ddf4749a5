#include "core/mending/compass_offset.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/geometry/near_places.h"
#include "core/geometry/space_curve.h"

namespace plugside {

namespace {

constexpr double pi = std::numbers::pi;
constexpr std::size_t neighbours = 7;
constexpr std::size_t tenths = 10;
constexpr std::size_t most_marks = 3000;  // of a walk: so many give the turn to a degree
constexpr int grid_half = 45;             // steps to either side
constexpr double grid_step = 2.0;
constexpr std::size_t grid_size = 2 * grid_half + 1;
constexpr double across_sd_degrees =
    22.0;  // a lateral's lean, the fan about it, the eye: 17, 8 and 13 degrees; our assumption
constexpr double least_step_m = 0.15;

using Profile = std::array<double, grid_size>;  // log likelihood at each turn of the grid

// A turn between lines, -90 .. 90.
double as_axis(double degrees) { return degrees - 180.0 * std::round(degrees / 180.0); }

// Density of a fan so far off the right angle to a run.
double across(double off_degrees, double sd_degrees) {
    const double off = as_axis(off_degrees) / sd_degrees;
    return std::exp(-0.5 * off * off) / (sd_degrees * std::sqrt(2.0 * pi));
}

struct NearLine {
    double off_degrees = 0.0;                 // fan as read, from the right angle to the line
    std::optional<double> other_off_degrees;  // the same of the fan at the line's other end
    bool other_turns = false;                 // and whether it is of the same walk
    double weight = 0.0;
    double sd_degrees = across_sd_degrees;
};

class FanProfiles {
public:
    FanProfiles(const Survey& survey, const WalkMarks& walk, double lateral_m)
        : survey_(survey), walk_(walk), lateral_m_(lateral_m) {
        std::vector<LocalPoint> places;
        for (const WalkMark& mark : walk.marks) places.push_back(mark.place.at);
        for (const std::uint32_t i : order_along_curve(places)) {
            if (!is_gopher_sign(survey.mounds[walk.marks[i].mound].kind)) continue;
            mark_.push_back(i);
        }
        std::vector<LocalPoint> along;
        for (const std::size_t i : mark_) along.push_back(places[i]);
        const NearPlaces near(along);
        near_.resize(walk.marks.size());
        for (std::size_t k = 0; k < along.size(); ++k)
            for (const NearPlaces::Found& found : near.nearest(along[k], neighbours + 1))
                if (found.index != k) near_[mark_[k]].push_back(mark_[found.index]);
    }

    // Adds what this fan says to the profile, take-offs laid with the walk's fans turned back by `turned`.
    bool add(std::size_t mark, const std::vector<double>& turned, Profile& profile) const {
        const auto& fan = fan_of(mark);
        if (!fan) return false;
        std::vector<NearLine> lines;
        double total = 0.0;
        for (const std::size_t other : near_[mark]) {
            const LocalVector way = take_off(other, turned) - take_off(mark, turned);
            const double way_m = way.length_m();
            if (way_m < least_step_m) continue;
            NearLine line;
            line.off_degrees = as_axis(turn_degrees(*Bearing::along(turned_right(way)), *fan));
            const double place_sd = relative_sd_m(walk_.marks[mark].place, walk_.marks[other].place);
            line.sd_degrees = std::hypot(across_sd_degrees, std::atan2(place_sd, way_m) * 180.0 / pi);
            line.weight = std::exp(-way_m / walk_.spacing_m);
            if (const auto& other_fan = fan_of(other)) {
                line.other_off_degrees = as_axis(turn_degrees(*Bearing::along(turned_right(way)), *other_fan));
                line.other_turns = walk_.marks[other].place.walk == walk_.marks[mark].place.walk;
            }
            total += line.weight;
            lines.push_back(line);
        }
        if (lines.empty()) return false;
        for (std::size_t g = 0; g < grid_size; ++g) {
            const double turn = grid_step * (static_cast<double>(g) - grid_half);
            double likely = 0.5 / 180.0;  // about half of what stands near is no run's line
            for (const NearLine& line : lines) {
                double here = across(line.off_degrees - turn, line.sd_degrees);
                if (line.other_off_degrees)
                    here *= 180.0 * across(*line.other_off_degrees - (line.other_turns ? turn : 0.0), line.sd_degrees);
                likely += 0.5 * line.weight / total * here;
            }
            profile.at(g) += std::log(likely);
        }
        return true;
    }

private:
    [[nodiscard]] const std::optional<Bearing>& fan_of(std::size_t mark) const {
        return survey_.mounds[walk_.marks[mark].mound].fan;
    }
    [[nodiscard]] LocalPoint take_off(std::size_t mark, const std::vector<double>& turned) const {
        const PlacedMark& place = walk_.marks[mark].place;
        const auto& fan = fan_of(mark);
        return fan ? place.at - fan->turned(-turned[place.walk]).unit() * lateral_m_ : place.at;
    }

    const Survey& survey_;
    const WalkMarks& walk_;
    double lateral_m_;
    std::vector<std::size_t> mark_;
    std::vector<std::vector<std::size_t>> near_;
};

// Where the profile is highest: the top of the parabola through the highest place of the grid and those beside it.
double top_of(const Profile& profile) {
    const auto best = static_cast<std::size_t>(std::max_element(profile.begin(), profile.end()) - profile.begin());
    const double turn = grid_step * (static_cast<double>(best) - grid_half);
    if (best == 0 || best + 1 == grid_size) return turn;
    const double before = profile.at(best - 1), here = profile.at(best), after = profile.at(best + 1);
    const double bend = before - 2.0 * here + after;
    return bend < -1e-12 ? turn + grid_step * 0.5 * (before - after) / bend : turn;
}

// One walk's profiles, a tenth of its fans each, in the order of the clock; how many fans they hold.
std::size_t profiles_of(const FanProfiles& fans, const WalkMarks& walk, std::size_t number,
                        const std::vector<double>& turned, std::array<Profile, tenths>& profiles) {
    for (Profile& profile : profiles) profile.fill(0.0);
    std::size_t counted = 0;
    const std::size_t begin = walk.walk_begin[number], end = walk.walk_begin[number + 1];
    const std::size_t step = (end - begin) / most_marks + 1;
    for (std::size_t i = begin; i < end; i += step)
        if (fans.add(i, turned, profiles.at((i - begin) * tenths / (end - begin)))) ++counted;
    return counted;
}

}  // namespace

std::vector<CompassOffset> compass_offsets(const Survey& survey, const WalkMarks& walk, const CompassOptions& options,
                                           const Progress& progress) {
    const FanProfiles fans(survey, walk, options.lateral_m);
    const std::size_t walks = walk.walk_begin.size() - 1;
    std::vector<double> turned(walks, 0.0);
    std::vector<CompassOffset> offsets;
    for (std::size_t w = 0; w < walks; ++w) {
        std::array<Profile, tenths> profiles{};
        CompassOffset offset{.walk = w};
        for (int round = 0; round < 2; ++round) {  // the take-offs follow the turn that was found
            if (progress.stopped()) return {};
            offset.fans = profiles_of(fans, walk, w, turned, profiles);
            if (offset.fans < options.least_fans) break;
            Profile all{};
            for (const Profile& profile : profiles)
                for (std::size_t g = 0; g < grid_size; ++g) all.at(g) += profile.at(g);
            offset.turn_degrees = top_of(all);
            turned[w] = offset.turn_degrees;
            double squares = 0.0;
            for (const Profile& left_out : profiles) {
                Profile rest = all;
                for (std::size_t g = 0; g < grid_size; ++g) rest.at(g) -= left_out.at(g);
                squares += std::pow(as_axis(top_of(rest) - offset.turn_degrees), 2.0);
            }
            offset.sd_degrees = std::sqrt(squares * static_cast<double>(tenths - 1) / static_cast<double>(tenths));
        }
        if (offset.fans >= options.least_fans) offsets.push_back(offset);
    }
    return offsets;
}

bool stands_out(const CompassOffset& offset, const CompassOptions& options) {
    return std::abs(offset.turn_degrees) >= options.least_turn_degrees &&
           std::abs(offset.turn_degrees) >= options.least_sds * offset.sd_degrees;
}

}  // namespace plugside
