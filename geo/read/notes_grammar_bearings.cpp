#include "geo/read/notes_grammar_bearings.h"

#include <cmath>
#include <string>

namespace plugside::note_words {

namespace {

class DirectionReader {
public:
    DirectionReader(const std::vector<Item>& items, bool after_word) : items_(items), after_word_(after_word) {}

    [[nodiscard]] std::optional<Direction> at(std::size_t i) const {
        if (!open(i)) return std::nullopt;
        if (auto hour = hour_at(i)) return hour;
        if (items_[i].sense == Sense::reference && linked(i + 1)) {
            auto found = number_or_point_at(i + 1);
            if (!found || found->reference != 0) return std::nullopt;
            found->reference = static_cast<int>(items_[i].value);
            found->marked = true;
            ++found->items;
            return found;
        }
        if (items_[i].sense == Sense::between || (after_word_ && items_[i].sense == Sense::of)) return between_at(i);
        auto found = number_or_point_at(i);
        return found && after_word_ ? reaching(i, *found) : found;
    }

private:
    // The middle of two directions that lie no more than a right angle apart.
    [[nodiscard]] std::optional<Direction> middle(const Direction& one, const Direction& other, std::size_t items) const {
        if (!(std::isfinite(*one.degrees) && std::isfinite(*other.degrees))) return std::nullopt;
        const double turn = std::remainder(*other.degrees - *one.degrees, 360.0);
        if (turn == 0.0 || std::abs(turn) > 90.0 || *one.degrees > 360.0 || *one.degrees < 0.0) return std::nullopt;
        Direction found = other;
        found.degrees = std::fmod(*one.degrees + turn / 2.0 + 360.0, 360.0);
        found.range = !one.from_word;
        found.marked = true;
        found.items = items;
        return found;
    }

    // The next direction behind words that lead to it.
    [[nodiscard]] std::optional<Direction> led_to(std::size_t& i, bool and_too) const {
        std::size_t led = 0;
        for (; led < 3 && linked(i); ++led, ++i) {
            const std::string& word = items_[i].folded;
            const bool leads = items_[i].sense == Sense::article || word == "to" || word == "a" || word == "al" ||
                               word == "thru" || word == "through" ||
                               (and_too && (word == "and" || word == "y" || word == "e" || word == "&" || word == "n" ||
                                            word == "el" || word == "+"));
            if (!leads) break;
        }
        if (!linked(i) || (led == 0 && !and_too)) return std::nullopt;
        return number_or_point_at(i);
    }

    // "between south and southwest", "from 130 to 140".
    [[nodiscard]] std::optional<Direction> between_at(std::size_t i) const {
        const bool says_between = items_[i].sense == Sense::between;
        std::size_t at = i + 1;
        while (linked_as(at, Sense::article)) ++at;
        const auto one = linked(at) ? number_or_point_at(at) : std::nullopt;
        if (!one) return std::nullopt;
        at += one->items;
        const auto other = led_to(at, says_between);
        return other ? middle(*one, *other, at + other->items - i) : std::nullopt;
    }

    // "130 to 140", "S to SW".
    [[nodiscard]] Direction reaching(std::size_t i, const Direction& one) const {
        std::size_t at = i + one.items;
        const auto other = led_to(at, false);
        if (!other || other->from_word != one.from_word) return one;
        return middle(one, *other, at + other->items - i).value_or(one);
    }

    [[nodiscard]] bool open(std::size_t i) const { return i < items_.size() && items_[i].use == Use::open; }
    [[nodiscard]] bool linked(std::size_t i) const { return open(i) && joined(items_, i); }
    [[nodiscard]] bool linked_as(std::size_t i, Sense sense) const { return linked(i) && items_[i].sense == sense; }

    [[nodiscard]] static Direction at_hour(double hour, std::size_t items) {
        Direction found;
        found.hour = std::fmod(hour, 12.0);
        found.items = items;
        return found;
    }

