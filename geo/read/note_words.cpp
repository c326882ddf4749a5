#include "geo/read/note_words.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <limits>
#include <utility>

#include "geo/read/note_words_table.h"

namespace plugside::note_words {

namespace {

using namespace std::string_view_literals;

// A character as it is read: `folded` is plain, or the bytes of a letter that has no plain form; empty for a combining mark.
struct Character {
    std::string folded;
    std::size_t begin = 0;
    std::size_t end = 0;
};

constexpr std::string_view degree_sign = "\xC2\xB0";

struct CodePoint {
    char32_t value = 0;
    std::size_t bytes = 1;
};

// A byte that is no UTF-8 is taken as Latin-1.
CodePoint code_point_at(std::string_view text, std::size_t i) {
    const auto byte = [&](std::size_t k) { return static_cast<unsigned char>(text[k]); };
    const auto follows = [&](std::size_t k) { return k < text.size() && (byte(k) & 0xC0U) == 0x80U; };
    const unsigned first = byte(i);
    if (first >= 0xC2 && first <= 0xDF && follows(i + 1)) return {((first & 0x1FU) << 6U) | (byte(i + 1) & 0x3FU), 2};
    if ((first & 0xF0U) == 0xE0U && follows(i + 1) && follows(i + 2))
        return {((first & 0x0FU) << 12U) | ((byte(i + 1) & 0x3FU) << 6U) | (byte(i + 2) & 0x3FU), 3};
    if (first >= 0xF0 && first <= 0xF4 && follows(i + 1) && follows(i + 2) && follows(i + 3))
        return {0x10000U | first, 4};  // nothing up there has a plain form
    return {first, 1};
}

// U+00C0..U+00FF without accents.
constexpr std::string_view latin_letters = "aaaaaaaceeeeiiiidnooooo ouuuuyts";

std::string plain(char32_t c, std::string_view bytes) {
    if (c >= U'A' && c <= U'Z') return {static_cast<char>(c - U'A' + U'a')};
    if (c < 0x80) return {static_cast<char>(c)};
    if (c >= 0x0300 && c <= 0x036F) return {};  // combining marks
    if (c >= 0xC0 && c <= 0xFF && c != 0xD7 && c != 0xF7) return {latin_letters[(c - 0xC0U) % 32U]};
    switch (c) {
        case 0xA0:
        case 0x2009:
        case 0x202F: return " ";
        case 0xB0:
        case 0xBA:
        case 0x02DA: return std::string(degree_sign);
        case 0xB4:
        case 0x2018:
        case 0x2019:
        case 0x2032: return "'";
        case 0xAB:
        case 0xBB:
        case 0x201C:
        case 0x201D:
        case 0x2033: return "\"";
        case 0x2010:
        case 0x2011:
        case 0x2012:
        case 0x2013:
        case 0x2014:
        case 0x2212: return "-";
        case 0x2248: return "~";
        case 0xD7: return "x";
        case 0xA1:
        case 0xB7:
        case 0x2022: return ",";
        case 0xBF: return "?";
        case 0x2026: return ";";
        default: return std::string(bytes);
    }
}

std::vector<Character> characters_of(std::string_view text) {
    std::vector<Character> characters;
    for (std::size_t i = 0; i < text.size();) {
        const CodePoint c = code_point_at(text, i);
        std::string folded = plain(c.value, text.substr(i, c.bytes));
        if (folded.empty() && !characters.empty())
            characters.back().end = i + c.bytes;
        else if (!folded.empty())
            characters.push_back({std::move(folded), i, i + c.bytes});
        i += c.bytes;
    }
    return characters;
}

bool is_digit(const Character& c) { return c.folded.front() >= '0' && c.folded.front() <= '9'; }
bool is_letter(const Character& c) {
    const char front = c.folded.front();
    return (front >= 'a' && front <= 'z') || (static_cast<unsigned char>(front) >= 0x80 && c.folded != degree_sign);
}

template <std::size_t n>
bool is_one_of(std::string_view word, const std::array<std::string_view, n>& words) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

bool may_stand_before_number(std::string_view letters) {
    constexpr std::array words{"f"sv,       "fan"sv,    "fans"sv,     "ab"sv,         "abanico"sv, "brg"sv, "az"sv,
                               "bearing"sv, "rumbo"sv,  "x"sv,        "n"sv,          "s"sv,       "ca"sv,  "plug"sv,
                               "tapon"sv,   "mounds"sv, "probe"sv,    "plg"sv,        "brng"sv,    "hit"sv, "hdg"sv,
                               "sonda"sv,   "fans"sv,   "montones"sv, "monticulos"sv, "mnds"sv,    "tpn"sv};
    return is_one_of(letters, words);
}

bool may_stand_behind_number(std::string_view letters) {
    constexpr std::array words{"degm"sv, "degt"sv, "degmag"sv, "degtrue"sv, "m"sv, "t"sv,   "v"sv,     "in"sv,   "x"sv,
                               "e"sv,    "w"sv,    "o"sv,      "d"sv,       "h"sv, "ish"sv, "holes"sv, "oyos"sv, "hoyos"sv};
    return is_one_of(letters, words) || may_be_counted(letters);
}

bool is_point(std::string_view letters) {
    constexpr std::array points{"ne"sv,  "nw"sv,  "se"sv,  "sw"sv, "nne"sv, "ene"sv, "ese"sv, "sse"sv, "ssw"sv,
                                "wsw"sv, "wnw"sv, "nnw"sv, "so"sv, "no"sv,  "nno"sv, "ono"sv, "oso"sv, "sso"sv};
    return is_one_of(letters, points);
}

// How much of a word is another word that it is glued to: "fanSE", "nofan", "degM"; 0 for none.
std::size_t glued_letters(std::string_view word) {
    constexpr std::array before_points{"fan"sv, "fans"sv, "plug"sv, "plg"sv, "abanico"sv, "tapon"sv};
    for (const std::string_view before : before_points)
        if (word.starts_with(before) && is_point(word.substr(before.size()))) return before.size();
    if (word == "nofan" || word == "nofans") return 2;
    if (word == "sinabanico") return 3;
    constexpr std::array references{"m"sv, "t"sv, "mag"sv, "true"sv};
    return word.starts_with("deg") && is_one_of(word.substr(3), references) ? 3 : 0;
}

class Cutter {
public:
    explicit Cutter(std::string_view text) : characters_(characters_of(text)) {}

