#include "geo/imagery/tile_address.h"

#include <algorithm>
#include <array>

#include "core/survey/refusal.h"
#include "core/words/words.h"

namespace plugside {

namespace {

constexpr std::string_view letters = "abcdefghijklmnopqrstuvwxyz0123456789.-:[]";

std::size_t count_of(std::string_view text, std::string_view part) {
    std::size_t count = 0;
    for (std::size_t at = text.find(part); at != std::string_view::npos; at = text.find(part, at + part.size())) ++count;
    return count;
}

tl::unexpected<std::string> no(std::string sentence) { return tl::unexpected(std::move(sentence)); }

// The text without the places that it may have.
std::string without_places(std::string text) {
    for (const std::string_view place : {"{z}", "{x}", "{y}", "{-y}"})
        for (std::size_t at = text.find(place); at != std::string::npos; at = text.find(place)) text.erase(at, place.size());
    return text;
}

void put(std::string& text, std::string_view place, std::int64_t number) {
    if (const std::size_t at = text.find(place); at != std::string::npos)
        text.replace(at, place.size(), std::to_string(number));
}

}  // namespace

tl::expected<TileAddress, std::string> TileAddress::of(std::string_view text) {
    while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
    const std::size_t scheme = text.rfind("https://", 0) == 0 ? 8 : text.rfind("http://", 0) == 0 ? 7 : 0;
    if (scheme == 0) return no(Words::tell("An address of tiles begins with https:// or http://."));
    const bool plain = std::all_of(text.begin(), text.end(),
                                   [](char c) { return c > ' ' && c < '\x7f' && c != '"' && c != '<' && c != '\\'; });
    if (!plain || text.size() > 2000) return no(Words::tell("The address holds blanks or characters that no address has."));
    const std::string_view rest = text.substr(scheme);
    const std::string server(rest.substr(0, rest.find_first_of("/?#")));
    if (server.find('@') != std::string::npos)
        return no(Words::tell("The address holds a name and password; they would be sent with every tile."));
    std::string lower = server;
    std::transform(lower.begin(), lower.end(), lower.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    if (lower.empty() || lower.find_first_not_of(letters) != std::string::npos)
        return no(Words::tell("“{1}” is no single server's name.", {quoted_for_display(server)}));
    const bool rows = count_of(text, "{y}") + count_of(text, "{-y}") == 1;
    if (count_of(text, "{z}") != 1 || count_of(text, "{x}") != 1 || !rows)
        return no(Words::tell("The address names the level as {z}, the column as {x} and the row as {y}, each once."));
    const std::string bare = without_places(std::string(text));
    if (bare.find_first_of("{}#") != std::string::npos)
        return no(Words::tell("The address holds a place other than {z}, {x}, {y} or {-y}."));
    TileAddress address;
    address.text_ = text;
    address.server_ = server;
    return address;
}

std::string TileAddress::of_tile(const ServerTile& tile) const {
    std::string text = text_;
    put(text, "{z}", tile.level);
    put(text, "{x}", tile.column);
    put(text, "{y}", tile.row);
    put(text, "{-y}", (std::int64_t{1} << tile.level) - 1 - tile.row);
    return text;
}

}  // namespace plugside
