#include "core/sets/system_reach.h"

#include <algorithm>

namespace plugside {

namespace {

constexpr double deviations = 1.645;  // the normal distribution's 95 % quantile

// Least distance of two closed segments, metres.
double segment_distance_m(LocalPoint a, LocalPoint b, LocalPoint c, LocalPoint d) {
    if (segments_meet(a, b, c, d)) return 0.0;
    return std::min({distance_to_segment_m(a, c, d), distance_to_segment_m(b, c, d), distance_to_segment_m(c, a, b),
                     distance_to_segment_m(d, a, b)});
}

bool ring_within(double reach_m, LocalPoint a, LocalPoint b, const Ring& ring) {
    const auto& v = ring.vertices;
    for (std::size_t i = 0; i < v.size(); ++i)
        if (segment_distance_m(a, b, v[i], v[(i + 1) % v.size()]) <= reach_m) return true;
    return false;
}

}  // namespace

SystemReach::SystemReach(const Survey& survey, const Plan& plan, std::size_t system) {
    for (const MainRun& run : plan.runs) {
        if (run.system != system) continue;
        for (std::size_t i = 1; i < run.line.vertices.size(); ++i)
            pieces_.push_back(
                {run.line.vertices[i - 1], run.line.vertices[i], deviations * std::max(run.sd_m.at(i - 1), run.sd_m.at(i))});
    }
    if (system >= plan.systems.size()) return;
    for (const std::size_t mound : plan.systems[system].mounds) {
        const LocalPoint plug = survey.mounds.at(mound).plug;
        const MoundInPlan& in_plan = plan.mounds.at(mound);
        const double half_width = std::max({in_plan.take_off_sd_along.value(), in_plan.take_off_sd_across.value(),
                                            survey.mounds[mound].position_sd.value()});
        pieces_.push_back({plug, in_plan.take_off, deviations * half_width});
    }
}

bool SystemReach::may_come_within(Metres reach, const Polygon& area) const {
    return std::any_of(pieces_.begin(), pieces_.end(), [&](const Piece& piece) {
        const double reach_m = reach.value() + piece.half_width_m;
        if (contains(area, piece.from) || ring_within(reach_m, piece.from, piece.to, area.outer)) return true;
        return std::any_of(area.holes.begin(), area.holes.end(),
                           [&](const Ring& hole) { return ring_within(reach_m, piece.from, piece.to, hole); });
    });
}

}  // namespace plugside
