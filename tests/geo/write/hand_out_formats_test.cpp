// Every format that is handed out, read by a second reader that shares no code with the program (hand_out_reader.py: Python's json,
// xml.etree, csv and sqlite3, and pyshp), and GPX by libxml2 against the GPX 1.1 schema by TopoGrafix.
#include "geo/write/hand_out_formats.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <set>

#include "geo/read/field_reader.h"
#include "geo/write/csv_files.h"
#include "geo/write/safe_files.h"
#include "geo/write/set_words.h"
#include "geo/write/shapefiles.h"
#include "geo/write/shown_layers.h"
#include "tests/geo/example_field.h"
#include "tests/geo/expected_hand_out.h"
#include "tests/geo/expected_layers.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

constexpr const char* hard_note =
    "a \"quoted\", comma'd\r\nnote; of two lines, caf\xC3\xA9 \xE2\x9C\x93 <&> \xF0\x9F\x90\xBF";

FieldSurvey hard_field(GeographicPoint centre = {-120.0001, 38.25}) {
    FieldSurvey field = answered_field(centre);
    field.survey.mounds[2].note = hard_note;
    field.field_name = "Field \"5\", upper & <lower>, a\xC3\xB1o";
    return field;
}

std::string name_in(HandOutFormat format) { return std::string("out.v1") + ending_of(format); }

HandedOut handed_out(HandOutFormat format, const FieldSurvey& field, const Plan& plan, const TemporaryFolder& folder,
                     PrivateRows rows = PrivateRows::left_out) {
    auto written = write_as(format, field, plan, folder / name_in(format), LengthUnits::metres, rows);
    EXPECT_TRUE(written.has_value()) << sentence(written.error());
    return written.value_or(HandedOut{});
}

std::string schema_says(const std::filesystem::path& file, const TemporaryFolder& folder) {
    const int code = run("xmllint --noout --schema '" + std::string(PLUGSIDE_SOURCE_DIR) + "/tests/published/gpx11.xsd' '" +
                             file.string() + "'",
                         folder / "said.txt");
    return code == 0 ? "" : content_of(folder / "said.txt");
}

std::vector<HandOutFormat> foreign_formats() { return {all_hand_out_formats.begin() + 1, all_hand_out_formats.end()}; }

// Every format into a folder of its own.
std::string second_reader_says(const FieldSurvey& field, const Plan& plan, PrivateRows rows) {
    const std::array<TemporaryFolder, all_hand_out_formats.size()> folders;
    HandedOutFiles files;
    for (std::size_t i = 0; i < folders.size(); ++i) {
        const HandOutFormat format = all_hand_out_formats[i];
        handed_out(format, field, plan, folders[i], rows);
        files.emplace_back(format, folders[i] / name_in(format));
    }
    return hand_out_reader_says(files, field, plan, rows, folders.front());
}

TEST(HandOutFormats, carry_every_set_to_a_second_reader_within_a_centimetre_on_every_meridian) {
    for (const GeographicPoint centre : {GeographicPoint{-120.0001, 38.25}, {-180.0, -41.0}, {179.9996, 52.0}, {0.0, 0.0}}) {
        SCOPED_TRACE(centre.longitude_degrees);
        const FieldSurvey field = hard_field(centre);
        EXPECT_EQ(second_reader_says(field, example_plan(field), PrivateRows::included), "");
    }
    EXPECT_EQ(second_reader_says(hard_field(), example_plan(hard_field()), PrivateRows::left_out), "");
}

TEST(HandOutFormats, of_a_plan_without_anything_are_files_that_open) {
    EXPECT_EQ(second_reader_says({}, {}, PrivateRows::left_out), "");
}

TEST(HandOutFormats, of_gpx_are_valid_against_the_schema) {
    for (const HandOutFormat format : {HandOutFormat::gpx_waypoints, HandOutFormat::gpx_route})
        for (const bool empty : {false, true}) {
            SCOPED_TRACE(format_name(format));
            const TemporaryFolder folder;
            const FieldSurvey field = empty ? FieldSurvey{} : hard_field({-180.0, 52.0});
            handed_out(format, field, empty ? Plan{} : example_plan(field), folder);
            EXPECT_EQ(schema_says(folder / name_in(format), folder), "");
        }
}

