#include "geo/read/notes_grammar_items.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <initializer_list>

namespace plugside::note_words {

namespace {

constexpr std::size_t longest_phrase = 4;
constexpr std::size_t furthest_back = 6;

struct Replacement {
    std::vector<Token> words;
    std::vector<Token> means;
};

bool same_words(const std::vector<Token>& tokens, std::size_t i, const std::vector<Token>& words) {
    if (words.empty() || i + words.size() > tokens.size()) return false;
    for (std::size_t k = 0; k < words.size(); ++k)
        if (tokens[i + k].folded != words[k].folded) return false;
    return true;
}

Item item_of(const Token& token) {
    Item item;
    item.folded = token.folded;
    item.begin = token.begin;
    item.end = token.end;
    item.gap = token.gap;
    item.hyphen = token.hyphen;
    item.slash = token.slash;
    item.assigned = token.assigned;
    item.is_clock = token.is_clock;
    if (token.is_number) {
        item.sense = Sense::number;
        item.value = token.value;
        item.is_word = false;
    }
    return item;
}

void mean(Item& item, const Meaning& meaning) {
    item.sense = meaning.sense;
    item.value = meaning.value;
    item.language = meaning.language;
    item.plural = meaning.plural;
}

// "12 in depth" is twelve inches, not "in depth".
bool is_inches(const std::vector<Token>& tokens, std::size_t i) {
    return i > 0 && tokens[i].folded == "in" && tokens[i - 1].is_number && tokens[i].gap <= Gap::space;
}

// The longest phrase from token i on; how many tokens it took.
std::size_t longest_phrase_at(const std::vector<Token>& tokens, std::size_t i, Item& item) {
    std::string phrase;
    std::size_t taken = 0;
    for (std::size_t n = 0; n < longest_phrase && i + n < tokens.size(); ++n) {
        const Token& token = tokens[i + n];
        if (token.is_number || (n > 0 && token.gap > Gap::space)) break;
        if (n > 0 && taken == 1 && is_inches(tokens, i)) break;
        phrase.append(n > 0 ? " " : "").append(token.folded);
        const auto meaning = meaning_of(phrase);
        if (!meaning) continue;
        mean(item, *meaning);
        item.known = true;
        item.folded = phrase;
        item.end = token.end;
        taken = n + 1;
    }
    return taken;
}

std::optional<Meaning> meaning_of_one(const std::string& word) {
    if (word.size() > 3 && std::string_view(word).ends_with("'ly")) {
        const auto point = meaning_of(std::string_view(word).substr(0, word.size() - 3));
        if (point && point->sense == Sense::compass) return point;
    }
    for (const std::string_view ending : {std::string_view("s"), std::string_view("es")}) {
        if (word.size() < ending.size() + 4 || !std::string_view(word).ends_with(ending)) continue;
        if (auto meaning = meaning_of(std::string_view(word).substr(0, word.size() - ending.size()))) {
            meaning->plural = true;
            return meaning;
        }
    }
    return likely_meaning_of(word);
}

// "130-140" is one number, its middle.
void join_ranges(std::vector<Item>& items) {
    std::vector<Item> kept;
    for (Item& item : items) {
        const bool number = item.sense == Sense::number && !item.is_word && !item.is_clock;
        const bool range = number && item.hyphen && !kept.empty() && kept.back().sense == Sense::number &&
                           !kept.back().is_word && !kept.back().is_range && std::isfinite(item.value);
        if (!range) {
            kept.push_back(std::move(item));
            continue;
        }
        kept.back().value = (kept.back().value + item.value) / 2.0;
        kept.back().is_range = true;
        kept.back().end = item.end;
        kept.back().folded += "-" + item.folded;
    }
    items = std::move(kept);
}

bool is_one_of(Sense sense, std::initializer_list<Sense> senses) {
    return std::find(senses.begin(), senses.end(), sense) != senses.end();
}

// Settles the words of two meanings.
class Settler {
public:
    explicit Settler(std::vector<Item>& items) : items_(items) {
        for (const Item& item : items_) spanish_ = spanish_ || (item.language == spanish && item.folded != "o");
    }

    void settle() {
        for (std::size_t i = 0; i < items_.size(); ++i) {
            const std::string& word = items_[i].folded;
            settle_key(i);
            if (items_[i].sense == Sense::plain && !items_[i].known && after_direction(i)) settle_mistyped_point(i);
            if (word == "no")
                settle_no(i);
            else if (word == "o")
                settle_o(i);
            else if (word == "este" || word == "ese")
                settle_this(i);
            else if (word == "so")
                settle_so(i);
            else if (word == "se")
                settle_se(i);
            else if (word == "in" || word == "\"" || word == "'")
                settle_in(i);
            else if (word == "n")
                settle_n(i);
            else if (word == "a" && after_direction(i))
                items_[i].sense = Sense::toward;
            else if (word == "x")
                settle_x(i);
        }
    }

private:
    [[nodiscard]] bool next_joined(std::size_t i) const { return i + 1 < items_.size() && joined(items_, i + 1); }
    [[nodiscard]] Sense next(std::size_t i) const { return i + 1 < items_.size() ? items_[i + 1].sense : Sense::plain; }

