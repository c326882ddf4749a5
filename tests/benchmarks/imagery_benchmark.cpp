// A 2 GB GeoTIFF: how soon it is open, how soon any view of it is filled, and with how much memory, beside a plain reading of
// as many bytes from the same disk in the same run.
//
//   imagery_benchmark [--folder DIR] [--gigabytes N] [--packed DEFLATE|JPEG]
//
// The file is made in a folder of its own below DIR (the system's temporary folder unless told) and removed at the end. It is
// tiled, three bands of bytes, N GB of them before they are packed, first without reduced copies, then with the program's own copy, then with copies within.
// Bars: open under 1 s, each view of 1280 x 800 under .5 s, memory under 600 MiB; the exit code tells whether all hold.
#include <sys/resource.h>
#include <unistd.h>

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <mutex>
#include <string>
#include <thread>
#include <vector>

#include "core/simulation/value_noise.h"
#include "geo/imagery/picture_library.h"
#include "geo/imagery/reduced_copy.h"
#include "geo/imagery/tile_maker.h"
#include "tests/geo/imagery/pictures.h"

namespace {

using namespace plugside;
namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

constexpr double open_bar_s = 1.0;
constexpr double view_bar_s = 0.5;
constexpr double memory_bar_mib = 600.0;
constexpr int view_width = 1280;
constexpr int view_height = 800;
constexpr int tile_size = 256;
constexpr double pixel_m = 0.05;

double seconds_since(Clock::time_point start) { return std::chrono::duration<double>(Clock::now() - start).count(); }

double peak_memory_mib() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return static_cast<double>(usage.ru_maxrss) / 1024.0;
}

int side_of(double gigabytes) { return static_cast<int>(std::sqrt(gigabytes * 1e9 / 3.0)) / 256 * 256; }

void make_picture(const fs::path& file, int side, const std::string& packed) {
    CPLStringList options;
    for (const char* option : {"TILED=YES", "BLOCKXSIZE=256", "BLOCKYSIZE=256", "INTERLEAVE=PIXEL", "BIGTIFF=YES"})
        options.AddString(option);
    if (!packed.empty()) options.SetNameValue("COMPRESS", packed.c_str());
    if (packed == "DEFLATE") options.SetNameValue("PREDICTOR", "2");
    if (packed == "JPEG") options.SetNameValue("PHOTOMETRIC", "YCBCR");
    const testing_support::TestDataset dataset(
        GetGDALDriverManager()->GetDriverByName("GTiff")->Create(file.c_str(), side, side, 3, GDT_Byte, options.List()));
    GeoTransform placement{500000.0, pixel_m, 0.0, 4540000.0, 0.0, -pixel_m};
    dataset->SetGeoTransform(placement.data());
    const OGRSpatialReference system = testing_support::system_named("EPSG:32613");
    dataset->SetSpatialRef(&system);
    const ValueNoise noise(1);
    std::vector<std::uint8_t> rows(static_cast<std::size_t>(side) * 256 * 3);
    for (int top = 0; top < side; top += 256) {
        for (std::size_t i = 0; i < rows.size(); i += 3) {
            const auto column = static_cast<std::int64_t>(i / 3) % side;
            const auto row = top + static_cast<std::int64_t>(i / 3) / side;
            const double bright =
                60.0 * noise.grain(column, row) + static_cast<double>((column / 400 + row / 400) % 8) * 16.0;
            rows[i] = static_cast<std::uint8_t>(bright + 40.0);
            rows[i + 1] = static_cast<std::uint8_t>(bright + 60.0);
            rows[i + 2] = static_cast<std::uint8_t>(bright + 10.0);
        }
        if (dataset->RasterIO(GF_Write, 0, top, side, 256, rows.data(), side, 256, GDT_Byte, 3, nullptr, 3,
                              GSpacing{3} * side, 1, nullptr) != CE_None)
            throw std::runtime_error("the disk is full");
    }
}

double plain_reading_s(const fs::path& file, std::size_t bytes) {
    const auto start = Clock::now();
    std::ifstream stream(file, std::ios::binary);
    std::vector<char> buffer(4 * 1024 * 1024);
    std::size_t read = 0;
    while (read < bytes && stream.read(buffer.data(), static_cast<std::streamsize>(buffer.size()))) read += buffer.size();
    return seconds_since(start);
}

struct ViewTime {
    double seconds = 0.0;
    std::size_t tiles = 0;
    std::size_t rough = 0;
};

// All tiles of a view about `middle`, by two threads, each with its own opening made beforehand, as in the window.
ViewTime fill_view(std::vector<TileMaker>& makers, LocalPoint middle, int zoom, TileCare care) {
    const double resolution = tile_resolution_m(zoom);
    const double side_m = resolution * tile_size;
    const auto index = [&](double metres) { return static_cast<std::int64_t>(std::floor(metres / side_m)); };
    std::vector<TilePlace> places;
    for (auto row = index(middle.north_m - 0.5 * view_height * resolution);
         row <= index(middle.north_m + 0.5 * view_height * resolution); ++row)
        for (auto column = index(middle.east_m - 0.5 * view_width * resolution);
             column <= index(middle.east_m + 0.5 * view_width * resolution); ++column)
            places.push_back({zoom, column, row});
    ViewTime time;
    time.tiles = places.size();
    std::mutex mutex;
    std::size_t next = 0;
    const auto start = Clock::now();
    std::vector<std::jthread> threads;
    for (TileMaker& maker : makers)
        threads.emplace_back([&] {
            for (;;) {
                TilePlace place;
                {
                    const std::scoped_lock lock(mutex);
                    if (next == places.size()) return;
                    place = places[next++];
                }
                const auto tile = maker.make(place, care);
                const std::scoped_lock lock(mutex);
                time.rough += tile && tile->rough ? 1U : 0U;
            }
        });
    threads.clear();
    time.seconds = seconds_since(start);
    return time;
}

