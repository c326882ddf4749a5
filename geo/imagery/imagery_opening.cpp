#include "geo/imagery/imagery_opening.h"

#include <cpl_string.h>
#include <gdal_priv.h>
#include <sqlite3.h>

#include <array>
#include <fstream>
#include <string_view>

#include "geo/imagery/picture_library.h"

namespace plugside {

namespace {

namespace fs = std::filesystem;

// Whether a SQLite file holds tiles and no shapes: then it is imagery and no layer file.
bool holds_tiles_only(const fs::path& file) {
    sqlite3* base = nullptr;
    const auto count = [&](const char* sql) {
        int found = 0;
        const auto take = [](void* into, int, char** values, char**) {
            *static_cast<int*>(into) = values[0] ? std::atoi(values[0]) : 0;
            return 0;
        };
        return sqlite3_exec(base, sql, take, &found, nullptr) == SQLITE_OK ? found : 0;
    };
    bool tiles = false;
    if (sqlite3_open_v2(file.c_str(), &base, SQLITE_OPEN_READONLY, nullptr) == SQLITE_OK) {
        sqlite3_db_config(base, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, nullptr);
        const bool geopackage = count("SELECT count(*) FROM gpkg_contents WHERE data_type='tiles'") > 0 &&
                                count("SELECT count(*) FROM gpkg_contents WHERE data_type='features'") == 0;
        const bool tile_file = count("SELECT count(*) FROM sqlite_master WHERE name IN ('tiles','metadata')") == 2 &&
                               count("SELECT count(*) FROM metadata WHERE name='format' AND value='pbf'") == 0;
        tiles = geopackage || tile_file;
    }
    sqlite3_close(base);
    return tiles;
}

}  // namespace

void DatasetCloser::operator()(GDALDataset* dataset) const { GDALClose(dataset); }

OpenDataset open_dataset(const fs::path& file, const std::optional<std::string>& table) {
    prepare_picture_library();
    CPLStringList siblings;
    siblings.AddString(file.filename().c_str());
    std::error_code error;
    for (const char* ending : {".ovr", ".msk"})
        if (const fs::path side = file.string() + ending; fs::is_regular_file(side, error))
            siblings.AddString(side.filename().c_str());
    CPLStringList options;
    if (table) options.SetNameValue("TABLE", table->c_str());
    // a whole path: a name like "GTIFF_DIR:..." would mean something else to the library
    const fs::path whole = fs::absolute(file, error);
    return OpenDataset(GDALDataset::Open(whole.c_str(), GDAL_OF_RASTER | GDAL_OF_READONLY, picture_drivers(), options.List(),
                                         siblings.List()));
}

bool is_imagery_file(const fs::path& file) {
    std::error_code error;
    if (!fs::is_regular_file(file, error)) return false;
    std::array<char, 32> head{};
    std::ifstream stream(file, std::ios::binary);
    stream.read(head.data(), static_cast<std::streamsize>(head.size()));
    const std::string_view start(head.data(), static_cast<std::size_t>(stream.gcount()));
    using namespace std::string_view_literals;
    const auto begins = [&](std::string_view bytes) { return start.substr(0, bytes.size()) == bytes; };
    if (begins("II*\0"sv) || begins("MM\0*"sv) || begins("II+\0"sv) || begins("MM\0+"sv)) return true;
    if (begins("\x89PNG\r\n\x1A\n"sv)) return true;
    if (begins("\0\0\0\x0CjP  \r\n\x87\n"sv) || begins("\xFF\x4F\xFF\x51"sv)) return true;
    if (begins("\xFF\xD8\xFF"sv)) return has_world_file(file);
    return begins("SQLite format 3\0"sv) && holds_tiles_only(file);
}

}  // namespace plugside
