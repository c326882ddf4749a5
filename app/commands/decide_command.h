// Decisions on one set or several in one step: kept, dropped, moved or undecided again. Undone they are what they were, row for row.
//
// Guarantee: undo after redo leaves the survey's decisions as they were, in their order; the revision grows with each.
#pragma once

#include <QUndoCommand>
#include <functional>
#include <vector>

#include "app/commands/list_change.h"
#include "core/survey/survey.h"

namespace plugside {

class DecideCommand : public QUndoCommand {
public:
    // `on`: a set that was decided on, to be shown.
    using Apply = std::function<void(const ListChange<SetDecision>&, const ProbeKey& on)>;
    // `survey`: as it is before. At least one decision; of two on one set the later counts.
    DecideCommand(const Survey& survey, const std::vector<SetDecision>& decisions, const QString& words, Apply apply);

    void undo() override { apply_(change_.turned_round(), on_); }
    void redo() override { apply_(change_, on_); }

private:
    ListChange<SetDecision> change_;
    ProbeKey on_;
    Apply apply_;
};

// What the history calls a decision on one set; `set_name`: how the set is called there, "set 7".
[[nodiscard]] QString decision_words(SetChoice choice, const QString& set_name);

}  // namespace plugside
