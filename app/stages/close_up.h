// The place of one set, drawn as a person sees it who stands at the plug and looks along the ladder's axis: plug at the
// bottom, axis up, right is right. Fan, plug, run with its band, numbered rungs, the tape's readings.
//
// Moving: `begin_move`, then arrow keys shift the ladder by one tape unit (1 in or 2 cm; with Shift five), or it is dragged; Enter
//         accepts, Esc gives up. Dragging the ladder begins the move by itself. A figure typed meanwhile begins a tape reading.
#pragma once

#include <QWidget>
#include <memory>
#include <optional>

#include "app/session/choices.h"
#include "app/stages/close_up_drawing.h"

namespace plugside {

// One tape unit: 1 in or 2 cm.
[[nodiscard]] Metres tape_unit(LengthUnits units);
// The place on the nearest marks of the tape, counted from another place.
[[nodiscard]] LadderPlace on_the_tape(const LadderPlace& place, const LadderPlace& from, LengthUnits units);

class CloseUp : public QWidget {
    Q_OBJECT

public:
    CloseUp(Choices& choices, QWidget* parent = nullptr);

    // `place`: where the ladder's middle is now (the planned place, or where it was moved to).
    void show_scene(const CloseUpScene& scene, const LadderPlace& place, bool dropped);
    void show_nothing();
    void begin_move();
    [[nodiscard]] bool moving() const { return moving_.has_value(); }
    // Lays the ladder there while it is being moved.
    void lay(const LadderPlace& place);
    // By so many tape units; the move is begun if it was not.
    void shift(double along_units, double across_units);
    [[nodiscard]] LadderPlace place() const { return moving_.value_or(place_); }
    [[nodiscard]] LadderPlace planned() const { return scene_ ? scene_->planned : place_; }
    // Where the ladder's middle is drawn.
    [[nodiscard]] QPointF ladder_at() const { return scene_ ? drawing().middle() : QPointF(); }

Q_SIGNALS:
    void move_begun();
    void reading_begun(const QString& text);  // a figure was typed while it is being moved
    void move_accepted(const plugside::LadderPlace& place);
    void move_given_up();
    void shifted();  // while it is being moved

public Q_SLOTS:
    void accept_move();
    void give_up_move();

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    [[nodiscard]] CloseUpDrawing drawing() const;
    void end_move();
    [[nodiscard]] const MapStyle& style() const { return choices_.style(); }

    Choices& choices_;
    std::optional<CloseUpScene> scene_;
    LadderPlace place_;
    bool dropped_ = false;
    std::optional<LadderPlace> moving_;
    std::optional<QPointF> drag_;   // where the hand was last
    std::optional<QPointF> press_;  // on the ladder, before the hand has moved
};

}  // namespace plugside
