// The field as a picture: ground, walk, systems, runs with their bands, mounds, ladders, sets.
//
// Pure: what is drawn follows from the arguments alone, so the window, the tests and the batch program's picture agree.
//         The painter's paint device may live on any thread.
// Plan:  drawn with the survey's own decisions, which may be newer than the plan; null draws the survey alone.
// Chance: a run less likely than .8 is broken, one less likely than .5 is drawn only when asked for; the pale band about a
// run
//         holds it in 9 cases of 10 (1.645 standard deviations to each side).
// Many marks: where several would fall on the same few pixels one is drawn for all, the freshest first; where far more lie
//         in view than are drawn, their numbers are written.
// Stop:  between layers and inside long ones; a stopped picture is incomplete.
// Cost:  linear in what the plan and the ground hold; marks: in what is seen, once there is a pyramid of them.
#pragma once

#include <QImage>
#include <QPainter>
#include <memory>
#include <stop_token>
#include <vector>

#include "app/canvas/mark_pyramid.h"
#include "app/canvas/palette.h"
#include "app/canvas/view_transform.h"
#include "core/plan/plan.h"
#include "core/walking/not_seen.h"
#include "geo/read/field_survey.h"

namespace plugside {

struct ImageryScene;
struct ReachReason;
struct TourWays;

struct MapShow {
    bool track = true;
    bool unwalked = true;
    bool other_diggers = true;
    bool systems = true;
    bool runs = true;
    bool unlikely_runs = false;  // less likely than .5
    bool sets = true;
    bool names = true;                            // letters, barrier and keep-clear names
    double plan_opacity = 1.0;                    // less while the plan is older than the survey
    std::shared_ptr<const SeenSurface> seen;      // what the walk saw, drawn in place of the plan's unwalked ground
    std::shared_ptr<const ImageryScene> imagery;  // on the ground, under everything else; null for none
    std::shared_ptr<const MarkPyramid> marks;     // of the survey's marks; made for the drawing where there is none
    std::shared_ptr<const std::vector<ReachReason>> reasons;  // parts of systems that speak against a set; null for none
    std::shared_ptr<const TourWays> tours;        // ways from set to set; null for none
    std::vector<QRectF> covered;                  // parts of the view that something stands on: no label is put there
    friend bool operator==(const MapShow&, const MapShow&) = default;
};

// Where a set's flag came to lie, so that it can be clicked on. `set` indexes Plan::sets.
struct FlagPlace {
    std::size_t set = 0;
    QRectF cloth;
};

void paint_map(QPainter& painter, const FieldSurvey& field, const Plan* plan, const MapStyle& style,
               const ViewTransform& view, const MapShow& show, const std::stop_token& stop = {},
               std::vector<FlagPlace>* flags = nullptr);

// Everything that `paint_map` would want to show: marks, boundary, keep-clear areas; the track where there is no mark.
[[nodiscard]] GroundBox ground_box(const FieldSurvey& field);

// A whole picture with scale bar and north arrow, for a report or the batch program. Needs a QGuiApplication (the offscreen
// platform will do). `metric` chooses metres over feet for the scale bar.
[[nodiscard]] QImage map_picture(const FieldSurvey& field, const Plan* plan, QSize size, const MapStyle& style, bool metric);

}  // namespace plugside
