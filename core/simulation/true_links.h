// Which marks a true run joins directly: what a link's chance is a chance of.
//
// Joined: two marks of one true system, when some way along its runs leads from the junction of the one's lateral to that
//         of the other's without passing the junction of a third mound that was marked. Mounds that the walker missed stop
//         nobody. Around a T-junction without a mound of its own, the next marks on all three arms are joined pairwise: a
//         forest can hold only two of those three links, so that chances read off forests fall short there by construction.
// Runs:   those of a system meet where one begins or ends on another (within 5 cm); a run that passes over another meets it
//         nowhere. A mound's lateral leaves its system's nearest run.
// Degenerate input: marks of other diggers are joined to nothing; laterals that leave at one place are joined.
// Cost:   O(mounds x run vertices) within each system to build; O(log) a question.
#pragma once

#include <cstddef>
#include <utility>
#include <vector>

#include "core/simulation/truth.h"

namespace plugside {

class TrueLinks {
public:
    explicit TrueLinks(const FieldTruth& truth);

    // Indexes of Survey::mounds, in either order.
    [[nodiscard]] bool joined(std::size_t mark, std::size_t other) const;
    // All of them, the lower index first, ascending.
    [[nodiscard]] const std::vector<std::pair<std::size_t, std::size_t>>& all() const { return joined_; }

private:
    std::vector<std::pair<std::size_t, std::size_t>> joined_;
};

}  // namespace plugside
