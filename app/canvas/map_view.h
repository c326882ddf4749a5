// The map in the window: moved by dragging and arrow keys, zoomed to the cursor, marks and sets picked by mouse or keys.
//
// What is drawn follows from the session and the choices; the view itself keeps only where it looks.
// Keys while it has the focus: arrows move, Space picks the mark nearest the middle, [ and ] go from mark to mark in the order
// of the walk, Alt with an arrow to the next mark that way.
#pragma once

#include <QWidget>
#include <memory>
#include <optional>

#include "app/canvas/map_cache.h"
#include "app/canvas/map_tool.h"
#include "app/canvas/mark_index.h"
#include "app/canvas/standing_mark.h"
#include "app/session/choices.h"
#include "app/session/field_session.h"
#include "app/session/imagery.h"

namespace plugside {

class MapView : public QWidget {
    Q_OBJECT

public:
    MapView(FieldSession& session, Choices& choices, QWidget* parent = nullptr);

    [[nodiscard]] const ViewTransform& view() const { return view_; }
    [[nodiscard]] MapShow show_choices() const { return shown_; }
    void set_show_choices(const MapShow& show);
    // Parts of systems that speak against a set, drawn in the Method and Sets steps; null: none.
    void show_reasons(std::shared_ptr<const std::vector<ReachReason>> reasons);
    // Ways from set to set, drawn in the Sets step; null: none.
    void show_tours(std::shared_ptr<const TourWays> tours);
    // What lies under the ground; it outlives the view.
    void lay_on(Imagery& imagery);
    [[nodiscard]] bool shows_coordinates() const { return coordinates_; }
    // The text of the coordinate line: of the cursor where it is on the map, else of the picked mark.
    [[nodiscard]] QString coordinate_text() const;
    // Whether the picture on the screen is of the present view and survey.
    [[nodiscard]] bool settled() const { return !cache_.drawing() && !marks_.making(); }
    // What the hand does in the step at hand; null: looking and picking only. Not owned.
    void use_tool(MapTool* tool);
    [[nodiscard]] MapTool* tool() { return tool_; }
    // Where one stands, as a receiver tells it; kept in the middle, the map goes along with every new place.
    void stand(const std::optional<Standing>& standing, bool in_the_middle);
    [[nodiscard]] const std::optional<Standing>& standing() const { return standing_; }
    // The plug nearest to a place, where one is within reach.
    [[nodiscard]] std::optional<LocalPoint> plug_near(LocalPoint to, Metres reach) const;
    // A round glass about the cursor in which the ground is five times as large.
    [[nodiscard]] bool magnifies() const { return magnifies_; }
    void magnify(bool on);

public Q_SLOTS:
    // The mark nearest to the middle of the view, as Space does.
    void pick_in_the_middle();
    // Picks what a click there means.
    void pick_at(QPointF pixel);
    void fit();
    void zoom_in();
    void zoom_out();
    void show_coordinates(bool on);
    // Turns the map so that the way walked at the picked mark, else at the middle, points up; turned already: north is up.
    void turn_to_the_walk();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void look(const ViewTransform& view);
    void take_field();
    void bring_set_into_view();
    void go_near_the_set();
    void step_mark(int by);
    void step_towards(QPointF way);
    void show_mark(std::size_t mound);
    void follow_marks();
    [[nodiscard]] std::optional<std::size_t> mark_at(QPointF pixel) const;
    [[nodiscard]] std::optional<std::size_t> nearest_mark(LocalPoint to, Metres reach) const;
    [[nodiscard]] MapShow show_for_step() const;
    void draw_picture(QPainter& painter);
    void draw_picks(QPainter& painter) const;
    void draw_hover(QPainter& painter) const;
    void draw_glass(QPainter& painter);
    void draw_coordinates(QPainter& painter) const;
    void draw_invitation(QPainter& painter) const;

    FieldSession& session_;
    Choices& choices_;
    Imagery* imagery_ = nullptr;
    MapCache cache_;
    MarkIndex marks_;
    std::vector<FlagPlace> flags_;  // in pixels of flags_view_
    ViewTransform flags_view_;
    ViewTransform view_;
    bool fitted_ = false;
    bool focus_by_key_ = false;
    bool magnifies_ = false;
    MapCache glass_;
    MapShow shown_;
    bool coordinates_ = false;
    std::optional<QPointF> cursor_;
    std::optional<QPointF> pressed_;
    QPointF last_drag_;
    bool dragging_ = false;
    MapTool* tool_ = nullptr;
    bool tool_holds_ = false;  // a drag of the tool's own
    std::optional<std::size_t> hovered_;
    std::optional<Standing> standing_;
};

// The first set of the plan at that probe site.
[[nodiscard]] std::optional<std::size_t> set_at(const Plan& plan, const ProbeKey& probe);

}  // namespace plugside
