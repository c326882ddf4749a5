#include "app/sheets/map_figure.h"

#include <algorithm>
#include <cmath>

#include "app/canvas/label_room.h"
#include "app/sheets/lettering.h"
#include "app/sheets/mound_figure.h"

namespace plugside {

namespace {

constexpr Lettering small_words{9.0, false, Ink::black};
constexpr Lettering number_words{9.0, true, Ink::black};
constexpr Lettering letter_words{13.0, true, Ink::black};
constexpr double likely = 0.8;    // drawn whole
constexpr double doubtful = 0.5;  // drawn broken; less is left out
constexpr double mound_mm = 2.0;

class MapMaker {
public:
    MapMaker(const SheetInput& input, const SheetContents& contents, QSizeF room, const MapPlace& place, LocalPoint origin)
        : input_(input),
          contents_(contents),
          place_(place),
          origin_(origin),
          frame_(grid_room_mm, 0.0, room.width() - grid_room_mm, room.height() - grid_room_mm) {
        made_.figure = Figure(room);
    }

    NumberedMap make(const std::vector<MapPlace>& others) {
        draw_grid();
        draw_ground();
        draw_systems_and_runs();
        draw_way();
        draw_mounds();
        // the little that has to be read is placed before what may give way
        for (const SetCard& card : contents_.cards)
            if (frame_.contains(on_map(card.middle))) room_.avoid(on_map(card.middle) * 4.0);
        draw_sets();
        draw_letters();
        draw_names();
        draw_others(others);
        made_.figure.box(frame_, 0.5);
        return std::move(made_);
    }

private:
    [[nodiscard]] double mm(double metres) const { return metres * 1000.0 / place_.scale; }
    [[nodiscard]] QPointF on_map(LocalPoint at) const {
        const LocalVector off = at - place_.centre;
        return frame_.center() + QPointF(mm(off.east_m), -mm(off.north_m));
    }
    [[nodiscard]] std::vector<QPointF> on_map(const std::vector<LocalPoint>& line, bool closed) const {
        std::vector<QPointF> points;
        for (const LocalPoint vertex : line) points.push_back(on_map(vertex));
        if (closed && !points.empty()) points.push_back(points.front());
        return points;
    }
    void draw_line(const std::vector<QPointF>& line, double width, Ink ink, std::vector<double> dashes = {});
    void draw_grid();
    void draw_ground();
    void draw_barrier(const std::vector<QPointF>& line);
    void draw_systems_and_runs();
    void draw_way();
    void draw_mounds();
    void draw_sets();
    void draw_letters();
    void draw_names();
    void draw_others(const std::vector<MapPlace>& others);
    // Writes it at the first place that is free, on white.
    bool label(const std::vector<QPointF>& middles, const QString& text, const Lettering& lettering);

