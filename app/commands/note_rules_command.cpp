#include "app/commands/note_rules_command.h"

#include <utility>

#include "geo/read/note_corrections.h"

namespace plugside {

NoteRulesChange NoteRulesChange::turned_round() const {
    NoteRulesChange back{rules.turned_round(), answers.turned_round(), mentions};
    for (Mentions& of : back.mentions) std::swap(of.before, of.after);
    return back;
}

NoteRulesChange change_by_rules(const FieldSurvey& field, const std::vector<NoteRule>& rules) {
    const Survey& before = field.survey;
    Survey after = before;
    use_note_rules(after, field.frame, rules);
    NoteRulesChange change{
        change_between(before.note_rules, after.note_rules), change_between(before.answers, after.answers), {}};
    for (std::size_t i = 0; i < before.mounds.size(); ++i)
        if (before.mounds[i].mentions != after.mounds[i].mentions)
            change.mentions.push_back({i, before.mounds[i].mentions, after.mounds[i].mentions});
    return change;
}

void put(Survey& survey, const NoteRulesChange& change) {
    put(survey.note_rules, change.rules);
    put(survey.answers, change.answers);
    for (const NoteRulesChange::Mentions& of : change.mentions) survey.mounds.at(of.mound).mentions = of.after;
    put_right(survey);
    ++survey.revision;
}

NoteRulesCommand::NoteRulesCommand(NoteRulesChange change, const QString& words, Apply apply)
    : QUndoCommand(words), change_(std::move(change)), apply_(std::move(apply)) {}

}  // namespace plugside
