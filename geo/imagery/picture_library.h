// The raster library (GDAL) as imagery uses it: the picture drivers in use, no network, nothing followed to elsewhere.
//
// `prepare_picture_library` registers the drivers of GeoTIFF, PNG, JPEG, GeoPackage tiles, MBTiles, JPEG 2000 and, for tiles
// that tile files hold, WebP and the reader of their tables; virtual rasters and rasters in memory are not among them, so that no content can stand for a
// file elsewhere. It limits what the library keeps decoded to 96 MiB. It may be called any number of times, from any thread.
#pragma once

#include <vector>

namespace plugside {

void prepare_picture_library();

// The drivers that may open a picture, for the library's own list; ends with a null pointer.
[[nodiscard]] const char* const* picture_drivers();

}  // namespace plugside
