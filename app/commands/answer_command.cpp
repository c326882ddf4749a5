#include "app/commands/answer_command.h"

#include <algorithm>
#include <set>
#include <utility>

namespace plugside {

AnswerCommand::AnswerCommand(const Survey& survey, std::vector<AnswerChange> changes, const QString& words, Apply apply)
    : QUndoCommand(words), before_(survey.answers), changes_(std::move(changes)), apply_(std::move(apply)) {}

void AnswerCommand::redo() { apply_(changes_); }

void AnswerCommand::undo() {
    // every answer from the first changed one on is given again, so that their order is what it was
    std::set<std::string> changed;
    for (const AnswerChange& change : changes_) changed.insert(change.finding);
    const auto first = std::find_if(before_.begin(), before_.end(),
                                    [&](const MendAnswer& answer) { return changed.contains(answer.finding); });
    std::vector<AnswerChange> back;
    for (const AnswerChange& change : changes_) back.push_back({change.finding, std::nullopt});
    for (auto answer = first; answer != before_.end(); ++answer) back.push_back({answer->finding, *answer});
    apply_(back);
}

void change_answers(Survey& survey, const std::vector<AnswerChange>& changes) {
    std::set<std::string> changed;
    for (const AnswerChange& change : changes) changed.insert(change.finding);
    std::erase_if(survey.answers, [&](const MendAnswer& answer) { return changed.contains(answer.finding); });
    // told twice in one step: the last word counts
    std::set<std::string> given;
    std::vector<MendAnswer> last_words;
    for (auto change = changes.rbegin(); change != changes.rend(); ++change)
        if (given.insert(change->finding).second && change->to) last_words.push_back(*change->to);
    survey.answers.insert(survey.answers.end(), last_words.rbegin(), last_words.rend());
    put_right(survey);
    ++survey.revision;
}

}  // namespace plugside
