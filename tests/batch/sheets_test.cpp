// plugside-batch plan --sheets, --phone: the sample's own plan on paper.
#include <gtest/gtest.h>

#include "tests/batch/run_program.h"

namespace plugside::testing_batch {
namespace {

const std::string sample = PLUGSIDE_SOURCE_DIR "/sample-projects/creek-meadow/";

TEST(Sheets, OfTheSampleAreWrittenInTheLanguageAndOnThePaperAskedFor) {
    const TemporaryFolder folder;
    const Outcome outcome =
        run_batch({"plan", sample + "walk.gpx", "--ground", sample + "ground.gpkg", "--sheets", folder.at("s.pdf"),
                   "--paper", "a4", "--phone", folder.at("p.html"), "--language", "es", "--units", "metres"});
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_NE(outcome.out.find("Escrito: " + folder.at("s.pdf")), std::string::npos);
    EXPECT_NE(outcome.out.find("Escrito: " + folder.at("p.html")), std::string::npos);
    const std::string pdf = content_of(folder.at("s.pdf"));
    EXPECT_EQ(pdf.substr(0, 5), "%PDF-");
    EXPECT_NE(pdf.find("/MediaBox [0 0 595"), std::string::npos);
    const std::string page = content_of(folder.at("p.html"));
    EXPECT_NE(page.find("<html lang=\"es\">"), std::string::npos);
    EXPECT_NE(page.find("lado del tapón de"), std::string::npos);
    EXPECT_TRUE(folder.holds_nothing_but({"s.pdf", "p.html"}));
}

TEST(Sheets, WantAPaperAndALanguageThatThereAre) {
    const TemporaryFolder folder;
    for (const std::vector<std::string>& words : {std::vector<std::string>{"--paper", "a5"}, {"--language", "de"}}) {
        std::vector<std::string> call{"plan", sample + "walk.gpx", "--sheets", folder.at("s.pdf")};
        call.insert(call.end(), words.begin(), words.end());
        const Outcome outcome = run_batch(call);
        EXPECT_EQ(outcome.code, 2);
        EXPECT_NE(outcome.err.find(words[1]), std::string::npos) << outcome.err;
    }
    EXPECT_TRUE(folder.holds_nothing_but({}));
}

}  // namespace
}  // namespace plugside::testing_batch
