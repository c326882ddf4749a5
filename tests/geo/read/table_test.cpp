#include "geo/read/table.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <cstdio>

#include "geo/read/field_reader.h"
#include "geo/read/numbers.h"
#include "geo/read/reference_systems.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

TableGuess guess(const std::string& bytes) {
    const auto found = guess_table_text(bytes, "marks.csv");
    EXPECT_TRUE(found.has_value()) << (found ? "" : sentence(found.error()));
    return found.value_or(TableGuess{});
}

std::vector<GeographicMark> marks(const std::string& bytes, const TableGuess& how) {
    const auto file = read_table_text(bytes, "marks.csv", how);
    EXPECT_TRUE(file.has_value()) << (file ? "" : sentence(file.error()));
    return file && !file->walks.empty() ? file->walks.front().marks : std::vector<GeographicMark>{};
}

using Roles = std::vector<ColumnRole>;

TEST(Table, of_a_spreadsheet_with_decimal_commas_is_guessed_and_read) {
    const std::string text =
        "Nombre;Latitud;Longitud;Abanico;Estado;Fecha;Hora;Observaciones\r\n"
        "M001;38,250001;-120,500002;135,5;fresh;01/03/2026;9:30;\"junto a la cerca; dos\"\r\n"
        "M002;38,250101;-120,500102;SE;;13/03/2026;9:31:05;\r\n";
    const TableGuess found = guess(text);
    EXPECT_EQ(found.separator, ';');
    EXPECT_EQ(found.decimal, ',');
    EXPECT_TRUE(found.header_row);
    EXPECT_EQ(found.roles, (Roles{ColumnRole::name, ColumnRole::latitude, ColumnRole::longitude, ColumnRole::fan_bearing,
                                  ColumnRole::freshness, ColumnRole::date, ColumnRole::time, ColumnRole::note}));
    EXPECT_EQ(found.times.order, DateOrder::day_first);
    const auto read = marks(text, found);
    ASSERT_EQ(read.size(), 2U);
    EXPECT_EQ(read[0].at, (GeographicPoint{-120.500002, 38.250001}));
    EXPECT_EQ(read[0].fan_degrees, 135.5);
    EXPECT_EQ(read[0].mound.freshness, Freshness::fresh);
    EXPECT_EQ(read[0].mound.note, "fan 135.5 fresh; junto a la cerca; dos");
    EXPECT_EQ(read[0].place, "line 2, M001");
    EXPECT_EQ(read[0].mound.time, parse_utc_time("2026-03-01T09:30:00Z"));
    EXPECT_EQ(read[1].fan_degrees, 135.0);
    EXPECT_EQ(read[1].mound.time, parse_utc_time("2026-03-13T09:31:05Z"));
}

TEST(Table, shows_its_first_rows_beside_the_guess_and_is_read_again_as_the_person_says) {
    const std::string text = "id,lat,lon,d1,d2\n1,38.25,-120.5,90,180\n2,38.2501,-120.5,91,181\n";
    TableGuess how = guess(text);
    EXPECT_EQ(how.roles,
              (Roles{ColumnRole::name, ColumnRole::latitude, ColumnRole::longitude, ColumnRole::none, ColumnRole::none}));
    const auto shown = preview_table_text(text, "marks.csv", how, 1);
    ASSERT_TRUE(shown.has_value());
    EXPECT_EQ(shown->headings, (std::vector<std::string>{"id", "lat", "lon", "d1", "d2"}));
    EXPECT_EQ(shown->rows, (std::vector<std::vector<std::string>>{{"1", "38.25", "-120.5", "90", "180"}}));
    EXPECT_FALSE(marks(text, how)[0].fan_degrees.has_value());
    how.roles[4] = ColumnRole::fan_bearing;
    EXPECT_EQ(marks(text, how)[0].fan_degrees, 180.0);
    how.roles[1] = ColumnRole::none;
    const auto refused = read_table_text(text, "marks.csv", how);
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(
        sentence(refused.error()),
        "marks.csv: found a table without columns of longitude and latitude, expected two columns that say where each mark "
        "is.");
}

