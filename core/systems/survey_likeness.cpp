#include "core/systems/survey_likeness.h"

#include <algorithm>
#include <cassert>
#include <charconv>
#include <cmath>
#include <cstdio>
#include <numeric>

#include "core/units/metres.h"
#include "core/words/words.h"

namespace plugside {

namespace embedded {
extern const char survey_likeness[];
}

namespace {

constexpr std::size_t fewest_marks = 30;
constexpr double out_of_reach_m = 25.0;  // NeighbourGraphOptions::reach

double median(std::vector<double> values) {
    if (values.empty()) return 0.0;
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

double over(double part, double whole) { return whole > 0.0 ? part / whole : 1.0; }

// How the plugs of neighbours stand about each mark.
struct Standing {
    std::vector<double> nearest, second, eighth;
    double beside = 0.0;  // nearest two of marks with a fan
    double along = 0.0;   // of these, how many within 45 degrees of its axis
    double paired = 0.0;  // marks with a fan and a neighbour with one
    double agree = 0.0;   // sum of their fans' agreement
};

Standing standing_of(const std::vector<Mark>& marks, const std::vector<Link>& links) {
    const LinkRows rows = rows_of(marks.size(), links);
    Standing standing;
    std::vector<std::pair<double, std::uint32_t>> near;
    for (std::uint32_t i = 0; i < marks.size(); ++i) {
        near.clear();
        for (std::uint32_t at = rows.start[i]; at < rows.start[i + 1]; ++at) {
            const Link& link = links[rows.link[at]];
            const std::uint32_t other = link.first == i ? link.second : link.first;
            near.emplace_back(distance_m(marks[i].plug, marks[other].plug), other);
        }
        std::sort(near.begin(), near.end());
        const auto distance = [&](std::size_t rank) { return near.size() >= rank ? near[rank - 1].first : out_of_reach_m; };
        standing.nearest.push_back(distance(1));
        standing.second.push_back(distance(2));
        standing.eighth.push_back(distance(8));
        if (!marks[i].fan) continue;
        const LocalVector axis = marks[i].fan->unit();
        const auto with_fan = std::find_if(near.begin(), near.end(), [&](const auto& at) { return marks[at.second].fan; });
        if (with_fan != near.end()) {
            const double cosine = dot(axis, marks[with_fan->second].fan->unit());
            standing.paired += 1.0;
            standing.agree += 2.0 * cosine * cosine - 1.0;
        }
        for (std::size_t rank = 1; rank <= std::min<std::size_t>(2, near.size()); ++rank) {
            const LocalVector to = marks[near[rank - 1].second].plug - marks[i].plug;
            standing.beside += 1.0;
            if (std::abs(dot(to, axis)) > std::abs(cross(to, axis))) standing.along += 1.0;
        }
    }
    return standing;
}

double mean_entropy_bits(const std::vector<Link>& links, const LinkScores& scores) {
    double sum = 0.0;
    for (std::size_t e = 0; e < links.size(); ++e) {
        const double root = std::max(scores.log_root[links[e].first], scores.log_root[links[e].second]);
        const double p = 1.0 / (1.0 + std::exp(root - scores.log_weight[e]));
        if (p > 1e-12 && p < 1.0 - 1e-12) sum -= p * std::log2(p) + (1.0 - p) * std::log2(1.0 - p);
    }
    return sum / static_cast<double>(links.size());
}

double variation(const std::vector<double>& values) {
    double sum = 0.0;
    double squares = 0.0;
    for (const double value : values) {
        sum += value;
        squares += value * value;
    }
    const double n = static_cast<double>(values.size());
    return sum > 0.0 ? std::sqrt(std::max(0.0, squares / n - sum / n * (sum / n))) * n / sum : 0.0;
}

double from_summary(const FieldSummary& summary, std::string_view name) {
    const auto& names = field_summary_names();
    const auto at = std::find(names.begin(), names.end(), name);
    assert(at != names.end());
    return summary.at(static_cast<std::size_t>(at - names.begin()));
}

std::vector<double> numbers_after(std::string_view line) {
    std::vector<double> numbers;
    for (std::size_t tab = line.find('\t'); tab != std::string_view::npos; tab = line.find('\t', tab + 1)) {
        double value = 0.0;
        [[maybe_unused]] const auto parsed = std::from_chars(line.data() + tab + 1, line.data() + line.size(), value);
        assert(parsed.ec == std::errc());
        numbers.push_back(value);
    }
    return numbers;
}

std::string line_of(std::string_view name, const std::vector<double>& values) {
    std::string line(name);
    for (const double value : values) {
        std::array<char, 32> digits{};
        std::snprintf(digits.data(), digits.size(), "\t%.5g", value);
        line += digits.data();
    }
    return line + '\n';
}

// How a value and its range are told.
struct Telling {
    const char* words;
    double times;  // shares are told in 100
    int decimals;
    bool in_logs;
};

constexpr std::array<Telling, likeness_value_count> tellings{{
    {Words::later("Mounds stand {1} m ({4} ft) from their nearest here, unlike the {2} to {3} m ({5} to {6} ft) this was "
                  "built for: take the systems as rough."),
     1.0, 1, true},
    {Words::later("Distances between neighbours vary by {1} in 100 of their mean here, unlike the {2} to {3} in 100 this "
                  "was built for: take the systems as rough."),
     100.0, 0, true},
    {Words::later("The second nearest mound stands {1} times as far as the nearest here, unlike the {2} to {3} times this "
                  "was built for: take the systems as rough."),
     1.0, 2, true},
    {Words::later("The eighth nearest mound stands {1} times as far as the second here, unlike the {2} to {3} times this "
                  "was built for: take the systems as rough."),
     1.0, 2, true},
    {Words::later("A fan was read at {1} in 100 mounds here, unlike the {2} to {3} in 100 this was built for: take the runs "
                  "and their probe points as rough."),
     100.0, 0, false},
    {Words::later("Of the nearest mounds {1} in 100 lie along a fan's axis here, unlike the {2} to {3} in 100 this was "
                  "built for: take the runs and their probe points as rough."),
     100.0, 0, false},
    {Words::later("The fans of neighbouring mounds lie along one line by {1} (1: all, 0: as at random) here, unlike the {2} "
                  "to {3} this was built for: take the runs and their probe points as rough."),
     1.0, 2, false},
    {Words::later("Strings of mounds go on straight by {1} (1: quite straight) here, unlike the {2} to {3} this was built "
                  "for: take the systems as rough."),
     1.0, 2, false},
    {Words::later("Of the mounds {1} in 100 have no likely neighbour here, unlike the {2} to {3} in 100 this was built for: "
                  "take the systems as rough."),
     100.0, 0, false},
    {Words::later("The best links of mounds differ by {1} in strength here, unlike the {2} to {3} this was built for: take "
                  "the systems as rough."),
     1.0, 2, true},
    {Words::later("Which mounds are joined is as open as {1} of a coin's toss here, unlike the {2} to {3} this was built "
                  "for: take the systems as rough."),
     1.0, 2, false},
    {Words::later(
         "A mound has {1} likely neighbours here, unlike the {2} to {3} this was built for: take the systems as rough."),
     1.0, 1, true},
    {Words::later("The long links between neighbours are {1} times the middle one here, unlike the {2} to {3} times this "
                  "was built for: take the systems as rough."),
     1.0, 2, true},
}};

constexpr std::size_t tails_index = likeness_value_count - 1;

std::string sentence_of(std::size_t k, const LikenessValues& values, const LikenessLimits& limits) {
    const Telling& telling = tellings.at(k);
    const auto told = [&](double value, int decimals) {
        std::array<char, 32> digits{};
        const double shown = k == tails_index ? std::exp(value) : value;  // a log ratio is told as the ratio
        std::snprintf(digits.data(), digits.size(), "%.*f", decimals, shown * telling.times);
        return Words::decimal(digits.data());
    };
    // as many digits as it takes to see that the value is outside
    int decimals = telling.decimals;
    const double limit = values.at(k) > limits.high.at(k) ? limits.high.at(k) : limits.low.at(k);
    while (decimals < 4 && told(values.at(k), decimals) == told(limit, decimals)) ++decimals;
    // a plan's notices stand in any units; only the first of them is a length
    const auto in_feet = [&](double value) { return told(Metres::of(value).feet(), decimals); };
    return Words::tell(telling.words,
                       {told(values.at(k), decimals), told(limits.low.at(k), decimals), told(limits.high.at(k), decimals),
                        in_feet(values.at(k)), in_feet(limits.low.at(k)), in_feet(limits.high.at(k))});
}

}  // namespace

const std::array<std::string_view, likeness_value_count>& likeness_value_names() {
    static constexpr std::array<std::string_view, likeness_value_count> names{
        "nearest_m", "nearest_variation", "second_over_nearest", "eighth_over_second",
        "fans_read", "along_fans",        "fans_agree",          "straightness",
        "loners",    "best_spread",       "undecided",           "links_a_mound",
        "tails"};
    return names;
}

std::optional<LikenessValues> likeness_values(const std::vector<Mark>& marks, const std::vector<Link>& links,
                                              const LinkScores& scores, const FieldSummary& summary) {
    if (marks.size() < fewest_marks || links.empty()) return std::nullopt;
    const Standing standing = standing_of(marks, links);
    const double nearest = median(standing.nearest);
    const double second = median(standing.second);
    return LikenessValues{nearest,
                          variation(standing.nearest),
                          over(second, nearest),
                          over(median(standing.eighth), second),
                          from_summary(summary, "field_fans"),
                          standing.beside > 0.0 ? standing.along / standing.beside : 0.5,
                          standing.paired > 0.0 ? standing.agree / standing.paired : 0.0,
                          from_summary(summary, "field_straightness"),
                          from_summary(summary, "field_loners"),
                          from_summary(summary, "field_best_spread"),
                          mean_entropy_bits(links, scores),
                          from_summary(summary, "field_degree"),
                          from_summary(summary, "field_tails")};
}

double to_likeness_scale(std::size_t k, double value) {
    constexpr double least = 1e-3;
    return tellings.at(k).in_logs ? std::log(std::max(value, least)) : value;
}

double from_likeness_scale(std::size_t k, double scaled) { return tellings.at(k).in_logs ? std::exp(scaled) : scaled; }

namespace {

LikenessValues deviations(const LikenessValues& values, const LikenessLimits& limits) {
    LikenessValues off{};
    for (std::size_t k = 0; k < likeness_value_count; ++k)
        off.at(k) = to_likeness_scale(k, values[k]) - to_likeness_scale(k, limits.middle[k]);
    return off;
}

}  // namespace

double contrast_of(const LikenessValues& values, const LikenessLimits& limits, const LikenessLimits::Contrast& contrast) {
    const LikenessValues off = deviations(values, limits);
    return std::inner_product(off.begin(), off.end(), contrast.weight.begin(), 0.0);
}

double distance_from_middle(const LikenessValues& values, const LikenessLimits& limits) {
    const LikenessValues off = deviations(values, limits);
    double squares = 0.0;
    for (const LikenessValues& row : limits.whitening) {
        double deviation = 0.0;
        for (std::size_t k = 0; k < likeness_value_count; ++k) deviation += row[k] * off[k];
        squares += deviation * deviation;
    }
    return std::sqrt(squares / static_cast<double>(likeness_value_count));
}

std::vector<LikenessLimits> parse_likeness_limits(std::string_view text) {
    std::vector<LikenessLimits> all;
    std::size_t row = 0;
    while (!text.empty()) {
        std::string_view line = text.substr(0, text.find('\n'));
        text.remove_prefix(std::min(text.size(), line.size() + 1));
        if (line.empty() || line.front() == '#') continue;
        std::string_view name = line.substr(0, line.find('\t'));
        const std::vector<double> numbers = numbers_after(line);
        if (name == "most_marks") {
            all.emplace_back().most_marks = static_cast<std::size_t>(numbers.at(0));
            row = 0;
            continue;
        }
        assert(!all.empty());
        LikenessLimits& limits = all.back();
        if (name == "whole") {
            limits.whole = numbers.at(0);
            continue;
        }
        if (name == "fans_at_random" || name == "places_at_random") {
            auto& contrast = name == "fans_at_random" ? limits.fans_at_random : limits.places_at_random;
            std::copy_n(numbers.begin(), likeness_value_count, contrast.weight.begin());
            contrast.most = numbers.at(likeness_value_count);
            continue;
        }
        if (name == "whitening") {
            std::copy_n(numbers.begin(), likeness_value_count, limits.whitening.at(row++).begin());
            continue;
        }
        const auto& names = likeness_value_names();
        const auto at = std::find(names.begin(), names.end(), name);
        assert(at != names.end() && numbers.size() == 3);
        const auto k = static_cast<std::size_t>(at - names.begin());
        limits.low.at(k) = numbers[0];
        limits.middle.at(k) = numbers[1];
        limits.high.at(k) = numbers[2];
    }
    return all;
}

std::string to_text(const std::vector<LikenessLimits>& all) {
    std::string text;
    for (const LikenessLimits& limits : all) {
        text += line_of("most_marks", {static_cast<double>(limits.most_marks)});
        for (std::size_t k = 0; k < likeness_value_count; ++k)
            text += line_of(likeness_value_names().at(k), {limits.low.at(k), limits.middle.at(k), limits.high.at(k)});
        for (const LikenessValues& row : limits.whitening) text += line_of("whitening", {row.begin(), row.end()});
        text += line_of("whole", {limits.whole});
        for (const auto& [name, contrast] : {std::pair("fans_at_random", &limits.fans_at_random),
                                             std::pair("places_at_random", &limits.places_at_random)}) {
            std::vector<double> numbers(contrast->weight.begin(), contrast->weight.end());
            numbers.push_back(contrast->most);
            text += line_of(name, numbers);
        }
    }
    return text;
}

const std::vector<LikenessLimits>& learnt_likeness_limits() {
    static const std::vector<LikenessLimits> limits = parse_likeness_limits(embedded::survey_likeness);
    return limits;
}

std::vector<std::string> unlike_sentences(const LikenessValues& values, std::size_t marks,
                                          const std::vector<LikenessLimits>& all) {
    if (all.empty()) return {};
    const auto fits = std::find_if(all.begin(), all.end(), [&](const LikenessLimits& l) { return marks <= l.most_marks; });
    const LikenessLimits& limits = fits == all.end() ? all.back() : *fits;
    struct Outside {
        double by = 0.0;  // in half ranges
        std::size_t value = 0;
    };
    std::vector<Outside> outside;
    for (std::size_t k = 0; k < likeness_value_count; ++k) {
        const double half = std::max(1e-9, 0.5 * (limits.high[k] - limits.low[k]));
        const double by = std::max(limits.low[k] - values[k], values[k] - limits.high[k]) / half;
        if (by > 0.0) outside.push_back({by, k});
    }
    std::stable_sort(outside.begin(), outside.end(), [](const Outside& a, const Outside& b) { return a.by > b.by; });
    constexpr std::size_t most_told = 2;
    std::vector<std::string> sentences;
    for (std::size_t at = 0; at < std::min(most_told, outside.size()); ++at)
        sentences.push_back(sentence_of(outside[at].value, values, limits));
    const auto beyond = [&](const LikenessLimits::Contrast& contrast) {
        return contrast_of(values, limits, contrast) > contrast.most;
    };
    if (sentences.empty() && beyond(limits.places_at_random))
        sentences.emplace_back(
            Words::tell("Mounds and fans stand here as if strewn at random, unlike the fields this was built for: take the "
                        "systems as rough."));
    else if (sentences.empty() && beyond(limits.fans_at_random))
        sentences.emplace_back(Words::tell(
            "Fans say as little here about where the neighbouring mounds stand as fans at random would, unlike in "
            "the fields this was built for: take the runs and their probe points as rough."));
    if (sentences.empty() && distance_from_middle(values, limits) > limits.whole)
        sentences.emplace_back(
            Words::tell("How mounds and fans stand to one another here is, all together, unlike the fields this was built "
                        "for: take the systems as rough."));
    return sentences;
}

}  // namespace plugside
