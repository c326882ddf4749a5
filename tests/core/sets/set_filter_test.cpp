#include "core/sets/set_filter.h"

#include <gtest/gtest.h>

#include "core/plan/make_plan.h"
#include "core/sets/cautions.h"
#include "core/sets/set_choices.h"
#include "core/sets/why_here.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

class SetsOfAField : public testing::Test {
protected:
    Survey survey_ = test::simulated_survey(3, 100);
    Plan plan_ = *make_plan(survey_);
    const ProbeKey& key(std::size_t set) const { return plan_.probes[plan_.sets[set].probe].key; }
};

TEST_F(SetsOfAField, ChoicesAreThoseOfTheDecisionsOneByOne) {
    decide(survey_, {key(0), SetChoice::kept, {}});
    decide(survey_, {key(3), SetChoice::dropped, {}});
    decide(survey_, {key(5), SetChoice::moved, LadderPlace{Metres::of(0.4), Metres::of(0.1)}});
    const auto choices = choices_of(survey_, plan_);
    for (std::size_t s = 0; s < plan_.sets.size(); ++s) {
        const auto decision = decision_on(survey_, key(s));
        EXPECT_EQ(choices[s], decision ? decision->choice : SetChoice::proposed);
    }
}

TEST_F(SetsOfAField, DecidingAllAtOnceIsDecidingOneByOneInOneRevision) {
    decide(survey_, {key(0), SetChoice::kept, {}});
    decide(survey_, {key(1), SetChoice::kept, {}});
    const std::vector<SetDecision> many{{key(1), SetChoice::proposed, {}},
                                        {key(2), SetChoice::dropped, {}},
                                        {key(3), SetChoice::dropped, {}},
                                        {key(0), SetChoice::dropped, {}},
                                        {key(3), SetChoice::kept, {}}};
    Survey one_by_one = survey_;
    for (const SetDecision& decision : many) decide(one_by_one, decision);
    Survey at_once = survey_;
    decide_all(at_once, many);
    EXPECT_EQ(at_once.revision, survey_.revision + 1);
    EXPECT_EQ(at_once.decisions.size(), one_by_one.decisions.size());
    for (const SetDecision& decision : one_by_one.decisions) EXPECT_EQ(decision_on(at_once, decision.probe), decision);
    const auto revision = at_once.revision;
    decide_all(at_once, {});
    EXPECT_EQ(at_once.revision, revision);
}

TEST_F(SetsOfAField, AFilterWithoutAWishLetsAllThroughAndEveryWishNarrowsIt) {
    plan_.sets[1].cautions.emplace_back("well");
    plan_.sets[2].cautions = {"label-decides", "check-daily"};
    auto choices = choices_of(survey_, plan_);
    choices[0] = SetChoice::kept;
    EXPECT_TRUE(lets_all_through({}));
    EXPECT_EQ(sets_through({}, plan_, choices).size(), plan_.sets.size());
    SetFilter undecided;
    undecided.undecided = true;
    EXPECT_FALSE(lets_all_through(undecided));
    EXPECT_EQ(sets_through(undecided, plan_, choices).size(), plan_.sets.size() - 1);
    SetFilter cautioned;
    cautioned.cautioned = true;
    const auto with_caution = sets_through(cautioned, plan_, choices);
    EXPECT_NE(std::find(with_caution.begin(), with_caution.end(), 1U), with_caution.end());
    EXPECT_EQ(std::find(with_caution.begin(), with_caution.end(), 2U), with_caution.end());
    for (const std::string& id : plan_.sets[2].cautions) EXPECT_TRUE(holds_at_every_set(id));
    EXPECT_FALSE(holds_at_every_set("well"));
}

TEST_F(SetsOfAField, UnderAndAtLeastAChancePartTheSetsAsTheyAreShown) {
    const auto choices = choices_of(survey_, plan_);
    for (const int limit : {50, 95, 97, 99, 101}) {
        SetFilter under;
        under.under = limit;
        SetFilter at_least;
        at_least.at_least = limit;
        const auto below = sets_through(under, plan_, choices);
        const auto above = sets_through(at_least, plan_, choices);
        EXPECT_EQ(below.size() + above.size(), plan_.sets.size());
        for (const std::size_t s : below) EXPECT_LT(plan_.probes[plan_.sets[s].probe].hit.in_100(), limit);
    }
}

TEST_F(SetsOfAField, ALetterLetsThroughTheSetsOfItsAnimal) {
    const auto choices = choices_of(survey_, plan_);
    std::size_t all = 0;
    for (std::size_t k = 0; k < plan_.systems.size(); ++k) {
        SetFilter of_one;
        of_one.system = plan_.systems[k].letter;
        for (const std::size_t s : sets_through(of_one, plan_, choices)) {
            EXPECT_EQ(plan_.probes[plan_.sets[s].probe].system, k);
            ++all;
        }
    }
    EXPECT_EQ(all, plan_.sets.size());
    SetFilter of_none;
    of_none.system = "no such letter";
    EXPECT_TRUE(sets_through(of_none, plan_, choices).empty());
}

TEST_F(SetsOfAField, WhyHereNamesTheMoundsTheirRunsAndEveryOtherPlaceOfTheAnimal) {
    std::size_t links = 0;
    for (std::size_t s = 0; s < plan_.sets.size(); ++s) {
        const ProbeSite& site = plan_.probes[plan_.sets[s].probe];
        const WhyHere why = why_here(plan_, s);
        ASSERT_FALSE(why.mounds.empty());
        EXPECT_EQ(why.mounds.front(), site.from_mound);
        EXPECT_EQ(why.mounds.size(), site.to_mound ? 2U : 1U);
        links += why.runs.size();
        for (const std::size_t r : why.runs) {
            EXPECT_EQ(plan_.runs[r].system, site.system);
            EXPECT_TRUE(std::any_of(why.mounds.begin(), why.mounds.end(), [&](std::size_t m) {
                return plan_.runs[r].from_mound == m || plan_.runs[r].to_mound == m;
            }));
        }
        if (site.to_mound && !why.runs.empty()) {
            const MainRun& first = plan_.runs[why.runs.front()];
            EXPECT_TRUE((first.from_mound == site.from_mound && first.to_mound == *site.to_mound) ||
                        (first.to_mound == site.from_mound && first.from_mound == *site.to_mound));
        }
        const auto in_system = std::count_if(plan_.probes.begin(), plan_.probes.end(),
                                             [&](const ProbeSite& other) { return other.system == site.system; });
        EXPECT_EQ(static_cast<std::ptrdiff_t>(why.others.size()), in_system - 1);
        for (std::size_t k = 1; k < why.others.size(); ++k) {
            const OtherPlace& a = why.others[k - 1];
            const OtherPlace& b = why.others[k];
            EXPECT_LE(a.set.has_value(), b.set.has_value());
            if (a.set.has_value() == b.set.has_value()) {
                EXPECT_GE(plan_.probes[a.probe].hit.in_100(), plan_.probes[b.probe].hit.in_100());
            }
        }
    }
    EXPECT_GT(links, plan_.sets.size() / 2);
}

}  // namespace
}  // namespace plugside
