#include "core/simulation/tuned_kinds.h"

#include <gtest/gtest.h>

namespace plugside {
namespace {

using Kinds = std::vector<FieldKind>;

TEST(KindsLearntOn, ReadsTheListAlsoOverTwoLinesOfTheComment) {
    EXPECT_EQ(kinds_learnt_on("# fields from seed 1 on, kinds: meander, edge rows.\nshift_sd\t0.6\n"),
              (Kinds{FieldKind::meander, FieldKind::edge_rows}));
    EXPECT_EQ(kinds_learnt_on("# kinds: crowded growth,\n# straight with\n# branches.\n"),
              (Kinds{FieldKind::straight_with_branches, FieldKind::crowded_growth}));
    EXPECT_EQ(kinds_learnt_on("# kinds: meander, spirals.\n"), Kinds{FieldKind::meander});
    EXPECT_FALSE(kinds_learnt_on("shift_sd\t0.6\n"));
    EXPECT_EQ(kinds_learnt_on("# kinds:"), Kinds{});
}

TEST(KindsLearntOn, TheWeightsOfTheProgramNameTheirs) {
    ASSERT_TRUE(kinds_learnt_on());
    EXPECT_FALSE(kinds_learnt_on()->empty());
}

}  // namespace
}  // namespace plugside
