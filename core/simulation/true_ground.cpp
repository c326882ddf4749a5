#include "core/simulation/true_ground.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace plugside {

namespace {

constexpr double cell_m = 0.5;

std::int64_t column(double metres) { return static_cast<std::int64_t>(std::floor(metres / cell_m)); }

std::uint64_t cell_key(std::int64_t c, std::int64_t r) {
    return (static_cast<std::uint64_t>(c) << 32) ^ (static_cast<std::uint64_t>(r) & 0xffffffffULL);
}

}  // namespace

std::uint64_t TrueGround::key(LocalPoint place) { return cell_key(column(place.east_m), column(place.north_m)); }

TrueGround::TrueGround(const SimulatedField& field) : truth_(field.truth), mound_of_mark_(field.survey.mounds.size()) {
    for (std::size_t i = 0; i < truth_.mounds.size(); ++i)
        if (truth_.mounds[i].seen_as) mound_of_mark_.at(*truth_.mounds[i].seen_as) = i;
    const double reach = 0.5 * truth_.tunnel_diameter.value();
    for (const TrueRun& run : truth_.runs)
        for (std::size_t i = 1; i < run.line.vertices.size(); ++i) {
            const LocalPoint a = run.line.vertices[i - 1];
            const LocalPoint b = run.line.vertices[i];
            for (std::int64_t c = column(std::min(a.east_m, b.east_m) - reach);
                 c <= column(std::max(a.east_m, b.east_m) + reach); ++c)
                for (std::int64_t r = column(std::min(a.north_m, b.north_m) - reach);
                     r <= column(std::max(a.north_m, b.north_m) + reach); ++r)
                    cells_[cell_key(c, r)].push_back({a, b, run.system});
        }
}

std::optional<std::size_t> TrueGround::mound_of_mark(std::size_t mark) const {
    return mark < mound_of_mark_.size() ? mound_of_mark_[mark] : std::nullopt;
}

std::optional<std::size_t> TrueGround::system_under(LocalPoint hole) const {
    const auto cell = cells_.find(key(hole));
    if (cell == cells_.end()) return std::nullopt;
    std::optional<std::size_t> system;
    double nearest_m = 0.5 * truth_.tunnel_diameter.value();
    for (const Segment& segment : cell->second)
        if (const double away = distance_to_segment_m(hole, segment.from, segment.to); away <= nearest_m) {
            nearest_m = away;
            system = segment.system;
        }
    return system;
}

TrueGround::Trial TrueGround::try_ladder(const ProbeSite& site) const {
    const Trial missed{static_cast<int>(site.rungs.size()), std::nullopt};
    const auto from = mound_of_mark(site.from_mound);
    if (!from) return missed;
    const LocalPoint plug = truth_.mounds[*from].plug;
    Bearing axis = truth_.mounds[*from].fan.reversed();
    if (site.to_mound) {
        const auto to = mound_of_mark(*site.to_mound);
        const auto towards = to ? Bearing::along(truth_.mounds[*to].plug - plug) : std::nullopt;
        if (!towards) return missed;
        axis = *towards;
    }
    const LocalPoint middle =
        plug + axis.unit() * site.ladder.along.value() + turned_right(axis.unit()) * site.ladder.across.value();
    const LocalVector row = axis.turned(site.ladder.angle_degrees).unit();
    for (std::size_t i = 0; i < site.rungs.size(); ++i)
        if (const auto system = system_under(middle + row * site.rungs[i].value())) return {static_cast<int>(i) + 1, system};
    return missed;
}

}  // namespace plugside
