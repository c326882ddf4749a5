#include "core/systems/survey_scales.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "core/geometry/convex_hull.h"
#include "core/geometry/near_places.h"
#include "core/systems/forest_matrix.h"

namespace plugside {

namespace {

constexpr double prior_log_spacing = 0.788;  // log 2.2 m
constexpr double prior_log_spacing_sd = 0.6;
constexpr double prior_log_size = 2.485;  // log 12
constexpr double prior_log_size_sd = 0.7;
constexpr double gap_variation = 0.48;  // of one gap about the spacing
constexpr double double_gap_share = 0.1;
constexpr std::size_t most_marks = 3000;

// The ground that marks speak for: their convex hull and a rim of `rim_m` about it (Steiner's formula).
double hull_area_m2(std::vector<LocalPoint> places, double rim_m) {
    const std::vector<LocalPoint> hull = convex_hull(std::move(places));
    double rim_length_m = 0.0;
    for (std::size_t i = 0; i < hull.size(); ++i) rim_length_m += distance_m(hull[i], hull[(i + 1) % hull.size()]);
    return area_m2(Polygon{Ring{hull}, {}}) + rim_m * rim_length_m + std::numbers::pi * rim_m * rim_m;
}

double gamma_density(double x, double mean, double variance) {
    const double shape = mean * mean / variance;
    const double scale = variance / mean;
    return std::exp((shape - 1.0) * std::log(x / scale) - x / scale - std::lgamma(shape)) / scale;
}

// Density of a displacement of length `length_m` on the plane, 1/m2.
double displacement_density(double length_m, double spacing_m, double receiver_variance) {
    const double variance = gap_variation * gap_variation * spacing_m * spacing_m + receiver_variance;
    const double d = std::max(length_m, 0.05 * spacing_m);
    const double one = gamma_density(d, spacing_m, variance);
    const double two = gamma_density(d, 2.0 * spacing_m, 2.0 * variance);
    return ((1.0 - double_gap_share) * one + double_gap_share * two) / (2.0 * std::numbers::pi * d);
}

struct Sample {
    std::size_t marks = 0;
    std::vector<Link> links;
    std::vector<double> receiver_variance;  // of a link's length
    double area_m2 = 0.0;
};

Sample sample_of(const std::vector<Mark>& marks, const std::vector<Link>& links) {
    std::vector<LocalPoint> take_offs;
    for (const Mark& mark : marks) take_offs.push_back(mark.take_off);
    std::vector<std::uint32_t> index_in_sample(marks.size(), no_mark);
    std::vector<LocalPoint> kept;
    std::size_t count = 0;
    if (marks.size() <= most_marks) {
        for (auto& index : index_in_sample) index = static_cast<std::uint32_t>(count++);
        kept = take_offs;
    } else {
        const auto first = std::min_element(marks.begin(), marks.end(),
                                            [](const Mark& a, const Mark& b) { return a.key < b.key; });
        const NearPlaces near(take_offs);
        for (const NearPlaces::Found& found : near.nearest(first->take_off, most_marks)) {
            index_in_sample[found.index] = static_cast<std::uint32_t>(count++);
            kept.push_back(take_offs[found.index]);
        }
    }
    Sample sample;
    sample.marks = count;
    for (const Link& link : links) {
        const std::uint32_t a = index_in_sample[link.first];
        const std::uint32_t b = index_in_sample[link.second];
        if (a == no_mark || b == no_mark) continue;
        Link inside = link;
        inside.first = std::min(a, b);
        inside.second = std::max(a, b);
        sample.links.push_back(inside);
        sample.receiver_variance.push_back(marks[link.first].position_sd_m * marks[link.first].position_sd_m +
                                           marks[link.second].position_sd_m * marks[link.second].position_sd_m);
    }
    std::vector<double> lengths;
    for (const Link& link : sample.links) lengths.push_back(link.length_m);
    const auto middle = lengths.begin() + static_cast<std::ptrdiff_t>(lengths.size() / 2);
    if (!lengths.empty()) std::nth_element(lengths.begin(), middle, lengths.end());
    sample.area_m2 = hull_area_m2(kept, lengths.empty() ? 1.0 : std::max(*middle, 0.1));
    return sample;
}

double log_posterior(const Sample& sample, double log_spacing, double log_size) {
    const double n = static_cast<double>(sample.marks);
    const double spacing = std::exp(log_spacing);
    const double mu = 1.0 - 1.0 / std::exp(log_size);
    const double lambda = n * (1.0 - mu) / sample.area_m2;
    std::vector<double> log_weight(sample.links.size());
    for (std::size_t e = 0; e < sample.links.size(); ++e)
        log_weight[e] = std::max(
            -30.0, std::log(mu * displacement_density(sample.links[e].length_m, spacing, sample.receiver_variance[e]) /
                            lambda));
    // roots weigh 1, links their ratio to a new system: the likelihood is lambda^n det(L + I) exp(-n)
    const double likelihood = n * std::log(lambda) + log_forest_sum(sample.marks, sample.links, log_weight, 1.0);
    const double spacing_off = (log_spacing - prior_log_spacing) / prior_log_spacing_sd;
    const double size_off = (log_size - prior_log_size) / prior_log_size_sd;
    return likelihood - 0.5 * (spacing_off * spacing_off + size_off * size_off);
}

// Where `f` is highest between low and high, for an f with one summit.
template <typename Function>
double golden_section(Function f, double low, double high, int steps) {
    constexpr double ratio = 0.6180339887498949;
    double a = high - ratio * (high - low);
    double b = low + ratio * (high - low);
    double fa = f(a);
    double fb = f(b);
    for (int step = 0; step < steps; ++step) {
        if (fa >= fb) {
            high = b;
            b = a;
            fb = fa;
            a = high - ratio * (high - low);
            fa = f(a);
        } else {
            low = a;
            a = b;
            fa = fb;
            b = low + ratio * (high - low);
            fb = f(b);
        }
    }
    return fa >= fb ? a : b;
}

}  // namespace

SurveyScales fit_scales(const std::vector<Mark>& marks, const std::vector<Link>& links, const Progress& progress) {
    SurveyScales scales{std::exp(prior_log_spacing), std::exp(prior_log_size)};
    const Sample sample = sample_of(marks, links);
    const bool all_in_one_place =
        std::all_of(sample.links.begin(), sample.links.end(), [](const Link& link) { return link.length_m < 1e-3; });
    if (sample.marks < 3 || sample.links.empty() || all_in_one_place) return scales;
    double log_spacing = prior_log_spacing;
    double log_size = prior_log_size;
    double half_width = 1.2;
    for (int round = 0; round < 2 && !progress.stopped(); ++round, half_width *= 0.3) {
        const auto spacing_at = [&](double x) { return log_posterior(sample, x, log_size); };
        log_spacing = golden_section(spacing_at, log_spacing - half_width, log_spacing + half_width, 7);
        const auto size_at = [&](double x) { return log_posterior(sample, log_spacing, x); };
        log_size = golden_section(size_at, std::max(0.3, log_size - half_width), log_size + half_width, 6);
    }
    scales.spacing_m = std::exp(log_spacing);
    scales.mounds_per_system = std::exp(log_size);
    return scales;
}

}  // namespace plugside
