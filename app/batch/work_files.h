// How the work is done, as told to the batch program: a file of conditions, a file of the label, a method.
//
// Conditions: rows of core/sets/work_order_rows, a line each; they stand in place of all that the survey held of how the work is done.
// Label:      the rows "label...", "dose" and "calibration..." alone; they stand in place of any label told of before.
// Method:     an id, in place of one told of before.
// Errors:     every row that cannot be, with file, line, what was found and what was expected: unreadable rows, answers without the day they were
//             given (their age is not known), methods that there are not, figures that contradict each other. Nothing is taken then.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/sets/work_order.h"
#include "core/survey/refusal.h"

namespace plugside {

struct WorkFiles {
    std::optional<std::filesystem::path> conditions;
    std::optional<std::filesystem::path> label;
};

// `held`: what the survey held before.
[[nodiscard]] tl::expected<WorkOrder, std::vector<Refusal>> read_work(const WorkFiles& files, const WorkOrder& held);

// "trap-in-lateral, paired-traps, ..., own-1".
[[nodiscard]] std::string all_method_ids(const WorkOrder& work);

}  // namespace plugside
