#include "core/systems/coarse_systems.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>

#include "core/geometry/space_curve.h"
#include "core/runs/take_off.h"
#include "core/systems/coarse_links.h"
#include "core/words/words.h"

namespace plugside {

namespace {

// Printed by tests/training/fit_coarse_links: the true number over the number found, its scatter from field to field as a
// standard deviation of the logarithm, and the part of its variance that shrinks with the number of systems.
constexpr double true_over_found = 0.722;
constexpr double log_scatter_of_fields = 0.422;
constexpr double log_scatter_of_one_system = 1.485;
constexpr double normal_95 = 1.6448536269514722;

// The marks as they stand along the curve; those in one spot by their fans, so that their numbers do not matter.
struct AlongCurve {
    std::vector<std::uint32_t> order;
    std::vector<LocalPoint> take_offs;
    std::vector<std::optional<Bearing>> fans;

    [[nodiscard]] CoarseGround ground() const { return {take_offs, fans}; }
};

void order_spots_by_fan(std::span<const CoarseMark> marks, std::vector<std::uint32_t>& order) {
    const auto fan_of = [&](std::uint32_t i) { return marks[i].fan ? marks[i].fan->degrees() : -1.0; };
    for (std::size_t begin = 0, end = 0; begin < order.size(); begin = end) {
        for (end = begin + 1; end < order.size() && marks[order[end]].take_off == marks[order[begin]].take_off;) ++end;
        if (end - begin > 1)
            std::sort(order.begin() + static_cast<std::ptrdiff_t>(begin), order.begin() + static_cast<std::ptrdiff_t>(end),
                      [&](std::uint32_t a, std::uint32_t b) { return std::pair(fan_of(a), a) < std::pair(fan_of(b), b); });
    }
}

AlongCurve along_curve(std::span<const CoarseMark> marks) {
    AlongCurve sorted;
    std::vector<LocalPoint> places(marks.size());
    std::transform(marks.begin(), marks.end(), places.begin(), [](const CoarseMark& mark) { return mark.take_off; });
    sorted.order = order_along_curve(places);
    order_spots_by_fan(marks, sorted.order);
    sorted.take_offs.reserve(marks.size());
    sorted.fans.reserve(marks.size());
    for (const std::uint32_t i : sorted.order) {
        sorted.take_offs.push_back(marks[i].take_off);
        sorted.fans.push_back(marks[i].fan);
    }
    return sorted;
}

// Marks in one spot are one group, whatever else speaks: of very many in one spot each knows only some of the others.
std::vector<std::uint32_t> spots_of(const std::vector<LocalPoint>& take_offs) {
    std::vector<std::uint32_t> spot(take_offs.size(), 0);
    for (std::size_t i = 1; i < take_offs.size(); ++i) spot[i] = spot[i - 1] + (take_offs[i] == take_offs[i - 1] ? 0U : 1U);
    return spot;
}

// Links between spots instead of marks. Marks in one spot hold links of like evidence to the same others: the best counts.
void link_spots(const std::vector<std::uint32_t>& spot, std::vector<CoarseLink>& links) {
    if (spot.empty() || spot.back() + 1U == spot.size()) return;
    for (CoarseLink& link : links) {
        link.first = spot[link.first];
        link.second = spot[link.second];
    }
    std::erase_if(links, [](const CoarseLink& link) { return link.first == link.second; });
    std::sort(links.begin(), links.end(), [](const CoarseLink& a, const CoarseLink& b) {
        return std::tuple(a.first, a.second, -a.score) < std::tuple(b.first, b.second, -b.score);
    });
    const auto same = [](const CoarseLink& a, const CoarseLink& b) { return a.first == b.first && a.second == b.second; };
    links.erase(std::unique(links.begin(), links.end(), same), links.end());
}

struct Group {
    std::uint32_t label = 0;
    std::uint32_t marks = 0;
    double nearest_sum_m = 0.0;
};

// Labels (in order of first mark along the curve) become numbers by size.
std::vector<std::uint32_t> numbered_by_size(const std::vector<std::uint32_t>& label, const CoarseNeighbours& neighbours) {
    std::vector<Group> groups;
    for (std::size_t i = 0; i < label.size(); ++i) {
        if (label[i] >= groups.size()) groups.push_back({label[i], 0, 0.0});
        Group& group = groups[label[i]];
        ++group.marks;
        if (neighbours.count[i] > 0) group.nearest_sum_m += static_cast<double>(neighbours.distance_m[i * neighbours.row]);
    }
    std::sort(groups.begin(), groups.end(), [](const Group& a, const Group& b) {
        return std::tuple(b.marks, a.nearest_sum_m, a.label) < std::tuple(a.marks, b.nearest_sum_m, b.label);
    });
    std::vector<std::uint32_t> number(groups.size());
    for (std::uint32_t rank = 0; rank < groups.size(); ++rank) number[groups[rank].label] = rank;
    return number;
}

// Of `systems` found, `certain` ones could not have been told otherwise: marks with nothing within reach.
void give_count(std::size_t systems, std::size_t certain, std::size_t marks, CoarseSystems& result) {
    result.systems = systems;
    const auto sure = static_cast<double>(certain);
    const auto open = static_cast<double>(systems - certain);
    const auto open_marks = static_cast<double>(marks - certain);
    if (open <= 0.0) {
        result.expected = result.low = result.high = sure;
        return;
    }
    const double middle = std::clamp(open * true_over_found, 1.0, open_marks);
    const double sd = std::sqrt(log_scatter_of_fields * log_scatter_of_fields +
                                log_scatter_of_one_system * log_scatter_of_one_system / open);
    result.expected = sure + middle;
    result.low = sure + std::clamp(std::floor(middle * std::exp(-normal_95 * sd)), 1.0, open_marks);
    result.high = sure + std::clamp(std::ceil(middle * std::exp(normal_95 * sd)), 1.0, open_marks);
}

}  // namespace

std::optional<CoarseSystems> coarse_systems(std::span<const CoarseMark> marks, const CoarseOptions& options,
                                            const Progress& progress) {
    progress.say(0.0, Words::later("ordering the marks"));
    const AlongCurve sorted = along_curve(marks);
    if (progress.stopped()) return std::nullopt;
    progress.say(0.1, Words::later("looking for neighbours"));
    auto neighbours = coarse_neighbours(sorted.take_offs, options.nearest, options.reach, progress);
    if (!neighbours || !drop_across(options.barriers, sorted.take_offs, *neighbours, progress)) return std::nullopt;
    progress.say(0.5, Words::later("weighing links"));
    auto links = coarse_links(sorted.ground(), *neighbours, options.reach, progress);
    if (!links) return std::nullopt;
    progress.say(0.7, Words::later("joining systems"));
    const std::vector<std::uint32_t> spot = spots_of(sorted.take_offs);
    link_spots(spot, *links);
    const std::size_t spots = spot.empty() ? 0 : spot.back() + 1U;
    const auto joined = join_by_evidence(spots, std::move(*links), options.joining, progress);
    if (!joined) return std::nullopt;

    std::vector<std::uint32_t> label(marks.size());
    for (std::size_t i = 0; i < marks.size(); ++i) label[i] = (*joined)[spot[i]];
    const std::vector<std::uint32_t> number = numbered_by_size(label, *neighbours);
    CoarseSystems result;
    result.system.resize(marks.size());
    for (std::size_t i = 0; i < marks.size(); ++i) result.system[sorted.order[i]] = number[label[i]];
    const auto alone = std::count(neighbours->count.begin(), neighbours->count.end(), std::uint8_t{0});
    give_count(number.size(), static_cast<std::size_t>(alone), marks.size(), result);
    progress.say(1.0, Words::later("done"));
    return result;
}

CoarseSurvey coarse_marks_of(const Survey& survey, const PlanOptions& options) {
    CoarseSurvey coarse;
    for (std::size_t i = 0; i < survey.mounds.size(); ++i) {
        const Mound& mound = survey.mounds[i];
        if (why_not_used(survey, mound)) continue;
        coarse.marks.push_back({take_off_of(mound.plug, mound.fan, mound.position_sd, options).at, mound.fan});
        coarse.mound.push_back(i);
    }
    return coarse;
}

}  // namespace plugside