TEST(HandOutFormats, name_beforehand_all_the_files_that_they_write) {
    for (const HandOutFormat format : all_hand_out_formats) {
        SCOPED_TRACE(format_name(format));
        const TemporaryFolder folder;
        const FieldSurvey field = hard_field();
        EXPECT_EQ(files_of(format, folder / name_in(format)), handed_out(format, field, example_plan(field), folder).files);
    }
}

TEST(HandOutFormats, give_the_same_bytes_for_the_same_plan) {
    const FieldSurvey field = hard_field();
    const Plan plan = example_plan(field);
    for (const HandOutFormat format : all_hand_out_formats) {
        SCOPED_TRACE(format_name(format));
        const TemporaryFolder one, other;
        const HandedOut first = handed_out(format, field, plan, one);
        const HandedOut second = handed_out(format, field, plan, other);
        ASSERT_EQ(first.files.size(), second.files.size());
        ASSERT_FALSE(first.files.empty());
        EXPECT_EQ(one.entries(), first.files.size());  // nothing is left beside them
        for (std::size_t i = 0; i < first.files.size(); ++i) {
            EXPECT_EQ(first.files[i].filename(), second.files[i].filename());
            EXPECT_TRUE(content_of(first.files[i]) == content_of(second.files[i])) << first.files[i].filename();
        }
    }
}

TEST(HandOutFormats, hold_nothing_private_unless_asked) {
    FieldSurvey field = hard_field();
    field.survey.mounds[0].note = "PRIVATENOTE";
    field.survey.walks[0].source = "PRIVATESOURCE.gpx";
    WorkOrder work = *field.survey.work;
    work.signed_off[0].name = "PRIVATEPERSON";
    field.survey.work = std::move(work);
    const Plan plan = example_plan(field);
    for (const HandOutFormat format : foreign_formats())
        for (const PrivateRows rows : {PrivateRows::left_out, PrivateRows::included}) {
            SCOPED_TRACE(format_name(format));
            const TemporaryFolder folder;
            std::string all;
            for (const auto& file : handed_out(format, field, plan, folder, rows).files) all += content_of(file);
            const bool gpx = format == HandOutFormat::gpx_waypoints || format == HandOutFormat::gpx_route;
            const bool wanted = rows == PrivateRows::included && !gpx;
            EXPECT_EQ(all.find("PRIVATENOTE") != std::string::npos, wanted);
            if (!wanted) {
                EXPECT_EQ(all.find("PRIVATE"), std::string::npos);
            }
            if (format == HandOutFormat::csv) {
                EXPECT_EQ(all.find("PRIVATEPERSON") != std::string::npos, rows == PrivateRows::included);
                EXPECT_NE(all.find("paired-traps"), std::string::npos);
            }
        }
}

TEST(HandOutFormats, as_a_geopackage_give_the_work_order_back_and_private_rows_only_when_included) {
    const FieldSurvey field = hard_field();
    for (const PrivateRows rows : {PrivateRows::left_out, PrivateRows::included}) {
        const TemporaryFolder folder;
        handed_out(HandOutFormat::geopackage, field, example_plan(field), folder, rows);
        const auto back = read_field({folder / name_in(HandOutFormat::geopackage)});
        ASSERT_TRUE(back.has_value()) << sentence(back.error());
        EXPECT_EQ(back->survey.work->method, field.survey.work->method);
        EXPECT_EQ(back->survey.work->set_methods, field.survey.work->set_methods);
        EXPECT_EQ(back->survey.work->budget.traps, field.survey.work->budget.traps);
        EXPECT_EQ(*back->survey.work == *field.survey.work, rows == PrivateRows::included);
        EXPECT_EQ(back->survey.work->signed_off.empty(), rows == PrivateRows::left_out);
        EXPECT_EQ(back->survey.mounds[2].note, hard_note);
        EXPECT_EQ(back->survey.decisions, field.survey.decisions);
    }
}

