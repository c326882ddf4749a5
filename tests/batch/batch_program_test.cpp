#include <gtest/gtest.h>

#include <chrono>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "tests/batch/run_program.h"

namespace plugside::testing_batch {
namespace {

namespace fs = std::filesystem;

const std::string sample = PLUGSIDE_SOURCE_DIR "/sample-projects/creek-meadow/";

void write_file(const std::string& name, const std::string& text) { std::ofstream(name, std::ios::binary) << text; }

TEST(BatchProgram, HelpAndVersionAreToldOnStdoutAndAreNoMistake) {
    const Outcome version = run_batch({"--version"});
    EXPECT_EQ(version.code, 0);
    EXPECT_EQ(version.out.find("plugside-batch "), 0u);
    EXPECT_TRUE(version.err.empty());
    const Outcome help = run_batch({"--help"});
    EXPECT_EQ(help.code, 0);
    for (const char* verb : {"read", "plan", "lines", "simulate", "evaluate"}) {
        EXPECT_NE(help.out.find(verb), std::string::npos);
        const Outcome of_verb = run_batch({verb, "--help"});
        EXPECT_EQ(of_verb.code, 0);
        EXPECT_EQ(of_verb.out, run_batch({verb, "--out", "somewhere", "--help"}).out);
        EXPECT_EQ(of_verb.out.find(std::string("plugside-batch ") + verb), 0u);
        EXPECT_TRUE(of_verb.err.empty());
    }
}

TEST(BatchProgram, AWrongCallIsOneSentenceWithTheWayToTheHelpAndCodeTwo) {
    const std::vector<std::vector<std::string>> wrong{{},
                                                      {"bury"},
                                                      {"plan"},
                                                      {"plan", "a.gpx", "--colour", "red"},
                                                      {"plan", "a.gpx", "--out"},
                                                      {"plan", "a.gpx", "--units", "rods"},
                                                      {"plan", "a.gpx", "--out", "x.gpkg", "--out", "y.gpkg"},
                                                      {"plan", "a.gpx", "-x"},
                                                      {"simulate", "--seed", "1"},
                                                      {"simulate", "--out", "x"},
                                                      {"simulate", "--seed", "minus", "--out", "x"},
                                                      {"simulate", "--seed", "1", "--kind", "spiral", "--out", "x"},
                                                      {"simulate", "--seed", "1", "--sample", "creek-meadow", "--out", "x"},
                                                      {"evaluate", "--seeds", "0"},
                                                      {"evaluate", "--fields", "0"},
                                                      {"evaluate", "--fields", "8", "--seeds", "2"},
                                                      {"evaluate", "--kinds", "meander,spiral"},
                                                      {"evaluate", "stray"}};
    for (const auto& words : wrong) {
        const Outcome outcome = run_batch(words);
        std::string told;
        for (const std::string& word : words) told += word + " ";
        EXPECT_EQ(outcome.code, 2) << told;
        EXPECT_TRUE(outcome.out.empty()) << told;
        EXPECT_EQ(lines_of(outcome.err), 1u) << told;
        EXPECT_NE(outcome.err.find("--help"), std::string::npos) << told;
    }
}

TEST(BatchProgram, ARefusedInputIsOneSentenceThatNamesTheFileCodeThreeAndLeavesNothingBehind) {
    const TemporaryFolder folder;
    write_file(folder.at("empty.gpx"), "");
    write_file(folder.at("words.gpx"), "this is no walk");
    write_file(folder.at("place.gpx"),
               "<?xml version=\"1.0\"?>\n<gpx version=\"1.1\" creator=\"x\" xmlns=\"http://www.topografix.com/GPX/1/1\">\n"
               "<wpt lat=\"abc\" lon=\"2\"><name>M001</name></wpt></gpx>\n");
    fs::create_directory(folder.at("folder.gpx"));
    const std::vector<std::string> inputs{"empty.gpx", "words.gpx", "place.gpx", "folder.gpx"};
    for (const std::string& name : {std::string("missing.gpx"), inputs[0], inputs[1], inputs[2], inputs[3]}) {
        const Outcome outcome = run_batch({"plan", folder.at(name), "--out", folder.at("plan.gpkg"), "--waypoints",
                                           folder.at("sets.gpx"), "--picture", folder.at("map.png")});
        EXPECT_EQ(outcome.code, 3) << name;
        EXPECT_TRUE(outcome.out.empty()) << name;
        EXPECT_EQ(lines_of(outcome.err), 1u) << name << ": " << outcome.err;
        EXPECT_NE(outcome.err.find(name), std::string::npos) << outcome.err;
        EXPECT_TRUE(folder.holds_nothing_but(inputs)) << name;
    }
}

TEST(BatchProgram, AnOutputThatCannotBeIsToldBeforeAnythingIsWritten) {
    const TemporaryFolder folder;
    const std::string walk = sample + "walk.gpx";
    const std::string good = folder.at("plan.gpkg");
    const std::vector<std::vector<std::string>> impossible{
        {"plan", walk, "--out", good, "--waypoints", folder.at("nowhere/sets.gpx")},
        {"plan", walk, "--out", good, "--waypoints", good},
        {"plan", walk, "--out", good, "--picture", folder.at(".")},
        {"plan", walk, "--out", good, "--waypoints", walk},
        {"evaluate", "--seeds", "1", "--out", folder.at("nowhere/table.csv")},
        {"evaluate", "--fields", "4", "--out", folder.at("a.csv"), "--report", folder.at("nowhere/report.html")},
        {"evaluate", "--fields", "4", "--out", folder.at("one"), "--report", folder.at("one")}};
    const std::string before = content_of(walk);
    for (const auto& words : impossible) {
        const Outcome outcome = run_batch(words);
        EXPECT_EQ(outcome.code, 3) << words.back();
        EXPECT_EQ(lines_of(outcome.err), 1u) << outcome.err;
        EXPECT_TRUE(folder.holds_nothing_but({})) << words.back();
    }
    EXPECT_EQ(content_of(walk), before);
}

TEST(BatchProgram, SimulateGivesTheSameFilesForTheSameSeedByteForByte) {
    const TemporaryFolder folder;
    for (const char* kind : {"meander", "straight-with-branches", "crowded-growth", "edge-rows", "patch-foraging",
                             "shared-ground", "food-tree"}) {
        for (const char* run : {"a", "b"}) {
            const Outcome outcome = run_batch(
                {"simulate", "--seed", "12", "--kind", kind, "--mounds", "80", "--with-ground", "--out", folder.at(run)});
            EXPECT_EQ(outcome.code, 0) << outcome.err;
            EXPECT_TRUE(outcome.err.empty()) << outcome.err;
        }
        for (const char* name : {"/walk.gpx", "/truth.gpkg", "/ground.gpkg"}) {
            const std::string a = content_of(folder.at("a") + name);
            EXPECT_FALSE(a.empty()) << kind << name;
            EXPECT_EQ(a, content_of(folder.at("b") + name)) << kind << name;
        }
    }
    const Outcome bare = run_batch({"simulate", "--seed=3", "--mounds=20", "--out=" + folder.at("bare")});
    EXPECT_EQ(bare.code, 0);
    EXPECT_FALSE(fs::exists(folder.at("bare") + "/ground.gpkg"));
    EXPECT_TRUE(fs::exists(folder.at("bare") + "/truth.gpkg"));
}

TEST(BatchProgram, PlansTheSampleWithEveryOutputAndSaysSoInAFewLines) {
    const TemporaryFolder folder;
    const auto start = std::chrono::steady_clock::now();
    const Outcome outcome = run_batch({"plan", sample + "walk.gpx", "--ground", sample + "ground.gpkg", "--out",
                                       folder.at("plan.gpkg"), "--waypoints", folder.at("sets.gpx"), "--units", "metres"});
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_TRUE(outcome.err.empty()) << outcome.err;  // nothing misunderstood, and no progress into a file
    EXPECT_NE(outcome.out.find("Animals: "), std::string::npos);
    EXPECT_NE(outcome.out.find(" ha walked"), std::string::npos);
    EXPECT_NE(outcome.out.find("What else may be true"), std::string::npos);
    EXPECT_NE(outcome.out.find(" of 100"), std::string::npos);
    EXPECT_NE(outcome.out.find("The label, local rules"), std::string::npos);
    EXPECT_LT(took.count(), 10.0);  // under a second in a release build on an idle machine
    EXPECT_TRUE(content_of(folder.at("plan.gpkg")).starts_with("SQLite format 3"));
    EXPECT_NE(content_of(folder.at("sets.gpx")).find("<wpt"), std::string::npos);
    const Outcome again = run_batch({"plan", sample + "walk.gpx", "--ground", sample + "ground.gpkg", "--waypoints",
                                     folder.at("again.gpx"), "--units", "metres"});
    EXPECT_EQ(content_of(folder.at("sets.gpx")), content_of(folder.at("again.gpx")));
}

TEST(BatchProgram, DrawsTheMapWithoutADisplay) {
    const TemporaryFolder folder;
    const Outcome outcome = run_batch({"plan", sample + "walk.gpx", "--picture", folder.at("map.png"), "--summary"});
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_NE(outcome.out.find("  A: "), std::string::npos);
    const std::string picture = content_of(folder.at("map.png"));
    EXPECT_EQ(picture.substr(1, 3), "PNG");
    EXPECT_GT(picture.size(), 20000u);  // an empty sheet packs to far less
}

TEST(BatchProgram, AnInterruptStopsCleanlyAndLeavesNoTable) {
    const TemporaryFolder folder;
    const auto start = std::chrono::steady_clock::now();
    const Outcome outcome =
        run_batch({"evaluate", "--fields", "4000", "--out", folder.at("table.csv"), "--report", folder.at("report.html")},
                  std::chrono::milliseconds(700));
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
    EXPECT_EQ(outcome.code, 130);
    EXPECT_TRUE(outcome.out.empty());
    EXPECT_EQ(lines_of(outcome.err), 1u) << outcome.err;
    EXPECT_TRUE(folder.holds_nothing_but({}));
    EXPECT_LT(took.count(), 30.0);
}

TEST(BatchProgram, EvaluateGivesALineAKindAndARowAField) {
    const TemporaryFolder folder;
    const Outcome outcome = run_batch(
        {"evaluate", "--seeds", "2", "--kinds", "meander,edge-rows", "--mounds", "60", "--out", folder.at("table.csv")});
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_TRUE(outcome.err.empty()) << outcome.err;
    for (const char* word : {"meander", "edge rows", "all", "yardstick", "plug side", "between mounds"})
        EXPECT_NE(outcome.out.find(word), std::string::npos) << word;
    EXPECT_EQ(outcome.out.find("crowded"), std::string::npos);

    std::istringstream table(content_of(folder.at("table.csv")));
    std::string row;
    std::size_t columns = 0;
    std::size_t rows = 0;
    while (std::getline(table, row)) {
        const auto commas = static_cast<std::size_t>(std::count(row.begin(), row.end(), ','));
        if (rows++ == 0) columns = commas;
        EXPECT_EQ(commas, columns) << row;
        EXPECT_TRUE(row.ends_with("\r")) << row;
        if (rows == 2) {
            EXPECT_TRUE(row.starts_with("meander,1,")) << row;
        }
        if (rows == 5) {
            EXPECT_TRUE(row.starts_with("edge-rows,2,")) << row;
        }
    }
    EXPECT_EQ(rows, 5u);
    EXPECT_EQ(columns, 74u);
}

TEST(BatchProgram, EvaluateWritesAReportThatIsWholeInItselfAndSpreadsItsFieldsOverTheKinds) {
    const TemporaryFolder folder;
    const Outcome outcome =
        run_batch({"evaluate", "--fields", "6", "--kinds", "meander,straight-with-branches,crowded-growth,edge-rows",
                   "--mounds", "60", "--out", folder.at("table.csv"), "--report", folder.at("report.html")});
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_TRUE(outcome.err.empty()) << outcome.err;
    const std::string table = content_of(folder.at("table.csv"));
    EXPECT_EQ(lines_of(table), 7u);
    for (const char* row : {"meander,1,", "meander,2,", "crowded-growth,1,", "edge-rows,1,"})
        EXPECT_NE(table.find(row), std::string::npos) << row;
    const std::string report = content_of(folder.at("report.html"));
    EXPECT_TRUE(report.starts_with("<!DOCTYPE html>"));
    EXPECT_NE(report.find("Tested: 6 made-up fields"), std::string::npos);
    for (const char* fetched : {"<script", "<link", "<img", "url(", "href", "@import", "src="})
        EXPECT_EQ(report.find(fetched), std::string::npos) << fetched;
    EXPECT_TRUE(folder.holds_nothing_but({"table.csv", "report.html"}));
}

}  // namespace
}  // namespace plugside::testing_batch
