// Lengths and areas of what is drawn, as the program tells them, against geodesic ones: the routines of GeographicLib (Karney,
// Algorithms for geodesics, J. Geodesy 87, 2013) in C, as the projection library carries them. They know no plane.
#include <geodesic.h>
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "core/geometry/polygon.h"
#include "core/geometry/polyline.h"
#include "geo/frame/local_frame.h"

namespace plugside {
namespace {

struct GeodesicMeasure {
    double length_m = 0.0;  // all the way round, or along a line
    double area_m2 = 0.0;
};

GeodesicMeasure geodesic(const std::vector<GeographicPoint>& corners, bool closed) {
    geod_geodesic earth;
    geod_init(&earth, 6378137.0, 1.0 / 298.257223563);
    geod_polygon shape;
    geod_polygon_init(&shape, closed ? 0 : 1);
    for (const GeographicPoint corner : corners)
        geod_polygon_addpoint(&earth, &shape, corner.latitude_degrees, corner.longitude_degrees);
    GeodesicMeasure measure;
    geod_polygon_compute(&earth, &shape, 1, 1, &measure.area_m2, &measure.length_m);
    measure.area_m2 = std::abs(measure.area_m2);
    return measure;
}

// A field of up to 2 km across with seven to twelve corners, as a hand draws it: not convex, and not about the plane's centre.
std::vector<LocalPoint> drawn_field(std::mt19937_64& random) {
    std::uniform_real_distribution<double> share(0.35, 1.0);
    std::uniform_real_distribution<double> off(-300.0, 300.0);
    const int corners = 7 + static_cast<int>(random() % 6);
    const LocalVector shift{off(random), off(random)};
    std::vector<LocalPoint> field;
    for (int i = 0; i < corners; ++i) {
        const double turn = 6.283185307179586 * i / corners;
        const double reach = 1000.0 * share(random);
        field.push_back(LocalPoint{reach * std::sin(turn), reach * std::cos(turn)} + shift);
    }
    return field;
}

class InThreeLatitudes : public ::testing::TestWithParam<double> {};

TEST_P(InThreeLatitudes, LengthsAndAreasOfFieldsToTwoKilometresAreTheGeodesicOnesWithinAHundredThousandth) {
    const LocalFrame frame = LocalFrame::centred_on({-106.89, GetParam()});
    std::mt19937_64 random(20260401);
    double worst = 0.0;
    for (int i = 0; i < 100; ++i) {
        const std::vector<LocalPoint> corners = drawn_field(random);
        std::vector<GeographicPoint> on_earth;
        for (const LocalPoint corner : corners) on_earth.push_back(frame.to_geographic(corner));
        const GeodesicMeasure round = geodesic(on_earth, true);
        const GeodesicMeasure along = geodesic(on_earth, false);
        worst = std::max({worst, std::abs(area_m2(Polygon{{corners}, {}}) / round.area_m2 - 1.0),
                          std::abs(length(Polyline{corners}).value() / along.length_m - 1.0)});
    }
    EXPECT_LT(worst, 1e-5);
    RecordProperty("worst", std::to_string(worst));
}

INSTANTIATE_TEST_SUITE_P(DrawnMeasures, InThreeLatitudes, ::testing::Values(2.5, 38.5, 67.0));

}  // namespace
}  // namespace plugside
