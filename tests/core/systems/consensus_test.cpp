#include "core/systems/consensus.h"

#include <gtest/gtest.h>

#include <random>

#include "core/simulation/plan_score.h"

namespace plugside {
namespace {

using Grouping = std::vector<std::uint32_t>;

CoMembership counted(std::size_t marks, const std::vector<Grouping>& draws) {
    CoMembership pairs(marks);
    for (const Grouping& draw : draws) pairs.add(draw);
    return pairs;
}

double mean_index(const Grouping& grouping, const std::vector<Grouping>& draws) {
    double sum = 0.0;
    const std::vector<std::size_t> own(grouping.begin(), grouping.end());
    for (const Grouping& draw : draws)
        sum += adjusted_rand_index(own, std::vector<std::size_t>(draw.begin(), draw.end()));
    return sum / static_cast<double>(draws.size());
}

TEST(CoMembership, CountsPairsAsBruteForceDoes) {
    std::mt19937_64 random(3);
    const std::size_t n = 40;
    std::vector<Grouping> draws(25, Grouping(n));
    for (Grouping& draw : draws)
        for (std::uint32_t& group : draw) group = static_cast<std::uint32_t>(random() % 7);
    const auto table = counted(n, draws).table();
    for (std::uint32_t a = 0; a < n; ++a)
        for (std::uint32_t b = 0; b < n; ++b) {
            if (a == b) continue;
            double times = 0.0;
            for (const Grouping& draw : draws) times += draw[a] == draw[b] ? 1.0 : 0.0;
            double told = 0.0;
            for (const CoMembership::Near& near : table[a])
                if (near.mark == b) told = near.share;
            EXPECT_NEAR(told, times / 25.0, 1e-12);
        }
}

TEST(CoMembership, OneHeapOfManyMarksIsCountedInBoundedTime) {
    CoMembership pairs(5000, 20);
    pairs.add(Grouping(5000, 0));
    const auto table = pairs.table();
    EXPECT_EQ(table[2500].size(), 40U);
}

TEST(Consensus, OfEqualDrawsIsThatDraw) {
    const Grouping draw{0, 0, 1, 1, 1, 2, 3, 3};
    const Consensus consensus = consensus_of(counted(8, {draw, draw, draw}).table());
    EXPECT_EQ(consensus.label, draw);
    EXPECT_EQ(consensus.groups, 4U);
    EXPECT_NEAR(consensus.expected_index, 1.0, 1e-9);
}

TEST(Consensus, IsAsGoodForItsDrawsAsAnyOfThem) {
    std::mt19937_64 random(11);
    for (int field = 0; field < 20; ++field) {
        const std::size_t n = 24;
        Grouping truth(n);
        for (std::uint32_t& group : truth) group = static_cast<std::uint32_t>(random() % 5);
        std::vector<Grouping> draws(60, truth);
        for (Grouping& draw : draws)
            for (std::uint32_t& group : draw)
                if (random() % 4 == 0) group = static_cast<std::uint32_t>(random() % 5);
        const Consensus consensus = consensus_of(counted(n, draws).table());
        double best_draw = -1.0;
        for (const Grouping& draw : draws) best_draw = std::max(best_draw, mean_index(draw, draws));
        EXPECT_GE(mean_index(consensus.label, draws), best_draw - 0.02) << "field " << field;
    }
}

TEST(Consensus, PutsAPairTogetherThatIsSoInMoreThanTheLeastShareOfDraws) {
    const Grouping draw{0, 0, 1, 1, 2, 2, 3, 3};
    const Grouping merged{0, 0, 0, 0, 2, 2, 2, 2};
    const auto table = counted(8, {draw, merged}).table();
    EXPECT_EQ(consensus_of(table, 0.45).groups, 2U);
    EXPECT_EQ(consensus_of(table, 0.55).groups, 4U);
}

// What loss a grouping is expected to have over the draws, by the definition.
double expected_loss(const Grouping& grouping, const std::vector<Grouping>& draws, double least_share) {
    double loss = 0.0;
    for (const Grouping& draw : draws)
        for (std::size_t a = 0; a < draw.size(); ++a)
            for (std::size_t b = a + 1; b < draw.size(); ++b) {
                const bool together = grouping[a] == grouping[b];
                if (together != (draw[a] == draw[b])) loss += together ? least_share : 1.0 - least_share;
            }
    return loss / static_cast<double>(draws.size());
}

TEST(Consensus, LosesNoMoreThanAnyOfItsDraws) {
    std::mt19937_64 random(12);
    for (int field = 0; field < 20; ++field) {
        std::vector<Grouping> draws(40, Grouping(24));
        for (std::size_t i = 0; i < 24; ++i)
            for (Grouping& draw : draws) draw[i] = static_cast<std::uint32_t>(random() % 3 == 0 ? random() % 5 : i % 5);
        const Consensus consensus = consensus_of(counted(24, draws).table(), 0.4);
        for (const Grouping& draw : draws)
            EXPECT_LE(expected_loss(consensus.label, draws, 0.4), expected_loss(draw, draws, 0.4) + 1e-9) << "field " << field;
    }
}

TEST(Consensus, OfOnePartDoesNotDependOnAnotherThatItNeverMeets) {
    std::mt19937_64 random(13);
    const auto drawn = [&](std::size_t marks, std::size_t groups) {
        std::vector<Grouping> draws(30, Grouping(marks));
        for (Grouping& draw : draws)
            for (std::size_t i = 0; i < marks; ++i)
                draw[i] = static_cast<std::uint32_t>(random() % 3 == 0 ? random() % groups : i % groups);
        return draws;
    };
    const std::vector<Grouping> part = drawn(20, 4);
    const Grouping alone = consensus_of(counted(20, part).table()).label;
    for (const std::size_t groups : {1U, 2U, 9U}) {
        std::vector<Grouping> both = drawn(18, groups);
        for (std::size_t d = 0; d < both.size(); ++d) {
            for (std::uint32_t& group : both[d]) group += 20;
            both[d].insert(both[d].begin(), part[d].begin(), part[d].end());
        }
        Grouping label = consensus_of(counted(38, both).table()).label;
        label.resize(20);
        EXPECT_EQ(label, alone);
    }
}

TEST(Consensus, OfNoMarkAndOfOne) {
    EXPECT_EQ(consensus_of({}).groups, 0U);
    EXPECT_EQ(consensus_of(CoMembership(1).table()).groups, 1U);
}

}  // namespace
}  // namespace plugside
