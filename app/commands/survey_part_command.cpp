#include "app/commands/survey_part_command.h"

namespace plugside {

SurveyPart part_like(const Survey& survey, const SurveyPart& part) {
    if (std::holds_alternative<Ground>(part)) return survey.ground;
    if (std::holds_alternative<HeldWork>(part)) return survey.work;
    return survey.known;
}

void put_part(Survey& survey, const SurveyPart& part) {
    if (const auto* work = std::get_if<HeldWork>(&part)) {
        survey.work = *work;
        return;
    }
    if (const auto* ground = std::get_if<Ground>(&part))
        survey.ground = *ground;
    else
        survey.known = std::get<std::vector<KnownFact>>(part);
    ++survey.revision;
}

SurveyPartCommand::SurveyPartCommand(SurveyPart before, SurveyPart after, const QString& words, Apply apply)
    : QUndoCommand(words), before_(std::move(before)), after_(std::move(after)), apply_(std::move(apply)) {}

}  // namespace plugside
