// Figures of core for data that a reference program holds: numbers in on standard input, figures out on standard output.
// The data sets are not ours to copy, so the checks beside this file read them from their own packages and feed them here.
//
//   core_figures mean-bearing | mean-axis       degrees
//   core_figures calibration                    chances and outcomes in turn: Brier and log score, then the bins
//   core_figures neighbours                     places: Delaunay edges, those with an empty circle on them, spanning tree
//   length core_figures single-linkage CUT             places: groups when all links up to CUT join core_figures
//   density-clusters RADIUS LEAST  places: clusters, places in none core_figures clark-evans AREA               places: mean
//   distance to the nearest over that of a Poisson process core_figures systems                        places of marks
//   without fans, m: systems of the plan, expected number, low, high,
//                                               then each mark's system
//   core_figures coarse                         the same by the coarse form
//   core_figures to-lines LINES                 LINES segments (four numbers each), then places: mean distance to the
//   nearest
//   core_figures set-codes                      letters and numbers of sets in turn: the code of each
#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <iostream>
#include <iterator>
#include <limits>
#include <map>
#include <string>
#include <vector>

#include "core/geometry/delaunay.h"
#include "core/geometry/near_places.h"
#include "core/geometry/polyline.h"
#include "core/plan/make_plan.h"
#include "core/sets/set_code.h"
#include "core/simulation/calibration.h"
#include "core/simulation/plan_score.h"
#include "core/survey/circular.h"
#include "core/systems/coarse_systems.h"
#include "core/systems/neighbour_graph.h"

