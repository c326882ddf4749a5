// Small drawings of what can be seen at a digger's work, for the key that asks about it. Our own drawings: mounds from a
// little above, as a person stands before them; soil, grass, hole and ridge differ in line as well as in tint.
#pragma once

#include <QPainter>

#include "app/canvas/palette.h"
#include "core/mending/digger_key.h"

namespace plugside {

// Fills `place`, which is best half as high again as half its width.
void draw_digger_picture(QPainter& painter, const QRectF& place, DiggerPicture picture, const MapStyle& style);

}  // namespace plugside
