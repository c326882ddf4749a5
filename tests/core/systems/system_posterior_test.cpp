#include "core/systems/system_posterior.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "tests/core/surveys.h"

namespace plugside {
namespace {

TEST(SystemPosterior, SharesAreSharesAndAddUp) {
    const SystemPosterior posterior = *infer_systems(test::simulated_survey(31, 200), {}, learnt_link_weights());
    const auto is_share = [](double value) { return value >= 0.0 && value <= 1.0; };
    EXPECT_TRUE(std::all_of(posterior.link_probability.begin(), posterior.link_probability.end(), is_share));
    EXPECT_TRUE(std::all_of(posterior.belongs.begin(), posterior.belongs.end(), is_share));
    EXPECT_TRUE(std::all_of(posterior.single.begin(), posterior.single.end(), is_share));
    EXPECT_EQ(posterior.single.size(), posterior.systems);
    double links = 0.0;
    for (const double share : posterior.link_probability) links += share;
    // a forest has one link for each mark that is no root
    EXPECT_LT(links, static_cast<double>(posterior.marks.size()));
    EXPECT_GT(links, 0.7 * static_cast<double>(posterior.marks.size()));
    EXPECT_LE(posterior.estimate.low, posterior.estimate.most_likely);
    EXPECT_LE(posterior.estimate.most_likely, posterior.estimate.high);
}

TEST(SystemPosterior, NumbersSystemsByTheirMounds) {
    const SystemPosterior posterior = *infer_systems(test::simulated_survey(32, 200), {}, learnt_link_weights());
    std::vector<int> size(posterior.systems, 0);
    for (const std::uint32_t system : posterior.system) ++size.at(system);
    EXPECT_TRUE(std::is_sorted(size.rbegin(), size.rend()));
    EXPECT_GT(size.back(), 0);
}

TEST(SystemPosterior, AWiderShiftGivesAWiderInterval) {
    const Survey survey = test::simulated_survey(33, 250);
    LinkWeights narrow = learnt_link_weights();
    narrow.shift_sd = 0.05;
    LinkWeights wide = learnt_link_weights();
    wide.shift_sd = 1.2;
    const SystemsEstimate a = infer_systems(survey, {}, narrow)->estimate;
    const SystemsEstimate b = infer_systems(survey, {}, wide)->estimate;
    EXPECT_GT(b.high - b.low, a.high - a.low);
}

TEST(FieldSummary, ForetellsNothingForAHandfulOfMarksAndNeverMoreThanItsBound) {
    LinkWeights extreme = learnt_link_weights();
    extreme.shift.fill(100.0);
    for (const std::size_t mounds : {2U, 9U, 60U}) {
        const std::vector<Mark> marks = marks_of(test::straight_run(mounds), {});
        const std::vector<Link> links = candidate_links(marks, {});
        const SurveyScales scales = fit_scales(marks, links);
        const auto features = link_features(marks, links, scales, 15.0);
        const auto weights = log_weights(marks, links, features, learnt_link_weights());
        const FieldSummary summary = field_summary(marks, links, features, weights, scales);
        for (const double value : summary) EXPECT_TRUE(std::isfinite(value));
        const double shift = foretold_shift(summary, extreme);
        EXPECT_EQ(mounds < 10, shift == 0.0);
        EXPECT_LE(std::abs(shift), 1.2);
    }
    EXPECT_EQ(std::set<std::string_view>(field_summary_names().begin(), field_summary_names().end()).size(), field_summary_count);
}

TEST(RunPresence, GrowsWithTheLinksShareAndStaysAChance) {
    double last = 0.0;
    for (const double share : {0.0, 0.1, 0.3, 0.5, 0.8, 1.0}) {
        const double presence = run_presence(share, learnt_link_weights());
        EXPECT_GT(presence, last);
        EXPECT_LT(presence, 1.0);
        last = presence;
    }
}

KnownFact fact(FactKind kind, std::vector<std::string> marks) {
    KnownFact told;
    told.kind = kind;
    told.marks = std::move(marks);
    return told;
}

// The two marks of different systems that lie nearest to one another, and the two farthest apart within the largest system.
struct Chosen {
    std::string one, other, within_one, within_other;
};

Chosen chosen_marks(const Survey& survey, const SystemPosterior& posterior) {
    Chosen chosen;
    double nearest = 1e9;
    double farthest = 0.0;
    for (const Mark& a : posterior.marks)
        for (const Mark& b : posterior.marks) {
            const std::uint32_t system_a = posterior.system[static_cast<std::size_t>(&a - posterior.marks.data())];
            const std::uint32_t system_b = posterior.system[static_cast<std::size_t>(&b - posterior.marks.data())];
            const double apart = distance_m(a.plug, b.plug);
            if (system_a != system_b && apart < nearest) {
                nearest = apart;
                chosen.one = survey.mounds[a.mound].name;
                chosen.other = survey.mounds[b.mound].name;
            }
            if (system_a == 0 && system_b == 0 && apart > farthest) {
                farthest = apart;
                chosen.within_one = survey.mounds[a.mound].name;
                chosen.within_other = survey.mounds[b.mound].name;
            }
        }
    return chosen;
}

std::uint32_t mark_named(const Survey& survey, const SystemPosterior& posterior, const std::string& name) {
    for (std::uint32_t i = 0; i < posterior.marks.size(); ++i)
        if (survey.mounds[posterior.marks[i].mound].name == name) return i;
    return no_mark;
}

TEST(SystemPosterior, WhatAPersonKnowsHoldsInEveryDraw) {
    Survey survey = test::simulated_survey(8, 120);
    const Chosen chosen = chosen_marks(survey, *infer_systems(survey, {}, learnt_link_weights()));
    survey.known.push_back(fact(FactKind::same_system, {chosen.one, chosen.other}));
    survey.known.push_back(fact(FactKind::different_systems, {chosen.within_one, chosen.within_other}));
    const SystemPosterior posterior = *infer_systems(survey, {}, learnt_link_weights());
    EXPECT_TRUE(posterior.conflicts.empty());
    const auto at = [&](const std::string& name) { return mark_named(survey, posterior, name); };
    ASSERT_FALSE(posterior.drawn_system.empty());
    for (const auto& tree : posterior.drawn_system) {
        EXPECT_EQ(tree[at(chosen.one)], tree[at(chosen.other)]);
        EXPECT_NE(tree[at(chosen.within_one)], tree[at(chosen.within_other)]);
    }
    EXPECT_EQ(posterior.drawn_links.size(), posterior.drawn_system.size());
    EXPECT_GT(posterior.convergence.chained_marks, 0U);
}

TEST(SystemPosterior, AMarkToldNotToBeAGophersTakesNoPart) {
    Survey survey = test::simulated_survey(8, 60);
    const std::size_t before = infer_systems(survey, {}, learnt_link_weights())->marks.size();
    const auto used = std::find_if(survey.mounds.begin(), survey.mounds.end(),
                                   [&](const Mound& mound) { return !why_not_used(survey, mound); });
    survey.known.push_back(fact(FactKind::not_a_gopher, {used->name}));
    EXPECT_EQ(infer_systems(survey, {}, learnt_link_weights())->marks.size(), before - 1);
    EXPECT_EQ(why_not_used(survey, *used), "told not to be a gopher's");
}

TEST(SystemPosterior, AContradictionIsNamedAndTheLaterFactSetAside) {
    Survey survey = test::simulated_survey(8, 60);
    const Chosen chosen = chosen_marks(survey, *infer_systems(survey, {}, learnt_link_weights()));
    survey.known.push_back(fact(FactKind::different_systems, {chosen.one, chosen.other}));
    survey.known.push_back(fact(FactKind::same_system, {chosen.other, chosen.one}));
    const SystemPosterior posterior = *infer_systems(survey, {}, learnt_link_weights());
    ASSERT_EQ(posterior.conflicts.size(), 1U);
    EXPECT_EQ(posterior.conflicts[0].set_aside, 1U);
    EXPECT_EQ(posterior.conflicts[0].with, std::vector<std::size_t>{0});
    EXPECT_NE(posterior.conflicts[0].sentence.find(chosen.one), std::string::npos);
    for (const auto& tree : posterior.drawn_system)
        EXPECT_NE(tree[mark_named(survey, posterior, chosen.one)], tree[mark_named(survey, posterior, chosen.other)]);
}

}  // namespace
}  // namespace plugside
