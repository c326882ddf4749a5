#include "core/mending/findings.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <chrono>

#include "core/mending/digger_key.h"
#include "tests/core/mending/planted_walks.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

std::vector<Finding> all_findings(const Survey& survey) { return findings_of(survey).value(); }

double share(std::size_t found, std::size_t planted) { return static_cast<double>(found) / static_cast<double>(planted); }

std::size_t common(const std::set<std::string>& named, const std::vector<std::string>& planted) {
    return static_cast<std::size_t>(
        std::count_if(planted.begin(), planted.end(), [&](const std::string& m) { return named.contains(m); }));
}

TEST(Findings, InFortyWalksPlantedFaultsAreFoundAndHardlyAnyMoundIsFalselyAccused) {
    std::size_t mounds = 0, pressed = 0, pressed_found = 0, doubles_false = 0, frozen = 0, frozen_found = 0,
                frozen_false = 0, jumped = 0, jumped_found = 0, outside = 0, outside_found = 0, springs = 0,
                springs_found = 0, springs_false = 0, diggers_false = 0, diggers = 0, diggers_found = 0, turned_false = 0;
    for (std::size_t number = 0; number < 40; ++number) {
        const test::PlantedWalk walk = test::planted_walk(number);
        const auto findings = *findings_of(walk.field.survey);
        mounds += walk.field.survey.mounds.size();
        const auto doubles = test::marks_named(findings, FindingKind::double_mark);
        std::set<std::string> twice;
        for (const auto& list : {walk.planted.pressed_twice, walk.planted.met_again})
            for (const MarkedAgain& mark : list) twice.insert({mark.mark, mark.first});
        for (const MarkedAgain& mark : walk.planted.pressed_twice) {
            ++pressed;
            pressed_found += static_cast<std::size_t>(doubles.contains(mark.mark) && doubles.contains(mark.first));
        }
        for (const std::string& mark : doubles) doubles_false += static_cast<std::size_t>(!twice.contains(mark));
        const auto stuck = test::marks_named(findings, FindingKind::frozen_receiver);
        std::size_t stuck_planted = 0;
        for (const auto& stretch : walk.planted.frozen) {
            stuck_planted += stretch.size();
            frozen_found += common(stuck, stretch);
        }
        frozen += stuck_planted;
        frozen_false += stuck.size() > stuck_planted + walk.planted.frozen.size()
                            ? stuck.size() - stuck_planted - walk.planted.frozen.size()
                            : 0;
        jumped += walk.planted.jumped.size();
        jumped_found += common(test::marks_named(findings, FindingKind::jump), walk.planted.jumped);
        outside += walk.planted.outside.size();
        outside_found += common(test::marks_named(findings, FindingKind::outside_field), walk.planted.outside);
        const auto others = test::marks_named(findings, FindingKind::other_digger);
        diggers += walk.planted.diggers.size();
        diggers_found += common(others, walk.planted.diggers);
        diggers_false += others.size() - common(others, walk.planted.diggers);
        turned_false += test::marks_named(findings, FindingKind::reversed_bearing).size() -
                        common(test::marks_named(findings, FindingKind::reversed_bearing), walk.planted.reversed);
        springs += walk.planted.jumped_track_points.size();
        for (const Finding& finding : findings) {
            if (finding.kind != FindingKind::jump || !finding.marks.empty()) continue;
            const bool planted =
                std::any_of(walk.planted.jumped_track_points.begin(), walk.planted.jumped_track_points.end(),
                            [&](LocalPoint at) { return distance_m(at, finding.at) < 0.01; });
            ++(planted ? springs_found : springs_false);
        }
    }
    EXPECT_GE(share(pressed_found, pressed), 0.95) << pressed_found << " of " << pressed;
    EXPECT_LT(share(doubles_false, mounds), 0.01) << doubles_false << " of " << mounds;
    EXPECT_GE(share(frozen_found, frozen), 0.98) << frozen_found << " of " << frozen;
    EXPECT_EQ(frozen_false, 0U);
    EXPECT_GE(share(jumped_found, jumped), 0.95) << jumped_found << " of " << jumped;
    EXPECT_GE(share(outside_found, outside), 0.95) << outside_found << " of " << outside;
    EXPECT_GE(share(springs_found, springs), 0.95) << springs_found << " of " << springs;
    EXPECT_LE(springs_false, 2U);
    EXPECT_GE(share(diggers_found, diggers), 0.6) << diggers_found << " of " << diggers;
    EXPECT_LT(share(diggers_false, mounds), 0.002) << diggers_false;
    // one whole walk of the forty is taken to be read from the wrong end
    EXPECT_LT(share(turned_false, mounds), 0.025) << turned_false;
    RecordProperty("falsely_turned", static_cast<int>(turned_false));
}

