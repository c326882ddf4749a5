// The place of one set on paper, to a round scale, as a person sees it who stands at the plug and looks along the ladder's axis: plug at the
// bottom, axis up, right is right.
//
// Scales:  1:8, 1:12 (an inch on a ruler is a foot), 1:16, 1:24, ... where the tape shows feet, else 1:5, 1:10, 1:15, 1:20, ...: the
//          largest that has room.
// Plug side: everything is to scale, from the plug to the last rung.
// Between:  the ladder is to scale. Where the way to a plug has no room it is broken and says so by a zigzag; then the whole tape stands
//          beside it to a scale of its own, with the place where the row lies.
// Order of the tape's readings, rungs and words follows app/stages/close_up.
// Cost:    O(rungs).
#pragma once

#include "app/sheets/figure.h"
#include "app/stages/close_up_drawing.h"

namespace plugside {

struct CloseUpFigure {
    Figure figure;
    double scale = 10.0;               // the ladder's: 1 to this
    bool broken = false;               // the way from the first plug to the row is shortened
    std::optional<double> tape_scale;  // of the tape beside it; between two mounds only
};

[[nodiscard]] CloseUpFigure close_up_figure(const CloseUpScene& scene, LengthUnits units, QSizeF size_mm);

}  // namespace plugside
