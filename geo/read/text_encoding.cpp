#include "geo/read/text_encoding.h"

#include <algorithm>
#include <array>
#include <cstdint>

#include "core/words/words.h"

namespace plugside {

namespace {

constexpr std::uint32_t replacement = 0xFFFD;

std::uint8_t byte_at(std::string_view bytes, std::size_t i) { return static_cast<std::uint8_t>(bytes[i]); }

void append(std::string& text, std::uint32_t code) {
    const auto add = [&](std::uint32_t byte) { text += static_cast<char>(byte); };
    if (code < 0x80) {
        add(code);
    } else if (code < 0x800) {
        add(0xC0U | code >> 6U);
        add(0x80U | (code & 0x3FU));
    } else if (code < 0x10000) {
        add(0xE0U | code >> 12U);
        add(0x80U | (code >> 6U & 0x3FU));
        add(0x80U | (code & 0x3FU));
    } else {
        add(0xF0U | code >> 18U);
        add(0x80U | (code >> 12U & 0x3FU));
        add(0x80U | (code >> 6U & 0x3FU));
        add(0x80U | (code & 0x3FU));
    }
}

// The length of the UTF-8 character at the front, 0 when there is none (overlong, cut, a surrogate).
std::size_t character_length(std::string_view bytes) {
    const std::uint8_t lead = byte_at(bytes, 0);
    if (lead < 0x80) return 1;
    const std::size_t length = lead >= 0xC2 && lead < 0xE0   ? 2
                               : lead >= 0xE0 && lead < 0xF0 ? 3
                               : lead >= 0xF0 && lead < 0xF5 ? 4
                                                             : 0;
    if (length == 0 || bytes.size() < length) return 0;
    for (std::size_t i = 1; i < length; ++i)
        if ((byte_at(bytes, i) & 0xC0U) != 0x80U) return 0;
    const std::uint8_t second = byte_at(bytes, 1);
    if ((lead == 0xE0 && second < 0xA0) || (lead == 0xED && second > 0x9F) || (lead == 0xF0 && second < 0x90) ||
        (lead == 0xF4 && second > 0x8F))
        return 0;
    return length;
}

std::string valid_utf_8(std::string_view bytes) {
    std::string text;
    text.reserve(bytes.size());
    while (!bytes.empty()) {
        const std::size_t length = character_length(bytes);
        if (length == 0)
            append(text, replacement);
        else
            text.append(bytes.substr(0, length));
        bytes.remove_prefix(std::max<std::size_t>(length, 1));
    }
    return text;
}

bool is_utf_8(std::string_view bytes) {
    while (!bytes.empty()) {
        const std::size_t length = character_length(bytes);
        if (length == 0) return false;
        bytes.remove_prefix(length);
    }
    return true;
}

std::string from_utf_16(std::string_view bytes, bool big) {
    const auto unit = [&](std::size_t i) -> std::uint32_t {
        const std::uint32_t first = byte_at(bytes, i);
        const std::uint32_t second = byte_at(bytes, i + 1);
        return big ? first << 8U | second : second << 8U | first;
    };
    std::string text;
    text.reserve(bytes.size() / 2);
    std::size_t i = 0;
    for (; i + 1 < bytes.size(); i += 2) {
        std::uint32_t code = unit(i);
        if (code >= 0xD800 && code < 0xDC00 && i + 3 < bytes.size() && unit(i + 2) >= 0xDC00 && unit(i + 2) < 0xE000) {
            code = 0x10000U + ((code - 0xD800U) << 10U) + (unit(i + 2) - 0xDC00U);
            i += 2;
        } else if (code >= 0xD800 && code < 0xE000) {
            code = replacement;
        }
        append(text, code);
    }
    if (i < bytes.size()) append(text, replacement);
    return text;
}

// Code page 1252 from 80 to 9F; the five that it leaves open stay control characters.
constexpr std::array<std::uint16_t, 32> windows{0x20AC, 0x81,   0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021,
                                                0x02C6, 0x2030, 0x0160, 0x2039, 0x0152, 0x8D,   0x017D, 0x8F,
                                                0x90,   0x2018, 0x2019, 0x201C, 0x201D, 0x2022, 0x2013, 0x2014,
                                                0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0x9D,   0x017E, 0x0178};

std::string from_latin_1(std::string_view bytes) {
    std::string text;
    text.reserve(bytes.size() + bytes.size() / 8);
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        const std::uint8_t byte = byte_at(bytes, i);
        append(text, byte >= 0x80 && byte < 0xA0 ? windows[byte - 0x80U] : byte);
    }
    return text;
}

}  // namespace

std::string to_text(TextEncoding encoding) {
    switch (encoding) {
        case TextEncoding::utf_8: return Words::later("UTF-8");
        case TextEncoding::utf_16_little: return Words::later("UTF-16 (little end first)");
        case TextEncoding::utf_16_big: return Words::later("UTF-16 (big end first)");
        case TextEncoding::latin_1: return Words::later("Latin-1");
    }
    return Words::later("UTF-8");
}

TextEncoding guess_encoding(std::string_view bytes) {
    using namespace std::string_view_literals;
    if (bytes.substr(0, 3) == "\xEF\xBB\xBF"sv) return TextEncoding::utf_8;
    if (bytes.substr(0, 2) == "\xFF\xFE"sv) return TextEncoding::utf_16_little;
    if (bytes.substr(0, 2) == "\xFE\xFF"sv) return TextEncoding::utf_16_big;
    const std::string_view start = bytes.substr(0, 4096);
    std::array<std::size_t, 2> zeros{};
    for (std::size_t i = 0; i < start.size(); ++i)
        if (start[i] == '\0') ++zeros[i % 2];
    // a table is mostly digits and separators: nearly every other byte is zero
    if (zeros[1] * 4 > start.size() && zeros[0] * 8 < start.size()) return TextEncoding::utf_16_little;
    if (zeros[0] * 4 > start.size() && zeros[1] * 8 < start.size()) return TextEncoding::utf_16_big;
    return is_utf_8(bytes) ? TextEncoding::utf_8 : TextEncoding::latin_1;
}

std::string to_utf_8(std::string_view bytes, TextEncoding encoding) {
    using namespace std::string_view_literals;
    switch (encoding) {
        case TextEncoding::utf_8:
            if (bytes.substr(0, 3) == "\xEF\xBB\xBF"sv) bytes.remove_prefix(3);
            return valid_utf_8(bytes);
        case TextEncoding::utf_16_little:
            if (bytes.substr(0, 2) == "\xFF\xFE"sv) bytes.remove_prefix(2);
            return from_utf_16(bytes, false);
        case TextEncoding::utf_16_big:
            if (bytes.substr(0, 2) == "\xFE\xFF"sv) bytes.remove_prefix(2);
            return from_utf_16(bytes, true);
        case TextEncoding::latin_1: return from_latin_1(bytes);
    }
    return {};
}

bool is_text(std::string_view bytes) {
    const std::string_view start = bytes.substr(0, 4096);
    const std::string text = to_utf_8(start, guess_encoding(start));
    const auto odd = std::count_if(text.begin(), text.end(), [](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return (byte < 0x20 && c != '\t' && c != '\n' && c != '\r') || byte == 0x7F;
    });
    return static_cast<std::size_t>(odd) * 50 <= text.size();
}

}  // namespace plugside
