// The sizes of paper that field sheets are made for.
#pragma once

#include <QSizeF>

namespace plugside {

enum class Paper { letter, a4 };

// Millimetres: 8 1/2 x 11 in, and ISO 216.
[[nodiscard]] inline QSizeF size_mm(Paper paper) {
    return paper == Paper::letter ? QSizeF(215.9, 279.4) : QSizeF(210.0, 297.0);
}

}  // namespace plugside
