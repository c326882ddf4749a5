#include "app/canvas/map_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>
#include <cmath>

#include "app/canvas/map_furniture.h"
#include "app/canvas/map_layers.h"
#include "core/walking/track_direction.h"

namespace plugside {

namespace {

constexpr double click_slack_px = 4.0;
constexpr double pick_reach_px = 16.0;
constexpr double fit_margin_px = 56.0;
constexpr double key_pan_px = 60.0;
constexpr double key_zoom = 1.4;
constexpr double near_scale = 13.0;  // pixels a metre: one system and its neighbours

}  // namespace

std::optional<std::size_t> set_at(const Plan& plan, const ProbeKey& probe) {
    for (std::size_t i = 0; i < plan.sets.size(); ++i)
        if (plan.probes.at(plan.sets[i].probe).key == probe) return i;
    return std::nullopt;
}

MapView::MapView(FieldSession& session, Choices& choices, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setMinimumSize(240, 240);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(tr("map of the field"));
    setAccessibleDescription(
        tr("Arrow keys move the map, plus and minus zoom, F shows the whole field, Space picks the nearest mark."));
    connect(&cache_, &MapCache::arrived, this, qOverload<>(&QWidget::update));
    connect(&glass_, &MapCache::arrived, this, qOverload<>(&QWidget::update));
    connect(&session_, &FieldSession::field_replaced, this, &MapView::take_field);
    connect(&marks_, &MarkIndex::ready, this, qOverload<>(&QWidget::update));
    connect(&session_, &FieldSession::survey_edited, this, &MapView::follow_marks);
    connect(&session_, &FieldSession::survey_edited, this, qOverload<>(&QWidget::update));
    connect(&session_, &FieldSession::plan_changed, this, qOverload<>(&QWidget::update));
    connect(&session_, &FieldSession::not_seen_changed, this, qOverload<>(&QWidget::update));
    connect(&choices_, &Choices::step_changed, this, &MapView::go_near_the_set);
    connect(&choices_, &Choices::units_changed, this, qOverload<>(&QWidget::update));
    connect(&choices_, &Choices::theme_changed, this, qOverload<>(&QWidget::update));
    connect(&choices_, &Choices::picks_changed, this, &MapView::bring_set_into_view);
}

void MapView::lay_on(Imagery& imagery) {
    imagery_ = &imagery;
    connect(imagery_, &Imagery::changed, this, qOverload<>(&QWidget::update));
    connect(imagery_, &Imagery::tiles_arrived, this, qOverload<>(&QWidget::update));
    update();
}

void MapView::take_field() {
    cache_.forget();
    glass_.forget();
    hovered_.reset();
    follow_marks();
    fit();
}

void MapView::follow_marks() { marks_.follow(session_.field(), shown_.other_diggers); }

void MapView::fit() {
    const auto field = session_.field();
    fitted_ = true;
    look(
        ViewTransform::fitting(field ? ground_box(*field) : GroundBox{}, QSizeF(size()), fit_margin_px, view_.up_degrees()));
}

void MapView::look(const ViewTransform& view) {
    view_ = view;
    update();
}

void MapView::zoom_in() {
    fitted_ = false;
    look(view_.zoomed(key_zoom, cursor_.value_or(view_.screen().center())));
}

void MapView::zoom_out() {
    fitted_ = false;
    look(view_.zoomed(1.0 / key_zoom, cursor_.value_or(view_.screen().center())));
}

void MapView::show_coordinates(bool on) {
    coordinates_ = on;
    update();
}

void MapView::turn_to_the_walk() {
    const auto field = session_.field();
    if (!field) return;
    std::optional<Bearing> up;
    if (view_.up_degrees() == 0.0) {
        const bool picked = choices_.mound() && *choices_.mound() < field->survey.mounds.size();
        up = track_direction(field->survey.walks, picked ? field->survey.mounds[*choices_.mound()].plug
                                                         : view_.to_local(view_.screen().center()));
        if (!up) return;
    }
    const ViewTransform turned = view_.turned_to(up ? up->degrees() : 0.0);
    if (fitted_)
        look(ViewTransform::fitting(ground_box(*field), QSizeF(size()), fit_margin_px, turned.up_degrees()));
    else
        look(turned);
}

void MapView::set_show_choices(const MapShow& show) {
    shown_ = show;
    follow_marks();
    update();
}

void MapView::show_reasons(std::shared_ptr<const std::vector<ReachReason>> reasons) {
    if (shown_.reasons == reasons) return;
    shown_.reasons = std::move(reasons);
    update();
}

void MapView::show_tours(std::shared_ptr<const TourWays> tours) {
    if (shown_.tours == tours) return;
    shown_.tours = std::move(tours);
    update();
}

MapShow MapView::show_for_step() const {
    MapShow show = shown_;
    show.marks = marks_.marks();
    const Step step = choices_.step();
    const bool before_systems = step == Step::walk || step == Step::ground;
    show.systems = shown_.systems && !before_systems;
    show.runs = shown_.runs && !before_systems;
    show.unlikely_runs = shown_.unlikely_runs && !before_systems;
    show.sets = shown_.sets && (step == Step::sets || step == Step::method);
    if (step != Step::sets && step != Step::method) show.reasons.reset();
    if (step != Step::sets) show.tours.reset();
    show.track = shown_.track && step == Step::walk;
    if (const auto not_seen = session_.not_seen(); not_seen && step == Step::walk)
        show.seen = std::shared_ptr<const SeenSurface>(not_seen, &not_seen->surface);
    show.covered = furniture_places(view_, choices_.style());
    for (const QWidget* child : findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly))
        if (child->isVisible()) show.covered.emplace_back(child->geometry());
    const bool in_hand = tool_ != nullptr && ((tool_holds_ && tool_->changes_plan()) || tool_->shows_another_plan());
    show.plan_opacity = in_hand ? 0.25 : session_.plan_is_current() ? 1.0 : 0.55;
    return show;
}

