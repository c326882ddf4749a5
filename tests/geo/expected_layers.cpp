#include "tests/geo/expected_layers.h"

#include <sys/resource.h>

#include <csignal>
#include <sstream>

#include "core/mending/answered_findings.h"
#include "core/probing/instruction.h"

namespace plugside::testing_support {

namespace {

class Expected {
public:
    explicit Expected(const LocalFrame& frame) : frame_(frame) { text_.precision(17); }

    void layer(const std::string& name) {
        layer_ = name;
        row_ = 0;
        text_ << name << "\tlayer\n";
    }
    void next() { ++row_; }
    template <typename T>
    void value(const char* column, const T& content) {
        std::ostringstream cell;
        cell.precision(17);
        cell << content;
        std::string flat = cell.str();
        for (char& c : flat)
            if (c == '\n') c = '\x1F';  // one value a line
        text_ << layer_ << '\t' << row_ << '\t' << column << '\t' << flat << '\n';
    }
    void null(const char* column) { value(column, "\\N"); }

    std::string place(LocalPoint at) const {
        const GeographicPoint place = frame_.to_geographic(at);
        std::ostringstream text;
        text.precision(17);
        text << place.longitude_degrees << ' ' << place.latitude_degrees;
        return text.str();
    }
    std::string vertices(const std::vector<LocalPoint>& line, bool closed) const {
        std::string text = "(";
        for (const LocalPoint vertex : line) text += (text.size() > 1 ? ", " : "") + place(vertex);
        if (closed) text += ", " + place(line.front());
        return text + ")";
    }
    std::string polygons(const std::vector<Polygon>& parts) const {
        std::string text = "MULTIPOLYGON (";
        for (std::size_t i = 0; i < parts.size(); ++i) {
            text += (i > 0 ? ", (" : "(") + vertices(parts[i].outer.vertices, true);
            for (const Ring& hole : parts[i].holes) text += ", " + vertices(hole.vertices, true);
            text += ")";
        }
        return text + ")";
    }
    std::string text() const { return text_.str(); }

private:
    const LocalFrame& frame_;
    std::ostringstream text_;
    std::string layer_;
    int row_ = 0;
};

void expect_record(Expected& expected, const Mound& mound, const LocalFrame& frame) {
    if (!mound.recorded) {
        for (const char* column : {"recorded_lon", "recorded_lat", "recorded_fan_bearing", "recorded_kind",
                                   "recorded_freshness", "recorded_position_sd_m", "recorded_set_aside_because"})
            expected.null(column);
        return;
    }
    const RecordedMark& recorded = *mound.recorded;
    expected.value("recorded_lon", frame.to_geographic(recorded.plug).longitude_degrees);
    expected.value("recorded_lat", frame.to_geographic(recorded.plug).latitude_degrees);
    recorded.fan
        ? expected.value("recorded_fan_bearing",
                         Bearing::degrees(recorded.fan->degrees() - frame.convergence_degrees(recorded.plug)).degrees())
        : expected.null("recorded_fan_bearing");
    expected.value("recorded_kind", to_text(recorded.kind));
    expected.value("recorded_freshness", to_text(recorded.freshness));
    expected.value("recorded_position_sd_m", recorded.position_sd.value());
    recorded.set_aside_because ? expected.value("recorded_set_aside_because", *recorded.set_aside_because)
                               : expected.null("recorded_set_aside_because");
}

void expect_mounds(Expected& expected, const FieldSurvey& field, const Plan& plan) {
    expected.layer("mounds");
    for (std::size_t i = 0; i < field.survey.mounds.size(); ++i, expected.next()) {
        const Mound& mound = field.survey.mounds[i];
        const MoundInPlan& in_plan = plan.mounds[i];
        const bool used = !in_plan.not_used_because;
        expected.value("geom", "POINT (" + expected.place(mound.plug) + ")");
        expected.value("mound_id", mound.name);
        in_plan.system ? expected.value("system_id", *in_plan.system + 1) : expected.null("system_id");
        expected.value("kind", to_text(mound.kind));
        expected.value("freshness", to_text(mound.freshness));
        mound.fan
            ? expected.value("fan_bearing",
                             Bearing::degrees(mound.fan->degrees() - field.frame.convergence_degrees(mound.plug)).degrees())
            : expected.null("fan_bearing");
        expected.value("walk_id", field.survey.walks[mound.walk].id);
        expected.value("position_sd_m", mound.position_sd.value());
        if (mound.shared_sd) expected.value("shared_sd_m", mound.shared_sd->value());
        mound.note.empty() ? expected.null("note") : expected.value("note", mound.note);
        expected.value("used", used ? 1 : 0);
        used ? expected.null("not_used_because") : expected.value("not_used_because", *in_plan.not_used_because);
        mound.picture ? expected.value("picture", *mound.picture) : expected.null("picture");
        const ReceiverFacts receiver = mound.receiver.value_or(ReceiverFacts{});
        receiver.hdop ? expected.value("hdop", *receiver.hdop) : expected.null("hdop");
        receiver.satellites ? expected.value("satellites", *receiver.satellites) : expected.null("satellites");
        receiver.fix.empty() ? expected.null("fix") : expected.value("fix", receiver.fix);
        receiver.accuracy_m ? expected.value("accuracy_m", *receiver.accuracy_m) : expected.null("accuracy_m");
        const GeographicPoint take_off = field.frame.to_geographic(in_plan.take_off);
        used ? expected.value("take_off_lon", take_off.longitude_degrees) : expected.null("take_off_lon");
        used ? expected.value("take_off_lat", take_off.latitude_degrees) : expected.null("take_off_lat");
        used ? expected.value("take_off_sd_along_m", in_plan.take_off_sd_along.value())
             : expected.null("take_off_sd_along_m");
        used ? expected.value("take_off_sd_across_m", in_plan.take_off_sd_across.value())
             : expected.null("take_off_sd_across_m");
        used ? expected.value("belongs", in_plan.belongs.value()) : expected.null("belongs");
        mound.set_aside_because ? expected.value("set_aside_because", *mound.set_aside_because)
                                : expected.null("set_aside_because");
        expect_record(expected, mound, field.frame);
    }
}

// Times as ISO 8601 in the file: the first mound's and, to the millisecond, the second's.
void expect_times(Expected& expected) {
    expected.layer("mounds");
    expected.value("time", "2026-03-01T09:00:12.345Z");
    expected.next();
    expected.value("time", "2026-03-01T09:00:59.999Z");
    expected.next();
    expected.null("time");
}

void expect_systems_and_runs(Expected& expected, const FieldSurvey& field, const Plan& plan) {
    expected.layer("burrow_systems");
    for (std::size_t i = 0; i < plan.systems.size(); ++i, expected.next()) {
        const BurrowSystem& system = plan.systems[i];
        expected.value("geom", expected.polygons(system.outline.parts));
        expected.value("system_id", i + 1);
        expected.value("letter", system.letter);
        expected.value("mound_count", system.mounds.size());
        expected.value("probability_single", system.single.value());
        expected.value("area_m2", i == 0 ? 14.0 * 8.0 : 4.0 * 6.0 + 3.0 * 6.0);
        expected.value("run_length_m", system.run_length.value());
        expected.value("freshest", to_text(system.freshest));
    }
    expected.layer("main_runs");
    for (std::size_t i = 0; i < plan.runs.size(); ++i, expected.next()) {
        const MainRun& run = plan.runs[i];
        expected.value("geom", "LINESTRING " + expected.vertices(run.line.vertices, false));
        expected.value("run_id", i + 1);
        expected.value("system_id", run.system + 1);
        expected.value("from_mound", field.survey.mounds[run.from_mound].name);
        expected.value("to_mound", field.survey.mounds[run.to_mound].name);
        expected.value("probability", run.probability.value());
        expected.value("sd_m", i == 0 ? 0.45 : 0.3);
    }
}

void expect_probes(Expected& expected, const FieldSurvey& field, const Plan& plan, LengthUnits units) {
    expected.layer("probe_points");
    for (std::size_t i = 0; i < plan.probes.size(); ++i, expected.next()) {
        const ProbeSite& site = plan.probes[i];
        expected.value("geom", "POINT (" + expected.place(site.middle) + ")");
        expected.value("probe_id", i + 1);
        expected.value("system_id", site.system + 1);
        expected.value("kind", site.to_mound ? "between mounds" : "plug side");
        expected.value("from_mound", field.survey.mounds[site.from_mound].name);
        site.to_mound ? expected.value("to_mound", field.survey.mounds[*site.to_mound].name) : expected.null("to_mound");
        expected.value("along_m", site.ladder.along.value());
        expected.value("across_m", site.ladder.across.value());
        expected.value("ladder_angle_deg", site.ladder.angle_degrees);
        expected.value("ladder_half_m", site.ladder.half_length.value());
        expected.value("step_m", site.ladder.step.value());
        expected.value("hit_probability", site.hit.value());
        expected.value("expected_rungs", site.expected_rungs);
        expected.value("instruction", instruction(site, field.survey, units));
        const LocalPoint origin = field.survey.mounds[site.from_mound].plug;
        expected.value("axis_bearing",
                       Bearing::degrees(site.axis.degrees() - field.frame.convergence_degrees(origin)).degrees());
    }
}

void expect_sets(Expected& expected, const Plan& plan) {
    expected.layer("set_points");
    const char* const cautions[] = {"decides, utilities", "decides", "", "decides, utilities"};
    for (std::size_t i = 0; i < plan.sets.size(); ++i, expected.next()) {
        const SetPoint& set = plan.sets[i];
        const ProbeSite& site = plan.probes[set.probe];
        expected.value("geom", "POINT (" + expected.place(site.middle) + ")");
        expected.value("set_id", i + 1);
        expected.value("probe_id", set.probe + 1);
        expected.value("system_id", site.system + 1);
        expected.value("method", set.method);
        expected.value("rank", set.rank);
        expected.value("visit_order", set.visit_order);
        expected.value("decision", to_text(set.choice));
        expected.value("cautions", cautions[i]);
        expected.value("probe_kind", site.to_mound ? "between mounds" : "plug side");
        expected.value("from_mound", site.key.from_mound);
        site.to_mound ? expected.value("to_mound", site.key.to_mound) : expected.null("to_mound");
        expected.value("along_m", site.ladder.along.value());
        expected.value("across_m", site.ladder.across.value());
    }
}

void expect_walks(Expected& expected, const FieldSurvey& field) {
    const auto& segments = field.survey.walks[0].segments;
    const char* const times[] = {R"(["2026-03-01T09:00:00Z","2026-03-01T09:00:07.250Z",null])",
                                 R"(["2026-03-01T09:01:30Z"])", "[null,null,null]"};
    expected.layer("walk_tracks");
    for (std::size_t i = 0; i < 3; ++i, expected.next()) {
        std::vector<LocalPoint> line;
        for (const TrackPoint& point : segments[i]) line.push_back(point.at);
        if (line.size() == 1) line.push_back(line.front());
        expected.value("geom", "MULTILINESTRING (" + expected.vertices(line, false) + ")");
        expected.value("walk_id", "walk 1");
        expected.value("source", "morning.gpx");
        expected.value("segment", i + 1);
        expected.value("times", times[i]);
        expected.value("bearings_from", "magnetic");
    }
    expected.null("geom");
    expected.value("walk_id", "walk 2");
    expected.value("source", "afternoon.gpx");
    expected.null("segment");
    expected.null("times");
    expected.null("bearings_from");
}

void expect_ground(Expected& expected, const FieldSurvey& field, const Plan& plan) {
    const Ground& ground = field.survey.ground;
    expected.layer("field_boundaries");
    expected.value("geom", expected.polygons(ground.boundary.parts));
    expected.value("area_m2", 150.0 * 140.0 - 100.0 + 400.0);
    expected.layer("barriers");
    for (const Barrier& barrier : ground.barriers) {
        expected.value("geom", "MULTILINESTRING (" + expected.vertices(barrier.line.vertices, false) + ")");
        barrier.name.empty() ? expected.null("name") : expected.value("name", barrier.name);
        expected.next();
    }
    expected.layer("keep_clear_areas");
    for (const KeepClearArea& area : ground.keep_clear) {
        expected.value("geom", expected.polygons({area.area}));
        area.name.empty() ? expected.null("name") : expected.value("name", area.name);
        area.reason.empty() ? expected.null("reason") : expected.value("reason", area.reason);
        expected.value("kind", to_text(area.kind));
        expected.next();
    }
    const auto expect_gaps = [&](const char* layer, const std::vector<Gap>& gaps) {
        expected.layer(layer);
        for (const Gap& gap : gaps) {
            expected.value("geom", "POINT (" + expected.place(gap.at) + ")");
            gap.name.empty() ? expected.null("name") : expected.value("name", gap.name);
            expected.value("width_m", gap.width.value());
            expected.next();
        }
    };
    expect_gaps("crossings", ground.crossings);
    expect_gaps("gates", ground.gates);
    expected.layer("untreated_areas");
    expected.value("geom", expected.polygons(ground.untreated.parts));
    expected.value("area_m2", 20.0 * 15.0);
    expected.layer("unwalked_areas");
    const double areas[] = {50.0 * 40.0, 400.0};
    for (std::size_t i = 0; i < plan.unwalked.parts.size(); ++i, expected.next()) {
        expected.value("geom", expected.polygons({plan.unwalked.parts[i]}));
        expected.value("area_m2", areas[i]);
    }
}

void expect_tables(Expected& expected) {
    expected.layer("rounds");
    expected.layer("set_decisions");
    const char* const rows[][5] = {{"plug side", "M001", "\\N", "kept", "\\N"},
                                   {"between mounds", "M001", "M002", "moved", "2.5"},
                                   {"plug side", "M002", "\\N", "dropped", "\\N"},
                                   {"plug side", "M005", "\\N", "kept", "\\N"}};
    for (const auto& row : rows) {
        const char* const columns[] = {"probe_kind", "from_mound", "to_mound", "decision", "moved_along_m"};
        for (std::size_t i = 0; i < 5; ++i) expected.value(columns[i], row[i]);
        expected.value("moved_across_m", std::string(row[3]) == "moved" ? "-0.3" : "\\N");
        expected.next();
    }
    expected.layer("system_alternatives");
    const char* const alternatives[][7] = {
        {"one animal", "1", "2", "\\N", "0.3125", "\\N", "A and B are one animal's in 31 of 100"},
        {"two animals", "1", "\\N", "M002, Märk <3> & \"four\"", "0.25", "\\N",
         "A is two animals' in 25 of 100: M002 and Märk <3> & \"four\" apart"},
        {"doubtful mound", "2", "1", "M004", "0.125", "0.375", "M004 hangs together with B in 38 of 100, with A in 13"},
        {"doubtful mound", "2", "\\N", "M005", "\\N", "0.4375",
         "M005 hangs together with B in 44 of 100, with no other system more than now and then"}};
    for (const auto& row : alternatives) {
        const char* const columns[] = {"kind", "system_id", "other_system_id", "mounds", "probability", "probability_kept",
                                       "words"};
        for (std::size_t i = 0; i < 7; ++i) expected.value(columns[i], row[i]);
        expected.next();
    }
    expected.layer("survey_summary");
    expected.value("field_name", "Upper hay piece");
    expected.value("systems_expected", 2.25);
    expected.value("systems_most_likely", 2);
    expected.value("systems_low", 1);
    expected.value("systems_high", 4);
    expected.value("interval", 0.9);
    expected.value("area_walked_m2", 8123.5);
    expected.value("area_field_m2", 21300.0);
    expected.value("mounds_recorded", 9);
    expected.value("mounds_used", 5);
    expected.value("link_length_m", 5.5);
    expected.value("mounds_per_system", 2.5);
    expected.value("notices", "Four marks are other animals' signs.\nOne mound has no fan.");
    expected.value("survey_revision", 7);
    expected.value("plugside_version", PLUGSIDE_VERSION);
}

std::string json_place(LocalPoint at, const LocalFrame& frame) {
    std::ostringstream text;
    text.precision(17);
    const GeographicPoint place = frame.to_geographic(at);
    text << "[" << place.longitude_degrees << ", " << place.latitude_degrees << "]";
    return text.str();
}

void expect_answers(Expected& expected, const FieldSurvey& field) {
    expected.layer("finding_answers");
    const LocalFrame& frame = field.frame;
    const auto true_degrees = [&](double plane, LocalPoint at) {
        std::ostringstream text;
        text.precision(17);
        text << plane - frame.convergence_degrees(at);
        return text.str();
    };
    const std::string squirrel = true_degrees(200.25, field.survey.mounds[6].plug);
    const std::string none = "\\N";
    // finding_id, answer, mend, marks, to_places, fan_bearing, turn_degrees, sign, freshness, because, position_sd_m; what begins
    // with "json:" is compared as another program reads it
    const std::vector<std::vector<std::string>> rows = {
        {"double mark: M002, M001", "refused", "one mound", R"(json:["M001", "M002"])",
         "json:[" + json_place({14.5, -39.25}, frame) + "]", none, "0", none, none, none, "0.375"},
        {"own move: other mole", "accepted", "move", R"(json:["other mole", "no such mark"])",
         "json:[" + json_place({-19.5, 35.25}, frame) + "," + json_place({1.0, 2.0}, frame) + "]", none, "0", none, none,
         none, none},
        {"own fan: other ground squirrel", "accepted", "fan", R"(json:["other ground squirrel"])", none, squirrel, "0", none,
         none, none, none},
        {"compass offset: walk 1", "accepted", "turn fans", R"(json:["M001", "M002", "M005"])", none, none, "-12.625", none,
         none, none, none},
        {"own fan: M002", "accepted", "fan", R"(json:["M002"])", none, none, "0", none, none, none, none},
        {"own sign: other other", "accepted", "sign", R"(json:["other other"])", none, none, "0", "mole", none, none, none},
        {"own freshness: other vole", "accepted", "freshness", R"(json:["other vole"])", none, none, "0", none, "fresh",
         none, none},
        {"own set aside: other vole", "accepted", "set aside", R"(json:["other vole"])", none, none, "0", none, none,
         "marked by \"mistake\",\nas it seems", none},
        {"lost sign: M005", "accepted", "take back", R"(json:["M005"])", none, none, "0", none, none, none, none},
        {"far from track: M004", "refused", "set aside", "json:[]", none, none, "0", none, none, none, none}};
    const char* const columns[] = {"finding_id",   "answer", "mend",      "marks",   "to_places",    "fan_bearing",
                                   "turn_degrees", "sign",   "freshness", "because", "position_sd_m"};
    for (const auto& row : rows) {
        for (std::size_t i = 0; i < row.size(); ++i) expected.value(columns[i], row[i]);
        expected.next();
    }
}

void expect_facts(Expected& expected, const FieldSurvey& field) {
    expected.layer("known_facts");
    const std::string line =
        "json:[" + json_place({5.0, 5.0}, field.frame) + "," + json_place({25.0, 5.5}, field.frame) + "]";
    const std::string rows[][6] = {
        {"different systems", R"(json:["M001", "M004"])", "\\N", "\\N", "\\N", "\\N"},
        {"probe nothing", R"(json:["M001", "M002"])", "\\N", "2.5", "the \"foreman\"", "1772357400"},
        {"no run across", "\\N", line, "\\N", "\\N", "\\N"}};
    for (const auto& row : rows) {
        const char* const columns[] = {"kind", "marks", "line", "log_strength", "said_by", "said_at"};
        for (std::size_t i = 0; i < 6; ++i) expected.value(columns[i], row[i]);
        expected.next();
    }
}

void expect_note_rules(Expected& expected) {
    expected.layer("note_rules");
    const char* const rows[][4] = {
        {"walk 1", "gr", "fresh", "\\N"}, {"\\N", "xyzzy \"b\"", "\\N", "\\N"}, {"walk 2", "bk", "crushed", "M004"}};
    for (const auto& row : rows) {
        const char* const columns[] = {"walk_id", "words", "means", "mark"};
        for (std::size_t i = 0; i < 4; ++i) expected.value(columns[i], row[i]);
        expected.next();
    }
}

// Private ones (who signed, why, whose ticket) are not there.
void expect_work(Expected& expected) {
    expected.layer("work_order");
    const char* const rows[][2] = {{"method", "paired-traps"},
                                   {"set-method.1.probe", "between mounds"},
                                   {"set-method.1.from-mound", "M001"},
                                   {"set-method.1.to-mound", "M002"},
                                   {"set-method.1.method", "trap-in-lateral"},
                                   {"signed.1.caution", "kill-trap-law"},
                                   {"signed.1.at", "2026-03-01T09:30:00.000Z"},
                                   {"budget.traps", "12"}};
    for (const auto& row : rows) {
        expected.value("name", row[0]);
        expected.value("value", row[1]);
        expected.next();
    }
}

// The finding of coordinates as it was told; what core judges besides is asked of core.
void expect_findings(Expected& expected, const FieldSurvey& field) {
    expected.layer("findings");
    expected.value("geom", "POINT (" + expected.place({66.0, 22.0}) + ")");
    const char* const lost[][2] = {
        {"finding_id", "lost sign: M005"},
        {"kind", "lost sign"},
        {"marks", R"(json:["M005"])"},
        {"found", "Of M005 of afternoon.gpx the sign of the longitude (east or west) looks lost."},
        {"why", "It lies in the field with the sign turned."},
        {"proposed", "Take it back."},
        {"probability", "0.875"},
        {"answer", "accepted"}};
    for (const auto& [column, value] : lost) expected.value(column, value);
    const auto findings = *answered_findings(field.survey, field.of_reading);
    for (std::size_t i = 1; i < findings.size(); ++i) {
        expected.next();
        const auto& [finding, answer] = findings[i];
        expected.value("geom", "POINT (" + expected.place(finding.at) + ")");
        expected.value("finding_id", finding.id);
        expected.value("kind", to_text(finding.kind));
        expected.value("found", finding.found);
        finding.why.empty() ? expected.null("why") : expected.value("why", finding.why);
        finding.proposed.empty() ? expected.null("proposed") : expected.value("proposed", finding.proposed);
        expected.value("probability", finding.sure.value());
        answer ? expected.value("answer", to_text(*answer)) : expected.null("answer");
    }
}

}  // namespace

std::string expected_layers(const FieldSurvey& field, const Plan& plan, LengthUnits units) {
    Expected expected(field.frame);
    expect_mounds(expected, field, plan);
    expect_times(expected);
    expect_systems_and_runs(expected, field, plan);
    expect_probes(expected, field, plan, units);
    expect_sets(expected, plan);
    expect_walks(expected, field);
    expect_ground(expected, field, plan);
    expect_tables(expected);
    expect_answers(expected, field);
    expect_facts(expected, field);
    expect_note_rules(expected);
    expect_work(expected);
    expect_findings(expected, field);
    return expected.text();
}

void limit_file_size(unsigned long bytes) {
    std::signal(SIGXFSZ, SIG_IGN);
    const rlimit limit{bytes, bytes};
    setrlimit(RLIMIT_FSIZE, &limit);
}

}  // namespace plugside::testing_support
