// Where a picture without a position lies on the ground, from places that a person found on both.
//
// Pixel:     columns to the right and rows downwards from the picture's upper left corner; the middle of the first pixel
//            is (0.5, 0.5).
// Pairs:     two: shift, turn and scale, which fit exactly; three or more: an affine placement by least squares on the
//            ground, each pair with equal weight. A similarity may be asked for with more pairs too: it is the better
//            choice for a picture taken straight down, because pairs then check each other sooner.
// residuals: metres from where the placement puts a pair's pixel to the pair's ground, in the pairs' order.
// standard_error_m: of one coordinate of one pair, sqrt(sum of squares / (2 pairs - parameters)); nothing where the pairs
//            are just enough and check nothing.
// worst:     the pair whose residual is largest against what its place in the set lets it show (residual over
//            sqrt(1 - leverage)); nothing while every pair shows alike, so that none can be told from the others (three and
//            four pairs of an affine placement, two of a similarity) or where all fit to the millimetre.
// mirrored:  the placement turns the picture over: seldom meant, most often two pairs exchanged.
// Degenerate input: too few pairs, pairs on the same spot, pairs on one line (narrower than a hundredth of its length) give
//            a fault that says so.
// Guarantee: moving, turning or renumbering all pairs moves, turns or renumbers the result (to rounding).
// Cost:      O(pairs).
// Source:    linear least squares; leverage and internally studentised residuals after Cook & Weisberg, Residuals and
//            Influence in Regression (1982) [memory].
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/geometry/point.h"

namespace plugside {

struct PicturePixel {
    double column = 0.0;
    double row = 0.0;
    friend bool operator==(PicturePixel, PicturePixel) = default;
};

struct PicturePlacement {
    LocalPoint corner;                 // of the picture's upper left
    LocalVector per_column{1.0, 0.0};  // metres a pixel to the right
    LocalVector per_row{0.0, -1.0};    // metres a pixel down
    friend bool operator==(const PicturePlacement&, const PicturePlacement&) = default;

    [[nodiscard]] LocalPoint to_ground(PicturePixel pixel) const;
    // Nothing for a placement that squeezes the picture into a line or cannot be computed with.
    [[nodiscard]] std::optional<PicturePixel> to_pixel(LocalPoint ground) const;
    [[nodiscard]] bool mirrored() const { return cross(per_column, per_row) > 0.0; }
};

struct PlacementPair {
    PicturePixel pixel;
    LocalPoint ground;
    friend bool operator==(const PlacementPair&, const PlacementPair&) = default;
};

enum class PlacementKind { similarity, affine };

struct PlacementFit {
    PicturePlacement placement;
    PlacementKind kind = PlacementKind::affine;
    std::vector<double> residuals_m;
    std::optional<double> standard_error_m;
    std::optional<std::size_t> worst;
};

struct PlacementFault {
    enum class Code { too_few, not_numbers, same_on_picture, same_on_ground, one_line_on_picture, one_line_on_ground };
    Code code = Code::too_few;
    std::size_t pairs = 0;  // given
    std::size_t needed = 2;
    friend bool operator==(const PlacementFault&, const PlacementFault&) = default;
};

// For a person to read.
[[nodiscard]] std::string sentence(const PlacementFault& fault);

// Without `kind`: a similarity of two pairs, else affine.
[[nodiscard]] tl::expected<PlacementFit, PlacementFault> fit_placement(const std::vector<PlacementPair>& pairs,
                                                                       std::optional<PlacementKind> kind = std::nullopt);

}  // namespace plugside
