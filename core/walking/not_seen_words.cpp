#include "core/walking/not_seen_words.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

#include "core/units/probability.h"

namespace plugside {

namespace {

std::string whole(double value) { return std::to_string(std::lround(value)); }

std::string one_decimal(double value) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.1f", value);
    return text.data();
}

std::string range(const Amount& amount) { return whole(amount.low) + " to " + whole(amount.high); }

std::string level(double interval) { return whole(interval * 100.0) + " in 100"; }

std::string share(double value) { return std::to_string(Probability::of(value).in_100()) + " in 100"; }

std::string curve_sentence(const NotSeen& result) {
    const DetectionFit& fit = result.detection;
    if (!fit.fitted)
        return "How seeing falls off with distance is a default, about as if all mounds within " +
               one_decimal(fit.half_width.value()) + " m of the walker were seen: " + fit.why_default + ".";
    std::string text = "How seeing falls off with distance was learnt from " + std::to_string(fit.sightings) +
                       " marks of this walk (" + to_text(fit.curve.shape) + " curve): as if all mounds within " +
                       one_decimal(fit.half_width.value()) + " m of the line were seen and none beyond.";
    constexpr double poor = 0.05;
    if (fit.fit_p && *fit.fit_p < poor) text += " The curve fits the distances poorly: take what follows as rough.";
    return text;
}

}  // namespace

std::string following_words(double followed_share) {
    return share(followed_share) + " of the marks were reached from the mark before, so distances from the line tell little";
}

std::vector<std::string> not_seen_sentences(const NotSeen& result) {
    std::vector<std::string> text{curve_sentence(result)};
    if (result.gaps_m > 0.0)
        text.push_back("The track has gaps of " + whole(result.gaps_m) + " m in all: they are taken as not walked.");
    if (result.driven_m > 0.0)
        text.push_back(whole(result.driven_m) + " m of the track were faster than a walk: they are taken as not searched.");
    constexpr double nearly_all = 0.99;  // no walk is told to have seen all
    text.push_back("On the ground walked about " + share(std::min(nearly_all, result.seen_of_walked)) +
                   " of the mounds were seen; not seen there: " + range(result.mounds_missed) + " mounds (" +
                   level(result.interval) + "), expected " + whole(result.mounds_missed.expected) + ".");
    if (result.unwalked_m2 <= 0.0) return text;
    text.push_back("On the ground not walked: " + range(result.mounds_unwalked) + " mounds (" + level(result.interval) +
                   "), expected " + whole(result.mounds_unwalked.expected) + "; animals: " + range(result.animals_unwalked) +
                   ", expected " + one_decimal(result.animals_unwalked.expected) +
                   ", of which some may be counted already, where works reach across the edge.");
    const double all =
        static_cast<double>(result.mounds_seen) + result.mounds_missed.expected + result.mounds_unwalked.expected;
    if (all > 0.0)
        text.push_back("Of the mounds not seen, " + share(result.assumed_alike) +
                       " are assumed alike with the ground walked, not seen from anywhere; of all mounds in the field " +
                       share(static_cast<double>(result.mounds_seen) / all) + " were seen.");
    return text;
}

}  // namespace plugside
