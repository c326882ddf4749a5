#include "core/units/amount.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <cstdio>

#include "core/words/words.h"

namespace plugside {

namespace {

constexpr double gallon_ml = 3785.411784;  // 231 cubic inches of 2.54 cm

struct UnitRow {
    AmountUnit unit;
    const char* text;    // of files
    const char* shown;   // after a number
    const char* one;     // after 1
    double grams;        // 0: not a weight
    double millilitres;  // 0: not a spoon
};

constexpr std::array<UnitRow, 9> units{{
    {AmountUnit::grams, "grams", "g", "g", 1.0, 0.0},
    {AmountUnit::kilograms, "kilograms", "kg", "kg", 1000.0, 0.0},
    {AmountUnit::ounces, "ounces", Words::later("oz"), Words::later("oz"), 28.349523125, 0.0},
    {AmountUnit::pounds, "pounds", Words::later("lb"), Words::later("lb"), 453.59237, 0.0},
    {AmountUnit::teaspoons, "teaspoons", Words::later("teaspoons"), Words::later("teaspoon"), 0.0, gallon_ml / 768.0},
    {AmountUnit::tablespoons, "tablespoons", Words::later("tablespoons"), Words::later("tablespoon"), 0.0,
     gallon_ml / 256.0},
    {AmountUnit::cups, "cups", Words::later("cups"), Words::later("cup"), 0.0, gallon_ml / 16.0},
    {AmountUnit::tablets, "tablets", Words::later("tablets"), Words::later("tablet"), 0.0, 0.0},
    {AmountUnit::cartridges, "cartridges", Words::later("cartridges"), Words::later("cartridge"), 0.0, 0.0},
}};

const UnitRow& row_of(AmountUnit unit) {
    for (const UnitRow& row : units)
        if (row.unit == unit) return row;
    assert(false);
    return units.front();
}

std::optional<double> grams_a_unit(AmountUnit unit, std::optional<double> density) {
    const UnitRow& row = row_of(unit);
    if (row.grams > 0.0) return row.grams;
    if (row.millilitres > 0.0 && density && std::isfinite(*density) && *density > 0.0) return row.millilitres * *density;
    return std::nullopt;
}

}  // namespace

bool is_counted(AmountUnit unit) { return unit == AmountUnit::tablets || unit == AmountUnit::cartridges; }
bool is_spooned(AmountUnit unit) { return row_of(unit).millilitres > 0.0; }

double square_metres_in(AreaUnit unit) { return unit == AreaUnit::acre ? 4046.8564224 : 10000.0; }

double millilitres_in(AmountUnit spoon) {
    assert(is_spooned(spoon));
    return row_of(spoon).millilitres;
}

std::optional<double> grams_in(Quantity amount, std::optional<double> grams_per_millilitre) {
    const auto each = grams_a_unit(amount.unit, grams_per_millilitre);
    if (!each) return std::nullopt;
    return amount.value * *each;
}

std::optional<Quantity> in_unit(Quantity amount, AmountUnit unit, std::optional<double> grams_per_millilitre) {
    if (amount.unit == unit) return amount;
    if (is_counted(amount.unit) || is_counted(unit)) return std::nullopt;
    if (is_spooned(amount.unit) && is_spooned(unit))
        return Quantity{amount.value * millilitres_in(amount.unit) / millilitres_in(unit), unit};
    const auto from = grams_a_unit(amount.unit, grams_per_millilitre);
    const auto to = grams_a_unit(unit, grams_per_millilitre);
    if (!from || !to) return std::nullopt;
    return Quantity{amount.value * *from / *to, unit};
}

std::optional<AreaRate> in_unit(AreaRate rate, AmountUnit unit, AreaUnit per, std::optional<double> grams_per_millilitre) {
    auto amount = in_unit(rate.amount, unit, grams_per_millilitre);
    if (!amount) return std::nullopt;
    if (per != rate.per) amount->value *= square_metres_in(per) / square_metres_in(rate.per);
    return AreaRate{*amount, per};
}

std::string figure(double value) {
    if (value == 0.0 || !std::isfinite(value)) return "0";
    const int before_point = static_cast<int>(std::floor(std::log10(std::abs(value)))) + 1;
    std::array<char, 64> text{};
    std::snprintf(text.data(), text.size(), "%.*f", std::clamp(3 - before_point, 0, 12), value);
    std::string shown = text.data();
    if (shown.find('.') != std::string::npos) {
        shown.erase(shown.find_last_not_of('0') + 1);
        if (shown.back() == '.') shown.pop_back();
    }
    return Words::decimal(shown);
}

std::string shown(Quantity amount) {
    const UnitRow& row = row_of(amount.unit);
    return figure(amount.value) + " " + Words::shown(amount.value == 1.0 ? row.one : row.shown);
}

std::string shown(AreaRate rate) {
    return rate.per == AreaUnit::acre ? Words::tell("{1} per acre", {shown(rate.amount)})
                                      : Words::tell("{1} per hectare", {shown(rate.amount)});
}

std::string to_text(AmountUnit unit) { return row_of(unit).text; }

std::optional<AmountUnit> amount_unit_from_text(const std::string& text) {
    for (const UnitRow& row : units)
        if (text == row.text) return row.unit;
    return std::nullopt;
}

std::string to_text(AreaUnit unit) { return unit == AreaUnit::acre ? "acre" : "hectare"; }

std::optional<AreaUnit> area_unit_from_text(const std::string& text) {
    for (const AreaUnit unit : {AreaUnit::acre, AreaUnit::hectare})
        if (text == to_text(unit)) return unit;
    return std::nullopt;
}

}  // namespace plugside
