// The colours and weights of everything that is drawn: one set for the desk, one for reading in sunlight.
//
// light:    quiet paper; the animal's works dark and exact.
// sunlight: white ground, black ink, lines half as thick again, text larger.
// Text grows to twice its size by `text_share`, which a person chooses (WCAG 2.2, success criterion 1.4.4 [memory]).
// Colour is never the only sign: freshness also shows in the shape, a system in its letter, a decision in the flag.
#pragma once

#include <QColor>
#include <array>
#include <vector>

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
    int text_px = 13;          // plain text at 100 %
    double text_share = 1.0;   // 1 to 2: all text, and the room laid out for it, times this

    // Colours made of two others.
    [[nodiscard]] QColor edge() const;                       // about buttons and fields
    [[nodiscard]] QColor faint() const;                      // words of what cannot be pressed now
    [[nodiscard]] QColor picked() const;                     // ground of the row or column at hand
    [[nodiscard]] QColor drawing() const;                    // ground of close-ups and pictures of findings
    [[nodiscard]] QColor facts() const;                      // ground of a mark's facts
    [[nodiscard]] QColor read() const;                       // ground of words that were understood
    [[nodiscard]] QColor tinted(std::size_t tint) const;     // a system's ground in the field
    [[nodiscard]] QColor tint_edge(std::size_t tint) const;  // the dots about it
    [[nodiscard]] QColor kept_clear() const;                 // ground under the hatching
    [[nodiscard]] double band_share() const;                 // of the run's colour in its corridor
    // Pixels of a text that is `larger` pixels larger than plain text at 100 %.
    [[nodiscard]] int text(int larger = 0) const;
    // Pixels of a text that is `px` at 100 % in every theme.
    [[nodiscard]] int letters(int px) const;
    // Room that is laid out about text.
    [[nodiscard]] double room(double px) const { return px * text_share; }
    friend bool operator==(const MapStyle&, const MapStyle&) = default;
};

[[nodiscard]] const MapStyle& style_of(Theme theme);

// Two colours that meet on the screen, and what the one says on the other.
enum class PairUse {
    text,        // 4.5
    large_text,  // 24 px, or 19 px and bold: 3
    mark,        // a drawn part that tells something, the edge of what can be pressed: 3
    inactive,    // what cannot be pressed now: none
    ornament     // tells nothing that another sign does not tell too: none
};

struct ColourPair {
    const char* ink_name;
    QColor ink;
    const char* ground_name;
    QColor ground;
    PairUse use;
};

// Every pair in use. A colour that does not stand here fails tests/app/canvas/palette_test.cpp.
[[nodiscard]] std::vector<ColourPair> colour_pairs(const MapStyle& style);

// WCAG 2.2, success criteria 1.4.3 and 1.4.11 [memory].
[[nodiscard]] double least_contrast(PairUse use);

// The contrast of two opaque colours, 1..21. Source: WCAG 2.2, definitions of contrast ratio and relative luminance [memory].
// Degenerate: of a colour with itself 1.
[[nodiscard]] double contrast_ratio(const QColor& a, const QColor& b);

// `share` of `over` laid on `under`, as an opaque colour.
[[nodiscard]] QColor mixed(const QColor& under, const QColor& over, double share);

}  // namespace plugside
