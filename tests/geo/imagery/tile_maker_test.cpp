#include "geo/imagery/tile_maker.h"

#include <gdalwarper.h>
#include <gtest/gtest.h>

#include "tests/geo/imagery/pictures.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

// A picture of `span` metres about the field's centre, in another system.
struct Setting {
    const char* name;
    GeographicPoint centre;
    const char* system;
    double turn_degrees = 0.0;  // of the picture's columns, anticlockwise
};

constexpr double span_m = 60.0;

GeoTransform placed_about(const Setting& setting, int pixels) {
    OGRSpatialReference world = system_named("EPSG:4326");
    OGRSpatialReference system = system_named(setting.system);
    const std::unique_ptr<OGRCoordinateTransformation> way(OGRCreateCoordinateTransformation(&world, &system));
    double x = setting.centre.longitude_degrees;
    double y = setting.centre.latitude_degrees;
    EXPECT_TRUE(way->Transform(1, &x, &y));
    double across = span_m / pixels;
    double down = span_m / pixels;
    if (system.IsGeographic()) {
        down /= 111200.0;
        across = down / std::cos(setting.centre.latitude_degrees * M_PI / 180.0);
    } else if (std::string(setting.system) == "EPSG:3857") {
        across = down = span_m / pixels / std::cos(setting.centre.latitude_degrees * M_PI / 180.0);
    }
    const double c = std::cos(setting.turn_degrees * M_PI / 180.0);
    const double s = std::sin(setting.turn_degrees * M_PI / 180.0);
    GeoTransform t{0, across * c, down * s, 0, across * s, -down * c};
    t[0] = x - 0.5 * pixels * (t[1] + t[2]);
    t[3] = y - 0.5 * pixels * (t[4] + t[5]);
    return t;
}

// What the raster library's own warp makes of the tile's ground.
std::vector<std::uint8_t> warped(const std::filesystem::path& picture, const LocalFrame& frame, const TilePlace& place,
                                 int size, GDALResampleAlg how, const std::filesystem::path& scratch) {
    const std::string plane = "+proj=tmerc +lat_0=" + std::to_string(frame.centre().latitude_degrees) +
                              " +lon_0=" + std::to_string(frame.centre().longitude_degrees) +
                              " +k=1 +x_0=0 +y_0=0 +datum=WGS84 +units=m +no_defs";
    const LocalPoint corner = tile_corner(place, size);
    const double resolution = tile_resolution_m(place.zoom);
    TestDataset target(
        GetGDALDriverManager()->GetDriverByName("GTiff")->Create(scratch.c_str(), size, size, 3, GDT_Byte, nullptr));
    GeoTransform t{corner.east_m, resolution, 0, corner.north_m + resolution * size, 0, -resolution};
    target->SetGeoTransform(t.data());
    OGRSpatialReference system = system_named(plane);
    target->SetSpatialRef(&system);
    const TestDataset source = open_picture(picture);
    EXPECT_EQ(GDALReprojectImage(source.get(), nullptr, target.get(), nullptr, how, 0.0, 0.0, nullptr, nullptr, nullptr),
              CE_None);
    std::vector<std::uint8_t> pixels(static_cast<std::size_t>(size) * static_cast<std::size_t>(size) * 3);
    EXPECT_EQ(target->RasterIO(GF_Read, 0, 0, size, size, pixels.data(), size, size, GDT_Byte, 3, nullptr, 3, 3 * size, 1,
                               nullptr),
              CE_None);
    return pixels;
}

class WarpedTiles : public ::testing::TestWithParam<Setting> {};

