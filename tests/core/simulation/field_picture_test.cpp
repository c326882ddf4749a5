#include "core/simulation/field_picture.h"

#include <gtest/gtest.h>

#include "core/simulation/burrow_simulator.h"
#include "core/simulation/value_noise.h"

namespace plugside {
namespace {

SimulationOptions small_field() {
    SimulationOptions options;
    options.seed = 5;
    options.mounds_wanted = 40;
    options.with_ground = true;
    return options;
}

TEST(FieldPicture, is_the_same_each_time_and_another_with_another_seed) {
    const SimulatedField field = simulate_field(small_field());
    const FieldPictureOptions coarse{.resolution_m = 0.5};
    const FieldPicture picture = picture_of_field(field, coarse);
    ASSERT_EQ(picture.rgb.size(), static_cast<std::size_t>(picture.width) * static_cast<std::size_t>(picture.height) * 3);
    EXPECT_EQ(picture.rgb, picture_of_field(field, coarse).rgb);
    EXPECT_NE(picture.rgb, picture_of_field(field, {.resolution_m = 0.5, .seed = 2}).rgb);
}

TEST(FieldPicture, holds_the_field_with_its_margin) {
    const SimulatedField field = simulate_field(small_field());
    const FieldPicture picture = picture_of_field(field, {.resolution_m = 0.5, .margin_m = 10.0});
    for (const LocalPoint corner : field.survey.ground.boundary.parts.at(0).outer.vertices) {
        EXPECT_GE(corner.east_m - picture.upper_left.east_m, 10.0 - 1e-9);
        EXPECT_GE(picture.upper_left.north_m - corner.north_m, 10.0 - 1e-9);
        EXPECT_LE(corner.east_m - picture.upper_left.east_m, picture.width * 0.5 - 10.0 + 1e-9);
        EXPECT_LE(picture.upper_left.north_m - corner.north_m, picture.height * 0.5 - 10.0 + 1e-9);
    }
}

TEST(FieldPicture, throws_the_houses_shadow_away_from_the_sun) {
    const SimulatedField field = simulate_field(small_field());
    const auto& house = field.survey.ground.keep_clear.at(0).area.outer.vertices;
    const LocalPoint middle = midpoint(house[0], house[2]);
    for (const double sun : {20.0, 110.0, 200.0, 290.0}) {
        const FieldPicture picture = picture_of_field(field, {.resolution_m = 0.4, .sun = Bearing::degrees(sun)});
        const auto brightness = [&](LocalPoint place) {
            const auto column = static_cast<std::size_t>((place.east_m - picture.upper_left.east_m) / 0.4);
            const auto row = static_cast<std::size_t>((picture.upper_left.north_m - place.north_m) / 0.4);
            const std::uint8_t* rgb = &picture.rgb[(row * static_cast<std::size_t>(picture.width) + column) * 3];
            return rgb[0] + rgb[1] + rgb[2];
        };
        // just beyond the walls on both sides
        const LocalVector away = Bearing::degrees(sun).unit() * -1.0;
        double off = 0.0;
        Polygon walls;
        walls.outer.vertices = house;
        while (contains(walls, middle + away * off) || contains(walls, middle - away * off)) off += 0.1;
        EXPECT_LT(brightness(middle + away * (off + 0.8)), brightness(middle - away * (off + 0.8))) << sun;
    }
}

TEST(FieldPicture, of_nothing_has_no_size) {
    EXPECT_EQ(picture_of_field({}).width, 0);
    std::stop_source stop;
    stop.request_stop();
    EXPECT_EQ(picture_of_field(simulate_field(small_field()), {}, stop.get_token()).width, 0);
}

TEST(ValueNoise, is_smooth_between_none_and_one_and_a_half_in_the_mean) {
    const ValueNoise noise(3);
    double sum = 0.0;
    constexpr int steps = 20000;
    for (int i = 0; i < steps; ++i) {
        const LocalPoint at{0.37 * i, -0.11 * i};
        const double value = noise.value(at, 2.0);
        ASSERT_TRUE(value >= 0.0 && value <= 1.0);
        ASSERT_NEAR(value, noise.value(at + LocalVector{0.001, 0.0}, 2.0), 0.002);
        sum += value;
    }
    EXPECT_NEAR(sum / steps, 0.5, 0.02);
}

}  // namespace
}  // namespace plugside
