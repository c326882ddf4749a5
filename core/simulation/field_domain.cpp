#include "core/simulation/field_domain.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/units/bearing.h"

namespace plugside {

FieldDomain::FieldDomain(const DomainOptions& options, Random& random) {
    axis_ = Bearing::degrees(random.uniform(0.0, 360.0)).unit();
    half_short_m_ = 0.5 * std::sqrt(options.area_m2 / options.aspect);
    half_long_m_ = half_short_m_ * options.aspect;
    for (const auto& [along, across] : {std::pair{-1.0, -1.0}, {1.0, -1.0}, {1.0, 1.0}, {-1.0, 1.0}}) {
        const double jitter_along = random.uniform(-0.06, 0.06) * half_short_m_;
        const double jitter_across = random.uniform(-0.06, 0.06) * half_short_m_;
        boundary_.outer.vertices.push_back(at(along * half_long_m_ + jitter_along, across * half_short_m_ + jitter_across));
    }
    ditch_offset_m_ = random.uniform(-0.35, 0.35) * half_short_m_;
    ditch_swing_m_ = random.uniform(0.02, 0.08) * half_short_m_;
    ditch_wave_m_ = std::max(20.0, random.uniform(0.6, 1.4) * half_long_m_);
    ditch_phase_ = random.uniform(0.0, 2.0 * std::numbers::pi);
    if (options.with_ditch) {
        ditch_.emplace();
        const double end = half_long_m_ * 1.05 + 2.0;
        const int pieces = std::max(8, static_cast<int>(2.0 * end / 5.0));
        for (int i = 0; i <= pieces; ++i) {
            const double along = -end + 2.0 * end * i / pieces;
            ditch_->vertices.push_back(at(along, ditch_across_m(along)));
        }
    }
    if (options.with_house) {
        const double side = ditch_offset_m_ > 0.0 ? -1.0 : 1.0;  // on the wider side of the ditch
        const double along = (random.chance(0.5) ? 1.0 : -1.0) * (half_long_m_ * 0.94 - 16.0);
        const double across = side * (half_short_m_ * 0.94 - 14.0);
        house_.emplace();
        for (const auto& [u, v] : {std::pair{-6.0, -4.5}, {6.0, -4.5}, {6.0, 4.5}, {-6.0, 4.5}})
            house_->outer.vertices.push_back(at(along + u, across + v));
    }
}

LocalPoint FieldDomain::at(double along_m, double across_m) const {
    return LocalPoint{} + axis_ * along_m + turned_right(axis_) * across_m;
}

double FieldDomain::ditch_across_m(double along_m) const {
    return ditch_offset_m_ + ditch_swing_m_ * std::sin(2.0 * std::numbers::pi * along_m / ditch_wave_m_ + ditch_phase_);
}

bool FieldDomain::open(LocalPoint place) const {
    const auto& v = boundary_.outer.vertices;
    for (std::size_t i = 0; i < v.size(); ++i) {  // convex, and listed clockwise: inside lies to the right of every side
        const LocalVector side = v[(i + 1) % v.size()] - v[i];
        if (cross(side, place - v[i]) > -edge_berth_m * side.length_m()) return false;
    }
    if (ditch_) {
        const double along = dot(place - LocalPoint{}, axis_);
        const double across = dot(place - LocalPoint{}, turned_right(axis_));
        const bool near = std::abs(across - ditch_across_m(along)) < 3.0 * ditch_berth_m + ditch_swing_m_;
        if (near && distance(place, *ditch_)->value() < ditch_berth_m) return false;
    }
    return !house_ || distance(place, *house_).value() >= house_berth_m;
}

std::optional<LocalPoint> FieldDomain::open_place(Random& random) const {
    for (int attempt = 0; attempt < 200; ++attempt) {
        const LocalPoint place = at(random.uniform(-1.0, 1.0) * half_long_m_, random.uniform(-1.0, 1.0) * half_short_m_);
        if (open(place)) return place;
    }
    return std::nullopt;
}

}  // namespace plugside