// Red and green tell column and row in 2.5 steps a pixel: a difference of 1.25 is half a pixel of the picture.
TEST_P(WarpedTiles, lie_within_half_a_pixel_of_the_librarys_own_warp) {
    const TemporaryFolder folder;
    const LocalFrame frame = LocalFrame::centred_on(GetParam().centre);
    PictureMade made;
    made.system = GetParam().system;
    made.placement = placed_about(GetParam(), made.width);
    make_geotiff(folder / "ramp.tif", made);
    const auto source = ImagerySource::open(folder / "ramp.tif", frame);
    ASSERT_TRUE(source) << sentence(source.error());
    EXPECT_NEAR(source->facts().metres_per_pixel, span_m / made.width, 0.02);
    auto maker = TileMaker::on(*source);
    ASSERT_TRUE(maker);
    for (const int zoom : {2, 1})  // .25 m: enlarged; .5 m: nearly as it is
        for (const auto& [column, row] : {std::pair{0, 0}, std::pair{-1, 0}, std::pair{0, -1}}) {
            const TilePlace place{zoom, column, row};
            const auto tile = maker->make(place, TileCare::whole);
            ASSERT_TRUE(tile && !tile->empty);
            const auto reference =
                warped(folder / "ramp.tif", frame, place, tile->size, GRA_Bilinear, folder / "warped.tif");
            int worst = 0;
            std::size_t compared = 0;
            for (std::size_t i = 0; i < reference.size() / 3; ++i) {
                const std::uint8_t* ours = &tile->rgba[i * 4];
                // beyond the picture, and within a pixel of its edge, where the library weighs the inside alone
                if (ours[3] != 255 || reference[i * 3 + 2] == 0) continue;
                if (ours[0] < 3 || ours[1] < 3 || ours[0] > 244 || ours[1] > 244) continue;
                worst = std::max({worst, std::abs(ours[0] - reference[i * 3]), std::abs(ours[1] - reference[i * 3 + 1])});
                ++compared;
            }
            EXPECT_GT(compared, 2000U);
            EXPECT_LE(worst, 1) << place.zoom << " " << place.column << " " << place.row;
        }
}

INSTANTIATE_TEST_SUITE_P(
    Imagery, WarpedTiles,
    ::testing::Values(Setting{"utm", {-104.9, 41.0}, "EPSG:32613"}, Setting{"other_datum", {-104.9, 41.0}, "EPSG:26913"},
                      Setting{"geographic", {-104.9, 41.0}, "EPSG:4326"}, Setting{"web", {-104.9, 41.0}, "EPSG:3857"},
                      Setting{"turned", {-104.9, 41.0}, "EPSG:32613", 33.0},
                      Setting{"turned_over_half", {9.1, 48.5}, "EPSG:25832", 200.0},
                      Setting{"far_north", {15.6, 78.2}, "EPSG:32633"}, Setting{"polar", {24.0, 79.9}, "EPSG:3413"},
                      Setting{"degrees_far_north", {24.0, 79.9}, "EPSG:4326"},
                      Setting{"southern", {147.0, -42.0}, "EPSG:32755"},
                      Setting{"at_the_180th_meridian", {179.9999, -17.5}, "EPSG:4326"},
                      Setting{"past_the_180th_meridian", {-179.9999, -17.5}, "EPSG:4326"}),
    [](const auto& instance) { return std::string(instance.param.name); });

TEST(TileMaker, averages_as_the_librarys_own_warp_does_when_it_reduces) {
    const TemporaryFolder folder;
    const LocalFrame frame = LocalFrame::centred_on({-104.9, 41.0});
    PictureMade made;
    made.width = made.height = 1000;  // 6 cm
    made.system = "EPSG:32613";
    made.placement = placed_about({"", {-104.9, 41.0}, "EPSG:32613"}, made.width);
    made.value = [](int band, int column, int row) { return band == 0 ? column / 4 : band == 1 ? row / 4 : 128; };
    for (const bool overviews : {false, true}) {
        made.overviews = overviews ? std::vector<int>{2, 4, 8} : std::vector<int>{};
        make_geotiff(folder / "fine.tif", made);
        const auto source = ImagerySource::open(folder / "fine.tif", frame);
        ASSERT_TRUE(source);
        EXPECT_EQ(source->facts().reduced_copies, overviews ? 3 : 0);
        auto maker = TileMaker::on(*source);
        ASSERT_TRUE(maker);
        for (const int zoom : {2, 1, 0}) {  // 4, 8 and 17 pixels to one: 1 to 4 steps of colour a pixel of the tile
            const auto tile = maker->make({zoom, 0, 0}, TileCare::whole);
            ASSERT_TRUE(tile && !tile->empty);
            const auto reference =
                warped(folder / "fine.tif", frame, {zoom, 0, 0}, tile->size, GRA_Average, folder / "warped.tif");
            const double half_a_pixel = 0.5 * tile_resolution_m(zoom) / 0.06 / 4.0;
            std::size_t compared = 0;
            for (std::size_t i = 0; i < reference.size() / 3; ++i) {
                const std::uint8_t* ours = &tile->rgba[i * 4];
                if (ours[3] != 255 || ours[0] > 244 || ours[1] < 6 || reference[i * 3 + 2] != 128) continue;
                ASSERT_LE(std::abs(ours[0] - reference[i * 3]), half_a_pixel + 0.5) << zoom;
                ASSERT_LE(std::abs(ours[1] - reference[i * 3 + 1]), half_a_pixel + 0.5) << zoom;
                ++compared;
            }
            EXPECT_GT(compared, 300U);
        }
    }
}

