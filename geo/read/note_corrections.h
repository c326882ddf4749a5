// Notes of a survey read with the corrections that a person made of their reading (Survey::note_rules), and what those
// corrections change of the marks.
//
// Which:   a mark's note is read with the rules of its own, then with those of its walk, then with those of every walk; of
// two
//          with the same words the nearer one counts, and of two equally near the later one.
// Change:  fan, freshness and kind of a mark change where its note reads otherwise with the rules than without, and only in
//          that; what was recorded is kept (mend.h). A fan told by magnetic north or by the clock is turned as when the file
//          was read; one that cannot be turned leaves the mark without a fan. A kind that is no longer read is a gopher's.
// Answers: the changes stand as answers of their own (is_of_note_rule) before all others, so that what a person said of a
//          single mark, or answered to a finding, still has the last word.
// Mentions follow the reading, too.
// An answer of a rule that is not there goes, too.
// Guarantee: idempotent; lifting a rule leaves no trace of it. The revision is the caller's to raise.
// Cost:    O(marks + answers) and two readings of each note in which the words of a rule may stand.
#pragma once

#include <string>
#include <vector>

#include "core/survey/survey.h"
#include "geo/frame/local_frame.h"
#include "geo/read/notes_grammar.h"

namespace plugside {

// The rules that hold for this mark's note and whose words may stand in it, the nearest first.
[[nodiscard]] std::vector<NoteRule> rules_for(const Survey& survey, const Mound& mound);
[[nodiscard]] NoteReading corrected_reading(const Survey& survey, const Mound& mound);

// The survey's rules are `rules` from here on; marks, answers and mentions follow.
void use_note_rules(Survey& survey, const LocalFrame& frame, std::vector<NoteRule> rules);
// Brings marks that were added later in line with the survey's rules.
void obey_note_rules(Survey& survey, const LocalFrame& frame);

// Whether an answer is the work of a rule: its id begins with "note rule".
[[nodiscard]] bool is_of_note_rule(const MendAnswer& answer);

// Indexes of the mounds for which `rules` in place of the survey's own make a difference.
struct RuleEffect {
    std::vector<std::size_t> taken_otherwise;  // in fan, freshness, kind or mentions
    std::vector<std::size_t> read_otherwise;   // those, and the ones of which only what is left over changes
};
[[nodiscard]] RuleEffect effect_of_rules(const Survey& survey, const LocalFrame& frame, const std::vector<NoteRule>& rules);

// `rules` with `added` at the end; a rule of the same words, walk and mark gives way to it.
[[nodiscard]] std::vector<NoteRule> with_rule(std::vector<NoteRule> rules, NoteRule added);

}  // namespace plugside
