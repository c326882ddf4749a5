// A text as rows of cells: separators, quotes, line ends.
//
// Separator: a character, or a blank, which stands for any run of blanks and tabs.
// Quotes:    a cell that begins with " goes to the next " that is not doubled; separators and line ends within are the
//            cell's own, "" is one ". A " elsewhere is a character like any other (38°15'30"N).
// Rows:      end with LF, CR LF or CR; a row without any character but blanks is left out. Cells are trimmed.
// Refused:   a quote that is never closed, a cell over 64 KiB, more than 1,000 cells in a row, more than 2,000,000 rows.
// Cost:      linear. Source: RFC 4180, leniently.
#pragma once

#include <cstddef>
#include <limits>
#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

#include "core/survey/refusal.h"

namespace plugside {

struct TextRow {
    std::size_t line = 0;  // where it begins, from 1
    std::vector<std::string> cells;
};

// At most `most` rows; `name` is what refusals call the file.
[[nodiscard]] tl::expected<std::vector<TextRow>, Refusal> split_delimited(
    std::string_view utf_8, char separator, const std::string& name,
    std::size_t most = std::numeric_limits<std::size_t>::max());

}  // namespace plugside
