#include "app/planning/nearby_preview.h"

#include <utility>

namespace plugside {

NearbyPreview::NearbyPreview(QObject* parent) : QObject(parent) {}

std::uint64_t NearbyPreview::look(std::shared_ptr<const FieldSurvey> field, std::shared_ptr<const Plan> shown, EditInHand edit,
                                  std::vector<LocalPoint> touched) {
    // letters of a plan of other marks stand for other animals
    if (shown && shown->mounds.size() != field->survey.mounds.size()) shown.reset();
    Question question{std::move(field), std::move(shown), std::move(edit), std::move(touched), ++asked_};
    if (work_.running())
        waiting_ = std::move(question);
    else
        begin(std::move(question));
    return asked_;
}

void NearbyPreview::forget() {
    work_.stop();
    waiting_.reset();
    picture_.reset();
}

void NearbyPreview::begin(Question question) {
    work_.start([this, question = std::move(question),
                 letters = letters_](const Progress& progress) mutable -> BackgroundWork::Apply {
        const Survey& survey = question.field->survey;
        if (letters.of != question.shown || !letters.letters)
            letters = {question.shown, std::make_shared<const SystemLetters>(
                                           question.shown ? letters_of(survey, *question.shown) : SystemLetters{})};
        auto nearby = plan_nearby(survey, question.edit, question.touched, {}, {.letters = letters.letters}, progress);
        if (!nearby) return {};
        FieldSurvey shown{{}, {}, question.field->frame, {}, {}};
        for (const std::size_t mound : nearby->mounds)
            shown.survey.mounds.push_back(question.edit.mound && question.edit.mound->first == mound
                                              ? question.edit.mound->second
                                              : survey.mounds[mound]);
        auto picture = std::make_shared<const Picture>(Picture{std::move(shown), std::move(nearby->plan), question.number});
        return [this, letters, picture = std::move(picture)] {
            letters_ = letters;
            picture_ = picture;
            Q_EMIT arrived();
            if (!waiting_) return;
            Question next = std::move(*waiting_);
            waiting_.reset();
            begin(std::move(next));
        };
    });
}

}  // namespace plugside
