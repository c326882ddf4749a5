// Pictures that are damaged, absurd or point elsewhere: each is refused with a reason, or shows as transparent.
#include <gtest/gtest.h>

#include <fstream>

#include "geo/imagery/imagery_source.h"
#include "geo/imagery/tile_maker.h"
#include "tests/geo/imagery/pictures.h"
#include "tests/geo/temporary_folder.h"
#include "tests/hostile/listener.h"

namespace plugside {
namespace {

using namespace testing_support;

PictureMade plain_picture() {
    PictureMade made;
    made.system = "EPSG:32613";
    made.placement = {508000.0, 0.5, 0.0, 4539000.0, 0.0, -0.5};
    return made;
}

const LocalFrame field = LocalFrame::centred_on({-104.9, 41.0});

std::string refused(const std::filesystem::path& file) {
    const auto source = ImagerySource::open(file, field);
    return source ? "" : sentence(source.error());
}

TEST(RefusedImagery, is_what_is_no_picture_or_no_plain_file) {
    const TemporaryFolder folder;
    for (const std::string& content :
         {std::string(), std::string("hello"), std::string("II*\0", 4), std::string("II*\0\xFF\xFF\xFF\xFF", 8),
          std::string("\x89PNG\r\n\x1A\n"), std::string("\xFF\xD8\xFF"), std::string("SQLite format 3\0", 16),
          std::string("\0\0\0\x0CjP  \r\n\x87\n", 12)})
        EXPECT_NE(refused(folder.file("bad.tif", content)), "") << content;
    EXPECT_NE(refused(folder / "missing.tif").find("no such file"), std::string::npos);
    EXPECT_NE(refused(folder.path()).find("a folder"), std::string::npos);
    for (const char* name : {"/vsicurl/http://127.0.0.1/a.tif", "http://127.0.0.1/a.tif", "/vsizip/a.zip/a.tif",
                             "<VRTDataset/>", "GTIFF_DIR:1:a.tif", "GPKG:a.gpkg:t", "MEM:::DATAPOINTER=1,PIXELS=1,LINES=1"})
        EXPECT_NE(refused(name), "") << name;
}

TEST(RefusedImagery, is_a_virtual_raster_and_none_is_followed_to) {
    Listener listener;
    const TemporaryFolder folder;
    make_geotiff(folder / "good.tif", plain_picture());
    for (const std::string& source : {(folder / "good.tif").string(), "/vsicurl/" + listener.url() + "/a.tif"}) {
        const std::string content =
            "<VRTDataset rasterXSize=\"10\" rasterYSize=\"10\"><VRTRasterBand dataType=\"Byte\" band=\"1\">"
            "<SimpleSource><SourceFilename>" +
            source + "</SourceFilename><SourceBand>1</SourceBand></SimpleSource></VRTRasterBand></VRTDataset>";
        for (const char* name : {"a.vrt", "a.tif", "a.png"}) EXPECT_NE(refused(folder.file(name, content)), "") << name;
        EXPECT_EQ(listener.connections(), 0);
    }
    prepare_picture_library();
    for (const char* driver : {"VRT", "MEM", "WMS", "HTTP", "GTI", "DERIVED"})
        EXPECT_EQ(GetGDALDriverManager()->GetDriverByName(driver), nullptr) << driver;
    EXPECT_TRUE(listener.notices_a_connection());
}

TEST(RefusedImagery, is_not_helped_by_side_files_that_point_elsewhere) {
    Listener listener;
    const TemporaryFolder folder;
    make_geotiff(folder / "p.tif", plain_picture());
    folder.file("p.tif.aux.xml", "<PAMDataset><SRS>" + listener.url() +
                                     "</SRS><Metadata domain=\"OVERVIEWS\"><MDI key=\"OVERVIEW_FILE\">/vsicurl/" +
                                     listener.url() + "/o.tif</MDI></Metadata></PAMDataset>");
    folder.file("p.tif.ovr", "<VRTDataset rasterXSize=\"5\" rasterYSize=\"5\"/>");
    folder.file("p.tif.msk", listener.url());
    const auto source = ImagerySource::open(folder / "p.tif", field);
    ASSERT_TRUE(source) << sentence(source.error());
    EXPECT_EQ(source->facts().reduced_copies, 0);
    EXPECT_EQ(listener.connections(), 0);

    // the same within the file
    PictureMade made = plain_picture();
    for (const std::string& elsewhere : {"/vsicurl/" + listener.url() + "/o.tif", (folder / "p.tif").string()}) {
        made.also = [&](GDALDataset& dataset) { dataset.SetMetadataItem("OVERVIEW_FILE", elsewhere.c_str(), "OVERVIEWS"); };
        make_geotiff(folder / "inside.tif", made);
        EXPECT_NE(refused(folder / "inside.tif").find("the name of another file"), std::string::npos);
    }
    EXPECT_EQ(listener.connections(), 0);
    EXPECT_TRUE(listener.notices_a_connection());
}

TEST(RefusedImagery, is_a_position_that_cannot_be_computed_with) {
    const TemporaryFolder folder;
    for (const GeoTransform& t :
         {GeoTransform{508000.0, std::nan(""), 0.0, 4539000.0, 0.0, -0.5},
          GeoTransform{508000.0, 0.0, 0.0, 4539000.0, 0.0, 0.0}, GeoTransform{508000.0, 1.0, 1.0, 4539000.0, 1.0, 1.0},
          GeoTransform{HUGE_VAL, 0.5, 0.0, 4539000.0, 0.0, -0.5},
          GeoTransform{508000.0, 1e-320, 0.0, 4539000.0, 0.0, 1e-320}}) {
        PictureMade made = plain_picture();
        made.placement = t;
        make_geotiff(folder / "p.tif", made);
        EXPECT_NE(refused(folder / "p.tif"), "");
    }
    PictureMade made = plain_picture();
    made.placement = {5e30, 0.5, 0.0, 4e30, 0.0, -0.5};
    make_geotiff(folder / "far.tif", made);
    EXPECT_NE(refused(folder / "far.tif").find("nowhere near"), std::string::npos);
}

TEST(RefusedImagery, is_a_world_file_that_is_none) {
    const TemporaryFolder folder;
    make_geotiff(folder / "p.tif", {});
    copy_picture(folder / "p.tif", folder / "p.png", "PNG");
    for (const auto& [content, reason] : {std::pair{"", "0 numbers"},
                                          {"1\n0\n0\n-1\n", "4 numbers"},
                                          {"1\n0\nzero\n-1\n5\n5\n", "line 3"},
                                          {"nan\n0\n0\n-1\n5\n5\n", "line 1"},
                                          {"1\n0\n0\n0\n5\n5\n", "into a line"},
                                          {"1\n1e999\n0\n-1\n5\n5\n", "line 2"}}) {
        folder.file("p.pgw", content);
        EXPECT_NE(refused(folder / "p.png").find(reason), std::string::npos) << content << refused(folder / "p.png");
    }
    folder.file("p.pgw", std::string(70000, '1'));
    EXPECT_NE(refused(folder / "p.png").find("over 64 KiB"), std::string::npos);
}

TEST(RefusedImagery, is_a_picture_of_absurd_size) {
    const TemporaryFolder folder;
    PictureMade made = plain_picture();
    const auto empty = [&](int width, int height, int bands, const std::vector<std::string>& written) {
        CPLStringList options;
        for (const std::string& option : written) options.AddString(option.c_str());
        prepare_picture_library();
        TestDataset dataset(GetGDALDriverManager()->GetDriverByName("GTiff")->Create(
            (folder / "p.tif").c_str(), width, height, bands, GDT_Byte, options.List()));
        ASSERT_TRUE(dataset);
        dataset->SetGeoTransform(made.placement.data());
        const OGRSpatialReference system = system_named(made.system);
        dataset->SetSpatialRef(&system);
    };
    empty(1900000000, 100, 1, {"SPARSE_OK=YES", "TILED=YES", "BLOCKXSIZE=65536", "BLOCKYSIZE=65536", "COMPRESS=DEFLATE"});
    EXPECT_NE(refused(folder / "p.tif").find("pieces of"), std::string::npos);
    empty(1500000000, 1000, 1, {"SPARSE_OK=YES", "TILED=YES", "COMPRESS=DEFLATE", "BLOCKXSIZE=16384", "BLOCKYSIZE=4096"});
    EXPECT_NE(refused(folder / "p.tif").find("a side"), std::string::npos);
}

TEST(RefusedImagery, shows_damaged_parts_as_transparent) {
    const TemporaryFolder folder;
    PictureMade made = plain_picture();
    made.options = {"TILED=YES", "BLOCKXSIZE=16", "BLOCKYSIZE=16", "COMPRESS=DEFLATE"};
    make_geotiff(folder / "p.tif", made);
    const std::string whole = content_of(folder / "p.tif");
    ImageryAnswers answers;
    answers.placement = PicturePlacement{{0.0, 32.0}, {0.32, 0.0}, {0.0, -0.32}};
    std::size_t opened = 0;
    for (std::size_t length = 8; length < whole.size(); length += whole.size() / 60 + 1) {
        const auto file = folder.file("cut.tif", std::string_view(whole).substr(0, length));
        const auto source = ImagerySource::open(file, field, answers);
        if (!source) continue;
        ++opened;
        auto maker = TileMaker::on(*source);
        EXPECT_TRUE(!maker || maker->make({3, 0, 0}, TileCare::quick).has_value());
    }
    EXPECT_GT(opened, 0U);
    // every byte of the head turned over, one after another
    for (std::size_t at = 0; at < std::min<std::size_t>(whole.size(), 700); at += 3) {
        std::string turned = whole;
        turned[at] = static_cast<char>(~turned[at]);
        const auto source = ImagerySource::open(folder.file("turned.tif", turned), field, answers);
        if (!source) continue;
        auto maker = TileMaker::on(*source);
        EXPECT_TRUE(!maker || maker->make({3, 0, 0}, TileCare::quick).has_value());
    }
}

}  // namespace
}  // namespace plugside
