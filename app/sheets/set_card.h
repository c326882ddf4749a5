// One set in words, for its card. See sheet_contents.h; in the language spoken on this thread.
#pragma once

#include "app/sheets/sheet_contents.h"

namespace plugside {

[[nodiscard]] SetCard set_card(const SheetInput& input, const LocalFrame& frame, std::size_t set);

// Finer than a tape's whole inches and centimetres: quarters of an inch, millimetres; what a row of holes is laid off with.
[[nodiscard]] QString fine_reading(Metres length, LengthUnits units);

// Why a caution is given, with its source.
[[nodiscard]] QString reason_words(const Caution& caution);
// "3", "3 and 7", "3, 7 and 12".
[[nodiscard]] QString listed(const QStringList& names);

[[nodiscard]] CardCaution card_caution(const Caution& caution);

}  // namespace plugside
