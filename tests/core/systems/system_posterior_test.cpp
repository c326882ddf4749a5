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

}  // namespace
}  // namespace plugside
