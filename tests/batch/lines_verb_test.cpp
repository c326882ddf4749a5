#include <gtest/gtest.h>

#include <fstream>

#include "tests/batch/run_program.h"

namespace plugside::testing_batch {
namespace {

const std::string sample = PLUGSIDE_SOURCE_DIR "/sample-projects/creek-meadow/";

std::size_t count_of(const std::string& text, const std::string& word) {
    std::size_t found = 0;
    for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) ++found;
    return found;
}

TEST(LinesVerb, lays_lines_over_the_ground_alone_with_a_default_that_says_so) {
    const TemporaryFolder folder;
    const Outcome outcome =
        run_batch({"lines", "--ground", sample + "ground.gpkg", "--out", folder.at("lines.gpx"), "--units", "metres"});
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_TRUE(outcome.err.empty()) << outcome.err;
    EXPECT_NE(outcome.out.find("is a default"), std::string::npos);
    EXPECT_NE(outcome.out.find("about 90 in 100"), std::string::npos);
    EXPECT_NE(outcome.out.find("Written: "), std::string::npos);
    EXPECT_GT(count_of(content_of(folder.at("lines.gpx")), "<rtept "), 20U);
}

TEST(LinesVerb, learns_from_a_walk_and_lays_closer_lines_for_more) {
    const TemporaryFolder folder;
    int before = 0;
    for (const char* see : {"70", "95"}) {
        const Outcome outcome = run_batch({"lines", sample + "walk.gpx", "--ground", sample + "ground.gpkg", "--see", see,
                                           "--out", folder.at("lines.gpx")});
        ASSERT_EQ(outcome.code, 0) << outcome.err;
        EXPECT_NE(outcome.out.find("learnt from"), std::string::npos) << outcome.out;
        const std::size_t told = outcome.out.find("Walk: ");
        ASSERT_NE(told, std::string::npos) << outcome.out;
        const int lines = std::atoi(outcome.out.c_str() + told + std::string("Walk: ").size());
        EXPECT_GT(lines, before);
        before = lines;
    }
}

TEST(LinesVerb, shares_lines_among_walkers_and_goes_only_where_nobody_went) {
    const TemporaryFolder folder;
    const std::vector<std::string> call{"lines", sample + "walk.gpx",   "--ground", sample + "ground.gpkg",
                                        "--out", folder.at("lines.gpx")};
    auto with = [&](std::vector<std::string> more) {
        more.insert(more.begin(), call.begin(), call.end());
        const Outcome outcome = run_batch(more);
        EXPECT_EQ(outcome.code, 0) << outcome.err;
        return content_of(folder.at("lines.gpx"));
    };
    const std::string whole = with({});
    EXPECT_GT(count_of(with({"--walkers", "3"}), "<rte>"), count_of(whole, "<rte>"));
    EXPECT_LT(count_of(with({"--unwalked"}), "<rtept "), count_of(whole, "<rtept ") / 2);
}

TEST(LinesVerb, wrong_calls_and_refused_inputs_have_their_codes) {
    const TemporaryFolder folder;
    const std::string ground = sample + "ground.gpkg";
    const std::string out = folder.at("lines.gpx");
    const std::vector<std::vector<std::string>> wrong{{"lines"},
                                                      {"lines", "--ground", ground},
                                                      {"lines", "--out", out},
                                                      {"lines", "--ground", ground, "--out", out, "--see", "100"},
                                                      {"lines", "--ground", ground, "--out", out, "--walkers", "0"},
                                                      {"lines", "--ground", ground, "--out", out, "--pace", "fast"},
                                                      {"lines", "--ground", ground, "--out", out, "--pace", "9"},
                                                      {"lines", "--ground", ground, "--out", out, "--units", "rods"},
                                                      {"lines", "--ground", ground, "--out", out, "--unwalked"}};
    for (const auto& words : wrong) {
        const Outcome outcome = run_batch(words);
        EXPECT_EQ(outcome.code, 2) << words.back();
        EXPECT_EQ(lines_of(outcome.err), 1U) << outcome.err;
    }
    const std::vector<std::vector<std::string>> refused{
        {"lines", sample + "walk.gpx", "--out", out},  // no boundary
        {"lines", "--ground", folder.at("missing.gpkg"), "--out", out},
        {"lines", "--ground", ground, "--out", folder.at("nowhere/lines.gpx")},
        {"lines", "--ground", ground, "--out", ground}};
    for (const auto& words : refused) {
        const Outcome outcome = run_batch(words);
        EXPECT_EQ(outcome.code, 3) << words.back();
        EXPECT_EQ(lines_of(outcome.err), 1U) << outcome.err;
    }
    EXPECT_TRUE(folder.holds_nothing_but({}));
}

TEST(PlanSummary, tells_what_was_walked_and_what_was_not_seen) {
    const Outcome outcome =
        run_batch({"plan", sample + "walk.gpx", "--ground", sample + "ground.gpkg", "--units", "metres"});
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_NE(outcome.out.find("Walked: "), std::string::npos);
    EXPECT_NE(outcome.out.find("not seen there: "), std::string::npos);
    EXPECT_NE(outcome.out.find("On the ground not walked: "), std::string::npos);
}

}  // namespace
}  // namespace plugside::testing_batch
