// From places on the field's plane to pixels of a picture, and back.
//
// Way:      plane -> longitude and latitude (WGS 84) -> the picture's system -> pixels; the first step is LocalFrame's own
//           projection. A picture placed by pairs has no system between.
// Pixels:   of the picture at full size; the middle of the first one is (0.5, 0.5).
// No place: what a projection has no answer for comes back as nothing.
// 180th meridian: longitudes are turned to the side of the picture.
// Cost:     some microseconds a place; give many at once.
// Threads:  one at a time an object.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/geometry/picture_placement.h"
#include "geo/imagery/imagery_opening.h"

namespace plugside {

class GroundToPixel {
public:
    // Nothing where the library knows no way between the systems.
    [[nodiscard]] static std::optional<GroundToPixel> of(const ImageryOpening& opening);
    GroundToPixel(GroundToPixel&&) noexcept;
    GroundToPixel& operator=(GroundToPixel&&) noexcept;
    ~GroundToPixel();

    [[nodiscard]] std::vector<std::optional<PicturePixel>> pixels(const std::vector<LocalPoint>& places) const;
    [[nodiscard]] std::vector<std::optional<LocalPoint>> places(const std::vector<PicturePixel>& pixels) const;

private:
    struct Way;
    explicit GroundToPixel(std::unique_ptr<Way> way);
    std::unique_ptr<Way> way_;
};

}  // namespace plugside
