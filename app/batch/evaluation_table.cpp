#include <array>
#include <cstdio>

#include "app/batch/evaluation.h"
#include "app/batch/sample_fields.h"

namespace plugside {

namespace {

template <typename... Values>
std::string formatted(const char* format, Values... values) {
    std::array<char, 512> text{};
    std::snprintf(text.data(), text.size(), format, values...);
    return text.data();
}

double share(double part, double whole) { return whole > 0.0 ? part / whole : 0.0; }

// Sums over fields; what is a mean a field is divided by `fields` when it is told.
struct Totals {
    double fields = 0.0;
    double marks = 0.0;
    double true_systems = 0.0;
    double expected = 0.0;
    double count_ratio = 0.0;
    double width = 0.0;
    double holds = 0.0;
    double index = 0.0;
    double yardstick = 0.0;
    double sets = 0.0;
    double reached = 0.0;
    double seconds = 0.0;
    LadderTally plug_side;
    LadderTally between_mounds;

    void add(const FieldResult& result) {
        const PlanScore& score = result.score;
        const auto truth = static_cast<double>(score.true_systems);
        fields += 1.0;
        marks += static_cast<double>(score.marks);
        true_systems += truth;
        expected += score.expected_systems;
        count_ratio += share(score.expected_systems, truth);
        width += share(score.high - score.low, truth);
        holds += result.interval_holds() ? 1.0 : 0.0;
        index += score.adjusted_rand;
        yardstick += score.yardstick_adjusted_rand;
        sets += static_cast<double>(score.sets);
        reached += static_cast<double>(score.animals_reached);
        seconds += result.seconds;
        plug_side += result.plug_side;
        between_mounds += result.between_mounds;
    }
};

std::string partition_line(const std::string& name, const Totals& t) {
    return formatted("%-24s %6.0f %6.0f %8.1f %9.1f %7.2f %7.2f %6.0f %7.3f %9.3f %+7.3f %8.2f\n", name.c_str(), t.fields,
                     share(t.marks, t.fields), share(t.true_systems, t.fields), share(t.expected, t.fields),
                     share(t.count_ratio, t.fields), share(t.width, t.fields), 100.0 * share(t.holds, t.fields),
                     share(t.index, t.fields), share(t.yardstick, t.fields), share(t.index - t.yardstick, t.fields),
                     share(t.seconds, t.fields));
}

std::string ladder_columns(const LadderTally& t) {
    return formatted(" %8.0f %7.3f %7.3f %7.2f %7.2f", t.count, share(t.claimed_hits, t.count), share(t.hits, t.count),
                     share(t.claimed_rungs, t.count), share(t.rungs, t.count));
}

std::string ladder_line(const std::string& name, const Totals& t) {
    return formatted("%-24s", name.c_str()) + ladder_columns(t.plug_side) + ladder_columns(t.between_mounds) +
           formatted(" %8.2f %8.3f\n", share(t.sets, t.true_systems), share(t.reached, t.true_systems));
}

std::string csv_ladder(const LadderTally& t) {
    return formatted(",%.0f,%.4f,%.4f,%.3f,%.3f", t.count, share(t.claimed_hits, t.count), share(t.hits, t.count),
                     share(t.claimed_rungs, t.count), share(t.rungs, t.count));
}

}  // namespace

std::string table_of(const std::vector<FieldResult>& results) {
    std::vector<std::pair<std::string, Totals>> lines;
    Totals all;
    for (const FieldKind kind : all_field_kinds()) {
        Totals totals;
        for (const FieldResult& result : results)
            if (result.kind == kind) totals.add(result);
        if (totals.fields > 0.0) lines.emplace_back(to_text(kind), totals);
    }
    for (const FieldResult& result : results) all.add(result);
    lines.emplace_back("all", all);

    std::string text = formatted("%-24s %6s %6s %8s %9s %7s %7s %6s %7s %9s %7s %8s\n", "systems", "fields", "marks", "true",
                                 "expected", "ratio", "width", "holds", "index", "yardstick", "gain", "seconds");
    for (const auto& [name, totals] : lines) text += partition_line(name, totals);
    text += formatted("\n%-24s %-40s %-40s\n", "ladders", "  plug side", "  between mounds");
    text += formatted("%-24s", "");
    for (int i = 0; i < 2; ++i) text += formatted(" %8s %7s %7s %7s %7s", "sites", "claim", "hit", "claim", "rungs");
    text += formatted(" %8s %8s\n", "sets", "reached");
    for (const auto& [name, totals] : lines) text += ladder_line(name, totals);
    text +=
        "\nmarks, true, expected, seconds: a field. ratio: expected over true. width: of the interval, over the true "
        "number.\n"
        "holds: intervals that hold the true number, in 100. index: adjusted Rand index. yardstick: that of DBSCAN with "
        "its\n"
        "radius tuned on the truth. sets: an animal. reached: share of animals with a set whose ladder meets their run.\n";
    return text;
}

std::string csv_of(const std::vector<FieldResult>& results) {
    std::string text =
        "kind,seed,marks,true_systems,plan_systems,expected_systems,low,high,interval_holds,adjusted_rand,"
        "yardstick_adjusted_rand,yardstick_systems,"
        "plug_side_sites,plug_side_claimed_hit,plug_side_hit,plug_side_claimed_rungs,plug_side_rungs,"
        "between_sites,between_claimed_hit,between_hit,between_claimed_rungs,between_rungs,"
        "sets,animals_reached,seconds\r\n";
    for (const FieldResult& result : results) {
        const PlanScore& score = result.score;
        text += word_of(result.kind) + "," + std::to_string(result.seed);
        text += formatted(",%zu,%zu,%zu,%.3f,%d,%d,%d,%.4f,%.4f,%zu", score.marks, score.true_systems, score.plan_systems,
                          score.expected_systems, score.low, score.high, result.interval_holds() ? 1 : 0,
                          score.adjusted_rand, score.yardstick_adjusted_rand, score.yardstick_systems);
        text += csv_ladder(result.plug_side) + csv_ladder(result.between_mounds);
        text += formatted(",%zu,%zu,%.3f\r\n", score.sets, score.animals_reached, result.seconds);
    }
    return text;
}

}  // namespace plugside
