// An order to visit that stays as it was as far as it can when places come and go.
//
// earlier:  places (by index) in their order before; those that are gone are left out already, those that are new are missing.
// Result:   the earlier order with each new place put in where that adds least to the way, unless an order found anew saves more than
//           `least_saving` of its length: then that one. So dropping a place leaves the others' order alone until enough are gone.
// Degenerate input: nothing earlier: an order found anew. The same place twice in `earlier` asserts.
// Mostly new: where fewer than half of the places stand in `earlier`, an order found anew.
// Cost:     visiting_order once, and O(new places^2 x places) ways looked up.
#pragma once

#include <vector>

#include "core/walking/visiting_order.h"

namespace plugside {

constexpr double usual_least_saving = 0.05;  // share of the way; our choice: less is not worth learning a new order for

[[nodiscard]] std::vector<std::size_t> steady_order(const std::vector<LocalPoint>& places,
                                                    const std::vector<std::size_t>& earlier,
                                                    const VisitingOptions& options = {},
                                                    double least_saving = usual_least_saving);

}  // namespace plugside
