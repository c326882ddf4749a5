#include "geo/read/notes_grammar.h"

#include <array>
#include <cstdio>

#include "geo/read/note_words.h"

namespace plugside {

namespace {

using namespace note_words;

std::string shown(double degrees) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%g", degrees);
    return text.data();
}

// A bearing found in the words, and how many words it took.
struct Found {
    Angle angle;
    std::size_t words = 0;
};

class Reader {
public:
    explicit Reader(std::string_view note)
        : words_(words_of(note)), read_(words_.size(), false), freshness_(words_.size(), false) {}

    NoteReading reading() {
        read_fans();
        read_kinds();
        read_freshness();
        read_bare_bearing();
        for (std::size_t i = 0; i < words_.size(); ++i) gather_rest(i);
        if (doubted_ && understood_something())
            result_.problems.emplace_back("the note doubts itself; it is taken as it stands");
        return std::move(result_);
    }

private:
    [[nodiscard]] const std::string& lower(std::size_t i) const {
        static const std::string none;
        return i < words_.size() ? words_[i].lower : none;
    }
    [[nodiscard]] bool unread(std::size_t i) const { return i < words_.size() && !read_[i]; }
    void take(std::size_t from, std::size_t count) {
        for (std::size_t i = from; i < from + count && i < read_.size(); ++i) read_[i] = true;
    }
    // "not fresh", "not a mole".
    [[nodiscard]] bool negated(std::size_t i) const {
        if (i > 0 && is_negation(lower(i - 1))) return true;
        return i > 1 && (lower(i - 1) == "a" || lower(i - 1) == "an") && is_negation(lower(i - 2));
    }
    [[nodiscard]] bool understood_something() const {
        return result_.fan_degrees || result_.magnetic_fan_degrees || result_.freshness || result_.kind;
    }

    // A bearing that starts at word i: a number or compass point, with "deg", "M", "magnetic", ... behind it.
    [[nodiscard]] std::optional<Found> bearing_at(std::size_t i) const {
        if (!unread(i)) return std::nullopt;
        Found found;
        if (const auto angle = angle_in(lower(i))) {
            found = {*angle, 1};
        } else if (const auto point = longest_compass_point(i)) {
            found = *point;
        } else {
            return std::nullopt;
        }
        std::size_t next = i + found.words;
        if (lower(next) == "deg" || lower(next) == "degrees" || lower(next) == "\xC2\xB0") ++next;
        if (found.angle.reference == Reference::unsaid)
            if (const auto reference = reference_in(lower(next))) {
                found.angle.reference = *reference;
                ++next;
            }
        if (is_length_unit(lower(next))) return std::nullopt;
        found.words = next - i;
        return found;
    }

    // "north north east" is one point, not a point and a rest.
    [[nodiscard]] std::optional<Found> longest_compass_point(std::size_t i) const {
        std::optional<Found> longest;
        std::string joined;
        for (std::size_t n = 1; n <= 3 && unread(i + n - 1); ++n) {
            if (n > 1 && lower(i + n - 1).size() < 4) break;  // only direction words join, letters ("s e") do not
            joined += lower(i + n - 1);
            if (const auto point = compass_point_in(joined)) longest = Found{{*point, Reference::unsaid}, n};
        }
        return longest;
    }

    void use_fan(const Angle& angle, bool with_word) {
        if (!(angle.degrees >= 0.0 && angle.degrees <= 360.0)) {
            result_.problems.push_back("the bearing " + shown(angle.degrees) +
                                       " is not within 0 to 360; no fan is taken from it");
            return;
        }
        const double degrees = angle.degrees == 360.0 ? 0.0 : angle.degrees;
        const bool magnetic = angle.reference == Reference::magnetic;
        std::optional<double>& kept = magnetic ? result_.magnetic_fan_degrees : result_.fan_degrees;
        if (result_.fan_degrees || result_.magnetic_fan_degrees) {
            if (!kept || *kept != degrees)
                result_.problems.push_back("a second fan, " + shown(degrees) + ", is noted; the first is used");
            return;
        }
        kept = degrees;
        result_.fan_word = with_word;
        if (magnetic)
            result_.problems.push_back("the fan bearing " + shown(degrees) +
                                       " is magnetic and the declination is not known; the mound is used without a fan");
    }

