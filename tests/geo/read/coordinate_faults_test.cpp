// Fields are made up: marks about a middle, with the fault that a careless hand or program puts in.
#include "geo/read/coordinate_faults.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <sstream>

#include "geo/read/field_reader.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

std::vector<GeographicPoint> field_places(GeographicPoint middle, unsigned seed, int count = 40,
                                          double reach_degrees = 0.002) {
    std::mt19937_64 random(seed);
    std::uniform_real_distribution<double> within(-reach_degrees, reach_degrees);
    std::vector<GeographicPoint> places;
    for (int i = 0; i < count; ++i)
        places.push_back({middle.longitude_degrees + within(random), middle.latitude_degrees + within(random)});
    return places;
}

std::string table_of(const std::vector<GeographicPoint>& places) {
    std::ostringstream text;
    text.precision(12);
    text << "name,lat,lon,note\n";
    for (std::size_t i = 0; i < places.size(); ++i)
        text << "M" << i + 1 << ',' << places[i].latitude_degrees << ',' << places[i].longitude_degrees << ",fan 90\n";
    return text.str();
}

std::string boundary_of(GeographicPoint middle, double reach = 0.003) {
    std::ostringstream text;
    text.precision(12);
    const auto corner = [&](double east, double north) {
        std::ostringstream part;
        part.precision(12);
        part << '[' << middle.longitude_degrees + east * reach << ',' << middle.latitude_degrees + north * reach << ']';
        return part.str();
    };
    text
        << R"({"type":"FeatureCollection","features":[{"type":"Feature","properties":{},"geometry":{"type":"Polygon","coordinates":[[)"
        << corner(-1, -1) << ',' << corner(1, -1) << ',' << corner(1, 1) << ',' << corner(-1, 1) << ',' << corner(-1, -1)
        << "]]}}]}";
    return text.str();
}

// What degrees and minutes look like when the minutes are taken for the fraction.
double minutes_as_fraction(double degrees) {
    const double whole = std::floor(std::abs(degrees));
    return std::copysign(whole + (std::abs(degrees) - whole) * 0.6, degrees);
}

GeographicPoint spoilt(GeographicPoint place, CoordinateChange change) {
    if (change != CoordinateChange::degrees_and_minutes) {
        if (change == CoordinateChange::exchange_and_turn) return {place.latitude_degrees, -place.longitude_degrees};
        return *changed(place, change);
    }
    return {minutes_as_fraction(place.longitude_degrees), minutes_as_fraction(place.latitude_degrees)};
}

FieldSurvey read(const std::vector<std::filesystem::path>& files) {
    auto field = read_field(files);
    EXPECT_TRUE(field.has_value()) << (field ? "" : sentence(field.error()));
    return field.value_or(FieldSurvey{});
}

// On the plane of `good`, how far the marks of `field` are from those of the same name.
double worst_m(const FieldSurvey& field, const std::vector<GeographicPoint>& good) {
    double worst = 0.0;
    for (std::size_t i = 0; i < good.size(); ++i)
        worst = std::max(worst, distance_m(field.survey.mounds[i].plug, field.frame.to_local(good[i])));
    return worst;
}

constexpr GeographicPoint california{-120.512345, 38.241234};
constexpr GeographicPoint leon{-5.571234, 42.601234};

