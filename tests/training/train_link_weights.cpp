// Learns the weights of link features from simulated fields and writes resources/link_weights.tsv.
//
// Objective: the chance that a weighted random forest falls into exactly the true systems, which is a ratio of two determinants
//            (core/systems/forest_matrix.h): its gradient is the link marginals of forests held to the true partition less those of
//            free forests. Maximised by resilient backpropagation (Riedmiller & Braun 1993 [memory]) with a ridge.
// Fields:    seeds from --first on, which no test and no table uses (those use seeds below 1000).
// Use:       train_link_weights OUT.tsv [--fields N] [--rounds N] [--mounds N] [--first SEED] [--leave-out KIND] [--start IN.tsv]
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <iostream>
#include <map>
#include <sstream>
#include <string>
#include <thread>

#include "core/plan/make_plan.h"
#include "core/simulation/burrow_simulator.h"
#include "core/systems/forest_matrix.h"
#include "core/systems/link_weights.h"
#include "core/systems/marks.h"

namespace {

using namespace plugside;

constexpr double hardly_a_root = 1e-6;  // root weight that leaves one tree a block
constexpr double ridge = 0.02;          // pull of each weight towards 0, in units of one mark's log likelihood a field

struct Lesson {
    std::size_t marks = 0;
    std::vector<Link> links;
    std::vector<LinkFeatures> features;
    std::vector<std::size_t> inside;  // links within one true system
    std::vector<Link> inside_links;
};

Lesson lesson_of(const SimulatedField& field) {
    const PlanOptions options;
    const std::vector<Mark> marks = marks_of(field.survey, options);
    Lesson lesson;
    lesson.marks = marks.size();
    lesson.links = candidate_links(marks, field.survey.ground.barriers);
    lesson.features = link_features(marks, lesson.links, fit_scales(marks, lesson.links), options.fan_sd_degrees);
    std::map<std::size_t, std::size_t> system_of;  // by the mark's place in the survey
    for (const TrueMound& mound : field.truth.mounds)
        if (mound.seen_as) system_of[*mound.seen_as] = mound.system;
    for (std::size_t e = 0; e < lesson.links.size(); ++e)
        if (system_of.at(marks[lesson.links[e].first].mound) == system_of.at(marks[lesson.links[e].second].mound)) {
            lesson.inside.push_back(e);
            lesson.inside_links.push_back(lesson.links[e]);
        }
    return lesson;
}

struct Slope {
    double log_likelihood = 0.0;
    LinkFeatures gradient{};
    double trees_true = 0.0;
    double trees_free = 0.0;
};

Slope slope_of(const Lesson& lesson, const LinkWeights& weights) {
    const std::vector<double> all = log_weights(lesson.features, weights);
    std::vector<double> inside;
    for (const std::size_t e : lesson.inside) inside.push_back(all[e]);
    const ForestMarginals free = forest_marginals(lesson.marks, lesson.links, all, 1.0);
    const ForestMarginals held = forest_marginals(lesson.marks, lesson.inside_links, inside, hardly_a_root);
    const std::vector<std::uint32_t> parts = connected_parts(lesson.marks, lesson.inside_links);
    Slope slope;
    slope.trees_true = parts.empty() ? 0.0 : 1.0 + *std::max_element(parts.begin(), parts.end());
    slope.trees_free = free.expected_trees;
    slope.log_likelihood = held.log_sum - slope.trees_true * std::log(hardly_a_root) - free.log_sum;
    const auto add = [&](std::size_t e, double share) {
        for (std::size_t k = 0; k < link_feature_count; ++k) slope.gradient[k] += share * lesson.features[e][k];
    };
    for (std::size_t e = 0; e < lesson.links.size(); ++e) add(e, -free.link[e]);
    for (std::size_t i = 0; i < lesson.inside.size(); ++i) add(lesson.inside[i], held.link[i]);
    return slope;
}

Slope mean_slope(const std::vector<Lesson>& lessons, const LinkWeights& weights) {
    std::array<Slope, 2> sums;
    const auto work = [&](std::size_t worker) {
        for (std::size_t i = worker; i < lessons.size(); i += 2) {
            const Slope slope = slope_of(lessons[i], weights);
            const double share = 1.0 / (static_cast<double>(lessons[i].marks) * static_cast<double>(lessons.size()));
            sums.at(worker).log_likelihood += share * slope.log_likelihood;
            sums.at(worker).trees_true += slope.trees_true / static_cast<double>(lessons.size());
            sums.at(worker).trees_free += slope.trees_free / static_cast<double>(lessons.size());
            for (std::size_t k = 0; k < link_feature_count; ++k) sums.at(worker).gradient[k] += share * slope.gradient[k];
        }
    };
    {
        const std::jthread helper(work, 1);
        work(0);
    }
    Slope sum = sums[0];
    sum.log_likelihood += sums[1].log_likelihood;
    sum.trees_true += sums[1].trees_true;
    sum.trees_free += sums[1].trees_free;
    for (std::size_t k = 0; k < link_feature_count; ++k) {
        sum.gradient[k] += sums[1].gradient[k];
        const double pull = ridge / 150.0 * weights.weight[k];
        sum.gradient[k] -= pull;
        sum.log_likelihood -= 0.5 * pull * weights.weight[k];
    }
    return sum;
}

// How far the true number of systems strays from the expected one, as the common shift of log weights that would mend it.
double shift_sd(const std::vector<Lesson>& lessons, const LinkWeights& weights) {
    double squares = 0.0;
    for (const Lesson& lesson : lessons) {
        double low = -4.0;
        double high = 4.0;
        const std::vector<double> all = log_weights(lesson.features, weights);
        const double wanted = slope_of(lesson, weights).trees_true;
        for (int step = 0; step < 14; ++step) {
            const double middle = 0.5 * (low + high);
            const double trees = forest_marginals(lesson.marks, lesson.links, all, std::exp(middle)).expected_trees;
            (trees < wanted ? low : high) = middle;
        }
        squares += 0.25 * (low + high) * (low + high);
    }
    return std::sqrt(squares / static_cast<double>(lessons.size()));
}

LinkWeights learn(const std::vector<Lesson>& lessons, LinkWeights weights, int rounds) {
    LinkFeatures step;
    step.fill(0.05);
    LinkFeatures last{};
    for (int round = 0; round < rounds; ++round) {
        const Slope slope = mean_slope(lessons, weights);
        for (std::size_t k = 0; k < link_feature_count; ++k) {
            const double turn = slope.gradient[k] * last[k];
            if (turn > 0.0) step[k] = std::min(step[k] * 1.2, 0.5);
            if (turn < 0.0) step[k] = std::max(step[k] * 0.5, 1e-4);
            last[k] = turn < 0.0 ? 0.0 : slope.gradient[k];
            if (last[k] != 0.0) weights.weight[k] += last[k] > 0.0 ? step[k] : -step[k];
        }
        if (round % 10 == 0 || round + 1 == rounds)
            std::fprintf(stderr, "round %d: log likelihood a mark %.4f, systems %.1f of %.1f\n", round, slope.log_likelihood,
                         slope.trees_free, slope.trees_true);
    }
    return weights;
}

}  // namespace

