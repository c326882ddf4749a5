// Plan and season beside the figures of the label, each as one sentence with both numbers.
#include <algorithm>
#include <cctype>
#include <set>

#include "core/sets/label_limits.h"
#include "core/words/words.h"

namespace plugside {

namespace {

constexpr double even = 1e-9;  // what rounding of units may add

bool above(double value, double most) { return value > most * (1.0 + even); }

std::string folded(const std::string& text) {
    std::string lower;
    for (const char letter : text)
        if (!(letter == ' ' && (lower.empty() || lower.back() == ' ')))
            lower += static_cast<char>(std::tolower(static_cast<unsigned char>(letter)));
    while (!lower.empty() && lower.back() == ' ') lower.pop_back();
    return lower;
}

std::string joined(const std::vector<std::string>& items) {
    std::string text;
    for (const std::string& item : items) text += (text.empty() ? "" : ", ") + item;
    return text;
}

std::string in_square_metres(double area, LengthUnits units) { return ground_area(area, units); }

class Comparison {
public:
    Comparison(const LabelLimits& label, const PlannedUse& use, const std::vector<Application>& season, LengthUnits units)
        : label_(label), use_(use), units_(units) {
        for (const Application& entry : season)
            if (is_of_this_label(entry) && entry.day <= use.day) season_.push_back(entry);
    }

    std::vector<LabelCheck> made() {
        if (!is_given(label_)) {
            add("label", Compared::not_known,
                Words::tell("No label has been typed in: no amount is computed and none is compared."));
            return checks_;
        }
        placement();
        system();
        area();
        of_season();
        places();
        dates();
        return checks_;
    }

private:
    void add(const char* id, Compared outcome, std::string sentence) {
        checks_.push_back({id, outcome, std::move(sentence)});
    }
    void add(const char* id, bool kept, std::string sentence) {
        add(id, kept ? Compared::kept : Compared::exceeded, std::move(sentence));
    }

    bool is_of_this_label(const Application& entry) const {
        if (!entry.registration.empty() && !label_.registration.empty()) return entry.registration == label_.registration;
        return !entry.ingredient || !label_.ingredient || *entry.ingredient == *label_.ingredient;
    }

    void placement() {
        if (!label_.placement_most)
            add("placement-most", Compared::not_known, Words::tell("The label's amount a placement has not been typed in."));
        if (!label_.placement_most && !label_.placement_least) return;
        if (!use_.per_placement) {
            add("placement", Compared::not_known, Words::tell("It has not been said how much one placement is to get."));
            return;
        }
        against("placement-most", label_.placement_most, true);
        against("placement-least", label_.placement_least, false);
    }

    void against(const char* id, const std::optional<Quantity>& figure_of_label, bool most) {
        if (!figure_of_label) return;
        const auto dose = in_unit(*use_.per_placement, figure_of_label->unit, label_.grams_per_millilitre);
        if (!dose) {
            add(id, Compared::not_known, cannot_compare(*use_.per_placement, *figure_of_label));
            return;
        }
        const std::string planned = with_origin(*use_.per_placement, *dose);
        const std::string of_label = shown(*figure_of_label);
        if (most)
            add(id, !above(dose->value, figure_of_label->value),
                Words::tell("One placement gets {1}; the label names {2} at most.", {planned, of_label}));
        else
            add(id, !above(figure_of_label->value, dose->value),
                Words::tell("One placement gets {1}; the label names {2} at least.", {planned, of_label}));
    }

    std::string cannot_compare(Quantity planned, Quantity of_label) const {
        if (is_counted(planned.unit) || is_counted(of_label.unit))
            return Words::tell("{1} and the label's {2} are not of one kind.", {shown(planned), shown(of_label)});
        return Words::tell(
            "{1} and the label's {2} cannot be compared before the bait has been weighed: type its grams a millilitre.",
            {shown(planned), shown(of_label)});
    }

    static std::string with_origin(Quantity typed, Quantity converted) {
        return typed.unit == converted.unit ? shown(typed) : Words::tell("{1} ({2})", {shown(typed), shown(converted)});
    }

    void system() {
        if (label_.placements_a_system_most && !use_.placements_of_system.empty()) {
            const int most = *std::max_element(use_.placements_of_system.begin(), use_.placements_of_system.end());
            add("placements-a-system", most <= *label_.placements_a_system_most,
                Words::tell("The fullest system gets {1} placements; the label names {2} at most.",
                            {std::to_string(most), std::to_string(*label_.placements_a_system_most)}));
        }
        if (label_.placement_spacing_least && use_.nearest_placements)
            add("spacing", !above(label_.placement_spacing_least->value(), use_.nearest_placements->value()),
                Words::tell("The nearest two placements of one system lie {1} apart; the label names {2} at least.",
                            {ground_distance(*use_.nearest_placements, units_),
                             ground_distance(*label_.placement_spacing_least, units_)}));
    }

    // What is put down on this treatment, in `unit`; nothing where a dose or a density is wanting.
    std::optional<double> planned_in(AmountUnit unit) const {
        if (!use_.per_placement) return std::nullopt;
        const auto dose = in_unit(*use_.per_placement, unit, label_.grams_per_millilitre);
        if (!dose) return std::nullopt;
        double placements = 0.0;
        for (const int of_system : use_.placements_of_system) placements += of_system;
        return dose->value * placements;
    }

