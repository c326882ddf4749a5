#include "app/drawing/systems_tool.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "app/canvas/mound_glyph.h"
#include "app/commands/known_facts.h"
#include "app/drawing/nearby_layer.h"
#include "core/words/words.h"

namespace plugside {

namespace {

constexpr double grab_px = 9.0;
constexpr double pick_px = 16.0;

bool is_drawn(Saying saying) { return saying == Saying::no_run || saying == Saying::aside; }

const Mound* mark_under(const Survey& survey, LocalPoint at, Metres reach) {
    const Mound* nearest = nullptr;
    double best = reach.value();
    for (const Mound& mound : survey.mounds) {
        const double away = distance_m(mound.plug, at);
        if (away > best) continue;
        best = away;
        nearest = &mound;
    }
    return nearest;
}

}  // namespace

QString saying_help(Saying saying) {
    switch (saying) {
        case Saying::one_animal:
            return SystemsTool::tr("Click another mark of the same animal, or press Enter for the one that is ringed.");
        case Saying::two_animals:
            return SystemsTool::tr("Click the mark that is another animal's, or press Enter for the one that is ringed.");
        case Saying::run_here:
            return SystemsTool::tr(
                "Click the mark that a run joins this one to, or press Enter for the one that is ringed.");
        case Saying::no_run: return SystemsTool::tr("Draw the line that no run crosses; double click or Enter ends it.");
        case Saying::aside: return SystemsTool::tr("Draw about the marks to set aside; double click or Enter ends it.");
        default: return {};
    }
}

SystemsTool::SystemsTool(FieldSession& session, Choices& choices, QObject* parent)
    : QObject(parent), session_(session), choices_(choices) {
    connect(&preview_, &NearbyPreview::arrived, this, &SystemsTool::changed);
    connect(&session_, &FieldSession::field_replaced, this, &SystemsTool::put_away);
}

const Mound* SystemsTool::picked() const {
    const auto field = session_.field();
    if (!field || !choices_.mound() || *choices_.mound() >= field->survey.mounds.size()) return nullptr;
    return &field->survey.mounds[*choices_.mound()];
}

void SystemsTool::keep(KnownFact fact) {
    const auto field = session_.field();
    const QString words = QString::fromStdString(to_text(fact));
    session_.edit(SurveyPart(plugside::said(field->survey.known, std::move(fact))), words);
}

void SystemsTool::mend_picked(Mend mend, const QString& words) {
    const Mound* mound = picked();
    if (mound == nullptr) return;
    mend.marks = {mound->name};
    session_.mend(mend, words);
}

void SystemsTool::say(Saying saying) {
    if (!session_.field()) return;
    put_away();
    const Mound* mound = picked();
    if (!is_drawn(saying) && mound == nullptr) {
        Q_EMIT said(tr("Pick the mark first that this is said of."));
        return;
    }
    if (saying == Saying::not_a_gopher) {
        keep({FactKind::not_a_gopher, {mound->name}, {}, {}, {}, {}});
    } else if (saying == Saying::older) {
        Mend older;
        older.kind = MendKind::freshness;
        older.freshness = Freshness::older;
        mend_picked(older, tr("%1 is older").arg(QString::fromStdString(mound->name)));
    } else {
        saying_ = saying;
        first_ = mound == nullptr ? std::string() : mound->name;
        if (is_drawn(saying)) pen_.take(saying == Saying::aside ? Stroke::untreated : Stroke::barrier);
    }
    Q_EMIT changed();
}

void SystemsTool::put_away() {
    saying_.reset();
    pen_.put_down();
    hold_ = Hold::nothing;
    moved_.reset();
    preview_.forget();
    Q_EMIT changed();
}

void SystemsTool::take_corner_back() {
    pen_.take_corner_back();
    Q_EMIT changed();
}

void SystemsTool::finish() {
    const auto field = session_.field();
    if (!saying_ || !is_drawn(*saying_) || !field) return;
    const std::vector<LocalPoint> corners = pen_.corners();
    if (*saying_ == Saying::no_run) {
        if (corners.size() < 2) {
            Q_EMIT said(tr("A line wants two corners or more."));
            return;
        }
        put_away();
        keep({FactKind::no_run_across, {}, Polyline{corners}, {}, {}, {}});
        return;
    }
    const auto ground = pen_.finish({});
    if (!ground) {
        Q_EMIT said(QString::fromStdString(ground.error()));
        return;
    }
    Mend aside;
    aside.kind = MendKind::set_aside;
    aside.because = Words::later("in a corner that was set aside");
    for (const Mound& mound : field->survey.mounds)
        if (contains(ground->untreated, mound.plug) && !why_not_used(field->survey, mound))
            aside.marks.push_back(mound.name);
    put_away();
    if (aside.marks.empty())
        Q_EMIT said(tr("No mark that takes part lies in there."));
    else
        session_.mend(aside, tr("set aside a corner"));
}

bool SystemsTool::turn_fan(const QString& text) {
    const auto bearing = parse_bearing(text.toStdString());
    if (!bearing) {
        Q_EMIT said(tr("“%1” is no bearing, as in “135”, “SE” or “S 45 E”.").arg(text));
        return false;
    }
    const auto field = session_.field();
    const Mound* mound = picked();
    if (mound == nullptr) return false;
    Mend fan;
    fan.kind = MendKind::fan;
    fan.fan = field->frame.plane_bearing(*bearing, mound->plug);
    mend_picked(fan, tr("turn the fan of %1").arg(QString::fromStdString(mound->name)));
    return true;
}

void SystemsTool::turn_fan_by(double degrees) {
    const Mound* mound = picked();
    if (mound == nullptr || !mound->fan) {
        Q_EMIT said(tr("Pick a mark with a fan first."));
        return;
    }
    Mend fan;
    fan.kind = MendKind::fan;
    fan.fan = mound->fan->turned(degrees);
    mend_picked(fan, tr("turn the fan of %1").arg(QString::fromStdString(mound->name)));
}

const Mound* SystemsTool::likely_other() const {
    const auto field = session_.field();
    const auto plan = session_.plan();
    if (!field || !saying_ || is_drawn(*saying_)) return nullptr;
    const auto& mounds = field->survey.mounds;
    const auto first = std::find_if(mounds.begin(), mounds.end(), [&](const Mound& one) { return one.name == first_; });
    if (first == mounds.end()) return nullptr;
    const bool planned = plan && plan->mounds.size() == mounds.size();
    const auto system_of = [&](std::size_t mound) {
        return planned ? plan->mounds[mound].system : std::optional<std::size_t>();
    };
    const auto its_system = system_of(static_cast<std::size_t>(first - mounds.begin()));
    const Mound* best = nullptr;
    for (std::size_t i = 0; i < mounds.size(); ++i) {
        const bool same = system_of(i) == its_system;
        if (&mounds[i] == &*first || !is_gopher_sign(mounds[i].kind) || (planned && !system_of(i))) continue;
        if ((*saying_ == Saying::one_animal && planned && same) || (*saying_ == Saying::two_animals && planned && !same))
            continue;
        if (best == nullptr || distance_m(mounds[i].plug, first->plug) < distance_m(best->plug, first->plug))
            best = &mounds[i];
    }
    return best;
}

QPointF SystemsTool::fan_handle(const Mound& mound, const ViewTransform& view) const {
    const Metres reach = view.ground_length(mound_reach_px(view.pixels_per_metre()) + 8.0);
    return view.to_screen(mound.plug + mound.fan->unit() * reach.value());
}

bool SystemsTool::grabs(QPointF pixel, const ViewTransform& view) {
    const Mound* mound = picked();
    if (saying_ || mound == nullptr) return false;
    const QPointF plug = view.to_screen(mound->plug);
    if (mound->fan && QLineF(pixel, fan_handle(*mound, view)).length() <= grab_px)
        hold_ = Hold::fan;
    else if (QLineF(pixel, plug).length() <= grab_px)
        hold_ = Hold::plug;
    else
        return false;
    moved_ = *mound;
    return true;
}

void SystemsTool::drag(QPointF pixel, const ViewTransform& view) {
    const Mound* before = picked();
    if (!moved_ || before == nullptr) return;
    if (hold_ == Hold::fan) {
        if (const auto bearing = Bearing::along(view.to_local(pixel) - before->plug)) moved_->fan = bearing;
    } else {
        moved_->plug = view.to_local(pixel);
    }
    preview_.look(session_.field(), session_.plan(), {std::pair(*choices_.mound(), *moved_), {}, {}},
                  {before->plug, moved_->plug});
    Q_EMIT changed();
}

// What the line would change if it ended at the tip.
void SystemsTool::look_at_line() {
    if (saying_ != Saying::no_run || pen_.corners().empty() || !pen_.tip()) return;
    std::vector<LocalPoint> line = pen_.corners();
    line.push_back(*pen_.tip());
    const KnownFact fact{FactKind::no_run_across, {}, Polyline{line}, {}, {}, {}};
    if (!what_is_missing(fact)) preview_.look(session_.field(), session_.plan(), {{}, {}, fact}, line);
}

void SystemsTool::drop(QPointF pixel, const ViewTransform& view) {
    const Mound* mound = picked();
    if (!moved_ || mound == nullptr) return;
    const QString name = QString::fromStdString(mound->name);
    const bool far =
        QLineF(pixel, hold_ == Hold::fan ? fan_handle(*mound, view) : view.to_screen(mound->plug)).length() > 1.5;
    drag(pixel, view);
    const Mound after = *moved_;
    const Hold held = std::exchange(hold_, Hold::nothing);
    moved_.reset();
    preview_.forget();
    if (far) {
        Mend mend;
        mend.kind = held == Hold::fan ? MendKind::fan : MendKind::move;
        if (held == Hold::fan)
            mend.fan = after.fan;
        else
            mend.to = {after.plug};
        mend_picked(mend, held == Hold::fan ? tr("turn the fan of %1").arg(name) : tr("move %1").arg(name));
    }
    Q_EMIT changed();
}

void SystemsTool::hover(QPointF pixel, const ViewTransform& view) {
    tip_pixel_ = pixel;
    if (!pen_.stroke()) return;
    pen_.hover({}, view.to_local(pixel), view.ground_length(pick_px * 0.6));
    look_at_line();
    Q_EMIT changed();
}

void SystemsTool::say_of_two(const std::string& first, const std::string& second) {
    const FactKind kind = *saying_ == Saying::one_animal    ? FactKind::same_system
                          : *saying_ == Saying::two_animals ? FactKind::different_systems
                                                            : FactKind::run_here;
    saying_.reset();
    keep({kind, {first, second}, {}, {}, {}, {}});
}

bool SystemsTool::click(QPointF pixel, const ViewTransform& view, Qt::KeyboardModifiers) {
    const auto field = session_.field();
    if (!saying_ || !field) return false;
    if (is_drawn(*saying_)) {
        hover(pixel, view);
        if (pen_.press()) finish();
        Q_EMIT changed();
        return true;
    }
    const Mound* clicked = mark_under(field->survey, view.to_local(pixel), view.ground_length(pick_px));
    if (clicked == nullptr || clicked->name == first_)
        Q_EMIT said(saying_help(*saying_));
    else
        say_with(clicked);
    return true;
}

void SystemsTool::say_with(const Mound* second) {
    if (second != nullptr && second->name == first_) second = likely_other();
    if (second == nullptr || second->name == first_)
        Q_EMIT said(saying_help(*saying_));
    else
        say_of_two(first_, second->name);
    Q_EMIT changed();
}

bool SystemsTool::double_click(QPointF, const ViewTransform&) {
    if (!pen_.stroke()) return false;
    finish();
    return true;
}

bool SystemsTool::key(const QKeyEvent& event, const ViewTransform& view) {
    if (!saying_) return false;
    const double step = event.modifiers().testFlag(Qt::ShiftModifier) ? 1.0 : 8.0;
    const auto move = [&](double right, double down) {
        if (tip_pixel_.isNull()) tip_pixel_ = view.screen().center();
        hover(tip_pixel_ + QPointF(right * step, down * step), view);
        return true;
    };
    const bool drawn = is_drawn(*saying_);
    switch (event.key()) {
        case Qt::Key_Left: return drawn && move(-1.0, 0.0);
        case Qt::Key_Right: return drawn && move(1.0, 0.0);
        case Qt::Key_Up: return drawn && move(0.0, -1.0);
        case Qt::Key_Down: return drawn && move(0.0, 1.0);
        case Qt::Key_Space:
            if (!drawn) return false;  // the map picks the nearest mark
            if (tip_pixel_.isNull()) tip_pixel_ = view.screen().center();
            return click(tip_pixel_, view, {});
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (drawn)
                finish();
            else
                say_with(picked());
            return true;
        case Qt::Key_Escape: put_away(); return true;
        default: return false;
    }
}

void SystemsTool::paint(QPainter& painter, const MapStyle& style, const ViewTransform& view) const {
    if (const auto field = session_.field()) draw_nearby(painter, preview_, *field, style, view);
    painter.setRenderHint(QPainter::Antialiasing);
    const Mound* mound = moved_ ? &*moved_ : picked();
    if (mound != nullptr && !saying_) {
        painter.setPen(QPen(style.act, 2.0));
        painter.setBrush(style.slip);
        if (mound->fan) {
            painter.drawLine(view.to_screen(mound->plug), fan_handle(*mound, view));
            painter.drawEllipse(fan_handle(*mound, view), 4.5, 4.5);
        }
        if (moved_ && hold_ == Hold::plug) painter.drawEllipse(view.to_screen(mound->plug), 5.0, 5.0);
    }
    if (const Mound* other = mound == nullptr || mound->name != first_ ? nullptr : likely_other()) {
        const double ring = std::max(mound_reach_px(view.pixels_per_metre()), 10.0) + 4.0;
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(style.act, 2.2 * style.line_factor, Qt::DashLine));
        painter.drawLine(view.to_screen(mound->plug), view.to_screen(other->plug));
        painter.drawEllipse(view.to_screen(other->plug), ring, ring);
    }
    if (!pen_.stroke()) return;
    QPolygonF line;
    for (const LocalPoint corner : pen_.corners()) line << view.to_screen(corner);
    if (pen_.tip()) line << view.to_screen(*pen_.tip());
    painter.setPen(QPen(style.act, 2.5 * style.line_factor));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(line);
    painter.setBrush(style.slip);
    for (const QPointF corner : line) painter.drawEllipse(corner, 4.0, 4.0);
}

}  // namespace plugside