TEST(Findings, AnEmptySurveyAndALonelyMarkHaveNone) {
    EXPECT_TRUE(findings_of({})->empty());
    EXPECT_TRUE(findings_of(test::straight_run(1))->empty());
    EXPECT_TRUE(findings_of(test::straight_run(2))->empty());
}

TEST(Findings, MarksInOnePlaceWithoutTimesDoNotStopIt) {
    Survey survey = test::straight_run(30);
    for (Mound& mound : survey.mounds) mound.plug = {1.0, 2.0};
    EXPECT_TRUE(findings_of(survey).has_value());
}

TEST(Findings, StoppedWorkGivesNothing) {
    const test::PlantedWalk walk = test::planted_walk(1);
    std::stop_source stop;
    stop.request_stop();
    EXPECT_FALSE(findings_of(walk.field.survey, {}, {stop.get_token(), {}}).has_value());
}

TEST(Findings, AMarkThatWasSetAsideIsNotSpokenOf) {
    test::PlantedWalk walk = test::planted_walk(1);
    const std::string name = walk.planted.pressed_twice.front().mark;
    for (Mound& mound : walk.field.survey.mounds)
        if (mound.name == name) mound.set_aside_because = "by hand";
    const auto findings = *findings_of(walk.field.survey);
    for (const Finding& finding : findings)
        EXPECT_EQ(std::count(finding.marks.begin(), finding.marks.end(), name), 0) << finding.id;
}

TEST(Findings, IdsAreUniqueAndSentencesEndWithAStop) {
    FaultsToPlant wanted;
    wanted.turned_walk = wanted.wrong_end_walk = 0;
    wanted.turned_degrees = 20.0;
    wanted.marked_later = 0.5;
    wanted.later_receiver = {0.1, 0.3, 1500.0};
    std::set<FindingKind> kinds;
    for (std::size_t number = 0; number < 7; ++number) {
        const test::PlantedWalk walk = test::planted_walk(number, wanted);
        std::set<std::string> ids;
        for (const Finding& finding : all_findings(walk.field.survey)) {
            kinds.insert(finding.kind);
            EXPECT_TRUE(ids.insert(finding.id).second) << finding.id;
            for (const std::string& sentence : {finding.found, finding.why, finding.proposed}) {
                ASSERT_FALSE(sentence.empty()) << finding.id;
                EXPECT_EQ(sentence.back(), '.') << sentence;
            }
        }
    }
    EXPECT_GE(kinds.size(), 6U);
}

RC_GTEST_PROP(Findings, DoNotDependOnTheOrderOfMarks, ()) {
    const auto number = *rc::gen::inRange<std::size_t>(0, 14);
    FaultsToPlant wanted;
    wanted.marked_later = 0.4;
    test::PlantedWalk walk = test::planted_walk(number, wanted, 900, 80);
    const auto before = *findings_of(walk.field.survey);
    Random random(*rc::gen::inRange<std::uint64_t>(0, 1000));
    auto& mounds = walk.field.survey.mounds;
    for (std::size_t i = mounds.size(); i > 1; --i) std::swap(mounds[i - 1], mounds[random.below(i)]);
    RC_ASSERT(*findings_of(walk.field.survey) == before);
}

