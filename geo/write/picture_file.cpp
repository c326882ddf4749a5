#include "geo/write/picture_file.h"

#include <cpl_error.h>
#include <cpl_string.h>
#include <gdal_priv.h>
#include <ogr_spatialref.h>

#include <array>
#include <memory>
#include <string>

#include "core/words/words.h"
#include "geo/imagery/imagery_opening.h"
#include "geo/imagery/picture_library.h"
#include "geo/write/safe_file.h"

namespace plugside {

namespace {

OpenDataset created(const std::filesystem::path& file, const FieldPicture& picture, int quality) {
    CPLStringList options;
    for (const char* option : {"TILED=YES", "COMPRESS=JPEG", "PHOTOMETRIC=YCBCR", "BLOCKXSIZE=512", "BLOCKYSIZE=512"})
        options.AddString(option);
    options.SetNameValue("JPEG_QUALITY", std::to_string(quality).c_str());
    return OpenDataset(GetGDALDriverManager()->GetDriverByName("GTiff")->Create(file.c_str(), picture.width, picture.height,
                                                                                3, GDT_Byte, options.List()));
}

bool fill(GDALDataset& dataset, const FieldPicture& picture, const LocalFrame& frame) {
    const double size = picture.resolution_m;
    std::array<double, 6> placement{picture.upper_left.east_m, size, 0.0, picture.upper_left.north_m, 0.0, -size};
    OGRSpatialReference system;
    system.SetProjCS("Plane of the field");
    system.SetWellKnownGeogCS("WGS84");
    system.SetTM(frame.centre().latitude_degrees, frame.centre().longitude_degrees, 1.0, 0.0, 0.0);
    std::vector<std::uint8_t> rgb = picture.rgb;
    if (dataset.SetGeoTransform(placement.data()) != CE_None || dataset.SetSpatialRef(&system) != CE_None ||
        dataset.RasterIO(GF_Write, 0, 0, picture.width, picture.height, rgb.data(), picture.width, picture.height, GDT_Byte,
                         3, nullptr, 3, GSpacing{3} * picture.width, 1, nullptr) != CE_None)
        return false;
    dataset.FlushCache();
    std::array<int, 3> halves{2, 4, 8};
    return dataset.BuildOverviews("AVERAGE", static_cast<int>(halves.size()), halves.data(), 0, nullptr, nullptr, nullptr,
                                  nullptr) == CE_None;
}

}  // namespace

tl::expected<void, Refusal> write_picture(const FieldPicture& picture, const LocalFrame& frame,
                                          const std::filesystem::path& file, int quality) {
    prepare_picture_library();
    auto safe = SafeFile::beside(file);
    if (!safe) return tl::unexpected(safe.error());
    if (picture.width < 1 || picture.height < 1)
        return tl::unexpected(safe->cannot_write(Words::later("a picture without a pixel")));
    CPLErrorHandlerPusher quiet(CPLQuietErrorHandler);
    {
        const OpenDataset dataset = created(safe->temporary(), picture, quality);
        if (!dataset || !fill(*dataset, picture, frame))
            return tl::unexpected(
                safe->cannot_write(Words::tell("a picture that could not be written ({1})", {CPLGetLastErrorMsg()})));
    }
    return safe->commit();
}

}  // namespace plugside
