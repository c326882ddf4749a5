// What a person says of systems, as edits of the list of facts: the same list with one more, or without one.
//
// said:    a fact of the same kind on the same marks (in either order) or the same line takes the earlier one's place; of two marks
//          said to be one animal's and then two, only the later stays.
// lifted:  the list without the fact at `place`.
#pragma once

#include <cstddef>
#include <vector>

#include "core/survey/known_fact.h"

namespace plugside {

[[nodiscard]] std::vector<KnownFact> said(const std::vector<KnownFact>& before, KnownFact fact);
[[nodiscard]] std::vector<KnownFact> lifted(const std::vector<KnownFact>& before, std::size_t place);

}  // namespace plugside
