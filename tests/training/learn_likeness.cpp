// Learns what surveys like those that the inference was built for look like (core/systems/survey_likeness.h), and measures
// how often an ordinary field is called unlike.
//
// Use:     learn_likeness OUT.tsv FIRST_SEED FIELDS [VALUES.tsv]      FIELDS of each size, spread evenly over the kinds
// Scale:   spreads are reckoned on each value's own scale (to_likeness_scale); limits are held within what the value can be.
// Learnt:  fields with seeds from FIRST_SEED on. Of each value the middle is the median; how far out a field lies is told
//          in units of the 2 and 98 in 100 quantiles; the limits are the value's own .99 quantile of that, times a factor
//          common to all, such that 4 in 1,000 fields lie outside some limit. Each contrast and the whole is limited such
//          that 3 in 1,000 lie beyond.
// Contrasts: of every fourth field twins are made, one with fans at random, one with places (as close as the field's own)
//          and fans at random, without times.
// Checked: as many fields with seeds from FIRST_SEED + 100,000 on: with limits learnt on all kinds, and those of each
//          kind with limits learnt on the other six. The table goes to the terminal and into the head of OUT.tsv.
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
#include "core/simulation/random.h"
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

enum class Twin { itself, fans_at_random, places_at_random };

// Fans at random; places, too, as close to one another as the field's own.
void make_twin(Survey& survey, Twin twin, std::uint64_t seed) {
    Random random(seed, 0x7477696E);
    const std::vector<Mark> marks = marks_of(survey, {});
    double nearest_sum_m = 0.0;
    for (const Mark& mark : marks) {
        double nearest = 25.0;
        for (const Mark& other : marks)
            if (&other != &mark) nearest = std::min(nearest, distance_m(mark.plug, other.plug));
        nearest_sum_m += nearest;
    }
    // complete spatial randomness: mean nearest distance = 1 / (2 sqrt(intensity)), Clark & Evans 1954
    const double side_m = 2.0 * nearest_sum_m / std::sqrt(static_cast<double>(std::max<std::size_t>(marks.size(), 1)));
    for (Mound& mound : survey.mounds) {
        if (mound.fan) mound.fan = Bearing::degrees(random.uniform(0.0, 360.0));
        if (twin != Twin::places_at_random) continue;
        mound.plug = {random.uniform(0.0, side_m), random.uniform(0.0, side_m)};
        mound.time.reset();
    }
    if (twin == Twin::places_at_random) survey.ground = {};
}

std::optional<Field> field_of(FieldKind kind, std::uint64_t seed, std::size_t size, Twin twin = Twin::itself) {
    SimulationOptions wanted;
    wanted.kind = kind;
    wanted.seed = seed;
    wanted.with_ground = seed % 3 == 0;
    const Size& span = sizes.at(size);
    constexpr std::uint64_t stride = 7919;  // a prime: sizes do not come in order
    wanted.mounds_wanted = span.fewest + seed * stride % (span.most - span.fewest + 1);
    SimulatedField field = simulate_field(wanted);
    if (twin != Twin::itself) make_twin(field.survey, twin, seed);
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
    const Eigen::MatrixXd whitening = lower.triangularView<Eigen::Lower>().solve(Eigen::MatrixXd::Identity(
        static_cast<Eigen::Index>(likeness_value_count), static_cast<Eigen::Index>(likeness_value_count)));
    for (std::size_t r = 0; r < likeness_value_count; ++r)
        for (std::size_t k = 0; k < likeness_value_count; ++k)
            limits.whitening[r][k] = whitening(static_cast<Eigen::Index>(r), static_cast<Eigen::Index>(k));
    limits.low = unscaled(limits.low);
    limits.middle = unscaled(limits.middle);
    limits.high = unscaled(limits.high);
    return limits;
}

