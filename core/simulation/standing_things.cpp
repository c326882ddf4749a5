#include <algorithm>
#include <cmath>

#include "core/simulation/random.h"
#include "core/simulation/seen_ground.h"

namespace plugside {

namespace {

constexpr double eaves_m = 3.4;
constexpr SeenColour water{0.17, 0.23, 0.25};
constexpr SeenColour sky_in_water{0.46, 0.53, 0.58};
constexpr SeenColour bank{0.34, 0.33, 0.19};
constexpr SeenColour reeds{0.21, 0.30, 0.13};
constexpr SeenColour tiles{0.55, 0.31, 0.24};
constexpr SeenColour lawn{0.33, 0.46, 0.20};
constexpr SeenColour yard{0.68, 0.64, 0.57};
constexpr SeenColour leaves{0.16, 0.27, 0.11};

double step(double value, double from, double to) {
    const double share = std::clamp((value - from) / (to - from), 0.0, 1.0);
    return share * share * (3.0 - 2.0 * share);
}

struct Nearest {
    double off_m = 1e9;
    double side = 1.0;  // of the line: 1 = to its right
    LocalVector along{1.0, 0.0};
};

Nearest nearest_on(const Polyline& line, LocalPoint place) {
    Nearest nearest;
    for (std::size_t i = 1; i < line.vertices.size(); ++i) {
        const LocalPoint a = line.vertices[i - 1];
        const LocalPoint b = line.vertices[i];
        if (std::abs(place.east_m - a.east_m) + std::abs(place.north_m - a.north_m) > 30.0) continue;
        const double off = distance_to_segment_m(place, a, b);
        if (off >= nearest.off_m) continue;
        const LocalVector along = b - a;
        const double length = std::max(along.length_m(), 1e-9);
        nearest = {off, cross(along, place - a) <= 0.0 ? 1.0 : -1.0, along * (1.0 / length)};
    }
    return nearest;
}

LocalPoint middle_of(const Polygon& area) {
    LocalVector sum;
    for (const LocalPoint corner : area.outer.vertices) sum = sum + (corner - LocalPoint{});
    return LocalPoint{} + sum * (1.0 / static_cast<double>(area.outer.vertices.size()));
}

}  // namespace

StandingThings::StandingThings(const Ground& ground, const SunLight& sun, std::uint64_t seed)
    : sun_(sun), noise_(seed * 7 + 4) {
    Random random(seed, 78);
    for (const Barrier& barrier : ground.barriers)
        if (barrier.line.vertices.size() > 1) ditches_.push_back(barrier.line);
    for (const KeepClearArea& area : ground.keep_clear)
        if (area.kind == KeepClearKind::building && area.area.outer.vertices.size() >= 4) houses_.push_back(area.area);
    for (const Polyline& ditch : ditches_)
        for (std::size_t i = 2; i + 2 < ditch.vertices.size(); ++i) {
            if (!random.chance(0.13)) continue;
            const LocalVector aside{random.uniform(-2.2, 2.2), random.uniform(-2.2, 2.2)};
            trees_.push_back({ditch.vertices[i] + aside, random.uniform(0.7, 1.8), random.uniform(1.2, 3.0)});
        }
    for (const Polygon& house : houses_)
        for (int i = 0; i < 4; ++i) {
            const double turn = random.uniform(0.0, 360.0);
            const LocalVector off = Bearing::degrees(turn).unit() * random.uniform(11.0, 14.0);
            trees_.push_back({middle_of(house) + off, random.uniform(1.6, 2.9), random.uniform(3.5, 6.0)});
        }
}

void StandingThings::lay_ditch(SeenColour& colour, LocalPoint place) const {
    for (const Polyline& ditch : ditches_) {
        const Nearest near = nearest_on(ditch, place);
        if (near.off_m > 4.0) continue;
        const double ragged = near.off_m + 0.5 * (noise_.cloudy(place, 1.4) - 0.5);
        const double tuft = noise_.cloudy(place, 0.5);
        colour = blended(colour, reeds * (0.6 + 0.8 * tuft), 0.85 * (1.0 - step(ragged, 1.5, 2.2)));
        // the bank that looks at the sun is bright, the other lies in its own shadow
        const double falls_away = dot(turned_right(near.along) * near.side, sun_.away);
        const SeenColour earth = blended(bank, reeds, 0.5 * tuft) * ((0.75 + 0.5 * tuft) * (1.0 + 0.38 * falls_away));
        colour = blended(colour, earth, 1.0 - step(ragged, 1.05, 1.35));
        const SeenColour shine = blended(water, sky_in_water, 0.55 * step(noise_.cloudy(place, 5.0), 0.35, 0.7));
        colour = blended(colour, shine * (0.92 + 0.16 * tuft), 1.0 - step(ragged, 0.42, 0.55));
    }
}

void StandingThings::lay_house(SeenColour& colour, LocalPoint place) const {
    for (const Polygon& house : houses_) {
        const LocalPoint middle = middle_of(house);
        if (distance_m(place, middle) > 40.0) continue;
        const double tuft = noise_.cloudy(place, 0.5);
        const double off = distance(place, house).value() + 1.6 * (noise_.cloudy(place, 5.0) - 0.5);
        colour = blended(colour, lawn * (0.8 + 0.4 * tuft), 1.0 - step(off, 5.2, 5.8));
        colour = blended(colour, yard * (0.9 + 0.2 * tuft), 1.0 - step(off, 1.4, 1.9));
        bool shaded = false;
        for (double height = 0.3; height <= eaves_m && !shaded; height += 0.3)
            shaded = contains(house, place - sun_.away * (sun_.shadow_m * height));
        if (shaded) colour = colour * 0.42;
        if (!contains(house, place)) continue;
        const auto& corners = house.outer.vertices;
        LocalVector ridge = corners[1] - corners[0];
        ridge = ridge * (1.0 / std::max(ridge.length_m(), 1e-9));
        const double across = dot(place - middle, turned_right(ridge));
        const LocalVector falls = turned_right(ridge) * (across > 0.0 ? 1.0 : -1.0);
        const double courses = 1.0 + 0.07 * std::cos(across * 18.0);
        colour = tiles * ((1.0 - 0.42 * dot(falls, sun_.away)) * courses * (0.9 + 0.2 * tuft));
        if (std::abs(across) < 0.13) colour = colour * 1.2;
        const LocalPoint chimney = middle + ridge * 2.6 + turned_right(ridge) * 0.9;
        if (distance_m(place, chimney + sun_.away * 0.8) < 0.65) colour = colour * 0.55;
        if (distance_m(place, chimney) < 0.45) colour = {0.5, 0.46, 0.44};
    }
}

void StandingThings::lay_trees(SeenColour& colour, LocalPoint place) const {
    for (const Tree& tree : trees_) {
        if (distance_m(place, tree.middle) > tree.radius_m + 2.0 * tree.height_m * sun_.shadow_m + 1.0) continue;
        const double ragged = 0.55 * tree.radius_m * (noise_.cloudy(place, 0.9) - 0.5);
        const LocalPoint of_shadow = tree.middle + sun_.away * (sun_.shadow_m * 0.7 * tree.height_m);
        const double shade = 1.0 - step(distance_m(place, of_shadow) + ragged, 0.88 * tree.radius_m, 1.02 * tree.radius_m);
        colour = colour * (1.0 - 0.5 * shade);
    }
    for (const Tree& tree : trees_) {
        const LocalVector off = place - tree.middle;
        const double r = off.length_m() / tree.radius_m + 0.5 * (noise_.cloudy(place, 0.8) - 0.5);
        if (r >= 1.1) continue;
        const double lit = 1.0 - 0.65 * dot(off, sun_.away) / tree.radius_m;
        const SeenColour crown = leaves * (lit * (0.55 + 0.95 * noise_.cloudy(place, 0.45)));
        colour = blended(colour, crown, 1.0 - step(r, 0.86, 1.0));
    }
}

void StandingThings::lay_on(SeenColour& colour, LocalPoint place) const {
    lay_ditch(colour, place);
    lay_house(colour, place);
    lay_trees(colour, place);
}

}  // namespace plugside
