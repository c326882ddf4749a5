// Pictures whose pixels tell where they are: red grows with the column, green with the row.
#pragma once

#include <cpl_string.h>
#include <gdal_priv.h>
#include <ogr_spatialref.h>

#include <array>
#include <cmath>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <stdexcept>
#include <string>
#include <vector>

#include "geo/imagery/picture_library.h"
#include "geo/imagery/world_file.h"

namespace plugside::testing_support {

struct PictureMade {
    int width = 100;
    int height = 100;
    int bands = 3;
    GDALDataType type = GDT_Byte;
    GeoTransform placement{0, 1, 0, 0, 0, -1};
    std::string system;  // "EPSG:32613"; empty for none
    std::vector<std::string> options;
    // the value of a band (from 0) at a column and row
    std::function<double(int, int, int)> value = [](int band, int column, int row) {
        return band == 0 ? 2.5 * column : band == 1 ? 2.5 * row : 128.0;
    };
    std::function<void(GDALDataset&)> also;  // before the pixels are written
    std::vector<int> overviews;
};

struct CloseDataset {
    void operator()(GDALDataset* dataset) const { GDALClose(dataset); }
};
using TestDataset = std::unique_ptr<GDALDataset, CloseDataset>;

inline OGRSpatialReference system_named(const std::string& name) {
    OGRSpatialReference system;
    if (system.SetFromUserInput(name.c_str()) != OGRERR_NONE) throw std::runtime_error("no system " + name);
    system.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    return system;
}

inline TestDataset open_picture(const std::filesystem::path& file, unsigned flags = GDAL_OF_READONLY) {
    return TestDataset(GDALDataset::Open(file.c_str(), GDAL_OF_RASTER | flags));
}

inline void make_geotiff(const std::filesystem::path& file, const PictureMade& made) {
    prepare_picture_library();
    CPLStringList options;
    for (const std::string& option : made.options) options.AddString(option.c_str());
    TestDataset dataset(GetGDALDriverManager()->GetDriverByName("GTiff")->Create(file.c_str(), made.width, made.height,
                                                                                 made.bands, made.type, options.List()));
    if (!dataset) throw std::runtime_error("no picture can be made");
    auto placement = made.placement;
    if (placement != GeoTransform{0, 1, 0, 0, 0, -1}) dataset->SetGeoTransform(placement.data());
    if (!made.system.empty()) {
        const OGRSpatialReference system = system_named(made.system);
        dataset->SetSpatialRef(&system);
    }
    if (made.also) made.also(*dataset);
    std::vector<double> row(static_cast<std::size_t>(made.width));
    for (int band = 0; band < made.bands; ++band)
        for (int y = 0; y < made.height; ++y) {
            for (int x = 0; x < made.width; ++x) row[static_cast<std::size_t>(x)] = made.value(band, x, y);
            if (dataset->GetRasterBand(band + 1)->RasterIO(GF_Write, 0, y, made.width, 1, row.data(), made.width, 1,
                                                           GDT_Float64, 0, 0, nullptr) != CE_None)
                throw std::runtime_error("a picture's row cannot be written");
        }
    if (made.overviews.empty()) return;
    std::vector<int> levels = made.overviews;
    dataset->FlushCache();
    if (dataset->BuildOverviews("AVERAGE", static_cast<int>(levels.size()), levels.data(), 0, nullptr, nullptr, nullptr) !=
        CE_None)
        throw std::runtime_error("no overviews can be made");
}

// The same picture in another format.
inline void copy_picture(const std::filesystem::path& from, const std::filesystem::path& to, const char* driver,
                         const std::vector<std::string>& written_options = {}) {
    prepare_picture_library();
    CPLStringList options;
    for (const std::string& option : written_options) options.AddString(option.c_str());
    const TestDataset source = open_picture(from);
    const TestDataset copy(GetGDALDriverManager()->GetDriverByName(driver)->CreateCopy(to.c_str(), source.get(), FALSE,
                                                                                       options.List(), nullptr, nullptr));
    if (!copy) throw std::runtime_error(std::string("no copy can be made: ") + CPLGetLastErrorMsg());
}

}  // namespace plugside::testing_support
