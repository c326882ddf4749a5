#include "core/systems/link_features.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include "core/systems/link_measures.h"

namespace plugside {

namespace {

// Where the hats stand, as length over spacing.
constexpr std::array<double, gap_knots> knot_at{0.25, 0.5, 0.75, 1.0, 1.35, 1.75, 2.25, 3.0, 4.0, 6.0};

// How far the way to the next mound strays from square to a lateral: its lean and the run's turn between them. Our assumption.
constexpr double square_sd_degrees = 20.0;

void put_gap(double relative, LinkFeatures& features) {
    const double x = std::log2(std::clamp(relative, knot_at.front(), knot_at.back()));
    std::size_t right = 1;
    while (right + 1 < gap_knots && std::log2(knot_at[right]) < x) ++right;
    const double from = std::log2(knot_at[right - 1]);
    const double to = std::log2(knot_at[right]);
    const double t = std::clamp((x - from) / (to - from), 0.0, 1.0);
    features[right - 1] = 1.0 - t;
    features[right] = t;
}

class FeatureMaker {
public:
    FeatureMaker(const std::vector<Mark>& marks, const std::vector<Link>& links, const SurveyScales& scales,
                 double fan_sd_degrees)
        : marks_(marks), links_(links), rows_(rows_of(marks.size(), links)), spacing_(scales.spacing_m) {
        const double degrees = std::numbers::pi / 180.0;
        angle_variance_ = std::pow(fan_sd_degrees * degrees, 2.0) + std::pow(square_sd_degrees * degrees, 2.0);
        spanning_ = in_minimum_spanning_forest(marks.size(), links);
        measure_surroundings();
    }

    [[nodiscard]] LinkFeatures of(std::size_t e) const {
        const Link& link = links_[e];
        LinkFeatures f{};
        const double relative = link.length_m / spacing_;
        const double log_relative = std::log2(std::clamp(relative, 0.125, 8.0));
        put_gap(relative, f);
        std::size_t at = gap_knots;
        const std::optional<double> first = across(link, link.first);
        const std::optional<double> second = across(link, link.second);
        const double sum = first.value_or(0.0) + second.value_or(0.0);
        f[at++] = sum;
        f[at++] = first.value_or(0.0) * second.value_or(0.0);
        f[at++] = sum * log_relative;
        f[at++] = (first ? 0.0 : 1.0) + (second ? 0.0 : 1.0);
        const auto [between, between_close] = most_between(link);
        f[at++] = between;
        f[at++] = between_close;
        f[at++] = std::log2(link.rank_of_first) + std::log2(link.rank_of_second);
        const double local = std::log(std::max(link.length_m, 0.05 * spacing_) /
                                      std::sqrt(second_distance_[link.first] * second_distance_[link.second]));
        f[at++] = std::clamp(local, -2.0, 3.0);
        f[at++] = std::pow(std::clamp(local, -2.0, 3.0), 2.0);
        f[at++] = spanning_[e] ? 1.0 : 0.0;
        const double on_first = goes_on({marks_, links_, rows_}, link, link.first, spacing_);
        const double on_second = goes_on({marks_, links_, rows_}, link, link.second, spacing_);
        f[at++] = on_first + on_second;
        f[at++] = std::min(on_first, on_second);
        f[at++] = ages_differ(marks_[link.first], marks_[link.second]) ? 1.0 : 0.0;
        f[at++] = crowding_;
        f[at++] = crowding_ * log_relative;
        return f;
    }

private:
    void measure_surroundings() {
        second_distance_.resize(marks_.size(), spacing_);
        std::vector<double> fifth;
        std::vector<double> lengths;
        for (std::size_t i = 0; i < marks_.size(); ++i) {
            lengths.clear();
            for (std::uint32_t at = rows_.start[i]; at < rows_.start[i + 1]; ++at)
                lengths.push_back(links_[rows_.link[at]].length_m);
            std::sort(lengths.begin(), lengths.end());
            if (lengths.size() >= 2) second_distance_[i] = std::max(lengths[1], 0.05 * spacing_);
            if (lengths.size() >= 5) fifth.push_back(lengths[4]);
        }
        if (fifth.empty()) return;
        const auto middle = fifth.begin() + static_cast<std::ptrdiff_t>(fifth.size() / 2);
        std::nth_element(fifth.begin(), middle, fifth.end());
        crowding_ = std::clamp(std::log(spacing_ / std::max(*middle, 0.05 * spacing_)), -2.0, 1.0);
    }

    // -1 along the fan's axis .. 1 across it, shrunk by what the errors leave of it; nothing without a fan.
    [[nodiscard]] std::optional<double> across(const Link& link, std::uint32_t end) const {
        const Mark& here = marks_[end];
        if (!here.fan) return std::nullopt;
        const Mark& there = marks_[other_end(link, end)];
        const std::optional<Bearing> direction = Bearing::along(there.take_off - here.take_off);
        if (!direction) return 0.0;
        const double place_variance = here.position_sd_m * here.position_sd_m + there.position_sd_m * there.position_sd_m;
        const double d = std::max(link.length_m, 1e-6);
        const double shrunk = std::exp(-2.0 * (angle_variance_ + place_variance / (d * d)));
        return -std::cos(2.0 * (direction->radians() - here.fan->radians())) * shrunk;
    }

    // Seen from either end, since a crowded end's neighbour list may not reach a mark that the other end's does.
    [[nodiscard]] std::pair<double, double> most_between(const Link& link) const {
        const auto [near_first, disc_first] = marks_between({marks_, links_, rows_}, link, link.first);
        const auto [near_second, disc_second] = marks_between({marks_, links_, rows_}, link, link.second);
        return {std::min(std::max(near_first, near_second), 3), std::min(std::max(disc_first, disc_second), 3)};
    }

    const std::vector<Mark>& marks_;
    const std::vector<Link>& links_;
    LinkRows rows_;
    double spacing_;
    double angle_variance_ = 0.0;
    double crowding_ = 0.0;
    std::vector<bool> spanning_;
    std::vector<double> second_distance_;
};

}  // namespace

const std::array<std::string_view, link_feature_count>& link_feature_names() {
    static constexpr std::array<std::string_view, link_feature_count> names{
        "gap_0.25",    "gap_0.5",     "gap_0.75", "gap_1",  "gap_1.35",    "gap_1.75", "gap_2.25", "gap_3",         "gap_4",
        "gap_6",       "fans_across", "fans_both", "fans_far", "no_fan",   "between",  "between_close", "ranks",   "local",
        "local_squared", "spanning",  "goes_on",  "goes_on_least", "age_differs", "crowding", "crowding_far"};
    return names;
}

std::vector<LinkFeatures> link_features(const std::vector<Mark>& marks, const std::vector<Link>& links,
                                        const SurveyScales& scales, double fan_sd_degrees) {
    const FeatureMaker maker(marks, links, scales, fan_sd_degrees);
    std::vector<LinkFeatures> features;
    features.reserve(links.size());
    for (std::size_t e = 0; e < links.size(); ++e) features.push_back(maker.of(e));
    return features;
}

}  // namespace plugside
