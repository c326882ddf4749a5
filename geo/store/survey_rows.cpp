#include "geo/store/survey_rows.h"

#include <set>
#include <utility>

#include "core/survey/refusal.h"
#include "core/words/words.h"

namespace plugside {

namespace {

std::optional<GroundKind> ground_kind_from_text(const std::string& text) {
    for (const auto kind : {GroundKind::boundary, GroundKind::barrier, GroundKind::crossing, GroundKind::gate,
                            GroundKind::keep_clear, GroundKind::untreated})
        if (text == to_text(kind)) return kind;
    return std::nullopt;
}

std::optional<MentionCategory> mention_from_text(const std::string& text) {
    for (const auto category :
         {MentionCategory::people, MentionCategory::pets, MentionCategory::stock, MentionCategory::wildlife})
        if (text == to_text(category)) return category;
    return std::nullopt;
}

void recorded_cells(Cells& cells, RecordedMark& mark) {
    cells.place("recorded_east_m", "recorded_north_m", mark.plug);
    cells.bearing("recorded_fan", mark.fan);
    cells.word("recorded_kind", mark.kind, &to_text, &sign_kind_from_text);
    cells.word("recorded_freshness", mark.freshness, &to_text, &freshness_from_text);
    cells.length_above_0("recorded_position_sd_m", mark.position_sd);
    cells.text("recorded_set_aside_because", mark.set_aside_because);
}

void receiver_cells(Cells& cells, ReceiverFacts& receiver) {
    cells.number("hdop", receiver.hdop);
    cells.whole("satellites", receiver.satellites);
    cells.text("fix", receiver.fix);
    cells.number("accuracy_m", receiver.accuracy_m);
}

// A category and its words, in turn.
void mention_cells(Cells& cells, std::vector<NoteMention>& mentions) {
    Texts texts;
    for (const NoteMention& mention : mentions) texts.insert(texts.end(), {to_text(mention.category), mention.words});
    cells.list("mentions", texts);
    if (!cells.reading()) return;
    mentions.clear();
    for (std::size_t i = 0; i + 1 < texts.size(); i += 2) {
        const auto category = mention_from_text(texts[i]);
        if (category) mentions.push_back({*category, texts[i + 1]});
    }
    if (2 * mentions.size() != texts.size())
        cells.blame("mentions", Words::later("a list that is none of mentions"), Words::later("categories and words"));
}

void mend_cells(Cells& cells, Mend& mend) {
    cells.word("mend_kind", mend.kind, &to_text, &mend_kind_from_text);
    cells.list("mend_marks", mend.marks);
    cells.list("mend_to", mend.to);
    cells.bearing("mend_fan", mend.fan);
    cells.number("mend_turn_degrees", mend.turn_degrees);
    cells.word("mend_sign", mend.sign, &to_text, &sign_kind_from_text);
    cells.word("mend_freshness", mend.freshness, &to_text, &freshness_from_text);
    cells.text("mend_because", mend.because);
    cells.length_above_0("mend_position_sd_m", mend.position_sd);
}

}  // namespace

void cells_of(Cells& cells, FieldRow& row) {
    cells.text("name", row.name);
    cells.revision("revision", row.revision);
    cells.number("centre_longitude", row.centre.longitude_degrees, -180.0, 180.0);
    cells.number("centre_latitude", row.centre.latitude_degrees, -90.0, 90.0);
}

void cells_of(Cells& cells, WalkRow& row) {
    cells.text("id", row.id);
    cells.text("source", row.source);
    cells.word("bearings_from", row.bearings_from, &to_text, &north_from_text);
}

void cells_of(Cells& cells, SegmentRow& row) {
    cells.whole("walk", row.walk);
    cells.list("fixes", row.fixes);
}

void cells_of(Cells& cells, Mound& row) {
    cells.text("name", row.name);
    cells.whole("walk", row.walk);
    cells.place("east_m", "north_m", row.plug);
    cells.bearing("fan", row.fan);
    cells.word("kind", row.kind, &to_text, &sign_kind_from_text);
    cells.word("freshness", row.freshness, &to_text, &freshness_from_text);
    cells.length_above_0("position_sd_m", row.position_sd);
    cells.length_above_0("shared_sd_m", row.shared_sd);
    cells.text("note", row.note);
    cells.time("time", row.time);
    cells.text("set_aside_because", row.set_aside_because);
    cells.part("recorded", row.recorded, recorded_cells);
    cells.text("picture", row.picture);
    cells.part("receiver", row.receiver, receiver_cells);
    mention_cells(cells, row.mentions);
}

void cells_of(Cells& cells, ShapeRow& row) {
    cells.word("kind", row.kind, &to_text, &ground_kind_from_text);
    cells.text("name", row.name);
    cells.text("reason", row.reason);
    cells.word("stands_there", row.stands_there, &to_text, &keep_clear_kind_from_text);
    cells.length_above_0("width_m", row.width);
    cells.list("rings", row.rings);
}

void cells_of(Cells& cells, SetDecision& row) {
    cells.word("probe", row.probe.kind, &to_text, &probe_kind_from_text);
    cells.text("from_mound", row.probe.from_mound);
    cells.text("to_mound", row.probe.to_mound);
    cells.word("choice", row.choice, &to_text, &set_choice_from_text);
    cells.part("moved", row.moved_to, [](Cells& inside, LadderPlace& place) {
        inside.length("along_m", place.along);
        inside.length("across_m", place.across);
    });
}

void cells_of(Cells& cells, KnownFact& row) {
    cells.word("kind", row.kind, &to_text, &fact_kind_from_text);
    cells.list("marks", row.marks);
    std::optional<Places> line;
    if (row.line) line = row.line->vertices;
    cells.list("line", line);
    row.line = line ? std::optional(Polyline{std::move(*line)}) : std::nullopt;
    cells.number("log_strength", row.log_strength);
    cells.text("said_by", row.said_by);
    cells.time("said_at", row.said_at);
}

void cells_of(Cells& cells, MendAnswer& row) {
    cells.text("finding", row.finding);
    cells.word("answer", row.answer, &to_text, &answer_from_text);
    mend_cells(cells, row.mend);
}

void cells_of(Cells& cells, NoteRule& row) {
    cells.text("walk", row.walk);
    cells.text("words", row.words);
    cells.text("means", row.means);
    cells.text("mark", row.mark);
}

void cells_of(Cells& cells, WorkRow& row) {
    cells.text("name", row.name);
    cells.text("value", row.value);
}

void cells_of(Cells& cells, ReadFinding& row) {
    cells.text("file", row.file);
    cells.text("place", row.place);
    cells.text("sentence", row.sentence);
}

void cells_of(Cells& cells, Finding& row) {
    cells.text("id", row.id);
    cells.word("kind", row.kind, &to_text, &finding_kind_from_text);
    cells.list("marks", row.marks);
    cells.place("east_m", "north_m", row.at);
    cells.text("found", row.found);
    cells.text("why", row.why);
    cells.text("proposed", row.proposed);
    cells.part("mend", row.mend, mend_cells);
    cells.chance("sure", row.sure);
}

FieldRow field_row(const FieldSurvey& field) { return {field.field_name, field.survey.revision, field.frame.centre()}; }

std::vector<WalkRow> walk_rows(const Survey& survey) {
    std::vector<WalkRow> rows;
    for (const Walk& walk : survey.walks) rows.push_back({walk.id, walk.source, walk.bearings_from});
    return rows;
}

std::vector<SegmentRow> segment_rows(const Survey& survey) {
    std::vector<SegmentRow> rows;
    for (std::size_t w = 0; w < survey.walks.size(); ++w)
        for (const TrackSegment& segment : survey.walks[w].segments) rows.push_back({w, segment});
    return rows;
}

namespace {

Rings rings_of(const Polygon& area) {
    Rings rings{area.outer.vertices};
    for (const Ring& hole : area.holes) rings.push_back(hole.vertices);
    return rings;
}

Polygon area_of(Rings rings) {
    Polygon area;
    area.outer.vertices = std::move(rings.front());
    for (std::size_t i = 1; i < rings.size(); ++i) area.holes.push_back({std::move(rings[i])});
    return area;
}

void add_parts(std::vector<ShapeRow>& rows, GroundKind kind, const MultiPolygon& areas) {
    for (const Polygon& part : areas.parts) {
        rows.push_back({});
        rows.back().kind = kind;
        rows.back().rings = rings_of(part);
    }
}

void add_gaps(std::vector<ShapeRow>& rows, GroundKind kind, const std::vector<Gap>& gaps) {
    for (const Gap& gap : gaps) rows.push_back({kind, gap.name, "", KeepClearKind::other, gap.width, {{gap.at}}});
}

}  // namespace

std::vector<ShapeRow> shape_rows(const Ground& ground) {
    std::vector<ShapeRow> rows;
    add_parts(rows, GroundKind::boundary, ground.boundary);
    for (const Barrier& barrier : ground.barriers)
        rows.push_back(
            {GroundKind::barrier, barrier.name, "", KeepClearKind::other, Metres::of(1.0), {barrier.line.vertices}});
    add_gaps(rows, GroundKind::crossing, ground.crossings);
    add_gaps(rows, GroundKind::gate, ground.gates);
    for (const KeepClearArea& area : ground.keep_clear)
        rows.push_back({GroundKind::keep_clear, area.name, area.reason, area.kind, Metres::of(1.0), rings_of(area.area)});
    add_parts(rows, GroundKind::untreated, ground.untreated);
    return rows;
}

tl::expected<std::vector<Walk>, std::string> walks_of(std::vector<WalkRow> walks, std::vector<SegmentRow> segments) {
    std::vector<Walk> result;
    for (WalkRow& walk : walks) result.push_back({std::move(walk.id), std::move(walk.source), {}, walk.bearings_from});
    std::size_t last = 0;
    for (SegmentRow& segment : segments) {
        if (segment.walk >= result.size() || segment.walk < last)
            return tl::unexpected(
                Words::tell("a stretch of track of walk {1}, which is not its turn", {std::to_string(segment.walk)}));
        last = segment.walk;
        result[segment.walk].segments.push_back(std::move(segment.fixes));
    }
    return result;
}

tl::expected<Ground, std::string> ground_of(std::vector<ShapeRow> shapes) {
    Ground ground;
    for (ShapeRow& shape : shapes) {
        const bool one_place = shape.rings.size() == 1 && shape.rings.front().size() == 1;
        if (shape.rings.empty() || (is_place(shape.kind) && !one_place) ||
            (shape.kind == GroundKind::barrier && shape.rings.size() != 1))
            return tl::unexpected(Words::tell("a {1} whose corners are none", {shown(shape.kind)}));
        Gap gap{shape.name, shape.rings.front().empty() ? LocalPoint{} : shape.rings.front().front(), shape.width};
        switch (shape.kind) {
            case GroundKind::boundary: ground.boundary.parts.push_back(area_of(std::move(shape.rings))); break;
            case GroundKind::barrier:
                ground.barriers.push_back({std::move(shape.name), Polyline{std::move(shape.rings.front())}});
                break;
            case GroundKind::crossing: ground.crossings.push_back(std::move(gap)); break;
            case GroundKind::gate: ground.gates.push_back(std::move(gap)); break;
            case GroundKind::keep_clear:
                ground.keep_clear.push_back(
                    {std::move(shape.name), std::move(shape.reason), shape.stands_there, area_of(std::move(shape.rings))});
                break;
            case GroundKind::untreated: ground.untreated.parts.push_back(area_of(std::move(shape.rings))); break;
        }
    }
    return ground;
}

tl::expected<WorkOrder, std::string> work_of(const std::vector<WorkRow>& rows) {
    WorkReading reading = work_order_of(rows);
    if (!reading.problems.empty()) return tl::unexpected(sentence(reading.problems.front()));
    return std::move(reading.work);
}

std::optional<std::string> what_does_not_fit(const Survey& survey) {
    std::set<std::string> names;
    for (const Mound& mound : survey.mounds) {
        if (mound.walk >= survey.walks.size())
            return Words::tell("the mark {1} of no walk", {quoted_for_display(mound.name)});
        if (!names.insert(mound.name).second)
            return Words::tell("two marks of the name {1}", {quoted_for_display(mound.name)});
    }
    std::set<ProbeKey> decided;
    for (const SetDecision& decision : survey.decisions)
        if (!decided.insert(decision.probe).second)
            return Words::tell("two decisions on one set at {1}", {quoted_for_display(decision.probe.from_mound)});
    std::set<std::string> answered;
    for (const MendAnswer& answer : survey.answers)
        if (!answered.insert(answer.finding).second)
            return Words::tell("two answers to {1}", {quoted_for_display(answer.finding)});
    for (const KnownFact& fact : survey.known)
        if (const auto missing = what_is_missing(fact)) return Words::tell("a fact that is none ({1})", {*missing});
    return std::nullopt;
}

}  // namespace plugside
