// The map's side of placing a picture: the places of the pairs, put, dragged and shifted.
//
// A click, or Space, puts the place of a pair; within 10 pixels of a mark at its plug. A pair's place can be dragged; a click on it
// picks the pair. Arrows move the tip by 8 pixels (with Shift by 1); with Ctrl they move the picked pair's place by 1 pixel (with
// Shift by 8). Delete removes the picked pair.
#pragma once

#include <QObject>
#include <functional>
#include <optional>

#include "app/canvas/map_tool.h"
#include "app/placing/picture_placing.h"

namespace plugside {

class PlacingTool : public QObject, public MapTool {
    Q_OBJECT

public:
    using PlaceOfMark = std::function<std::optional<LocalPoint>(LocalPoint near, Metres reach)>;
    PlacingTool(PicturePlacing& placing, PlaceOfMark place_of_mark, QObject* parent = nullptr);

    bool grabs(QPointF pixel, const ViewTransform& view) override;
    void drag(QPointF pixel, const ViewTransform& view) override;
    void drop(QPointF pixel, const ViewTransform& view) override;
    void hover(QPointF pixel, const ViewTransform& view) override;
    bool click(QPointF pixel, const ViewTransform& view, Qt::KeyboardModifiers with) override;
    bool double_click(QPointF pixel, const ViewTransform& view) override;
    bool key(const QKeyEvent& event, const ViewTransform& view) override;
    [[nodiscard]] bool changes_plan() const override { return false; }
    void paint(QPainter& painter, const MapStyle& style, const ViewTransform& view) const override;

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] LocalPoint snapped(QPointF pixel, const ViewTransform& view) const;

    PicturePlacing& placing_;
    PlaceOfMark place_of_mark_;
    std::optional<QPointF> tip_;
    bool tip_by_key_ = false;
    std::optional<std::size_t> held_;
    QPointF held_at_;
    bool moved_ = false;
};

}  // namespace plugside
