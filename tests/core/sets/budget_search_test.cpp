#include "core/sets/budget_search.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>

namespace plugside {
namespace {

struct MadeUpField {
    int systems = 5;
    int draws = 20;
    double joined = 0.2;  // chance that a system is one animal with the one before it, in a draw
    bool equal_costs = true;
};

// One to four sets a system; in every draw some neighbouring systems are one animal's.
std::vector<CoverItem> made_up_items(const MadeUpField& field, std::size_t most_items, std::mt19937_64& random) {
    std::uniform_real_distribution<double> chance(0.4, 1.0), share(0.0, 1.0), minutes(5.0, 12.0);
    std::vector<CoverItem> items;
    std::vector<int> system;
    for (int s = 0; s < field.systems; ++s)
        for (std::size_t more = 1 + random() % 4; more > 0 && items.size() < most_items; --more) {
            items.push_back({chance(random), field.equal_costs ? 1.0 : minutes(random), false, {}});
            system.push_back(s);
        }
    std::uint32_t next = 0;
    for (int d = 0; d < field.draws; ++d) {
        std::vector<std::uint32_t> animal;
        for (int s = 0; s < field.systems; ++s)
            animal.push_back(s > 0 && share(random) < field.joined ? animal.back() : next++);
        for (std::size_t i = 0; i < items.size(); ++i)
            items[i].animals.push_back(animal[static_cast<std::size_t>(system[i])]);
    }
    return items;
}

double reached_by(const std::vector<CoverItem>& items, std::size_t chosen_bits, std::size_t draws) {
    std::vector<double> missed;
    for (std::size_t i = 0; i < items.size(); ++i)
        if ((chosen_bits >> i & 1U) != 0U)
            for (const std::uint32_t animal : items[i].animals) {
                if (missed.size() <= animal) missed.resize(animal + 1, 1.0);
                missed[animal] *= 1.0 - items[i].chance;
            }
    double sum = 0.0;
    for (const double m : missed) sum += 1.0 - m;
    return sum / static_cast<double>(draws);
}

// Every choice within the budget, forced items in each.
double best_of_all_choices(const std::vector<CoverItem>& items, double budget, std::size_t draws) {
    double best = 0.0;
    for (std::size_t bits = 0; bits < std::size_t{1} << items.size(); ++bits) {
        double room = budget;
        bool with_forced = true;
        for (std::size_t i = 0; i < items.size(); ++i) {
            const bool in = (bits >> i & 1U) != 0U;
            if (in) room -= items[i].cost;
            with_forced = with_forced && (in || !items[i].forced);
        }
        if (room >= -1e-9 && with_forced) best = std::max(best, reached_by(items, bits, draws));
    }
    return best;
}

TEST(BudgetSearch, on_two_hundred_small_fields_the_choice_is_the_best_of_all) {
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        std::mt19937_64 random(seed);
        MadeUpField field;
        field.systems = 3 + static_cast<int>(seed % 3);
        field.draws = 8;
        field.joined = 0.1 * static_cast<double>(seed % 6);
        field.equal_costs = seed % 2 == 0;
        std::vector<CoverItem> items = made_up_items(field, 11, random);
        if (seed % 5 == 0) items[random() % items.size()].forced = true;
        const double all =
            std::accumulate(items.begin(), items.end(), 0.0, [](double sum, const auto& i) { return sum + i.cost; });
        const double budget = std::max(12.0 * (seed % 5 == 0 ? 1.0 : 0.0), all * 0.1 * static_cast<double>(1 + seed % 9));
        const CoverChoice choice = best_within(AnimalCover(items, 8), budget);
        const double best = best_of_all_choices(items, budget, 8);
        EXPECT_TRUE(choice.exact) << "seed " << seed;
        EXPECT_NEAR(choice.reached, best, 1e-8) << "seed " << seed;
        EXPECT_EQ(choice.bound, choice.reached);
        EXPECT_LE(choice.cost, budget + 1e-9);
        std::size_t bits = 0;
        for (const std::size_t i : choice.items) bits |= std::size_t{1} << i;
        EXPECT_NEAR(reached_by(items, bits, 8), choice.reached, 1e-9);
    }
}

TEST(BudgetSearch, the_bound_is_never_below_the_best_of_all_choices_whatever_is_taken) {
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        std::mt19937_64 random(seed);
        MadeUpField field;
        field.draws = 6;
        field.joined = 0.3;
        field.equal_costs = seed % 2 == 0;
        const std::vector<CoverItem> items = made_up_items(field, 10, random);
        const double budget = field.equal_costs ? 4.0 : 31.0;
        const double best = best_of_all_choices(items, budget, 6);
        AnimalCover cover(items, 6);
        for (std::size_t i = 0; i < items.size(); ++i)
            if (random() % 3 == 0) cover.take(i);
        EXPECT_GE(reach_bound(cover, budget), best - 1e-9) << "seed " << seed;
    }
}

