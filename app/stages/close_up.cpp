#include "app/stages/close_up.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace plugside {

namespace {

CloseUpScene::FanDrawn fan_of(const Mound& mound, Bearing axis) {
    CloseUpScene::FanDrawn fan{std::nullopt, mound.freshness, QString::fromStdString(mound.name)};
    if (mound.fan && mound.freshness != Freshness::crushed) fan.turn_degrees = turn_degrees(axis, *mound.fan);
    return fan;
}

// The direction of the run nearest to the ladder, clockwise from the axis; across the row where no run is near.
double run_turn(const Plan& plan, const ProbeSite& site) {
    double least = 3.0;  // metres: a run further off is not the one that is probed
    double turn = site.ladder.angle_degrees + 90.0;
    for (const MainRun& run : plan.runs) {
        if (run.system != site.system) continue;
        for (std::size_t i = 1; i < run.line.vertices.size(); ++i) {
            const LocalPoint a = run.line.vertices[i - 1];
            const LocalPoint b = run.line.vertices[i];
            const double away = distance_to_segment_m(site.middle, a, b);
            const auto bearing = Bearing::along(b - a);
            if (away >= least || !bearing) continue;
            least = away;
            turn = turn_degrees(site.axis, *bearing);
        }
    }
    // a run that all but follows the row would be drawn along it: the row was laid to cross it
    const double angle = angle_between_axes_degrees(Bearing::degrees(turn), Bearing::degrees(site.ladder.angle_degrees));
    return angle < 25.0 ? site.ladder.angle_degrees + 90.0 : turn;
}

}  // namespace

CloseUpScene close_up_scene(const FieldSurvey& field, const Plan& plan, const ProbeSite& site) {
    const Mound& from = field.survey.mounds.at(site.from_mound);
    CloseUpScene scene;
    scene.from = fan_of(from, site.axis);
    // on the plug side the axis is the fan as it is seen on the ground, whatever was read of it
    if (!site.to_mound && scene.from.turn_degrees) scene.from.turn_degrees = 180.0;
    if (site.to_mound) {
        const Mound& to = field.survey.mounds.at(*site.to_mound);
        scene.to = fan_of(to, site.axis);
        scene.to_distance_m = distance_m(from.plug, to.plug);
    }
    scene.planned = {site.ladder.along, site.ladder.across};
    scene.row_degrees = site.ladder.angle_degrees;
    for (const Metres rung : site.rungs) scene.rungs_m.push_back(rung.value());
    scene.half_length_m = site.ladder.half_length.value();
    scene.run_offset_m = site.run_offset.value();
    scene.run_band_m = 1.645 * site.run_offset_sd.value();  // 9 in 10 lie within 1.645 standard deviations
    scene.run_degrees = run_turn(plan, site);
    scene.axis_bearing_degrees = site.axis.degrees();
    return scene;
}

Metres tape_unit(LengthUnits units) { return units == LengthUnits::metres ? Metres::of(0.02) : Metres::from_inches(1.0); }

CloseUp::CloseUp(Choices& choices, QWidget* parent) : QWidget(parent), choices_(choices) {
    setMinimumHeight(170);
    setMaximumHeight(270);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("close-up of the set's place"));
    connect(&choices_, &Choices::theme_changed, this, qOverload<>(&QWidget::update));
    connect(&choices_, &Choices::units_changed, this, qOverload<>(&QWidget::update));
}

void CloseUp::show_scene(const CloseUpScene& scene, const LadderPlace& place, bool dropped) {
    scene_ = scene;
    place_ = place;
    dropped_ = dropped;
    update();
}

void CloseUp::show_nothing() {
    scene_.reset();
    moving_.reset();
    setFocusPolicy(Qt::NoFocus);
    update();
}

void CloseUp::begin_move() {
    if (!scene_) return;
    moving_ = place_;
    setFocusPolicy(Qt::StrongFocus);
    setFocus(Qt::ShortcutFocusReason);
    setCursor(Qt::OpenHandCursor);
    setAccessibleDescription(tr("Arrow keys shift the ladder, Enter accepts, Escape gives up."));
    update();
}

void CloseUp::accept_move() {
    if (!moving_) return;
    const LadderPlace place = *moving_;
    moving_.reset();
    setFocusPolicy(Qt::NoFocus);
    unsetCursor();
    update();
    Q_EMIT move_accepted(place);
}

void CloseUp::give_up_move() {
    if (!moving_) return;
    moving_.reset();
    setFocusPolicy(Qt::NoFocus);
    unsetCursor();
    update();
    Q_EMIT move_given_up();
}

