// Numbers in words, English and Spanish, where they tell a bearing or a length.
#include <algorithm>
#include <array>
#include <optional>

#include "geo/read/notes_grammar_items.h"

namespace plugside::note_words {

namespace {

constexpr std::size_t most_words = 6;  // "three hundred and fifty five"
constexpr std::size_t furthest_back = 6;
constexpr double shortest_bare_bearing = 13.0;  // "fan ten" may be an hour

bool is_sense(const std::vector<Item>& items, std::size_t i, std::initializer_list<Sense> senses) {
    return i < items.size() && std::find(senses.begin(), senses.end(), items[i].sense) != senses.end();
}

std::optional<int> number_word(const Item& item) {
    const std::string& word = item.folded;
    if (!item.is_word) return std::nullopt;
    if (word == "zero" || word == "cero" || word == "oh") return 0;
    if (word == "uno") return 1;
    const bool counted = item.sense == Sense::number && word != "couple" && word != "pair" && word != "single" &&
                         word.find(' ') == std::string::npos && word != "dozen" && word != "docena" && word != "par";
    return counted && item.value <= 300.0 ? std::optional(static_cast<int>(item.value)) : std::nullopt;
}

struct Words {
    std::vector<int> values;
    std::size_t end = 0;
};

Words words_at(const std::vector<Item>& items, std::size_t i) {
    Words words;
    words.end = i;
    for (std::size_t k = i; k < items.size() && k < i + most_words && (k == i || joined(items, k)); ++k) {
        if (const auto value = number_word(items[k])) {
            words.values.push_back(*value);
            words.end = k + 1;
        } else if (words.values.empty() || (items[k].folded != "and" && items[k].folded != "y")) {
            break;
        }
    }
    return words;
}

// "thirty five", "fifteen", "five"; nothing where the words make no such number.
std::optional<int> below_hundred(const std::vector<int>& values, std::size_t from) {
    const std::size_t left = values.size() - from;
    if (left == 0) return 0;
    const int first = values[from];
    if (left == 1) return first < 100 ? std::optional(first) : std::nullopt;
    const bool tens = first >= 20 && first < 100 && first % 10 == 0;
    return left == 2 && tens && values[from + 1] < 10 ? std::optional(first + values[from + 1]) : std::nullopt;
}

std::optional<int> composed(const std::vector<int>& values) {
    if (values.empty()) return std::nullopt;
    if (values.size() > 1 && values.size() <= 3 && std::all_of(values.begin(), values.end(), [](int v) { return v < 10; })) {
        int number = 0;
        for (const int digit : values) number = 10 * number + digit;
        return number;
    }
    const bool hundred_behind = values.size() > 1 && values[0] > 0 && values[0] < 10 && values[1] == 100;
    const bool hundreds = values[0] >= 100;
    const bool spoken = values.size() > 1 && values[0] < 10 && values[1] >= 10 && values[1] < 100;  // "two ten"
    const std::size_t from = hundred_behind ? 2 : hundreds || spoken ? 1 : 0;
    const int base = hundreds ? values[0] : hundred_behind || spoken ? 100 * values[0] : 0;
    const auto rest = below_hundred(values, from);
    return rest ? std::optional(base + *rest) : std::nullopt;
}

bool behind_direction_word(const std::vector<Item>& items, std::size_t i) {
    for (std::size_t back = 1; back <= furthest_back && back <= i && joined(items, i - back + 1); ++back) {
        if (is_sense(items, i - back,
                     {Sense::fan, Sense::plug, Sense::bearing_word, Sense::facing, Sense::throwing, Sense::fan_letter,
                      Sense::soil}))
            return true;
        if (!is_sense(items, i - back,
                      {Sense::toward, Sense::article, Sense::filler, Sense::at, Sense::of, Sense::visible}) &&
            items[i - back].folded != "a")
            return false;
    }
    return false;
}

bool measured(const std::vector<Item>& items, std::size_t end) {
    return end < items.size() && joined(items, end) && is_sense(items, end, {Sense::degree, Sense::unit, Sense::age});
}

bool may_join(const std::vector<Item>& items, std::size_t i, const Words& words, int value) {
    if (words.end < items.size() && joined(items, words.end) &&
        is_sense(items, words.end, {Sense::clock, Sense::half_past, Sense::mound, Sense::more, Sense::times}))
        return false;
    const bool degrees = words.end < items.size() && joined(items, words.end) && is_sense(items, words.end, {Sense::degree});
    const bool several = words.values.size() > 1;
    if (degrees || (several && measured(items, words.end))) return true;
    if (several && words.values[0] >= 100) return true;
    // "at two thirty" may be an hour
    const bool hour = i > 0 && is_sense(items, i - 1, {Sense::at, Sense::at_hour}) && words.values.size() == 2 &&
                      words.values[0] < 13 && words.values[1] % 15 == 0;
    return !hour && behind_direction_word(items, i) && (several || value >= shortest_bare_bearing);
}

// "a foot", "half a foot", "medio metro": how many items are the number, 0 for none.
std::size_t one_unit_at(const std::vector<Item>& items, std::size_t i) {
    const std::string& word = items[i].folded;
    const bool half = word == "half" || word == "medio" || word == "media";
    std::size_t unit = i + 1;
    if (half && is_sense(items, unit, {Sense::article}) && joined(items, unit)) ++unit;
    if (!half && word != "a" && word != "an" && word != "un" && word != "una" && word != "one") return 0;
    if (!is_sense(items, unit, {Sense::unit}) || !joined(items, unit) || !(items[unit].value >= 0.3)) return 0;
    if (i > 0 && joined(items, i) && items[i - 1].sense == Sense::number) return 0;
    return unit - i;
}

}  // namespace

void join_number_words(std::vector<Item>& items) {
    std::vector<Item> kept;
    for (std::size_t i = 0; i < items.size();) {
        if (const std::size_t taken = one_unit_at(items, i); taken > 0) {
            Item one = items[i];
            const bool half = one.sense != Sense::article && one.sense != Sense::number;
            one.sense = Sense::number;
            one.value = half ? 0.5 : 1.0;
            one.end = items[i + taken - 1].end;
            kept.push_back(std::move(one));
            i += taken;
            continue;
        }
        const Words words = words_at(items, i);
        const auto value = composed(words.values);
        if (!value || !may_join(items, i, words, *value)) {
            kept.push_back(items[i++]);
            continue;
        }
        Item number = items[i];
        number.sense = Sense::number;
        number.value = *value;
        number.is_word = false;
        number.plural = false;
        number.folded = std::to_string(*value);
        while (number.folded.size() < std::min<std::size_t>(words.values.size(), 3)) number.folded.insert(0, "0");
        number.end = items[words.end - 1].end;
        kept.push_back(std::move(number));
        i = words.end;
    }
    items = std::move(kept);
}

}  // namespace plugside::note_words
