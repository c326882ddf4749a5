#include "core/systems/neighbour_graph.h"

#include <algorithm>
#include <map>
#include <numeric>

#include "core/geometry/near_places.h"
#include "core/systems/disjoint_sets.h"

namespace plugside {

namespace {

struct Box {
    double west = 0.0, south = 0.0, east = 0.0, north = 0.0;
    [[nodiscard]] bool apart_from(const Box& other) const {
        return east < other.west || other.east < west || north < other.south || other.north < south;
    }
};

Box box_of(LocalPoint a, LocalPoint b) {
    return {std::min(a.east_m, b.east_m), std::min(a.north_m, b.north_m), std::max(a.east_m, b.east_m),
            std::max(a.north_m, b.north_m)};
}

struct BarrierPiece {
    LocalPoint from, to;
    Box box;
};

std::vector<BarrierPiece> pieces_of(const std::vector<Barrier>& barriers) {
    std::vector<BarrierPiece> pieces;
    for (const Barrier& barrier : barriers)
        for (std::size_t i = 1; i < barrier.line.vertices.size(); ++i) {
            const LocalPoint from = barrier.line.vertices[i - 1];
            const LocalPoint to = barrier.line.vertices[i];
            pieces.push_back({from, to, box_of(from, to)});
        }
    return pieces;
}

bool crosses_any(LocalPoint a, LocalPoint b, const std::vector<BarrierPiece>& pieces) {
    const Box box = box_of(a, b);
    return std::any_of(pieces.begin(), pieces.end(), [&](const BarrierPiece& piece) {
        return !box.apart_from(piece.box) && segments_meet(a, b, piece.from, piece.to);
    });
}

}  // namespace

std::vector<Link> candidate_links(const std::vector<Mark>& marks, const std::vector<Barrier>& barriers,
                                  const NeighbourGraphOptions& options) {
    std::vector<LocalPoint> take_offs;
    take_offs.reserve(marks.size());
    for (const Mark& mark : marks) take_offs.push_back(mark.take_off);
    const NearPlaces near(take_offs);
    std::vector<Link> links;
    const int beyond = options.nearest + 1;
    for (std::uint32_t i = 0; i < marks.size(); ++i) {
        int rank = 0;
        for (const NearPlaces::Found& found : near.nearest(take_offs[i], static_cast<std::size_t>(beyond))) {
            if (found.index == i || rank >= options.nearest) continue;
            ++rank;
            if (found.distance_m > options.reach.value()) break;
            const auto j = static_cast<std::uint32_t>(found.index);
            if (i < j)
                links.push_back({i, j, found.distance_m, rank, beyond});
            else
                links.push_back({j, i, found.distance_m, beyond, rank});
        }
    }
    std::sort(links.begin(), links.end(), [](const Link& a, const Link& b) {
        return std::pair(a.first, a.second) < std::pair(b.first, b.second);
    });
    std::vector<Link> merged;
    merged.reserve(links.size());
    for (const Link& link : links) {
        if (!merged.empty() && merged.back().first == link.first && merged.back().second == link.second) {
            merged.back().rank_of_second = std::min(merged.back().rank_of_second, link.rank_of_second);
            merged.back().rank_of_first = std::min(merged.back().rank_of_first, link.rank_of_first);
        } else {
            merged.push_back(link);
        }
    }
    const std::vector<BarrierPiece> pieces = pieces_of(barriers);
    if (!pieces.empty())
        std::erase_if(merged, [&](const Link& link) {
            return crosses_any(marks[link.first].plug, marks[link.second].plug, pieces);
        });
    return merged;
}

LinkRows rows_of(std::size_t marks, const std::vector<Link>& links) {
    LinkRows rows;
    rows.start.assign(marks + 1, 0);
    for (const Link& link : links) {
        ++rows.start[link.first + 1];
        ++rows.start[link.second + 1];
    }
    std::partial_sum(rows.start.begin(), rows.start.end(), rows.start.begin());
    rows.link.resize(2 * links.size());
    std::vector<std::uint32_t> next(rows.start.begin(), rows.start.end() - 1);
    for (std::uint32_t e = 0; e < links.size(); ++e) {
        rows.link[next[links[e].first]++] = e;
        rows.link[next[links[e].second]++] = e;
    }
    return rows;
}

std::vector<bool> in_minimum_spanning_forest(std::size_t marks, const std::vector<Link>& links) {
    std::vector<std::uint32_t> by_length(links.size());
    std::iota(by_length.begin(), by_length.end(), 0U);
    std::sort(by_length.begin(), by_length.end(), [&](std::uint32_t a, std::uint32_t b) {
        return links[a].length_m != links[b].length_m ? links[a].length_m < links[b].length_m : a < b;
    });
    DisjointSets joined(marks);
    std::vector<bool> taken(links.size(), false);
    for (const std::uint32_t e : by_length) taken[e] = joined.join(links[e].first, links[e].second);
    return taken;
}

std::vector<std::uint32_t> connected_parts(std::size_t marks, const std::vector<Link>& links) {
    DisjointSets joined(marks);
    for (const Link& link : links) joined.join(link.first, link.second);
    return joined.labels();
}

}  // namespace plugside
