// One caution where the decision is made: its sign, its word, its sentence, why, and where it comes from.
//
// Signs: stop a bar, hold back a triangle, mind a dot; each with its word, so that neither colour nor shape is the only
// sign.
#pragma once

#include <QFrame>

#include "app/canvas/palette.h"
#include "core/sets/cautions.h"

namespace plugside {

class CautionView : public QFrame {
    Q_OBJECT

public:
    CautionView(const Caution& caution, const MapStyle& style, QWidget* parent = nullptr);
    // Another one; its words are dressed with the page that it stands on.
    void use(const MapStyle& style);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    CautionWeight weight_;
    MapStyle style_;
};

// "stop", "hold back", "mind".
[[nodiscard]] QString weight_word(CautionWeight weight);

}  // namespace plugside
