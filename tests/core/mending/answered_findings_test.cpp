#include "core/mending/answered_findings.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/core/mending/planted_walks.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

const AnsweredFinding* find(const std::vector<AnsweredFinding>& list, const std::string& id) {
    const auto found =
        std::find_if(list.begin(), list.end(), [&](const AnsweredFinding& entry) { return entry.finding.id == id; });
    return found == list.end() ? nullptr : &*found;
}

TEST(AnsweredFindings, AcceptedOnesStayInTheListInTheWordsInWhichTheyWereFound) {
    Survey survey = test::planted_walk(3).field.survey;
    const auto before = *answered_findings(survey, {});
    ASSERT_GE(before.size(), 4U);
    std::size_t number = 0;
    for (const auto& [finding, answer] : before) {
        EXPECT_EQ(answer, std::nullopt);
        if (finding.mend && number++ < 4)
            answer_finding(survey, {finding.id, number % 2 == 0 ? Answer::refused : Answer::accepted, *finding.mend});
    }
    const auto after = *answered_findings(survey, {});
    for (const MendAnswer& answer : survey.answers) {
        const AnsweredFinding* entry = find(after, answer.finding);
        ASSERT_NE(entry, nullptr) << answer.finding;
        EXPECT_EQ(entry->answer, answer.answer);
        EXPECT_EQ(entry->finding, find(before, answer.finding)->finding);
    }
}

TEST(AnsweredFindings, FindingsOfReadingComeFirstAndOnce) {
    const Survey survey = test::straight_run(5);
    Finding of_reading;
    of_reading.id = "lost sign: M1";
    of_reading.kind = FindingKind::lost_sign;
    of_reading.marks = {"M1"};
    const auto list = *answered_findings(survey, {of_reading, of_reading});
    ASSERT_FALSE(list.empty());
    EXPECT_EQ(list.front().finding, of_reading);
    EXPECT_EQ(std::count(list.begin(), list.end(), list.front()), 1);
}

TEST(AnsweredFindings, AStopGivesNothing) {
    std::stop_source stop;
    stop.request_stop();
    EXPECT_EQ(answered_findings(test::straight_run(5), {}, {stop.get_token(), {}}), std::nullopt);
}

}  // namespace
}  // namespace plugside
