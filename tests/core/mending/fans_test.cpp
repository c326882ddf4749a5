// Compass offsets and fans read from the wrong end: what is found, and what can be.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/mending/compass_offset.h"
#include "core/mending/reversed_bearings.h"
#include "tests/core/mending/planted_walks.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

FaultsToPlant turned_by(double degrees) {
    FaultsToPlant wanted;
    wanted.turned_walk = 0;
    wanted.turned_degrees = degrees;
    return wanted;
}

// The mean of fans against the true runs' right angle, degrees: the best that any fit to these fans could give.
double turn_against_true_runs(const SimulatedField& field) {
    double east = 0.0, north = 0.0;
    for (const TrueMound& truth : field.truth.mounds) {
        if (!truth.seen_as) continue;
        const Mound& mark = field.survey.mounds[*truth.seen_as];
        if (mark.walk != 0 || !mark.fan) continue;
        double nearest_m = 1e9;
        std::optional<Bearing> run;
        for (const TrueRun& line : field.truth.runs)
            for (std::size_t v = 1; line.system == truth.system && v < line.line.vertices.size(); ++v) {
                const LocalPoint a = line.line.vertices[v - 1], b = line.line.vertices[v];
                const double far_m = distance_to_segment_m(truth.run_junction, a, b);
                if (far_m >= nearest_m || a == b) continue;
                nearest_m = far_m;
                run = Bearing::along(b - a);
            }
        const double twice = 2.0 * (mark.fan->degrees() - run->degrees() - 90.0) * std::numbers::pi / 180.0;
        east += std::sin(twice);
        north += std::cos(twice);
    }
    return 0.5 * std::atan2(east, north) * 180.0 / std::numbers::pi;
}

double as_axis(double degrees) { return degrees - 180.0 * std::round(degrees / 180.0); }

struct OffsetTally {
    int walks = 0, within = 0, stand_out = 0, stand_out_within = 0, ceiling_within = 0;
};

OffsetTally forty_walks(const std::optional<Receiver>& receiver) {
    OffsetTally tally;
    for (std::size_t number = 0; number < 40; ++number) {
        SimulatedField field = test::field_number(number, 500);
        Random random(7, number);
        if (receiver) record_with(field, *receiver, random);
        const FaultsToPlant wanted = turned_by((number % 2 == 0 ? 1.0 : -1.0) * random.uniform(8.0, 25.0));
        plant_faults(field, wanted, random);
        PlaceError usual;
        if (receiver) usual = {receiver->own_sd_m, receiver->shared_sd_m, receiver->shared_memory_s};
        for (const CompassOffset& offset : compass_offsets(field.survey, walk_marks(field.survey, usual))) {
            if (offset.walk != 0 || offset.fans < 60) continue;
            const bool within = std::abs(as_axis(offset.turn_degrees - wanted.turned_degrees)) <= 4.0;
            ++tally.walks;
            tally.within += within;
            tally.stand_out += stands_out(offset);
            tally.stand_out_within += within && stands_out(offset);
            tally.ceiling_within += std::abs(as_axis(turn_against_true_runs(field) - wanted.turned_degrees)) <= 4.0;
        }
    }
    std::printf("compass: %d walks, within 4 degrees %d, stand out %d (within 4: %d), runs known: within 4 %d\n",
                tally.walks, tally.within, tally.stand_out, tally.stand_out_within, tally.ceiling_within);
    return tally;
}

TEST(CompassOffset, IsWithinFourDegreesInHalfOfFortyWalksWithOrdinaryReceivers) {
    const OffsetTally tally = forty_walks(std::nullopt);
    ASSERT_GE(tally.walks, 35);
    EXPECT_GE(tally.within, tally.walks * 45 / 100);
    // what stands out is seldom far out
    EXPECT_GE(tally.stand_out_within, tally.stand_out * 6 / 10);
    // even a fit that knows the runs themselves misses now and then
    EXPECT_GE(tally.ceiling_within, tally.walks * 85 / 100);
    EXPECT_LT(tally.ceiling_within, tally.walks);
}

TEST(CompassOffset, IsSeldomClaimedOfACompassThatIsRight) {
    int walks = 0, claimed = 0;
    for (std::size_t number = 0; number < 40; ++number) {
        const SimulatedField field = test::field_number(number, 500);
        for (const CompassOffset& offset : compass_offsets(field.survey, walk_marks(field.survey))) {
            ++walks;
            claimed += stands_out(offset);
        }
    }
    EXPECT_LE(claimed, walks / 20) << claimed << " of " << walks;
}

TEST(CompassOffset, OfAStraightRunIsTheTurnItself) {
    for (const double turn : {-30.0, -8.0, 0.0, 12.0, 35.0}) {
        Survey survey = test::straight_run(80);
        for (Mound& mound : survey.mounds) mound.fan = mound.fan->turned(turn);
        const auto offsets = compass_offsets(survey, walk_marks(survey));
        ASSERT_EQ(offsets.size(), 1U);
        EXPECT_NEAR(offsets.front().turn_degrees, turn, 2.5);
    }
}