TEST(Table, without_headings_is_guessed_by_size_and_says_so) {
    const TableGuess found = guess("M1\t38 15.5 N\t120 30 W\tfan SE fresh\nM2\t38 15.6 N\t120 30 W\told\n");
    EXPECT_FALSE(found.header_row);
    EXPECT_EQ(found.roles, (Roles{ColumnRole::name, ColumnRole::latitude, ColumnRole::longitude, ColumnRole::note}));
    const TableGuess blanks = guess("-120.5 38.25 M031\n-120.501 38.251 M032\n");
    EXPECT_EQ(blanks.separator, ' ');
    EXPECT_EQ(blanks.roles, (Roles{ColumnRole::longitude, ColumnRole::latitude, ColumnRole::name}));
    EXPECT_EQ(blanks.assumed.size(), 2U);
}

TEST(Table, knows_packed_minutes) {
    const std::string text = "name,lat,lon\na,3815.5,-12030.25\nb,3815.6,-12030.5\n";
    EXPECT_TRUE(guess(text).packed_minutes);
    EXPECT_NEAR(marks(text, guess(text))[0].at.latitude_degrees, 38.0 + 15.5 / 60.0, 1e-12);
    EXPECT_NEAR(marks(text, guess(text))[0].at.longitude_degrees, -(120.0 + 30.25 / 60.0), 1e-12);
}

// GDA technical manual, Flinders Peak: MGA zone 55 273741.297 E, 5796489.777 N is 37 57 03.72030 S, 144 25 29.52440 E
// [memory]; IOGP Guidance Note 7-2, pseudo-Mercator: -11169055.58, 2800000.00 is 24 22 54.433 N, 100 20 W [memory].
TEST(Table, of_eastings_and_northings_asks_for_its_reference_system_and_is_read_by_it) {
    std::string text = "name,E,N\nFlinders Peak,273741.297,5796489.777\n";
    TableGuess how = guess(text);
    EXPECT_EQ(how.roles, (Roles{ColumnRole::name, ColumnRole::easting, ColumnRole::northing}));
    const auto asked = read_table_text(text, "marks.csv", how);
    ASSERT_FALSE(asked.has_value());
    EXPECT_EQ(asked.error().code, Refusal::Code::needs_reference_system);
    how.reference_system = "EPSG:28355";
    const auto flinders = marks(text, how);
    ASSERT_EQ(flinders.size(), 1U);
    EXPECT_NEAR(flinders[0].at.latitude_degrees, -(37.0 + 57.0 / 60.0 + 3.7203 / 3600.0), 1e-8);  // 1 mm
    EXPECT_NEAR(flinders[0].at.longitude_degrees, 144.0 + 25.0 / 60.0 + 29.5244 / 3600.0, 1e-8);
    text = "name,x,y\na,-11169055.58,2800000.00\n";
    how = guess(text);
    how.reference_system = "EPSG:3857";
    const auto mercator = marks(text, how);
    ASSERT_EQ(mercator.size(), 1U);
    EXPECT_NEAR(mercator[0].at.latitude_degrees, 24.0 + 22.0 / 60.0 + 54.433 / 3600.0, 1e-7);
    EXPECT_NEAR(mercator[0].at.longitude_degrees, -(100.0 + 20.0 / 60.0), 1e-7);
    for (const char* unknown : {"EPSG:999999", "+proj=utm +zone=10", "http://example.invalid/crs", "x"}) {
        how.reference_system = unknown;
        EXPECT_EQ(read_table_text(text, "marks.csv", how).error().code, Refusal::Code::needs_reference_system) << unknown;
    }
}

TEST(ReferenceSystems, are_found_by_code_and_by_words_of_their_name) {
    const auto by_code = reference_systems("25830");
    ASSERT_FALSE(by_code.empty());
    EXPECT_EQ(by_code[0], (ReferenceSystem{"EPSG:25830", "ETRS89 / UTM zone 30N", true}));
    const auto by_name = reference_systems("utm 10N wgs");  // on WGS 72, on WGS 72BE and on WGS 84
    std::vector<std::string> names;
    for (const ReferenceSystem& system : by_name) names.push_back(system.name);
    EXPECT_NE(std::find(names.begin(), names.end(), "WGS 84 / UTM zone 10N"), names.end());
    for (const std::string& name : names) EXPECT_NE(name.find("UTM zone 10N"), std::string::npos) << name;
    EXPECT_EQ(reference_systems("epsg:4326")[0], (ReferenceSystem{"EPSG:4326", "WGS 84", false}));
    EXPECT_TRUE(reference_systems("no such system anywhere").empty());
    EXPECT_EQ(reference_systems("", 7).size(), 7U);
}

