// The ladder of the set at hand, dragged on the map.
//
// Taken hold of at its rungs or within a finger's breadth of its middle; a press that does not become a drag is a click like any other
// (`let_through`). Set down it lies on a mark of the tape, still in the hand: the slip's keys lay it or give it up.
// Drawn: while it is moved, from where it was to where it is, with its chance and rungs beside it.
#pragma once

#include <QObject>

#include "app/canvas/map_tool.h"
#include "app/session/choices.h"
#include "app/stages/sets_page.h"

namespace plugside {

class LadderTool : public QObject, public MapTool {
    Q_OBJECT

public:
    LadderTool(Choices& choices, SetsPage& page, QObject* parent = nullptr);

    bool grabs(QPointF pixel, const ViewTransform& view) override;
    void drag(QPointF pixel, const ViewTransform& view) override;
    void drop(QPointF pixel, const ViewTransform& view) override;
    void hover(QPointF pixel, const ViewTransform& view) override;
    bool click(QPointF pixel, const ViewTransform& view, Qt::KeyboardModifiers with) override;
    bool double_click(QPointF pixel, const ViewTransform& view) override;
    bool key(const QKeyEvent& event, const ViewTransform& view) override;
    void paint(QPainter& painter, const MapStyle& style, const ViewTransform& view) const override;
    [[nodiscard]] bool changes_plan() const override { return false; }

Q_SIGNALS:
    void changed();
    void let_through(QPointF pixel);

private:
    [[nodiscard]] LadderPlace place_at(QPointF pixel, const ViewTransform& view) const;

    Choices& choices_;
    SetsPage& page_;
    std::optional<ProbeSite> held_;   // as it was when the hand took hold
    std::optional<ProbeSite> begun_;  // as it was when the move began
    QPointF pressed_;
    bool dragging_ = false;
};

}  // namespace plugside
