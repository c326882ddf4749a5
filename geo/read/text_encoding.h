// The bytes of a text file as UTF-8, whatever they are written in.
//
// utf_8:      with or without a byte order mark. utf_16_*: with or without one. latin_1: ISO 8859-1, the bytes 80 to 9F as
//             Windows has them (code page 1252), as tables from there are what people have.
// Guess:      the byte order mark; else zero bytes on every second place; else UTF-8 where all of it is; else Latin-1.
// Degenerate: bytes that the encoding does not have (half a pair, a cut character) become U+FFFD, which shows as what it is.
// Cost:       linear. Source: The Unicode Standard, chapter 3; RFC 3629.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace plugside {

enum class TextEncoding { utf_8, utf_16_little, utf_16_big, latin_1 };

// "UTF-8", "UTF-16 (little end first)", "UTF-16 (big end first)", "Latin-1".
[[nodiscard]] std::string to_text(TextEncoding encoding);

[[nodiscard]] TextEncoding guess_encoding(std::string_view bytes);
[[nodiscard]] std::string to_utf_8(std::string_view bytes, TextEncoding encoding);

// Whether the bytes are a text at all: hardly any control characters once decoded.
[[nodiscard]] bool is_text(std::string_view bytes);

}  // namespace plugside
