// The field sheets as one page for a phone: HTML that holds everything in itself.
//
// Without:  scripts, requests, references to anything outside; a Content-Security-Policy in the page forbids them all.
// With:     the map, the list in walking order with links to the cards, a card a set with its close-up as SVG, cautions, what to load.
//           Ticks of holes stay while the page is open.
// Width:    readable at 360 px without sideways scrolling; light or dark as the phone is.
// Size:     about 6 kB a set.
// Stop:     nothing comes back.
#pragma once

#include "app/sheets/sheet_contents.h"

namespace plugside {

[[nodiscard]] std::optional<QString> phone_page(const SheetInput& input, const SheetContents& contents,
                                                const Progress& progress = {});

}  // namespace plugside
