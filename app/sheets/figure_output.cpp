#include "app/sheets/figure_output.h"

#include <QFontMetricsF>
#include <QPolygonF>
#include <cmath>

#include "app/sheets/lettering.h"

namespace plugside {

namespace {

QColor colour_of(Ink ink) {
    switch (ink) {
        case Ink::black: return Qt::black;
        case Ink::dark: return QColor(0x55, 0x55, 0x55);
        case Ink::pale: return QColor(0xDD, 0xDD, 0xDD);
        case Ink::white: break;
    }
    return Qt::white;
}

class PainterPen {
public:
    PainterPen(QPainter& painter, double dots_per_mm) : painter_(painter), scale_(dots_per_mm) {}

    void operator()(const Stroke& stroke) {
        set(stroke.line, stroke.fill, stroke.width_mm, stroke.dashes_mm);
        QPolygonF points;
        for (const QPointF point : stroke.points) points << point * scale_;
        if (stroke.closed)
            painter_.drawPolygon(points);
        else
            painter_.drawPolyline(points);
    }
    void operator()(const Disc& disc) {
        set(disc.line, disc.fill, disc.width_mm, {});
        painter_.drawEllipse(disc.centre * scale_, disc.radius_mm * scale_, disc.radius_mm * scale_);
    }
    void operator()(const WordsAt& words) {
        QFont font = sheet_font(words.lettering.bold);
        font.setPixelSize(std::max(1, static_cast<int>(std::lround(words.lettering.size_pt * mm_per_point * scale_))));
        painter_.setFont(font);
        painter_.setPen(colour_of(words.lettering.ink));
        QPointF at = words.baseline * scale_;
        const double width =
            words.side == Side::left ? 0.0 : QFontMetricsF(font, painter_.device()).horizontalAdvance(words.text);
        if (words.side == Side::right) at.rx() -= width;
        if (words.side == Side::middle) at.rx() -= 0.5 * width;
        painter_.drawText(at, words.text);
    }

private:
    void set(std::optional<Ink> line, std::optional<Ink> fill, double width_mm, const std::vector<double>& dashes_mm) {
        if (line) {
            QPen pen(colour_of(*line), width_mm * scale_, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
            QList<qreal> dashes;
            for (const double dash : dashes_mm) dashes << dash / width_mm;  // the toolkit counts in widths of the pen
            if (!dashes.isEmpty()) pen.setDashPattern(dashes);
            painter_.setPen(pen);
        } else {
            painter_.setPen(Qt::NoPen);
        }
        painter_.setBrush(fill ? QBrush(colour_of(*fill)) : QBrush(Qt::NoBrush));
    }

    QPainter& painter_;
    double scale_;
};

QString number(double value) {
    QString text = QString::number(std::round(value * 100.0) / 100.0, 'f', 2);
    while (text.endsWith(QLatin1Char('0'))) text.chop(1);
    if (text.endsWith(QLatin1Char('.'))) text.chop(1);
    return text == QLatin1String("-0") ? QStringLiteral("0") : text;
}

QLatin1Char sign_of(Ink ink, bool area) {
    switch (ink) {
        case Ink::black: return QLatin1Char(area ? 'K' : 'k');
        case Ink::dark: return QLatin1Char(area ? 'D' : 'd');
        case Ink::pale: return QLatin1Char(area ? 'P' : 'p');
        case Ink::white: break;
    }
    return QLatin1Char(area ? 'W' : 'w');
}

// What lies nearer than this to the point before is seen by nobody on a screen, and would make a map of many outlines megabytes long.
constexpr double least_step_mm = 0.2;

class SvgPen {
public:
    explicit SvgPen(QString& text) : text_(text) {}

    void operator()(const Stroke& stroke) {
        text_ += QLatin1String("<path d=\"");
        QPointF last;
        for (std::size_t i = 0; i < stroke.points.size(); ++i) {
            const QPointF at = stroke.points[i];
            const bool at_an_end = i == 0 || i + 1 == stroke.points.size();
            if (!at_an_end && QLineF(last, at).length() < least_step_mm) continue;
            text_ += QLatin1Char(i == 0 ? 'M' : 'L') + number(at.x()) + QLatin1Char(' ') + number(at.y());
            last = at;
        }
        text_ += QLatin1String(stroke.closed ? "Z\"" : "\"");
        finish(stroke.line, stroke.fill, stroke.width_mm, stroke.dashes_mm);
    }
    void operator()(const Disc& disc) {
        text_ += QStringLiteral("<circle cx=\"%1\" cy=\"%2\" r=\"%3\"")
                     .arg(number(disc.centre.x()), number(disc.centre.y()), number(disc.radius_mm));
        finish(disc.line, disc.fill, disc.width_mm, {});
    }
    void operator()(const WordsAt& words) {
        text_ +=
            QStringLiteral("<text x=\"%1\" y=\"%2\" font-size=\"%3\" class=\"%4%5\"")
                .arg(number(words.baseline.x()), number(words.baseline.y()), number(words.lettering.size_pt * mm_per_point),
                     QString(sign_of(words.lettering.ink, true)), QString(QLatin1String(words.lettering.bold ? " b" : "")));
        if (words.side == Side::middle) text_ += QLatin1String(" text-anchor=\"middle\"");
        if (words.side == Side::right) text_ += QLatin1String(" text-anchor=\"end\"");
        text_ += QLatin1Char('>') + words.text.toHtmlEscaped() + QLatin1String("</text>");
    }

private:
    void finish(std::optional<Ink> line, std::optional<Ink> fill, double width_mm, const std::vector<double>& dashes_mm) {
        text_ += QLatin1String(" class=\"");
        if (fill) text_ += sign_of(*fill, true);
        if (line) text_ += (fill ? QStringLiteral(" ") : QString()) + sign_of(*line, false);
        text_ += QLatin1Char('"');
        if (line) text_ += QLatin1String(" stroke-width=\"") + number(width_mm) + QLatin1Char('"');
        QStringList dashes;
        for (const double dash : dashes_mm) dashes << number(dash);
        if (!dashes.isEmpty())
            text_ += QLatin1String(" stroke-dasharray=\"") + dashes.join(QLatin1Char(' ')) + QLatin1Char('"');
        text_ += QLatin1String("/>");
    }

    QString& text_;
};

}  // namespace

void paint_figure(QPainter& painter, const Figure& figure, double dots_per_mm) {
    PainterPen pen(painter, dots_per_mm);
    for (const Shape& shape : figure.shapes()) std::visit(pen, shape);
}

QString figure_svg(const Figure& figure, const QString& title) {
    QString text = QStringLiteral("<svg viewBox=\"0 0 %1 %2\" role=\"img\" aria-label=\"%3\">")
                       .arg(number(figure.size_mm().width()), number(figure.size_mm().height()), title.toHtmlEscaped());
    SvgPen pen(text);
    for (const Shape& shape : figure.shapes()) std::visit(pen, shape);
    return text + QLatin1String("</svg>");
}

}  // namespace plugside
