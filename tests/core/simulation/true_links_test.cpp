#include "core/simulation/true_links.h"

#include <gtest/gtest.h>

#include <map>
#include <optional>

#include "core/simulation/burrow_simulator.h"
#include "core/systems/disjoint_sets.h"

namespace plugside {
namespace {

using Pairs = std::vector<std::pair<std::size_t, std::size_t>>;

// A system dug by hand; marks are numbered in the order in which mounds are seen.
struct HandMade {
    FieldTruth truth;
    std::size_t marks = 0;

    void dig(LocalPoint from, LocalPoint to, std::size_t system = 0) {
        TrueRun run;
        run.system = system;
        const int pieces = static_cast<int>(std::ceil(distance_m(from, to) / 0.1 - 1e-9));
        for (int i = 0; i <= pieces; ++i)
            run.line.vertices.push_back(from + (to - from) * (static_cast<double>(i) / pieces));
        truth.runs.push_back(run);
    }
    void mound(LocalPoint junction, bool seen, std::size_t system = 0) {
        TrueMound mound;
        mound.system = system;
        mound.run_junction = junction;
        mound.plug = junction + LocalVector{0.2, 0.2};
        if (seen) mound.seen_as = marks++;
        truth.mounds.push_back(mound);
    }
};

// A run from west to east, a branch to the north at 10 m; mounds at 4, 8, 12 and 18 m and one up the branch.
HandMade with_branch(bool eight_is_seen) {
    HandMade ground;
    ground.dig({0.0, 0.0}, {20.0, 0.0});
    ground.dig({10.0, 0.0}, {10.0, 6.0});
    ground.mound({4.0, 0.0}, true);           // mark 0
    ground.mound({12.0, 0.0}, true);          // 1
    ground.mound({10.0, 3.0}, true);          // 2
    ground.mound({18.0, 0.0}, true);          // 3
    ground.mound({8.0, 0.0}, eight_is_seen);  // 4
    return ground;
}

TEST(TrueLinks, JoinTheNextMarksAroundAJunctionPairwiseAndPassAnUnseenMound) {
    const TrueLinks links(with_branch(false).truth);
    EXPECT_EQ(links.all(), (Pairs{{0, 1}, {0, 2}, {1, 2}, {1, 3}}));
    EXPECT_TRUE(links.joined(2, 0));
    EXPECT_TRUE(links.joined(0, 2));
    EXPECT_FALSE(links.joined(0, 3));
    EXPECT_FALSE(links.joined(0, 0));
    EXPECT_FALSE(links.joined(0, 99));
}

TEST(TrueLinks, AMarkedMoundStopsTheWay) {
    const TrueLinks links(with_branch(true).truth);
    EXPECT_EQ(links.all(), (Pairs{{0, 4}, {1, 2}, {1, 3}, {1, 4}, {2, 4}}));
}

TEST(TrueLinks, AMarkedMoundRightAtTheForkStopsEveryWayThroughIt) {
    HandMade ground = with_branch(false);
    ground.mound({10.0, 0.0}, true);  // 4
    EXPECT_EQ(TrueLinks(ground.truth).all(), (Pairs{{0, 4}, {1, 3}, {1, 4}, {2, 4}}));
}

TEST(TrueLinks, ABranchOfABranchWithoutMarksBetweenIsOneJunction) {
    HandMade ground;
    ground.dig({0.0, 0.0}, {20.0, 0.0});
    ground.dig({10.0, 0.0}, {10.0, 6.0});
    ground.dig({10.0, 4.0}, {15.0, 4.0});
    ground.mound({5.0, 0.0}, true);
    ground.mound({14.0, 4.0}, true);
    ground.mound({10.0, 5.0}, true);
    EXPECT_EQ(TrueLinks(ground.truth).all(), (Pairs{{0, 1}, {0, 2}, {1, 2}}));
}

TEST(TrueLinks, TwoRunsDugFromOneStartAndARunThatEndsOnAnotherAreJoined) {
    HandMade ground;
    ground.dig({0.0, 0.0}, {9.0, 0.0});
    ground.dig({0.0, 0.0}, {-9.0, 0.0});
    ground.dig({-5.0, 6.0}, {-5.0, 0.0});
    ground.mound({3.0, 0.0}, true);
    ground.mound({-3.0, 0.0}, true);
    ground.mound({-5.0, 2.0}, true);
    EXPECT_EQ(TrueLinks(ground.truth).all(), (Pairs{{0, 1}, {1, 2}}));
}

TEST(TrueLinks, NeverJoinSystemsNorRunsThatOnlyCross) {
    HandMade ground;
    ground.dig({0.0, 0.0}, {10.0, 0.0}, 0);
    ground.dig({0.0, 0.02}, {10.0, 0.02}, 1);
    ground.dig({5.0, -5.0}, {5.0, 5.0}, 0);  // over the first, meeting it nowhere
    ground.mound({2.0, 0.0}, true, 0);
    ground.mound({3.0, 0.02}, true, 1);
    ground.mound({5.0, 3.0}, true, 0);
    EXPECT_TRUE(TrueLinks(ground.truth).all().empty());
}

TEST(TrueLinks, LateralsThatLeaveAtOnePlaceAreJoined) {
    HandMade ground;
    ground.dig({0.0, 0.0}, {10.0, 0.0});
    ground.mound({5.0, 0.0}, true);
    ground.mound({5.0, 0.0}, true);
    EXPECT_TRUE(TrueLinks(ground.truth).joined(0, 1));
    EXPECT_TRUE(TrueLinks(FieldTruth{}).all().empty());
}

TEST(TrueLinks, HangEverySystemOfEveryKindTogetherWithHardlyMoreLinksThanATree) {
    for (const FieldKind kind : all_field_kinds())
        for (std::uint64_t seed = 1; seed <= 3; ++seed) {
            const SimulatedField field = simulate_field({kind, seed, 150, true, false, {}});
            const TrueLinks links(field.truth);
            DisjointSets sets(field.survey.mounds.size());
            std::map<std::size_t, std::size_t> system_of;
            for (const TrueMound& mound : field.truth.mounds)
                if (mound.seen_as) system_of[*mound.seen_as] = mound.system;
            std::size_t joins = 0;
            for (const auto& [a, b] : links.all()) {
                ASSERT_LT(a, b);
                ASSERT_EQ(system_of.at(a), system_of.at(b));
                joins += sets.join(static_cast<std::uint32_t>(a), static_cast<std::uint32_t>(b)) ? 1U : 0U;
            }
            std::map<std::size_t, std::size_t> marks_in;
            for (const auto& [mark, system] : system_of) ++marks_in[system];
            EXPECT_EQ(joins, system_of.size() - marks_in.size()) << to_text(kind) << " " << seed;
            EXPECT_LT(links.all().size(), 2 * joins) << to_text(kind) << " " << seed;
        }
}

}  // namespace
}  // namespace plugside
