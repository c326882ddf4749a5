// What both forms of the inference measure about a link among its neighbours.
//
// other_end:       of a link, the mark that is not `end`.
// marks_between:   seen from `end`: marks nearer to both ends than these to one another, and marks in the disc on the link.
// goes_on:         0..1: how straight and how near the best neighbour beyond `end` continues the link; far is told in spacings.
// ages_differ:     one end is fresh, the other older.
// Preconditions:   `rows` are those of `links`; spacing_m > 0.
// Cost:            O(links of the end).
#pragma once

#include <utility>

#include "core/systems/neighbour_graph.h"

namespace plugside {

struct LinkedMarks {
    const std::vector<Mark>& marks;
    const std::vector<Link>& links;
    const LinkRows& rows;
};

[[nodiscard]] inline std::uint32_t other_end(const Link& link, std::uint32_t end) {
    return link.first == end ? link.second : link.first;
}
[[nodiscard]] std::pair<int, int> marks_between(const LinkedMarks& field, const Link& link, std::uint32_t end);
[[nodiscard]] double goes_on(const LinkedMarks& field, const Link& link, std::uint32_t end, double spacing_m);
[[nodiscard]] bool ages_differ(const Mark& a, const Mark& b);

}  // namespace plugside
