#include <gtest/gtest.h>
#include <sqlite3.h>

#include <fstream>

#include "geo/read/field_reader.h"
#include "tests/batch/run_program.h"

namespace plugside::testing_batch {
namespace {

const std::string sample = PLUGSIDE_SOURCE_DIR "/sample-projects/creek-meadow/";

std::string written(const TemporaryFolder& folder, const std::string& name, const std::string& text) {
    std::ofstream(folder.at(name), std::ios::binary) << text;
    return folder.at(name);
}

// One number out of a GeoPackage.
double number_in(const std::string& file, const std::string& sql) {
    sqlite3* db = nullptr;
    EXPECT_EQ(sqlite3_open_v2(file.c_str(), &db, SQLITE_OPEN_READONLY, nullptr), SQLITE_OK);
    sqlite3_stmt* statement = nullptr;
    EXPECT_EQ(sqlite3_prepare_v2(db, sql.c_str(), -1, &statement, nullptr), SQLITE_OK) << sqlite3_errmsg(db);
    EXPECT_EQ(sqlite3_step(statement), SQLITE_ROW) << sql;
    const double number = sqlite3_column_double(statement, 0);
    sqlite3_finalize(statement);
    sqlite3_close(db);
    return number;
}

// Twelve mounds on a line 8 m apart, the third marked again 6 s later and 20 cm beside, with a track.
std::string walk_with_a_double() {
    std::string marks, track;
    const auto seconds = [](int s) {
        const int minute = s / 60, second = s % 60;
        return "2026-03-01T09:" + std::string(minute < 10 ? "0" : "") + std::to_string(minute) + ":" +
               (second < 10 ? "0" : "") + std::to_string(second) + "Z";
    };
    const auto mark = [&](const std::string& name, double metres, int time, const std::string& note) {
        marks += "<wpt lat=\"" + std::to_string(38.25 + metres / 111000.0) + "\" lon=\"-120.0\"><time>" + seconds(time) +
                 "</time><name>" + name + "</name><cmt>" + note + "</cmt></wpt>";
    };
    for (int i = 0; i < 12; ++i) {
        mark("M" + std::to_string(i + 1), 8.0 * i, 60 * i + 5, i == 7 ? "fan E fresh, gobbledy wobbledy" : "fan E fresh");
        if (i == 2) mark("again", 8.0 * i + 0.2, 60 * i + 11, "fan E fresh");
    }
    for (int s = 0; s < 740; s += 10)
        track += "<trkpt lat=\"" + std::to_string(38.25 + s * 8.0 / 60.0 / 111000.0) + "\" lon=\"-120.0\"><time>" +
                 seconds(s) + "</time></trkpt>";
    return "<?xml version=\"1.0\"?><gpx version=\"1.1\" creator=\"test\" xmlns=\"http://www.topografix.com/GPX/1/1\">" +
           marks + "<trk><trkseg>" + track + "</trkseg></trk></gpx>";
}

TEST(ReadVerb, makes_one_survey_of_a_walk_and_its_ground_and_tells_what_was_not_seen) {
    const TemporaryFolder folder;
    const std::string out = folder.at("survey.gpkg");
    const Outcome outcome =
        run_batch({"read", sample + "walk.gpx", sample + "ground.gpkg", "--out", out, "--units", "metres"});
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    for (const char* part :
         {"walk.gpx: ", "of track with ", "ground: a field of ", "Marks: ", "  gopher mound: ", "Findings: ", "Walked: ",
          "not walked: ", "not seen there: ", "On the ground not walked: ", "Written: "})
        EXPECT_NE(outcome.out.find(part), std::string::npos) << part << "\n" << outcome.out;
    const auto field = read_field({sample + "walk.gpx", sample + "ground.gpkg"});
    ASSERT_TRUE(field.has_value());
    const auto marks = static_cast<double>(field->survey.mounds.size());
    EXPECT_EQ(number_in(out, "SELECT count(*) FROM mounds"), marks);
    EXPECT_EQ(number_in(out, "SELECT mounds_recorded FROM survey_summary"), marks);
    EXPECT_EQ(number_in(out, "SELECT count(*) FROM mounds WHERE system_id IS NOT NULL OR take_off_lon IS NOT NULL"), 0.0);
    const double walked = number_in(out, "SELECT sum(area_m2) FROM walked_areas");
    const double unwalked = number_in(out, "SELECT sum(area_m2) FROM unwalked_areas");
    const double whole = number_in(out, "SELECT area_field_m2 FROM survey_summary");
    EXPECT_GT(walked, 0.0);
    EXPECT_GT(unwalked, 0.0);
    EXPECT_NEAR(walked + unwalked, whole, 0.001 * whole);
    const double low = number_in(out, "SELECT mounds_missed_low FROM survey_summary");
    const double high = number_in(out, "SELECT mounds_missed_high FROM survey_summary");
    EXPECT_LE(low, number_in(out, "SELECT mounds_missed FROM survey_summary"));
    EXPECT_GT(high, low);
    const auto back = read_field({out});
    ASSERT_TRUE(back.has_value()) << sentence(back.error());
    EXPECT_EQ(back->survey.mounds.size(), field->survey.mounds.size());
    EXPECT_TRUE(back->findings.empty()) << back->findings.front().sentence;
}

TEST(ReadVerb, accepts_what_is_sure_and_it_can_be_taken_back_after_reading) {
    const TemporaryFolder folder;
    const std::string walk = written(folder, "walk.gpx", walk_with_a_double());
    const Outcome open = run_batch({"read", walk, "--out", folder.at("open.gpkg")});
    ASSERT_EQ(open.code, 0) << open.err;
    EXPECT_NE(open.out.find("double mark: 1\n"), std::string::npos) << open.out;
    EXPECT_NE(open.out.find("Take both as one mound"), std::string::npos) << open.out;
    EXPECT_NE(open.out.find("M8: \"gobbledy wobbledy\""), std::string::npos) << open.out;
    EXPECT_NE(open.out.find("where the field ends is not known"), std::string::npos) << open.out;
    EXPECT_EQ(number_in(folder.at("open.gpkg"), "SELECT count(*) FROM finding_answers"), 0.0);
    const Outcome sure = run_batch({"read", walk, "--out", folder.at("sure.gpkg"), "--accept-sure"});
    ASSERT_EQ(sure.code, 0) << sure.err;
    EXPECT_NE(sure.out.find("double mark: 1, accepted: 1\n"), std::string::npos) << sure.out;
    EXPECT_NE(sure.out.find("95 in 100 or more: 1."), std::string::npos) << sure.out;
    EXPECT_EQ(number_in(folder.at("sure.gpkg"), "SELECT count(*) FROM findings WHERE answer = 'accepted'"), 1.0);
    auto back = read_field({folder.at("sure.gpkg")});
    const auto before = read_field({folder.at("open.gpkg")});
    ASSERT_TRUE(back.has_value() && before.has_value());
    ASSERT_EQ(back->survey.answers.size(), 1U);
    EXPECT_NE(back->survey.mounds, before->survey.mounds);
    take_answer_back(back->survey, back->survey.answers.front().finding);
    ASSERT_EQ(back->survey.mounds.size(), before->survey.mounds.size());
    for (std::size_t i = 0; i < back->survey.mounds.size(); ++i) {
        EXPECT_NEAR(distance_m(back->survey.mounds[i].plug, before->survey.mounds[i].plug), 0.0, 1e-3);
        EXPECT_EQ(back->survey.mounds[i].set_aside_because, std::nullopt);
    }
}

TEST(ReadVerb, tables_are_read_as_the_call_says) {
    const TemporaryFolder folder;
    // 500000 E, 4234000 N of zone 10 north lies on longitude 123 west
    const std::string table = written(folder, "marks.csv",
                                      "Wert1;Wert2;Richtung;Tag\n500000,5;4234000;90;03.02.2026 08:00\n"
                                      "500010;4234010;180;03.02.2026 08:05\n");
    const std::vector<std::string> told{
        "read",         table,   "--columns", "easting=Wert1,northing=Wert2,fan=Richtung,time=4",
        "--crs",        "32610", "--dates",   "day-first",
        "--hours-east", "-8",    "--out",     folder.at("s.gpkg")};
    const Outcome outcome = run_batch(told);
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_NE(outcome.out.find("2 marks, no track"), std::string::npos) << outcome.out;
    EXPECT_NE(outcome.out.find("What was not seen is not known"), std::string::npos) << outcome.out;
    auto field = read_field({folder.at("s.gpkg")});
    ASSERT_TRUE(field.has_value()) << sentence(field.error());
    const Mound& first = field->survey.mounds[0];
    EXPECT_NEAR(field->frame.to_geographic(first.plug).longitude_degrees, -123.0, 1e-4);
    EXPECT_NEAR(field->frame.true_bearing(*first.fan, first.plug).degrees(), 90.0, 1e-6);
    using namespace std::chrono;
    EXPECT_EQ(first.time, UtcTime{sys_days{year{2026} / 2 / 3} + hours(16)});
    auto without = told;
    without.erase(without.begin() + 4, without.begin() + 6);
    const Outcome asked = run_batch(without);
    EXPECT_EQ(asked.code, 3);
    EXPECT_NE(asked.err.find("without a reference system"), std::string::npos) << asked.err;
}

TEST(ReadVerb, bearings_read_from_magnetic_north_are_turned_and_told) {
    const TemporaryFolder folder;
    const std::string walk = written(folder, "walk.gpx", walk_with_a_double());
    const Outcome outcome = run_batch({"read", walk, "--north", "magnetic", "--out", folder.at("s.gpkg")});
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_NE(outcome.out.find("bearings from magnetic north"), std::string::npos) << outcome.out;
    EXPECT_NE(outcome.out.find("The fans of 13 marks are turned by "), std::string::npos) << outcome.out;
    const double fan = number_in(folder.at("s.gpkg"), "SELECT fan_bearing FROM mounds WHERE mound_id = 'M1'");
    EXPECT_GT(fan,
              90.0 + 10.0);  // declination in the middle of California is about 13 degrees east: NOAA's calculator [memory]
    EXPECT_LT(fan, 90.0 + 15.0);
    EXPECT_NEAR(number_in(folder.at("s.gpkg"), "SELECT recorded_fan_bearing FROM mounds WHERE mound_id = 'M1'"), 90.0, 1e-6);
}

TEST(ReadVerb, several_files_of_different_kinds_are_one_survey) {
    const TemporaryFolder folder;
    const std::string walk = written(folder, "walk.gpx", walk_with_a_double());
    const std::string table =
        written(folder, "phone.csv", "name,lat,lon,note\nP1,38.2501,-120.0003,fan N\nP2,38.2502,-120.0003,mole\n");
    const std::string ground = written(
        folder, "field.geojson",
        R"({"type":"FeatureCollection","features":[{"type":"Feature","properties":{},"geometry":{"type":"Polygon",)"
        R"("coordinates":[[[-120.001,38.249],[-119.999,38.249],[-119.999,38.252],[-120.001,38.252],[-120.001,38.249]]]}}]})");
    const Outcome outcome = run_batch({"read", walk, table, ground});
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_NE(outcome.out.find("walk 1, walk.gpx: 13 marks"), std::string::npos) << outcome.out;
    EXPECT_NE(outcome.out.find("walk 2, phone.csv: 2 marks, no track"), std::string::npos) << outcome.out;
    EXPECT_NE(outcome.out.find("ground: a field of "), std::string::npos) << outcome.out;
    EXPECT_NE(outcome.out.find("mole: 1\n"), std::string::npos) << outcome.out;
    EXPECT_EQ(outcome.out.find("Written: "), std::string::npos) << outcome.out;
    EXPECT_NE(outcome.err.find("taken as the field boundary"), std::string::npos) << outcome.err;
}

TEST(ReadVerb, wrong_calls_and_refused_inputs_have_their_codes_and_leave_nothing) {
    const TemporaryFolder folder;
    const TemporaryFolder inputs;
    const std::string walk = written(inputs, "walk.gpx", walk_with_a_double());
    const std::string table = written(inputs, "t.csv", "name,lat,lon\na,38,-120\n");
    const std::string out = folder.at("s.gpkg");
    const std::vector<std::vector<std::string>> wrong{{"read"},
                                                      {"read", "--out", out},
                                                      {"read", walk, "--north", "grid", "--out", out},
                                                      {"read", walk, "--units", "rods", "--out", out},
                                                      {"read", walk, "--crs", "mars", "--out", out},
                                                      {"read", walk, "--dates", "backwards", "--out", out},
                                                      {"read", walk, "--hours-east", "99", "--out", out},
                                                      {"read", walk, "--accept-sure=1", "--out", out},
                                                      {"read", table, "--columns", "colour=name", "--out", out},
                                                      {"read", table, "--columns", "fan=", "--out", out},
                                                      {"read", table, "--columns", "fan=bearing", "--out", out},
                                                      {"read", table, "--columns", "fan=9", "--out", out}};
    for (const auto& words : wrong) {
        const Outcome outcome = run_batch(words);
        EXPECT_EQ(outcome.code, 2) << words[words.size() - 3];
        EXPECT_EQ(lines_of(outcome.err), 1U) << outcome.err;
        EXPECT_TRUE(outcome.out.empty());
    }
    const std::string late = written(inputs, "late.csv", "name,lat,lon,fan,time\na,38,-120,90,2032-01-01 09:00\n");
    const std::vector<std::vector<std::string>> refused{{"read", folder.at("missing.gpx"), "--out", out},
                                                        {"read", walk, "--out", folder.at("nowhere/s.gpkg")},
                                                        {"read", walk, "--out", walk},
                                                        {"read", late, "--north", "magnetic", "--out", out},
                                                        {"read", written(inputs, "noise.gpx", "<gpx"), "--out", out}};
    for (const auto& words : refused) {
        const Outcome outcome = run_batch(words);
        EXPECT_EQ(outcome.code, 3) << words[1];
        EXPECT_EQ(lines_of(outcome.err), 1U) << outcome.err;
        EXPECT_TRUE(outcome.out.empty()) << outcome.out;
    }
    EXPECT_TRUE(folder.holds_nothing_but({}));
}

TEST(ReadVerb, an_interrupt_leaves_an_earlier_survey_as_it_was) {
    const TemporaryFolder folder;
    ASSERT_EQ(run_batch({"simulate", "--seed", "4", "--mounds", "20000", "--with-ground", "--out", folder.at("field")}).code,
              0);
    const std::string out = written(folder, "s.gpkg", "an earlier file");
    const Outcome outcome = run_batch({"read", folder.at("field/walk.gpx"), folder.at("field/ground.gpkg"), "--out", out},
                                      std::chrono::milliseconds(300));
    EXPECT_EQ(outcome.code, 130) << outcome.err;
    EXPECT_EQ(outcome.err.rfind("Stopped", 0), 0U) << outcome.err;
    EXPECT_EQ(lines_of(outcome.err), 1U);
    EXPECT_EQ(content_of(out), "an earlier file");
}

}  // namespace
}  // namespace plugside::testing_batch
