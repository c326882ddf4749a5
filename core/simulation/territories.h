// A field shared out among animals: convex parts, the larger the more ground its animal works.
//
// Form:      a power diagram (each place belongs to the site for which distance squared less the site's radius squared is
//            least) of sites that keep apart by their radii, its sites moved to the middle of their part a few times.
// Buffer:    a part ends half the buffer before its border with the next, and edge_berth_m before the field's boundary.
// Result:    rings in clockwise order; fewer parts than asked for where some get no ground. Without areas: none.
// Cost:      near-linear while the largest wanted area is a bounded multiple of the mean.
// Source:    one adult to a system, defended (trade facts); the form of the borders: our assumption.
#pragma once

#include <vector>

#include "core/geometry/polygon.h"
#include "core/simulation/field_domain.h"
#include "core/simulation/random.h"

namespace plugside {

struct Territory {
    Polygon ground;
    std::size_t animal = 0;  // index of its wanted area
    [[nodiscard]] double area_m2() const;
    [[nodiscard]] LocalPoint middle() const;  // the centroid
};

struct TerritoryOptions {
    std::vector<double> areas_m2;  // wanted, up to a common factor: the whole field is shared out; each > 0
    double buffer_m = 2.0;
    int rounds = 1;  // of moving sites to the middle: the more, the more alike and the rounder the parts
};

[[nodiscard]] std::vector<Territory> share_out(const FieldDomain& domain, const TerritoryOptions& options, Random& random);

}  // namespace plugside
