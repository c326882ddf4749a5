#include "core/probing/probe_site.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <tuple>

#include "core/probing/ladder.h"

namespace plugside {

namespace {

constexpr double shortest_tape_m = 0.6;  // two plugs nearer than this have no between to probe

LocalPoint ladder_middle(const ProbeSite& site, LocalPoint origin) {
    return origin + site.axis.unit() * site.ladder.along.value() + turned_right(site.axis.unit()) * site.ladder.across.value();
}

// Fills what follows from the ladder's place: rungs, chance, map places.
void complete(ProbeSite& site, LocalPoint origin, const RunOffset& offset, Metres row_middle, const PlanOptions& options) {
    const Ladder& ladder = site.ladder;
    site.rungs = rungs_of(ladder.half_length, ladder.step);
    const LadderPromise promise = promise_of(offset, row_middle, site.rungs, options.tunnel_diameter);
    site.hit = promise.hit;
    site.expected_rungs = promise.expected_rungs;
    site.run_offset = Metres::of(offset.mean_m()) - row_middle;
    site.run_offset_sd = Metres::of(offset.sd_m());
    site.middle = ladder_middle(site, origin);
    const LocalVector row = site.axis.turned(ladder.angle_degrees).unit();
    for (const Metres rung : site.rungs) site.rung_places.push_back(site.middle + row * rung.value());
}

class SiteMaker {
public:
    SiteMaker(const Survey& survey, const PlanOptions& options)
        : survey_(survey), options_(options), plug_side_(plug_side_offset(options)) {
        plug_side_row_ = place_row(plug_side_, options.tunnel_diameter);
        plug_side_hit_ = hit_of(plug_side_, plug_side_row_);
    }

    [[nodiscard]] ProbeSite plug_side(const Mark& mark, std::uint32_t system) const {
        ProbeSite site;
        site.key = {ProbeKind::plug_side, survey_.mounds[mark.mound].name, ""};
        site.system = system;
        site.from_mound = mark.mound;
        site.axis = mark.fan->reversed();
        site.ladder = {plug_side_row_.middle, Metres::of(0.0), 0.0, plug_side_row_.half_length, plug_side_row_.step};
        site.hit_as_proposed = plug_side_hit_;
        site.middle_as_proposed = ladder_middle(site, mark.plug);
        const bool moved = obey_move(site);
        const RunOffset offset = moved ? plug_side_offset(options_, site.ladder.across) : plug_side_;
        complete(site, mark.plug, offset, site.ladder.along, options_);
        return site;
    }

    [[nodiscard]] ProbeSite between(const MainRun& run, const Mark& from, const Mark& to) const {
        ProbeSite site;
        site.key = {ProbeKind::between_mounds, survey_.mounds[run.from_mound].name, survey_.mounds[run.to_mound].name};
        site.system = run.system;
        site.from_mound = run.from_mound;
        site.to_mound = run.to_mound;
        const LocalVector tape = to.plug - from.plug;
        const Metres length = Metres::of(tape.length_m());
        site.axis = *Bearing::along(tape);
        site.ladder.angle_degrees = 90.0;
        site.ladder.along = Metres::of(std::round(50.0 * length.value()) / 100.0);
        const auto end = [&](const Mark& mark) {
            const double by_receiver = std::atan2(std::hypot(from.position_sd_m, to.position_sd_m), length.value());
            EndOfStretch stretch;
            if (mark.fan) stretch.fan_from_tape_degrees = turn_degrees(site.axis, *mark.fan);
            stretch.direction_sd_degrees = std::hypot(options_.fan_sd_degrees, by_receiver * 180.0 / std::numbers::pi);
            return stretch;
        };
        const double presence = run.probability.value();
        const RunOffset offset = between_offset(end(from), end(to), length, site.ladder.along, presence, options_);
        const PlacedRow row = place_row(offset, options_.tunnel_diameter, LadderOptions{.enough = 0.95});
        site.ladder.across = row.middle;
        site.ladder.half_length = row.half_length;
        site.ladder.step = row.step;
        site.hit_as_proposed = hit_of(offset, row);
        site.middle_as_proposed = ladder_middle(site, from.plug);
        const bool moved = obey_move(site);
        complete(site, from.plug,
                 moved ? between_offset(end(from), end(to), length, site.ladder.along, presence, options_) : offset,
                 site.ladder.across, options_);
        return site;
    }

private:
    [[nodiscard]] Probability hit_of(const RunOffset& offset, const PlacedRow& row) const {
        return promise_of(offset, row.middle, rungs_of(row.half_length, row.step), options_.tunnel_diameter).hit;
    }

    bool obey_move(ProbeSite& site) const {
        const std::optional<SetDecision> decision = decision_on(survey_, site.key);
        if (!decision || !decision->moved_to) return false;
        site.ladder.along = decision->moved_to->along;
        site.ladder.across = decision->moved_to->across;
        return true;
    }

    const Survey& survey_;
    const PlanOptions& options_;
    RunOffset plug_side_;
    PlacedRow plug_side_row_;
    Probability plug_side_hit_;
};

}  // namespace

std::vector<ProbeSite> probe_sites(const Survey& survey, const SystemPosterior& posterior, const std::vector<MainRun>& runs,
                                   const PlanOptions& options) {
    const SiteMaker maker(survey, options);
    std::vector<ProbeSite> sites;
    std::vector<std::size_t> mark_of(survey.mounds.size(), 0);
    for (std::size_t i = 0; i < posterior.marks.size(); ++i) {
        mark_of[posterior.marks[i].mound] = i;
        if (posterior.marks[i].fan) sites.push_back(maker.plug_side(posterior.marks[i], posterior.system[i]));
    }
    for (const MainRun& run : runs) {
        if (run.probability.value() < options.least_run_probability) continue;
        const Mark& from = posterior.marks[mark_of[run.from_mound]];
        const Mark& to = posterior.marks[mark_of[run.to_mound]];
        if (distance_m(from.plug, to.plug) >= shortest_tape_m) sites.push_back(maker.between(run, from, to));
    }
    // ties by the marks' keys, which do not depend on how the survey numbers them
    const auto key_of = [&](std::size_t mound) { return posterior.marks[mark_of[mound]].key; };
    std::sort(sites.begin(), sites.end(), [&](const ProbeSite& a, const ProbeSite& b) {
        if (a.system != b.system) return a.system < b.system;
        if (a.hit_as_proposed != b.hit_as_proposed) return a.hit_as_proposed > b.hit_as_proposed;
        return std::tuple(a.key.kind, key_of(a.from_mound), key_of(a.to_mound.value_or(a.from_mound))) <
               std::tuple(b.key.kind, key_of(b.from_mound), key_of(b.to_mound.value_or(b.from_mound)));
    });
    return sites;
}

}  // namespace plugside
