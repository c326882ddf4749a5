#include "app/drawing/ground_tool.h"

#include <QPainterPath>
#include <algorithm>
#include <utility>

#include "app/canvas/map_layers.h"
#include "app/drawing/nearby_layer.h"
#include "core/survey/walk_outline.h"

namespace plugside {

namespace {

constexpr double snap_px = 10.0;
constexpr double corner_px = 4.5;

QPainterPath path_of(const std::vector<LocalPoint>& corners, bool closed, const ViewTransform& view) {
    QPainterPath path;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const QPointF at = view.to_screen(corners[i]);
        if (i == 0)
            path.moveTo(at);
        else
            path.lineTo(at);
    }
    if (closed && corners.size() > 2) path.closeSubpath();
    return path;
}

void draw_corner(QPainter& painter, QPointF at, double radius, const QColor& rim, const QColor& inside) {
    painter.setPen(QPen(rim, 2.0));
    painter.setBrush(inside);
    painter.drawEllipse(at, radius, radius);
}

}  // namespace

QString shape_words(GroundKind kind) {
    switch (kind) {
        case GroundKind::boundary: return GroundTool::tr("boundary");
        case GroundKind::barrier: return GroundTool::tr("barrier");
        case GroundKind::crossing: return GroundTool::tr("crossing");
        case GroundKind::gate: return GroundTool::tr("gate");
        case GroundKind::keep_clear: return GroundTool::tr("keep-clear area");
        case GroundKind::untreated: return GroundTool::tr("untreated piece");
    }
    return {};
}

GroundTool::GroundTool(FieldSession& session, Choices& choices, QObject* parent)
    : QObject(parent), session_(session), choices_(choices) {
    connect(&preview_, &NearbyPreview::arrived, this, &GroundTool::changed);
    connect(&session_, &FieldSession::field_replaced, this, [this] {
        pen_.put_down();
        preview_.forget();
        pick(std::nullopt);
    });
    connect(&session_, &FieldSession::survey_edited, this, [this] {
        const auto shapes = shapes_of(ground());
        if (picked_ && std::find(shapes.begin(), shapes.end(), *picked_) == shapes.end()) picked_.reset();
        corner_.reset();
        Q_EMIT changed();
    });
}

const Ground& GroundTool::ground() const {
    static const Ground none;
    const auto field = session_.field();
    return field ? field->survey.ground : none;
}

QString GroundTool::reading_words() const {
    if (!pen_.stroke() || pen_.corners().empty()) return {};
    const PenReading reading = pen_.reading();
    QStringList words;
    if (reading.leg) words << QString::fromStdString(tape_reading(*reading.leg, choices_.units()));
    if (reading.bearing)
        words << tr("%1° %2")
                     .arg(std::lround(reading.bearing->degrees()))
                     .arg(QString::fromStdString(compass_point(*reading.bearing)));
    if (pen_.corners().size() > 1)
        words << tr("line %1").arg(QString::fromStdString(ground_distance(reading.line, choices_.units())));
    if (reading.area_m2 > 0.0)
        words << tr("area %1").arg(QString::fromStdString(ground_area(reading.area_m2, choices_.units())));
    return words.join(QStringLiteral(" · "));
}

bool GroundTool::commit(EditedGround edited, const QString& words) {
    if (!edited) {
        Q_EMIT said(QString::fromStdString(edited.error()));
        return false;
    }
    session_.edit(SurveyPart(std::move(*edited)), words);
    return true;
}

// What the systems about the line would be if it ended at the tip.
void GroundTool::look_at_stroke() {
    const auto stroke = pen_.stroke();
    if (stroke != Stroke::barrier && stroke != Stroke::crossing) return;
    GroundPen ended = pen_;
    ended.press();
    const std::vector<LocalPoint> line = ended.corners();
    auto edited = ended.finish(ground());
    if (edited)
        preview_.look(session_.field(), session_.plan(), {{}, std::move(*edited), {}}, line);
    else
        preview_.forget();
}

void GroundTool::look_at_dragged(LocalPoint from, LocalPoint to) {
    const GroundKind kind = corner_->shape.kind;
    if (kind == GroundKind::boundary || kind == GroundKind::barrier || kind == GroundKind::crossing)
        preview_.look(session_.field(), session_.plan(), {{}, *dragged_, {}}, {from, to});
}

void GroundTool::take(Stroke stroke) {
    if (!session_.field()) return;
    pen_.take(stroke);
    preview_.forget();
    joining_ = false;
    pick(std::nullopt);
}

