#include "core/sets/material.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>

#include "core/probing/row_chance.h"
#include "core/sets/set_choices.h"
#include "core/words/words.h"

namespace plugside {

namespace {

double normal_share_below(double z) { return 0.5 * std::erfc(-z / std::numbers::sqrt2); }

std::vector<double> convolved(const std::vector<double>& a, const std::vector<double>& b) {
    if (a.empty()) return b;
    std::vector<double> sum(a.size() + b.size() - 1, 0.0);
    for (std::size_t i = 0; i < a.size(); ++i)
        for (std::size_t j = 0; j < b.size(); ++j) sum[i + j] += a[i] * b[j];
    return sum;
}

// Chance of each number of holes of all ladders together: index + `first`.
struct HoleSum {
    std::vector<double> chance;
    int first = 0;

    void add(const std::vector<double>& ladder) {
        chance = convolved(chance, ladder);
        ++first;
        // what is left away is less than a billionth at either end
        std::size_t low = 0;
        double left = 0.0;
        while (low + 1 < chance.size() && left + chance[low] < 1e-12) left += chance[low++];
        std::size_t high = chance.size();
        left = 0.0;
        while (high > low + 1 && left + chance[high - 1] < 1e-12) left += chance[--high];
        chance = std::vector<double>(chance.begin() + static_cast<std::ptrdiff_t>(low),
                                     chance.begin() + static_cast<std::ptrdiff_t>(high));
        first += static_cast<int>(low);
    }
    [[nodiscard]] double mean() const {
        double sum = 0.0;
        for (std::size_t i = 0; i < chance.size(); ++i) sum += chance[i] * (first + static_cast<double>(i));
        return sum;
    }
    [[nodiscard]] int quantile(double share) const {
        double below = 0.0;
        for (std::size_t i = 0; i < chance.size(); ++i)
            if ((below += chance[i]) >= share) return first + static_cast<int>(i);
        return first + static_cast<int>(chance.size()) - 1;
    }
};

struct Minutes {
    double mean = 0.0;
    double variance = 0.0;
};

// Minutes below which the work stays with a chance of `share`: of the mixture of normals over the number of holes.
double time_quantile(const HoleSum& holes, const Minutes& sets, double a_hole, double share) {
    const double sd = std::sqrt(sets.variance);
    const auto below = [&](double minutes) {
        double sum = 0.0;
        for (std::size_t i = 0; i < holes.chance.size(); ++i) {
            const double middle = sets.mean + a_hole * (holes.first + static_cast<double>(i));
            sum +=
                holes.chance[i] * (sd > 0.0 ? normal_share_below((minutes - middle) / sd) : (minutes >= middle ? 1.0 : 0.0));
        }
        return sum;
    };
    double low = 0.0;
    double high = sets.mean + a_hole * (holes.first + static_cast<double>(holes.chance.size())) + 10.0 * sd;
    for (int i = 0; i < 60; ++i) (below(0.5 * (low + high)) < share ? low : high) = 0.5 * (low + high);
    return high;
}

// The methods of the sets that stand.
struct Standing {
    std::map<std::string, int> sets_by_method;
    int without_method = 0;
    HoleSum holes;
    int sets = 0;
};

std::vector<std::size_t> standing_sets(const Survey& survey, const Plan& plan, const LoadOptions& options) {
    const std::vector<SetChoice> choices = choices_of(survey, plan);
    std::vector<std::size_t> sets;
    for (std::size_t s = 0; s < plan.sets.size(); ++s)
        if (stands(choices[s]) || (options.with_proposed && choices[s] == SetChoice::proposed)) sets.push_back(s);
    return sets;
}

Standing summed(const WorkOrder& work, const Plan& plan, const std::vector<std::size_t>& sets, const LoadOptions& options) {
    Standing standing;
    for (const std::size_t s : sets) {
        const ProbeSite& site = plan.probes[plan.sets[s].probe];
        ++standing.sets;
        const std::string id = method_at(work, site.key);
        ++standing.sets_by_method[id];
        standing.holes.add(holes_pushed(site, options.tunnel_diameter));
    }
    std::erase_if(standing.sets_by_method, [&](const auto& entry) {
        const bool unknown = !find_method(work, entry.first);
        if (unknown) standing.without_method += entry.second;
        return unknown;
    });
    return standing;
}

std::string count_shown(LoadItem item, double count) {
    if (item == LoadItem::wire_m) return Words::tell("{1} m ({2} ft)", {figure(count), figure(Metres::of(count).feet())});
    return figure(count);
}

LoadLine line_of(LoadItem item, double needed, double reserve) {
    LoadLine line;
    line.item = item;
    line.needed = needed;
    line.with_reserve = std::ceil(needed * (1.0 + reserve) - 1e-9);
    line.sentence = line.with_reserve > needed
                        ? Words::tell("{1}: {2}, {3} with the reserve.",
                                      {item_shown(item), count_shown(item, needed), count_shown(item, line.with_reserve)})
                        : Words::tell("{1}: {2}.", {item_shown(item), count_shown(item, needed)});
    return line;
}

bool anyone_may_come(const Conditions& conditions, UtcTime now) {
    for (const Question whose : {Question::children, Question::public_visits, Question::pets, Question::stock})
        if (come_here(conditions, whose, now) != std::optional(false)) return true;
    return false;
}

void add_items(const WorkOrder& work, const Standing& standing, UtcTime now, const LoadOptions& options, Load& load) {
    std::map<LoadItem, double> needed;
    for (const auto& [id, sets] : standing.sets_by_method) {
        const Method method = *find_method(work, id);
        const bool covered = cover_or_open(method, work.conditions, now).cover;
        for (const ItemCount& need : method.needs)
            if (need.item != LoadItem::cover || covered) needed[need.item] += need.count * sets;
    }
    for (const auto& [item, count] : needed)
        if (count > 0.0) load.lines.push_back(line_of(item, count, options.reserve));
    if (standing.sets == 0) return;
    if (anyone_may_come(work.conditions, now)) load.lines.push_back(line_of(LoadItem::sign, 4.0, 0.0));
    load.lines.push_back(line_of(LoadItem::gloves_pair, options.people, 0.0));
}

// Bait, or fumigant, of all methods that put it.
void add_amount(const WorkOrder& work, const Standing& standing, const LoadOptions& options, Load& load) {
    int placements = 0;
    for (const auto& [id, sets] : standing.sets_by_method) {
        const Method method = *find_method(work, id);
        if (method.stuff != Stuff::trap) placements += sets * method.placements;
    }
    if (placements == 0) return;
    if (!is_given(work.label)) {
        load.notices.push_back(Words::tell("No label has been typed in: no amount of bait or fumigant is computed."));
        return;
    }
    if (!work.dose || !work.label.placement_most) {
        load.notices.push_back(
            Words::tell("The label's amount a placement, or yours, has not been typed in: no amount is computed."));
        return;
    }
    const auto dose = in_unit(*work.dose, work.label.placement_most->unit, work.label.grams_per_millilitre);
    if (!dose || dose->value > work.label.placement_most->value * (1.0 + 1e-9)) {
        load.notices.push_back(
            Words::tell("One placement is to get {1}, which cannot be compared with the label's {2} or goes beyond it: no "
                        "amount is computed.",
                        {shown(*work.dose), shown(*work.label.placement_most)}));
        return;
    }
    LoadLine line;
    line.needed = work.dose->value * placements;
    line.with_reserve = line.needed * (1.0 + options.reserve);
    if (is_counted(work.dose->unit)) line.with_reserve = std::ceil(line.with_reserve - 1e-9);
    const Quantity needed{line.needed, work.dose->unit};
    line.amount = Quantity{line.with_reserve, work.dose->unit};
    const std::string ingredient =
        work.label.ingredient ? ingredient_shown(*work.label.ingredient) : Words::tell("bait or fumigant");
    line.sentence = Words::tell("{1}: {2} for {3} placements, {4} with the reserve.",
                                {ingredient, shown(needed), std::to_string(placements), shown(*line.amount)});
    if (is_spooned(work.dose->unit))
        if (const auto grams = grams_in(*line.amount, work.label.grams_per_millilitre))
            line.sentence +=
                " " + Words::tell("By weight {1} ({2}).",
                                  {shown(Quantity{*grams, AmountUnit::grams}),
                                   shown(*in_unit(Quantity{*grams, AmountUnit::grams}, AmountUnit::ounces, {}))});
    load.lines.push_back(std::move(line));
}

WorkTime time_of(const WorkOrder& work, const Standing& standing, const LoadOptions& options) {
    WorkTime time;
    time.level = options.level;
    if (standing.sets == 0) return time;
    Minutes sets;
    for (const auto& [id, count] : standing.sets_by_method) {
        const SetMinutes of_set = find_method(work, id)->minutes;
        sets.mean += of_set.mean * count;
        sets.variance += of_set.sd * of_set.sd * count;
    }
    const double tail = 0.5 * (1.0 - options.level);
    time.holes = standing.holes.mean();
    time.holes_low = standing.holes.quantile(tail);
    time.holes_high = standing.holes.quantile(1.0 - tail);
    time.minutes = sets.mean + options.minutes_a_hole * time.holes;
    time.low = time_quantile(standing.holes, sets, options.minutes_a_hole, tail);
    time.high = time_quantile(standing.holes, sets, options.minutes_a_hole, 1.0 - tail);
    time.assumption = Words::tell(
        "{1} minutes a hole; holes by each ladder's own chances, from the first rung to the one that finds the run or the "
        "last; minutes of each set about its method's mean; one ladder and set apart from another; without the way "
        "between them.",
        {figure(options.minutes_a_hole)});
    return time;
}

}  // namespace

WorkTime time_of_sets(const WorkOrder& work, const Plan& plan, const std::vector<std::size_t>& sets,
                      const LoadOptions& options) {
    return time_of(work, summed(work, plan, sets, options), options);
}

std::vector<double> holes_pushed(const ProbeSite& site, Metres tunnel_diameter) {
    const std::size_t rungs = site.rungs.size();
    if (rungs <= 1) return {1.0};
    std::vector<double> chance(rungs, 0.0);
    if (site.along_row.presence() > 0.0) {
        RowInHand row(site.along_row, tunnel_diameter);
        for (std::size_t r = 0; r < rungs; ++r) chance[r] = row.push(site.rungs[r]);
    } else {
        std::fill(chance.begin(), chance.end(), site.hit.value() / static_cast<double>(rungs));
    }
    double found = 0.0;
    for (const double each : chance) found += each;
    chance.back() += std::max(0.0, 1.0 - found);
    return chance;
}

Load what_to_load(const Survey& survey, const WorkOrder& work, const Plan& plan, UtcTime now, const LoadOptions& options) {
    const Standing standing = summed(work, plan, standing_sets(survey, plan, options), options);
    Load load;
    load.sets = standing.sets;
    load.without_method = standing.without_method;
    add_items(work, standing, now, options, load);
    add_amount(work, standing, options, load);
    load.time = time_of(work, standing, options);
    if (standing.without_method > 0)
        load.notices.push_back(standing.without_method == 1
                                   ? Words::tell("One set has no method yet: only its holes are counted.")
                                   : Words::tell("{1} sets have no method yet: only their holes are counted.",
                                                 {std::to_string(standing.without_method)}));
    return load;
}

}  // namespace plugside
