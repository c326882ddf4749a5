// The results of an evaluation in letters and numbers: a table for reading, a CSV for reckoning on.
#include <cmath>

#include "app/batch/evaluation_groups.h"
#include "app/batch/formatted.h"
#include "app/batch/sample_fields.h"

namespace plugside {

namespace {

using Groups = std::vector<EvaluationGroup>;

std::string systems_table(const Groups& groups) {
    std::string text =
        formatted("%-24s %6s %6s %7s %9s %6s %6s %6s %6s %10s %6s %6s %8s  %s\n", "systems", "fields", "marks", "true",
                  "expected", "ratio", "width", "holds", "index", "yardstick", "gain", "short", "seconds", "tuning");
    for (const EvaluationGroup& group : groups) {
        const Totals& t = group.totals;
        text += formatted("%-24s %6.0f %6.0f %7.1f %9.1f %6.2f %6.2f %6.0f %6.3f %10.3f %+6.3f %6.2f %8.2f  %s\n",
                          group.name.c_str(), t.fields, t.mean(t.marks), t.mean(t.true_systems), t.mean(t.expected),
                          t.mean(t.count_ratio), t.mean(t.width), 100.0 * t.mean(t.holds), t.mean(t.index),
                          t.mean(t.yardstick), t.mean(t.index - t.yardstick), t.shortfall_of_means(), t.mean(t.seconds),
                          group.is_all ? "" : (group.left_out ? "left out" : "tuned on"));
    }
    if (const auto width = width_outside_crowded(groups.back()))
        text += formatted("%-24s%46.2f\n", "all but crowded", *width);
    return text;
}

std::string reference_table(const Groups& groups) {
    if (groups.back().totals.with_reference == 0.0) return "";
    std::string text = formatted("\n%-24s %6s %6s %6s\n", "reference form", "ratio", "holds", "index");
    for (const EvaluationGroup& group : groups) {
        const Totals& t = group.totals;
        text += formatted("%-24s %6.2f %6.0f %6.3f\n", group.name.c_str(), share(t.reference_count_ratio, t.with_reference),
                          100.0 * share(t.reference_holds, t.with_reference), share(t.reference_index, t.with_reference));
    }
    return text;
}

std::string ladder_columns(const LadderTally& t) {
    return formatted(" %8.0f %7.3f %7.3f %7.2f %7.2f", t.count, share(t.claimed_hits, t.count), share(t.hits, t.count),
                     share(t.claimed_rungs, t.count), share(t.rungs, t.count));
}

std::string ladder_table(const Groups& groups) {
    std::string text = formatted("\n%-24s %-40s %-40s\n%-24s", "ladders", "  plug side", "  between mounds", "");
    for (int i = 0; i < 2; ++i) text += formatted(" %8s %7s %7s %7s %7s", "sites", "claim", "hit", "claim", "rungs");
    text += formatted(" %8s %8s\n", "sets", "reached");
    for (const EvaluationGroup& group : groups) {
        const Totals& t = group.totals;
        text += formatted("%-24s", group.name.c_str()) + ladder_columns(t.plug_side) + ladder_columns(t.between_mounds) +
                formatted(" %8.2f %8.3f\n", share(t.sets, t.true_systems), share(t.reached, t.true_systems));
    }
    return text;
}

std::string error_table(const Groups& groups) {
    std::string text = formatted("\n%-24s", "calibration error");
    for (const char* name : {"links", "runs", "pairs", "plug side", "between", "systems", "belongs"})
        text += formatted(" %9s", name);
    text += "\n";
    for (const EvaluationGroup& group : groups) {
        text += formatted("%-24s", group.name.c_str());
        for (const Calibration& c : group.calibration)
            text += c.claims > 0 ? formatted(" %9.3f", c.expected_error) : formatted(" %9s", "-");
        text += "\n";
    }
    return text;
}

std::string score_line(const char* name, const ScoreParts& parts) {
    return formatted("   %-6s %7.4f = %7.4f - %7.4f + %7.4f %+8.4f", name, parts.score, parts.reliability, parts.resolution,
                     parts.uncertainty, parts.within);
}

std::string scores_table(const EvaluationGroup& all) {
    std::string text = formatted("\n%-24s %9s %7s %7s\n", "scores over all fields", "claims", "claim", "true");
    for (std::size_t kind = 0; kind < claim_kinds; ++kind) {
        const Calibration& c = all.calibration[kind];
        text += formatted("%-24s %9zu %7.3f %7.3f", std::string(to_text(static_cast<ClaimKind>(kind))).c_str(), c.claims,
                          c.mean_chance, c.share_true) +
                score_line("Brier", c.brier) + score_line("log", c.log) + "\n";
    }
    return text;
}

std::string ranks_table(const EvaluationGroup& all) {
    std::string text = formatted("\n%-24s", "truth among draws");
    for (std::size_t bin = 0; bin < truth_rank_bins; ++bin)
        text += formatted(" %4.1f", static_cast<double>(bin) / static_cast<double>(truth_rank_bins));
    text += formatted(" %11s %8s\n", "chi-square", "p");
    for (std::size_t q = 0; q < truth_rank_count; ++q) {
        const RankHistogram& ranks = all.truth_ranks[q];
        text += formatted("%-24s", std::string(truth_rank_names[q]).c_str());
        for (const std::size_t count : ranks.counts()) text += formatted(" %4zu", count);
        const auto evenness = ranks.evenness();
        text += formatted(" %11.1f %8.4f\n", evenness.statistic, evenness.p_value);
    }
    return text;
}

std::string csv_ladder(const LadderTally& t) {
    return formatted(",%.0f,%.4f,%.4f,%.3f,%.3f", t.count, share(t.claimed_hits, t.count), share(t.hits, t.count),
                     share(t.claimed_rungs, t.count), share(t.rungs, t.count));
}

std::string csv_reference(const std::optional<PlanScore>& reference) {
    if (!reference) return ",,,,";
    return formatted(",%.4f,%.3f,%d,%d", reference->adjusted_rand, reference->expected_systems, reference->low,
                     reference->high);
}

std::string csv_claims(const PlanClaims& claims) {
    std::string text;
    for (const std::vector<Claim>& of_kind : claims) {
        const Calibration c = calibration_of(of_kind);
        text += c.claims == 0 ? ",0,,,,,"
                              : formatted(",%zu,%.4f,%.4f,%.4f,%.5f,%.5f", c.claims, c.mean_chance, c.share_true,
                                          c.expected_error, c.brier.score, c.log.score);
    }
    return text;
}

std::string csv_head() {
    std::string text =
        "kind,seed,marks,true_systems,plan_systems,expected_systems,low,high,interval_holds,adjusted_rand,"
        "yardstick_adjusted_rand,yardstick_systems,"
        "plug_side_sites,plug_side_claimed_hit,plug_side_hit,plug_side_claimed_rungs,plug_side_rungs,"
        "between_sites,between_claimed_hit,between_hit,between_claimed_rungs,between_rungs,"
        "sets,animals_reached,seconds,kind_left_out_of_tuning,shortfall_ratio,"
        "reference_adjusted_rand,reference_expected_systems,reference_low,reference_high";
    text += ",true_systems_place,true_pairs_place";
    for (const char* name : {"links", "runs", "pairs", "plug_side", "between", "systems", "belongs"})
        for (const char* figure : {"claims", "mean_chance", "came_true", "calibration_error", "brier", "log"})
            text += formatted(",%s_%s", name, figure);
    return text + "\r\n";
}

}  // namespace

std::string table_of(const std::vector<FieldResult>& results) {
    const Groups groups = groups_of(results);
    return systems_table(groups) + reference_table(groups) + ladder_table(groups) + error_table(groups) +
           scores_table(groups.back()) + ranks_table(groups.back()) + "\n" + tuning_sentence(groups) +
           "\n"
           "marks, true, expected, seconds: a field. ratio: expected over true. width: of the interval, over the true "
           "number.\n"
           "holds: intervals that hold the true number, in 100. index: adjusted Rand index. yardstick: that of DBSCAN with "
           "its\n"
           "radius tuned on the truth. short: (1 - index) / (1 - yardstick), of the means. sets: an animal, with two sets a "
           "system.\n"
           "reached: share of animals with a set whose ladder meets their run. calibration error: expected, over 10 bins of "
           "equal\n"
           "count. scores: reliability - resolution + uncertainty, and what lies within the bins; log in natural units.\n"
           "truth among draws: fields by the place of the true number among the drawn ones; even if they are what they say.\n";
}

std::string csv_of(const std::vector<FieldResult>& results) {
    std::string text = csv_head();
    for (const FieldResult& result : results) {
        const PlanScore& score = result.score;
        text += word_of(result.kind) + "," + std::to_string(result.seed);
        text += formatted(",%zu,%zu,%zu,%.3f,%d,%d,%d,%.4f,%.4f,%zu", score.marks, score.true_systems, score.plan_systems,
                          score.expected_systems, score.low, score.high, interval_holds(score) ? 1 : 0, score.adjusted_rand,
                          score.yardstick_adjusted_rand, score.yardstick_systems);
        text += csv_ladder(result.plug_side) + csv_ladder(result.between_mounds);
        text +=
            formatted(",%zu,%zu,%.3f,%d", score.sets, score.animals_reached, result.seconds, result.kind_left_out ? 1 : 0);
        const auto ratio = shortfall_ratio(score);
        text += ratio ? formatted(",%.4f", *ratio) : std::string(",");
        text += csv_reference(result.reference);
        for (const std::optional<double>& place : result.places) text += place ? formatted(",%.4f", *place) : std::string(",");
        text += csv_claims(result.claims) + "\r\n";
    }
    return text;
}

}  // namespace plugside
