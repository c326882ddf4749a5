// The marks of a field by cells of the ground, in ever coarser levels: what a view of any width has to draw, without a look at
// every mark.
//
// Cell:   a square of `cell_m` of its level; it knows how many marks lie in it and which of them is drawn for all, the one
//         that matters most (a gopher's before another digger's, then the freshest, then the first).
// Levels: the finest cells are 2 m wide, each further level twice as wide, until one level holds at most 64 cells.
// Other diggers: counted and drawn like all others, or left out, as asked when it is made.
// Range:  places within 4,000 km of the frame's origin.
// Cost:   O(n log n) to make, about .3 s for a million marks; a question O(rows of cells seen x log cells + cells seen),
//         the nearest mark O(log) where marks are as near as its neighbours are.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "app/canvas/view_transform.h"
#include "core/survey/mound.h"

namespace plugside {

class MarkPyramid {
public:
    struct Cell {
        std::uint64_t key = 0;       // row and column
        std::uint32_t foremost = 0;  // index of the mark that is drawn for all
        std::uint32_t count = 0;
        [[nodiscard]] LocalPoint middle(double side_m) const;  // of a cell that wide
    };

    MarkPyramid() = default;
    explicit MarkPyramid(const std::vector<Mound>& mounds, bool other_diggers = true);

    [[nodiscard]] bool of(const std::vector<Mound>& mounds) const { return mounds.size() == places_.size(); }
    // The marks within `box`, in no order; nothing where there are more than `most`.
    [[nodiscard]] std::optional<std::vector<std::uint32_t>> within(const GroundBox& box, std::size_t most) const;
    // The mark nearest to a place, the first of equals; nothing when none is within `reach`.
    [[nodiscard]] std::optional<std::size_t> nearest(LocalPoint to, Metres reach) const;
    // The nearest other mark whose direction from a place is within 45 degrees of `ahead`; nothing when none is within `reach`.
    [[nodiscard]] std::optional<std::size_t> nearest_towards(LocalPoint from, LocalVector ahead, Metres reach) const;
    // The finest level whose cells are at least that wide; the coarsest there is where none is.
    [[nodiscard]] std::size_t level_of(double least_cell_m) const;
    [[nodiscard]] static double cell_m(std::size_t level);
    // The cells of a level that meet `box`, in rows from the south.
    [[nodiscard]] std::vector<Cell> cells(std::size_t level, const GroundBox& box) const;

    // How much a mark matters beside others in its place: greater is drawn.
    [[nodiscard]] static int weight(const Mound& mound);

private:
    // The nearest of the marks that `counts` counts.
    template <typename Counts>
    [[nodiscard]] std::optional<std::size_t> nearest_of(LocalPoint to, Metres reach, Counts counts) const;
    template <typename Visit>
    void each_cell(std::size_t level, const GroundBox& box, Visit visit) const;

    std::vector<LocalPoint> places_;    // of all marks
    std::vector<std::uint32_t> order_;  // marks by the finest level's cells
    std::vector<std::uint32_t> begin_;  // of each finest cell's marks in order_
    std::vector<std::vector<Cell>> levels_;
};

}  // namespace plugside
