#include "core/plan/alternative_words.h"

#include <algorithm>

namespace plugside {

namespace {

constexpr std::size_t names_told = 4;

std::string in_100(Probability chance) { return std::to_string(chance.in_100()); }

std::string names_of(const Survey& survey, const std::vector<std::size_t>& mounds) {
    const std::size_t told = mounds.size() <= names_told + 1 ? mounds.size() : names_told;
    std::string text;
    for (std::size_t k = 0; k < told; ++k) {
        if (k > 0) text += k + 1 == mounds.size() ? " and " : ", ";
        text += survey.mounds.at(mounds[k]).name;
    }
    return told < mounds.size() ? text + " and " + std::to_string(mounds.size() - told) + " more" : text;
}

}  // namespace

std::string words_for(const JoinedSystems& joined, const Plan& plan) {
    return plan.systems.at(joined.first).letter + " and " + plan.systems.at(joined.second).letter + " are one animal's in " +
           in_100(joined.one) + " of 100";
}

std::string words_for(const SplitSystem& split, const Survey& survey, const Plan& plan) {
    const std::string words = plan.systems.at(split.system).letter + " is two animals' in " + in_100(split.two) + " of 100";
    return split.apart.empty() ? words : words + ": " + names_of(survey, split.apart) + " apart";
}

std::string words_for(const DoubtfulMound& doubtful, const Survey& survey, const Plan& plan) {
    const std::string words = survey.mounds.at(doubtful.mound).name + " hangs together with " +
                              plan.systems.at(doubtful.system).letter + " in " + in_100(doubtful.belongs) + " of 100";
    if (!doubtful.runner_up) return words + ", with no other system more than now and then";
    return words + ", with " + plan.systems.at(*doubtful.runner_up).letter + " in " + in_100(doubtful.of_runner_up);
}

std::vector<std::string> likeliest_alternatives(const Survey& survey, const Plan& plan, std::size_t most,
                                                std::optional<std::size_t> system) {
    struct Told {
        Probability chance;
        std::string words;
    };
    std::vector<Told> all;
    for (const JoinedSystems& joined : plan.alternatives.joined)
        if (!system || joined.first == *system || joined.second == *system)
            all.push_back({joined.one, words_for(joined, plan)});
    for (const SplitSystem& split : plan.alternatives.split)
        if (!system || split.system == *system) all.push_back({split.two, words_for(split, survey, plan)});
    std::stable_sort(all.begin(), all.end(), [](const Told& a, const Told& b) { return a.chance > b.chance; });
    std::vector<std::string> words;
    for (std::size_t k = 0; k < std::min(most, all.size()); ++k) words.push_back(std::move(all[k].words));
    return words;
}

}  // namespace plugside