struct MadeTile {
    ImageryTile tile;
    const std::uint8_t* at(double east_m, double north_m) const {  // of tile (0, 0) at zoom 2
        const auto column = static_cast<std::size_t>(east_m * 4.0);
        const auto row = static_cast<std::size_t>(tile.size) - 1 - static_cast<std::size_t>(north_m * 4.0);
        return &tile.rgba[(row * static_cast<std::size_t>(tile.size) + column) * 4];
    }
};

// A picture of one metre pixels whose lower left is the field's centre, placed by pairs: column = east, row from the top.
MadeTile made_tile(const std::filesystem::path& file, double height = 64.0) {
    ImageryAnswers answers;
    answers.placement = PicturePlacement{{0.0, height}, {1.0, 0.0}, {0.0, -1.0}};
    const auto source = ImagerySource::open(file, LocalFrame(), answers);
    EXPECT_TRUE(source) << (source ? "" : sentence(source.error()));
    auto maker = TileMaker::on(*source);
    EXPECT_TRUE(maker);
    auto tile = maker->make({2, 0, 0}, TileCare::whole);
    EXPECT_TRUE(tile && !tile->empty);
    return {std::move(*tile)};
}

PictureMade small(int bands) {
    PictureMade made;
    made.width = made.height = 64;
    made.bands = bands;
    return made;
}

TEST(TileMaker, leaves_out_pixels_without_data) {
    const TemporaryFolder folder;
    PictureMade made = small(3);
    made.value = [](int, int column, int) { return column < 32 ? 7.0 : 200.0; };
    made.also = [](GDALDataset& dataset) {
        for (int band = 1; band <= 3; ++band) dataset.GetRasterBand(band)->SetNoDataValue(7.0);
    };
    make_geotiff(folder / "p.tif", made);
    const MadeTile tile = made_tile(folder / "p.tif");
    EXPECT_EQ(tile.at(10.0, 30.0)[3], 0);
    EXPECT_EQ(tile.at(50.0, 30.0)[3], 255);
    EXPECT_EQ(tile.at(50.0, 30.0)[0], 200);
}

TEST(TileMaker, multiplies_colours_by_alpha) {
    const TemporaryFolder folder;
    PictureMade made = small(4);
    made.options = {"ALPHA=YES", "PHOTOMETRIC=RGB"};
    made.value = [](int band, int column, int) { return band == 3 ? (column < 32 ? 0.0 : 128.0) : 200.0; };
    make_geotiff(folder / "p.tif", made);
    const MadeTile tile = made_tile(folder / "p.tif");
    EXPECT_EQ(tile.at(10.0, 30.0)[3], 0);
    EXPECT_EQ(tile.at(10.0, 30.0)[0], 0);
    EXPECT_EQ(tile.at(50.0, 30.0)[3], 128);
    EXPECT_NEAR(tile.at(50.0, 30.0)[0], 100, 1);
}

