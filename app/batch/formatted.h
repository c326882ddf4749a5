// A line of numbers by a printf format; more than 511 characters are cut off.
#pragma once

#include <array>
#include <cstdio>
#include <string>

namespace plugside {

template <typename... Values>
[[nodiscard]] std::string formatted(const char* format, Values... values) {
    std::array<char, 512> text{};
    std::snprintf(text.data(), text.size(), format, values...);
    return text.data();
}

}  // namespace plugside
