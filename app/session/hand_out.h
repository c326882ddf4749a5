// What leaves the program at one time: the plan in some formats, field sheets, the page for a phone.
//
// Whole: all files of it appear, or none does and earlier ones stay as they were (geo/write/staged_files.h); so on a failure or a stop, too.
// Private: names, licence numbers, reasons and notes are left out unless asked for, as geo/write/hand_out_formats.h has it.
// Not asked here: whether a stop holds; whoever offers to hand out does (MainWindow::open_hand_out, plugside-batch).
// Cost: that of the formats and sheets, one after the other; progress tells the whole.
#pragma once

#include <chrono>
#include <filesystem>
#include <memory>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "app/sheets/paper.h"
#include "app/words/language.h"
#include "core/plan/plan.h"
#include "core/plan/progress.h"
#include "core/sets/tours.h"
#include "core/survey/refusal.h"
#include "core/units/display.h"
#include "geo/read/field_survey.h"
#include "geo/write/hand_out_formats.h"
#include "geo/write/staged_files.h"

namespace plugside {

struct HandOutFile {
    HandOutFormat format = HandOutFormat::geopackage;
    std::filesystem::path file;
};

struct HandOut {
    std::vector<HandOutFile> files;
    std::filesystem::path sheets;  // a PDF; empty: not this one
    std::filesystem::path phone;   // the sheets as a page for a phone; empty: not this one
    Paper paper = Paper::letter;
    Language sheet_language = Language::english;
    LengthUnits units = LengthUnits::feet_and_inches;
    PrivateRows private_rows = PrivateRows::left_out;
    std::shared_ptr<const Tours> tours;  // the order in which sets are walked to; null: the plan's own

    // Empty when it is not handed out in that format.
    [[nodiscard]] std::filesystem::path file_of(HandOutFormat format) const;
    // The names as they are told: one a format, "plan_*.csv" where it is many files.
    [[nodiscard]] std::vector<std::filesystem::path> told_names() const;
};

// Writes what was asked for into `into`, which is yet to be committed. What this plan had that a format could not carry comes back in
// sentences. Precondition: the plan is whole and of this survey. Sheets want a QGuiApplication; any thread.
[[nodiscard]] tl::expected<std::vector<std::string>, Refusal> stage_hand_out(const HandOut& what, const FieldSurvey& field,
                                                                             const Plan& plan, UtcTime now,
                                                                             StagedFiles& into, const Progress& progress);

}  // namespace plugside
