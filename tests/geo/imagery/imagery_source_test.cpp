#include "geo/imagery/imagery_source.h"

#include <gtest/gtest.h>

#include <thread>

#include "geo/imagery/reduced_copy.h"
#include "geo/imagery/tile_store.h"
#include "tests/geo/imagery/pictures.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

const LocalFrame field = LocalFrame::centred_on({-104.9, 41.0});

// Half a metre a pixel about 41 N, 104.9 W; 4539000 m north is near 41 degrees in this zone.
PictureMade on_the_field() {
    PictureMade made;
    const OGRSpatialReference world = system_named("EPSG:4326");
    const OGRSpatialReference system = system_named("EPSG:32613");
    const std::unique_ptr<OGRCoordinateTransformation> way(OGRCreateCoordinateTransformation(&world, &system));
    double x = -104.9;
    double y = 41.0;
    EXPECT_TRUE(way->Transform(1, &x, &y));
    made.system = "EPSG:32613";
    made.placement = {x - 25.0, 0.5, 0.0, y + 25.0, 0.0, -0.5};
    return made;
}

std::string refused(const std::filesystem::path& file, const ImageryAnswers& answers = {}) {
    const auto source = ImagerySource::open(file, field, answers);
    return source ? "" : sentence(source.error());
}

TEST(ImagerySource, says_what_a_picture_is_and_where_it_lies) {
    const TemporaryFolder folder;
    PictureMade made = on_the_field();
    made.also = [](GDALDataset& dataset) { dataset.SetMetadataItem("TIFFTAG_DATETIME", "2025:04:12 10:30:00"); };
    make_geotiff(folder / "p.tif", made);
    const auto source = ImagerySource::open(folder / "p.tif", field);
    ASSERT_TRUE(source) << sentence(source.error());
    const ImageryFacts& facts = source->facts();
    EXPECT_EQ(facts.format, "GeoTIFF");
    EXPECT_EQ(facts.width, 100);
    EXPECT_EQ(facts.bands, 3);
    EXPECT_EQ(facts.pixel_type, "8 bit");
    EXPECT_EQ(facts.no_data, std::nullopt);
    EXPECT_FALSE(facts.has_alpha);
    EXPECT_NE(facts.reference_system.find("(EPSG:32613)"), std::string::npos);
    EXPECT_NEAR(facts.metres_per_pixel, 0.5, 0.001);
    ASSERT_TRUE(facts.taken);
    EXPECT_EQ(*facts.taken, std::chrono::year(2025) / 4 / 12);
    ASSERT_EQ(facts.outline.size(), 32U);
    for (const LocalPoint place : facts.outline)
        EXPECT_NEAR(std::max(std::abs(place.east_m), std::abs(place.north_m)), 25.0, 0.2);
}

TEST(ImagerySource, reads_every_kind_of_file_that_is_in_use) {
    const TemporaryFolder folder;
    make_geotiff(folder / "p.tif", on_the_field());
    const auto expect_same = [&](const char* name, const std::string& format, int reach) {
        const auto source = ImagerySource::open(folder / name, field);
        ASSERT_TRUE(source) << sentence(source.error());
        EXPECT_EQ(source->facts().format, format);
        EXPECT_TRUE(is_imagery_file(folder / name)) << name;
        auto maker = TileMaker::on(*source);
        ASSERT_TRUE(maker);
        const auto tile = maker->make({3, 0, 0}, TileCare::quick);
        ASSERT_TRUE(tile && !tile->empty) << name;
        // 10 m east of the centre and 10 m north: column 70, row 30
        const std::size_t row = 256 - 80;
        const std::uint8_t* seen = &tile->rgba[(row * 256 + 80) * 4];
        EXPECT_NEAR(seen[0], 175, reach) << name;
        EXPECT_NEAR(seen[1], 75, reach) << name;
        EXPECT_EQ(seen[3], 255) << name;
    };
    expect_same("p.tif", "GeoTIFF", 3);
    copy_picture(folder / "p.tif", folder / "p.jp2", "JP2OpenJPEG", {"QUALITY=100", "REVERSIBLE=YES"});
    expect_same("p.jp2", "JPEG 2000", 3);
    copy_picture(folder / "p.tif", folder / "p.gpkg", "GPKG", {"TILE_FORMAT=PNG"});
    expect_same("p.gpkg", "GeoPackage", 3);
    copy_picture(folder / "p.tif", folder / "p.mbtiles", "MBTiles", {"TILE_FORMAT=PNG"});
    expect_same("p.mbtiles", "MBTiles", 6);  // resampled to the scheme's own zoom
    const GeoTransform t = on_the_field().placement;
    const std::string world = std::to_string(t[1]) + "\n0\n0\n" + std::to_string(t[5]) + "\n" + std::to_string(t[0] + 0.25) +
                              "\n" + std::to_string(t[3] - 0.25) + "\n";
    char* definition = nullptr;
    system_named("EPSG:32613").exportToWkt(&definition);
    folder.file("q.pgw", world);
    folder.file("q.prj", definition);
    folder.file("r.JGW", world);
    folder.file("r.prj", definition);
    CPLFree(definition);
    copy_picture(folder / "p.tif", folder / "q.png", "PNG");
    expect_same("q.png", "PNG", 3);
    copy_picture(folder / "p.tif", folder / "r.jpg", "JPEG", {"QUALITY=95"});
    expect_same("r.jpg", "JPEG", 8);
}

