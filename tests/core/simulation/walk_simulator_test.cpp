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

TEST(WalkSimulator, OverlooksTwoToFifteenInAHundred) {
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
    EXPECT_LT(least, 0.06);
    EXPECT_GT(most, 0.08);
    EXPECT_LT(most, 0.22);
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
    const SimulatedField field = field_of(2, 120);
    ASSERT_EQ(field.survey.walks.size(), 1u);
    const TrackSegment& track = field.survey.walks[0].segments.at(0);
    ASSERT_GT(track.size(), 50u);
    for (std::size_t i = 1; i < track.size(); ++i) EXPECT_LT(*track[i - 1].time, *track[i].time);
    for (std::size_t i = 1; i < field.survey.mounds.size(); ++i)
        EXPECT_LT(*field.survey.mounds[i - 1].time, *field.survey.mounds[i].time);
    for (const Mound& mark : field.survey.mounds) {
        double nearest = 1e9;
        for (const TrackPoint& point : track) nearest = std::min(nearest, distance_m(point.at, mark.plug));
        EXPECT_LT(nearest, 6.0) << mark.name;
    }
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