    // Behind a fan, plug or direction word; `languages` limits of which language.
    [[nodiscard]] bool after_direction(std::size_t i, unsigned languages = either) const {
        for (std::size_t back = 1; back <= furthest_back && back <= i; ++back) {
            if (!joined(items_, i - back + 1)) return false;
            const Item& item = items_[i - back];
            const bool directs =
                is_one_of(item.sense, {Sense::fan, Sense::plug, Sense::facing, Sense::throwing, Sense::bearing_word,
                                       Sense::side, Sense::away, Sense::soil, Sense::fan_letter, Sense::by}) ||
                (item.sense == Sense::toward && item.value == 0.0);
            if (directs && (item.language & languages) != 0 && (languages == either || item.language == languages))
                return true;
            if (!directs && !is_one_of(item.sense, {Sense::toward, Sense::article, Sense::filler, Sense::of})) return false;
        }
        return false;
    }

    [[nodiscard]] bool can_be_denied(std::size_t i) const {
        return !is_one_of(items_[i].sense, {Sense::reference, Sense::reference_letter, Sense::of, Sense::number,
                                            Sense::plain, Sense::by, Sense::degree, Sense::doubt, Sense::at});
    }

    // "age: fresh", "n=3", "livestock: sheep": the word before the sign only says what is told.
    void settle_key(std::size_t i) {
        if (!next_joined(i) || !items_[i + 1].assigned) return;
        using namespace std::string_view_literals;
        constexpr std::array keys{"age"sv,       "digger"sv,    "kind"sv,     "type"sv,    "state"sv,  "status"sv,
                                  "freshness"sv, "sign"sv,      "species"sv,  "animal"sv,  "edad"sv,   "estado"sv,
                                  "tipo"sv,      "especie"sv,   "by"sv,       "made by"sv, "damage"sv, "notes"sv,
                                  "note"sv,      "condition"sv, "frescura"sv, "mounds"sv,  "nota"sv,   "montones"sv,
                                  "result"sv,    "resultado"sv};
        Item& item = items_[i];
        const bool number = next(i) == Sense::number;
        if (item.folded == "n" && number)
            item.sense = Sense::group;
        else if (!number && std::find(keys.begin(), keys.end(), item.folded) != keys.end())
            item.sense = Sense::filler;
        else if (item.sense == Sense::mention && next(i) == Sense::mention && item.value == items_[i + 1].value)
            item.sense = Sense::filler;
    }

    void settle_mistyped_point(std::size_t i) {
        if (const auto point = likely_point(items_[i].folded)) mean(items_[i], *point);
    }

    void settle_no(std::size_t i) {
        const bool denies = next_joined(i) && can_be_denied(i + 1);
        const bool fresh_before = i > 0 && items_[i - 1].language == spanish &&
                                  is_one_of(items_[i - 1].sense, {Sense::fresh, Sense::older, Sense::crushed});
        const bool fresh_behind = i + 1 < items_.size() && !next_joined(i) && items_[i + 1].language == spanish &&
                                  is_one_of(next(i), {Sense::fresh, Sense::older, Sense::crushed});
        const bool spoken_spanish = after_direction(i, spanish) || (spanish_ && after_direction(i));
        bool point = !denies && (spoken_spanish || fresh_before || (i == 0 && fresh_behind));
        // "tapón NO, fresco": freshness behind the point without a comma is still a point where a plug or fan waits for one
        if (denies && after_direction(i, spanish) &&
            is_one_of(next(i), {Sense::fresh, Sense::older, Sense::crushed, Sense::animal, Sense::mound}))
            point = true;
        if (point)
            become_point(i, 315.0);
        else if (items_.size() == 1)
            items_[i].sense = Sense::plain;
    }

    void become_point(std::size_t i, double degrees) {
        items_[i].sense = Sense::compass;
        items_[i].value = degrees;
    }

    void settle_o(std::size_t i) {
        const bool between = i > 0 && next_joined(i) && joined(items_, i);
        if (between && !after_direction(i) && !is_one_of(items_[i - 1].sense, {Sense::number, Sense::degree}))
            items_[i].sense = Sense::filler;
    }

    void settle_this(std::size_t i) {
        const bool thing = next_joined(i) && is_one_of(next(i), {Sense::mound, Sense::fan, Sense::plug, Sense::animal,
                                                                 Sense::plain, Sense::digging, Sense::mention,
                                                                 Sense::surface_plug, Sense::growth, Sense::crusher});
        if (thing && !after_direction(i)) items_[i].sense = Sense::article;
    }

    void settle_so(std::size_t i) {
        if (after_direction(i) || !next_joined(i)) return;
        const bool english_next = (items_[i + 1].language & spanish) == 0;
        if (english_next || is_one_of(next(i), {Sense::plain, Sense::filler, Sense::negation}))
            items_[i].sense = Sense::filler;
    }

