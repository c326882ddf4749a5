// Learns what surveys like those that the inference was built for look like (core/systems/survey_likeness.h), and measures how often
// an ordinary field is called unlike.
//
// Use:     learn_likeness OUT.tsv FIRST_SEED FIELDS [VALUES.tsv]      FIELDS of each size, spread evenly over the kinds
// Scale:   spreads are reckoned on each value's own scale (to_likeness_scale); limits are held within what the value can be.
// Learnt:  fields with seeds from FIRST_SEED on. Of each value the middle is the median; its limits lie `reach` times as far out on
//          each side as the 2 and 98 in 100 quantiles. `reach` is common to all values and sizes: such that 5 in 1,000 fields lie
//          outside some limit. The whole is limited such that 5 in 1,000 more lie beyond it.
// Checked: as many fields with seeds from FIRST_SEED + 100,000 on: with limits learnt on all kinds, and those of each kind with
//          limits learnt on the other six. The table goes to the terminal and into the head of OUT.tsv.
// VALUES:  what was computed, a row a field, for looking at.
#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <iostream>
#include <vector>

#include "core/plan/make_plan.h"
#include "core/simulation/burrow_simulator.h"
#include "core/systems/link_weights.h"
#include "core/systems/marks.h"
#include "core/systems/survey_likeness.h"

