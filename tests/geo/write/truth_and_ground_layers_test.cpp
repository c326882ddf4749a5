#include <gtest/gtest.h>

#include "geo/read/field_reader.h"
#include "geo/write/ground_layers.h"
#include "geo/write/truth_layers.h"
#include "tests/geo/example_field.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

SimulatedField simulated() {
    SimulatedField field;
    field.survey = example_field().survey;
    field.truth.systems = 2;
    field.truth.tunnel_diameter = Metres::of(0.0625);
    field.truth.mounds.push_back({{12.0, -40.0}, Bearing::degrees(135.0), 0, {11.75, -39.75}, 0U});
    field.truth.mounds.push_back({{61.0, 20.0}, Bearing::degrees(359.0), 1, {61.0, 19.75}, std::nullopt});
    field.truth.runs.push_back({0, {{{11.75, -39.75}, {11.85, -39.75}, {11.95, -39.7}}}, Metres::of(0.25)});
    return field;
}

// Read with Python's sqlite3 alone; the numbers in the script's last lines are the ones above.
TEST(TruthLayers, hold_the_truth_for_a_reader_of_another_make) {
    const TemporaryFolder folder;
    const LocalFrame frame = example_field().frame;
    ASSERT_EQ(refusal_of(write_truth(simulated(), frame, folder / "truth.gpkg")), "");
    const GeographicPoint junction = frame.to_geographic({11.75, -39.75});
    std::ostringstream script;
    script.precision(17);
    script << "import sqlite3\n"
              "db = sqlite3.connect('"
           << (folder / "truth.gpkg").string()
           << "')\n"
              "m = db.execute('SELECT fan_bearing, system_id, mark, junction_lon, junction_lat FROM true_mounds ORDER BY "
              "fid').fetchall()\n"
              "assert len(m) == 2 and abs(m[0][0] - 135) < .01 and m[0][1:3] == (1, 'M001') and m[1][1:3] == (2, None), m\n"
              "assert abs(m[0][3] - "
           << junction.longitude_degrees << ") < 1e-12 and abs(m[0][4] - " << junction.latitude_degrees
           << ") < 1e-12, m\n"
              "assert db.execute('SELECT system_id, depth_m FROM true_runs').fetchall() == [(1, .25)]\n"
              "assert db.execute('SELECT systems, tunnel_diameter_m, mounds, mounds_seen FROM truth_summary').fetchall() == "
              "[(2, .0625, 2, 1)]\n"
              "kinds = dict(db.execute('SELECT table_name, geometry_type_name FROM gpkg_geometry_columns'))\n"
              "assert kinds == {'true_mounds': 'POINT', 'true_runs': 'LINESTRING'}, kinds\n";
    folder.file("check.py", script.str());
    EXPECT_EQ(run("/usr/bin/python3 '" + (folder / "check.py").string() + "'", folder / "said.txt"), 0)
        << content_of(folder / "said.txt");
    EXPECT_EQ(run("/usr/bin/python3 -m osgeo_utils.samples.validate_gpkg --extra '" + (folder / "truth.gpkg").string() + "'",
                  folder / "said.txt"),
              0);
    EXPECT_EQ(content_of(folder / "said.txt"), "");
}

TEST(TruthLayers, are_refused_as_ground_because_they_are_none) {
    const TemporaryFolder folder;
    ASSERT_EQ(refusal_of(write_truth(simulated(), example_field().frame, folder / "truth.gpkg")), "");
    const auto field = read_field({folder / "truth.gpkg"});
    ASSERT_FALSE(field.has_value());
    EXPECT_EQ(field.error().code, Refusal::Code::wrong_format);
    EXPECT_NE(sentence(field.error()).find("true_mounds, true_runs, truth_summary"), std::string::npos)
        << sentence(field.error());
}

TEST(GroundLayers, pass_the_validator_also_when_there_is_no_ground) {
    const TemporaryFolder folder;
    const FieldSurvey field = example_field();
    for (const Ground& ground : {field.survey.ground, Ground{}}) {
        ASSERT_EQ(refusal_of(write_ground(ground, field.frame, folder / "ground.gpkg")), "");
        EXPECT_EQ(
            run("/usr/bin/python3 -m osgeo_utils.samples.validate_gpkg --extra '" + (folder / "ground.gpkg").string() + "'",
                folder / "said.txt"),
            0);
        EXPECT_EQ(content_of(folder / "said.txt"), "");
        const auto back = read_field({folder / "ground.gpkg"});
        ASSERT_TRUE(back.has_value()) << sentence(back.error());
        EXPECT_EQ(back->survey.ground.barriers.size(), ground.barriers.size());
    }
}

}  // namespace
}  // namespace plugside