void GroundTool::put_down() {
    pen_.put_down();
    preview_.forget();
    joining_ = false;
    Q_EMIT changed();
}

void GroundTool::finish() {
    if (!pen_.stroke()) return;
    const Stroke stroke = *pen_.stroke();
    const std::size_t before = shapes_of(ground()).size();
    auto edited = pen_.finish(ground());
    const QString words = stroke == Stroke::hole ? tr("cut a hole") : stroke == Stroke::split ? tr("split") : tr("draw");
    if (!commit(std::move(edited), words)) return;
    preview_.forget();
    if (stroke != Stroke::hole && stroke != Stroke::split && shapes_of(ground()).size() == before + 1) {
        const auto kind = static_cast<GroundKind>(static_cast<int>(stroke));
        std::size_t last = 0;
        for (const GroundShape shape : shapes_of(ground()))
            if (shape.kind == kind) last = shape.number;
        pick(GroundShape{kind, last});
    }
    Q_EMIT changed();
}

void GroundTool::take_corner_back() {
    pen_.take_corner_back();
    look_at_stroke();
    Q_EMIT changed();
}

void GroundTool::pick(std::optional<GroundShape> shape) {
    picked_ = shape;
    corner_.reset();
    Q_EMIT changed();
}

void GroundTool::remove_picked() {
    if (corner_)
        commit(corner_removed(ground(), *corner_), tr("remove a corner"));
    else if (picked_)
        commit(without_shape(ground(), *picked_), tr("remove the %1").arg(shape_words(picked_->kind)));
}

void GroundTool::mend_picked() {
    if (picked_) commit(mended(ground(), *picked_), tr("mend the %1").arg(shape_words(picked_->kind)));
}

void GroundTool::join_with_next() {
    joining_ = picked_.has_value();
    Q_EMIT changed();
}

bool GroundTool::make_band(const QString& text) {
    if (!picked_ || is_area(picked_->kind) || is_place(picked_->kind)) return false;
    const auto width = parse_length(text.toStdString(), choices_.units());
    if (!width) {
        Q_EMIT said(tr("“%1” is no width, as in “20 ft” or “6 m”.").arg(text));
        return false;
    }
    const std::size_t before = ground().keep_clear.size();
    const std::string name = words_of(ground(), *picked_).name;
    auto edited = with_band(ground(), GroundKind::keep_clear, corners_of(ground(), *picked_), *width);
    // it is the line's own band: it has its name
    for (std::size_t i = before; edited && i < edited->keep_clear.size(); ++i) edited->keep_clear[i].name = name;
    if (!commit(std::move(edited), tr("keep a band clear"))) return false;
    pick(GroundShape{GroundKind::keep_clear, before});
    return true;
}

void GroundTool::use_words(const ShapeWords& words) {
    if (!picked_ || words_of(ground(), *picked_) == words) return;
    commit(with_words(ground(), *picked_, words), tr("name the %1").arg(shape_words(picked_->kind)));
}

bool GroundTool::enter_leg(const QString& text) {
    const auto leg = parse_leg(text.toStdString(), choices_.units());
    if (!leg) {
        Q_EMIT said(tr("“%1” is no length and bearing, as in “40 ft NE” or “12.5 m 135”.").arg(text));
        return false;
    }
    if (!pen_.leg(*leg)) {
        Q_EMIT said(tr("A leg goes on from a corner: put the first one on the map."));
        return false;
    }
    Q_EMIT changed();
    return true;
}

bool GroundTool::grabs(QPointF pixel, const ViewTransform& view) {
    pressed_pixel_ = pixel;
    if (pen_.stroke() || !picked_ || joining_) return false;
    const LocalPoint at = view.to_local(pixel);
    const Metres reach = view.ground_length(snap_px);
    if (const auto corner = nearest_corner(ground(), at, reach); corner && corner->corner.shape == *picked_) {
        corner_ = corner->corner;
        dragged_ = ground();
        Q_EMIT changed();
        return true;
    }
    const auto edge = nearest_edge(ground(), at, reach);
    if (!edge || edge->corner.shape != *picked_) return false;
    auto edited = corner_added(ground(), edge->corner, edge->at);
    if (!edited) return false;
    corner_ = edge->corner;
    ++corner_->corner;
    dragged_ = std::move(*edited);
    Q_EMIT changed();
    return true;
}

