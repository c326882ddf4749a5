#include "core/mending/walk_marks.h"

#include <algorithm>
#include <numbers>
#include <string_view>
#include <tuple>

#include "core/geometry/near_places.h"
#include "core/geometry/space_curve.h"
#include "core/words/words.h"

namespace plugside {

namespace {

constexpr double one_spot_m = 0.05;
constexpr std::size_t density_neighbours = 6;

void measure_surroundings(const Survey& survey, WalkMarks& walk) {
    std::vector<std::size_t> gophers;
    std::vector<LocalPoint> places;
    for (std::size_t i = 0; i < walk.marks.size(); ++i)
        if (is_gopher_sign(survey.mounds[walk.marks[i].mound].kind)) {
            gophers.push_back(i);
            places.push_back(walk.marks[i].place.at);
        }
    std::vector<LocalPoint> along;  // near one another in memory, near one another on the ground
    std::vector<std::size_t> number;
    for (const std::uint32_t i : order_along_curve(places)) {
        along.push_back(places[i]);
        number.push_back(gophers[i]);
    }
    const NearPlaces near(along);
    std::vector<double> nearest;
    for (std::size_t i = 0; i < along.size(); ++i) {
        std::size_t others = 0;
        double reach_m = 0.0;
        for (const NearPlaces::Found& found : near.nearest(along[i], density_neighbours + 3)) {
            if (found.distance_m < one_spot_m || others == density_neighbours) continue;
            if (++others == 1) nearest.push_back(found.distance_m);
            reach_m = found.distance_m;
        }
        const double area_m2 = std::numbers::pi * reach_m * reach_m;
        if (others > 0) walk.marks[number[i]].density_m2 = std::max(static_cast<double>(others) / area_m2, 1e-4);
    }
    if (nearest.empty()) return;
    const auto middle = nearest.begin() + static_cast<std::ptrdiff_t>(nearest.size() / 2);
    std::nth_element(nearest.begin(), middle, nearest.end());
    walk.spacing_m = *middle;
}

}  // namespace

WalkMarks walk_marks(const Survey& survey, const PlaceError& usual) {
    WalkMarks result;
    std::size_t walks = survey.walks.size();
    for (std::size_t i = 0; i < survey.mounds.size(); ++i) {
        walks = std::max(walks, survey.mounds[i].walk + 1);
        if (!survey.mounds[i].set_aside_because) result.marks.push_back({i, placed(survey.mounds[i], usual)});
    }
    std::sort(result.marks.begin(), result.marks.end(), [&](const WalkMark& a, const WalkMark& b) {
        const std::string_view a_name = survey.mounds[a.mound].name, b_name = survey.mounds[b.mound].name;
        return std::tie(a.place.walk, a.place.time, a_name) < std::tie(b.place.walk, b.place.time, b_name);
    });
    result.walk_begin.assign(walks + 1, result.marks.size());
    for (std::size_t i = result.marks.size(); i-- > 0;) result.walk_begin[result.marks[i].place.walk] = i;
    for (std::size_t w = walks; w-- > 0;) result.walk_begin[w] = std::min(result.walk_begin[w], result.walk_begin[w + 1]);
    measure_surroundings(survey, result);
    return result;
}

MarksAlongCurve along_curve(const std::vector<LocalPoint>& places, const std::vector<std::size_t>& number) {
    MarksAlongCurve along;
    for (const std::uint32_t i : order_along_curve(places)) {
        along.at.push_back(places[i]);
        along.mark.push_back(number[i]);
    }
    return along;
}

std::string walk_name(const Survey& survey, std::size_t walk) {
    if (walk < survey.walks.size() && !survey.walks[walk].id.empty()) return survey.walks[walk].id;
    return "walk " + std::to_string(walk + 1);
}

std::string walk_shown(const Survey& survey, std::size_t walk) { return walk_name_shown(walk_name(survey, walk)); }

std::string walk_name_shown(const std::string& name) {
    constexpr std::string_view unnamed = "walk ";
    const bool numbered = name.size() > unnamed.size() && name.rfind(unnamed, 0) == 0 &&
                          name.find_first_not_of("0123456789", unnamed.size()) == std::string::npos;
    return numbered ? Words::tell("walk {1}", {name.substr(unnamed.size())}) : name;
}

}  // namespace plugside
