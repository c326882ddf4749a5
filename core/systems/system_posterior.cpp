#include "core/systems/system_posterior.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <cmath>
#include <iterator>
#include <limits>
#include <map>
#include <numeric>
#include <thread>
#include <utility>

#include "core/systems/co_membership.h"
#include "core/systems/consensus.h"
#include "core/systems/forest_sampler.h"
#include "core/words/words.h"

namespace plugside {

namespace {

// Two draws in three tell the systems: with the net's weights as they were learnt, which keeps the shares of draws calibrated (the
// foretold shift did not: pairs off by .040 against .011), or, in the first form, at the mean shift. One in three is drawn at five
// equally likely shifts about the mean (the middles of the fifths of a normal distribution) and tells how many there are.
constexpr std::array<double, 5> shift_quantiles{-1.281552, -0.524401, 0.0, 0.524401, 1.281552};

// How far apart in a large group pairs are counted: a million pairs are enough to tell the systems by, and a survey that lies in one
// heap stays quick.
std::size_t most_apart(std::size_t marks) {
    return std::clamp<std::size_t>(1'000'000 / std::max<std::size_t>(marks, 1), 20, 250);
}

int draws_for(std::size_t marks, int wanted) {
    if (wanted > 0) return wanted;
    const double by_size = 450.0 * std::sqrt(600.0 / static_cast<double>(std::max<std::size_t>(marks, 1)));
    return std::clamp(static_cast<int>(by_size), 100, 400);
}

// Enough to tell most systems by; half of what a field of that size gets at the least.
int first_look_draws(std::size_t marks) { return marks > 2000 ? 30 : 60; }

// Things numbered 0.. shared out one by one to two threads: work(number, worker). What is done must not depend on the worker.
template <typename Work>
bool share_out(std::size_t things, const Progress& progress, const Work& work) {
    std::atomic<std::size_t> next{0};
    const auto run = [&](std::size_t worker) {
        for (std::size_t k = next++; k < things && !progress.stopped(); k = next++) work(k, worker);
    };
    {
        const std::jthread helper(run, 1);
        run(0);
    }
    return !progress.stopped();
}

struct Draws {
    std::vector<std::vector<std::uint32_t>> tree;          // of the draws at the mean shift, one each
    std::vector<std::vector<std::uint32_t>> links;         // of the first draws of these: the links, ascending
    std::vector<std::uint32_t> trees;                      // number of trees, of the same draws
    std::vector<std::uint32_t> trees_shifted;              // of the draws about it
    std::vector<std::vector<std::uint32_t>> tree_shifted;  // of the first of these: of each mark
    std::vector<std::uint32_t> link_times;                 // of the draws at the mean shift
    std::vector<NetworkTerms::Pair> told;                  // pairs of which a person is certain
};

struct Shift {
    double of_systems = 0.0;
    double of_number = 0.0;
    double sd = 0.0;
};

// The spacing read off the marks: the middle of their second-neighbour distances.
SurveyScales scales_at_a_glance(const SystemPosterior& posterior) {
    std::vector<double> second;
    for (const Link& link : posterior.links)
        if (link.rank_of_second == 2 || link.rank_of_first == 2) second.push_back(link.length_m);
    SurveyScales scales;
    if (second.empty()) return scales;
    const auto middle = second.begin() + static_cast<std::ptrdiff_t>(second.size() / 2);
    std::nth_element(second.begin(), middle, second.end());
    if (*middle > 0.0) scales.spacing_m = *middle;
    return scales;
}

// What the field as a whole tells, worked out on a thread of its own beside what does not ask for it. What it is made from must
// stay as it is until it was asked for.
class FieldWide {
public:
    FieldWide(const SystemPosterior& posterior, const LinkScores& scores, const PlanOptions& options,
              const LinkWeights& weights, Thoroughness thoroughness, const Progress& progress) {
        shift_.sd = weights.shift_sd;
        if (thoroughness == Thoroughness::first_look) {
            scales_ = scales_at_a_glance(posterior);
            return;
        }
        worker_ = std::jthread([&, stop = Progress{progress.stop, {}}] {
            scales_ = fit_scales(posterior.marks, posterior.links, stop);
            if (stop.stopped()) return;
            const auto features = link_features(posterior.marks, posterior.links, scales_, options.fan_sd_degrees);
            const FieldSummary summary =
                field_summary(posterior.marks, posterior.links, features, scores.log_weight, scales_);
            shift_.of_number = foretold_shift(summary, weights);
            likeness_ = likeness_values(posterior.marks, posterior.links, scores, summary);
            if (!weights.net) shift_.of_systems = shift_.of_number;
        });
    }
    FieldWide(const FieldWide&) = delete;
    FieldWide& operator=(const FieldWide&) = delete;
    ~FieldWide() = default;

