// What a person can say that words of a note mean, and the rules that this makes.
#pragma once

#include <QString>
#include <string>
#include <vector>

#include "core/survey/note_rule.h"

namespace plugside {

struct NoteMeaning {
    QString words;               // "fresh", "a mole's", "a fan towards…"
    std::string means;           // what the notes grammar reads; empty: nothing
    bool wants_bearing = false;  // degrees, 0..359, stand behind it
};

[[nodiscard]] std::vector<NoteMeaning> note_meanings();

// `means` with its bearing where it wants one.
[[nodiscard]] std::string told_meaning(const NoteMeaning& meaning, int degrees);

// The first of `stretches` means `means`, the others nothing: one rule for each. `walk` and `mark`: where they hold.
[[nodiscard]] std::vector<NoteRule> rules_from(const std::vector<std::string>& stretches, const std::string& means,
                                               const std::string& walk, const std::string& mark);

// "“gr” means fresh: walk 1", "“zz” says nothing: mark M007".
[[nodiscard]] QString rule_words(const NoteRule& rule);

}  // namespace plugside
