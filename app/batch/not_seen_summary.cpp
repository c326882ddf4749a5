#include "app/batch/not_seen_summary.h"

#include "core/walking/not_seen_words.h"
#include "core/words/words.h"

namespace plugside {

std::string not_seen_summary(const std::optional<NotSeen>& not_seen, LengthUnits units) {
    if (!not_seen) return Words::tell("What was not seen is not known: the walk has no track in the field.") + "\n";
    const std::string walked = ground_area(not_seen->walked_m2, units);
    std::string text = not_seen->unwalked_m2 > 0.0 ? Words::tell("Walked: {1}; not walked: {2}.",
                                                                 {walked, ground_area(not_seen->unwalked_m2, units)})
                                                   : Words::tell("Walked: {1}.", {walked});
    text += "\n";
    for (const std::string& sentence : not_seen_sentences(*not_seen, units)) text += "  " + sentence + "\n";
    return text;
}

}  // namespace plugside
