#include "geo/write/gpx_text.h"

#include <array>
#include <charconv>
#include <cstdint>

namespace plugside::gpx_text {

namespace {

// The length of the well-formed UTF-8 character at the start of `text` that XML may hold, or 0.
std::size_t character_length(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<std::uint32_t>(static_cast<unsigned char>(text[i])); };
    const std::uint32_t lead = byte(0);
    if (lead < 0x80) return lead >= 0x20 && lead != 0x7F ? 1 : 0;
    const std::size_t length = lead >= 0xF0 ? 4 : (lead >= 0xE0 ? 3 : 2);
    if (lead < 0xC2 || lead > 0xF4 || text.size() < length) return 0;
    std::uint32_t code = lead & (0xFFU >> (length + 1));
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(i) & 0xC0U) != 0x80U) return 0;
        code = (code << 6U) | (byte(i) & 0x3FU);
    }
    const bool too_long = (length == 3 && code < 0x800) || (length == 4 && code < 0x10000);
    const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
    if (too_long || surrogate || code > 0x10FFFF || code == 0xFFFE || code == 0xFFFF) return 0;
    return length;
}

std::string fixed(double degrees) {
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), degrees, std::chars_format::fixed, 10).ptr;
    return {text.data(), end};
}

}  // namespace

std::string xml_text(std::string_view text) {
    std::string escaped;
    escaped.reserve(text.size());
    while (!text.empty()) {
        const char c = text.front();
        const std::size_t length = character_length(text);
        if (c == '&')
            escaped += "&amp;";
        else if (c == '<')
            escaped += "&lt;";
        else if (c == '>')
            escaped += "&gt;";
        else if (c == '"')
            escaped += "&quot;";
        else if (c == '\t' || c == '\n' || c == '\r')
            escaped += ' ';
        else
            escaped.append(text.substr(0, length));
        text.remove_prefix(length == 0 ? 1 : length);
    }
    return escaped;
}

std::string xml_characters(std::string_view text) {
    std::string kept;
    kept.reserve(text.size());
    while (!text.empty()) {
        const char c = text.front();
        const bool blank = c == '\t' || c == '\n' || c == '\r';
        const std::size_t length = blank ? 1 : character_length(text);
        kept.append(text.substr(0, length));
        text.remove_prefix(length == 0 ? 1 : length);
    }
    return kept;
}

std::string coordinates(GeographicPoint place) {
    std::string longitude = fixed(place.longitude_degrees);
    // Rounding can reach the meridian that the schema knows only by its western name.
    if (longitude == "180.0000000000") longitude = "-180.0000000000";
    return " lat=\"" + fixed(place.latitude_degrees) + "\" lon=\"" + longitude + "\"";
}

std::string decimal_text(double value) {
    std::array<char, 400> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed).ptr;
    return {text.data(), end};
}

std::string element(int indent, const char* name, std::string_view text) {
    const std::string content = xml_text(text);
    if (content.empty()) return {};
    std::string line(static_cast<std::size_t>(indent), ' ');
    line.append("<").append(name).append(">").append(content).append("</").append(name).append(">\n");
    return line;
}

std::string opening(std::string_view title) {
    std::string text =
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        "<gpx version=\"1.1\" creator=\"Plugside\" xmlns=\"http://www.topografix.com/GPX/1/1\">\n";
    const std::string name = element(4, "name", title);
    if (!name.empty()) text.append("  <metadata>\n").append(name).append("  </metadata>\n");
    return text;
}

}  // namespace plugside::gpx_text
