// What a work order puts on field sheets: the method's steps, the conditions with their days, the judged cautions, the label's figures, what to
// load. In the language spoken on this thread.
//
// Private: the licence's number and holder, and names of who signed, are not printed.
// Answers: older than they are believed are marked, and counted as not known where cautions are judged.
#pragma once

#include "app/sheets/sheet_contents.h"
#include "core/sets/caution_rules.h"

namespace plugside {

// Every question of the conditions that was answered, in the order of the questions; then those that some caution asks for.
[[nodiscard]] std::vector<ConditionRow> condition_rows(const WorkOrder& work, const JudgedPlan& judged, UtcTime now);
// "wet", "3 days: 12 mm of rain", ...; empty where there is no answer.
[[nodiscard]] QString answer_words(const Conditions& conditions, Question question);

[[nodiscard]] std::vector<MethodText> method_texts(const WorkOrder& work, const std::vector<std::string>& ids, UtcTime now);

// Puts the method and what was judged onto the cards, and what was judged everywhere into `contents.cautions`.
void add_judged(SheetContents& contents, const WorkOrder& work, const Plan& plan, const JudgedPlan& judged, UtcTime now);

}  // namespace plugside
