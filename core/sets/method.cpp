#include "core/sets/method.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

#include "core/words/words.h"

namespace plugside {

namespace {

constexpr const char* own_prefix = "own-";

bool is_count(double value) { return std::isfinite(value) && value >= 0.0; }

bool is_plain_id(const std::string& id) {
    return id.size() > 4 && id.starts_with(own_prefix) && std::all_of(id.begin() + 4, id.end(), [](char letter) {
               return (letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9') || letter == '-';
           });
}

template <typename Value, std::size_t count>
std::optional<Value> from_text(const std::array<Value, count>& values, const std::string& text) {
    for (const Value value : values)
        if (text == to_text(value)) return value;
    return std::nullopt;
}

}  // namespace

Method own_variant(const Method& of, int number, const std::string& name) {
    Method own = of;
    own.id = own_prefix + std::to_string(number);
    own.name = name;
    for (MethodStep& step : own.steps) step.tag = "own";
    return own;
}

std::optional<std::string> what_is_wrong(const Method& method) {
    if (method.name.empty()) return Words::tell("A method of your own wants a name.");
    if (!is_plain_id(method.id))
        return Words::tell("{1}: a method of your own is kept under a name of its own, \"own-\" and a number.",
                           {method.name});
    if (method.steps.empty() ||
        std::any_of(method.steps.begin(), method.steps.end(), [](const MethodStep& step) { return step.text.empty(); }))
        return Words::tell("{1}: write at least one step, and none that is empty.", {method.name});
    if (!is_count(method.minutes.mean) || !is_count(method.minutes.sd))
        return Words::tell("{1}: minutes are numbers of 0 or more.", {method.name});
    if (method.placements < 1) return Words::tell("{1}: a set has one placement or more.", {method.name});
    if (method.check_every_hours && !(std::isfinite(*method.check_every_hours) && *method.check_every_hours > 0.0))
        return Words::tell("{1}: the hours between two checks are more than 0.", {method.name});
    for (const ItemCount& need : method.needs)
        if (!is_count(need.count)) return Words::tell("{1}: what a set needs are numbers of 0 or more.", {method.name});
    return std::nullopt;
}

HoleCover cover_or_open(const Method& method, const Conditions& conditions, UtcTime now) {
    if (method.cover == CoverRule::always_closed) return {true, Words::tell("This method closes every hole.")};
    if (method.cover == CoverRule::always_open)
        return {false, Words::tell("This method, as it was written, leaves the hole open.")};
    struct Reacher {
        Question whose;
        const char* come;
        const char* not_known;
    };
    constexpr std::array<Reacher, 4> reachers{{{Question::children, Words::later("Cover: children come here."),
                                                Words::later("Cover: it is not known whether children come here.")},
                                               {Question::pets, Words::later("Cover: pets come here."),
                                                Words::later("Cover: it is not known whether pets come here.")},
                                               {Question::stock, Words::later("Cover: stock comes here."),
                                                Words::later("Cover: it is not known whether stock comes here.")},
                                               {Question::public_visits, Words::later("Cover: other people come here."),
                                                Words::later("Cover: it is not known whether other people come here.")}}};
    for (const Reacher& reacher : reachers)
        if (come_here(conditions, reacher.whose, now) == std::optional(true)) return {true, Words::shown(reacher.come)};
    for (const Reacher& reacher : reachers)
        if (!come_here(conditions, reacher.whose, now)) return {true, Words::shown(reacher.not_known)};
    return {
        false,
        Words::tell(
            "Nobody was said to come here: open or covered made no clear difference to the catch overall; covering helped "
            "in late spring and early summer (Baldwin et al. 2013).")};
}

std::optional<ReleaseWeight> release_weight(const ReleaseCalibration& calibration) {
    const auto& weighed = calibration.weighed_g;
    if (weighed.empty() || calibration.releases_each < 1) return std::nullopt;
    if (std::any_of(weighed.begin(), weighed.end(), [](double grams) { return !(std::isfinite(grams) && grams > 0.0); }))
        return std::nullopt;
    const double count = static_cast<double>(weighed.size());
    const double each = calibration.releases_each;
    const double mean = std::accumulate(weighed.begin(), weighed.end(), 0.0) / count;
    ReleaseWeight weight{mean / each, std::nullopt};
    if (weighed.size() > 1) {
        double squares = 0.0;
        for (const double grams : weighed) squares += (grams - mean) * (grams - mean);
        weight.sd_of_mean_g = std::sqrt(squares / (count - 1.0) / count) / each;
    }
    return weight;
}

std::string to_text(Stuff stuff) {
    switch (stuff) {
        case Stuff::trap: return "trap";
        case Stuff::bait: return "bait";
        case Stuff::fumigant: break;
    }
    return "fumigant";
}

std::string to_text(Placement placement) {
    switch (placement) {
        case Placement::in_lateral: return "in-lateral";
        case Placement::in_run: return "in-run";
        case Placement::on_surface: break;
    }
    return "on-surface";
}

std::string to_text(LoadItem item) {
    switch (item) {
        case LoadItem::trap: return "trap";
        case LoadItem::stake: return "stake";
        case LoadItem::wire_m: return "wire";
        case LoadItem::flag: return "flag";
        case LoadItem::cover: return "cover";
        case LoadItem::sign: return "sign";
        case LoadItem::gloves_pair: break;
    }
    return "gloves";
}

std::string to_text(CoverRule rule) {
    switch (rule) {
        case CoverRule::as_answered: return "as-answered";
        case CoverRule::always_closed: return "always-closed";
        case CoverRule::always_open: break;
    }
    return "always-open";
}

std::optional<Stuff> stuff_from_text(const std::string& text) {
    return from_text(std::array{Stuff::trap, Stuff::bait, Stuff::fumigant}, text);
}
std::optional<Placement> placement_from_text(const std::string& text) {
    return from_text(std::array{Placement::in_lateral, Placement::in_run, Placement::on_surface}, text);
}
std::optional<LoadItem> item_from_text(const std::string& text) {
    return from_text(std::array{LoadItem::trap, LoadItem::stake, LoadItem::wire_m, LoadItem::flag, LoadItem::cover,
                                LoadItem::sign, LoadItem::gloves_pair},
                     text);
}
std::optional<CoverRule> cover_rule_from_text(const std::string& text) {
    return from_text(std::array{CoverRule::as_answered, CoverRule::always_closed, CoverRule::always_open}, text);
}

std::string item_shown(LoadItem item) {
    switch (item) {
        case LoadItem::trap: return Words::tell("traps");
        case LoadItem::stake: return Words::tell("stakes");
        case LoadItem::wire_m: return Words::tell("wire or cable");
        case LoadItem::flag: return Words::tell("flags");
        case LoadItem::cover: return Words::tell("covers");
        case LoadItem::sign: return Words::tell("signs");
        case LoadItem::gloves_pair: break;
    }
    return Words::tell("pairs of gloves");
}

}  // namespace plugside