TEST(ImagerySource, asks_for_a_position_or_a_reference_system_where_there_is_none) {
    const TemporaryFolder folder;
    PictureMade made = on_the_field();
    made.system.clear();
    make_geotiff(folder / "p.tif", made);
    const auto unknown = ImagerySource::open(folder / "p.tif", field);
    ASSERT_FALSE(unknown);
    EXPECT_EQ(unknown.error().code, Refusal::Code::needs_reference_system);
    ImageryAnswers answers;
    answers.reference_system = "EPSG:32613";
    const auto answered = ImagerySource::open(folder / "p.tif", field, answers);
    ASSERT_TRUE(answered);
    EXPECT_NEAR(answered->facts().outline.front().east_m, -25.0, 0.2);
    answers.reference_system = "/etc/passwd";
    EXPECT_NE(refused(folder / "p.tif", answers).find("of the register"), std::string::npos);

    make_geotiff(folder / "nowhere.tif", {});
    const auto nowhere = ImagerySource::open(folder / "nowhere.tif", field);
    ASSERT_FALSE(nowhere);
    EXPECT_EQ(nowhere.error().code, Refusal::Code::needs_placement);
    answers.placement = PicturePlacement{{3.0, 4.0}, {0.1, 0.0}, {0.0, -0.1}};
    const auto placed = ImagerySource::open(folder / "nowhere.tif", field, answers);
    ASSERT_TRUE(placed);
    EXPECT_EQ(placed->facts().outline.front(), (LocalPoint{3.0, 4.0}));
    EXPECT_NEAR(placed->facts().metres_per_pixel, 0.1, 1e-9);
}

TEST(ImagerySource, uses_reduced_copies_that_lie_beside_the_picture) {
    const TemporaryFolder folder;
    PictureMade made = on_the_field();
    made.width = made.height = 600;
    make_geotiff(folder / "p.tif", made);
    {
        const TestDataset dataset = open_picture(folder / "p.tif");
        int level = 2;
        ASSERT_EQ(dataset->BuildOverviews("AVERAGE", 1, &level, 0, nullptr, nullptr, nullptr), CE_None);
    }
    ASSERT_TRUE(std::filesystem::exists(folder / "p.tif.ovr"));
    const auto source = ImagerySource::open(folder / "p.tif", field);
    ASSERT_TRUE(source);
    EXPECT_EQ(source->facts().reduced_copies, 1);
}

PictureMade large_picture() {
    PictureMade made;
    made.width = 4000;
    made.height = 3000;
    made.bands = 1;
    made.options = {"TILED=YES"};
    made.value = [](int, int column, int row) { return (column + row) / 28; };
    return made;
}