int main(int argc, char** argv) {
    if (argc < 2) {
        std::cerr << "train_link_weights OUT.tsv [--fields N] [--rounds N] [--mounds N] [--first SEED] [--leave-out KIND] "
                     "[--start IN.tsv]\n";
        return 2;
    }
    std::map<std::string, std::string> given;
    for (int i = 2; i + 1 < argc; i += 2) given[argv[i]] = argv[i + 1];
    const auto number = [&](const char* name, int otherwise) {
        return given.count(name) ? std::atoi(given[name].c_str()) : otherwise;
    };
    const int fields = number("--fields", 160);
    const auto first = static_cast<std::uint64_t>(number("--first", 1000));
    LinkWeights weights = learnt_link_weights();
    if (given.count("--start")) {
        std::ifstream in(given["--start"]);
        weights = parse_link_weights(std::string(std::istreambuf_iterator<char>(in), {}));
    }
    std::vector<FieldKind> kinds = all_field_kinds();
    std::erase_if(kinds, [&](FieldKind kind) { return to_text(kind) == given["--leave-out"]; });
    std::vector<Lesson> lessons;
    for (int i = 0; i < fields; ++i) {
        SimulationOptions options;
        options.kind = kinds[static_cast<std::size_t>(i) % kinds.size()];
        options.seed = first + static_cast<std::uint64_t>(i);
        options.mounds_wanted = static_cast<std::size_t>(number("--mounds", 160));
        lessons.push_back(lesson_of(simulate_field(options)));
    }
    weights = learn(lessons, weights, number("--rounds", 120));
    weights.count_sd = shift_sd(lessons, weights);
    std::ofstream out(argv[1]);
    out << "# What each link feature counts for (core/systems/link_features.h), as a log weight. Learnt by tests/training on\n"
        << "# simulated fields: " << fields << " fields from seed " << first << " on, kinds:";
    for (const FieldKind kind : kinds) out << ' ' << to_text(kind) << (kind == kinds.back() ? "" : ",");
    out << ".\n# feature\tlog weight\n";
    std::array<char, 64> text{};
    for (std::size_t k = 0; k < link_feature_count; ++k) {
        std::snprintf(text.data(), text.size(), "%.4f", weights.weight[k]);
        out << link_feature_names()[k] << '\t' << text.data() << '\n';
    }
    std::snprintf(text.data(), text.size(), "%.4f", weights.count_sd);
    out << "count_sd\t" << text.data() << '\n';
    return out ? 0 : 3;
}
