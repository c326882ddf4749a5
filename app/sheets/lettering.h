// How wide words are on paper, and where they break into lines.
//
// Font:    DejaVu Sans, which every package list of the program holds; where it is missing, the system's sans serif.
// Units:   millimetres; sizes in points.
// Breaks:  between words, not within a length; a word wider than the line is cut where it has to be. Words come back without the blanks at breaks.
// Threads: one object a thread. Cost: linear in the text.
#pragma once

#include <QFont>
#include <QFontMetricsF>
#include <QStringList>

#include "app/sheets/figure.h"

namespace plugside {

// The text with blanks that no line breaks at within a length: "2 1/4 in" is read wrongly as "2" and, on the next line, "1/4 in".
[[nodiscard]] QString kept_together(QString text);

class LetteringMeasure {
public:
    LetteringMeasure();
    [[nodiscard]] double width_mm(const QString& text, const Lettering& lettering) const;
    [[nodiscard]] QStringList lines(const QString& text, double width_mm, const Lettering& lettering) const;
    // Whole lines below each other; returns the height used.
    double write(Figure& figure, QPointF top_left, const QString& text, double width_mm, const Lettering& lettering) const;
    [[nodiscard]] double height_mm(const QString& text, double width_mm, const Lettering& lettering) const;

private:
    QFontMetricsF plain_;
    QFontMetricsF bold_;
};

[[nodiscard]] QFont sheet_font(bool bold);
// From one baseline to the next, and from the line's top to its baseline.
[[nodiscard]] constexpr double line_mm(double size_pt) { return 1.28 * size_pt * mm_per_point; }
[[nodiscard]] constexpr double ascent_mm(double size_pt) { return 0.98 * size_pt * mm_per_point; }

}  // namespace plugside
