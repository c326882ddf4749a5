#include "geo/read/degrees_text.h"

#include <array>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "geo/read/numbers.h"

namespace plugside {

namespace {

struct Hemisphere {
    std::string_view word;
    Axis axis;
    bool negative;
};

// Longer words first, as a word is looked for at the front.
constexpr std::array<Hemisphere, 13> hemispheres{{{"north", Axis::latitude, false},
                                                  {"norte", Axis::latitude, false},
                                                  {"south", Axis::latitude, true},
                                                  {"oeste", Axis::longitude, true},
                                                  {"east", Axis::longitude, false},
                                                  {"este", Axis::longitude, false},
                                                  {"west", Axis::longitude, true},
                                                  {"sur", Axis::latitude, true},
                                                  {"n", Axis::latitude, false},
                                                  {"s", Axis::latitude, true},
                                                  {"e", Axis::longitude, false},
                                                  {"w", Axis::longitude, true},
                                                  {"o", Axis::longitude, true}}};

enum class Mark { none, degrees, minutes, seconds, colon };

constexpr std::array<std::pair<std::string_view, Mark>, 18> marks{{{"\xC2\xB0", Mark::degrees},      // degree sign
                                                                   {"\xC2\xBA", Mark::degrees},      // masculine ordinal
                                                                   {"\xE2\x80\xB2", Mark::minutes},  // prime
                                                                   {"\xE2\x80\x99", Mark::minutes},  // right quote
                                                                   {"\xC2\xB4", Mark::minutes},      // acute accent
                                                                   {"\xE2\x80\xB3", Mark::seconds},  // double prime
                                                                   {"\xE2\x80\x9D", Mark::seconds},  // right double quote
                                                                   {"''", Mark::seconds},
                                                                   {"\"", Mark::seconds},
                                                                   {"'", Mark::minutes},
                                                                   {"deg", Mark::degrees},
                                                                   {"min", Mark::minutes},
                                                                   {"sec", Mark::seconds},
                                                                   {"seg", Mark::seconds},
                                                                   {"d", Mark::degrees},
                                                                   {"m", Mark::minutes},
                                                                   {"s", Mark::seconds},
                                                                   {":", Mark::colon}}};

class DegreesReader {
public:
    DegreesReader(std::string_view text, char decimal) : decimal_(decimal) {
        for (const char c : trimmed(text)) lower_ += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        rest_ = lower_;
    }

    std::optional<DegreesText> read() {
        const auto before = take_hemisphere();
        const bool negative = take("-") || take("\xE2\x88\x92");
        const bool positive = !negative && take("+");
        if (!read_numbers()) return std::nullopt;
        const auto after = take_hemisphere();
        if (!rest_.empty() || (before && after)) return std::nullopt;
        const auto hemisphere = before ? before : after;
        if (hemisphere && (negative || positive)) return std::nullopt;
        return value(hemisphere, negative);
    }

private:
    bool take(std::string_view wanted) {
        if (rest_.substr(0, wanted.size()) != wanted) return false;
        rest_.remove_prefix(wanted.size());
        return true;
    }
    void skip_blanks() {
        while (take(" ") || take("\t") || take("\xC2\xA0")) {
        }
    }

    std::optional<Hemisphere> take_hemisphere() {
        skip_blanks();
        for (const Hemisphere& hemisphere : hemispheres)
            if (take(hemisphere.word)) {
                skip_blanks();
                return hemisphere;
            }
        return std::nullopt;
    }

    // Digits with at most one decimal sign; the sign only where a digit stands beside it.
    std::optional<double> take_number() {
        std::string number;
        bool fraction = false;
        while (!rest_.empty() && number.size() < 40) {
            const char c = rest_.front();
            if (c == decimal_ && !fraction) {
                fraction = true;
                number += '.';
            } else if (c >= '0' && c <= '9') {
                number += c;
            } else {
                break;
            }
            rest_.remove_prefix(1);
        }
        if (number.empty() || number == ".") return std::nullopt;
        fractions_.push_back(fraction);
        return parse_number(number);
    }

    // A lone s stands for seconds only after minutes that were written with a letter too: "38 15 30 s" is south.
    Mark take_mark() {
        for (const auto& [word, mark] : marks) {
            if (word == "s" && !letters_) continue;
            if (!take(word)) continue;
            letters_ = mark == Mark::minutes && (word == "m" || word == "min");
            return mark;
        }
        return Mark::none;
    }

    bool read_numbers() {
        for (std::size_t place = 0; place < 3; ++place) {
            const auto number = take_number();
            if (!number) return place > 0 && !after_colon_;
            numbers_.push_back(*number);
            const std::string_view before_blanks = rest_;
            skip_blanks();
            const bool blanks = rest_.size() < before_blanks.size();
            const Mark mark = take_mark();
            constexpr std::array<Mark, 3> fitting{Mark::degrees, Mark::minutes, Mark::seconds};
            if (mark == Mark::colon ? place == 2 : mark != Mark::none && mark != fitting[place]) return false;
            after_colon_ = mark == Mark::colon;
            skip_blanks();
            const bool more = !rest_.empty() && rest_.front() >= '0' && rest_.front() <= '9';
            if (more && mark == Mark::none && !blanks) return false;
            if (!more && after_colon_) return false;
        }
        return true;
    }

    std::optional<DegreesText> value(const std::optional<Hemisphere>& hemisphere, bool negative) const {
        double degrees = 0.0;
        double unit = 1.0;
        for (std::size_t place = 0; place < numbers_.size(); ++place, unit *= 60.0) {
            if (place + 1 < numbers_.size() && fractions_[place]) return std::nullopt;
            if (place > 0 && numbers_[place] >= 60.0) return std::nullopt;
            degrees += numbers_[place] / unit;
        }
        if (degrees > 360.0) return std::nullopt;
        const bool below = hemisphere ? hemisphere->negative : negative;
        DegreesText result{below ? -degrees : degrees, std::nullopt};
        if (hemisphere) result.axis = hemisphere->axis;
        return result;
    }

    char decimal_;
    std::string lower_;
    std::string_view rest_;
    std::vector<double> numbers_;
    std::vector<bool> fractions_;
    bool letters_ = false;
    bool after_colon_ = false;
};

}  // namespace

std::optional<DegreesText> parse_degrees(std::string_view text, char decimal) {
    constexpr std::size_t longest = 100;
    if (text.size() > longest) return std::nullopt;
    return DegreesReader(text, decimal).read();
}

std::optional<double> unpacked_minutes(double packed) {
    const double size = std::abs(packed);
    const double degrees = std::floor(size / 100.0);
    const double minutes = size - 100.0 * degrees;
    if (!(minutes < 60.0) || degrees > 360.0) return std::nullopt;
    return std::copysign(degrees + minutes / 60.0, packed);
}

}  // namespace plugside
