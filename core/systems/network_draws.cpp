#include "core/systems/network_draws.h"

#include <algorithm>
#include <atomic>
#include <cassert>
#include <cmath>
#include <mutex>
#include <numeric>
#include <thread>
#include <tuple>

#include "core/systems/convergence.h"
#include "core/systems/disjoint_sets.h"
#include "core/systems/forest_sampler.h"
#include "core/words/words.h"

namespace plugside {

namespace {

using Indexes = std::vector<std::uint32_t>;

struct Field {
    const std::vector<std::uint64_t>& keys;
    const std::vector<double>& log_root;
    const KnownLinks& known;
    std::vector<Link> links;  // candidates and added
    std::vector<double> log_weight;
    std::vector<bool> kept, forced;
};

Field field_of(const std::vector<std::uint64_t>& keys, const std::vector<Link>& links, const std::vector<double>& log_weight,
               const std::vector<double>& log_root, const KnownLinks& known, const NetworkDrawOptions& options) {
    Field field{keys, log_root, known, links, log_weight, {}, {}};
    field.links.insert(field.links.end(), known.added.begin(), known.added.end());
    const std::size_t m = field.links.size();
    field.log_weight.resize(m, options.log_weight_of_added);
    field.kept.assign(m, true);
    field.forced.assign(m, false);
    for (const std::uint32_t e : known.forced) field.forced[e] = true;
    constexpr double most_over_root = 12.0;
    for (std::size_t e = 0; e < m; ++e) {
        if (!known.log_weight_change.empty()) field.log_weight[e] += known.log_weight_change[e];
        const double a = log_root[field.links[e].first];
        const double b = log_root[field.links[e].second];
        field.log_weight[e] = std::min(field.log_weight[e], most_over_root + std::min(a, b));
        const double most_chance = field.log_weight[e] - std::min(a, b) + std::log1p(std::exp(-std::abs(a - b)));
        field.kept[e] = most_chance >= options.prune_log_chance;
    }
    for (const std::uint32_t e : known.witness) field.kept[e] = true;
    for (const std::uint32_t e : known.forced) field.kept[e] = true;
    for (const std::uint32_t e : known.removed) field.kept[e] = false;
    return field;
}

// Marks and links of some parts, in the order of their keys, and what is said of them.
struct Part {
    Indexes marks, links;         // indexes of the field
    std::vector<Link> own_links;  // in the part's own numbers
    std::vector<double> log_weight, log_root;
    std::vector<std::uint64_t> keys;
    NetworkTerms terms;
    Indexes witness;  // own numbers
    std::uint64_t key = 0;
};

struct Parts {
    std::vector<Part> chained;
    Part exact;  // all others together
};

void fill_links(const Field& field, Part& part, const Indexes& own_number, const Indexes& candidates) {
    struct Ordered {
        std::uint32_t a, b, link;
    };
    std::vector<Ordered> order;
    for (const std::uint32_t e : candidates) {
        const auto [a, b] = std::minmax(own_number[field.links[e].first], own_number[field.links[e].second]);
        order.push_back({a, b, e});
    }
    std::sort(order.begin(), order.end(),
              [](const Ordered& x, const Ordered& y) { return std::tie(x.a, x.b, x.link) < std::tie(y.a, y.b, y.link); });
    part.terms.forced.assign(order.size(), false);
    for (const Ordered& at : order) {
        if (field.forced[at.link]) part.terms.forced[part.links.size()] = true;
        part.links.push_back(at.link);
        part.own_links.push_back({at.a, at.b, field.links[at.link].length_m, 0, 0});
        part.log_weight.push_back(field.log_weight[at.link]);
    }
}

void fill_part(const Field& field, Part& part, Indexes& own_number, const Indexes& candidates) {
    std::sort(part.marks.begin(), part.marks.end(), [&](std::uint32_t a, std::uint32_t b) {
        return field.keys[a] != field.keys[b] ? field.keys[a] < field.keys[b] : a < b;
    });
    for (std::uint32_t k = 0; k < part.marks.size(); ++k) {
        const std::uint32_t i = part.marks[k];
        own_number[i] = k;
        part.keys.push_back(field.keys[i]);
        part.log_root.push_back(field.log_root[i]);
        part.key = mixed(part.key, field.keys[i]);
        if (!field.known.catches.empty()) part.terms.catches.push_back(field.known.catches[i]);
    }
    part.terms.log_per_extra_catch = field.known.log_per_extra_catch;
    fill_links(field, part, own_number, candidates);
}

Parts parts_of(const Field& field) {
    const std::size_t n = field.keys.size();
    std::vector<Link> kept;
    for (std::size_t e = 0; e < field.links.size(); ++e)
        if (field.kept[e]) kept.push_back(field.links[e]);
    const Indexes part_of = connected_parts(n, kept);
    const std::size_t count = n == 0 ? 0 : 1U + *std::max_element(part_of.begin(), part_of.end());
    std::vector<bool> needs_chain(count, false);
    for (const auto& pair : field.known.pairs)
        if (part_of[pair.first] == part_of[pair.second]) needs_chain[part_of[pair.first]] = true;
    std::vector<std::uint32_t> catches(count, 0);
    for (std::size_t i = 0; i < field.known.catches.size(); ++i)
        if (field.known.catches[i] > 0 && ++catches[part_of[i]] > 1) needs_chain[part_of[i]] = true;  // at two marks
    Parts parts;
    std::vector<std::uint32_t> place(count, 0);
    for (std::uint32_t p = 0; p < count; ++p)
        if (needs_chain[p]) {
            place[p] = static_cast<std::uint32_t>(parts.chained.size());
            parts.chained.emplace_back();
        }
    const auto part_at = [&](std::uint32_t p) -> Part& { return needs_chain[p] ? parts.chained[place[p]] : parts.exact; };
    std::vector<Indexes> links_at(parts.chained.size() + 1);
    for (std::uint32_t i = 0; i < n; ++i) part_at(part_of[i]).marks.push_back(i);
    for (std::uint32_t e = 0; e < field.links.size(); ++e) {
        const std::uint32_t p = part_of[field.links[e].first];
        if (field.kept[e]) links_at[needs_chain[p] ? place[p] : parts.chained.size()].push_back(e);
    }
    Indexes own_number(n, 0);
    for (std::size_t c = 0; c < parts.chained.size(); ++c) fill_part(field, parts.chained[c], own_number, links_at[c]);
    fill_part(field, parts.exact, own_number, links_at.back());
    for (const auto& pair : field.known.pairs)
        if (part_of[pair.first] == part_of[pair.second])
            part_at(part_of[pair.first])
                .terms.pairs.push_back({own_number[pair.first], own_number[pair.second], pair.log_together});
    std::vector<bool> in_witness(field.links.size(), false);
    for (const std::uint32_t e : field.known.witness) in_witness[e] = true;
    for (Part& part : parts.chained) {
        std::sort(part.terms.pairs.begin(), part.terms.pairs.end(), [](const auto& x, const auto& y) {
            const auto [x_low, x_high] = std::minmax(x.first, x.second);
            const auto [y_low, y_high] = std::minmax(y.first, y.second);
            return std::tie(x_low, x_high, x.log_together) < std::tie(y_low, y_high, y.log_together);
        });
        for (std::uint32_t e = 0; e < part.links.size(); ++e)
            if (in_witness[part.links[e]]) part.witness.push_back(e);
    }
    return parts;
}

// Exact draws of a part with some links in it in any case: their trees are nodes, rooted by the sum over their marks.
class ContractedSampler {
public:
    ContractedSampler(const Part& part, const Indexes& fixed) : fixed_(fixed), sampler_(sampler_of(part, fixed, link_)) {}

