#include "core/simulation/seen_ground.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/simulation/random.h"

namespace plugside {

namespace {

constexpr double drill_rows_m = 0.6;
constexpr double swath_m = 7.2;
constexpr double furrows_m = 1.1;
constexpr double cell_m = 4.0;

constexpr SeenColour grass{0.37, 0.43, 0.21};
constexpr SeenColour clover{0.27, 0.39, 0.17};
constexpr SeenColour dry_grass{0.55, 0.52, 0.30};
constexpr SeenColour bare_soil{0.46, 0.38, 0.28};
constexpr SeenColour ploughed{0.37, 0.28, 0.20};
constexpr SeenColour stubble{0.66, 0.58, 0.38};
constexpr SeenColour rank_grass{0.26, 0.35, 0.15};
constexpr SeenColour gravel{0.66, 0.61, 0.53};
constexpr SeenColour fresh_soil{0.29, 0.19, 0.12};
constexpr SeenColour dried_soil{0.57, 0.46, 0.34};

double wave(double metres, double length_m) { return std::cos(2.0 * std::numbers::pi * metres / length_m); }

// 0 below `from`, 1 above `to`, smooth between.
double step(double value, double from, double to) {
    const double share = std::clamp((value - from) / (to - from), 0.0, 1.0);
    return share * share * (3.0 - 2.0 * share);
}

LocalVector unit_along(LocalVector v) {
    const double length = v.length_m();
    return length > 0.0 ? v * (1.0 / length) : LocalVector{1.0, 0.0};
}

}  // namespace

SeenColour blended(SeenColour under, SeenColour over, double share) {
    return {std::lerp(under.red, over.red, share), std::lerp(under.green, over.green, share),
            std::lerp(under.blue, over.blue, share)};
}

CropCover::CropCover(const Ground& ground, std::uint64_t seed)
    : boundary_(ground.boundary), rows_{1.0, 0.0}, noise_(seed * 7 + 1), patches_(seed * 7 + 2) {
    if (boundary_.empty() || boundary_.parts.front().outer.vertices.size() < 2) return;
    const auto& corners = boundary_.parts.front().outer.vertices;
    double longest = 0.0;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const LocalVector side = corners[(i + 1) % corners.size()] - corners[i];
        if (side.length_m() <= longest) continue;
        longest = side.length_m();
        rows_ = unit_along(side);
    }
    LocalVector sum;
    for (const LocalPoint corner : corners) sum = sum + (corner - LocalPoint{});
    middle_ = LocalPoint{} + sum * (1.0 / static_cast<double>(corners.size()));
}

SeenColour CropCover::meadow(LocalPoint place) const {
    const double across = dot(place - middle_, turned_right(rows_));
    const double along = dot(place - middle_, rows_);
    const double tuft = noise_.cloudy(place, 0.55);
    SeenColour colour = blended(grass, clover, step(patches_.cloudy(place, 11.0), 0.42, 0.62));
    colour = blended(colour, dry_grass, 0.75 * step(noise_.cloudy(place, 19.0), 0.54, 0.78));
    // rows wander a little, as a drill does, and are gaps of soil between plants
    const double wander = 0.12 * (noise_.value(LocalPoint{along, across}, 9.0) - 0.5);
    const double gap = step(wave(across + wander, drill_rows_m), 0.15, 0.9);
    colour = blended(colour, bare_soil, 0.45 * gap * (0.4 + tuft));
    // the seam between two swaths, and the wheels of the roller beside it
    const double in_swath = std::abs(std::remainder(across + wander, swath_m));
    colour = colour * (1.0 + 0.05 * wave(across, 2.0 * swath_m));
    const double wheel = step(0.22 - std::abs(in_swath - 0.9), 0.0, 0.14);
    colour = blended(colour, blended(bare_soil, dry_grass, 0.5), 0.42 * wheel * (0.4 + noise_.value(place, 3.0)));
    // bare patches with ragged edges
    const double bare = patches_.cloudy(place + LocalVector{301.0, 77.0}, 8.0) + 0.16 * (tuft - 0.5);
    colour = blended(colour, bare_soil * (0.88 + 0.24 * noise_.cloudy(place, 0.8)), 0.9 * step(bare, 0.685, 0.75));
    return colour * (0.72 + 0.56 * tuft);
}

SeenColour CropCover::around(LocalPoint place, double beyond_m) const {
    const double tuft = noise_.cloudy(place, 0.7);
    const double ragged = beyond_m + 0.9 * (noise_.cloudy(place, 2.5) - 0.5);
    const SeenColour verge = blended(rank_grass, dry_grass, 0.5 * noise_.cloudy(place, 4.0)) * (0.68 + 0.64 * tuft);
    const double across = dot(place - middle_, turned_right(rows_));
    const double along = dot(place - middle_, rows_);
    const bool beside = std::abs(across) * 1.5 > std::abs(along);
    SeenColour far;
    if (beside && across > 0.0) {  // ploughed in the same direction
        far = ploughed * (0.86 + 0.30 * tuft) * (1.0 + 0.17 * wave(across, furrows_m));
    } else if (beside) {  // stubble, cut across
        far = blended(stubble, bare_soil, 0.3 * noise_.cloudy(place, 6.0)) * (0.84 + 0.28 * tuft);
        far = far * (1.0 + 0.07 * wave(across, 0.9));
    } else {  // pasture
        far = blended(grass, dry_grass, noise_.cloudy(place, 7.0)) * (0.70 + 0.58 * tuft);
    }
    // a track with two ruts lies outside two of the sides
    const double off_middle = std::abs(ragged - 5.0);
    const bool track = !beside || across > 0.0;
    if (track && off_middle < 1.7) {
        const double rut = step(0.42 - std::abs(off_middle - 0.8), 0.0, 0.2);
        return blended(verge, gravel * (0.86 + 0.2 * tuft), 0.3 + 0.65 * rut);
    }
    return blended(verge, far, step(ragged, 2.2, 3.0));
}

