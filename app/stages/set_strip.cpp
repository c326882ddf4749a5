#include "app/stages/set_strip.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "app/canvas/map_layers.h"
#include "app/stages/set_words.h"
#include "core/sets/set_choices.h"

namespace plugside {

namespace {

constexpr double gap_px = 6.0;
constexpr double least_cell_px = 68.0;
constexpr double least_cell_in_sunlight_px = 80.0;
constexpr double most_cell_px = 110.0;

double least_cell(const MapStyle& style) {
    return style.room(style.theme == Theme::light ? least_cell_px : least_cell_in_sunlight_px);
}

int line_height(const MapStyle& style) { return style.letters(style.theme == Theme::light ? 19 : 22); }

}  // namespace

SetStrip::SetStrip(Choices& choices, QWidget* parent) : QWidget(parent), choices_(choices) {
    const auto fit = [this] { setFixedHeight(65 + line_height(choices_.style())); };
    connect(&choices_, &Choices::theme_changed, this, fit);
    fit();
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    connect(&choices_, &Choices::theme_changed, this, qOverload<>(&QWidget::update));
}

void SetStrip::show_sets(const QString& animal, std::vector<Item> items, std::size_t at_hand) {
    items_ = std::move(items);
    at_hand_ = at_hand;
    setAccessibleName(tr("the sets of animal %1 side by side").arg(animal));
    if (at_hand_ < items_.size()) {
        const Item& item = items_[at_hand_];
        const QString words = tr("set %1, %2 in 100").arg(item.set + 1).arg(item.in_100);
        const QString decided = decided_words(item.choice);
        setAccessibleDescription(decided.isEmpty() ? words : tr("%1, %2").arg(words, decided));
    }
    setToolTip(tr("the sets of animal %1; arrow keys choose (A)").arg(animal));
    update();
}

std::size_t SetStrip::most_cells() const {
    return std::max<std::size_t>(1, static_cast<std::size_t>((width() + gap_px) / (least_cell(choices_.style()) + gap_px)));
}

std::size_t SetStrip::first_cell() const {
    const std::size_t fit = most_cells();
    if (items_.size() <= fit) return 0;
    const std::size_t half = fit / 2;
    return std::min(at_hand_ > half ? at_hand_ - half : 0, items_.size() - fit);
}

QRectF SetStrip::cell_of(std::size_t item) const {
    const std::size_t shown = std::min(items_.size(), most_cells());
    const std::size_t first = first_cell();
    if (item < first || item >= first + shown) return {};
    const double wide = std::min(choices_.style().room(most_cell_px),
                                 (width() - gap_px * static_cast<double>(shown - 1)) / static_cast<double>(shown));
    return {static_cast<double>(item - first) * (wide + gap_px), 0.0, wide, static_cast<double>(height())};
}

void SetStrip::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = 0; i < items_.size(); ++i) {
        const QRectF cell = cell_of(i);
        if (!cell.isEmpty()) draw_item(painter, items_[i], cell, i == at_hand_);
    }
    draw_beyond(painter);
}

// How many lie beyond the rim on either side.
void SetStrip::draw_beyond(QPainter& painter) const {
    const std::size_t first = first_cell();
    const std::size_t after = items_.size() - first - std::min(items_.size(), most_cells());
    const MapStyle& style = choices_.style();
    painter.setFont(flag_font(style));
    const auto tell = [&](const QRectF& cell, bool left, const QString& words) {
        const QSizeF size(QFontMetricsF(painter.font()).horizontalAdvance(words) + 8.0, style.room(17.0));
        const QRectF plate(QPointF(left ? cell.left() + 4.0 : cell.right() - size.width() - 4.0, cell.top() + 4.0), size);
        painter.setPen(QPen(style.hairline, 1.0));
        painter.setBrush(style.slip);
        painter.drawRoundedRect(plate, 4.0, 4.0);
        painter.setPen(style.ink);
        painter.drawText(plate, Qt::AlignCenter, words);
    };
    if (first > 0) tell(cell_of(first), true, tr("‹ %1").arg(first));
    if (after > 0) tell(cell_of(items_.size() - after - 1), false, tr("%1 ›").arg(after));
}

