// The chance that a walker sees a mound, by how far beside the line of walking it lies.
//
// half-normal: exp(-x^2 / (2 s^2)); hazard rate: 1 - exp(-(x/s)^-b), b > 1: flat near the line, a longer tail.
// Units:     metres, >= 0; chances 0..1; both curves are 1 at the line: what lies under the feet is taken as seen.
// Passing:   a walk by lines passes one place several times, so a mound that is missed on one line may be seen
//            from the next. A place is therefore told by its distances at each pass within the reach, in the order
//            walked, and chance seen = 1 - (1 - g(x1)) (1 - g(x2)) ..., a sighting by the passes before it and the
//            one it was made from. With one pass a place this is the usual line transect.
// Apart:     the receiver drifts between two passes, so that where the others lay is known with an error of
//            `apart` (standard deviation of one pass against another, m); a miss there is taken by its mean chance
//            over that error, while the pass a mound was seen from is known beside its mark. So chance seen =
//            g(x1) + m(x1) g(x2) + m(x1) m(x2) g(x3) ..., m the mean chance of a miss; with apart = 0 this is the
//            product above. The fit takes the `apart` of greatest likelihood.
// Likelihood: of where and when mounds were seen, given that they were and that they lie evenly about the lines:
//            product of [(1 - g(x1)) ... g(xk)] / (sum over places of chance seen). Both curves by maximum
//            likelihood; the one with the smaller AIC is the curve, both stand in `candidates` with their Akaike
//            weights.
// Spread:    covariance of the logarithms of the parameters from the curvature, widened for sightings that come in
//            groups (sandwich estimate; group = burrow system where known).
// Evenness:  the estimated number errs with the curve and with where groups happen to lie about the lines, and
//            both together: by the groups' influence on the logarithm of (mounds seen) / (mean chance seen), from
//            Horvitz and Thompson's sum.
// Fit:       chi-square over bins of equal expected count (about 10 a bin, at most 10 bins); p by the curve
//            chosen. Groups are not allowed for, so that p is somewhat too small where mounds come in strings.
//            Chi-square over its degrees of freedom, where more than 1, widens the spread as a variance inflation
//            factor (Burnham & Anderson 2002 [memory]).
// Default:   with fewer than `enough_detections` usable sightings, or when told why distances cannot be used, the
//            half-normal curve whose effective half width is `sees_to`, its logarithm with a standard deviation of
//            `log_sd`: our assumption; `fitted` is false and `why_default` says why.
// Preconditions: distances finite, >= 0; reach > 0; anything else asserts.
// Degenerate input: sightings that all lie on the line fit no curve: the default with that reason.
// Cost:      O(places x passes) an evaluation, about 150 evaluations.
// Source:    Buckland, Anderson, Burnham & Laake 2001, Introduction to Distance Sampling (curves, AIC, test of
//            fit, weights) [memory]; the product over passes is ours.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/units/metres.h"

namespace plugside {

enum class CurveShape { half_normal, hazard_rate };

// "half-normal", "hazard-rate".
[[nodiscard]] std::string to_text(CurveShape shape);

struct DetectionCurve {
    CurveShape shape = CurveShape::half_normal;
    Metres scale = Metres::of(4.0);
    double steepness = 0.0;  // b of the hazard-rate curve

