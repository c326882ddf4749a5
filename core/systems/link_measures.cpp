#include "core/systems/link_measures.h"

#include <algorithm>
#include <cmath>

namespace plugside {

std::pair<int, int> marks_between(const LinkedMarks& field, const Link& link, std::uint32_t end) {
    const std::uint32_t far = other_end(link, end);
    const LocalPoint a = field.marks[end].take_off;
    const LocalPoint b = field.marks[far].take_off;
    int nearer_to_both = 0;
    int in_disc = 0;
    for (std::uint32_t at = field.rows.start[end]; at < field.rows.start[end + 1]; ++at) {
        const Link& side = field.links[field.rows.link[at]];
        const std::uint32_t third = other_end(side, end);
        if (third == far || side.length_m >= link.length_m) continue;
        const LocalPoint c = field.marks[third].take_off;
        if (distance_m(c, b) < link.length_m) ++nearer_to_both;
        if (dot(a - c, b - c) < 0.0) ++in_disc;
    }
    return {nearer_to_both, in_disc};
}

double goes_on(const LinkedMarks& field, const Link& link, std::uint32_t end, double spacing_m) {
    constexpr double near_spacings = 1.5;  // our assumption
    const std::uint32_t back = other_end(link, end);
    const LocalPoint here = field.marks[end].take_off;
    const LocalVector arrival = here - field.marks[back].take_off;
    const double arrival_length = std::max(arrival.length_m(), 1e-6);
    double best = 0.0;
    for (std::uint32_t at = field.rows.start[end]; at < field.rows.start[end + 1]; ++at) {
        const Link& next = field.links[field.rows.link[at]];
        const std::uint32_t third = other_end(next, end);
        if (third == back || next.length_m <= 0.0) continue;
        const double straight = dot(arrival, field.marks[third].take_off - here) / (arrival_length * next.length_m);
        if (straight <= 0.0) continue;
        const double far = next.length_m / (near_spacings * spacing_m);
        best = std::max(best, straight * std::exp(-0.5 * far * far));
    }
    return best;
}

bool ages_differ(const Mark& a, const Mark& b) {
    return (a.freshness == Freshness::fresh && b.freshness == Freshness::older) ||
           (a.freshness == Freshness::older && b.freshness == Freshness::fresh);
}

}  // namespace plugside