TEST(Table, of_two_walkers_is_two_walks) {
    const std::string text = "name,lat,lon,walker\na,38.25,-120.5,Ana\nb,38.25,-120.5001,Ben\nc,38.25,-120.5002,Ana\n";
    const auto file = read_table_text(text, "marks.csv", guess(text));
    ASSERT_TRUE(file.has_value());
    ASSERT_EQ(file->walks.size(), 2U);
    EXPECT_EQ(file->walks[0].source, "marks.csv, Ana");
    EXPECT_EQ(file->walks[0].marks.size(), 2U);
}

TEST(Table, lists_rows_without_a_place_and_cells_that_are_no_numbers) {
    const std::string text = "name,lat,lon,hdop\na,,,1\nb,38.25,-120.5,bad\n";
    const auto file = read_table_text(text, "marks.csv", guess(text));
    ASSERT_TRUE(file.has_value());
    ASSERT_EQ(file->findings.size(), 2U);
    EXPECT_EQ(file->findings[0], (ReadFinding{"marks.csv", "line 2, a", "the row says no place; it is not used"}));
    EXPECT_EQ(file->findings[1], (ReadFinding{"marks.csv", "line 3, b", "the hdop \"bad\" was not understood"}));
}

TEST(Times, are_read_in_the_order_that_is_said) {
    const auto march = parse_utc_time("2026-03-04T15:05:00Z");
    EXPECT_EQ(parse_time("2026-03-04 15:05", {}), march);
    EXPECT_EQ(parse_time("4/3/2026 3:05 pm", {DateOrder::day_first, 0}), march);
    EXPECT_EQ(parse_time("3/4/2026 3:05:00 p. m.", {DateOrder::month_first, 0}), march);
    EXPECT_EQ(parse_time("04.03.26 15:05", {DateOrder::day_first, 0}), march);
    EXPECT_EQ(parse_time("2026-03-04 07:05", {DateOrder::year_first, -480}), march);
    EXPECT_EQ(parse_time("2026-03-04T15:05:00Z", {DateOrder::year_first, -480}), march);
    EXPECT_EQ(parse_time("2026-03-04T07:05:00-08:00", {DateOrder::year_first, 60}), march);
    EXPECT_EQ(parse_time("2026-03-04T07:05:00", {DateOrder::year_first, -480}), march);
    for (const char* text :
         {"", "2026-03-04", "13:00", "31/2/2026 10:00", "4/3/2026 25:00", "4/3/2026 13:00 pm", "4-3/2026 1:00"})
        EXPECT_FALSE(parse_time(text, {DateOrder::day_first, 0}).has_value()) << text;
}

// --- a table written in any way reads back the same ---

std::string utf_16(const std::string& text, bool big, bool mark) {
    std::string bytes;
    const auto add = [&](unsigned code) {
        const char high = static_cast<char>(code >> 8U);
        const char low = static_cast<char>(code & 0xFFU);
        bytes += big ? high : low;
        bytes += big ? low : high;
    };
    if (mark) add(0xFEFF);
    for (std::size_t i = 0; i < text.size(); ++i) {  // the names below have no character beyond two bytes of UTF-8
        const auto byte = static_cast<unsigned char>(text[i]);
        if (byte < 0x80)
            add(byte);
        else
            add((byte & 0x1FU) << 6U | (static_cast<unsigned char>(text[++i]) & 0x3FU));
    }
    return bytes;
}

std::string latin_1(const std::string& text) {
    std::string bytes;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto byte = static_cast<unsigned char>(text[i]);
        bytes += byte < 0x80 ? text[i]
                             : static_cast<char>((byte & 0x1FU) << 6U | (static_cast<unsigned char>(text[++i]) & 0x3FU));
    }
    return bytes;
}

