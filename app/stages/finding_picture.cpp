#include "app/stages/finding_picture.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/canvas/map_layers.h"
#include "app/canvas/mound_glyph.h"

namespace plugside {

namespace {

constexpr double least_reach_m = 3.0;
constexpr double most_reach_m = 150.0;
constexpr double margin_px = 26.0;

void draw_arrow(QPainter& painter, QPointF from, QPointF to) {
    const QPointF way = to - from;
    const double length = std::hypot(way.x(), way.y());
    if (length < 4.0) return;
    painter.drawLine(from, to);
    const QPointF back = way * (-8.0 / length);
    const QPointF side(-back.y() * 0.45, back.x() * 0.45);
    painter.drawLine(to, to + back + side);
    painter.drawLine(to, to + back - side);
}

}  // namespace

FindingPicture::FindingPicture(Choices& choices, QWidget* parent) : QWidget(parent), choices_(choices) {
    setMinimumHeight(130);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&choices_, &Choices::theme_changed, this, qOverload<>(&QWidget::update));
    connect(&choices_, &Choices::units_changed, this, qOverload<>(&QWidget::update));
}

void FindingPicture::show_finding(std::shared_ptr<const FieldSurvey> field, const Finding& finding) {
    field_ = std::move(field);
    finding_ = finding;
    setAccessibleName(tr("the ground about %1")
                          .arg(QString::fromStdString(finding.marks.empty() ? std::string() : finding.marks.front())));
    update();
}

void FindingPicture::show_nothing() {
    finding_.reset();
    field_.reset();
    update();
}

const Mound* FindingPicture::mound(const std::string& name) const {
    const auto& mounds = field_->survey.mounds;
    const auto found = std::find_if(mounds.begin(), mounds.end(), [&](const Mound& one) { return one.name == name; });
    return found == mounds.end() ? nullptr : &*found;
}

FindingPicture::View FindingPicture::view() const {
    View view;
    view.middle = finding_->at;
    double reach = least_reach_m;
    const auto take_in = [&](LocalPoint place) { reach = std::max(reach, 1.15 * distance_m(place, finding_->at)); };
    for (const std::string& name : finding_->marks)
        if (const Mound* one = mound(name)) take_in(one->plug);
    if (finding_->mend)
        for (const LocalPoint place : finding_->mend->to) take_in(place);
    reach = std::min(reach, most_reach_m);
    view.pixels_per_metre = (0.5 * std::min(width(), height()) - margin_px) / reach;
    view.at = QPointF(0.5 * width(), 0.5 * height());
    return view;
}

void FindingPicture::draw_proposal(QPainter& painter, const View& view) const {
    const MapStyle& style = choices_.style();
    if (!finding_->mend) return;
    const Mend& mend = *finding_->mend;
    painter.setPen(QPen(style.act, 2.0 * style.line_factor));
    painter.setBrush(Qt::NoBrush);
    const double reach = std::clamp(0.5 * view.pixels_per_metre, 14.0, 34.0);
    for (std::size_t i = 0; i < mend.marks.size(); ++i) {
        const Mound* one = mound(mend.marks[i]);
        if (one == nullptr) continue;
        const QPointF at = view.screen(one->plug);
        const auto cross_out = [&] {
            painter.drawLine(at + QPointF(-8.0, -8.0), at + QPointF(8.0, 8.0));
            painter.drawLine(at + QPointF(-8.0, 8.0), at + QPointF(8.0, -8.0));
        };
        const auto point_to = [&](Bearing fan) {
            draw_arrow(painter, at, at + QPointF(std::sin(fan.radians()), -std::cos(fan.radians())) * (1.5 * reach));
        };
        switch (mend.kind) {
            case MendKind::set_aside: cross_out(); break;
            case MendKind::one_mound:
                if (i > 0) cross_out();
                if (!mend.to.empty()) draw_arrow(painter, at, view.screen(mend.to.front()));
                break;
            case MendKind::move:
                if (i < mend.to.size()) draw_arrow(painter, at, view.screen(mend.to[i]));
                break;
            case MendKind::fan:
                if (mend.fan) point_to(*mend.fan);
                break;
            case MendKind::turn_fans:
                if (one->fan) point_to(one->fan->turned(mend.turn_degrees));
                break;
            case MendKind::take_back:
            case MendKind::sign:
            case MendKind::freshness: painter.drawEllipse(at, 12.0, 12.0); break;
        }
    }
}

void FindingPicture::draw_scale(QPainter& painter, const View& view) const {
    const MapStyle& style = choices_.style();
    const bool metres = choices_.units() == LengthUnits::metres;
    const double unit_m = metres ? 1.0 : 0.3048;
    double units = 1.0;
    for (const double step : {1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0})
        if (step * unit_m * view.pixels_per_metre <= 0.34 * width()) units = step;
    const double length = units * unit_m * view.pixels_per_metre;
    const QPointF left(12.0, height() - 12.0);
    painter.setPen(QPen(style.ink, 1.4));
    painter.drawLine(left, left + QPointF(length, 0.0));
    for (const double x : {0.0, length}) painter.drawLine(left + QPointF(x, -4.0), left + QPointF(x, 4.0));
    draw_haloed_text(painter, QRectF(left.x(), left.y() - 6.0 - style.room(16.0), style.room(120.0), style.room(16.0)),
                     metres ? tr("%1 m").arg(units) : tr("%1 ft").arg(units), style.ink, style.slip);
}

void FindingPicture::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const MapStyle& style = choices_.style();
    painter.setPen(QPen(style.hairline, 1.0));
    painter.setBrush(style.drawing());
    painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
    if (!finding_ || !field_) return;
    const View here = view();
    painter.setClipRect(rect().adjusted(1, 1, -1, -1));
    const auto asked = [&](const Mound& one) {
        return std::find(finding_->marks.begin(), finding_->marks.end(), one.name) != finding_->marks.end();
    };
    const double reach = std::clamp(0.5 * here.pixels_per_metre, 5.0, 30.0);
    const QRectF seen = QRectF(rect()).adjusted(-30.0, -30.0, 30.0, 30.0);
    QFont font = painter.font();
    font.setPixelSize(style.letters(11));
    painter.setFont(font);
    for (const bool in_question : {false, true})
        for (const Mound& one : field_->survey.mounds) {
            const QPointF at = here.screen(one.plug);
            if (!seen.contains(at) || asked(one) != in_question) continue;
            painter.setOpacity(in_question ? 1.0 : 0.45);
            draw_mark(painter, one, at, reach, style);
            if (!in_question) continue;
            // a name is kept inside the picture
            const QString name = QString::fromStdString(one.name);
            QRectF place(at.x() + 8.0, at.y() - 7.0 - style.room(15.0), painter.fontMetrics().horizontalAdvance(name) + 6.0,
                         style.room(16.0));
            place.moveLeft(std::max(std::min(place.left(), width() - 3.0 - place.width()), 3.0));
            place.moveTop(std::max(std::min(place.top(), height() - 3.0 - place.height()), 3.0));
            draw_haloed_text(painter, place, name, style.ink, style.slip);
        }
    painter.setOpacity(1.0);
    draw_proposal(painter, here);
    draw_scale(painter, here);
}

}  // namespace plugside