    void area() {
        if (!label_.area_most) return;
        rate("area-most", *label_.area_most, planned_in(label_.area_most->amount.unit),
             Words::later("This treatment puts {1} on {2}, {3}; the label names {4} at most."));
    }

    // `text`: {1} amount, {2} area, {3} rate, {4} the label's rate.
    void rate(const char* id, const AreaRate& most, std::optional<double> amount, const char* text) {
        if (!amount) {
            add(id, Compared::not_known,
                Words::tell("How much this puts on the area cannot be worked out: a dose or the bait's grams a "
                            "millilitre are wanting. The label names {1} at most.",
                            {shown(most)}));
            return;
        }
        if (!use_.area_m2 || *use_.area_m2 <= 0.0) {
            add(id, Compared::not_known,
                Words::tell("The size of the field is not known, so that {1} cannot be compared with the label's {2}.",
                            {shown(Quantity{*amount, most.amount.unit}), shown(most)}));
            return;
        }
        const AreaRate planned{{*amount / *use_.area_m2 * square_metres_in(most.per), most.amount.unit}, most.per};
        add(id, !above(planned.amount.value, most.amount.value),
            filled(Words::shown(text), {shown(Quantity{*amount, most.amount.unit}), in_square_metres(*use_.area_m2, units_),
                                        shown(planned), shown(most)}));
    }

    void of_season() {
        if (label_.season_most) {
            std::optional<double> all = planned_in(label_.season_most->amount.unit);
            for (const Application& entry : season_) {
                const auto amount = in_unit(entry.amount, label_.season_most->amount.unit, label_.grams_per_millilitre);
                all = all && amount ? std::optional(*all + amount->value) : std::nullopt;
            }
            rate("season-most", *label_.season_most, all,
                 Words::later("With this treatment the season has put {1} on {2}, {3}; the label names {4} at most."));
        }
        std::set<CalendarDay> days;
        for (const Application& entry : season_) days.insert(entry.day);
        if (label_.treatments_a_season_most) {
            const std::size_t with_this = days.size() + (days.contains(use_.day) ? 0 : 1);
            add("treatments", static_cast<int>(with_this) <= *label_.treatments_a_season_most,
                Words::tell("This is treatment {1} of the season; the label names {2} at most.",
                            {std::to_string(with_this), std::to_string(*label_.treatments_a_season_most)}));
        }
        days.erase(use_.day);
        if (label_.interval_days_least && !days.empty()) {
            const long long since = (use_.day - *days.rbegin()).count();
            add("interval", since >= *label_.interval_days_least,
                Words::tell(
                    "The last treatment, on {1}, was {2} days ago; the label names {3} days at least.",
                    {day_shown(*days.rbegin()), std::to_string(since), std::to_string(*label_.interval_days_least)}));
        }
    }

    void places() {
        apart("building-distance", label_.building_distance, use_.nearest_building,
              Words::later("A treated system may come within {1} of a building; the label names {2} at least."));
        apart("water-distance", label_.water_distance, use_.nearest_water,
              Words::later("A treated system may come within {1} of water; the label names {2} at least."));
        if (label_.sites.empty()) return;
        if (!use_.crop) {
            add("site", Compared::not_known,
                Words::tell("It is not known what grows here; the label names: {1}.", {joined(label_.sites)}));
            return;
        }
        const bool named = std::any_of(label_.sites.begin(), label_.sites.end(),
                                       [&](const std::string& site) { return folded(site) == folded(*use_.crop); });
        add("site", named,
            named ? Words::tell("{1} is among the sites of the label.", {*use_.crop})
                  : Words::tell("{1} is not among the sites of the label: {2}.", {*use_.crop, joined(label_.sites)}));
    }

    void apart(const char* id, std::optional<Metres> least, std::optional<Metres> planned, const char* text) {
        if (least && planned)
            add(id, !above(least->value(), planned->value()),
                filled(Words::shown(text), {ground_distance(*planned, units_), ground_distance(*least, units_)}));
    }

    void dates() {
        if (label_.good_until)
            add("good-until", *label_.good_until >= use_.day,
                Words::tell("The day of work is {1}; label or registration end on {2}.",
                            {day_shown(use_.day), day_shown(*label_.good_until)}));
        if (!label_.checked_on)
            add("checked-on", Compared::not_known,
                Words::tell("It has not been said when these figures were compared with the label in hand."));
        else
            add("checked-on", use_.day - *label_.checked_on <= std::chrono::days(365),
                Words::tell("These figures were compared with the label in hand on {1}; the day of work is {2}.",
                            {day_shown(*label_.checked_on), day_shown(use_.day)}));
    }

    const LabelLimits& label_;
    const PlannedUse& use_;
    LengthUnits units_;
    std::vector<Application> season_;
    std::vector<LabelCheck> checks_;
};

}  // namespace

std::vector<LabelCheck> compare(const LabelLimits& label, const PlannedUse& use, const std::vector<Application>& season,
                                LengthUnits units) {
    return Comparison(label, use, season, units).made();
}

}  // namespace plugside
