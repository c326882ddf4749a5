#include "core/survey/known_fact.h"

#include <gtest/gtest.h>

#include <limits>

namespace plugside {
namespace {

TEST(KnownFact, KindsKeepTheirNamesThereAndBack) {
    for (const char* text : {"same system", "different systems", "run here", "no run across", "not a gopher", "probe found",
                             "probe nothing", "caught here"}) {
        const auto kind = fact_kind_from_text(text);
        ASSERT_TRUE(kind) << text;
        EXPECT_EQ(to_text(*kind), text);
    }
    EXPECT_FALSE(fact_kind_from_text("Same system"));
    EXPECT_FALSE(fact_kind_from_text(""));
}

TEST(KnownFact, IsSaidInASentence) {
    KnownFact fact{FactKind::same_system, {"M001", "M002"}, {}, {}, {}, {}};
    EXPECT_EQ(to_text(fact), "M001 and M002 are one system");
    fact.log_strength = 2.3;
    EXPECT_EQ(to_text(fact), "M001 and M002 are one system, likely");
    fact = {FactKind::caught_here, {"M010"}, {}, {}, {}, {}};
    EXPECT_EQ(to_text(fact), "an animal was caught at M010");
    fact = {FactKind::no_run_across, {}, Polyline{{{0, 0}, {5, 0}}}, {}, {}, {}};
    EXPECT_EQ(to_text(fact), "no run crosses the drawn line");
}

TEST(KnownFact, AreEqualWhenAllTheySayIs) {
    const KnownFact fact{FactKind::same_system, {"M001", "M002"}, {}, {}, "Ann", {}};
    KnownFact other = fact;
    EXPECT_EQ(fact, other);
    other.log_strength = 1.0;
    EXPECT_NE(fact, other);
    other = fact;
    other.said_by = "Ben";
    EXPECT_NE(fact, other);
}

TEST(KnownFact, TellsWhatIsMissing) {
    const Polyline line{{{0, 0}, {5, 0}}};
    EXPECT_FALSE(what_is_missing({FactKind::same_system, {"A", "B"}, {}, 2.0, {}, {}}));
    EXPECT_FALSE(what_is_missing({FactKind::run_here, {"A", "B"}, {}, {}, {}, {}}));
    EXPECT_FALSE(what_is_missing({FactKind::run_here, {}, line, {}, {}, {}}));
    EXPECT_FALSE(what_is_missing({FactKind::not_a_gopher, {"A"}, {}, {}, {}, {}}));
    EXPECT_EQ(what_is_missing({FactKind::same_system, {"A"}, {}, {}, {}, {}}), "two marks are expected");
    EXPECT_EQ(what_is_missing({FactKind::same_system, {"A", "A"}, {}, {}, {}, {}}), "two different marks are expected");
    EXPECT_EQ(what_is_missing({FactKind::caught_here, {}, {}, {}, {}, {}}), "one mark is expected");
    EXPECT_EQ(what_is_missing({FactKind::no_run_across, {}, Polyline{{{0, 0}}}, {}, {}, {}}),
              "a line of at least two places is expected");
    EXPECT_EQ(what_is_missing({FactKind::probe_found, {"A", "B"}, {}, -1.0, {}, {}}), "a strength above 0 is expected");
    EXPECT_EQ(what_is_missing({FactKind::probe_found, {"A", "B"}, {}, std::numeric_limits<double>::infinity(), {}, {}}),
              "a strength above 0 is expected");
}

}  // namespace
}  // namespace plugside
