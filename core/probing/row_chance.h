// Where along a row of probe holes a run is met, as a distribution over centimetres.
//
// Unit:    metres from the row's own zero (the plug on the plug side; the tape between two mounds).
// Mass:    `chance` holds, for each cell, the chance that the run is there and crosses the row in that cell; their sum is at
// most 1,
//          the rest is a run that is not there or crosses elsewhere.
// slant:   mean of 1 / cos of the angle between run and the square to the row: a run at a slant is met from farther along
// the row. Met:     a rung meets the run when it lies within half the tunnel's diameter of its centre line. The diameter of
// one tunnel is
//          not known: it is taken as even over TunnelSpan. What one width lets slip between two rungs, another does not.
// Cost:    `promise_of` O(rungs x cells under a rung).
// Source:  5 cm (UC field-rodent circular) to 7.6 cm (Montana Dept of Agriculture) across, about
// PlanOptions::tunnel_diameter.
#pragma once

#include <cstddef>
#include <vector>

#include "core/units/metres.h"
#include "core/units/probability.h"

namespace plugside {

inline constexpr double row_cell_m = 0.01;

// The span of tunnels' diameters as shares of the middle one.
struct TunnelSpan {
    static constexpr double least = 0.80;
    static constexpr double most = 1.20;
};

struct RowChance {
    double first_m = 0.0;  // middle of the first cell
    std::vector<float> chance;
    double slant = 1.0;

    [[nodiscard]] double presence() const;  // sum of the chances
    [[nodiscard]] double mean_m() const;    // given that the run is met somewhere; 0 without any chance
    [[nodiscard]] double sd_m() const;
    [[nodiscard]] double at_m(std::size_t cell) const { return first_m + row_cell_m * static_cast<double>(cell); }
};

// Crossings of one row, one after another, into a RowChance.
class RowChanceMaker {
public:
    RowChanceMaker(double from_m, double to_m);
    // A crossing at `at_m`, spread over +-2 cm; `slant` = 1 / cos of the angle from square. Beyond the ends it is lost.
    void add(double at_m, double weight, double slant);
    // Scales everything added since the last call to the mass `mass` (nothing added: nothing).
    void close_group(double mass);
    [[nodiscard]] RowChance made() const;

private:
    double from_m_;
    std::vector<double> done_;
    std::vector<double> group_;
    double group_weight_ = 0.0;
    double group_slant_ = 0.0;
    double slant_sum_ = 0.0;
    double slant_weight_ = 0.0;
};

struct LadderPromise {
    Probability hit;
    double expected_rungs = 0.0;  // until the hit, or all of them
};

// What is left of a row's chance, rung by rung, for several tunnel widths at once.
class RowInHand {
public:
    RowInHand(const RowChance& row, Metres tunnel_diameter);

    // The chance that a hole at `at` meets the run and none pushed before did.
    [[nodiscard]] double chance_at(Metres at) const;
    // Pushes a hole there that finds nothing; returns chance_at before it.
    double push(Metres at);
    // The chance that no hole so far has met the run.
    [[nodiscard]] double not_met() const { return not_met_; }

private:
    static constexpr std::size_t widths = 4;
    template <typename Use>
    void for_cells_under(Metres at, Use use) const;
    const RowChance& row_;
    double reach_m_[widths]{};
    std::vector<float> covered_;  // cell by cell, width by width: share of the cell that some hole has covered
    double not_met_ = 1.0;
};

// `middle` and the rungs' offsets from it are on the row's own scale.
[[nodiscard]] LadderPromise promise_of(const RowChance& row, Metres middle, const std::vector<Metres>& rungs,
                                       Metres tunnel_diameter);

}  // namespace plugside
