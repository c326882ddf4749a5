#include "core/walking/not_seen_words.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

#include "core/units/probability.h"
#include "core/words/words.h"

namespace plugside {

namespace {

std::string whole(double value) { return std::to_string(std::lround(value)); }

std::string one_decimal(double value) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.1f", value);
    return Words::decimal(text.data());
}

std::string range(const Amount& amount) { return Words::tell("{1} to {2}", {whole(amount.low), whole(amount.high)}); }

std::string level(double interval) { return Words::tell("{1} in 100", {whole(interval * 100.0)}); }

std::string share(double value) { return Words::tell("{1} in 100", {std::to_string(Probability::of(value).in_100())}); }

std::string curve_sentence(const NotSeen& result, LengthUnits units) {
    const DetectionFit& fit = result.detection;
    if (!fit.fitted)
        return Words::tell(
            "How seeing falls off with distance is a default, about as if all mounds within {1} of the walker were seen: "
            "{2}.",
            {ground_distance(fit.half_width, units), fit.why_default});
    const std::string sightings = std::to_string(fit.sightings), half_width = ground_distance(fit.half_width, units);
    std::string text =
        fit.curve.shape == CurveShape::half_normal
            ? Words::tell(
                  "How seeing falls off with distance was learnt from {1} marks of this walk (half-normal curve): as "
                  "if all mounds within {2} of the line were seen and none beyond.",
                  {sightings, half_width})
            : Words::tell(
                  "How seeing falls off with distance was learnt from {1} marks of this walk (hazard-rate curve): as "
                  "if all mounds within {2} of the line were seen and none beyond.",
                  {sightings, half_width});
    constexpr double poor = 0.05;
    if (fit.fit_p && *fit.fit_p < poor)
        text += " " + Words::tell("The curve fits the distances poorly: take what follows as rough.");
    return text;
}

}  // namespace

std::string following_words(double followed_share) {
    return Words::tell("{1} of the marks were reached from the mark before, so distances from the line tell little",
                       {share(followed_share)});
}

std::vector<std::string> not_seen_sentences(const NotSeen& result, LengthUnits units) {
    std::vector<std::string> text{curve_sentence(result, units)};
    if (result.gaps_m > 0.0)
        text.push_back(Words::tell("The track has gaps of {1} in all: they are taken as not walked.",
                                   {ground_distance(Metres::of(result.gaps_m), units)}));
    if (result.driven_m > 0.0)
        text.push_back(Words::tell("{1} of the track were faster than a walk: they are taken as not searched.",
                                   {ground_distance(Metres::of(result.driven_m), units)}));
    constexpr double nearly_all = 0.99;  // no walk is told to have seen all
    text.push_back(Words::tell(
        "On the ground walked about {1} of the mounds were seen; not seen there: {2} mounds ({3}), expected {4}.",
        {share(std::min(nearly_all, result.seen_of_walked)), range(result.mounds_missed), level(result.interval),
         whole(result.mounds_missed.expected)}));
    if (result.unwalked_m2 <= 0.0) return text;
    text.push_back(Words::tell(
        "On the ground not walked: {1} mounds ({2}), expected {3}; animals: {4}, expected {5}, of which some may be counted "
        "already, where works reach across the edge.",
        {range(result.mounds_unwalked), level(result.interval), whole(result.mounds_unwalked.expected),
         range(result.animals_unwalked), one_decimal(result.animals_unwalked.expected)}));
    const double all =
        static_cast<double>(result.mounds_seen) + result.mounds_missed.expected + result.mounds_unwalked.expected;
    if (all > 0.0)
        text.push_back(Words::tell(
            "Of the mounds not seen, {1} are assumed alike with the ground walked, not seen from anywhere; of all "
            "mounds in the field {2} were seen.",
            {share(result.assumed_alike), share(static_cast<double>(result.mounds_seen) / all)}));
    return text;
}

}  // namespace plugside
