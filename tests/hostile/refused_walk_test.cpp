// Files that a reader must refuse, with one sentence that names the file and the place. The traps of the vector library that
// are named here (lat="abc" read as 0, lon="1e400" as infinity, a virtual raster named .gpx that makes requests) were seen
// in GDAL 3.6.2.
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <chrono>

#include "geo/read/field_reader.h"
#include "tests/geo/read/gpx_text.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;
using Code = Refusal::Code;

// The refusal of one file; fails the test if it was read after all, or took longer than a person waits.
Refusal refused(const std::filesystem::path& file) {
    const auto start = std::chrono::steady_clock::now();
    const auto field = read_field({file});
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
    EXPECT_LT(took.count(), 10.0);
    EXPECT_FALSE(field.has_value()) << file << " was read";
    if (field) return {};
    EXPECT_EQ(field.error().file, file.string());
    EXPECT_FALSE(field.error().found.empty());
    return field.error();
}

struct Trap {
    const char* name;
    std::string content;
    Code code;
    const char* sentence;  // what follows the file's name
};

const std::vector<Trap>& traps() {
    static const std::vector<Trap> all = {
        {"empty.gpx", "", Code::malformed, ": found an empty file, expected a walk, table, photograph or layer file."},
        {"letters.gpx", gpx(wpt("") + wpt("<name>M031</name>", "abc")), Code::malformed,
         ", line 4, waypoint 2, M031: found lat=\"abc\", expected a number of degrees from -90 to 90."},
        {"huge-number.gpx", gpx(wpt("<name>M031</name>", "38", "1e400")), Code::malformed,
         ", line 3, waypoint 1, M031: found lon=\"1e400\", expected a number of degrees from -180 to 180."},
        {"nan.gpx", gpx(wpt("", "nan")), Code::malformed,
         ", line 3, waypoint 1: found lat=\"nan\", expected a number of degrees from -90 to 90."},
        {"inf.gpx", gpx(wpt("", "38", "-inf")), Code::malformed,
         ", line 3, waypoint 1: found lon=\"-inf\", expected a number of degrees from -180 to 180."},
        {"comma.gpx", gpx(wpt("", "38,5")), Code::malformed,
         ", line 3, waypoint 1: found lat=\"38,5\", expected a number of degrees from -90 to 90."},
        {"hexadecimal.gpx", gpx(wpt("", "0x10")), Code::malformed,
         ", line 3, waypoint 1: found lat=\"0x10\", expected a number of degrees from -90 to 90."},
        {"blank.gpx", gpx(wpt("", " ")), Code::malformed,
         ", line 3, waypoint 1: found lat=\" \", expected a number of degrees from -90 to 90."},
        {"too-far-north.gpx", gpx(wpt("", "90.0001")), Code::out_of_range,
         ", line 3, waypoint 1: found lat=\"90.0001\", expected a number of degrees from -90 to 90."},
        {"too-far-east.gpx", gpx(wpt("", "0", "180.5")), Code::out_of_range,
         ", line 3, waypoint 1: found lon=\"180.5\", expected a number of degrees from -180 to 180."},
        {"no-place.gpx", gpx("<wpt lat=\"1\"><name>M1</name></wpt>"), Code::malformed,
         ", line 3, waypoint 1, M1: found no lon, expected a number of degrees from -180 to 180."},
        {"track.gpx", gpx("<trk><trkseg><trkpt lat=\"1\" lon=\"1\"/>\n<trkpt lat=\"1\" lon=\"x\"/></trkseg></trk>"),
         Code::malformed, ", line 4, track point 2: found lon=\"x\", expected a number of degrees from -180 to 180."},
        {"truncated.gpx", gpx(wpt("<name>M1</name>")).substr(0, 150), Code::malformed,
         ", line 3: found XML that cannot be read ("},
        {"words.gpx", "no\nwalk\nat\nall\n", Code::wrong_format,
         ": found a text that no separator parts into columns (\"no\"), expected a table of marks"},
        {"zeros.gpx", std::string(4096, '\0'), Code::wrong_format,
         ": found a file that starts with \"................\", expected"},
        {"no-close.gpx", "<gpx version=\"1.1\"><wpt lat=\"1\" lon=\"2\">", Code::malformed,
         ", line 1: found XML that cannot be read ("},
        {"mismatched.gpx", "<gpx version=\"1.1\">\n<wpt lat=\"1\" lon=\"2\"></trk></gpx>", Code::malformed,
         ", line 2: found XML that cannot be read (mismatched tag)"},
        {"utf16-garbage.gpx", std::string("\xFF\xFE<\0\x00\xD8\x00\xD8<\0g\0\xFF\xFF", 14), Code::malformed,
         ", line 1: found XML that cannot be read ("},
        {"unknown-encoding.gpx", "<?xml version=\"1.0\" encoding=\"EBCDIC-37\"?><gpx version=\"1.1\"/>", Code::malformed,
         ", line 1: found XML that cannot be read ("},
        {"broken-utf8.gpx", gpx(wpt("<name>\xC3\x28</name>")), Code::malformed, ", line 3: found XML that cannot be read ("},
        {"other-xml.gpx", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>", Code::wrong_format,
         ", line 1: found a document of kind \"svg\", expected a GPX file of version 1.0 or 1.1."},
        {"route.gpx", gpx("<rte>\n<rtept lat=\"x\" lon=\"1\"/></rte>"), Code::malformed,
         ", line 4, route point 1: found lat=\"x\", expected a number of degrees from -90 to 90."},
        {"other-version.gpx", "<gpx version=\"2.0\"/>", Code::wrong_format,
         ", line 1: found GPX version \"2.0\", expected version 1.0 or 1.1."},
        {"other-namespace.gpx", "<gpx version=\"1.1\" xmlns=\"urn:other\"/>", Code::wrong_format,
         ", line 1: found a document of kind \"gpx\""},
        {"entity-bomb.gpx",
         "<?xml version=\"1.0\"?>\n<!DOCTYPE gpx [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b "
         "\"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\"><!ENTITY c \"&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;\">"
         "<!ENTITY d \"&c;&c;&c;&c;&c;&c;&c;&c;&c;&c;\"><!ENTITY e \"&d;&d;&d;&d;&d;&d;&d;&d;&d;&d;\">]><gpx "
         "version=\"1.1\"><wpt lat=\"1\" lon=\"1\"><name>&e;</name></wpt></gpx>",
         Code::malformed,
         ", line 2: found a document type declaration, expected a GPX file without one (declared entities are never read)."},
        {"external-entity.gpx",
         "<!DOCTYPE gpx [<!ENTITY x SYSTEM \"file:///etc/passwd\">]><gpx version=\"1.1\"><wpt lat=\"1\" "
         "lon=\"1\"><name>&x;</name></wpt></gpx>",
         Code::malformed, ", line 1: found a document type declaration, expected"},
        {"undeclared-entity.gpx", gpx(wpt("<name>&x;</name>")), Code::malformed,
         ", line 3: found XML that cannot be read ("},
    };
    return all;
}

