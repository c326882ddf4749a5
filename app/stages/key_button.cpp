#include "app/stages/key_button.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

namespace plugside {

namespace {

int key_size(const MapStyle& style) { return std::max(style.text(-3), style.letters(11)); }

}  // namespace

KeyButton::KeyButton(const QString& word, const QString& key, Choices& choices, QWidget* parent)
    : QPushButton(word, parent), key_(key), choices_(choices) {
    setAccessibleName(word);
    setAccessibleDescription(tr("key %1").arg(key));
    setProperty("tall", true);
    connect(&choices_, &Choices::theme_changed, this, [this] { updateGeometry(); });
    setCursor(Qt::PointingHandCursor);
}

void KeyButton::set_in_force(bool in_force) {
    in_force_ = in_force;
    setAccessibleDescription(in_force ? tr("key %1, decided so").arg(key_) : tr("key %1").arg(key_));
    update();
}

QSize KeyButton::sizeHint() const {
    const MapStyle& style = choices_.style();
    QFont font = this->font();
    font.setPixelSize(style.text(1));
    font.setBold(true);
    const double word = QFontMetricsF(font).horizontalAdvance(text());
    font.setPixelSize(key_size(style));
    font.setBold(false);
    const double key = QFontMetricsF(font).horizontalAdvance(key_);
    return {std::max(static_cast<int>(std::ceil(std::max(word, key))) + 6, 60), static_cast<int>(style.room(48.0))};
}

void KeyButton::paintEvent(QPaintEvent*) {
    const MapStyle& style = choices_.style();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool filled = in_force_ && isEnabled();
    const QColor ground = filled ? style.act : (underMouse() && isEnabled() ? style.rail : style.slip);
    const QColor ink = filled ? style.on_act : (isEnabled() ? style.ink : style.faint());
    painter.setPen(QPen(hasFocus() ? style.act : style.edge(), hasFocus() ? 2.5 : 1.0));
    painter.setBrush(isDown() ? mixed(ground, style.ink, 0.15) : ground);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5), 8.0, 8.0);
    if (filled && hasFocus()) {
        painter.setPen(QPen(style.on_act, 1.2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(rect()).adjusted(4.5, 4.5, -4.5, -4.5), 6.0, 6.0);
    }
    QFont font = this->font();
    font.setPixelSize(style.text(1));
    font.setBold(true);
    painter.setFont(font);
    painter.setPen(ink);
    painter.drawText(QRectF(0.0, 5.0, width(), 0.5 * height()), Qt::AlignCenter, text());
    font.setPixelSize(key_size(style));
    font.setBold(false);
    painter.setFont(font);
    painter.drawText(QRectF(0.0, 0.5 * height() + 2.0, width(), 0.5 * height() - 8.0), Qt::AlignCenter, key_);
}

}  // namespace plugside
