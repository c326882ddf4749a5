// What a person said to findings, on its way out into a GeoPackage and back.
#include "geo/write/answer_layers.h"

#include <gtest/gtest.h>
#include <sqlite3.h>

#include <random>

#include "core/plan/make_plan.h"
#include "geo/read/field_reader.h"
#include "geo/read/note_corrections.h"
#include "geo/write/geopackage_layers.h"
#include "geo/write/survey_file.h"
#include "tests/geo/example_field.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

// Planes differ by the survey's middle: a fan told for many marks is taken at the first.
constexpr double fan_tolerance_degrees = 1e-6;

FieldSurvey read_back(const std::filesystem::path& file) {
    auto field = read_field({file});
    EXPECT_TRUE(field.has_value()) << (field ? "" : sentence(field.error()));
    return field.value_or(FieldSurvey{});
}

FieldSurvey out_and_back(const FieldSurvey& field) {
    const TemporaryFolder folder;
    EXPECT_EQ(
        refusal_of(write_survey(field, {*answered_findings(field.survey, field.of_reading), {}, {}}, folder / "s.gpkg")),
        "");
    return read_back(folder / "s.gpkg");
}

void expect_same_records(const FieldSurvey& a, const FieldSurvey& b) {
    expect_same_mounds(a, b, 0.05);
    for (std::size_t i = 0; i < a.survey.mounds.size() && i < b.survey.mounds.size(); ++i) {
        const Mound& one = a.survey.mounds[i];
        const Mound& other = b.survey.mounds[i];
        SCOPED_TRACE(one.name);
        EXPECT_EQ(one.position_sd, other.position_sd);
        EXPECT_EQ(one.set_aside_because, other.set_aside_because);
        ASSERT_EQ(one.recorded.has_value(), other.recorded.has_value());
        if (!one.recorded) continue;
        expect_same_place(a.frame, one.recorded->plug, b.frame, other.recorded->plug);
        ASSERT_EQ(one.recorded->fan.has_value(), other.recorded->fan.has_value());
        if (one.recorded->fan) {
            EXPECT_NEAR(turn_degrees(a.frame.true_bearing(*one.recorded->fan, one.recorded->plug),
                                     b.frame.true_bearing(*other.recorded->fan, other.recorded->plug)),
                        0.0, fan_tolerance_degrees);
        }
        EXPECT_EQ(one.recorded->kind, other.recorded->kind);
        EXPECT_EQ(one.recorded->freshness, other.recorded->freshness);
        EXPECT_EQ(one.recorded->position_sd, other.recorded->position_sd);
        EXPECT_EQ(one.recorded->set_aside_because, other.recorded->set_aside_because);
    }
}

void expect_same_answers(const FieldSurvey& a, const FieldSurvey& b) {
    ASSERT_EQ(a.survey.answers.size(), b.survey.answers.size());
    for (std::size_t i = 0; i < a.survey.answers.size(); ++i) {
        MendAnswer one = a.survey.answers[i];
        MendAnswer other = b.survey.answers[i];
        SCOPED_TRACE(one.finding);
        ASSERT_EQ(one.mend.to.size(), other.mend.to.size());
        for (std::size_t place = 0; place < one.mend.to.size(); ++place)
            expect_same_place(a.frame, one.mend.to[place], b.frame, other.mend.to[place]);
        ASSERT_EQ(one.mend.fan.has_value(), other.mend.fan.has_value());
        if (one.mend.fan) {
            EXPECT_NEAR(turn_degrees(*one.mend.fan, *other.mend.fan), 0.0, 0.05);
        }
        for (MendAnswer* answer : {&one, &other}) {
            answer->mend.to.clear();
            answer->mend.fan.reset();
        }
        EXPECT_EQ(one, other);
    }
}

class MadeUp {
public:
    explicit MadeUp(unsigned seed) : random_(seed) {}

