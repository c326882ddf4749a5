#include <QLocale>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/canvas/map_layers.h"
#include "app/canvas/mark_sprites.h"
#include "app/canvas/mound_glyph.h"

namespace plugside {

namespace {

constexpr std::size_t many = 1200;         // drawn by cells of the ground from here on
constexpr std::size_t many_at_once = 300;  // drawn from sprites from here on, where they are small
constexpr double small_reach_px = 14.0;

using Mounds = std::vector<Mound>;

// Freshest last, so that they lie on top.
void put_foremost_last(std::vector<std::uint32_t>& marks, const Mounds& mounds) {
    std::sort(marks.begin(), marks.end(), [&](std::uint32_t a, std::uint32_t b) {
        return std::pair(MarkPyramid::weight(mounds[a]), a) < std::pair(MarkPyramid::weight(mounds[b]), b);
    });
}

struct MarksToDraw {
    std::vector<std::uint32_t> marks;  // in the order to draw them
    std::size_t stand_for = 0;         // marks that lie in view
};

MarksToDraw marks_to_draw(const MapSheet& sheet, const MarkPyramid& pyramid, double reach_px) {
    MarksToDraw result;
    if (auto seen = pyramid.within(sheet.visible, many)) {
        result.marks = std::move(*seen);
        result.stand_for = result.marks.size();
    } else {
        const double cell_m = sheet.view.ground_length(std::max(0.9 * reach_px, 4.0)).value();
        for (const MarkPyramid::Cell& cell : pyramid.cells(pyramid.level_of(cell_m), sheet.visible)) {
            result.marks.push_back(cell.foremost);
            result.stand_for += cell.count;
        }
    }
    put_foremost_last(result.marks, sheet.field.survey.mounds);
    return result;
}

// How many marks lie in each piece of the view, where far more do than are drawn.
void draw_counts(MapSheet& sheet, const MarkPyramid& pyramid) {
    constexpr double piece_px = 72.0;
    constexpr std::size_t least_count = 10;
    const std::size_t level = pyramid.level_of(sheet.view.ground_length(piece_px).value());
    QFont font = sheet.painter.font();
    font.setPixelSize(sheet.style.text(-1));
    font.setBold(true);
    sheet.painter.setFont(font);
    const QFontMetricsF metrics(font);
    for (const MarkPyramid::Cell& cell : pyramid.cells(level, sheet.visible)) {
        if (cell.count < least_count) continue;
        const QString number = QLocale().toString(cell.count);
        const QSizeF size(metrics.horizontalAdvance(number) + 4.0, metrics.height());
        const QPointF middle = sheet.screen(cell.middle(MarkPyramid::cell_m(level)));
        const QRectF place(middle - QPointF(0.5 * size.width(), 0.5 * size.height()), size);
        if (sheet.view.screen().contains(place) && sheet.room.free(place)) {
            draw_haloed_text(sheet.painter, place, number, sheet.style.ink, sheet.style.field);
            sheet.room.hold(place);
        }
    }
}

std::shared_ptr<const MarkPyramid> pyramid_of(const MapSheet& sheet) {
    const Mounds& mounds = sheet.field.survey.mounds;
    if (sheet.show.marks && sheet.show.marks->of(mounds)) return sheet.show.marks;
    return std::make_shared<MarkPyramid>(mounds, sheet.show.other_diggers);
}

// What a mark's drawing needs, with the fan as it points on the screen.
Mound as_drawn(const Mound& mound, const ViewTransform& view) {
    Mound drawn;
    drawn.plug = mound.plug;
    drawn.kind = mound.kind;
    drawn.freshness = mound.freshness;
    if (mound.fan) drawn.fan = view.on_screen(*mound.fan);
    return drawn;
}

void draw_ladder(MapSheet& sheet, const ProbeSite& site, SetChoice choice) {
    QPainter& painter = sheet.painter;
    const LocalVector shift = ladder_middle(sheet.field.survey, site) - site.middle;
    QFont font = painter.font();
    font.setPixelSize(sheet.style.letters(10));
    font.setBold(true);
    painter.setFont(font);
    const double radius = std::clamp(sheet.view.pixels(site.ladder.step) * 0.46, 2.0, sheet.style.room(8.0));
    for (std::size_t i = site.rung_places.size(); i-- > 0;) {
        const QPointF at = sheet.screen(site.rung_places[i] + shift);
        const bool first = i == 0;
        painter.setPen(sheet.pen(choice == SetChoice::dropped ? sheet.style.quiet_ink : sheet.style.act, 1.2));
        painter.setBrush(first ? QBrush(painter.pen().color()) : QBrush(sheet.style.slip));
        painter.drawEllipse(at, radius, radius);
        if (radius < sheet.style.room(6.5)) continue;
        painter.setPen(first ? sheet.style.on_act : sheet.style.ink);
        painter.drawText(QRectF(at.x() - radius - 2.0, at.y() - radius - 2.0, 2.0 * radius + 4.0, 2.0 * radius + 4.0),
                         Qt::AlignCenter, QString::number(i + 1));
    }
}

}  // namespace

void draw_marks(MapSheet& sheet) {
    const double reach = mound_reach_px(sheet.view.pixels_per_metre());
    const auto pyramid = pyramid_of(sheet);
    const MarksToDraw to_draw = marks_to_draw(sheet, *pyramid, reach);
    const bool from_sprites = to_draw.marks.size() > many_at_once && reach <= small_reach_px;
    MarkSprites sprites(reach, sheet.style, sheet.painter.device()->devicePixelRatioF());
    std::size_t drawn = 0;
    for (const std::uint32_t i : to_draw.marks) {
        if ((++drawn & 255U) == 0 && sheet.stop.stop_requested()) return;
        Mound mound = as_drawn(sheet.field.survey.mounds[i], sheet.view);
        const QPointF at = sheet.screen(mound.plug);
        // a mark that the plan leaves out stays visible, but stands back
        const bool left_out = sheet.plan && sheet.plan->mounds[i].not_used_because && is_gopher_sign(mound.kind);
        sheet.painter.setOpacity(left_out ? 0.45 : 1.0);
        if (from_sprites)
            sprites.draw(sheet.painter, mound, at);
        else
            draw_mark(sheet.painter, mound, at, reach, sheet.style);
        if (to_draw.marks.size() <= many) sheet.room.avoid(at);
    }
    sheet.painter.setOpacity(1.0);
    if (3 * to_draw.marks.size() < 2 * to_draw.stand_for) draw_counts(sheet, *pyramid);
}

void draw_ladders(MapSheet& sheet) {
    constexpr double readable_scale = 45.0;  // pixels a metre: rungs 5 cm apart are then two pixels apart
    if (!sheet.show.sets || sheet.view.pixels_per_metre() < readable_scale) return;
    for (const SetPoint& set : sheet.plan->sets) {
        const ProbeSite& site = sheet.plan->probes.at(set.probe);
        if (!sheet.sees(site.middle)) continue;
        draw_ladder(sheet, site, choice_of(sheet.field.survey, *sheet.plan, set));
    }
}

}  // namespace plugside
