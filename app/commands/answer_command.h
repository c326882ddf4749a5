// Answers to findings about a walk, one or many at once: accepted, refused, or open again. Undone they are what they were.
//
// Guarantee: undo after redo leaves the survey's answers and marks as they were; the revision grows with each.
#pragma once

#include <QUndoCommand>
#include <functional>
#include <vector>

#include "core/survey/survey.h"

namespace plugside {

// What a finding's answer was or is to be; nothing: open.
struct AnswerChange {
    std::string finding;
    std::optional<MendAnswer> to;
};

class AnswerCommand : public QUndoCommand {
public:
    using Apply = std::function<void(const std::vector<AnswerChange>&)>;
    // `survey`: as it is before. `words`: what the history calls it.
    AnswerCommand(const Survey& survey, std::vector<AnswerChange> changes, const QString& words, Apply apply);

    void undo() override;
    void redo() override;

private:
    std::vector<MendAnswer> before_;  // all answers: their order decides which mend comes last
    std::vector<AnswerChange> changes_;
    Apply apply_;
};

// Brings `changes` about in one step: one revision, marks put right once. O(answers + marks).
void change_answers(Survey& survey, const std::vector<AnswerChange>& changes);

}  // namespace plugside
