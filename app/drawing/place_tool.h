// One place that a hand sets on the map: where tours begin or end. Asked for, then a click sets it, or Space or Enter the middle of the map.
//
// Esc gives it up; so does whoever asks for something else.
#pragma once

#include <QObject>
#include <functional>
#include <optional>

#include "app/canvas/map_tool.h"
#include "core/geometry/point.h"

namespace plugside {

class PlaceTool : public QObject, public MapTool {
    Q_OBJECT

public:
    using Set = std::function<void(LocalPoint)>;
    using QObject::QObject;

    void ask_for(Set set);
    void give_up();
    [[nodiscard]] bool asking() const { return static_cast<bool>(set_); }

    bool grabs(QPointF, const ViewTransform&) override { return false; }
    void drag(QPointF, const ViewTransform&) override {}
    void drop(QPointF, const ViewTransform&) override {}
    void hover(QPointF pixel, const ViewTransform& view) override;
    bool click(QPointF pixel, const ViewTransform& view, Qt::KeyboardModifiers with) override;
    bool double_click(QPointF pixel, const ViewTransform& view) override { return click(pixel, view, {}); }
    bool key(const QKeyEvent& event, const ViewTransform& view) override;
    [[nodiscard]] bool changes_plan() const override { return false; }
    void paint(QPainter& painter, const MapStyle& style, const ViewTransform& view) const override;

Q_SIGNALS:
    void changed();  // begun, set or given up
    void hovered();

private:
    Set set_;
    std::optional<QPointF> cursor_;
};

}  // namespace plugside