TEST(HandOutFormats, say_what_each_cannot_carry) {
    const FieldSurvey field = hard_field();
    const Plan plan = example_plan(field);
    for (const HandOutFormat format : all_hand_out_formats) {
        SCOPED_TRACE(format_name(format));
        const auto said = not_carried_by(format, PrivateRows::left_out);
        ASSERT_FALSE(said.empty());
        EXPECT_NE(said.back().find("left out"), std::string::npos);
        EXPECT_EQ(not_carried_by(format, PrivateRows::included).size(), said.size() - 1);
        const TemporaryFolder folder;
        auto told = handed_out(format, field, plan, folder).not_carried;
        ASSERT_GE(told.size(), said.size());
        told.resize(said.size());
        EXPECT_EQ(told, said);
    }
    std::size_t cut = 1;  // the note below, and every instruction that is longer
    for (const LayerContent& layer : shown_layers(field, plan, LengthUnits::metres, PrivateRows::included))
        for (const Row& row : layer.rows)
            for (const Value& value : row.values)
                cut += std::holds_alternative<std::string>(value) && std::get<std::string>(value).size() > 254 ? 1U : 0U;
    FieldSurvey wordy = field;
    for (int i = 0; i < 100; ++i) wordy.survey.mounds[2].note += "\xC3\xA9\xC3\xA9\xC3\xA9";
    const TemporaryFolder folder;
    const HandedOut out = handed_out(HandOutFormat::shapefile, wordy, plan, folder, PrivateRows::included);
    EXPECT_EQ(out.not_carried.back(), std::to_string(cut) + " texts were cut at 254 bytes.");
    EXPECT_NE(
        content_of(folder / "out.v1_legend.txt").find("Texts that were cut at 254 bytes: " + std::to_string(cut) + "."),
        std::string::npos);
    // Cut between two characters: what stands in the table is the longest start that is whole.
    std::size_t most = 254;
    while ((static_cast<unsigned char>(wordy.survey.mounds[2].note[most]) & 0xC0U) == 0x80U) --most;
    const std::string start = wordy.survey.mounds[2].note.substr(0, most);
    EXPECT_NE(content_of(folder / "out.v1_mounds.dbf").find(start), std::string::npos);
    EXPECT_EQ(content_of(folder / "out.v1_mounds.dbf").find(start + '\xC3'), std::string::npos);
}

TEST(HandOutFormats, are_told_by_a_files_ending) {
    for (const HandOutFormat format : all_hand_out_formats) {
        const bool route = format == HandOutFormat::gpx_route;  // told apart by whoever asks: both end in .gpx
        EXPECT_EQ(format_of_ending(std::string("a.b") + ending_of(format)), route ? HandOutFormat::gpx_waypoints : format);
    }
    EXPECT_EQ(format_of_ending("PLAN.KML"), HandOutFormat::kml);
    EXPECT_EQ(format_of_ending("plan.json"), HandOutFormat::geojson);
    EXPECT_EQ(format_of_ending("plan.doc"), std::nullopt);
    EXPECT_EQ(format_of_ending("plan"), std::nullopt);
}

TEST(HandOutFormats, leave_earlier_files_as_they_were_on_a_stop) {
    const FieldSurvey field = hard_field();
    const Plan plan = example_plan(field);
    for (const HandOutFormat format : all_hand_out_formats) {
        SCOPED_TRACE(format_name(format));
        const TemporaryFolder folder;
        folder.file(name_in(format), "an earlier file");
        std::stop_source stop;
        stop.request_stop();
        const auto written = write_as(format, field, plan, folder / name_in(format), LengthUnits::metres,
                                      PrivateRows::left_out, {stop.get_token(), {}});
        ASSERT_FALSE(written.has_value());
        EXPECT_EQ(written.error().code, Refusal::Code::stopped);
        EXPECT_EQ(written.error().file, (folder / name_in(format)).string());
        EXPECT_EQ(content_of(folder / name_in(format)), "an earlier file");
        EXPECT_EQ(folder.entries(), 1U);
    }
}