std::string angle(double degrees, int form, char decimal, const char* letters) {
    char text[80];
    const double size = std::abs(degrees);
    const double whole = std::floor(size);
    const char letter = degrees < 0.0 ? letters[1] : letters[0];
    if (form == 0) std::snprintf(text, sizeof text, "%.9f", degrees);
    if (form == 1) std::snprintf(text, sizeof text, "%.0f\xC2\xB0 %.7f' %c", whole, (size - whole) * 60.0, letter);
    const double minutes = std::floor((size - whole) * 60.0);
    if (form == 2)
        std::snprintf(text, sizeof text, "%c %.0f %02.0f %.6f", letter, whole, minutes,
                      ((size - whole) * 60.0 - minutes) * 60.0);
    std::string result = text;
    for (char& c : result)
        if (c == '.') c = decimal;
    return result;
}

std::string quoted(const std::string& cell) {
    std::string text = "\"";
    for (const char c : cell) text += c == '"' ? std::string("\"\"") : std::string(1, c);
    return text + "\"";
}

RC_GTEST_PROP(Table, comes_back_from_every_separator_encoding_and_writing_of_degrees, ()) {
    const char separator = *rc::gen::element('\t', ';', '|', ',');
    const char decimal = separator == ',' ? '.' : *rc::gen::element('.', ',');
    const int form = *rc::gen::inRange(0, 3);
    const int encoding = *rc::gen::inRange(0, 6);
    const bool always_quote = *rc::gen::arbitrary<bool>();
    const std::string line_end = *rc::gen::element<std::string>("\n", "\r\n");
    const char* letters_east = *rc::gen::arbitrary<bool>() ? "EW" : "EO";
    struct Mark {
        std::string name;
        double latitude, longitude;
        int fan;
        std::string note;
    };
    std::vector<Mark> written;
    const auto count = *rc::gen::inRange(2, 12);
    for (int i = 0; i < count; ++i)
        written.push_back({*rc::gen::element<std::string>("M", "Mön ", "a \"b\" ", "x;y,z ") + std::to_string(i),
                           38.0 + *rc::gen::inRange(1, 999'999) * 1e-6, -120.0 - *rc::gen::inRange(1, 999'999) * 1e-6,
                           *rc::gen::inRange(0, 360),
                           *rc::gen::element<std::string>("", "fresh", "old; by the ditch", "nuevo, a\xC3\xB1o")});
    const auto cell = [&](const std::string& content) {
        return always_quote || content.find_first_of("\";,|\t\n") != std::string::npos ? quoted(content) : content;
    };
    std::string text =
        std::string("name") + separator + "lat" + separator + "lon" + separator + "fan" + separator + "note" + line_end;
    for (const Mark& mark : written)
        text += cell(mark.name) + separator + cell(angle(mark.latitude, form, decimal, "NS")) + separator +
                cell(angle(mark.longitude, form, decimal, letters_east)) + separator + std::to_string(mark.fan) + separator +
                cell(mark.note) + line_end;
    const std::string bytes = encoding == 0   ? text
                              : encoding == 1 ? "\xEF\xBB\xBF" + text
                              : encoding == 2 ? latin_1(text)
                                              : utf_16(text, encoding == 4, encoding != 5);
    const auto found = guess_table_text(bytes, "marks.csv");
    RC_ASSERT(found.has_value());
    RC_ASSERT(found->separator == separator);
    const auto file = read_table_text(bytes, "marks.csv", *found);
    RC_ASSERT(file.has_value());
    RC_ASSERT(file->walks.size() == 1U);
    RC_ASSERT(file->walks[0].marks.size() == written.size());
    for (std::size_t i = 0; i < written.size(); ++i) {
        const GeographicMark& mark = file->walks[0].marks[i];
        RC_ASSERT(mark.mound.name == written[i].name);
        RC_ASSERT(std::abs(mark.at.latitude_degrees - written[i].latitude) < 2e-9);
        RC_ASSERT(std::abs(mark.at.longitude_degrees - written[i].longitude) < 2e-9);
        RC_ASSERT(mark.fan_degrees == static_cast<double>(written[i].fan));
        RC_ASSERT(mark.mound.note ==
                  "fan " + std::to_string(written[i].fan) + (written[i].note.empty() ? "" : "; " + written[i].note));
    }
}

}  // namespace
}  // namespace plugside
