#include "core/simulation/field_picture.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>

#include "core/simulation/seen_ground.h"

namespace plugside {

namespace {

struct Box {
    LocalPoint low;
    LocalPoint high;
};

std::optional<Box> box_of(const SimulatedField& field) {
    std::vector<LocalPoint> places;
    for (const Polygon& part : field.survey.ground.boundary.parts)
        places.insert(places.end(), part.outer.vertices.begin(), part.outer.vertices.end());
    if (places.empty())
        for (const TrueMound& mound : field.truth.mounds) places.push_back(mound.plug);
    if (places.empty()) return std::nullopt;
    Box box{places.front(), places.front()};
    for (const LocalPoint place : places) {
        box.low = {std::min(box.low.east_m, place.east_m), std::min(box.low.north_m, place.north_m)};
        box.high = {std::max(box.high.east_m, place.east_m), std::max(box.high.north_m, place.north_m)};
    }
    return box;
}

// A thin cloud's shadow, and the steps between the single pictures that such a picture is joined from.
double daylight(const ValueNoise& noise, LocalPoint place) {
    const double cloud = noise.cloudy(place, 95.0);
    const LocalVector bent{6.0 * noise.value(place, 17.0), 6.0 * noise.value(place + LocalVector{50.0, 9.0}, 17.0)};
    const LocalPoint joined = place + bent;
    const double shot = noise.grain(static_cast<std::int64_t>(std::floor(joined.east_m / 46.0)),
                                    static_cast<std::int64_t>(std::floor(joined.north_m / 34.0)));
    return 0.86 + 0.30 * cloud + 0.05 * (shot - 0.5);
}

std::uint8_t byte_of(double value, double grain) {
    return static_cast<std::uint8_t>(std::lround(std::clamp(255.0 * value + grain, 0.0, 255.0)));
}

}  // namespace

FieldPicture picture_of_field(const SimulatedField& field, const FieldPictureOptions& options, const std::stop_token& stop) {
    FieldPicture picture;
    picture.resolution_m = options.resolution_m;
    const auto box = box_of(field);
    if (!box) return picture;
    picture.upper_left = {box->low.east_m - options.margin_m, box->high.north_m + options.margin_m};
    const auto pixels = [&](double metres) {
        return static_cast<int>(std::ceil((metres + 2.0 * options.margin_m) / options.resolution_m));
    };
    const int width = pixels(box->high.east_m - box->low.east_m);
    const int height = pixels(box->high.north_m - box->low.north_m);
    const SunLight sun{options.sun.unit() * -1.0, 1.0 / std::tan(options.sun_height_degrees * std::numbers::pi / 180.0)};
    const CropCover crop(field.survey.ground, options.seed);
    const SoilHeaps heaps(field, sun, options.seed);
    const StandingThings things(field.survey.ground, sun, options.seed);
    const ValueNoise light(options.seed * 7 + 5);
    picture.rgb.reserve(static_cast<std::size_t>(width) * static_cast<std::size_t>(height) * 3);
    for (int row = 0; row < height; ++row) {
        if (stop.stop_requested()) return FieldPicture{};
        for (int column = 0; column < width; ++column) {
            const LocalPoint place =
                picture.upper_left + LocalVector{(column + 0.5) * options.resolution_m, -(row + 0.5) * options.resolution_m};
            SeenColour colour = crop.at(place);
            heaps.lay_on(colour, place);
            things.lay_on(colour, place);
            colour = colour * daylight(light, place);
            const double grain = 5.0 * (light.grain(column, row) - 0.5);
            for (const double value : {colour.red, colour.green, colour.blue}) picture.rgb.push_back(byte_of(value, grain));
        }
    }
    picture.width = width;
    picture.height = height;
    return picture;
}

}  // namespace plugside
