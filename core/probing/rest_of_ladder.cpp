#include "core/probing/rest_of_ladder.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace plugside {

namespace {

constexpr double beside_row_m = 0.03;
constexpr double same_hole_m = 0.01;

// Where along the row a logged hole is, from the ladder's middle; nothing when it is not on the row.
std::optional<Metres> on_row(const Ladder& ladder, const LadderPlace& hole) {
    const double angle = ladder.angle_degrees * std::numbers::pi / 180.0;
    const double along = (hole.along - ladder.along).value();
    const double across = (hole.across - ladder.across).value();
    const double beside = across * std::cos(angle) - along * std::sin(angle);
    if (std::abs(beside) > beside_row_m) return std::nullopt;
    return Metres::of(along * std::cos(angle) + across * std::sin(angle));
}

}  // namespace

RestOfLadder rest_of_ladder(const ProbeSite& site, const std::vector<ProbeResult>& logged, Metres tunnel_diameter) {
    RestOfLadder rest;
    RowInHand row(site.along_row, tunnel_diameter);
    std::vector<Metres> open = site.rungs;
    bool pushed = false;
    for (const ProbeResult& result : logged) {
        if (result.probe != site.key) continue;
        const std::optional<Metres> at = on_row(site.ladder, result.hole);
        if (!at) continue;
        if (result.found) {
            rest.found = true;
            return rest;
        }
        pushed = true;
        row.push(*at);
        std::erase_if(open, [&](Metres rung) { return std::abs((rung - *at).value()) < same_hole_m; });
    }
    const double missed_so_far = row.not_met();
    while (!open.empty()) {
        auto next = open.begin();
        if (pushed)
            for (auto rung = open.begin(); rung != open.end(); ++rung)
                if (row.chance_at(*rung) > row.chance_at(*next) + 1e-9) next = rung;
        const double before = row.not_met();
        rest.expected_rungs += missed_so_far > 0.0 ? before / missed_so_far : 0.0;
        const double met = row.push(*next);
        rest.rungs.push_back({*next, Probability::of(before > 0.0 ? std::min(1.0, met / before) : 0.0)});
        open.erase(next);
    }
    if (missed_so_far > 0.0) rest.hit = Probability::of(std::max(0.0, 1.0 - row.not_met() / missed_so_far));
    return rest;
}

}  // namespace plugside
