#include "core/simulation/true_links.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <optional>
#include <set>

namespace plugside {

namespace {

constexpr double meets_within_m = 0.05;  // half the distance between vertices as runs are dug
constexpr double same_place_m = 1e-6;

struct OnRun {
    double along_m = 0.0;
    double away_m = std::numeric_limits<double>::infinity();
};

// The nearest place of a run.
OnRun nearest_on(const Polyline& run, LocalPoint place) {
    OnRun nearest;
    double before_m = 0.0;
    for (std::size_t i = 1; i < run.vertices.size(); ++i) {
        const LocalPoint from = run.vertices[i - 1];
        const LocalVector piece = run.vertices[i] - from;
        const double piece_m = piece.length_m();
        const double t = piece_m > 0.0 ? std::clamp(dot(place - from, piece) / (piece_m * piece_m), 0.0, 1.0) : 0.0;
        const double away_m = distance_m(place, from + piece * t);
        if (away_m < nearest.away_m) nearest = {before_m + t * piece_m, away_m};
        before_m += piece_m;
    }
    return nearest;
}

// A place on a run where something is: a marked mound's junction, or a fork.
struct Stop {
    double along_m = 0.0;
    std::size_t node = 0;
};

// The runs of one system as a graph: marks first among the nodes, then forks.
class SystemGraph {
public:
    SystemGraph(const std::vector<const TrueRun*>& runs, const std::vector<const TrueMound*>& marked)
        : runs_(runs), marks_(marked.size()), stops_(runs.size()), nodes_(marked.size()) {
        for (std::size_t i = 0; i < marked.size(); ++i) add_mark(i, marked[i]->run_junction);
        for (std::size_t r = 0; r < runs.size(); ++r) {
            if (runs[r]->line.vertices.empty()) continue;
            add_fork(r, runs[r]->line.vertices.front());
            add_fork(r, runs[r]->line.vertices.back());
        }
    }

    // Pairs of marks, each the lower first, some twice.
    [[nodiscard]] std::vector<std::pair<std::size_t, std::size_t>> joined_marks() {
        std::vector<std::vector<std::size_t>> beside(nodes_);
        for (auto& stops : stops_) {
            std::stable_sort(stops.begin(), stops.end(), [](Stop a, Stop b) { return a.along_m < b.along_m; });
            for (std::size_t i = 1; i < stops.size(); ++i) {
                beside[stops[i - 1].node].push_back(stops[i].node);
                beside[stops[i].node].push_back(stops[i - 1].node);
            }
        }
        std::vector<std::pair<std::size_t, std::size_t>> pairs;
        for (std::size_t mark = 0; mark < marks_; ++mark)
            for (const std::size_t other : reached_from(mark, beside))
                if (mark < other) pairs.emplace_back(mark, other);
        return pairs;
    }

private:
    void add_mark(std::size_t node, LocalPoint junction) {
        std::optional<std::size_t> best;
        OnRun at;
        for (std::size_t r = 0; r < runs_.size(); ++r)
            if (const OnRun here = nearest_on(runs_[r]->line, junction); here.away_m < at.away_m) {
                best = r;
                at = here;
            }
        if (best) stops_[*best].push_back({at.along_m, node});
    }

    // A run's end that lies on another run: a node on both, the mark's own where a lateral leaves just there.
    void add_fork(std::size_t run, LocalPoint end) {
        for (std::size_t other = 0; other < runs_.size(); ++other) {
            if (other == run) continue;
            const OnRun there = nearest_on(runs_[other]->line, end);
            if (there.away_m > meets_within_m) continue;
            const std::size_t node = node_at(other, there.along_m);
            stops_[run].push_back({nearest_on(runs_[run]->line, end).along_m, node});
            return;
        }
    }

    std::size_t node_at(std::size_t run, double along_m) {
        for (const Stop& stop : stops_[run])
            if (std::abs(stop.along_m - along_m) < same_place_m) return stop.node;
        stops_[run].push_back({along_m, nodes_});
        return nodes_++;
    }

    // The marks to which a way leads over forks alone.
    [[nodiscard]] std::set<std::size_t> reached_from(std::size_t mark,
                                                     const std::vector<std::vector<std::size_t>>& beside) const {
        std::set<std::size_t> seen{mark};
        std::set<std::size_t> reached;
        std::vector<std::size_t> open{mark};
        while (!open.empty()) {
            const std::size_t node = open.back();
            open.pop_back();
            for (const std::size_t next : beside[node]) {
                if (!seen.insert(next).second) continue;
                if (next < marks_) {
                    reached.insert(next);
                } else {
                    open.push_back(next);
                }
            }
        }
        return reached;
    }

    const std::vector<const TrueRun*>& runs_;
    std::size_t marks_;
    std::vector<std::vector<Stop>> stops_;
    std::size_t nodes_;
};

}  // namespace

TrueLinks::TrueLinks(const FieldTruth& truth) {
    std::map<std::size_t, std::vector<const TrueRun*>> runs;
    std::map<std::size_t, std::vector<const TrueMound*>> marked;
    for (const TrueRun& run : truth.runs) runs[run.system].push_back(&run);
    for (const TrueMound& mound : truth.mounds)
        if (mound.seen_as) marked[mound.system].push_back(&mound);
    for (const auto& [system, mounds] : marked)
        for (const auto& [a, b] : SystemGraph(runs[system], mounds).joined_marks())
            joined_.push_back(std::minmax(*mounds[a]->seen_as, *mounds[b]->seen_as));
    std::sort(joined_.begin(), joined_.end());
}

bool TrueLinks::joined(std::size_t mark, std::size_t other) const {
    const std::pair<std::size_t, std::size_t> pair = std::minmax(mark, other);
    return std::binary_search(joined_.begin(), joined_.end(), pair);
}

}  // namespace plugside
