// What field sheets are made from, as one value: the field with its plan, and how the person wants them.
//
// language: of all that is printed, whatever the window speaks.
// pages:    which kinds of page; `sets` names sets by their number in walking order, empty for all. Dropped sets are never printed.
// made_at:  stands on every page, and tells for which day the declination holds.
// Preconditions: `plan` was made from `field.survey` as it is, and is no first look.
#pragma once

#include <optional>
#include <vector>

#include "app/sheets/paper.h"
#include "app/words/language_here.h"
#include "core/plan/plan.h"
#include "core/sets/work_order.h"
#include "core/units/display.h"
#include "geo/read/field_survey.h"

namespace plugside {

struct SheetChoice {
    bool map = true;
    bool cautions = true;
    bool load = true;
    bool list = true;
    bool cards = true;
    bool log = true;
    std::vector<int> sets;
};

struct SheetInput {
    const FieldSurvey& field;
    const Plan& plan;
    LengthUnits units = LengthUnits::feet_and_inches;
    Language language = Language::english;
    Paper paper = Paper::letter;
    SheetChoice pages;
    UtcTime made_at = {};
    std::optional<WorkOrder> work =
        std::nullopt;  // how the work is done; nothing: no method was chosen, and sheets say what holds for all
};

}  // namespace plugside