void MapView::bring_set_into_view() {
    update();
    const auto plan = session_.plan();
    const auto field = session_.field();
    if (!plan || !field || choices_.step() != Step::sets || !choices_.set()) return;
    const auto set = set_at(*plan, *choices_.set());
    if (!set) return;
    const LocalPoint middle = ladder_middle(field->survey, plan->probes.at(plan->sets[*set].probe));
    constexpr double rim_px = 70.0;
    if (!view_.screen().adjusted(rim_px, rim_px, -rim_px, -rim_px).contains(view_.to_screen(middle)))
        look(view_.centred_on(middle));
}

void MapView::go_near_the_set() {
    bring_set_into_view();
    const auto plan = session_.plan();
    const auto field = session_.field();
    if (!fitted_ || !plan || !field || choices_.step() != Step::sets || !choices_.set()) return;
    const auto set = set_at(*plan, *choices_.set());
    if (!set || view_.pixels_per_metre() >= near_scale) return;
    fitted_ = false;
    look({ladder_middle(field->survey, plan->probes.at(plan->sets[*set].probe)), near_scale, view_.size(),
          view_.up_degrees()});
}

std::optional<std::size_t> MapView::mark_at(QPointF pixel) const {
    return nearest_mark(view_.to_local(pixel), view_.ground_length(pick_reach_px));
}

std::optional<std::size_t> MapView::nearest_mark(LocalPoint to, Metres reach) const {
    const auto marks = marks_.marks();
    return marks ? marks->nearest(to, reach) : std::nullopt;
}

void MapView::pick_at(QPointF pixel) {
    const auto plan = session_.plan();
    if (plan && choices_.step() == Step::sets) {
        const QPointF drawn_pixel = view_.placing(flags_view_).inverted().map(pixel);
        for (const FlagPlace& flag : flags_)
            if (flag.cloth.adjusted(-2.0, -2.0, 2.0, 2.0).contains(drawn_pixel) && flag.set < plan->sets.size()) {
                choices_.pick_set(plan->probes.at(plan->sets[flag.set].probe).key);
                return;
            }
    }
    const auto mark = mark_at(pixel);
    choices_.pick_mound(mark);
    if (choices_.step() != Step::systems || !plan) return;
    std::optional<std::size_t> system;
    if (mark && *mark < plan->mounds.size()) system = plan->mounds[*mark].system;
    for (std::size_t i = 0; !system && !mark && i < plan->systems.size(); ++i)
        if (contains(plan->systems[i].outline, view_.to_local(pixel))) system = i;
    choices_.pick_system(system);
}

void MapView::show_mark(std::size_t mound) {
    const auto field = session_.field();
    if (!field || mound >= field->survey.mounds.size()) return;
    choices_.pick_mound(mound);
    const auto plan = session_.plan();
    if (plan && choices_.step() == Step::systems && mound < plan->mounds.size())
        choices_.pick_system(plan->mounds[mound].system);
    const LocalPoint at = field->survey.mounds[mound].plug;
    if (!view_.screen().adjusted(40.0, 40.0, -40.0, -40.0).contains(view_.to_screen(at))) look(view_.centred_on(at));
}

std::optional<LocalPoint> MapView::plug_near(LocalPoint to, Metres reach) const {
    const auto mark = nearest_mark(to, reach);
    if (!mark) return std::nullopt;
    return session_.field()->survey.mounds[*mark].plug;
}

void MapView::magnify(bool on) {
    magnifies_ = on;
    if (!on) glass_.forget();
    update();
}

void MapView::pick_in_the_middle() {
    if (const auto mark = nearest_mark(view_.to_local(view_.screen().center()), view_.ground_length(width())))
        show_mark(*mark);
}

void MapView::step_mark(int by) {
    const auto field = session_.field();
    if (!field || field->survey.mounds.empty()) return;
    const auto count = static_cast<long long>(field->survey.mounds.size());
    const long long from = choices_.mound() ? static_cast<long long>(*choices_.mound()) : (by > 0 ? -1 : count);
    show_mark(static_cast<std::size_t>(((from + by) % count + count) % count));
}

