#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "app/canvas/map_furniture.h"
#include "app/canvas/map_layers.h"
#include "app/canvas/map_view.h"
#include "app/canvas/mound_glyph.h"

namespace plugside {

namespace {

// A line of text on a small plate, kept inside the view.
void draw_note(QPainter& painter, QPointF at, const QString& text, const MapStyle& style, const QRectF& inside) {
    QFont font = painter.font();
    font.setPixelSize(style.text(-1));
    painter.setFont(font);
    const QRectF room(0.0, 0.0, inside.width() - 16.0, inside.height());
    const QSizeF size = QFontMetricsF(font).boundingRect(room, Qt::TextWordWrap | Qt::AlignCenter, text).size();
    QRectF plate(at, size + QSizeF(17.0, 8.0));
    if (plate.right() > inside.right()) plate.moveRight(at.x() - 24.0);
    if (plate.bottom() > inside.bottom()) plate.moveBottom(inside.bottom());
    plate.moveLeft(std::max(plate.left(), inside.left()));
    painter.setPen(QPen(style.hairline, 1.0));
    painter.setBrush(style.slip);
    painter.drawRoundedRect(plate, 5.0, 5.0);
    painter.setPen(style.ink);
    painter.drawText(plate.adjusted(7.0, 0.0, -7.0, 0.0), Qt::AlignCenter | Qt::TextWordWrap, text);
}

void draw_ring(QPainter& painter, QPointF at, double radius, const QColor& colour, const MapStyle& style) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(style.slip, 4.2 * style.line_factor));
    painter.drawEllipse(at, radius, radius);
    painter.setPen(QPen(colour, 2.4 * style.line_factor));
    painter.drawEllipse(at, radius, radius);
}

}  // namespace

void MapView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const MapStyle& style = choices_.style();
    painter.fillRect(rect(), style.paper);
    if (!session_.field()) {
        draw_invitation(painter);
    } else {
        draw_picture(painter);
        draw_picks(painter);
        if (standing_) draw_standing(painter, *standing_, view_, style);
        if (tool_ != nullptr) tool_->paint(painter, style, view_);
        draw_scale_bar(painter, view_, style, choices_.units());
        draw_north_arrow(painter, view_, style);
        draw_hover(painter);
        draw_glass(painter);
        draw_coordinates(painter);
    }
    if (focus_by_key_) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(style.act, 2.0));
        painter.drawRect(QRectF(rect()).adjusted(1.0, 1.0, -1.0, -1.0));
    }
}

void MapView::draw_picture(QPainter& painter) {
    const MapStyle& style = choices_.style();
    if (!marks_.marks() && marks_.making()) return;  // a picture without it would take longer than the wait
    MapShow show = show_for_step();
    // with the rim of ground that a picture drawn in the background has
    if (imagery_) show.imagery = imagery_->scene(view_.resized(view_.size() * 1.4), devicePixelRatioF(), choices_.theme());
    const MapRequest request{session_.field(), session_.plan(), style, view_, show, devicePixelRatioF()};
    const auto& picture = cache_.picture_for(request);
    if (!picture) return;
    flags_ = picture->flags;
    flags_view_ = picture->view;
    painter.save();
    painter.setTransform(view_.placing(picture->view), true);
    painter.setRenderHint(QPainter::SmoothPixmapTransform, false);
    painter.drawImage(QPointF(0.0, 0.0), picture->image);
    painter.restore();
}

void MapView::draw_picks(QPainter& painter) const {
    const MapStyle& style = choices_.style();
    const auto field = session_.field();
    const auto plan = session_.plan();
    if (plan && choices_.step() == Step::systems && choices_.system() && *choices_.system() < plan->systems.size()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(style.act, 2.4 * style.line_factor));
        painter.drawPath(screen_path(plan->systems[*choices_.system()].outline, view_));
    }
    if (plan && (choices_.step() == Step::sets || choices_.step() == Step::method) && choices_.set()) {
        if (const auto set = set_at(*plan, *choices_.set())) {
            const ProbeSite& site = plan->probes.at(plan->sets[*set].probe);
            const QPointF foot = view_.to_screen(ladder_middle(field->survey, site));
            draw_ring(painter, foot, 22.0, style.act, style);
            // its own flag is not hidden under the ring
            const QTransform placed = view_.placing(flags_view_);
            for (const FlagPlace& flag : flags_)
                if (flag.set == *set && placed.m11() == 1.0 && flag.cloth.width() > 10.0)
                    draw_flag(painter, foot, placed.mapRect(flag.cloth), static_cast<int>(*set) + 1,
                              choice_of(field->survey, *plan, plan->sets[*set]), style);
        }
    }
    if (choices_.mound() && *choices_.mound() < field->survey.mounds.size()) {
        const double radius = std::max(mound_reach_px(view_.pixels_per_metre()), 10.0) + 5.0;
        draw_ring(painter, view_.to_screen(field->survey.mounds[*choices_.mound()].plug), radius, style.ink, style);
    }
    if (focus_by_key_) {
        const QPointF middle = view_.screen().center();
        painter.setPen(QPen(style.act, 1.4));
        painter.drawLine(middle - QPointF(7.0, 0.0), middle + QPointF(7.0, 0.0));
        painter.drawLine(middle - QPointF(0.0, 7.0), middle + QPointF(0.0, 7.0));
    }
}

