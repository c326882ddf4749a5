#include "app/drawing/ground_pen.h"

#include <algorithm>
#include <utility>

#include "core/words/words.h"

namespace plugside {

std::optional<GroundKind> kind_drawn_by(Stroke stroke) {
    switch (stroke) {
        case Stroke::boundary: return GroundKind::boundary;
        case Stroke::barrier: return GroundKind::barrier;
        case Stroke::crossing: return GroundKind::crossing;
        case Stroke::gate: return GroundKind::gate;
        case Stroke::keep_clear: return GroundKind::keep_clear;
        case Stroke::untreated: return GroundKind::untreated;
        case Stroke::hole:
        case Stroke::split: return std::nullopt;
    }
    return std::nullopt;
}

namespace {

// The smallest area about a place.
std::optional<GroundShape> area_about(const Ground& ground, LocalPoint place) {
    const auto shape = shape_at(ground, place, Metres::of(0.0));
    if (shape && is_area(shape->kind)) return shape;
    return std::nullopt;
}

EditedGround cut_hole(const Ground& ground, const std::vector<LocalPoint>& corners) {
    for (const LocalPoint corner : corners)
        if (const auto area = area_about(ground, corner)) return with_hole(ground, *area, corners);
    return tl::unexpected<std::string>(
        Words::tell("The hole lies in no area: draw it inside the boundary, a keep-clear area or an untreated piece."));
}

// What the line was meant for: an area that it cuts, the smallest first; else a barrier that it meets.
EditedGround split(const Ground& ground, const std::vector<LocalPoint>& line) {
    std::vector<GroundShape> areas;
    for (const GroundShape shape : shapes_of(ground))
        if (is_area(shape.kind)) areas.push_back(shape);
    std::stable_sort(areas.begin(), areas.end(), [&](GroundShape a, GroundShape b) {
        return area_m2(area_of(ground, a)) < area_m2(area_of(ground, b));
    });
    for (std::size_t b = 0; b < ground.barriers.size() && line.size() > 1; ++b) {
        const auto& barrier = ground.barriers[b].line.vertices;
        for (std::size_t i = 0; i + 1 < barrier.size(); ++i)
            for (std::size_t k = 0; k + 1 < line.size(); ++k) {
                if (!segments_meet(barrier[i], barrier[i + 1], line[k], line[k + 1])) continue;
                const LocalVector along = barrier[i + 1] - barrier[i];
                const LocalVector drawn = line[k + 1] - line[k];
                const double turn = cross(along, drawn);
                const LocalPoint at =
                    turn == 0.0 ? line[k] : barrier[i] + along * (cross(line[k] - barrier[i], drawn) / turn);
                return split_along(ground, {GroundKind::barrier, b}, {at});
            }
    }
    for (const GroundShape shape : areas)
        if (const auto parts = split_along(ground, shape, line)) return parts;
    return tl::unexpected<std::string>(Words::tell("The line crosses no barrier, and no area from edge to edge."));
}

}  // namespace

void GroundPen::take(Stroke stroke) {
    put_down();
    stroke_ = stroke;
}

void GroundPen::put_down() {
    stroke_.reset();
    corners_.clear();
    tip_.reset();
    snapped_ = closes_ = false;
}

bool GroundPen::encloses() const {
    return stroke_ && (*stroke_ == Stroke::hole || (kind_drawn_by(*stroke_) && is_area(*kind_drawn_by(*stroke_))));
}

void GroundPen::hover(const Ground& ground, LocalPoint at, Metres reach) {
    tip_ = at;
    snapped_ = closes_ = false;
    if (!stroke_) return;
    if (encloses() && corners_.size() >= 3 && distance_m(at, corners_.front()) <= reach.value()) {
        tip_ = corners_.front();
        snapped_ = closes_ = true;
        return;
    }
    auto hit = nearest_corner(ground, at, reach);
    if (!hit) hit = nearest_edge(ground, at, reach);
    if (!hit) return;
    tip_ = hit->at;
    snapped_ = true;
}

bool GroundPen::press() {
    if (!stroke_ || !tip_) return false;
    if (closes_) return true;
    if (corners_.empty() || corners_.back() != *tip_) corners_.push_back(*tip_);
    const auto kind = kind_drawn_by(*stroke_);
    return kind && is_place(*kind);
}

void GroundPen::take_corner_back() {
    if (!corners_.empty()) corners_.pop_back();
}

void GroundPen::lay(std::vector<LocalPoint> corners) {
    corners_ = std::move(corners);
    tip_.reset();
    snapped_ = closes_ = false;
}

bool GroundPen::leg(const Leg& leg) {
    if (!stroke_ || corners_.empty()) return false;
    corners_.push_back(corners_.back() + leg.bearing.unit() * leg.length.value());
    tip_ = corners_.back();
    snapped_ = closes_ = false;
    return true;
}

PenReading GroundPen::reading() const {
    PenReading reading;
    std::vector<LocalPoint> all = corners_;
    if (tip_ && !corners_.empty()) {
        reading.leg = Metres::of(distance_m(corners_.back(), *tip_));
        reading.bearing = Bearing::along(*tip_ - corners_.back());
        all.push_back(*tip_);
    }
    reading.line = length(Polyline{all});
    if (encloses()) reading.area_m2 = area_m2(Polygon{Ring{all}, {}});
    return reading;
}

EditedGround GroundPen::finish(const Ground& ground) {
    if (!stroke_) return tl::unexpected<std::string>(Words::tell("No pen is in hand."));
    EditedGround edited = *stroke_ == Stroke::hole    ? cut_hole(ground, corners_)
                          : *stroke_ == Stroke::split ? split(ground, corners_)
                                                      : with_shape(ground, *kind_drawn_by(*stroke_), corners_);
    if (edited) put_down();
    return edited;
}

}  // namespace plugside
