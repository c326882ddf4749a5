// The school field is what its README says: made by its command, and its table is what the batch program finds for each method.
#include <gtest/gtest.h>

#include <map>
#include <regex>
#include <sstream>

#include "app/batch/sample_fields.h"
#include "core/sets/method.h"
#include "tests/batch/run_program.h"

namespace plugside::testing_batch {
namespace {

const std::string school = PLUGSIDE_SOURCE_DIR "/sample-projects/school-field/";

const KeepClearArea& area_of(const SimulatedField& field, KeepClearKind kind) {
    for (const KeepClearArea& area : field.survey.ground.keep_clear)
        if (area.kind == kind) return area;
    throw std::runtime_error("no such area");
}

// "people-and-animals (16), well (4)": what lines of the summary that begin with `head` tell, in their order.
std::string found_under(const std::string& head, const std::string& summary) {
    const std::regex line("^" + head + " \\(([a-z-]+), ([0-9]+) sets?\\): .*$");
    std::string cells;
    std::istringstream lines(summary);
    std::smatch match;
    for (std::string text; std::getline(lines, text);)
        if (std::regex_match(text, match, line))
            cells += (cells.empty() ? "" : ", ") + match[1].str() + " (" + match[2].str() + ")";
    return cells.empty() ? "none" : cells;
}

std::string row_for(const std::string& method) {
    std::vector<std::string> words{"plan",         school + "walk.gpx",
                                   "--ground",     school + "ground.gpkg",
                                   "--day",        "2025-04-10",
                                   "--conditions", school + "conditions.txt",
                                   "--method",     method};
    const Stuff stuff = built_in_method(method)->stuff;
    if (stuff == Stuff::bait) words.insert(words.end(), {"--label", school + "label.txt"});
    if (stuff == Stuff::fumigant) words.insert(words.end(), {"--label", school + "label-fumigant.txt"});
    const Outcome outcome = run_batch(words);
    return "| `" + method + "` | " + found_under("Stop", outcome.out) + " | " + found_under("Hold back", outcome.out) +
           " | " + found_under("Not known, may (?:be a stop|hold back)", outcome.out) + " | " +
           std::to_string(outcome.code) + " |\n";
}

TEST(SchoolField, IsMadeAgainByItsCommandAndIsSmall) {
    const TemporaryFolder folder;
    const Outcome outcome = run_batch({"simulate", "--sample", "school-field", "--out", folder.at("again")});
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_EQ(content_of(folder.at("again/walk.gpx")), content_of(school + "walk.gpx"));
    std::uintmax_t bytes = 0;
    for (const auto& entry : std::filesystem::directory_iterator(school)) bytes += entry.file_size();
    EXPECT_LT(bytes, 1024u * 1024u);
}

TEST(SchoolField, HasSystemsNearEachThingAndNoneUnderIt) {
    const SimulatedField field = made_field(*find_sample("school-field"));
    EXPECT_EQ(field.survey.ground.barriers.at(0).name, "drain");
    const auto nearest = [&](KeepClearKind kind) {
        double least = 1e9;
        for (const TrueRun& run : field.truth.runs)
            for (const LocalPoint place : run.line.vertices)
                least = std::min(least, distance(place, area_of(field, kind).area).value());
        return least;
    };
    const std::map<KeepClearKind, double> reach{{KeepClearKind::building, 30.48},
                                                {KeepClearKind::play_area, 30.48},
                                                {KeepClearKind::well, 30.48},
                                                {KeepClearKind::utility, 4.9}};
    for (const auto& [kind, within] : reach) {
        EXPECT_LT(nearest(kind), within) << to_text(kind);
        for (const TrueMound& mound : field.truth.mounds)
            EXPECT_GT(distance(mound.plug, area_of(field, kind).area).value(), 0.5) << to_text(kind);
        // a run passes over the gas line, which lies deeper
        if (kind != KeepClearKind::utility) {
            EXPECT_GT(nearest(kind), 0.5) << to_text(kind);
        }
    }
}

TEST(SchoolField, MeetsWithEachMethodWhatTheTableOfItsReadmeSays) {
    const std::string readme = content_of(school + "README.md");
    for (const std::string& method : built_in_method_ids()) {
        const std::string row = row_for(method);
        EXPECT_NE(readme.find("\n" + row), std::string::npos) << "not in the README: " << row;
        // and why is told of every rule in the table
        const std::regex id("([a-z-]+) \\([0-9]+\\)");
        for (auto found = std::sregex_iterator(row.begin(), row.end(), id); found != std::sregex_iterator(); ++found)
            EXPECT_NE(readme.find("\n- `" + (*found)[1].str() + "`: "), std::string::npos) << (*found)[1].str();
    }
}

TEST(SchoolField, IsWalkedOverItsFootbridge) {
    const Outcome outcome = run_batch({"plan", school + "walk.gpx", "--ground", school + "ground.gpkg"});
    EXPECT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_EQ(outcome.out.find("No gate is drawn"), std::string::npos) << outcome.out;
}

TEST(SchoolField, SaysInsideItsLabelsThatThereIsNoSuchProduct) {
    for (const char* name : {"label.txt", "label-fumigant.txt"})
        EXPECT_NE(content_of(school + name).find("there is no such product"), std::string::npos) << name;
}

}  // namespace
}  // namespace plugside::testing_batch
