// The fit of the detection curves: likelihood, search, spread, test.
#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <cassert>
#include <cmath>
#include <functional>
#include <map>
#include <numbers>

#include "core/walking/detection.h"
#include "core/walking/detection_curve.h"
#include "core/words/words.h"

namespace plugside {

namespace {

using Parameters = std::array<double, 2>;  // log scale, log steepness

// A chance of a miss is never taken as less: a mound at the feet that was passed over once, or came up after, must not rule
// a curve out.
constexpr double least_miss = 1e-3;
// Keeps the steepness where the data say nothing of it: a normal of its logarithm about 3. Our assumption.
constexpr double log_steepness_middle = 1.0986;
constexpr double log_steepness_sd = 1.0;

DetectionCurve curve_at(CurveShape shape, const Parameters& at) {
    DetectionCurve curve{shape, Metres::of(std::exp(at[0])), 0.0};
    if (shape == CurveShape::hazard_rate) curve.steepness = std::exp(at[1]);
    return curve;
}

class Likelihood {
public:
    Likelihood(CurveShape shape, const std::vector<Sighting>& sightings, const PassedPlaces& places)
        : shape_(shape), sightings_(sightings), places_(places) {}

    // Log chance that this sighting was made from where it was.
    [[nodiscard]] double of_sighting(const Sighting& sighting, const DetectionCurve& curve) const {
        double sum = std::log(std::max(1e-300, curve.chance(sighting.seen_from_m())));
        for (std::size_t i = 0; i < sighting.seen_at; ++i)
            sum += std::log(std::max(least_miss, mean_missed(curve, sighting.passes_m[i], places_.apart())));
        return sum;
    }
    [[nodiscard]] double log_places(const DetectionCurve& curve) const {
        return std::log(
            std::max(1e-300, places_.sum_seen(curve) / static_cast<double>(std::max<std::size_t>(1, places_.size()))));
    }
    [[nodiscard]] double operator()(const Parameters& at) const {
        if (!allowed(at)) return -1e300;
        const DetectionCurve curve = curve_at(shape_, at);
        double sum = -static_cast<double>(sightings_.size()) * log_places(curve);
        for (const Sighting& sighting : sightings_) sum += of_sighting(sighting, curve);
        return sum;
    }
    [[nodiscard]] double with_prior(const Parameters& at) const {
        const double off = (at[1] - log_steepness_middle) / log_steepness_sd;
        return (*this)(at) - (shape_ == CurveShape::hazard_rate ? 0.5 * off * off : 0.0);
    }
    [[nodiscard]] CurveShape shape() const { return shape_; }
    [[nodiscard]] const std::vector<Sighting>& sightings() const { return sightings_; }

private:
    [[nodiscard]] bool allowed(const Parameters& at) const {
        const double scale = std::exp(at[0]);
        const double reach = places_.reach().value();
        return scale > reach / 200.0 && scale < reach * 20.0 && at[1] > std::log(1.05) && at[1] < std::log(30.0);
    }
    CurveShape shape_;
    const std::vector<Sighting>& sightings_;
    const PassedPlaces& places_;
};

// The best parameters by a search that tries steps along each and halves them: the surface is smooth with one top.
Parameters best_of(const Likelihood& likelihood, Parameters at) {
    double top = likelihood.with_prior(at);
    const std::size_t used = likelihood.shape() == CurveShape::hazard_rate ? 2 : 1;
    for (double step = 0.4; step > 1e-4;) {
        bool better = false;
        for (const auto& [first, second] : {std::pair{1.0, 0.0},
                                            {-1.0, 0.0},
                                            {0.0, 1.0},
                                            {0.0, -1.0},
                                            {0.7, 0.7},
                                            {-0.7, -0.7},
                                            {0.7, -0.7},
                                            {-0.7, 0.7}}) {
            if (used == 1 && second != 0.0) continue;
            const Parameters tried{at[0] + step * first, at[1] + step * second};
            const double value = likelihood.with_prior(tried);
            if (value <= top) continue;
            at = tried;
            top = value;
            better = true;
        }
        if (!better) step *= 0.5;
    }
    return at;
}

struct Matrix2 {
    double a = 0.0;
    double b = 0.0;
    double c = 0.0;  // symmetric: a b / b c
};

// Curvature of the log likelihood, turned over: the information. One parameter leaves b and c at 0.
Matrix2 information(const Likelihood& likelihood, const Parameters& at) {
    constexpr double h = 5e-3;
    const auto value = [&](double i, double j) { return likelihood.with_prior({at[0] + h * i, at[1] + h * j}); };
    const double middle = value(0, 0);
    Matrix2 m;
    m.a = -(value(1, 0) - 2.0 * middle + value(-1, 0)) / (h * h);
    if (likelihood.shape() == CurveShape::half_normal) return m;
    m.c = -(value(0, 1) - 2.0 * middle + value(0, -1)) / (h * h);
    m.b = -(value(1, 1) - value(1, -1) - value(-1, 1) + value(-1, -1)) / (4.0 * h * h);
    return m;
}

using GroupScores = std::map<std::size_t, std::array<double, 2>>;

// Derivatives of each group's log likelihood.
GroupScores scores_of(const Likelihood& likelihood, const Parameters& at) {
    constexpr double h = 1e-3;
    GroupScores by_group;
    for (std::size_t k = 0; k < (likelihood.shape() == CurveShape::hazard_rate ? 2U : 1U); ++k) {
        Parameters up = at;
        Parameters down = at;
        up[k] += h;
        down[k] -= h;
        const DetectionCurve curve_up = curve_at(likelihood.shape(), up);
        const DetectionCurve curve_down = curve_at(likelihood.shape(), down);
        const double places = likelihood.log_places(curve_up) - likelihood.log_places(curve_down);
        for (const Sighting& s : likelihood.sightings())
            by_group[s.group][k] +=
                (likelihood.of_sighting(s, curve_up) - likelihood.of_sighting(s, curve_down) - places) / (2.0 * h);
    }
    return by_group;
}

double for_few_groups(std::size_t groups) {
    return groups > 1 ? static_cast<double>(groups) / (static_cast<double>(groups) - 1.0) : 1.0;
}

// Sum over groups of the outer product of their scores.
Matrix2 score_spread(const GroupScores& by_group) {
    Matrix2 spread;
    for (const auto& [group, score] : by_group) {
        spread.a += score[0] * score[0];
        spread.b += score[0] * score[1];
        spread.c += score[1] * score[1];
    }
    const double few = for_few_groups(by_group.size());
    return {spread.a * few, spread.b * few, spread.c * few};
}

// The larger of curvature alone and the sandwich: few groups can by chance look too much alike.
std::array<double, 3> log_covariance(const Likelihood& likelihood, const Parameters& at) {
    const Matrix2 bread = information(likelihood, at);
    const Matrix2 filling = score_spread(scores_of(likelihood, at));
    constexpr double unknown = 0.25;  // variance where the curvature says nothing
    if (!(bread.a > 1e-9)) return {unknown, 0.0, 0.0};
    const double determinant = bread.a * bread.c - bread.b * bread.b;
    if (likelihood.shape() == CurveShape::half_normal || !(determinant > 1e-9 * bread.a))
        return {std::max(1.0 / bread.a, filling.a / (bread.a * bread.a)), 0.0, 0.0};
    const Matrix2 inverse{bread.c / determinant, -bread.b / determinant, bread.a / determinant};
    // inverse * filling * inverse
    const double p = inverse.a * filling.a + inverse.b * filling.b;
    const double q = inverse.a * filling.b + inverse.b * filling.c;
    const double r = inverse.b * filling.a + inverse.c * filling.b;
    const double s = inverse.b * filling.b + inverse.c * filling.c;
    const Matrix2 sandwich{p * inverse.a + q * inverse.b, p * inverse.b + q * inverse.c, r * inverse.b + s * inverse.c};
    const double wider = std::max({1.0, sandwich.a / inverse.a, sandwich.c / inverse.c});
    return {inverse.a * wider, inverse.b * wider, inverse.c * wider};
}

double seen_somewhere(const Sighting& sighting, const DetectionCurve& curve, Metres apart) {
    double left = 1.0;
    double sum = 0.0;
    for (const double x : sighting.passes_m) {
        sum += left * curve.chance(x);
        left *= mean_missed(curve, x, apart);
    }
    return std::min(1.0, sum);
}

// The error of one pass against another that makes the sightings likeliest, of a few; by the half-normal curve.
Metres likeliest_apart(const std::vector<Sighting>& sightings, PassedPlaces places, double start_m) {
    const bool passed_twice =
        std::any_of(sightings.begin(), sightings.end(), [](const Sighting& s) { return s.passes_m.size() > 1; });
    if (!passed_twice) return Metres::of(0.0);
    double best = -1e300;
    Metres likeliest;
    for (const double apart : {0.3, 1.0, 2.0, 3.0, 4.5}) {
        places.set_apart(Metres::of(apart));
        const Likelihood likelihood(CurveShape::half_normal, sightings, places);
        const double value = likelihood(best_of(likelihood, {std::log(start_m), log_steepness_middle}));
        if (value <= best) continue;
        best = value;
        likeliest = Metres::of(apart);
    }
    return likeliest;
}

// DetectionFit::wider, by the header's evenness.
double wider_by_groups(const CurveCandidate& best, const std::vector<Sighting>& sightings, const PassedPlaces& places) {
    constexpr double least_share = 0.2;  // of the mean chance: one mound far off must not stand for many
    constexpr double h = 5e-3;
    const Likelihood likelihood(best.curve.shape, sightings, places);
    const Parameters at{std::log(best.curve.scale.value()),
                        best.curve.steepness > 0.0 ? std::log(best.curve.steepness) : log_steepness_middle};
    const bool two = best.curve.shape == CurveShape::hazard_rate;
    std::array<double, 2> slope{};  // of the log of the mean chance
    for (std::size_t k = 0; k < (two ? 2U : 1U); ++k) {
        Parameters up = at;
        Parameters down = at;
        up[k] += h;
        down[k] -= h;
        slope[k] = (likelihood.log_places(curve_at(best.curve.shape, up)) -
                    likelihood.log_places(curve_at(best.curve.shape, down))) /
                   (2.0 * h);
    }
    const Matrix2 bread = information(likelihood, at);
    const double determinant = bread.a * bread.c - bread.b * bread.b;
    std::array<double, 2> pull{bread.a > 0.0 ? slope[0] / bread.a : 0.0, 0.0};  // slope by the inverse of the information
    if (two && determinant > 1e-9 * bread.a)
        pull = {(bread.c * slope[0] - bread.b * slope[1]) / determinant,
                (bread.a * slope[1] - bread.b * slope[0]) / determinant};
    const double mean_chance = std::exp(likelihood.log_places(best.curve));
    const auto count = static_cast<double>(sightings.size());
    std::map<std::size_t, double> influence;
    for (const Sighting& s : sightings)
        influence[s.group] +=
            (1.0 - mean_chance / std::max(least_share * mean_chance, seen_somewhere(s, best.curve, places.apart()))) / count;
    for (const auto& [group, score] : scores_of(likelihood, at)) influence[group] -= pull[0] * score[0] + pull[1] * score[1];
    double total = 0.0;
    for (const auto& [group, value] : influence) total += value * value;
    total =
        total * for_few_groups(influence.size()) - (1.0 - mean_chance) / count;  // what chance alone does is counted apart
    const auto& v = best.log_covariance;
    const double told = slope[0] * slope[0] * v[0] + 2.0 * slope[0] * slope[1] * v[1] + slope[1] * slope[1] * v[2];
    if (!(told > 0.0) || !(total > told)) return 1.0;
    constexpr double most = 4.0;
    return std::min(most, std::sqrt(total / told));
}

CurveCandidate candidate(CurveShape shape, const std::vector<Sighting>& sightings, const PassedPlaces& places,
                         double start_m) {
    const Likelihood likelihood(shape, sightings, places);
    const Parameters best = best_of(likelihood, {std::log(start_m), log_steepness_middle});
    CurveCandidate result;
    result.curve = curve_at(shape, best);
    result.log_likelihood = likelihood(best);
    result.aic = 2.0 * (shape == CurveShape::hazard_rate ? 2.0 : 1.0) - 2.0 * result.log_likelihood;
    result.log_covariance = log_covariance(likelihood, best);
    return result;
}

void set_weights(std::vector<CurveCandidate>& candidates) {
    double least = candidates.front().aic;
    for (const CurveCandidate& c : candidates) least = std::min(least, c.aic);
    double sum = 0.0;
    for (const CurveCandidate& c : candidates) sum += std::exp(-0.5 * (c.aic - least));
    for (CurveCandidate& c : candidates) c.weight = std::exp(-0.5 * (c.aic - least)) / sum;
}

struct Misfit {
    double p = 1.0;
    double inflation = 1.0;  // chi-square over its degrees of freedom, at least 1
};

// Chi-square over bins joined until each expects enough.
std::optional<Misfit> test_of_fit(const DetectionCurve& curve, const std::vector<Sighting>& sightings,
                                  const PassedPlaces& places) {
    constexpr std::size_t fine = 128;
    const auto count = static_cast<double>(sightings.size());
    const double wanted = std::max(10.0, count / 10.0);
    const std::vector<double> shares = places.seen_by_distance(curve, fine);
    std::vector<double> seen(fine, 0.0);
    for (const Sighting& s : sightings)
        seen[std::min(fine - 1, static_cast<std::size_t>(s.seen_from_m() / places.reach().value() * fine))] += 1.0;
    std::vector<std::pair<double, double>> bins{{0.0, 0.0}};  // expected, seen
    for (std::size_t i = 0; i < fine; ++i) {
        if (bins.back().first >= wanted) bins.emplace_back(0.0, 0.0);
        bins.back().first += count * shares[i];
        bins.back().second += seen[i];
    }
    if (bins.size() > 1 && bins.back().first < 0.5 * wanted) {
        const auto last = bins.back();
        bins.pop_back();
        bins.back().first += last.first;
        bins.back().second += last.second;
    }
    const int freedom = static_cast<int>(bins.size()) - 1 - (curve.shape == CurveShape::hazard_rate ? 2 : 1);
    if (freedom < 1) return std::nullopt;
    double sum = 0.0;
    for (const auto& [expected, found] : bins) sum += (found - expected) * (found - expected) / expected;
    return Misfit{boost::math::cdf(boost::math::complement(boost::math::chi_squared(freedom), sum)),
                  std::max(1.0, sum / freedom)};
}

Metres half_width_sd(const CurveCandidate& best, Metres reach) {
    const auto width = [&](double first, double second) {
        return best.moved(first, second).effective_half_width(reach).value();
    };
    constexpr double h = 0.1;
    const double first = (width(h, 0.0) - width(-h, 0.0)) / (2.0 * h);
    const double second = (width(0.0, h) - width(0.0, -h)) / (2.0 * h);
    return Metres::of(std::hypot(first, second));
}

}  // namespace

DetectionFit default_detection(const DefaultCurve& fallback, Metres reach, std::string why) {
    DetectionFit fit;
    fit.why_default = std::move(why);
    fit.reach = reach;
    fit.curve = {CurveShape::half_normal, fallback.sees_to * std::sqrt(2.0 / std::numbers::pi), 0.0};
    fit.half_width = fit.curve.effective_half_width(reach);
    fit.candidates = {{fit.curve, 0.0, 0.0, 1.0, {fallback.log_sd * fallback.log_sd, 0.0, 0.0}}};
    fit.half_width_sd = half_width_sd(fit.candidates.front(), reach);
    return fit;
}

DetectionFit fit_detection(const std::vector<Sighting>& sightings, PassedPlaces& places, const DefaultCurve& fallback) {
    std::vector<Sighting> used;
    double sum2 = 0.0;
    for (const Sighting& s : sightings) {
        assert(std::isfinite(s.seen_from_m()) && s.seen_from_m() >= 0.0);
        if (s.seen_from_m() >= places.reach().value()) continue;
        used.push_back(s);
        sum2 += s.seen_from_m() * s.seen_from_m();
    }
    if (used.size() < enough_detections)
        return default_detection(fallback, places.reach(),
                                 Words::tell("only {1} distances to learn from, {2} are needed",
                                             {std::to_string(used.size()), std::to_string(enough_detections)}));
    const double start_m = std::sqrt(sum2 / static_cast<double>(used.size()));
    if (!(start_m > places.reach().value() / 100.0) || places.size() == 0)
        return default_detection(fallback, places.reach(),
                                 Words::tell("all marks lie on the line walked, which tells nothing of a curve"));
    places.set_apart(likeliest_apart(used, places, start_m));
    DetectionFit fit;
    fit.apart = places.apart();
    fit.candidates = {candidate(CurveShape::half_normal, used, places, start_m),
                      candidate(CurveShape::hazard_rate, used, places, start_m)};
    set_weights(fit.candidates);
    const auto best = std::min_element(fit.candidates.begin(), fit.candidates.end(),
                                       [](const auto& a, const auto& b) { return a.aic < b.aic; });
    fit.curve = best->curve;
    fit.fitted = true;
    fit.sightings = used.size();
    fit.reach = places.reach();
    fit.half_width = fit.curve.effective_half_width(fit.reach);
    fit.half_width_sd = half_width_sd(*best, fit.reach);
    fit.wider = wider_by_groups(*best, used, places);
    if (const auto misfit = test_of_fit(fit.curve, used, places)) {
        fit.fit_p = misfit->p;
        fit.wider *= std::sqrt(misfit->inflation);
    }
    return fit;
}

Metres reach_for(std::vector<double> distances_m) {
    constexpr double least_m = 2.0;
    constexpr double most_m = 20.0;
    if (distances_m.empty()) return Metres::of(least_m);
    std::sort(distances_m.begin(), distances_m.end());
    const double nearly_all = distances_m[(distances_m.size() - 1) * 98 / 100];
    return Metres::of(std::clamp(std::min(1.1 * nearly_all, std::nextafter(distances_m.back(), 1e9)), least_m, most_m));
}

DetectionFit detection_curve(const std::vector<Metres>& distances, std::optional<Metres> reach,
                             const DefaultCurve& fallback) {
    std::vector<double> plain;
    std::vector<Sighting> sightings;
    for (std::size_t i = 0; i < distances.size(); ++i) {
        plain.push_back(distances[i].value());
        sightings.push_back({{distances[i].value()}, 0, i});
    }
    PassedPlaces places(reach.value_or(reach_for(plain)));
    for (std::size_t i = 0; i < PassedPlaces::steps; ++i) {
        const double x = (static_cast<double>(i) + 0.5) / PassedPlaces::steps * places.reach().value();
        places.add({&x, 1});
    }
    return fit_detection(sightings, places, fallback);
}

}  // namespace plugside
