#include "core/mending/answered_findings.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>
#include <utility>

namespace plugside {

namespace {

// Of a survey that nobody has answered to; nothing when stopped.
std::optional<std::vector<Finding>> before_any_answer(Survey survey, const Progress& progress) {
    survey.answers.clear();
    put_right(survey);
    return findings_of(survey, {}, progress);
}

}  // namespace

std::optional<std::vector<AnsweredFinding>> answered_findings(const Survey& survey, const std::vector<Finding>& of_reading,
                                                              const Progress& progress) {
    std::unordered_map<std::string, Answer> answers;
    for (const MendAnswer& answer : survey.answers) answers.emplace(answer.finding, answer.answer);
    std::unordered_set<std::string> listed;
    std::vector<AnsweredFinding> list;
    const auto add = [&](Finding finding) {
        if (!listed.insert(finding.id).second) return;
        const auto answer = answers.find(finding.id);
        list.push_back({std::move(finding), answer == answers.end() ? std::nullopt : std::optional(answer->second)});
    };
    for (const Finding& finding : of_reading) add(finding);
    auto now = findings_of(survey, {}, progress);
    if (!now) return std::nullopt;
    for (Finding& finding : *now) add(std::move(finding));
    const bool some_accepted = std::any_of(answers.begin(), answers.end(), [&](const auto& answer) {
        return answer.second == Answer::accepted && !listed.contains(answer.first);
    });
    if (!some_accepted) return list;
    auto before = before_any_answer(survey, progress);
    if (!before) return std::nullopt;
    for (Finding& finding : *before)
        if (const auto answer = answers.find(finding.id); answer != answers.end() && answer->second == Answer::accepted)
            add(std::move(finding));
    return list;
}

}  // namespace plugside