RC_GTEST_PROP(Findings, AcceptingAllAndTakingAllBackRestoresTheSurvey, ()) {
    const auto number = *rc::gen::inRange<std::size_t>(0, 14);
    FaultsToPlant wanted;
    wanted.turned_walk = 0;
    wanted.turned_degrees = 18.0;
    Survey survey = test::planted_walk(number, wanted, 900, 80).field.survey;
    const Survey before = survey;
    const auto findings = *findings_of(survey);
    RC_ASSERT(!findings.empty());
    for (const Finding& finding : findings)
        if (finding.mend) answer_finding(survey, {finding.id, Answer::accepted, *finding.mend});
    RC_ASSERT(survey.mounds != before.mounds);
    std::size_t left = survey.answers.size();
    while (left-- > 0)
        take_answer_back(survey, survey.answers[*rc::gen::inRange<std::size_t>(0, survey.answers.size())].finding);
    RC_ASSERT(survey.mounds == before.mounds);
    RC_ASSERT(survey.answers.empty());
}

TEST(Findings, OneMoundOfTwoMarksIsPlacedBetterThanEither) {
    Survey survey = test::planted_walk(1).field.survey;
    std::size_t doubles = 0;
    for (const Finding& finding : all_findings(survey)) {
        if (finding.kind != FindingKind::double_mark || finding.mend->marks.size() != 2) continue;
        ++doubles;
        answer_finding(survey, {finding.id, Answer::accepted, *finding.mend});
        for (Mound mound : survey.mounds) {
            if (mound.name != finding.mend->marks.front()) continue;
            const double together = mound.position_sd.value();
            mound.position_sd = mound.recorded->position_sd;
            const double alone = place_error_of(mound).own_m;
            EXPECT_NEAR(together, alone / std::sqrt(2.0), 0.05 * alone) << finding.id;
        }
    }
    EXPECT_GT(doubles, 0U);
}

TEST(Findings, WhatWasAcceptedIsNotAskedAgain) {
    FaultsToPlant wanted;
    for (std::size_t number = 0; number < 7; ++number) {
        Survey survey = test::planted_walk(number, wanted).field.survey;
        std::set<std::string> accepted;
        for (const Finding& finding : all_findings(survey)) {
            if (!finding.mend) continue;
            survey.answers.push_back({finding.id, Answer::accepted, *finding.mend});
            accepted.insert(finding.id);
        }
        put_right(survey);
        for (const Finding& finding : all_findings(survey)) EXPECT_FALSE(accepted.contains(finding.id)) << finding.id;
    }
}

TEST(Findings, TwentyThousandMarksWithThousandsOfFindingsAreJudgedWithinTheirTime) {
    SimulationOptions options;
    options.kind = FieldKind::food_tree;
    options.seed = 5;
    options.mounds_wanted = 20000;
    SimulatedField field = simulate_field(options);
    Random random(7);
    FaultsToPlant wanted;
    wanted.pressed_twice = 0.7;
    plant_faults(field, wanted, random);
    const auto start = std::chrono::steady_clock::now();
    const auto findings = findings_of(field.survey);
    const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    ASSERT_TRUE(findings.has_value());
    EXPECT_GT(findings->size(), 9000U);
    EXPECT_LT(seconds, 20.0);  // far above what it takes even with assertions; a quadratic step would show
}

TEST(DiggerKey, EveryChainOfAnswersEndsAndEveryQuestionIsReached) {
    const auto key = digger_key();
    std::vector<bool> reached(key.size(), false);
    std::set<SignKind> diggers;
    const auto follow = [&](auto&& self, std::size_t question, std::size_t depth) -> void {
        ASSERT_LT(question, key.size());
        ASSERT_LE(depth, key.size()) << "a chain that does not end";
        reached[question] = true;
        EXPECT_GE(key[question].answers.size(), 2U);
        for (const DiggerAnswer& answer : key[question].answers) {
            EXPECT_FALSE(answer.words.empty());
            EXPECT_FALSE(answer.why.empty());
            EXPECT_FALSE(answer.source.empty());
            EXPECT_FALSE(answer.next && answer.digger);
            if (answer.digger) diggers.insert(*answer.digger);
            if (answer.next) self(self, *answer.next, depth + 1);
        }
    };
    follow(follow, 0, 1);
    EXPECT_TRUE(std::all_of(reached.begin(), reached.end(), [](bool r) { return r; }));
    EXPECT_EQ(diggers, (std::set<SignKind>{SignKind::gopher_mound, SignKind::surface_plug, SignKind::mole,
                                           SignKind::ground_squirrel, SignKind::vole}));
}

}  // namespace
}  // namespace plugside
