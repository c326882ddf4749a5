// The rules on plans that were inferred, beside the cautions that go with every plan.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/plan/make_plan.h"
#include "core/sets/caution_rules.h"
#include "core/sets/material.h"
#include "tests/core/sets/work_situations.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

using test::the_morning;

class JudgedPlans : public ::testing::Test {
protected:
    void SetUp() override {
        survey_ = test::simulated_survey(11, 150);
        const LocalPoint middle = survey_.mounds.at(40).plug;
        const auto square = [&](double east_m, double north_m) {
            const LocalPoint corner = middle + LocalVector{east_m, north_m};
            return Polygon{{{corner, corner + LocalVector{6, 0}, corner + LocalVector{6, 6}, corner + LocalVector{0, 6}}},
                           {}};
        };
        survey_.ground.keep_clear = {{"House", "", KeepClearKind::building, square(10.0, 5.0)},
                                     {"Well", "", KeepClearKind::well, square(-40.0, 20.0)}};
        plan_ = *make_plan(survey_);
        ASSERT_GT(plan_.sets.size(), 8U);
        work_.conditions = test::calm_conditions();
        work_.label = test::calm_label(*built_in_method("fumigant"));
        work_.label.building_distance.reset();
        work_.label.water_distance.reset();
    }
    JudgedPlan judged(const std::string& method) {
        work_.method = method;
        return judge(survey_, work_, plan_, the_morning);
    }
    bool plan_says(const JudgedSet& set, const std::string& caution) const {
        const auto& ids = plan_.sets[set.set].cautions;
        return std::find(ids.begin(), ids.end(), caution) != ids.end();
    }
    static Verdict verdict_of(const JudgedSet& set, const std::string& caution) {
        for (const Judgement& each : set.judgements)
            if (each.caution == caution) return each.verdict;
        return Verdict::not_known;
    }
    Survey survey_;
    Plan plan_;
    WorkOrder work_;
};

TEST_F(JudgedPlans, stop_a_fumigant_wherever_the_plan_itself_warns_of_a_building_and_no_trap) {
    std::size_t warned = 0;
    for (const JudgedSet& set : judged("fumigant").sets) {
        if (!plan_says(set, "building")) continue;
        ++warned;
        EXPECT_EQ(verdict_of(set, "building"), Verdict::holds);
        EXPECT_TRUE(set.stopped());
    }
    EXPECT_GT(warned, 0U);
    for (const JudgedSet& set : judged("paired-traps").sets) EXPECT_EQ(verdict_of(set, "building"), Verdict::does_not_hold);
}

TEST_F(JudgedPlans, stop_elsewhere_only_for_what_may_be_one_with_the_system) {
    for (const JudgedSet& set : judged("fumigant").sets) {
        if (plan_says(set, "building") || verdict_of(set, "building") != Verdict::holds) continue;
        const std::size_t system = plan_.probes[plan_.sets[set.set].probe].system;
        const Judgement& judgement = *std::find_if(set.judgements.begin(), set.judgements.end(),
                                                   [](const Judgement& each) { return each.caution == "building"; });
        ASSERT_TRUE(judgement.where.has_value());
        EXPECT_NE(judgement.where->system, system);
        EXPECT_GT(judgement.where->chance.value(), 0.05 - 1e-9);
    }
}

TEST_F(JudgedPlans, judge_a_set_alone_as_they_judge_it_among_all) {
    const JudgedPlan all = judged("fumigant");
    for (const JudgedSet& set : all.sets) {
        const JudgedSet alone = judge_set(survey_, work_, plan_, set.set, the_morning);
        ASSERT_EQ(alone.judgements.size(), set.judgements.size());
        for (std::size_t i = 0; i < alone.judgements.size(); ++i) {
            EXPECT_EQ(alone.judgements[i].verdict, set.judgements[i].verdict);
            EXPECT_EQ(alone.judgements[i].because, set.judgements[i].because);
        }
        const JudgedSet with_traps = judge_set(survey_, work_, plan_, set.set, the_morning, "paired-traps");
        EXPECT_EQ(with_traps.method, "paired-traps");
    }
}

TEST_F(JudgedPlans, ask_for_the_method_first_where_none_is_chosen) {
    const JudgedPlan none = judged("");
    EXPECT_FALSE(none.has_stops());
    const std::vector<Question> asks = none.asks();
    EXPECT_NE(std::find(asks.begin(), asks.end(), Question::method), asks.end());
    const Load load = what_to_load(survey_, work_, plan_, the_morning);
    EXPECT_EQ(load.without_method, load.sets);
    EXPECT_GT(load.time.minutes, 0.0);
    EXPECT_LT(load.time.low, load.time.minutes);
    EXPECT_GT(load.time.high, load.time.minutes);
}

}  // namespace
}  // namespace plugside
