#include "core/probing/ladder_by_hand.h"

#include <algorithm>
#include <cmath>

#include "core/probing/ladder.h"

namespace plugside {

namespace {

// What the rungs reach of a row's chances, from the ladder's middle.
RowChance about_middle(const RowChance& row, Metres middle, Metres half_length, Metres tunnel_diameter) {
    const double reach = half_length.value() + tunnel_diameter.value() * TunnelSpan::most * row.slant;
    RowChance part;
    part.slant = row.slant;
    bool first = true;
    for (std::size_t i = 0; i < row.chance.size(); ++i) {
        const double at = row.at_m(i) - middle.value();
        if (std::abs(at) > reach) continue;
        if (first) part.first_m = at;
        first = false;
        part.chance.push_back(row.chance[i]);
    }
    return part;
}

RowChance seen_from_other_end(RowChance row) {
    row.first_m = row.chance.empty() ? 0.0 : -row.at_m(row.chance.size() - 1);
    std::reverse(row.chance.begin(), row.chance.end());
    return row;
}

}  // namespace

LocalPoint ladder_middle(const ProbeSite& site, LocalPoint plug) {
    return plug + site.axis.unit() * site.ladder.along.value() + turned_right(site.axis.unit()) * site.ladder.across.value();
}

void complete_site(ProbeSite& site, LocalPoint plug, const RowChance& row, Metres row_middle, const PlanOptions& options) {
    const Ladder& ladder = site.ladder;
    site.rungs = rungs_of(ladder.half_length, ladder.step);
    const LadderPromise promise = promise_of(row, row_middle, site.rungs, options.tunnel_diameter);
    site.hit = promise.hit;
    site.expected_rungs = promise.expected_rungs;
    site.run_offset = Metres::of(row.mean_m()) - row_middle;
    site.run_offset_sd = Metres::of(row.sd_m());
    site.along_row = about_middle(row, row_middle, ladder.half_length, options.tunnel_diameter);
    site.middle = ladder_middle(site, plug);
    site.rung_places.clear();
    const LocalVector way = site.axis.turned(ladder.angle_degrees).unit();
    for (const Metres rung : site.rungs) site.rung_places.push_back(site.middle + way * rung.value());
}

RowChance row_on_tape(const StretchDraws& draws, const Stretch& stretch, bool from_second, Metres along) {
    return from_second ? seen_from_other_end(draws.across_tape(stretch.length - along)) : draws.across_tape(along);
}

LadderByHand::LadderByHand(const ProbeSite& site, const PlanOptions& options) : site_(site), options_(options) {
    const LocalVector along = site.axis.unit();
    plug_ = site.middle + along * -site.ladder.along.value() + turned_right(along) * -site.ladder.across.value();
    if (site.basis.stretch) draws_ = std::make_unique<const StretchDraws>(*site.basis.stretch, options_);
}

ProbeSite LadderByHand::at(const LadderPlace& place) const {
    ProbeSite site = site_;
    site.ladder.along = place.along;
    site.ladder.across = place.across;
    if (draws_)
        complete_site(site, plug_, row_on_tape(*draws_, *site.basis.stretch, site.basis.from_second, place.along),
                      place.across, options_);
    else
        complete_site(site, plug_, plug_side_chance(options_, site.basis.turn, place.across), place.along, options_);
    return site;
}

}  // namespace plugside
