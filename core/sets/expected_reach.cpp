#include "core/sets/expected_reach.h"

#include <algorithm>

namespace plugside {

ExpectedReach::ExpectedReach(const SystemPosterior& posterior) : posterior_(&posterior) {
    if (posterior.drawn_system.empty()) consensus_.push_back(posterior.system);
    for (const auto& label : labels()) {
        const std::uint32_t most = label.empty() ? 0 : *std::max_element(label.begin(), label.end());
        missed_.emplace_back(static_cast<std::size_t>(most) + 1, 1.0F);
    }
}

const std::vector<std::vector<std::uint32_t>>& ExpectedReach::labels() const {
    return consensus_.empty() ? posterior_->drawn_system : consensus_;
}

double ExpectedReach::gain(std::size_t mark, double chance) const {
    const auto& label = labels();
    double missed = 0.0;
    for (std::size_t d = 0; d < label.size(); ++d) missed += static_cast<double>(missed_[d][label[d][mark]]);
    return chance * missed / static_cast<double>(label.size());
}

void ExpectedReach::take(std::size_t mark, double chance) {
    reached_ += gain(mark, chance);
    const auto& label = labels();
    for (std::size_t d = 0; d < label.size(); ++d) missed_[d][label[d][mark]] *= static_cast<float>(1.0 - chance);
}

}  // namespace plugside