void SetStrip::draw_item(QPainter& painter, const Item& item, const QRectF& cell, bool at_hand) const {
    const MapStyle& style = choices_.style();
    const QRectF frame = cell.adjusted(1.5, 1.5, -1.5, -1.5);
    const QColor ground = style.drawing();
    painter.setPen(Qt::NoPen);
    painter.setBrush(ground);
    painter.drawRoundedRect(frame, 6.0, 6.0);
    painter.save();
    QPainterPath inside;
    inside.addRoundedRect(frame, 6.0, 6.0);
    painter.setClipPath(inside);
    const double line_px = line_height(style);
    painter.translate(cell.topLeft());
    const CloseUpDrawing::Look look{choices_.units(), item.choice == SetChoice::dropped, false,
                                    CloseUpDrawing::Detail::small};
    CloseUpDrawing(item.scene, item.place, QSizeF(cell.width(), cell.height() - line_px), style, look).draw(painter);
    painter.translate(-cell.topLeft());
    painter.fillRect(QRectF(cell.left(), cell.bottom() - line_px, cell.width(), line_px), style.slip);
    painter.restore();
    // the number as its flag has it, and the chance
    QFont font = flag_font(style);
    painter.setFont(font);
    const QRectF line(cell.left() + 4.0, cell.bottom() - line_px - 1.0, cell.width() - 8.0, line_px - 1.0);
    const QString number = QString::number(item.set + 1);
    const double wide = QFontMetricsF(font).horizontalAdvance(number) + 8.0;
    const QRectF cloth(line.left() + 1.0, line.top() + 2.0, wide, line.height() - 4.0);
    const bool filled = stands(item.choice);
    const bool dropped = item.choice == SetChoice::dropped;
    const QColor colour = dropped ? style.quiet_ink : style.act;
    painter.setPen(QPen(colour, 1.2));
    painter.setBrush(filled ? colour : style.slip);
    painter.drawRect(cloth);
    painter.setPen(filled ? style.on_act : colour);
    painter.drawText(cloth, Qt::AlignCenter, number);
    if (dropped) {
        painter.setPen(QPen(style.ink, 1.5));
        painter.drawLine(cloth.bottomLeft(), cloth.topRight());
    }
    font.setBold(false);
    painter.setFont(font);
    painter.setPen(style.ink);
    const QRectF rest = line.adjusted(wide + 4.0, 0.0, 0.0, 0.0);
    const QString whole = tr("%1 in 100").arg(item.in_100);
    const bool fits = QFontMetricsF(font).horizontalAdvance(whole) <= rest.width();
    painter.drawText(rest, Qt::AlignRight | Qt::AlignVCenter, fits ? whole : QStringLiteral("%1/100").arg(item.in_100));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(at_hand ? QPen(hasFocus() ? style.act : style.ink, hasFocus() ? 3.0 : 2.0) : QPen(style.hairline, 1.0));
    painter.drawRoundedRect(frame, 6.0, 6.0);
}

void SetStrip::choose(std::size_t item) {
    if (item < items_.size() && item != at_hand_) Q_EMIT chosen(items_[item].set);
}

void SetStrip::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Right: choose(at_hand_ + 1); return;
        case Qt::Key_Left:
            if (at_hand_ > 0) choose(at_hand_ - 1);
            return;
        case Qt::Key_Home: choose(0); return;
        case Qt::Key_End:
            if (!items_.empty()) choose(items_.size() - 1);
            return;
        default: QWidget::keyPressEvent(event);
    }
}

void SetStrip::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    for (std::size_t i = 0; i < items_.size(); ++i)
        if (cell_of(i).contains(event->position())) {
            choose(i);
            return;
        }
}

void SetStrip::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void SetStrip::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

}  // namespace plugside
