#include "core/simulation/true_ground.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <numbers>

#include "core/simulation/burrow_simulator.h"
#include "core/simulation/plan_score.h"

namespace plugside {
namespace {

// A run due north along east = 0, from 0 to 20 m, and mounds on laterals of a given horizontal length to either side.
struct HandMade {
    SimulatedField field;

    explicit HandMade(double tunnel_m = 0.05) {
        field.truth.systems = 1;
        field.truth.tunnel_diameter = Metres::of(tunnel_m);
        TrueRun run;
        for (int i = 0; i <= 200; ++i) run.line.vertices.push_back({0.0, 0.1 * i});
        field.truth.runs.push_back(run);
    }
    std::size_t add_mound(double north_m, double lateral_m, bool to_the_east) {
        TrueMound mound;
        mound.run_junction = {0.0, north_m};
        mound.plug = {to_the_east ? lateral_m : -lateral_m, north_m};
        mound.fan = Bearing::degrees(to_the_east ? 90.0 : 270.0);
        mound.seen_as = field.survey.mounds.size();
        field.truth.mounds.push_back(mound);
        Mound mark;
        mark.plug = mound.plug + LocalVector{2.0, -1.5};  // the receiver is off by metres,
        mark.fan = mound.fan.turned(20.0);                // the bearing was read badly: neither moves a ladder
        field.survey.mounds.push_back(mark);
        return *mound.seen_as;
    }
};

ProbeSite plug_side(std::size_t mound, double along_m, std::vector<double> rungs) {
    ProbeSite site;
    site.from_mound = mound;
    site.ladder.along = Metres::of(along_m);
    for (const double rung : rungs) site.rungs.push_back(Metres::of(rung));
    return site;
}

double offset_m(double depth_m, double slope_degrees) {
    return depth_m / std::tan(slope_degrees * std::numbers::pi / 180.0);
}

TEST(TryLadder, TheHandbookOffsetsAreTheDepthsUnderLateralsOfFortyFiveDegrees) {
    // UC IPM Pest Notes 7433: main runs 6-12 in deep, found 8-12 in from the plug; 12-14 in: common practice, no source.
    // Under 45 degrees the offset is the depth: 8, 12, 14 in.
    for (const double inches : {8.0, 12.0, 14.0}) {
        HandMade ground;
        const double depth_m = Metres::from_inches(inches).value();
        const std::size_t mound = ground.add_mound(5.0, offset_m(depth_m, 45.0), true);
        const LadderOutcome hit = try_ladder(plug_side(mound, depth_m, {0.0}), 3, ground.field);
        EXPECT_TRUE(hit.hit) << inches;
        EXPECT_EQ(hit.rungs, 1);
        EXPECT_EQ(hit.probe, 3u);
        EXPECT_FALSE(try_ladder(plug_side(mound, depth_m + 0.03, {0.0}), 0, ground.field).hit) << inches;
        EXPECT_FALSE(try_ladder(plug_side(mound, depth_m - 0.03, {0.0}), 0, ground.field).hit) << inches;
        EXPECT_TRUE(try_ladder(plug_side(mound, depth_m - 0.024, {0.0}), 0, ground.field).hit) << inches;
    }
}

TEST(TryLadder, CountsTheRungsPushedUpToTheHit) {
    HandMade ground;
    const std::size_t mound = ground.add_mound(5.0, 0.30, false);
    const LadderOutcome third = try_ladder(plug_side(mound, 0.20, {0.0, 0.05, 0.10, 0.15}), 0, ground.field);
    EXPECT_TRUE(third.hit);
    EXPECT_EQ(third.rungs, 3);
    const LadderOutcome none = try_ladder(plug_side(mound, 0.60, {0.0, 0.05, 0.10, 0.15}), 0, ground.field);
    EXPECT_FALSE(none.hit);
    EXPECT_EQ(none.rungs, 4);
}

TEST(TryLadder, TurnsTheRowClockwiseAndStepsToTheRightOfTheAxis) {
    HandMade ground;
    const std::size_t first = ground.add_mound(5.0, 0.30, true);  // the run is 0.30 m to the west of it
    const std::size_t second = ground.add_mound(7.0, 0.30, true);
    ProbeSite between;
    between.from_mound = first;
    between.to_mound = second;  // axis due north: right is east
    between.ladder.along = Metres::of(1.0);
    between.ladder.angle_degrees = 90.0;
    between.rungs = {Metres::of(0.30)};
    EXPECT_FALSE(try_ladder(between, 0, ground.field).hit);
    between.rungs = {Metres::of(-0.30)};
    EXPECT_TRUE(try_ladder(between, 0, ground.field).hit);
    between.ladder.across = Metres::of(-0.30);
    between.rungs = {Metres::of(0.0)};
    EXPECT_TRUE(try_ladder(between, 0, ground.field).hit);
    between.ladder.angle_degrees = 45.0;  // the row runs north-east: 0.30 m west is 0.30 * sqrt(2) back along it
    between.ladder.across = Metres::of(0.0);
    between.rungs = {Metres::of(-0.30 * std::numbers::sqrt2)};
    EXPECT_TRUE(try_ladder(between, 0, ground.field).hit);
}

TEST(TryLadder, BetweenMoundsOnOppositeSidesCrossesTheRunHalfway) {
    HandMade ground;
    const std::size_t first = ground.add_mound(5.0, 0.30, true);
    const std::size_t second = ground.add_mound(8.0, 0.30, false);
    ProbeSite between;
    between.from_mound = second;
    between.to_mound = first;
    between.ladder.along = Metres::of(0.5 * std::hypot(3.0, 0.6));
    between.ladder.angle_degrees = 90.0;
    between.rungs = {Metres::of(0.0)};
    EXPECT_TRUE(try_ladder(between, 0, ground.field).hit);
}

TEST(TryLadder, AMarkThatIsNoMoundIsAMissAfterAllRungs) {
    HandMade ground;
    Mound mole;
    mole.kind = SignKind::mole;
    ground.field.survey.mounds.push_back(mole);
    const LadderOutcome outcome = try_ladder(plug_side(0, 0.0, {0.0, 0.1}), 0, ground.field);
    EXPECT_FALSE(outcome.hit);
    EXPECT_EQ(outcome.rungs, 2);
}

TEST(TryLadder, ALateralIsNoRun) {
    HandMade ground;
    const std::size_t mound = ground.add_mound(5.0, 0.30, true);
    EXPECT_FALSE(try_ladder(plug_side(mound, 0.15, {0.0}), 0, ground.field).hit);
}

TEST(PlanScore, CountsAnAnimalOnceHoweverManySetsReachItAndLeavesOutDroppedSets) {
    HandMade ground;
    const std::size_t first = ground.add_mound(5.0, 0.30, true);
    const std::size_t second = ground.add_mound(8.0, 0.30, false);
    Plan plan;
    plan.mounds.resize(2);
    plan.mounds[0].system = 0;
    plan.mounds[1].system = 0;
    plan.systems.resize(1);
    plan.probes = {plug_side(first, 0.30, {0.0}), plug_side(second, 0.30, {0.0})};
    plan.sets.resize(2);
    plan.sets[1].probe = 1;
    PlanScore score = score_plan(plan, ground.field);
    EXPECT_EQ(score.sets, 2u);
    EXPECT_EQ(score.animals_reached, 1u);
    EXPECT_EQ(score.true_systems, 1u);
    plan.sets[0].choice = SetChoice::dropped;
    plan.sets[1].choice = SetChoice::dropped;
    score = score_plan(plan, ground.field);
    EXPECT_EQ(score.sets, 0u);
    EXPECT_EQ(score.animals_reached, 0u);
}

struct Rate {
    double tried = 0.0;
    double hits = 0.0;
    double rungs = 0.0;
    void add(const TrueGround::Trial& trial) {
        tried += 1.0;
        hits += trial.system ? 1.0 : 0.0;
        rungs += trial.rungs;
    }
};

std::vector<double> centre_outwards(double half_m, double step_m) {
    std::vector<double> rungs{0.0};
    for (int i = 1; i * step_m <= half_m + 1e-9; ++i) {
        rungs.push_back(i * step_m);
        rungs.push_back(-i * step_m);
    }
    return rungs;
}

TEST(TryLadder, FixedLaddersOnMadeUpFieldsHitAboutAsOftenAsOnTheEarlierOnes) {
    // Earlier simulated fields of this project, whose runs lay deeper (laterals .31 m long on average): the handbook band of
    // 8-12 in in three rungs hit 50 in 100; 35 cm +- 30 cm in 5 cm steps 99 in 100 with 3.1 rungs; the middle between true
    // neighbours, +-60 cm in 6 cm steps, 92 in 100 with 8.1. Here runs are 15-36 cm deep about 25 cm, so the band does
    // better, and the long ladder takes as few rungs when it is centred where these runs lie.
    Rate band;
    Rate wide;
    Rate centred;
    Rate between;
    for (const FieldKind kind : all_field_kinds())
        for (std::uint64_t seed = 1; seed <= 6; ++seed) {
            const SimulatedField field = simulate_field({kind, seed, 300, true, false, {}});
            const TrueGround ground(field);
            const TrueMound* last = nullptr;
            for (const TrueMound& mound : field.truth.mounds) {
                if (!mound.seen_as) continue;
                band.add(ground.try_ladder(plug_side(*mound.seen_as, 0.254, {0.0, 0.0508, -0.0508})));
                wide.add(ground.try_ladder(plug_side(*mound.seen_as, 0.35, centre_outwards(0.30, 0.05))));
                centred.add(ground.try_ladder(plug_side(*mound.seen_as, 0.27, centre_outwards(0.30, 0.05))));
                const double apart = last ? distance_m(last->plug, mound.plug) : 0.0;
                if (last && last->system == mound.system && apart < 4.0) {  // listed along the run: mostly true neighbours
                    ProbeSite site = plug_side(*last->seen_as, 0.5 * apart, centre_outwards(0.60, 0.06));
                    site.to_mound = *mound.seen_as;
                    site.ladder.angle_degrees = 90.0;
                    between.add(ground.try_ladder(site));
                }
                last = &mound;
            }
        }
    const auto tell = [](const char* what, const Rate& rate) {
        std::printf("%s: %.3f in %.2f rungs\n", what, rate.hits / rate.tried, rate.rungs / rate.tried);
    };
    tell("handbook band", band);
    tell("35 cm +- 30 cm", wide);
    tell("27 cm +- 30 cm", centred);
    tell("between neighbours", between);
    EXPECT_NEAR(band.hits / band.tried, 0.60, 0.15);
    EXPECT_GT(wide.hits / wide.tried, 0.97);
    EXPECT_GT(centred.hits / centred.tried, 0.97);
    EXPECT_NEAR(centred.rungs / centred.tried, 3.1, 0.8);
    EXPECT_NEAR(between.hits / between.tried, 0.92, 0.06);
    EXPECT_NEAR(between.rungs / between.tried, 8.1, 1.5);
}

}  // namespace
}  // namespace plugside
