// The colours and weights of everything that is drawn: one set for the desk, one for reading in sunlight.
//
// light:    quiet paper; the animal's works dark and exact.
// sunlight: white ground, black ink, lines half as thick again, text larger.
// Colour is never the only sign: freshness also shows in the shape, a system in its letter, a decision in the flag.
#pragma once

#include <QColor>
#include <array>

namespace plugside {

enum class Theme { light, sunlight };

struct MapStyle {
    Theme theme = Theme::light;
    QColor paper;  // around the field, behind the top bar
    QColor field;  // inside the boundary
    QColor rail;
    QColor slip;
    QColor ink;
    QColor quiet_ink;
    QColor hairline;
    QColor soil;         // fresh
    QColor dry_soil;     // older
    QColor unread_soil;  // age not noted
    QColor run;
    QColor act;     // what a person decides on: flags, ladders, the step at hand
    QColor on_act;  // text on it
    QColor caution_ground;
    QColor caution_ink;
    QColor stop_ground;
    QColor stop_ink;
    QColor barrier;
    QColor keep_clear;
    QColor unwalked;
    std::array<QColor, 4> tints;  // of systems; drawn with tint_share
    double tint_share = 0.34;
    double line_factor = 1.0;  // lines times this
    int text_px = 13;
    friend bool operator==(const MapStyle&, const MapStyle&) = default;
};

[[nodiscard]] const MapStyle& style_of(Theme theme);

// The contrast of two opaque colours, 1..21. Source: WCAG 2.1, definition of contrast ratio and relative luminance [memory].
[[nodiscard]] double contrast_ratio(const QColor& a, const QColor& b);

// `share` of `over` laid on `under`, as an opaque colour.
[[nodiscard]] QColor mixed(const QColor& under, const QColor& over, double share);

}  // namespace plugside
