// A correction of how notes are read, made, changed or lifted: all marks that it changes, in one step.
//
// Guarantee: undo after redo leaves the survey's rules, answers, marks and mentions as they were; the revision grows with
// each.
#pragma once

#include <QUndoCommand>
#include <functional>
#include <vector>

#include "core/survey/note_rule.h"

namespace plugside {

class NoteRulesCommand : public QUndoCommand {
public:
    using Apply = std::function<void(const std::vector<NoteRule>&)>;
    NoteRulesCommand(std::vector<NoteRule> before, std::vector<NoteRule> after, const QString& words, Apply apply);

    void undo() override;
    void redo() override;

private:
    std::vector<NoteRule> before_;
    std::vector<NoteRule> after_;
    Apply apply_;
};

}  // namespace plugside