    [[nodiscard]] Indexes draw(std::uint64_t number) const {
        Indexes links = fixed_;
        for (const std::uint32_t e : sampler_.draw(number).arrow)
            if (e != no_link) links.push_back(link_[e]);
        return links;
    }

private:
    static ForestSampler sampler_of(const Part& part, const Indexes& fixed, Indexes& link_at) {
        DisjointSets joined(part.marks.size());
        for (const std::uint32_t e : fixed) joined.join(part.own_links[e].first, part.own_links[e].second);
        const Indexes node = joined.labels();
        const std::size_t nodes = node.empty() ? 0 : 1U + *std::max_element(node.begin(), node.end());
        std::vector<std::uint64_t> keys(nodes, ~0ULL);
        std::vector<double> root(nodes, 0.0), log_weight;
        for (std::size_t i = 0; i < node.size(); ++i) {
            keys[node[i]] = std::min(keys[node[i]], part.keys[i]);
            root[node[i]] += std::exp(part.log_root[i]);
        }
        for (double& r : root) r = std::log(r);
        std::vector<Link> links;
        for (std::uint32_t e = 0; e < part.own_links.size(); ++e) {
            const std::uint32_t a = node[part.own_links[e].first];
            const std::uint32_t b = node[part.own_links[e].second];
            if (a == b) continue;
            links.push_back({a, b, part.own_links[e].length_m, 0, 0});
            log_weight.push_back(part.log_weight[e]);
            link_at.push_back(e);
        }
        return ForestSampler(keys, links, log_weight, root);
    }

