#include <cmath>

#include "app/canvas/map_layers.h"

namespace plugside {

namespace {

constexpr double notch_px = 4.0;

QPainterPath cloth_path(QPointF foot, const QRectF& cloth) {
    const bool to_right = cloth.center().x() > foot.x();
    const double near = to_right ? cloth.left() : cloth.right();
    const double far = to_right ? cloth.right() : cloth.left();
    const double notch = to_right ? far - notch_px : far + notch_px;
    QPainterPath path(QPointF(near, cloth.top()));
    path.lineTo(far, cloth.top());
    path.lineTo(notch, cloth.center().y());
    path.lineTo(far, cloth.bottom());
    path.lineTo(near, cloth.bottom());
    path.closeSubpath();
    return path;
}

void draw_moved_arrow(QPainter& painter, QPointF foot, const MapStyle& style) {
    painter.setPen(QPen(style.act, 1.4 * style.line_factor));
    painter.drawLine(foot + QPointF(-9.0, 0.0), foot + QPointF(-2.5, 0.0));
    painter.drawLine(foot + QPointF(-5.5, -3.0), foot + QPointF(-2.5, 0.0));
    painter.drawLine(foot + QPointF(-5.5, 3.0), foot + QPointF(-2.5, 0.0));
}

std::vector<QRectF> wished_cloths(QPointF foot, int number, const QFont& font, const QRectF& screen) {
    std::vector<QRectF> wished;
    // a cloth of larger letters hangs higher, so that the foot stays free
    const double longer = std::max(QFontMetricsF(font).height() / 15.0, 1.0);
    for (const double stake : {20.0, 32.0, -14.0, 46.0, -28.0, 62.0})
        for (const FlagSide side : {FlagSide::right, FlagSide::left}) {
            const QRectF cloth = flag_cloth(foot, number, side, stake > 0.0 ? stake * longer : stake, font);
            if (screen.contains(cloth)) wished.push_back(cloth);
        }
    return wished;
}

}  // namespace

SetChoice choice_of(const Survey& survey, const Plan& plan, const SetPoint& set) {
    // the survey is always at least as new as the plan: a site without a decision is a proposal again
    const auto decision = decision_on(survey, plan.probes.at(set.probe).key);
    return decision ? decision->choice : SetChoice::proposed;
}

LocalPoint ladder_middle(const Survey& survey, const ProbeSite& site) {
    const auto decision = decision_on(survey, site.key);
    if (!decision || !decision->moved_to) return site.middle;
    const LocalVector along = site.axis.unit();
    // the plan may already have the moved place: only the rest of the way is left
    const double more_along = decision->moved_to->along.value() - site.ladder.along.value();
    const double more_across = decision->moved_to->across.value() - site.ladder.across.value();
    return site.middle + along * more_along + turned_right(along) * more_across;
}

QFont flag_font(const MapStyle& style) {
    QFont font;
    font.setBold(true);
    font.setPixelSize(style.letters(style.theme == Theme::light ? 11 : 13));
    return font;
}

QRectF flag_cloth(QPointF foot, int number, FlagSide side, double stake_px, const QFont& font) {
    const QFontMetricsF metrics(font);
    const double width = metrics.horizontalAdvance(QString::number(number)) + 8.0 + notch_px;
    const double height = metrics.height() + 1.0;
    const double left = side == FlagSide::right ? foot.x() : foot.x() - width;
    return {left, foot.y() - stake_px, width, height};
}

void draw_flag(QPainter& painter, QPointF foot, const QRectF& cloth, int number, SetChoice choice, const MapStyle& style) {
    const bool dropped = choice == SetChoice::dropped;
    const bool filled = choice == SetChoice::kept || choice == SetChoice::moved;
    const QColor colour = dropped ? style.quiet_ink : style.act;
    const double stake_end = cloth.top() < foot.y() ? cloth.top() : cloth.bottom();
    painter.setPen(QPen(style.ink, 1.5 * style.line_factor));
    painter.drawLine(foot, QPointF(foot.x(), stake_end));
    painter.setPen(QPen(colour, 1.3 * style.line_factor));
    painter.setBrush(filled ? colour : style.slip);
    painter.drawPath(cloth_path(foot, cloth));
    const bool to_right = cloth.center().x() > foot.x();
    const QRectF text = to_right ? cloth.adjusted(0.0, 0.0, -notch_px, 0.0) : cloth.adjusted(notch_px, 0.0, 0.0, 0.0);
    painter.setFont(flag_font(style));
    painter.setPen(filled ? style.on_act : colour);
    painter.drawText(text, Qt::AlignCenter, QString::number(number));
    if (dropped) {
        painter.setPen(QPen(style.ink, 1.6 * style.line_factor));
        painter.drawLine(text.bottomLeft() + QPointF(1.0, -1.0), text.topRight() + QPointF(-1.0, 1.0));
    }
    if (choice == SetChoice::moved) draw_moved_arrow(painter, foot, style);
}

void draw_sets(MapSheet& sheet) {
    if (!sheet.show.sets) return;
    const QFont font = flag_font(sheet.style);
    const QRectF inside = sheet.view.screen().adjusted(2.0, 2.0, -2.0, -2.0);
    for (std::size_t i = 0; i < sheet.plan->sets.size(); ++i) {
        if (sheet.stop.stop_requested()) return;
        const SetPoint& set = sheet.plan->sets[i];
        const LocalPoint middle = ladder_middle(sheet.field.survey, sheet.plan->probes.at(set.probe));
        if (!sheet.sees(middle)) continue;
        const QPointF foot = sheet.screen(middle);
        const int number = static_cast<int>(i) + 1;
        const SetChoice choice = choice_of(sheet.field.survey, *sheet.plan, set);
        if (const auto cloth = sheet.room.take(wished_cloths(foot, number, font, inside))) {
            draw_flag(sheet.painter, foot, *cloth, number, choice, sheet.style);
            if (sheet.flags) sheet.flags->push_back({i, *cloth});
        } else {
            // too crowded for a number at this scale: the stake's foot still shows that a set is here
            sheet.painter.setPen(sheet.pen(sheet.style.slip, 1.0));
            sheet.painter.setBrush(choice == SetChoice::dropped ? sheet.style.quiet_ink : sheet.style.act);
            sheet.painter.drawEllipse(foot, 3.2, 3.2);
            if (sheet.flags) sheet.flags->push_back({i, QRectF(foot.x() - 5.0, foot.y() - 5.0, 10.0, 10.0)});
        }
    }
}

}  // namespace plugside
