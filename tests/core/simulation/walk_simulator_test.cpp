#include "core/simulation/walk_simulator.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

#include "core/simulation/burrow_simulator.h"

namespace plugside {
namespace {

SimulatedField field_of(std::uint64_t seed, std::size_t mounds = 300) {
    SimulationOptions options;
    options.seed = seed;
    options.mounds_wanted = mounds;
    options.kind = all_field_kinds().at(seed % all_field_kinds().size());
    return simulate_field(options);
}

TEST(WalkSimulator, EverySeenMoundIsOneMarkAndEveryGophersMarkOneMound) {
    for (std::uint64_t seed = 1; seed <= 8; ++seed) {
        const SimulatedField field = field_of(seed);
        std::set<std::size_t> marks;
        for (const TrueMound& mound : field.truth.mounds)
            if (mound.seen_as) {
                EXPECT_TRUE(marks.insert(*mound.seen_as).second);
                EXPECT_TRUE(is_gopher_sign(field.survey.mounds.at(*mound.seen_as).kind));
            }
        for (std::size_t i = 0; i < field.survey.mounds.size(); ++i)
            EXPECT_EQ(is_gopher_sign(field.survey.mounds[i].kind), marks.contains(i));
    }
}

TEST(WalkSimulator, OverlooksOneToTwentyFiveInAHundred) {
    double least = 1.0;
    double most = 0.0;
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
        const SimulatedField field = field_of(seed);
        double missed = 0.0;
        for (const TrueMound& mound : field.truth.mounds) missed += mound.seen_as ? 0.0 : 1.0;
        const double share = missed / static_cast<double>(field.truth.mounds.size());
        least = std::min(least, share);
        most = std::max(most, share);
    }
    EXPECT_LT(least, 0.04);
    EXPECT_GT(most, 0.12);
    EXPECT_LT(most, 0.32);
}

TEST(WalkSimulator, MarksTakenOneAfterAnotherAreBetterPlacedRelativeToEachOther) {
    double absolute = 0.0;
    double relative = 0.0;
    double count = 0.0;
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        const SimulatedField field = field_of(seed);
        std::vector<std::optional<LocalVector>> error(field.survey.mounds.size());
        for (const TrueMound& mound : field.truth.mounds)
            if (mound.seen_as) error[*mound.seen_as] = field.survey.mounds[*mound.seen_as].plug - mound.plug;
        for (std::size_t i = 1; i < error.size(); ++i)
            if (error[i] && error[i - 1]) {
                absolute += dot(*error[i], *error[i]);
                relative += dot(*error[i] - *error[i - 1], *error[i] - *error[i - 1]);
                count += 1.0;
            }
    }
    const double absolute_sd = std::sqrt(absolute / count / 2.0);
    EXPECT_GT(absolute_sd, 1.0);
    EXPECT_LT(absolute_sd, 3.5);
    EXPECT_LT(std::sqrt(relative / count / 2.0), 0.6 * absolute_sd);
}

TEST(WalkSimulator, FansAreReadWithinTheirErrorAndRoundedByHabit) {
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        const SimulatedField field = field_of(seed);
        double squares = 0.0;
        double read = 0.0;
        double whole_steps = 0.0;
        double marks = 0.0;
        for (const TrueMound& mound : field.truth.mounds) {
            if (!mound.seen_as) continue;
            const Mound& mark = field.survey.mounds[*mound.seen_as];
            marks += 1.0;
            if (!mark.fan) {
                EXPECT_TRUE(mark.freshness == Freshness::crushed || mark.kind == SignKind::surface_plug);
                continue;
            }
            read += 1.0;
            squares += std::pow(turn_degrees(mound.fan, *mark.fan), 2);
            const double steps_of_5 = mark.fan->degrees() / 5.0;
            const double steps_of_22 = mark.fan->degrees() / 22.5;
            whole_steps += steps_of_5 == std::round(steps_of_5) || steps_of_22 == std::round(steps_of_22) ? 1.0 : 0.0;
        }
        EXPECT_EQ(whole_steps, read);
        EXPECT_GT(std::sqrt(squares / read), 6.0);
        EXPECT_LT(std::sqrt(squares / read), 30.0);
        EXPECT_GT(read / marks, 0.6);
        EXPECT_LT(read / marks, 0.99);
    }
}

TEST(WalkSimulator, NotesSayWhatTheMarkHolds) {
    const SimulatedField field = field_of(4);
    for (const Mound& mark : field.survey.mounds) {
        EXPECT_EQ(mark.note.starts_with("fan "), mark.fan.has_value()) << mark.note;
        EXPECT_EQ(mark.note.ends_with("fresh"), mark.freshness == Freshness::fresh) << mark.note;
        EXPECT_EQ(mark.note == "crushed", mark.freshness == Freshness::crushed) << mark.note;
        if (!is_gopher_sign(mark.kind)) {
            EXPECT_EQ(mark.note, to_text(mark.kind));
        }
    }
}

