#include "app/commands/list_change.h"

#include <gtest/gtest.h>

#include <random>

namespace plugside {
namespace {

using List = std::vector<int>;

TEST(ListChange, OfEqualListsIsNothing) {
    EXPECT_TRUE(change_between(List{}, List{}).nothing());
    EXPECT_TRUE(change_between(List{1, 2}, List{1, 2}).nothing());
}

TEST(ListChange, KeepsOnlyTheStretchThatDiffers) {
    const auto change = change_between(List{1, 2, 3, 4, 5}, List{1, 2, 9, 5});
    EXPECT_EQ(change.at, 2U);
    EXPECT_EQ(change.before, (List{3, 4}));
    EXPECT_EQ(change.after, (List{9}));
}

TEST(ListChange, OfRowsThatRepeatTakesNoRowTwice) {
    const auto change = change_between(List{1, 1}, List{1, 1, 1});
    EXPECT_EQ(change.before.size(), 0U);
    EXPECT_EQ(change.after, (List{1}));
}

TEST(ListChange, OfAnyTwoListsLeadsFromOneToTheOtherAndBack) {
    std::mt19937 random(5);
    const auto any_list = [&] {
        List list(random() % 7);
        for (int& row : list) row = static_cast<int>(random() % 3);
        return list;
    };
    for (int round = 0; round < 20000; ++round) {
        const List before = any_list();
        const List after = any_list();
        const auto change = change_between(before, after);
        List list = before;
        put(list, change);
        ASSERT_EQ(list, after);
        put(list, change.turned_round());
        ASSERT_EQ(list, before);
    }
}

}  // namespace
}  // namespace plugside