    const SheetInput& input_;
    const SheetContents& contents_;
    MapPlace place_;
    LocalPoint origin_;
    QRectF frame_;
    LetteringMeasure measure_;
    LabelRoom room_;
    NumberedMap made_;
};

void MapMaker::draw_line(const std::vector<QPointF>& line, double width, Ink ink, std::vector<double> dashes) {
    for (auto& piece : inside_box(line, frame_)) made_.figure.add(Stroke{std::move(piece), false, width, ink, {}, dashes});
}

void MapMaker::draw_grid() {
    const double step = grid_step(place_.scale, input_.units).value();
    const bool metric = input_.units == LengthUnits::metres;
    const auto reading = [&](double metres) {
        const double value = metric ? metres : Metres::of(metres).feet();
        return QString::number(std::lround(value));
    };
    const double half_east = 0.5 * frame_.width() * place_.scale / 1000.0;
    const double half_north = 0.5 * frame_.height() * place_.scale / 1000.0;
    const auto first = [&](double low) { return std::ceil(low / step - 1e-9) * step; };
    const double west = place_.centre.east_m - half_east - origin_.east_m;
    for (double at = first(west); at <= west + 2.0 * half_east + 1e-9; at += step) {
        const double x = on_map(LocalPoint{origin_.east_m + at, 0.0}).x();
        made_.figure.line({x, frame_.top()}, {x, frame_.bottom()}, 0.12, Ink::dark);
        if (x < frame_.right() - 6.0) made_.figure.words({x, frame_.bottom() + 4.6}, reading(at), small_words, Side::middle);
    }
    const double south = place_.centre.north_m - half_north - origin_.north_m;
    for (double at = first(south); at <= south + 2.0 * half_north + 1e-9; at += step) {
        const double y = on_map(LocalPoint{0.0, origin_.north_m + at}).y();
        made_.figure.line({frame_.left(), y}, {frame_.right(), y}, 0.12, Ink::dark);
        if (y > frame_.top() + 4.0)
            made_.figure.words({frame_.left() - 0.8, y + 1.2}, reading(at), small_words, Side::right);
    }
    made_.figure.words({frame_.right(), frame_.bottom() + 4.6},
                       metric ? QStringLiteral("m") : sheet_words(QT_TRANSLATE_NOOP("Sheets", "ft")), small_words,
                       Side::right);
}

void MapMaker::draw_ground() {
    const Ground& ground = input_.field.survey.ground;
    for (const KeepClearArea& area : ground.keep_clear) {
        std::vector<std::vector<QPointF>> rings{on_map(area.area.outer.vertices, false)};
        for (const Ring& hole : area.area.holes) rings.push_back(on_map(hole.vertices, false));
        for (const QLineF& line : hatching(rings, frame_, 1.6)) made_.figure.line(line.p1(), line.p2(), 0.18);
        draw_line(on_map(area.area.outer.vertices, true), 0.4, Ink::black);
        for (const Ring& hole : area.area.holes) draw_line(on_map(hole.vertices, true), 0.4, Ink::black);
    }
    for (const Polygon& part : ground.untreated.parts)
        draw_line(on_map(part.outer.vertices, true), 0.3, Ink::black, {0.4, 1.2});
    for (const Polygon& part : ground.boundary.parts) {
        draw_line(on_map(part.outer.vertices, true), 0.7, Ink::black, {5.0, 1.2, 0.7, 1.2});
        for (const Ring& hole : part.holes) draw_line(on_map(hole.vertices, true), 0.7, Ink::black, {5.0, 1.2, 0.7, 1.2});
    }
    for (const Barrier& barrier : ground.barriers) draw_barrier(on_map(barrier.line.vertices, false));
    const auto draw_gap = [&](const Gap& gap, bool gate) {
        const QPointF at = on_map(gap.at);
        if (!frame_.contains(at)) return;
        const double half = std::max(1.2, 0.5 * mm(gap.width.value()));
        made_.figure.add(Disc{at, half, 0.35, Ink::black, Ink::white});
        if (gate) made_.figure.line(at - QPointF(half, 0.0), at + QPointF(half, 0.0), 0.35);
    };
    for (const Gap& gap : ground.crossings) draw_gap(gap, false);
    for (const Gap& gap : ground.gates) draw_gap(gap, true);
}

// A heavy line with ticks on both sides.
void MapMaker::draw_barrier(const std::vector<QPointF>& line) {
    for (const auto& piece : inside_box(line, frame_)) {
        made_.figure.add(Stroke{piece, false, 0.6, Ink::black, {}, {}});
        double travelled = 0.0;
        for (std::size_t i = 1; i < piece.size(); ++i) {
            const QLineF part(piece[i - 1], piece[i]);
            const double length = part.length();
            if (length <= 0.0) continue;
            const QPointF across(-part.dy() / length, part.dx() / length);
            for (double at = 3.0 - std::fmod(travelled, 3.0); at < length; at += 3.0) {
                const QPointF foot = part.pointAt(at / length);
                made_.figure.line(foot - across * 0.9, foot + across * 0.9, 0.3);
            }
            travelled += length;
        }
    }
}

void MapMaker::draw_systems_and_runs() {
    for (const BurrowSystem& system : input_.plan.systems)
        for (const Polygon& part : system.outline.parts)
            draw_line(on_map(part.outer.vertices, true), 0.18, Ink::dark, {0.3, 0.9});
    for (const MainRun& run : input_.plan.runs) {
        const double chance = run.probability.value();
        if (chance < doubtful) continue;
        draw_line(on_map(run.line.vertices, false), 0.5, Ink::dark,
                  chance < likely ? std::vector<double>{1.6, 1.2} : std::vector<double>());
    }
}

void MapMaker::draw_way() {
    std::vector<QPointF> way;
    const auto end_stretch = [&] {
        draw_line(way, way_width_mm, Ink::black, way_dashes_mm);
        way.clear();
    };
    for (const SetCard& card : contents_.cards) {
        if (!card.way_from_before) end_stretch();
        const std::vector<LocalPoint> more =
            card.way_from_before ? card.way_from_before->vertices : std::vector<LocalPoint>{card.middle};
        for (const QPointF at : on_map(more, false)) way.push_back(at);
    }
    end_stretch();
}

void MapMaker::draw_mounds() {
    const Survey& survey = input_.field.survey;
    const double reach = std::clamp(mm(0.45), mound_mm, 4.0);
    for (std::size_t i = 0; i < survey.mounds.size(); ++i) {
        const Mound& mound = survey.mounds[i];
        const QPointF at = on_map(mound.plug);
        if (!is_gopher_sign(mound.kind) || !frame_.adjusted(reach, reach, -reach, -reach).contains(at)) continue;
        std::optional<double> turn;
        if (mound.fan && mound.freshness != Freshness::crushed) turn = mound.fan->degrees();
        add_mound(made_.figure, at, turn, mound.freshness, reach);
        room_.avoid(at * 4.0);
    }
}

bool MapMaker::label(const std::vector<QPointF>& middles, const QString& text, const Lettering& lettering) {
    const QSizeF size(measure_.width_mm(text, lettering) + 1.0, 1.1 * lettering.size_pt * mm_per_point);
    std::vector<QRectF> wished;
    for (const QPointF middle : middles) {
        const QRectF place(middle - QPointF(0.5 * size.width(), 0.5 * size.height()), size);
        if (frame_.contains(place)) wished.emplace_back(place.topLeft() * 4.0, size * 4.0);
    }
    const auto taken = room_.take(wished);
    if (!taken) return false;
    const QRectF place(taken->topLeft() / 4.0, size);
    made_.figure.box(place, 0.0, Ink::white);
    made_.figure.words({place.center().x(), place.center().y() + 0.36 * lettering.size_pt * mm_per_point}, text, lettering,
                       Side::middle);
    return true;
}

// A flag: the stake's foot where the ladder's middle is, the number on the cloth.
void MapMaker::draw_sets() {
    for (const SetCard& card : contents_.cards) {
        const QPointF foot = on_map(card.middle);
        if (!frame_.contains(foot)) continue;
        const QString number = QString::number(card.number);
        const QSizeF cloth(measure_.width_mm(number, number_words) + 1.6, 4.0);
        std::vector<QRectF> wished;
        for (const double stake : {6.0, 8.5, -3.0, 11.0, -6.0, 14.0, -9.0})
            for (const double left : {0.0, -cloth.width()}) {
                const QRectF place(foot + QPointF(left, -stake), cloth);
                if (frame_.contains(place)) wished.emplace_back(place.topLeft() * 4.0, cloth * 4.0);
            }
        const auto taken = room_.take(wished);
        if (!taken) {
            made_.sets_without_number.push_back(card.number);
            made_.figure.add(Disc{foot, 0.7, 0.2, Ink::black, Ink::black});
            continue;
        }
        const QRectF place(taken->topLeft() / 4.0, cloth);
        const double stake_x = foot.x();
        made_.figure.line(foot, {stake_x, place.top() < foot.y() ? place.top() : place.bottom()}, 0.35);
        made_.figure.box(place, 0.35, Ink::white);
        made_.figure.words({place.center().x(), place.center().y() + 1.15}, number, number_words, Side::middle);
        made_.figure.add(Disc{foot, 0.7, 0.2, Ink::black, Ink::black});
    }
}

void MapMaker::draw_letters() {
    for (const BurrowSystem& system : input_.plan.systems) {
        const QPointF at = on_map(system.label_at);
        if (!frame_.contains(at)) continue;
        std::vector<QPointF> middles;
        for (const QPointF off :
             {QPointF(0, 0), QPointF(0, -6), QPointF(0, 6), QPointF(-7, 0), QPointF(7, 0), QPointF(-7, -6), QPointF(7, 6)})
            middles.push_back(at + off);
        label(middles, QString::fromStdString(system.letter), letter_words);
    }
}

void MapMaker::draw_names() {
    const auto name = [&](const std::string& text, const std::vector<QPointF>& outline) {
        QPointF top = frame_.bottomRight();
        QPointF sum;
        double seen = 0.0;
        for (const QPointF corner : outline) {
            if (!frame_.contains(corner)) continue;
            if (corner.y() < top.y()) top = corner;
            sum += corner;
            seen += 1.0;
        }
        if (text.empty() || seen == 0.0) return;
        const QPointF middle = sum / seen;
        const double half = 0.5 * measure_.width_mm(QString::fromStdString(text), small_words) + 2.0;
        std::vector<QPointF> middles{
            middle, {middle.x(), top.y() - 3.0}, {middle.x(), middle.y() + 5.0}, {middle.x(), middle.y() - 5.0}};
        for (QPointF& place : middles)
            place.setX(std::clamp(place.x(), frame_.left() + half, std::max(frame_.left() + half, frame_.right() - half)));
        label(middles, QString::fromStdString(text), small_words);
    };
    const Ground& ground = input_.field.survey.ground;
    for (const KeepClearArea& area : ground.keep_clear) name(area.name, on_map(area.area.outer.vertices, false));
    for (const Barrier& barrier : ground.barriers) name(barrier.name, on_map(barrier.line.vertices, false));
    for (const Gap& gate : ground.gates) name(gate.name, {on_map(gate.at) - QPointF(0.0, 3.5)});
    for (const Polygon& part : ground.untreated.parts)
        name(sheet_words(QT_TRANSLATE_NOOP("Sheets", "untreated")).toStdString(), on_map(part.outer.vertices, false));
}

void MapMaker::draw_others(const std::vector<MapPlace>& others) {
    for (std::size_t i = 0; i < others.size(); ++i) {
        const double half_east = 0.5 * frame_.width() * others[i].scale / 1000.0;
        const double half_north = 0.5 * frame_.height() * others[i].scale / 1000.0;
        const LocalPoint c = others[i].centre;
        draw_line(on_map({{c.east_m - half_east, c.north_m - half_north},
                          {c.east_m + half_east, c.north_m - half_north},
                          {c.east_m + half_east, c.north_m + half_north},
                          {c.east_m - half_east, c.north_m + half_north}},
                         true),
                  0.3, Ink::black, {2.5, 1.0});
        const QPointF corner = on_map(LocalPoint{c.east_m - half_east, c.north_m + half_north});
        const QString text = sheet_words(QT_TRANSLATE_NOOP("Sheets", "map %1")).arg(i + 2);
        const double half = 0.5 * measure_.width_mm(text, number_words) + 1.5;
        label({{std::max(corner.x(), frame_.left()) + half, std::max(corner.y(), frame_.top()) + 3.0},
               {std::max(corner.x(), frame_.left()) + half, std::max(corner.y(), frame_.top()) + 8.0},
               {std::max(corner.x(), frame_.left()) + half + 12.0, std::max(corner.y(), frame_.top()) + 3.0}},
              text, number_words);
    }
}

}  // namespace

NumberedMap map_figure(const SheetInput& input, const SheetContents& contents, QSizeF room_mm, const MapPlace& place,
                       LocalPoint origin, const std::vector<MapPlace>& others) {
    return MapMaker(input, contents, room_mm, place, origin).make(others);
}

}  // namespace plugside
