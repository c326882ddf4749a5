#include "app/drawing/tape_tool.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "app/canvas/map_layers.h"

namespace plugside {

namespace {

constexpr double snap_px = 10.0;
constexpr double dot_px = 4.0;

}  // namespace

TapeTool::TapeTool(FieldSession& session, Choices& choices, PlaceOfMark place_of_mark, QObject* parent)
    : QObject(parent), session_(session), choices_(choices), place_of_mark_(std::move(place_of_mark)) {
    connect(&session_, &FieldSession::field_replaced, this, &TapeTool::lift);
}

void TapeTool::lift() {
    places_.clear();
    end_.reset();
    end_pixel_.reset();
    Q_EMIT lifted();
}

QString TapeTool::reading_words() const {
    if (places_.empty() || !end_ || !session_.field()) return {};
    const Metres leg = Metres::of(distance_m(places_.back(), *end_));
    QStringList words{QString::fromStdString(tape_reading(leg, choices_.units()))};
    if (const auto bearing = Bearing::along(*end_ - places_.back())) {
        const Bearing true_bearing = session_.field()->frame.true_bearing(*bearing, places_.back());
        words << tr("%1° %2")
                     .arg(std::lround(true_bearing.degrees()) % 360)
                     .arg(QString::fromStdString(compass_point(true_bearing)));
    }
    if (places_.size() > 1) {
        double whole_m = leg.value();
        for (std::size_t i = 1; i < places_.size(); ++i) whole_m += distance_m(places_[i - 1], places_[i]);
        words << tr("in all %1").arg(QString::fromStdString(ground_distance(Metres::of(whole_m), choices_.units())));
    }
    return words.join(QStringLiteral(" · "));
}

bool TapeTool::grabs(QPointF, const ViewTransform&) { return false; }
void TapeTool::drag(QPointF, const ViewTransform&) {}
void TapeTool::drop(QPointF, const ViewTransform&) {}

void TapeTool::hover(QPointF pixel, const ViewTransform& view) {
    end_pixel_ = pixel;
    const LocalPoint at = view.to_local(pixel);
    const auto mark = place_of_mark_(at, view.ground_length(snap_px));
    at_a_mark_ = mark.has_value();
    end_ = mark.value_or(at);
    Q_EMIT changed();
}

void TapeTool::take_place_back() {
    if (!places_.empty()) places_.pop_back();
    Q_EMIT changed();
}

void TapeTool::lay() {
    if (end_ && (places_.empty() || places_.back() != *end_)) places_.push_back(*end_);
    Q_EMIT changed();
}

bool TapeTool::click(QPointF pixel, const ViewTransform& view, Qt::KeyboardModifiers) {
    hover(pixel, view);
    lay();
    return true;
}

bool TapeTool::double_click(QPointF pixel, const ViewTransform& view) { return click(pixel, view, {}); }

bool TapeTool::key(const QKeyEvent& event, const ViewTransform& view) {
    const double step = event.modifiers().testFlag(Qt::ShiftModifier) ? 1.0 : 8.0;
    QPointF by;
    switch (event.key()) {
        case Qt::Key_Left: by = {-step, 0.0}; break;
        case Qt::Key_Right: by = {step, 0.0}; break;
        case Qt::Key_Up: by = {0.0, -step}; break;
        case Qt::Key_Down: by = {0.0, step}; break;
        case Qt::Key_Space:
            if (!end_) hover(view.screen().center(), view);
            lay();
            return true;
        case Qt::Key_Backspace: take_place_back(); return true;
        case Qt::Key_Escape: lift(); return true;
        default: return false;
    }
    const QRectF room = view.screen();
    const QPointF from = end_pixel_.value_or(room.center());
    hover(
        {std::clamp(from.x() + by.x(), room.left(), room.right()), std::clamp(from.y() + by.y(), room.top(), room.bottom())},
        view);
    return true;
}

void TapeTool::paint(QPainter& painter, const MapStyle& style, const ViewTransform& view) const {
    painter.setRenderHint(QPainter::Antialiasing);
    QPolygonF line;
    for (const LocalPoint place : places_) line << view.to_screen(place);
    if (end_) line << view.to_screen(*end_);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(style.slip, 4.6 * style.line_factor));
    painter.drawPolyline(line);
    painter.setPen(QPen(style.ink, 1.8 * style.line_factor));
    painter.drawPolyline(line);
    for (const QPointF place : line) {
        painter.setBrush(style.slip);
        painter.drawEllipse(place, dot_px, dot_px);
    }
    if (!end_) return;
    const QPointF end = view.to_screen(*end_);
    if (at_a_mark_) painter.drawEllipse(end, dot_px + 3.0, dot_px + 3.0);
    const QString words = places_.empty() ? tr("the tape starts here") : reading_words();
    QFont font = painter.font();
    font.setPixelSize(style.text(1));
    font.setBold(true);
    painter.setFont(font);
    const QFontMetricsF metrics(font);
    QRectF place(end + QPointF(14.0, 12.0), QSizeF(metrics.horizontalAdvance(words) + 8.0, metrics.height() + 4.0));
    if (place.right() > view.screen().right()) place.moveRight(end.x() - 14.0);
    if (place.bottom() > view.screen().bottom()) place.moveBottom(end.y() - 12.0);
    place.moveLeft(std::max(place.left(), 4.0));
    draw_haloed_text(painter, place, words, style.ink, style.slip);
}

}  // namespace plugside
