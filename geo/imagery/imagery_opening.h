// How a picture is opened and where its pixels lie: made once by ImagerySource, used by every worker. Internal to the
// imagery.
//
// placement:  from pixels to coordinates of the definition's system, in the raster library's order; to the field's plane where
//             the definition is empty (a picture placed by pairs).
// definition: well-known text of the picture's reference system.
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "geo/imagery/imagery_source.h"
#include "geo/imagery/picture_tone.h"
#include "geo/imagery/world_file.h"

class GDALDataset;

namespace plugside {

struct ImageryOpening {
    ImageryFacts facts;
    std::optional<std::string> table;
    GeoTransform placement{};
    std::string definition;
    bool geographic = false;
    double middle_longitude = 0.0;  // of the picture, where the system is geographic
    GeographicPoint frame_centre;
    PictureTone tone;
    std::optional<std::filesystem::path> reduced_copy;
};

struct DatasetCloser {
    void operator()(GDALDataset* dataset) const;
};
using OpenDataset = std::unique_ptr<GDALDataset, DatasetCloser>;

// Only with the drivers in use, read only, and with no file beside it but those that ImagerySource names.
[[nodiscard]] OpenDataset open_dataset(const std::filesystem::path& file, const std::optional<std::string>& table);

}  // namespace plugside
