// One decision on one set: kept, dropped, moved or undecided again. Undone it puts back what was decided before.
//
// Guarantee: undo after redo leaves the survey's decisions as they were, as a set; the revision grows with each.
#pragma once

#include <QUndoCommand>
#include <functional>
#include <vector>
#include <optional>

#include "core/survey/survey.h"

namespace plugside {

class DecideCommand : public QUndoCommand {
public:
    using Apply = std::function<void(const SetDecision&)>;
    // `set_name`: how the set is called in the history, e.g. "set 7".
    DecideCommand(std::optional<SetDecision> before, SetDecision after, const QString& set_name, Apply apply);

    void undo() override;
    void redo() override;

private:
    SetDecision before_;
    SetDecision after_;
    Apply apply_;
};

// Decisions on several sets in one step. Undone it puts back what was decided before on each.
class DecideOnAllCommand : public QUndoCommand {
public:
    using Apply = std::function<void(const std::vector<SetDecision>&)>;
    DecideOnAllCommand(const Survey& survey, std::vector<SetDecision> after, const QString& words, Apply apply);

    void undo() override;
    void redo() override;

private:
    std::vector<SetDecision> before_;
    std::vector<SetDecision> after_;
    Apply apply_;
};

}  // namespace plugside