TEST(CoordinateFaults, of_a_whole_file_are_found_against_the_ground) {
    const TemporaryFolder folder;
    unsigned seed = 0;
    for (const GeographicPoint middle : {california, leon, GeographicPoint{-82.35, 29.61}, GeographicPoint{-99.2, 19.4}})
        for (const CoordinateChange change :
             {CoordinateChange::exchange, CoordinateChange::turn_longitude, CoordinateChange::turn_latitude,
              CoordinateChange::turn_both, CoordinateChange::degrees_and_minutes}) {
            SCOPED_TRACE(std::to_string(middle.longitude_degrees) + " " + std::to_string(static_cast<int>(change)));
            const auto good = field_places(middle, ++seed);
            std::vector<GeographicPoint> bad;
            std::string text = "name,lat,lon\n";
            for (const GeographicPoint place : good) bad.push_back(spoilt(place, change));
            if (change == CoordinateChange::exchange)
                for (std::size_t i = 0; i < bad.size(); ++i) bad[i] = {good[i].latitude_degrees, good[i].longitude_degrees};
            const FieldSurvey field =
                read({folder.file("marks.csv", table_of(bad)), folder.file("field.geojson", boundary_of(middle))});
            ASSERT_EQ(field.of_reading.size(), 1U);
            const Finding& finding = field.of_reading[0];
            EXPECT_EQ(finding.marks.size(), good.size());
            EXPECT_EQ(finding.kind, change == CoordinateChange::exchange              ? FindingKind::swapped_coordinates
                                    : change == CoordinateChange::degrees_and_minutes ? FindingKind::degrees_and_minutes
                                                                                      : FindingKind::lost_sign);
            EXPECT_LT(worst_m(field, good), 0.001);
            for (const Mound& mound : field.survey.mounds) EXPECT_TRUE(mound.set_aside_because.has_value());
            Survey answered = field.survey;
            answer_finding(answered, {finding.id, Answer::accepted, *finding.mend});
            for (const Mound& mound : answered.mounds) EXPECT_FALSE(why_not_used(answered, mound).has_value());
            take_answer_back(answered, finding.id);
            for (const Mound& mound : answered.mounds) EXPECT_TRUE(why_not_used(answered, mound).has_value());
        }
}

TEST(CoordinateFaults, of_a_file_are_found_against_another_walk) {
    const TemporaryFolder folder;
    const auto good = field_places(leon, 5);
    std::vector<GeographicPoint> bad;
    for (const GeographicPoint place : field_places(leon, 6, 60))
        bad.push_back(spoilt(place, CoordinateChange::degrees_and_minutes));
    const FieldSurvey field = read({folder.file("a.csv", table_of(good)), folder.file("b.csv", table_of(bad))});
    ASSERT_EQ(field.of_reading.size(), 1U);
    EXPECT_EQ(field.of_reading[0].marks.size(), 60U);
    EXPECT_EQ(field.of_reading[0].found.find("Of 60 marks of b.csv degrees and minutes look read as decimal degrees"), 0U)
        << field.of_reading[0].found;
}

TEST(CoordinateFaults, of_a_lone_file_are_found_where_no_pocket_gopher_lives) {
    const TemporaryFolder folder;
    for (const CoordinateChange change : {CoordinateChange::exchange, CoordinateChange::turn_longitude,
                                          CoordinateChange::turn_latitude, CoordinateChange::exchange_and_turn}) {
        SCOPED_TRACE(static_cast<int>(change));
        std::vector<GeographicPoint> bad;
        const auto good = field_places({-82.35, 29.61}, 7);
        for (const GeographicPoint place : good) bad.push_back(spoilt(place, change));
        if (change == CoordinateChange::exchange)
            for (std::size_t i = 0; i < bad.size(); ++i) bad[i] = {good[i].latitude_degrees, good[i].longitude_degrees};
        const FieldSurvey field = read({folder.file("marks.csv", table_of(bad))});
        ASSERT_EQ(field.of_reading.size(), 1U);
        EXPECT_LT(worst_m(field, good), 0.001);
    }
}

TEST(CoordinateFaults, that_lie_on_the_earth_in_no_other_way_are_exchanged_and_said) {
    const TemporaryFolder folder;
    const auto good = field_places(california, 8);
    std::vector<GeographicPoint> bad;
    for (const GeographicPoint place : good) bad.push_back({place.latitude_degrees, place.longitude_degrees});
    const FieldSurvey field = read({folder.file("marks.csv", table_of(bad))});
    ASSERT_EQ(field.of_reading.size(), 1U);
    EXPECT_EQ(field.of_reading[0].kind, FindingKind::swapped_coordinates);
    EXPECT_EQ(field.of_reading[0].marks.size(), 40U);
    EXPECT_LT(worst_m(field, good), 0.001);
    EXPECT_NE(field.of_reading[0].found.find("written as latitude -120.5"), std::string::npos) << field.of_reading[0].found;
}

