// How good the systems are that given weights of links and roots lead to: adjusted Rand index beside DBSCAN with its radius
// tuned on the truth, and the number of systems, by kind. For weights that no resource can hold, such as those of a net that
// was told the true parameters of each field (train_link_net.py --told --scores), which is a ceiling for one that was not.
//
// Use:    index_of_scores SCORES.bin
// Format: 32-bit words, little-endian, a field: mark, kind, seed, mounds wanted, marks, links; log weight of each link; of
// each root.
#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <iostream>
#include <map>
#include <set>
#include <vector>

#include "core/plan/make_plan.h"
#include "core/simulation/burrow_simulator.h"
#include "core/simulation/plan_score.h"
#include "core/systems/co_membership.h"
#include "core/systems/consensus.h"
#include "core/systems/forest_sampler.h"
#include "core/systems/marks.h"

namespace {

using namespace plugside;

constexpr std::uint32_t score_word = 0x504C5548;
constexpr int draws = 200;

struct Sums {
    int fields = 0;
    double index = 0.0, yardstick = 0.0, best_cut = 0.0, ratio = 0.0, width = 0.0;
    int holds = 0;
    void add(const Sums& other) {
        fields += other.fields;
        index += other.index;
        yardstick += other.yardstick;
        best_cut += other.best_cut;
        ratio += other.ratio;
        width += other.width;
        holds += other.holds;
    }
};

std::vector<double> read_scores(std::FILE* in, std::size_t count) {
    std::vector<float> values(count);
    if (std::fread(values.data(), sizeof(float), count, in) != count) values.clear();
    return {values.begin(), values.end()};
}

double yardstick_of(const std::vector<Mark>& marks, const std::vector<std::size_t>& truth) {
    std::vector<LocalPoint> plugs;
    for (const Mark& mark : marks) plugs.push_back(mark.plug);
    double best = 0.0;
    for (double radius = 0.5; radius < 12.0; radius *= 1.06)
        for (int least = 1; least <= 4; ++least)
            best = std::max(best, adjusted_rand_index(density_clusters(plugs, Metres::of(radius), least), truth));
    return best;
}

double index_of(const std::vector<std::vector<CoMembership::Near>>& table, double least_share,
                const std::vector<std::size_t>& truth) {
    const Consensus consensus = consensus_of(table, least_share);
    return adjusted_rand_index({consensus.label.begin(), consensus.label.end()}, truth);
}

Sums judge(const SimulatedField& field, const std::vector<double>& weight, const std::vector<double>& root) {
    const std::vector<Mark> marks = marks_of(field.survey, {});
    const std::vector<Link> links = candidate_links(marks, field.survey.ground.barriers);
    std::map<std::size_t, std::size_t> system_of;
    for (const TrueMound& mound : field.truth.mounds)
        if (mound.seen_as) system_of[*mound.seen_as] = mound.system;
    std::vector<std::size_t> truth;
    std::vector<std::uint64_t> keys;
    for (const Mark& mark : marks) {
        truth.push_back(system_of.at(mark.mound));
        keys.push_back(mark.key);
    }
    const std::size_t systems = std::set<std::size_t>(truth.begin(), truth.end()).size();
    const ForestSampler sampler(keys, links, weight, root);
    CoMembership pairs(marks.size());
    std::vector<std::size_t> numbers;
    double sum = 0.0;
    for (std::uint64_t d = 0; d < draws; ++d) {
        const Forest forest = sampler.draw(d);
        pairs.add(forest.tree);
        numbers.push_back(forest.trees);
        sum += forest.trees;
    }
    std::sort(numbers.begin(), numbers.end());
    const auto quantile = [&](double share) { return numbers[static_cast<std::size_t>(share * (draws - 1))]; };
    const auto table = pairs.table();
    Sums sums;
    sums.fields = 1;
    sums.yardstick = yardstick_of(marks, truth);
    sums.index = index_of(table, least_share_together, truth);
    for (double share = 0.1; share < 0.9; share += 0.05)
        sums.best_cut = std::max(sums.best_cut, index_of(table, share, truth));
    sums.ratio = sum / draws / static_cast<double>(systems);
    sums.width = static_cast<double>(quantile(0.95) - quantile(0.05)) / static_cast<double>(systems);
    sums.holds = quantile(0.05) <= systems && systems <= quantile(0.95) ? 1 : 0;
    return sums;
}

void print(const std::string& name, const Sums& sums) {
    const double n = sums.fields;
    std::printf(
        "%-24s %4d  index %.3f  yardstick %.3f  gain %+.3f  best cut %.3f  count %.2f  width %.2f  holds "
        "%.0f\n",
        name.c_str(), sums.fields, sums.index / n, sums.yardstick / n, (sums.index - sums.yardstick) / n, sums.best_cut / n,
        sums.ratio / n, sums.width / n, 100.0 * sums.holds / n);
}

}  // namespace

int main(int argc, char** argv) {
    std::FILE* in = argc == 2 ? std::fopen(argv[1], "rb") : nullptr;
    if (in == nullptr) {
        std::cerr << "index_of_scores SCORES.bin\n";
        return 2;
    }
    std::map<FieldKind, Sums> by_kind;
    std::uint32_t head[6];
    while (std::fread(head, sizeof(std::uint32_t), 6, in) == 6 && head[0] == score_word) {
        SimulationOptions wanted;
        wanted.kind = static_cast<FieldKind>(head[1]);
        wanted.seed = head[2];
        wanted.mounds_wanted = head[3];
        const std::vector<double> weight = read_scores(in, head[5]);
        const std::vector<double> root = read_scores(in, head[4]);
        by_kind[wanted.kind].add(judge(simulate_field(wanted), weight, root));
    }
    std::fclose(in);
    Sums all;
    for (const auto& [kind, sums] : by_kind) {
        print(to_text(kind), sums);
        all.add(sums);
    }
    print("all", all);
    return all.fields > 0 ? 0 : 3;
}
