#include "geo/read/work_rows.h"

#include <utility>

#include "core/sets/work_order_rows.h"
#include "core/words/words.h"
#include "geo/read/plan_rows.h"

namespace plugside {

WorkOrder work_from(const ReadLayer& work_order, FindingList& findings) {
    std::vector<WorkRow> rows;
    for (const ReadRow& row : work_order.rows)
        rows.push_back({text_of(work_order.value(row, "name")), text_of(work_order.value(row, "value"))});
    WorkReading reading = work_order_of(rows);
    for (const Refusal& problem : reading.problems)
        findings.add(problem.place, Words::tell("of the work order this is not used: found {1}, expected {2}",
                                                {problem.found, problem.expected}));
    const std::size_t unsigned_ones =
        std::erase_if(reading.work.signed_off, [](const SignedOverride& entry) { return entry.name.empty(); });
    if (unsigned_ones > 0)
        findings.add("", Words::tell("signatures without a name do not count ({1} of them): sign again what is held back",
                                     {std::to_string(unsigned_ones)}));
    return std::move(reading.work);
}

WorkOrder renamed_marks(WorkOrder work, const NameNow& now) {
    const auto rename = [&now](ProbeKey& probe) {
        for (std::string* name : {&probe.from_mound, &probe.to_mound})
            if (!name->empty()) *name = now(*name);
    };
    for (SetMethod& chosen : work.set_methods) rename(chosen.probe);
    for (SignedOverride& entry : work.signed_off)
        if (entry.probe) rename(*entry.probe);
    for (KeptTour& tour : work.walking.kept)
        for (ProbeKey& probe : tour.sets) rename(probe);
    return work;
}

}  // namespace plugside
