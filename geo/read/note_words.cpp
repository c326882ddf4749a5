#include "geo/read/note_words.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <limits>
#include <utility>

namespace plugside::note_words {

namespace {

using namespace std::string_view_literals;

template <std::size_t n>
bool is_one_of(std::string_view word, const std::array<std::string_view, n>& words) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

std::string lower_case(std::string_view text) {
    std::string lower(text);
    for (char& c : lower)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return lower;
}

bool separates(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return byte <= 0x20 || byte == 0x7F || std::string_view(",;:=()[]{}/|!*_").find(c) != std::string_view::npos;
}

// A point or quotation mark around a word is no part of it; one behind a digit may be inches and stays.
std::string_view stripped(std::string_view word) {
    while (!word.empty() && (word.front() == '"' || word.front() == '\'' || word.front() == '.')) word.remove_prefix(1);
    while (!word.empty()) {
        const char last = word.back();
        const bool after_digit = word.size() > 1 && word[word.size() - 2] >= '0' && word[word.size() - 2] <= '9';
        if (last != '.' && (after_digit || (last != '"' && last != '\''))) break;
        word.remove_suffix(1);
    }
    return word;
}

void add_word(std::vector<Word>& words, std::string_view word) {
    word = stripped(word);
    if (!word.empty()) words.push_back({std::string(word), lower_case(word)});
}

bool starts_with_take(std::string_view& text, std::string_view start) {
    if (text.substr(0, start.size()) != start) return false;
    text.remove_prefix(start.size());
    return true;
}

// Direction words one after another, as initials: "southeast" gives "se"; nothing if anything else stands there.
std::optional<std::string> initials(std::string_view word) {
    std::string letters;
    while (!word.empty()) {
        bool found = false;
        for (const std::string_view direction : {"north"sv, "east"sv, "south"sv, "west"sv})
            if (!found && starts_with_take(word, direction)) {
                letters += direction.front();
                found = true;
            }
        if (!found) return std::nullopt;
    }
    return letters;
}

}  // namespace

std::vector<Word> words_of(std::string_view note) {
    std::vector<Word> words;
    std::size_t start = 0;
    for (std::size_t i = 0; i <= note.size(); ++i) {
        const bool doubt = i < note.size() && note[i] == '?';
        if (i < note.size() && !doubt && !separates(note[i])) continue;
        add_word(words, note.substr(start, i - start));
        if (doubt) words.push_back({"?", "?"});
        start = i + 1;
    }
    return words;
}

std::optional<Angle> angle_in(std::string_view word) {
    double sign = 1.0;
    if (!word.empty() && (word.front() == '-' || word.front() == '+')) {
        sign = word.front() == '-' ? -1.0 : 1.0;
        word.remove_prefix(1);
    }
    if (word.empty() || word.front() < '0' || word.front() > '9') return std::nullopt;
    double value = 0.0;
    const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), value, std::chars_format::fixed);
    if (error == std::errc::result_out_of_range) value = std::numeric_limits<double>::infinity();
    word.remove_prefix(static_cast<std::size_t>(end - word.data()));
    for (const std::string_view unit : {"\xC2\xB0"sv, "\xC2\xBA"sv, "degrees"sv, "degree"sv, "deg"sv})
        if (starts_with_take(word, unit)) break;
    Angle angle{sign * value, Reference::unsaid};
    if (word.empty()) return angle;
    const auto reference = reference_in(word);
    if (!reference) return std::nullopt;
    angle.reference = *reference;
    return angle;
}

std::optional<double> compass_point_in(std::string_view word) {
    constexpr std::array points{"n"sv, "nne"sv, "ne"sv, "ene"sv, "e"sv, "ese"sv, "se"sv, "sse"sv,
                                "s"sv, "ssw"sv, "sw"sv, "wsw"sv, "w"sv, "wnw"sv, "nw"sv, "nnw"sv};
    std::string joined(word);
    std::erase(joined, '-');
    const auto letters = initials(joined);
    const auto found = std::find(points.begin(), points.end(), letters && !letters->empty() ? *letters : joined);
    if (found == points.end()) return std::nullopt;
    return 22.5 * static_cast<double>(found - points.begin());
}

std::optional<Reference> reference_in(std::string_view word) {
    constexpr std::array magnetic{"m"sv, "mag"sv, "magn"sv, "magnetic"sv};
    constexpr std::array true_north{"t"sv, "true"sv, "tn"sv};
    if (is_one_of(word, magnetic)) return Reference::magnetic;
    if (is_one_of(word, true_north)) return Reference::true_north;
    return std::nullopt;
}

std::optional<Freshness> freshness_in(std::string_view word) {
    constexpr std::array fresh{"fresh"sv, "new"sv, "moist"sv, "damp"sv};
    constexpr std::array older{"old"sv, "older"sv, "dry"sv, "weathered"sv, "aged"sv, "stale"sv, "overgrown"sv, "grassed"sv};
    constexpr std::array crushed{"crushed"sv,  "mown"sv,    "mowed"sv,    "flat"sv,  "flattened"sv,
                                 "trampled"sv, "trodden"sv, "squashed"sv, "driven"sv};
    if (is_one_of(word, fresh)) return Freshness::fresh;
    if (is_one_of(word, older)) return Freshness::older;
    if (is_one_of(word, crushed)) return Freshness::crushed;
    return std::nullopt;
}

