#include "app/sheets/card_figure.h"

#include <algorithm>

#include "app/sheets/close_up_figure.h"

namespace plugside {

namespace {

constexpr Lettering small_words{9.0, false, Ink::black};
constexpr Lettering small_bold{9.0, true, Ink::black};
constexpr Lettering plain_words{10.0, false, Ink::black};
constexpr Lettering strong_words{10.0, true, Ink::black};
constexpr Lettering code_words{20.0, true, Ink::black};
constexpr double title_mm = 9.5;
constexpr double inner_mm = 2.0;
constexpr double close_up_width_mm = 86.0;
constexpr double close_up_height_mm = 82.0;
constexpr double tick_mm = 3.4;

class CardMaker {
public:
    CardMaker(const SetCard& card, const CardForm& form, const LetteringMeasure& measure)
        : card_(card),
          form_(form),
          measure_(measure),
          figure_(QSizeF(form.width_mm, 10.0)),
          column_x_(close_up_width_mm + 2.0 * inner_mm),
          column_width_(form.width_mm - column_x_ - inner_mm),
          y_(title_mm + 1.5) {}

    Figure make() {
        write_title();
        figure_.place(close_up_figure(card_.scene, form_.units, {close_up_width_mm, close_up_height_mm}).figure,
                      {inner_mm, title_mm + 1.0});
        write_column();
        y_ = std::max(y_, title_mm + 1.0 + close_up_height_mm + 1.0);
        write_steps();
        figure_.set_height(y_ + 1.0);
        figure_.box({0.0, 0.0, form_.width_mm, y_ + 1.0}, 0.6);
        figure_.line({0.0, title_mm}, {form_.width_mm, title_mm}, 0.3);
        return std::move(figure_);
    }

private:
    void write_title();
    void write_column();
    void write_rungs();
    void write_found();
    void write_steps();
    void paragraph(const QString& text, const Lettering& lettering, double after_mm = 1.0) {
        y_ += measure_.write(figure_, {column_x_, y_}, text, column_width_, lettering) + after_mm;
    }

