// Pieces of GPX 1.1 text, right by construction.
//
// xml_text:   escaped for element content and attributes; control characters that XML 1.0 has no place for are dropped, as
//             are bytes that are not UTF-8; tabs and line ends become spaces.
// xml_characters: the text without what XML 1.0 has no place for and bytes that are not UTF-8; not escaped.
// coordinates: ` lat="..." lon="..."` with 10 decimals (0.01 mm), latitude within -90..90, longitude in [-180, 180) as
//              written.
// decimal_text: plain decimal notation, shortest that reads back equal, never an exponent.
// Cost: linear.
#pragma once

#include <string>
#include <string_view>

#include "geo/frame/local_frame.h"

namespace plugside::gpx_text {

[[nodiscard]] std::string xml_text(std::string_view text);
[[nodiscard]] std::string xml_characters(std::string_view text);
[[nodiscard]] std::string coordinates(GeographicPoint place);
[[nodiscard]] std::string decimal_text(double value);

// "<name>text</name>", indented by `indent` spaces, with a line end; nothing for an empty text.
[[nodiscard]] std::string element(int indent, const char* name, std::string_view text);

// The declaration and the opening of gpx with the title as its metadata; what follows is waypoints, then tracks, then
// `closing`.
[[nodiscard]] std::string opening(std::string_view title);
inline constexpr const char* closing = "</gpx>\n";

}  // namespace plugside::gpx_text