SeenColour CropCover::at(LocalPoint place) const {
    if (boundary_.empty() || contains(boundary_, place)) return meadow(place);
    double beyond = distance(place, boundary_.parts.front()).value();
    return blended(meadow(place), around(place, beyond), step(beyond, 0.0, 0.5));
}

SoilHeaps::SoilHeaps(const SimulatedField& field, const SunLight& sun, std::uint64_t seed)
    : sun_(sun), noise_(seed * 7 + 3) {
    Random random(seed, 77);
    for (const TrueMound& mound : field.truth.mounds) {
        const Mound* seen = mound.seen_as ? &field.survey.mounds[*mound.seen_as] : nullptr;
        const bool crushed = seen ? seen->freshness == Freshness::crushed : random.chance(0.15);
        const bool older = seen ? seen->freshness == Freshness::older : random.chance(0.5);
        const double size = random.log_normal(1.0, 0.2);
        Heap heap{};
        heap.along = mound.fan.unit();
        heap.half_length_m = (crushed ? 0.50 : 0.42) * size;
        heap.half_width_m = heap.half_length_m * random.uniform(0.72, 0.95);
        heap.middle = mound.plug + heap.along * (0.72 * heap.half_length_m);
        heap.height_m = crushed ? 0.03 : 0.17 * size;
        heap.cover = crushed ? 0.75 : older ? 0.82 : 1.0;
        heap.paleness = crushed ? 0.85 : older ? random.uniform(0.6, 0.95) : random.uniform(0.0, 0.25);
        if (!crushed) heap.hole = mound.plug;
        add(heap);
    }
    for (const Mound& mark : field.survey.mounds) {
        if (is_gopher_sign(mark.kind)) continue;
        const bool mole = mark.kind == SignKind::mole;
        Heap heap{mark.plug, {1.0, 0.0}, mole ? 0.28 : 0.34, mole ? 0.28 : 0.22, mole ? 0.18 : 0.06, 0.95, 0.35, {}};
        if (mark.kind == SignKind::ground_squirrel) heap.hole = mark.plug;
        if (mark.kind == SignKind::vole) heap.half_length_m = heap.half_width_m = 0.13;
        add(heap);
    }
}

void SoilHeaps::add(Heap heap) {
    for (const double east : {-cell_m, 0.0, cell_m})
        for (const double north : {-cell_m, 0.0, cell_m})
            near_[key(heap.middle + LocalVector{east, north})].push_back(heaps_.size());
    heaps_.push_back(heap);
}

std::int64_t SoilHeaps::key(LocalPoint place) {
    return static_cast<std::int64_t>(std::floor(place.east_m / cell_m)) * 4194304 +
           static_cast<std::int64_t>(std::floor(place.north_m / cell_m));
}

void SoilHeaps::lay_on(SeenColour& colour, LocalPoint place) const {
    const auto found = near_.find(key(place));
    if (found == near_.end()) return;
    for (const std::size_t index : found->second) {
        const Heap& heap = heaps_[index];
        const auto out = [&](LocalPoint at) {  // 0 in the middle, 1 at the edge
            const LocalVector off = at - heap.middle;
            const double u = dot(off, heap.along) / heap.half_length_m;
            const double v = dot(off, turned_right(heap.along)) / (heap.half_width_m * (1.0 + 0.28 * u));
            return std::hypot(u, v) + 0.34 * (noise_.cloudy(at, 0.3) - 0.5);
        };
        const LocalVector throw_of_shadow = sun_.away * (sun_.shadow_m * heap.height_m);
        const double shadow = 1.0 - step(out(place - throw_of_shadow), 0.72, 1.02);
        colour = colour * (1.0 - 0.5 * shadow);
        const double r = out(place);
        const double cover = heap.cover * (1.0 - step(r, 0.84, 1.04));
        if (cover > 0.0) {
            // a dome: the side towards the sun is bright, the other dark
            const LocalVector slope =
                unit_along(place - heap.middle) * (std::min(r, 1.0) * heap.height_m / heap.half_length_m);
            const double lit = std::clamp(1.0 - 1.15 * sun_.shadow_m * dot(slope, sun_.away), 0.45, 1.5);
            const double clods = 0.74 + 0.52 * noise_.cloudy(place, 0.22);
            const SeenColour soil = blended(fresh_soil, dried_soil, heap.paleness) * (clods * lit);
            const double grown = heap.cover < 0.9 ? step(noise_.cloudy(place, 0.35), 0.52, 0.66) * 0.5 : 0.0;
            colour = blended(colour, soil, cover * (1.0 - grown));
        }
        if (heap.hole) {
            const double off = distance_m(place, *heap.hole);
            colour = colour * (1.0 - 0.45 * (1.0 - step(off, 0.04, 0.10)));
        }
    }
}

}  // namespace plugside
