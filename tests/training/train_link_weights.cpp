// Learns what link features count for from simulated fields and writes resources/link_weights.tsv (the first form of the
// inference); or, for a net that train_link_net.py has learnt, the shift of its log weights and the spread of the number of
// systems, and writes resources/network_weights.txt.
//
// Objective (first form): the chance that a weighted random forest falls into exactly the true systems, which is a ratio of
// two determinants
//            (core/systems/forest_matrix.h): its gradient is the link marginals of forests held to the true partition less
//            those of free forests. Maximised by resilient backpropagation (Riedmiller & Braun 1993 [memory]) with a ridge.
// Fields:    seeds from --first on, which no test and no table uses (those use seeds below 1000).
// Use:       train_link_weights OUT.tsv [--fields N] [--rounds N] [--stages N] [--first SEED] [--leave-out KIND]
//            [--keep IN.tsv] [--shift-fields N]   (--keep: learns only the shift and the presence of runs anew)
//            [--net TABLES]   (a net's tables; with --keep IN for the presence of runs, which is kept)
#include <Eigen/Cholesky>
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <iostream>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <thread>

#include "core/plan/make_plan.h"
#include "core/probing/probe_site.h"
#include "core/runs/main_run.h"
#include "core/simulation/burrow_simulator.h"
#include "core/simulation/plan_score.h"
#include "core/systems/forest_matrix.h"
#include "core/systems/link_weights.h"
#include "core/systems/marks.h"

