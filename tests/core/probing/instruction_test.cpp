#include "core/probing/instruction.h"

#include <gtest/gtest.h>

#include "core/probing/ladder.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

ProbeSite across_site() {
    ProbeSite site;
    site.key = {ProbeKind::between_mounds, "M1", "M2"};
    site.from_mound = 0;
    site.to_mound = 1;
    site.across_gap = true;
    site.axis = Bearing::degrees(90.0);
    site.ladder = {Metres::of(2.40), Metres::of(-0.10), 90.0, Metres::of(0.63), Metres::of(0.07)};
    site.rungs = rungs_of(site.ladder.half_length, site.ladder.step);
    return site;
}

Survey two_mounds() { return test::survey_of({test::mound_at(0, 0), test::mound_at(4.8, 0)}); }

TEST(Instruction, OfAWideRowAcrossAGapSaysWhyItIsWideInMetres) {
    EXPECT_EQ(
        instruction(across_site(), two_mounds(), LengthUnits::metres),
        "Tape from the plug of M1 to the plug of M2, towards 90\u00B0 (E). At 2.40 m step 10 cm to the left of the tape. "
        "Probe there "
        "first, then 7 cm to the left, 7 cm to the right and so on, up to 63 cm either way. The row is wide because neither "
        "plug "
        "shows where the run leaves: it lies across the gap, square to the tape. A sudden drop of about 5 cm is the run.");
}

TEST(Instruction, OfAWideRowAcrossAGapReadsInFeetAndInches) {
    EXPECT_EQ(instruction(across_site(), two_mounds(), LengthUnits::feet_and_inches),
              "Tape from the plug of M1 to the plug of M2, towards 90\u00B0 (E). At 7 ft 10 in step 4 in to the left of the "
              "tape. Probe there "
              "first, then 2 3/4 in to the left, 2 3/4 in to the right and so on, up to 2 ft 1 in either way. The row is "
              "wide because neither "
              "plug shows where the run leaves: it lies across the gap, square to the tape. A sudden drop of about 2 in is "
              "the run.");
}

TEST(Instruction, TellsStepsFinerThanWholeInchesAndCentimetres) {
    ProbeSite site = across_site();
    site.across_gap = false;
    site.ladder.step = Metres::of(0.057);
    EXPECT_NE(instruction(site, two_mounds(), LengthUnits::metres).find("then 5.7 cm to the left"), std::string::npos);
    EXPECT_NE(instruction(site, two_mounds(), LengthUnits::feet_and_inches).find("then 2 1/4 in to the left"),
              std::string::npos);
    site.ladder.step = Metres::of(0.05);
    EXPECT_NE(instruction(site, two_mounds(), LengthUnits::metres).find("then 5 cm to the left"), std::string::npos);
    EXPECT_NE(instruction(site, two_mounds(), LengthUnits::feet_and_inches).find("then 2 in to the left"),
              std::string::npos);
    EXPECT_EQ(instruction(site, two_mounds(), LengthUnits::metres).find("wide"), std::string::npos);
}

}  // namespace
}  // namespace plugside
