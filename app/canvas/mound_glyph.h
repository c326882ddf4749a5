// How one mark of the walk is drawn: a small fan of soil thrown from its plug, turned to its bearing.
//
// No bearing: a disc without a plug. Freshness: fresh soil dark, older light, age not noted between, crushed pale with a
// broken rim. Another digger's sign: its initial in a thin ring.
// Size: `reach_px`, from the plug to the fan's far edge. Cost: O(1).
#pragma once

#include <QPainter>
#include <QPointF>
#include <QString>

#include "app/canvas/palette.h"
#include "core/survey/mound.h"

namespace plugside {

// Pixels from plug to fan's edge at a scale: never too small to tell the bearing, the mound's own size when near. A field
// with marks closer than that on the screen is drawn with smaller ones.
[[nodiscard]] double mound_reach_px(double pixels_per_metre);

[[nodiscard]] QColor soil_colour(Freshness freshness, const MapStyle& style);

void draw_fan(QPainter& painter, QPointF plug, Bearing fan, Freshness freshness, double reach_px, const MapStyle& style);
void draw_mark(QPainter& painter, const Mound& mound, QPointF at, double reach_px, const MapStyle& style);

// One letter for another digger: M mole, S ground squirrel, V vole, ? anything else.
[[nodiscard]] QString digger_initial(SignKind kind);

// "fresh", "older", ... as read on the screen.
[[nodiscard]] QString freshness_word(Freshness freshness);
[[nodiscard]] QString kind_word(SignKind kind);

}  // namespace plugside
