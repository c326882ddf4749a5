#include "core/probing/probe_site.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <numbers>
#include <thread>
#include <tuple>

#include "core/probing/ladder.h"
#include "core/probing/ladder_by_hand.h"
#include "core/probing/run_directions.h"
#include "core/probing/run_draws.h"

namespace plugside {

namespace {

constexpr double shortest_tape_m = 0.6;  // two plugs nearer than this have no between to probe

// Rows between two mounds lie at least this far from a plug, so that they meet the run and not the lateral or the mound's
// own soil (30-46 cm wide: extension accounts), and are looked for at these places from either plug, and half way.
constexpr double from_plug_m[] = {0.35, 0.5, 0.7};

// What one more hole is worth: see LadderOptions.
const LadderOptions on_plug_side{.price = 0.1, .enough = 0.97};
const LadderOptions on_tape{.price = 0.03};
const LadderOptions over_gap{.steps = {Metres::of(0.057), Metres::of(0.07)}, .longest_half = Metres::of(0.9), .price = 0.02};

// A place on the tape between two mounds, and the row there.
struct OnTape {
    bool from_second = false;
    Metres along;  // from the plug it is taped from
    RowChance row;
    PlacedRow placed;
    const LadderOptions* options;
};

class SiteMaker {
public:
    SiteMaker(const Survey& survey, const SystemPosterior& posterior, const PlanOptions& options)
        : survey_(survey),
          posterior_(posterior),
          options_(options),
          turns_(run_turns(posterior, options)),
          usual_row_(plug_side_chance(options)),
          usual_place_(place_row(usual_row_, options.tunnel_diameter, on_plug_side)) {}

    [[nodiscard]] ProbeSite plug_side(std::size_t mark_number) const {
        const Mark& mark = posterior_.marks[mark_number];
        ProbeSite site;
        site.key = {ProbeKind::plug_side, survey_.mounds[mark.mound].name, ""};
        site.system = posterior_.system[mark_number];
        site.from_mound = mark.mound;
        site.axis = mark.fan->reversed();
        const bool usual = turns_[mark_number] == RunTurn{};  // nothing but the fan tells where the run is
        const RowChance row = usual ? usual_row_ : plug_side_chance(options_, turns_[mark_number]);
        const PlacedRow placed = usual ? usual_place_ : place_row(row, options_.tunnel_diameter, on_plug_side);
        site.ladder = {placed.middle, Metres::of(0.0), 0.0, placed.half_length, placed.step};
        site.hit_as_proposed = placed.promise.hit;
        site.middle_as_proposed = ladder_middle(site, mark.plug);
        site.basis.turn = turns_[mark_number];
        const bool moved = obey_move(site);
        complete_site(site, mark.plug, moved ? plug_side_chance(options_, turns_[mark_number], site.ladder.across) : row,
                 site.ladder.along, options_);
        return site;
    }

    [[nodiscard]] ProbeSite between(const MainRun& run, const Mark& first, const Mark& second) const {
        const Stretch stretch = stretch_of(run, first, second);
        const StretchDraws draws(stretch, options_);
        const bool long_gap = stretch.length.value() > 2.0 * posterior_.scales.rounded_spacing_m();
        const OnTape place = best_place(draws, stretch, long_gap, decided_end(first, second));
        const Mark& from = place.from_second ? second : first;
        const Mark& to = place.from_second ? first : second;
        ProbeSite site;
        site.key = {ProbeKind::between_mounds, survey_.mounds[from.mound].name, survey_.mounds[to.mound].name};
        site.system = run.system;
        site.from_mound = from.mound;
        site.to_mound = to.mound;
        site.across_gap = !from.fan || (long_gap && place.along > stretch.length * 0.4);
        site.axis = *Bearing::along(to.plug - from.plug);
        site.ladder = {place.along, place.placed.middle, 90.0, place.placed.half_length, place.placed.step};
        site.hit_as_proposed = place.placed.promise.hit;
        site.middle_as_proposed = ladder_middle(site, from.plug);
        site.basis.stretch = stretch;
        site.basis.from_second = place.from_second;
        if (obey_move(site))
            complete_site(site, from.plug, row_on_tape(draws, stretch, place.from_second, site.ladder.along),
                          site.ladder.across, options_);
        else
            complete_site(site, from.plug, place.row, site.ladder.across, options_);
        return site;
    }

