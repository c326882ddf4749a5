#include "app/batch/evaluation.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <regex>
#include <sstream>

#include "app/batch/evaluation_charts.h"
#include "app/batch/evaluation_groups.h"
#include "app/batch/evaluation_report.h"
#include "app/batch/svg_chart.h"
#include "core/plan/make_plan.h"
#include "core/simulation/tuned_kinds.h"

namespace plugside {
namespace {

EvaluationOptions few_fields() {
    EvaluationOptions options;
    options.kinds = {FieldKind::meander, FieldKind::edge_rows};
    options.seeds = 2;
    options.mounds = 60;
    return options;
}

FieldResult made_up_result(std::size_t animals, std::vector<std::size_t> reached_by_sets) {
    FieldResult result;
    result.score.true_systems = animals;
    result.score.sets = reached_by_sets.size() - 1;
    result.score.animals_reached = reached_by_sets.back();
    result.score.reached_by_sets = std::move(reached_by_sets);
    return result;
}

TEST(SpreadEvenly, DiffersByOneFieldAtMostAndSums) {
    EXPECT_EQ(spread_evenly(8, 4), (std::vector<std::uint64_t>{2, 2, 2, 2}));
    EXPECT_EQ(spread_evenly(7, 3), (std::vector<std::uint64_t>{3, 2, 2}));
    EXPECT_EQ(spread_evenly(2, 4), (std::vector<std::uint64_t>{1, 1, 0, 0}));
    EXPECT_TRUE(spread_evenly(5, 0).empty());
}

TEST(ReachCurve, CountsWholeSetsOfEachFieldAndStaysFlatAtItsEnd) {
    // ours, by hand: two animals reached by the first and the third of three sets; four animals, one of them reached by one
    // set
    const FieldResult two = made_up_result(2, {0, 1, 1, 2});
    const FieldResult four = made_up_result(4, {0, 1});
    const auto curve = reach_curve({&two, &four});
    ASSERT_EQ(curve.size(), 31u);
    EXPECT_EQ(curve[0].reached, 0.0);
    EXPECT_NEAR(curve[3].reached, 1.0 / 6.0, 1e-12);   // .3: none of the first field's sets, one of the other's
    EXPECT_NEAR(curve[5].reached, 2.0 / 6.0, 1e-12);   // .5: one each
    EXPECT_NEAR(curve[14].reached, 2.0 / 6.0, 1e-12);  // 1.4: two sets of the first field
    EXPECT_NEAR(curve[15].reached, 3.0 / 6.0, 1e-12);  // 1.5: its third
    EXPECT_EQ(curve[30].reached, curve[15].reached);
    EXPECT_NEAR(curve[15].sets_an_animal, 1.5, 1e-12);
}

TEST(GroupsOf, ShortfallIsOfTheMeansAndTheMeanOverFields) {
    std::vector<FieldResult> results(3);
    const double index[] = {0.8, 0.4, 0.9};
    const double yardstick[] = {0.6, 0.2, 1.0};
    for (std::size_t i = 0; i < 3; ++i) {
        results[i].score.adjusted_rand = index[i];
        results[i].score.yardstick_adjusted_rand = yardstick[i];
    }
    const auto groups = groups_of(results);
    ASSERT_EQ(groups.size(), 2u);
    EXPECT_EQ(groups.back().name, "all");
    EXPECT_NEAR(groups.back().totals.shortfall_of_means(), (1.0 - 0.7) / (1.0 - 0.6), 1e-12);
    EXPECT_NEAR(groups.back().totals.mean_shortfall(), 0.5 * (0.5 + 0.75), 1e-12);
    EXPECT_FALSE(shortfall_ratio(results[2].score));
}

TEST(EvaluateFields, ReachIsMonotoneAndClaimsAddUpOverTheKinds) {
    const auto results = evaluate_fields(few_fields(), {}, {});
    ASSERT_TRUE(results);
    ASSERT_EQ(results->size(), 4u);
    const auto groups = groups_of(*results);
    ASSERT_EQ(groups.size(), 3u);
    for (const EvaluationGroup& group : groups) {
        for (std::size_t i = 1; i < group.reach.size(); ++i) EXPECT_GE(group.reach[i].reached, group.reach[i - 1].reached);
        EXPECT_EQ(group.reach.front().reached, 0.0);
        EXPECT_GT(group.reach.back().reached, 0.3);
        EXPECT_LE(group.reach.back().reached, 1.0);
    }
    for (std::size_t q = 0; q < truth_rank_count; ++q) {
        EXPECT_EQ(groups[2].truth_ranks.at(q).ranks(), 4u);
        EXPECT_EQ(groups[0].truth_ranks.at(q).ranks(), 2u);
    }
    EXPECT_NE(table_of(*results).find("truth among draws"), std::string::npos);
    EXPECT_NE(report_of(*results).find("Where the truth stands among the draws"), std::string::npos);
    EXPECT_NE(csv_of(*results).find("true_systems_place,true_pairs_place"), std::string::npos);
    for (std::size_t kind = 0; kind < claim_kinds; ++kind) {
        EXPECT_GT(groups[2].calibration[kind].claims, 0u) << to_text(static_cast<ClaimKind>(kind));
        EXPECT_EQ(groups[2].calibration[kind].claims,
                  groups[0].calibration[kind].claims + groups[1].calibration[kind].claims);
    }
}

TEST(EvaluateFields, PlansEachKindWithItsWeightsAndSaysWhichWereLeftOut) {
    LinkWeights nothing_joins = first_form_weights();
    nothing_joins.stages.back() = {};
    nothing_joins.stages.back().of_feature[0] = -50.0;
    for (std::size_t i = 0; i < gap_knots; ++i) nothing_joins.stages.back().of_feature[i] = -50.0;
    EvaluationOptions options = few_fields();
    options.weights = [&](FieldKind kind) {
        return kind == FieldKind::edge_rows ? WeightsOfKind{&nothing_joins, true} : WeightsOfKind{};
    };
    const auto results = evaluate_fields(options, {}, {});
    ASSERT_TRUE(results);
    for (const FieldResult& result : *results) {
        const bool edge = result.kind == FieldKind::edge_rows;
        EXPECT_EQ(result.kind_left_out, edge);
        const double single_marks = result.score.expected_systems / static_cast<double>(result.score.marks);
        if (edge) {
            EXPECT_GT(single_marks, 0.9);
        } else {
            EXPECT_LT(single_marks, 0.5);
        }
    }
    const auto groups = groups_of(*results);
    EXPECT_FALSE(groups[0].left_out);
    EXPECT_TRUE(groups[1].left_out);
    EXPECT_FALSE(groups[2].left_out);
    const std::string said = tuning_sentence(groups);
    EXPECT_NE(said.find("without its own generator: edge rows"), std::string::npos) << said;
    EXPECT_NE(said.find("Not left out: meander."), std::string::npos) << said;
    const std::string report = report_of(*results);
    EXPECT_NE(report.find(said), std::string::npos);
    EXPECT_NE(report.find("edge rows (left out)"), std::string::npos);
    EXPECT_NE(table_of(*results).find(said), std::string::npos);
}

TEST(EvaluateFields, TheProgramsOwnWeightsLeaveOutWhatTheyWereNotLearntOn) {
    ASSERT_TRUE(kinds_learnt_on());
    EvaluationOptions options = few_fields();
    options.kinds = all_field_kinds();
    options.seeds = 1;
    options.mounds = 30;
    const auto results = evaluate_fields(options, {}, {});
    ASSERT_TRUE(results);
    for (const FieldResult& result : *results)
        EXPECT_EQ(result.kind_left_out, std::count(kinds_learnt_on()->begin(), kinds_learnt_on()->end(), result.kind) == 0)
            << to_text(result.kind);
}

TEST(GroupsOf, TheWidthOutsideCrowdedKindsLeavesThoseOut) {
    std::vector<FieldResult> results(3);
    const FieldKind kinds[] = {FieldKind::meander, FieldKind::crowded_growth, FieldKind::edge_rows};
    const int width[] = {2, 9, 4};
    for (std::size_t i = 0; i < 3; ++i) {
        results[i].kind = kinds[i];
        results[i].score.true_systems = 10;
        results[i].score.high = width[i];
    }
    const auto width_told = width_outside_crowded(groups_of(results).back());
    ASSERT_TRUE(width_told);
    EXPECT_NEAR(*width_told, 0.3, 1e-12);
    results.erase(results.begin() + 2);
    results.erase(results.begin());
    EXPECT_FALSE(width_outside_crowded(groups_of(results).front()));
}

TEST(EvaluateFields, ScoresAReferenceFormOnTheSameFields) {
    EvaluationOptions options = few_fields();
    options.seeds = 1;
    const auto without = evaluate_fields(options, {}, {});
    options.reference = [](const Survey& survey, FieldKind, const Progress& progress) {
        return make_plan(survey, {}, progress);
    };
    const auto with = evaluate_fields(options, {}, {});
    ASSERT_TRUE(without && with);
    for (std::size_t i = 0; i < with->size(); ++i) {
        EXPECT_FALSE((*without)[i].reference);
        ASSERT_TRUE((*with)[i].reference);
        EXPECT_EQ((*with)[i].reference->adjusted_rand, (*with)[i].score.adjusted_rand);
        EXPECT_EQ((*with)[i].score.adjusted_rand, (*without)[i].score.adjusted_rand);
    }
    EXPECT_NE(report_of(*with).find("reference form"), std::string::npos);
    EXPECT_EQ(report_of(*without).find("reference form"), std::string::npos);
    EXPECT_NE(table_of(*with).find("reference form"), std::string::npos);
}

TEST(ReportOf, EveryDiagramHasAxisLabelsAndCountsAndEveryElementIsClosed) {
    const auto results = evaluate_fields(few_fields(), {}, {});
    ASSERT_TRUE(results);
    const std::string report = report_of(*results);
    std::size_t pictures = 0;
    for (std::size_t from = report.find("<svg"); from != std::string::npos;
         from = report.find("<svg", from + 1), ++pictures) {
        const std::string svg = report.substr(from, report.find("</svg>", from) - from);
        const std::regex label("class=\"label\"[^>]*>[^<]+<");
        EXPECT_EQ(std::distance(std::sregex_iterator(svg.begin(), svg.end(), label), {}), 2) << svg.substr(0, 300);
        EXPECT_TRUE(std::regex_search(svg, std::regex("[0-9]+ (claims|fields|sets)"))) << svg.substr(0, 300);
        EXPECT_EQ(svg.find("nan"), std::string::npos);
    }
    EXPECT_EQ(pictures, 3u + claim_kinds * 3 + 3u);
    std::vector<std::string> open;
    const std::regex tag("<(/?)([a-z0-9]+)[^>]*?(/?)>");
    for (std::sregex_iterator it(report.begin(), report.end(), tag), end; it != end; ++it) {
        if ((*it)[3] == "/" || (*it)[2] == "meta") continue;
        if ((*it)[1] != "/") {
            open.push_back((*it)[2]);
            continue;
        }
        ASSERT_FALSE(open.empty());
        ASSERT_EQ(open.back(), (*it)[2].str());
        open.pop_back();
    }
    EXPECT_TRUE(open.empty());
}

TEST(ReportOf, HandlesNoFieldAndAChartWithoutClaims) {
    EXPECT_NE(report_of({}).find("Nothing was tested."), std::string::npos);
    EXPECT_NE(reliability_chart({}, "nothing", 200.0).find("no claim"), std::string::npos);
    EXPECT_EQ(escaped("a < b & \"c\""), "a &lt; b &amp; &quot;c&quot;");
}

}  // namespace
}  // namespace plugside
