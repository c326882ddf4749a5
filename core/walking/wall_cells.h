// Straight pieces of wall, and whether one stands on the straight line between two places, near or far.
//
// between:  whether the closed line from a to b meets a piece (touching counts).
// nearest:  the piece nearest to a place within `reach_m`; nothing where none is that near.
// Method:   pieces in the square cells that they pass, some hundred cells a side; only the cells along the line are asked.
// Degenerate input: no piece: nothing is between. A piece without length is a point that may be met.
// Cost:     O(pieces + cells passed) to build; a query O(cells passed by the line and pieces in them).
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "core/geometry/point.h"

namespace plugside {

struct WallPiece {
    LocalPoint from, to;
};

class WallCells {
public:
    explicit WallCells(std::vector<WallPiece> pieces);

    [[nodiscard]] bool between(LocalPoint a, LocalPoint b) const;
    [[nodiscard]] std::optional<WallPiece> nearest(LocalPoint place, double reach_m) const;
    [[nodiscard]] bool empty() const { return pieces_.empty(); }

private:
    // Calls visit(cell) for the cells that the line may pass, until it returns true; returns whether it did.
    template <class Visit>
    bool along(LocalPoint a, LocalPoint b, double margin_m, const Visit& visit) const;

    std::vector<WallPiece> pieces_;
    LocalPoint corner_;  // south-western, of all cells
    double cell_m_ = 1.0;
    std::size_t columns_ = 0;
    std::size_t rows_ = 0;
    std::vector<std::uint32_t> begins_;  // of each cell its first in `held_`, and the end
    std::vector<std::uint32_t> held_;
};

}  // namespace plugside
