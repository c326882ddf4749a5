#include "core/systems/field_summary.h"

#include <algorithm>
#include <cmath>

namespace plugside {

namespace {

constexpr std::size_t fewest_marks = 10;
constexpr double score_limit = 8.0;
constexpr std::size_t fans_across_index = gap_knots;

double quantile(std::vector<double> values, double share) {
    if (values.empty()) return 1.0;
    const auto at = values.begin() + static_cast<std::ptrdiff_t>(share * static_cast<double>(values.size() - 1));
    std::nth_element(values.begin(), at, values.end());
    return std::max(*at, 1e-3);
}

// Sums over marks of what their links, sorted by length or by score, say.
struct MarkSums {
    std::vector<double> first, second, fourth, eighth;  // link lengths
    double best = 0.0, best_squared = 0.0, second_best = 0.0, third_best = 0.0;
    double loners = 0.0, fans_across = 0.0, straightness = 0.0, degree = 0.0;
};

class Summary {
public:
    Summary(const std::vector<Mark>& marks, const std::vector<Link>& links, const std::vector<LinkFeatures>& features,
            const std::vector<double>& scores)
        : marks_(marks), links_(links), features_(features), scores_(scores), rows_(rows_of(marks.size(), links)) {
        for (std::uint32_t i = 0; i < marks.size(); ++i) add(i);
    }
    [[nodiscard]] const MarkSums& sums() const { return sums_; }

private:
    [[nodiscard]] double score(std::uint32_t e) const { return std::clamp(scores_[e], -score_limit, score_limit); }

    [[nodiscard]] LocalVector outward(std::uint32_t e, std::uint32_t end) const {
        const std::uint32_t far = links_[e].first == end ? links_[e].second : links_[e].first;
        return marks_[far].take_off - marks_[end].take_off;
    }

    void add(std::uint32_t i) {
        std::vector<std::uint32_t> own(rows_.link.begin() + rows_.start[i], rows_.link.begin() + rows_.start[i + 1]);
        std::sort(own.begin(), own.end(), [&](std::uint32_t a, std::uint32_t b) { return links_[a].length_m < links_[b].length_m; });
        const auto keep = [&](std::size_t rank, std::vector<double>& lengths) {
            if (own.size() >= rank) lengths.push_back(links_[own[rank - 1]].length_m);
        };
        keep(1, sums_.first);
        keep(2, sums_.second);
        keep(4, sums_.fourth);
        keep(8, sums_.eighth);
        for (const std::uint32_t e : own) sums_.degree += 1.0 / (1.0 + std::exp(-score(e)));
        std::stable_sort(own.begin(), own.end(), [&](std::uint32_t a, std::uint32_t b) { return score(a) > score(b); });
        const auto ranked = [&](std::size_t rank) { return own.size() >= rank ? score(own[rank - 1]) : -score_limit; };
        sums_.best += ranked(1);
        sums_.best_squared += ranked(1) * ranked(1);
        sums_.second_best += ranked(2);
        sums_.third_best += ranked(3);
        if (ranked(1) < 0.0) sums_.loners += 1.0;
        if (!own.empty()) sums_.fans_across += features_[own[0]][fans_across_index];
        if (own.size() < 2) return;
        const LocalVector a = outward(own[0], i);
        const LocalVector b = outward(own[1], i);
        const double lengths = a.length_m() * b.length_m();
        if (lengths > 0.0) sums_.straightness -= dot(a, b) / lengths;
    }

    const std::vector<Mark>& marks_;
    const std::vector<Link>& links_;
    const std::vector<LinkFeatures>& features_;
    const std::vector<double>& scores_;
    LinkRows rows_;
    MarkSums sums_;
};

}  // namespace

const std::array<std::string_view, field_summary_count>& field_summary_names() {
    static constexpr std::array<std::string_view, field_summary_count> names{
        "field_one",   "field_second_first", "field_fourth_second", "field_eighth_second", "field_spacing_second", "field_best",
        "field_second", "field_third",       "field_best_spread",   "field_loners",        "field_fans",           "field_fans_across",
        "field_straightness", "field_tails", "field_degree",        "field_size",          "field_marks"};
    return names;
}

FieldSummary field_summary(const std::vector<Mark>& marks, const std::vector<Link>& links,
                           const std::vector<LinkFeatures>& features, const std::vector<double>& scores,
                           const SurveyScales& scales) {
    if (marks.size() < fewest_marks || links.empty()) return {};
    const Summary summary(marks, links, features, scores);
    const MarkSums& sums = summary.sums();
    const double n = static_cast<double>(marks.size());
    const double second = quantile(sums.second, 0.5);
    const std::vector<bool> spanning = in_minimum_spanning_forest(marks.size(), links);
    std::vector<double> spanning_lengths;
    for (std::size_t e = 0; e < links.size(); ++e)
        if (spanning[e]) spanning_lengths.push_back(links[e].length_m);
    const auto with_fan = std::count_if(marks.begin(), marks.end(), [](const Mark& mark) { return mark.fan.has_value(); });
    const double best = sums.best / n;
    return {1.0,
            std::log(second / quantile(sums.first, 0.5)),
            std::log(quantile(sums.fourth, 0.5) / second),
            std::log(quantile(sums.eighth, 0.5) / second),
            std::clamp(std::log(scales.spacing_m / second), -2.0, 2.0),
            best,
            sums.second_best / n,
            sums.third_best / n,
            std::sqrt(std::max(0.0, sums.best_squared / n - best * best)),
            sums.loners / n,
            static_cast<double>(with_fan) / n,
            sums.fans_across / n,
            sums.straightness / n,
            std::log(quantile(spanning_lengths, 0.9) / quantile(spanning_lengths, 0.5)),
            sums.degree / n,
            std::log(scales.mounds_per_system / 12.0),
            std::clamp(std::log(n / 200.0), -2.5, 2.5)};
}

}  // namespace plugside