    Indexes link_;
    Indexes fixed_;
    ForestSampler sampler_;
};

// The witness with as much of an exact draw as does not join what must be apart.
Indexes start_of(const Part& part, const ContractedSampler& about_witness, std::uint64_t number) {
    Indexes start = part.witness;
    DisjointSets joined(part.marks.size());
    for (const std::uint32_t e : start) joined.join(part.own_links[e].first, part.own_links[e].second);
    Indexes drawn = about_witness.draw(number);
    drawn.erase(drawn.begin(), drawn.begin() + static_cast<std::ptrdiff_t>(part.witness.size()));
    for (const std::uint32_t e : drawn) {
        const std::uint32_t a = joined.representative(part.own_links[e].first);
        const std::uint32_t b = joined.representative(part.own_links[e].second);
        const bool forbidden =
            std::any_of(part.terms.pairs.begin(), part.terms.pairs.end(), [&](const NetworkTerms::Pair& pair) {
                if (!(std::isinf(pair.log_together) && pair.log_together < 0.0)) return false;
                const std::uint32_t one = joined.representative(pair.first);
                const std::uint32_t two = joined.representative(pair.second);
                return (one == a && two == b) || (one == b && two == a);
            });
        if (!forbidden && joined.join(a, b)) start.push_back(e);
    }
    return start;
}

// Work done by several threads, each thing once; what is done does not depend on who does it.
template <typename Work>
void share_out(std::size_t things, unsigned threads, const Work& work) {
    std::atomic<std::size_t> next = 0;
    const auto run = [&] {
        for (std::size_t k = next++; k < things; k = next++) work(k);
    };
    std::vector<std::jthread> helpers;
    for (unsigned t = 1; t < std::min<std::size_t>(threads, things); ++t) helpers.emplace_back(run);
    run();
}

class Drawing {
public:
    Drawing(const Field& field, std::uint32_t draws, const NetworkDrawOptions& options, const Progress& progress)
        : field_(field),
          parts_(parts_of(field)),
          draws_(draws),
          chains_(std::min(std::max(options.chains, 3U), draws)),
          options_(options),
          progress_(progress) {}

    std::optional<DrawnNetworks> all() {
        of_part_.assign(parts_.chained.size(), std::vector<Indexes>(draws_));
        turns_ = parts_.chained.size() * chains_ + 1;
        share_out(parts_.chained.size() * chains_, options_.threads, [&](std::size_t k) {
            run_chain(k / chains_, static_cast<std::uint32_t>(k % chains_));
            tell();
        });
        if (progress_.stopped()) return std::nullopt;
        DrawnNetworks drawn;
        drawn.links = field_.links;
        drawn.convergence = convergence();
        assemble(drawn.draws);
        if (progress_.stopped()) return std::nullopt;
        tell();
        return drawn;
    }

private:
    void tell() {
        const std::lock_guard lock(telling_);
        progress_.say(static_cast<double>(++done_) / static_cast<double>(turns_), Words::later("drawing networks"));
    }

    void run_chain(std::size_t at, std::uint32_t number) {
        const Part& part = parts_.chained[at];
        const ContractedSampler about_witness(part, part.witness);
        NetworkChain chain(part.marks.size(), part.own_links, part.log_weight, part.log_root, part.terms,
                           start_of(part, about_witness, number), mixed(part.key, number + 1));
        const auto moves =
            static_cast<std::size_t>(std::ceil(options_.moves_per_mark * static_cast<double>(part.marks.size())));
        const std::uint32_t turns = (draws_ - number + chains_ - 1) / chains_;
        for (std::uint32_t turn = 0; turn < options_.warm_up_draws + turns; ++turn) {
            if (progress_.stopped()) return;
            chain.run(moves);
            if (turn % redraw_all_every == 0) chain.make(NetworkChain::Move::redraw_all);
            if (turn < options_.warm_up_draws) continue;
            Indexes& links = of_part_[at][number + (turn - options_.warm_up_draws) * chains_];
            links = chain.links();
            for (std::uint32_t& e : links) e = part.links[e];
        }
    }

    void assemble(std::vector<DrawnNetwork>& draws) {
        draws.resize(draws_);
        Indexes fixed;
        for (std::uint32_t e = 0; e < parts_.exact.links.size(); ++e)
            if (parts_.exact.terms.forced[e]) fixed.push_back(e);
        const ContractedSampler exact(parts_.exact, fixed);
        share_out(draws_, options_.threads, [&](std::size_t k) {
            if (progress_.stopped()) return;
            DrawnNetwork& draw = draws[k];
            for (const std::uint32_t e : exact.draw(k)) draw.links.push_back(parts_.exact.links[e]);
            for (auto& of : of_part_) draw.links.insert(draw.links.end(), of[k].begin(), of[k].end());
            std::sort(draw.links.begin(), draw.links.end());
            DisjointSets joined(field_.keys.size());
            for (const std::uint32_t e : draw.links) joined.join(field_.links[e].first, field_.links[e].second);
            constexpr std::uint32_t none = no_mark;
            Indexes least(field_.keys.size(), none);
            draw.tree.resize(field_.keys.size());
            for (std::uint32_t i = 0; i < draw.tree.size(); ++i) {
                std::uint32_t& first = least[joined.representative(i)];
                if (first == none) first = i;
                draw.tree[i] = first;
            }
            draw.trees = static_cast<std::uint32_t>(field_.keys.size() - draw.links.size());
        });
    }

