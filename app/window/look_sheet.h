// The look of everything in the window that is not drawn by hand, from the same colours as the map.
//
// Labels carry a role: "title" 18 px, "chance" 28 px, "heading", "body", "quiet", "small", "stop".
#pragma once

#include <QLabel>
#include <QString>

#include "app/canvas/palette.h"

namespace plugside {

[[nodiscard]] QString look_sheet(const MapStyle& style);

// A label in that role that wraps its words; the text can be selected with the mouse.
[[nodiscard]] QLabel* label_in_role(const char* role, QWidget* parent);

// `one` for a count of one, else `many`; %1 in either is the count.
[[nodiscard]] QString counted(long long count, const QString& one, const QString& many);

}  // namespace plugside