std::optional<SignKind> animal_in(std::string_view word) {
    constexpr std::array moles{"mole"sv, "moles"sv, "molehill"sv, "molehills"sv};
    constexpr std::array squirrels{"squirrel"sv, "squirrels"sv};
    constexpr std::array voles{"vole"sv, "voles"sv};
    constexpr std::array gophers{"gopher"sv, "gophers"sv};
    constexpr std::array others{"ant"sv,       "ants"sv,    "anthill"sv,   "anthills"sv,  "badger"sv,   "badgers"sv,
                                "rabbit"sv,    "rabbits"sv, "groundhog"sv, "woodchuck"sv, "marmot"sv,   "rat"sv,
                                "rats"sv,      "mouse"sv,   "mice"sv,      "shrew"sv,     "crayfish"sv, "crawfish"sv,
                                "armadillo"sv, "fox"sv,     "coyote"sv,    "tortoise"sv,  "owl"sv,      "beetle"sv,
                                "worm"sv,      "worms"sv,   "other"sv};
    if (is_one_of(word, moles)) return SignKind::mole;
    if (is_one_of(word, squirrels)) return SignKind::ground_squirrel;
    if (is_one_of(word, voles)) return SignKind::vole;
    if (is_one_of(word, gophers)) return SignKind::gopher_mound;
    if (is_one_of(word, others)) return SignKind::other;
    return std::nullopt;
}

bool is_length_unit(std::string_view word) {
    constexpr std::array units{"in"sv,    "inch"sv,   "inches"sv, "ft"sv,     "feet"sv,  "foot"sv,
                               "cm"sv,    "mm"sv,     "km"sv,     "yd"sv,     "yards"sv, "yard"sv,
                               "metre"sv, "metres"sv, "meter"sv,  "meters"sv, "paces"sv, "steps"sv};
    return is_one_of(word, units);
}

bool is_filler(std::string_view word) {
    constexpr std::array fillers{"a"sv,  "an"sv,   "the"sv,   "and"sv, "with"sv, "is"sv, "of"sv,
                                 "it"sv, "very"sv, "quite"sv, "-"sv,   "&"sv,    "+"sv};
    return is_one_of(word, fillers);
}

bool is_fan_filler(std::string_view word) {
    constexpr std::array fillers{"to"sv,     "towards"sv, "toward"sv, "points"sv, "pointing"sv,  "faces"sv,
                                 "facing"sv, "bearing"sv, "brg"sv,    "dir"sv,    "direction"sv, "is"sv,
                                 "at"sv,     "the"sv,     "about"sv,  "approx"sv, "ca"sv,        "~"sv};
    return is_one_of(word, fillers);
}

bool is_negation(std::string_view word) {
    constexpr std::array negations{"no"sv, "not"sv, "without"sv, "isn't"sv, "non"sv};
    return is_one_of(word, negations);
}

bool is_doubt(std::string_view word) {
    constexpr std::array doubts{"?"sv, "maybe"sv, "perhaps"sv, "possibly"sv, "probably"sv, "unsure"sv};
    return is_one_of(word, doubts);
}

bool is_digging(std::string_view word) {
    constexpr std::array diggings{"hole"sv,   "holes"sv,   "hill"sv,  "hills"sv,  "run"sv, "runs"sv, "ridge"sv,
                                  "burrow"sv, "burrows"sv, "trail"sv, "trails"sv, "den"sv, "sign"sv, "nest"sv};
    return is_one_of(word, diggings);
}

bool is_thing(std::string_view word) {
    constexpr std::array things{"gate"sv,      "car"sv,   "truck"sv,  "pickup"sv, "parking"sv, "house"sv,
                                "home"sv,      "barn"sv,  "shed"sv,   "well"sv,   "pump"sv,    "valve"sv,
                                "fence"sv,     "post"sv,  "corner"sv, "tree"sv,   "road"sv,    "ditch"sv,
                                "bridge"sv,    "start"sv, "end"sv,    "camp"sv,   "culvert"sv, "hydrant"sv,
                                "sprinkler"sv, "pole"sv,  "rock"sv,   "stump"sv,  "water"sv,   "office"sv};
    return is_one_of(word, things);
}

bool is_month(std::string_view word) {
    constexpr std::array months{"january"sv, "february"sv, "march"sv,     "april"sv,   "may"sv,      "june"sv,
                                "july"sv,    "august"sv,   "september"sv, "october"sv, "november"sv, "december"sv};
    if (word.size() < 3) return false;
    return std::any_of(months.begin(), months.end(),
                       [&](std::string_view month) { return month.substr(0, word.size()) == word; });
}

}  // namespace plugside::note_words
