// Pages of paper being filled from top to bottom, each with the field, its animals and "page n of m" above and who decides below.
//
// keep:    what is written next is so high and is not cut by a page's end: a new page begins where it has no room.
// title:   of the pages from here on.
// Headings of tables come again on each page that they go on to (`repeat`).
// Units:   millimetres; x and y are from the page's upper left corner.
#pragma once

#include <functional>

#include "app/sheets/figure.h"
#include "app/sheets/lettering.h"
#include "app/sheets/sheet_contents.h"

namespace plugside {

inline constexpr double page_edge_mm = 10.0;

class SheetPager {
public:
    SheetPager(const SheetContents& contents, QSizeF page_mm);

    void begin_page(const QString& title);
    void keep(double height_mm);
    void skip(double height_mm) { y_ += height_mm; }
    // Drawn at the top of every further page of this title; empty for nothing.
    void repeat(std::function<void(SheetPager&)> heading);
    void place(const Figure& figure);  // at the left edge, then goes below it

    [[nodiscard]] Figure& page() { return pages_.back().figure; }
    [[nodiscard]] double y() const { return y_; }
    [[nodiscard]] double left() const { return page_edge_mm; }
    [[nodiscard]] double width() const { return size_.width() - 2.0 * page_edge_mm; }
    [[nodiscard]] double room() const;        // height left on this page
    [[nodiscard]] double whole_room() const;  // of an empty page
    [[nodiscard]] bool empty_page() const;
    [[nodiscard]] const LetteringMeasure& measure() const { return measure_; }
    void text(const QString& words, const Lettering& lettering, double indent_mm = 0.0);

    // All pages, with what stands above and below.
    [[nodiscard]] std::vector<Figure> finish();

private:
    struct Page {
        Figure figure;
        QString title;
    };
    void add_edges(Page& page, std::size_t number) const;
    const SheetContents& contents_;
    QSizeF size_;
    LetteringMeasure measure_;
    std::vector<Page> pages_;
    std::function<void(SheetPager&)> heading_;
    double y_ = 0.0;
};

}  // namespace plugside
