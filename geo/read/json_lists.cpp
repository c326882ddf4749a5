#include "geo/read/json_lists.h"

#include <array>
#include <charconv>
#include <cmath>

#include "geo/read/numbers.h"

namespace plugside {

namespace {

constexpr std::string_view hexadecimal = "0123456789abcdef";

std::string quoted(const std::string& name) {
    std::string text = "\"";
    for (const char c : name) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte < 0x20) {
            text.append("\\u00").append(1, hexadecimal[byte >> 4U]).append(1, hexadecimal[byte & 0xFU]);
            continue;
        }
        if (c == '"' || c == '\\') text += '\\';
        text += c;
    }
    return text + "\"";
}

std::string shortest(double number) {
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), number).ptr;
    return {text.data(), end};
}

void append_utf_8(std::string& text, unsigned code) {
    if (code < 0x80) {
        text += static_cast<char>(code);
    } else if (code < 0x800) {
        text += static_cast<char>(0xC0U | (code >> 6U));
        text += static_cast<char>(0x80U | (code & 0x3FU));
    } else if (code < 0x10000) {
        text += static_cast<char>(0xE0U | (code >> 12U));
        text += static_cast<char>(0x80U | ((code >> 6U) & 0x3FU));
        text += static_cast<char>(0x80U | (code & 0x3FU));
    } else {
        text += static_cast<char>(0xF0U | (code >> 18U));
        text += static_cast<char>(0x80U | ((code >> 12U) & 0x3FU));
        text += static_cast<char>(0x80U | ((code >> 6U) & 0x3FU));
        text += static_cast<char>(0x80U | (code & 0x3FU));
    }
}

// Takes parts off the front of a text; each gives false, or nothing, where something else stands there.
class ListReader {
public:
    explicit ListReader(std::string_view text) : text_(text) {}

    bool take(char wanted) {
        skip_blanks();
        if (text_.empty() || text_.front() != wanted) return false;
        text_.remove_prefix(1);
        return true;
    }
    bool at_end() {
        skip_blanks();
        return text_.empty();
    }

    std::optional<std::string> name() {
        if (!take('"')) return std::nullopt;
        std::string name;
        while (!text_.empty()) {
            const char c = text_.front();
            text_.remove_prefix(1);
            if (c == '"') return name;
            if (static_cast<unsigned char>(c) < 0x20) return std::nullopt;
            if (c != '\\')
                name += c;
            else if (!take_escape(name))
                return std::nullopt;
        }
        return std::nullopt;
    }

    std::optional<double> number() {
        skip_blanks();
        const std::string_view number = text_.substr(0, text_.find_first_not_of("+-.0123456789eE"));
        text_.remove_prefix(number.size());
        return parse_number(number);
    }

    // [ item , item ... ]
    template <typename Item>
    bool list(const Item& item) {
        if (!take('[')) return false;
        if (take(']')) return true;
        do
            if (!item()) return false;
        while (take(','));
        return take(']');
    }

private:
    void skip_blanks() {
        while (!text_.empty() &&
               (text_.front() == ' ' || text_.front() == '\t' || text_.front() == '\n' || text_.front() == '\r'))
            text_.remove_prefix(1);
    }

    std::optional<unsigned> four_digits() {
        unsigned code = 0;
        if (text_.size() < 4) return std::nullopt;
        const auto [end, error] = std::from_chars(text_.data(), text_.data() + 4, code, 16);
        if (error != std::errc{} || end != text_.data() + 4) return std::nullopt;
        text_.remove_prefix(4);
        return code;
    }

    bool take_code(std::string& name) {
        const auto code = four_digits();
        if (!code || (*code >= 0xDC00 && *code < 0xE000)) return false;
        if (*code < 0xD800 || *code >= 0xDC00) {
            append_utf_8(name, *code);
            return true;
        }
        // the first of a pair
        if (!text_.starts_with("\\u")) return false;
        text_.remove_prefix(2);
        const auto low = four_digits();
        if (!low || *low < 0xDC00 || *low >= 0xE000) return false;
        append_utf_8(name, 0x10000 + ((*code - 0xD800) << 10U) + (*low - 0xDC00));
        return true;
    }

    bool take_escape(std::string& name) {
        if (text_.empty()) return false;
        const char c = text_.front();
        text_.remove_prefix(1);
        constexpr std::string_view letters = "\"\\/bfnrt";
        constexpr std::string_view meanings = "\"\\/\b\f\n\r\t";
        if (c == 'u') return take_code(name);
        const auto which = letters.find(c);
        if (which == std::string_view::npos) return false;
        name += meanings[which];
        return true;
    }

    std::string_view text_;
};

}  // namespace

std::string json_of(const std::vector<std::string>& names) {
    std::string list = "[";
    for (const std::string& name : names) list.append(list.size() > 1 ? "," : "").append(quoted(name));
    return list + "]";
}

std::string json_of(const std::vector<GeographicPoint>& places) {
    std::string list = "[";
    for (const GeographicPoint place : places)
        list.append(list.size() > 1 ? ",[" : "[")
            .append(shortest(place.longitude_degrees))
            .append(",")
            .append(shortest(place.latitude_degrees))
            .append("]");
    return list + "]";
}

std::optional<std::vector<std::string>> names_in_json(std::string_view text) {
    ListReader reader(text);
    std::vector<std::string> names;
    const bool read = reader.list([&] {
        auto name = reader.name();
        if (name) names.push_back(std::move(*name));
        return name.has_value();
    });
    if (!read || !reader.at_end()) return std::nullopt;
    return names;
}

std::optional<std::vector<GeographicPoint>> places_in_json(std::string_view text) {
    ListReader reader(text);
    std::vector<GeographicPoint> places;
    const bool read = reader.list([&] {
        if (!reader.take('[')) return false;
        const auto longitude = reader.number();
        if (!longitude || !reader.take(',')) return false;
        const auto latitude = reader.number();
        if (!latitude || !reader.take(']')) return false;
        if (!(std::abs(*longitude) <= 180.0 && std::abs(*latitude) <= 90.0)) return false;
        places.push_back({*longitude, *latitude});
        return true;
    });
    if (!read || !reader.at_end()) return std::nullopt;
    return places;
}

}  // namespace plugside
