// The tape on the map: lengths and bearings between places, as one would lay a tape in the field. Changes nothing.
//
// Each click, or Space, lays the tape from the last place to this one; within 10 pixels of a mark it starts or ends at its plug.
// Arrows move the end by 8 pixels (with Shift by 1), Backspace takes a place back, Esc lifts the tape.
// Read: the leg's length as taped and its bearing from true north; from the second leg on the whole way as well.
#pragma once

#include <QObject>
#include <functional>
#include <optional>
#include <vector>

#include "app/canvas/map_tool.h"
#include "app/session/choices.h"
#include "app/session/field_session.h"

namespace plugside {

class TapeTool : public QObject, public MapTool {
    Q_OBJECT

public:
    using PlaceOfMark = std::function<std::optional<LocalPoint>(LocalPoint near, Metres reach)>;
    TapeTool(FieldSession& session, Choices& choices, PlaceOfMark place_of_mark, QObject* parent = nullptr);

    void lift();
    void take_place_back();
    [[nodiscard]] const std::vector<LocalPoint>& places() const { return places_; }
    // "12 ft 3 in · 135° SE · in all 40 ft" from the last place to the end; empty before the first place.
    [[nodiscard]] QString reading_words() const;

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
    void lifted();

private:
    void lay();

    FieldSession& session_;
    Choices& choices_;
    PlaceOfMark place_of_mark_;
    std::vector<LocalPoint> places_;
    std::optional<LocalPoint> end_;
    std::optional<QPointF> end_pixel_;
    bool at_a_mark_ = false;
};

}  // namespace plugside
