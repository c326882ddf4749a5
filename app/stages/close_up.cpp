#include "app/stages/close_up.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace plugside {

namespace {

constexpr double drag_slack_px = 3.0;

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

bool begins_a_reading(const QKeyEvent& event) {
    const QString text = event.text();
    return text.size() == 1 &&
           (text.front().isDigit() || text.front() == QLatin1Char('.') || text.front() == QLatin1Char('-')) &&
           !event.modifiers().testAnyFlags(Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier);
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

LadderPlace on_the_tape(const LadderPlace& place, const LadderPlace& from, LengthUnits units) {
    const Metres unit = tape_unit(units);
    const auto snapped = [unit](Metres at, Metres start) { return start + unit * std::round((at - start) / unit); };
    return {snapped(place.along, from.along), snapped(place.across, from.across)};
}

Metres tape_unit(LengthUnits units) { return units == LengthUnits::metres ? Metres::of(0.02) : Metres::from_inches(1.0); }

CloseUp::CloseUp(Choices& choices, QWidget* parent) : QWidget(parent), choices_(choices) {
    const auto fit = [this] {
        const double share = 0.5 + 0.5 * choices_.style().text_share;
        setMinimumHeight(static_cast<int>(170.0 * share));
        setMaximumHeight(static_cast<int>(270.0 * share));
    };
    connect(&choices_, &Choices::theme_changed, this, fit);
    fit();
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setMouseTracking(true);
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
    if (!scene_ || moving_) return;
    moving_ = place_;
    setFocusPolicy(Qt::StrongFocus);
    setFocus(Qt::ShortcutFocusReason);
    setCursor(Qt::OpenHandCursor);
    setAccessibleDescription(
        tr("Arrow keys shift the ladder, a figure begins a tape reading, Enter accepts, Escape gives up."));
    update();
    Q_EMIT move_begun();
}

void CloseUp::end_move() {
    moving_.reset();
    drag_.reset();
    press_.reset();
    setFocusPolicy(Qt::NoFocus);
    unsetCursor();
    update();
}

void CloseUp::accept_move() {
    if (!moving_) return;
    const LadderPlace place = *moving_;
    end_move();
    Q_EMIT move_accepted(place);
}

void CloseUp::give_up_move() {
    if (!moving_) return;
    end_move();
    Q_EMIT move_given_up();
}

void CloseUp::lay(const LadderPlace& place) {
    if (!moving_) return;
    moving_ = place;
    update();
    Q_EMIT shifted();
}

void CloseUp::shift(double along_units, double across_units) {
    begin_move();
    if (!moving_) return;
    const Metres unit = tape_unit(choices_.units());
    lay({moving_->along + unit * along_units, moving_->across + unit * across_units});
}

bool CloseUp::event(QEvent* event) {
    // figures go to the tape while the ladder is moved, not to the day's steps
    if (event->type() == QEvent::ShortcutOverride && moving_ && begins_a_reading(*static_cast<QKeyEvent*>(event))) {
        event->accept();
        return true;
    }
    return QWidget::event(event);
}

void CloseUp::keyPressEvent(QKeyEvent* event) {
    if (!moving_) {
        QWidget::keyPressEvent(event);
        return;
    }
    if (begins_a_reading(*event)) {
        Q_EMIT reading_begun(event->text());
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

CloseUpDrawing CloseUp::drawing() const {
    return {
        *scene_, place(), QSizeF(size()), style(), {choices_.units(), dropped_, moving(), CloseUpDrawing::Detail::whole}};
}

void CloseUp::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    // thicker where the arrow keys shift the ladder than where it is moved while another part has the focus
    painter.setPen(hasFocus() ? QPen(style().act, 4.0) : moving_ ? QPen(style().act, 2.0) : QPen(style().hairline, 1.0));
    painter.setBrush(style().drawing());
    painter.drawRoundedRect(QRectF(rect()).adjusted(1.0, 1.0, -1.0, -1.0), 8.0, 8.0);
    if (!scene_) return;
    QPainterPath frame;
    frame.addRoundedRect(QRectF(rect()).adjusted(2.0, 2.0, -2.0, -2.0), 7.0, 7.0);
    painter.setClipPath(frame);
    drawing().draw(painter);
}

void CloseUp::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !scene_) return;
    if (moving_)
        drag_ = event->position();
    else if (drawing().on_ladder(event->position()))
        press_ = event->position();
}

void CloseUp::mouseMoveEvent(QMouseEvent* event) {
    if (press_ && (event->position() - *press_).manhattanLength() >= drag_slack_px) {
        drag_ = std::exchange(press_, std::nullopt);
        begin_move();
    }
    if (!moving_) setCursor(scene_ && drawing().on_ladder(event->position()) ? Qt::OpenHandCursor : Qt::ArrowCursor);
    if (!moving_ || !drag_) return;
    const QPointF step = (event->position() - *drag_) / drawing().layout().pixels_per_metre;
    drag_ = event->position();
    lay({moving_->along - Metres::of(step.y()), moving_->across + Metres::of(step.x())});
}

void CloseUp::mouseReleaseEvent(QMouseEvent*) {
    press_.reset();
    if (!moving_ || !drag_) return;
    drag_.reset();
    lay(on_the_tape(*moving_, {scene_->planned.along, scene_->planned.across}, choices_.units()));
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