    [[nodiscard]] bool decided(const ProbeSite& site) const { return decision_on(survey_, site.key).has_value(); }
    [[nodiscard]] bool decided_between(const MainRun& run) const {
        const std::string& a = survey_.mounds[run.from_mound].name;
        const std::string& b = survey_.mounds[run.to_mound].name;
        return decision_on(survey_, {ProbeKind::between_mounds, a, b}) ||
               decision_on(survey_, {ProbeKind::between_mounds, b, a});
    }

private:
    [[nodiscard]] Stretch stretch_of(const MainRun& run, const Mark& first, const Mark& second) const {
        const LocalVector tape = second.plug - first.plug;
        const Bearing axis = *Bearing::along(tape);
        const auto end = [&](const Mark& mark) {
            EndOfStretch at_end;
            if (mark.fan) at_end.fan_from_tape_degrees = turn_degrees(axis, *mark.fan);
            return at_end;
        };
        const double by_receiver = std::atan2(std::hypot(first.position_sd_m, second.position_sd_m), tape.length_m());
        return {end(first), end(second), Metres::of(tape.length_m()), by_receiver * 180.0 / std::numbers::pi,
                run.probability.value()};
    }

    // A person's decision names the pair one way round: then the tape goes that way. 0: no decision.
    [[nodiscard]] int decided_end(const Mark& first, const Mark& second) const {
        const std::string& a = survey_.mounds[first.mound].name;
        const std::string& b = survey_.mounds[second.mound].name;
        if (decision_on(survey_, {ProbeKind::between_mounds, a, b})) return 1;
        return decision_on(survey_, {ProbeKind::between_mounds, b, a}) ? 2 : 0;
    }

    [[nodiscard]] OnTape best_place(const StretchDraws& draws, const Stretch& stretch, bool long_gap,
                                    int decided_end) const {
        std::optional<OnTape> best;
        const auto look_at = [&](bool from_second, Metres along) {
            if (decided_end == (from_second ? 1 : 2)) return;
            const bool pinned = (from_second ? stretch.to : stretch.from).fan_from_tape_degrees.has_value();
            const bool wide = !pinned || (long_gap && along > stretch.length * 0.4);
            OnTape place{from_second, along, row_on_tape(draws, stretch, from_second, along), {}, wide ? &over_gap : &on_tape};
            LadderOptions roughly = *place.options;
            roughly.middles_either_way = 1;
            roughly.steps.erase(roughly.steps.begin());
            place.placed = place_row(place.row, options_.tunnel_diameter, roughly);
            if (!best || place.placed.worth > best->placed.worth + 1e-9) best = std::move(place);
        };
        for (const bool from_second : {false, true}) {
            for (const double along : from_plug_m)
                if (along <= 0.4 * stretch.length.value()) look_at(from_second, Metres::of(along));
            look_at(from_second, Metres::of(std::round(50.0 * stretch.length.value()) / 100.0));
        }
        best->placed = place_row(best->row, options_.tunnel_diameter, *best->options);
        return *best;
    }

    bool obey_move(ProbeSite& site) const {
        const std::optional<SetDecision> decision = decision_on(survey_, site.key);
        if (!decision || !decision->moved_to) return false;
        site.ladder.along = decision->moved_to->along;
        site.ladder.across = decision->moved_to->across;
        return true;
    }

