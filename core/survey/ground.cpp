#include "core/survey/ground.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace plugside {

namespace {

constexpr double shortest_stretch_m = 0.01;

// Where the straight piece a-b lies within `radius` of `middle`, as shares of the piece; nothing where it does not.
std::optional<std::pair<double, double>> share_within(LocalPoint a, LocalPoint b, LocalPoint middle, double radius_m) {
    const LocalVector along = b - a;
    const LocalVector off = a - middle;
    const double square = dot(along, along);
    if (square == 0.0) return std::nullopt;
    const double half = dot(along, off) / square;
    const double root = half * half - (dot(off, off) - radius_m * radius_m) / square;
    if (root <= 0.0) return std::nullopt;
    const double from = std::max(0.0, -half - std::sqrt(root));
    const double to = std::min(1.0, -half + std::sqrt(root));
    if (from >= to) return std::nullopt;
    return std::pair(from, to);
}

// The stretches of a line that no gap opens.
std::vector<Polyline> without_gaps(const Polyline& line, const std::vector<Gap>& gaps) {
    std::vector<Polyline> stretches;
    Polyline stretch;
    const auto finish = [&] {
        if (stretch.vertices.size() > 1 && length(stretch).value() >= shortest_stretch_m) stretches.push_back(stretch);
        stretch.vertices.clear();
    };
    for (std::size_t i = 0; i + 1 < line.vertices.size(); ++i) {
        const LocalPoint a = line.vertices[i];
        const LocalPoint b = line.vertices[i + 1];
        std::vector<std::pair<double, double>> open;
        for (const Gap& gap : gaps)
            if (const auto share = share_within(a, b, gap.at, 0.5 * gap.width.value())) open.push_back(*share);
        std::sort(open.begin(), open.end());
        double at = 0.0;
        for (const auto& [from, to] : open) {
            if (from > at || (from == 0.0 && at == 0.0)) {
                if (from > at) {
                    if (stretch.vertices.empty()) stretch.vertices.push_back(a + (b - a) * at);
                    stretch.vertices.push_back(a + (b - a) * from);
                }
                finish();
            }
            at = std::max(at, to);
        }
        if (at < 1.0) {
            if (stretch.vertices.empty()) stretch.vertices.push_back(a + (b - a) * at);
            stretch.vertices.push_back(b);
        } else {
            finish();
        }
    }
    finish();
    return stretches;
}

std::vector<Barrier> barriers_without(const std::vector<Barrier>& barriers, const std::vector<Gap>& gaps) {
    if (gaps.empty()) return barriers;
    std::vector<Barrier> left;
    for (const Barrier& barrier : barriers)
        for (Polyline& stretch : without_gaps(barrier.line, gaps)) left.push_back({barrier.name, std::move(stretch)});
    return left;
}

}  // namespace

std::vector<Barrier> barriers_to_runs(const Ground& ground) { return barriers_without(ground.barriers, ground.crossings); }

std::vector<Barrier> barriers_to_people(const Ground& ground) { return barriers_without(ground.barriers, ground.gates); }

bool nothing_is_set_at(const Ground& ground, LocalPoint place) {
    return contains(ground.untreated, place) ||
           std::any_of(ground.keep_clear.begin(), ground.keep_clear.end(),
                       [&](const KeepClearArea& area) { return contains(area.area, place); });
}

std::string to_text(KeepClearKind kind) {
    switch (kind) {
        case KeepClearKind::building: return "building";
        case KeepClearKind::well: return "well";
        case KeepClearKind::play_area: return "play area";
        case KeepClearKind::utility: return "utility";
        case KeepClearKind::other: return "other";
    }
    return "other";
}

std::optional<KeepClearKind> keep_clear_kind_from_text(const std::string& text) {
    for (const KeepClearKind kind : {KeepClearKind::building, KeepClearKind::well, KeepClearKind::play_area,
                                     KeepClearKind::utility, KeepClearKind::other})
        if (text == to_text(kind)) return kind;
    return std::nullopt;
}

}  // namespace plugside
