#include "core/geometry/delaunay.h"

#include <algorithm>
#include <boost/polygon/voronoi.hpp>
#include <cmath>
#include <compare>
#include <numeric>
#include <tuple>
#include <utility>

namespace plugside {

namespace {

using Edge = std::array<std::size_t, 2>;

struct Lattice {
    int east = 0;
    int north = 0;
    friend auto operator<=>(const Lattice&, const Lattice&) = default;
};

// Boost's sweep line is exact on whole numbers of 32 bits: the field's span is laid over 30 of them, a millionth of a metre
// for a field of a kilometre.
std::vector<Lattice> on_lattice(const std::vector<LocalPoint>& places) {
    LocalPoint low = places.front();
    double span = 0.0;
    for (const LocalPoint p : places) low = {std::min(low.east_m, p.east_m), std::min(low.north_m, p.north_m)};
    for (const LocalPoint p : places) span = std::max({span, p.east_m - low.east_m, p.north_m - low.north_m});
    const double scale = span > 0.0 ? std::ldexp(1.0, 30) / span : 0.0;
    std::vector<Lattice> lattice;
    lattice.reserve(places.size());
    for (const LocalPoint p : places)
        lattice.push_back({static_cast<int>(std::lround((p.east_m - low.east_m) * scale)),
                           static_cast<int>(std::lround((p.north_m - low.north_m) * scale))});
    return lattice;
}

// Different places in ascending order, and which of the caller's indexes stand first on each.
struct DistinctPlaces {
    std::vector<Lattice> places;
    std::vector<std::size_t> first_index;
    std::vector<Edge> chains;  // places on one spot, linked one to the next
};

DistinctPlaces distinct(const std::vector<Lattice>& places) {
    std::vector<std::size_t> order(places.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(),
              [&](std::size_t i, std::size_t j) { return std::tie(places[i], i) < std::tie(places[j], j); });
    DistinctPlaces result;
    for (std::size_t k = 0; k < order.size(); ++k) {
        if (k > 0 && places[order[k]] == places[order[k - 1]]) {
            result.chains.push_back({order[k - 1], order[k]});
        } else {
            result.places.push_back(places[order[k]]);
            result.first_index.push_back(order[k]);
        }
    }
    return result;
}

// Whether places in ascending order bend less than the lattice can tell: rounding alone would make slivers of them.
bool on_one_line(const std::vector<Lattice>& places) {
    const LocalPoint first{static_cast<double>(places.front().east), static_cast<double>(places.front().north)};
    const LocalPoint last{static_cast<double>(places.back().east), static_cast<double>(places.back().north)};
    const LocalVector axis = last - first;
    return std::all_of(places.begin(), places.end(), [&](const Lattice& p) {
        const LocalVector step = LocalPoint{static_cast<double>(p.east), static_cast<double>(p.north)} - first;
        return std::abs(cross(axis, step)) <= 1.5 * axis.length_m();
    });
}

// Edges between different lattice places, as indexes into `places`: each Voronoi edge parts two neighbours; where more than
// three cells meet (places on one circle) their polygon is cut into triangles from its first place.
std::vector<Edge> triangulated(const std::vector<Lattice>& places) {
    std::vector<Edge> edges;
    if (on_one_line(places)) {
        for (std::size_t i = 1; i < places.size(); ++i) edges.push_back({i - 1, i});
        return edges;
    }
    std::vector<boost::polygon::point_data<int>> sites;
    sites.reserve(places.size());
    for (const Lattice& p : places) sites.emplace_back(p.east, p.north);
    boost::polygon::voronoi_diagram<double> diagram;
    boost::polygon::construct_voronoi(sites.begin(), sites.end(), &diagram);

    for (const auto& edge : diagram.edges()) {
        const std::size_t here = edge.cell()->source_index();
        const std::size_t there = edge.twin()->cell()->source_index();
        if (here < there) edges.push_back({here, there});
    }
    for (const auto& vertex : diagram.vertices()) {
        std::vector<std::size_t> around;
        const auto* edge = vertex.incident_edge();
        do {
            around.push_back(edge->cell()->source_index());
            edge = edge->rot_next();
        } while (edge != vertex.incident_edge());
        if (around.size() <= 3) continue;
        std::rotate(around.begin(), std::min_element(around.begin(), around.end()), around.end());
        for (std::size_t k = 2; k + 1 < around.size(); ++k) edges.push_back({around[0], around[k]});
    }
    return edges;
}

}  // namespace

std::vector<Edge> delaunay_edges(const std::vector<LocalPoint>& places) {
    if (places.empty()) return {};
    DistinctPlaces at = distinct(on_lattice(places));
    std::vector<Edge> edges = std::move(at.chains);
    for (const auto& [i, j] : triangulated(at.places)) edges.push_back({at.first_index[i], at.first_index[j]});
    for (Edge& edge : edges)
        if (edge[0] > edge[1]) std::swap(edge[0], edge[1]);
    std::sort(edges.begin(), edges.end());
    edges.erase(std::unique(edges.begin(), edges.end()), edges.end());
    return edges;
}

}  // namespace plugside
