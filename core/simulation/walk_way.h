// The way that a walker takes over a field or their part of it: line after line, off to each sign and on.
//
// Parts:  strips of equal width along the field's axis, one a walker, numbered from the one furthest to the axis' left.
// Result: every seen mound and every other sign of the part exactly once, between the ends of the lines. Deterministic.
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

struct FieldPart {
    std::size_t number = 0;
    std::size_t of = 1;  // parts in all, > 0
};

// The number of the part in which a place lies, of `parts` in all; the outermost two reach on without end.
[[nodiscard]] std::size_t part_of(LocalPoint place, const FieldDomain& domain, std::size_t parts);

[[nodiscard]] std::vector<WayStop> walk_way(const FieldDomain& domain, FieldPart part, const WalkerHabits& habits,
                                            const FieldTruth& truth, const std::vector<bool>& seen,
                                            const std::vector<OtherSign>& others);

}  // namespace plugside
