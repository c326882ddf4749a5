// Simulation-based calibration of every quantity that is drawn, under the model's own generator (Talts, Betancourt, Simpson,
// Vehtari & Gelman 2018, arXiv:1804.06788 [memory]).
//
// Truth:     one exact draw of the forest with the weights that the inference gives a simulated survey.
// Data:      questions chosen without looking at the truth, answered from it: are these two one animal's (surely, or by
//            somebody who is mistaken with a known chance); does a run join these two. What is told is as likely as the
//            model takes it to be.
// Posterior: networks drawn obeying the answers. The rank of the truth's number among theirs is even when both agree.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "core/plan/make_plan.h"
#include "core/simulation/burrow_simulator.h"
#include "core/simulation/rank_histogram.h"
#include "core/systems/forest_sampler.h"
#include "core/systems/link_weights.h"
#include "core/systems/marks.h"
#include "core/systems/network_draws.h"

namespace plugside {
namespace {

struct WeighedField {
    std::vector<std::uint64_t> keys;
    std::vector<LocalPoint> places;
    std::vector<Link> links;
    LinkScores scores;
};

WeighedField weighed_field(std::uint64_t seed) {
    SimulationOptions options;
    const auto kinds = all_field_kinds();
    options.kind = kinds[seed % kinds.size()];
    options.seed = seed;
    options.mounds_wanted = 26;
    const Survey survey = simulate_field(options).survey;
    WeighedField field;
    const std::vector<Mark> marks = marks_of(survey, {});
    field.links = candidate_links(marks, survey.ground.barriers);
    const auto features = link_features(marks, field.links, fit_scales(marks, field.links), PlanOptions{}.fan_sd_degrees);
    field.scores = scores_of(marks, field.links, features, learnt_link_weights());
    for (const Mark& mark : marks) {
        field.keys.push_back(mark.key);
        field.places.push_back(mark.plug);
    }
    return field;
}

// A network as its links (pairs of marks) and each mark's tree.
struct Network {
    std::vector<std::pair<std::uint32_t, std::uint32_t>> links;
    std::vector<double> lengths_m;
    std::vector<std::uint32_t> tree;
};

Network truth_of(const WeighedField& field, std::uint64_t number) {
    const Forest forest =
        ForestSampler(field.keys, field.links, field.scores.log_weight, field.scores.log_root).draw(number);
    Network network;
    for (const std::uint32_t e : forest.arrow) {
        if (e == no_link) continue;
        network.links.emplace_back(field.links[e].first, field.links[e].second);
        network.lengths_m.push_back(field.links[e].length_m);
    }
    network.tree = forest.tree;
    return network;
}

Network network_of(const DrawnNetworks& drawn, const DrawnNetwork& draw) {
    Network network;
    for (const std::uint32_t e : draw.links) {
        network.links.emplace_back(drawn.links[e].first, drawn.links[e].second);
        network.lengths_m.push_back(drawn.links[e].length_m);
    }
    network.tree = draw.tree;
    return network;
}

bool has(const Network& network, const Link& link) {
    return std::find(network.links.begin(), network.links.end(), std::pair(link.first, link.second)) != network.links.end();
}

// A centimetre across a candidate where it crosses no other, at one of a few places chosen at random; nothing where each
// crosses one.
std::optional<Polyline> line_across(const WeighedField& field, const Link& link, Random& random) {
    const LocalVector along = field.places[link.second] - field.places[link.first];
    for (int attempt = 0; attempt < 20; ++attempt) {
        const LocalPoint at = field.places[link.first] + along * random.uniform(0.2, 0.8);
        const LocalVector across = turned_right(along) * (0.005 / std::max(along.length_m(), 1e-6));
        const auto crossed = std::count_if(field.links.begin(), field.links.end(), [&](const Link& other) {
            return segments_meet(field.places[other.first], field.places[other.second], at - across, at + across);
        });
        if (crossed == 1) return Polyline{{at - across, at + across}};
    }
    return std::nullopt;
}

// Answers to three to six questions of pairs that lie near one another.
std::vector<MarkFact> answers(const WeighedField& field, const Network& truth, Random& random) {
    std::vector<MarkFact> facts;
    const std::size_t questions = 3 + random.below(4);
    while (facts.size() < questions) {
        const Link& link = field.links[random.below(field.links.size())];
        MarkFact fact;
        fact.first = link.first;
        fact.second = link.second;
        fact.fact = facts.size();
        fact.text = "answer " + std::to_string(facts.size());
        std::size_t kind = random.below(3);
        const std::optional<Polyline> line = line_across(field, link, random);
        if (kind == 0 && !line) kind = 1;
        if (kind == 0 && has(truth, link)) {
            fact.kind = FactKind::run_here;
        } else if (kind == 0) {
            fact.kind = FactKind::no_run_across;
            fact.line = line;
        } else {
            bool together = truth.tree[link.first] == truth.tree[link.second];
            if (kind == 2) {
                fact.log_strength = 1.2;
                if (random.chance(1.0 / (1.0 + std::exp(*fact.log_strength)))) together = !together;
            }
            fact.kind = together ? FactKind::same_system : FactKind::different_systems;
        }
        facts.push_back(std::move(fact));
    }
    return facts;
}

enum Quantity : std::size_t { systems, links, length, size_of_one, link_in, pairs_together, quantities };

std::array<double, quantities> measured(const Network& network, std::uint32_t mark, const Link& link) {
    const auto n = network.tree.size();
    std::map<std::uint32_t, double> size;
    for (const std::uint32_t t : network.tree) size[t] += 1.0;
    double metres = 0.0;
    for (const double l : network.lengths_m) metres += l;
    double pairs = 0.0;
    for (const auto& [tree, marks] : size) pairs += marks * (marks - 1.0) / 2.0;
    // to the micrometre: the same links summed in another order are the same length
    return {static_cast<double>(n - network.links.size()),
            static_cast<double>(network.links.size()),
            std::round(metres * 1e6),
            size.at(network.tree[mark]),
            has(network, link) ? 1.0 : 0.0,
            pairs};
}

constexpr std::uint32_t draws = 39;

// What the posterior's sampler is told in place of the field's weights and answers.
struct Wrong {
    double link_shift = 0.0;
    bool deaf = false;
};

std::array<RankHistogram, quantities> histograms(std::uint64_t first, std::uint64_t trials, const Wrong& wrong) {
    std::array<RankHistogram, quantities> ranks{RankHistogram(draws, 8), RankHistogram(draws, 8), RankHistogram(draws, 8),
                                                RankHistogram(draws, 8), RankHistogram(draws, 8), RankHistogram(draws, 8)};
    Random random(first);
    std::size_t chained = 0;
    NetworkDrawOptions options;
    options.moves_per_mark = 12.0;
    options.warm_up_draws = 12;
    options.prune_log_chance = -50.0;
    for (std::uint64_t trial = first; trial < first + trials; ++trial) {
        const WeighedField field = weighed_field(trial);
        const Network truth = truth_of(field, 1'000'000 + trial);
        std::vector<MarkFact> told = answers(field, truth, random);
        if (wrong.deaf) told.clear();
        const KnownLinks known = known_links(field.places, field.links, told);
        EXPECT_TRUE(known.conflicts.empty()) << "true answers do not contradict each other, trial " << trial;
        EXPECT_TRUE(known.added.empty()) << trial;
        EXPECT_LE(known.removed.size(), told.size()) << "a line crossed more than its own candidate, trial " << trial;
        std::vector<double> weights = field.scores.log_weight;
        for (double& weight : weights) weight += wrong.link_shift;
        const auto drawn = draw_networks(field.keys, field.links, weights, field.scores.log_root, known, draws, options);
        chained += drawn->convergence.chained_marks > 0 ? 1U : 0U;
        const auto mark = static_cast<std::uint32_t>(random.below(field.keys.size()));
        const Link link = field.links[random.below(field.links.size())];
        const auto true_values = measured(truth, mark, link);
        std::array<std::vector<double>, quantities> values;
        for (const DrawnNetwork& draw : drawn->draws) {
            const auto of_draw = measured(network_of(*drawn, draw), mark, link);
            for (std::size_t q = 0; q < quantities; ++q) values[q].push_back(of_draw[q]);
        }
        for (std::size_t q = 0; q < quantities; ++q) ranks[q].add(rank_among(true_values[q], values[q], random));
    }
    EXPECT_TRUE(wrong.deaf || 2 * chained > trials) << "the chains are what is tested";
    return ranks;
}

constexpr std::array<const char*, quantities> names{"systems",     "links",   "length",
                                                    "size of one", "link in", "pairs together"};

TEST(SimulationBasedCalibration, RanksOfTheTruthAreEven) {
    const auto ranks = histograms(2000, 320, {});
    for (std::size_t q = 0; q < quantities; ++q) {
        const double p = ranks[q].evenness().p_value;
        RecordProperty(names[q], std::to_string(p));
        EXPECT_GT(p, 0.002) << names[q];
    }
}

// The check can fail: samplers that are a little wrong are found out.
TEST(SimulationBasedCalibration, FindsWeightsThatAreTooHigh) {
    const auto ranks = histograms(2000, 160, {0.7, false});
    EXPECT_LT(ranks[systems].evenness().p_value, 1e-4);
    EXPECT_LT(ranks[links].evenness().p_value, 1e-4);
}

TEST(SimulationBasedCalibration, FindsASamplerThatDoesNotListen) {
    // told nothing, the draws are those of the prior: ranks of what was asked about are uneven once what was asked is
    // measured
    const auto asked = [](bool deaf) {
        RankHistogram ranks(draws, 8);
        Random random(77);
        for (std::uint64_t trial = 5000; trial < 5400; ++trial) {
            const WeighedField field = weighed_field(trial);
            const Network truth = truth_of(field, trial);
            const Link link = field.links[random.below(field.links.size())];
            MarkFact fact{
                truth.tree[link.first] == truth.tree[link.second] ? FactKind::same_system : FactKind::different_systems,
                link.first,
                link.second,
                {},
                {},
                0,
                "answer"};
            const KnownLinks known =
                known_links(field.places, field.links, deaf ? std::vector<MarkFact>{} : std::vector{fact});
            NetworkDrawOptions options;
            options.prune_log_chance = -50.0;
            options.warm_up_draws = 12;
            const auto drawn = draw_networks(field.keys, field.links, field.scores.log_weight, field.scores.log_root, known,
                                             draws, options);
            std::vector<double> values;
            for (const DrawnNetwork& draw : drawn->draws)
                values.push_back(
                    (draw.tree[link.first] == draw.tree[link.second]) == (fact.kind == FactKind::same_system) ? 1.0 : 0.0);
            ranks.add(rank_among(1.0, values, random));
        }
        return ranks.evenness().p_value;
    };
    EXPECT_GT(asked(false), 0.002);
    EXPECT_LT(asked(true), 1e-4);
}

}  // namespace
}  // namespace plugside
