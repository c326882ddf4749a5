// Whether a barrier lies between two near places, for many places and long barriers.
//
// between:  whether the straight line between the two meets a barrier (touching counts).
// Method:   the barriers' pieces, none longer than a cell, in square cells; only the cells that the two places span are asked.
// Degenerate input: no barrier: nothing is between. A barrier of one vertex is none.
// Cost:     O(length of barriers) to build; a query O(pieces in the cells that its box meets), few for places some metres apart.
#pragma once

#include <cstdint>
#include <span>
#include <unordered_map>
#include <vector>

#include "core/survey/ground.h"

namespace plugside {

class BarrierCells {
public:
    explicit BarrierCells(std::span<const Barrier> barriers);
    [[nodiscard]] bool between(LocalPoint a, LocalPoint b) const;

private:
    struct Piece {
        LocalPoint from, to;
    };
    std::vector<Piece> pieces_;
    std::unordered_map<std::uint64_t, std::vector<std::uint32_t>> cells_;
};

}  // namespace plugside