    FieldSurvey field() {
        const std::vector<GeographicPoint> centres = {{-120.0001, 38.25}, {179.9999, -41.0}, {0.0, 0.0}, {-68.0, 52.0}};
        FieldSurvey field = example_field(centres[one_of(centres.size())]);
        field.survey.mounds.clear();
        field.survey.decisions.clear();
        field.survey.ground.boundary.parts.clear();
        for (std::size_t i = 0; i < 40; ++i) {
            Mound mound = example_mound("mark \"" + std::to_string(i) + "\", \\ \xC3\xA9\n" + std::to_string(random_() % 9),
                                        place(), i / 20);
            if (one_of(3) != 0) mound.fan = Bearing::degrees(degrees());
            mound.kind = static_cast<SignKind>(one_of(6));
            mound.freshness = static_cast<Freshness>(one_of(4));
            mound.position_sd = Metres::of(0.1 + std::abs(reach_(random_)) / 100.0);
            if (one_of(5) == 0) mound.set_aside_because = "for a reason; \"so\"";
            field.survey.mounds.push_back(mound);
            names_.push_back(mound.name);
        }
        return field;
    }

    void answer(Survey& survey) {
        for (std::size_t count = one_of(25); count > 0; --count) {
            MendAnswer answer{"", one_of(4) == 0 ? Answer::refused : Answer::accepted, mend()};
            answer.finding = answer.mend.marks.empty() || one_of(2) == 0
                                 ? finding_id(static_cast<FindingKind>(one_of(12)), answer.mend.marks)
                                 : own_mend_id(answer.mend.kind, answer.mend.marks.front());
            answer_finding(survey, answer);
        }
    }
    std::size_t one_of(std::size_t count) { return static_cast<std::size_t>(random_() % count); }

private:
    LocalPoint place() { return {reach_(random_), reach_(random_)}; }
    double degrees() { return turn_(random_); }

    Mend mend() {
        Mend mend = example_mend(static_cast<MendKind>(one_of(8)), {});
        for (std::size_t marks = one_of(5); marks > 0; --marks)
            mend.marks.push_back(one_of(9) == 0 ? "nowhere" : names_[one_of(names_.size())]);
        if (mend.kind == MendKind::move || mend.kind == MendKind::one_mound)
            for (std::size_t i = 0; i < mend.marks.size(); ++i) mend.to.push_back(place());
        if (mend.kind == MendKind::one_mound && one_of(2) == 0) mend.position_sd = Metres::of(0.25);
        if (mend.kind == MendKind::fan && one_of(3) != 0) mend.fan = Bearing::degrees(degrees());
        if (mend.kind == MendKind::turn_fans) mend.turn_degrees = degrees() - 180.0;
        if (mend.kind == MendKind::sign) mend.sign = static_cast<SignKind>(one_of(6));
        if (mend.kind == MendKind::freshness) mend.freshness = static_cast<Freshness>(one_of(4));
        if (mend.kind == MendKind::set_aside && one_of(4) != 0) mend.because = "weil: \"\xC3\xBC\"\n, ]";
        return mend;
    }

    std::mt19937_64 random_;
    std::uniform_real_distribution<double> reach_{-800.0, 800.0};
    std::uniform_real_distribution<double> turn_{0.0, 360.0};
    std::vector<std::string> names_;
};

TEST(AnswerLayers, any_survey_with_any_answers_survives_out_and_back) {
    for (unsigned seed = 1; seed <= 60; ++seed) {
        SCOPED_TRACE(seed);
        MadeUp made_up(seed);
        FieldSurvey field = made_up.field();
        made_up.answer(field.survey);
        const FieldSurvey back = out_and_back(field);
        EXPECT_EQ(back.survey.revision, field.survey.revision);
        expect_same_answers(field, back);
        expect_same_records(field, back);
    }
}

TEST(AnswerLayers, answers_taken_back_after_reading_leave_the_survey_as_it_was_before_them) {
    for (unsigned seed = 101; seed <= 140; ++seed) {
        SCOPED_TRACE(seed);
        MadeUp made_up(seed);
        const FieldSurvey before = made_up.field();
        FieldSurvey field = before;
        made_up.answer(field.survey);
        FieldSurvey back = out_and_back(field);
        while (!back.survey.answers.empty()) {
            const std::size_t one = made_up.one_of(back.survey.answers.size());
            const std::string finding = back.survey.answers[one].finding;
            take_answer_back(back.survey, finding);
            take_answer_back(field.survey, finding);
            if (made_up.one_of(4) == 0) expect_same_records(field, back);
        }
        expect_same_records(before, back);
    }
}

