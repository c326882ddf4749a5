// The place of one set, drawn as a person sees it who stands at the plug and looks along the ladder's axis: plug at the
// bottom, axis up, right is right. Fan, plug, run with its band, numbered rungs, the tape's readings.
//
// Scale:  true on the plug side. Between two mounds the ladder is true to scale and the way to the plugs is shortened, with
// a
//         break in the line where it is; the readings tell the true lengths.
// Moving: `begin_move`, then arrow keys shift the ladder by one tape unit (1 in or 2 cm; with Shift five), or it is dragged;
//         Enter accepts, Esc gives up.
#pragma once

#include <QWidget>
#include <memory>
#include <optional>

#include "app/session/choices.h"
#include "core/plan/plan.h"
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

// One tape unit: 1 in or 2 cm.
[[nodiscard]] Metres tape_unit(LengthUnits units);

class CloseUp : public QWidget {
    Q_OBJECT

public:
    CloseUp(Choices& choices, QWidget* parent = nullptr);

    // `place`: where the ladder's middle is now (the planned place, or where it was moved to).
    void show_scene(const CloseUpScene& scene, const LadderPlace& place, bool dropped);
    void show_nothing();
    void begin_move();
    [[nodiscard]] bool moving() const { return moving_.has_value(); }
    [[nodiscard]] LadderPlace place() const { return moving_.value_or(place_); }

Q_SIGNALS:
    void move_accepted(const plugside::LadderPlace& place);
    void move_given_up();
    void shifted();  // while it is being moved

public Q_SLOTS:
    void accept_move();
    void give_up_move();

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    using Spot = CloseUpScene::Spot;
    struct Layout {
        double pixels_per_metre = 200.0;
        QPointF ladder;  // where the planned middle is drawn
        QPointF plug;    // where the first plug is drawn
        std::optional<QPointF> far_plug;
        bool shortened = false;
    };
    [[nodiscard]] Layout lay_out() const;
    [[nodiscard]] QPointF screen_step(const Layout& layout, Spot step) const;
    [[nodiscard]] QPointF middle_on_screen(const Layout& layout) const;
    void draw_run(QPainter& painter, const Layout& layout) const;
    void draw_mounds(QPainter& painter, const Layout& layout) const;
    void draw_rungs(QPainter& painter, const Layout& layout) const;
    void draw_tape(QPainter& painter, const Layout& layout) const;
    void draw_words(QPainter& painter) const;
    void shift(double along_units, double across_units);
    [[nodiscard]] const MapStyle& style() const { return style_of(choices_.theme()); }

    Choices& choices_;
    std::optional<CloseUpScene> scene_;
    LadderPlace place_;
    bool dropped_ = false;
    std::optional<LadderPlace> moving_;
    std::optional<QPointF> drag_;
};

}  // namespace plugside
