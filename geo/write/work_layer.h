// The layer `work_order` (attributes): how a person has decided to work, a row a name and value (core/sets/work_order_rows.h).
//
// Private: names, numbers and reasons (`is_private`) are left out unless they are asked for; a signature without its name is read by nobody as
//          one (geo/read/work_rows.h).
// Cost: linear.
#pragma once

#include "core/survey/survey.h"
#include "geo/write/layer_content.h"

namespace plugside {

enum class PrivateRows { left_out, included };

[[nodiscard]] LayerContent work_layer(const Survey& survey, PrivateRows rows);

}  // namespace plugside