    std::vector<Token> tokens() {
        std::size_t i = 0;
        while (i < characters_.size()) {
            const Character& c = characters_[i];
            if (is_letter(c) || is_digit(c))
                i = cut_run(i);
            else
                i = cut_sign(i);
        }
        return std::move(tokens_);
    }

private:
    struct Atom {
        std::size_t from = 0;
        std::size_t to = 0;
        bool number = false;
    };

    [[nodiscard]] char at(std::size_t i) const { return i < characters_.size() ? characters_[i].folded.front() : ' '; }
    [[nodiscard]] bool digit_at(std::size_t i) const { return i < characters_.size() && is_digit(characters_[i]); }
    [[nodiscard]] bool letter_at(std::size_t i) const { return i < characters_.size() && is_letter(characters_[i]); }
    [[nodiscard]] std::string text_of(const Atom& atom) const {
        std::string text;
        for (std::size_t k = atom.from; k < atom.to; ++k) text += characters_[k].folded;
        return text;
    }

    std::size_t number_end(std::size_t i) const {
        while (digit_at(i)) ++i;
        const std::size_t fraction = i + 1;
        if ((at(i) == '.' || at(i) == ',') && digit_at(fraction)) {
            std::size_t end = fraction;
            while (digit_at(end)) ++end;
            if (at(i) == '.' || end - fraction <= 2) return end;  // 135,180 is two numbers
        }
        return i;
    }

    std::size_t letters_end(std::size_t i) const {
        while (letter_at(i) || (at(i) == '\'' && i > 0 && letter_at(i - 1) && letter_at(i + 1))) ++i;
        return i;
    }

