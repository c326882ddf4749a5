// Where the pixels of a tile lie in a picture, on a mesh between whose nodes positions are linear in both directions.
//
// Nodes:  every `step` pixels of the tile's edges; `step` is halved until the middles of cells are off by less than
//         `most_error` pixels of the picture or of the tile, whichever is larger.
// No place: a cell with a node that the picture's system has no answer for has no positions.
// Cost:   O(nodes) projections, O(1) a position.
#pragma once

#include <optional>
#include <vector>

#include "geo/imagery/ground_to_pixel.h"

namespace plugside {

class PixelMesh {
public:
    // Of the square of `size` pixels of `resolution_m` whose upper left corner lies at `upper_left`.
    PixelMesh(const GroundToPixel& way, LocalPoint upper_left, double resolution_m, int size);

    [[nodiscard]] std::optional<PicturePixel> at(double column, double row) const;

    // Least and greatest positions over all nodes; nothing where no node has one.
    struct Reach {
        PicturePixel low;
        PicturePixel high;
    };
    [[nodiscard]] const std::optional<Reach>& reach() const { return reach_; }
    // Pixels of the picture to a pixel of the tile, along columns and rows of the picture; the least over the tile.
    [[nodiscard]] double columns_per_pixel() const { return columns_per_pixel_; }
    [[nodiscard]] double rows_per_pixel() const { return rows_per_pixel_; }

private:
    void lay(const GroundToPixel& way, LocalPoint upper_left, double resolution_m, int size, int step);
    void measure();
    [[nodiscard]] double worst_error(const GroundToPixel& way, LocalPoint upper_left, double resolution_m) const;
    [[nodiscard]] const std::optional<PicturePixel>& node(int column, int row) const {
        return nodes_[static_cast<std::size_t>(row) * static_cast<std::size_t>(across_) + static_cast<std::size_t>(column)];
    }

    int step_ = 1;
    int across_ = 0;
    std::vector<std::optional<PicturePixel>> nodes_;
    std::optional<Reach> reach_;
    double columns_per_pixel_ = 1.0;
    double rows_per_pixel_ = 1.0;
};

}  // namespace plugside
