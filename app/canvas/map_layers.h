// The layers of the map, in the order they are laid. Each draws only what meets the visible part of the ground.
#pragma once

#include <QPainter>
#include <QPainterPath>
#include <optional>
#include <stop_token>
#include <vector>

#include "app/canvas/label_room.h"
#include "app/canvas/map_painter.h"

namespace plugside {

struct MapSheet {
    QPainter& painter;
    const FieldSurvey& field;
    const Plan* plan;
    const MapStyle& style;
    const ViewTransform& view;
    const MapShow& show;
    const std::stop_token& stop;
    std::vector<FlagPlace>* flags;
    LabelRoom room;
    GroundBox visible;  // a little more than what is seen

    [[nodiscard]] bool sees(LocalPoint place) const;
    [[nodiscard]] QPointF screen(LocalPoint place) const { return view.to_screen(place); }
    [[nodiscard]] QPen pen(const QColor& colour, double width) const { return QPen(colour, width * style.line_factor); }
};

void draw_imagery(MapSheet& sheet);  // what cameras saw
void draw_ground(MapSheet& sheet);   // field, imagery, unwalked, keep-clear, barriers, boundary, track
// Single lines where less than half of the mounds were seen, crossed ones where hardly any were.
inline constexpr double half_seen = 0.5;
inline constexpr double hardly_seen = 0.1;
void draw_unseen(MapSheet& sheet, const SeenSurface& surface);
// The same for a key.
void draw_unseen_swatch(QPainter& painter, const QRectF& place, bool crossed, const MapStyle& style);

void draw_systems(MapSheet& sheet);  // tinted outlines
void draw_runs(MapSheet& sheet);     // bands and lines
void draw_reasons(MapSheet& sheet);  // parts of systems that speak against a set
void draw_tours(MapSheet& sheet);    // ways from set to set
void draw_marks(MapSheet& sheet);    // mounds and other signs
void draw_ladders(MapSheet& sheet);  // numbered rungs, at large scale
void draw_letters(MapSheet& sheet);  // of systems
void draw_sets(MapSheet& sheet);     // flags

// What a person decided, or what the plan proposes, in that order.
[[nodiscard]] SetChoice choice_of(const Survey& survey, const Plan& plan, const SetPoint& set);

// Where the middle of a set's ladder lies on the map: the plan's place, or the place it was moved to.
[[nodiscard]] LocalPoint ladder_middle(const Survey& survey, const ProbeSite& site);

// One flag with its stake's foot at `foot`, as large as a label of its number needs; returns the cloth's place.
enum class FlagSide { right, left };
[[nodiscard]] QRectF flag_cloth(QPointF foot, int number, FlagSide side, double stake_px, const QFont& font);
void draw_flag(QPainter& painter, QPointF foot, const QRectF& cloth, int number, SetChoice choice, const MapStyle& style);
[[nodiscard]] QFont flag_font(const MapStyle& style);

// Text that stays readable on any ground.
void draw_haloed_text(QPainter& painter, const QRectF& place, const QString& text, const QColor& ink, const QColor& halo);

[[nodiscard]] QPainterPath screen_path(const MultiPolygon& areas, const ViewTransform& view);
[[nodiscard]] QPainterPath screen_path(const Polygon& area, const ViewTransform& view);

}  // namespace plugside
