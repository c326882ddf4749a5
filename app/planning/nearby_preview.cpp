#include "app/planning/nearby_preview.h"

#include <utility>

namespace plugside {

NearbyPreview::NearbyPreview(QObject* parent) : QObject(parent) {}

void NearbyPreview::look(std::shared_ptr<const FieldSurvey> field, std::vector<LocalPoint> touched, SystemLetters letters) {
    Question question{std::move(field), std::move(touched), std::move(letters)};
    if (work_.running())
        waiting_ = std::move(question);
    else
        begin(std::move(question));
}

void NearbyPreview::forget() {
    work_.stop();
    waiting_.reset();
    picture_.reset();
}

void NearbyPreview::begin(Question question) {
    work_.start([this, question = std::move(question)](const Progress& progress) -> BackgroundWork::Apply {
        auto nearby = plan_nearby(question.field->survey, question.touched, {}, {.letters = question.letters}, progress);
        if (!nearby) return {};
        FieldSurvey shown{{}, {}, question.field->frame, {}, {}};
        for (const std::size_t mound : nearby->mounds) shown.survey.mounds.push_back(question.field->survey.mounds[mound]);
        auto picture = std::make_shared<const Picture>(Picture{std::move(shown), std::move(nearby->plan)});
        return [this, picture = std::move(picture)] {
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