    // Letters and digits without a gap: cut where number and letters are known to stand so, one word otherwise.
    std::size_t cut_run(std::size_t i) {
        if (const std::size_t shortened = cut_shortened(i); shortened > i) return shortened;
        std::vector<Atom> atoms;
        std::size_t end = i;
        while (letter_at(end) || digit_at(end)) {
            const bool number = digit_at(end);
            const std::size_t to = number ? number_end(end) : letters_end(end);
            atoms.push_back({end, to, number});
            end = to;
        }
        if (atoms.size() == 1 && atoms[0].number && clock_at(atoms[0])) return add_clock(atoms[0]);
        if (may_be_cut(atoms)) {
            for (const Atom& atom : atoms) atom.number ? add_number(atom, false) : add_letters(atom);
        } else {
            add(text_of({i, end, false}), i, end);
        }
        return end;
    }

    // "w/ probe", "w/o fan", "s/abanico", "n/a"; "w/sw" are compass points.
    std::size_t cut_shortened(std::size_t i) {
        if (at(i + 1) != '/' || !letter_at(i)) return i;
        const Atom behind{i + 2, letters_end(i + 2), false};
        const std::string word = text_of(behind);
        const char first = at(i);
        if ((first == 'n' && word == "a") || (first == 'w' && word == "o")) {
            add(first == 'n' ? "n/a" : "without", i, behind.to);
            return behind.to;
        }
        const bool points = is_point(word) || word == "n" || word == "s" || word == "e" || word == "w" || word == "o";
        if (points || digit_at(i + 2) || (first != 'w' && first != 's' && first != 'c')) return i;
        add(first == 'w' ? "with" : first == 's' ? "sin" : "con", i, i + 2);
        return i + 2;
    }

    bool may_be_cut(const std::vector<Atom>& atoms) const {
        if (atoms.size() == 1) return true;
        if (atoms.size() > 3) return false;
        for (std::size_t k = 0; k < atoms.size(); ++k) {
            if (atoms[k].number) continue;
            if (k == 0 ? !may_stand_before_number(text_of(atoms[k])) : !may_stand_behind_number(text_of(atoms[k])))
                return false;
        }
        return !(atoms.size() == 3 && atoms[0].number);
    }

    bool clock_at(const Atom& atom) const {
        return atom.to - atom.from <= 2 && at(atom.to) == ':' && digit_at(atom.to + 1) && digit_at(atom.to + 2) &&
               !digit_at(atom.to + 3) && !letter_at(atom.to + 3);
    }
    std::size_t add_clock(const Atom& atom) {
        const double hour = value_of(text_of(atom));
        const double minutes = value_of(text_of({atom.to + 1, atom.to + 3, true}));
        add(text_of({atom.from, atom.to + 3, true}), atom.from, atom.to + 3);
        Token& token = tokens_.back();
        token.is_number = true;
        token.is_clock = minutes < 60.0;
        token.value = hour + minutes / 60.0;
        return atom.to + 3;
    }

    static double value_of(std::string text) {
        std::replace(text.begin(), text.end(), ',', '.');
        double value = 0.0;
        const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
        static_cast<void>(end);
        return error == std::errc::result_out_of_range ? std::numeric_limits<double>::infinity() : value;
    }

    void add_number(const Atom& atom, bool negative) {
        add(text_of(atom), atom.from - (negative ? 1 : 0), atom.to);
        tokens_.back().is_number = true;
        tokens_.back().value = value_of(text_of(atom)) * (negative ? -1.0 : 1.0);
    }

    void add_letters(const Atom& atom) {
        const std::string word = text_of(atom);
        const std::size_t cut = glued_letters(word);
        if (cut > 0) add_piece({atom.from, atom.from + cut, false});
        add_piece({atom.from + cut, atom.to, false});
    }

    // The owner's 's is no part of the word.
    void add_piece(const Atom& atom) {
        std::string word = text_of(atom);
        if (word.size() > 3 && word.substr(word.size() - 2) == "'s") word.resize(word.size() - 2);
        add(std::move(word), atom.from, atom.to);
    }

    void add(std::string folded, std::size_t from, std::size_t to) {
        Token token;
        token.folded = std::move(folded);
        token.begin = characters_[from].begin;
        token.end = characters_[to - 1].end;
        token.gap = gap_;
        token.hyphen = hyphen_;
        token.slash = slash_;
        token.assigned = assigned_;
        tokens_.push_back(std::move(token));
        gap_ = Gap::none;
        hyphen_ = slash_ = assigned_ = false;
    }