TEST(AnswerLayers, a_plan_handed_out_with_mended_marks_reads_back_and_again) {
    FieldSurvey field = answered_field();
    for (int round = 0; round < 2; ++round) {
        const TemporaryFolder folder;
        ASSERT_EQ(refusal_of(write_geopackage(field, *make_plan(field.survey), folder / "plan.gpkg", LengthUnits::metres)),
                  "");
        const FieldSurvey back = read_back(folder / "plan.gpkg");
        expect_same_answers(field, back);
        expect_same_records(field, back);
        ASSERT_EQ(back.of_reading.size(), 1U);
        expect_same_place(field.frame, field.of_reading[0].at, back.frame, back.of_reading[0].at);
        Finding finding = back.of_reading[0];
        finding.at = field.of_reading[0].at;
        EXPECT_EQ(finding, field.of_reading[0]);
        field = back;
    }
}

TEST(AnswerLayers, corrections_of_notes_come_back_and_can_be_lifted_after_reading) {
    FieldSurvey field = example_field();
    field.survey.mounds[3].note = "zorro NW, kids about";
    const FieldSurvey bare = field;
    use_note_rules(field.survey, field.frame,
                   {{"walk 1", "fresh", "older"}, {"", "kids", "children"}, {"walk 2", "zorro", "fan", "M004"}});
    ASSERT_EQ(field.survey.mounds[0].freshness, Freshness::older);
    ASSERT_TRUE(field.survey.mounds[3].fan.has_value());
    ASSERT_FALSE(field.survey.mounds[3].mentions.empty());
    FieldSurvey back = out_and_back(field);
    EXPECT_TRUE(back.findings.empty()) << back.findings.front().sentence;
    EXPECT_EQ(back.survey.note_rules, field.survey.note_rules);
    expect_same_answers(field, back);
    expect_same_records(field, back);
    for (std::size_t i = 0; i < field.survey.mounds.size(); ++i)
        EXPECT_EQ(back.survey.mounds[i].mentions, field.survey.mounds[i].mentions) << i;
    use_note_rules(back.survey, back.frame, {});
    expect_same_records(bare, back);
    EXPECT_TRUE(back.survey.answers.empty());
}

TEST(AnswerLayers, corrections_of_a_walk_follow_it_where_it_is_called_otherwise) {
    const TemporaryFolder folder;
    FieldSurvey field = example_field();
    use_note_rules(field.survey, field.frame, {{"walk 1", "fresh", "older"}});
    ASSERT_EQ(refusal_of(write_survey(field, {}, folder / "one.gpkg")), "");
    for (Mound& mound : field.survey.mounds) mound.plug = mound.plug + LocalVector{300.0, 0.0};
    for (Mound& mound : field.survey.mounds)
        if (mound.recorded) mound.recorded->plug = mound.plug;
    use_note_rules(field.survey, field.frame, {{"walk 1", "fresh", "crushed"}});
    ASSERT_EQ(refusal_of(write_survey(field, {}, folder / "two.gpkg")), "");
    const auto both = read_field({folder / "one.gpkg", folder / "two.gpkg"});
    ASSERT_TRUE(both.has_value()) << sentence(both.error());
    EXPECT_EQ(both->survey.note_rules,
              (std::vector<NoteRule>{{"walk 1", "fresh", "older"}, {"walk 3", "fresh", "crushed"}}));
    EXPECT_EQ(both->survey.mounds[0].freshness, Freshness::older);
    EXPECT_EQ(both->survey.mounds[9].freshness, Freshness::crushed);
}

void execute(const std::filesystem::path& file, const std::string& sql) {
    sqlite3* db = nullptr;
    ASSERT_EQ(sqlite3_open(file.c_str(), &db), SQLITE_OK);
    // The spatial index's triggers ask for functions that only the library has.
    const std::string all =
        "PRAGMA writable_schema=ON; DELETE FROM sqlite_master WHERE type='trigger'; PRAGMA writable_schema=RESET; " + sql;
    char* error = nullptr;
    EXPECT_EQ(sqlite3_exec(db, all.c_str(), nullptr, nullptr, &error), SQLITE_OK) << (error != nullptr ? error : "");
    sqlite3_close(db);
}

