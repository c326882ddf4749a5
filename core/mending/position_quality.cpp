#include "core/mending/position_quality.h"

#include <cassert>
#include <cmath>

namespace plugside {

PlaceError place_error_of(const Mound& mound, const PlaceError& usual) {
    PlaceError error = usual;
    if (mound.position_sd != Mound{}.position_sd) error.own_m = mound.position_sd.value();
    if (mound.shared_sd) error.shared_m = mound.shared_sd->value();
    return error;
}

PlacedMark placed(const Mound& mound, const PlaceError& usual) {
    return {mound.plug, place_error_of(mound, usual), mound.time, mound.walk};
}

std::optional<double> seconds_between(const PlacedMark& first, const PlacedMark& second) {
    if (!first.time || !second.time) return std::nullopt;
    return static_cast<double>((*second.time - *first.time).count()) / 1000.0;
}

double shared_covariance_m2(const PlacedMark& a, const PlacedMark& b) {
    if (a.walk != b.walk) return 0.0;
    const double memory_s = 0.5 * (a.error.memory_s + b.error.memory_s);
    const double apart_s = std::abs(seconds_between(a, b).value_or(memory_s));
    return a.error.shared_m * b.error.shared_m * std::exp(-apart_s / memory_s);
}

double relative_sd_m(const PlacedMark& a, const PlacedMark& b) {
    const double separate = a.error.own_m * a.error.own_m + b.error.own_m * b.error.own_m +
                            a.error.shared_m * a.error.shared_m + b.error.shared_m * b.error.shared_m;
    return std::sqrt(std::max(separate - 2.0 * shared_covariance_m2(a, b), 0.0));
}

MeanPlace mean_place(const std::vector<PlacedMark>& marks) {
    assert(!marks.empty());
    std::vector<double> weight;
    double total = 0.0;
    for (const PlacedMark& mark : marks) {
        const double variance = mark.error.own_m * mark.error.own_m + mark.error.shared_m * mark.error.shared_m;
        weight.push_back(1.0 / std::max(variance, 1e-6));
        total += weight.back();
    }
    LocalVector offset;
    double variance_m2 = 0.0;
    double own_variance_m2 = 0.0;
    for (std::size_t i = 0; i < marks.size(); ++i) {
        weight[i] /= total;
        offset = offset + (marks[i].at - marks.front().at) * weight[i];
        const double own = marks[i].error.own_m, shared = marks[i].error.shared_m;
        own_variance_m2 += weight[i] * weight[i] * own * own;
        variance_m2 += weight[i] * weight[i] * (own * own + shared * shared);
        for (std::size_t j = 0; j < i; ++j)
            variance_m2 += 2.0 * weight[i] * weight[j] * shared_covariance_m2(marks[i], marks[j]);
    }
    return {marks.front().at + offset, std::sqrt(variance_m2), std::sqrt(own_variance_m2)};
}

}  // namespace plugside
