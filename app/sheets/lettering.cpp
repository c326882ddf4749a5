#include "app/sheets/lettering.h"

#include <QRegularExpression>
#include <algorithm>

namespace plugside {

namespace {

constexpr int measured_px = 1000;  // large, so that nothing is rounded to whole pixels

QFont measured(bool bold) {
    QFont font = sheet_font(bold);
    font.setPixelSize(measured_px);
    return font;
}

}  // namespace

QFont sheet_font(bool bold) {
    QFont font(QStringList{QStringLiteral("DejaVu Sans")});
    font.setStyleHint(QFont::SansSerif);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setBold(bold);
    // letters that run into one sign would not be found by who searches for "first"; the least spacing there is keeps them apart
    font.setLetterSpacing(QFont::AbsoluteSpacing, 1.0 / 64.0);
    return font;
}

QString kept_together(QString text) {
    static const QRegularExpression within_a_length(QStringLiteral("(\\d) (?=\\d+/\\d|(?:in|ft|cm|m|pulg|pies?)\\b)"));
    return text.replace(within_a_length, QStringLiteral("\\1") + QChar::Nbsp);
}

LetteringMeasure::LetteringMeasure() : plain_(measured(false)), bold_(measured(true)) {}

double LetteringMeasure::width_mm(const QString& text, const Lettering& lettering) const {
    const double px = (lettering.bold ? bold_ : plain_).horizontalAdvance(text);
    return px / measured_px * lettering.size_pt * mm_per_point;
}

QStringList LetteringMeasure::lines(const QString& text, double width_mm, const Lettering& lettering) const {
    QStringList lines;
    QString line;
    const auto fits = [&](const QString& tried) { return this->width_mm(tried, lettering) <= width_mm; };
    for (QString word : kept_together(text).split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
        if (fits(longer)) {
            line = longer;
            continue;
        }
        if (!line.isEmpty()) lines << line;
        while (word.size() > 1 && !fits(word)) {
            qsizetype cut = word.size() - 1;
            while (cut > 1 && !fits(word.left(cut))) --cut;
            lines << word.left(cut);
            word.remove(0, cut);
        }
        line = word;
    }
    if (!line.isEmpty()) lines << line;
    // whoever searches the text types a blank
    lines.replaceInStrings(QString(QChar::Nbsp), QStringLiteral(" "));
    return lines;
}

double LetteringMeasure::write(Figure& figure, QPointF top_left, const QString& text, double width_mm,
                               const Lettering& lettering) const {
    double y = 0.0;
    for (const QString& line : lines(text, width_mm, lettering)) {
        figure.words(top_left + QPointF(0.0, y + ascent_mm(lettering.size_pt)), line, lettering);
        y += line_mm(lettering.size_pt);
    }
    return y;
}

double LetteringMeasure::height_mm(const QString& text, double width_mm, const Lettering& lettering) const {
    return static_cast<double>(lines(text, width_mm, lettering).size()) * line_mm(lettering.size_pt);
}

}  // namespace plugside
