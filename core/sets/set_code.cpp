#include "core/sets/set_code.h"

#include <algorithm>
#include <cassert>
#include <charconv>

namespace plugside {

namespace {

bool is_letter(char sign) { return sign >= 'A' && sign <= 'Z'; }
bool is_figure(char sign) { return sign >= '0' && sign <= '9'; }

std::string two_figures(int number) { return (number < 10 ? "0" : "") + std::to_string(number); }

// What counts, in capitals; nothing where a sign stands that belongs to no name.
std::optional<std::string> signs_of(std::string_view text) {
    std::string signs;
    for (char sign : text) {
        if (sign == ' ' || sign == '-') continue;
        if (sign >= 'a' && sign <= 'z') sign = static_cast<char>(sign - 'a' + 'A');
        if (!is_letter(sign) && !is_figure(sign)) return std::nullopt;
        signs += sign;
    }
    return signs;
}

}  // namespace

int remainder_by_97(std::string_view text) {
    int remainder = 0;
    for (const char sign : text) {
        assert(is_letter(sign) || is_figure(sign));
        remainder = is_letter(sign) ? (remainder * 100 + sign - 'A' + 10) % 97 : (remainder * 10 + sign - '0') % 97;
    }
    return remainder;
}

std::string set_code(const SetName& name) {
    assert(!name.letter.empty() && name.number > 0);
    const std::string plain = name.letter + two_figures(name.number);
    return plain + "-" + two_figures(98 - remainder_by_97(plain + "00"));
}

std::optional<SetName> read_set_code(std::string_view text) {
    const auto signs = signs_of(text);
    if (!signs || remainder_by_97(*signs) != 1) return std::nullopt;
    const auto first_figure = std::find_if(signs->begin(), signs->end(), is_figure);
    const auto figures = signs->end() - first_figure;
    if (first_figure == signs->begin() || figures < 4 || figures > 9 || !std::all_of(first_figure, signs->end(), is_figure))
        return std::nullopt;
    SetName name{{signs->begin(), first_figure}, 0};
    const char* const begin = signs->data() + name.letter.size();
    std::from_chars(begin, begin + figures - 2, name.number);
    if (name.number == 0) return std::nullopt;
    return name;
}

}  // namespace plugside
