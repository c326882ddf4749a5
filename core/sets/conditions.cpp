#include "core/sets/conditions.h"

#include <algorithm>

namespace plugside {

namespace {

using std::chrono::hours;

constexpr hours a_day{24};

// Calls `use` with the Told of a question of Conditions; false where the question is not one of these.
template <typename Use>
bool with_told(const Conditions& c, Question question, Use use) {
    switch (question) {
        case Question::soil_moisture: use(c.soil_moisture); return true;
        case Question::rain_due: use(c.rain_due); return true;
        case Question::irrigation_due: use(c.irrigation_due); return true;
        case Question::water_days: use(c.water_days); return true;
        case Question::soil_temperature: use(c.soil_temperature_c); return true;
        case Question::soil_texture: use(c.soil_texture); return true;
        case Question::soil_cracks: use(c.soil_cracks); return true;
        case Question::frost: use(c.frost); return true;
        case Question::crop: use(c.crop); return true;
        case Question::site_use: use(c.site_use); return true;
        case Question::property: use(c.property); return true;
        case Question::children: use(c.children); return true;
        case Question::public_visits: use(c.public_visits); return true;
        case Question::pets: use(c.pets); return true;
        case Question::stock: use(c.stock); return true;
        case Question::buildings_drawn: use(c.buildings_drawn); return true;
        case Question::water_near: use(c.water_near); return true;
        case Question::wildlife: use(c.wildlife); return true;
        case Question::fumigation_plan: use(c.fumigation_plan); return true;
        case Question::utilities: use(c.utilities); return true;
        case Question::neighbours_told: use(c.neighbours_told); return true;
        case Question::trap_law_read: use(c.trap_law_read); return true;
        case Question::pesticide_office: use(c.pesticide_office); return true;
        case Question::licence:
        case Question::label:
        case Question::ingredient:
        case Question::method:
        case Question::placement: break;
    }
    return false;
}

bool is_too_old(std::optional<UtcTime> at, std::optional<hours> believed, UtcTime now) {
    if (!believed) return false;
    return !at || now - *at > *believed || *at - now > a_day;
}

const Told<Visits>& visits_of(const Conditions& conditions, Question whose) {
    if (whose == Question::children) return conditions.children;
    if (whose == Question::pets) return conditions.pets;
    if (whose == Question::stock) return conditions.stock;
    return conditions.public_visits;
}

// Whether there is any on one of the days ahead; nothing where the table does not tell of all of them and tells of none.
std::optional<bool> by_table(const Conditions& conditions, UtcTime now, std::optional<double> WaterDay::*water_mm) {
    const auto days = current(conditions.water_days, conditions, Question::water_days, now);
    if (!days) return std::nullopt;
    const CalendarDay today = std::chrono::floor<std::chrono::days>(now);
    bool whole = true;
    for (int ahead = 0; ahead <= days_ahead; ++ahead) {
        const auto row = std::find_if(days->begin(), days->end(),
                                      [&](const WaterDay& day) { return day.day == today + std::chrono::days(ahead); });
        if (row == days->end() || !((*row).*water_mm)) {
            whole = false;
        } else if (*((*row).*water_mm) > 0.0) {
            return true;
        }
    }
    return whole ? std::optional(false) : std::nullopt;
}

}  // namespace

std::optional<hours> believed_for(Question question) {
    switch (question) {
        case Question::soil_moisture:
        case Question::rain_due:
        case Question::irrigation_due:
        case Question::water_days:
        case Question::soil_temperature:
        case Question::frost: return a_day;
        case Question::soil_cracks:
        case Question::children:
        case Question::public_visits:
        case Question::pets:
        case Question::stock:
        case Question::neighbours_told: return 7 * a_day;
        case Question::utilities: return 14 * a_day;  // marks fade, and states let a ticket lapse after some weeks [memory]
        case Question::crop:
        case Question::site_use:
        case Question::fumigation_plan: return 30 * a_day;
        case Question::property:
        case Question::buildings_drawn:
        case Question::water_near:
        case Question::wildlife:
        case Question::trap_law_read:
        case Question::pesticide_office:
        case Question::licence:
        case Question::label: return 365 * a_day;
        case Question::soil_texture:
        case Question::ingredient:
        case Question::method:
        case Question::placement: break;
    }
    return std::nullopt;
}

std::optional<UtcTime> answered_at(const Conditions& conditions, Question question) {
    std::optional<UtcTime> at;
    with_told(conditions, question, [&](const auto& told) { at = told.at; });
    return at;
}

bool is_answered(const Conditions& conditions, Question question) {
    bool answered = false;
    with_told(conditions, question, [&](const auto& told) { answered = told.value.has_value() || told.at.has_value(); });
    return answered;
}

bool is_questioned(const Conditions& conditions, Question question, UtcTime now) {
    return is_answered(conditions, question) && is_too_old(answered_at(conditions, question), believed_for(question), now);
}

std::vector<Question> questioned(const Conditions& conditions, UtcTime now) {
    std::vector<Question> old;
    for (const Question question : all_questions())
        if (is_questioned(conditions, question, now)) old.push_back(question);
    return old;
}

std::optional<bool> rain_is_due(const Conditions& conditions, UtcTime now) {
    const auto table = by_table(conditions, now, &WaterDay::rain_mm);
    return table ? table : current(conditions.rain_due, conditions, Question::rain_due, now);
}

std::optional<bool> irrigation_is_due(const Conditions& conditions, UtcTime now) {
    const auto table = by_table(conditions, now, &WaterDay::irrigation_mm);
    return table ? table : current(conditions.irrigation_due, conditions, Question::irrigation_due, now);
}

std::optional<bool> come_here(const Conditions& conditions, Question whose, UtcTime now) {
    const auto visits = current(visits_of(conditions, whose), conditions, whose, now);
    if (!visits) return std::nullopt;
    const CalendarDay today = std::chrono::floor<std::chrono::days>(now);
    return visits->come && !(visits->until && *visits->until < today);
}

bool may_be_lived_in(const Conditions& conditions, const std::string& building, UtcTime now) {
    if (building.empty()) return true;
    return std::none_of(conditions.buildings.begin(), conditions.buildings.end(), [&](const BuildingUse& said) {
        return said.name == building && said.lived_in.value == std::optional(false) &&
               !is_too_old(said.lived_in.at, believed_for(Question::buildings_drawn), now);
    });
}

}  // namespace plugside
