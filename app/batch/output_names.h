// Looks at the names of the files that are to be written before any work is done, so that a mistyped folder is told at once
// and no output is left alone without its companions.
#pragma once

#include <filesystem>
#include <tl/expected.hpp>
#include <vector>

#include "core/survey/refusal.h"

namespace plugside {

// Each output's folder exists and the name is no folder; no two outputs are one file, and none is one of the inputs.
[[nodiscard]] tl::expected<void, Refusal> check_output_names(const std::vector<std::filesystem::path>& outputs,
                                                             const std::vector<std::filesystem::path>& inputs);

}  // namespace plugside
