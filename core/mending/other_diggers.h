// Marks taken for a gopher's that look like another digger's, by their pattern and by the walker's own words.
//
// Pattern: three or more marks without a fan, a stride apart (0.4 to 1.3 m between one and the next), nearly in one line,
// marked one
//          after another: a mole's hills along its ridge (Dalquest 1948: round, volcano-like, about a stride apart).
//          Gophers' own mounds without a fan seldom stand so.
// Words:   of the note, English and Spanish: an open hole speaks for a ground squirrel or a vole, a ridge or a round hill
// with the
//          hole in the middle for a mole, a runway or trail in the grass for a vole; an animal's name for that animal.
//          "round" alone says little: a gopher's surface plug is round, too.
// chance:  our assumption for each rule, by how plain the sign is; what a single mark without words is cannot be told from
// the map. Left out: marks with a fan whose note says nothing: a fan is a gopher's sign (UC IPM 7433). Degenerate input: no
// marks, nothing. Cost:    O(n log n + length of notes).
#pragma once

#include <string>
#include <string_view>

#include "core/mending/walk_marks.h"

namespace plugside {

struct OtherDigger {
    std::vector<std::size_t> marks;  // into WalkMarks::marks: a string of hills, or one mark
    SignKind kind = SignKind::mole;
    double chance = 0.0;
    std::string word;       // of the note; empty where the pattern alone speaks
    double stride_m = 0.0;  // mean step along the string; 0 for a single mark
};

struct DiggerWord {
    std::string_view word;
    SignKind kind = SignKind::other;
    double chance = 0.0;
};

// The word of a note that says most of another digger, or nothing; whole words, capitals and accents as written or without.
[[nodiscard]] std::optional<DiggerWord> digger_word(std::string_view note);

[[nodiscard]] std::vector<OtherDigger> other_diggers(const Survey& survey, const WalkMarks& walk);

}  // namespace plugside