// A field of many marks, so that there is something to tell and to stop.
TEST(HandOutFormats, tell_how_far_they_are_and_stop_on_the_way) {
    FieldSurvey field = example_field();
    Plan plan = example_plan(field);
    while (plan.sets.size() < 5000) plan.sets.push_back(plan.sets.front());
    while (field.survey.mounds.size() < 5000) {
        const double at = static_cast<double>(field.survey.mounds.size()) / 100.0;
        field.survey.mounds.push_back(example_mound("X" + std::to_string(field.survey.mounds.size()), {at, -at}, 0));
        plan.mounds.push_back({});
    }
    for (const HandOutFormat format : foreign_formats()) {
        SCOPED_TRACE(format_name(format));
        const TemporaryFolder folder;
        std::stop_source stop;
        std::vector<double> shares;
        const Progress progress{stop.get_token(), [&](double share, std::string_view) {
                                    shares.push_back(share);
                                    if (shares.size() == 3) stop.request_stop();
                                }};
        const auto written =
            write_as(format, field, plan, folder / name_in(format), LengthUnits::metres, PrivateRows::left_out, progress);
        ASSERT_FALSE(written.has_value());
        EXPECT_EQ(written.error().code, Refusal::Code::stopped);
        EXPECT_EQ(shares.size(), 3U);
        EXPECT_TRUE(std::is_sorted(shares.begin(), shares.end()));
        EXPECT_EQ(folder.entries(), 0U);
    }
}

TEST(HandOutFormats, are_refused_with_the_name_where_nothing_can_be_written) {
    const FieldSurvey field = hard_field();
    const Plan plan = example_plan(field);
    for (const HandOutFormat format : all_hand_out_formats) {
        SCOPED_TRACE(format_name(format));
        const TemporaryFolder folder;
        for (const std::filesystem::path& file : {folder / "missing/plan.x", folder.path()}) {
            const auto written = write_as(format, field, plan, file, LengthUnits::metres);
            ASSERT_FALSE(written.has_value());
            EXPECT_EQ(written.error().code, Refusal::Code::cannot_write);
            EXPECT_EQ(written.error().file, file.string());
            EXPECT_FALSE(written.error().found.empty());
            EXPECT_EQ(folder.entries(), 0U);
        }
    }
}

TEST(HandOutFormats, leave_no_half_hand_out_on_a_full_disk) {
    const FieldSurvey field = hard_field();
    const Plan plan = example_plan(field);
    for (const HandOutFormat format : all_hand_out_formats) {
        SCOPED_TRACE(format_name(format));
        const TemporaryFolder folder;
        EXPECT_EXIT(
            {
                limit_file_size(300);
                const auto written = write_as(format, field, plan, folder / name_in(format), LengthUnits::metres);
                std::_Exit(!written.has_value() && written.error().code == Refusal::Code::cannot_write ? 42 : 1);
            },
            ::testing::ExitedWithCode(42), "");
        EXPECT_EQ(folder.entries(), 0U);
    }
}

TEST(SafeFiles, put_earlier_files_back_when_one_name_of_many_is_taken) {
    const TemporaryFolder folder;
    folder.file("a.txt", "earlier a");
    std::filesystem::create_directory(folder / "b.txt");
    auto safe = SafeFiles::beside(folder / "x.shp");
    ASSERT_TRUE(safe.has_value());
    for (const char* name : {"a.txt", "b.txt"}) std::ofstream(safe->folder() / name) << "new";
    const auto placed = safe->commit();
    ASSERT_FALSE(placed.has_value());
    EXPECT_EQ(placed.error().file, (folder / "b.txt").string());
    EXPECT_EQ(content_of(folder / "a.txt"), "earlier a");
}

