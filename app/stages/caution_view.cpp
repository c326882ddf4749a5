#include "app/stages/caution_view.h"

#include <QCoreApplication>
#include <QPainter>
#include <QVBoxLayout>

#include "app/window/look_sheet.h"

namespace plugside {

namespace {

constexpr int sign_room_px = 40;

QString source_words(const Caution& caution) {
    const auto words = [](const char* text) { return QCoreApplication::translate("Caution", text); };
    if (caution.tag == "practice") return words(QT_TRANSLATE_NOOP("Caution", "Common practice."));
    if (caution.tag == "ours") return words(QT_TRANSLATE_NOOP("Caution", "Our own rule."));
    const QString source = QString::fromStdString(caution.source);
    return caution.tag == "memory" ? words(QT_TRANSLATE_NOOP("Caution", "%1, quoted from memory.")).arg(source)
                                   : words(QT_TRANSLATE_NOOP("Caution", "%1.")).arg(source);
}

}  // namespace

QString weight_word(CautionWeight weight) {
    const auto words = [](const char* text) { return QCoreApplication::translate("Caution", text); };
    switch (weight) {
        case CautionWeight::stop: return words(QT_TRANSLATE_NOOP("Caution", "stop"));
        case CautionWeight::hold_back: return words(QT_TRANSLATE_NOOP("Caution", "hold back"));
        case CautionWeight::mind: break;
    }
    return words(QT_TRANSLATE_NOOP("Caution", "mind"));
}

CautionView::CautionView(const Caution& caution, const MapStyle& style, QWidget* parent)
    : QFrame(parent), weight_(caution.weight), style_(style) {
    setObjectName(QStringLiteral("caution"));
    if (weight_ == CautionWeight::stop) setProperty("weight", QStringLiteral("stop"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(sign_room_px, 7, 10, 8);
    column->setSpacing(2);
    auto* sentence = label_in_role("text", this);
    sentence->setTextFormat(Qt::RichText);
    sentence->setText(
        QStringLiteral("<b>%1</b>&nbsp; %2")
            .arg(weight_word(caution.weight).toHtmlEscaped(), QString::fromStdString(caution.sentence).toHtmlEscaped()));
    auto* reason = label_in_role("small", this);
    reason->setText(QString::fromStdString(caution.reason) + QStringLiteral(" ") + source_words(caution));
    column->addWidget(sentence);
    column->addWidget(reason);
    setAccessibleName(tr("%1: %2").arg(weight_word(caution.weight), QString::fromStdString(caution.sentence)));
    setAccessibleDescription(reason->text());
}

void CautionView::use(const MapStyle& style) {
    style_ = style;
    update();
}

void CautionView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool stop = weight_ == CautionWeight::stop;
    const QColor ink = stop ? style_.stop_ink : style_.caution_ink;
    painter.setPen(Qt::NoPen);
    painter.setBrush(stop ? style_.stop_ground : style_.caution_ground);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.0, 0.0, 0.0, 0.0), 6.0, 6.0);
    const QPointF centre(0.5 * sign_room_px, 7.0 + style_.room(12.0));
    if (stop) {
        painter.setBrush(ink);
        painter.drawRoundedRect(QRectF(centre - QPointF(10.0, 3.5), QSizeF(20.0, 7.0)), 1.5, 1.5);
    } else if (weight_ == CautionWeight::hold_back) {
        painter.setPen(QPen(ink, 2.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.setBrush(Qt::NoBrush);
        painter.drawPolygon(
            QPolygonF({centre + QPointF(0.0, -8.0), centre + QPointF(9.0, 7.0), centre + QPointF(-9.0, 7.0)}));
    } else {
        painter.setBrush(ink);
        painter.drawEllipse(centre, 4.5, 4.5);
    }
}

}  // namespace plugside
