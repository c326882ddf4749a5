// The field sheets as pages: map, cautions, what to load, the list in walking order, cards, log of rounds.
//
// Cards:   never cut by a page's end; two a page or more.
// Guarantee: nothing is written smaller than 9 pt; every page tells field, animals with their interval and area, its number of how many, and
//          who decides.
// Stop:    nothing comes back. Cost: linear in what is printed; maps see map_figure.h.
#pragma once

#include "app/sheets/figure.h"
#include "app/sheets/sheet_contents.h"

namespace plugside {

[[nodiscard]] std::optional<std::vector<Figure>> sheet_pages(const SheetInput& input, const SheetContents& contents,
                                                             const Progress& progress = {});

}  // namespace plugside
