// A mound on paper: the fan of the map's glyph in black and white, turned on the sheet clockwise from straight up.
//
// Freshness: fresh a pale fan with a heavy rim, older a white one, crushed or without a bearing a disc with a broken rim.
// Plug:      a white dot with a black rim, plug_radius_mm wide.
#pragma once

#include "app/sheets/figure.h"
#include "core/survey/mound.h"

namespace plugside {

inline constexpr double plug_radius_mm = 1.1;

// Where a turn clockwise from straight up points on a sheet.
[[nodiscard]] QPointF on_sheet(double turn_degrees);

// `turn_degrees`: nothing for a mark without a fan. `reach_mm`: from the plug to the fan's far edge; a reach under 5 mm is drawn without the plug.
void add_mound(Figure& figure, QPointF plug, std::optional<double> turn_degrees, Freshness freshness, double reach_mm);

}  // namespace plugside
