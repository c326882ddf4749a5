// What a person tells on the command line of how tables and a farm's layers are to be read: the guess of each file, changed.
//
// crs:      "EPSG:25830", of eastings and northings of tables, and of layers that name no system of their own.
// columns:  "fan=Richtung,longitude=3": what a heading, or the column of a number from 1, means; in every table and layer that has
//           it. The meanings are those of the headings that are known (row_marks.h), or "none".
// dates:    "year-first", "day-first" or "month-first"; hours_east: of times that name no zone.
// Errors:   a sentence for the call where a word is not understood or no file has the column; a file that cannot be read is
//           left to the reader to refuse.
// Cost:     each table and layer file is looked into once.
#pragma once

#include <filesystem>
#include <tl/expected.hpp>
#include <vector>

#include "app/batch/call.h"
#include "geo/read/field_reader.h"

namespace plugside {

[[nodiscard]] std::vector<OptionRule> read_choice_options();
[[nodiscard]] tl::expected<ReadChoices, CallError> read_choices(const Call& call,
                                                                const std::vector<std::filesystem::path>& files);

}  // namespace plugside
