// What a camera above a simulated field would have seen: crop in rows, bare soil, every mound as a fan of soil with its
// shadow, the ditch, the house, trees, what lies around the field, uneven light and the sensor's grain.
//
// Picture: upright on the field's plane; `upper_left` is the outer corner of its first pixel, rows run south. Three bytes a
//          pixel: red, green, blue.
// Mounds:  all of them, those that the walker missed too, at their true plugs; fresh soil dark, older soil paler and partly
//          grown over, crushed soil spread out; other diggers' signs at the walker's marks. Sizes of mounds are our assumption
//          within what UC IPM Pest Notes 7433 shows: fans half a metre to a metre across.
// Light:   `sun` is where the sun stands, `sun_height_degrees` above the horizon (1..89); shadows fall away from it.
// Deterministic: the same field and options give the same bytes on every machine, to the mathematical library's last digit.
// Degenerate input: a field without boundary is pictured about its mounds; one without mounds or boundary gives a picture of
//          no size.
// Cost:    O(pixels), some microseconds each; memory three bytes a pixel. Stop: asked once a row; a stopped picture has no size.
// Source:  a drawing of our own; colours and noise are our assumption.
#pragma once

#include <cstdint>
#include <stop_token>
#include <vector>

#include "core/simulation/truth.h"
#include "core/units/bearing.h"

namespace plugside {

struct FieldPictureOptions {
    double resolution_m = 0.07;             // a fan is then a dozen pixels across
    double margin_m = 14.0;                 // of what lies around
    Bearing sun = Bearing::degrees(128.0);  // a spring morning
    double sun_height_degrees = 38.0;
    std::uint64_t seed = 1;
};

struct FieldPicture {
    int width = 0;
    int height = 0;
    double resolution_m = 0.1;
    LocalPoint upper_left;
    std::vector<std::uint8_t> rgb;
};

[[nodiscard]] FieldPicture picture_of_field(const SimulatedField& field, const FieldPictureOptions& options = {},
                                            const std::stop_token& stop = {});

}  // namespace plugside