    const Shift& shift() { return wait(), shift_; }
    const SurveyScales& scales() { return wait(), scales_; }
    const std::optional<LikenessValues>& likeness() { return wait(), likeness_; }

private:
    void wait() {
        if (worker_.joinable()) worker_.join();
    }
    Shift shift_;
    SurveyScales scales_;
    std::optional<LikenessValues> likeness_;  // nothing in a first look
    std::jthread worker_;
};

// Draws forests on two threads; what a draw is depends only on its number.
std::optional<Draws> draw_forests(const SystemPosterior& posterior, const LinkScores& scores, FieldWide& field,
                                  bool shift_systems, int count, const Progress& progress) {
    std::vector<std::uint64_t> keys;
    keys.reserve(posterior.marks.size());
    for (const Mark& mark : posterior.marks) keys.push_back(mark.key);
    const auto sampler_at = [&](double by) {
        std::vector<double> log_root = scores.log_root;
        for (double& root : log_root) root -= by;
        return ForestSampler(keys, posterior.links, scores.log_weight, log_root);
    };
    const auto all = static_cast<std::size_t>(count);
    const std::size_t for_systems = std::max<std::size_t>(1, all * 2 / 3);
    Draws draws;
    draws.tree.resize(for_systems);
    draws.trees.resize(for_systems);
    draws.links.resize(std::min(for_systems, draws_kept(posterior.marks.size())));
    draws.trees_shifted.resize(all - std::min(all, for_systems));
    draws.tree_shifted.resize(std::min(draws.trees_shifted.size(), draws_kept(posterior.marks.size())));
    const auto tell = [&](std::size_t d) {
        progress.say(0.2 + 0.4 * static_cast<double>(d) / count, Words::later("drawing networks of runs"));
    };
    std::array<std::vector<std::uint32_t>, 2> link_times;
    const ForestSampler at_mean = sampler_at(shift_systems ? field.shift().of_systems : 0.0);
    const bool drawn = share_out(for_systems, progress, [&](std::size_t d, std::size_t worker) {
        if (worker == 0) tell(d);
        auto& times = link_times.at(worker);
        times.resize(posterior.links.size(), 0);
        Forest forest = at_mean.draw(d);
        for (const std::uint32_t link : forest.arrow)
            if (link != no_link) ++times[link];
        draws.trees[d] = forest.trees;
        if (d < draws.links.size()) {
            std::erase(forest.arrow, no_link);
            std::sort(forest.arrow.begin(), forest.arrow.end());
            draws.links[d] = std::move(forest.arrow);
        }
        draws.tree[d] = std::move(forest.tree);
    });
    if (!drawn) return std::nullopt;
    std::vector<ForestSampler> shifted;
    for (const double quantile : shift_quantiles)
        shifted.push_back(sampler_at(field.shift().of_number + quantile * field.shift().sd));
    const bool counted = share_out(draws.trees_shifted.size(), progress, [&](std::size_t k, std::size_t worker) {
        const std::size_t d = for_systems + k;
        if (worker == 0) tell(d);
        Forest forest = shifted[d % shifted.size()].draw(d);
        draws.trees_shifted[k] = forest.trees;
        if (k < draws.tree_shifted.size()) draws.tree_shifted[k] = std::move(forest.tree);
    });
    if (!counted) return std::nullopt;
    draws.link_times.resize(posterior.links.size(), 0);
    for (const auto& times : link_times)
        for (std::size_t e = 0; e < times.size(); ++e) draws.link_times[e] += times[e];
    return draws;
}

// What the survey's facts come to among these marks.
KnownLinks known_among(const Survey& survey, SystemPosterior& posterior) {
    std::vector<std::string> names;
    std::vector<LocalPoint> plugs;
    for (const Mark& mark : posterior.marks) {
        names.push_back(survey.mounds[mark.mound].name);
        plugs.push_back(mark.plug);
    }
    std::vector<KnownFact> of_marks;
    std::vector<std::size_t> place;  // in Survey::known
    for (std::size_t f = 0; f < survey.known.size(); ++f) {
        if (survey.known[f].kind == FactKind::not_a_gopher) continue;  // such marks are none: why_not_used
        of_marks.push_back(survey.known[f]);
        place.push_back(f);
    }
    const ResolvedFacts resolved = resolved_facts(of_marks, names, plugs);
    KnownLinks known = known_links(plugs, posterior.links, resolved.facts, barriers_to_runs(survey.ground));
    for (const std::vector<FactConflict>* conflicts : {&resolved.conflicts, &std::as_const(known).conflicts})
        for (FactConflict conflict : *conflicts) {
            conflict.set_aside = place[conflict.set_aside];
            for (std::size_t& with : conflict.with) with = place[with];
            posterior.conflicts.push_back(std::move(conflict));
        }
    return known;
}

// The same draws where something is known: every draw obeys it.
std::optional<Draws> draw_obeying(SystemPosterior& posterior, const LinkScores& scores, const Shift& shift, int count,
                                  const KnownLinks& known, const NetworkDrawOptions& how, const Progress& progress) {
    std::vector<std::uint64_t> keys;
    keys.reserve(posterior.marks.size());
    for (const Mark& mark : posterior.marks) keys.push_back(mark.key);
    const auto drawn_at = [&](double by, std::size_t draws) {
        std::vector<double> log_root = scores.log_root;
        for (double& root : log_root) root -= by;
        return draw_networks(keys, posterior.links, scores.log_weight, log_root, known, static_cast<std::uint32_t>(draws),
                             how, progress);
    };
    const auto all = static_cast<std::size_t>(count);
    const std::size_t for_systems = std::max<std::size_t>(1, all * 2 / 3);
    Draws draws;
    for (const double quantile : shift_quantiles) {
        auto drawn = drawn_at(shift.of_number + quantile * shift.sd,
                              std::max<std::size_t>(1, (all - for_systems) / shift_quantiles.size()));
        if (!drawn) return std::nullopt;
        const std::size_t most = std::max<std::size_t>(1, draws_kept(posterior.marks.size()) / shift_quantiles.size());
        for (std::size_t d = 0; d < drawn->draws.size(); ++d) {
            draws.trees_shifted.push_back(drawn->draws[d].trees);
            if (d < most) draws.tree_shifted.push_back(std::move(drawn->draws[d].tree));
        }
    }
    progress.say(0.4, Words::later("drawing networks of runs"));
    auto drawn = drawn_at(shift.of_systems, for_systems);
    if (!drawn) return std::nullopt;
    posterior.links = std::move(drawn->links);
    posterior.convergence = drawn->convergence;
    draws.link_times.resize(posterior.links.size());
    for (DrawnNetwork& network : drawn->draws) {
        for (const std::uint32_t link : network.links) ++draws.link_times[link];
        draws.trees.push_back(network.trees);
        draws.tree.push_back(std::move(network.tree));
        if (draws.links.size() < draws_kept(posterior.marks.size())) draws.links.push_back(std::move(network.links));
    }
    return draws;
}

int quantile_of(const std::vector<std::uint32_t>& sorted, double share) {
    return static_cast<int>(quantile_of_sorted<std::uint32_t>(sorted, share));
}

// The number that most draws are near: the summit of the drawn numbers under a normal kernel of half their spread.
int smoothed_mode(const std::vector<std::uint32_t>& sorted, double mean) {
    double squares = 0.0;
    for (const std::uint32_t count : sorted) squares += (count - mean) * (count - mean);
    const double width = std::max(0.5, 0.5 * std::sqrt(squares / static_cast<double>(sorted.size())));
    double best = -1.0;
    std::uint32_t mode = sorted.front();
    for (std::uint32_t candidate = sorted.front(); candidate <= sorted.back(); ++candidate) {
        double near = 0.0;
        for (const std::uint32_t count : sorted) {
            const double off = (static_cast<double>(count) - candidate) / width;
            near += std::exp(-0.5 * off * off);
        }
        if (near <= best) continue;
        best = near;
        mode = candidate;
    }
    return static_cast<int>(mode);
}

SystemsEstimate estimate_of(std::vector<std::uint32_t> trees, const SurveyScales& scales, std::size_t marks) {
    SystemsEstimate estimate;
    estimate.draws = static_cast<int>(trees.size());
    estimate.link_length = Metres::of(scales.spacing_m);
    if (trees.empty()) return estimate;
    std::sort(trees.begin(), trees.end());
    const double tail = 0.5 * (1.0 - estimate.interval);
    estimate.low = quantile_of(trees, tail);
    estimate.high = quantile_of(trees, 1.0 - tail);
    estimate.expected = std::accumulate(trees.begin(), trees.end(), 0.0) / static_cast<double>(trees.size());
    estimate.most_likely = smoothed_mode(trees, estimate.expected);
    estimate.mounds_per_system = static_cast<double>(marks) / estimate.expected;
    return estimate;
}

void tell_pair(std::vector<std::vector<CoMembership::Near>>& table, std::uint32_t a, std::uint32_t b, bool together) {
    constexpr double decisive = 1e9;
    for (const auto& [one, other] : {std::pair(a, b), std::pair(b, a)}) {
        const auto same = [mark = other](const CoMembership::Near& near) { return near.mark == mark; };
        std::erase_if(table[one], same);
        table[one].push_back({other, together ? decisive : -decisive});
    }
}

// The consensus with its ties broken by the marks' keys, not by where they lie: a turned field groups alike.
// A pair of which a person is certain outweighs whatever else speaks for or against two groups.
Consensus consensus_by_key(const std::vector<Mark>& marks, const std::vector<std::vector<CoMembership::Near>>& table,
                           const std::vector<NetworkTerms::Pair>& told) {
    std::vector<std::uint32_t> mark_at(marks.size());
    std::iota(mark_at.begin(), mark_at.end(), 0U);
    std::sort(mark_at.begin(), mark_at.end(), [&](std::uint32_t a, std::uint32_t b) { return marks[a].key < marks[b].key; });
    std::vector<std::uint32_t> place_of(marks.size());
    for (std::uint32_t place = 0; place < mark_at.size(); ++place) place_of[mark_at[place]] = place;
    std::vector<std::vector<CoMembership::Near>> by_key(marks.size());
    for (std::uint32_t place = 0; place < mark_at.size(); ++place) {
        for (const CoMembership::Near& near : table[mark_at[place]])
            by_key[place].push_back({place_of[near.mark], near.share});
    }
    for (const NetworkTerms::Pair& pair : told)
        tell_pair(by_key, place_of[pair.first], place_of[pair.second], pair.log_together > 0.0);
    for (std::uint32_t place = 0; place < mark_at.size(); ++place) {
        std::sort(by_key[place].begin(), by_key[place].end(), [](const auto& a, const auto& b) { return a.mark < b.mark; });
    }
    Consensus ordered = consensus_of(by_key);
    Consensus consensus = ordered;
    for (std::uint32_t place = 0; place < mark_at.size(); ++place) consensus.label[mark_at[place]] = ordered.label[place];
    return consensus;
}

// Renumbers the systems by size, largest first.
void order_systems(SystemPosterior& posterior) {
    struct Standing {
        std::size_t marks = 0;
        std::uint64_t key = ~0ULL;
        std::uint32_t label = 0;
    };
    std::vector<Standing> standing(posterior.systems);
    for (std::uint32_t s = 0; s < posterior.systems; ++s) standing[s].label = s;
    for (std::size_t i = 0; i < posterior.marks.size(); ++i) {
        Standing& own = standing[posterior.system[i]];
        ++own.marks;
        own.key = std::min(own.key, posterior.marks[i].key);
    }
    std::sort(standing.begin(), standing.end(),
              [](const Standing& a, const Standing& b) { return a.marks != b.marks ? a.marks > b.marks : a.key < b.key; });
    std::vector<std::uint32_t> number(posterior.systems);
    for (std::uint32_t rank = 0; rank < standing.size(); ++rank) number[standing[rank].label] = rank;
    for (std::uint32_t& label : posterior.system) label = number[label];
}

void measure_agreement(SystemPosterior& posterior, const Draws& draws,
                       const std::vector<std::vector<CoMembership::Near>>& table) {
    const std::size_t n = posterior.marks.size();
    std::vector<std::size_t> size(posterior.systems, 0);
    for (const std::uint32_t s : posterior.system) ++size[s];
    posterior.belongs.assign(n, 1.0);
    for (std::size_t i = 0; i < n; ++i) {
        const std::size_t others = size[posterior.system[i]] - 1;
        if (others == 0) continue;
        double sum = 0.0;
        for (const CoMembership::Near& near : table[i])
            if (posterior.system[near.mark] == posterior.system[i]) sum += near.share;
        posterior.belongs[i] = std::min(1.0, sum / static_cast<double>(others));
    }
    std::vector<std::uint32_t> together(posterior.systems, 0);
    constexpr std::uint32_t unseen = 0xFFFFFFFFU;
    for (const auto& tree : draws.tree) {
        std::vector<std::uint32_t> tree_of(posterior.systems, unseen);
        std::vector<bool> split(posterior.systems, false);
        for (std::size_t i = 0; i < n; ++i) {
            std::uint32_t& expected = tree_of[posterior.system[i]];
            if (expected == unseen) expected = tree[i];
            if (expected != tree[i]) split[posterior.system[i]] = true;
        }
        for (std::uint32_t s = 0; s < posterior.systems; ++s) together[s] += split[s] ? 0U : 1U;
    }
    for (const std::uint32_t times : together)
        posterior.single.push_back(static_cast<double>(times) / static_cast<double>(draws.tree.size()));
}

std::optional<Draws> draw_as_known(const Survey& survey, SystemPosterior& posterior, const LinkScores& scores,
                                   FieldWide& field, bool shift_systems, int count, Thoroughness thoroughness,
                                   const Progress& progress) {
    if (survey.known.empty()) return draw_forests(posterior, scores, field, shift_systems, count, progress);
    NetworkDrawOptions how;
    if (thoroughness == Thoroughness::first_look) {
        how.chains = 3;
        how.warm_up_draws = 10;
    }
    const Shift shift = field.shift();  // asked for before the draws add to the links
    const KnownLinks known = known_among(survey, posterior);
    std::optional<Draws> draws = draw_obeying(posterior, scores, shift, count, known, how, progress);
    if (!draws) return std::nullopt;
    std::copy_if(known.pairs.begin(), known.pairs.end(), std::back_inserter(draws->told),
                 [](const NetworkTerms::Pair& pair) { return std::isinf(pair.log_together); });
    for (const std::uint32_t e : known.forced)
        draws->told.push_back(
            {posterior.links[e].first, posterior.links[e].second, std::numeric_limits<double>::infinity()});
    return draws;
}

}  // namespace

WeighedLinks weigh_links(const Survey& survey, const PlanOptions& options, const LinkWeights& weights,
                         const Progress& progress) {
    WeighedLinks weighed;
    weighed.marks = marks_of(survey, options);
    if (weighed.marks.empty()) return weighed;
    weighed.links = candidate_links(weighed.marks, barriers_to_runs(survey.ground));
    progress.say(0.05, Words::later("weighing links"));
    std::vector<LinkFeatures> features;
    if (!weights.net)
        features = link_features(weighed.marks, weighed.links, fit_scales(weighed.marks, weighed.links, progress),
                                 options.fan_sd_degrees);
    weighed.scores = scores_of(weighed.marks, weighed.links, features, weights, progress);
    return weighed;
}

std::optional<SystemPosterior> infer_systems(const Survey& survey, const PlanOptions& options, const LinkWeights& weights,
                                             const Progress& progress) {
    return infer_systems(survey, options, weights, weigh_links(survey, options, weights, progress), Thoroughness::whole,
                         progress);
}

std::optional<SystemPosterior> infer_systems(const Survey& survey, const PlanOptions& options, const LinkWeights& weights,
                                             WeighedLinks weighed, Thoroughness thoroughness, const Progress& progress) {
    SystemPosterior posterior;
    if (weighed.marks.empty()) return posterior;
    if (progress.stopped()) return std::nullopt;
    posterior.marks = std::move(weighed.marks);
    posterior.links = std::move(weighed.links);
    FieldWide field(posterior, weighed.scores, options, weights, thoroughness, progress);
    const int wanted = thoroughness == Thoroughness::whole ? draws_for(posterior.marks.size(), options.draws)
                                                           : first_look_draws(posterior.marks.size());
    std::optional<Draws> draws =
        draw_as_known(survey, posterior, weighed.scores, field, weights.net == nullptr, wanted, thoroughness, progress);
    if (!draws) return std::nullopt;
    posterior.scales = field.scales();
    posterior.likeness = field.likeness();
    CoMembership pairs(posterior.marks.size(), most_apart(posterior.marks.size()));
    for (const auto& tree : draws->tree) {
        if (progress.stopped()) return std::nullopt;
        pairs.add(tree);
    }
    progress.say(0.7, Words::later("finding the systems"));
    auto table = pairs.table();
    posterior.estimate = estimate_of(draws->trees_shifted.empty() ? draws->trees : draws->trees_shifted, posterior.scales,
                                     posterior.marks.size());
    const Consensus consensus = consensus_by_key(posterior.marks, table, draws->told);
    if (progress.stopped()) return std::nullopt;
    posterior.system = consensus.label;
    posterior.systems = consensus.groups;
    posterior.expected_index = consensus.expected_index;
    for (const std::uint32_t times : draws->link_times)
        posterior.link_probability.push_back(static_cast<double>(times) / static_cast<double>(draws->tree.size()));
    order_systems(posterior);
    measure_agreement(posterior, *draws, table);
    posterior.together = std::move(table);
    posterior.drawn_for_number = draws->trees_shifted.empty() ? draws->tree : std::move(draws->tree_shifted);
    posterior.drawn_links = std::move(draws->links);
    draws->tree.resize(posterior.drawn_links.size());
    posterior.drawn_system = std::move(draws->tree);
    return posterior;
}

}  // namespace plugside
