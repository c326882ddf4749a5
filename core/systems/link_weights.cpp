#include "core/systems/link_weights.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>
#include <cmath>
#include <cstdio>
#include <numeric>

namespace plugside {

namespace embedded {
extern const char link_weights[];
extern const char network_weights[];
}

namespace {

template <typename Names, typename Values>
bool put(const Names& names, std::string_view name, double value, Values& values) {
    const auto at = std::find(names.begin(), names.end(), name);
    if (at == names.end()) return false;
    values[static_cast<std::size_t>(at - names.begin())] = value;
    return true;
}

std::string line_of(std::string_view name, double value) {
    std::array<char, 48> digits{};
    std::snprintf(digits.data(), digits.size(), "%.4f", value);
    return std::string(name) + '\t' + digits.data() + '\n';
}

constexpr std::array<std::string_view, 3> single_names{"shift_sd", "presence_offset", "presence_slope"};

double* single_value(LinkWeights& weights, std::string_view name) {
    const std::array<double*, 3> values{&weights.shift_sd, &weights.presence_offset, &weights.presence_slope};
    const auto at = std::find(single_names.begin(), single_names.end(), name);
    return at == single_names.end() ? nullptr : values.at(static_cast<std::size_t>(at - single_names.begin()));
}

}  // namespace

LinkWeights parse_link_weights(std::string_view text) {
    LinkWeights weights;
    while (!text.empty()) {
        const std::string_view line = text.substr(0, text.find('\n'));
        text.remove_prefix(std::min(text.size(), line.size() + 1));
        if (line.empty() || line.front() == '#') continue;
        if (line == "net") {
            weights.net = std::make_shared<const LinkNetWeights>(parse_link_net(text));
            break;
        }
        if (line == "stage") {
            weights.stages.emplace_back();
            continue;
        }
        const std::size_t tab = line.find('\t');
        assert(tab != std::string_view::npos);
        const std::string_view name = line.substr(0, tab);
        double value = 0.0;
        [[maybe_unused]] const auto parsed = std::from_chars(line.data() + tab + 1, line.data() + line.size(), value);
        assert(parsed.ec == std::errc());
        if (double* const single = single_value(weights, name)) {
            *single = value;
            continue;
        }
        if (put(field_summary_names(), name, value, weights.shift)) continue;
        assert(!weights.stages.empty());
        LinkStage& stage = weights.stages.back();
        [[maybe_unused]] const bool known = put(link_feature_names(), name, value, stage.of_feature) ||
                                            put(link_context_names(), name, value, stage.of_context);
        assert(known);
    }
    return weights;
}

std::string to_text(const LinkWeights& weights) {
    std::string text;
    LinkWeights singles = weights;
    for (const std::string_view name : single_names) text += line_of(name, *single_value(singles, name));
    for (std::size_t k = 0; k < field_summary_count; ++k) text += line_of(field_summary_names()[k], weights.shift[k]);
    for (std::size_t s = 0; s < weights.stages.size(); ++s) {
        text += "stage\n";
        for (std::size_t k = 0; k < link_feature_count; ++k)
            text += line_of(link_feature_names()[k], weights.stages[s].of_feature[k]);
        for (std::size_t k = 0; s > 0 && k < link_context_count; ++k)
            text += line_of(link_context_names()[k], weights.stages[s].of_context[k]);
    }
    return text;
}

const LinkWeights& learnt_link_weights() {
    static const LinkWeights weights = parse_link_weights(embedded::network_weights);
    return weights;
}

const LinkWeights& first_form_weights() {
    static const LinkWeights weights = parse_link_weights(embedded::link_weights);
    return weights;
}

double foretold_shift(const FieldSummary& summary, const LinkWeights& weights) {
    return std::clamp(std::inner_product(summary.begin(), summary.end(), weights.shift.begin(), 0.0), -1.2, 1.2);
}

double run_presence(double link_probability, const LinkWeights& weights) {
    const double p = std::clamp(link_probability, 0.002, 0.998);
    return 1.0 / (1.0 + std::exp(-weights.presence_offset - weights.presence_slope * std::log(p / (1.0 - p))));
}

std::vector<double> stage_scores(const std::vector<LinkFeatures>& features, const std::vector<LinkContext>& context,
                                 const LinkStage& stage) {
    std::vector<double> scores;
    scores.reserve(features.size());
    for (std::size_t e = 0; e < features.size(); ++e) {
        double sum = std::inner_product(features[e].begin(), features[e].end(), stage.of_feature.begin(), 0.0);
        if (!context.empty())
            sum = std::inner_product(context[e].begin(), context[e].end(), stage.of_context.begin(), sum);
        scores.push_back(sum);
    }
    return scores;
}

std::vector<double> log_weights(const std::vector<Mark>& marks, const std::vector<Link>& links,
                                const std::vector<LinkFeatures>& features, const LinkWeights& weights) {
    const LinkRows rows = rows_of(marks.size(), links);
    std::vector<double> scores(links.size(), 0.0);
    std::vector<LinkContext> context;
    for (const LinkStage& stage : weights.stages) {
        if (&stage != &weights.stages.front()) context = link_context(marks, links, rows, scores);
        scores = stage_scores(features, context, stage);
    }
    return scores;
}

LinkScores scores_of(const std::vector<Mark>& marks, const std::vector<Link>& links, const std::vector<LinkFeatures>& features,
                     const LinkWeights& weights, const Progress& progress) {
    if (!weights.net) return {log_weights(marks, links, features, weights), std::vector<double>(marks.size(), 0.0)};
    return link_scores(link_net_input(marks, links, rows_of(marks.size(), links)), *weights.net, progress);
}

}  // namespace plugside
