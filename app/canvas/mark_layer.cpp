#include <algorithm>
#include <array>
#include <cmath>
#include <unordered_set>

#include "app/canvas/map_layers.h"
#include "app/canvas/mound_glyph.h"

namespace plugside {

namespace {

// Marks that are drawn, freshest last so that they lie on top.
std::vector<std::size_t> marks_to_draw(const MapSheet& sheet) {
    std::vector<std::size_t> seen;
    const auto& mounds = sheet.field.survey.mounds;
    for (std::size_t i = 0; i < mounds.size(); ++i)
        if (sheet.sees(mounds[i].plug) && (sheet.show.other_diggers || is_gopher_sign(mounds[i].kind))) seen.push_back(i);
    const auto weight = [&](std::size_t i) {
        if (!is_gopher_sign(mounds[i].kind)) return 0;
        switch (mounds[i].freshness) {
            case Freshness::crushed: return 1;
            case Freshness::older: return 2;
            case Freshness::unknown: return 3;
            case Freshness::fresh: return 4;
        }
        return 0;
    };
    std::stable_sort(seen.begin(), seen.end(), [&](std::size_t a, std::size_t b) { return weight(a) < weight(b); });
    return seen;
}

// One mark a cell, the weightiest: the last of the sorted ones.
std::vector<std::size_t> thinned(const MapSheet& sheet, const std::vector<std::size_t>& marks, double cell_px) {
    std::vector<std::size_t> kept;
    std::unordered_set<long long> taken;
    for (auto mark = marks.rbegin(); mark != marks.rend(); ++mark) {
        const QPointF at = sheet.screen(sheet.field.survey.mounds[*mark].plug);
        const auto cell = static_cast<long long>(std::floor(at.x() / cell_px)) * 1000003LL +
                          static_cast<long long>(std::floor(at.y() / cell_px));
        if (taken.insert(cell).second) kept.push_back(*mark);
    }
    std::reverse(kept.begin(), kept.end());
    return kept;
}

void draw_ladder(MapSheet& sheet, const ProbeSite& site, SetChoice choice) {
    QPainter& painter = sheet.painter;
    const LocalVector shift = ladder_middle(sheet.field.survey, site) - site.middle;
    QFont font = painter.font();
    font.setPixelSize(10);
    font.setBold(true);
    painter.setFont(font);
    const double radius = std::clamp(sheet.view.pixels(site.ladder.step) * 0.46, 2.0, 8.0);
    for (std::size_t i = site.rung_places.size(); i-- > 0;) {
        const QPointF at = sheet.screen(site.rung_places[i] + shift);
        const bool first = i == 0;
        painter.setPen(sheet.pen(choice == SetChoice::dropped ? sheet.style.quiet_ink : sheet.style.act, 1.2));
        painter.setBrush(first ? QBrush(painter.pen().color()) : QBrush(sheet.style.slip));
        painter.drawEllipse(at, radius, radius);
        if (radius < 6.5) continue;
        painter.setPen(first ? sheet.style.on_act : sheet.style.ink);
        painter.drawText(QRectF(at.x() - 10.0, at.y() - 10.0, 20.0, 20.0), Qt::AlignCenter, QString::number(i + 1));
    }
}

}  // namespace

void draw_marks(MapSheet& sheet) {
    const double reach = mound_reach_px(sheet.view.pixels_per_metre());
    std::vector<std::size_t> marks = marks_to_draw(sheet);
    constexpr std::size_t many = 1200;
    if (marks.size() > many) marks = thinned(sheet, marks, std::max(0.55 * reach, 3.0));
    std::size_t drawn = 0;
    for (const std::size_t i : marks) {
        if ((++drawn & 255U) == 0 && sheet.stop.stop_requested()) return;
        const Mound& mound = sheet.field.survey.mounds[i];
        const QPointF at = sheet.screen(mound.plug);
        // a mark that the plan leaves out stays visible, but stands back
        const bool left_out = sheet.plan && sheet.plan->mounds[i].not_used_because && is_gopher_sign(mound.kind);
        sheet.painter.setOpacity(left_out ? 0.45 : 1.0);
        draw_mark(sheet.painter, mound, at, reach, sheet.style);
        if (marks.size() <= many) sheet.room.avoid(at);
    }
    sheet.painter.setOpacity(1.0);
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
