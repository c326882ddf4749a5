#include "app/canvas/palette.h"

#include <algorithm>
#include <cmath>

namespace plugside {

namespace {

MapStyle light_style() {
    MapStyle style;
    style.theme = Theme::light;
    style.paper = QColor(0xF7F4EB);
    style.field = QColor(0xE9EBD6);
    style.rail = QColor(0xEFEADC);
    style.slip = QColor(0xFFFDF6);
    style.ink = QColor(0x22261F);
    style.quiet_ink = QColor(0x615F52);
    style.hairline = QColor(0xCFC8B6);
    style.soil = QColor(0x4A2F1B);
    style.dry_soil = QColor(0xB98F63);
    style.unread_soil = QColor(0x85603F);
    style.run = QColor(0x0B5F66);
    style.act = QColor(0xA3195B);
    style.on_act = QColor(0xFFFFFF);
    style.caution_ground = QColor(0xFBEFD5);
    style.caution_ink = QColor(0x5C3C00);
    style.stop_ground = QColor(0xF8DEDA);
    style.stop_ink = QColor(0x7A1212);
    style.barrier = QColor(0x3C4A63);
    style.keep_clear = QColor(0x7A1212);
    style.unwalked = QColor(0x7E7D73);
    // apart from each other also for eyes without one of the three cones: the mauve is darker than the blue
    style.tints = {QColor(0xE9C46A), QColor(0x8CC5D5), QColor(0xA56FB4), QColor(0xB6CE9B)};
    return style;
}

MapStyle sunlight_style() {
    MapStyle style = light_style();
    style.theme = Theme::sunlight;
    style.paper = QColor(0xFFFFFF);
    style.field = QColor(0xFFFFFF);
    style.rail = QColor(0xFFFFFF);
    style.slip = QColor(0xFFFFFF);
    style.ink = QColor(0, 0, 0);
    style.quiet_ink = QColor(0x2B2B2B);
    style.hairline = QColor(0x6E6E6E);
    style.soil = QColor(0x2A1608);
    style.dry_soil = QColor(0xA87643);
    style.unread_soil = QColor(0x6E4522);
    style.run = QColor(0x004147);
    style.act = QColor(0x8A0045);
    style.caution_ground = QColor(0xFFF1CC);
    style.caution_ink = QColor(0x3D2700);
    style.stop_ground = QColor(0xFFD9D4);
    style.stop_ink = QColor(0x5E0000);
    style.barrier = QColor(0x111C33);
    style.keep_clear = QColor(0x5E0000);
    style.unwalked = QColor(0x5A5A5A);
    style.tint_share = 0.42;
    style.line_factor = 1.5;
    style.text_px = 16;
    return style;
}

double linear_channel(double value) { return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4); }

double luminance(const QColor& colour) {
    return 0.2126 * linear_channel(colour.redF()) + 0.7152 * linear_channel(colour.greenF()) +
           0.0722 * linear_channel(colour.blueF());
}

}  // namespace

QColor MapStyle::edge() const { return mixed(hairline, quiet_ink, 0.66); }
QColor MapStyle::faint() const { return mixed(hairline, quiet_ink, 0.6); }
QColor MapStyle::picked() const { return mixed(slip, act, 0.14); }
QColor MapStyle::drawing() const { return mixed(slip, rail, 0.85); }
QColor MapStyle::facts() const { return mixed(slip, rail, 0.6); }
QColor MapStyle::read() const { return mixed(slip, run, 0.16); }
QColor MapStyle::tinted(std::size_t tint) const { return mixed(field, tints.at(tint), tint_share); }
QColor MapStyle::tint_edge(std::size_t tint) const { return mixed(tints.at(tint), ink, 0.5); }
QColor MapStyle::kept_clear() const { return mixed(field, stop_ground, 0.6); }
double MapStyle::band_share() const { return theme == Theme::light ? 0.20 : 0.24; }

int MapStyle::text(int larger) const { return letters(text_px + larger); }

int MapStyle::letters(int px) const { return static_cast<int>(std::lround(px * text_share)); }

const MapStyle& style_of(Theme theme) {
    static const MapStyle light = light_style();
    static const MapStyle sunlight = sunlight_style();
    return theme == Theme::light ? light : sunlight;
}

double contrast_ratio(const QColor& a, const QColor& b) {
    const double first = luminance(a);
    const double second = luminance(b);
    return (std::max(first, second) + 0.05) / (std::min(first, second) + 0.05);
}

QColor mixed(const QColor& under, const QColor& over, double share) {
    const auto blend = [share](int below, int above) {
        return static_cast<int>(std::lround(below * (1.0 - share) + above * share));
    };
    return QColor(blend(under.red(), over.red()), blend(under.green(), over.green()), blend(under.blue(), over.blue()));
}

}  // namespace plugside
