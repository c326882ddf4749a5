#include "core/survey/survey.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <map>
#include <set>

#include "core/survey/refusal.h"

namespace plugside {
namespace {

ProbeKey between(const std::string& from, const std::string& to) { return {ProbeKind::between_mounds, from, to}; }

Mound mound_at(double east, double north, SignKind kind = SignKind::gopher_mound) {
    Mound mound;
    mound.plug = {east, north};
    mound.kind = kind;
    return mound;
}

TEST(Survey, a_decision_is_found_under_its_probe_site) {
    Survey survey;
    EXPECT_FALSE(decision_on(survey, between("M1", "M2")));
    decide(survey, {between("M1", "M2"), SetChoice::dropped, std::nullopt});
    EXPECT_EQ(decision_on(survey, between("M1", "M2"))->choice, SetChoice::dropped);
    EXPECT_FALSE(decision_on(survey, between("M2", "M1")));
    EXPECT_FALSE(decision_on(survey, {ProbeKind::plug_side, "M1", ""}));
}

TEST(Survey, a_later_decision_takes_the_place_of_an_earlier_one) {
    Survey survey;
    decide(survey, {between("M1", "M2"), SetChoice::kept, std::nullopt});
    decide(survey, {between("M1", "M2"), SetChoice::moved, LadderPlace{Metres::of(1), Metres::of(-0.5)}});
    ASSERT_EQ(survey.decisions.size(), 1U);
    EXPECT_EQ(survey.decisions[0].moved_to, (LadderPlace{Metres::of(1), Metres::of(-0.5)}));
}

TEST(Survey, proposing_again_removes_the_decision) {
    Survey survey;
    decide(survey, {between("M1", "M2"), SetChoice::kept, std::nullopt});
    decide(survey, {between("M1", "M2"), SetChoice::proposed, std::nullopt});
    EXPECT_TRUE(survey.decisions.empty());
    decide(survey, {between("M8", "M9"), SetChoice::proposed, std::nullopt});
    EXPECT_TRUE(survey.decisions.empty());
}

// Whatever is decided in whatever order: one decision a site, the last one, and the revision counts the edits.
TEST(Survey, many_decisions_leave_the_last_one_for_each_site) {
    const bool holds =
        rc::check("decisions behave as a map", [](const std::vector<std::pair<unsigned char, unsigned char>>& edits) {
            Survey survey;
            std::map<ProbeKey, SetChoice> expected;
            for (const auto& [site, word] : edits) {
                const ProbeKey key = between(std::string(1, static_cast<char>('A' + site % 5)), "M9");
                const auto choice = static_cast<SetChoice>(word % 4);
                decide(survey, {key, choice, std::nullopt});
                if (choice == SetChoice::proposed) {
                    expected.erase(key);
                } else {
                    expected[key] = choice;
                }
            }
            RC_ASSERT(survey.revision == edits.size());
            RC_ASSERT(survey.decisions.size() == expected.size());
            for (const auto& [key, choice] : expected) RC_ASSERT(decision_on(survey, key)->choice == choice);
        });
    EXPECT_TRUE(holds);
}

TEST(Survey, signs_of_other_diggers_take_no_part_and_say_whose_they_are) {
    const Survey survey;
    EXPECT_FALSE(why_not_used(survey, mound_at(0, 0)));
    EXPECT_FALSE(why_not_used(survey, mound_at(0, 0, SignKind::surface_plug)));
    EXPECT_EQ(why_not_used(survey, mound_at(0, 0, SignKind::mole)), "a mole's sign");
    EXPECT_EQ(why_not_used(survey, mound_at(0, 0, SignKind::ground_squirrel)), "a ground squirrel's sign");
    EXPECT_EQ(why_not_used(survey, mound_at(0, 0, SignKind::vole)), "a vole's sign");
    EXPECT_TRUE(why_not_used(survey, mound_at(0, 0, SignKind::other)));
    for (const SignKind kind : {SignKind::gopher_mound, SignKind::surface_plug, SignKind::mole, SignKind::ground_squirrel,
                                SignKind::vole, SignKind::other})
        EXPECT_EQ(is_gopher_sign(kind), !why_not_used(survey, mound_at(0, 0, kind)).has_value());
}

TEST(Survey, a_mound_outside_the_boundary_takes_no_part) {
    Survey survey;
    survey.ground.boundary = {{{{{{0, 0}, {50, 0}, {50, 50}, {0, 50}}}, {{{{20, 20}, {30, 20}, {30, 30}, {20, 30}}}}}}};
    EXPECT_FALSE(why_not_used(survey, mound_at(10, 10)));
    EXPECT_EQ(why_not_used(survey, mound_at(60, 10)), "outside the field boundary");
    EXPECT_EQ(why_not_used(survey, mound_at(25, 25)), "outside the field boundary");
    EXPECT_EQ(why_not_used(survey, mound_at(60, 10, SignKind::mole)), "a mole's sign");
}

template <typename Value>
void expect_words_lead_back(const std::vector<Value>& values, std::optional<Value> (*from_text)(const std::string&)) {
    std::set<std::string> words;
    for (const Value value : values) {
        EXPECT_EQ(from_text(to_text(value)), value);
        words.insert(to_text(value));
    }
    EXPECT_EQ(words.size(), values.size());
    EXPECT_FALSE(from_text(""));
    EXPECT_FALSE(from_text("Mole?"));
}

TEST(Survey, the_words_used_in_files_lead_back_to_what_they_name) {
    expect_words_lead_back<SignKind>({SignKind::gopher_mound, SignKind::surface_plug, SignKind::mole,
                                      SignKind::ground_squirrel, SignKind::vole, SignKind::other},
                                     &sign_kind_from_text);
    expect_words_lead_back<Freshness>({Freshness::unknown, Freshness::fresh, Freshness::older, Freshness::crushed},
                                      &freshness_from_text);
    expect_words_lead_back<KeepClearKind>({KeepClearKind::building, KeepClearKind::well, KeepClearKind::play_area,
                                           KeepClearKind::utility, KeepClearKind::other},
                                          &keep_clear_kind_from_text);
    expect_words_lead_back<ProbeKind>({ProbeKind::plug_side, ProbeKind::between_mounds}, &probe_kind_from_text);
    expect_words_lead_back<SetChoice>({SetChoice::proposed, SetChoice::kept, SetChoice::dropped, SetChoice::moved},
                                      &set_choice_from_text);
}

}  // namespace
}  // namespace plugside
