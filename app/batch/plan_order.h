// What a call of plugside-batch plan asks for.
//
// Errors: a CallError for a value that cannot be, a Refusal for names of files that would lose something (output_names.h).
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "app/batch/call.h"
#include "app/batch/work_files.h"
#include "app/session/hand_out.h"

namespace plugside {

struct PlanOrder {
    std::vector<std::filesystem::path> inputs;
    std::optional<std::filesystem::path> picture;
    HandOut what;  // all formats, sheets and phone page
    bool each_system = false;
    bool drop_stopped = false;
    WorkFiles work;
    std::optional<std::string> method;
    std::optional<CalendarDay> day;

    [[nodiscard]] bool draws() const;
    // Without what goes to the field with a person: the GeoPackage alone, to go on from.
    [[nodiscard]] HandOut only_to_go_on() const;
    // Every file that would be written but for `only_to_go_on` and the picture.
    [[nodiscard]] std::vector<std::filesystem::path> kept_back() const;
};

[[nodiscard]] std::vector<OptionRule> plan_options();
[[nodiscard]] tl::expected<PlanOrder, CallError> plan_order_of(const Call& call);
[[nodiscard]] tl::expected<void, Refusal> check_names(const PlanOrder& order);

}  // namespace plugside
