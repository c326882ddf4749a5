// A correction of how notes are read, made, changed or lifted: all marks that it changes, in one step.
//
// What a rule makes of a note depends on what stood in the survey when it was made (which fans were turned, what else the file said of
// a mark), so undo reads no note again: it puts back what was there.
// Guarantee: undo after redo leaves the survey's rules, answers, marks and mentions as they were, in their order; the revision grows
//            with each.
#pragma once

#include <QUndoCommand>
#include <functional>
#include <vector>

#include "app/commands/list_change.h"
#include "geo/read/field_survey.h"

namespace plugside {

struct NoteRulesChange {
    struct Mentions {
        std::size_t mound = 0;
        std::vector<NoteMention> before;
        std::vector<NoteMention> after;
    };
    ListChange<NoteRule> rules;
    ListChange<MendAnswer> answers;
    std::vector<Mentions> mentions;  // where they differ

    [[nodiscard]] NoteRulesChange turned_round() const;
};

// What `rules` in place of the field's own change. O(marks + answers), as use_note_rules.
[[nodiscard]] NoteRulesChange change_by_rules(const FieldSurvey& field, const std::vector<NoteRule>& rules);
// The survey with the change, marks put right, at the next revision.
void put(Survey& survey, const NoteRulesChange& change);

class NoteRulesCommand : public QUndoCommand {
public:
    using Apply = std::function<void(const NoteRulesChange&)>;
    NoteRulesCommand(NoteRulesChange change, const QString& words, Apply apply);

    void undo() override { apply_(change_.turned_round()); }
    void redo() override { apply_(change_); }

private:
    NoteRulesChange change_;
    Apply apply_;
};

}  // namespace plugside
