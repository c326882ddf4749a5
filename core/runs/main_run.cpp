#include "core/runs/main_run.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/runs/take_off.h"
#include "core/systems/disjoint_sets.h"

namespace plugside {

namespace {

// Links of the consensus trees, as indexes into posterior.links.
std::vector<std::uint32_t> tree_links(const SystemPosterior& posterior) {
    std::vector<std::uint32_t> inside;
    for (std::uint32_t e = 0; e < posterior.links.size(); ++e)
        if (posterior.system[posterior.links[e].first] == posterior.system[posterior.links[e].second]) inside.push_back(e);
    std::sort(inside.begin(), inside.end(), [&](std::uint32_t a, std::uint32_t b) {
        const double pa = posterior.link_probability[a];
        const double pb = posterior.link_probability[b];
        if (pa != pb) return pa > pb;
        const double la = posterior.links[a].length_m;
        const double lb = posterior.links[b].length_m;
        if (la != lb) return la < lb;
        return a < b;
    });
    DisjointSets joined(posterior.marks.size());
    std::erase_if(inside, [&](std::uint32_t e) { return !joined.join(posterior.links[e].first, posterior.links[e].second); });
    return inside;
}

// The direction in which the run passes a mark towards `next`: along the straightest other link of the tree where that goes on
// by less than a right angle, else nothing.
std::optional<LocalVector> tangent_at(const SystemPosterior& posterior, const std::vector<std::vector<std::uint32_t>>& tree_at,
                                      std::uint32_t mark, std::uint32_t next) {
    const LocalPoint here = posterior.marks[mark].take_off;
    const LocalVector onward = posterior.marks[next].take_off - here;
    double best_cosine = 0.5;  // a turn of more than 60 degrees is a branch or an end, not a bend
    std::optional<LocalVector> tangent;
    for (const std::uint32_t other : tree_at[mark]) {
        if (other == next) continue;
        const LocalVector arrival = here - posterior.marks[other].take_off;
        const double lengths = arrival.length_m() * onward.length_m();
        if (lengths <= 0.0) continue;
        const double cosine = dot(arrival, onward) / lengths;
        if (cosine <= best_cosine) continue;
        best_cosine = cosine;
        const LocalVector sum = arrival * (1.0 / arrival.length_m()) + onward * (1.0 / onward.length_m());
        tangent = sum * (1.0 / sum.length_m());
    }
    return tangent;
}

LocalPoint on_cubic(LocalPoint from, LocalVector leave, LocalPoint to, LocalVector arrive, double t) {
    const double u = 1.0 - t;
    const double h_from = u * u * (1.0 + 2.0 * t);
    const double h_to = t * t * (3.0 - 2.0 * t);
    const LocalVector sum = (to - from) * h_to + leave * (t * u * u) - arrive * (t * t * u);
    return LocalPoint{from.east_m * (h_from + h_to), from.north_m * (h_from + h_to)} + sum;
}

double across_sd(const Mark& mark, LocalVector along, const PlanOptions& options) {
    const TakeOff spread = take_off_of(mark.plug, mark.fan, Metres::of(mark.position_sd_m), options);
    if (!mark.fan) return spread.sd_along_m;
    const double cosine = along.length_m() > 0.0 ? dot(mark.fan->unit(), along) / along.length_m() : 0.0;
    // across the line = along the fan's axis when the line is square to it
    return std::sqrt(std::pow(spread.sd_across_m * cosine, 2.0) + spread.sd_along_m * spread.sd_along_m * (1.0 - cosine * cosine));
}

}  // namespace

std::vector<MainRun> main_runs(const SystemPosterior& posterior, const LinkWeights& weights, const PlanOptions& options) {
    const std::vector<std::uint32_t> tree = tree_links(posterior);
    std::vector<std::vector<std::uint32_t>> tree_at(posterior.marks.size());
    for (const std::uint32_t e : tree) {
        tree_at[posterior.links[e].first].push_back(posterior.links[e].second);
        tree_at[posterior.links[e].second].push_back(posterior.links[e].first);
    }
    std::vector<MainRun> runs;
    for (const std::uint32_t e : tree) {
        Link link = posterior.links[e];
        // told from the mark with the lower key, so that a turned or renumbered field tapes the same way
        if (posterior.marks[link.second].key < posterior.marks[link.first].key) std::swap(link.first, link.second);
        const Mark& a = posterior.marks[link.first];
        const Mark& b = posterior.marks[link.second];
        const LocalVector chord = b.take_off - a.take_off;
        const LocalVector leave = tangent_at(posterior, tree_at, link.first, link.second).value_or(LocalVector{});
        const LocalVector arrive = tangent_at(posterior, tree_at, link.second, link.first).value_or(LocalVector{});
        const LocalVector from_tangent = leave == LocalVector{} ? chord : leave * link.length_m;
        const LocalVector to_tangent = arrive == LocalVector{} ? chord : arrive * -link.length_m;
        MainRun run;
        run.system = posterior.system[link.first];
        run.from_mound = a.mound;
        run.to_mound = b.mound;
        run.probability = Probability::of(run_presence(posterior.link_probability[e], weights));
        const double sd_a = across_sd(a, chord, options);
        const double sd_b = across_sd(b, chord, options);
        const int pieces = std::clamp(static_cast<int>(std::ceil(link.length_m / 0.25)), 1, 80);
        for (int i = 0; i <= pieces; ++i) {
            const double t = static_cast<double>(i) / pieces;
            run.line.vertices.push_back(on_cubic(a.take_off, from_tangent, b.take_off, to_tangent, t));
            const double bridge = bend_share * link.length_m * 2.0 * std::sqrt(t * (1.0 - t));
            run.sd_m.push_back(std::sqrt(std::pow((1.0 - t) * sd_a, 2.0) + std::pow(t * sd_b, 2.0) + bridge * bridge));
        }
        runs.push_back(std::move(run));
    }
    std::vector<std::uint64_t> key_of;
    for (const Mark& mark : posterior.marks) {
        key_of.resize(std::max(key_of.size(), mark.mound + 1), 0);
        key_of[mark.mound] = mark.key;
    }
    std::sort(runs.begin(), runs.end(), [&](const MainRun& x, const MainRun& y) {
        return std::tie(x.system, key_of[x.from_mound], key_of[x.to_mound]) <
               std::tie(y.system, key_of[y.from_mound], key_of[y.to_mound]);
    });
    return runs;
}

}  // namespace plugside
