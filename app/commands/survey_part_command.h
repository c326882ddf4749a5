// An edit of one part of the survey, kept as the part before and after: the ground, what a person knows of the systems, or how the
// work is done.
//
// Guarantee: undo after redo leaves the part as it was; the revision grows with each, but not with how the work is done: no plan
//            depends on it. All are small beside the marks, so whole copies are kept.
#pragma once

#include <QUndoCommand>
#include <functional>
#include <utility>
#include <variant>
#include <vector>

#include "core/survey/survey.h"

namespace plugside {

using SurveyPart = std::variant<Ground, std::vector<KnownFact>, HeldWork>;

// The part of the survey of the same kind.
[[nodiscard]] SurveyPart part_like(const Survey& survey, const SurveyPart& part);

// The survey with that part, at the next revision.
void put_part(Survey& survey, const SurveyPart& part);

class SurveyPartCommand : public QUndoCommand {
public:
    using Apply = std::function<void(const SurveyPart&)>;
    SurveyPartCommand(SurveyPart before, SurveyPart after, const QString& words, Apply apply);

    void undo() override { apply_(before_); }
    void redo() override { apply_(after_); }

private:
    SurveyPart before_;
    SurveyPart after_;
    Apply apply_;
};

}  // namespace plugside
