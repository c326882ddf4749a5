#include "app/canvas/wrapped_words.h"

namespace plugside {

WrappedWords wrapped_words(const QString& text, const QFontMetricsF& metrics, double room, int most_lines) {
    WrappedWords wrapped;
    const QStringList words = text.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    for (qsizetype w = 0; w < words.size(); ++w) {
        const bool first = wrapped.lines.isEmpty();
        const QString longer = first ? words[w] : wrapped.lines.back() + QLatin1Char(' ') + words[w];
        if (!first && metrics.horizontalAdvance(longer) <= room) {
            wrapped.lines.back() = longer;
        } else if (wrapped.lines.size() < most_lines) {
            wrapped.lines << words[w];
        } else {
            wrapped.lines.back() += QLatin1Char(' ') + words.mid(w).join(QLatin1Char(' '));
            break;
        }
    }
    for (QString& line : wrapped.lines) {
        if (metrics.horizontalAdvance(line) <= room) continue;
        line = metrics.elidedText(line, Qt::ElideRight, room);
        wrapped.cut = true;
    }
    return wrapped;
}

}  // namespace plugside
