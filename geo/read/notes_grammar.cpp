#include "geo/read/notes_grammar.h"

#include <algorithm>
#include <array>
#include <cstdio>

#include "core/words/words.h"
#include "geo/read/notes_grammar_draft.h"

namespace plugside {

namespace note_words {

std::string shown(double value) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%g", value);
    return text.data();
}

bool Draft::is(std::size_t i, std::initializer_list<Sense> senses) const {
    return i < items.size() && std::find(senses.begin(), senses.end(), items[i].sense) != senses.end();
}

std::string Draft::text(std::size_t from, std::size_t to) const {
    return std::string(note.substr(items[from].begin, items[to - 1].end - items[from].begin));
}

std::optional<std::size_t> Draft::denial_of(std::size_t i) const {
    for (std::size_t k = i; k > 0 && i - k < 4 && joined(items, k); --k) {
        if (open_as(k - 1, {Sense::negation})) return k - 1;
        const bool between = open_as(k - 1, {Sense::article, Sense::filler}) ||
                             (open_as(k - 1, {Sense::toward}) && items[k - 1].value == 1.0) || (open_as(k - 1, {Sense::of}));
        if (!between) break;
    }
    return std::nullopt;
}

void Draft::take(std::size_t from, std::size_t to, NotePartKind kind, std::string value) {
    for (std::size_t i = from; i < to; ++i) items[i].use = Use::part;
    reading.parts.push_back({kind, {items[from].begin, items[to - 1].end}, std::move(value)});
}

namespace {

bool is_empty_word(const Item& item) {
    switch (item.sense) {
        case Sense::filler:
        case Sense::article: return true;
        case Sense::toward: return item.value == 1.0;
        case Sense::of: return item.folded == "of" || item.folded == "de" || item.folded == "del";
        default: return false;
    }
}

// Words that lead to another: they say nothing by themselves, and go where that word goes.
bool leads_on(const Item& item) {
    switch (item.sense) {
        case Sense::preposition:
        case Sense::by:
        case Sense::at:
        case Sense::at_hour:
        case Sense::over:
        case Sense::between: return true;
        case Sense::of:
        case Sense::toward: return !is_empty_word(item);
        default: return false;
    }
}

// Which of the items that are no part go to the rest.
std::vector<bool> rest_of(const Draft& d) {
    const NoteReading& reading = d.reading;
    const bool understood = !reading.parts.empty();
    std::vector<bool> rest(d.size(), false);
    enum class Behind { nothing, told, left };
    Behind behind = Behind::nothing;
    for (std::size_t i = d.size(); i-- > 0;) {
        const Item& item = d.items[i];
        if (i + 1 < d.size() && !joined(d.items, i + 1)) behind = Behind::nothing;
        const bool told = (item.sense == Sense::soil && reading.freshness) || (item.sense == Sense::doubt && understood) ||
                          (item.sense == Sense::sighted && !reading.mentions.empty()) ||
                          (item.sense == Sense::bearing_word && d.says_fan());
        if (item.use == Use::part) {
            behind = Behind::told;
        } else if (item.use == Use::filler || is_empty_word(item) || told) {
            if (behind == Behind::nothing) behind = Behind::told;
        } else {
            rest[i] = !leads_on(item) || behind != Behind::told;
            behind = rest[i] ? Behind::left : Behind::told;
        }
    }
    return rest;
}

void gather_rest(Draft& d) {
    NoteReading& reading = d.reading;
    const bool understood = !reading.parts.empty();
    const std::vector<bool> rest = rest_of(d);
    bool doubted = false;
    for (std::size_t i = 0; i < d.size(); ++i) {
        const Item& item = d.items[i];
        if (item.use == Use::part) continue;
        doubted = doubted || item.sense == Sense::doubt;
        const TextSpan span{item.begin, item.end};
        if (!rest[i]) {
            reading.fillers.push_back(span);
            continue;
        }
        reading.rest_spans.push_back(span);
        if (!reading.rest.empty()) reading.rest += ' ';
        reading.rest += d.note.substr(span.begin, span.end - span.begin);
    }
    if (doubted && understood) reading.problems.push_back(Words::tell("the note doubts itself; it is taken as it stands"));
    std::stable_sort(reading.parts.begin(), reading.parts.end(),
                     [](const NotePart& a, const NotePart& b) { return a.span.begin < b.span.begin; });
}

NoteReading reading_of(std::string_view note, const std::vector<NoteRule>& rules) {
    Draft draft;
    draft.note = note;
    draft.items = items_of(note, rules);
    draft.freshness.assign(draft.size(), false);
    draft.sign.assign(draft.size(), false);
    read_no_fan(draft);
    read_probe(draft);
    read_mentions(draft);
    read_fans(draft);
    read_counts(draft);
    read_signs(draft);
    read_freshness(draft);
    read_bare_bearing(draft);
    if (draft.lone_fan && draft.open(*draft.lone_fan) && draft.says_fan()) draft.skip(*draft.lone_fan);
    gather_rest(draft);
    return std::move(draft.reading);
}

}  // namespace

}  // namespace note_words

NoteReading read_note(std::string_view note) { return note_words::reading_of(note, {}); }

NoteReading reread_note(std::string_view note, const std::string& walk, const std::vector<NoteRule>& rules) {
    std::vector<NoteRule> here;
    std::copy_if(rules.begin(), rules.end(), std::back_inserter(here),
                 [&](const NoteRule& rule) { return rule.walk.empty() || rule.walk == walk; });
    return note_words::reading_of(note, here);
}

Bearing fan_from_clock(double clock_hour, Bearing walking) { return walking.turned(30.0 * clock_hour); }

std::string to_text(NotePartKind kind) {
    switch (kind) {
        case NotePartKind::fan: return "fan";
        case NotePartKind::no_fan: return "no fan";
        case NotePartKind::freshness: return "freshness";
        case NotePartKind::sign: return "sign";
        case NotePartKind::count: return "count";
        case NotePartKind::probe: return "probe";
        case NotePartKind::mention: break;
    }
    return "mention";
}

std::string to_text(NotedProbe result) {
    if (result == NotedProbe::hit) return Words::later("hit");
    return result == NotedProbe::nothing ? Words::later("nothing") : Words::later("untold");
}

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
            const std::string word = note_words::folded(text.substr(letters_from, i - letters_from));
            if (note_words::is_month(word))
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
    const auto tokens = note_words::tokens_of(text);
    if (tokens.empty()) return false;
    std::string first = tokens.front().folded;
    while (!first.empty() && first.back() >= '0' && first.back() <= '9') first.pop_back();
    return note_words::is_thing(first);
}

}  // namespace plugside
