// The work order of a plan or survey handed out before (layer `work_order`), and its marks by other names.
//
// Signatures: one without its name (private rows were left out) does not count; a finding says that it wants to be signed again.
// Errors:     what cannot be read is not used, with a finding for each row; a file without the layer gives an empty order.
// Cost:       O(rows log rows).
#pragma once

#include <functional>
#include <string>

#include "core/sets/work_order.h"
#include "geo/read/finding_list.h"
#include "geo/read/layer_rows.h"

namespace plugside {

[[nodiscard]] WorkOrder work_from(const ReadLayer& work_order, FindingList& findings);

// `now`: of a mark's name the one that it has now.
using NameNow = std::function<std::string(const std::string&)>;
[[nodiscard]] WorkOrder renamed_marks(WorkOrder work, const NameNow& now);

}  // namespace plugside