TEST(HostileWalk, is_refused_with_one_sentence_that_names_file_and_place) {
    const TemporaryFolder folder;
    for (const Trap& trap : traps()) {
        SCOPED_TRACE(trap.name);
        const auto file = folder.file(trap.name, trap.content);
        const Refusal refusal = refused(file);
        EXPECT_EQ(refusal.code, trap.code);
        const std::string said = sentence(refusal);
        EXPECT_EQ(said.substr(0, file.string().size() + std::string(trap.sentence).size()), file.string() + trap.sentence);
        EXPECT_EQ(said.find('\n'), std::string::npos);
    }
    EXPECT_EQ(folder.entries(), traps().size());
}

TEST(HostileWalk, of_deep_nesting_is_refused) {
    const TemporaryFolder folder;
    std::string deep;
    for (int i = 0; i < 200000; ++i) deep += "<a>";
    EXPECT_NE(refused(folder.file("deep.gpx", gpx("<extensions>" + deep))).found.find("nested more than 64 deep"),
              std::string::npos);
}

TEST(HostileWalk, with_a_giant_text_is_refused) {
    const TemporaryFolder folder;
    EXPECT_EQ(refused(folder.file("long.gpx", gpx(wpt("<name>" + std::string(3'000'000, 'x') + "</name>")))).code,
              Code::too_large);
    EXPECT_EQ(refused(folder.file("lat.gpx", gpx(wpt("", std::string(3'000'000, '9'))))).found.size(),
              std::string("lat=").size() + 65);
}

TEST(HostileWalk, larger_than_half_a_gibibyte_is_refused_unread) {
    const TemporaryFolder folder;
    const auto file = folder.file("big.gpx", gpx(""));
    std::filesystem::resize_file(file, 513ULL * 1024 * 1024);  // a hole: takes no room on the disk
    EXPECT_EQ(refused(file).code, Code::too_large);
}

TEST(HostileWalk, that_is_missing_a_folder_a_pipe_or_a_device_is_refused_without_waiting) {
    const TemporaryFolder folder;
    EXPECT_EQ(sentence(refused(folder / "missing.gpx")),
              (folder / "missing.gpx").string() +
                  ": found no such file, expected a walk, table, photograph or layer file on this computer.");
    std::filesystem::create_directory(folder / "folder.gpx");
    EXPECT_EQ(refused(folder / "folder.gpx").code, Code::not_a_file);
    ASSERT_EQ(::mkfifo((folder / "pipe.gpx").c_str(), 0600), 0);
    EXPECT_EQ(refused(folder / "pipe.gpx").code, Code::not_a_file);
    EXPECT_EQ(refused("/dev/zero").code, Code::not_a_file);
    std::filesystem::create_symlink(folder / "loop.gpx", folder / "loop.gpx");
    EXPECT_EQ(refused(folder / "loop.gpx").code, Code::unreadable);
}

// The reader runs as a user who may not open the file, also when the tests run as root.
TEST(HostileWalk, that_may_not_be_read_is_refused) {
    const TemporaryFolder folder;
    const auto file = folder.file("secret.gpx", gpx(wpt("")));
    std::filesystem::permissions(folder.path(), std::filesystem::perms(0755));
    std::filesystem::permissions(file, std::filesystem::perms::none);
    EXPECT_EXIT(
        {
            if (::geteuid() == 0 && ::seteuid(65534) != 0) std::_Exit(1);
            const auto field = read_field({file});
            std::_Exit(!field && field.error().code == Code::unreadable && field.error().file == file.string() ? 42 : 2);
        },
        ::testing::ExitedWithCode(42), "");
}

TEST(HostileWalk, refuses_all_files_when_one_is_refused) {
    const TemporaryFolder folder;
    const auto good = folder.file("good.gpx", gpx(wpt("<name>a</name>")));
    const auto bad = folder.file("bad.gpx", gpx(wpt("", "abc")));
    ASSERT_TRUE(read_field({good}).has_value());
    const auto field = read_field({good, bad});
    ASSERT_FALSE(field.has_value());
    EXPECT_EQ(field.error().file, bad.string());
}

}  // namespace
}  // namespace plugside
