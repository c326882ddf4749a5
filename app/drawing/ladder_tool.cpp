#include "app/drawing/ladder_tool.h"

#include <algorithm>
#include <cmath>

#include "app/canvas/map_layers.h"
#include "app/stages/set_words.h"

namespace plugside {

namespace {

constexpr double grip_px = 12.0;
constexpr double drag_slack_px = 4.0;

}  // namespace

LadderTool::LadderTool(Choices& choices, SetsPage& page, QObject* parent) : QObject(parent), choices_(choices), page_(page) {
    connect(&page_, &SetsPage::ladder_changed, this, [this] {
        if (!page_.moving()) {
            begun_.reset();
            held_.reset();
            dragging_ = false;
        }
        Q_EMIT changed();
    });
}

bool LadderTool::grabs(QPointF pixel, const ViewTransform& view) {
    const auto ladder = page_.ladder();
    if (!ladder) return false;
    const auto near = [&](LocalPoint place) {
        const QPointF off = view.to_screen(place) - pixel;
        return std::hypot(off.x(), off.y()) <= grip_px;
    };
    if (!near(ladder->middle) && std::none_of(ladder->rung_places.begin(), ladder->rung_places.end(), near)) return false;
    held_ = ladder;
    if (!page_.moving()) begun_ = ladder;
    pressed_ = pixel;
    dragging_ = false;
    return true;
}

LadderPlace LadderTool::place_at(QPointF pixel, const ViewTransform& view) const {
    const LocalVector step = view.to_local(pixel) - view.to_local(pressed_);
    const LocalVector along = held_->axis.unit();
    return {held_->ladder.along + Metres::of(dot(step, along)),
            held_->ladder.across + Metres::of(dot(step, turned_right(along)))};
}

void LadderTool::drag(QPointF pixel, const ViewTransform& view) {
    if (!held_) return;
    if (!dragging_ && (pixel - pressed_).manhattanLength() < drag_slack_px) return;
    dragging_ = true;
    const LadderPlace place = place_at(pixel, view);
    page_.lay_ladder(place);
}

void LadderTool::drop(QPointF pixel, const ViewTransform& view) {
    if (!held_) return;
    if (!dragging_) {
        held_.reset();
        if (!page_.moving()) begun_.reset();
        Q_EMIT let_through(pixel);
        return;
    }
    const LadderPlace from{held_->ladder.along, held_->ladder.across};
    page_.lay_ladder(on_the_tape(place_at(pixel, view), from, choices_.units()));
    held_.reset();
    dragging_ = false;
}

void LadderTool::hover(QPointF, const ViewTransform&) {}

bool LadderTool::click(QPointF, const ViewTransform&, Qt::KeyboardModifiers) { return false; }

bool LadderTool::double_click(QPointF, const ViewTransform&) { return false; }

bool LadderTool::key(const QKeyEvent& event, const ViewTransform&) {
    if (!page_.moving() || (event.key() != Qt::Key_Return && event.key() != Qt::Key_Enter)) return false;
    page_.close_up().accept_move();
    return true;
}

void LadderTool::paint(QPainter& painter, const MapStyle& style, const ViewTransform& view) const {
    const auto ladder = page_.ladder();
    if (!page_.moving() || !ladder) return;
    const QPointF at = view.to_screen(ladder->middle);
    if (begun_) {
        QPen way(style.act, 1.4 * style.line_factor);
        way.setDashPattern({3.0, 3.0});
        painter.setPen(way);
        painter.drawLine(view.to_screen(begun_->middle), at);
    }
    const double step_px = ladder->ladder.step.value() * view.pixels_per_metre();
    const double radius = std::clamp(0.42 * step_px, 1.5, 7.0);
    for (std::size_t i = ladder->rung_places.size(); i-- > 0;) {
        painter.setPen(QPen(style.act, 1.4 * style.line_factor));
        painter.setBrush(i == 0 ? style.act : style.slip);
        painter.drawEllipse(view.to_screen(ladder->rung_places[i]), radius, radius);
    }
    QFont font = painter.font();
    font.setPixelSize(style.text());
    font.setBold(true);
    painter.setFont(font);
    const QString words = promise_words(*ladder);
    const QRectF room(0.0, 0.0, view.size().width() - 26.0, view.size().height());
    const QSizeF size = QFontMetricsF(font).boundingRect(room, Qt::TextWordWrap | Qt::AlignCenter, words).size();
    QRectF plate(at.x() + 26.0, at.y() - style.room(12.0), size.width() + 17.0, size.height() + style.room(8.0));
    if (plate.right() > view.size().width() - 4.0) plate.moveRight(at.x() - 26.0);
    // neither side has room for it: under the ladder
    if (plate.left() < 4.0) plate.moveTopLeft({4.0, at.y() + 34.0});
    painter.setPen(QPen(style.act, 1.2));
    painter.setBrush(style.slip);
    painter.drawRoundedRect(plate, 6.0, 6.0);
    painter.setPen(style.ink);
    painter.drawText(plate.adjusted(7.0, 0.0, -7.0, 0.0), Qt::AlignCenter | Qt::TextWordWrap, words);
}

}  // namespace plugside
