#include "core/systems/link_weights.h"

#include <algorithm>
#include <cassert>
#include <charconv>

namespace plugside {

namespace embedded {
extern const char link_weights[];
}

LinkWeights parse_link_weights(std::string_view text) {
    LinkWeights weights;
    std::size_t found = 0;
    while (!text.empty()) {
        const std::string_view line = text.substr(0, text.find('\n'));
        text.remove_prefix(std::min(text.size(), line.size() + 1));
        if (line.empty() || line.front() == '#') continue;
        const std::size_t tab = line.find('\t');
        assert(tab != std::string_view::npos);
        const std::string_view name = line.substr(0, tab);
        double value = 0.0;
        [[maybe_unused]] const auto parsed = std::from_chars(line.data() + tab + 1, line.data() + line.size(), value);
        assert(parsed.ec == std::errc());
        if (name == "count_sd") {
            weights.count_sd = value;
            continue;
        }
        const auto& names = link_feature_names();
        const auto at = std::find(names.begin(), names.end(), name);
        assert(at != names.end());
        weights.weight[static_cast<std::size_t>(at - names.begin())] = value;
        ++found;
    }
    assert(found == link_feature_count);
    return weights;
}

const LinkWeights& learnt_link_weights() {
    static const LinkWeights weights = parse_link_weights(embedded::link_weights);
    return weights;
}

std::vector<double> log_weights(const std::vector<LinkFeatures>& features, const LinkWeights& weights) {
    std::vector<double> sums;
    sums.reserve(features.size());
    for (const LinkFeatures& values : features) {
        double sum = 0.0;
        for (std::size_t k = 0; k < link_feature_count; ++k) sum += values[k] * weights.weight[k];
        sums.push_back(sum);
    }
    return sums;
}

}  // namespace plugside
