// plugside-batch plan --conditions, --method, --label, --day: how the work is done, what speaks against it, and what is not handed out.
#include <gtest/gtest.h>

#include "tests/batch/run_program.h"

namespace plugside::testing_batch {
namespace {

const std::string school = PLUGSIDE_SOURCE_DIR "/sample-projects/school-field/";
const std::string meadow = PLUGSIDE_SOURCE_DIR "/sample-projects/creek-meadow/";

std::string written(const TemporaryFolder& folder, const std::string& name, const std::string& text) {
    std::ofstream(folder.at(name)) << text;
    return folder.at(name);
}

std::string with(std::string text, const std::string& old, const std::string& now) {
    const std::size_t at = text.find(old);
    EXPECT_NE(at, std::string::npos) << old;
    return at == std::string::npos ? text : text.replace(at, old.size(), now);
}

std::vector<std::string> plan_of(const std::string& sample, const std::vector<std::string>& more) {
    std::vector<std::string> words{"plan", sample + "walk.gpx", "--ground", sample + "ground.gpkg", "--day", "2025-04-10"};
    words.insert(words.end(), more.begin(), more.end());
    return words;
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

TEST(WorkOrder, WithStopsIsWrittenIntoTheLayersButNotHandedOutAndTheExitCodeIsFour) {
    const TemporaryFolder folder;
    written(folder, "s.gpx", "older");
    const Outcome outcome =
        run_batch(plan_of(school, {"--conditions", school + "conditions.txt", "--label", school + "label-fumigant.txt",
                                   "--method", "fumigant", "--out", folder.at("p.gpkg"), "--waypoints", folder.at("s.gpx"),
                                   "--sheets", folder.at("s.pdf"), "--phone", folder.at("p.html")}));
    EXPECT_EQ(outcome.code, 4) << outcome.err;
    EXPECT_TRUE(has(outcome.err, "This plan is not to be handed out: ")) << outcome.err;
    EXPECT_TRUE(has(outcome.err, "Not written: " + folder.at("s.pdf") + "\n"));
    EXPECT_TRUE(has(outcome.err, "Not written: " + folder.at("p.html") + "\n"));
    EXPECT_TRUE(has(outcome.err, "Not written: " + folder.at("s.gpx") + " (what lies there is older)\n"));
    EXPECT_TRUE(has(outcome.out, "Written: " + folder.at("p.gpkg")));
    EXPECT_TRUE(has(outcome.out, "fumigant by tablets or cartridge (fumigant)"));
    EXPECT_TRUE(has(outcome.out, "may come within 100 ft (30 m) of schoolhouse"));
    EXPECT_TRUE(folder.holds_nothing_but({"p.gpkg", "s.gpx"}));
    EXPECT_EQ(content_of(folder.at("s.gpx")), "older");
    // the layers carry the order: planned again from them alone the same stops hold, and another method is told apart
    const Outcome again = run_batch({"plan", folder.at("p.gpkg"), "--day", "2025-04-10"});
    EXPECT_EQ(again.code, 4) << again.err;
    EXPECT_TRUE(has(again.out, "Stop (building, "));
}

TEST(WorkOrder, WithoutStopsIsHandedOutAndTellsWhatHoldsItBack) {
    const TemporaryFolder folder;
    const std::string marked = written(
        folder, "marked.txt", with(content_of(school + "conditions.txt"), "utilities = called", "utilities = marked"));
    const Outcome outcome =
        run_batch(plan_of(school, {"--conditions", marked, "--method", "paired-traps", "--waypoints", folder.at("s.gpx"),
                                   "--sheets", folder.at("s.pdf"), "--phone", folder.at("p.html")}));
    EXPECT_EQ(outcome.code, 0) << outcome.err << outcome.out;
    EXPECT_TRUE(has(outcome.out, "Hold back (people-and-animals, "));
    EXPECT_TRUE(has(outcome.out, "Children come here."));
    EXPECT_TRUE(has(outcome.out, "  trap-law-read: "));
    EXPECT_TRUE(has(outcome.out, "decide."));
    EXPECT_TRUE(folder.holds_nothing_but({"marked.txt", "s.gpx", "s.pdf", "p.html"}));
    EXPECT_TRUE(has(content_of(folder.at("p.html")), "paired traps in the run"));
}

TEST(WorkOrder, WithAnswersTooOldAsksForThemAgain) {
    const Outcome outcome = run_batch({"plan", school + "walk.gpx", "--ground", school + "ground.gpkg", "--conditions",
                                       school + "conditions.txt", "--method", "paired-traps", "--day", "2025-05-20"});
    EXPECT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_TRUE(has(outcome.out, "Not known, may be a stop (utility, "));
    EXPECT_TRUE(has(outcome.out, "The answer of 2025-04-10 is too old"));
}

TEST(WorkOrder, WithAMethodThatThereIsNotIsACallThatIsWrong) {
    const Outcome outcome = run_batch(plan_of(school, {"--method", "my own way"}));
    EXPECT_EQ(outcome.code, 2);
    for (const char* part : {"\"my own way\"", "trap-in-lateral", "paired-traps", "bait-opened-lateral", "bait-probe-hole",
                             "bait-dispensing-probe", "fumigant"})
        EXPECT_TRUE(has(outcome.err, part)) << part << " in " << outcome.err;
    EXPECT_EQ(run_batch(plan_of(school, {"--day", "tomorrow"})).code, 2);
}

TEST(WorkOrder, WithFilesThatCannotBeIsRefusedByFileAndLineAndNothingIsWritten) {
    struct Case {
        const char* conditions;
        const char* label;
        std::vector<const char*> parts;
    };
    const std::vector<Case> cases{
        {"given-at = 2025-04-10\nsoil-moisture = soaking\n",
         nullptr,
         {"c.txt, line 2, soil-moisture: found \"soaking\"", "expected"}},
        {"soil-moisture = wet\n", nullptr, {"c.txt: found answers without the day", "given-at = "}},
        {"given-at = spring\n", nullptr, {"c.txt, line 1, given-at: found \"spring\", expected a time"}},
        {"given-at = 2025-04-10\nfrost = no\nfrost = yes\n", nullptr, {"c.txt, line 3, frost: found a second row"}},
        {"# mine\nmethod = cats\n", nullptr, {"c.txt, line 2, method: found \"cats\", expected one of trap-in-lateral"}},
        {"signed.1.caution = building\nsigned.1.method = fumigant\nsigned.1.at = 2025-04-10T12:00:00Z\nsigned.1.name = N\n"
         "signed.1.reason = R\n",
         nullptr,
         {"c.txt, line 1, signed.1.caution: found \"building\", expected a hold-back"}},
        {nullptr,
         "label.ingredient = strychnine\nfrost = no\n",
         {"l.txt, line 2, frost: found \"frost\", expected a figure"}},
        {nullptr, "label.placement-most = -2 teaspoons\n", {"l.txt: found ", "expected figures as they stand on the label"}},
        {nullptr,
         "label.water-distance 3\n",
         {"l.txt, line 1: found \"label.water-distance 3\", expected a name, =, and a value"}},
    };
    for (const Case& one : cases) {
        const TemporaryFolder folder;
        std::vector<std::string> words{"--out", folder.at("p.gpkg")};
        if (one.conditions != nullptr) words.insert(words.end(), {"--conditions", written(folder, "c.txt", one.conditions)});
        if (one.label != nullptr) words.insert(words.end(), {"--label", written(folder, "l.txt", one.label)});
        const Outcome outcome = run_batch(plan_of(school, words));
        EXPECT_EQ(outcome.code, 3) << outcome.err;
        for (const char* part : one.parts) EXPECT_TRUE(has(outcome.err, part)) << part << " in " << outcome.err;
        EXPECT_TRUE(folder.holds_nothing_but({"c.txt", "l.txt"}));
    }
    const TemporaryFolder folder;
    const Outcome none = run_batch(plan_of(school, {"--conditions", folder.at("none.txt")}));
    EXPECT_EQ(none.code, 3);
    EXPECT_TRUE(has(none.err, "none.txt: found no such file")) << none.err;
    // an output does not overwrite them
    const std::string label = written(folder, "l.txt", "label.ingredient = strychnine\n");
    EXPECT_EQ(run_batch(plan_of(school, {"--label", label, "--out", label})).code, 3);
    EXPECT_EQ(content_of(label), "label.ingredient = strychnine\n");
}

TEST(WorkOrder, IsNoneForAPlanThatNothingWasToldOfAndItIsHandedOutAsBefore) {
    const TemporaryFolder folder;
    const Outcome outcome = run_batch(plan_of(meadow, {"--waypoints", folder.at("s.gpx")}));
    EXPECT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_FALSE(has(outcome.out, "Judged for"));
    EXPECT_TRUE(folder.holds_nothing_but({"s.gpx"}));
}

}  // namespace
}  // namespace plugside::testing_batch