namespace {

using namespace plugside;

constexpr double hardly_a_root = 1e-6;  // root weight that leaves one tree a block
// From one animal in a garden to a meadow; each field counts alike.
constexpr std::array<std::size_t, 6> lesson_sizes{8, 25, 80, 160, 240, 240};
constexpr double ridge = 2e-4;  // pull of each weight towards 0, per mark

// A stage's weights in one row: features first, then context.
constexpr std::size_t dimensions = link_feature_count + link_context_count;
using Row = std::array<double, dimensions>;

Row row_of(const LinkFeatures& features, const LinkContext& context) {
    Row row{};
    std::copy(features.begin(), features.end(), row.begin());
    std::copy(context.begin(), context.end(), row.begin() + link_feature_count);
    return row;
}

struct Lesson {
    std::vector<Mark> marks;
    std::vector<Link> links;
    LinkRows rows;
    std::vector<LinkFeatures> features;
    std::vector<LinkContext> context;  // of the stage before
    std::vector<std::size_t> inside;   // links within one true system
    std::vector<Link> inside_links;
    double systems = 0.0;  // that left a mark
    SurveyScales scales;
};

Lesson lesson_of(const SimulatedField& field) {
    const PlanOptions options;
    Lesson lesson;
    lesson.marks = marks_of(field.survey, options);
    lesson.links = candidate_links(lesson.marks, field.survey.ground.barriers);
    lesson.rows = rows_of(lesson.marks.size(), lesson.links);
    lesson.scales = fit_scales(lesson.marks, lesson.links);
    lesson.features = link_features(lesson.marks, lesson.links, lesson.scales, options.fan_sd_degrees);
    lesson.context.resize(lesson.links.size());
    std::map<std::size_t, std::size_t> system_of;  // by the mark's place in the survey
    for (const TrueMound& mound : field.truth.mounds)
        if (mound.seen_as) system_of[*mound.seen_as] = mound.system;
    std::set<std::size_t> systems;
    for (const Mark& mark : lesson.marks) systems.insert(system_of.at(mark.mound));
    lesson.systems = static_cast<double>(systems.size());
    for (std::size_t e = 0; e < lesson.links.size(); ++e)
        if (system_of.at(lesson.marks[lesson.links[e].first].mound) ==
            system_of.at(lesson.marks[lesson.links[e].second].mound)) {
            lesson.inside.push_back(e);
            lesson.inside_links.push_back(lesson.links[e]);
        }
    return lesson;
}

struct Slope {
    double log_likelihood = 0.0;
    Row gradient{};
    double trees_true = 0.0;
    double trees_free = 0.0;
};

Slope slope_of(const Lesson& lesson, const LinkStage& stage) {
    const std::vector<double> all = stage_scores(lesson.features, lesson.context, stage);
    std::vector<double> inside;
    for (const std::size_t e : lesson.inside) inside.push_back(all[e]);
    const ForestMarginals free = forest_marginals(lesson.marks.size(), lesson.links, all, 1.0);
    const ForestMarginals held = forest_marginals(lesson.marks.size(), lesson.inside_links, inside, hardly_a_root);
    const std::vector<std::uint32_t> parts = connected_parts(lesson.marks.size(), lesson.inside_links);
    Slope slope;
    slope.trees_true = parts.empty() ? 0.0 : 1.0 + *std::max_element(parts.begin(), parts.end());
    slope.trees_free = free.expected_trees;
    slope.log_likelihood = held.log_sum - slope.trees_true * std::log(hardly_a_root) - free.log_sum;
    std::vector<double> pull(lesson.links.size());
    for (std::size_t e = 0; e < lesson.links.size(); ++e) pull[e] = -free.link[e];
    for (std::size_t i = 0; i < lesson.inside.size(); ++i) pull[lesson.inside[i]] += held.link[i];
    for (std::size_t e = 0; e < lesson.links.size(); ++e) {
        const Row row = row_of(lesson.features[e], lesson.context[e]);
        for (std::size_t k = 0; k < dimensions; ++k) slope.gradient[k] += pull[e] * row[k];
    }
    return slope;
}

Slope mean_slope(const std::vector<Lesson>& lessons, const LinkStage& stage) {
    std::array<Slope, 2> sums;
    const auto work = [&](std::size_t worker) {
        for (std::size_t i = worker; i < lessons.size(); i += 2) {
            const Slope slope = slope_of(lessons[i], stage);
            const double share = 1.0 / (static_cast<double>(lessons[i].marks.size()) * static_cast<double>(lessons.size()));
            sums.at(worker).log_likelihood += share * slope.log_likelihood;
            sums.at(worker).trees_true += slope.trees_true / static_cast<double>(lessons.size());
            sums.at(worker).trees_free += slope.trees_free / static_cast<double>(lessons.size());
            for (std::size_t k = 0; k < dimensions; ++k) sums.at(worker).gradient[k] += share * slope.gradient[k];
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
    const Row weight = row_of(stage.of_feature, stage.of_context);
    for (std::size_t k = 0; k < dimensions; ++k) {
        const double pull = ridge * weight[k];
        sum.gradient[k] += sums[1].gradient[k] - pull;
        sum.log_likelihood -= 0.5 * pull * weight[k];
    }
    return sum;
}

// The common shift of log weights that gives a field its true number of systems.
double shift_wanted(const Lesson& lesson, const LinkScores& scores) {
    double low = -4.0;
    double high = 4.0;
    for (int step = 0; step < 12; ++step) {
        const double middle = 0.5 * (low + high);  // a lighter root is a heavier link
        std::vector<double> log_root = scores.log_root;
        for (double& root : log_root) root -= middle;
        const double trees = forest_marginals(lesson.marks.size(), lesson.links, scores.log_weight, log_root).expected_trees;
        (trees > lesson.systems ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

struct ShiftLesson {
    FieldSummary summary{};
    double wanted = 0.0;
};

// Ridge regression of the shift on the field's summary, by cross-validation over the strength of the ridge in ten parts; the
// spread is that of the parts left out.
void learn_shift(const std::vector<ShiftLesson>& lessons, LinkWeights& weights) {
    const auto fit = [&](double strength, std::size_t left_out) {
        constexpr auto k = static_cast<Eigen::Index>(field_summary_count);
        Eigen::MatrixXd normal = Eigen::MatrixXd::Identity(k, k) * strength;
        normal(0, 0) = 1e-9;
        Eigen::VectorXd right = Eigen::VectorXd::Zero(k);
        for (std::size_t i = 0; i < lessons.size(); ++i) {
            if (i % 10 == left_out) continue;
            const Eigen::Map<const Eigen::VectorXd> row(lessons[i].summary.data(), k);
            normal += row * row.transpose();
            right += row * lessons[i].wanted;
        }
        return Eigen::VectorXd(normal.ldlt().solve(right));
    };
    double best = 1e9;
    double best_strength = 1.0;
    for (const double strength : {0.03, 0.1, 0.3, 1.0, 3.0, 10.0, 30.0}) {
        double squares = 0.0;
        for (std::size_t part = 0; part < 10; ++part) {
            const Eigen::VectorXd row = fit(strength, part);
            for (std::size_t i = part; i < lessons.size(); i += 10) {
                double told = 0.0;
                for (std::size_t k = 0; k < field_summary_count; ++k)
                    told += row[static_cast<Eigen::Index>(k)] * lessons[i].summary[k];
                squares += (told - lessons[i].wanted) * (told - lessons[i].wanted);
            }
        }
        if (squares >= best) continue;
        best = squares;
        best_strength = strength;
    }
    const Eigen::VectorXd row = fit(best_strength, 10);
    for (std::size_t k = 0; k < field_summary_count; ++k) weights.shift[k] = row[static_cast<Eigen::Index>(k)];
    weights.shift_sd = std::sqrt(best / static_cast<double>(lessons.size()));
    double plain = 0.0, mean = 0.0;
    for (const ShiftLesson& lesson : lessons) mean += lesson.wanted / static_cast<double>(lessons.size());
    for (const ShiftLesson& lesson : lessons) plain += (lesson.wanted - mean) * (lesson.wanted - mean);
    std::fprintf(stderr, "shift: mean %.3f, spread %.3f, left open by the summary %.3f (ridge %.2f)\n", mean,
                 std::sqrt(plain / static_cast<double>(lessons.size())), weights.shift_sd, best_strength);
}

// What became of a ladder between two mounds.
struct Trial {
    double log_odds = 0.0;  // of the link's share of draws
    double if_present = 0.0;
    bool hit = false;
};

std::vector<Trial> ladder_trials(const SimulatedField& field, LinkWeights weights) {
    weights.presence_offset = 0.0;
    weights.presence_slope = 1.0;
    PlanOptions options;
    options.least_run_probability = 0.0;
    const SystemPosterior posterior = *infer_systems(field.survey, options, weights);
    const std::vector<ProbeSite> sites =
        probe_sites(field.survey, posterior, main_runs(posterior, weights, options), options);
    std::map<std::pair<std::size_t, std::size_t>, double> share;
    for (std::size_t e = 0; e < posterior.links.size(); ++e)
        share[std::minmax(posterior.marks[posterior.links[e].first].mound,
                          posterior.marks[posterior.links[e].second].mound)] =
            std::clamp(posterior.link_probability[e], 0.002, 0.998);
    std::vector<Trial> trials;
    for (std::size_t p = 0; p < sites.size(); ++p) {
        if (!sites[p].to_mound) continue;
        const double probability = share.at(std::minmax(sites[p].from_mound, *sites[p].to_mound));
        trials.push_back({std::log(probability / (1.0 - probability)), sites[p].hit.value() / probability,
                          try_ladder(sites[p], p, field).hit});
    }
    return trials;
}

// Logistic regression of hits on log odds, each hit possible only as far as the ladder covers the run: Newton's method with
// slopes by differences, on a smooth function of two numbers.
void learn_presence(const std::vector<SimulatedField>& fields, LinkWeights& weights) {
    std::vector<Trial> trials;
    for (const SimulatedField& field : fields)
        for (const Trial& trial : ladder_trials(field, weights)) trials.push_back(trial);
    const auto log_likelihood = [&](double offset, double slope) {
        double sum = 0.0;
        for (const Trial& trial : trials) {
            const double p = trial.if_present / (1.0 + std::exp(-offset - slope * trial.log_odds));
            sum += std::log(std::clamp(trial.hit ? p : 1.0 - p, 1e-9, 1.0));
        }
        return sum;
    };
    double offset = 0.0;
    double slope = 1.0;
    for (double step = 0.5; step > 0.002; step *= 0.5)
        for (int turn = 0; turn < 20; ++turn) {
            const double before = log_likelihood(offset, slope);
            for (const auto& [da, db] :
                 {std::pair{step, 0.0}, std::pair{-step, 0.0}, std::pair{0.0, step}, std::pair{0.0, -step}})
                if (log_likelihood(offset + da, slope + db) > log_likelihood(offset, slope)) {
                    offset += da;
                    slope += db;
                }
            if (log_likelihood(offset, slope) <= before) break;
        }
    weights.presence_offset = offset;
    weights.presence_slope = slope;
    std::fprintf(stderr, "presence from %zu ladders: offset %.3f, slope %.3f\n", trials.size(), offset, slope);
}

// The least spread of the shift whose 90 % interval holds the true number in 92 of 100 fields (our margin over 90): the
// regression's own residual also holds the chance of single draws, which the forests bring anyway.
void learn_spread(const std::vector<SimulatedField>& fields, LinkWeights& weights) {
    const auto holds = [&](double spread) {
        weights.shift_sd = spread;
        std::array<double, 2> held{};
        const auto work = [&](std::size_t worker) {
            for (std::size_t i = worker; i < fields.size(); i += 2) {
                std::set<std::size_t> systems;
                for (const TrueMound& mound : fields[i].truth.mounds)
                    if (mound.seen_as) systems.insert(mound.system);
                const SystemsEstimate estimate = infer_systems(fields[i].survey, {}, weights)->estimate;
                const int truth = static_cast<int>(systems.size());
                held.at(worker) += estimate.low <= truth && truth <= estimate.high ? 1.0 : 0.0;
            }
        };
        {
            const std::jthread helper(work, 1);
            work(0);
        }
        const double share = (held[0] + held[1]) / static_cast<double>(fields.size());
        std::fprintf(stderr, "spread %.3f holds %.3f\n", spread, share);
        return share;
    };
    double low = 0.0;
    double high = 1.6;
    for (int step = 0; step < 5; ++step) {
        const double middle = 0.5 * (low + high);
        (holds(middle) >= 0.92 ? high : low) = middle;
    }
    weights.shift_sd = high;
}

LinkStage learn(const std::vector<Lesson>& lessons, LinkStage stage, int rounds, std::size_t learnt) {
    Row step;
    step.fill(0.05);
    Row last{};
    Row weight = row_of(stage.of_feature, stage.of_context);
    for (int round = 0; round < rounds; ++round) {
        const Slope slope = mean_slope(lessons, stage);
        for (std::size_t k = 0; k < learnt; ++k) {
            const double turn = slope.gradient[k] * last[k];
            if (turn > 0.0) step[k] = std::min(step[k] * 1.2, 0.5);
            if (turn < 0.0) step[k] = std::max(step[k] * 0.5, 1e-4);
            last[k] = turn < 0.0 ? 0.0 : slope.gradient[k];
            if (last[k] != 0.0) weight[k] += last[k] > 0.0 ? step[k] : -step[k];
        }
        std::copy_n(weight.begin(), link_feature_count, stage.of_feature.begin());
        std::copy_n(weight.begin() + link_feature_count, link_context_count, stage.of_context.begin());
        if (round % 20 == 0 || round + 1 == rounds)
            std::fprintf(stderr, "round %d: log likelihood a mark %.4f, systems %.1f of %.1f\n", round, slope.log_likelihood,
                         slope.trees_free, slope.trees_true);
    }
    return stage;
}

void learn_stages(std::vector<Lesson>& lessons, int stages, int rounds, LinkWeights& weights) {
    for (int stage = 0; stage < stages; ++stage) {
        std::fprintf(stderr, "stage %d\n", stage + 1);
        if (stage > 0)
            for (Lesson& lesson : lessons)
                lesson.context = link_context(lesson.marks, lesson.links, lesson.rows,
                                              stage_scores(lesson.features, lesson.context, weights.stages.back()));
        LinkStage start = stage > 0 ? weights.stages.back() : LinkStage{};
        start.of_context = {};
        weights.stages.push_back(learn(lessons, start, rounds, stage > 0 ? dimensions : link_feature_count));
    }
}

std::string listed(const std::vector<FieldKind>& kinds) {
    std::string list;
    for (const FieldKind kind : kinds) list += (list.empty() ? " " : ", ") + to_text(kind);
    return list;
}

void write_net(std::ofstream& out, const std::vector<FieldKind>& kinds, const LinkWeights& weights,
               const std::string& tables) {
    out << "# A net on links (core/systems/link_net.h), the shift of its log weights and the spread of that, learnt by "
           "tests/training on\n"
        << "# simulated fields, seeds from 1000 on, kinds:" << listed(kinds) << ".\n"
        << to_text(weights) << "net\n"
        << tables;
}

}  // namespace

int main(int argc, char** argv) {
    if (argc < 2) {
        std::cerr << "train_link_weights OUT.tsv [--fields N] [--rounds N] [--first SEED] [--leave-out KIND] "
                     "[--stages N]\n";
        return 2;
    }
    std::map<std::string, std::string> given;
    for (int i = 2; i + 1 < argc; i += 2) given[argv[i]] = argv[i + 1];
    const auto number = [&](const char* name, int otherwise) {
        return given.count(name) ? std::atoi(given[name].c_str()) : otherwise;
    };
    const int fields = number("--fields", 240);
    const int shift_fields = number("--shift-fields", 600);
    const auto first = static_cast<std::uint64_t>(number("--first", 1000));
    std::vector<FieldKind> kinds = all_field_kinds();
    std::erase_if(kinds, [&](FieldKind kind) { return to_text(kind) == given["--leave-out"]; });
    const auto made_up = [&](int i, std::size_t mounds) {
        SimulationOptions options;
        options.kind = kinds[static_cast<std::size_t>(i) % kinds.size()];
        options.seed = first + static_cast<std::uint64_t>(i);
        options.mounds_wanted = mounds;
        return simulate_field(options);
    };
    LinkWeights weights;
    if (given.count("--keep")) {
        std::ifstream in(given["--keep"]);
        weights = parse_link_weights(std::string(std::istreambuf_iterator<char>(in), {}));
    } else if (!given.count("--net")) {
        std::vector<Lesson> lessons;
        for (int i = 0; i < fields; ++i)
            lessons.push_back(lesson_of(made_up(i, lesson_sizes.at(static_cast<std::size_t>(i / 4) % lesson_sizes.size()))));
        learn_stages(lessons, number("--stages", 3), number("--rounds", 70), weights);
    }
    std::string net_tables;
    if (given.count("--net")) {
        std::ifstream in(given["--net"]);
        net_tables.assign(std::istreambuf_iterator<char>(in), {});
        weights.stages.clear();
        weights.net = std::make_shared<const LinkNetWeights>(parse_link_net(net_tables));
    }
    // sizes from a garden to a large meadow, on fields that the stages have not seen
    std::vector<ShiftLesson> shifts(static_cast<std::size_t>(shift_fields));
    const auto look = [&](std::size_t worker) {
        for (std::size_t i = worker; i < shifts.size(); i += 2) {
            const Lesson lesson = lesson_of(made_up(fields + static_cast<int>(i), 60 + 7 * (i % 50)));
            const LinkScores scores = scores_of(lesson.marks, lesson.links, lesson.features, weights);
            shifts[i] = {field_summary(lesson.marks, lesson.links, lesson.features, scores.log_weight, lesson.scales),
                         shift_wanted(lesson, scores)};
        }
    };
    {
        const std::jthread helper(look, 1);
        look(0);
    }
    learn_shift(shifts, weights);
    std::vector<SimulatedField> tried;
    for (int i = 0; i < 100; ++i)
        tried.push_back(made_up(fields + shift_fields + i, 80 + 60 * static_cast<std::size_t>(i / 4 % 5)));
    learn_spread(tried, weights);
    if (!weights.net) learn_presence(tried, weights);
    std::ofstream out(argv[1]);
    if (weights.net) {
        write_net(out, kinds, weights, net_tables);
        return out ? 0 : 3;
    }
    out << "# What each feature of a link counts for (core/systems/link_weights.h), as a log weight. Learnt by "
           "tests/training on\n"
        << "# simulated fields: " << fields << " fields from seed " << first << " on, kinds:" << listed(kinds) << ".\n"
        << to_text(weights);
    return out ? 0 : 3;
}
