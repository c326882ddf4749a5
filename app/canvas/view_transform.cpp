#include "app/canvas/view_transform.h"

#include <algorithm>
#include <cmath>

namespace plugside {

namespace {

constexpr double least_scale = 0.002;
constexpr double greatest_scale = 500.0;
constexpr double least_span_m = 30.0;

}  // namespace

void GroundBox::add(LocalPoint place) {
    if (empty_) {
        low_ = high_ = place;
        empty_ = false;
        return;
    }
    low_ = {std::min(low_.east_m, place.east_m), std::min(low_.north_m, place.north_m)};
    high_ = {std::max(high_.east_m, place.east_m), std::max(high_.north_m, place.north_m)};
}

GroundBox GroundBox::grown(Metres by) const {
    GroundBox box = *this;
    if (empty_) return box;
    const LocalVector step{by.value(), by.value()};
    box.low_ = low_ - step;
    box.high_ = high_ + step;
    return box;
}

bool GroundBox::meets(const GroundBox& other) const {
    if (empty_ || other.empty_) return false;
    return low_.east_m <= other.high_.east_m && other.low_.east_m <= high_.east_m && low_.north_m <= other.high_.north_m &&
           other.low_.north_m <= high_.north_m;
}

ViewTransform::ViewTransform(LocalPoint centre, double pixels_per_metre, QSizeF size, double up_degrees)
    : centre_(centre), pixels_per_metre_(std::clamp(pixels_per_metre, least_scale, greatest_scale)), size_(size) {
    if (up_degrees == 0.0) return;  // exactly upright
    up_degrees_ = Bearing::degrees(up_degrees).degrees();
    const LocalVector up = Bearing::degrees(up_degrees).unit();
    cos_up_ = up.north_m;
    sin_up_ = up.east_m;
}

ViewTransform ViewTransform::fitting(const GroundBox& box, QSizeF size, double margin_px, double up_degrees) {
    const ViewTransform turned(box.middle(), 1.0, size, up_degrees);
    const double width_px = std::max(size.width() - 2.0 * margin_px, 10.0);
    const double height_px = std::max(size.height() - 2.0 * margin_px, 10.0);
    const double east_m = box.empty() ? 0.0 : box.width().value();
    const double north_m = box.empty() ? 0.0 : box.height().value();
    const double width_m = std::abs(turned.cos_up_) * east_m + std::abs(turned.sin_up_) * north_m;
    const double height_m = std::abs(turned.sin_up_) * east_m + std::abs(turned.cos_up_) * north_m;
    if (std::max(width_m, height_m) < 1.0)
        return {box.middle(), std::min(width_px, height_px) / least_span_m, size, up_degrees};
    const double scale = std::min(width_px / std::max(width_m, 1.0), height_px / std::max(height_m, 1.0));
    return {box.middle(), scale, size, up_degrees};
}

QPointF ViewTransform::to_screen(LocalPoint place) const {
    const LocalVector away = (place - centre_) * pixels_per_metre_;
    return {0.5 * size_.width() + (cos_up_ * away.east_m - sin_up_ * away.north_m),
            0.5 * size_.height() - (sin_up_ * away.east_m + cos_up_ * away.north_m)};
}

LocalPoint ViewTransform::to_local(QPointF pixel) const {
    const double right = (pixel.x() - 0.5 * size_.width()) / pixels_per_metre_;
    const double up = (0.5 * size_.height() - pixel.y()) / pixels_per_metre_;
    return centre_ + LocalVector{cos_up_ * right + sin_up_ * up, cos_up_ * up - sin_up_ * right};
}

ViewTransform ViewTransform::zoomed(double factor, QPointF about) const {
    const LocalPoint held = to_local(about);
    const ViewTransform scaled(centre_, pixels_per_metre_ * factor, size_, up_degrees_);
    return scaled.centred_on(centre_ - (scaled.to_local(about) - held));
}

ViewTransform ViewTransform::panned(QPointF by_pixels) const {
    return centred_on(to_local(screen().center() - by_pixels));
}

GroundBox ViewTransform::ground(double beyond_px) const {
    const QRectF wide = screen().adjusted(-beyond_px, -beyond_px, beyond_px, beyond_px);
    GroundBox box;
    for (const QPointF corner : {wide.topLeft(), wide.topRight(), wide.bottomLeft(), wide.bottomRight()})
        box.add(to_local(corner));
    return box;
}

QTransform ViewTransform::placing(const ViewTransform& drawn) const {
    const QPointF corner = to_screen(drawn.to_local({0.0, 0.0}));
    const QPointF right = to_screen(drawn.to_local({drawn.size_.width(), 0.0}));
    const QPointF down = to_screen(drawn.to_local({0.0, drawn.size_.height()}));
    if (up_degrees_ == drawn.up_degrees_) {
        const double factor = pixels_per_metre_ / drawn.pixels_per_metre_;
        return QTransform(factor, 0.0, 0.0, factor, corner.x(), corner.y());
    }
    const QPointF along = (right - corner) / drawn.size_.width();
    const QPointF below = (down - corner) / drawn.size_.height();
    return QTransform(along.x(), along.y(), below.x(), below.y(), corner.x(), corner.y());
}

std::optional<Bearing> ViewTransform::bearing_of_screen_step(QPointF step) const {
    const auto upright = Bearing::along({step.x(), -step.y()});
    if (!upright) return std::nullopt;
    return upright->turned(up_degrees_);
}

}  // namespace plugside
