#include "core/systems/helpful_questions.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "core/geometry/near_places.h"

namespace plugside {

namespace {

constexpr std::size_t neighbours_asked = 8;
constexpr double least_share = 0.1;
constexpr std::size_t least_draws = 20;

std::vector<double> numbers_of(const DrawnSystems& drawn) {
    std::vector<double> numbers;
    for (const auto& tree : drawn.tree) {
        std::vector<bool> seen(tree.size(), false);
        double count = 0.0;
        for (const std::uint32_t label : tree) {
            if (!seen[label]) count += 1.0;
            seen[label] = true;
        }
        numbers.push_back(count);
    }
    return numbers;
}

double variance_of(const std::vector<double>& numbers) {
    double sum = 0.0;
    double squares = 0.0;
    for (const double number : numbers) sum += number;
    const double mean = sum / static_cast<double>(numbers.size());
    for (const double number : numbers) squares += (number - mean) * (number - mean);
    return squares / static_cast<double>(numbers.size());
}

// The share of the variance that the answer takes away; 0 where it is nearly known.
struct Worth {
    double one = 0.0;
    double of_variance = 0.0;
};

Worth worth_of(const DrawnSystems& drawn, const std::vector<double>& numbers, double variance, std::size_t a,
               std::size_t b) {
    double together = 0.0;
    double sum_together = 0.0;
    double sum_apart = 0.0;
    for (std::size_t d = 0; d < numbers.size(); ++d) {
        const bool one = drawn.tree[d][a] == drawn.tree[d][b];
        together += one ? 1.0 : 0.0;
        (one ? sum_together : sum_apart) += numbers[d];
    }
    const double all = static_cast<double>(numbers.size());
    Worth worth{together / all, 0.0};
    if (worth.one < least_share || worth.one > 1.0 - least_share) return worth;
    const double apart = all - together;
    const double difference = sum_together / together - sum_apart / apart;
    worth.of_variance = worth.one * (1.0 - worth.one) * difference * difference / variance;
    return worth;
}

}  // namespace

std::vector<HelpfulQuestion> helpful_questions(const Plan& plan, const QuestionOptions& options) {
    if (!plan.drawn || plan.drawn->tree.size() < least_draws || plan.drawn->plug.size() < 2) return {};
    const DrawnSystems& drawn = *plan.drawn;
    const std::vector<double> numbers = numbers_of(drawn);
    const double variance = variance_of(numbers);
    if (variance <= 0.0) return {};
    std::vector<HelpfulQuestion> all;
    const NearPlaces near(drawn.plug);
    for (std::size_t a = 0; a < drawn.plug.size(); ++a)
        for (const NearPlaces::Found& found : near.nearest(drawn.plug[a], neighbours_asked + 1)) {
            const std::size_t b = found.index;
            if (b <= a) continue;
            const Worth worth = worth_of(drawn, numbers, variance, a, b);
            const double narrows = 1.0 - std::sqrt(std::max(0.0, 1.0 - worth.of_variance));
            if (narrows >= options.least_narrowing)
                all.push_back({drawn.mound[a], drawn.mound[b], Probability::of(worth.one), narrows});
        }
    std::stable_sort(all.begin(), all.end(),
                     [](const HelpfulQuestion& a, const HelpfulQuestion& b) { return a.narrows > b.narrows; });
    std::vector<HelpfulQuestion> asked;
    std::set<std::pair<std::size_t, std::size_t>> of_systems;
    for (const HelpfulQuestion& question : all) {
        if (asked.size() == options.most) break;
        const std::size_t one = plan.mounds.at(question.first).system.value_or(0);
        const std::size_t other = plan.mounds.at(question.second).system.value_or(0);
        if (of_systems.insert(std::minmax(one, other)).second) asked.push_back(question);
    }
    return asked;
}

}  // namespace plugside
