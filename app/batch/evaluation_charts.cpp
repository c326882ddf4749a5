#include "app/batch/evaluation_charts.h"

#include <algorithm>
#include <cmath>

#include "app/batch/formatted.h"
#include "app/batch/svg_chart.h"

namespace plugside {

namespace {

constexpr double chart_width = 640.0;
constexpr double foot = 56.0;  // of a chart of rows: axis and label
constexpr double row_height = 34.0;

ChartAxis chances(const std::string& label) { return {label, 0.0, 1.0, {0.0, 0.25, 0.5, 0.75, 1.0}, 2, {}}; }

std::string counted(const EvaluationGroup& group) {
    return group.name + formatted(" (%zu field%s)", group.fields.size(), group.fields.size() == 1 ? "" : "s");
}

ChartAxis kinds_axis(const std::vector<EvaluationGroup>& groups) {
    ChartAxis axis{"kind of field", 0.0, 1.0, {}, 0, {}};
    for (const EvaluationGroup& group : groups) axis.rows.push_back(counted(group));
    return axis;
}

// Round steps of 1, 2 or 5 times a power of ten, about `wanted` of them up to `to`.
std::vector<double> round_ticks(double to, int wanted) {
    const double rough = std::max(to, 1.0) / wanted;
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    const double step =
        power * (rough / power < 1.5 ? 1.0 : (rough / power < 3.5 ? 2.0 : (rough / power < 7.5 ? 5.0 : 10.0)));
    std::vector<double> ticks;
    for (int i = 0; i * step <= to + 1e-9; ++i) ticks.push_back(i * step);
    return ticks;
}

void dots_of_row(SvgChart& chart, const std::vector<double>& values, double row, double radius, const std::string& style) {
    double sum = 0.0;
    for (const double value : values) {
        chart.dot({value, row}, radius, style);
        sum += value;
    }
    if (values.empty()) return;
    const double mean = sum / static_cast<double>(values.size());
    chart.line({{mean, row - 0.24}, {mean, row + 0.24}}, style + " mean");
}

}  // namespace

std::string reliability_chart(const Calibration& calibration, const std::string& of, double size) {
    SvgChart chart("Reliability of " + of, chances("chance told"), chances("share that came true"), size, size);
    chart.line({{0.0, 0.0}, {1.0, 1.0}}, "quiet broken");
    if (calibration.claims == 0) {
        chart.note("no claim", 16.0);
        return chart.svg();
    }
    long largest = 0;
    for (const ReliabilityBin& bin : calibration.bins) largest = std::max(largest, bin.came_true.trials);
    std::vector<ChartPoint> points;
    for (const ReliabilityBin& bin : calibration.bins) {
        constexpr double tallest = 0.12;
        const double tall = tallest * static_cast<double>(bin.came_true.trials) / static_cast<double>(largest);
        chart.area({bin.mean_chance - 0.012, 0.0}, {bin.mean_chance + 0.012, tall}, "soil");
        points.push_back({bin.mean_chance, bin.came_true.value()});
    }
    chart.line(points, "run fine");
    for (const ReliabilityBin& bin : calibration.bins) {
        chart.upright(bin.mean_chance, bin.band.low, bin.band.high, "run");
        chart.dot(
            {bin.mean_chance, bin.came_true.value()}, 3.2, "run",
            formatted("%ld of %ld came true, told %.3f", bin.came_true.successes, bin.came_true.trials, bin.mean_chance));
    }
    chart.note(formatted("%zu claims", calibration.claims), 16.0);
    chart.note(formatted("error %.3f (%.3f by chance)", calibration.expected_error, calibration.error_of_perfect_claims),
               31.0);
    chart.note(formatted("bars: up to %ld a bin", largest), 46.0);
    return chart.svg();
}

std::string reach_chart(const EvaluationGroup& group, double size) {
    ChartAxis sets{"sets an animal, by rank", 0.0, reach_end, {0.0, 1.0, 2.0, 3.0}, 0, {}};
    SvgChart chart("Animals reached by sets, " + group.name, sets, chances("share of animals reached"), size, size);
    std::vector<ChartPoint> points;
    for (const ReachPoint& point : group.reach) points.push_back({point.sets_an_animal, point.reached});
    const double placed = share(group.totals.sets, group.totals.true_systems);
    chart.line({{0.0, 0.9}, {reach_end, 0.9}}, "quiet broken");
    chart.line(points, "run");
    const double reached = share(group.totals.reached, group.totals.true_systems);
    chart.line({{placed, std::min(0.34, reached)}, {placed, reached}}, "act broken");  // above the notes
    chart.dot({placed, reached}, 3.2, "act");
    chart.note_right(formatted("%.0f sets, %.0f animals", group.totals.sets, group.totals.true_systems), size - 96.0);
    chart.note_right(formatted("all sets: %.3f at %.2f", reached, placed), size - 81.0);
    chart.note_right(formatted("%zu fields", group.fields.size()), size - 66.0);
    return chart.svg();
}

std::string index_chart(const std::vector<EvaluationGroup>& groups) {
    ChartAxis x{"adjusted Rand index", 0.0, 1.0, {0.0, 0.2, 0.4, 0.6, 0.8, 1.0}, 1, {}};
    SvgChart chart("Index by kind", x, kinds_axis(groups), chart_width,
                   foot + row_height * static_cast<double>(groups.size()));
    for (std::size_t r = 0; r < groups.size(); ++r) {
        std::vector<double> ours;
        std::vector<double> yardstick;
        std::vector<double> reference;
        for (const FieldResult* field : groups[r].fields) {
            ours.push_back(field->score.adjusted_rand);
            yardstick.push_back(field->score.yardstick_adjusted_rand);
            if (field->reference) reference.push_back(field->reference->adjusted_rand);
        }
        const double row = static_cast<double>(r) + 0.5;
        dots_of_row(chart, yardstick, row + 0.2, 3.0, "hollow");
        dots_of_row(chart, reference, row, 2.6, "soil");
        dots_of_row(chart, ours, row - 0.2, 3.0, "run");
    }
    return chart.svg();
}

std::string count_chart(const std::vector<EvaluationGroup>& groups) {
    constexpr double most = 2.5;
    ChartAxis x{
        "expected over true number of systems (2.5 and more at the edge)", 0.0, most, {0.0, 0.5, 1.0, 1.5, 2.0, 2.5}, 1, {}};
    SvgChart chart("Count by kind", x, kinds_axis(groups), chart_width,
                   foot + row_height * static_cast<double>(groups.size()));
    const auto rows = static_cast<double>(groups.size());
    chart.area({0.9, 0.0}, {1.1, rows}, "corridor");
    chart.line({{1.0, 0.0}, {1.0, rows}}, "quiet broken");
    for (std::size_t r = 0; r < groups.size(); ++r) {
        std::vector<double> ratios;
        for (const FieldResult* field : groups[r].fields)
            ratios.push_back(share(field->score.expected_systems, static_cast<double>(field->score.true_systems)));
        dots_of_row(chart, ratios, static_cast<double>(r) + 0.5, 3.0, "run");
    }
    return chart.svg();
}

std::string interval_chart(const EvaluationGroup& all) {
    std::vector<const FieldResult*> by_truth = all.fields;
    std::stable_sort(by_truth.begin(), by_truth.end(), [](const FieldResult* a, const FieldResult* b) {
        return a->score.true_systems < b->score.true_systems;
    });
    double most = 1.0;
    for (const FieldResult* field : by_truth)
        most = std::max({most, static_cast<double>(field->score.high), static_cast<double>(field->score.true_systems)});
    const double edge = 1.25 * most;  // with room for the notes
    ChartAxis x{formatted("%zu fields, by their true number of systems", by_truth.size()),
                0.0,
                static_cast<double>(by_truth.size()) + 1.0,
                {},
                0,
                {}};
    ChartAxis y{"systems", 0.0, edge, round_ticks(edge, 6), 0, {}};
    constexpr double height = 380.0;
    SvgChart chart("Intervals of the number of systems", x, y, chart_width, height);
    std::size_t hold = 0;
    for (std::size_t i = 0; i < by_truth.size(); ++i) {
        const PlanScore& score = by_truth[i]->score;
        const bool holds = interval_holds(score);
        hold += holds ? 1U : 0U;
        const auto at = static_cast<double>(i) + 1.0;
        const std::string told = to_text(by_truth[i]->kind) + ", seed " + std::to_string(by_truth[i]->seed);
        chart.upright(at, score.low, score.high, holds ? "run" : "act broken");
        chart.dot({at, static_cast<double>(score.true_systems)}, 3.4, "hollow", told);
        chart.dot({at, score.expected_systems}, 2.6, holds ? "run" : "act", told);
    }
    chart.note(
        formatted("%zu of %zu intervals hold the true number; broken, in magenta: those that do not", hold, by_truth.size()),
        16.0);
    chart.note("hollow: the true number; filled: the expected one", 31.0);
    return chart.svg();
}

}  // namespace plugside
