// The exported GeoPackage: read back by this project, by the validator that comes with the vector library's Python samples,
// and by a second reader that shares no code with it.
#include "geo/write/geopackage_layers.h"

#include <gtest/gtest.h>
#include <sqlite3.h>
#include <sys/stat.h>

#include <fstream>
#include <random>

#include "core/plan/make_plan.h"
#include "core/probing/instruction.h"
#include "geo/read/field_reader.h"
#include "tests/geo/example_field.h"
#include "tests/geo/expected_layers.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

void expect_same_survey(const FieldSurvey& a, const FieldSurvey& b) {
    EXPECT_EQ(a.field_name, b.field_name);
    EXPECT_EQ(a.survey.revision, b.survey.revision);
    expect_same_mounds(a, b, 1e-9);
    for (std::size_t i = 0; i < a.survey.mounds.size() && i < b.survey.mounds.size(); ++i) {
        EXPECT_EQ(a.survey.mounds[i].note, b.survey.mounds[i].note);
        EXPECT_EQ(a.survey.mounds[i].position_sd, b.survey.mounds[i].position_sd);
        EXPECT_EQ(a.survey.mounds[i].shared_sd, b.survey.mounds[i].shared_sd);
        EXPECT_EQ(a.survey.mounds[i].walk, b.survey.mounds[i].walk);
    }
    ASSERT_EQ(a.survey.walks.size(), b.survey.walks.size());
    for (std::size_t i = 0; i < a.survey.walks.size(); ++i) {
        EXPECT_EQ(a.survey.walks[i].id, b.survey.walks[i].id);
        EXPECT_EQ(a.survey.walks[i].source, b.survey.walks[i].source);
        EXPECT_EQ(a.survey.walks[i].bearings_from, b.survey.walks[i].bearings_from);
        expect_same_segments(a, a.survey.walks[i].segments, b, b.survey.walks[i].segments);
    }
    expect_same_ground(a, b);
    EXPECT_EQ(a.survey.decisions, b.survey.decisions);
    ASSERT_EQ(a.survey.known.size(), b.survey.known.size());
    for (std::size_t i = 0; i < a.survey.known.size(); ++i) {
        KnownFact one = a.survey.known[i];
        KnownFact other = b.survey.known[i];
        ASSERT_EQ(one.line.has_value(), other.line.has_value());
        if (one.line) {
            ASSERT_EQ(one.line->vertices.size(), other.line->vertices.size());
            for (std::size_t k = 0; k < one.line->vertices.size(); ++k)
                expect_same_place(a.frame, one.line->vertices[k], b.frame, other.line->vertices[k]);
        }
        one.line.reset();
        other.line.reset();
        EXPECT_EQ(one, other);
    }
}

// UTM zone edge, the 180th meridian, the equator, far north, the southern hemisphere.
const std::vector<GeographicPoint> centres = {{-120.0001, 38.25}, {179.9999, -41.0}, {-180.0, 52.0},
                                              {0.0, 0.0},         {24.0, 69.5},      {-68.0, -45.0}};

TEST(GeoPackageLayers, read_back_as_the_survey_they_were_made_from) {
    for (const GeographicPoint centre : centres) {
        SCOPED_TRACE(centre.longitude_degrees);
        const TemporaryFolder folder;
        const FieldSurvey field = example_field(centre);
        ASSERT_EQ(refusal_of(write_geopackage(field, example_plan(field), folder / "plan.gpkg", LengthUnits::metres)), "");
        const auto back = read_field({folder / "plan.gpkg"});
        ASSERT_TRUE(back.has_value()) << sentence(back.error());
        expect_same_survey(field, *back);
        EXPECT_TRUE(back->findings.empty()) << back->findings.front().sentence;
    }
}

TEST(GeoPackageLayers, a_mark_set_aside_stays_aside_and_one_outside_the_field_is_judged_anew) {
    const TemporaryFolder folder;
    FieldSurvey field = example_field(centres.front());
    field.survey.mounds.at(1).set_aside_because = "the same mound as M001";
    ASSERT_EQ(refusal_of(write_geopackage(field, *make_plan(field.survey), folder / "plan.gpkg", LengthUnits::metres)), "");
    const auto back = read_field({folder / "plan.gpkg"});
    ASSERT_TRUE(back.has_value()) << sentence(back.error());
    for (std::size_t i = 0; i < field.survey.mounds.size(); ++i)
        EXPECT_EQ(back->survey.mounds.at(i).set_aside_because, field.survey.mounds[i].set_aside_because) << i;
}

