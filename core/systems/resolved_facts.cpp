// Facts from names to marks. See known_links.h.
#include <algorithm>
#include <map>

#include "core/systems/known_links.h"
#include "core/words/words.h"

namespace plugside {

namespace {

// Marks beside the line in their order along it.
std::vector<std::uint32_t> marks_along(const Polyline& line, const std::vector<LocalPoint>& places, double beside_m) {
    std::vector<std::pair<double, std::uint32_t>> found;
    for (std::uint32_t i = 0; i < places.size(); ++i) {
        double best = beside_m, at = -1.0, run = 0.0;
        for (std::size_t v = 1; v < line.vertices.size(); ++v) {
            const LocalPoint from = line.vertices[v - 1];
            const LocalVector step = line.vertices[v] - from;
            const double length = step.length_m();
            if (const double off = distance_to_segment_m(places[i], from, line.vertices[v]); off <= best) {
                best = off;
                at = run + (length > 0.0 ? std::clamp(dot(places[i] - from, step) / length, 0.0, length) : 0.0);
            }
            run += length;
        }
        if (at >= 0.0) found.emplace_back(at, i);
    }
    std::sort(found.begin(), found.end());
    std::vector<std::uint32_t> marks;
    for (const auto& [along, mark] : found) marks.push_back(mark);
    return marks;
}

}  // namespace

ResolvedFacts resolved_facts(const std::vector<KnownFact>& facts, const std::vector<std::string>& names,
                             const std::vector<LocalPoint>& places, Metres beside_line) {
    ResolvedFacts resolved;
    std::map<std::string, std::uint32_t> mark_of;
    for (std::uint32_t i = 0; i < names.size(); ++i) mark_of.emplace(names[i], i);
    std::map<std::string, std::size_t> no_gopher;
    for (std::size_t k = 0; k < facts.size(); ++k)
        if (facts[k].kind == FactKind::not_a_gopher && facts[k].marks.size() == 1) no_gopher.emplace(facts[k].marks[0], k);
    for (std::size_t k = 0; k < facts.size(); ++k) {
        const KnownFact& fact = facts[k];
        const std::string text = to_text(fact);
        const auto set_aside = [&](const std::string& why, std::vector<std::size_t> with) {
            resolved.conflicts.push_back({Words::tell("\"{1}\" is set aside: {2}.", {text, why}), k, std::move(with)});
        };
        if (const auto missing = what_is_missing(fact)) {
            set_aside(*missing, {});
            continue;
        }
        if (fact.kind == FactKind::not_a_gopher) continue;
        MarkFact mark_fact{fact.kind, no_mark, no_mark, fact.line, fact.log_strength, k, text};
        bool all_found = true;
        for (std::size_t m = 0; m < fact.marks.size() && all_found; ++m) {
            if (const auto out = no_gopher.find(fact.marks[m]); out != no_gopher.end()) {
                set_aside(Words::tell("it contradicts \"{1}\"", {to_text(facts[out->second])}), {out->second});
                all_found = false;
            } else if (const auto found = mark_of.find(fact.marks[m]); found == mark_of.end()) {
                set_aside(Words::tell("no mound that takes part is named {1}", {fact.marks[m]}), {});
                all_found = false;
            } else {
                (m == 0 ? mark_fact.first : mark_fact.second) = found->second;
            }
        }
        if (!all_found) continue;
        if (fact.kind != FactKind::run_here || !fact.marks.empty()) {
            resolved.facts.push_back(mark_fact);
            continue;
        }
        const std::vector<std::uint32_t> along = marks_along(*fact.line, places, beside_line.value());
        if (along.size() < 2) set_aside(Words::tell("fewer than two marks lie beside it"), {});
        for (std::size_t i = 1; i < along.size(); ++i) {
            mark_fact.first = along[i - 1];
            mark_fact.second = along[i];
            resolved.facts.push_back(mark_fact);
        }
    }
    return resolved;
}

}  // namespace plugside
