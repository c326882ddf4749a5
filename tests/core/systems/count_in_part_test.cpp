#include "core/systems/count_in_part.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/plan/make_plan.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

MultiPolygon rectangle(double west, double south, double east, double north) {
    return {{{Ring{{{west, south}, {east, south}, {east, north}, {west, north}}}, {}}}};
}

const Plan& plan_of_a_field() {
    static const Plan plan = *make_plan(test::simulated_survey(41, 200));
    return plan;
}

const MultiPolygon everything = rectangle(-1e4, -1e4, 1e4, 1e4);

TEST(CountInPart, TheWholeFieldHasTheNumberAndTheIntervalOfThePlan) {
    for (const std::size_t mounds : {1U, 12U, 200U, 700U}) {
        const Plan plan = *make_plan(mounds == 1 ? test::straight_run(1) : test::simulated_survey(42, mounds));
        const CountInPart count = count_in_part(*plan.drawn, everything);
        EXPECT_EQ(count.mounds, plan.drawn->plug.size());
        EXPECT_EQ(count.animals.low, plan.estimate.low) << mounds;
        EXPECT_EQ(count.animals.high, plan.estimate.high) << mounds;
        EXPECT_NEAR(count.animals.expected, plan.estimate.expected, 1e-9) << mounds;
        EXPECT_EQ(count.touching.low, plan.estimate.low);
        EXPECT_EQ(count.touching.high, plan.estimate.high);
    }
}

TEST(CountInPart, TheWholeAgreesAlsoWhereSomethingIsKnown) {
    Survey survey = test::simulated_survey(43, 80);
    KnownFact fact;
    fact.kind = FactKind::same_system;
    std::vector<std::string> used;
    for (const Mound& mound : survey.mounds)
        if (!why_not_used(survey, mound)) used.push_back(mound.name);
    fact.marks = {used.at(0), used.at(1)};
    survey.known.push_back(fact);
    const Plan plan = *make_plan(survey);
    const CountInPart count = count_in_part(*plan.drawn, everything);
    EXPECT_EQ(count.animals.low, plan.estimate.low);
    EXPECT_EQ(count.animals.high, plan.estimate.high);
    EXPECT_NEAR(count.animals.expected, plan.estimate.expected, 1e-9);
}

TEST(CountInPart, PartsAddUpToTheirUnion) {
    const DrawnSystems& drawn = *plan_of_a_field().drawn;
    const double whole = count_in_part(drawn, everything).animals.expected;
    for (const double cut : {-20.0, -3.0, 0.0, 4.5, 30.0}) {
        const CountInPart west = count_in_part(drawn, rectangle(-1e4, -1e4, cut, 1e4));
        const CountInPart east = count_in_part(drawn, rectangle(cut, -1e4, 1e4, 1e4));
        EXPECT_EQ(west.mounds + east.mounds, drawn.plug.size());
        EXPECT_NEAR(west.animals.expected + east.animals.expected, whole, 1e-9);
        // one may reach into both
        EXPECT_GE(west.touching.expected + east.touching.expected, whole - 1e-9);
    }
}

TEST(CountInPart, ALargerPartHoldsNoFewer) {
    const DrawnSystems& drawn = *plan_of_a_field().drawn;
    CountInPart last;
    for (double half = 1.0; half < 200.0; half *= 1.5) {
        const CountInPart count = count_in_part(drawn, rectangle(-half, -half, half, half));
        EXPECT_GE(count.mounds, last.mounds);
        EXPECT_GE(count.animals.expected, last.animals.expected);
        EXPECT_GE(count.animals.low, last.animals.low);
        EXPECT_GE(count.animals.high, last.animals.high);
        EXPECT_GE(count.touching.expected, last.touching.expected);
        EXPECT_LE(count.animals.low, count.animals.expected);
        EXPECT_GE(count.animals.high, count.animals.expected);
        EXPECT_GE(count.touching.expected, count.animals.expected - 1e-9);
        last = count;
    }
    EXPECT_EQ(last.mounds, drawn.plug.size());
}

TEST(CountInPart, WithoutMarksThereIsNothingToCount) {
    const DrawnSystems& drawn = *plan_of_a_field().drawn;
    for (const MultiPolygon& part : {MultiPolygon{}, rectangle(5e3, 5e3, 6e3, 6e3)}) {
        const CountInPart count = count_in_part(drawn, part);
        EXPECT_EQ(count.mounds, 0U);
        EXPECT_EQ(count.animals.expected, 0.0);
        EXPECT_EQ(count.touching.high, 0.0);
    }
    EXPECT_EQ(count_in_part({}, everything).mounds, 0U);
    EXPECT_EQ(make_plan(Survey{})->drawn, nullptr);
}

TEST(CountInPart, SharesOfAnAnimalAreItsMoundsInside) {
    // draws: all four one animal's; two and two; all alone
    const DrawnSystems drawn{{{0, 0}, {1, 0}, {2, 0}, {3, 0}}, {0, 1, 2, 3}, {{2, 2, 2, 2}, {0, 0, 3, 3}, {0, 1, 2, 3}}, 0.9};
    const CountInPart count = count_in_part(drawn, rectangle(0.5, -1, 9, 1));
    EXPECT_EQ(count.mounds, 3U);
    EXPECT_NEAR(count.animals.expected, (0.75 + 1.5 + 3.0) / 3.0, 1e-12);
    EXPECT_EQ(count.animals.low, 0.75);
    EXPECT_EQ(count.animals.high, 3.0);
    EXPECT_NEAR(count.touching.expected, (1.0 + 2.0 + 3.0) / 3.0, 1e-12);
}

TEST(CountInPart, KeepsBoundedDraws) {
    EXPECT_EQ(draws_kept(300), 200U);
    EXPECT_EQ(draws_kept(1'000'000), 20U);
    EXPECT_LE(draws_kept(400'000) * 400'000, 20'000'000U);
}

}  // namespace
}  // namespace plugside
