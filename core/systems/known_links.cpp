#include "core/systems/known_links.h"

#include <algorithm>
#include <cassert>
#include <limits>
#include <utility>

#include "core/geometry/polyline.h"
#include "core/systems/fact_witness.h"
#include "core/words/words.h"

namespace plugside {

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

bool meets(LocalPoint a, LocalPoint b, const Polyline& line) {
    for (std::size_t i = 1; i < line.vertices.size(); ++i)
        if (segments_meet(a, b, line.vertices[i - 1], line.vertices[i])) return true;
    return false;
}

class FactReader {
public:
    FactReader(const std::vector<LocalPoint>& places, const std::vector<Link>& links, const std::vector<MarkFact>& facts,
               const std::vector<Barrier>& barriers, const KnownLinksOptions& options)
        : places_(places),
          facts_(facts),
          barriers_(barriers),
          options_(options),
          witness_(places.size(), links),
          candidates_(links.size()) {
        known_.log_weight_change.assign(links.size(), 0.0);
    }

    KnownLinks read() {
        for (std::size_t at = 0; at < facts_.size(); ++at) take(at);
        finish();
        return std::move(known_);
    }

private:
    void take(std::size_t at) {
        const MarkFact& fact = facts_[at];
        const bool certain = !fact.log_strength;
        const double strength = fact.log_strength.value_or(0.0);
        switch (fact.kind) {
            case FactKind::same_system:
                if (certain)
                    take_same(at);
                else
                    known_.pairs.push_back({fact.first, fact.second, strength});
                break;
            case FactKind::different_systems:
                if (certain)
                    take_different(at);
                else
                    known_.pairs.push_back({fact.first, fact.second, -strength});
                break;
            case FactKind::run_here:
                if (certain)
                    take_run(at);
                else
                    weigh(at, strength, true);
                break;
            case FactKind::no_run_across: take_line(at); break;
            case FactKind::probe_found: weigh(at, fact.log_strength.value_or(options_.log_found), true); break;
            case FactKind::probe_nothing: weigh(at, -fact.log_strength.value_or(options_.log_nothing), false); break;
            case FactKind::caught_here:
                known_.catches.resize(places_.size(), 0);
                ++known_.catches[fact.first];
                break;
            case FactKind::not_a_gopher: break;  // its mark is not among these
        }
    }

    // The certain facts that hold a and b together, one after the other; empty if none do.
    [[nodiscard]] std::vector<std::size_t> held_together_by(std::uint32_t a, std::uint32_t b) const {
        std::vector<std::size_t> by(places_.size(), facts_.size());
        std::vector<bool> seen(places_.size(), false);
        std::vector<std::uint32_t> reached(1, a);
        seen[a] = true;
        for (std::size_t at = 0; at < reached.size() && !seen[b]; ++at)
            for (const std::size_t k : holding_) {
                const MarkFact& fact = facts_[k];
                if (fact.first != reached[at] && fact.second != reached[at]) continue;
                const std::uint32_t next = fact.first == reached[at] ? fact.second : fact.first;
                if (seen[next]) continue;
                seen[next] = true;
                by[next] = k;
                reached.push_back(next);
            }
        std::vector<std::size_t> chain;
        if (!seen[b]) return chain;
        for (std::uint32_t mark = b; mark != a;) {
            chain.push_back(by[mark]);
            mark = facts_[by[mark]].first == mark ? facts_[by[mark]].second : facts_[by[mark]].first;
        }
        return chain;
    }

    // Facts that say that a's and b's systems are not one, with what holds their marks to a and b; empty if none does.
    [[nodiscard]] std::vector<std::size_t> kept_apart_by(std::uint32_t a, std::uint32_t b) const {
        for (const std::size_t k : parting_) {
            for (const auto& [one, two] :
                 {std::pair(facts_[k].first, facts_[k].second), std::pair(facts_[k].second, facts_[k].first)}) {
                const auto left = held_together_by(a, one);
                const auto right = held_together_by(b, two);
                if ((one != a && left.empty()) || (two != b && right.empty())) continue;
                std::vector<std::size_t> all(1, k);
                all.insert(all.end(), left.begin(), left.end());
                all.insert(all.end(), right.begin(), right.end());
                return all;
            }
        }
        return {};
    }

    // What stands against the fact at `at`: `others` are the quoted statements that it cannot hold beside.
    enum class Against { contradicts, no_run, not_apart, barrier, ring, no_way };

