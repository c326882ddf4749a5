// Delimited text as marks: what a phone, a spreadsheet or a receiver's program writes. How the file is to be read is
// guessed, the guess is a value that a person can change, and the file is read again by it.
//
//     auto guess = guess_table(file);               // what separator, which column is what, and what was assumed
//     auto shown = preview_table(file, *guess);     // the first rows, cell by cell, to lay the guess beside
//     guess->roles[3] = ColumnRole::fan_bearing;    // set by the person
//     guess->reference_system = "EPSG:32610";       // of eastings and northings; see reference_systems.h
//     auto read = read_table(file, *guess);
//
// Guess:    separator: of comma, semicolon, tab, bar and runs of blanks the one that parts most rows alike. Decimal sign:
// the
//           one that more of the numbers have. Heading: the first row, where it names a column or no cell of it can be a
//           coordinate. Roles: by the headings, in English or Spanish; columns without one by what stands in them. Headings
//           x and y are degrees where all the numbers could be, else metres. Everything not certain is said in `assumed`.
// Places:   longitude and latitude in any writing of degrees_text.h (a letter that belongs to the other axis is refused), or
//           minutes packed into one number (3815.5, `packed_minutes`); or easting and northing in `reference_system`.
//           A row without a place is listed and left out; one with a place that cannot be read refuses the file.
// Walkers:  marks of different walkers are walks of their own, "marks.csv, Ana".
// Errors:   a Refusal with line, found, expected; Code::needs_reference_system where eastings and northings have none.
// Limits:   128 MiB; rows and cells as delimited_text.h.
// Cost:     linear.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

#include "core/plan/progress.h"
#include "core/survey/refusal.h"
#include "geo/read/geographic_survey.h"
#include "geo/read/row_marks.h"
#include "geo/read/text_encoding.h"

namespace plugside {

struct TableGuess {
    char separator = ',';
    char decimal = '.';
    TextEncoding encoding = TextEncoding::utf_8;
    bool header_row = true;
    std::vector<ColumnRole> roles;  // one a column; columns beyond are not used
    std::string reference_system;   // "EPSG:25830" of easting and northing; empty: not known
    bool packed_minutes = false;
    TimeWriting times;
    std::vector<std::string> assumed;  // sentences about what the guess takes for granted
    friend bool operator==(const TableGuess&, const TableGuess&) = default;
};

struct TablePreview {
    std::vector<std::string> headings;  // empty without a heading row
    std::vector<std::vector<std::string>> rows;
    std::size_t columns = 0;  // of the longest row
};

[[nodiscard]] tl::expected<TableGuess, Refusal> guess_table(const std::filesystem::path& file);
[[nodiscard]] tl::expected<TablePreview, Refusal> preview_table(const std::filesystem::path& file, const TableGuess& guess,
                                                                std::size_t rows = 20);
[[nodiscard]] tl::expected<GeographicFile, Refusal> read_table(const std::filesystem::path& file, const TableGuess& guess,
                                                               const Progress& progress = {});

// The same from memory; `name` is what refusals and findings call it.
[[nodiscard]] tl::expected<TableGuess, Refusal> guess_table_text(std::string_view bytes, const std::string& name);
[[nodiscard]] tl::expected<TablePreview, Refusal> preview_table_text(std::string_view bytes, const std::string& name,
                                                                     const TableGuess& guess, std::size_t rows = 20);
[[nodiscard]] tl::expected<GeographicFile, Refusal> read_table_text(std::string_view bytes, const std::string& name,
                                                                    const TableGuess& guess, const Progress& progress = {});

}  // namespace plugside