    // One stream a chain, all as long as the shortest.
    template <typename Value>
    [[nodiscard]] ChainDraws streams(const Value& value) const {
        const std::uint32_t turns = chains_ == 0 ? 0 : draws_ / chains_;
        ChainDraws streams(chains_, std::vector<double>(turns));
        for (std::uint32_t c = 0; c < chains_; ++c)
            for (std::uint32_t t = 0; t < turns; ++t) streams[c][t] = value(t * chains_ + c);
        return streams;
    }

    [[nodiscard]] NetworkConvergence convergence() const {
        NetworkConvergence result;
        result.systems_size = result.links_size = draws_;
        for (std::size_t at = 0; at < parts_.chained.size(); ++at) {
            const Part& part = parts_.chained[at];
            result.chained_marks += part.marks.size();
            const ChainDraws systems =
                streams([&](std::uint32_t k) { return static_cast<double>(part.marks.size() - of_part_[at][k].size()); });
            result.systems_r_hat = std::max(result.systems_r_hat, split_r_hat(systems));
            result.systems_size = std::min(result.systems_size, effective_sample_size(systems));
            judge_links(at, result);
        }
        const double chains = chains_;
        if (result.chained_marks > 0)
            result.converged = result.systems_r_hat <= 1.01 && result.systems_size >= 100.0 * chains &&
                               result.links_r_hat <= 1.05 && result.links_size >= 50.0 * chains;
        return result;
    }

    void judge_links(std::size_t at, NetworkConvergence& result) const {
        std::vector<std::uint32_t> times(field_.links.size(), 0);
        for (const Indexes& links : of_part_[at])
            for (const std::uint32_t e : links) ++times[e];
        Indexes row_of(field_.links.size(), no_link);
        std::vector<std::vector<std::uint8_t>> in;  // of each doubtful link, whether it is in a draw
        for (const std::uint32_t e : parts_.chained[at].links) {
            const double share = times[e] / static_cast<double>(draws_);
            if (share < 0.05 || share > 0.95) continue;
            row_of[e] = static_cast<std::uint32_t>(in.size());
            in.emplace_back(draws_, std::uint8_t{0});
        }
        for (std::size_t k = 0; k < draws_; ++k)
            for (const std::uint32_t e : of_part_[at][k])
                if (row_of[e] != no_link) in[row_of[e]][k] = 1;
        std::vector<double> r_hat(in.size(), 1.0), size(in.size(), draws_);
        share_out(in.size(), options_.threads, [&](std::size_t row) {
            if (progress_.stopped()) return;
            const ChainDraws values = streams([&](std::uint32_t k) { return static_cast<double>(in[row][k]); });
            r_hat[row] = split_r_hat(values);
            size[row] = effective_sample_size(values);
        });
        for (std::size_t row = 0; row < in.size(); ++row) {
            result.links_r_hat = std::max(result.links_r_hat, r_hat[row]);
            result.links_size = std::min(result.links_size, size[row]);
        }
    }

    static constexpr std::uint32_t redraw_all_every = 8;

    const Field& field_;
    Parts parts_;
    std::uint32_t draws_;
    std::uint32_t chains_;
    NetworkDrawOptions options_;
    const Progress& progress_;
    std::vector<std::vector<Indexes>> of_part_;  // of each chained part and draw: links of the field
    std::mutex telling_;
    std::size_t done_ = 0;
    std::size_t turns_ = 1;
};

}  // namespace

std::optional<DrawnNetworks> draw_networks(const std::vector<std::uint64_t>& keys, const std::vector<Link>& links,
                                           const std::vector<double>& log_weight, const std::vector<double>& log_root,
                                           const KnownLinks& known, std::uint32_t draws, const NetworkDrawOptions& options,
                                           const Progress& progress) {
    assert(log_weight.size() == links.size() && log_root.size() == keys.size());
    if (progress.stopped()) return std::nullopt;
    const Field field = field_of(keys, links, log_weight, log_root, known, options);
    return Drawing(field, draws, options, progress).all();
}

}  // namespace plugside
