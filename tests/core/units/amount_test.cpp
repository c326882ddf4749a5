#include "core/units/amount.h"

#include <gtest/gtest.h>

#include <array>

namespace plugside {
namespace {

// Factors of NIST Handbook 44, appendix C, and of NIST SP 811, appendix B.8, as printed there [memory]; to the digits printed.
struct PrintedFactor {
    const char* what;
    double ours;
    double printed;
    double tolerance;
};

TEST(Amounts, keep_to_the_printed_factors_of_units) {
    const auto grams = [](AmountUnit unit) { return *grams_in({1.0, unit}, {}); };
    const std::array<PrintedFactor, 11> factors{{
        {"pound, g (Handbook 44: 453.59237 exactly)", grams(AmountUnit::pounds), 453.59237, 1e-9},
        {"ounce, g (Handbook 44: 28.349523125 exactly)", grams(AmountUnit::ounces), 28.349523125, 1e-12},
        {"ounce, kg (SP 811: 2.834952 E-02)", grams(AmountUnit::ounces) / 1000.0, 2.834952e-2, 5e-9},
        {"pound, kg (SP 811: 4.535924 E-01)", grams(AmountUnit::pounds) / 1000.0, 4.535924e-1, 5e-8},
        {"teaspoon, mL (SP 811: 4.928922)", millilitres_in(AmountUnit::teaspoons), 4.928922, 5e-7},
        {"tablespoon, mL (SP 811: 14.78676)", millilitres_in(AmountUnit::tablespoons), 14.78676, 5e-6},
        {"cup, mL (SP 811: 236.5882)", millilitres_in(AmountUnit::cups), 236.5882, 5e-5},
        {"acre, m2 (Handbook 44, international foot: 4046.856)", square_metres_in(AreaUnit::acre), 4046.856, 5e-4},
        {"acre, m2 (SP 811, survey foot: 4046.873)", square_metres_in(AreaUnit::acre), 4046.873, 0.02},
        {"hectare, m2", square_metres_in(AreaUnit::hectare), 10000.0, 0.0},
        {"hectare, acres (Handbook 44: 2.471)", square_metres_in(AreaUnit::hectare) / square_metres_in(AreaUnit::acre),
         2.471, 5e-4},
    }};
    for (const PrintedFactor& factor : factors) EXPECT_NEAR(factor.ours, factor.printed, factor.tolerance) << factor.what;
}

// Canada 3.3 kg/ha and 1-2 lb/ac are figures of burrow-builder labels; 1 lb/ac = 1.120851 kg/ha (SP 811 [memory]).
TEST(Amounts, on_an_area_change_between_acres_and_hectares) {
    const AreaRate rate{{1.0, AmountUnit::pounds}, AreaUnit::acre};
    const auto metric = in_unit(rate, AmountUnit::kilograms, AreaUnit::hectare, {});
    ASSERT_TRUE(metric.has_value());
    EXPECT_NEAR(metric->amount.value, 1.120851, 5e-7);
    const auto back = in_unit(*metric, AmountUnit::pounds, AreaUnit::acre, {});
    EXPECT_NEAR(back->amount.value, 1.0, 1e-12);
    EXPECT_EQ(in_unit(AreaRate{{3.0, AmountUnit::tablets}, AreaUnit::acre}, AmountUnit::grams, AreaUnit::acre, 1.0),
              std::nullopt);
}

TEST(Amounts, of_spoons_weigh_what_the_bait_weighs_and_nothing_without_that) {
    EXPECT_EQ(grams_in({1.0, AmountUnit::teaspoons}, {}), std::nullopt);
    EXPECT_EQ(grams_in({1.0, AmountUnit::teaspoons}, 0.0), std::nullopt);
    EXPECT_EQ(grams_in({1.0, AmountUnit::teaspoons}, -1.0), std::nullopt);
    EXPECT_NEAR(*grams_in({2.0, AmountUnit::teaspoons}, 0.8), 2 * 4.92892159375 * 0.8, 1e-12);
    EXPECT_NEAR(in_unit({1.0, AmountUnit::tablespoons}, AmountUnit::teaspoons, {})->value, 3.0, 1e-12);
    EXPECT_NEAR(in_unit({1.0, AmountUnit::ounces}, AmountUnit::teaspoons, 0.8)->value, 28.349523125 / 0.8 / 4.92892159375,
                1e-9);
}

TEST(Amounts, that_are_counted_have_no_weight) {
    EXPECT_EQ(grams_in({2.0, AmountUnit::tablets}, 1.0), std::nullopt);
    EXPECT_EQ(in_unit({2.0, AmountUnit::tablets}, AmountUnit::cartridges, 1.0), std::nullopt);
    EXPECT_EQ(in_unit({2.0, AmountUnit::tablets}, AmountUnit::tablets, {})->value, 2.0);
}

TEST(Amounts, are_shown_to_three_digits_with_their_unit) {
    EXPECT_EQ(shown(Quantity{1.0, AmountUnit::teaspoons}), "1 teaspoon");
    EXPECT_EQ(shown(Quantity{1.5, AmountUnit::teaspoons}), "1.5 teaspoons");
    EXPECT_EQ(shown(Quantity{28.349523, AmountUnit::grams}), "28.3 g");
    EXPECT_EQ(shown(Quantity{0.044092, AmountUnit::pounds}), "0.0441 lb");
    EXPECT_EQ(shown(Quantity{1234.0, AmountUnit::grams}), "1234 g");
    EXPECT_EQ(shown(AreaRate{{2.0, AmountUnit::pounds}, AreaUnit::acre}), "2 lb per acre");
    EXPECT_EQ(figure(0.0), "0");
}

TEST(Amounts, have_words_of_files_that_are_read_back) {
    for (const AmountUnit unit :
         {AmountUnit::grams, AmountUnit::kilograms, AmountUnit::ounces, AmountUnit::pounds, AmountUnit::teaspoons,
          AmountUnit::tablespoons, AmountUnit::cups, AmountUnit::tablets, AmountUnit::cartridges})
        EXPECT_EQ(amount_unit_from_text(to_text(unit)), unit);
    for (const AreaUnit unit : {AreaUnit::acre, AreaUnit::hectare}) EXPECT_EQ(area_unit_from_text(to_text(unit)), unit);
    EXPECT_EQ(amount_unit_from_text("handful"), std::nullopt);
}

}  // namespace
}  // namespace plugside
