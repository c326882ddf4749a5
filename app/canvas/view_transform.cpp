#include "app/canvas/view_transform.h"

#include <algorithm>

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

ViewTransform::ViewTransform(LocalPoint centre, double pixels_per_metre, QSizeF size)
    : centre_(centre), pixels_per_metre_(std::clamp(pixels_per_metre, least_scale, greatest_scale)), size_(size) {}

ViewTransform ViewTransform::fitting(const GroundBox& box, QSizeF size, double margin_px) {
    const double width_px = std::max(size.width() - 2.0 * margin_px, 10.0);
    const double height_px = std::max(size.height() - 2.0 * margin_px, 10.0);
    const double width_m = box.empty() ? 0.0 : box.width().value();
    const double height_m = box.empty() ? 0.0 : box.height().value();
    if (std::max(width_m, height_m) < 1.0) return {box.middle(), std::min(width_px, height_px) / least_span_m, size};
    const double scale = std::min(width_px / std::max(width_m, 1.0), height_px / std::max(height_m, 1.0));
    return {box.middle(), scale, size};
}

QPointF ViewTransform::to_screen(LocalPoint place) const {
    return {0.5 * size_.width() + (place.east_m - centre_.east_m) * pixels_per_metre_,
            0.5 * size_.height() - (place.north_m - centre_.north_m) * pixels_per_metre_};
}

LocalPoint ViewTransform::to_local(QPointF pixel) const {
    return {centre_.east_m + (pixel.x() - 0.5 * size_.width()) / pixels_per_metre_,
            centre_.north_m - (pixel.y() - 0.5 * size_.height()) / pixels_per_metre_};
}

ViewTransform ViewTransform::zoomed(double factor, QPointF about) const {
    const LocalPoint held = to_local(about);
    const ViewTransform scaled(centre_, pixels_per_metre_ * factor, size_);
    const LocalVector drift = scaled.to_local(about) - held;
    return {centre_ - drift, scaled.pixels_per_metre_, size_};
}

ViewTransform ViewTransform::panned(QPointF by_pixels) const {
    return {{centre_.east_m - by_pixels.x() / pixels_per_metre_, centre_.north_m + by_pixels.y() / pixels_per_metre_},
            pixels_per_metre_,
            size_};
}

QTransform ViewTransform::placing(const ViewTransform& drawn) const {
    const double factor = pixels_per_metre_ / drawn.pixels_per_metre_;
    const QPointF corner = to_screen(drawn.to_local({0.0, 0.0}));
    return QTransform(factor, 0.0, 0.0, factor, corner.x(), corner.y());
}

std::optional<Bearing> ViewTransform::bearing_of_screen_step(QPointF step) { return Bearing::along({step.x(), -step.y()}); }

}  // namespace plugside
