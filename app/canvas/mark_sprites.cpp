#include "app/canvas/mark_sprites.h"

#include <cmath>

#include "app/canvas/mound_glyph.h"

namespace plugside {

namespace {

constexpr int bearings = 72;
constexpr double bearing_step = 360.0 / bearings;

int step_of(const Mound& mound) { return static_cast<int>(std::lround(mound.fan->degrees() / bearing_step)) % bearings; }

// One number for all marks that look alike.
int look_of(const Mound& mound) {
    const int shape = mound.fan && mound.freshness != Freshness::crushed && is_gopher_sign(mound.kind) ? 1 + step_of(mound) : 0;
    return (shape * 16 + static_cast<int>(mound.kind)) * 8 + static_cast<int>(mound.freshness);
}

}  // namespace

MarkSprites::MarkSprites(double reach_px, const MapStyle& style, double device_pixel_ratio)
    : reach_px_(reach_px),
      style_(style),
      ratio_(device_pixel_ratio),
      half_px_(static_cast<int>(std::ceil(std::max(1.1 * reach_px, 8.0))) + 2) {}

QImage MarkSprites::made(const Mound& like) const {
    const int side = static_cast<int>(std::ceil(2 * half_px_ * ratio_));
    QImage image(side, side, QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(ratio_);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    draw_mark(painter, like, QPointF(half_px_, half_px_), reach_px_, style_);
    return image;
}

void MarkSprites::draw(QPainter& painter, const Mound& mound, QPointF at) {
    auto [look, is_new] = looks_.try_emplace(look_of(mound));
    if (is_new) {
        Mound like = mound;
        if (like.fan) like.fan = Bearing::degrees(step_of(mound) * bearing_step);
        look->second = made(like);
    }
    const auto snapped = [&](double pixel) { return std::round((pixel - half_px_) * ratio_) / ratio_; };
    painter.drawImage(QPointF(snapped(at.x()), snapped(at.y())), look->second);
}

}  // namespace plugside
