// Under what conditions the work is to be done, as a person answered.
//
// Told<T>: one answer. `value` absent with `at` present: asked, and not known, which is a full answer; both absent: not yet asked. Either
//          way a rule that hangs on it cannot be judged and asks for it.
// Age:     every answer carries the time it was given. `is_questioned` when it is older than `believed_for` its question: weather and soil a
//          day (yesterday's rain says nothing of tomorrow's), who comes here a week, things that stand for a season: our assumption. A
//          questioned answer counts as not known (`current`); what was said stays, to be confirmed or changed.
// Question: names each member, for forms, files and rules that ask.
// WaterDay: one day's rain and irrigation in millimetres, both >= 0; absent: nothing was said of it. See water_table.h.
// Visits:  who comes, and from which day until which; `when` in the person's words ("school days 8 to 3"). An end that has passed: they come
//          no more.
// Units:   degrees Celsius at the depth of the run; days are UTC.
// Source:  what each answer decides: core/sets/cautions.h.
#pragma once

#include <chrono>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/survey/mound.h"

namespace plugside {

using CalendarDay = std::chrono::sys_days;

template <typename T>
struct Told {
    std::optional<T> value;
    std::optional<UtcTime> at;
    friend bool operator==(const Told&, const Told&) = default;
};

enum class SoilMoisture { dry, damp, wet };
enum class SoilTexture { sand_or_loose, loam, clay };
enum class SiteUse { food_crop, forage, orchard_or_vineyard, pasture, nursery, lawn, sports_field, fallow, other };
enum class PropertyUse { home, school, school_athletic_field, nursing_home, day_care, hospital, none_of_these };
enum class WildlifeAnswer { awaited, none_known, known_here, terms_named };  // what the wildlife agency said
enum class UtilitiesCall { not_called, awaited, marked };                    // the one-call service
enum class OfficeAnswer { not_asked, terms_named, withdrawn };               // the pesticide office, of strychnine

struct WaterDay {
    CalendarDay day{};
    std::optional<double> rain_mm;
    std::optional<double> irrigation_mm;
    friend bool operator==(const WaterDay&, const WaterDay&) = default;
};

struct Visits {
    bool come = false;
    std::optional<CalendarDay> from;
    std::optional<CalendarDay> until;
    std::string when;
    friend bool operator==(const Visits&, const Visits&) = default;
};

// A building of the map, by its name there, and whether people or domestic animals may be in it.
struct BuildingUse {
    std::string name;
    Told<bool> lived_in;
    std::string use;
    friend bool operator==(const BuildingUse&, const BuildingUse&) = default;
};

struct Conditions {
    Told<SoilMoisture> soil_moisture;
    Told<bool> rain_due;                     // in the coming `days_ahead`
    Told<bool> irrigation_due;               // the same
    Told<std::vector<WaterDay>> water_days;  // the same as a table; where it reaches it stands before the two above
    Told<double> soil_temperature_c;
    Told<SoilTexture> soil_texture;
    Told<bool> soil_cracks;
    Told<bool> frost;        // the ground is frozen
    Told<std::string> crop;  // crop or turf, in the words of the label's sites
    Told<SiteUse> site_use;
    Told<std::set<PropertyUse>> property;  // what stands on the property; none_of_these alone where none does
    Told<Visits> children;
    Told<Visits> public_visits;
    Told<Visits> pets;
    Told<Visits> stock;
    Told<bool> buildings_drawn;  // every building within 100 ft of the field is on the map
    std::vector<BuildingUse> buildings;
    Told<bool> water_near;  // a well, spring, pond or ditch within 100 ft that is not on the map
    Told<WildlifeAnswer> wildlife;
    std::string wildlife_asked;  // who was asked, and what they said
    Told<bool> fumigation_plan;  // the written management plan is in hand
    Told<UtilitiesCall> utilities;
    std::string utilities_ticket;
    Told<bool> neighbours_told;
    Told<bool> trap_law_read;
    Told<OfficeAnswer> pesticide_office;
    friend bool operator==(const Conditions&, const Conditions&) = default;
};

inline constexpr int days_ahead = 3;  // "the next days": our assumption

enum class Question {
    soil_moisture,
    rain_due,
    irrigation_due,
    water_days,
    soil_temperature,
    soil_texture,
    soil_cracks,
    frost,
    crop,
    site_use,
    property,
    children,
    public_visits,
    pets,
    stock,
    buildings_drawn,
    water_near,
    wildlife,
    fumigation_plan,
    utilities,
    neighbours_told,
    trap_law_read,
    pesticide_office,
    // not of Conditions, but asked for by rules
    licence,
    label,
    ingredient,
    method,
    placement,
};

[[nodiscard]] const std::vector<Question>& all_questions();
// "soil-moisture", ...: stable, for files.
[[nodiscard]] std::string to_text(Question question);
[[nodiscard]] std::optional<Question> question_from_text(const std::string& text);
// "How wet is the soil where the runs lie?", in the language at hand.
[[nodiscard]] std::string asked_as(Question question);
// How long an answer is believed; nothing: until it is changed.
[[nodiscard]] std::optional<std::chrono::hours> believed_for(Question question);

// When the answer of `conditions` was given; nothing where it was not, and for questions that are not of Conditions.
[[nodiscard]] std::optional<UtcTime> answered_at(const Conditions& conditions, Question question);
// Whether there is a value, known or "not known", whatever its age.
[[nodiscard]] bool is_answered(const Conditions& conditions, Question question);
// Older than it is believed. An answer that is dated after `now` is questioned too once it lies more than a day ahead.
[[nodiscard]] bool is_questioned(const Conditions& conditions, Question question, UtcTime now);
[[nodiscard]] std::vector<Question> questioned(const Conditions& conditions, UtcTime now);

// The value as far as it is believed at `now`.
template <typename T>
[[nodiscard]] std::optional<T> current(const Told<T>& told, const Conditions& conditions, Question question, UtcTime now) {
    if (!told.value || is_questioned(conditions, question, now)) return std::nullopt;
    return told.value;
}

// Whether rain is due, or irrigation, within `days_ahead` of `now`: by the table where it reaches that far, by the plain answer else.
[[nodiscard]] std::optional<bool> rain_is_due(const Conditions& conditions, UtcTime now);
[[nodiscard]] std::optional<bool> irrigation_is_due(const Conditions& conditions, UtcTime now);
// Whether they come within the work: nothing where not known.
[[nodiscard]] std::optional<bool> come_here(const Conditions& conditions, Question whose, UtcTime now);
// Whether people or domestic animals may be in the building: yes until someone said otherwise.
[[nodiscard]] bool may_be_lived_in(const Conditions& conditions, const std::string& building, UtcTime now);

// "dry", "sand-or-loose", "food-crop", "school-athletic-field", "none-known", "marked", "terms-named", ...: the words of files.
[[nodiscard]] std::string to_text(SoilMoisture value);
[[nodiscard]] std::string to_text(SoilTexture value);
[[nodiscard]] std::string to_text(SiteUse value);
[[nodiscard]] std::string to_text(PropertyUse value);
[[nodiscard]] std::string to_text(WildlifeAnswer value);
[[nodiscard]] std::string to_text(UtilitiesCall value);
[[nodiscard]] std::string to_text(OfficeAnswer value);
[[nodiscard]] std::optional<SoilMoisture> soil_moisture_from_text(const std::string& text);
[[nodiscard]] std::optional<SoilTexture> soil_texture_from_text(const std::string& text);
[[nodiscard]] std::optional<SiteUse> site_use_from_text(const std::string& text);
[[nodiscard]] std::optional<PropertyUse> property_use_from_text(const std::string& text);
[[nodiscard]] std::optional<WildlifeAnswer> wildlife_answer_from_text(const std::string& text);
[[nodiscard]] std::optional<UtilitiesCall> utilities_call_from_text(const std::string& text);
[[nodiscard]] std::optional<OfficeAnswer> office_answer_from_text(const std::string& text);

// What a person reads for one of these words of files, in the language at hand; a word that is none of them as it is.
[[nodiscard]] std::string answer_shown(const std::string& word);

}  // namespace plugside