    // "3 o'clock", "at 3:30", "a las 2 y media", "half past 2", behind the word also "left".
    [[nodiscard]] std::optional<Direction> hour_at(std::size_t i) const {
        if (after_word_ && items_[i].sense == Sense::relative) return at_hour(items_[i].value, 1);
        std::size_t next = i;
        const bool at_word = items_[i].sense == Sense::at || items_[i].sense == Sense::at_hour;
        const bool spanish_hour = items_[i].sense == Sense::at_hour || items_[i].folded == "las";
        if (at_word || items_[i].folded == "las") ++next;
        if (next > i && !linked(next)) return std::nullopt;
        const bool half = items_[next].folded == "half past";
        if (half && !linked(++next)) return std::nullopt;
        double hour = half ? 0.5 : 0.0;
        const Item& number = items_[next];
        const bool una = spanish_hour && number.folded == "una";
        if (!una && number.sense != Sense::number) return std::nullopt;
        const double whole = una ? 1.0 : number.value;
        if (!(whole >= 0.0 && whole < 13.0) || number.is_range) return std::nullopt;
        if (!number.is_clock && whole != std::floor(whole)) return std::nullopt;
        hour += whole;
        ++next;
        if (linked_as(next, Sense::half_past)) hour += items_[next++].value;
        const bool clock_word = linked_as(next, Sense::clock);
        if (clock_word) ++next;
        const bool told = clock_word || (half && after_word_) || (spanish_hour && after_word_) ||
                          (spanish_hour && next == items_.size() && i == 0) ||
                          (number.is_clock && (at_word || after_word_) && after_word_);
        if (!told || (linked(next) && items_[next].sense == Sense::unit)) return std::nullopt;
        return at_hour(hour, next - i);
    }

    [[nodiscard]] std::optional<Direction> number_or_point_at(std::size_t i) const {
        if (!open(i)) return std::nullopt;
        std::optional<Direction> found;
        if (items_[i].sense == Sense::number && !items_[i].is_word && !items_[i].is_clock)
            found = number_at(i);
        else if (items_[i].sense == Sense::compass)
            found = point_at(i);
        if (!found) return std::nullopt;
        std::size_t next = i + found->items;
        if (linked_as(next, Sense::degree)) {
            ++next;
            found->marked = true;
        }
        if (const int reference = reference_at(next, *found); reference != 0) {
            found->reference = reference;
            found->marked = true;
            ++next;
        } else if (after_word_ && open(next) && items_[next].gap <= Gap::comma &&
                   items_[next].sense == Sense::bearing_word && linked_as(next + 1, Sense::reference)) {
            found->reference = static_cast<int>(items_[next + 1].value);  // "125, rumbo magnético"
            found->marked = true;
            next += 2;
        }
        const bool counted = linked_as(next, Sense::unit) || linked_as(next, Sense::times) ||
                             linked_as(next, Sense::clock) || linked_as(next, Sense::age) || linked_as(next, Sense::mention);
        if (counted && !found->from_word) return std::nullopt;
        found->items = next - i;
        return found;
    }

    [[nodiscard]] int reference_at(std::size_t i, const Direction& found) const {
        const bool of_next = open(i) && !joined(items_, i) && linked_as(i + 1, Sense::number);  // "plug NW, mag 40"
        if (open(i) && items_[i].gap <= Gap::comma && items_[i].sense == Sense::reference && !of_next)
            return static_cast<int>(items_[i].value);
        if (!linked(i)) return 0;
        if (items_[i].sense != Sense::reference_letter) return 0;
        // "3 m from the post" is a length: a number of one or two digits needs a fan's word or an end behind the letter
        const bool place_follows =
            linked(i + 1) && (items_[i + 1].sense == Sense::of || items_[i + 1].sense == Sense::distance ||
                              items_[i + 1].sense == Sense::depth || items_[i + 1].sense == Sense::toward);
        if (place_follows && !found.from_word) return 0;
        return static_cast<int>(items_[i].value);
    }

    [[nodiscard]] bool three_digits(std::size_t i) const { return items_[i].folded.size() >= 3; }

    [[nodiscard]] std::optional<Direction> number_at(std::size_t i) const {
        if (items_[i].is_range && !after_word_) return std::nullopt;
        const auto fraction = [&](std::size_t k) { return k < items_.size() && items_[k].slash; };  // 1/4
        if (fraction(i + 1) && items_[i + 1].sense == Sense::number) return std::nullopt;
        if (i > 0 && fraction(i) && items_[i - 1].sense == Sense::number && !three_digits(i)) return std::nullopt;
        Direction found;
        found.degrees = items_[i].value;
        found.range = items_[i].is_range;
        found.items = 1;
        return found;
    }