// The nearest mark in the quarter of the circle about `way`, from the picked mark or the middle of the view.
void MapView::step_towards(QPointF way) {
    const auto field = session_.field();
    const auto marks = marks_.marks();
    if (!field || !marks) return;
    const bool picked = choices_.mound() && *choices_.mound() < field->survey.mounds.size();
    const LocalPoint from = picked ? field->survey.mounds[*choices_.mound()].plug : view_.to_local(view_.screen().center());
    const LocalVector ahead = view_.to_local(way) - view_.to_local({0.0, 0.0});
    const auto next = marks->nearest_towards(from, ahead, view_.ground_length(2.0 * std::max(width(), height())));
    if (next) show_mark(*next);
}

void MapView::stand(const std::optional<Standing>& standing, bool in_the_middle) {
    standing_ = standing;
    update();
    if (!standing_ || !in_the_middle || standing_->age == Standing::Age::past || dragging_ || tool_holds_) return;
    fitted_ = false;
    look(view_.centred_on(standing_->at));
}

void MapView::use_tool(MapTool* tool) {
    tool_ = tool;
    tool_holds_ = false;
    update();
}

void MapView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (fitted_)
        fit();
    else
        look(view_.resized(QSizeF(size())));
}

void MapView::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton && event->button() != Qt::MiddleButton) return;
    tool_holds_ = tool_ != nullptr && event->button() == Qt::LeftButton && tool_->grabs(event->position(), view_);
    if (tool_holds_) return;
    pressed_ = last_drag_ = event->position();
    dragging_ = false;
}

void MapView::mouseDoubleClickEvent(QMouseEvent* event) {
    if (tool_ == nullptr || event->button() != Qt::LeftButton || !tool_->double_click(event->position(), view_))
        mousePressEvent(event);
}

void MapView::mouseMoveEvent(QMouseEvent* event) {
    cursor_ = event->position();
    if (tool_holds_) {
        tool_->drag(event->position(), view_);
        return;
    }
    if (pressed_) {
        if (!dragging_ && (event->position() - *pressed_).manhattanLength() < click_slack_px) return;
        dragging_ = true;
        fitted_ = false;
        setCursor(Qt::ClosedHandCursor);
        look(view_.panned(event->position() - last_drag_));
        last_drag_ = event->position();
        return;
    }
    if (tool_ != nullptr) tool_->hover(event->position(), view_);
    const auto mark = mark_at(event->position());
    const bool redraw = mark != hovered_ || coordinates_ || magnifies_;
    hovered_ = mark;
    setCursor(mark ? Qt::PointingHandCursor : Qt::ArrowCursor);
    if (redraw) update();
}

void MapView::mouseReleaseEvent(QMouseEvent* event) {
    if (tool_holds_) {
        tool_holds_ = false;
        tool_->drop(event->position(), view_);
        return;
    }
    if (!pressed_) return;
    pressed_.reset();
    setCursor(Qt::ArrowCursor);
    const bool clicked = !dragging_ && event->button() == Qt::LeftButton;
    const bool taken = clicked && tool_ != nullptr && tool_->click(event->position(), view_, event->modifiers());
    if (clicked && !taken) pick_at(event->position());
    dragging_ = false;
}

void MapView::wheelEvent(QWheelEvent* event) {
    const double notches = event->angleDelta().y() / 120.0;
    if (notches == 0.0) return;
    fitted_ = false;
    look(view_.zoomed(std::pow(1.25, notches), event->position()));
    event->accept();
}

void MapView::keyPressEvent(QKeyEvent* event) {
    if (tool_ != nullptr && tool_->key(*event, view_)) return;
    QPointF pan;
    const bool to_a_mark = event->modifiers().testFlag(Qt::AltModifier);
    switch (event->key()) {
        case Qt::Key_Left: pan = {key_pan_px, 0.0}; break;
        case Qt::Key_Right: pan = {-key_pan_px, 0.0}; break;
        case Qt::Key_Up: pan = {0.0, key_pan_px}; break;
        case Qt::Key_Down: pan = {0.0, -key_pan_px}; break;
        case Qt::Key_BracketRight: step_mark(1); return;
        case Qt::Key_BracketLeft: step_mark(-1); return;
        case Qt::Key_Space: pick_in_the_middle(); return;
        default: QWidget::keyPressEvent(event); return;
    }
    if (to_a_mark) {
        step_towards(-pan);
        return;
    }
    fitted_ = false;
    look(view_.panned(pan));
}

void MapView::leaveEvent(QEvent* event) {
    QWidget::leaveEvent(event);
    cursor_.reset();
    hovered_.reset();
    update();
}

void MapView::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    focus_by_key_ = event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason ||
                    event->reason() == Qt::ShortcutFocusReason;
    update();
}

void MapView::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    focus_by_key_ = false;
    update();
}

}  // namespace plugside