// How far out a value lies, in units of the way from the middle to its limit.
double how_far_out(const LikenessValues& values, const LikenessLimits& limits, std::size_t k) {
    const double middle = to_likeness_scale(k, limits.middle[k]);
    const double off = to_likeness_scale(k, values[k]) - middle;
    const double way = to_likeness_scale(k, off > 0.0 ? limits.high[k] : limits.low[k]) - middle;
    return std::abs(way) > 1e-9 ? off / way : 0.0;
}

Fields twins_of(const Fields& fields, Twin twin) {
    Fields twins;
    for (std::size_t i = 0; i < fields.size(); i += 4)
        if (const auto field = field_of(fields[i].kind, fields[i].seed, fields[i].size, twin)) twins.push_back(*field);
    return twins;
}

constexpr double beyond_share = 0.003;

// Fisher's discriminant of the fields of one size and their twins.
LikenessLimits::Contrast contrast_with(const Fields& fields, const Fields& twins, std::size_t size,
                                       const LikenessLimits& limits) {
    constexpr std::array<std::string_view, 4> used{"along_fans", "fans_agree", "straightness", "undecided"};
    std::vector<std::size_t> index;
    for (const std::string_view name : used)
        index.push_back(static_cast<std::size_t>(
            std::find(likeness_value_names().begin(), likeness_value_names().end(), name) - likeness_value_names().begin()));
    const auto matrix = [&](const Fields& of) {
        std::vector<LikenessValues> rows;
        for (const Field& field : of)
            if (field.size == size) rows.push_back(scaled(field.values));
        Eigen::MatrixXd all(static_cast<Eigen::Index>(rows.size()), static_cast<Eigen::Index>(used.size()));
        for (std::size_t r = 0; r < rows.size(); ++r)
            for (std::size_t c = 0; c < used.size(); ++c)
                all(static_cast<Eigen::Index>(r), static_cast<Eigen::Index>(c)) = rows[r].at(index[c]);
        return all;
    };
    const auto covariance = [](const Eigen::MatrixXd& all) {
        const Eigen::MatrixXd off = all.rowwise() - all.colwise().mean();
        return Eigen::MatrixXd(off.transpose() * off / static_cast<double>(all.rows()));
    };
    const Eigen::MatrixXd own = matrix(fields), other = matrix(twins);
    const Eigen::VectorXd apart = (other.colwise().mean() - own.colwise().mean()).transpose();
    const Eigen::VectorXd weight = (covariance(own) + covariance(other)).ldlt().solve(apart);
    LikenessLimits::Contrast contrast;
    for (std::size_t c = 0; c < used.size(); ++c) contrast.weight.at(index[c]) = weight(static_cast<Eigen::Index>(c));
    std::vector<double> sums;
    for (const Field& field : fields)
        if (field.size == size) sums.push_back(contrast_of(field.values, limits, contrast));
    contrast.most = quantile(sums, 1.0 - beyond_share);
    return contrast;
}

struct Lessons {
    Fields fields, fans_at_random, places_at_random;

    [[nodiscard]] Lessons without(FieldKind kind) const {
        Lessons rest = *this;
        for (Fields* of : {&rest.fields, &rest.fans_at_random, &rest.places_at_random})
            std::erase_if(*of, [&](const Field& field) { return field.kind == kind; });
        return rest;
    }
};

Lessons lessons_from(std::uint64_t first_seed, std::size_t count) {
    Lessons lessons;
    lessons.fields = fields_from(first_seed, count);
    lessons.fans_at_random = twins_of(lessons.fields, Twin::fans_at_random);
    lessons.places_at_random = twins_of(lessons.fields, Twin::places_at_random);
    return lessons;
}