void GroundTool::drag(QPointF pixel, const ViewTransform& view) {
    if (!dragged_ || !corner_) return;
    LocalPoint to = view.to_local(pixel);
    const Metres reach = view.ground_length(snap_px);
    auto others = without_shape(ground(), corner_->shape);  // a corner does not snap to its own shape
    if (others) {
        auto hit = nearest_corner(*others, to, reach);
        if (!hit) hit = nearest_edge(*others, to, reach);
        if (hit) to = hit->at;
    }
    if (auto edited = corner_moved(*dragged_, *corner_, to)) {
        dragged_ = std::move(*edited);
        look_at_dragged(view.to_local(pressed_pixel_), to);
    }
    Q_EMIT changed();
}

void GroundTool::drop(QPointF pixel, const ViewTransform& view) {
    if (!dragged_ || !corner_) return;
    drag(pixel, view);
    const GroundCorner corner = *corner_;
    Ground edited = std::move(*dragged_);
    dragged_.reset();
    preview_.forget();
    if (edited != ground()) commit(std::move(edited), tr("move a corner"));
    corner_ = corner;
    Q_EMIT changed();
}

void GroundTool::hover(QPointF pixel, const ViewTransform& view) {
    tip_pixel_ = pixel;
    if (!pen_.stroke()) return;
    pen_.hover(ground(), view.to_local(pixel), view.ground_length(snap_px));
    look_at_stroke();
    Q_EMIT changed();
}

void GroundTool::press_pen(const ViewTransform& view) {
    if (!tip_pixel_) tip_pixel_ = view.screen().center();
    pen_.hover(ground(), view.to_local(*tip_pixel_), view.ground_length(snap_px));
    if (pen_.press()) {
        finish();
    } else {
        look_at_stroke();
        Q_EMIT changed();
    }
}

bool GroundTool::click(QPointF pixel, const ViewTransform& view, Qt::KeyboardModifiers) {
    if (!session_.field()) return false;
    if (pen_.stroke()) {
        tip_pixel_ = pixel;
        press_pen(view);
        return true;
    }
    const auto shape = shape_at(ground(), view.to_local(pixel), view.ground_length(snap_px));
    if (joining_ && picked_ && shape) {
        joining_ = false;
        commit(joined(ground(), *picked_, *shape), tr("join"));
        Q_EMIT changed();
        return true;
    }
    pick(shape);
    return shape.has_value();
}

bool GroundTool::double_click(QPointF pixel, const ViewTransform& view) {
    if (!pen_.stroke()) return false;
    tip_pixel_ = pixel;
    finish();
    (void)view;
    return true;
}

void GroundTool::move_tip(QPointF by, const ViewTransform& view) {
    const QPointF from = tip_pixel_.value_or(view.screen().center());
    const QRectF room = view.screen();
    hover(
        {std::clamp(from.x() + by.x(), room.left(), room.right()), std::clamp(from.y() + by.y(), room.top(), room.bottom())},
        view);
}

void GroundTool::go_about_the_walk() {
    const auto field = session_.field();
    if (!field) return;
    const auto corners = walk_outline(field->survey);
    if (corners.empty()) {
        Q_EMIT said(tr("Nothing was walked that an outline could go about."));
        return;
    }
    if (!pen_.stroke() || !pen_.encloses()) take(Stroke::boundary);
    pen_.lay(corners);
    Q_EMIT changed();
}

bool GroundTool::step_corner(int by) {
    const std::size_t count = corners_of(ground(), *picked_, corner_ ? corner_->ring : 0).size();
    if (count == 0) return false;
    if (!corner_)
        corner_ = GroundCorner{*picked_, 0, by > 0 ? 0 : count - 1};
    else
        corner_->corner = (corner_->corner + (by > 0 ? 1 : count - 1)) % count;
    Q_EMIT changed();
    return true;
}

bool GroundTool::move_picked_corner(QPointF by, const ViewTransform& view) {
    if (!corner_) return false;
    const GroundCorner corner = *corner_;
    const auto corners = corners_of(ground(), corner.shape, corner.ring);
    if (corner.corner >= corners.size()) return false;
    const LocalPoint to = view.to_local(view.to_screen(corners[corner.corner]) + by);
    if (commit(corner_moved(ground(), corner, to), tr("move a corner"))) corner_ = corner;
    Q_EMIT changed();
    return true;
}

