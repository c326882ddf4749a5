// What an edit that the hand is still making would change, worked out beside the window's thread: a first look at the marks about it.
//
// look:    asks for one; while one is being made only the last asked for waits, so that a long drag always shows something new.
// picture: what came last: the marks looked at, as a field of their own, with their plan; null before the first and after `forget`,
//          and where the survey is not any more the one that was asked about. Its systems have the letters of the plan shown.
// It is never the plan, and never handed out. Unlike other work beside the window it does not give way to what else the machine does:
// the hand waits for it.
#pragma once

#include <QObject>
#include <cstdint>
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
        std::uint64_t asked = 0;  // the question that it answers, as `look` numbered it
    };

    explicit NearbyPreview(QObject* parent = nullptr);
    // `edit` of `field`, which the plan shown, if any, is of; `touched`: where it differs. The number of the question.
    std::uint64_t look(std::shared_ptr<const FieldSurvey> field, std::shared_ptr<const Plan> shown, EditInHand edit,
                       std::vector<LocalPoint> touched);
    void forget();
    [[nodiscard]] const std::shared_ptr<const Picture>& picture() const { return picture_; }
    // The number of the question asked last.
    [[nodiscard]] std::uint64_t asked() const { return asked_; }
    [[nodiscard]] bool looking() const { return work_.running(); }

Q_SIGNALS:
    void arrived();

private:
    struct Letters {
        std::shared_ptr<const Plan> of;
        std::shared_ptr<const SystemLetters> letters;
    };
    struct Question {
        std::shared_ptr<const FieldSurvey> field;
        std::shared_ptr<const Plan> shown;
        EditInHand edit;
        std::vector<LocalPoint> touched;
        std::uint64_t number = 0;
    };
    void begin(Question question);

    BackgroundWork work_{nullptr, BackgroundWork::Overlap::allowed, BackgroundWork::Haste::prompt};
    std::optional<Question> waiting_;
    std::uint64_t asked_ = 0;
    Letters letters_;  // of the plan that was shown last: they take longer to gather than to use
    std::shared_ptr<const Picture> picture_;
};

}  // namespace plugside
