#include "core/units/length_text.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>
#include <string>
#include <utility>
#include <vector>

namespace plugside {

namespace {

// A number or a word: "1ft" is two of them.
struct Token {
    std::optional<double> number;
    std::string word;
};

// The marks of feet and inches as keyboards of telephones write them: curved quotes and primes. How many bytes it takes; 0 for none.
std::pair<char, std::size_t> printed_mark(std::string_view text) {
    for (const std::string_view foot : {"\u2019", "\u2032"})
        if (text.starts_with(foot)) return {'\'', foot.size()};
    for (const std::string_view inch : {"\u201d", "\u2033"})
        if (text.starts_with(inch)) return {'"', inch.size()};
    return {' ', 0};
}

std::optional<std::vector<Token>> tokens_of(std::string_view text) {
    std::vector<Token> tokens;
    for (std::size_t at = 0; at < text.size();) {
        const char c = text[at];
        if (c == ' ' || c == '\t') {
            ++at;
        } else if (std::isdigit(static_cast<unsigned char>(c)) != 0 || c == '.') {
            std::string digits;
            for (; at < text.size() &&
                   (std::isdigit(static_cast<unsigned char>(text[at])) != 0 || text[at] == '.' || text[at] == ',');
                 ++at)
                digits += text[at] == ',' ? '.' : text[at];
            double value = 0.0;
            const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
            if (error != std::errc() || end != digits.data() + digits.size()) return std::nullopt;
            tokens.push_back({value, {}});
        } else if (c == '\'' || c == '"' || c == '@' || c == '-') {
            tokens.push_back({{}, std::string(1, c)});
            ++at;
        } else if (const auto [mark, bytes] = printed_mark(text.substr(at)); bytes > 0) {
            tokens.push_back({{}, std::string(1, mark)});
            at += bytes;
        } else if (text.substr(at, 2) == "°") {
            tokens.push_back({{}, "°"});
            at += 2;
        } else if (std::isalpha(static_cast<unsigned char>(c)) != 0) {
            std::string word;
            for (; at < text.size() && std::isalpha(static_cast<unsigned char>(text[at])) != 0; ++at)
                word += static_cast<char>(std::tolower(static_cast<unsigned char>(text[at])));
            tokens.push_back({{}, std::move(word)});
        } else {
            return std::nullopt;
        }
    }
    return tokens;
}

std::optional<Metres> unit_of(const std::string& word) {
    static const std::array<std::pair<const char*, Metres>, 19> units{{{"mm", Metres::of(0.001)},
                                                                       {"m", Metres::of(1.0)},
                                                                       {"metre", Metres::of(1.0)},
                                                                       {"metres", Metres::of(1.0)},
                                                                       {"meter", Metres::of(1.0)},
                                                                       {"meters", Metres::of(1.0)},
                                                                       {"metro", Metres::of(1.0)},
                                                                       {"metros", Metres::of(1.0)},
                                                                       {"cm", Metres::of(0.01)},
                                                                       {"ft", Metres::from_feet(1.0)},
                                                                       {"foot", Metres::from_feet(1.0)},
                                                                       {"feet", Metres::from_feet(1.0)},
                                                                       {"'", Metres::from_feet(1.0)},
                                                                       {"pie", Metres::from_feet(1.0)},
                                                                       {"pies", Metres::from_feet(1.0)},
                                                                       {"in", Metres::from_inches(1.0)},
                                                                       {"\"", Metres::from_inches(1.0)},
                                                                       {"pulgada", Metres::from_inches(1.0)},
                                                                       {"pulgadas", Metres::from_inches(1.0)}}};
    for (const auto& [name, unit] : units)
        if (word == name) return unit;
    return std::nullopt;
}

bool is_foot(Metres unit) { return unit == Metres::from_feet(1.0); }

// A length from tokens[at] on; `at` is left behind it.
std::optional<Metres> length_at(const std::vector<Token>& tokens, std::size_t& at, LengthUnits units) {
    double sign = 1.0;
    if (at < tokens.size() && tokens[at].word == "-") {
        sign = -1.0;
        ++at;
    }
    if (at >= tokens.size() || !tokens[at].number) return std::nullopt;
    const double first = *tokens[at++].number;
    const auto unit = at < tokens.size() ? unit_of(tokens[at].word) : std::nullopt;
    if (!unit) return Metres::of(sign * (units == LengthUnits::metres ? first : Metres::from_feet(first).value()));
    ++at;
    Metres length = *unit * first;
    if (is_foot(*unit) && at < tokens.size() && tokens[at].number && *tokens[at].number < 12.0) {
        const auto next = at + 1 < tokens.size() ? unit_of(tokens[at + 1].word) : std::nullopt;
        const bool inches = next && *next == Metres::from_inches(1.0);
        if (inches || at + 1 == tokens.size()) {
            length = length + Metres::from_inches(*tokens[at].number);
            at += inches ? 2 : 1;
        }
    }
    return length * sign;
}

std::optional<double> degrees_of_point(const std::string& word) {
    static constexpr std::array<const char*, 16> points{"n", "nne", "ne", "ene", "e", "ese", "se", "sse",
                                                        "s", "ssw", "sw", "wsw", "w", "wnw", "nw", "nnw"};
    std::string point = word;
    std::replace(point.begin(), point.end(), 'o', 'w');
    const auto found = std::find(points.begin(), points.end(), point);
    if (found == points.end()) return std::nullopt;
    return 22.5 * static_cast<double>(found - points.begin());
}

std::optional<Bearing> bearing_at(const std::vector<Token>& tokens, std::size_t& at) {
    if (at >= tokens.size()) return std::nullopt;
    if (tokens[at].number) {
        const double degrees = *tokens[at++].number;
        if (at < tokens.size() && tokens[at].word == "°") ++at;
        if (degrees > 360.0) return std::nullopt;
        return Bearing::degrees(degrees);
    }
    const std::string& word = tokens[at].word;
    const bool quadrant = (word == "n" || word == "s") && at + 2 < tokens.size() && tokens[at + 1].number;
    if (quadrant) {
        const std::string& side = tokens[at + 2].word;
        const double turn = *tokens[at + 1].number;
        if (turn > 90.0 || (side != "e" && side != "w" && side != "o")) return std::nullopt;
        at += 3;
        const double from_north = word == "n" ? turn : 180.0 - turn;
        return Bearing::degrees(side == "e" ? from_north : 360.0 - from_north);
    }
    const auto degrees = degrees_of_point(word);
    if (!degrees) return std::nullopt;
    ++at;
    return Bearing::degrees(*degrees);
}

}  // namespace

std::optional<Metres> parse_length(std::string_view text, LengthUnits units) {
    const auto tokens = tokens_of(text);
    if (!tokens) return std::nullopt;
    std::size_t at = 0;
    const auto length = length_at(*tokens, at, units);
    if (!length || at != tokens->size()) return std::nullopt;
    return length;
}

std::optional<Bearing> parse_bearing(std::string_view text) {
    const auto tokens = tokens_of(text);
    if (!tokens) return std::nullopt;
    std::size_t at = 0;
    const auto bearing = bearing_at(*tokens, at);
    if (!bearing || at != tokens->size()) return std::nullopt;
    return bearing;
}

std::optional<Leg> parse_leg(std::string_view text, LengthUnits units) {
    const auto tokens = tokens_of(text);
    if (!tokens) return std::nullopt;
    // "1 ft 3 90": inches or the bearing? The last number is the bearing.
    for (std::size_t cut = tokens->size(); cut-- > 1;) {
        const std::vector<Token> before(tokens->begin(), tokens->begin() + static_cast<std::ptrdiff_t>(cut));
        std::size_t end = 0;
        const auto length = length_at(before, end, units);
        if (!length || end != before.size()) continue;
        std::size_t at = cut;
        if ((*tokens)[at].word == "@") ++at;
        const auto bearing = bearing_at(*tokens, at);
        if (bearing && at == tokens->size()) return Leg{*length, *bearing};
    }
    return std::nullopt;
}

}  // namespace plugside