    void settle_se(std::size_t i) {
        if (!next_joined(i)) return;
        const bool verb =
            items_[i + 1].language == spanish &&
            is_one_of(next(i), {Sense::hit, Sense::miss, Sense::facing, Sense::throwing, Sense::visible, Sense::probe});
        const bool denied = i > 0 && joined(items_, i) && items_[i - 1].sense == Sense::negation;
        const bool plain = next(i) == Sense::plain && spanish_ && !after_direction(i);
        if (verb || denied || plain) items_[i].sense = Sense::filler;
    }

    // "fresh n damp", "mole n gopher": and.
    void settle_n(std::size_t i) {
        if (i == 0 || !next_joined(i) || !joined(items_, i) || after_direction(i)) return;
        const auto kind = [&](std::size_t k) {
            switch (items_[k].sense) {
                case Sense::fresh:
                case Sense::older:
                case Sense::crushed: return 1;
                case Sense::mention:
                case Sense::animal:
                case Sense::mound: return 2;
                default: return 0;
            }
        };
        std::size_t next = i + 1;
        while (next + 1 < items_.size() && is_one_of(items_[next].sense, {Sense::article, Sense::filler})) ++next;
        if (kind(i - 1) != 0 && kind(i - 1) == kind(next)) items_[i].sense = Sense::filler;
    }

    // "aplastado x la camioneta": por.
    void settle_x(std::size_t i) {
        if (i > 0 && next_joined(i) &&
            is_one_of(next(i), {Sense::article, Sense::crusher, Sense::mention, Sense::animal, Sense::growth}) &&
            !is_one_of(items_[i - 1].sense, {Sense::number, Sense::mound}))
            items_[i].sense = Sense::by;
    }

    void settle_in(std::size_t i) {
        const bool behind_number = i > 0 && items_[i - 1].sense == Sense::number && joined(items_, i);
        if (items_[i].folded != "in") {
            if (!behind_number) items_[i].sense = Sense::filler;
            return;
        }
        items_[i].sense = behind_number ? Sense::unit : Sense::preposition;
        items_[i].value = 0.0254;
    }

    std::vector<Item>& items_;
    bool spanish_ = false;
};

std::vector<Token> with_rules(const std::vector<Token>& tokens, const std::vector<NoteRule>& rules,
                              std::vector<std::size_t>& emptied) {
    std::vector<Replacement> replacements;
    for (const NoteRule& rule : rules) replacements.push_back({tokens_of(rule.words), tokens_of(rule.means)});
    std::stable_sort(replacements.begin(), replacements.end(),
                     [](const Replacement& a, const Replacement& b) { return a.words.size() > b.words.size(); });
    std::vector<Token> result;
    for (std::size_t i = 0; i < tokens.size();) {
        const auto rule = std::find_if(replacements.begin(), replacements.end(),
                                       [&](const Replacement& r) { return same_words(tokens, i, r.words); });
        if (rule == replacements.end()) {
            result.push_back(tokens[i++]);
            continue;
        }
        const Token& first = tokens[i];
        const Token& last = tokens[i + rule->words.size() - 1];
        const std::size_t from = result.size();
        result.insert(result.end(), rule->means.begin(), rule->means.end());
        if (rule->means.empty()) {
            emptied.push_back(result.size());
            result.push_back(first);
        }
        for (std::size_t k = from; k < result.size(); ++k) {
            result[k].begin = first.begin;
            result[k].end = last.end;
        }
        result[from].gap = first.gap;
        result[from].hyphen = first.hyphen;
        result[from].slash = first.slash;
        result[from].assigned = first.assigned;
        i += rule->words.size();
    }
    return result;
}

}  // namespace

bool joined(const std::vector<Item>& items, std::size_t i) {
    return i > 0 && i < items.size() && items[i].gap <= Gap::space;
}

std::vector<Item> items_of(std::string_view note, const std::vector<NoteRule>& rules) {
    std::vector<std::size_t> emptied;
    std::vector<Token> tokens = tokens_of(note);
    if (!rules.empty()) tokens = with_rules(tokens, rules, emptied);
    std::vector<Item> items;
    for (std::size_t i = 0; i < tokens.size();) {
        Item item = item_of(tokens[i]);
        if (std::binary_search(emptied.begin(), emptied.end(), i)) {
            item.sense = Sense::filler;
            item.is_word = true;
            items.push_back(std::move(item));
            ++i;
            continue;
        }
        std::size_t taken = tokens[i].is_number ? 1 : longest_phrase_at(tokens, i, item);
        if (taken == 0) {
            taken = 1;
            if (const auto meaning = meaning_of_one(item.folded)) mean(item, *meaning);
        }
        items.push_back(std::move(item));
        i += taken;
    }
    join_ranges(items);
    join_number_words(items);
    Settler(items).settle();
    return items;
}

}  // namespace plugside::note_words
