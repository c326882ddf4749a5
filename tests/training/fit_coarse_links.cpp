// Fits the few constants of the coarse form (core/systems/coarse_links.cpp, coarse_joining.h, coarse_systems.cpp) on
// simulated fields of every kind, seeds from 1000 on, and prints them; then a table by kind, seeds from 1 on, in which each
// kind is judged with constants learnt on the other kinds alone.
//
//   fit_coarse_links [FIELDS A KIND TO LEARN ON] [FIELDS A KIND IN THE TABLE]
#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>
#include <string>

#include "core/geometry/space_curve.h"
#include "core/simulation/burrow_simulator.h"
#include "core/simulation/plan_score.h"
#include "core/systems/coarse_systems.h"

namespace plugside {
namespace {

struct Example {
    FieldKind kind = FieldKind::meander;
    std::vector<LocalPoint> take_offs;  // along the curve
    std::vector<std::optional<Bearing>> fans;
    std::vector<LocalPoint> plugs;
    std::vector<std::size_t> truth;
    std::size_t true_systems = 0;
    std::vector<CoarseLink> links;
    std::vector<CoarseFeatures> features;

    [[nodiscard]] bool together(const CoarseLink& link) const { return truth[link.first] == truth[link.second]; }
};

std::size_t distinct(std::vector<std::size_t> labels) {
    std::sort(labels.begin(), labels.end());
    return static_cast<std::size_t>(std::unique(labels.begin(), labels.end()) - labels.begin());
}

Example example_of(FieldKind kind, std::uint64_t seed) {
    SimulationOptions simulation;
    simulation.kind = kind;
    simulation.seed = seed;
    simulation.mounds_wanted = seed % 4 == 3 ? 1500 : 300;
    const SimulatedField field = simulate_field(simulation);
    std::map<std::size_t, std::size_t> system_of_mound;
    for (const TrueMound& mound : field.truth.mounds)
        if (mound.seen_as) system_of_mound[*mound.seen_as] = mound.system;
    const CoarseSurvey all = coarse_marks_of(field.survey);
    CoarseSurvey coarse;
    for (std::size_t i = 0; i < all.marks.size(); ++i)
        if (system_of_mound.count(all.mound[i]) > 0) {
            coarse.marks.push_back(all.marks[i]);
            coarse.mound.push_back(all.mound[i]);
        }
    Example example;
    example.kind = kind;
    std::vector<LocalPoint> places;
    for (const CoarseMark& mark : coarse.marks) places.push_back(mark.take_off);
    for (const std::uint32_t i : order_along_curve(places)) {
        example.take_offs.push_back(coarse.marks[i].take_off);
        example.fans.push_back(coarse.marks[i].fan);
        example.plugs.push_back(field.survey.mounds[coarse.mound[i]].plug);
        example.truth.push_back(system_of_mound[coarse.mound[i]]);
    }
    example.true_systems = distinct(example.truth);
    const CoarseOptions options;
    const CoarseGround ground{example.take_offs, example.fans};
    const auto neighbours = coarse_neighbours(example.take_offs, options.nearest, options.reach);
    example.links = *coarse_links(ground, *neighbours, options.reach);
    const std::vector<float> spacing = coarse_spacing(*neighbours, options.reach);
    for (const CoarseLink& link : example.links)
        example.features.push_back(coarse_features(ground, *neighbours, spacing, link.first, link.second));
    return example;
}

std::vector<Example> examples_of(FieldKind kind, std::uint64_t first_seed, int fields) {
    std::vector<Example> examples;
    for (int i = 0; i < fields; ++i) examples.push_back(example_of(kind, first_seed + static_cast<std::uint64_t>(i)));
    return examples;
}

// Logistic regression by Newton's method, each field with the same weight, a ridge of a thousandth.
Eigen::VectorXd fitted_weights(const std::vector<Example>& examples) {
    constexpr auto size = static_cast<Eigen::Index>(coarse_feature_count);
    Eigen::VectorXd weights = Eigen::VectorXd::Zero(size);
    for (int step = 0; step < 12; ++step) {
        Eigen::VectorXd slope = -1e-3 * weights;
        Eigen::MatrixXd bend = 1e-3 * Eigen::MatrixXd::Identity(size, size);
        for (const Example& example : examples)
            for (std::size_t e = 0; e < example.links.size(); ++e) {
                const Eigen::VectorXd x = Eigen::Map<const Eigen::VectorXf>(example.features[e].data(), size).cast<double>();
                const double chance = 1.0 / (1.0 + std::exp(-weights.dot(x)));
                const double share = 1.0 / static_cast<double>(example.links.size());
                slope += share * ((example.together(example.links[e]) ? 1.0 : 0.0) - chance) * x;
                bend += share * chance * (1.0 - chance) * x * x.transpose();
            }
        weights += bend.ldlt().solve(slope);
    }
    return weights;
}

void score(Example& example, const Eigen::VectorXd& weights) {
    for (std::size_t e = 0; e < example.links.size(); ++e)
        example.links[e].score = static_cast<float>(weights.dot(
            Eigen::Map<const Eigen::VectorXf>(example.features[e].data(), static_cast<Eigen::Index>(coarse_feature_count))
                .cast<double>()));
}

std::vector<std::size_t> partition(const Example& example, const CoarseJoiningOptions& options) {
    const auto labels = *join_by_evidence(example.take_offs.size(), example.links, options);
    return {labels.begin(), labels.end()};
}

// All that is fitted.
struct Constants {
    Eigen::VectorXd weights;
    CoarseJoiningOptions joining;
    double true_over_found = 1.0;
    double scatter_of_fields = 0.0;  // of the logarithm
    double scatter_of_one_system = 0.0;
};

double mean_index(std::vector<Example>& examples, const Constants& constants) {
    double sum = 0.0;
    for (Example& example : examples) {
        score(example, constants.weights);
        sum += adjusted_rand_index(partition(example, constants.joining), example.truth);
    }
    return sum / static_cast<double>(examples.size());
}

// Logistic regression says what one link tells. What the sum of many tells is less than the sum of what each tells: how it
// is joined, and what is added to each link's evidence, is chosen by the mean index.
Constants best_joining(std::vector<Example>& examples, const Eigen::VectorXd& weights) {
    Constants best;
    double best_index = -1.0;
    for (const double added : {0.0, 0.25, 0.5, 0.75})
        for (float threshold = 0.0F; threshold < 4.01F; threshold += 0.5F) {
            Constants tried;
            tried.weights = weights;
            tried.weights(0) += added;
            tried.joining.threshold = threshold;
            const double index = mean_index(examples, tried);
            if (index <= best_index) continue;
            best_index = index;
            best = tried;
        }
    return best;
}

// log(true over found): its mean, and its variance as a constant and a part that falls with the number found (least squares,
// neither below 0).
void fit_count(std::vector<Example>& examples, Constants& constants) {
    std::vector<std::pair<double, double>> of_fields;  // 1 / found, log ratio
    double mean = 0.0;
    for (Example& example : examples) {
        score(example, constants.weights);
        const auto found = static_cast<double>(distinct(partition(example, constants.joining)));
        of_fields.emplace_back(1.0 / found, std::log(static_cast<double>(example.true_systems) / found));
        mean += of_fields.back().second / static_cast<double>(examples.size());
    }
    Eigen::Matrix2d normal = Eigen::Matrix2d::Zero();
    Eigen::Vector2d right = Eigen::Vector2d::Zero();
    for (const auto& [share, ratio] : of_fields) {
        const Eigen::Vector2d row(1.0, share);
        normal += row * row.transpose();
        right += row * (ratio - mean) * (ratio - mean);
    }
    const Eigen::Vector2d variance = normal.ldlt().solve(right).cwiseMax(0.0);
    constants.true_over_found = std::exp(mean);
    constants.scatter_of_fields = std::sqrt(variance(0));
    constants.scatter_of_one_system = std::sqrt(variance(1));
}

Constants fitted(std::vector<Example>& examples) {
    Constants constants = best_joining(examples, fitted_weights(examples));
    fit_count(examples, constants);
    return constants;
}

void print(const Constants& constants) {
    std::printf("weights:");
    for (const double weight : constants.weights) std::printf(" %.3fF,", weight);
    std::printf("\njoining: threshold %.2f\ncount: true over found %.3f, scatter of fields %.3f, of one system %.3f\n",
                static_cast<double>(constants.joining.threshold), constants.true_over_found, constants.scatter_of_fields,
                constants.scatter_of_one_system);
}

struct Yardstick {
    double index = -1.0;
    std::size_t systems = 0;
};

// DBSCAN with the radius chosen on the truth, as in core/simulation/plan_score.
Yardstick yardstick_of(const Example& example) {
    Yardstick best;
    for (int i = 0; i < 40; ++i)
        for (const int least : {2, 3}) {
            const double radius_m = 0.5 * std::pow(30.0, i / 39.0);
            const auto labels = density_clusters(example.plugs, Metres::of(radius_m), least);
            const double index = adjusted_rand_index(labels, example.truth);
            if (index > best.index) best = {index, distinct(labels)};
        }
    return best;
}

void print_row(const char* kind, std::vector<Example>& examples, const Constants& constants) {
    double index = 0.0, yardstick = 0.0, yardstick_count = 0.0, count = 0.0, width = 0.0;
    int holds = 0;
    for (Example& example : examples) {
        score(example, constants.weights);
        const std::vector<std::size_t> label = partition(example, constants.joining);
        const auto truth = static_cast<double>(example.true_systems);
        const auto found = static_cast<double>(distinct(label));
        const double sd =
            std::sqrt(std::pow(constants.scatter_of_fields, 2) + std::pow(constants.scatter_of_one_system, 2) / found);
        const double low = std::floor(found * constants.true_over_found * std::exp(-1.645 * sd));
        const double high = std::ceil(found * constants.true_over_found * std::exp(1.645 * sd));
        index += adjusted_rand_index(label, example.truth);
        const Yardstick dbscan = yardstick_of(example);
        yardstick += dbscan.index;
        yardstick_count += static_cast<double>(dbscan.systems) / truth;
        count += found * constants.true_over_found / truth;
        width += (high - low) / truth;
        holds += low <= truth && truth <= high ? 1 : 0;
    }
    const auto fields = static_cast<double>(examples.size());
    std::printf("%-24s %6zu %7.3f %7.3f %9.2f %6.2f %6.2f %6d\n", kind, examples.size(), index / fields, yardstick / fields,
                yardstick_count / fields, count / fields, width / fields, holds);
}

void run(int fields_to_learn, int fields_in_table) {
    std::vector<std::vector<Example>> of_kind;
    for (const FieldKind kind : all_field_kinds()) of_kind.push_back(examples_of(kind, 1000, fields_to_learn));
    const auto all_but = [&](std::size_t left_out) {
        std::vector<Example> examples;
        for (std::size_t k = 0; k < of_kind.size(); ++k)
            if (k != left_out) examples.insert(examples.end(), of_kind[k].begin(), of_kind[k].end());
        return examples;
    };
    std::vector<Example> all = all_but(of_kind.size());
    print(fitted(all));
    std::printf("%-24s %6s %7s %7s %9s %6s %6s %6s\n", "kind left out", "fields", "index", "DBSCAN", "its count", "count",
                "width", "holds");
    for (std::size_t k = 0; k < of_kind.size(); ++k) {
        std::vector<Example> others = all_but(k);
        std::vector<Example> judged = examples_of(all_field_kinds()[k], 1, fields_in_table);
        print_row(to_text(all_field_kinds()[k]).c_str(), judged, fitted(others));
        std::fflush(stdout);
    }
}

}  // namespace
}  // namespace plugside

int main(int count, char** words) {
    const auto number = [&](int i, int otherwise) { return count > i ? std::stoi(words[i]) : otherwise; };
    plugside::run(number(1, 30), number(2, 20));
    return 0;
}