TEST(SafeFiles, replace_earlier_files_and_leave_nothing_beside_them) {
    const TemporaryFolder folder;
    folder.file("a.txt", "earlier a");
    {
        auto safe = SafeFiles::beside(folder / "x.shp");
        ASSERT_TRUE(safe.has_value());
        for (const char* name : {"b.txt", "a.txt"}) std::ofstream(safe->folder() / name) << "new " << name;
        const auto placed = safe->commit();
        ASSERT_TRUE(placed.has_value()) << sentence(placed.error());
        EXPECT_EQ(*placed, (std::vector<std::filesystem::path>{folder / "a.txt", folder / "b.txt"}));
    }
    EXPECT_EQ(content_of(folder / "a.txt"), "new a.txt");
    EXPECT_EQ(content_of(folder / "b.txt"), "new b.txt");
    EXPECT_EQ(folder.entries(), 2U);
}

TEST(Shapefiles, have_a_short_name_of_their_own_for_every_column) {
    const FieldSurvey field = hard_field();
    for (const LayerContent& layer : shown_layers(field, example_plan(field), LengthUnits::metres, PrivateRows::included)) {
        std::set<std::string> names;
        for (const Column& column : layer.columns) {
            ASSERT_NE(short_name(column.name), nullptr) << column.name;
            EXPECT_LE(std::string(short_name(column.name)).size(), 10U) << column.name;
            EXPECT_TRUE(names.insert(short_name(column.name)).second) << layer.name << ": " << short_name(column.name);
        }
    }
    EXPECT_EQ(short_name("a_name_nobody_shortened"), nullptr);
}

// The rules of RFC 4180, section 2.
TEST(CsvFiles, quote_what_would_end_a_cell_and_tell_units) {
    EXPECT_EQ(csv_cell("plain; text"), "plain; text");
    EXPECT_EQ(csv_cell("a,b"), "\"a,b\"");
    EXPECT_EQ(csv_cell("say \"b\""), "\"say \"\"b\"\"\"");
    EXPECT_EQ(csv_cell("two\nlines"), "\"two\nlines\"");
    EXPECT_EQ(heading_of("along_m"), "along (m)");
    EXPECT_EQ(heading_of("ladder_angle_deg"), "ladder_angle (deg)");
    EXPECT_EQ(heading_of("fan_bearing"), "fan_bearing (deg_true)");
    EXPECT_EQ(heading_of("hit_probability"), "hit_probability (0 to 1)");
    EXPECT_EQ(heading_of("mound_id"), "mound_id");
}

// The six characters are those of OWASP, "CSV Injection".
TEST(CsvFiles, hold_no_text_that_a_spreadsheet_takes_for_a_formula_and_lose_none) {
    for (const char* text : {"=1+1", "+1", "-1", "@SUM(1)", "\tx", "\rx", "'quoted'", "''", "'=1"}) {
        EXPECT_EQ(never_a_formula(text), std::string("'") + text);
        EXPECT_EQ(never_a_formula(text).substr(1), text);
    }
    for (const char* text : {"", "plain", "1-2", "a=b", " =1", "\xC3\xB1"}) EXPECT_EQ(never_a_formula(text), text);
}

TEST(CsvFiles, keep_numbers_as_numbers_and_give_texts_back_to_whoever_takes_one_apostrophe_off) {
    FieldSurvey field = hard_field();
    field.survey.mounds[0].note = "=HYPERLINK(\"x\",\"y\")";
    field.survey.mounds[1].note = "-5 cm, dry";
    field.survey.mounds[3].note = "'older' one";
    field.survey.mounds[1].name = "@home";
    const Plan plan = example_plan(field);
    const TemporaryFolder folder;
    handed_out(HandOutFormat::csv, field, plan, folder, PrivateRows::included);
    EXPECT_EQ(hand_out_reader_says({{HandOutFormat::csv, folder / name_in(HandOutFormat::csv)}}, field, plan,
                                   PrivateRows::included, folder),
              "");
    const std::string table = content_of(folder / "out.v1_mounds.csv");
    EXPECT_NE(table.find(",\"'=HYPERLINK(\"\"x\"\",\"\"y\"\")\""), std::string::npos) << table;
    EXPECT_NE(table.find("-120.000"), std::string::npos);
    EXPECT_EQ(table.find("'-120"), std::string::npos);
}

}  // namespace
}  // namespace plugside
