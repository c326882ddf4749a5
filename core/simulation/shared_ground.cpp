// The ground is shared out first, into convex parts with a buffer between them; each animal then works its own part over,
// border to border: by a main run with parallel ribs on either side, or by one run back and forth. How far apart its lanes
// lie follows from the part it has and the length it digs. Some parts stand empty.
#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/simulation/run_generators.h"
#include "core/simulation/territories.h"

namespace plugside {

namespace {

constexpr double leg_m = 0.6;  // of a lane, between changes of its stray
constexpr double shortest_run_m = 1.0;
constexpr double widest_lane_m = 9.0;

struct Sharing {
    double empty_share = 0.1;
    double size_spread = 0.3;  // log sd of the ground an animal has for the length it digs
    double buffer_m = 2.0;
    double lane_m = 2.5;           // between lanes where the whole field is worked
    double ribs_share = 0.5;       // of animals that dig a main run with ribs; the others go back and forth
    double stray_m = 0.15;         // sd of a lane about its straight line
    double rib_lean_sd = 8.0;      // degrees of all an animal's ribs together from the right angle
    double lane_unevenness = 0.1;  // of the distances between lanes
    int rounds = 1;
};

Sharing draw_sharing(const FieldScales& scales, Random& random) {
    Sharing sharing;
    sharing.empty_share = random.uniform(0.0, 0.25);
    sharing.size_spread = random.uniform(0.1, 0.45);
    sharing.buffer_m = scales.gap_m * random.uniform(1.02, 1.3);
    sharing.lane_m = random.log_uniform(2.2, 7.0);
    sharing.ribs_share = random.uniform(0.15, 0.85);
    sharing.stray_m = random.uniform(0.05, 0.3);
    sharing.rib_lean_sd = random.uniform(2.0, 14.0);
    sharing.lane_unevenness = random.uniform(0.03, 0.2);
    sharing.rounds = static_cast<int>(random.below(3));
    return sharing;
}

// Two ends of the stretch of a straight line within a convex ring.
struct Chord {
    double from_m;
    double to_m;
};

std::optional<Chord> chord(const Polygon& ground, LocalPoint through, LocalVector direction) {
    std::optional<Chord> found;
    const auto& ring = ground.outer.vertices;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const LocalVector side = ring[(i + 1) % ring.size()] - ring[i];
        const double crossing = cross(direction, side);
        if (std::abs(crossing) < 1e-12) continue;
        const double on_side = cross(ring[i] - through, direction) / crossing;
        if (on_side < 0.0 || on_side > 1.0) continue;
        const double along = cross(ring[i] - through, side) / crossing;
        found = found ? Chord{std::min(found->from_m, along), std::max(found->to_m, along)} : Chord{along, along};
    }
    return found;
}

// The direction in which the part is longest.
Bearing long_axis(const Territory& territory) {
    Bearing longest;
    double length_m = 0.0;
    for (int degrees = 0; degrees < 180; degrees += 10) {
        const Bearing direction = Bearing::degrees(degrees);
        const auto across = chord(territory.ground, territory.middle(), direction.unit());
        if (!across || across->to_m - across->from_m <= length_m) continue;
        length_m = across->to_m - across->from_m;
        longest = direction;
    }
    return longest;
}

// One animal at work on its part.
class LaneDigger {
public:
    LaneDigger(SystemDigging& digging, const Territory& territory, const Sharing& sharing, double length_m, double lane_m,
               Random& random)
        : digging_(digging),
          territory_(territory),
          sharing_(sharing),
          length_m_(length_m),
          lane_m_(lane_m),
          random_(random),
          axis_(long_axis(territory).turned(random.normal(0.0, 12.0))) {}

