// The close-up of one ladder as a drawing: by the widget that it is moved in, and small, side by side with others.
//
// Scale:  true on the plug side. Between two mounds the ladder is true to scale and the way to the plugs is shortened, with a break in
//         the line where it is; the readings tell the true lengths.
// Detail: small leaves out words, readings and the rungs' numbers.
#pragma once

#include <QPainter>
#include <QPointF>
#include <QSizeF>
#include <optional>
#include <vector>

#include "app/canvas/palette.h"
#include "core/plan/plan.h"
#include "core/units/display.h"
#include "geo/read/field_survey.h"

namespace plugside {

// What the drawing is made from; lengths in metres along the axis from the plug, and to the right of it.
struct CloseUpScene {
    struct Spot {
        double along_m = 0.0;
        double across_m = 0.0;
    };
    struct FanDrawn {
        std::optional<double> turn_degrees;  // clockwise from the axis; nothing for a mark without a fan
        Freshness freshness = Freshness::unknown;
        QString name;
    };
    FanDrawn from;
    std::optional<FanDrawn> to;
    double to_distance_m = 0.0;
    LadderPlace planned;          // the ladder's middle as the plan has it
    double row_degrees = 0.0;     // of the row, clockwise from the axis
    std::vector<double> rungs_m;  // from the middle along the row, in the order to try
    double half_length_m = 0.0;
    double run_offset_m = 0.0;  // where the row meets the run, from the planned middle
    double run_band_m = 0.0;    // half width of the band, along the row
    double run_degrees = 90.0;  // of the run, clockwise from the axis
    double axis_bearing_degrees = 0.0;
};

[[nodiscard]] CloseUpScene close_up_scene(const FieldSurvey& field, const Plan& plan, const ProbeSite& site);

class CloseUpDrawing {
public:
    enum class Detail { whole, small };
    struct Look {
        LengthUnits units = LengthUnits::feet_and_inches;
        bool dropped = false;
        bool moving = false;
        Detail detail = Detail::whole;
    };
    struct Layout {
        double pixels_per_metre = 200.0;
        QPointF ladder;  // where the planned middle is drawn
        QPointF plug;    // where the first plug is drawn
        std::optional<QPointF> far_plug;
        bool shortened = false;
    };

    // `scene` and `style` outlive it. `place`: of the ladder's middle now.
    CloseUpDrawing(const CloseUpScene& scene, const LadderPlace& place, QSizeF size, const MapStyle& style,
                   const Look& look);

    [[nodiscard]] const Layout& layout() const { return layout_; }
    [[nodiscard]] QPointF middle() const;
    // Whether a hand that presses there takes hold of the ladder.
    [[nodiscard]] bool on_ladder(QPointF at) const;
    void draw(QPainter& painter) const;

private:
    [[nodiscard]] Layout lay_out() const;
    [[nodiscard]] double width() const { return size_.width(); }
    [[nodiscard]] double height() const { return size_.height(); }
    [[nodiscard]] bool small() const { return look_.detail == Detail::small; }
    void draw_run(QPainter& painter) const;
    void draw_mounds(QPainter& painter) const;
    void draw_rungs(QPainter& painter) const;
    void draw_tape(QPainter& painter) const;
    void draw_words(QPainter& painter) const;

    const CloseUpScene& scene_;
    LadderPlace place_;
    QSizeF size_;
    const MapStyle& style_;
    Look look_;
    Layout layout_;
};

}  // namespace plugside
