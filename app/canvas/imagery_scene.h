// The pieces of imagery that are there to be drawn under the ground, from the bottom up.
//
// Pieces: squares upright on the field's plane; coarser ones come before the finer ones that lie over them.
// share:  how strongly imagery is drawn over the paper, 0..1.
#pragma once

#include <memory>
#include <stop_token>
#include <vector>

#include "app/canvas/view_transform.h"
#include "core/geometry/point.h"
#include "geo/imagery/tile_maker.h"

class QPainter;

namespace plugside {

struct ImageryPiece {
    std::shared_ptr<const ImageryTile> tile;
    LocalPoint low;
    double side_m = 0.0;
};

struct ImageryScene {
    std::vector<ImageryPiece> pieces;
    double share = 1.0;
};

// Pieces at their whole strength, on a painter whose device is the view's size. False when stopped.
bool draw_pieces(QPainter& painter, const ImageryScene& scene, const ViewTransform& view, const std::stop_token& stop = {});

}  // namespace plugside