TEST(TileMaker, heeds_a_mask_within_the_file) {
    const TemporaryFolder folder;
    PictureMade made = small(3);
    make_geotiff(folder / "p.tif", made);
    {
        CPLSetThreadLocalConfigOption("GDAL_TIFF_INTERNAL_MASK", "YES");
        const TestDataset dataset = open_picture(folder / "p.tif", GDAL_OF_UPDATE);
        ASSERT_EQ(dataset->CreateMaskBand(GMF_PER_DATASET), CE_None);
        std::vector<std::uint8_t> mask(64 * 64, 255);
        for (std::size_t i = 0; i < mask.size(); ++i)
            if (i % 64 < 32) mask[i] = 0;
        ASSERT_EQ(dataset->GetRasterBand(1)->GetMaskBand()->RasterIO(GF_Write, 0, 0, 64, 64, mask.data(), 64, 64, GDT_Byte,
                                                                     0, 0, nullptr),
                  CE_None);
        CPLSetThreadLocalConfigOption("GDAL_TIFF_INTERNAL_MASK", nullptr);
    }
    const MadeTile tile = made_tile(folder / "p.tif");
    EXPECT_EQ(tile.at(10.0, 30.0)[3], 0);
    EXPECT_EQ(tile.at(50.0, 30.0)[3], 255);
}

TEST(TileMaker, stretches_sixteen_bits_from_the_second_to_the_ninety_eighth_percentile) {
    const TemporaryFolder folder;
    PictureMade made = small(1);
    made.type = GDT_UInt16;
    made.value = [](int, int column, int row) { return column == 0 && row < 30 ? 65535.0 : 1000.0 + 10.0 * column; };
    make_geotiff(folder / "p.tif", made);
    const MadeTile tile = made_tile(folder / "p.tif");
    EXPECT_LT(tile.at(2.5, 10.5)[0], 12);
    EXPECT_NEAR(tile.at(32.5, 10.5)[0], 128, 6);
    EXPECT_GT(tile.at(62.5, 10.5)[0], 245);
    EXPECT_EQ(tile.at(32.5, 10.5)[0], tile.at(32.5, 10.5)[2]);
}

TEST(TileMaker, leaves_out_fractions_that_are_no_numbers) {
    const TemporaryFolder folder;
    PictureMade made = small(1);
    made.type = GDT_Float32;
    made.value = [](int, int column, int) { return column < 32 ? std::nan("") : 0.01 * column; };
    make_geotiff(folder / "p.tif", made);
    const MadeTile tile = made_tile(folder / "p.tif");
    EXPECT_EQ(tile.at(10.0, 30.0)[3], 0);
    EXPECT_EQ(tile.at(50.0, 30.0)[3], 255);
}

TEST(TileMaker, looks_colours_up_in_a_palette) {
    const TemporaryFolder folder;
    PictureMade made = small(1);
    made.value = [](int, int column, int) { return column < 32 ? 3.0 : 4.0; };
    made.also = [](GDALDataset& dataset) {
        GDALColorTable table;
        const GDALColorEntry brown{120, 80, 40, 255};
        const GDALColorEntry green{10, 200, 30, 255};
        table.SetColorEntry(3, &brown);
        table.SetColorEntry(4, &green);
        dataset.GetRasterBand(1)->SetColorTable(&table);
    };
    make_geotiff(folder / "p.tif", made);
    const MadeTile tile = made_tile(folder / "p.tif");
    EXPECT_EQ(tile.at(10.0, 30.0)[0], 120);
    EXPECT_EQ(tile.at(10.0, 30.0)[2], 40);
    EXPECT_EQ(tile.at(50.0, 30.0)[1], 200);
    EXPECT_EQ(tile.at(63.9, 63.9)[3], 255);
    EXPECT_EQ(tile.at(0.1, 0.1)[3], 255);
}

TEST(TileMaker, is_transparent_beyond_the_picture_and_empty_far_from_it) {
    const TemporaryFolder folder;
    PictureMade made = small(3);
    make_geotiff(folder / "p.tif", made);
    ImageryAnswers answers;
    answers.placement = PicturePlacement{{10.0, 20.0}, {0.25, 0.0}, {0.0, -0.25}};
    const auto source = ImagerySource::open(folder / "p.tif", LocalFrame(), answers);
    ASSERT_TRUE(source);
    auto maker = TileMaker::on(*source);
    ASSERT_TRUE(maker);
    const auto tile = maker->make({2, 0, 0}, TileCare::quick);
    ASSERT_TRUE(tile && !tile->empty);
    const MadeTile seen{*tile};
    EXPECT_EQ(seen.at(5.0, 10.0)[3], 0);
    EXPECT_EQ(seen.at(15.0, 10.0)[3], 255);
    EXPECT_EQ(seen.at(30.0, 10.0)[3], 0);
    const auto far = maker->make({2, 50, 50}, TileCare::quick);
    ASSERT_TRUE(far);
    EXPECT_TRUE(far->empty);
    std::stop_source stop;
    stop.request_stop();
    EXPECT_FALSE(maker->make({2, 0, 0}, TileCare::whole, stop.get_token()).has_value());
}

