// The rows of a project file that hold the field: what stands in which column, and how a survey becomes rows and comes back.
//
// One table each for walks, stretches of track, mounds, shapes of the ground, decisions, facts, answers, note rules and both kinds of
// findings; the work order is a row a name and value (core/sets/work_order_rows.h). `number` is the place in the list. Internal to geo/store.
#pragma once

#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/sets/work_order_rows.h"
#include "core/survey/ground_shapes.h"
#include "core/survey/survey.h"
#include "geo/read/field_survey.h"
#include "geo/store/cells.h"

namespace plugside {

struct FieldRow {
    std::string name;
    std::uint64_t revision = 0;
    GeographicPoint centre;
    friend bool operator==(const FieldRow&, const FieldRow&) = default;
};

struct WalkRow {
    std::string id;
    std::string source;
    North bearings_from = North::not_told;
    friend bool operator==(const WalkRow&, const WalkRow&) = default;
};

struct SegmentRow {
    std::size_t walk = 0;
    TrackSegment fixes;
    friend bool operator==(const SegmentRow&, const SegmentRow&) = default;
};

struct ShapeRow {
    GroundKind kind = GroundKind::boundary;
    std::string name;
    std::string reason;
    KeepClearKind stands_there = KeepClearKind::other;
    Metres width = Metres::of(1.0);
    Rings rings;
    friend bool operator==(const ShapeRow&, const ShapeRow&) = default;
};

void cells_of(Cells& cells, FieldRow& row);
void cells_of(Cells& cells, WalkRow& row);
void cells_of(Cells& cells, SegmentRow& row);
void cells_of(Cells& cells, Mound& row);
void cells_of(Cells& cells, ShapeRow& row);
void cells_of(Cells& cells, SetDecision& row);
void cells_of(Cells& cells, KnownFact& row);
void cells_of(Cells& cells, MendAnswer& row);
void cells_of(Cells& cells, NoteRule& row);
void cells_of(Cells& cells, WorkRow& row);
void cells_of(Cells& cells, ReadFinding& row);
void cells_of(Cells& cells, Finding& row);

[[nodiscard]] FieldRow field_row(const FieldSurvey& field);
[[nodiscard]] std::vector<WalkRow> walk_rows(const Survey& survey);
[[nodiscard]] std::vector<SegmentRow> segment_rows(const Survey& survey);
[[nodiscard]] std::vector<ShapeRow> shape_rows(const Ground& ground);

// The walks with their stretches; a sentence's found and expected where a stretch belongs to no walk.
[[nodiscard]] tl::expected<std::vector<Walk>, std::string> walks_of(std::vector<WalkRow> walks,
                                                                    std::vector<SegmentRow> segments);
[[nodiscard]] tl::expected<Ground, std::string> ground_of(std::vector<ShapeRow> shapes);
[[nodiscard]] tl::expected<WorkOrder, std::string> work_of(const std::vector<WorkRow>& rows);
// What is wrong with a survey as a whole: a mark's walk that is not there, a name used twice, ...; nothing if all is well.
[[nodiscard]] std::optional<std::string> what_does_not_fit(const Survey& survey);

}  // namespace plugside
