// What a picture's header may say that no camera means.
#include <gtest/gtest.h>

#include "geo/read/photo.h"

namespace plugside {
namespace {

const PictureFacts good{{"EXIF_GPSLatitude", "(38) (15) (0)"},
                        {"EXIF_GPSLatitudeRef", "N"},
                        {"EXIF_GPSLongitude", "(120) (30) (0)"},
                        {"EXIF_GPSLongitudeRef", "W"}};

PictureFacts with(const char* name, const char* value) {
    PictureFacts facts = good;
    facts[std::string("EXIF_") + name] = value;
    return facts;
}

TEST(HostilePhotograph, with_a_place_that_is_none_is_refused_with_the_tag) {
    ASSERT_TRUE(photograph_from(good, "a.jpg").has_value());
    for (const auto& [name, value, place] : std::vector<std::tuple<const char*, const char*, const char*>>{
             {"GPSLatitude", "(nan) (0) (0)", "GPSLatitude"},
             {"GPSLatitude", "(inf)", "GPSLatitude"},
             {"GPSLatitude", "(38) (75) (0)", "GPSLatitude"},
             {"GPSLatitude", "(-38) (0) (0)", "GPSLatitude"},
             {"GPSLatitude", "38 15 0", "GPSLatitude"},
             {"GPSLatitude", "(38) (15) (0) (0)", "GPSLatitude"},
             {"GPSLatitude", "(38", "GPSLatitude"},
             {"GPSLatitudeRef", "X", "GPSLatitude"},
             {"GPSLatitudeRef", "", "GPSLatitude"},
             {"GPSLongitude", "", "GPSLongitude"},
             {"GPSLongitude", "(4294967295) (0) (0)", "GPSLatitude and GPSLongitude"},
             {"GPSLongitudeRef", "N", "GPSLongitude"}}) {
        SCOPED_TRACE(std::string(name) + " " + value);
        const auto read = photograph_from(with(name, value), "a.jpg");
        ASSERT_FALSE(read.has_value());
        EXPECT_EQ(read.error().place, place);
        EXPECT_FALSE(read.error().found.empty());
        EXPECT_FALSE(read.error().expected.empty());
    }
}

TEST(HostilePhotograph, with_a_direction_or_time_that_is_none_is_read_without) {
    for (const auto& [name, value] :
         std::vector<std::pair<const char*, const char*>>{{"GPSImgDirection", "(nan)"},
                                                          {"GPSImgDirection", "(361)"},
                                                          {"GPSImgDirection", "north"},
                                                          {"GPSTimeStamp", "(99) (0) (0)"},
                                                          {"GPSTimeStamp", "(1e300) (0) (0)"},
                                                          {"DateTimeOriginal", "0000:00:00 00:00:00"},
                                                          {"DateTimeOriginal", "2026"},
                                                          {"GPSDOP", "(-1)"},
                                                          {"GPSSatellites", "many"}}) {
        SCOPED_TRACE(std::string(name) + " " + value);
        PictureFacts facts = with(name, value);
        facts["EXIF_GPSDateStamp"] = "2026:03:01";
        facts["EXIF_OffsetTimeOriginal"] = "Z";
        const auto read = photograph_from(facts, "a.jpg");
        ASSERT_TRUE(read.has_value());
        const Mound& mound = read->walks.at(0).marks.at(0).mound;
        EXPECT_FALSE(mound.time.has_value());
        EXPECT_FALSE(mound.receiver.has_value());
        EXPECT_TRUE(mound.note.empty());
    }
}

}  // namespace
}  // namespace plugside