    [[nodiscard]] std::optional<Direction> point_at(std::size_t i) const {
        Direction found;
        found.from_word = true;
        found.degrees = items_[i].value;
        found.items = 1;
        if (auto quadrant = quadrant_at(i)) return quadrant;
        if (after_word_ && linked_as(i + 1, Sense::compass) && items_[i].folded.size() == 1 &&
            items_[i + 1].folded.size() == 1) {
            if (const auto corner = meaning_of(initials(i) + initials(i + 1)); corner && corner->sense == Sense::compass) {
                found.degrees = corner->value;  // "fan S E"
                found.items = 2;
                return found;
            }
        }
        if (const auto by = quarter_at(i)) return by;
        join_points(i, found);
        return found;
    }

    // "N45E": from north or south towards east or west.
    [[nodiscard]] std::optional<Direction> quadrant_at(std::size_t i) const {
        const double from = items_[i].value;
        if ((from != 0.0 && from != 180.0) || !linked_as(i + 1, Sense::number) || items_[i + 1].is_word) return std::nullopt;
        const double turn = items_[i + 1].value;
        if (!(turn >= 0.0 && turn <= 90.0)) return std::nullopt;
        const std::size_t to = linked_as(i + 2, Sense::degree) ? i + 3 : i + 2;
        if (!linked_as(to, Sense::compass) || (items_[to].value != 90.0 && items_[to].value != 270.0)) return std::nullopt;
        const double sign = (from == 0.0) == (items_[to].value == 90.0) ? 1.0 : -1.0;
        Direction found;
        found.degrees = std::fmod(from + sign * turn + 360.0, 360.0);
        found.marked = true;
        found.items = to + 1 - i;
        return found;
    }

    // "north by east": an eighth of a right angle on the way.
    [[nodiscard]] std::optional<Direction> quarter_at(std::size_t i) const {
        if (!linked_as(i + 1, Sense::by)) return std::nullopt;
        const std::size_t to = linked_as(i + 2, Sense::article) ? i + 3 : i + 2;
        if (!linked_as(to, Sense::compass) || std::fmod(items_[i].value, 45.0) != 0.0) return std::nullopt;
        const double turn = std::remainder(items_[to].value - items_[i].value, 360.0);
        if (turn == 0.0 || std::abs(turn) > 90.0) return std::nullopt;
        Direction found;
        found.from_word = true;
        found.degrees = std::fmod(items_[i].value + (turn > 0 ? 11.25 : -11.25) + 360.0, 360.0);
        found.items = to + 1 - i;
        return found;
    }

    // "north north east" and "s-e" are one point; "N/NE" is between the two.
    void join_points(std::size_t i, Direction& found) const {
        std::string letters = initials(i);
        for (std::size_t n = 1; n <= 2; ++n) {
            const std::size_t k = i + n;
            if (!open(k) || items_[k].sense != Sense::compass || items_[k].gap == Gap::stop) return;
            if (n == 1 && items_[k].slash) {
                const double turn = std::remainder(items_[k].value - items_[i].value, 360.0);
                if (std::abs(turn) > 45.0) return;
                found.degrees = std::fmod(items_[i].value + turn / 2.0 + 360.0, 360.0);
                found.items = 2;
                return;
            }
            const bool words = items_[k].folded.size() > 3 && items_[k - 1].folded.size() > 2;
            if (!joined(items_, k) || (!words && !items_[k].hyphen)) return;
            letters += initials(k);
            const auto point = meaning_of(letters);
            if (!point || point->sense != Sense::compass) return;
            found.degrees = point->value;
            found.items = n + 1;
        }
    }

    [[nodiscard]] std::string initials(std::size_t i) const {
        switch (static_cast<int>(items_[i].value)) {
            case 0: return "n";
            case 45: return "ne";
            case 90: return "e";
            case 135: return "se";
            case 180: return "s";
            case 225: return "sw";
            case 270: return "w";
            case 315: return "nw";
            default: return "?";
        }
    }

    const std::vector<Item>& items_;
    bool after_word_;
};

}  // namespace

std::optional<Direction> direction_at(const std::vector<Item>& items, std::size_t i, bool after_word) {
    return DirectionReader(items, after_word).at(i);
}

}  // namespace plugside::note_words
