// The outline of a mound's fan, as map and paper draw it.
#pragma once

#include <QPainterPath>

namespace plugside {

// In units of its reach, plug at the origin, thrown up the screen: narrow at the plug, lobed at the far edge.
[[nodiscard]] const QPainterPath& fan_shape();

}  // namespace plugside
