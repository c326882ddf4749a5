// Why an input was refused: what a person needs to mend it.
//
// file:     the file's name as it was given.
// place:    the line ("line 12"), feature ("waypoint 7, M031") or field; empty when the whole file is meant.
// found:    what stands there; quoted, cut to a readable length.
// expected: what should stand there.
// `sentence` joins them: "walk.gpx, line 12: found lat=\"abc\", expected a number of degrees from -90 to 90."
#pragma once

#include <string>

namespace plugside {

struct Refusal {
    enum class Code {
        missing_file,
        not_a_file,
        unreadable,
        wrong_format,
        malformed,
        out_of_range,
        too_large,
        nothing_to_plan,
        cannot_write,
        forbidden_source,
        needs_reference_system,  // a person can answer: by saying in which reference system the coordinates are
        in_use,                  // someone else has it open
        needs_placement,         // a person can answer: by showing where places of the picture lie on the ground
        stopped,
    };
    Code code = Code::malformed;
    std::string file;
    std::string place;
    std::string found;
    std::string expected;
    friend bool operator==(const Refusal&, const Refusal&) = default;
};

[[nodiscard]] std::string sentence(const Refusal& refusal);

// `text` in double quotes, control characters shown as dots, cut after `most` bytes (never inside a UTF-8 character).
[[nodiscard]] std::string quoted_for_display(const std::string& text, std::size_t most = 60);

}  // namespace plugside
