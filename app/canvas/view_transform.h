// Which piece of the field is seen, and how places on it become places on the screen.
//
// Convention: the bearing `up` points up the screen, north unless the map was turned. Screen places are pixels from the
//         view's upper left corner, y downwards; a quarter turn clockwise on the ground is a quarter turn clockwise on the
//         screen. `on_screen`, `painter_rotation_degrees` and `bearing_of_screen_step` are the only places where a bearing
//         and a screen angle meet.
// Range:  0.002 to 500 pixels a metre; zooming stops there.
// Guarantee: to_local(to_screen(p)) is p up to rounding; zooming leaves the ground under the cursor where it is.
// Cost:   O(1).
#pragma once

#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QTransform>
#include <optional>

#include "core/geometry/point.h"
#include "core/units/bearing.h"
#include "core/units/metres.h"

namespace plugside {

// An upright box on the ground that grows with every place added; empty at first.
class GroundBox {
public:
    void add(LocalPoint place);
    [[nodiscard]] bool empty() const { return empty_; }
    [[nodiscard]] LocalPoint middle() const { return midpoint(low_, high_); }
    [[nodiscard]] Metres width() const { return Metres::of(high_.east_m - low_.east_m); }
    [[nodiscard]] Metres height() const { return Metres::of(high_.north_m - low_.north_m); }
    [[nodiscard]] LocalPoint low() const { return low_; }
    [[nodiscard]] LocalPoint high() const { return high_; }
    // Grown by `by` on every side; an empty box stays empty.
    [[nodiscard]] GroundBox grown(Metres by) const;
    [[nodiscard]] bool meets(const GroundBox& other) const;

private:
    LocalPoint low_;
    LocalPoint high_;
    bool empty_ = true;
};

class ViewTransform {
public:
    ViewTransform() = default;
    ViewTransform(LocalPoint centre, double pixels_per_metre, QSizeF size, double up_degrees = 0.0);
    // All of the box with a margin; an empty box or a single place shows 30 m about it.
    [[nodiscard]] static ViewTransform fitting(const GroundBox& box, QSizeF size, double margin_px, double up_degrees = 0.0);

    [[nodiscard]] QPointF to_screen(LocalPoint place) const;
    [[nodiscard]] LocalPoint to_local(QPointF pixel) const;
    [[nodiscard]] double pixels(Metres length) const { return length.value() * pixels_per_metre_; }
    [[nodiscard]] Metres ground_length(double pixels) const { return Metres::of(pixels / pixels_per_metre_); }
    [[nodiscard]] double pixels_per_metre() const { return pixels_per_metre_; }
    [[nodiscard]] QSizeF size() const { return size_; }
    [[nodiscard]] QRectF screen() const { return {QPointF(0.0, 0.0), size_}; }

    [[nodiscard]] ViewTransform zoomed(double factor, QPointF about) const;
    [[nodiscard]] ViewTransform panned(QPointF by_pixels) const;
    [[nodiscard]] ViewTransform centred_on(LocalPoint place) const { return {place, pixels_per_metre_, size_, up_degrees_}; }
    // The same ground in the middle of a view of another size.
    [[nodiscard]] ViewTransform resized(QSizeF size) const { return {centre_, pixels_per_metre_, size, up_degrees_}; }
    // The same ground in the middle, with another bearing up.
    [[nodiscard]] ViewTransform turned_to(double up_degrees) const { return {centre_, pixels_per_metre_, size_, up_degrees}; }
    [[nodiscard]] double up_degrees() const { return up_degrees_; }
    // The upright box about all ground that is seen, and `beyond_px` more on every side.
    [[nodiscard]] GroundBox ground(double beyond_px = 0.0) const;
    // Lays a picture that was drawn under `drawn` where its ground is seen now.
    [[nodiscard]] QTransform placing(const ViewTransform& drawn) const;

    // Where a bearing points on the screen, clockwise from straight up.
    [[nodiscard]] Bearing on_screen(Bearing bearing) const { return bearing.turned(-up_degrees_); }
    // How far a painter has to turn a shape that points up the screen so that it points to `on_screen`.
    [[nodiscard]] static double painter_rotation_degrees(Bearing on_screen) { return on_screen.degrees(); }
    // The bearing of a step on the screen; nothing for a step of no length.
    [[nodiscard]] std::optional<Bearing> bearing_of_screen_step(QPointF step) const;

    friend bool operator==(const ViewTransform&, const ViewTransform&) = default;

private:
    LocalPoint centre_;
    double pixels_per_metre_ = 4.0;
    QSizeF size_{800.0, 600.0};
    double up_degrees_ = 0.0;  // 0..360
    double cos_up_ = 1.0;
    double sin_up_ = 0.0;
};

}  // namespace plugside