    void dig_main_and_ribs() {
        const LocalVector along = axis_.unit();
        const LocalPoint middle = territory_.middle() + turned_right(along) * random_.normal(0.0, 0.15 * lane_m_);
        const auto main = chord(territory_.ground, middle, along);
        if (!main) return;
        const double one_way = random_.chance(0.5) ? 1.0 : -1.0;
        for (const double way : {one_way, -one_way}) {
            digging_.start_run(middle);
            const double border_m = way > 0.0 ? main->to_m : -main->from_m;
            const double wanted_m = std::min(border_m, length_m_ - digging_.grown().length_m);
            dig_lane(middle + along * (way * wanted_m));
            digging_.end_run(shortest_run_m);
        }
        if (!digging_.grown().runs.empty()) dig_ribs();
    }

    void dig_back_and_forth() {
        const LocalVector along = axis_.unit();
        const LocalVector across = turned_right(along) * (random_.chance(0.5) ? 1.0 : -1.0);
        const auto width = chord_of_extent(across);
        bool forth = random_.chance(0.5);
        bool begun = false;
        double at_m = width.from_m + lane_m_ * random_.uniform(0.2, 0.6);
        for (; at_m < width.to_m && !done(); at_m += lane_m_ * unevenness(), forth = !forth) {
            const auto lane = chord(territory_.ground, territory_.middle() + across * at_m, along);
            if (!lane || lane->to_m - lane->from_m < lane_m_) continue;
            const double begin_m = (forth ? lane->from_m : lane->to_m) + (forth ? 0.1 : -0.1);
            const double end_m = (forth ? lane->to_m : lane->from_m) - (forth ? 0.1 : -0.1);
            const LocalPoint line = territory_.middle() + across * at_m;
            if (!begun) digging_.start_run(line + along * begin_m);
            const bool turned = !begun || dig_lane(line + along * begin_m);
            begun = true;
            if (!turned || !dig_lane(line + along * end_m)) break;
        }
        if (begun) digging_.end_run(shortest_run_m);
    }

private:
    [[nodiscard]] bool done() const { return digging_.grown().length_m >= length_m_; }
    [[nodiscard]] double unevenness() const { return std::max(0.6, random_.normal(1.0, sharing_.lane_unevenness)); }

    // How far the part reaches from its middle along `direction`.
    [[nodiscard]] Chord chord_of_extent(LocalVector direction) const {
        Chord extent{0.0, 0.0};
        for (const LocalPoint corner : territory_.ground.outer.vertices) {
            const double at = dot(corner - territory_.middle(), direction);
            extent = {std::min(extent.from_m, at), std::max(extent.to_m, at)};
        }
        return extent;
    }

    // Nearly straight from the tip to `end`; false when something is in the way or the animal has dug its length.
    bool dig_lane(LocalPoint end) {
        const LocalPoint begin = digging_.tip();
        const LocalVector way = end - begin;
        const int legs = std::max(1, static_cast<int>(std::ceil(way.length_m() / leg_m)));
        const LocalVector sideways = way.length_m() > 0.0 ? turned_right(way) * (1.0 / way.length_m()) : LocalVector{};
        double stray = 0.0;
        for (int leg = 1; leg <= legs; ++leg) {
            if (done()) return false;
            stray = leg < legs ? 0.8 * stray + random_.normal(0.0, 0.6 * sharing_.stray_m) : 0.0;
            const LocalPoint target = begin + way * (static_cast<double>(leg) / legs) + sideways * stray;
            if (!digging_.free_towards(target)) return false;
            digging_.dig_to(target);
        }
        return true;
    }

