#include "app/stages/note_row_painter.h"

#include <QPainter>

namespace plugside {

namespace {

constexpr int rim_px = 7;

int line_px(const MapStyle& style) { return style.text(7); }

void draw_note(QPainter& painter, const QRectF& place, const NoteRow& row, const QFont& plain, const MapStyle& style) {
    QPointF at = place.topLeft();
    for (const NotePiece& piece : row.pieces) {
        QFont font = plain;
        font.setBold(piece.sense == PieceSense::left_over);
        font.setUnderline(piece.sense == PieceSense::left_over);
        const QFontMetricsF metrics(font);
        const double room = place.right() - at.x();
        const QString text =
            metrics.elidedText(QString(piece.text).replace(QLatin1Char('\n'), QLatin1Char(' ')), Qt::ElideRight, room);
        const double wide = metrics.horizontalAdvance(text);
        const QRectF box(at, QSizeF(wide, place.height()));
        if (piece.sense == PieceSense::understood) painter.fillRect(box.adjusted(-1.5, 1.5, 1.5, -1.5), style.read());
        painter.setFont(font);
        painter.setPen(piece.sense == PieceSense::left_over ? style.stop_ink : style.ink);
        painter.drawText(box.adjusted(0.0, 0.0, 2.0, 0.0), Qt::AlignLeft | Qt::AlignVCenter, text);
        at.rx() += wide;
        if (room - wide < 4.0) break;
    }
}

}  // namespace

NoteRowPainter::NoteRowPainter(const NotesModel& model, const Choices& choices, QObject* parent)
    : QStyledItemDelegate(parent), model_(model), choices_(choices) {}

QSize NoteRowPainter::sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const {
    return {200, 2 * line_px(choices_.style()) + rim_px};
}

void NoteRowPainter::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const MapStyle& style = choices_.style();
    const NoteRow& row = model_.row(index.row());
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const QRectF whole(option.rect);
    if (option.state.testFlag(QStyle::State_Selected)) {
        painter->fillRect(whole, style.picked());
        painter->fillRect(QRectF(whole.topLeft(), QSizeF(3.0, whole.height())), style.act);
    }
    painter->setPen(QPen(style.hairline, 1.0));
    painter->drawLine(whole.bottomLeft(), whole.bottomRight());
    QFont plain = option.font;
    plain.setPixelSize(style.text());
    QFont bold = plain;
    bold.setBold(true);
    const QRectF head(whole.left() + rim_px, whole.top() + 3.0, whole.width() - 2.0 * rim_px, line_px(style));
    painter->setFont(bold);
    painter->setPen(style.ink);
    painter->drawText(head, Qt::AlignLeft | Qt::AlignVCenter, row.name);
    const double used = QFontMetricsF(bold).horizontalAdvance(row.name) + 10.0;
    const QRectF beside = head.adjusted(used, 0.0, 0.0, 0.0);
    painter->setFont(plain);
    painter->setPen(row.values.isEmpty() ? style.quiet_ink : style.run);
    const QString values = row.values.isEmpty() ? tr("nothing was read") : row.values;
    painter->drawText(beside, Qt::AlignRight | Qt::AlignVCenter,
                      QFontMetricsF(plain).elidedText(values, Qt::ElideRight, beside.width()));
    draw_note(*painter, head.translated(0.0, line_px(style)), row, plain, style);
    painter->restore();
}

}  // namespace plugside
