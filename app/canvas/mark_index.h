// The map's index of the field's marks, kept up with the survey: made at once for a few marks, away from the window's thread
// for many, so that until it is there nothing can be picked and the map waits.
#pragma once

#include <QObject>
#include <memory>

#include "app/canvas/mark_pyramid.h"
#include "app/planning/background_work.h"
#include "geo/read/field_survey.h"

namespace plugside {

class MarkIndex : public QObject {
    Q_OBJECT

public:
    explicit MarkIndex(QObject* parent = nullptr);

    // Made anew where `field` has other marks, or marks at other places, than the last one; null forgets. O(n) to compare.
    void follow(const std::shared_ptr<const FieldSurvey>& field, bool other_diggers);
    [[nodiscard]] bool making() const { return work_.running(); }
    // Null until it is made.
    [[nodiscard]] std::shared_ptr<const MarkPyramid> marks() const { return marks_; }

Q_SIGNALS:
    void ready();

private:
    std::shared_ptr<const FieldSurvey> field_;
    bool other_diggers_ = true;
    std::shared_ptr<const MarkPyramid> marks_;
    BackgroundWork work_;
};

}  // namespace plugside
