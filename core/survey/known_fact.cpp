#include "core/survey/known_fact.h"

#include <array>
#include <cmath>

#include "core/words/words.h"

namespace plugside {

namespace {

constexpr std::array all_kinds{FactKind::same_system,   FactKind::different_systems, FactKind::run_here,
                               FactKind::no_run_across, FactKind::not_a_gopher,      FactKind::probe_found,
                               FactKind::probe_nothing, FactKind::caught_here};

std::size_t marks_spoken_of(FactKind kind) {
    switch (kind) {
        case FactKind::no_run_across: return 0;
        case FactKind::not_a_gopher:
        case FactKind::caught_here: return 1;
        default: return 2;
    }
}

std::string statement(const KnownFact& fact) {
    const auto mark = [&](std::size_t k) { return k < fact.marks.size() ? fact.marks[k] : std::string("?"); };
    switch (fact.kind) {
        case FactKind::same_system: return Words::tell("{1} and {2} are one system", {mark(0), mark(1)});
        case FactKind::different_systems: return Words::tell("{1} and {2} are different systems", {mark(0), mark(1)});
        case FactKind::run_here:
            return fact.line ? Words::tell("a run lies along the drawn line")
                             : Words::tell("a run joins {1} and {2}", {mark(0), mark(1)});
        case FactKind::no_run_across: return Words::tell("no run crosses the drawn line");
        case FactKind::not_a_gopher: return Words::tell("{1} is not a gopher's", {mark(0)});
        case FactKind::probe_found: return Words::tell("the probe found a run between {1} and {2}", {mark(0), mark(1)});
        case FactKind::probe_nothing: return Words::tell("the probe found nothing between {1} and {2}", {mark(0), mark(1)});
        case FactKind::caught_here: return Words::tell("an animal was caught at {1}", {mark(0)});
    }
    return mark(0);
}

}  // namespace

bool KnownFact::certain() const {
    const bool never = kind == FactKind::probe_found || kind == FactKind::probe_nothing || kind == FactKind::caught_here;
    return !never && !log_strength;
}

std::string to_text(FactKind kind) {
    switch (kind) {
        case FactKind::same_system: return "same system";
        case FactKind::different_systems: return "different systems";
        case FactKind::run_here: return "run here";
        case FactKind::no_run_across: return "no run across";
        case FactKind::not_a_gopher: return "not a gopher";
        case FactKind::probe_found: return "probe found";
        case FactKind::probe_nothing: return "probe nothing";
        case FactKind::caught_here: return "caught here";
    }
    return "same system";
}

std::optional<FactKind> fact_kind_from_text(const std::string& text) {
    for (const FactKind kind : all_kinds)
        if (text == to_text(kind)) return kind;
    return std::nullopt;
}

std::string to_text(const KnownFact& fact) {
    const bool observed =
        fact.kind == FactKind::probe_found || fact.kind == FactKind::probe_nothing || fact.kind == FactKind::caught_here;
    return fact.certain() || observed ? statement(fact) : Words::tell("{1}, likely", {statement(fact)});
}

std::optional<std::string> what_is_missing(const KnownFact& fact) {
    const bool by_line = fact.kind == FactKind::no_run_across || (fact.kind == FactKind::run_here && fact.marks.empty());
    if (by_line) {
        if (!fact.line || fact.line->vertices.size() < 2) return Words::tell("a line of at least two places is expected");
    } else if (fact.marks.size() != marks_spoken_of(fact.kind)) {
        return marks_spoken_of(fact.kind) == 1 ? Words::tell("one mark is expected") : Words::tell("two marks are expected");
    } else if (fact.marks.size() == 2 && fact.marks[0] == fact.marks[1]) {
        return Words::tell("two different marks are expected");
    }
    if (fact.log_strength && !(std::isfinite(*fact.log_strength) && *fact.log_strength > 0.0))
        return Words::tell("a strength above 0 is expected");
    return std::nullopt;
}

}  // namespace plugside
