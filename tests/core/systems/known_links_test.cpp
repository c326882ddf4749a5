#include "core/systems/known_links.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/systems/disjoint_sets.h"
#include "tests/core/systems/scattered_field.h"

namespace plugside {
namespace {

// A row of marks a metre apart, each linked to the next; from `gap` on ten metres further.
struct Row {
    std::vector<LocalPoint> places;
    std::vector<Link> links;
    std::vector<std::string> names;
};
Row row_of_marks(std::uint32_t marks, std::uint32_t gap = 100) {
    Row row;
    for (std::uint32_t i = 0; i < marks; ++i) {
        row.places.push_back({i + (i >= gap ? 10.0 : 0.0), 0.0});
        row.names.push_back(std::string(1, static_cast<char>('A' + i)));
        if (i > 0 && i != gap) row.links.push_back({i - 1, i, 1.0, 1, 1});
    }
    return row;
}

KnownLinks known_of(const Row& row, const std::vector<KnownFact>& facts, const std::vector<Barrier>& barriers = {}) {
    const ResolvedFacts resolved = resolved_facts(facts, row.names, row.places);
    EXPECT_TRUE(resolved.conflicts.empty());
    return known_links(row.places, row.links, resolved.facts, barriers);
}

KnownFact same(const std::string& a, const std::string& b) { return {FactKind::same_system, {a, b}, {}, {}, {}, {}}; }
KnownFact different(const std::string& a, const std::string& b) {
    return {FactKind::different_systems, {a, b}, {}, {}, {}, {}};
}
KnownFact run(const std::string& a, const std::string& b) { return {FactKind::run_here, {a, b}, {}, {}, {}, {}}; }
KnownFact no_run(LocalPoint from, LocalPoint to) { return {FactKind::no_run_across, {}, Polyline{{from, to}}, {}, {}, {}}; }

TEST(KnownLinks, NamesTheChainThatALaterDifferenceContradicts) {
    const KnownLinks known = known_of(row_of_marks(3), {same("A", "B"), same("B", "C"), different("A", "C")});
    ASSERT_EQ(known.conflicts.size(), 1U);
    EXPECT_EQ(known.conflicts[0].set_aside, 2U);
    EXPECT_EQ(known.conflicts[0].with, (std::vector<std::size_t>{0, 1}));
    EXPECT_EQ(known.conflicts[0].sentence,
              "\"A and C are different systems\" is set aside: it contradicts \"B and C are one system\" and \"A and B are "
              "one system\".");
    EXPECT_EQ(known.pairs.size(), 2U);
}

TEST(KnownLinks, TheLaterOfTwoIsSetAsideWhicheverItIs) {
    const KnownLinks known = known_of(row_of_marks(3), {different("A", "C"), same("A", "B"), same("B", "C")});
    ASSERT_EQ(known.conflicts.size(), 1U);
    EXPECT_EQ(known.conflicts[0].set_aside, 2U);
    EXPECT_EQ(known.conflicts[0].with, (std::vector<std::size_t>{0, 1}));
}

TEST(KnownLinks, ARunContradictsADifferenceAndALineBetween) {
    KnownLinks known = known_of(row_of_marks(3), {different("A", "B"), run("A", "B")});
    ASSERT_EQ(known.conflicts.size(), 1U);
    EXPECT_EQ(known.conflicts[0].with, (std::vector<std::size_t>{0}));
    EXPECT_TRUE(known.forced.empty());
    known = known_of(row_of_marks(3), {run("A", "B"), no_run({0.5, -1.0}, {0.5, 1.0})});
    ASSERT_EQ(known.conflicts.size(), 1U);
    EXPECT_EQ(known.conflicts[0].set_aside, 1U);
    EXPECT_TRUE(known.removed.empty());
    EXPECT_EQ(known.forced, (std::vector<std::uint32_t>{0}));
    known = known_of(row_of_marks(3), {no_run({0.5, -1.0}, {0.5, 1.0}), run("A", "B")});
    ASSERT_EQ(known.conflicts.size(), 1U);
    EXPECT_EQ(known.conflicts[0].with, (std::vector<std::size_t>{0}));
    EXPECT_EQ(known.removed, (std::vector<std::uint32_t>{0}));
}

TEST(KnownLinks, AMarkBetweenTwoOfOneSystemCannotBeAnothers) {
    // B is the only way from A to C
    const KnownLinks known = known_of(row_of_marks(3), {same("A", "C"), different("A", "B")});
    EXPECT_TRUE(known.conflicts.empty()) << "a link past B is added instead";
    ASSERT_EQ(known.added.size(), 1U);
    EXPECT_EQ(std::pair(known.added[0].first, known.added[0].second), std::pair(0U, 2U));
    EXPECT_EQ(known.witness, (std::vector<std::uint32_t>{2}));
}

TEST(KnownLinks, ARunThatClosesARingIsSetAside) {
    const KnownLinks known = known_of(row_of_marks(3), {run("A", "B"), run("B", "C"), run("C", "A"), run("B", "A")});
    ASSERT_EQ(known.conflicts.size(), 1U);
    EXPECT_EQ(known.conflicts[0].set_aside, 2U);
    EXPECT_EQ(known.forced, (std::vector<std::uint32_t>{0, 1}));
}

TEST(KnownLinks, APairAcrossAGapGetsALinkBetweenTheNearestMarksUnlessABarrierForbids) {
    const Row row = row_of_marks(6, 3);
    KnownLinks known = known_of(row, {same("A", "F")});
    EXPECT_TRUE(known.conflicts.empty());
    ASSERT_EQ(known.added.size(), 1U);
    EXPECT_EQ(std::pair(known.added[0].first, known.added[0].second), std::pair(2U, 3U));
    EXPECT_DOUBLE_EQ(known.added[0].length_m, 11.0);
    EXPECT_EQ(known.witness.size(), 5U);
    const Barrier road{"road", Polyline{{{7.0, -50.0}, {7.0, 50.0}}}};
    known = known_of(row, {same("A", "F")}, {road});
    ASSERT_EQ(known.conflicts.size(), 1U);
    EXPECT_TRUE(known.added.empty() && known.pairs.empty() && known.witness.empty());
    known = known_of(row, {same("A", "F"), no_run({7.0, -50.0}, {7.0, 50.0})});
    ASSERT_EQ(known.conflicts.size(), 1U);
    EXPECT_EQ(known.conflicts[0].set_aside, 1U);
    EXPECT_EQ(known.conflicts[0].with, (std::vector<std::size_t>{0}));
}

TEST(KnownLinks, WhatIsLikelyWeighs) {
    std::vector<KnownFact> facts{same("A", "B"), different("B", "C"), run("A", "B"), no_run({1.5, -1.0}, {1.5, 1.0})};
    for (KnownFact& fact : facts) fact.log_strength = 2.0;
    facts.push_back({FactKind::probe_nothing, {"A", "B"}, {}, 0.5, {}, {}});
    facts.push_back({FactKind::probe_found, {"A", "C"}, {}, {}, {}, {}});
    facts.push_back({FactKind::caught_here, {"A"}, {}, {}, {}, {}});
    facts.push_back({FactKind::caught_here, {"C"}, {}, {}, {}, {}});
    const KnownLinks known = known_of(row_of_marks(3), facts);
    EXPECT_TRUE(known.conflicts.empty());
    EXPECT_EQ(known.pairs, (std::vector<NetworkTerms::Pair>{{0, 1, 2.0}, {1, 2, -2.0}}));
    ASSERT_EQ(known.added.size(), 1U) << "the probe found a run where there was no candidate";
    ASSERT_EQ(known.log_weight_change.size(), 3U);
    EXPECT_DOUBLE_EQ(known.log_weight_change[0], 1.5);
    EXPECT_DOUBLE_EQ(known.log_weight_change[1], -2.0);
    EXPECT_DOUBLE_EQ(known.log_weight_change[2], std::log(0.92 / 0.05) - 2.0) << "it crosses the line, too";
    EXPECT_EQ(known.catches, (std::vector<std::uint32_t>{1, 0, 1}));
    EXPECT_DOUBLE_EQ(known.log_per_extra_catch, std::log(3.0 / 14.0))
        << "3 short sharings among 14, New Mexico activity study";
}

TEST(KnownLinks, FactsAboutAMarkThatIsNoGophersAreSetAside) {
    const Row row = row_of_marks(2);
    const ResolvedFacts resolved =
        resolved_facts({same("A", "X"), {FactKind::not_a_gopher, {"X"}, {}, {}, {}, {}}, same("A", "Y"), same("A", "B")},
                       row.names, row.places);
    ASSERT_EQ(resolved.conflicts.size(), 2U);
    EXPECT_EQ(resolved.conflicts[0].sentence,
              "\"A and X are one system\" is set aside: it contradicts \"X is not a gopher's\".");
    EXPECT_EQ(resolved.conflicts[0].with, (std::vector<std::size_t>{1}));
    EXPECT_EQ(resolved.conflicts[1].set_aside, 2U);
    ASSERT_EQ(resolved.facts.size(), 1U);
    EXPECT_EQ(resolved.facts[0].fact, 3U);
}

TEST(KnownLinks, ADrawnRunJoinsTheMarksBesideItInTheirOrder) {
    const Row row = row_of_marks(5);
    const KnownFact drawn{FactKind::run_here, {}, Polyline{{{3.2, 0.5}, {0.8, 0.5}}}, {}, {}, {}};
    const KnownLinks known =
        known_links(row.places, row.links, resolved_facts({drawn}, row.names, row.places, Metres::of(0.6)).facts);
    EXPECT_EQ(known.forced, (std::vector<std::uint32_t>{1, 2}));
}

TEST(KnownLinks, NothingKnownChangesNothing) {
    const KnownLinks known = known_links({}, {}, {});
    EXPECT_TRUE(known.pairs.empty() && known.witness.empty() && known.conflicts.empty() && known.log_weight_change.empty());
}

}  // namespace
}  // namespace plugside