namespace {

using namespace plugside;

struct Size {
    std::size_t fewest = 0;  // marks wanted
    std::size_t most = 0;
};
constexpr std::array<Size, 3> sizes{{{40, 90}, {90, 180}, {180, 400}}};

struct Field {
    FieldKind kind = FieldKind::meander;
    std::uint64_t seed = 0;
    std::size_t size = 0;  // index into sizes
    std::size_t marks = 0;
    LikenessValues values{};
};
using Fields = std::vector<Field>;

std::optional<Field> field_of(FieldKind kind, std::uint64_t seed, std::size_t size) {
    SimulationOptions wanted;
    wanted.kind = kind;
    wanted.seed = seed;
    wanted.with_ground = seed % 3 == 0;
    const Size& span = sizes.at(size);
    constexpr std::uint64_t stride = 7919;  // a prime: sizes do not come in order
    wanted.mounds_wanted = span.fewest + seed * stride % (span.most - span.fewest + 1);
    const SimulatedField field = simulate_field(wanted);
    std::vector<Mark> marks = marks_of(field.survey, {});
    if (seed % 4 == 3)
        for (Mark& mark : marks) mark.time.reset();
    const std::vector<Link> links = candidate_links(marks, field.survey.ground.barriers);
    const SurveyScales scales = fit_scales(marks, links);
    const auto features = link_features(marks, links, scales, PlanOptions{}.fan_sd_degrees);
    const LinkScores scores = scores_of(marks, links, features, learnt_link_weights());
    const auto values =
        likeness_values(marks, links, scores, field_summary(marks, links, features, scores.log_weight, scales));
    if (!values) return std::nullopt;
    return Field{kind, seed, size, marks.size(), *values};
}

Fields fields_from(std::uint64_t first_seed, std::size_t count) {
    const std::vector<FieldKind> kinds = all_field_kinds();
    Fields fields;
    for (std::size_t size = 0; size < sizes.size(); ++size)
        for (std::size_t i = 0; i < count; ++i)
            if (const auto field = field_of(kinds[i % kinds.size()], first_seed + size * 10'000 + i / kinds.size(), size))
                fields.push_back(*field);
    return fields;
}

double quantile(std::vector<double> values, double share) {
    const auto at = values.begin() + static_cast<std::ptrdiff_t>(share * static_cast<double>(values.size() - 1) + 0.5);
    std::nth_element(values.begin(), at, values.end());
    return *at;
}

LikenessValues scaled(const LikenessValues& values) {
    LikenessValues on_scale{};
    for (std::size_t k = 0; k < likeness_value_count; ++k) on_scale[k] = to_likeness_scale(k, values[k]);
    return on_scale;
}

LikenessValues unscaled(const LikenessValues& on_scale) {
    LikenessValues values{};
    for (std::size_t k = 0; k < likeness_value_count; ++k) values[k] = from_likeness_scale(k, on_scale[k]);
    return values;
}

// What a value can be.
std::pair<double, double> possible(std::size_t k) {
    const std::string_view name = likeness_value_names().at(k);
    if (name == "fans_agree" || name == "straightness") return {-1.0, 1.0};
    if (name == "fans_read" || name == "along_fans" || name == "loners" || name == "undecided") return {0.0, 1.0};
    return {0.0, 1e9};
}

// Middle, the 2 and 98 in 100 quantiles as limits, and the whitening, of the fields of one size.
LikenessLimits shape_of(const Fields& fields, std::size_t size) {
    LikenessLimits limits;
    limits.most_marks = sizes.at(size).most;
    std::vector<LikenessValues> rows;
    for (const Field& field : fields)
        if (field.size == size) rows.push_back(scaled(field.values));
    Eigen::MatrixXd deviations(static_cast<Eigen::Index>(rows.size()), static_cast<Eigen::Index>(likeness_value_count));
    for (std::size_t k = 0; k < likeness_value_count; ++k) {
        std::vector<double> column;
        for (const LikenessValues& row : rows) column.push_back(row[k]);
        limits.low[k] = quantile(column, 0.02);
        limits.middle[k] = quantile(column, 0.5);
        limits.high[k] = quantile(column, 0.98);
        for (std::size_t r = 0; r < rows.size(); ++r)
            deviations(static_cast<Eigen::Index>(r), static_cast<Eigen::Index>(k)) = rows[r][k] - limits.middle[k];
    }
    const Eigen::MatrixXd covariance = deviations.transpose() * deviations / static_cast<double>(rows.size());
    const Eigen::MatrixXd lower = covariance.llt().matrixL();
    const Eigen::MatrixXd whitening = lower.triangularView<Eigen::Lower>().solve(
        Eigen::MatrixXd::Identity(static_cast<Eigen::Index>(likeness_value_count), static_cast<Eigen::Index>(likeness_value_count)));
    for (std::size_t r = 0; r < likeness_value_count; ++r)
        for (std::size_t k = 0; k < likeness_value_count; ++k)
            limits.whitening[r][k] = whitening(static_cast<Eigen::Index>(r), static_cast<Eigen::Index>(k));
    limits.low = unscaled(limits.low);
    limits.middle = unscaled(limits.middle);
    limits.high = unscaled(limits.high);
    return limits;
}

// How far out the farthest value lies, in units of the way from the middle to its limit.
double farthest(const LikenessValues& values, const LikenessLimits& limits) {
    double most = 0.0;
    for (std::size_t k = 0; k < likeness_value_count; ++k) {
        const double middle = to_likeness_scale(k, limits.middle[k]);
        const double off = to_likeness_scale(k, values[k]) - middle;
        const double way = to_likeness_scale(k, off > 0.0 ? limits.high[k] : limits.low[k]) - middle;
        if (std::abs(way) > 1e-9) most = std::max(most, off / way);
    }
    return most;
}

std::vector<LikenessLimits> learn(const Fields& fields) {
    constexpr double outside_share = 0.005;
    std::vector<LikenessLimits> all;
    for (std::size_t size = 0; size < sizes.size(); ++size) all.push_back(shape_of(fields, size));
    std::vector<double> reaches, wholes;
    for (const Field& field : fields) {
        reaches.push_back(farthest(field.values, all.at(field.size)));
        wholes.push_back(distance_from_middle(field.values, all.at(field.size)));
    }
    const double reach = quantile(reaches, 1.0 - outside_share);
    std::vector<double> wholes_inside;
    for (std::size_t i = 0; i < fields.size(); ++i)
        if (reaches[i] <= reach) wholes_inside.push_back(wholes[i]);
    const double whole = quantile(wholes_inside, 1.0 - outside_share);
    for (LikenessLimits& limits : all) {
        limits.whole = whole;
        for (std::size_t k = 0; k < likeness_value_count; ++k) {
            const double middle = to_likeness_scale(k, limits.middle[k]);
            const auto moved_out = [&](double limit) {
                const double out = middle + reach * (to_likeness_scale(k, limit) - middle);
                return std::clamp(from_likeness_scale(k, out), possible(k).first, possible(k).second);
            };
            limits.low[k] = moved_out(limits.low[k]);
            limits.high[k] = moved_out(limits.high[k]);
        }
    }
    return all;
}

struct Tally {
    std::size_t fields = 0;
    std::size_t unlike = 0;
};

Tally told_unlike(const Fields& fields, FieldKind kind, const std::vector<LikenessLimits>& limits) {
    Tally tally;
    for (const Field& field : fields) {
        if (field.kind != kind) continue;
        ++tally.fields;
        if (!unlike_sentences(field.values, field.marks, limits).empty()) ++tally.unlike;
    }
    return tally;
}

std::string checked(const Fields& fields, const Fields& others, const std::vector<LikenessLimits>& limits) {
    std::string text = "# told unlike, of so many fresh fields: with all kinds learnt; with the kind left out\n";
    Tally all, all_left_out;
    for (const FieldKind kind : all_field_kinds()) {
        Fields without;
        std::copy_if(fields.begin(), fields.end(), std::back_inserter(without), [&](const Field& f) { return f.kind != kind; });
        const Tally here = told_unlike(others, kind, limits);
        const Tally left_out = told_unlike(others, kind, learn(without));
        text += "#   " + to_text(kind) + ": " + std::to_string(here.unlike) + "; " + std::to_string(left_out.unlike) + " of " +
                std::to_string(here.fields) + "\n";
        all.fields += here.fields;
        all.unlike += here.unlike;
        all_left_out.unlike += left_out.unlike;
    }
    return text + "#   all: " + std::to_string(all.unlike) + "; " + std::to_string(all_left_out.unlike) + " of " +
           std::to_string(all.fields) + "\n";
}

void write_values(const char* name, const Fields& fields) {
    std::ofstream out(name);
    out << "kind\tseed\tsize\tmarks";
    for (const std::string_view value : likeness_value_names()) out << '\t' << value;
    out << '\n';
    for (const Field& field : fields) {
        out << to_text(field.kind) << '\t' << field.seed << '\t' << field.size << '\t' << field.marks;
        for (const double value : field.values) out << '\t' << value;
        out << '\n';
    }
}

}  // namespace

int main(int argc, char** argv) {
    if (argc < 4 || argc > 5) {
        std::cerr << "learn_likeness OUT.tsv FIRST_SEED FIELDS [VALUES.tsv]\n";
        return 2;
    }
    const std::uint64_t first = std::strtoull(argv[2], nullptr, 10);
    const std::size_t count = std::strtoull(argv[3], nullptr, 10);
    const Fields fields = fields_from(first, count);
    if (argc == 5) write_values(argv[4], fields);
    const Fields others = fields_from(first + 100'000, count);
    const std::vector<LikenessLimits> limits = learn(fields);
    std::ofstream out(argv[1]);
    out << "# What surveys of made-up fields look like (core/systems/survey_likeness.h), learnt by tests/training/learn_likeness.\n"
        << "# Fields: " << fields.size() << ", seeds from " << first << " on, all kinds, 40 to 400 mounds; a third with ground, a quarter\n"
        << "# without times. Of each value: low limit, middle, high limit.\n"
        << checked(fields, others, limits) << to_text(limits);
    std::cout << checked(fields, others, limits);
    return out ? 0 : 3;
}
