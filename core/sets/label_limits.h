// What a person read on the label in hand, and the comparison of plan and season with it.
//
// No product's label is shipped: every figure is typed by the person from the label in hand. What is not typed is not known; without a
// label no amount is computed. A distance or re-entry time that the label does not have is typed as 0.
// Units:   as on the label (core/units/amount.h); distances in metres; areas in square metres; days are UTC.
// Checks:  each says both numbers with their units in one sentence. `exceeded` speaks against the plan, `kept` says only that this one
//          figure is kept, `not_known` what is wanting: a figure that the label may have but nobody typed, a density, a dose.
// Season:  entries of the log of this season, given by the caller; those of another ingredient or registration number are not counted.
// Rounding: compared as numbers to a part in a billion, shown to three significant digits.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/sets/conditions.h"
#include "core/sets/method.h"
#include "core/units/amount.h"
#include "core/units/display.h"
#include "core/units/metres.h"

namespace plugside {

enum class Ingredient {
    zinc_phosphide,
    strychnine,
    anticoagulant,
    aluminium_phosphide,
    magnesium_phosphide,
    smoke_cartridge,
    other
};

// Whether what is made of it can be `stuff`: a gas or smoke is no bait, a bait no fumigant, neither is a trap. Nothing for `other`.
[[nodiscard]] std::optional<bool> is_for(Ingredient ingredient, Stuff stuff);

// What the label asks to be worn with one tool, in its words: "spoon", "by hand", "dispensing probe".
struct Protection {
    std::string tool;
    std::string worn;
    friend bool operator==(const Protection&, const Protection&) = default;
};

struct LabelLimits {
    std::optional<Ingredient> ingredient;
    std::string ingredient_words;  // name and strength as printed
    std::string registration;      // registration number
    std::vector<std::string> sites;
    std::optional<Quantity> placement_least;
    std::optional<Quantity> placement_most;
    std::optional<int> placements_a_system_most;
    std::optional<Metres> placement_spacing_least;
    std::optional<AreaRate> area_most;    // of one treatment
    std::optional<AreaRate> season_most;  // of a season
    std::optional<int> treatments_a_season_most;
    std::optional<int> interval_days_least;
    std::optional<bool> restricted_use;
    std::optional<double> re_entry_hours;
    std::vector<Protection> protection;
    std::optional<Metres> building_distance;
    std::optional<Metres> water_distance;
    std::optional<double> grams_per_millilitre;  // bulk density of the bait, weighed
    std::optional<CalendarDay> checked_on;       // when the person compared this with the label in hand
    std::optional<CalendarDay> good_until;       // an end that the label or its registration names
    friend bool operator==(const LabelLimits&, const LabelLimits&) = default;
};

// Whether the words of its ingredient name a phosphide or strychnine, in English or Spanish.
[[nodiscard]] bool words_name_one(const LabelLimits& label);
// Whether anything that makes it a label was typed: ingredient or registration number.
[[nodiscard]] bool is_given(const LabelLimits& label);
// Sentences on what cannot be: figures below zero or not finite, a least above its most, units that do not go together.
[[nodiscard]] std::vector<std::string> what_is_wrong(const LabelLimits& label);

// One entry of the season's log: what was put down on one day.
struct Application {
    CalendarDay day{};
    Quantity amount;
    double area_m2 = 0.0;
    std::optional<Ingredient> ingredient;
    std::string registration;
    friend bool operator==(const Application&, const Application&) = default;
};

// What is about to be done, as far as the label asks.
struct PlannedUse {
    CalendarDay day{};
    std::optional<Quantity> per_placement;
    std::vector<int> placements_of_system;     // one entry a system that gets any
    std::optional<Metres> nearest_placements;  // within one system; nothing with one placement in each
    std::optional<double> area_m2;             // that is treated
    std::optional<Metres> nearest_building;    // of the map, to where a treated system may reach
    std::optional<Metres> nearest_water;
    std::optional<std::string> crop;
};

enum class Compared { kept, exceeded, not_known };

struct LabelCheck {
    std::string id;  // "placement-most", "area-most", ...: stable
    Compared outcome = Compared::not_known;
    std::string sentence;
};

// One check for each figure typed, and one that is not known for each that hangs on something wanting. Without a label: one, not known,
// that says so.
[[nodiscard]] std::vector<LabelCheck> compare(const LabelLimits& label, const PlannedUse& use,
                                              const std::vector<Application>& season, LengthUnits units);

// How many releases of this weight keep within the label's amount a placement: the most that do. Nothing without a figure or a density,
// and where one release alone is too much.
[[nodiscard]] std::optional<int> releases_a_placement(const LabelLimits& label, double grams_a_release);

// "zinc-phosphide", ...: the words of files, and what a person reads.
[[nodiscard]] std::string to_text(Ingredient ingredient);
[[nodiscard]] std::optional<Ingredient> ingredient_from_text(const std::string& text);
[[nodiscard]] std::string ingredient_shown(Ingredient ingredient);

// "3/14/2025" is nobody's date: "2025-03-14", in every language.
[[nodiscard]] std::string day_shown(CalendarDay day);
[[nodiscard]] std::optional<CalendarDay> day_from_text(const std::string& text);

}  // namespace plugside
