// A note cut into words, with what carries no meaning taken off: case, accents however they are written, quotation marks.
//
// Folding: letters in lower case without accents (composed, with combining marks, or as single bytes of Latin-1 where the
//          text is not UTF-8), typographic quotes and dashes as plain ones, "º" as "°"; other letters stay as they are.
// Words:   runs of letters, numbers (a comma between digits is a decimal one), and the signs that mean something (° ' " ?
// ~).
//          A number glued to letters is cut off where both are known that way ("135M", "fan135", "3x", "N45E"); otherwise
//          the whole is one word ("M031").
// Spans:   bytes of the text, [begin, end), in their order, not overlapping.
// Total:   any bytes give words; nothing throws. Linear.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace plugside::note_words {

enum class Gap {
    none,
    space,
    comma,
    stop
};  // what stands before a word; comma: , : / ( ) and the like; stop: ; . and a new line

struct Token {
    std::string folded;
    std::size_t begin = 0;
    std::size_t end = 0;
    bool is_number = false;
    double value = 0.0;     // of a number; may be infinite; 3:30 is 3.5
    bool is_clock = false;  // 3:30
    Gap gap = Gap::none;
    bool hyphen = false;  // a hyphen stands before it, without spaces
    bool slash = false;
    bool assigned = false;  // a colon or an equals sign stands before it
};

[[nodiscard]] std::vector<Token> tokens_of(std::string_view text);

// "montículo" and "MONTICULO" give "monticulo".
[[nodiscard]] std::string folded(std::string_view text);

}  // namespace plugside::note_words