TEST(BudgetSearch, on_five_hundred_systems_the_choice_is_within_a_hundredth_of_the_bound) {
    std::uint64_t seed = 1;
    for (const bool equal_costs : {true, false})
        for (const double joined : {0.0, 0.15, 0.4})
            for (const double share : {0.15, 0.4, 0.7}) {
                std::mt19937_64 random(seed++);
                const MadeUpField field{500, 40, joined, equal_costs};
                const std::vector<CoverItem> items = made_up_items(field, 5000, random);
                const double budget = share * (equal_costs ? 1.0 : 8.5) * static_cast<double>(items.size());
                const CoverChoice choice = best_within(AnimalCover(items, 40), budget);
                EXPECT_LE(choice.cost, budget + 1e-9);
                EXPECT_GE(choice.bound, choice.reached);
                const double gap = choice.bound / choice.reached - 1.0;
                EXPECT_LE(gap, 0.01) << "joined " << joined << ", share " << share << ", equal costs " << equal_costs;
                RecordProperty("gap_" + std::to_string(seed), std::to_string(100.0 * gap) + " %");
            }
}

TEST(BudgetSearch, does_not_depend_on_the_order_of_the_items) {
    std::mt19937_64 random(4);
    const std::vector<CoverItem> items = made_up_items({30, 20, 0.2, false}, 200, random);
    const std::vector<CoverItem> turned(items.rbegin(), items.rend());
    const CoverChoice choice = best_within(AnimalCover(items, 20), 200.0);
    CoverChoice other = best_within(AnimalCover(turned, 20), 200.0);
    for (std::size_t& item : other.items) item = items.size() - 1 - item;
    EXPECT_EQ(choice.items, other.items);
}

TEST(BudgetSearch, a_greater_budget_never_reaches_less_and_the_greedy_order_takes_everything) {
    std::mt19937_64 random(9);
    const std::vector<CoverItem> items = made_up_items({9, 20, 0.2, true}, 25, random);
    double before = 0.0;
    for (std::size_t budget = 0; budget <= items.size(); ++budget) {
        const CoverChoice choice = best_within(AnimalCover(items, 20), static_cast<double>(budget));
        EXPECT_EQ(choice.items.size(), budget);
        EXPECT_GE(choice.reached, before);
        before = choice.reached;
    }
    EXPECT_EQ(greedy_order(AnimalCover(items, 20)).size(), items.size());
}

TEST(BudgetSearch, forced_items_are_taken_though_they_cost_more_than_there_is) {
    const std::vector<CoverItem> items{{0.5, 3.0, true, {0}}, {0.9, 1.0, false, {1}}, {0.8, 3.0, true, {0}}};
    const CoverChoice choice = best_within(AnimalCover(items, 1), 4.0);
    EXPECT_EQ(choice.items, (std::vector<std::size_t>{0, 2}));
    EXPECT_DOUBLE_EQ(choice.reached, 0.9);
    EXPECT_TRUE(choice.exact);
}

TEST(BudgetSearch, nothing_to_choose_from_and_nothing_to_spend_choose_nothing) {
    EXPECT_TRUE(best_within(AnimalCover({}, 0), 5.0).items.empty());
    EXPECT_TRUE(best_within(AnimalCover({}, 0), 5.0).exact);
    const CoverChoice none = best_within(AnimalCover({{1.0, 1.0, false, {0}}}, 1), 0.0);
    EXPECT_TRUE(none.items.empty());
    EXPECT_EQ(none.reached, 0.0);
    EXPECT_TRUE(none.exact);
}

TEST(AnimalCover, what_is_taken_and_left_again_leaves_no_trace_even_where_it_was_certain) {
    std::mt19937_64 random(1);
    std::vector<CoverItem> items = made_up_items({4, 10, 0.3, true}, 12, random);
    items[1].chance = 1.0;
    AnimalCover cover(items, 10);
    cover.take(0);
    const double before = cover.reached();
    const double gain = cover.gain(1);
    cover.take(1);
    EXPECT_NEAR(cover.reached(), before + gain, 1e-12);
    cover.leave(1);
    EXPECT_EQ(cover.reached(), before);
}

}  // namespace
}  // namespace plugside