    [[nodiscard]] static std::string in_words(Against against, const std::string& fact, const std::string& others) {
        switch (against) {
            case Against::contradicts: return Words::tell("\"{1}\" is set aside: it contradicts {2}.", {fact, others});
            case Against::no_run:
                if (others.empty())
                    return Words::tell("\"{1}\" is set aside: no run can join the two beside what else is known.", {fact});
                return Words::tell("\"{1}\" is set aside: no run can join the two beside what else is known: {2}.",
                                   {fact, others});
            case Against::not_apart:
                return Words::tell("\"{1}\" is set aside: the marks cannot be kept apart beside {2}.", {fact, others});
            case Against::barrier: return Words::tell("\"{1}\" is set aside: a barrier lies between.", {fact});
            case Against::ring:
                return Words::tell("\"{1}\" is set aside: it would close a ring of runs with {2}.", {fact, others});
            case Against::no_way: break;
        }
        if (others.empty()) return Words::tell("\"{1}\" is set aside: it leaves no way for what else is known.", {fact});
        return Words::tell("\"{1}\" is set aside: it leaves no way for what else is known: {2}.", {fact, others});
    }

    void set_aside(std::size_t at, const std::vector<std::size_t>& with, Against against) {
        FactConflict conflict;
        conflict.set_aside = facts_[at].fact;
        std::string others;
        for (const std::size_t k : with) {
            const std::string quoted = "\"" + facts_[k].text + "\"";
            others = others.empty() ? quoted : Words::tell("{1} and {2}", {others, quoted});
            conflict.with.push_back(facts_[k].fact);
        }
        conflict.sentence = in_words(against, facts_[at].text, others);
        std::sort(conflict.with.begin(), conflict.with.end());
        conflict.with.erase(std::unique(conflict.with.begin(), conflict.with.end()), conflict.with.end());
        known_.conflicts.push_back(std::move(conflict));
    }

    void take_same(std::size_t at) {
        const MarkFact& fact = facts_[at];
        if (const auto apart = kept_apart_by(fact.first, fact.second); !apart.empty())
            return set_aside(at, apart, Against::contradicts);
        FactWitness before = witness_;
        witness_.same.push_back({fact.first, fact.second, at});
        if (!mend_with_links()) {
            restore(std::move(before));
            std::vector<std::size_t> with = parting_;
            with.insert(with.end(), lines_.begin(), lines_.end());
            return set_aside(at, with, Against::no_run);
        }
        holding_.push_back(at);
    }

    void take_different(std::size_t at) {
        const MarkFact& fact = facts_[at];
        if (const auto held = held_together_by(fact.first, fact.second); !held.empty())
            return set_aside(at, held, Against::contradicts);
        FactWitness before = witness_;
        witness_.apart.push_back({fact.first, fact.second, at});
        if (!mend_with_links()) {
            restore(std::move(before));
            return set_aside(at, holding_, Against::not_apart);
        }
        parting_.push_back(at);
    }

    void take_run(std::size_t at) {
        const MarkFact& fact = facts_[at];
        if (const auto apart = kept_apart_by(fact.first, fact.second); !apart.empty())
            return set_aside(at, apart, Against::contradicts);
        if (const auto line = line_between(fact.first, fact.second)) return set_aside(at, {*line}, Against::contradicts);
        if (crosses_barrier(fact.first, fact.second)) return set_aside(at, {}, Against::barrier);
        std::vector<std::size_t> ring;
        DisjointSets runs(places_.size());
        for (const auto& [link, k] : forced_by_) {
            runs.join(witness_.links()[link].first, witness_.links()[link].second);
            ring.push_back(k);
            if (link == witness_.find_link(fact.first, fact.second)) return;  // said twice
        }
        if (!runs.join(fact.first, fact.second)) return set_aside(at, ring, Against::ring);
        FactWitness before = witness_;
        const std::uint32_t e = link_of(fact.first, fact.second);
        witness_.forced[e] = true;
        if (!mend_with_links()) {
            restore(std::move(before));
            std::vector<std::size_t> with = parting_;
            with.insert(with.end(), lines_.begin(), lines_.end());
            return set_aside(at, with, Against::no_way);
        }
        forced_by_.emplace_back(e, at);
        holding_.push_back(at);
    }

    void take_line(std::size_t at) {
        const MarkFact& fact = facts_[at];
        std::vector<std::uint32_t> crossing;
        for (std::uint32_t e = 0; e < witness_.links().size(); ++e)
            if (!witness_.removed[e] && across(e, *fact.line)) crossing.push_back(e);
        if (fact.log_strength) {
            for (const std::uint32_t e : crossing) known_.log_weight_change[e] -= *fact.log_strength;
            soft_lines_.emplace_back(&*fact.line, *fact.log_strength);
            return;
        }
        for (const auto& [link, k] : forced_by_)
            if (across(link, *fact.line)) return set_aside(at, {k}, Against::contradicts);
        FactWitness before = witness_;
        for (const std::uint32_t e : crossing) witness_.removed[e] = true;
        lines_.push_back(at);
        if (mend_with_links()) return;
        lines_.pop_back();
        restore(std::move(before));
        set_aside(at, holding_, Against::no_way);
    }

