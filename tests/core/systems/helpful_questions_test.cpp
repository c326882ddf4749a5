#include "core/systems/helpful_questions.h"

#include <gtest/gtest.h>

#include "core/plan/make_plan.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

// Two pairs of marks, far apart: the first pair one animal's in half of the draws, the second in all.
Plan with_draws() {
    DrawnSystems drawn;
    drawn.plug = {{0, 0}, {1, 0}, {50, 0}, {51, 0}};
    drawn.mound = {0, 1, 2, 3};
    for (int d = 0; d < 40; ++d)
        drawn.tree.push_back(d % 2 == 0 ? std::vector<std::uint32_t>{0, 0, 2, 2} : std::vector<std::uint32_t>{0, 1, 2, 2});
    Plan plan;
    plan.mounds.resize(4);
    for (std::size_t i = 0; i < 4; ++i) plan.mounds[i].system = i / 2;
    plan.drawn = std::make_shared<const DrawnSystems>(std::move(drawn));
    return plan;
}

TEST(HelpfulQuestions, asks_what_alone_is_open_and_says_that_it_settles_the_number) {
    const auto questions = helpful_questions(with_draws());
    ASSERT_EQ(questions.size(), 1U);
    EXPECT_EQ(questions[0].first, 0U);
    EXPECT_EQ(questions[0].second, 1U);
    EXPECT_DOUBLE_EQ(questions[0].one.value(), 0.5);
    EXPECT_DOUBLE_EQ(questions[0].narrows, 1.0);
}

TEST(HelpfulQuestions, asks_nothing_without_draws) {
    Plan plan = with_draws();
    plan.drawn.reset();
    EXPECT_TRUE(helpful_questions(plan).empty());
    EXPECT_TRUE(helpful_questions(*make_plan(test::straight_run(1))).empty());
}

TEST(HelpfulQuestions, answered_by_the_truth_bring_the_number_nearer_to_it_more_often_than_not) {
    double before = 0.0;
    double after = 0.0;
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        SimulationOptions options;
        options.seed = seed;
        options.mounds_wanted = 120;
        const SimulatedField field = simulate_field(options);
        Survey survey = field.survey;
        const Plan plan = *make_plan(survey);
        const auto questions = helpful_questions(plan);
        ASSERT_FALSE(questions.empty());
        for (std::size_t k = 0; k + 1 < questions.size(); ++k) EXPECT_GE(questions[k].narrows, questions[k + 1].narrows);
        std::vector<std::size_t> animal(survey.mounds.size(), field.truth.systems);
        for (const TrueMound& mound : field.truth.mounds)
            if (mound.seen_as) animal[*mound.seen_as] = mound.system;
        for (const HelpfulQuestion& question : questions) {
            const std::size_t one = animal[question.first];
            const std::size_t other = animal[question.second];
            survey.known.push_back({one == other ? FactKind::same_system : FactKind::different_systems,
                                    {survey.mounds[question.first].name, survey.mounds[question.second].name},
                                    {},
                                    {},
                                    {},
                                    {}});
        }
        const Plan answered = *make_plan(survey);
        before += plan.estimate.high - plan.estimate.low;
        after += answered.estimate.high - answered.estimate.low;
    }
    EXPECT_LT(after, before);
}

}  // namespace
}  // namespace plugside
