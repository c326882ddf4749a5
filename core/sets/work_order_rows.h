// A work order as rows of two texts, name and value, and back: for project files, layers and files typed by hand.
//
// Names:   "soil-moisture", "soil-moisture.at", "label.placement-most", "own-method.1.step.2.text": stable, in English; lists count from 1.
//          The names of answers are those of their questions (conditions.h).
// Values:  words of files, "yes" and "no", numbers with a point in the shortest form that reads back the same, amounts "1.5 teaspoons", rates
//          "2 pounds per acre", lengths "30.48 m" (read also: "100 ft"), days "2025-04-10", times "2025-04-10T12:00:00.000Z". In texts a
//          line break, a tab and a backslash are written \n, \t and \\, a blank at either end \s. "not-known": asked, and not known.
// Absent:  what was not said has no row; an empty order has none.
// Round:   `work_order_of(rows_of(order))` is the order itself.
// Read:    whatever can be read is; each row that cannot, and each name that is none, is a problem with what was found and expected.
// File:    `lines_of`: a row a line, "name = value"; empty lines and lines that begin with # are passed over when read. A line "given-at =
//          2025-04-10", or with a time, is the time of all answers that carry none of their own; of a day its noon.
// Cost:    O(rows log rows).
#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/sets/work_order.h"
#include "core/survey/refusal.h"

namespace plugside {

struct WorkRow {
    std::string name;
    std::string value;
    friend bool operator==(const WorkRow&, const WorkRow&) = default;
};

[[nodiscard]] std::vector<WorkRow> rows_of(const WorkOrder& work);

struct WorkReading {
    WorkOrder work;
    std::vector<Refusal> problems;             // place: the row's name, or "line 12, name"
    std::map<std::string, std::string> lines;  // of a file: "line 12" by the row's name
};

// "line 12, name", or the name where no line is known.
[[nodiscard]] std::string row_place(const std::map<std::string, std::string>& lines, const std::string& name);

// `given_at`: of answers whose row of time is missing, as in a file that somebody typed; nothing: they have none.
[[nodiscard]] WorkReading work_order_of(const std::vector<WorkRow>& rows, std::optional<UtcTime> given_at = {});

[[nodiscard]] std::string lines_of(const std::vector<WorkRow>& rows);
[[nodiscard]] WorkReading work_order_of_lines(const std::string& text, const std::string& file,
                                              std::optional<UtcTime> given_at = {});

// Names, numbers of licences and reasons: left out of what is handed out unless asked for.
[[nodiscard]] bool is_private(const WorkRow& row);

}  // namespace plugside