std::vector<LikenessLimits> learn(const Lessons& lessons) {
    const Fields& fields = lessons.fields;
    constexpr double outside_share = 0.004;
    std::vector<LikenessLimits> all;
    for (std::size_t size = 0; size < sizes.size(); ++size) all.push_back(shape_of(fields, size));
    LikenessValues reach{};  // of each value
    for (std::size_t k = 0; k < likeness_value_count; ++k) {
        std::vector<double> outs;
        for (const Field& field : fields) outs.push_back(how_far_out(field.values, all.at(field.size), k));
        reach[k] = quantile(outs, 0.99);
    }
    std::vector<double> farthest, wholes;
    for (const Field& field : fields) {
        double most = 0.0;
        for (std::size_t k = 0; k < likeness_value_count; ++k)
            most = std::max(most, how_far_out(field.values, all.at(field.size), k) / reach[k]);
        farthest.push_back(most);
        wholes.push_back(distance_from_middle(field.values, all.at(field.size)));
    }
    const double factor = quantile(farthest, 1.0 - outside_share);
    for (double& of_value : reach) of_value *= factor;
    const double whole = quantile(wholes, 1.0 - beyond_share);
    for (std::size_t size = 0; size < sizes.size(); ++size) {
        LikenessLimits& limits = all[size];
        limits.whole = whole;
        limits.fans_at_random = contrast_with(fields, lessons.fans_at_random, size, limits);
        limits.places_at_random = contrast_with(fields, lessons.places_at_random, size, limits);
        for (std::size_t k = 0; k < likeness_value_count; ++k) {
            const double middle = to_likeness_scale(k, limits.middle[k]);
            const auto moved_out = [&](double limit) {
                const double out = middle + reach[k] * (to_likeness_scale(k, limit) - middle);
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

std::size_t told_unlike(const Fields& fields, std::size_t size, const std::vector<LikenessLimits>& limits) {
    return static_cast<std::size_t>(std::count_if(fields.begin(), fields.end(), [&](const Field& field) {
        return field.size == size && !unlike_sentences(field.values, field.marks, limits).empty();
    }));
}

std::string checked(const Lessons& lessons, const Lessons& checks, const std::vector<LikenessLimits>& limits) {
    const Fields& others = checks.fields;
    std::string text = "# told unlike, of so many fresh fields: with all kinds learnt; with the kind left out\n";
    Tally all, all_left_out;
    for (const FieldKind kind : all_field_kinds()) {
        const Tally here = told_unlike(others, kind, limits);
        const Tally left_out = told_unlike(others, kind, learn(lessons.without(kind)));
        text += "#   " + to_text(kind) + ": " + std::to_string(here.unlike) + "; " + std::to_string(left_out.unlike) +
                " of " + std::to_string(here.fields) + "\n";
        all.fields += here.fields;
        all.unlike += here.unlike;
        all_left_out.unlike += left_out.unlike;
    }
    for (std::size_t size = 0; size < sizes.size(); ++size) {
        const auto of_size = [&](const Fields& of) {
            return std::to_string(told_unlike(of, size, limits)) + " of " +
                   std::to_string(std::count_if(of.begin(), of.end(), [&](const Field& f) { return f.size == size; }));
        };
        text += "#   up to " + std::to_string(sizes.at(size).most) + " mounds wanted: with fans at random " +
                of_size(checks.fans_at_random) + ", with places and fans at random " + of_size(checks.places_at_random) +
                "\n";
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
    const Lessons lessons = lessons_from(first, count);
    if (argc == 5) write_values(argv[4], lessons.fields);
    const std::vector<LikenessLimits> limits = learn(lessons);
    const std::string check = checked(lessons, lessons_from(first + 100'000, count), limits);
    std::ofstream out(argv[1]);
    out << "# What surveys of made-up fields look like (core/systems/survey_likeness.h), learnt by "
           "tests/training/learn_likeness.\n"
        << "# Fields: " << lessons.fields.size() << ", seeds from " << first
        << " on, all kinds, 40 to 400 mounds; a third with ground, a quarter\n"
        << "# without times. Of each value: low limit, middle, high limit.\n"
        << check << to_text(limits);
    std::cout << check;
    return out ? 0 : 3;
}
