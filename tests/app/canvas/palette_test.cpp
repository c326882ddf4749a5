#include "app/canvas/palette.h"

#include <QFontDatabase>
#include <vector>

#include "tests/app/application.h"

// The font library keeps 288 bytes to the program's end; a leak of ours would not have it in its trace.
extern "C" const char* __lsan_default_suppressions();
extern "C" const char* __lsan_default_suppressions() { return "leak:libfontconfig"; }

namespace plugside {
namespace {

TEST_F(OnScreen, AFontFamilyIsThere) {
    // without one every word of the window is a row of empty boxes
    EXPECT_FALSE(QFontDatabase::families().isEmpty());
}

// WCAG 2.1, definition of contrast ratio: black on white is 21, a colour on itself 1 [memory].
TEST(Palette, ContrastIsMeasuredAsPublished) {
    EXPECT_NEAR(contrast_ratio(Qt::black, Qt::white), 21.0, 1e-9);
    EXPECT_NEAR(contrast_ratio(Qt::white, Qt::black), 21.0, 1e-9);
    EXPECT_NEAR(contrast_ratio(QColor(0x77, 0x77, 0x77), Qt::white), 4.48, 0.005);
}

// WCAG 2.1, success criteria 1.4.3 (text: 4.5) and 1.4.11 (drawn parts that carry meaning: 3) [memory].
TEST(Palette, TextAndSignsStandOutFromTheirGroundInBothThemes) {
    for (const Theme theme : {Theme::light, Theme::sunlight}) {
        const MapStyle& style = style_of(theme);
        struct Pair {
            QColor ink;
            QColor ground;
            double least;
        };
        std::vector<Pair> pairs{{style.ink, style.paper, 7.0},
                                {style.ink, style.slip, 7.0},
                                {style.ink, style.field, 7.0},
                                {style.quiet_ink, style.slip, 4.5},
                                {style.quiet_ink, style.rail, 4.5},
                                {style.quiet_ink, style.paper, 4.5},
                                {style.caution_ink, style.caution_ground, 4.5},
                                {style.stop_ink, style.stop_ground, 4.5},
                                {style.on_act, style.act, 4.5},
                                {style.act, style.slip, 4.5},
                                {style.run, style.field, 3.0},
                                {style.soil, style.field, 3.0},
                                {style.barrier, style.field, 3.0}};
        for (const QColor& tint : style.tints) {
            const QColor ground = mixed(style.field, tint, style.tint_share);
            pairs.push_back({style.run, ground, 3.0});
            pairs.push_back({style.soil, ground, 3.0});
            pairs.push_back({style.ink, ground, 7.0});
        }
        for (const Pair& pair : pairs)
            EXPECT_GE(contrast_ratio(pair.ink, pair.ground), pair.least)
                << pair.ink.name().toStdString() << " on " << pair.ground.name().toStdString();
    }
}

}  // namespace
}  // namespace plugside
