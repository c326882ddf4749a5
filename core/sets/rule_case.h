// What one rule is judged by, and what it answers: inside of caution_rules.
//
// Ternary: true, false, or nothing where it is not known; Kleene's `both` and `either` know as soon as one side decides.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/sets/caution_rules.h"

namespace plugside {

using Ternary = std::optional<bool>;

[[nodiscard]] inline Ternary negated(Ternary a) { return a ? Ternary(!*a) : a; }
[[nodiscard]] inline Ternary both(Ternary a, Ternary b) {
    if (a == Ternary(false) || b == Ternary(false)) return false;
    return a && b ? Ternary(true) : std::nullopt;
}
[[nodiscard]] inline Ternary either(Ternary a, Ternary b) { return negated(both(negated(a), negated(b))); }

// Things of the map about a system, worked out once for all of its sets; distances only where below those of the label. Index: into Ground::keep_clear.
struct SystemSurroundings {
    std::map<std::size_t, ReachReason> within_100_ft;
    std::optional<Metres> nearest_building;
    std::optional<Metres> nearest_water;
};

struct RuleCase {
    const Survey& survey;
    const Plan& plan;
    const ProbeSite& site;
    const Conditions& conditions;
    const LabelLimits& label;
    const std::optional<Licence>& licence;  // as far as it is believed
    const std::optional<Method>& method;
    const SystemSurroundings& around;
    const std::vector<LabelCheck>& checks;
    const std::vector<std::size_t>& noted;  // mounds whose notes speak of people or animals
    UtcTime now;

    [[nodiscard]] Ternary sets(Stuff stuff) const { return method ? Ternary(method->stuff == stuff) : std::nullopt; }
    [[nodiscard]] Ternary sets_a_toxicant() const { return method ? Ternary(method->stuff != Stuff::trap) : std::nullopt; }
    template <typename T>
    [[nodiscard]] std::optional<T> answer(const Told<T>& told, Question question) const {
        return current(told, conditions, question, now);
    }
};

struct Ruling {
    Verdict verdict = Verdict::not_known;
    std::string because;
    std::vector<Question> ask;
    std::optional<ReachReason> where;
};

[[nodiscard]] Ruling it_holds(std::string because);
[[nodiscard]] Ruling it_does_not(std::string because);
// The sentence is made of the questions, and of the age of an answer that is no longer believed.
[[nodiscard]] Ruling not_known(const RuleCase& situation, std::vector<Question> ask);
// The rule speaks of what the method does not set.
[[nodiscard]] Ruling not_concerned(const RuleCase& situation);

// Whether a licence is held whose end is told and has not passed.
[[nodiscard]] Ternary licence_holds(const RuleCase& situation);

struct CautionRule {
    const char* id;
    Ruling (*judge)(const RuleCase&);
};

// By what decides them, each in the order of the table of cautions.
[[nodiscard]] const std::vector<CautionRule>& rules_of_the_map();
[[nodiscard]] const std::vector<CautionRule>& rules_of_conditions();
[[nodiscard]] const std::vector<CautionRule>& rules_of_the_label();

}  // namespace plugside