// The layers and columns that files of version 0.1 had not.
TEST(AnswerLayers, a_file_of_an_earlier_version_is_read_as_before) {
    const TemporaryFolder folder;
    FieldSurvey field = example_field();
    field.survey.mounds[1].set_aside_because = "the same mound as M001";
    ASSERT_EQ(refusal_of(write_geopackage(field, *make_plan(field.survey), folder / "plan.gpkg", LengthUnits::metres)), "");
    std::string sql;
    for (const char* layer : {"finding_answers", "findings", "note_rules"})
        sql += std::string("DROP TABLE ") + layer + "; DELETE FROM gpkg_contents WHERE table_name = '" + layer +
               "'; DELETE FROM gpkg_geometry_columns WHERE table_name = '" + layer +
               "'; DELETE FROM gpkg_extensions WHERE table_name = '" + layer + "';";
    sql += "DROP TABLE rtree_findings_geom;";
    for (const char* column : {"set_aside_because", "recorded_lon", "recorded_lat", "recorded_fan_bearing", "recorded_kind",
                               "recorded_freshness", "recorded_position_sd_m", "recorded_set_aside_because"})
        sql += std::string("ALTER TABLE mounds DROP COLUMN ") + column + ";";
    execute(folder / "plan.gpkg", sql);
    const FieldSurvey back = read_back(folder / "plan.gpkg");
    EXPECT_TRUE(back.findings.empty()) << back.findings.front().sentence;
    EXPECT_TRUE(back.survey.answers.empty());
    EXPECT_TRUE(back.of_reading.empty());
    expect_same_records(field, back);
}

TEST(AnswerLayers, a_mended_mark_that_another_program_changed_keeps_what_its_row_says_as_a_mend_of_its_own) {
    const TemporaryFolder folder;
    const FieldSurvey field = answered_field();
    ASSERT_EQ(refusal_of(write_geopackage(field, example_plan(field), folder / "plan.gpkg", LengthUnits::metres)), "");
    execute(folder / "plan.gpkg",
            "UPDATE mounds SET freshness = 'older', kind = 'mole' WHERE mound_id = 'other vole';"
            "UPDATE mounds SET fan_bearing = 77 WHERE mound_id = 'M005'");
    FieldSurvey back = read_back(folder / "plan.gpkg");
    const auto told = std::count_if(back.findings.begin(), back.findings.end(), [](const ReadFinding& finding) {
        return finding.sentence.find("the row counts") != std::string::npos &&
               finding.place == "layer mounds, feature 5 and 1 more";
    });
    EXPECT_EQ(told, 1);
    Mound& vole = back.survey.mounds[7];
    EXPECT_EQ(vole.freshness, Freshness::older);
    EXPECT_EQ(vole.kind, SignKind::mole);
    EXPECT_EQ(vole.set_aside_because, field.survey.mounds[7].set_aside_because);
    EXPECT_NEAR(turn_degrees(*back.survey.mounds[4].fan, Bearing::degrees(77.0)), 0.0, 0.1);
    EXPECT_NE(answer_to(back.survey, "own fan: M005"), nullptr);
    take_answer_back(back.survey, "own freshness: other vole");
    take_answer_back(back.survey, "own sign: other vole");
    EXPECT_EQ(vole.freshness, Freshness::unknown) << "as recorded";
    EXPECT_EQ(vole.kind, SignKind::vole);
}

TEST(AnswerLayers, adding_a_handed_out_plan_to_its_own_walk_adds_its_answers_and_no_mark) {
    const TemporaryFolder folder;
    const FieldSurvey field = answered_field();
    ASSERT_EQ(refusal_of(write_geopackage(field, example_plan(field), folder / "plan.gpkg", LengthUnits::metres)), "");
    FieldSurvey open = example_field();
    open.survey.mounds[4].set_aside_because = "until answered";
    MendAnswer mine{"own fan: M002", Answer::accepted, example_mend(MendKind::fan, {"M002"})};
    mine.mend.fan = Bearing::degrees(10.0);
    answer_finding(open.survey, mine);
    const auto more = add_to_field(open, {folder / "plan.gpkg"});
    ASSERT_TRUE(more.has_value()) << sentence(more.error());
    EXPECT_EQ(more->survey.mounds.size(), open.survey.mounds.size());
    EXPECT_EQ(more->survey.answers.size(), field.survey.answers.size());
    EXPECT_EQ(*answer_to(more->survey, "own fan: M002"), mine) << "an answer that was there stays";
    EXPECT_EQ(more->survey.mounds[7].freshness, Freshness::fresh);
    EXPECT_EQ(more->survey.revision, open.survey.revision + 1);
    const auto again = add_to_field(*more, {folder / "plan.gpkg"});
    ASSERT_TRUE(again.has_value());
    EXPECT_EQ(again->survey, more->survey);
}

