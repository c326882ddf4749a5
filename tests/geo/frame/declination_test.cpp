#include "geo/frame/declination.h"

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "geo/read/numbers.h"

namespace plugside {
namespace {

struct PublishedRow {
    double year = 0, height_km = 0, latitude = 0, longitude = 0, x = 0, y = 0, z = 0, inclination = 0, declination = 0;
};

std::vector<PublishedRow> published_rows() {
    std::ifstream file(std::string(PLUGSIDE_SOURCE_DIR) + "/tests/published/magnetic_values.tsv");
    std::vector<PublishedRow> rows;
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line.front() == '#') continue;
        std::istringstream cells(line);
        PublishedRow row;
        cells >> row.year >> row.height_km >> row.latitude >> row.longitude >> row.x >> row.y >> row.z >> row.inclination >>
            row.declination;
        EXPECT_TRUE(cells) << line;
        rows.push_back(row);
    }
    return rows;
}

// Source: NOAA and BGS, test values of the World Magnetic Model 2025 (tests/published/magnetic_values.tsv). The published
// angles are rounded to .01 degree.
TEST(Declination, agrees_with_all_published_values) {
    const auto rows = published_rows();
    ASSERT_EQ(rows.size(), 100U);
    double worst_angle = 0.0;
    double worst_nt = 0.0;
    for (const PublishedRow& row : rows) {
        const auto field = magnetic_field({row.longitude, row.latitude}, row.year, Metres::of(row.height_km * 1000.0));
        ASSERT_TRUE(field.has_value()) << sentence(field.error());
        const double turned = std::remainder(field->declination_degrees - row.declination, 360.0);
        worst_angle = std::max({worst_angle, std::abs(turned), std::abs(field->inclination_degrees - row.inclination)});
        worst_nt = std::max({worst_nt, std::abs(field->north_nt - row.x), std::abs(field->east_nt - row.y),
                             std::abs(field->down_nt - row.z)});
    }
    EXPECT_LE(worst_angle, 0.01);
    EXPECT_LE(worst_nt, 0.2);
    RecordProperty("worst_angle", std::to_string(worst_angle));
    RecordProperty("worst_nt", std::to_string(worst_nt));
}

TEST(Declination, is_refused_with_a_sentence_outside_the_years_of_the_model) {
    for (const double year : {2024.999, 2030.001, 1900.0, 1e300, std::nan("")}) {
        const auto field = magnetic_field({-120.0, 40.0}, year);
        ASSERT_FALSE(field.has_value()) << year;
        EXPECT_NE(sentence(field.error()).find("expected 2025.0 to 2030.0"), std::string::npos);
    }
    EXPECT_TRUE(magnetic_field({-120.0, 40.0}, 2025.0).has_value());
    EXPECT_TRUE(magnetic_field({-120.0, 40.0}, 2030.0).has_value());
    EXPECT_EQ(sentence(declination_degrees({-120.0, 40.0}, *parse_utc_time("2024-12-31T00:00:00Z")).error()),
              "found the year 2024.997, expected 2025.0 to 2030.0, for which the magnetic model holds.");
}

TEST(Declination, is_refused_for_places_that_are_none) {
    EXPECT_FALSE(magnetic_field({0.0, 90.5}, 2026.0).has_value());
    EXPECT_FALSE(magnetic_field({400.0, 0.0}, 2026.0).has_value());
    EXPECT_FALSE(magnetic_field({std::nan(""), 0.0}, 2026.0).has_value());
    EXPECT_FALSE(magnetic_field({0.0, std::nan("")}, 2026.0).has_value());
    EXPECT_FALSE(magnetic_field({0.0, 0.0}, 2026.0, Metres::of(1e9)).has_value());
}

// At a pole the horizontal field is one vector; its declination is told against the meridian that was named.
TEST(Declination, has_one_field_at_each_pole_seen_from_every_meridian) {
    for (const double latitude : {90.0, -90.0}) {
        const auto at_zero = magnetic_field({0.0, latitude}, 2026.5);
        const auto close_by = magnetic_field({0.0, latitude * (1.0 - 1e-9)}, 2026.5);
        ASSERT_TRUE(at_zero && close_by);
        EXPECT_NEAR(at_zero->declination_degrees, close_by->declination_degrees, 1e-4);
        for (double longitude = -180.0; longitude <= 180.0; longitude += 15.0) {
            const auto field = magnetic_field({longitude, latitude}, 2026.5);
            ASSERT_TRUE(field);
            EXPECT_NEAR(std::hypot(field->north_nt, field->east_nt), std::hypot(at_zero->north_nt, at_zero->east_nt), 1e-6);
            const double turn = latitude > 0 ? longitude : -longitude;
            EXPECT_NEAR(std::remainder(field->declination_degrees - at_zero->declination_degrees - turn, 360.0), 0.0, 1e-7);
        }
    }
}

TEST(Declination, tells_the_share_of_the_year_in_common_and_leap_years) {
    EXPECT_DOUBLE_EQ(decimal_year(*parse_utc_time("2025-01-01T00:00:00Z")), 2025.0);
    EXPECT_DOUBLE_EQ(decimal_year(*parse_utc_time("2025-07-02T12:00:00Z")), 2025.5);
    EXPECT_DOUBLE_EQ(decimal_year(*parse_utc_time("2028-07-02T00:00:00Z")), 2028.5);
    EXPECT_NEAR(decimal_year(*parse_utc_time("2029-12-31T23:59:59Z")), 2030.0, 1e-7);
}

TEST(Declination, turns_magnetic_bearings_into_true_ones_and_back) {
    EXPECT_DOUBLE_EQ(true_from_magnetic(Bearing::degrees(350.0), 13.0).degrees(), 3.0);
    EXPECT_DOUBLE_EQ(magnetic_from_true(Bearing::degrees(3.0), 13.0).degrees(), 350.0);
    EXPECT_DOUBLE_EQ(true_from_magnetic(Bearing::degrees(5.0), -12.5).degrees(), 352.5);
}

}  // namespace
}  // namespace plugside
