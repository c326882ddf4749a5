// The name of a set on paper, in plain letters and figures: the letter of its system, its number in walking order, and two check figures, so
// that a name read out over a radio or copied from a muddy card is known to be wrong when it is.
//
// Form:    "C07-66": at least two figures for the number. Read again: with or without blanks, hyphen and capitals.
// Check:   ISO/IEC 7064, MOD 97-10, letters taken as 10 to 35 as ISO 13616 does for bank accounts: the whole, with the check figures at its
//          end, leaves 1 when divided by 97. Finds every single wrong figure or letter and every two neighbours that changed places.
// Preconditions: `letter` is one or more of A to Z, `number` > 0.
// Degenerate input: anything that is no such name, or whose check figures do not fit, reads as nothing.
// Cost:    linear in the text.
// Source:  ISO/IEC 7064:2003; ISO 13616-1 [memory].
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace plugside {

struct SetName {
    std::string letter;
    int number = 0;
    friend bool operator==(const SetName&, const SetName&) = default;
};

[[nodiscard]] std::string set_code(const SetName& name);
[[nodiscard]] std::optional<SetName> read_set_code(std::string_view text);

// The remainder by 97 of letters (A = 10 ... Z = 35) and figures, as one long number. Only 0-9 and A-Z.
[[nodiscard]] int remainder_by_97(std::string_view text);

}  // namespace plugside
