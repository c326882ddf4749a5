#include "app/batch/evaluation_groups.h"

#include <algorithm>
#include <cmath>

namespace plugside {

namespace {

EvaluationGroup group_of(std::string name, std::vector<const FieldResult*> fields) {
    EvaluationGroup group;
    group.name = std::move(name);
    group.left_out = !fields.empty();
    PlanClaims claims;
    for (const FieldResult* field : fields) {
        group.totals.add(*field);
        group.left_out = group.left_out && field->kind_left_out;
        for (std::size_t kind = 0; kind < claim_kinds; ++kind)
            claims[kind].insert(claims[kind].end(), field->claims[kind].begin(), field->claims[kind].end());
    }
    for (std::size_t kind = 0; kind < claim_kinds; ++kind) group.calibration[kind] = calibration_of(std::move(claims[kind]));
    group.reach = reach_curve(fields);
    for (std::size_t q = 0; q < truth_rank_count; ++q) {
        std::vector<std::optional<double>> places;
        for (const FieldResult* field : fields) places.push_back(field->places[q]);
        group.truth_ranks.push_back(histogram_of_places(places));
    }
    group.fields = std::move(fields);
    return group;
}

std::string listed(const std::vector<std::string>& names) {
    std::string text;
    for (std::size_t i = 0; i < names.size(); ++i)
        text += (i == 0 ? "" : (i + 1 == names.size() ? " and " : ", ")) + names[i];
    return text;
}

}  // namespace

double share(double part, double whole) { return whole > 0.0 ? part / whole : 0.0; }

std::optional<double> shortfall_ratio(const PlanScore& score) {
    if (score.yardstick_adjusted_rand >= 1.0) return std::nullopt;
    return (1.0 - score.adjusted_rand) / (1.0 - score.yardstick_adjusted_rand);
}

std::optional<double> width_outside_crowded(const EvaluationGroup& group) {
    Totals open;
    for (const FieldResult* field : group.fields)
        if (!is_crowded(field->kind)) open.add(*field);
    if (open.fields == 0.0 || open.fields == group.totals.fields) return std::nullopt;
    return open.mean(open.width);
}

void Totals::add(const FieldResult& result) {
    const PlanScore& score = result.score;
    const auto truth = static_cast<double>(score.true_systems);
    fields += 1.0;
    marks += static_cast<double>(score.marks);
    true_systems += truth;
    expected += score.expected_systems;
    count_ratio += share(score.expected_systems, truth);
    width += share(score.high - score.low, truth);
    holds += interval_holds(score) ? 1.0 : 0.0;
    index += score.adjusted_rand;
    yardstick += score.yardstick_adjusted_rand;
    yardstick_count_ratio += share(static_cast<double>(score.yardstick_systems), truth);
    if (const auto ratio = shortfall_ratio(score)) {
        shortfall_ratios += *ratio;
        fields_with_shortfall += 1.0;
    }
    if (result.reference) {
        with_reference += 1.0;
        reference_index += result.reference->adjusted_rand;
        reference_count_ratio += share(result.reference->expected_systems, truth);
        reference_holds += interval_holds(*result.reference) ? 1.0 : 0.0;
    }
    sets += static_cast<double>(score.sets);
    reached += static_cast<double>(score.animals_reached);
    seconds += result.seconds;
    plug_side += result.plug_side;
    between_mounds += result.between_mounds;
}

double Totals::mean(double sum) const { return share(sum, fields); }

double Totals::shortfall_of_means() const { return share(1.0 - mean(index), 1.0 - mean(yardstick)); }

double Totals::mean_shortfall() const { return share(shortfall_ratios, fields_with_shortfall); }

std::vector<ReachPoint> reach_curve(const std::vector<const FieldResult*>& fields) {
    constexpr int steps_an_animal = 10;
    std::vector<ReachPoint> curve;
    for (int step = 0; step <= static_cast<int>(reach_end) * steps_an_animal; ++step) {
        double reached = 0.0;
        double animals = 0.0;
        for (const FieldResult* field : fields) {
            const std::vector<std::size_t>& by_sets = field->score.reached_by_sets;
            animals += static_cast<double>(field->score.true_systems);
            if (by_sets.empty()) continue;
            const std::size_t sets = field->score.true_systems * static_cast<std::size_t>(step) / steps_an_animal;
            reached += static_cast<double>(by_sets[std::min(sets, by_sets.size() - 1)]);
        }
        curve.push_back({static_cast<double>(step) / steps_an_animal, share(reached, animals)});
    }
    return curve;
}

std::vector<EvaluationGroup> groups_of(const std::vector<FieldResult>& results) {
    std::vector<EvaluationGroup> groups;
    std::vector<const FieldResult*> all;
    for (const FieldKind kind : all_field_kinds()) {
        std::vector<const FieldResult*> fields;
        for (const FieldResult& result : results)
            if (result.kind == kind) fields.push_back(&result);
        all.insert(all.end(), fields.begin(), fields.end());
        if (!fields.empty()) groups.push_back(group_of(to_text(kind), std::move(fields)));
    }
    groups.push_back(group_of("all", std::move(all)));
    groups.back().is_all = true;
    return groups;
}

std::string tuning_sentence(const std::vector<EvaluationGroup>& groups) {
    std::vector<std::string> left_out;
    std::vector<std::string> tuned;
    for (const EvaluationGroup& group : groups)
        if (!group.is_all) (group.left_out ? left_out : tuned).push_back(group.name);
    if (left_out.empty())
        return "No kind was left out of tuning: the weights were learnt on fields of each of these kinds, too.";
    const std::string out =
        "Left out of tuning, each planned with weights learnt without its own generator: " + listed(left_out);
    return tuned.empty() ? out + ", which is every kind tested." : out + ". Not left out: " + listed(tuned) + ".";
}

}  // namespace plugside