// The slowest view of several places and scales.
double views(const char* name, const ImagerySource& source, bool whole_too) {
    std::vector<TileMaker> makers;
    for (int i = 0; i < 2; ++i) {
        auto maker = TileMaker::on(source, {.size = tile_size});
        if (!maker) throw std::runtime_error(sentence(maker.error()));
        makers.push_back(std::move(*maker));
    }
    double slowest = 0.0;
    for (const int zoom : {6, 5, 4, 3, 2, 1, 0, -1, -2})
        for (const LocalPoint middle : {LocalPoint{0.0, 0.0}, LocalPoint{-250.0, 310.0}}) {
            const ViewTime time = fill_view(makers, middle, zoom, TileCare::quick);
            slowest = std::max(slowest, time.seconds);
            std::printf("%-28s %6.3f m a pixel  %3zu tiles  %3zu rough  %.3f s", name, tile_resolution_m(zoom), time.tiles,
                        time.rough, time.seconds);
            if (whole_too && time.rough > 0 && middle.east_m == 0.0)
                std::printf("  (whole: %.2f s)", fill_view(makers, middle, zoom, TileCare::whole).seconds);
            std::printf("\n");
        }
    return slowest;
}

bool told(const char* what, double value, double bar, const char* unit) {
    const bool holds = value < bar;
    std::printf("%-44s %8.3f %s, bar %.3g %s: %s\n", what, value, unit, bar, unit, holds ? "holds" : "MISSED");
    return holds;
}

bool measure(const fs::path& folder, double gigabytes, const std::string& packed) {
    prepare_picture_library();
    const fs::path file = folder / "large.tif";
    const auto making = Clock::now();
    make_picture(file, side_of(gigabytes), packed);
    std::printf("made: %.2f GB in %.1f s\n", static_cast<double>(fs::file_size(file)) / 1e9, seconds_since(making));
    const LocalFrame frame = LocalFrame::centred_on([&] {
        const auto first = ImagerySource::open(file, LocalFrame::centred_on({-105.0, 41.0}));
        const auto& outline = first->facts().outline;
        return LocalFrame::centred_on({-105.0, 41.0}).to_geographic(midpoint(outline.front(), outline[outline.size() / 2]));
    }());
    const auto opening = Clock::now();
    auto source = ImagerySource::open(file, frame);
    const double open_s = seconds_since(opening);
    if (!source) throw std::runtime_error(sentence(source.error()));
    const double bare = views("no reduced copies", *source, true);
    const auto copying = Clock::now();
    const auto copy = make_reduced_copy(*source, folder / "copies");
    const double copy_s = seconds_since(copying);
    if (!copy) throw std::runtime_error(sentence(copy.error()));
    const double copied = views("with the program's copy", source->with_reduced_copy(*copy), false);
    const double memory = peak_memory_mib();
    {
        std::vector<int> levels{2, 4, 8, 16, 32, 64};
        const testing_support::TestDataset dataset = testing_support::open_picture(file, GDAL_OF_UPDATE);
        if (dataset->BuildOverviews("NEAREST", 6, levels.data(), 0, nullptr, nullptr, nullptr) != CE_None)
            throw std::runtime_error("no reduced copies can be made");
    }
    source = ImagerySource::open(file, frame);
    const double within = views("reduced copies within", *source, false);
    const double reading = plain_reading_s(file, static_cast<std::size_t>(gigabytes * 1e9));
    std::printf("reduced copy made in %.1f s; a plain reading of as many bytes takes %.2f s\n", copy_s, reading);
    bool all = told("opened", open_s, open_bar_s, "s");
    all = told("slowest view, no reduced copies", bare, view_bar_s, "s") && all;
    all = told("slowest view, the program's copy", copied, view_bar_s, "s") && all;
    all = told("slowest view, reduced copies within", within, view_bar_s, "s") && all;
    return told("memory at most", memory, memory_bar_mib, "MiB") && all;
}

}  // namespace

int main(int argc, char** argv) {
    std::setvbuf(stdout, nullptr, _IOLBF, 0);  // each line as it is measured
    fs::path base = fs::temp_directory_path();
    double gigabytes = 2.0;
    std::string packed;
    for (int i = 1; i + 1 < argc; i += 2) {
        if (std::string(argv[i]) == "--folder") base = argv[i + 1];
        if (std::string(argv[i]) == "--packed") packed = argv[i + 1];
        if (std::string(argv[i]) == "--gigabytes") gigabytes = std::strtod(argv[i + 1], nullptr);
    }
    std::string pattern = (base / "plugside-imagery-XXXXXX").string();
    if (::mkdtemp(pattern.data()) == nullptr) return 2;
    bool all = false;
    try {
        all = measure(pattern, gigabytes, packed);
    } catch (const std::exception& error) {
        std::fprintf(stderr, "%s\n", error.what());
    }
    fs::remove_all(pattern);
    return all ? 0 : 1;
}
