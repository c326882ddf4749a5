// What was not seen, in sentences for a person: where the curve is from, what was missed, what is assumed of
// ground that nobody walked.
#pragma once

#include <string>
#include <vector>

#include "core/units/display.h"
#include "core/walking/not_seen.h"

namespace plugside {

// Why the distances of a walk that followed mounds are not used: a clause without a stop.
[[nodiscard]] std::string following_words(double followed_share);

// In order; lengths in these units.
[[nodiscard]] std::vector<std::string> not_seen_sentences(const NotSeen& result, LengthUnits units);

}  // namespace plugside
