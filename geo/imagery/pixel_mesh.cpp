#include "geo/imagery/pixel_mesh.h"

#include <algorithm>
#include <cmath>

namespace plugside {

namespace {

constexpr int first_step = 32;
constexpr double most_error = 0.1;

LocalPoint place_of(LocalPoint upper_left, double resolution_m, double column, double row) {
    return upper_left + LocalVector{column * resolution_m, -row * resolution_m};
}

}  // namespace

PixelMesh::PixelMesh(const GroundToPixel& way, LocalPoint upper_left, double resolution_m, int size) {
    for (int step = std::min(first_step, size);; step = std::max(1, step / 4)) {
        lay(way, upper_left, resolution_m, size, step);
        measure();
        const double larger = std::max({1.0, columns_per_pixel_, rows_per_pixel_});
        if (step == 1 || !reach_ || worst_error(way, upper_left, resolution_m) < most_error * larger) break;
    }
}

void PixelMesh::lay(const GroundToPixel& way, LocalPoint upper_left, double resolution_m, int size, int step) {
    step_ = step;
    across_ = (size + step - 1) / step + 1;
    std::vector<LocalPoint> places;
    places.reserve(static_cast<std::size_t>(across_) * static_cast<std::size_t>(across_));
    for (int row = 0; row < across_; ++row)
        for (int column = 0; column < across_; ++column)
            places.push_back(place_of(upper_left, resolution_m, column * step, row * step));
    nodes_ = way.pixels(places);
}

void PixelMesh::measure() {
    reach_.reset();
    double columns = HUGE_VAL;
    double rows = HUGE_VAL;
    for (int row = 0; row < across_; ++row)
        for (int column = 0; column < across_; ++column) {
            const auto& here = node(column, row);
            if (!here) continue;
            if (!reach_) reach_ = Reach{*here, *here};
            reach_->low = {std::min(reach_->low.column, here->column), std::min(reach_->low.row, here->row)};
            reach_->high = {std::max(reach_->high.column, here->column), std::max(reach_->high.row, here->row)};
            if (column + 1 == across_ || row + 1 == across_) continue;
            const auto& right = node(column + 1, row);
            const auto& below = node(column, row + 1);
            if (!right || !below) continue;
            columns = std::min(columns, std::hypot(right->column - here->column, below->column - here->column) / step_);
            rows = std::min(rows, std::hypot(right->row - here->row, below->row - here->row) / step_);
        }
    columns_per_pixel_ = std::isfinite(columns) ? columns : 1.0;
    rows_per_pixel_ = std::isfinite(rows) ? rows : 1.0;
}

double PixelMesh::worst_error(const GroundToPixel& way, LocalPoint upper_left, double resolution_m) const {
    std::vector<LocalPoint> middles;
    std::vector<PicturePixel> told;
    for (int row = 0; row + 1 < across_; ++row)
        for (int column = 0; column + 1 < across_; ++column)
            if (const auto here = at((column + 0.5) * step_, (row + 0.5) * step_)) {
                told.push_back(*here);
                middles.push_back(place_of(upper_left, resolution_m, (column + 0.5) * step_, (row + 0.5) * step_));
            }
    const auto exact = way.pixels(middles);
    double worst = 0.0;
    for (std::size_t i = 0; i < told.size(); ++i)
        if (exact[i])
            worst = std::max({worst, std::abs(exact[i]->column - told[i].column), std::abs(exact[i]->row - told[i].row)});
    return worst;
}

std::optional<PicturePixel> PixelMesh::at(double column, double row) const {
    const double u = column / step_;
    const double v = row / step_;
    const int left = std::clamp(static_cast<int>(u), 0, across_ - 2);
    const int top = std::clamp(static_cast<int>(v), 0, across_ - 2);
    const auto& a = node(left, top);
    const auto& b = node(left + 1, top);
    const auto& c = node(left, top + 1);
    const auto& d = node(left + 1, top + 1);
    if (!a || !b || !c || !d) return std::nullopt;
    const double x = u - left;
    const double y = v - top;
    const auto between = [&](double p, double q, double r, double s) {
        return (1.0 - y) * ((1.0 - x) * p + x * q) + y * ((1.0 - x) * r + x * s);
    };
    return PicturePixel{between(a->column, b->column, c->column, d->column), between(a->row, b->row, c->row, d->row)};
}

}  // namespace plugside