    [[nodiscard]] double chance(double distance_m) const;
    // The integral of the chance from the line to `reach`: the half width of a strip in which as many are missed as are seen
    // outside. By Simpson's rule, to 1e-9 of the reach or better for scales above a hundredth of it.
    [[nodiscard]] Metres effective_half_width(Metres reach) const;
};

// The mean chance of a miss at a pass that lay `distance_m` off, give or take `apart`.
[[nodiscard]] double mean_missed(const DetectionCurve& curve, double distance_m, Metres apart);

// Many places with the distances of their passes, rounded to a 1,024th of the reach.
class PassedPlaces {
public:
    explicit PassedPlaces(Metres reach);
    // Passes beyond the reach are left out; a place without any is counted, and never seen.
    void add(std::span<const double> passes_m);
    [[nodiscard]] std::size_t size() const { return first_.size() - 1; }
    [[nodiscard]] Metres reach() const { return reach_; }
    void set_apart(Metres apart) { apart_ = apart; }
    [[nodiscard]] Metres apart() const { return apart_; }
    // Sum over places of the chance of having been seen. With `apart` it can come to more than the places, since each pass
    // then has a ground of its own. O(places x passes).
    [[nodiscard]] double sum_seen(const DetectionCurve& curve) const;
    // One place's.
    [[nodiscard]] double seen(std::size_t place, const DetectionCurve& curve) const;
    // Shares of all that would be seen, by the distance they are seen from: one for each of `bins` equal bins of the reach.
    [[nodiscard]] std::vector<double> seen_by_distance(const DetectionCurve& curve, std::size_t bins) const;

    static constexpr std::size_t steps = 1024;

private:
    struct Chances {
        std::vector<double> seen;
        std::vector<double> missed;  // mean over where the pass may have lain
    };
    [[nodiscard]] Chances at_steps(const DetectionCurve& curve) const;
    Metres reach_;
    Metres apart_;
    std::vector<std::uint32_t> first_{0};
    std::vector<std::uint16_t> step_;
};

struct Sighting {
    std::vector<double> passes_m;  // of the mound's place, in the order walked
    std::size_t seen_at = 0;       // the pass it was seen from
    std::size_t group = 0;         // sightings of one group depend on each other
    [[nodiscard]] double seen_from_m() const { return passes_m.at(seen_at); }
};

struct CurveCandidate {
    DetectionCurve curve;
    double log_likelihood = 0.0;
    double aic = 0.0;
    double weight = 1.0;                     // Akaike weight
    std::array<double, 3> log_covariance{};  // of log scale, their covariance, of log steepness
    // The curve whose log parameters lie `first` and `second` standard deviations off, along the axes of the covariance.
    [[nodiscard]] DetectionCurve moved(double first, double second) const;
};

struct DetectionFit {
    DetectionCurve curve;
    bool fitted = false;
    std::string why_default;      // a clause without a stop: "only 12 distances, 40 are needed"
    std::size_t sightings = 0;    // used
    Metres reach;                 // truncation: sightings further off are left out
    Metres apart;                 // see above
    Metres half_width;            // effective
    Metres half_width_sd;         // by the delta method
    double wider = 1.0;           // by how much more than the covariances tell the mean chance seen is unsure, since
                                  // mounds that come in groups do not lie evenly about few lines, and a misfit; >= 1
    std::optional<double> fit_p;  // chance of a misfit like this one or worse when the curve is right
    std::vector<CurveCandidate> candidates;
};

struct DefaultCurve {
    Metres sees_to = Metres::of(5.0);  // effective half width; our assumption
    double log_sd = 0.6;               // half or twice as far lie a good standard deviation off: our assumption
};

[[nodiscard]] DetectionFit default_detection(const DefaultCurve& fallback, Metres reach, std::string why);

// Leaves `places` with the fit's `apart`.
[[nodiscard]] DetectionFit fit_detection(const std::vector<Sighting>& sightings, PassedPlaces& places,
                                         const DefaultCurve& fallback = {});

// Truncation for distances like these: a tenth more than 98 in 100 of them, at most the largest: what lies beyond tells of
// blunders more than of the curve. Within 2 to 20 m. Our assumption after Buckland et al. 2001.
[[nodiscard]] Metres reach_for(std::vector<double> distances_m);

// A single line, or lines so far apart that no place is passed twice.
[[nodiscard]] DetectionFit detection_curve(const std::vector<Metres>& distances, std::optional<Metres> reach = {},
                                           const DefaultCurve& fallback = {});

}  // namespace plugside
