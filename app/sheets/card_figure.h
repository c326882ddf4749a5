// The card of one set as a figure of its own: what stands on it stays together.
//
// Width as told, height as needed. `brief`: the method's steps are named by their page instead of told, for a card that would take more than
// half a page.
#pragma once

#include "app/sheets/figure.h"
#include "app/sheets/lettering.h"
#include "app/sheets/sheet_contents.h"

namespace plugside {

struct CardForm {
    double width_mm = 190.0;
    LengthUnits units = LengthUnits::feet_and_inches;
    bool brief = false;
};

[[nodiscard]] Figure card_figure(const SetCard& card, const CardForm& form, const LetteringMeasure& measure);

// A bar for stop, a triangle for hold back, a dot for mind: as in the window.
void add_caution_sign(Figure& figure, QPointF middle, CautionWeight weight);

// The height of a caution with its sign, and writing it; returns the height.
double write_caution(Figure& figure, QPointF top_left, const CardCaution& caution, double width_mm,
                     const LetteringMeasure& measure);

}  // namespace plugside
