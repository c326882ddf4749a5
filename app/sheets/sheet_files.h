// Field sheets as a PDF, and as one page for a phone.
//
// PDF:     as app/sheets/sheet_pages has the pages; fonts embedded, text to be searched. Needs a QGuiApplication; any thread.
// Phone:   app/sheets/phone_page.
// Safety:  as geo/write: the file appears whole or not at all.
// Errors:  a Refusal that names the file; Code::stopped when it was stopped.
#pragma once

#include <filesystem>
#include <tl/expected.hpp>

#include "app/sheets/sheet_input.h"
#include "core/plan/progress.h"
#include "core/survey/refusal.h"

namespace plugside {

[[nodiscard]] tl::expected<void, Refusal> write_sheets(const SheetInput& input, const std::filesystem::path& file,
                                                       const Progress& progress = {});

[[nodiscard]] tl::expected<void, Refusal> write_phone_page(const SheetInput& input, const std::filesystem::path& file,
                                                           const Progress& progress = {});

}  // namespace plugside
