#include "app/stages/lined_button.h"

namespace plugside {

namespace {

constexpr int rims = 32;  // of the sheet of looks, left and right

}  // namespace

LinedButton::LinedButton(const QString& words, QWidget* parent) : QPushButton(words, parent) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    set_words(words);
}

void LinedButton::set_words(const QString& words) {
    words_ = words;
    setAccessibleName(words.simplified());
    break_lines();
}

void LinedButton::resizeEvent(QResizeEvent* event) {
    QPushButton::resizeEvent(event);
    break_lines();
}

void LinedButton::changeEvent(QEvent* event) {
    QPushButton::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) break_lines();
}

void LinedButton::break_lines() {
    QStringList lines;
    for (const QString& word : words_.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        const QString longer = lines.isEmpty() ? word : lines.back() + QLatin1Char(' ') + word;
        if (!lines.isEmpty() && fontMetrics().horizontalAdvance(longer) <= width() - rims)
            lines.back() = longer;
        else
            lines << word;
    }
    const QString broken = lines.size() > 1 && fontMetrics().horizontalAdvance(words_) > width() - rims
                               ? lines.join(QLatin1Char('\n'))
                               : words_;
    if (broken != text()) setText(broken);
}

}  // namespace plugside
