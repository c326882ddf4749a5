#include "app/drawing/trace_tool.h"

#include <algorithm>
#include <utility>

#include "app/canvas/tip.h"
#include "core/geometry/polyline.h"
#include "core/units/display.h"

namespace plugside {

namespace {

constexpr double reach_px = 12.0;
constexpr double large_step_px = 8.0;
constexpr double least_step_px = 1.0;

// As much of a line as the eye can tell apart.
QPolygonF drawn(const std::vector<LocalPoint>& line, bool closed, const ViewTransform& view) {
    QPolygonF places;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const QPointF at = view.to_screen(line[i]);
        if (i == 0 || i + 1 == line.size() || (at - places.back()).manhattanLength() > least_step_px) places << at;
    }
    if (closed && !line.empty()) places << view.to_screen(line.front());
    return places;
}

}  // namespace

TraceTool::TraceTool(FieldSession& session, Choices& choices, GroundTool& ground, QObject* parent)
    : QObject(parent), session_(session), choices_(choices), ground_(ground) {
    connect(&session_, &FieldSession::field_replaced, this, [this] {
        put_down();
        of_files_.clear();
    });
}

void TraceTool::gather() {
    lines_.clear();
    boxes_.clear();
    for (const Walk& walk : session_.field()->survey.walks)
        for (const TrackSegment& segment : walk.segments) {
            Traceable track{tr("track of %1").arg(QString::fromStdString(walk.id)).toStdString(), {}, {}};
            for (const TrackPoint& fix : segment) track.line.vertices.push_back(fix.at);
            if (track.line.vertices.size() > 1) lines_.push_back(std::move(track));
        }
    lines_.insert(lines_.end(), of_files_.begin(), of_files_.end());
    for (const Traceable& line : lines_) {
        GroundBox& box = boxes_.emplace_back();
        for (const LocalPoint place : line.line.vertices) box.add(place);
    }
    picked_.reset();
    under_hand_.reset();
    from_.reset();
    to_.reset();
    other_way_ = false;
}

void TraceTool::begin() {
    if (!session_.field()) return;
    active_ = true;
    gather();
    Q_EMIT changed();
}

void TraceTool::put_down() {
    active_ = false;
    lines_.clear();
    boxes_.clear();
    picked_.reset();
    under_hand_.reset();
    Q_EMIT changed();
}

void TraceTool::open(const std::filesystem::path& file) {
    if (!session_.field()) return;
    reading_.start([this, file, frame = session_.field()->frame](const Progress& progress) -> BackgroundWork::Apply {
        auto read = std::make_shared<tl::expected<std::vector<Traceable>, Refusal>>(read_traceable(file, frame, progress));
        return [this, read, frame] {
            if (!*read) {
                Q_EMIT said(QString::fromStdString(sentence(read->error())));
                Q_EMIT changed();
                return;
            }
            if (!session_.field() || session_.field()->frame.centre() != frame.centre()) return;
            of_files_.insert(of_files_.end(), (*read)->begin(), (*read)->end());
            if (active_) gather();
            Q_EMIT changed();
        };
    });
    Q_EMIT changed();
}

std::vector<LocalPoint> TraceTool::way() const {
    if (!picked_) return {};
    const TracedLine& line = lines_.at(*picked_).line;
    return from_ && to_ ? between(line, *from_, *to_, other_way_) : line.vertices;
}

QString TraceTool::picked_words() const {
    if (!picked_) return {};
    std::vector<LocalPoint> line = way();
    if (is_whole() && lines_.at(*picked_).line.closed) line.push_back(line.front());
    return tr("%1 · %2").arg(QString::fromStdString(lines_.at(*picked_).name),
                             QString::fromStdString(ground_distance(length(Polyline{line}), choices_.units())));
}

void TraceTool::go_the_other_way() {
    other_way_ = !other_way_;
    Q_EMIT changed();
}

void TraceTool::take_place_back() {
    if (to_)
        to_.reset();
    else
        picked_.reset();
    Q_EMIT changed();
}

EditedGround TraceTool::made(GroundKind kind) const {
    const Traceable& line = lines_.at(*picked_);
    std::vector<LocalPoint> corners = way();
    if (!is_area(kind) && is_whole() && line.line.closed) corners.push_back(corners.front());
    auto edited = with_shape(ground(), kind, corners);
    if (!is_area(kind) || !is_whole()) return edited;
    for (const auto& hole : line.holes) {
        if (!edited) break;
        GroundShape last{kind, 0};
        for (const GroundShape shape : shapes_of(*edited))
            if (shape.kind == kind) last = shape;
        edited = with_hole(*edited, last, hole);
    }
    return edited;
}