TEST(ReducedCopy, answers_far_out_views_wholly_and_leaves_nothing_beside_the_picture) {
    const TemporaryFolder folder;
    make_geotiff(folder / "large.tif", large_picture());
    ImageryAnswers answers;
    answers.placement = PicturePlacement{{0.0, 375.0}, {0.125, 0.0}, {0.0, -0.125}};
    const auto source = ImagerySource::open(folder / "large.tif", field, answers);
    ASSERT_TRUE(source);
    ASSERT_TRUE(wants_reduced_copy(*source));
    EXPECT_FALSE(reduced_copy_of(*source, folder / "cache"));
    double told = 0.0;
    Progress progress;
    progress.report = [&](double share, std::string_view) {
        EXPECT_GE(share, told);
        told = share;
    };
    const auto copy = make_reduced_copy(*source, folder / "cache", progress);
    ASSERT_TRUE(copy) << sentence(copy.error());
    EXPECT_GT(told, 0.9);
    EXPECT_EQ(reduced_copy_of(*source, folder / "cache"), *copy);
    EXPECT_EQ(folder.entries(), 3U);  // the picture, the folder, the copy
    const ImagerySource with = source->with_reduced_copy(*copy);
    EXPECT_FALSE(wants_reduced_copy(with));
    auto plain = TileMaker::on(*source);
    auto helped = TileMaker::on(with, {.size = 256, .quick_bytes = 3000000.0});  // of a packed copy
    ASSERT_TRUE(plain && helped);
    for (const int zoom : {1, 0, -1}) {
        const auto slow = plain->make({zoom, 0, 0}, TileCare::whole);
        const auto quick = helped->make({zoom, 0, 0}, TileCare::quick);
        ASSERT_TRUE(slow && quick);
        EXPECT_FALSE(quick->rough);
        int worst = 0;
        for (std::size_t i = 0; i < slow->rgba.size(); i += 4) {
            const bool both = slow->rgba[i + 3] == 255 && quick->rgba[i + 3] == 255;
            if (both) worst = std::max(worst, std::abs(slow->rgba[i] - quick->rgba[i]));
        }
        EXPECT_LE(worst, 2) << zoom;
    }
    trim_reduced_copies(folder / "cache", 0);
    EXPECT_FALSE(reduced_copy_of(*source, folder / "cache"));
}

TEST(ReducedCopy, leaves_nothing_when_it_is_stopped) {
    const TemporaryFolder folder;
    make_geotiff(folder / "large.tif", large_picture());
    ImageryAnswers answers;
    answers.placement = PicturePlacement{};
    const auto source = ImagerySource::open(folder / "large.tif", field, answers);
    ASSERT_TRUE(source);
    std::stop_source stop;
    Progress progress;
    progress.stop = stop.get_token();
    progress.report = [&](double share, std::string_view) {
        if (share > 0.3) stop.request_stop();
    };
    const auto copy = make_reduced_copy(*source, folder / "cache", progress);
    ASSERT_FALSE(copy);
    EXPECT_EQ(copy.error().code, Refusal::Code::stopped);
    EXPECT_EQ(folder.entries(), 2U);
}

std::shared_ptr<const ImageryTile> tile_of(std::size_t bytes) {
    ImageryTile tile;
    tile.rgba.resize(bytes - sizeof(ImageryTile));
    return std::make_shared<const ImageryTile>(std::move(tile));
}

TEST(TileStore, forgets_what_was_asked_for_longest_ago) {
    TileStore store(1000);
    for (int i = 0; i < 3; ++i) store.keep({1, {0, i, 0}}, tile_of(300));
    EXPECT_NE(store.find({1, {0, 0, 0}}), nullptr);
    store.keep({2, {0, 3, 0}}, tile_of(300));
    EXPECT_EQ(store.find({1, {0, 1, 0}}), nullptr);
    EXPECT_NE(store.find({1, {0, 0, 0}}), nullptr);
    EXPECT_EQ(store.bytes(), 900U);
    store.keep({1, {0, 0, 0}}, tile_of(400));
    EXPECT_EQ(store.bytes(), 1000U);
    store.keep({1, {0, 9, 0}}, tile_of(2000));
    EXPECT_EQ(store.find({1, {0, 9, 0}}), nullptr);
    store.forget(1);
    EXPECT_EQ(store.bytes(), 300U);
}

TEST(TileStore, serves_several_workers_at_once) {
    const TemporaryFolder folder;
    make_geotiff(folder / "p.tif", on_the_field());
    const auto source = ImagerySource::open(folder / "p.tif", field);
    ASSERT_TRUE(source);
    TileStore store(std::size_t{2} * 1024 * 1024);
    const auto work = [&](int offset) {
        auto maker = TileMaker::on(*source);
        ASSERT_TRUE(maker);
        for (int i = 0; i < 40; ++i) {
            const TileKey key{1, {4, (i + offset) % 7 - 3, i % 5 - 2}};
            if (store.find(key)) continue;
            auto tile = maker->make(key.place, TileCare::quick);
            ASSERT_TRUE(tile);
            store.keep(key, std::make_shared<const ImageryTile>(std::move(*tile)));
        }
    };
    std::thread first(work, 0);
    std::thread second(work, 3);
    first.join();
    second.join();
    EXPECT_LE(store.bytes(), std::size_t{2} * 1024 * 1024);
}

}  // namespace
}  // namespace plugside
