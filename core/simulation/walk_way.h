// The way that a walker takes over a field: line after line, off to each sign and on.
//
// Result: every seen mound and every other sign exactly once, between the ends of the lines. Deterministic.
// Cost:   O(n log n) for n signs, plus the number of lines.
#pragma once

#include <optional>
#include <vector>

#include "core/simulation/field_domain.h"
#include "core/simulation/truth.h"

namespace plugside {

struct WalkerHabits;

struct OtherSign {
    LocalPoint at;
    SignKind kind = SignKind::mole;
};

struct WayStop {
    LocalPoint at;
    std::optional<std::size_t> mound;  // index of the true mound marked here
    std::optional<std::size_t> other;  // index of the other digger's sign marked here
};

[[nodiscard]] std::vector<WayStop> walk_way(const FieldDomain& domain, const WalkerHabits& habits, const FieldTruth& truth,
                                            const std::vector<bool>& seen, const std::vector<OtherSign>& others);

}  // namespace plugside
