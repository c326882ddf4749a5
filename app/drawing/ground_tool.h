// Drawing the ground on the map: strokes with the pen, and the corners of the shape that is picked, moved, added and removed.
//
// With a pen in hand: each click puts a corner; a double click, Enter or a click on the first corner ends the shape; Backspace takes
//        the last corner back; Esc puts the pen down. By keys alone: arrows move the tip by 8 pixels (with Shift by 1), Space puts a
//        corner.
// Without: a click picks a shape; a corner of the picked shape can be dragged, an edge gets a new corner where it is dragged from;
//        Delete removes the picked corner, or the shape where none is picked.
// About the walk: corners about all that was walked (walk_outline.h), as a beginning: Enter takes them, Backspace the last one back.
//        A pen for another area stays in hand; else it is the boundary's.
// Corners by keys, of the picked shape: [ and ] go from one to the next, arrows move it by 8 pixels (with Shift by 1).
// Joining: after join_with_next the next shape clicked is joined to the picked one.
// While a barrier or a crossing is drawn, and while a corner is dragged of a shape that decides where runs lie, a NearbyPreview shows what
//        would become of the systems about it.
// Every act is one step of the history. What cannot be done is said in a sentence (said).
// Snaps within 10 pixels to corners and edges of what is there.
#pragma once

#include <QObject>

#include "app/canvas/map_tool.h"
#include "app/drawing/ground_pen.h"
#include "app/planning/nearby_preview.h"
#include "app/session/choices.h"
#include "app/session/field_session.h"

namespace plugside {

class GroundTool : public QObject, public MapTool {
    Q_OBJECT

public:
    GroundTool(FieldSession& session, Choices& choices, QObject* parent = nullptr);

    [[nodiscard]] const GroundPen& pen() const { return pen_; }
    [[nodiscard]] const std::optional<GroundShape>& picked() const { return picked_; }
    [[nodiscard]] const std::optional<GroundCorner>& picked_corner() const { return corner_; }
    [[nodiscard]] bool joining() const { return joining_; }
    [[nodiscard]] NearbyPreview& preview() { return preview_; }
    // "length 12.40 m, bearing 135° (SE), line 40 m, area 0.21 ha" of what is being drawn; empty without a pen.
    [[nodiscard]] QString reading_words() const;

    void take(Stroke stroke);
    void put_down();
    void go_about_the_walk();
    void finish();
    void take_corner_back();
    void pick(std::optional<GroundShape> shape);
    void remove_picked();
    void mend_picked();
    void join_with_next();
    // A keep-clear area about the picked line, as wide in all as is typed ("20 ft"); false, and a sentence, where that cannot be.
    bool make_band(const QString& width);
    void use_words(const ShapeWords& words);
    // "40 ft NE": a corner at the end of that leg; false, and a sentence, where it is not understood or has no start.
    bool enter_leg(const QString& text);

    bool grabs(QPointF pixel, const ViewTransform& view) override;
    void drag(QPointF pixel, const ViewTransform& view) override;
    void drop(QPointF pixel, const ViewTransform& view) override;
    void hover(QPointF pixel, const ViewTransform& view) override;
    bool click(QPointF pixel, const ViewTransform& view, Qt::KeyboardModifiers with) override;
    bool double_click(QPointF pixel, const ViewTransform& view) override;
    bool key(const QKeyEvent& event, const ViewTransform& view) override;
    void paint(QPainter& painter, const MapStyle& style, const ViewTransform& view) const override;

Q_SIGNALS:
    void changed();
    void said(const QString& sentence);

private:
    [[nodiscard]] const Ground& ground() const;
    void look_at_stroke();
    void look_at_dragged(LocalPoint from, LocalPoint to);
    bool commit(EditedGround edited, const QString& words);
    void press_pen(const ViewTransform& view);
    void move_tip(QPointF by, const ViewTransform& view);
    bool step_corner(int by);
    bool move_picked_corner(QPointF by, const ViewTransform& view);
    bool key_with_pen(const QKeyEvent& event, const ViewTransform& view);

    FieldSession& session_;
    Choices& choices_;
    NearbyPreview preview_;
    GroundPen pen_;
    std::optional<QPointF> tip_pixel_;
    std::optional<GroundShape> picked_;
    std::optional<GroundCorner> corner_;
    QPointF pressed_pixel_;
    std::optional<Ground> dragged_;  // the ground as it would be where the corner is now
    bool joining_ = false;
};

// "boundary", "line that no run crosses", ... for buttons and the history.
[[nodiscard]] QString shape_words(GroundKind kind);

}  // namespace plugside
