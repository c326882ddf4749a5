// What a hand does on the map while a step asks for more than looking: the map shows and pans, the tool takes what it wants first.
//
// Every act is told with the view it was done under. grabs: whether a press here starts a drag of the tool's own; until `drop` the map
// does not pan. click, double_click and key: true where the tool used them. paint: over the picture, on the window's thread, so it
// must be quick.
#pragma once

#include <QKeyEvent>
#include <QPainter>
#include <QPointF>

#include "app/canvas/palette.h"
#include "app/canvas/view_transform.h"

namespace plugside {

class MapTool {
public:
    virtual ~MapTool() = default;
    virtual bool grabs(QPointF pixel, const ViewTransform& view) = 0;
    virtual void drag(QPointF pixel, const ViewTransform& view) = 0;
    virtual void drop(QPointF pixel, const ViewTransform& view) = 0;
    virtual void hover(QPointF pixel, const ViewTransform& view) = 0;
    virtual bool click(QPointF pixel, const ViewTransform& view, Qt::KeyboardModifiers with) = 0;
    virtual bool double_click(QPointF pixel, const ViewTransform& view) = 0;
    virtual bool key(const QKeyEvent& event, const ViewTransform& view) = 0;
    // Whether a drag of it makes the plan on the map an old one.
    [[nodiscard]] virtual bool changes_plan() const { return true; }
    // Whether it paints what the plan may become: the plan on the map stands back then.
    [[nodiscard]] virtual bool shows_another_plan() const { return false; }
    virtual void paint(QPainter& painter, const MapStyle& style, const ViewTransform& view) const = 0;
};

}  // namespace plugside
