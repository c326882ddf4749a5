#include "core/survey/held_work.h"

#include <utility>

#include "core/sets/work_order.h"

namespace plugside {

HeldWork::HeldWork(WorkOrder order) : order_(std::make_shared<const WorkOrder>(std::move(order))) {}

const WorkOrder& HeldWork::operator*() const {
    static const WorkOrder nothing_said;
    return order_ ? *order_ : nothing_said;
}

bool operator==(const HeldWork& a, const HeldWork& b) { return a.order_ == b.order_ || *a == *b; }

}  // namespace plugside
