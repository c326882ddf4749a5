// The ground about a finding, drawn to scale, north up: the marks in question large, those about them small, and what the
// proposal would do: an arrow to where a mark would stand, the fan as it would point, a cross over a mark set aside.
//
// Scale: all marks of the finding and at least 3 m about the first; a bar tells it.
#pragma once

#include <QWidget>
#include <memory>
#include <optional>

#include "app/session/choices.h"
#include "core/survey/finding.h"
#include "geo/read/field_survey.h"

namespace plugside {

class FindingPicture : public QWidget {
    Q_OBJECT

public:
    FindingPicture(Choices& choices, QWidget* parent = nullptr);

    void show_finding(std::shared_ptr<const FieldSurvey> field, const Finding& finding);
    void show_nothing();
    [[nodiscard]] QSize sizeHint() const override { return {320, 190}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct View {
        LocalPoint middle;
        double pixels_per_metre = 40.0;
        QPointF at;
        [[nodiscard]] QPointF screen(LocalPoint place) const {
            return at + QPointF((place.east_m - middle.east_m) * pixels_per_metre,
                                (middle.north_m - place.north_m) * pixels_per_metre);
        }
    };
    [[nodiscard]] View view() const;
    [[nodiscard]] const Mound* mound(const std::string& name) const;
    void draw_proposal(QPainter& painter, const View& view) const;
    void draw_scale(QPainter& painter, const View& view) const;

    Choices& choices_;
    std::shared_ptr<const FieldSurvey> field_;
    std::optional<Finding> finding_;
};

}  // namespace plugside
