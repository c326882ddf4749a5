// Learnt weights that no field of a kind took part in: what an evaluation plans that kind's fields with, so that its figures are of
// generators left out of tuning. Learnt by tests/training as the program's own, without the kind, from
// fewer lessons (1,700 or 1,800, six or seven epochs; the program's own from 2,100 in seven).
#pragma once

#include "core/simulation/burrow_simulator.h"
#include "core/systems/link_weights.h"

namespace plugside {

// Of resources/left_out. Parsed once; safe to call from several threads.
[[nodiscard]] const LinkWeights& weights_without(FieldKind kind);

}  // namespace plugside