    void read_fans() {
        for (std::size_t i = 0; i < words_.size(); ++i) {
            const std::string& word = lower(i);
            if (word == "fan" || word == "fans") {
                read_fan_word(i);
            } else if (word == "f") {
                if (const auto found = bearing_at(i + 1)) {
                    take(i, 1 + found->words);
                    use_fan(found->angle, false);
                }
            } else {
                read_glued_fan(i);
            }
        }
    }

    void read_fan_word(std::size_t i) {
        if (i > 0 && is_negation(lower(i - 1))) return take(i - 1, 2);
        std::size_t value = i + 1;
        while (unread(value) && is_fan_filler(lower(value))) ++value;
        if (const auto found = bearing_at(value)) {
            take(i, value - i + found->words);
            use_fan(found->angle, true);
        } else {
            lone_fan_ = i;
        }
    }

    // "fan135", "fan-135", "fanSE", "F135".
    void read_glued_fan(std::size_t i) {
        std::string_view word = lower(i);
        const bool with_word = word.substr(0, 3) == "fan";
        if (!with_word && (word.size() < 2 || word.front() != 'f')) return;
        word.remove_prefix(with_word ? 3 : 1);
        if (with_word && !word.empty() && word.front() == '-') word.remove_prefix(1);
        auto angle = angle_in(word);
        if (!angle && with_word)
            if (const auto point = compass_point_in(word)) angle = Angle{*point, Reference::unsaid};
        if (!angle) return;
        std::size_t words = 1;
        if (angle->reference == Reference::unsaid)
            if (const auto reference = reference_in(lower(i + 1))) {
                angle->reference = *reference;
                words = 2;
            }
        take(i, words);
        use_fan(*angle, with_word);
    }

    void use_kind(SignKind kind) {
        if (result_.kind && *result_.kind != kind)
            result_.problems.push_back("both " + to_text(*result_.kind) + " and " + to_text(kind) +
                                       " are noted; the first is taken");
        else
            result_.kind = kind;
    }

    void read_kinds() {
        bool mound = false;
        for (std::size_t i = 0; i < words_.size(); ++i) {
            if (!unread(i)) continue;
            if (lower(i) == "mound" || lower(i) == "mounds") {
                if (negated(i)) {
                    use_kind(SignKind::other);
                    take(i - (is_negation(lower(i - 1)) ? 1 : 2), is_negation(lower(i - 1)) ? 2 : 3);
                } else {
                    mound = true;
                    plural_ = plural_ || lower(i) == "mounds";
                    take(i, 1);
                }
            } else if (lower(i) == "surface" && (lower(i + 1) == "plug" || lower(i + 1) == "plugs") && !negated(i)) {
                use_kind(SignKind::surface_plug);
                take(i, 2);
            } else if (const auto animal = animal_in(lower(i)); animal && !negated(i)) {
                use_kind(*animal);
                take(i, 1);
                if (is_digging(lower(i + 1))) take(i + 1, 1);
                const std::string before = i > 0 ? lower(i - 1) : "";
                if (before == "ground" || before == "pocket") take(i - 1, 1);
            }
        }
        // "mound" alone says the usual thing; "mole mound" is a mole's.
        if (mound && !result_.kind) result_.kind = SignKind::gopher_mound;
    }

