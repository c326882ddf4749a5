#include "app/batch/not_seen_summary.h"

#include "core/walking/not_seen_words.h"

namespace plugside {

std::string not_seen_summary(const std::optional<NotSeen>& not_seen, LengthUnits units) {
    if (!not_seen) return "What was not seen is not known: the walk has no track in the field.\n";
    std::string text = "Walked: " + ground_area(not_seen->walked_m2, units);
    if (not_seen->unwalked_m2 > 0.0) text += "; not walked: " + ground_area(not_seen->unwalked_m2, units);
    text += ".\n";
    for (const std::string& sentence : not_seen_sentences(*not_seen, units)) text += "  " + sentence + "\n";
    return text;
}

}  // namespace plugside
