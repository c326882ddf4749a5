// Files of positions that are none, that lie, or that are caught in the middle.
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <random>

#include "core/survey/refusal.h"
#include "geo/read/position_file.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using testing_support::TemporaryFolder;

PositionReading read(const std::string& text) {
    FileEnd end;
    end.bytes = text;
    end.size = text.size();
    end.first_line = text.substr(0, text.find('\n'));
    return read_positions(end, "track");
}

constexpr const char* whole = "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47\n";

TEST(HostilePositions, what_is_no_plain_file_is_refused_with_a_sentence) {
    const TemporaryFolder folder;
    ASSERT_EQ(mkfifo((folder / "pipe").c_str(), 0600), 0);
    for (const std::filesystem::path& file :
         {folder / "pipe", folder / "missing", folder / ".", std::filesystem::path("/dev/zero"),
          std::filesystem::path("/vsicurl/http://localhost/x")}) {
        const auto end = end_of_file(file);
        ASSERT_FALSE(end.has_value()) << file;
        EXPECT_NE(sentence(end.error()).find("expected"), std::string::npos) << sentence(end.error());
    }
}

TEST(HostilePositions, nothing_but_whole_positions_becomes_a_place) {
    for (const std::string& text : {std::string(),
                                    std::string("\n\n\n"),
                                    std::string("$"),
                                    std::string("$*\n"),
                                    std::string("$*00\n"),
                                    std::string("$,*2C\n"),
                                    std::string("$GPGGA*56\n"),
                                    std::string("<"),
                                    std::string("<gpx"),
                                    std::string("<trkpt"),
                                    std::string("<trkpt/>"),
                                    std::string("<trkpt lat=\"1\" lon=\"2\">"),
                                    std::string("<gpx><wpt lat=\"191\" lon=\"0\"/></gpx>"),
                                    std::string("<wpt lat=\"1\" lon=\"&x;\"/>"),
                                    std::string("<!DOCTYPE x [<!ENTITY a \"b\">]><wpt lat=\"&a;\" lon=\"1\"/>"),
                                    std::string("lat,lon\nnan,inf\n"),
                                    std::string("lat,lon\n1e400,2\n"),
                                    std::string("a,b\nc,d\n"),
                                    std::string(whole, 40),
                                    std::string("\xFF\xFE$\0G\0", 6),
                                    std::string(70000, 'x'),
                                    "$" + std::string(60000, ',') + "\n"}) {
        const auto reading = read(text);
        EXPECT_FALSE(reading.last) << text.substr(0, 60);
        for (const std::string& remark : reading.remarks) {
            EXPECT_EQ(remark.find('\n'), std::string::npos);
            EXPECT_LT(remark.size(), 600U);
        }
    }
}

TEST(HostilePositions, an_element_that_hides_another_is_not_taken) {
    const auto reading = read("<gpx><trkpt lat=\"41\" lon=\"-104\"><name></wpt><wpt lat=\"1\" lon=\"1\"></name></trkpt>");
    EXPECT_FALSE(reading.last);
    EXPECT_EQ(reading.remarks.size(), 1U);
}

TEST(HostilePositions, cut_off_anywhere_a_file_tells_no_other_place) {
    const auto place = read(whole).last->at;
    const std::string twice = std::string(whole) + whole;
    for (std::size_t cut = 0; cut <= twice.size(); ++cut) {
        const auto reading = read(twice.substr(0, cut));
        if (reading.last) {
            EXPECT_EQ(reading.last->at, place) << cut;
        }
        EXPECT_EQ(reading.last.has_value(), cut >= twice.size() / 2) << cut;
    }
}

TEST(HostilePositions, random_bytes_among_sentences_never_become_a_place) {
    std::mt19937 random(20260301);
    for (int round = 0; round < 2000; ++round) {
        std::string text = std::string(whole) + whole;
        for (int i = 0; i < 1 + round % 12; ++i) text[random() % text.size()] = static_cast<char>(random() % 255 + 1);
        const auto reading = read(text);
        if (reading.last) {
            EXPECT_GE(reading.last->at.latitude_degrees, -90.0);
            EXPECT_LE(reading.last->at.latitude_degrees, 90.0);
        }
        EXPECT_LE(reading.remarks.size(), PositionReading::most_remarks);
    }
}

}  // namespace
}  // namespace plugside