void CloseUp::shift(double along_units, double across_units) {
    const Metres unit = tape_unit(choices_.units());
    moving_->along = moving_->along + unit * along_units;
    moving_->across = moving_->across + unit * across_units;
    update();
    Q_EMIT shifted();
}

void CloseUp::keyPressEvent(QKeyEvent* event) {
    if (!moving_) {
        QWidget::keyPressEvent(event);
        return;
    }
    const double units = event->modifiers().testFlag(Qt::ShiftModifier) ? 5.0 : 1.0;
    switch (event->key()) {
        case Qt::Key_Up: shift(units, 0.0); return;
        case Qt::Key_Down: shift(-units, 0.0); return;
        case Qt::Key_Right: shift(0.0, units); return;
        case Qt::Key_Left: shift(0.0, -units); return;
        case Qt::Key_Return:
        case Qt::Key_Enter: accept_move(); return;
        case Qt::Key_Escape: give_up_move(); return;
        default: QWidget::keyPressEvent(event);
    }
}

CloseUp::Layout CloseUp::lay_out() const {
    const CloseUpScene& scene = *scene_;
    constexpr double fan_m = 0.34;
    const double row = scene.row_degrees * std::numbers::pi / 180.0;
    const double reach = scene.half_length_m + 0.06;
    const double row_up = reach * std::abs(std::cos(row));
    const double row_aside = reach * std::abs(std::sin(row));
    Layout layout;
    const double room_w = width() - 76.0;
    const double room_h = height() - 34.0;
    if (!scene.to) {
        const double low = std::min(-fan_m, scene.planned.along.value() - row_up);
        const double high = std::max(0.1, scene.planned.along.value() + row_up) + 0.05;
        const double aside = std::abs(scene.planned.across.value()) + std::max(row_aside, 0.3);
        layout.pixels_per_metre = std::min(room_h / (high - low), room_w / (2.0 * aside));
        const double used = (high - low) * layout.pixels_per_metre;
        layout.plug = {0.5 * width() + 14.0,
                       height() - 8.0 - 0.5 * (height() - 24.0 - used) + low * layout.pixels_per_metre};
        layout.ladder =
            layout.plug + QPointF(scene.planned.across.value(), -scene.planned.along.value()) * layout.pixels_per_metre;
        return layout;
    }
    layout.pixels_per_metre =
        std::min(room_w / (2.0 * std::max(row_aside, 0.2)), (room_h - 90.0) / (2.0 * std::max(row_up, 0.2)));
    layout.plug = {0.5 * width(), height() - 40.0};
    layout.far_plug = QPointF(0.5 * width(), 42.0);
    const double span = layout.plug.y() - layout.far_plug->y();
    layout.shortened = span < scene.to_distance_m * layout.pixels_per_metre;
    const double share = scene.to_distance_m > 0.0 ? scene.planned.along.value() / scene.to_distance_m : 0.5;
    layout.ladder = {layout.plug.x() + scene.planned.across.value() * layout.pixels_per_metre,
                     layout.plug.y() - span * std::clamp(share, 0.3, 0.7)};
    return layout;
}

QPointF CloseUp::screen_step(const Layout& layout, Spot step) const {
    return QPointF(step.across_m, -step.along_m) * layout.pixels_per_metre;
}

QPointF CloseUp::middle_on_screen(const Layout& layout) const {
    const LadderPlace at = place();
    return layout.ladder +
           screen_step(layout, {(at.along - scene_->planned.along).value(), (at.across - scene_->planned.across).value()});
}

void CloseUp::mousePressEvent(QMouseEvent* event) {
    if (moving_ && event->button() == Qt::LeftButton) drag_ = event->position();
}

void CloseUp::mouseMoveEvent(QMouseEvent* event) {
    if (!moving_ || !drag_) return;
    const QPointF step = (event->position() - *drag_) / lay_out().pixels_per_metre;
    moving_->along = moving_->along - Metres::of(step.y());
    moving_->across = moving_->across + Metres::of(step.x());
    drag_ = event->position();
    update();
    Q_EMIT shifted();
}

void CloseUp::mouseReleaseEvent(QMouseEvent*) {
    if (!moving_ || !drag_) return;
    drag_.reset();
    // a hand sets the ladder down on a mark of the tape, counted from where it was planned
    const Metres unit = tape_unit(choices_.units());
    const auto snapped = [unit](Metres place, Metres from) { return from + unit * std::round((place - from) / unit); };
    moving_->along = snapped(moving_->along, scene_->planned.along);
    moving_->across = snapped(moving_->across, scene_->planned.across);
    update();
    Q_EMIT shifted();
}

void CloseUp::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void CloseUp::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

}  // namespace plugside
