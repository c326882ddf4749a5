// An edit of one part of the survey, kept as the part before and after: the ground, or what a person knows of the systems.
//
// Guarantee: undo after redo leaves the part as it was; the revision grows with each. Both are small beside the marks, so whole copies
//            are kept.
#pragma once

#include <QUndoCommand>
#include <functional>
#include <utility>
#include <variant>
#include <vector>

#include "core/survey/survey.h"

namespace plugside {

using SurveyPart = std::variant<Ground, std::vector<KnownFact>>;

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
