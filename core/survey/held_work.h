// A work order (core/sets/work_order.h) as a survey holds it: a value that copies in no time, since copies share it until one is replaced.
//
// Meaning:  `*survey.work` and `survey.work->method` read it; `survey.work = order` replaces the whole.
// Equality: of the orders, not of where they are kept. Empty: an order with nothing answered or chosen.
// Threads:  what is shared is never changed.
// survey.h is read everywhere, so that this header knows the order by name alone.
#pragma once

#include <memory>

namespace plugside {

struct WorkOrder;

class HeldWork {
public:
    HeldWork() = default;
    HeldWork(WorkOrder order);  // implicit: `survey.work = order`

    [[nodiscard]] const WorkOrder& operator*() const;
    [[nodiscard]] const WorkOrder* operator->() const { return &**this; }
    friend bool operator==(const HeldWork& a, const HeldWork& b);

private:
    std::shared_ptr<const WorkOrder> order_;
};

}  // namespace plugside