void TraceTool::make(GroundKind kind) {
    if (!picked_) {
        Q_EMIT said(tr("Click the line to follow first."));
        return;
    }
    auto edited = made(kind);
    if (!edited) {
        Q_EMIT said(QString::fromStdString(edited.error()));
        return;
    }
    session_.edit(SurveyPart(std::move(*edited)), tr("trace"));
    GroundShape last{kind, 0};
    for (const GroundShape shape : shapes_of(ground()))
        if (shape.kind == kind) last = shape;
    picked_.reset();
    to_.reset();
    ground_.pick(last);
    Q_EMIT changed();
}

std::optional<TraceTool::Hit> TraceTool::nearest(LocalPoint at, Metres reach) const {
    std::optional<Hit> found;
    GroundBox here;
    here.add(at);
    here = here.grown(reach);
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        if (!boxes_[i].meets(here)) continue;
        const auto place = nearest_on(lines_[i].line, at);
        if (place && place->away_m <= reach.value() && (!found || place->away_m < found->place.away_m)) found = {i, *place};
    }
    return found;
}

void TraceTool::press(LocalPoint at, Metres reach) {
    std::optional<Hit> hit;
    if (picked_) {  // the picked line goes before others that lie on it
        const auto place = nearest_on(lines_[*picked_].line, at);
        if (place && place->away_m <= reach.value()) hit = {*picked_, *place};
    }
    if (!hit) hit = nearest(at, reach);
    if (!hit) {
        picked_.reset();
        to_.reset();
    } else if (picked_ == hit->line && !to_) {
        to_ = hit->place;
    } else {
        picked_ = hit->line;
        from_ = hit->place;
        to_.reset();
        other_way_ = false;
    }
    Q_EMIT changed();
}

bool TraceTool::grabs(QPointF, const ViewTransform&) { return false; }
void TraceTool::drag(QPointF, const ViewTransform&) {}
void TraceTool::drop(QPointF, const ViewTransform&) {}

void TraceTool::hover(QPointF pixel, const ViewTransform& view) {
    tip_ = pixel;
    tip_by_key_ = false;
    const auto hit = nearest(view.to_local(pixel), view.ground_length(reach_px));
    const auto under = hit ? std::optional(hit->line) : std::nullopt;
    if (std::exchange(under_hand_, under) != under) Q_EMIT changed();
}

bool TraceTool::click(QPointF pixel, const ViewTransform& view, Qt::KeyboardModifiers) {
    press(view.to_local(pixel), view.ground_length(reach_px));
    return true;
}

bool TraceTool::double_click(QPointF, const ViewTransform&) { return true; }

bool TraceTool::key(const QKeyEvent& event, const ViewTransform& view) {
    const QPointF from = tip_.value_or(view.screen().center());
    if (const auto step = arrow_step(event); step && !event.modifiers().testFlag(Qt::AltModifier)) {
        const double length = event.modifiers().testFlag(Qt::ShiftModifier) ? 1.0 : large_step_px;
        hover(within(view.screen(), from + *step * length), view);
        tip_by_key_ = true;
        Q_EMIT changed();
        return true;
    }
    if (event.key() != Qt::Key_Space) return false;
    press(view.to_local(from), view.ground_length(reach_px));
    return true;
}

void TraceTool::paint(QPainter& painter, const MapStyle& style, const ViewTransform& view) const {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    const GroundBox seen = view.ground();
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        if (!boxes_[i].meets(seen)) continue;
        const QPolygonF line = drawn(lines_[i].line.vertices, lines_[i].line.closed, view);
        const bool marked = under_hand_ == i || picked_ == i;
        painter.setPen(QPen(style.slip, (marked ? 5.0 : 4.0) * style.line_factor));
        painter.drawPolyline(line);
        painter.setPen(QPen(marked ? style.act : style.ink, (marked ? 2.4 : 1.2) * style.line_factor, Qt::DashLine));
        painter.drawPolyline(line);
    }
    if (picked_) {
        painter.setPen(QPen(style.act, 4.0 * style.line_factor));
        painter.drawPolyline(drawn(way(), is_whole() && lines_.at(*picked_).line.closed, view));
        for (const auto& place : {from_, to_})
            if (place) draw_tip(painter, view.to_screen(place->at), style);
    }
    if (tip_ && tip_by_key_) draw_tip(painter, *tip_, style);
}

}  // namespace plugside
