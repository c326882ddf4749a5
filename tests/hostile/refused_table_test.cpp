// Tables, layers and photographs that cannot be read: each with its sentence.
#include <gtest/gtest.h>

#include <random>

#include "geo/read/field_reader.h"
#include "geo/read/table.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;
using Code = Refusal::Code;

struct Trap {
    const char* name;
    std::string content;
    Code code;
    const char* part;  // of the sentence, after the file's name
};

void expect_refused(const std::vector<Trap>& traps) {
    const TemporaryFolder folder;
    for (const Trap& trap : traps) {
        SCOPED_TRACE(trap.name);
        const auto file = folder.file(trap.name, trap.content);
        const auto field = read_field({file});
        ASSERT_FALSE(field.has_value());
        const std::string said = sentence(field.error());
        EXPECT_EQ(field.error().code, trap.code) << said;
        EXPECT_EQ(said.rfind(file.string() + trap.part, 0), 0U) << said;
        EXPECT_EQ(said.find('\n'), std::string::npos);
        EXPECT_NE(said.find("expected"), std::string::npos) << said;
        EXPECT_LT(said.size(), 500U);
    }
}

std::string table(const std::string& rows) { return "name,lat,lon,note\n" + rows; }

TEST(HostileTable, is_refused_with_one_sentence_that_names_the_line) {
    expect_refused(
        {{"letters.csv", table("a,38.25,-120.5,\nb,abc,-120.5,\n"), Code::malformed,
          ", line 3, b: found latitude \"abc\", expected degrees from -90 to 90."},
         {"half.csv", table("a,38.25,,\n"), Code::malformed,
          ", line 2, a: found longitude \"\", expected degrees from -180 to 180."},
         {"huge.csv", table("a,38.25,1e400,\n"), Code::malformed,
          ", line 2, a: found longitude \"1e400\", expected degrees"},
         {"infinite.csv", table("a,inf,-120,\n"), Code::malformed, ", line 2, a: found latitude \"inf\", expected degrees"},
         {"nan.csv", table("a,nan,-120,\n"), Code::malformed, ", line 2, a: found latitude \"nan\", expected degrees"},
         {"range.csv", table("a,91,-120.5,\n"), Code::out_of_range,
          ", line 2, a: found latitude \"91\", expected degrees from -90 to 90."},
         {"east.csv", table("a,10,190.5,\n"), Code::out_of_range,
          ", line 2, a: found longitude \"190.5\", expected degrees from -180"},
         {"minutes.csv", table("a,38 15 N,120 60 W,\n"), Code::malformed,
          ", line 2, a: found longitude \"120 60 W\", expected degrees"},
         {"letter.csv", table("a,38 15 W,120 30 W,\n"), Code::malformed,
          ", line 2, a: found latitude \"38 15 W\", expected degrees"},
         {"two-letters.csv", table("a,N 38 15 S,120 30 W,\n"), Code::malformed,
          ", line 2, a: found latitude \"N 38 15 S\", expected"},
         {"quote.csv", table("a,38.25,-120.5,\"never closed\nb,38.25,-120.5,\n"), Code::malformed,
          ", line 2: found a quotation mark that is never closed, expected a cell with both of them."},
         {"cell.csv", table("a,38.25,-120.5," + std::string(70'000, 'x') + "\n"), Code::too_large,
          ", line 2: found a cell longer than 64 KiB, expected a mark's short note."},
         {"cells.csv", table("a,38.25,-120.5" + std::string(2'000, ',') + "\n"), Code::too_large,
          ", line 2: found more than 1,000 cells in a row, expected a table of marks."},
         {"one-column.csv", "38.25\n38.26\n38.27\n", Code::wrong_format,
          ": found a text that no separator parts into columns"},
         {"no-places.csv", "name;note\na;fresh\nb;old\n", Code::malformed,
          ": found a table without columns of longitude and latitude, expected two columns that say where each mark is."},
         {"latitudes.csv", "name;lat\na;38.25\nb;38.26\n", Code::malformed, ": found a table without columns of longitude"},
         {"metres.csv", "name,easting,northing\na,680000,4235000\nb,680010,4235010\n", Code::needs_reference_system,
          ": found eastings and northings without a reference system, expected the reference system of easting"},
         {"prose.txt", "Dear all, we met at the gate, and went home.\nNo marks were taken.\n", Code::malformed,
          ": found a table without columns"},
         {"blank.csv", " \n \n", Code::wrong_format, ": found a text that no separator parts into columns"},
         {"zeros.csv", std::string(5'000, '\0'), Code::wrong_format, ": found a file that starts with"},
         {"noise.csv", "\x89PNG\r\n\x1A\n\x01\x02\x03\x04\x05\x06\x07\x08\x0B\x0C", Code::wrong_format,
          ": found a file that starts with"},
         {"half-character.csv",
          std::string("\xFF\xFE"
                      "a",
                      3),
          Code::wrong_format, ": found a text that no separator"},
         {"far.csv", table("a,38.25,-120.5,\nb,38.251,-120.5,\nc,39.9,-122,\n"), Code::out_of_range,
          ", line 4, c: found a place at 39.900000, -122.000000"},
         {"pole.csv", table("a,89.9,170,\n"), Code::out_of_range, ", line 2, a: found latitude 89.9"}});
}

TEST(HostileTable, in_another_reference_system_is_refused_where_its_numbers_have_no_place) {
    const std::string text = "name,easting,northing\na,680000,4235000\nb,x,4235010\n";
    auto guess = guess_table_text(text, "m.csv");
    ASSERT_TRUE(guess.has_value());
    guess->reference_system = "EPSG:32610";
    EXPECT_EQ(sentence(read_table_text(text, "m.csv", *guess).error()),
              "m.csv, line 3, b: found easting \"x\", expected a number of metres.");
    const std::string far = "name,easting,northing\na,1e300,4235000\n";
    EXPECT_EQ(read_table_text(far, "m.csv", *guess).error().code, Code::out_of_range);
}

TEST(HostileTable, of_any_bytes_is_read_or_refused_and_nothing_else) {
    std::mt19937_64 random(3);
    const std::string whole = table("a,38.25,-120.5,\"fan 90, fresh\"\nb,38\xC2\xB0 15' N,120 30 W,\nc,38.26,-120.51,x\n");
    for (int i = 0; i < 3'000; ++i) {
        std::string bytes = whole;
        for (int flips = 0; flips < 1 + i % 12; ++flips) bytes[random() % bytes.size()] = static_cast<char>(random());
        const auto guess = guess_table_text(bytes, "m.csv");
        if (!guess) continue;
        const auto file = read_table_text(bytes, "m.csv", *guess);
        if (file) continue;
        EXPECT_EQ(sentence(file.error()).rfind("m.csv", 0), 0U);
    }
}

TEST(HostileLayers, are_refused_with_one_sentence) {
    using namespace std::string_literals;
    const std::string head = "<kml xmlns=\"http://www.opengis.net/kml/2.2\">";
    expect_refused(
        {{"doctype.kml", "<?xml version=\"1.0\"?><!DOCTYPE kml [<!ENTITY a \"aaaa\">]>" + head + "</kml>", Code::malformed,
          ": found a document type declaration, expected a KML file without one"},
         {"cut.kml", head + "<Document><Placemark><Point><coordinates>1,2", Code::malformed, ": found "},
         {"empty.kml", head + "</kml>", Code::malformed, ": found "},
         {"text.kml",
          head + "<Document><Placemark><Point><coordinates>north,west</coordinates></Point></Placemark></Document></kml>",
          Code::wrong_format, ", layer "},
         {"range.kml",
          head + "<Document><Placemark><Point><coordinates>10,50</coordinates></Point></Placemark><Placemark><LineString>"
                 "<coordinates>10,50 200,50</coordinates></LineString></Placemark></Document></kml>",
          Code::out_of_range, ", layer "},
         {"alone.shp", "\0\0\x27\x0A"s + std::string(96, '\0'), Code::missing_file,
          ": found a Shapefile without alone.shx beside it, expected all its parts: .shp, .shx, .dbf and .prj."},
         {"cut.fgb",
          "fgb\x03"
          "fgb\0"s,
          Code::malformed, ": found "},
         {"noise.fgb",
          "fgb\x03"
          "fgb\0"s +
              std::string(3'000, '\xA7'),
          Code::malformed, ": found "},
         {"length.fgb",
          "fgb\x03"
          "fgb\0"s +
              "\xFF\xFF\xFF\x7F"s + std::string(64, '\x01'),
          Code::malformed, ": found "},
         {"points.geojson",
          "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":{},\"geometry\":{\"type\":"
          "\"Point\","
          "\"coordinates\":[190,50]}}]}",
          Code::out_of_range, ", layer points, feature 0: found a place at 190.000000, 50.000000, expected a longitude"}});
}

TEST(HostileLayers, of_a_shapefile_whose_parts_are_spoilt_are_read_or_refused) {
    using namespace std::string_literals;
    const TemporaryFolder folder;
    const auto file = folder.file("a.shp", "\0\0\x27\x0A"s + std::string(200, '\x11'));
    folder.file("a.shx", std::string(120, '\x22'));
    folder.file("a.dbf", std::string(120, '\x33'));
    const auto field = read_field({file});
    ASSERT_FALSE(field.has_value());
    EXPECT_EQ(field.error().file, file.string());
}

TEST(HostilePhotograph, is_refused_or_says_that_it_has_no_place) {
    expect_refused(
        {{"cut.jpg", "\xFF\xD8\xFF", Code::malformed, ": found a picture that cannot be read, expected a JPEG photograph."},
         {"noise.jpg", "\xFF\xD8\xFF\xE1" + std::string(4'000, '\x5A'), Code::malformed,
          ": found a picture that cannot be read"},
         {"zero-length.jpg", std::string("\xFF\xD8\xFF\xE1\0\0", 6), Code::malformed,
          ": found a picture that cannot be read"},
         {"marker.jpg", std::string("\xFF\xD8\xFF\xE1\xFF\xFF", 6), Code::malformed,
          ": found a picture that cannot be read"}});
}

}  // namespace
}  // namespace plugside
