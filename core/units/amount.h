// An amount of bait or fumigant as a label, a scale or a spoon says it, and a rate on an area.
//
// Unit:    as the person typed it; `grams_in` brings weights to grams, and spoons to grams where the bulk density is given.
//          Tablets, cartridges and releases are counted: they have no weight here.
// Factors: avoirdupois pound 453.59237 g and ounce 28.349523125 g, exact; teaspoon, tablespoon and cup 1/768, 1/256 and 1/16 of a
//          gallon of 231 cubic inches: 4.92892, 14.78676, 236.5882 mL (NIST Handbook 44, appendix C; SP 811, appendix B.8
//          [memory]). Acre: 4046.8564224 m2, the international one; that of the U.S. survey foot is 4 parts in a million larger
//          and no longer in use. Hectare 10,000 m2.
// Bulk density: grams a millilitre, heaped as the spoon is: weigh ten level spoons of the bait in hand.
// Degenerate input: a density that is absent, not finite or not above 0 gives nothing for spoons; negative amounts keep their sign.
#pragma once

#include <optional>
#include <string>

namespace plugside {

enum class AmountUnit { grams, kilograms, ounces, pounds, teaspoons, tablespoons, cups, tablets, cartridges };
enum class AreaUnit { acre, hectare };

struct Quantity {
    double value = 0.0;
    AmountUnit unit = AmountUnit::grams;
    friend bool operator==(const Quantity&, const Quantity&) = default;
};

struct AreaRate {
    Quantity amount;
    AreaUnit per = AreaUnit::acre;
    friend bool operator==(const AreaRate&, const AreaRate&) = default;
};

[[nodiscard]] bool is_counted(AmountUnit unit);  // tablets, cartridges
[[nodiscard]] bool is_spooned(AmountUnit unit);  // teaspoons, tablespoons, cups

// Nothing for what is counted, and for spoons without a density.
[[nodiscard]] std::optional<double> grams_in(Quantity amount, std::optional<double> grams_per_millilitre);
// The same amount in `unit`; nothing where one is counted and the other is not of the same kind, or a density is wanting.
[[nodiscard]] std::optional<Quantity> in_unit(Quantity amount, AmountUnit unit, std::optional<double> grams_per_millilitre);
[[nodiscard]] std::optional<AreaRate> in_unit(AreaRate rate, AmountUnit unit, AreaUnit per,
                                              std::optional<double> grams_per_millilitre);

[[nodiscard]] double square_metres_in(AreaUnit unit);
[[nodiscard]] double millilitres_in(AmountUnit spoon);  // asserts for what is not spooned

// "1.5 teaspoons", "2 lb", "3 tablets": three significant digits, as a person reads it. "1 lb per acre".
[[nodiscard]] std::string shown(Quantity amount);
[[nodiscard]] std::string shown(AreaRate rate);

// "grams", "teaspoons", ...; "acre", "hectare": the words of files.
[[nodiscard]] std::string to_text(AmountUnit unit);
[[nodiscard]] std::optional<AmountUnit> amount_unit_from_text(const std::string& text);
[[nodiscard]] std::string to_text(AreaUnit unit);
[[nodiscard]] std::optional<AreaUnit> area_unit_from_text(const std::string& text);

// `value` in three significant digits with the decimal mark of the language at hand, without zeros at the end: "0.0441", "28.3".
[[nodiscard]] std::string figure(double value);

}  // namespace plugside
