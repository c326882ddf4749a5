#include "core/systems/link_net.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

#include "core/systems/link_weights.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

struct Scored {
    std::vector<Mark> marks;
    std::vector<Link> links;
    LinkNetInput input;
    LinkScores scores;
};

Scored scored(const Survey& survey) {
    Scored result;
    result.marks = marks_of(survey, {});
    result.links = candidate_links(result.marks, {});
    result.input = link_net_input(result.marks, result.links, rows_of(result.marks.size(), result.links));
    result.scores = link_scores(result.input, *learnt_link_weights().net);
    return result;
}

// Log weights by the pair of mounds they join.
std::map<std::pair<std::size_t, std::size_t>, double> by_mounds(const Scored& result) {
    std::map<std::pair<std::size_t, std::size_t>, double> weights;
    for (std::size_t e = 0; e < result.links.size(); ++e)
        weights[std::minmax(result.marks[result.links[e].first].mound, result.marks[result.links[e].second].mound)] =
            result.scores.log_weight[e];
    return weights;
}

Survey turned(Survey survey, double degrees, LocalVector shift) {
    const double angle = degrees * std::numbers::pi / 180.0;
    for (Mound& mound : survey.mounds) {
        const LocalPoint p = mound.plug;
        mound.plug = {p.east_m * std::cos(angle) + p.north_m * std::sin(angle) + shift.east_m,
                      p.north_m * std::cos(angle) - p.east_m * std::sin(angle) + shift.north_m};
        if (mound.fan) mound.fan = mound.fan->turned(degrees);
    }
    return survey;
}

TEST(LinkNet, TheWeightsOfATurnedAndMovedFieldAreTheSame) {
    Survey survey = test::simulated_survey(4, 150);
    survey.ground = {};
    const auto here = by_mounds(scored(survey));
    const auto there = by_mounds(scored(turned(survey, 37.0, {310.0, -75.0})));
    ASSERT_EQ(here.size(), there.size());
    for (const auto& [mounds, weight] : here) EXPECT_NEAR(there.at(mounds), weight, 0.02);
}

TEST(LinkNet, TheWeightsOfARenumberedFieldAreTheSame) {
    Survey survey = test::simulated_survey(4, 150);
    survey.ground = {};
    const auto here = by_mounds(scored(survey));
    Survey backwards = survey;
    std::reverse(backwards.mounds.begin(), backwards.mounds.end());
    const std::size_t last = survey.mounds.size() - 1;
    for (const auto& [mounds, weight] : by_mounds(scored(backwards)))
        EXPECT_NEAR(weight, here.at(std::minmax(last - mounds.first, last - mounds.second)), 0.003);
}

TEST(LinkNet, ALinkAcrossBothFansOutweighsOneAlongThem) {
    std::vector<Mound> mounds;
    for (int row = 0; row < 5; ++row)
        for (int column = 0; column < 5; ++column) mounds.push_back(test::mound_at(2.0 * column, 2.0 * row, 0.0));
    const Scored result = scored(test::survey_of(mounds));
    double across = 0.0;
    double along = 0.0;
    for (std::size_t e = 0; e < result.links.size(); ++e) {
        if (result.links[e].length_m > 2.1) continue;
        const LocalVector step = result.marks[result.links[e].second].plug - result.marks[result.links[e].first].plug;
        (std::abs(step.east_m) > std::abs(step.north_m) ? across : along) += result.scores.log_weight[e];
    }
    EXPECT_GT(across / 20.0, along / 20.0 + 1.0);  // twenty of either
}

TEST(LinkNet, WhatLiesFarAwayChangesNothing) {
    Survey survey = test::simulated_survey(4, 150);
    survey.ground = {};
    const auto alone = by_mounds(scored(survey));
    // another field of as many marks as anybody's surroundings, far beyond every link
    const std::size_t own = survey.mounds.size();
    Survey second = test::simulated_survey(5, 400);
    for (Mound& mound : second.mounds) {
        mound.plug = mound.plug + LocalVector{5000.0, 5000.0};
        survey.mounds.push_back(mound);
    }
    std::size_t compared = 0;
    if (own < net_window) GTEST_FAIL() << "too few marks to fill anybody's surroundings";
    for (const auto& [mounds, weight] : by_mounds(scored(survey)))
        if (mounds.first < own && mounds.second < own) {
            ++compared;
            EXPECT_EQ(weight, alone.at(mounds));
        }
    EXPECT_EQ(compared, alone.size());
}

TEST(LinkNet, WeightsAreFiniteWhateverTheSurvey) {
    for (const Survey& survey : {test::survey_of({}), test::survey_of({test::mound_at(0, 0)}),
                                 test::survey_of(std::vector<Mound>(40, test::mound_at(5, 5, 90.0))), test::straight_run(30),
                                 test::survey_of({test::mound_at(0, 0), test::mound_at(1e6, 1e6), test::mound_at(0, 1e-9)})}) {
        const Scored result = scored(survey);
        for (const double weight : result.scores.log_weight) EXPECT_LE(std::abs(weight), 8.0);
        for (const double root : result.scores.log_root) EXPECT_LE(std::abs(root), 4.0);
    }
}

TEST(LinkNet, TheInputTellsEveryMarkAndLinkAndEveryTriangleClosesAndEveryCrossingIsMutual) {
    const Scored result = scored(test::simulated_survey(6, 120));
    EXPECT_EQ(result.input.of_mark.size(), result.marks.size() * net_mark_names().size());
    EXPECT_EQ(result.input.of_link.size(), result.links.size() * net_link_names().size());
    ASSERT_FALSE(result.input.triangles.empty());
    for (const auto& triangle : result.input.triangles) {
        std::map<std::uint32_t, int> ends;
        for (const std::uint32_t e : {triangle.link, triangle.one, triangle.other}) {
            ++ends[result.links[e].first];
            ++ends[result.links[e].second];
        }
        EXPECT_EQ(ends.size(), 3U);
    }
    ASSERT_FALSE(result.input.crossings.empty());
    for (const auto& [link, other] : result.input.crossings)
        EXPECT_TRUE(std::binary_search(result.input.crossings.begin(), result.input.crossings.end(), std::pair(other, link)));
}

}  // namespace
}  // namespace plugside
