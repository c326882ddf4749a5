#include "app/commands/survey_part_command.h"

namespace plugside {

void put_part(Survey& survey, const SurveyPart& part) {
    if (const auto* ground = std::get_if<Ground>(&part))
        survey.ground = *ground;
    else
        survey.known = std::get<std::vector<KnownFact>>(part);
    ++survey.revision;
}

SurveyPartCommand::SurveyPartCommand(SurveyPart before, SurveyPart after, const QString& words, Apply apply)
    : QUndoCommand(words), before_(std::move(before)), after_(std::move(after)), apply_(std::move(apply)) {}

}  // namespace plugside