    const Survey& survey_;
    const SystemPosterior& posterior_;
    const PlanOptions& options_;
    std::vector<RunTurn> turns_;
    RowChance usual_row_;
    PlacedRow usual_place_;
};

// Keeps the places between mounds that are worth it: those of at least the wanted chance or with a decision, and the best of
// the rest where a system has fewer places than it is to get sets. Expects the sites in their order.
void keep_worthwhile(std::vector<ProbeSite>& sites, std::size_t systems, const SiteMaker& maker,
                     const PlanOptions& options) {
    const auto good = [&](const ProbeSite& site) {
        return !site.to_mound ||
               (site.hit_as_proposed.value() >= options.least_between_hit &&
                site.expected_rungs <= options.most_between_rungs) ||
               maker.decided(site);
    };
    std::vector<int> offered(systems, 0);
    for (const ProbeSite& site : sites) offered[site.system] += good(site) ? 1 : 0;
    std::erase_if(sites, [&](const ProbeSite& site) {
        if (good(site)) return false;
        return offered[site.system]++ >= options.sets_per_system;
    });
}

}  // namespace

std::vector<ProbeSite> probe_sites(const Survey& survey, const SystemPosterior& posterior, const std::vector<MainRun>& runs,
                                   const PlanOptions& options, const ProbeScope& scope) {
    const SiteMaker maker(survey, posterior, options);
    std::vector<std::size_t> mark_of(survey.mounds.size(), 0);
    std::vector<std::size_t> with_fan;
    std::vector<int> plug_sides(posterior.systems, 0);
    for (std::size_t i = 0; i < posterior.marks.size(); ++i) {
        mark_of[posterior.marks[i].mound] = i;
        if (posterior.marks[i].fan && !scope.marks) with_fan.push_back(i);
    }
    if (scope.marks) with_fan = *scope.marks;
    for (const std::size_t i : with_fan) ++plug_sides[posterior.system[i]];
    const auto wanted = [&](const MainRun& run) {
        return !scope.between_where_wanting || plug_sides[run.system] < options.sets_per_system ||
               maker.decided_between(run);
    };
    const auto end_of = [&](std::size_t mound) -> const Mark& { return posterior.marks[mark_of[mound]]; };
    std::vector<const MainRun*> with_tape;
    for (const MainRun& run : runs)
        if (run.probability.value() >= options.least_run_probability &&
            distance_m(end_of(run.from_mound).plug, end_of(run.to_mound).plug) >= shortest_tape_m && wanted(run))
            with_tape.push_back(&run);
    std::vector<ProbeSite> sites(with_fan.size() + with_tape.size());
    std::atomic<std::size_t> next{0};
    const auto work = [&] {  // what a site is does not depend on who makes it
        for (std::size_t i = next++; i < sites.size(); i = next++) {
            if (i < with_fan.size()) {
                sites[i] = maker.plug_side(with_fan[i]);
            } else {
                const MainRun& run = *with_tape[i - with_fan.size()];
                sites[i] = maker.between(run, end_of(run.from_mound), end_of(run.to_mound));
            }
        }
    };
    {
        std::jthread helper;
        if (sites.size() > 100) helper = std::jthread(work);
        work();
    }
    // ties by the marks' keys, which do not depend on how the survey numbers them
    const auto key_of = [&](std::size_t mound) { return posterior.marks[mark_of[mound]].key; };
    std::sort(sites.begin(), sites.end(), [&](const ProbeSite& a, const ProbeSite& b) {
        if (a.system != b.system) return a.system < b.system;
        if (a.hit_as_proposed != b.hit_as_proposed) return a.hit_as_proposed > b.hit_as_proposed;
        return std::tuple(a.key.kind, key_of(a.from_mound), key_of(a.to_mound.value_or(a.from_mound))) <
               std::tuple(b.key.kind, key_of(b.from_mound), key_of(b.to_mound.value_or(b.from_mound)));
    });
    keep_worthwhile(sites, posterior.systems, maker, options);
    return sites;
}

}  // namespace plugside
