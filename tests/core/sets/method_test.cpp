#include "core/sets/method.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace plugside {
namespace {

constexpr UtcTime noon{std::chrono::seconds(1744286400)};

Conditions visited_by(bool children, bool people, bool pets, bool stock) {
    Conditions conditions;
    conditions.children = {Visits{children, {}, {}, ""}, noon};
    conditions.public_visits = {Visits{people, {}, {}, ""}, noon};
    conditions.pets = {Visits{pets, {}, {}, ""}, noon};
    conditions.stock = {Visits{stock, {}, {}, ""}, noon};
    return conditions;
}

TEST(Methods, are_whole_each_with_the_source_and_tag_of_every_step) {
    const std::set<std::string> tags{"read", "second-hand", "memory", "practice", "ours"};
    std::set<std::string> ids;
    for (const Method& method : built_in_methods()) {
        EXPECT_TRUE(ids.insert(method.id).second) << method.id;
        EXPECT_EQ(*built_in_method(method.id), method);
        EXPECT_GE(method.steps.size(), 5U) << method.id;
        for (const MethodStep& step : method.steps) {
            EXPECT_EQ(step.text.back(), '.') << step.text;
            EXPECT_FALSE(step.source.empty()) << step.text;
            EXPECT_EQ(tags.count(step.tag), 1U) << step.tag;
        }
        for (const std::string& text :
             {method.name, method.staking, method.flagging, method.closing, method.checking, method.ending})
            EXPECT_FALSE(text.empty()) << method.id;
        EXPECT_FALSE(method.tools.empty());
        EXPECT_GT(method.minutes.mean, 0.0);
        EXPECT_TRUE(method.placement.has_value());
        EXPECT_NE(method.placement, Placement::on_surface);
    }
    EXPECT_EQ(ids.size(), 6U);
    EXPECT_EQ(built_in_method("no such method"), std::nullopt);
}

// UC IPM Pest Notes 7433: two traps in the run, one facing each way; common practice: one in a lateral, each trap staked and flagged.
TEST(Methods, with_traps_stake_and_flag_every_trap_and_never_tie_with_cord) {
    for (const Method& method : built_in_methods()) {
        if (method.stuff != Stuff::trap) continue;
        const auto count = [&](LoadItem item) {
            const auto found = std::find_if(method.needs.begin(), method.needs.end(),
                                            [&](const ItemCount& need) { return need.item == item; });
            return found == method.needs.end() ? 0.0 : found->count;
        };
        EXPECT_EQ(count(LoadItem::trap), method.id == "paired-traps" ? 2.0 : 1.0);
        EXPECT_EQ(count(LoadItem::stake), count(LoadItem::trap));
        EXPECT_EQ(count(LoadItem::flag), count(LoadItem::stake));
        EXPECT_GT(count(LoadItem::wire_m), 0.0);
        EXPECT_NE(method.staking.find("never cord"), std::string::npos);
        EXPECT_EQ(method.check_every_hours, 24.0);
    }
}

TEST(Methods, of_the_lateral_want_the_plug_side_and_the_others_take_either_place) {
    EXPECT_EQ(built_in_method("trap-in-lateral")->serves, ProbeKind::plug_side);
    EXPECT_EQ(built_in_method("bait-opened-lateral")->serves, ProbeKind::plug_side);
    for (const char* id : {"paired-traps", "bait-probe-hole", "bait-dispensing-probe", "fumigant"})
        EXPECT_EQ(built_in_method(id)->serves, std::nullopt) << id;
}

TEST(Methods, close_over_bait_and_gas_whoever_comes) {
    for (const Method& method : built_in_methods())
        if (method.stuff != Stuff::trap) {
            EXPECT_TRUE(cover_or_open(method, visited_by(false, false, false, false), noon).cover) << method.id;
        }
}

TEST(Methods, cover_a_trap_as_soon_as_anyone_may_reach_it_and_say_who) {
    const Method method = *built_in_method("paired-traps");
    EXPECT_FALSE(cover_or_open(method, visited_by(false, false, false, false), noon).cover);
    const auto reason = [&](const Conditions& conditions) {
        const HoleCover choice = cover_or_open(method, conditions, noon);
        EXPECT_TRUE(choice.cover);
        return choice.reason;
    };
    EXPECT_NE(reason(visited_by(true, false, false, false)).find("children"), std::string::npos);
    EXPECT_NE(reason(visited_by(false, true, false, false)).find("people"), std::string::npos);
    EXPECT_NE(reason(visited_by(false, false, true, false)).find("pets"), std::string::npos);
    EXPECT_NE(reason(visited_by(false, false, false, true)).find("stock"), std::string::npos);
    EXPECT_NE(reason({}).find("not known"), std::string::npos);
    Conditions old = visited_by(false, false, false, false);
    old.pets.at = noon - std::chrono::hours(8 * 24);
    EXPECT_NE(reason(old).find("not known whether pets"), std::string::npos);
}

TEST(Methods, of_a_persons_own_are_kept_apart_and_say_what_is_wrong_with_them) {
    Method own = own_variant(*built_in_method("paired-traps"), 3, "my way");
    EXPECT_EQ(own.id, "own-3");
    EXPECT_EQ(what_is_wrong(own), std::nullopt);
    for (const MethodStep& step : own.steps) EXPECT_EQ(step.tag, "own");
    Method wrong = own;
    wrong.name.clear();
    EXPECT_TRUE(what_is_wrong(wrong).has_value());
    wrong = own;
    wrong.id = "paired-traps";
    EXPECT_TRUE(what_is_wrong(wrong).has_value());
    wrong = own;
    wrong.steps.clear();
    EXPECT_TRUE(what_is_wrong(wrong).has_value());
    wrong = own;
    wrong.minutes.mean = -1.0;
    EXPECT_TRUE(what_is_wrong(wrong).has_value());
    wrong = own;
    wrong.placements = 0;
    EXPECT_TRUE(what_is_wrong(wrong).has_value());
    wrong = own;
    wrong.check_every_hours = 0.0;
    EXPECT_TRUE(what_is_wrong(wrong).has_value());
    wrong = own;
    wrong.needs.front().count = -2.0;
    EXPECT_TRUE(what_is_wrong(wrong).has_value());
}

// Ten releases over a tray: one is a tenth (common practice). Several weighings: standard error s / sqrt(n), closed form.
TEST(ReleaseWeight, by_weighing_ten_releases_gives_one_release) {
    EXPECT_EQ(release_weight({}), std::nullopt);
    EXPECT_EQ(release_weight({{42.0, 0.0}, 10}), std::nullopt);
    const auto once = release_weight({{42.0}, 10});
    ASSERT_TRUE(once.has_value());
    EXPECT_NEAR(once->grams, 4.2, 1e-12);
    EXPECT_EQ(once->sd_of_mean_g, std::nullopt);
    const auto thrice = release_weight({{40.0, 42.0, 44.0}, 10});
    EXPECT_NEAR(thrice->grams, 4.2, 1e-12);
    EXPECT_NEAR(*thrice->sd_of_mean_g, 2.0 / std::sqrt(3.0) / 10.0, 1e-12);
}

TEST(Methods, have_words_of_files_that_are_read_back) {
    for (const Stuff value : {Stuff::trap, Stuff::bait, Stuff::fumigant}) EXPECT_EQ(stuff_from_text(to_text(value)), value);
    for (const Placement value : {Placement::in_lateral, Placement::in_run, Placement::on_surface})
        EXPECT_EQ(placement_from_text(to_text(value)), value);
    for (const LoadItem value : {LoadItem::trap, LoadItem::stake, LoadItem::wire_m, LoadItem::flag, LoadItem::cover,
                                 LoadItem::sign, LoadItem::gloves_pair})
        EXPECT_EQ(item_from_text(to_text(value)), value);
    for (const CoverRule value : {CoverRule::as_answered, CoverRule::always_closed, CoverRule::always_open})
        EXPECT_EQ(cover_rule_from_text(to_text(value)), value);
    EXPECT_EQ(stuff_from_text("glue"), std::nullopt);
}

}  // namespace
}  // namespace plugside
