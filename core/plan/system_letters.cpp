#include "core/plan/system_letters.h"

#include <algorithm>
#include <set>
#include <tuple>
#include <utility>

namespace plugside {

namespace {

// How a system of now and a letter of before share mounds.
struct Shared {
    std::size_t mounds = 0;
    std::size_t of_both = 0;  // mounds of the two together
    std::size_t system = 0;
    std::string letter;
};

// Names that one mound alone bears.
std::set<std::string> telling_names(const Survey& survey) {
    std::set<std::string> once;
    std::set<std::string> more;
    for (const Mound& mound : survey.mounds)
        if (!once.insert(mound.name).second) more.insert(mound.name);
    for (const std::string& name : more) once.erase(name);
    once.erase("");
    return once;
}

std::vector<Shared> shared_mounds(const SystemLetters& earlier, const Survey& survey,
                                  const std::vector<BurrowSystem>& systems) {
    const std::set<std::string> names = telling_names(survey);
    std::map<std::pair<std::size_t, std::string>, std::size_t> mounds_of;
    std::map<std::string, std::size_t> size_before;
    for (std::size_t s = 0; s < systems.size(); ++s)
        for (const std::size_t mound : systems[s].mounds) {
            const std::string& name = survey.mounds[mound].name;
            const auto before = earlier.find(name);
            if (before == earlier.end() || !names.contains(name)) continue;
            ++mounds_of[{s, before->second}];
            ++size_before[before->second];
        }
    std::vector<Shared> all;
    for (const auto& [pair, mounds] : mounds_of) {
        const auto& [system, letter] = pair;
        const std::size_t before = size_before[letter];
        if (2 * mounds >= before) all.push_back({mounds, before + systems[system].mounds.size() - mounds, system, letter});
    }
    std::sort(all.begin(), all.end(), [](const Shared& a, const Shared& b) {
        return std::tuple(b.mounds, a.of_both, a.letter.size(), a.letter, a.system) <
               std::tuple(a.mounds, b.of_both, b.letter.size(), b.letter, b.system);
    });
    return all;
}

}  // namespace

std::string letter_of(std::size_t number) {
    std::string letters;
    for (++number; number > 0; number = (number - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (number - 1) % 26));
    return letters;
}

SystemLetters letters_of(const Survey& survey, const Plan& plan) {
    const std::set<std::string> names = telling_names(survey);
    SystemLetters letters;
    for (const BurrowSystem& system : plan.systems)
        for (const std::size_t mound : system.mounds)
            if (names.contains(survey.mounds[mound].name)) letters.emplace(survey.mounds[mound].name, system.letter);
    return letters;
}

void keep_letters(const SystemLetters& earlier, const Survey& survey, std::vector<BurrowSystem>& systems) {
    std::set<std::string> used;
    for (const auto& [mound, letter] : earlier) used.insert(letter);
    std::vector<bool> has_letter(systems.size(), false);
    std::set<std::string> kept;
    for (const Shared& shared : shared_mounds(earlier, survey, systems)) {
        if (has_letter[shared.system] || !kept.insert(shared.letter).second) continue;
        has_letter[shared.system] = true;
        systems[shared.system].letter = shared.letter;
    }
    std::size_t next = 0;
    for (std::size_t s = 0; s < systems.size(); ++s) {
        if (has_letter[s]) continue;
        while (used.contains(letter_of(next))) ++next;
        systems[s].letter = letter_of(next++);
    }
}

std::optional<std::size_t> counterpart(const Plan& earlier, std::size_t system, const Plan& later) {
    if (earlier.mounds.size() != later.mounds.size()) return std::nullopt;
    std::map<std::size_t, std::size_t> mounds_in;
    for (const std::size_t mound : earlier.systems.at(system).mounds)
        if (const auto now = later.mounds[mound].system) ++mounds_in[*now];
    const auto most = std::max_element(mounds_in.begin(), mounds_in.end(),
                                       [](const auto& a, const auto& b) { return a.second < b.second; });
    return most == mounds_in.end() ? std::nullopt : std::optional(most->first);
}

}  // namespace plugside
