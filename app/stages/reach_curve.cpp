#include "app/stages/reach_curve.h"

#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/window/look_sheet.h"
#include "app/words/language.h"

namespace plugside {

namespace {

QString spent_words(BudgetUnit unit) {
    switch (unit) {
        case BudgetUnit::traps: return ReachCurve::tr("traps");
        case BudgetUnit::minutes: return ReachCurve::tr("minutes");
        case BudgetUnit::sets: break;
    }
    return ReachCurve::tr("sets");
}

}  // namespace

QString amount_words(BudgetUnit unit, double amount) {
    const auto whole = std::lround(amount);
    switch (unit) {
        case BudgetUnit::traps: return counted(whole, ReachCurve::tr("%1 trap"), ReachCurve::tr("%1 traps"));
        case BudgetUnit::minutes: return counted(whole, ReachCurve::tr("%1 minute"), ReachCurve::tr("%1 minutes"));
        case BudgetUnit::sets: break;
    }
    return counted(whole, ReachCurve::tr("%1 set"), ReachCurve::tr("%1 sets"));
}

double tick_step(double end, int most_ticks) {
    for (double ten = 1.0;; ten *= 10.0)
        for (const double times : {1.0, 2.0, 5.0})
            if (end <= times * ten * most_ticks || ten > 1e12) return times * ten;
}

ReachCurve::ReachCurve(Choices& choices, QWidget* parent) : QWidget(parent), choices_(choices) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    connect(&choices_, &Choices::theme_changed, this, [this] {
        updateGeometry();
        update();
    });
}

QSize ReachCurve::sizeHint() const { return {240, static_cast<int>(choices_.style().room(190.0))}; }

void ReachCurve::show_curve(std::shared_ptr<const WorkJudged> judged, std::optional<double> budget) {
    judged_ = std::move(judged);
    budget_ = budget;
    setVisible(judged_ && !judged_->curve.empty());
    if (judged_ && !judged_->curve.empty())
        setAccessibleName(tr("animals reached against what is spent: %1 reach %2 of %3")
                              .arg(amount_words(judged_->unit, judged_->curve.back().cost),
                                   decimal(judged_->curve.back().reached, 1), decimal(judged_->animals, 1)));
    update();
}

void ReachCurve::paintEvent(QPaintEvent*) {
    if (!judged_ || judged_->curve.empty()) return;
    const MapStyle& style = choices_.style();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    QFont font = this->font();
    font.setPixelSize(style.text(-1));
    painter.setFont(font);
    const QFontMetricsF metrics(font);
    Plot plot;
    plot.all_cost = std::max(judged_->curve.back().cost, budget_.value_or(0.0));
    plot.all = std::max(judged_->animals, judged_->curve.back().reached);
    if (plot.all_cost <= 0.0 || plot.all <= 0.0) return;
    const double left = metrics.horizontalAdvance(decimal(plot.all, 0)) + 9.0;
    const double right = 0.5 * metrics.horizontalAdvance(decimal(plot.all_cost, 0)) + 2.0;
    plot.room = QRectF(left, 2.0 * metrics.height() + 6.0, width() - left - right, height() - 4.0 * metrics.height() - 16.0);
    draw_axes(painter, plot);
    QPainterPath path(plot.at(0.0, 0.0));
    for (const BudgetStep& step : judged_->curve) path.lineTo(plot.at(step.cost, step.reached));
    painter.setPen(QPen(style.run, 2.2 * style.line_factor));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(path);
    draw_budget(painter, plot);
}

void ReachCurve::draw_axes(QPainter& painter, const Plot& plot) const {
    const MapStyle& style = choices_.style();
    const QFontMetricsF metrics(painter.font());
    const double line = metrics.height();
    const QRectF& room = plot.room;
    painter.setPen(QPen(style.hairline, 1.0));
    painter.drawLine(plot.at(0.0, judged_->animals), plot.at(plot.all_cost, judged_->animals));
    painter.setPen(QPen(style.quiet_ink, 1.2));
    painter.drawLine(room.bottomLeft(), room.bottomRight());
    painter.drawLine(room.bottomLeft(), room.topLeft());
    painter.setPen(style.ink);
    painter.drawText(QRectF(0.0, 0.0, width(), line), Qt::AlignLeft, tr("animals reached"));
    painter.drawText(QRectF(room.left(), plot.at(0.0, judged_->animals).y() - line - 1.0, room.width(), line), Qt::AlignRight,
                     tr("%1 in the field").arg(decimal(judged_->animals, 1)));
    painter.drawText(QRectF(room.left(), room.bottom() + line + 6.0, width() - room.left(), line), Qt::AlignRight,
                     spent_words(judged_->unit));
    const double up = tick_step(plot.all, 4);
    for (double animals = 0.0; animals <= plot.all; animals += up)
        painter.drawText(QRectF(0.0, plot.at(0.0, animals).y() - 0.5 * line, room.left() - 5.0, line),
                         Qt::AlignRight | Qt::AlignVCenter, decimal(animals, 0));
    const double on = tick_step(plot.all_cost, 5);
    for (double cost = 0.0; cost <= plot.all_cost; cost += on) {
        const QPointF foot = plot.at(cost, 0.0);
        painter.drawLine(foot, foot + QPointF(0.0, 4.0));
        const QString words = decimal(cost, 0);
        const double half = 0.5 * metrics.horizontalAdvance(words) + 1.0;
        painter.drawText(QRectF(foot.x() - half, foot.y() + 5.0, 2.0 * half, line), Qt::AlignCenter, words);
    }
}

void ReachCurve::draw_budget(QPainter& painter, const Plot& plot) const {
    if (!budget_) return;
    const MapStyle& style = choices_.style();
    painter.setPen(QPen(style.act, 1.6 * style.line_factor, Qt::DashLine));
    painter.drawLine(plot.at(*budget_, 0.0), plot.at(*budget_, plot.all));
    if (!judged_->spent) return;
    const QPointF chosen = plot.at(*budget_, judged_->spent->reached);
    painter.setPen(QPen(style.act, 1.6 * style.line_factor));
    painter.setBrush(style.slip);
    painter.drawEllipse(chosen, 4.0, 4.0);
    // beside the line, on the side where there is room
    const QFontMetricsF metrics(painter.font());
    const QString words =
        tr("%1: %2 animals").arg(amount_words(judged_->unit, *budget_), decimal(judged_->spent->reached, 1));
    const double wide = metrics.horizontalAdvance(words) + 4.0;
    const double left = chosen.x() + 8.0 + wide < width() ? chosen.x() + 8.0 : std::max(0.0, chosen.x() - 8.0 - wide);
    const QRectF place(left, plot.room.bottom() - metrics.height() - 4.0, wide, metrics.height());
    painter.fillRect(place, style.slip);
    painter.drawText(place, Qt::AlignCenter, words);
}

}  // namespace plugside