void MapView::draw_hover(QPainter& painter) const {
    const auto field = session_.field();
    if (!hovered_ || *hovered_ >= field->survey.mounds.size() || dragging_) return;
    const MapStyle& style = choices_.style();
    const Mound& mound = field->survey.mounds[*hovered_];
    const QPointF at = view_.to_screen(mound.plug);
    draw_ring(painter, at, std::max(mound_reach_px(view_.pixels_per_metre()), 10.0) + 3.0, style.quiet_ink, style);
    QStringList words{QString::fromStdString(mound.name)};
    words << (is_gopher_sign(mound.kind) ? freshness_word(mound.freshness) : kind_word(mound.kind));
    if (mound.fan)
        words << tr("fan %1° %2")
                     .arg(std::lround(mound.fan->degrees()) % 360)
                     .arg(QString::fromStdString(compass_point(*mound.fan)));
    draw_note(painter, at + QPointF(18.0, 12.0), words.join(QStringLiteral(", ")), style,
              view_.screen().adjusted(4.0, 4.0, -4.0, -4.0));
}

void MapView::draw_glass(QPainter& painter) {
    constexpr double radius_px = 110.0;
    constexpr double larger = 5.0;
    if (!magnifies_) return;
    const MapStyle& style = choices_.style();
    const QPointF at = cursor_.value_or(view_.screen().center());
    const ViewTransform closer = view_.centred_on(view_.to_local(at))
                                     .resized({2.0 * radius_px, 2.0 * radius_px})
                                     .zoomed(larger, {radius_px, radius_px});
    MapShow show = show_for_step();
    show.covered.clear();
    const QPointF corner = at - QPointF(radius_px, radius_px);
    QPainterPath round;
    round.addEllipse(at, radius_px, radius_px);
    painter.save();
    painter.setClipPath(round);
    painter.fillPath(round, style.field);
    const auto& picture = glass_.picture_for({session_.field(), session_.plan(), style, closer, show, devicePixelRatioF()});
    if (picture) {
        painter.translate(corner);
        painter.setTransform(closer.placing(picture->view), true);
        painter.drawImage(QPointF(0.0, 0.0), picture->image);
    }
    painter.restore();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(style.ink, 2.0 * style.line_factor));
    painter.drawEllipse(at, radius_px, radius_px);
    painter.setPen(QPen(style.act, 1.2));
    painter.drawLine(at - QPointF(6.0, 0.0), at + QPointF(6.0, 0.0));
    painter.drawLine(at - QPointF(0.0, 6.0), at + QPointF(0.0, 6.0));
}

QString MapView::coordinate_text() const {
    const auto field = session_.field();
    if (!field) return {};
    std::optional<LocalPoint> marked;
    if (choices_.mound() && *choices_.mound() < field->survey.mounds.size())
        marked = field->survey.mounds[*choices_.mound()].plug;
    if (!cursor_ && !marked) return tr("move over the map or pick a mark");
    const LocalPoint at = cursor_ ? view_.to_local(*cursor_) : *marked;
    const GeographicPoint place = field->frame.to_geographic(at);
    QString text =
        tr("latitude %1, longitude %2").arg(place.latitude_degrees, 0, 'f', 6).arg(place.longitude_degrees, 0, 'f', 6);
    if (!cursor_ || !marked) return text;
    if (const auto bearing = Bearing::along(at - *marked))
        text += tr("; from %1: %2 towards %3° %4")
                    .arg(QString::fromStdString(field->survey.mounds[*choices_.mound()].name),
                         QString::fromStdString(ground_distance(Metres::of(distance_m(at, *marked)), choices_.units())))
                    .arg(std::lround(field->frame.true_bearing(*bearing, *marked).degrees()) % 360)
                    .arg(QString::fromStdString(compass_point(*bearing)));
    return text;
}

void MapView::draw_coordinates(QPainter& painter) const {
    if (!coordinates_) return;
    const MapStyle& style = choices_.style();
    const QString text = coordinate_text();
    QFont font = painter.font();
    font.setPixelSize(style.text(-1));
    const double width = QFontMetricsF(font).horizontalAdvance(text) + 16.0;
    draw_note(painter, {0.5 * (view_.size().width() - width), view_.size().height() - 90.0}, text, style,
              view_.screen().adjusted(4.0, 4.0, -4.0, -60.0));
}

void MapView::draw_invitation(QPainter& painter) const {
    const MapStyle& style = choices_.style();
    const QPointF middle = view_.screen().center();
    const QString drop = tr("Drop a walk here");
    const QString beside =
        tr("or press Ctrl+O. A walk is a GPX file from your receiver;\n"
           "the ground's layers, or a plan handed out before, may come with it.");
    QFont large = painter.font();
    large.setPixelSize(style.text(7));
    large.setBold(true);
    QFont plain = large;
    plain.setPixelSize(style.text(1));
    plain.setBold(false);
    // each on as many lines as it needs, both higher up where they would end below the map
    const int flags = Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap;
    const double wide = width() - 32.0;
    const double narrow = std::min(style.room(600.0), wide);
    const auto room_of = [&](const QFont& font, const QString& text, double across) {
        painter.setFont(font);
        return painter.boundingRect(QRectF(middle.x() - 0.5 * across, 0.0, across, 4.0 * height()), flags, text).height() +
               4.0;
    };
    const double drop_high = room_of(large, drop, wide);
    const double beside_high = room_of(plain, beside, narrow);
    const double top = std::min(middle.y() - 36.0, height() - 12.0 - drop_high - beside_high);
    draw_fan(painter, {middle.x(), top - 24.0}, Bearing::degrees(20.0), Freshness::fresh, 46.0, style);
    painter.setFont(large);
    painter.setPen(style.ink);
    painter.drawText(QRectF(middle.x() - 0.5 * wide, top, wide, drop_high), flags, drop);
    painter.setFont(plain);
    painter.setPen(style.quiet_ink);
    painter.drawText(QRectF(middle.x() - 0.5 * narrow, top + drop_high, narrow, beside_high), flags, beside);
}

}  // namespace plugside
