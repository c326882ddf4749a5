#include "app/sheets/sheet_pager.h"

namespace plugside {

namespace {

constexpr double above_mm = 11.5;
constexpr double below_mm = 6.0;
constexpr Lettering small_words{9.0, false, Ink::black};
constexpr Lettering strong_words{11.0, true, Ink::black};

}  // namespace

SheetPager::SheetPager(const SheetContents& contents, QSizeF page_mm) : contents_(contents), size_(page_mm) {}

double SheetPager::whole_room() const { return size_.height() - 2.0 * page_edge_mm - above_mm - below_mm; }

double SheetPager::room() const { return size_.height() - page_edge_mm - below_mm - y_; }

bool SheetPager::empty_page() const { return pages_.empty() || y_ <= page_edge_mm + above_mm; }

void SheetPager::begin_page(const QString& title) {
    heading_ = nullptr;
    pages_.push_back({Figure(size_), title});
    y_ = page_edge_mm + above_mm;
}

void SheetPager::repeat(std::function<void(SheetPager&)> heading) {
    heading_ = std::move(heading);
    if (heading_) heading_(*this);
}

void SheetPager::keep(double height_mm) {
    if (height_mm <= room()) return;
    const QString title = pages_.back().title;
    pages_.push_back({Figure(size_), title});
    y_ = page_edge_mm + above_mm;
    if (heading_) heading_(*this);
}

void SheetPager::place(const Figure& figure) {
    page().place(figure, {left(), y_});
    y_ += figure.size_mm().height();
}

void SheetPager::text(const QString& words, const Lettering& lettering, double indent_mm) {
    for (const QString& line : measure_.lines(words, width() - indent_mm, lettering)) {
        keep(line_mm(lettering.size_pt));
        page().words({left() + indent_mm, y_ + ascent_mm(lettering.size_pt)}, line, lettering);
        y_ += line_mm(lettering.size_pt);
    }
}

void SheetPager::add_edges(Page& page, std::size_t number) const {
    const double right = size_.width() - page_edge_mm;
    const double top = page_edge_mm;
    const QString of = sheet_words(QT_TRANSLATE_NOOP("Sheets", "page %1 of %2")).arg(number).arg(pages_.size());
    const double room = width() - measure_.width_mm(of, strong_words) - 4.0;
    const auto shortened = [&](QString text, double wide, const Lettering& lettering) {
        if (measure_.width_mm(text, lettering) <= wide) return text;
        while (text.size() > 1 && measure_.width_mm(text + QChar(0x2026), lettering) > wide) text.chop(1);
        return text + QChar(0x2026);
    };
    const QString title = QStringLiteral(" \u2013 ") + page.title;
    const QString field = shortened(contents_.field, room - measure_.width_mm(title, strong_words), strong_words);
    page.figure.words({page_edge_mm, top + 4.0}, field + title, strong_words);
    page.figure.words({right, top + 4.0}, of, strong_words, Side::right);
    page.figure.words({page_edge_mm, top + 8.6}, contents_.animals, small_words);
    page.figure.line({page_edge_mm, top + 10.0}, {right, top + 10.0}, 0.3);
    const double foot = size_.height() - page_edge_mm;
    page.figure.line({page_edge_mm, foot - 4.6}, {right, foot - 4.6}, 0.3);
    page.figure.words({page_edge_mm, foot - 0.8}, contents_.decides, small_words);
    page.figure.words({right, foot - 0.8}, contents_.made, small_words, Side::right);
}

std::vector<Figure> SheetPager::finish() {
    std::vector<Figure> figures;
    for (std::size_t i = 0; i < pages_.size(); ++i) {
        add_edges(pages_[i], i + 1);
        figures.push_back(std::move(pages_[i].figure));
    }
    return figures;
}

}  // namespace plugside
