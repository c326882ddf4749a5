// A figure on a painter, and as a piece of SVG.
//
// paint_figure:  `dots_per_mm` of the paint device; words at their own size in points, whatever the device's resolution.
// figure_svg:    one <svg> element as wide as its place, without references to anything outside of it. Inks are classes k, d, p, w for lines
//                and K, D, P, W for areas and words, so that the page decides what is dark and what is light. `title` is what it is called for
//                who cannot see it. Places are rounded to a hundredth of a millimetre.
// Cost: linear in the shapes.
#pragma once

#include <QPainter>

#include "app/sheets/figure.h"

namespace plugside {

void paint_figure(QPainter& painter, const Figure& figure, double dots_per_mm);
[[nodiscard]] QString figure_svg(const Figure& figure, const QString& title);

}  // namespace plugside
