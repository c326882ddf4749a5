#include "geo/imagery/picture_library.h"

#include <cpl_conv.h>
#include <gdal.h>
#include <gdal_frmts.h>
#include <ogrsf_frmts.h>

#include <array>
#include <mutex>

#include "geo/frame/vector_library.h"

namespace plugside {

void prepare_picture_library() {
    static std::once_flag once;
    std::call_once(once, [] {
        prepare_vector_library();
        GDALRegister_GTiff();
        GDALRegister_PNG();
        RegisterOGRSQLite();  // MBTiles are read through it
        GDALRegister_MBTiles();
        GDALRegister_JP2OpenJPEG();
        GDALRegister_WEBP();
        GDALSetCacheMax64(96LL * 1024 * 1024);
    });
}

const char* const* picture_drivers() {
    static constexpr std::array<const char*, 7> drivers{"GTiff", "PNG", "JPEG", "GPKG", "MBTiles", "JP2OpenJPEG", nullptr};
    return drivers.data();
}

}  // namespace plugside
