#include <cmath>

#include "core/words/words.h"
#include "geo/read/notes_grammar_draft.h"

namespace plugside::note_words {

namespace {

bool is_count(const Item& item) {
    return item.sense == Sense::number && item.use == Use::open && !item.is_clock && !item.is_range && item.value >= 1.0 &&
           item.value < 500.0 && item.value == std::floor(item.value);
}

void use_count(Draft& d, std::size_t from, std::size_t to, double value) {
    const int count = static_cast<int>(value);
    d.take(
        from, to, NotePartKind::count,
        count == 1 ? Words::tell("{1} mound", {std::to_string(count)}) : Words::tell("{1} mounds", {std::to_string(count)}));
    if (d.reading.count && *d.reading.count != count)
        d.reading.problems.push_back(
            Words::tell("a second count, {1}, is noted; the first is used", {std::to_string(count)}));
    else
        d.reading.count = count;
    d.plural = d.plural || count > 1;
}

// What an animal leaves, not what it does ("cats dig here").
bool is_den(const Draft& d, std::size_t i) {
    const std::string& word = d.items[i].folded;
    return d.is(i, {Sense::digging}) && !word.starts_with("d") && !word.starts_with("sign") && !word.starts_with("trail") &&
           word != "work" && word != "activity" && word != "runs" && !word.starts_with("rastro");
}

bool is_heap(const Item& item) {
    if (item.sense == Sense::mound) return true;
    return item.sense == Sense::animal &&
           (item.folded.find("hill") != std::string::npos || item.folded.find("mound") != std::string::npos ||
            item.folded.starts_with("topera") || item.folded.starts_with("hormiguero"));
}

// "fan 210 cows": a number of two digits or more straight behind a fan's word is its bearing, whatever comes next.
bool is_fans_bearing(const Draft& d, std::size_t number) {
    return number > 0 && joined(d.items, number) && d.open_as(number - 1, {Sense::fan, Sense::plug}) &&
           d.items[number].value >= 10.0 && d.items[number].value <= 360.0;
}

// "2 fresh and 1 old mound": the number before the "and"; 0 without one.
double before_and(Draft& d, std::size_t number) {
    std::size_t k = number;
    if (k == 0 || !d.open_as(k - 1, {Sense::filler}) || !joined(d.items, k)) return 0.0;
    const std::string& word = d.items[k - 1].folded;
    if (word != "and" && word != "+" && word != "&" && word != "y") return 0.0;
    for (--k; k > 0 && joined(d.items, k) && d.open_as(k - 1, {Sense::fresh, Sense::older, Sense::crushed, Sense::more});)
        --k;
    if (k == 0 || !joined(d.items, k) || !is_count(d.items[k - 1])) return 0.0;
    d.skip(k - 1);
    return d.items[k - 1].value;
}

// "3 fresh mounds", "mounds x3", "mounds: 3".
void count_heap(Draft& d, std::size_t i) {
    const bool plural = d.items[i].plural;
    for (std::size_t back = i; back > 0 && i - back < 5 && joined(d.items, back); --back) {
        const std::size_t k = back - 1;
        if (is_count(d.items[k])) {
            const bool grouped = k > 0 && joined(d.items, k) && d.open_as(k - 1, {Sense::group, Sense::times});
            const bool label =
                k > 0 && joined(d.items, k) && !d.items[k - 1].plural && d.is(k - 1, {Sense::plain, Sense::crusher});
            if (!plural && (d.items[k].value > 12.0 || label)) return;  // "tree 4 mound"
            return use_count(d, grouped ? k - 1 : k, k + 1, d.items[k].value + before_and(d, k));
        }
        if (d.open_as(k, {Sense::times}) && k > 0 && is_count(d.items[k - 1]) && joined(d.items, k))
            return use_count(d, k - 1, k + 1, d.items[k - 1].value);
        if (!d.open_as(k, {Sense::fresh, Sense::older, Sense::crushed, Sense::animal, Sense::more, Sense::article,
                           Sense::filler, Sense::of, Sense::group}))
            break;
    }
    std::size_t next = i + 1;
    const bool times = d.linked_as(next, {Sense::times});
    if (times) ++next;
    const bool aside = plural && next < d.size() && d.items[next].gap == Gap::comma && d.items[next].folded.size() < 3;
    if (next >= d.size() || !(joined(d.items, next) || aside) || !is_count(d.items[next])) return;  // "mounds (5)"
    const std::size_t behind = next + 1;
    if (times || (plural && d.starts_clause(behind))) use_count(d, times ? i + 1 : next, behind, d.items[next].value);
}

void use_kind(Draft& d, SignKind kind, bool by_denial = false) {
    NoteReading& reading = d.reading;
    if (d.denied_kind && !by_denial) {
        reading.kind = kind;
        d.denied_kind = false;
    } else if (by_denial && reading.kind) {
        return;
    } else if (reading.kind && *reading.kind != kind)
        reading.problems.push_back(Words::tell("both {1} and {2} are noted; the first is taken",
                                               {Words::shown(to_text(*reading.kind)), Words::shown(to_text(kind))}));
    else
        reading.kind = kind;
    d.denied_kind = d.denied_kind || by_denial;
}

void take_sign(Draft& d, std::size_t from, std::size_t to, SignKind kind) {
    for (std::size_t i = from; i < to; ++i) d.sign[i] = true;
    d.take(from, to, NotePartKind::sign, Words::shown(to_text(kind)));
}

void read_animal(Draft& d, std::size_t i) {
    const auto kind = static_cast<SignKind>(static_cast<int>(d.items[i].value));
    if (const auto denial = d.denial_of(i)) {
        if (kind != SignKind::gopher_mound) return;
        use_kind(d, SignKind::other, true);
        return take_sign(d, *denial, i + 1, SignKind::other);
    }
    // "other" alone is a kind; "the other fan" is not
    if (d.items[i].folded == "other" && !(d.starts_clause(i) && d.starts_clause(i + 1))) return;
    std::size_t from = i;
    std::size_t to = i + 1;
    if (i > 0 && d.open(i - 1) && joined(d.items, i) &&
        (d.items[i - 1].folded == "ground" || d.items[i - 1].folded == "pocket" || d.items[i - 1].folded == "field" ||
         d.items[i - 1].folded == "gr" || d.items[i - 1].folded == "grd" || d.items[i - 1].folded == "grnd"))
        from = i - 1;
    if (i >= 2 && d.linked_as(i - 1, {Sense::of}) && joined(d.items, i) &&
        d.open_as(i - 2, {Sense::mound, Sense::digging, Sense::tunnel}))
        from = i - 2;
    while (d.linked_as(to, {Sense::digging, Sense::mound, Sense::tunnel}) && to < i + 3) ++to;
    use_kind(d, kind);
    take_sign(d, from, to, kind);
}

// "Plug, no fan, at ground level": a plug without a direction, and the surface as a clause of its own.
bool level_apart(const Draft& d, std::size_t i) {
    for (std::size_t k = i + 1; k < d.size() && k < i + 8; ++k) {
        if (!d.open_as(k, {Sense::surface}) || !d.starts_clause(k + 1)) continue;
        std::size_t first = k;
        while (first > i + 1 && joined(d.items, first) && d.open_as(first - 1, {Sense::at, Sense::article, Sense::toward}))
            --first;
        if (d.starts_clause(first)) return d.starts_clause(i + 1);
    }
    return false;
}

// "or" in "no dogs or kids".
bool names_further(const Draft& d, std::size_t i) {
    if (!d.open(i) || !joined(d.items, i) || !joined(d.items, i + 1)) return false;
    const std::string& word = d.items[i].folded;
    return word == "or" || word == "o" || word == "nor" || word == "ni" || word == "and" || word == "u" || word == "y";
}

// "plug at the surface", "flush plug": the words from `from` to `to`.
bool surface_plug_at(const Draft& d, std::size_t i, std::size_t& from, std::size_t& to) {
    const auto between = {Sense::toward, Sense::at, Sense::article, Sense::filler, Sense::preposition, Sense::more};
    to = i + 1;
    while (d.linked_as(to, between) && to < i + 4) ++to;
    from = i;
    if (d.linked_as(to, {Sense::surface})) {
        ++to;
        return true;
    }
    to = i + 1;
    if (i == 0 || !joined(d.items, i) || !d.open_as(i - 1, {Sense::surface})) return false;
    from = i - 1;
    return true;
}

}  // namespace

void read_mentions(Draft& d) {
    std::string denied;         // the word that denies the mention before
    std::size_t denied_to = 0;  // where that mention ended
    for (std::size_t i = 0; i < d.size(); ++i) {
        const bool digger_seen = d.open_as(i, {Sense::animal}) &&
                                 static_cast<SignKind>(static_cast<int>(d.items[i].value)) == SignKind::other && i > 0 &&
                                 joined(d.items, i) &&
                                 (d.open_as(i - 1, {Sense::sighted}) ||
                                  (i > 1 && d.open_as(i - 1, {Sense::article}) && d.open_as(i - 2, {Sense::sighted})));
        if (!digger_seen && !d.open_as(i, {Sense::mention})) continue;
        const auto category =
            digger_seen ? MentionCategory::wildlife : static_cast<MentionCategory>(static_cast<int>(d.items[i].value));
        std::size_t from = i;
        std::string words = d.text(i, i + 1);
        if (!denied.empty() && i == denied_to + 1 && names_further(d, denied_to)) {
            from = denied_to;  // "no dogs or kids"
            words = std::string(denied).append(" ").append(words);
        } else if (const auto denial = d.denial_of(i)) {
            from = *denial;
            words = d.text(from, i + 1);
            denied = d.text(from, from + 1);
        } else if (i > 0 && joined(d.items, i) && is_count(d.items[i - 1]) && !is_fans_bearing(d, i - 1)) {
            from = i - 1;
            words = d.text(from, i + 1);
            denied.clear();
        } else {
            denied.clear();
        }
        const bool none = d.linked_as(i + 1, {Sense::number, Sense::none, Sense::negation, Sense::miss}) &&
                          d.items[i + 1].assigned && (d.items[i + 1].sense != Sense::number || d.items[i + 1].value == 0.0);
        const std::size_t to = none ? i + 2 : i + 1;  // "people: 0"
        if (none) words = d.text(from, to);
        denied_to = to;
        d.reading.mentions.push_back({category, words});
        d.take(from, to, NotePartKind::mention, Words::shown(to_text(category)) + ": " + words);
        if (category != MentionCategory::wildlife && category != MentionCategory::pets) continue;
        // "fox den", "madriguera de zorro": the digging is theirs
        std::size_t digging = d.size();
        if (d.linked_as(i + 1, {Sense::digging}) && (is_den(d, i + 1) || d.items[i + 1].folded.starts_with("den")))
            digging = i + 1;
        if (from >= 2 && d.linked_as(from - 1, {Sense::of}) && joined(d.items, from) &&
            d.open_as(from - 2, {Sense::digging}) && is_den(d, from - 2))
            digging = from - 2;
        if (digging == d.size()) continue;
        use_kind(d, SignKind::other);
        take_sign(d, digging, digging + 1, SignKind::other);
    }
}

void read_counts(Draft& d) {
    for (std::size_t i = 0; i < d.size(); ++i)
        if (d.open(i) && (is_heap(d.items[i]) || (d.is(i, {Sense::digging}) && i > 0 && d.is(i - 1, {Sense::animal}))))
            count_heap(d, i);
    for (std::size_t i = 0; i < d.size(); ++i) {
        const bool behind = d.linked_as(i + 1, {Sense::number}) && is_count(d.items[i + 1]);
        if (d.open_as(i, {Sense::group}) && behind) use_count(d, i, i + 2, d.items[i + 1].value);
        if (d.open_as(i, {Sense::times}) && behind) use_count(d, i, i + 2, d.items[i + 1].value);
        if (d.open(i) && is_count(d.items[i]) && d.linked_as(i + 1, {Sense::times, Sense::more}) && d.starts_clause(i + 2))
            use_count(d, i, i + 2, d.items[i].value);
    }
}

void read_signs(Draft& d) {
    for (std::size_t i = 0; i < d.size(); ++i) {
        std::size_t from = 0;
        std::size_t to = 0;
        if (d.open_as(i, {Sense::plug}) && !d.denial_of(i) && (surface_plug_at(d, i, from, to) || level_apart(d, i))) {
            use_kind(d, SignKind::surface_plug);
            take_sign(d, from, to, SignKind::surface_plug);
        } else if (d.open_as(i, {Sense::surface_plug}) && !d.denial_of(i)) {
            use_kind(d, SignKind::surface_plug);
            take_sign(d, i, d.linked_as(i + 1, {Sense::surface}) ? i + 2 : i + 1, SignKind::surface_plug);
        } else if (d.open_as(i, {Sense::animal})) {
            read_animal(d, i);
        }
    }
    bool mound = false;
    for (std::size_t i = 0; i < d.size(); ++i) {
        if (!d.open_as(i, {Sense::mound})) continue;
        if (const auto denial = d.denial_of(i)) {
            use_kind(d, SignKind::other, true);
            take_sign(d, *denial, i + 1, SignKind::other);
            continue;
        }
        mound = true;
        d.plural = d.plural || (d.items[i].plural && d.reading.count.value_or(2) > 1);
        take_sign(d, i, i + 1, d.reading.kind.value_or(SignKind::gopher_mound));
    }
    // "mound" alone says the usual thing; "mole mound" is a mole's
    if (mound && !d.reading.kind) d.reading.kind = SignKind::gopher_mound;
}

}  // namespace plugside::note_words
