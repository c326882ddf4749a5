#include "core/sets/label_limits.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdio>

#include "core/words/words.h"

namespace plugside {

namespace {

struct IngredientRow {
    Ingredient ingredient;
    const char* text;
    const char* shown;
};

constexpr std::array<IngredientRow, 7> ingredients{
    {{Ingredient::zinc_phosphide, "zinc-phosphide", Words::later("zinc phosphide")},
     {Ingredient::strychnine, "strychnine", Words::later("strychnine")},
     {Ingredient::anticoagulant, "anticoagulant", Words::later("anticoagulant")},
     {Ingredient::aluminium_phosphide, "aluminium-phosphide", Words::later("aluminium phosphide")},
     {Ingredient::magnesium_phosphide, "magnesium-phosphide", Words::later("magnesium phosphide")},
     {Ingredient::smoke_cartridge, "smoke-cartridge", Words::later("smoke of a cartridge")},
     {Ingredient::other, "other-ingredient", Words::later("another ingredient")}}};

bool is_above_zero(double value) { return std::isfinite(value) && value > 0.0; }
bool is_figure(double value) { return std::isfinite(value) && value >= 0.0; }

}  // namespace

std::optional<bool> is_for(Ingredient ingredient, Stuff stuff) {
    switch (ingredient) {
        case Ingredient::zinc_phosphide:
        case Ingredient::strychnine:
        case Ingredient::anticoagulant: return stuff == Stuff::bait;
        case Ingredient::aluminium_phosphide:
        case Ingredient::magnesium_phosphide:
        case Ingredient::smoke_cartridge: return stuff == Stuff::fumigant;
        case Ingredient::other: break;
    }
    return std::nullopt;
}

bool words_name_one(const LabelLimits& label) {
    std::string words = label.ingredient_words;
    std::transform(words.begin(), words.end(), words.begin(), [](unsigned char letter) {
        return static_cast<char>(letter >= 'A' && letter <= 'Z' ? letter + 32 : letter);
    });
    for (const char* name : {"phosphid", "fosfur", "strychn", "estricn"})
        if (words.find(name) != std::string::npos) return true;
    return false;
}

bool is_given(const LabelLimits& label) {
    return label.ingredient || !label.ingredient_words.empty() || !label.registration.empty();
}

std::vector<std::string> what_is_wrong(const LabelLimits& label) {
    std::vector<std::string> wrong;
    const auto amount = [&](const std::optional<Quantity>& given, const char* what) {
        if (given && !is_above_zero(given->value))
            wrong.push_back(
                Words::tell("{1}: {2} is typed, a number above 0 is expected.", {Words::shown(what), figure(given->value)}));
    };
    const auto number = [&](std::optional<double> given, const char* what, bool zero) {
        if (given && !(zero ? is_figure(*given) : is_above_zero(*given)))
            wrong.push_back(zero ? Words::tell("{1}: {2} is typed, a number of 0 or more is expected.",
                                               {Words::shown(what), figure(*given)})
                                 : Words::tell("{1}: {2} is typed, a number above 0 is expected.",
                                               {Words::shown(what), figure(*given)}));
    };
    const auto whole = [&](const std::optional<int>& given, const char* what) {
        if (given) number(static_cast<double>(*given), what, false);
    };
    const auto metres = [&](const std::optional<Metres>& given, const char* what) {
        if (given) number(given->value(), what, true);
    };
    amount(label.placement_least, Words::later("Least amount a placement"));
    amount(label.placement_most, Words::later("Most a placement"));
    if (label.area_most) amount(label.area_most->amount, Words::later("Most on an area"));
    if (label.season_most) amount(label.season_most->amount, Words::later("Most of a season"));
    whole(label.placements_a_system_most, Words::later("Placements in a system"));
    whole(label.treatments_a_season_most, Words::later("Treatments of a season"));
    if (label.interval_days_least) number(*label.interval_days_least, Words::later("Days between treatments"), true);
    number(label.re_entry_hours, Words::later("Hours until anyone may enter again"), true);
    number(label.grams_per_millilitre, Words::later("Grams a millilitre"), false);
    metres(label.placement_spacing_least, Words::later("Distance between placements"));
    metres(label.building_distance, Words::later("Distance to buildings"));
    metres(label.water_distance, Words::later("Distance to water"));
    if (label.placement_least && label.placement_most) {
        const auto least = in_unit(*label.placement_least, label.placement_most->unit, label.grams_per_millilitre);
        if (least && least->value > label.placement_most->value)
            wrong.push_back(Words::tell("The least amount a placement, {1}, is above the most, {2}.",
                                        {shown(*label.placement_least), shown(*label.placement_most)}));
        if (is_counted(label.placement_least->unit) != is_counted(label.placement_most->unit))
            wrong.push_back(Words::tell("The least and the most amount a placement, {1} and {2}, are not of one kind.",
                                        {shown(*label.placement_least), shown(*label.placement_most)}));
    }
    return wrong;
}

std::optional<int> releases_a_placement(const LabelLimits& label, double grams_a_release) {
    if (!label.placement_most || !is_above_zero(grams_a_release)) return std::nullopt;
    const auto most = grams_in(*label.placement_most, label.grams_per_millilitre);
    if (!most) return std::nullopt;
    const int releases = static_cast<int>(std::floor(*most / grams_a_release * (1.0 + 1e-9)));
    if (releases < 1) return std::nullopt;
    return releases;
}

std::string to_text(Ingredient ingredient) {
    for (const IngredientRow& row : ingredients)
        if (row.ingredient == ingredient) return row.text;
    return ingredients.back().text;
}

std::optional<Ingredient> ingredient_from_text(const std::string& text) {
    for (const IngredientRow& row : ingredients)
        if (text == row.text) return row.ingredient;
    return std::nullopt;
}

std::string ingredient_shown(Ingredient ingredient) {
    for (const IngredientRow& row : ingredients)
        if (row.ingredient == ingredient) return Words::shown(row.shown);
    return {};
}

std::string day_shown(CalendarDay day) {
    const std::chrono::year_month_day date{day};
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    return text.data();
}

std::optional<CalendarDay> day_from_text(const std::string& text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
    const auto number = [&](std::size_t from, std::size_t count) {
        unsigned value = 0;
        const char* const end = text.data() + from + count;
        const auto [stop, error] = std::from_chars(text.data() + from, end, value);
        return error == std::errc() && stop == end ? std::optional(value) : std::nullopt;
    };
    const auto year = number(0, 4);
    const auto month = number(5, 2);
    const auto day = number(8, 2);
    if (!year || !month || !day) return std::nullopt;
    const std::chrono::year_month_day date{std::chrono::year(static_cast<int>(*year)), std::chrono::month(*month),
                                           std::chrono::day(*day)};
    if (!date.ok()) return std::nullopt;
    return CalendarDay(date);
}

}  // namespace plugside