TEST(TileMaker, answers_roughly_about_a_large_picture_without_copies_and_wholly_when_asked) {
    const TemporaryFolder folder;
    PictureMade made;
    made.width = made.height = 2048;
    made.bands = 1;
    made.options = {"TILED=YES", "BLOCKXSIZE=64", "BLOCKYSIZE=64", "COMPRESS=DEFLATE"};
    made.value = [](int, int column, int row) { return (column + row) / 16; };
    ImageryAnswers answers;
    answers.placement = PicturePlacement{{0.0, 128.0}, {0.0625, 0.0}, {0.0, -0.0625}};
    for (const bool tiled : {true, false}) {
        if (!tiled) made.options = {"COMPRESS=DEFLATE"};
        make_geotiff(folder / "large.tif", made);
        const auto source = ImagerySource::open(folder / "large.tif", LocalFrame(), answers);
        ASSERT_TRUE(source);
        auto maker = TileMaker::on(*source, {.size = 256, .quick_bytes = 750000.0});
        ASSERT_TRUE(maker);
        const auto rough = maker->make({1, 0, 0}, TileCare::quick);
        const auto fine = maker->make({1, 0, 0}, TileCare::whole);
        ASSERT_TRUE(rough && fine && !rough->empty);
        EXPECT_TRUE(rough->rough);
        EXPECT_FALSE(fine->rough);
        int worst = 0;
        for (std::size_t i = 0; i < fine->rgba.size(); i += 4)
            worst = std::max(worst, std::abs(fine->rgba[i] - rough->rgba[i]));
        EXPECT_LE(worst, 40);  // a block's middle is at most a few blocks away
        EXPECT_GT(worst, 0);
    }
}

TEST(TileMaker, counts_the_bytes_of_a_packed_picture_dearer) {
    const TemporaryFolder folder;
    PictureMade made;
    made.width = made.height = 1024;
    made.bands = 1;
    ImageryAnswers answers;
    answers.placement = PicturePlacement{{0.0, 64.0}, {0.0625, 0.0}, {0.0, -0.0625}};
    for (const char* packing : {"NONE", "DEFLATE", "LZW"}) {
        const bool packed = std::string_view(packing) != "NONE";
        made.options = {"TILED=YES", "BLOCKXSIZE=64", "BLOCKYSIZE=64", std::string("COMPRESS=") + packing};
        make_geotiff(folder / "picture.tif", made);
        const auto source = ImagerySource::open(folder / "picture.tif", LocalFrame(), answers);
        ASSERT_TRUE(source);
        // a tile of half a metre a pixel stands on the whole picture, a million bytes
        auto maker = TileMaker::on(*source, {.size = 128, .quick_bytes = 1.2e6});
        ASSERT_TRUE(maker);
        EXPECT_EQ(maker->reader().levels().front().dearness > 1.0, packed) << packing;
        const auto tile = maker->make({1, 0, 0}, TileCare::quick);
        ASSERT_TRUE(tile && !tile->empty) << packing;
        EXPECT_EQ(tile->rough, packed) << packing;
    }
}

TEST(TileMaker, has_zooms_that_fit_a_resolution) {
    EXPECT_EQ(zoom_for(1.0), 0);
    EXPECT_EQ(zoom_for(0.06), 5);
    EXPECT_EQ(zoom_for(3.0), -1);
    EXPECT_DOUBLE_EQ(tile_resolution_m(-3), 8.0);
    EXPECT_EQ(tile_corner({1, -2, 3}, 256), (LocalPoint{-256.0, 384.0}));
}

}  // namespace
}  // namespace plugside