namespace plugside {
namespace {

std::vector<LocalPoint> places_in(const std::vector<double>& numbers, std::size_t from = 0) {
    std::vector<LocalPoint> places;
    for (std::size_t i = from; i + 1 < numbers.size(); i += 2) places.push_back({numbers[i], numbers[i + 1]});
    return places;
}

std::vector<Link> delaunay_links(const std::vector<LocalPoint>& places) {
    std::vector<Link> links;
    for (const auto& [i, j] : delaunay_edges(places)) {
        Link link;
        link.first = static_cast<std::uint32_t>(i);
        link.second = static_cast<std::uint32_t>(j);
        link.length_m = distance_m(places[i], places[j]);
        links.push_back(link);
    }
    return links;
}

bool circle_on_it_is_empty(const std::vector<LocalPoint>& places, const Link& link) {
    const LocalPoint middle = midpoint(places[link.first], places[link.second]);
    const double radius =
        0.5 * link.length_m * (1.0 - 1e-9);  // digitised places may lie right on the circle: that is not in it
    for (std::size_t k = 0; k < places.size(); ++k)
        if (k != link.first && k != link.second && distance_m(places[k], middle) < radius) return false;
    return true;
}

void print_mean(const MeanBearing& mean) {
    std::printf("%.9f %.9f\n", mean.direction ? mean.direction->degrees() : -1.0, mean.resultant_length);
}

void print_neighbours(const std::vector<LocalPoint>& places) {
    const std::vector<Link> links = delaunay_links(places);
    const auto gabriel =
        std::count_if(links.begin(), links.end(), [&](const Link& link) { return circle_on_it_is_empty(places, link); });
    const std::vector<bool> in_tree = in_minimum_spanning_forest(places.size(), links);
    double length = 0.0;
    for (std::size_t i = 0; i < links.size(); ++i)
        if (in_tree[i]) length += links[i].length_m;
    std::printf("%zu %td %.9f\n", links.size(), gabriel, length);
}

void print_single_linkage(const std::vector<LocalPoint>& places, double cut) {
    std::vector<Link> links = delaunay_links(places);
    std::erase_if(links, [&](const Link& link) { return link.length_m > cut; });
    const std::vector<std::uint32_t> parts = connected_parts(places.size(), links);
    std::printf("%u\n", parts.empty() ? 0U : *std::max_element(parts.begin(), parts.end()) + 1U);
}

void print_density_clusters(const std::vector<LocalPoint>& places, double radius, int least) {
    std::map<std::size_t, int> sizes;
    for (const std::size_t label : density_clusters(places, Metres::of(radius), least)) ++sizes[label];
    const auto alone = std::count_if(sizes.begin(), sizes.end(), [](const auto& entry) { return entry.second == 1; });
    std::printf("%td %td\n", static_cast<std::ptrdiff_t>(sizes.size()) - alone, alone);
}

// Clark & Evans 1954, Ecology 35:445, without correction for edges.
void print_clark_evans(const std::vector<LocalPoint>& places, double area) {
    const NearPlaces near(places);
    double sum = 0.0;
    for (const LocalPoint place : places) sum += near.nearest(place, 2).back().distance_m;
    const auto count = static_cast<double>(places.size());
    std::printf("%.9f\n", sum / count * 2.0 * std::sqrt(count / area));
}

int print_systems(const std::vector<LocalPoint>& places) {
    Survey survey;
    survey.walks.push_back({"walk", "", {}});
    for (const LocalPoint place : places) {
        Mound mound;
        mound.name = "M" + std::to_string(survey.mounds.size() + 1);
        mound.plug = place;
        survey.mounds.push_back(mound);
    }
    const std::optional<Plan> plan = make_plan(survey);
    if (!plan) return 1;
    std::printf("%zu %.6f %d %d", plan->systems.size(), plan->estimate.expected, plan->estimate.low, plan->estimate.high);
    for (const MoundInPlan& mound : plan->mounds) std::printf(" %zu", mound.system.value());
    std::printf("\n");
    return 0;
}

int print_coarse_systems(const std::vector<LocalPoint>& places) {
    std::vector<CoarseMark> marks;
    for (const LocalPoint place : places) marks.push_back({place, {}});
    const std::optional<CoarseSystems> found = coarse_systems(marks);
    if (!found) return 1;
    std::printf("%zu %.6f %.0f %.0f", found->systems, found->expected, found->low, found->high);
    for (const std::uint32_t system : found->system) std::printf(" %u", system);
    std::printf("\n");
    return 0;
}

void print_distances_to_lines(const std::vector<double>& numbers, std::size_t lines) {
    const std::vector<LocalPoint> places = places_in(numbers, 4 * lines);
    double sum = 0.0;
    for (const LocalPoint place : places) {
        double least = std::numeric_limits<double>::infinity();
        for (std::size_t i = 0; i < lines; ++i) {
            const double* n = &numbers.at(4 * i);
            least = std::min(least, distance_to_segment_m(place, {n[0], n[1]}, {n[2], n[3]}));
        }
        sum += least;
    }
    std::printf("%.9f\n", sum / static_cast<double>(places.size()));
}

// Chances and what came of them (0 or 1) in turn: Brier and log score, then a line a bin.
void print_calibration(const std::vector<double>& numbers) {
    std::vector<Claim> claims;
    for (std::size_t i = 0; i + 1 < numbers.size(); i += 2) claims.push_back({numbers[i], numbers[i + 1] > 0.5});
    const Calibration calibration = calibration_of(claims);
    std::printf("%.12f %.12f\n", calibration.brier.score, calibration.log.score);
    for (const ReliabilityBin& bin : calibration.bins)
        std::printf("%.12f %.12f %ld\n", bin.mean_chance, bin.came_true.value(), bin.came_true.trials);
}

std::vector<Bearing> bearings_in(const std::vector<double>& numbers) {
    std::vector<Bearing> bearings;
    for (const double degrees : numbers) bearings.push_back(Bearing::degrees(degrees));
    return bearings;
}

int print_set_codes() {
    SetName name;
    while (std::cin >> name.letter >> name.number) std::printf("%s\n", set_code(name).c_str());
    return 0;
}

int run(const std::vector<std::string>& words) {
    if (!words.empty() && words[0] == "set-codes") return print_set_codes();
    const std::vector<double> numbers{std::istream_iterator<double>(std::cin), {}};
    const std::string what = words.empty() ? "" : words[0];
    if (what == "mean-bearing") {
        print_mean(mean_bearing(bearings_in(numbers)));
    } else if (what == "mean-axis") {
        print_mean(mean_axis(bearings_in(numbers)));
    } else if (what == "neighbours") {
        print_neighbours(places_in(numbers));
    } else if (what == "single-linkage" && words.size() == 2) {
        print_single_linkage(places_in(numbers), std::stod(words[1]));
    } else if (what == "density-clusters" && words.size() == 3) {
        print_density_clusters(places_in(numbers), std::stod(words[1]), std::stoi(words[2]));
    } else if (what == "clark-evans" && words.size() == 2) {
        print_clark_evans(places_in(numbers), std::stod(words[1]));
    } else if (what == "systems") {
        return print_systems(places_in(numbers));
    } else if (what == "coarse") {
        return print_coarse_systems(places_in(numbers));
    } else if (what == "to-lines" && words.size() == 2) {
        print_distances_to_lines(numbers, std::stoul(words[1]));
    } else if (what == "calibration") {
        print_calibration(numbers);
    } else {
        std::fprintf(stderr, "core_figures: found \"%s\", expected a figure's name.\n", what.c_str());
        return 2;
    }
    return 0;
}

}  // namespace
}  // namespace plugside

int main(int count, char** words) { return plugside::run({words + 1, words + count}); }