TEST(CompassOffset, FewFansSayNothing) {
    const Survey survey = test::straight_run(20);
    EXPECT_TRUE(compass_offsets(survey, walk_marks(survey)).empty());
}

TEST(WrongEnd, AWalkReadFromTheWrongEndIsFoundInAThirdAndARightOneHardlyAccused) {
    int walks = 0, found = 0, falsely = 0;
    for (std::size_t number = 0; number < 42; ++number) {
        SimulatedField field = test::field_number(number, 700);
        for (const WrongEndWalk& walk : fan_agreement(field.survey, walk_marks(field.survey)))
            if (walk.fans >= 60) falsely += walk.agreement <= ReversedOptions{}.most_agreement;
        for (Mound& mound : field.survey.mounds)
            if (mound.fan) mound.fan = mound.fan->reversed();
        for (const WrongEndWalk& walk : fan_agreement(field.survey, walk_marks(field.survey))) {
            if (walk.fans < 60) continue;
            ++walks;
            found += walk.agreement <= ReversedOptions{}.most_agreement;
        }
    }
    std::printf("wrong end: found %d of %d walks, falsely %d\n", found, walks, falsely);
    EXPECT_GE(3 * found, walks);
    EXPECT_LE(falsely, walks / 40);
}

// Straight runs, mounds to either side; a share of fans read from the wrong end.
struct SingleTally {
    double found = 0.0, planted = 0.0, falsely = 0.0, fans = 0.0;
};
SingleTally straight_rows(double own_sd_m) {
    SingleTally tally;
    Random random(4);
    for (int field = 0; field < 20; ++field) {
        Survey survey;
        survey.walks.push_back({"walk 1", "walk.gpx", {}});
        std::set<std::string> reversed;
        for (int row = 0; row < 10; ++row) {
            double east_m = 0.0;
            for (int i = 0; i < 20; ++i) {
                east_m += random.uniform(1.5, 3.0);
                const double side = random.chance(0.5) ? 1.0 : -1.0;
                const double lateral_m = random.normal(0.28, 0.05);
                Mound mound = test::mound_at(east_m + random.normal(0.0, own_sd_m),
                                             8.0 * row + side * lateral_m + random.normal(0.0, own_sd_m),
                                             (side > 0.0 ? 0.0 : 180.0) + random.normal(0.0, 20.0));
                mound.name = std::to_string(20 * row + i);
                if (random.chance(0.03)) {
                    mound.fan = mound.fan->reversed();
                    reversed.insert(mound.name);
                }
                survey.mounds.push_back(mound);
            }
        }
        const WalkMarks walk = walk_marks(survey, {own_sd_m, 0.001, 600.0});
        for (const ReversedFan& fan : reversed_fans(survey, walk))
            (reversed.contains(survey.mounds[walk.marks[fan.mark].mound].name) ? tally.found : tally.falsely) += 1.0;
        tally.planted += static_cast<double>(reversed.size());
        tally.fans += 200.0;
    }
    return tally;
}

TEST(ReversedFans, SingleOnesOnStraightRunsAreFoundWherePlacesAreGoodToFiveCentimetres) {
    const SingleTally tally = straight_rows(0.05);
    EXPECT_GE(tally.found, 0.8 * tally.planted) << tally.found << " of " << tally.planted;
    EXPECT_LT(tally.falsely, 0.02 * tally.fans);
}

TEST(ReversedFans, OnStraightRunsFewAreAccusedWhateverTheReceiver) {
    for (const double own_sd_m : {0.1, 0.2, 0.3}) {
        const SingleTally tally = straight_rows(own_sd_m);
        EXPECT_LT(tally.falsely, 0.02 * tally.fans) << own_sd_m;
    }
}

// Even who knows where the run is needs plug and run placed within 0.15 m of each other.
TEST(ReversedFans, TheBestPossibleTestReachesFourInFiveOnlyUpToFifteenCentimetres) {
    const auto best_possible = [](double relative_sd_m) {
        Random random(3);
        std::vector<double> along_fan;
        for (std::size_t number = 0; number < 14; ++number) {
            const SimulatedField field = test::field_number(number, 300);
            for (const TrueMound& truth : field.truth.mounds) {
                const LocalVector error{random.normal(0.0, relative_sd_m), random.normal(0.0, relative_sd_m)};
                const Bearing fan = truth.fan.turned(random.normal(0.0, 13.0));
                along_fan.push_back(dot(truth.plug + error - truth.run_junction, fan.unit()));
            }
        }
        std::vector<double> turned = along_fan;
        for (double& off : turned) off = -off;
        std::sort(along_fan.begin(), along_fan.end());
        const double limit = along_fan[along_fan.size() / 50];  // one in fifty rightly read fans lies below
        const auto found = std::count_if(turned.begin(), turned.end(), [&](double off) { return off < limit; });
        return static_cast<double>(found) / static_cast<double>(turned.size());
    };
    EXPECT_GT(best_possible(0.10), 0.9);
    EXPECT_GE(best_possible(0.15), 0.8);
    EXPECT_LT(best_possible(0.20), 0.7);
    EXPECT_LT(best_possible(0.30), 0.4);
    EXPECT_LT(best_possible(1.00), 0.1);
}

}  // namespace
}  // namespace plugside
