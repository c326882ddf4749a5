#include "core/systems/link_weights.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/surveys.h"

namespace plugside {
namespace {

TEST(LinkWeights, TheResourceHasEveryNameAndSurvivesBeingWrittenAgain) {
    const LinkWeights& learnt = first_form_weights();
    ASSERT_GE(learnt.stages.size(), 1U);
    EXPECT_GT(learnt.shift_sd, 0.0);
    const std::string text = to_text(learnt);
    for (const std::string_view name : link_feature_names()) EXPECT_NE(text.find(name), std::string::npos) << name;
    EXPECT_EQ(to_text(parse_link_weights(text)), text);
}

TEST(LinkWeights, ALinkAcrossBothFansOutweighsOneAlongThem) {
    // two rows of four: fans to the north, so a run may go east-west and hardly north-south
    std::vector<Mound> mounds;
    for (int row = 0; row < 4; ++row)
        for (int column = 0; column < 4; ++column) mounds.push_back(test::mound_at(2.0 * column, 2.0 * row, 0.0));
    const std::vector<Mark> marks = marks_of(test::survey_of(mounds), {});
    const std::vector<Link> links = candidate_links(marks, {}, {.nearest = 4, .reach = Metres::of(2.5)});
    const auto weight = log_weights(marks, links, link_features(marks, links, fit_scales(marks, links), 15.0), first_form_weights());
    double across = 0.0, along = 0.0;
    int across_count = 0, along_count = 0;
    for (std::size_t e = 0; e < links.size(); ++e) {
        const LocalVector step = marks[links[e].second].plug - marks[links[e].first].plug;
        (std::abs(step.east_m) > std::abs(step.north_m) ? across : along) += weight[e];
        ++(std::abs(step.east_m) > std::abs(step.north_m) ? across_count : along_count);
    }
    EXPECT_GT(across / across_count, along / along_count + 1.0);
}

TEST(LinkWeights, WeightsAreFiniteWhateverTheSurvey) {
    for (const Survey& survey : {test::survey_of({}), test::survey_of({test::mound_at(0, 0)}),
                                 test::survey_of(std::vector<Mound>(40, test::mound_at(5, 5, 90.0))), test::straight_run(30),
                                 test::survey_of({test::mound_at(0, 0), test::mound_at(1e6, 1e6), test::mound_at(0, 1e-9)})}) {
        const std::vector<Mark> marks = marks_of(survey, {});
        const std::vector<Link> links = candidate_links(marks, {});
        const auto features = link_features(marks, links, fit_scales(marks, links), 15.0);
        for (const double weight : log_weights(marks, links, features, first_form_weights())) EXPECT_TRUE(std::isfinite(weight));
    }
}

TEST(SurveyScales, FindTheSpacingOfAnEvenRun) {
    std::vector<Mound> mounds;
    for (int system = 0; system < 6; ++system)
        for (int i = 0; i < 12; ++i)
            mounds.push_back(test::mound_at(3.0 * i + 0.3 * ((i * 7 + system) % 3), 25.0 * system + 0.2 * ((i * 5) % 4)));
    const std::vector<Mark> marks = marks_of(test::survey_of(mounds), {});
    const SurveyScales scales = fit_scales(marks, candidate_links(marks, {}));
    EXPECT_GT(scales.spacing_m, 2.2);
    EXPECT_LT(scales.spacing_m, 3.8);
}

TEST(SurveyScales, FallBackOnThePriorWithoutEvidence) {
    const SurveyScales prior;
    for (const auto& mounds : {std::vector<Mound>{}, std::vector<Mound>(1, test::mound_at(0, 0)), std::vector<Mound>(9, test::mound_at(4, 4))}) {
        const std::vector<Mark> marks = marks_of(test::survey_of(mounds), {});
        EXPECT_NEAR(fit_scales(marks, candidate_links(marks, {})).spacing_m, prior.spacing_m, 0.01);
    }
}

}  // namespace
}  // namespace plugside
