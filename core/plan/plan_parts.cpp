#include "core/plan/plan_parts.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "core/geometry/area_operations.h"
#include "core/geometry/convex_hull.h"
#include "core/runs/take_off.h"
#include "core/systems/two_threads.h"

namespace plugside {

namespace {

// How far a system's outline is drawn about its runs and plugs: our assumption, for the eye only.
constexpr double outline_reach_m = 1.0;

}  // namespace

std::vector<MoundInPlan> mounds_in_plan(const Survey& survey, const SystemPosterior& posterior, const PlanOptions& options) {
    std::vector<MoundInPlan> mounds(survey.mounds.size());
    for (std::size_t i = 0; i < mounds.size(); ++i) {
        const Mound& mound = survey.mounds[i];
        mounds[i].not_used_because = why_not_used(survey, mound);
        const TakeOff take_off = take_off_of(mound.plug, mound.fan, mound.position_sd, options);
        mounds[i].take_off = take_off.at;
        mounds[i].take_off_sd_along = Metres::of(take_off.sd_along_m);
        mounds[i].take_off_sd_across = Metres::of(take_off.sd_across_m);
    }
    for (std::size_t i = 0; i < posterior.marks.size(); ++i) {
        mounds[posterior.marks[i].mound].system = posterior.system[i];
        mounds[posterior.marks[i].mound].belongs = Probability::of(posterior.belongs[i]);
    }
    return mounds;
}

namespace {

Freshness freshest(Freshness a, Freshness b) {
    const auto order = [](Freshness f) {
        switch (f) {
            case Freshness::fresh: return 0;
            case Freshness::unknown: return 1;
            case Freshness::older: return 2;
            case Freshness::crushed: return 3;
        }
        return 1;
    };
    return order(b) < order(a) ? b : a;
}

// Lines whose ends lie in the same cells as those of an earlier one add nothing to an outline a metre about them; thousands
// of marks in one heap would keep the union busy for minutes.
void drop_repeated(std::vector<Polyline>& lines) {
    constexpr double cell_m = 0.1;
    const auto cell = [](LocalPoint p) {
        return std::pair(std::llround(p.east_m / cell_m), std::llround(p.north_m / cell_m));
    };
    std::set<std::pair<std::pair<long long, long long>, std::pair<long long, long long>>> seen;
    std::erase_if(lines, [&](const Polyline& line) {
        return !seen.emplace(cell(line.vertices.front()), cell(line.vertices.back())).second;
    });
}

// What an outline is drawn about, of each system.
using LinesOfSystems = std::vector<std::vector<Polyline>>;

void outline_exactly(BurrowSystem& system, std::vector<Polyline>& lines) {
    drop_repeated(lines);
    system.outline = outline_about(lines, Metres::of(outline_reach_m));
    if (!system.outline.empty()) system.label_at = point_inside(system.outline);
}

void outline_roughly(BurrowSystem& system, const std::vector<Polyline>& lines) {
    std::vector<LocalPoint> rim;
    for (const Polyline& line : lines)
        for (const LocalPoint place : line.vertices)
            for (int eighth = 0; eighth < 8; ++eighth)
                rim.push_back(place + Bearing::degrees(45.0 * eighth).unit() * outline_reach_m);
    std::vector<LocalPoint> ring = convex_hull(std::move(rim));
    if (ring.empty()) return;
    LocalVector sum;
    for (const LocalPoint corner : ring) sum = sum + (corner - ring.front());
    system.label_at = ring.front() + sum * (1.0 / static_cast<double>(ring.size()));
    system.outline.parts.push_back({Ring{std::move(ring)}, {}});
}

}  // namespace

std::vector<BurrowSystem> systems_in_plan(const Survey& survey, const SystemPosterior& posterior,
                                          const std::vector<MainRun>& runs, OutlineForm form, const Progress& progress) {
    std::vector<BurrowSystem> systems(posterior.systems);
    for (std::size_t s = 0; s < systems.size(); ++s) {
        systems[s].single = Probability::of(posterior.single[s]);
        systems[s].freshest = Freshness::crushed;
    }
    LinesOfSystems lines(systems.size());
    for (std::size_t i = 0; i < posterior.marks.size(); ++i) {
        BurrowSystem& system = systems[posterior.system[i]];
        const Mark& mark = posterior.marks[i];
        system.mounds.push_back(mark.mound);
        system.freshest = freshest(system.freshest, survey.mounds[mark.mound].freshness);
        lines[posterior.system[i]].push_back({{mark.plug, mark.take_off}});
    }
    for (const MainRun& run : runs) {
        systems[run.system].run_length = systems[run.system].run_length + length(run.line);
        const auto& vertices = run.line.vertices;
        lines[run.system].push_back({{vertices.front(), vertices[vertices.size() / 2], vertices.back()}});
    }
    on_two_threads(
        systems.size(), {progress.stop, {}},
        [&](std::size_t from, std::size_t to) {
            for (std::size_t s = from; s < to; ++s) {
                std::sort(systems[s].mounds.begin(), systems[s].mounds.end());
                if (form == OutlineForm::exact)
                    outline_exactly(systems[s], lines[s]);
                else
                    outline_roughly(systems[s], lines[s]);
            }
        },
        1);
    return systems;
}

}  // namespace plugside
