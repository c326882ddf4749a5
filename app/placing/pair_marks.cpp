#include "app/placing/pair_marks.h"

#include "app/canvas/map_layers.h"

namespace plugside {

namespace {

void draw_cross(QPainter& painter, QPointF at, double reach) {
    painter.drawLine(at - QPointF(reach, 0.0), at + QPointF(reach, 0.0));
    painter.drawLine(at - QPointF(0.0, reach), at + QPointF(0.0, reach));
}

}  // namespace

void draw_pair_mark(QPainter& painter, const PairMark& mark, const MapStyle& style) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    const QColor ink = mark.worst ? style.stop_ink : style.act;
    for (const auto& [colour, width] : {std::pair{style.slip, 5.0}, std::pair{ink, mark.picked ? 3.0 : 1.8}}) {
        painter.setPen(QPen(colour, width * style.line_factor));
        if (mark.left_over) painter.drawLine(mark.at, *mark.left_over);
        painter.drawEllipse(mark.at, pair_mark_px, pair_mark_px);
        painter.setPen(QPen(colour, 0.6 * width * style.line_factor));
        draw_cross(painter, mark.at, pair_mark_px);
    }
    if (mark.number == 0) return;
    QFont font = painter.font();
    font.setPixelSize(style.text(1));
    font.setBold(true);
    painter.setFont(font);
    const QString words = QString::number(mark.number);
    const QFontMetricsF metrics(font);
    draw_haloed_text(painter,
                     {mark.at + QPointF(pair_mark_px + 3.0, -pair_mark_px - metrics.height() + 4.0),
                      QSizeF(metrics.horizontalAdvance(words) + 6.0, metrics.height())},
                     words, ink, style.slip);
}

}  // namespace plugside
