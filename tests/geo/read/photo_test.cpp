// Photographs whose EXIF is written by exiv2 (Exif.GPSInfo.GPSImgDirection and its neighbours), read through the picture
// driver: two codes that know nothing of each other.
#include "geo/read/photo.h"

#include <gtest/gtest.h>

#include "geo/read/field_reader.h"
#include "geo/read/numbers.h"
#include "tests/geo/read/gpx_text.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

const std::string a_place =
    " -M'set Exif.GPSInfo.GPSLatitude 38/1 15/1 1234/100' -M'set Exif.GPSInfo.GPSLatitudeRef N'"
    " -M'set Exif.GPSInfo.GPSLongitude 120/1 30/1 0/1' -M'set Exif.GPSInfo.GPSLongitudeRef W'";

std::filesystem::path photograph(const TemporaryFolder& folder, const std::string& name, const std::string& exif) {
    const auto file = folder / name;
    const std::string draw =
        "/usr/bin/python3 -c \"from osgeo import gdal; gdal.UseExceptions(); "
        "gdal.GetDriverByName('JPEG').CreateCopy('" +
        file.string() + "', gdal.GetDriverByName('MEM').Create('', 16, 16, 1))\"";
    EXPECT_EQ(run(draw, folder / "said.txt"), 0) << content_of(folder / "said.txt");
    if (exif.empty()) return file;
    EXPECT_EQ(run("exiv2" + exif + " '" + file.string() + "'", folder / "said.txt"), 0) << content_of(folder / "said.txt");
    return file;
}

GeographicFile good(tl::expected<GeographicFile, Refusal> file) {
    EXPECT_TRUE(file.has_value()) << (file ? "" : sentence(file.error()));
    return file.value_or(GeographicFile{});
}

TEST(Photograph, gives_place_time_direction_note_and_receiver) {
    const TemporaryFolder folder;
    const auto file =
        photograph(folder, "IMG 7.jpg",
                   a_place +
                       " -M'set Exif.GPSInfo.GPSImgDirection 12350/100' -M'set Exif.GPSInfo.GPSImgDirectionRef T'"
                       " -M'set Exif.GPSInfo.GPSDateStamp 2026:03:01' -M'set Exif.GPSInfo.GPSTimeStamp 17/1 30/1 55/10'"
                       " -M'set Exif.GPSInfo.GPSDOP 21/10' -M'set Exif.GPSInfo.GPSSatellites 07'"
                       " -M'set Exif.GPSInfo.GPSHPositioningError 4/1' -M'set Exif.Image.ImageDescription fan SE fresh'");
    const GeographicFile read = good(read_photograph(file));
    ASSERT_EQ(read.walks.at(0).marks.size(), 1U);
    const GeographicMark& mark = read.walks[0].marks[0];
    EXPECT_NEAR(mark.at.latitude_degrees, 38.0 + 15.0 / 60.0 + 12.34 / 3600.0, 1e-10);
    EXPECT_NEAR(mark.at.longitude_degrees, -120.5, 1e-12);
    EXPECT_EQ(mark.mound.name, "IMG 7");
    EXPECT_EQ(mark.mound.picture, "IMG 7.jpg");
    EXPECT_EQ(mark.mound.time, parse_utc_time("2026-03-01T17:30:05.5Z"));
    EXPECT_EQ(mark.fan_degrees, 135.0);  // what the note says, not where the camera looked
    EXPECT_EQ(mark.mound.note, "fan SE fresh; photograph looks 124 degrees");
    EXPECT_EQ(mark.mound.receiver, (ReceiverFacts{2.1, 7, "", 4.0}));
    EXPECT_TRUE(read.findings.empty()) << read.findings[0].sentence;
}

TEST(Photograph, keeps_a_magnetic_direction_as_one_and_no_fan_of_it) {
    const TemporaryFolder folder;
    const auto file = photograph(
        folder, "a.jpg",
        a_place +
            " -M'set Exif.GPSInfo.GPSImgDirection 12300/100' -M'set Exif.GPSInfo.GPSImgDirectionRef M'"
            " -M'set Exif.Photo.DateTimeOriginal 2026:03:01 09:30:05' -M'set Exif.Photo.OffsetTimeOriginal -08:00'");
    const GeographicFile read = good(read_photograph(file));
    const GeographicMark& mark = read.walks.at(0).marks.at(0);
    EXPECT_EQ(mark.mound.note, "photograph looks 123 degrees magnetic");
    EXPECT_FALSE(mark.fan_degrees.has_value());
    EXPECT_EQ(mark.mound.time, parse_utc_time("2026-03-01T17:30:05Z"));
    ASSERT_EQ(read.findings.size(), 1U);
    EXPECT_NE(read.findings[0].sentence.find("magnetic north"), std::string::npos);
}

TEST(Photograph, without_a_place_or_a_zone_says_so) {
    const TemporaryFolder folder;
    const GeographicFile nowhere = good(read_photograph(photograph(folder, "n.jpg", "")));
    EXPECT_TRUE(nowhere.walks.at(0).marks.empty());
    EXPECT_EQ(nowhere.findings.at(0).sentence, "the photograph does not say where it was taken; it is not used");
    const GeographicFile timeless = good(
        read_photograph(photograph(folder, "t.jpg", a_place + " -M'set Exif.Photo.DateTimeOriginal 2026:03:01 09:30:05'")));
    EXPECT_FALSE(timeless.walks.at(0).marks.at(0).mound.time.has_value());
    EXPECT_EQ(timeless.findings.at(0).sentence, "the photograph's clock names no zone; its time is not used");
}

TEST(Photographs, are_one_walk_and_no_marks_beside_a_mark_that_names_them) {
    const TemporaryFolder folder;
    const auto one = photograph(folder, "one.jpg", a_place);
    const auto two = photograph(folder, "two.jpg", a_place);
    const auto three = photograph(folder, "three.jpg", a_place);
    const auto walk = folder.file("walk.gpx", gpx(wpt("<name>a</name><link href=\"pictures/two.jpg\"/>")));
    const auto field = read_field({walk, one, two, three});
    ASSERT_TRUE(field.has_value()) << sentence(field.error());
    ASSERT_EQ(field->survey.walks.size(), 2U);
    EXPECT_EQ(field->survey.walks[1].source, "photographs");
    ASSERT_EQ(field->survey.mounds.size(), 3U);
    EXPECT_EQ(field->survey.mounds[0].picture, "two.jpg");
    EXPECT_EQ(field->survey.mounds[1].name, "one");
    EXPECT_EQ(field->survey.mounds[2].name, "three");
    const auto again = add_to_field(*field, {one, three});
    ASSERT_TRUE(again.has_value());
    EXPECT_EQ(again->survey, field->survey);
}

}  // namespace
}  // namespace plugside
