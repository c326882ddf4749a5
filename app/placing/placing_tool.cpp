#include "app/placing/placing_tool.h"

#include <utility>

#include "app/canvas/tip.h"
#include "app/placing/pair_marks.h"

namespace plugside {

namespace {

constexpr double snap_px = 10.0;
constexpr double drag_slack_px = 3.0;
constexpr double large_step_px = 8.0;

}  // namespace

PlacingTool::PlacingTool(PicturePlacing& placing, PlaceOfMark place_of_mark, QObject* parent)
    : QObject(parent), placing_(placing), place_of_mark_(std::move(place_of_mark)) {
    connect(&placing_, &PicturePlacing::changed, this, &PlacingTool::changed);
}

LocalPoint PlacingTool::snapped(QPointF pixel, const ViewTransform& view) const {
    const LocalPoint at = view.to_local(pixel);
    return place_of_mark_(at, view.ground_length(snap_px)).value_or(at);
}

bool PlacingTool::grabs(QPointF pixel, const ViewTransform& view) {
    held_.reset();
    const auto& pairs = placing_.pairs();
    for (std::size_t i = 0; i < pairs.size(); ++i)
        if (QLineF(view.to_screen(pairs[i].ground), pixel).length() <= pair_mark_px + 2.0) held_ = i;
    held_at_ = pixel;
    moved_ = false;
    return held_.has_value();
}

void PlacingTool::drag(QPointF pixel, const ViewTransform& view) {
    if (!held_ || (!moved_ && QLineF(held_at_, pixel).length() < drag_slack_px)) return;
    moved_ = true;
    placing_.drag_place(*held_, snapped(pixel, view));
}

void PlacingTool::drop(QPointF pixel, const ViewTransform& view) {
    if (!held_) return;
    drag(pixel, view);
    const std::size_t pair = *std::exchange(held_, std::nullopt);
    if (moved_) placing_.drop();
    placing_.pick(pair);
}

void PlacingTool::hover(QPointF pixel, const ViewTransform&) {
    tip_ = pixel;
    tip_by_key_ = false;
}

bool PlacingTool::click(QPointF pixel, const ViewTransform& view, Qt::KeyboardModifiers) {
    placing_.take_place(snapped(pixel, view));
    return true;
}

bool PlacingTool::double_click(QPointF, const ViewTransform&) { return true; }

bool PlacingTool::key(const QKeyEvent& event, const ViewTransform& view) {
    const bool shift = event.modifiers().testFlag(Qt::ShiftModifier);
    const QPointF from = tip_.value_or(view.screen().center());
    if (const auto step = arrow_step(event)) {
        if (event.modifiers().testFlag(Qt::ControlModifier)) {
            if (const auto pair = placing_.picked())
                placing_.shift_place(*pair, view.to_local(view.to_screen(placing_.pairs().at(*pair).ground) +
                                                          *step * (shift ? large_step_px : 1.0)));
            return true;
        }
        if (event.modifiers().testFlag(Qt::AltModifier)) return false;
        tip_ = within(view.screen(), from + *step * (shift ? 1.0 : large_step_px));
        tip_by_key_ = true;
        Q_EMIT changed();
        return true;
    }
    switch (event.key()) {
        case Qt::Key_Space:
        case Qt::Key_Return:
        case Qt::Key_Enter: placing_.take_place(snapped(from, view)); return true;
        case Qt::Key_Delete: placing_.remove_picked(); return true;
        default: return false;
    }
}

void PlacingTool::paint(QPainter& painter, const MapStyle& style, const ViewTransform& view) const {
    const auto& pairs = placing_.pairs();
    const auto& fit = placing_.fit();
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        PairMark mark{view.to_screen(pairs[i].ground), std::nullopt, static_cast<int>(i + 1), placing_.picked() == i, false};
        if (fit) {
            mark.left_over = view.to_screen(fit->placement.to_ground(pairs[i].pixel));
            mark.worst = fit->worst == i;
        }
        draw_pair_mark(painter, mark, style);
    }
    if (const auto place = placing_.waiting_place())
        draw_pair_mark(painter, {view.to_screen(*place), {}, 0, true, false}, style);
    if (tip_ && tip_by_key_) draw_tip(painter, *tip_, style);
}

}  // namespace plugside
