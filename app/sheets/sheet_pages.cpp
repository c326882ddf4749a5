#include "app/sheets/sheet_pages.h"

#include <algorithm>

#include "app/sheets/card_figure.h"
#include "app/sheets/map_figure.h"
#include "app/sheets/sheet_pager.h"

namespace plugside {

namespace {

constexpr Lettering small_words{9.0, false, Ink::black};
constexpr Lettering small_bold{9.0, true, Ink::black};
constexpr Lettering plain_words{10.5, false, Ink::black};
constexpr Lettering strong_words{10.5, true, Ink::black};
constexpr double between_cards_mm = 2.0;

bool add_maps(SheetPager& pager, const SheetInput& input, const SheetContents& contents, const std::stop_token& stop) {
    const auto pages = map_pages(input, contents, {pager.width(), pager.whole_room()}, stop);
    if (!pages) return false;
    for (const MapPage& page : *pages) {
        pager.begin_page(page.title);
        pager.place(page.figure);
    }
    return true;
}

void add_cautions(SheetPager& pager, const SheetContents& contents) {
    pager.begin_page(sheet_words(QT_TRANSLATE_NOOP("Sheets", "Cautions")));
    pager.text(contents.decides + QLatin1Char(' ') +
                   sheet_words(QT_TRANSLATE_NOOP(
                       "Sheets",
                       "These sheets say what speaks against a place or has to be in hand first; they do not know the "
                       "label in your hand.")),
               plain_words);
    pager.skip(2.0);
    for (const CautionRow& row : contents.cautions) {
        Figure figure(QSizeF(pager.width(), 0.0));
        double y = write_caution(figure, {}, row.caution, pager.width(), pager.measure());
        const QString under = row.where + QStringLiteral(". ") + row.reason;
        y += pager.measure().write(figure, {6.0, y}, under, pager.width() - 6.0, {9.0, false, Ink::dark});
        figure.set_height(y + 2.0);
        pager.keep(y + 2.0);
        pager.place(figure);
    }
}

// Columns of a table: where each begins, as a share of the width, and what stands above it.
struct Column {
    double share = 0.0;
    QString heading;
};

std::vector<double> lefts(const SheetPager& pager, const std::vector<Column>& columns) {
    std::vector<double> at;
    double x = pager.left();
    for (const Column& column : columns) {
        at.push_back(x);
        x += column.share * pager.width();
    }
    at.push_back(x);
    return at;
}

constexpr double cell_left_mm = 0.8;
constexpr double cell_rims_mm = 3.0;  // both, so that words of two cells keep apart

void add_heading(SheetPager& pager, const std::vector<Column>& columns) {
    const auto at = lefts(pager, columns);
    double height = 0.0;
    for (std::size_t i = 0; i < columns.size(); ++i)
        height = std::max(height, pager.measure().write(pager.page(), {at[i] + cell_left_mm, pager.y()}, columns[i].heading,
                                                        at[i + 1] - at[i] - cell_rims_mm, small_bold));
    pager.skip(height + 0.8);
    pager.page().line({pager.left(), pager.y()}, {pager.left() + pager.width(), pager.y()}, 0.5);
    pager.skip(0.6);
}

// A row is never cut; a cell's words break into lines. Returns its top.
double add_row(SheetPager& pager, const std::vector<Column>& columns, const std::vector<QString>& cells,
               const Lettering& lettering, double least_mm) {
    const auto at = lefts(pager, columns);
    double height = least_mm;
    for (std::size_t i = 0; i < cells.size(); ++i)
        height = std::max(height, pager.measure().height_mm(cells[i], at[i + 1] - at[i] - cell_rims_mm, lettering) + 1.4);
    pager.keep(height);
    for (std::size_t i = 0; i < cells.size(); ++i)
        pager.measure().write(pager.page(), {at[i] + cell_left_mm, pager.y() + 0.7}, cells[i],
                              at[i + 1] - at[i] - cell_rims_mm, lettering);
    pager.skip(height);
    pager.page().line({pager.left(), pager.y()}, {pager.left() + pager.width(), pager.y()}, 0.15);
    return pager.y() - height;
}

void add_ticked_row(SheetPager& pager, const std::vector<Column>& columns, const std::vector<QString>& cells) {
    const double top = add_row(pager, columns, cells, plain_words, 6.5);
    pager.page().box({pager.left() + 1.0, top + 1.3, 3.6, 3.6}, 0.3);
}

void add_conditions(SheetPager& pager, const SheetContents& contents) {
    if (contents.conditions.empty() && contents.label.isEmpty()) return;
    pager.begin_page(sheet_words(QT_TRANSLATE_NOOP("Sheets", "Conditions")));
    const std::vector<Column> columns{{0.46, sheet_words(QT_TRANSLATE_NOOP("Sheets", "asked"))},
                                      {0.23, sheet_words(QT_TRANSLATE_NOOP("Sheets", "answered"))},
                                      {0.31, sheet_words(QT_TRANSLATE_NOOP("Sheets", "when"))}};
    if (!contents.conditions.empty()) pager.repeat([columns](SheetPager& on) { add_heading(on, columns); });
    for (const ConditionRow& row : contents.conditions)
        add_row(pager, columns, {row.question, row.answer, row.told}, small_words, 5.0);
    pager.repeat(nullptr);
    if (contents.label.isEmpty()) return;
    pager.skip(4.0);
    pager.keep(20.0);
    pager.text(sheet_words(QT_TRANSLATE_NOOP("Sheets", "The label in hand")), strong_words);
    for (const QString& line : contents.label) pager.text(line, small_words);
}

void add_methods(SheetPager& pager, const SheetContents& contents) {
    if (contents.methods.empty()) return;
    pager.begin_page(sheet_words(QT_TRANSLATE_NOOP("Sheets", "Method")));
    for (const MethodText& method : contents.methods) {
        pager.keep(30.0);
        pager.text(method.name, strong_words);
        pager.skip(1.0);
        int number = 0;
        for (const MethodText::Step& step : method.steps) {
            Figure figure(QSizeF(pager.width(), 0.0));
            figure.words({0.0, ascent_mm(plain_words.size_pt)}, QString::number(++number), strong_words);
            double y = pager.measure().write(figure, {8.0, 0.0}, step.text, pager.width() - 8.0, plain_words);
            y += pager.measure().write(figure, {8.0, y}, step.source, pager.width() - 8.0, {9.0, false, Ink::dark});
            figure.set_height(y + 1.5);
            pager.keep(y + 1.5);
            pager.place(figure);
        }
        if (!method.cover.isEmpty()) pager.text(method.cover, plain_words);
        if (!method.tools.isEmpty()) pager.text(method.tools, plain_words);
        pager.skip(4.0);
    }
}

void add_load(SheetPager& pager, const SheetContents& contents) {
    pager.begin_page(sheet_words(QT_TRANSLATE_NOOP("Sheets", "What to load")));
    const std::vector<Column> columns{{0.06, {}},
                                      {0.12, sheet_words(QT_TRANSLATE_NOOP("Sheets", "how many"))},
                                      {0.36, sheet_words(QT_TRANSLATE_NOOP("Sheets", "what"))},
                                      {0.46, {}}};
    pager.repeat([columns](SheetPager& on) { add_heading(on, columns); });
    for (const LoadRow& row : contents.load) {
        add_ticked_row(pager, columns, {{}, row.amount, row.what, row.remark});
    }
    pager.repeat(nullptr);
    pager.skip(3.0);
    for (const QString& remark : contents.load_remarks) pager.text(remark, plain_words);
}

void add_list(SheetPager& pager, const SheetContents& contents) {
    pager.begin_page(sheet_words(QT_TRANSLATE_NOOP("Sheets", "Sets in walking order")));
    const std::vector<Column> columns{
        {0.06, {}},
        {0.13, sheet_words(QT_TRANSLATE_NOOP("Sheets", "set"))},
        {0.28, sheet_words(QT_TRANSLATE_NOOP("Sheets", "place"))},
        {0.27, sheet_words(QT_TRANSLATE_NOOP("Sheets", "from the set before, from true north"))},
        {0.26, sheet_words(QT_TRANSLATE_NOOP("Sheets", "chance, holes; cautions of the place"))}};
    if (contents.cards.empty()) {
        pager.text(sheet_words(QT_TRANSLATE_NOOP("Sheets", "No set stands in this plan.")), plain_words);
        return;
    }
    pager.text(contents.way, plain_words);
    pager.skip(1.5);
    pager.repeat([columns](SheetPager& on) { add_heading(on, columns); });
    for (const SetCard& card : contents.cards) {
        QString remark = card.promise;
        for (const CardCaution& caution : card.cautions)
            if (caution.weight != CautionWeight::mind) remark += QStringLiteral("; ") + caution.word;
        add_ticked_row(pager, columns, {{}, card.code, card.place, card.from_before, remark});
    }
}

// Cards stand two or more on a page, as far apart as fills it.
bool add_cards(SheetPager& pager, const SheetInput& input, const SheetContents& contents, const Progress& progress) {
    const QString title = sheet_words(QT_TRANSLATE_NOOP("Sheets", "Cards"));
    const double half = 0.5 * (pager.whole_room() - between_cards_mm);
    pager.begin_page(title);
    for (std::size_t i = 0; i < contents.cards.size(); ++i) {
        if (progress.stopped()) return false;
        progress.say(static_cast<double>(i) / static_cast<double>(contents.cards.size()), "");
        CardForm form{pager.width(), input.units, false};
        Figure card = card_figure(contents.cards[i], form, pager.measure());
        if (card.size_mm().height() > half) {
            form.brief = true;
            card = card_figure(contents.cards[i], form, pager.measure());
        }
        pager.keep(card.size_mm().height());
        pager.place(card);
        pager.skip(between_cards_mm);
    }
    return true;
}

void add_log(SheetPager& pager, const SheetContents& contents) {
    constexpr int rounds = 7;
    pager.begin_page(sheet_words(QT_TRANSLATE_NOOP("Sheets", "Log of rounds")));
    pager.text(sheet_words(QT_TRANSLATE_NOOP(
                   "Sheets",
                   "Every set is checked at least daily. In each box: the hour, and + caught, 0 nothing, > moved, "
                   "L lifted. Every set that went out is lifted.")),
               plain_words);
    pager.skip(1.5);
    std::vector<Column> columns{{0.15, sheet_words(QT_TRANSLATE_NOOP("Sheets", "set"))}};
    for (int round = 1; round <= rounds; ++round)
        columns.push_back({0.73 / rounds, sheet_words(QT_TRANSLATE_NOOP("Sheets", "round %1")).arg(round)});
    columns.push_back({0.12, sheet_words(QT_TRANSLATE_NOOP("Sheets", "lifted"))});
    const auto uprights = [columns](SheetPager& on, double top, double bottom) {
        for (const double x : lefts(on, columns)) on.page().line({x, top}, {x, bottom}, 0.15);
    };
    const QString day = sheet_words(QT_TRANSLATE_NOOP("Sheets", "day, name"));
    pager.repeat([columns, uprights, day](SheetPager& on) {
        add_heading(on, columns);
        const double top = on.y();
        add_row(on, columns, {day}, small_words, 8.0);
        uprights(on, top, on.y());
    });
    for (const SetCard& card : contents.cards) {
        pager.keep(8.0);
        const double top = pager.y();
        add_row(pager, columns, {card.code}, strong_words, 8.0);
        uprights(pager, top, pager.y());
    }
}

}  // namespace

std::optional<std::vector<Figure>> sheet_pages(const SheetInput& input, const SheetContents& contents,
                                               const Progress& progress) {
    const LanguageHere language(input.language);
    SheetPager pager(contents, size_mm(input.paper));
    const SheetChoice& wanted = input.pages;
    if (wanted.map && !add_maps(pager, input, contents, progress.stop)) return std::nullopt;
    if (wanted.cautions) {
        add_cautions(pager, contents);
        add_conditions(pager, contents);
        add_methods(pager, contents);
    }
    if (wanted.load && !contents.cards.empty()) add_load(pager, contents);
    if (wanted.list) add_list(pager, contents);
    if (wanted.cards && !contents.cards.empty() && !add_cards(pager, input, contents, progress)) return std::nullopt;
    if (wanted.log && !contents.cards.empty()) add_log(pager, contents);
    return pager.finish();
}

}  // namespace plugside
