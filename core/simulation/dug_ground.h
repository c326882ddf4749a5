// What has been dug so far, so that the next run keeps clear of it.
//
// DugGround:     points of the runs of every finished (or growing) system in a hashed grid. O(1) expected a question while
// the
//                distance asked about is at most the grid's cell.
// SystemDigging: one system being dug: its runs, and whether its next step is free: on open ground, at least the gap from
// other
//                systems' runs, and not back into its own.
#pragma once

#include <cstdint>
#include <unordered_map>
#include <vector>

#include "core/geometry/polyline.h"
#include "core/simulation/field_domain.h"

namespace plugside {

// Distance between neighbouring vertices of a run as the generators dig it.
inline constexpr double dig_step_m = 0.1;

struct GrownSystem {
    std::vector<Polyline> runs;
    double length_m = 0.0;
    // How far apart mounds stand at each vertex of each run, in units of the field's spacing; empty: 1 everywhere.
    std::vector<std::vector<double>> spacing_factors;
};

class DugGround {
public:
    explicit DugGround(double cell_m);
    void add(LocalPoint place, std::uint32_t system);
    void add(const GrownSystem& grown, std::uint32_t system);
    // Whether no other system has a run within `gap_m` (at most the cell).
    [[nodiscard]] bool clear_of_others(LocalPoint place, std::uint32_t system, double gap_m) const;

private:
    struct DugPoint {
        LocalPoint at;
        std::uint32_t system;
    };
    [[nodiscard]] std::uint64_t key(std::int64_t column, std::int64_t row) const;
    [[nodiscard]] std::int64_t column_of(double metres) const;
    double cell_m_;
    std::unordered_map<std::uint64_t, std::vector<DugPoint>> cells_;
};

class SystemDigging {
public:
    SystemDigging(const FieldDomain& domain, const DugGround& others, std::uint32_t system, double gap_m, double own_gap_m);

    // Starts a run; on a branch the first vertex is a vertex of an earlier run.
    void start_run(LocalPoint place);
    // Whether `place` may be dug as the tip of the newest run.
    [[nodiscard]] bool free_at(LocalPoint place) const;
    // Whether the straight step from the tip is free all along.
    [[nodiscard]] bool free_towards(LocalPoint target) const;
    // Digs straight on to `target` in steps of dig_step_m.
    void dig_to(LocalPoint target);
    // Ends the newest run; a run shorter than `least_m` is filled in again.
    void end_run(double least_m);

    [[nodiscard]] LocalPoint tip() const { return grown_.runs.back().vertices.back(); }
    [[nodiscard]] const GrownSystem& grown() const { return grown_; }

private:
    const FieldDomain& domain_;
    const DugGround& others_;
    std::uint32_t system_;
    double gap_m_;
    double own_gap_m_;
    GrownSystem grown_;
};

}  // namespace plugside