    void weigh(std::size_t at, double change, bool add) {
        const MarkFact& fact = facts_[at];
        std::uint32_t e = witness_.find_link(fact.first, fact.second);
        if (e == no_link) {
            if (!add) return;  // no link, no run: nothing to lower
            if (line_between(fact.first, fact.second) || crosses_barrier(fact.first, fact.second)) return;
            e = link_of(fact.first, fact.second);
        }
        known_.log_weight_change[e] += change;
    }

    [[nodiscard]] bool across(std::uint32_t e, const Polyline& line) const {
        return meets(places_[witness_.links()[e].first], places_[witness_.links()[e].second], line);
    }
    [[nodiscard]] std::optional<std::size_t> line_between(std::uint32_t a, std::uint32_t b) const {
        for (const std::size_t k : lines_)
            if (meets(places_[a], places_[b], *facts_[k].line)) return k;
        return std::nullopt;
    }
    [[nodiscard]] bool crosses_barrier(std::uint32_t a, std::uint32_t b) const {
        return std::any_of(barriers_.begin(), barriers_.end(),
                           [&](const Barrier& barrier) { return meets(places_[a], places_[b], barrier.line); });
    }

    std::uint32_t link_of(std::uint32_t a, std::uint32_t b) {
        const std::uint32_t found = witness_.find_link(a, b);
        if (found != no_link) return found;
        known_.log_weight_change.push_back(0.0);
        for (const auto& [line, strength] : soft_lines_)
            if (meets(places_[a], places_[b], *line)) known_.log_weight_change.back() -= strength;
        return witness_.add_link({std::min(a, b), std::max(a, b), distance_m(places_[a], places_[b]), 0, 0});
    }

    // Mends the witness, giving pairs that no candidates can join a link between the nearest marks of the two parts.
    bool mend_with_links() {
        for (int tries = 0; tries < 8; ++tries) {
            const auto stuck = witness_.mend();
            if (!stuck) return true;
            const std::vector<std::uint32_t> from = witness_.within_reach(stuck->first);
            const std::vector<std::uint32_t> to = witness_.within_reach(stuck->second);
            double nearest = infinite;
            std::pair<std::uint32_t, std::uint32_t> ends;
            for (const std::uint32_t a : from)
                for (const std::uint32_t b : to) {
                    const double length = distance_m(places_[a], places_[b]);
                    if (length >= nearest || a == b || witness_.find_link(a, b) != no_link) continue;
                    if (line_between(a, b) || crosses_barrier(a, b)) continue;
                    nearest = length;
                    ends = {a, b};
                }
            if (nearest == infinite) return false;
            link_of(ends.first, ends.second);
        }
        return false;
    }

    // As before the fact, with the links that were added for it forgotten.
    void restore(FactWitness&& before) {
        witness_ = std::move(before);
        known_.log_weight_change.resize(witness_.links().size());
    }

    void finish() {
        for (std::uint32_t e = 0; e < witness_.links().size(); ++e) {
            if (witness_.forced[e]) known_.forced.push_back(e);
            if (witness_.removed[e]) known_.removed.push_back(e);
            if (witness_.uses(e)) known_.witness.push_back(e);
            if (e >= candidates_) known_.added.push_back(witness_.links()[e]);
        }
        for (const FactWitness::Pair& pair : witness_.same) known_.pairs.push_back({pair.first, pair.second, infinite});
        for (const FactWitness::Pair& pair : witness_.apart) known_.pairs.push_back({pair.first, pair.second, -infinite});
        known_.log_per_extra_catch = options_.log_per_extra_catch;
    }

    const std::vector<LocalPoint>& places_;
    const std::vector<MarkFact>& facts_;
    const std::vector<Barrier>& barriers_;
    KnownLinksOptions options_;
    FactWitness witness_;
    std::size_t candidates_;
    KnownLinks known_;
    std::vector<std::size_t> holding_, parting_, lines_;  // certain facts taken
    std::vector<std::pair<std::uint32_t, std::size_t>> forced_by_;
    std::vector<std::pair<const Polyline*, double>> soft_lines_;
};

}  // namespace

KnownLinks known_links(const std::vector<LocalPoint>& places, const std::vector<Link>& links,
                       const std::vector<MarkFact>& facts, const std::vector<Barrier>& barriers,
                       const KnownLinksOptions& options) {
    return FactReader(places, links, facts, barriers, options).read();
}

}  // namespace plugside