TEST(AnswerLayers, of_two_plans_with_the_same_names_each_keeps_its_own_answers) {
    const TemporaryFolder folder;
    FieldSurvey field = answered_field();
    ASSERT_EQ(refusal_of(write_geopackage(field, example_plan(field), folder / "one.gpkg", LengthUnits::metres)), "");
    for (Mound& mound : field.survey.mounds) mound.plug = mound.plug + LocalVector{300.0, 0.0};
    for (Mound& mound : field.survey.mounds)
        if (mound.recorded) mound.recorded->plug = mound.recorded->plug + LocalVector{300.0, 0.0};
    for (MendAnswer& answer : field.survey.answers)
        for (LocalPoint& place : answer.mend.to) place = place + LocalVector{300.0, 0.0};
    ASSERT_EQ(refusal_of(write_geopackage(field, example_plan(field), folder / "two.gpkg", LengthUnits::metres)), "");
    const auto both = read_field({folder / "one.gpkg", folder / "two.gpkg"});
    ASSERT_TRUE(both.has_value()) << sentence(both.error());
    EXPECT_EQ(both->survey.mounds.size(), 18U);
    for (const char* id : {"double mark: M002, M001", "double mark: M002 (2), M001 (2)", "own move: other mole",
                           "own move: other mole (2)", "lost sign: M005 (2)"})
        EXPECT_NE(answer_to(both->survey, id), nullptr) << id;
    expect_same_place(field.frame, field.survey.mounds[5].plug, both->frame, both->survey.mounds[14].plug);
    EXPECT_EQ(both->of_reading.size(), 2U);
}

TEST(WorkLayer, gives_back_the_work_order_whole_where_private_rows_are_asked_for) {
    const TemporaryFolder folder;
    const FieldSurvey field = answered_field();
    ASSERT_EQ(refusal_of(write_survey(field, {}, folder / "whole.gpkg", {}, PrivateRows::included)), "");
    const auto back = read_field({folder / "whole.gpkg"});
    ASSERT_TRUE(back);
    EXPECT_TRUE(back->survey.work == field.survey.work);
}

TEST(WorkLayer, leaves_out_who_signed_and_then_the_signature_does_not_count) {
    const TemporaryFolder folder;
    const FieldSurvey field = answered_field();
    ASSERT_EQ(refusal_of(write_survey(field, {}, folder / "survey.gpkg")), "");
    const auto back = read_field({folder / "survey.gpkg"});
    ASSERT_TRUE(back);
    WorkOrder expected = *field.survey.work;
    expected.signed_off.clear();
    expected.conditions.utilities_ticket.clear();
    EXPECT_TRUE(back->survey.work == HeldWork(expected));
    bool said = false;
    for (const ReadFinding& finding : back->findings)
        said = said || finding.sentence.find("signatures without a name") != std::string::npos;
    EXPECT_TRUE(said);
}

TEST(WorkLayer, of_a_second_file_does_not_replace_the_fields_own) {
    const TemporaryFolder folder;
    FieldSurvey field = answered_field();
    ASSERT_EQ(refusal_of(write_survey(field, {}, folder / "one.gpkg")), "");
    WorkOrder other = *field.survey.work;
    other.method = "fumigant";
    field.survey.work = other;
    ASSERT_EQ(refusal_of(write_survey(field, {}, folder / "two.gpkg")), "");
    const auto both = read_field({folder / "one.gpkg", folder / "two.gpkg"});
    ASSERT_TRUE(both);
    EXPECT_EQ(both->survey.work->method, "paired-traps");
}

}  // namespace
}  // namespace plugside