    // Ribs off the main run (which lies in one or two pieces from the middle), on both sides, from the middle outwards.
    void dig_ribs() {
        const std::vector<Polyline> mains = digging_.grown().runs;  // a copy: new runs are added meanwhile
        const double main_m = digging_.grown().length_m;
        // the main run serves a lane's width itself, the ribs share what is left of the length
        const double gap_m =
            std::clamp(lane_m_ * length_m_ / std::max(length_m_ - main_m, 0.3 * length_m_), lane_m_, widest_lane_m);
        struct Fork {
            double from_middle_m;
            LocalPoint at;
            LocalVector rib;
        };
        std::vector<Fork> forks;
        const double lean = random_.normal(0.0, sharing_.rib_lean_sd);
        double first_m = gap_m * random_.uniform(0.2, 0.8);
        for (const double side : {90.0, -90.0}) {
            const LocalVector rib = axis_.turned(side + lean).unit();
            std::array<double, 2> next_m{first_m, 0.0};
            // a junction is usually a T (Dalquest 1948): ribs of the other side leave between those of this
            first_m = std::fmod(first_m + gap_m * random_.uniform(0.3, 0.7), gap_m);
            next_m[1] = gap_m - next_m[0];  // the first ribs of the two pieces are a lane apart, too
            for (std::size_t piece = 0; piece < mains.size() && piece < next_m.size(); ++piece)
                for (double at_m = next_m.at(piece);; at_m += gap_m * unevenness()) {
                    const auto i = static_cast<std::size_t>(at_m / dig_step_m);
                    if (i >= mains[piece].vertices.size()) break;
                    forks.push_back({at_m, mains[piece].vertices[i], rib});
                }
        }
        std::stable_sort(forks.begin(), forks.end(),
                         [](const Fork& a, const Fork& b) { return a.from_middle_m < b.from_middle_m; });
        for (const Fork& fork : forks)
            if (!done()) dig_rib(fork.at, fork.rib);
    }

    void dig_rib(LocalPoint fork, LocalVector direction) {
        const auto reach = chord(territory_.ground, fork, direction);
        if (!reach || reach->to_m < shortest_run_m) return;
        digging_.start_run(fork);
        dig_lane(fork + direction * (reach->to_m * random_.uniform(0.85, 1.0)));
        digging_.end_run(shortest_run_m);
    }

    SystemDigging& digging_;
    const Territory& territory_;
    const Sharing& sharing_;
    double length_m_;
    double lane_m_;
    Random& random_;
    Bearing axis_;
};

// The works and half the buffer all round them, taken as a square.
double wanted_area_m2(double length_m, const Sharing& sharing) {
    const double side_m = std::sqrt(length_m * sharing.lane_m) + sharing.buffer_m;
    return side_m * side_m;
}

}  // namespace

std::vector<GrownSystem> grow_shared_ground(const FieldDomain& domain, const FieldScales& scales, double run_length_m,
                                            Random& random) {
    const Sharing sharing = draw_sharing(scales, random);
    TerritoryOptions parts;
    parts.buffer_m = sharing.buffer_m;
    parts.rounds = sharing.rounds;
    std::vector<double> lengths_m;
    const double half_a_system_m = 0.5 * scales.mounds_median * scales.spacing_m;  // the last one runs over by about that
    for (double wanted_m = 0.0; wanted_m == 0.0 ? run_length_m > 0.0 : wanted_m < run_length_m - half_a_system_m;) {
        lengths_m.push_back(draw_run_length_m(scales, random));
        const bool empty = random.chance(sharing.empty_share);
        parts.areas_m2.push_back(wanted_area_m2(lengths_m.back(), sharing) * random.log_normal(1.0, sharing.size_spread));
        if (empty) lengths_m.back() = 0.0;
        wanted_m += lengths_m.back();
    }
    DugGround ground(scales.gap_m);
    std::vector<GrownSystem> systems;
    for (const Territory& territory : share_out(domain, parts, random)) {
        const double length_m = lengths_m[territory.animal];
        if (length_m == 0.0) continue;
        const auto number = static_cast<std::uint32_t>(systems.size());
        SystemDigging digging(domain, ground, number, scales.gap_m, own_gap_m(scales));
        const double lane_m = std::clamp(territory.area_m2() / length_m, 1.6 * own_gap_m(scales), widest_lane_m);
        LaneDigger digger(digging, territory, sharing, length_m, lane_m, random);
        if (random.chance(sharing.ribs_share))
            digger.dig_main_and_ribs();
        else
            digger.dig_back_and_forth();
        if (digging.grown().runs.empty() || digging.grown().length_m < 2.0 * scales.spacing_m) continue;
        ground.add(digging.grown(), number);
        systems.push_back(digging.grown());
    }
    return systems;
}

}  // namespace plugside
