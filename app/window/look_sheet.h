// The look of everything in the window that is not drawn by hand, from the same colours as the map.
//
// Labels carry a role: "title" 18 px, "chance" 28 px, "heading", "body", "quiet", "stop".
#pragma once

#include <QLabel>
#include <QString>

#include "app/canvas/palette.h"

namespace plugside {

[[nodiscard]] QString look_sheet(const MapStyle& style);

// A label in that role that wraps its words; the text can be selected with the mouse.
[[nodiscard]] QLabel* label_in_role(const char* role, QWidget* parent);

}  // namespace plugside