    void read_freshness() {
        for (std::size_t i = 0; i < words_.size(); ++i) {
            const auto freshness = freshness_in(lower(i));
            if (!unread(i) || !freshness || negated(i)) continue;
            take(i, 1);
            freshness_[i] = true;
            if (*freshness == Freshness::crushed && lower(i + 1) == "over") take(i + 1, 1);
            if (!result_.freshness || *result_.freshness == *freshness) {
                result_.freshness = freshness;
                continue;
            }
            const bool crushed = *freshness == Freshness::crushed;  // it outweighs an age: nothing can be read from the fan
            result_.problems.push_back("both " + to_text(*result_.freshness) + " and " + to_text(*freshness) +
                                       " are noted; taken as " + to_text(crushed ? *freshness : *result_.freshness));
            if (crushed) result_.freshness = freshness;
        }
        // "fan flat": the word fan is understood, there is just no bearing.
        if (lone_fan_ && says_freshness(*lone_fan_ + 1) && !bearing_anywhere()) take(*lone_fan_, 1);
    }

    [[nodiscard]] bool says_freshness(std::size_t i) const { return i < freshness_.size() && freshness_[i]; }

    [[nodiscard]] bool bearing_anywhere() const {
        for (std::size_t i = 0; i < words_.size(); ++i)
            if (bearing_at(i)) return true;
        return false;
    }

    void read_bare_bearing() {
        if (result_.fan_degrees || result_.magnetic_fan_degrees || plural_) return;
        for (std::size_t i = 0; i < words_.size(); ++i) {
            const auto found = bearing_at(i);
            if (!found || !stands_as_bearing(i, found->words)) continue;
            take(i, found->words);
            const bool with_word = lone_fan_.has_value();
            if (lone_fan_) take(*lone_fan_, 1);
            use_fan(found->angle, with_word);
            return;
        }
    }

    [[nodiscard]] bool stands_as_bearing(std::size_t i, std::size_t words) const {
        const std::size_t next = i + words;
        if (i == 0 && next == words_.size()) return true;
        // "fresh, N side of the ditch" tells where, not which way: a word that is not understood follows.
        if (unread(next) && !is_filler(lower(next)) && !is_doubt(lower(next)) && next != lone_fan_) return false;
        if (lone_fan_) return true;
        return says_freshness(next) || (i > 0 && says_freshness(i - 1));
    }

    void gather_rest(std::size_t i) {
        if (read_[i]) return;
        if (is_doubt(lower(i))) {
            doubted_ = true;
            if (understood_something()) return;
        }
        if (is_filler(lower(i))) return;
        if (!result_.rest.empty()) result_.rest += ' ';
        result_.rest += words_[i].written;
    }

    std::vector<Word> words_;
    std::vector<bool> read_;
    std::vector<bool> freshness_;
    std::optional<std::size_t> lone_fan_;
    bool plural_ = false;
    bool doubted_ = false;
    NoteReading result_;
};

}  // namespace

NoteReading read_note(std::string_view note) { return Reader(note).reading(); }

bool is_time_stamp(std::string_view text) {
    bool clock_or_date = false;
    bool anything = false;
    std::size_t separators = 0;
    std::size_t letters_from = std::string_view::npos;
    for (std::size_t i = 0; i <= text.size(); ++i) {
        const char c = i < text.size() ? text[i] : ' ';
        const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
        if (letter) {
            if (letters_from == std::string_view::npos) letters_from = i;
            continue;
        }
        if (letters_from != std::string_view::npos) {
            const auto words = words_of(text.substr(letters_from, i - letters_from));
            const std::string& word = words.front().lower;
            if (is_month(word))
                clock_or_date = true;
            else if (word != "am" && word != "pm" && word != "t" && word != "z" && word != "utc")
                return false;
            letters_from = std::string_view::npos;
        }
        if (c == ':') clock_or_date = true;
        if (c == '/' || c == '-' || c == '.') ++separators;
        if (c >= '0' && c <= '9')
            anything = true;
        else if (std::string_view(" :/-.,+").find(c) == std::string_view::npos)
            return false;
    }
    return anything && (clock_or_date || separators >= 2);
}

bool names_a_thing(std::string_view text) {
    const auto words = words_of(text);
    if (words.empty()) return false;
    std::string first = words.front().lower;
    while (!first.empty() && first.back() >= '0' && first.back() <= '9') first.pop_back();
    return is_thing(first);
}

}  // namespace plugside