TEST(CoordinateFaults, of_single_marks_are_found_among_the_others) {
    const TemporaryFolder folder;
    for (const GeographicPoint middle : {california, leon})
        for (const CoordinateChange change : {CoordinateChange::exchange, CoordinateChange::turn_longitude,
                                              CoordinateChange::turn_latitude, CoordinateChange::degrees_and_minutes}) {
            SCOPED_TRACE(std::to_string(middle.longitude_degrees) + " " + std::to_string(static_cast<int>(change)));
            const auto good = field_places(middle, 9);
            auto bad = good;
            for (const std::size_t wrong : {3U, 17U}) {
                bad[wrong] = spoilt(good[wrong], change);
                if (change == CoordinateChange::exchange)
                    bad[wrong] = {good[wrong].latitude_degrees, good[wrong].longitude_degrees};
            }
            const FieldSurvey field = read({folder.file("marks.csv", table_of(bad))});
            EXPECT_LT(worst_m(field, good), 0.001);
            std::size_t aside = 0;
            for (const Mound& mound : field.survey.mounds) aside += mound.set_aside_because ? 1U : 0U;
            EXPECT_EQ(aside, 2U);
            std::size_t named = 0;
            for (const Finding& finding : field.of_reading) named += finding.marks.size();
            EXPECT_EQ(named, 2U);
        }
}

TEST(CoordinateFaults, of_a_field_on_the_edge_of_a_minute_are_found_alone) {
    const TemporaryFolder folder;
    const auto good = field_places({-120.5, 39.0002}, 10, 60, 0.004);  // about the whole degree of latitude
    std::vector<GeographicPoint> bad;
    for (const GeographicPoint place : good) bad.push_back(spoilt(place, CoordinateChange::degrees_and_minutes));
    const FieldSurvey field = read({folder.file("marks.csv", table_of(bad))});
    ASSERT_EQ(field.of_reading.size(), 1U);
    EXPECT_EQ(field.of_reading[0].kind, FindingKind::degrees_and_minutes);
    EXPECT_LT(worst_m(field, good), 0.001);
}

// Good walks anywhere, alone or with ground or with a second walk up to 20 km away: nothing is accused.
TEST(CoordinateFaults, are_never_found_in_good_files) {
    const TemporaryFolder folder;
    std::mt19937_64 random(11);
    std::uniform_real_distribution<double> share(0.0, 1.0);
    for (int i = 0; i < 200; ++i) {
        const GeographicPoint middle{-130.0 + 55.0 * share(random), 10.0 + 45.0 * share(random)};
        const GeographicPoint second{middle.longitude_degrees + 0.4 * (share(random) - 0.5),
                                     middle.latitude_degrees + 0.3 * (share(random) - 0.5)};
        std::vector<std::filesystem::path> files{
            folder.file("a.csv", table_of(field_places(middle, static_cast<unsigned>(i))))};
        if (i % 3 != 0) files.push_back(folder.file("field.geojson", boundary_of(middle)));
        if (i % 2 == 0)
            files.push_back(folder.file("b.csv", table_of(field_places(second, static_cast<unsigned>(i) + 1000U))));
        const FieldSurvey field = read(files);
        EXPECT_TRUE(field.of_reading.empty()) << i << ": " << field.of_reading[0].found;
    }
}

TEST(CoordinateFaults, that_cannot_be_told_leave_a_lone_file_as_it_is) {
    const TemporaryFolder folder;
    std::vector<GeographicPoint> bad;
    for (const GeographicPoint place : field_places(leon, 12))
        bad.push_back({-place.longitude_degrees, place.latitude_degrees});
    EXPECT_TRUE(read({folder.file("marks.csv", table_of(bad))}).of_reading.empty());
}

}  // namespace
}  // namespace plugside
