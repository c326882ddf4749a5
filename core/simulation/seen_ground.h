// The parts of a pictured field, each as the colour that it has at a place: `field_picture` lays them over each other.
//
// Colour: red, green, blue, 0..1 and beyond before light and grain are put on.
// Cost:   O(1) expected a place and part.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

#include "core/simulation/field_picture.h"
#include "core/simulation/value_noise.h"

namespace plugside {

struct SeenColour {
    double red = 0.0;
    double green = 0.0;
    double blue = 0.0;
    friend SeenColour operator*(SeenColour a, double by) { return {a.red * by, a.green * by, a.blue * by}; }
};
[[nodiscard]] SeenColour blended(SeenColour under, SeenColour over, double share);

// Where the sun stands: a step of one metre of height throws a shadow of `shadow_m` towards `away`.
struct SunLight {
    LocalVector away;
    double shadow_m = 1.0;
};

// Grass in rows on the field, other crops and a track around it.
class CropCover {
public:
    CropCover(const Ground& ground, std::uint64_t seed);
    [[nodiscard]] SeenColour at(LocalPoint place) const;

private:
    [[nodiscard]] SeenColour meadow(LocalPoint place) const;
    [[nodiscard]] SeenColour around(LocalPoint place, double beyond_m) const;
    MultiPolygon boundary_;
    LocalVector rows_;
    LocalPoint middle_;
    ValueNoise noise_;
    ValueNoise patches_;
};

// Soil that animals threw up.
class SoilHeaps {
public:
    SoilHeaps(const SimulatedField& field, const SunLight& sun, std::uint64_t seed);
    void lay_on(SeenColour& colour, LocalPoint place) const;

private:
    struct Heap {
        LocalPoint middle;
        LocalVector along;  // of one metre
        double half_length_m;
        double half_width_m;
        double height_m;
        double cover;  // 1 = bare soil, less = grown over
        double paleness;
        std::optional<LocalPoint> hole;
    };
    void add(Heap heap);
    [[nodiscard]] static std::int64_t key(LocalPoint place);
    SunLight sun_;
    ValueNoise noise_;
    std::vector<Heap> heaps_;
    std::unordered_map<std::int64_t, std::vector<std::size_t>> near_;
};

// Ditch, house, trees.
class StandingThings {
public:
    StandingThings(const Ground& ground, const SunLight& sun, std::uint64_t seed);
    void lay_on(SeenColour& colour, LocalPoint place) const;

private:
    struct Tree {
        LocalPoint middle;
        double radius_m;
        double height_m;
    };
    void lay_ditch(SeenColour& colour, LocalPoint place) const;
    void lay_house(SeenColour& colour, LocalPoint place) const;
    void lay_trees(SeenColour& colour, LocalPoint place) const;
    std::vector<Polyline> ditches_;
    std::vector<Polygon> houses_;
    std::vector<Tree> trees_;
    SunLight sun_;
    ValueNoise noise_;
};

}  // namespace plugside
