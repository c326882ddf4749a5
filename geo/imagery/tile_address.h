// The address of a server's map tiles, as a person enters it: one server, and where level, column and row stand in what is asked.
//
//     https://tiles.example.org/ground/{z}/{x}/{y}.png
//
// Places:  {z} the level, {x} the column from the west, {y} the row from the north, {-y} the row from the south instead.
// One server: what stands before the first slash after the scheme names it, whole and without places, so that what a person says
//          yes to is all that is ever asked. Its name is letters, digits, points and hyphens, with a port where there is one.
// Errors:  a sentence that says what is missing or not understood: no http or https, a name and password within, no {z}, {x}, {y},
//          a place that is named twice or not known ({s} would ask several servers), blanks.
// Source:  common practice of tile servers; there is no standard of the template.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <tl/expected.hpp>

namespace plugside {

// Of the usual scheme of squares: at level 0 one tile holds the whole Mercator map, at each further one four lie on each.
struct ServerTile {
    int level = 0;
    std::int64_t column = 0;
    std::int64_t row = 0;  // from the north
    friend auto operator<=>(const ServerTile&, const ServerTile&) = default;
};

inline constexpr int deepest_level = 22;

class TileAddress {
public:
    [[nodiscard]] static tl::expected<TileAddress, std::string> of(std::string_view text);

    [[nodiscard]] const std::string& text() const { return text_; }
    // "tiles.example.org", "127.0.0.1:8080"
    [[nodiscard]] const std::string& server() const { return server_; }
    // Whether what is asked can be read on the way.
    [[nodiscard]] bool is_open_to_others() const { return text_.rfind("http:", 0) == 0; }
    [[nodiscard]] std::string of_tile(const ServerTile& tile) const;

private:
    std::string text_;
    std::string server_;
};

}  // namespace plugside
