// From a window of a picture, reduced to cells, to the pixels of a tile. Internal to the imagery.
//
// Linear between the middles of cells in both directions; at the window's edge the outermost cell goes on. `full_width` and
// `full_height` are of the picture that the mesh's positions count in, `factor_x` and `factor_y` its pixels to one of the window's
// level. A tile with nothing on it becomes an empty one.
#pragma once

#include "geo/imagery/picture_reader.h"
#include "geo/imagery/pixel_mesh.h"
#include "geo/imagery/tile_maker.h"

namespace plugside {

struct SampledLevel {
    double factor_x = 1.0;
    double factor_y = 1.0;
    double full_width = 0.0;
    double full_height = 0.0;
};

void fill(ImageryTile& tile, const PixelMesh& mesh, const ReducedWindow& window, const SampledLevel& level);

}  // namespace plugside