    void widen(Gap gap) { gap_ = std::max(gap_, gap); }

    std::size_t cut_sign(std::size_t i) {
        const std::string& sign = characters_[i].folded;
        const char c = sign.front();
        if (sign == degree_sign || c == '?' || c == '~' || c == '@' || c == '&' || c == '+') {
            add(c == '@' ? "at" : sign, i, i + 1);
        } else if (c == '"' || c == '\'') {
            cut_quote(i);
        } else if (c == '-') {
            return cut_hyphen(i);
        } else if (c == '.') {
            widen(ends_sentence(i) ? Gap::stop : Gap::space);
        } else if (c == '#' && digit_at(i + 1)) {
            const std::size_t end = number_end(i + 1);  // a number of a list, no bearing
            add(text_of({i, end, false}), i, end);
            return end;
        } else if (c == ';' || c == '\n' || c == '|') {
            widen(Gap::stop);
        } else if (std::string_view(",()[]{}/!\\<>").find(c) != std::string_view::npos) {
            slash_ = slash_ || (c == '/' && gap_ == Gap::none);
            widen(Gap::comma);
        } else {
            assigned_ = assigned_ || c == ':' || c == '=';
            widen(Gap::space);  // white space, : and = and whatever else
        }
        return i + 1;
    }

    // Inches and feet stand right behind a number, unless a quotation was opened before it.
    void cut_quote(std::size_t i) {
        const bool behind_number = !tokens_.empty() && tokens_.back().is_number && gap_ == Gap::none;
        if (behind_number && !quoted_)
            add(characters_[i].folded, i, i + 1);
        else if (at(i) == '"')
            quoted_ = !quoted_;
        if (!behind_number || quoted_) widen(Gap::space);
    }

    std::size_t cut_hyphen(std::size_t i) {
        const bool joins = i > 0 && gap_ == Gap::none && !tokens_.empty() && (digit_at(i + 1) || letter_at(i + 1));
        if (joins) {
            hyphen_ = true;
            widen(Gap::space);
            return i + 1;
        }
        if (digit_at(i + 1)) {
            const std::size_t end = number_end(i + 1);
            add_number({i + 1, end, true}, true);
            return end;
        }
        widen(Gap::space);
        return i + 1;
    }

    // A point behind a short word is taken as that of an abbreviation ("mag.", "approx.").
    bool ends_sentence(std::size_t i) const {
        if (digit_at(i + 1) || letter_at(i + 1)) return false;
        if (tokens_.empty() || gap_ != Gap::none) return false;
        const std::string& word = tokens_.back().folded;
        constexpr std::array shortened{"mag"sv,  "magn"sv,   "deg"sv,   "degs"sv, "appr"sv, "aprx"sv, "abt"sv,  "verd"sv,
                                       "pulg"sv, "prof"sv,   "mont"sv,  "mnd"sv,  "mnds"sv, "brg"sv,  "azim"sv, "dir"sv,
                                       "gal"sv,  "tap"sv,    "tpn"sv,   "aban"sv, "abn"sv,  "ins"sv,  "cms"sv,  "yds"sv,
                                       "dist"sv, "opp"sv,    "hum"sv,   "sec"sv,  "fres"sv, "izq"sv,  "der"sv,  "nte"sv,
                                       "pte"sv,  "ote"sv,    "prob"sv,  "poss"sv, "plg"sv,  "frs"sv,  "grd"sv,  "grnd"sv,
                                       "frm"sv,  "approx"sv, "aprox"sv, "num"sv,  "reg"sv};
        return tokens_.back().is_number || (word.size() > 2 && !is_one_of(word, shortened));
    }

    std::vector<Character> characters_;
    std::vector<Token> tokens_;
    Gap gap_ = Gap::none;
    bool hyphen_ = false;
    bool slash_ = false;
    bool assigned_ = false;
    bool quoted_ = false;
};

}  // namespace

std::vector<Token> tokens_of(std::string_view text) { return Cutter(text).tokens(); }

std::string folded(std::string_view text) {
    std::string all;
    for (const Character& c : characters_of(text)) all += c.folded;
    return all;
}

}  // namespace plugside::note_words