TEST(WalkSimulator, TheTrackGoesOnInTimeAndPassesEveryMark) {
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        const SimulatedField field = field_of(seed, 120);
        for (std::size_t walk = 0; walk < field.survey.walks.size(); ++walk) {
            const TrackSegment& track = field.survey.walks[walk].segments.at(0);
            ASSERT_GT(track.size(), 20u);
            for (std::size_t i = 1; i < track.size(); ++i) EXPECT_LT(*track[i - 1].time, *track[i].time);
            std::optional<UtcTime> last;
            for (const Mound& mark : field.survey.mounds) {
                if (mark.walk != walk) continue;
                EXPECT_TRUE(!last || *last < *mark.time) << mark.name;
                last = mark.time;
                double nearest = 1e9;
                for (const TrackPoint& point : track) nearest = std::min(nearest, distance_m(point.at, mark.plug));
                EXPECT_LT(nearest, 6.0) << mark.name;
            }
        }
    }
}

TEST(WalkSimulator, AboutAQuarterOfLargerFieldsAreSharedByTwoOrThreeAndNoSmallOne) {
    int shared = 0;
    int by_three = 0;
    constexpr int fields = 200;
    for (std::uint64_t seed = 1; seed <= fields; ++seed) {
        Random shape(seed, 1);
        Random people(seed, 2);
        const FieldDomain large({10000.0}, shape);
        const std::size_t walkers = draw_walker_count(large, people);
        ASSERT_LE(walkers, 3u);
        shared += walkers > 1 ? 1 : 0;
        by_three += walkers == 3 ? 1 : 0;
        EXPECT_EQ(draw_walker_count(FieldDomain({900.0}, shape), people), 1u);
    }
    EXPECT_NEAR(shared, 50, 25);  // four standard deviations of a binomial
    EXPECT_GT(by_three, 3);
}

TEST(WalkSimulator, SeveralWalkersEachMarkTheirOwnStripUnderTheirOwnName) {
    int with_several = 0;
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
        const SimulatedField field = field_of(seed);
        const std::size_t walks = field.survey.walks.size();
        if (walks == 1) continue;
        ++with_several;
        std::set<std::string> names;
        for (const Walk& walk : field.survey.walks) {
            EXPECT_TRUE(names.insert(walk.id).second);
            EXPECT_TRUE(names.insert(walk.source).second);
        }
        // each walker's marks lie in a strip of their own: in the middle, the walks are apart
        std::vector<LocalVector> sum(walks);
        std::vector<double> marks(walks, 0.0);
        for (const Mound& mark : field.survey.mounds) {
            ASSERT_LT(mark.walk, walks);
            sum[mark.walk] = sum[mark.walk] + (mark.plug - LocalPoint{});
            marks[mark.walk] += 1.0;
        }
        for (std::size_t a = 0; a < walks; ++a)
            for (std::size_t b = 0; b < a; ++b)
                if (marks[a] > 20.0 && marks[b] > 20.0) {
                    EXPECT_GT((sum[a] * (1.0 / marks[a]) - sum[b] * (1.0 / marks[b])).length_m(), 8.0) << seed;
                }
        std::set<std::string> mark_names;
        for (const Mound& mark : field.survey.mounds) EXPECT_TRUE(mark_names.insert(mark.name).second) << mark.name;
    }
    EXPECT_GT(with_several, 3);
}

TEST(WalkSimulator, ReceiversOfDifferentWalkersShareNoError) {
    double own = 0.0;  // product of errors a minute apart, of one walk
    double own_count = 0.0;
    double between = 0.0;  // of two walks
    double between_count = 0.0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const SimulatedField field = field_of(seed, 200);
        if (field.survey.walks.size() < 2) continue;
        std::vector<std::pair<const Mound*, LocalVector>> errors;
        for (const TrueMound& mound : field.truth.mounds)
            if (mound.seen_as) {
                const Mound& mark = field.survey.mounds[*mound.seen_as];
                errors.push_back({&mark, mark.plug - mound.plug});
            }
        for (const auto& [a, error_a] : errors)
            for (const auto& [b, error_b] : errors) {
                if (a == b || std::chrono::abs(*a->time - *b->time) > std::chrono::minutes{1}) continue;
                (a->walk == b->walk ? own : between) += dot(error_a, error_b);
                (a->walk == b->walk ? own_count : between_count) += 1.0;
            }
    }
    ASSERT_GT(between_count, 300.0);
    EXPECT_GT(own / own_count, 2.0);  // two directions of 1-3 m each
    EXPECT_LT(std::abs(between / between_count), 0.35 * own / own_count);
}

TEST(WalkSimulator, OtherDiggersAreLeftOutOnRequestAndNamesAreUnique) {
    SimulationOptions options;
    options.seed = 11;
    const SimulatedField with = simulate_field(options);
    options.other_diggers = false;
    const SimulatedField without = simulate_field(options);
    std::set<std::string> names;
    std::size_t others = 0;
    for (const Mound& mark : with.survey.mounds) {
        EXPECT_TRUE(names.insert(mark.name).second);
        others += is_gopher_sign(mark.kind) ? 0u : 1u;
    }
    EXPECT_GT(others, 0u);
    for (const Mound& mark : without.survey.mounds) EXPECT_TRUE(is_gopher_sign(mark.kind));
}

}  // namespace
}  // namespace plugside
