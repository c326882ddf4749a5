// What an edit that the hand is still making would change, worked out beside the window's thread: a first look at the marks about it.
//
// look:    asks for one; while one is being made only the last asked for waits, so that a long drag always shows something new.
// picture: what came last: the marks looked at, as a field of their own, with their plan; null before the first and after `forget`.
// It is never the plan, and never handed out.
#pragma once

#include <QObject>
#include <memory>
#include <optional>
#include <vector>

#include "app/planning/background_work.h"
#include "core/plan/plan_nearby.h"
#include "geo/read/field_survey.h"

namespace plugside {

class NearbyPreview : public QObject {
    Q_OBJECT

public:
    struct Picture {
        FieldSurvey field;  // of the marks looked at, as the hand would have them
        Plan plan;
    };

    explicit NearbyPreview(QObject* parent = nullptr);
    // `field`: as the hand would have it; `touched`: where it differs.
    void look(std::shared_ptr<const FieldSurvey> field, std::vector<LocalPoint> touched, SystemLetters letters);
    void forget();
    [[nodiscard]] const std::shared_ptr<const Picture>& picture() const { return picture_; }
    [[nodiscard]] bool looking() const { return work_.running(); }

Q_SIGNALS:
    void arrived();

private:
    struct Question {
        std::shared_ptr<const FieldSurvey> field;
        std::vector<LocalPoint> touched;
        SystemLetters letters;
    };
    void begin(Question question);

    BackgroundWork work_;
    std::optional<Question> waiting_;
    std::shared_ptr<const Picture> picture_;
};

}  // namespace plugside
