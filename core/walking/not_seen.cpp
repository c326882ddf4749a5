#include "core/walking/not_seen.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

#include "core/walking/line_passes.h"
#include "core/walking/not_seen_draws.h"
#include "core/walking/not_seen_words.h"
#include "core/words/words.h"

namespace plugside {

namespace {

struct WalkedLines {
    std::vector<std::vector<TravelPiece>> searched;             // one a walk: the track itself
    std::vector<std::vector<TravelPiece>> lines;                // one a walk: the line of travel
    std::vector<std::pair<std::size_t, MarkBesideLine>> marks;  // walk; index into Survey::mounds
    double gaps_m = 0.0;
    double driven_m = 0.0;
};

WalkedLines lines_of(const Survey& survey, const std::vector<std::size_t>& usable, const SearchLimits& limits) {
    WalkedLines result;
    for (std::size_t w = 0; w < survey.walks.size(); ++w) {
        const SearchedTrack track = searched_track(survey.walks[w], limits);
        std::vector<MarkOnWalk> marks;
        std::vector<std::size_t> mound_of;
        // every sign was walked up to, so that all take their detour out of the line
        for (std::size_t i = 0; i < survey.mounds.size(); ++i)
            if (survey.mounds[i].walk == w) {
                marks.push_back({survey.mounds[i].plug, survey.mounds[i].time});
                mound_of.push_back(i);
            }
        LineOfTravel line = line_of_travel(track, marks);
        for (MarkBesideLine& mark : line.marks) {
            mark.mark = mound_of[mark.mark];
            if (std::binary_search(usable.begin(), usable.end(), mark.mark)) result.marks.emplace_back(w, mark);
        }
        result.lines.push_back(std::move(line.pieces));
        std::vector<TravelPiece> searched;
        for (const SearchedPiece& piece : track.pieces) searched.push_back({piece.track, piece.way_m});
        result.searched.push_back(std::move(searched));
        result.gaps_m += track.gaps_m;
        result.driven_m += track.driven_m;
    }
    return result;
}

// The grid of places inside the field.
struct Grid {
    SeenSurface surface;
    std::vector<std::pair<std::size_t, LocalPoint>> places;  // cell; where in it
};

struct Box {
    double west = std::numeric_limits<double>::infinity();
    double south = west;
    double east = -west;
    double north = -west;
    void take(LocalPoint p, double about_m) {
        west = std::min(west, p.east_m - about_m);
        east = std::max(east, p.east_m + about_m);
        south = std::min(south, p.north_m - about_m);
        north = std::max(north, p.north_m + about_m);
    }
};

Box box_of(const Survey& survey, const WalkedLines& lines, Metres reach) {
    Box box;
    for (const Polygon& part : survey.ground.boundary.parts)
        for (const LocalPoint p : part.outer.vertices) box.take(p, 0.0);
    if (!survey.ground.boundary.empty()) return box;
    for (const auto& walk : lines.searched)
        for (const TravelPiece& piece : walk)
            for (const LocalPoint p : piece.line.vertices) box.take(p, reach.value());
    return box;
}

bool on_ground(const Ground& ground, LocalPoint place) {
    if (!ground.boundary.empty() && !contains(ground.boundary, place)) return false;
    return std::none_of(ground.keep_clear.begin(), ground.keep_clear.end(), [&](const KeepClearArea& area) {
        return area.kind == KeepClearKind::building && contains(area.area, place);
    });
}

Grid grid_of(const Survey& survey, const Box& box, std::size_t most_places) {
    Grid grid;
    SeenSurface& s = grid.surface;
    const double width = box.east - box.west;
    const double height = box.north - box.south;
    if (!(width > 0.0 && height > 0.0)) return grid;
    constexpr double finest_m = 0.25;
    s.cell_m = std::max(finest_m, std::sqrt(width * height / static_cast<double>(most_places)));
    s.south_west = {box.west, box.south};
    s.columns = static_cast<std::size_t>(std::ceil(width / s.cell_m));
    s.rows = static_cast<std::size_t>(std::ceil(height / s.cell_m));
    s.chance.assign(s.columns * s.rows, -1.0F);
    for (std::size_t cell = 0; cell < s.chance.size(); ++cell) {
        // anywhere in the cell, evenly spread: middles would keep step with the lines walked
        const double u = std::fmod(0.5 + 0.7548776662466927 * static_cast<double>(cell), 1.0);
        const double v = std::fmod(0.5 + 0.5698402909980532 * static_cast<double>(cell), 1.0);
        const LocalPoint place{box.west + (static_cast<double>(cell % s.columns) + u) * s.cell_m,
                               box.south + (static_cast<double>(cell / s.columns) + v) * s.cell_m};
        if (on_ground(survey.ground, place)) grid.places.emplace_back(cell, place);
    }
    return grid;
}

// Which pass a mark was made on, with those before it.
std::optional<Sighting> sighting_of(const LinePasses& passes, LocalPoint at, std::size_t walk, const MarkBesideLine& mark,
                                    Metres reach) {
    constexpr double slack_m = 10.0;
    Sighting sighting;
    bool found = false;
    for (const LinePass& pass : passes.near(at, reach)) {
        if (pass.walk == walk && pass.piece == mark.piece && mark.way_m > pass.from_way_m - slack_m &&
            mark.way_m < pass.to_way_m + slack_m) {
            sighting.seen_at = sighting.passes_m.size();  // the last that fits: a detour ends where the line goes on
            found = true;
        }
        sighting.passes_m.push_back(pass.distance_m);
    }
    if (!found) return std::nullopt;
    return sighting;
}

struct PlacesByWalk {
    PassedPlaces walked;
    PassedPlaces unwalked;
    std::vector<std::pair<std::size_t, bool>> cells;  // cell, walked; in the order added to each
};

std::optional<PlacesByWalk> passed_places(const Grid& grid, const LinePasses& lines, const LinePasses& searched,
                                          Metres reach, const NotSeenOptions& options, bool bounded,
                                          const Progress& progress) {
    PlacesByWalk result{PassedPlaces(reach), PassedPlaces(reach), {}};
    std::vector<double> distances;
    for (std::size_t i = 0; i < grid.places.size(); ++i) {
        if (i % 512 == 0) {
            if (progress.stopped()) return std::nullopt;
            progress.say(0.2 + 0.4 * static_cast<double>(i) / static_cast<double>(grid.places.size()),
                         Words::later("measuring what was seen"));
        }
        const auto& [cell, place] = grid.places[i];
        const bool walked = searched.any_within(place, options.walked_reach);
        if (!walked && !bounded) continue;
        distances.clear();
        for (const LinePass& pass : lines.near(place, reach)) distances.push_back(pass.distance_m);
        (walked ? result.walked : result.unwalked).add(distances);
        result.cells.emplace_back(cell, walked);
    }
    return result;
}

SeenSoFar seen_so_far(const Survey& survey, const Plan& plan, const std::vector<std::size_t>& usable,
                      const LinePasses& searched, const NotSeenOptions& options) {
    SeenSoFar seen;
    for (const std::size_t i : usable)
        (searched.any_within(survey.mounds[i].plug, options.walked_reach) ? seen.marks_walked : seen.marks_unwalked) += 1.0;
    for (const BurrowSystem& system : plan.systems) seen.system_sizes.push_back(static_cast<double>(system.mounds.size()));
    seen.systems = {plan.estimate.expected, static_cast<double>(plan.estimate.low), static_cast<double>(plan.estimate.high)};
    if (seen.systems.expected <= 0.0 && !usable.empty()) {
        constexpr double usual_mounds = 10.0;  // a system; our assumption
        const double systems = std::max(1.0, static_cast<double>(usable.size()) / usual_mounds);
        seen.systems = {systems, 0.5 * systems, 2.0 * systems};
    }
    return seen;
}

void paint(const PlacesByWalk& places, const DetectionCurve& curve, SeenSurface& surface) {
    std::size_t walked = 0;
    std::size_t unwalked = 0;
    for (const auto& [cell, is_walked] : places.cells)
        surface.chance[cell] =
            static_cast<float>(is_walked ? places.walked.seen(walked++, curve) : places.unwalked.seen(unwalked++, curve));
}

std::vector<std::size_t> usable_marks(const Survey& survey) {
    std::vector<std::size_t> usable;
    for (std::size_t i = 0; i < survey.mounds.size(); ++i)
        if (!why_not_used(survey, survey.mounds[i])) usable.push_back(i);
    return usable;
}

// Of the marks where it can be told; 0 where these are too few to say, or followed ones too few of all marks to matter.
double followed_share(const WalkedLines& lines) {
    constexpr double enough = 10.0;
    constexpr double matters = 0.12;
    double told = 0.0;
    double followed = 0.0;
    for (const auto& [walk, mark] : lines.marks) {
        told += mark.told ? 1.0 : 0.0;
        followed += mark.followed ? 1.0 : 0.0;
    }
    const auto all = static_cast<double>(lines.marks.size());
    return told >= enough && followed > matters * all ? followed / told : 0.0;
}

Metres reach_of(const WalkedLines& lines) {
    std::vector<double> distances;
    for (const auto& [walk, mark] : lines.marks) distances.push_back(mark.distance.value());
    return reach_for(std::move(distances));
}

std::vector<Sighting> sightings_of(const Survey& survey, const Plan& plan, const WalkedLines& lines,
                                   const LinePasses& passes, Metres reach) {
    std::vector<Sighting> sightings;
    for (const auto& [walk, mark] : lines.marks) {
        auto sighting = sighting_of(passes, survey.mounds[mark.mark].plug, walk, mark, reach);
        if (!sighting) continue;
        // a mark without a system is a group of its own
        sighting->group = survey.mounds.size() + mark.mark;
        if (mark.mark < plan.mounds.size() && plan.mounds[mark.mark].system)
            sighting->group = *plan.mounds[mark.mark].system;
        sightings.push_back(std::move(*sighting));
    }
    return sightings;
}

}  // namespace

std::optional<NotSeen> not_seen(const Survey& survey, const Plan& plan, const NotSeenOptions& options,
                                const Progress& progress) {
    const std::vector<std::size_t> usable = usable_marks(survey);
    const WalkedLines lines = lines_of(survey, usable, options.limits);
    const bool any =
        std::any_of(lines.searched.begin(), lines.searched.end(), [](const auto& walk) { return !walk.empty(); });
    if (!any || progress.stopped()) return std::nullopt;
    NotSeen result;
    result.followed_share = followed_share(lines);
    const bool following = result.followed_share > options.most_followed;
    const Metres default_reach = options.fallback.sees_to * 2.4;  // three scales of the half-normal curve
    const LinePasses searched(lines.searched);
    const LinePasses passes(following ? lines.searched : lines.lines);
    Grid grid = grid_of(survey, box_of(survey, lines, std::max(default_reach, options.walked_reach)), options.most_places);
    const bool bounded = !survey.ground.boundary.empty();
    const auto places_within = [&](Metres reach) {
        return passed_places(grid, passes, searched, reach, options, bounded, progress);
    };

    progress.say(0.2, Words::later("measuring what was seen"));
    Metres reach = following ? default_reach : reach_of(lines);
    std::optional<PlacesByWalk> places = places_within(reach);
    if (!places) return std::nullopt;
    if (places->walked.size() == 0) return std::nullopt;
    if (following) {
        result.detection = default_detection(options.fallback, reach, following_words(result.followed_share));
    } else {
        // sightings are compared with places of the walked ground, where nearly all of them lie
        result.detection = fit_detection(sightings_of(survey, plan, lines, passes, reach), places->walked, options.fallback);
        if (!result.detection.fitted) {
            places = places_within(default_reach);
            if (!places) return std::nullopt;
            result.detection = default_detection(options.fallback, default_reach, result.detection.why_default);
        }
    }
    progress.say(0.7, Words::later("counting what was not seen"));
    SeenSoFar seen = seen_so_far(survey, plan, usable, searched, options);
    seen.unwalked_places = static_cast<double>(places->unwalked.size());
    if (places->unwalked.size() > 0)
        seen.unwalked_seen_chance = std::min(1.0, places->unwalked.sum_seen(result.detection.curve) / seen.unwalked_places);
    if (progress.stopped()) return std::nullopt;
    const NotSeenDraws draws = draw_not_seen(result.detection, places->walked, seen, options);
    const double cell_m2 = grid.surface.cell_m * grid.surface.cell_m;
    result.walked_m2 = static_cast<double>(places->walked.size()) * cell_m2;
    result.unwalked_m2 = seen.unwalked_places * cell_m2;
    result.gaps_m = lines.gaps_m;
    result.driven_m = lines.driven_m;
    result.mounds_seen = usable.size();
    result.seen_of_walked =
        std::min(1.0, places->walked.sum_seen(result.detection.curve) / static_cast<double>(places->walked.size()));
    result.interval = options.interval;
    result.mounds_in_all = draws.in_all;
    result.mounds_missed = draws.missed;
    result.mounds_unwalked = draws.unwalked;
    result.animals_unwalked = draws.animals;
    const double unseen = draws.missed.expected + draws.unwalked.expected;
    result.assumed_alike = unseen > 0.0 ? draws.unwalked.expected / unseen : 0.0;
    paint(*places, result.detection.curve, grid.surface);
    result.surface = std::move(grid.surface);
    progress.say(1.0, Words::later("counting what was not seen"));
    return result;
}

}  // namespace plugside
