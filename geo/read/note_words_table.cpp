#include "geo/read/note_words_table.h"

#include <algorithm>
#include <array>
#include <unordered_map>
#include <vector>

#include "geo/read/note_words_entries.h"

namespace plugside::note_words {

namespace {

using namespace std::string_view_literals;

struct Table {
    std::unordered_map<std::string, Meaning> phrases;
    std::unordered_map<char, std::vector<std::pair<std::string, Meaning>>> likely;  // by first letter
    std::unordered_map<std::string, std::optional<Meaning>> sounds;                 // nullopt: of two meanings
    std::unordered_map<std::string, std::optional<Meaning>> consonants;
};

bool is_vowel(char c) { return std::string_view("aeiou").find(c) != std::string_view::npos; }

// How a Spanish word sounds in most of America: "viejo", "biejo"; "seco", "ceco"; "humedo", "umedo"; "caballos", "kabayos".
std::string sound_of(std::string_view word) {
    std::string sound;
    for (std::size_t i = 0; i < word.size(); ++i) {
        const char c = word[i];
        const char next = i + 1 < word.size() ? word[i + 1] : ' ';
        const bool soft = next == 'e' || next == 'i';
        if (c == 'h' && (i == 0 || word[i - 1] != 'c')) continue;
        if (c == 'l' && next == 'l') {
            sound += 'y';
            ++i;
        } else if (c == 'q' && next == 'u') {
            sound += 'k';
            ++i;
        } else if (c == 'c' && next != 'h') {
            sound += soft ? 's' : 'k';
        } else if (c == 'g' && soft) {
            sound += 'j';
        } else {
            sound += c == 'v' ? 'b' : c == 'z' ? 's' : c;
        }
    }
    for (const std::string_view ending : {"ao"sv, "aos"sv})
        if (sound.size() > ending.size() + 3 && std::string_view(sound).ends_with(ending))
            sound.insert(sound.size() - ending.size() + 1, "d");  // "aplastao"
    return sound;
}

// "frsh", "mnds": the word without its vowels, doubled letters once.
std::string consonants_of(std::string_view word) {
    std::string letters(1, word.front());
    for (const char c : word.substr(1))
        if (!is_vowel(c) && c != letters.back()) letters += c;
    return letters;
}

void add_unique(std::unordered_map<std::string, std::optional<Meaning>>& words, std::string key, const Meaning& meaning) {
    const auto [place, added] = words.try_emplace(std::move(key), meaning);
    if (!added && place->second && (place->second->sense != meaning.sense || place->second->value != meaning.value))
        place->second.reset();
}

bool is_one_word(std::string_view phrase) { return phrase.find(' ') == std::string_view::npos; }

bool may_be_mistyped(Sense sense, std::size_t letters) {
    switch (sense) {
        case Sense::fan:
        case Sense::plug:
        case Sense::compass:
        case Sense::fresh:
        case Sense::older:
        case Sense::crushed:
        case Sense::mound:
        case Sense::animal: return letters >= 4;
        case Sense::crusher:
        case Sense::reference:
        case Sense::probe:
        case Sense::tunnel:
        case Sense::degree:
        case Sense::surface_plug:
        case Sense::facing:
        case Sense::toward: return letters >= 6;
        case Sense::mention: return letters >= 7;
        default: return false;
    }
}

void add(Table& table, const Entry& entry, std::string phrase) {
    Meaning meaning{entry.sense, entry.value, entry.language, false};
    meaning.plural = phrase.size() > 3 && phrase.back() == 's';
    const auto [place, added] = table.phrases.try_emplace(phrase, meaning);
    if (!added) {
        // a word that both languages have with one sense belongs to either; otherwise the first listed sense holds
        if (place->second.sense == entry.sense) place->second.language |= entry.language;
        return;
    }
    if (!is_one_word(phrase)) return;
    if ((entry.language & spanish) != 0 && phrase.size() >= 4) add_unique(table.sounds, sound_of(phrase), meaning);
    if (may_be_mistyped(entry.sense, phrase.size())) {
        const std::string letters = consonants_of(phrase);
        // of the many beings only those whose name is mostly consonants
        const bool being = entry.sense == Sense::mention || entry.sense == Sense::crusher;
        if (letters.size() >= 3 && phrase.size() >= 5 && (!being || 5 * letters.size() >= 3 * phrase.size()))
            add_unique(table.consonants, letters, meaning);
        const char first = phrase.front();
        table.likely[first].emplace_back(std::move(phrase), meaning);
    }
}

Table made() {
    Table table;
    const auto add_all = [&table](const Entry& entry) {
        std::string_view rest = entry.phrases;
        while (!rest.empty()) {
            const std::string_view phrase = rest.substr(0, rest.find('|'));
            rest.remove_prefix(std::min(phrase.size() + 1, rest.size()));
            const auto ending = phrase.find('@');
            if (ending == std::string_view::npos) {
                add(table, entry, std::string(phrase));
                continue;
            }
            for (const std::string_view letters : {"o"sv, "a"sv, "os"sv, "as"sv})
                add(table, entry, std::string(phrase.substr(0, ending)).append(letters).append(phrase.substr(ending + 1)));
        }
    };
    for (const Entry& entry : words_of_fans_and_states()) add_all(entry);
    for (const Entry& entry : words_as_spoken()) add_all(entry);
    for (const Entry& entry : words_of_beings()) add_all(entry);
    for (const Entry& entry : words_of_findings()) add_all(entry);
    return table;
}

const Table& table() {
    static const Table once = made();
    return once;
}

// One letter more, less, other, or two neighbours exchanged.
bool differs_by_one(std::string_view a, std::string_view b) {
    if (a.size() > b.size()) std::swap(a, b);
    if (b.size() - a.size() > 1) return false;
    std::size_t i = 0;
    while (i < a.size() && a[i] == b[i]) ++i;
    const std::string_view rest_a = a.substr(i);
    const std::string_view rest_b = b.substr(i);
    if (a.size() < b.size()) return rest_a == rest_b.substr(1);
    if (rest_a.empty()) return false;
    if (rest_a.substr(1) == rest_b.substr(1)) return true;
    return rest_a.size() > 1 && rest_a[0] == rest_b[1] && rest_a[1] == rest_b[0] && rest_a.substr(2) == rest_b.substr(2);
}

// Two neighbours exchanged.
bool is_exchange(std::string_view a, std::string_view b) {
    if (a.size() != b.size()) return false;
    std::size_t i = 0;
    while (i < a.size() && a[i] == b[i]) ++i;
    return i + 1 < a.size() && a[i] == b[i + 1] && a[i + 1] == b[i] && a.substr(i + 2) == b.substr(i + 2);
}

// A likely word of four letters only by an exchange: too many other words lie one letter away.
bool is_slip_of(std::string_view word, const std::string& known, const Meaning& meaning) {
    const bool being = meaning.sense == Sense::animal && known.size() < 6;
    return known.size() < 5 || (being && word.size() == known.size()) ? is_exchange(word, known)
                                                                      : differs_by_one(word, known);
}

}  // namespace

std::optional<Meaning> meaning_of(std::string_view phrase) {
    const auto found = table().phrases.find(std::string(phrase));
    if (found != table().phrases.end()) return found->second;
    return std::nullopt;
}

bool may_be_counted(std::string_view letters) {
    const auto meaning = letters.size() >= 2 ? meaning_of(letters) : std::nullopt;
    if (!meaning) return false;
    switch (meaning->sense) {
        case Sense::unit:
        case Sense::degree:
        case Sense::reference:
        case Sense::clock:
        case Sense::age:
        case Sense::fan:
        case Sense::mound:
        case Sense::animal:
        case Sense::mention:
        case Sense::more:
        case Sense::fresh:
        case Sense::older: return true;
        default: return false;
    }
}

namespace {

std::optional<Meaning> found_in(const std::unordered_map<std::string, std::optional<Meaning>>& words,
                                const std::string& key) {
    const auto found = words.find(key);
    return found == words.end() ? std::nullopt : found->second;
}

// All its consonants and few or none of its vowels.
std::optional<Meaning> shortened_meaning_of(std::string_view word) {
    const auto vowels = std::count_if(word.begin() + 1, word.end(), is_vowel);
    if (vowels > 1 || (vowels == 1 && word.size() < 6)) return std::nullopt;
    const auto meaning = found_in(table().consonants, consonants_of(word));
    return meaning;
}

// "fann", "easst": one letter of a pair too many.
std::optional<Meaning> undoubled_meaning_of(std::string_view word) {
    for (std::size_t i = 1; i < word.size(); ++i) {
        if (word[i] != word[i - 1]) continue;
        const auto meaning = meaning_of(std::string(word.substr(0, i)).append(word.substr(i + 1)));
        if (!meaning || word.size() < 4) continue;
        switch (meaning->sense) {
            case Sense::fan:
            case Sense::plug:
            case Sense::compass:
            case Sense::fresh:
            case Sense::older:
            case Sense::crushed:
            case Sense::mound:
            case Sense::animal:
            case Sense::hit:
            case Sense::miss:
            case Sense::tunnel:
            case Sense::probe: return meaning;
            default: break;
        }
        if (word.size() > 5) return meaning;
    }
    return std::nullopt;
}

}  // namespace

std::optional<Meaning> likely_point(std::string_view word) {
    if (word.size() < 4 || is_thing(word)) return std::nullopt;
    const auto candidates = table().likely.find(word.front());
    if (candidates == table().likely.end()) return std::nullopt;
    std::optional<Meaning> likely;
    for (const auto& [known, meaning] : candidates->second) {
        if (meaning.sense != Sense::compass || !differs_by_one(word, known)) continue;
        if (likely && likely->value != meaning.value) return std::nullopt;
        likely = meaning;
    }
    return likely;
}

std::optional<Meaning> likely_meaning_of(std::string_view word) {
    if (word.size() < 3 || is_thing(word) || static_cast<unsigned char>(word.front()) >= 0x80) return std::nullopt;
    if (const auto meaning = undoubled_meaning_of(word)) return meaning;
    if (const auto meaning = shortened_meaning_of(word)) return meaning;
    if (word.size() < 4) return std::nullopt;
    if (const auto meaning = found_in(table().sounds, sound_of(word))) return meaning;
    const auto candidates = table().likely.find(word.front());
    if (candidates == table().likely.end()) return std::nullopt;
    std::optional<Meaning> likely;
    for (const auto& [known, meaning] : candidates->second) {
        if (!is_slip_of(word, known, meaning)) continue;
        if (likely && (likely->sense != meaning.sense || likely->value != meaning.value)) return std::nullopt;
        if (!likely) likely = meaning;
    }
    return likely;
}

bool is_thing(std::string_view word) {
    constexpr std::array things{"gate"sv,   "car"sv,     "truck"sv,   "pickup"sv,    "parking"sv, "house"sv,     "home"sv,
                                "barn"sv,   "shed"sv,    "well"sv,    "pump"sv,      "valve"sv,   "fence"sv,     "post"sv,
                                "corner"sv, "tree"sv,    "road"sv,    "ditch"sv,     "bridge"sv,  "start"sv,     "end"sv,
                                "camp"sv,   "culvert"sv, "hydrant"sv, "sprinkler"sv, "pole"sv,    "rock"sv,      "stump"sv,
                                "water"sv,  "office"sv,  "puerta"sv,  "porton"sv,    "casa"sv,    "camioneta"sv, "coche"sv,
                                "carro"sv,  "establo"sv, "granero"sv, "pozo"sv,      "bomba"sv,   "valvula"sv,   "cerca"sv,
                                "poste"sv,  "esquina"sv, "arbol"sv,   "camino"sv,    "zanja"sv,   "puente"sv,    "inicio"sv,
                                "fin"sv,    "roca"sv,    "agua"sv,    "oficina"sv,   "aspersor"sv};
    return std::find(things.begin(), things.end(), word) != things.end();
}

bool is_month(std::string_view word) {
    constexpr std::array months{"january"sv, "february"sv, "march"sv,     "april"sv,   "may"sv,      "june"sv,
                                "july"sv,    "august"sv,   "september"sv, "october"sv, "november"sv, "december"sv};
    if (word.size() < 3) return false;
    return std::any_of(months.begin(), months.end(),
                       [&](std::string_view month) { return month.substr(0, word.size()) == word; });
}

}  // namespace plugside::note_words