// Made-up surveys from fixed seeds: whatever is in a survey survives the way out and back.
TEST(GeoPackageLayers, read_back_equal_for_any_survey) {
    for (unsigned seed = 1; seed <= 20; ++seed) {
        SCOPED_TRACE(seed);
        std::mt19937_64 random(seed);
        std::uniform_real_distribution<double> reach(-2000.0, 2000.0);
        std::uniform_real_distribution<double> turn(0.0, 360.0);
        FieldSurvey field = example_field(centres[seed % centres.size()]);
        field.survey.mounds.clear();
        field.survey.decisions.clear();
        for (int i = 0; i < 60; ++i) {
            Mound mound = example_mound("mark " + std::to_string(random()), {reach(random), reach(random)}, i < 30 ? 0 : 1);
            if (random() % 3 != 0) mound.fan = Bearing::degrees(turn(random));
            mound.kind = static_cast<SignKind>(random() % 6);
            mound.freshness = static_cast<Freshness>(random() % 4);
            mound.position_sd = Metres::of(0.1 + std::abs(reach(random)) / 100.0);
            if (random() % 2 != 0)
                mound.time = morning(static_cast<int>(random() % 50000), static_cast<int>(random() % 1000));
            if (random() % 2 != 0) mound.note = "Notiz \xC3\xA9 " + std::to_string(random() % 100);
            field.survey.mounds.push_back(mound);
        }
        field.survey.ground.boundary.parts.clear();
        Plan plan;
        plan.revision = field.survey.revision;
        plan.mounds.resize(field.survey.mounds.size());
        const TemporaryFolder folder;
        ASSERT_EQ(refusal_of(write_geopackage(field, plan, folder / "plan.gpkg", LengthUnits::metres)), "");
        const auto back = read_field({folder / "plan.gpkg"});
        ASSERT_TRUE(back.has_value()) << sentence(back.error());
        expect_same_survey(field, *back);
    }
}

// Outside check: the vector library's own validator with --extra says nothing and ends with 0 on a good file.
TEST(GeoPackageLayers, pass_the_validator_without_a_word) {
    const TemporaryFolder folder;
    const FieldSurvey field = answered_field();
    ASSERT_EQ(refusal_of(write_geopackage(field, example_plan(field), folder / "plan.gpkg", LengthUnits::metres)), "");
    Plan nothing;
    const FieldSurvey empty;
    ASSERT_EQ(refusal_of(write_geopackage(empty, nothing, folder / "empty.gpkg", LengthUnits::metres)), "");
    for (const char* name : {"plan.gpkg", "empty.gpkg"}) {
        const int code =
            run("/usr/bin/python3 -m osgeo_utils.samples.validate_gpkg --extra '" + (folder / name).string() + "'",
                folder / "said.txt");
        EXPECT_EQ(code, 0) << name << ": " << content_of(folder / "said.txt");
        EXPECT_EQ(content_of(folder / "said.txt"), "") << name;
    }
}

// Outside check: Python's sqlite3 and shapely, with the geometry header of the GeoPackage standard (OGC 12-128r17, 2.1.3)
// decoded by hand, see every layer, column and value as the plan has them.
TEST(GeoPackageLayers, hold_every_layer_column_and_value_for_a_second_reader) {
    const TemporaryFolder folder;
    const FieldSurvey field = answered_field();
    const Plan plan = example_plan(field);
    ASSERT_EQ(refusal_of(write_geopackage(field, plan, folder / "plan.gpkg", LengthUnits::feet_and_inches)), "");
    folder.file("expected.tsv", expected_layers(field, plan, LengthUnits::feet_and_inches));
    const int code = run("/usr/bin/python3 '" + std::string(PLUGSIDE_SOURCE_DIR) + "/tests/geo/second_reader.py' '" +
                             (folder / "plan.gpkg").string() + "' '" + (folder / "expected.tsv").string() + "'",
                         folder / "said.txt");
    EXPECT_EQ(code, 0) << content_of(folder / "said.txt");
}

