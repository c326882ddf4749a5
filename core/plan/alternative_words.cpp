#include "core/plan/alternative_words.h"

#include <algorithm>

#include "core/mending/sentences.h"
#include "core/words/words.h"

namespace plugside {

namespace {

constexpr std::size_t names_told = 4;

std::string in_100(Probability chance) { return std::to_string(chance.in_100()); }

std::string names_of(const Survey& survey, const std::vector<std::size_t>& mounds) {
    std::vector<std::string> names;
    for (const std::size_t mound : mounds) names.push_back(survey.mounds.at(mound).name);
    return listed(names, names_told + 1);
}

}  // namespace

std::string words_for(const JoinedSystems& joined, const Plan& plan) {
    return Words::tell("{1} and {2} are one animal's in {3} of 100",
                       {plan.systems.at(joined.first).letter, plan.systems.at(joined.second).letter, in_100(joined.one)});
}

std::string words_for(const SplitSystem& split, const Survey& survey, const Plan& plan) {
    const std::string& letter = plan.systems.at(split.system).letter;
    if (split.apart.empty()) return Words::tell("{1} is two animals' in {2} of 100", {letter, in_100(split.two)});
    return Words::tell("{1} is two animals' in {2} of 100: {3} apart",
                       {letter, in_100(split.two), names_of(survey, split.apart)});
}

std::string words_for(const DoubtfulMound& doubtful, const Survey& survey, const Plan& plan) {
    const std::string& mound = survey.mounds.at(doubtful.mound).name;
    const std::string& letter = plan.systems.at(doubtful.system).letter;
    if (!doubtful.runner_up)
        return Words::tell("{1} hangs together with {2} in {3} of 100, with no other system more than now and then",
                           {mound, letter, in_100(doubtful.belongs)});
    return Words::tell("{1} hangs together with {2} in {3} of 100, with {4} in {5}",
                       {mound, letter, in_100(doubtful.belongs), plan.systems.at(*doubtful.runner_up).letter,
                        in_100(doubtful.of_runner_up)});
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