    const SetCard& card_;
    CardForm form_;
    const LetteringMeasure& measure_;
    Figure figure_;
    double column_x_;
    double column_width_;
    double y_;
};

void CardMaker::write_title() {
    figure_.words({inner_mm, title_mm - 2.0}, card_.code, code_words);
    const double x = inner_mm + measure_.width_mm(card_.code, code_words) + 5.0;
    figure_.words({x, 4.0}, card_.place, strong_words);
    figure_.words({x, 8.2}, card_.state, small_words);
    const double right = form_.width_mm - inner_mm;
    figure_.words({right, 4.0}, sheet_words(QT_TRANSLATE_NOOP("Sheets", "waypoint %1")).arg(card_.handheld), small_words,
                  Side::right);
    figure_.words({right, 8.2}, card_.at, small_words, Side::right);
}

void CardMaker::write_column() {
    for (const CardCaution& caution : card_.cautions)
        y_ += write_caution(figure_, {column_x_, y_}, caution, column_width_, measure_) + 1.0;
    paragraph(card_.instruction, plain_words);
    paragraph(card_.chance, strong_words);
    paragraph(card_.look_for, small_words);
    write_rungs();
    write_found();
}

void CardMaker::write_rungs() {
    paragraph(card_.rungs_meaning, small_words, 0.6);
    double widest = 0.0;
    for (const RungToTick& rung : card_.rungs) widest = std::max(widest, measure_.width_mm(rung.reading, small_words));
    const double number_mm = measure_.width_mm(QStringLiteral("00"), small_bold) + 2.4;
    const double cell = tick_mm + 1.2 + number_mm + widest + 2.0;
    const int columns = std::max(1, static_cast<int>(column_width_ / cell));
    for (std::size_t i = 0; i < card_.rungs.size(); ++i) {
        const auto column = static_cast<double>(i % static_cast<std::size_t>(columns));
        const double x = column_x_ + column * (column_width_ / columns);
        figure_.box({x, y_ + 0.3, tick_mm, tick_mm}, 0.3);
        figure_.words({x + tick_mm + 1.2, y_ + 3.2}, QString::number(card_.rungs[i].number), small_bold);
        figure_.words({x + tick_mm + 1.2 + number_mm, y_ + 3.2}, card_.rungs[i].reading, small_words);
        if (i + 1 == card_.rungs.size() || static_cast<int>(column) == columns - 1) y_ += 4.8;
    }
    y_ += 0.8;
}

// The method's steps, each with a box to tick, one after the other over the card's whole width.
void CardMaker::write_steps() {
    if (card_.method.isEmpty()) return;
    const double right = form_.width_mm - inner_mm;
    const double blank = measure_.width_mm(QStringLiteral(" "), small_words);
    double x = inner_mm;
    const auto new_line = [&] {
        x = inner_mm;
        y_ += line_mm(small_words.size_pt);
    };
    const auto put = [&](const QString& text, const Lettering& lettering) {
        for (const QString& word : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
            const double width = measure_.width_mm(word, lettering);
            if (x + width > right) new_line();
            figure_.words({x, y_ + ascent_mm(lettering.size_pt)}, word, lettering);
            x += width + blank;
        }
    };
    put(card_.method + QLatin1Char(':'), small_bold);
    if (form_.brief) {
        put(sheet_words(QT_TRANSLATE_NOOP("Sheets", "its steps are on the page of the method.")), small_words);
    } else {
        for (const QString& step : card_.steps) {
            // a box does not stand at a line's end without its words
            const double needed = tick_mm + 1.0 + measure_.width_mm(step.section(QLatin1Char(' '), 0, 0), small_words);
            if (x + needed > right) new_line();
            figure_.box({x, y_ + 0.2, 2.8, 2.8}, 0.25);
            x += 2.8 + 1.0;
            put(step, small_words);
            x += 1.0;
        }
    }
    if (!card_.cover.isEmpty()) put(card_.cover, small_bold);
    y_ += line_mm(small_words.size_pt) + 0.5;
}

// What was found, to be filled in with a pencil.
void CardMaker::write_found() {
    constexpr double row_mm = 6.4;
    const QStringList first{sheet_words(QT_TRANSLATE_NOOP("Sheets", "run at hole")),
                            sheet_words(QT_TRANSLATE_NOOP("Sheets", "depth"))};
    const QStringList second{sheet_words(QT_TRANSLATE_NOOP("Sheets", "set by")),
                             sheet_words(QT_TRANSLATE_NOOP("Sheets", "day, time"))};
    const double top = y_;
    const double half = 0.5 * column_width_;
    for (const auto& [row, names] : {std::pair{0, first}, std::pair{1, second}})
        for (int column = 0; column < 2; ++column) {
            const QRectF box(column_x_ + column * half, top + row * row_mm, half, row_mm);
            figure_.box(box, 0.3);
            figure_.words(box.topLeft() + QPointF(1.0, 4.4), names[column], small_words);
        }
    const QRectF nothing(column_x_, top + 2.0 * row_mm, column_width_, row_mm);
    figure_.box(nothing, 0.3);
    figure_.box({nothing.left() + 1.2, nothing.top() + 1.5, tick_mm, tick_mm}, 0.3);
    figure_.words(nothing.topLeft() + QPointF(2.4 + tick_mm, 4.4), sheet_words(QT_TRANSLATE_NOOP("Sheets", "nothing found")),
                  small_words);
    figure_.words({nothing.left() + half + 1.0, nothing.top() + 4.4}, sheet_words(QT_TRANSLATE_NOOP("Sheets", "note")),
                  small_words);
    y_ += 3.0 * row_mm + 1.0;
}

}  // namespace

Figure card_figure(const SetCard& card, const CardForm& form, const LetteringMeasure& measure) {
    return CardMaker(card, form, measure).make();
}

void add_caution_sign(Figure& figure, QPointF middle, CautionWeight weight) {
    switch (weight) {
        case CautionWeight::stop: figure.box({middle.x() - 2.0, middle.y() - 0.8, 4.0, 1.6}, 0.2, Ink::black); return;
        case CautionWeight::hold_back:
            figure.add(Stroke{{middle + QPointF(0.0, -1.7), middle + QPointF(1.9, 1.4), middle + QPointF(-1.9, 1.4)},
                              true,
                              0.4,
                              Ink::black,
                              {},
                              {}});
            return;
        case CautionWeight::mind: figure.add(Disc{middle, 0.9, 0.2, Ink::black, Ink::black}); return;
    }
}

double write_caution(Figure& figure, QPointF top_left, const CardCaution& caution, double width_mm,
                     const LetteringMeasure& measure) {
    constexpr double sign_mm = 6.0;
    add_caution_sign(figure, top_left + QPointF(2.2, 1.9), caution.weight);
    const double word_mm = measure.width_mm(caution.word, small_bold) + 1.6;
    figure.words(top_left + QPointF(sign_mm, ascent_mm(9.0)), caution.word, small_bold);
    // the first line begins beside the word, the others below it
    const QStringList first = measure.lines(caution.sentence, width_mm - sign_mm - word_mm, small_words);
    if (first.isEmpty()) return line_mm(9.0);
    figure.words(top_left + QPointF(sign_mm + word_mm, ascent_mm(9.0)), first.front(), small_words);
    const QString rest = caution.sentence.mid(first.front().size()).trimmed();
    return line_mm(9.0) +
           measure.write(figure, top_left + QPointF(sign_mm, line_mm(9.0)), rest, width_mm - sign_mm, small_words);
}

}  // namespace plugside