TEST(GeoPackageLayers, are_the_same_bytes_for_the_same_survey) {
    const TemporaryFolder folder;
    const FieldSurvey field = example_field();
    const Plan plan = example_plan(field);
    ASSERT_EQ(refusal_of(write_geopackage(field, plan, folder / "one.gpkg", LengthUnits::metres)), "");
    ASSERT_EQ(refusal_of(write_geopackage(field, plan, folder / "two.gpkg", LengthUnits::metres)), "");
    EXPECT_TRUE(content_of(folder / "one.gpkg") == content_of(folder / "two.gpkg"));
    EXPECT_GT(content_of(folder / "one.gpkg").size(), 1000U);
}

TEST(GeoPackageLayers, hold_no_path_of_this_machine) {
    const TemporaryFolder folder;
    const FieldSurvey field = example_field();
    ASSERT_EQ(refusal_of(write_geopackage(field, example_plan(field), folder / "plan.gpkg", LengthUnits::metres)), "");
    EXPECT_EQ(content_of(folder / "plan.gpkg").find(folder.path().string()), std::string::npos);
}

TEST(GeoPackageLayers, a_stop_leaves_an_earlier_file_as_it_was_and_nothing_beside_it) {
    const TemporaryFolder folder;
    const FieldSurvey field = example_field();
    folder.file("plan.gpkg", "an earlier file");
    std::stop_source stop;
    stop.request_stop();
    const auto written =
        write_geopackage(field, example_plan(field), folder / "plan.gpkg", LengthUnits::metres, {stop.get_token(), {}});
    ASSERT_FALSE(written.has_value());
    EXPECT_EQ(written.error().code, Refusal::Code::stopped);
    EXPECT_EQ(content_of(folder / "plan.gpkg"), "an earlier file");
    EXPECT_EQ(folder.entries(), 1U);
}

TEST(GeoPackageLayers, replace_an_earlier_file_whole) {
    const TemporaryFolder folder;
    const FieldSurvey field = example_field();
    folder.file("plan.gpkg", std::string(5'000'000, 'x'));
    ASSERT_EQ(refusal_of(write_geopackage(field, example_plan(field), folder / "plan.gpkg", LengthUnits::metres)), "");
    EXPECT_TRUE(read_field({folder / "plan.gpkg"}).has_value());
    EXPECT_EQ(folder.entries(), 1U);
}

TEST(GeoPackageLayers, are_refused_with_the_name_where_nothing_can_be_written) {
    const TemporaryFolder folder;
    const FieldSurvey field = example_field();
    for (const std::filesystem::path& file : {folder / "missing/plan.gpkg", folder.path(), folder / "plain.txt/plan.gpkg"}) {
        folder.file("plain.txt", "");
        const auto written = write_geopackage(field, example_plan(field), file, LengthUnits::metres);
        ASSERT_FALSE(written.has_value()) << file;
        EXPECT_EQ(written.error().code, Refusal::Code::cannot_write);
        EXPECT_EQ(written.error().file, file.string());
        EXPECT_EQ(folder.entries(), 1U);
    }
}

// A disk that is full: files of this process may not grow beyond a few pages.
TEST(GeoPackageLayers, leave_no_half_file_on_a_full_disk) {
    const TemporaryFolder folder;
    folder.file("earlier.gpkg", "an earlier file");
    const FieldSurvey field = example_field();
    const Plan plan = example_plan(field);
    EXPECT_EXIT(
        {
            limit_file_size(20'000);
            const auto written = write_geopackage(field, plan, folder / "earlier.gpkg", LengthUnits::metres);
            std::_Exit(!written.has_value() && written.error().code == Refusal::Code::cannot_write ? 42 : 1);
        },
        ::testing::ExitedWithCode(42), "");
    EXPECT_EQ(content_of(folder / "earlier.gpkg"), "an earlier file");
    EXPECT_EQ(folder.entries(), 1U);
}

}  // namespace
}  // namespace plugside