bool GroundTool::key_with_pen(const QKeyEvent& event, const ViewTransform& view) {
    const double step = event.modifiers().testFlag(Qt::ShiftModifier) ? 1.0 : 8.0;
    switch (event.key()) {
        case Qt::Key_Left: move_tip({-step, 0.0}, view); return true;
        case Qt::Key_Right: move_tip({step, 0.0}, view); return true;
        case Qt::Key_Up: move_tip({0.0, -step}, view); return true;
        case Qt::Key_Down: move_tip({0.0, step}, view); return true;
        case Qt::Key_Space: press_pen(view); return true;
        case Qt::Key_Return:
        case Qt::Key_Enter: finish(); return true;
        case Qt::Key_Backspace: take_corner_back(); return true;
        case Qt::Key_Escape: put_down(); return true;
        default: return false;
    }
}

bool GroundTool::key(const QKeyEvent& event, const ViewTransform& view) {
    if (pen_.stroke()) return key_with_pen(event, view);
    if (!picked_) return false;
    const double step = event.modifiers().testFlag(Qt::ShiftModifier) ? 1.0 : 8.0;
    switch (event.key()) {
        case Qt::Key_BracketRight: return step_corner(1);
        case Qt::Key_BracketLeft: return step_corner(-1);
        case Qt::Key_Left: return move_picked_corner({-step, 0.0}, view);
        case Qt::Key_Right: return move_picked_corner({step, 0.0}, view);
        case Qt::Key_Up: return move_picked_corner({0.0, -step}, view);
        case Qt::Key_Down: return move_picked_corner({0.0, step}, view);
        case Qt::Key_Delete: remove_picked(); return true;
        case Qt::Key_Escape:
            joining_ = false;
            pick(std::nullopt);
            return true;
        default: return false;
    }
}

void GroundTool::paint(QPainter& painter, const MapStyle& style, const ViewTransform& view) const {
    if (const auto field = session_.field()) draw_nearby(painter, preview_, *field, style, view);
    painter.setRenderHint(QPainter::Antialiasing);
    const Ground& shown = dragged_ ? *dragged_ : ground();
    if (picked_) {
        for (std::size_t ring = 0; ring < rings_of(shown, *picked_); ++ring) {
            const auto corners = corners_of(shown, *picked_, ring);
            painter.setPen(QPen(style.act, 2.0 * style.line_factor));
            painter.setBrush(Qt::NoBrush);
            painter.drawPath(path_of(corners, is_area(picked_->kind), view));
            for (std::size_t i = 0; i < corners.size(); ++i) {
                const bool held = corner_ && corner_->ring == ring && corner_->corner == i;
                draw_corner(painter, view.to_screen(corners[i]), held ? corner_px + 2.0 : corner_px, style.act,
                            held ? style.act : style.slip);
            }
        }
    }
    if (!pen_.stroke()) return;
    std::vector<LocalPoint> line = pen_.corners();
    if (pen_.tip()) line.push_back(*pen_.tip());
    if (pen_.encloses() && line.size() > 2) {
        QColor inside = style.act;
        inside.setAlphaF(0.12F);
        painter.setPen(Qt::NoPen);
        painter.setBrush(inside);
        painter.drawPath(path_of(line, true, view));
    }
    painter.setPen(QPen(style.act, 2.5 * style.line_factor));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(path_of(line, pen_.encloses() && !pen_.tip(), view));
    for (const LocalPoint corner : pen_.corners())
        draw_corner(painter, view.to_screen(corner), corner_px, style.act, style.slip);
    if (!pen_.tip()) return;
    const QPointF tip = view.to_screen(*pen_.tip());
    draw_corner(painter, tip, pen_.snapped() ? corner_px + 3.0 : corner_px, style.act,
                pen_.snapped() ? style.slip : style.act);
    const QString words = reading_words();
    if (words.isEmpty()) return;
    QFont font = painter.font();
    font.setPixelSize(style.text());
    painter.setFont(font);
    const QFontMetricsF metrics(font);
    QRectF place(tip + QPointF(14.0, 12.0), QSizeF(metrics.horizontalAdvance(words) + 8.0, metrics.height() + 4.0));
    if (place.right() > view.screen().right()) place.moveRight(tip.x() - 14.0);
    if (place.bottom() > view.screen().bottom()) place.moveBottom(tip.y() - 12.0);
    place.moveLeft(std::max(place.left(), 4.0));
    draw_haloed_text(painter, place, words, style.ink, style.slip);
}

}  // namespace plugside
