// Words broken into lines for drawing by hand.
//
// Broken between words; a word wider than the room stays whole and is elided. Where more than `most_lines` would be needed the last
// one ends with an ellipsis and `cut` is set: whoever draws them then gives the whole as a tooltip.
// Cost: O(words).
#pragma once

#include <QFontMetricsF>
#include <QStringList>

namespace plugside {

struct WrappedWords {
    QStringList lines;
    bool cut = false;
};

[[nodiscard]] WrappedWords wrapped_words(const QString& text, const QFontMetricsF& metrics, double room, int most_lines);

}  // namespace plugside
