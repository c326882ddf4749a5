#include "core/runs/take_off.h"

#include <gtest/gtest.h>

#include <cmath>

namespace plugside {
namespace {

TEST(TakeOff, PlugToRunIsTheDepthAtFortyFiveDegrees) {
    // depth x cot(45 degrees): main runs 6-12 in deep, UC IPM Pest Notes 7433; 12-14 in deep and a slope of 45 degrees: common
    // practice of the trade
    struct Row {
        double depth_in;
        double offset_in;
    };
    for (const Row& row : {Row{8, 8}, Row{12, 12}, Row{14, 14}})
        EXPECT_NEAR(plug_to_run(Metres::from_inches(row.depth_in), 45.0).inches(), row.offset_in, 1e-9);
}

TEST(TakeOff, ASteeperLateralLeavesTheRunNearerThePlug) {
    EXPECT_LT(plug_to_run(Metres::of(0.3), 60.0), plug_to_run(Metres::of(0.3), 45.0));
    EXPECT_NEAR(plug_to_run(Metres::of(0.3), 60.0).value(), 0.3 / std::sqrt(3.0), 1e-12);
}

TEST(TakeOff, LiesOppositeTheFan) {
    // the plug is opposite the large pile: common practice of the trade
    PlanOptions options;
    options.depth_mean = Metres::of(0.30);
    const TakeOff east = take_off_of({10.0, 20.0}, Bearing::degrees(90.0), Metres::of(0.5), options);
    EXPECT_NEAR(east.at.east_m, 9.70, 1e-9);
    EXPECT_NEAR(east.at.north_m, 20.0, 1e-9);
    const TakeOff nearly_north = take_off_of({0.0, 0.0}, Bearing::degrees(359.999), Metres::of(0.5), options);
    EXPECT_NEAR(nearly_north.at.north_m, -0.30, 1e-6);
}

TEST(TakeOff, WithoutAFanIsThePlugWithTheLateralAsSpread) {
    const PlanOptions options;
    const TakeOff none = take_off_of({1.0, 2.0}, std::nullopt, Metres::of(0.0), options);
    EXPECT_EQ(none.at, (LocalPoint{1.0, 2.0}));
    EXPECT_EQ(none.sd_along_m, none.sd_across_m);
    const LateralLength lateral = lateral_length(options);
    EXPECT_NEAR(2.0 * none.sd_along_m * none.sd_along_m, lateral.mean_m * lateral.mean_m + lateral.sd_m * lateral.sd_m, 1e-12);
}

}  // namespace
}  // namespace plugside
