#include <cmath>

#include "geo/read/notes_grammar_draft.h"

namespace plugside::note_words {

namespace {

bool is_count(const Item& item) {
    return item.sense == Sense::number && item.use == Use::open && !item.is_clock && !item.is_range && item.value >= 1.0 &&
           item.value < 500.0 && item.value == std::floor(item.value);
}

void use_count(Draft& d, std::size_t from, std::size_t to, double value) {
    const int count = static_cast<int>(value);
    d.take(from, to, NotePartKind::count, std::to_string(count) + (count == 1 ? " mound" : " mounds"));
    if (d.reading.count && *d.reading.count != count)
        d.reading.problems.push_back("a second count, " + std::to_string(count) + ", is noted; the first is used");
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
            if (!plural && d.items[k].value > 12.0) return;
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
    if (next >= d.size() || !joined(d.items, next) || !is_count(d.items[next])) return;
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
        reading.problems.push_back("both " + to_text(*reading.kind) + " and " + to_text(kind) +
                                   " are noted; the first is taken");
    else
        reading.kind = kind;
    d.denied_kind = d.denied_kind || by_denial;
}

void take_sign(Draft& d, std::size_t from, std::size_t to, SignKind kind) {
    for (std::size_t i = from; i < to; ++i) d.sign[i] = true;
    d.take(from, to, NotePartKind::sign, to_text(kind));
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
        (d.items[i - 1].folded == "ground" || d.items[i - 1].folded == "pocket" || d.items[i - 1].folded == "field"))
        from = i - 1;
    if (i >= 2 && d.linked_as(i - 1, {Sense::of}) && joined(d.items, i) &&
        d.open_as(i - 2, {Sense::mound, Sense::digging, Sense::tunnel}))
        from = i - 2;
    while (d.linked_as(to, {Sense::digging, Sense::mound, Sense::tunnel}) && to < i + 3) ++to;
    use_kind(d, kind);
    take_sign(d, from, to, kind);
}

bool is_old_word(const Item& item) { return item.folded == "old" || item.folded == "ago"; }

// "2 days old", "hace dos semanas".
void read_ages(Draft& d) {
    for (std::size_t i = 1; i < d.size(); ++i) {
        if (!d.linked_as(i, {Sense::age})) continue;
        const Item& number = d.items[i - 1];
        const bool article = number.sense == Sense::article && number.use == Use::open;
        const bool some = number.sense == Sense::filler && number.use == Use::open;  // "a few"
        if (!article && !some && !(number.sense == Sense::number && number.use == Use::open)) continue;
        std::size_t from = i - 1;
        std::size_t to = i + 1;
        bool told = d.items[i].folded.find(" old") != std::string::npos;
        if (d.open(to) && joined(d.items, to) && is_old_word(d.items[to])) {
            told = true;
            ++to;
        }
        if (from > 0 && d.open_as(from - 1, {Sense::ago}) && joined(d.items, from)) {
            told = true;
            --from;
        }
        if (!told) continue;
        const double days = d.items[i].value * (article ? 1.0 : some ? 3.0 : number.value);
        const Freshness freshness = days <= 1.0 ? Freshness::fresh : Freshness::older;
        for (std::size_t k = from; k < to; ++k) d.freshness[k] = true;
        d.take(from, to, NotePartKind::freshness, to_text(freshness));
        if (!d.reading.freshness) d.reading.freshness = freshness;
    }
}

Freshness freshness_of(Sense sense) {
    if (sense == Sense::fresh) return Freshness::fresh;
    return sense == Sense::older ? Freshness::older : Freshness::crushed;
}

void use_freshness(NoteReading& reading, Freshness freshness) {
    if (!reading.freshness || *reading.freshness == freshness) {
        reading.freshness = freshness;
        return;
    }
    const bool crushed = freshness == Freshness::crushed;  // it outweighs an age: nothing can be read from the fan
    reading.problems.push_back("both " + to_text(*reading.freshness) + " and " + to_text(freshness) +
                               " are noted; taken as " + to_text(crushed ? freshness : *reading.freshness));
    if (crushed) reading.freshness = freshness;
}

bool any_bearing(const Draft& d) {
    for (std::size_t i = 0; i < d.size(); ++i)
        if (direction_at(d.items, i, false)) return true;
    return false;
}

}  // namespace

void read_mentions(Draft& d) {
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
        if (const auto denial = d.denial_of(i))
            from = *denial;
        else if (i > 0 && joined(d.items, i) && is_count(d.items[i - 1]))
            from = i - 1;
        d.reading.mentions.push_back({category, d.text(from, i + 1)});
        d.take(from, i + 1, NotePartKind::mention, to_text(category) + ": " + d.text(from, i + 1));
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
        if (d.open_as(i, {Sense::surface_plug}) && !d.denial_of(i)) {
            use_kind(d, SignKind::surface_plug);
            take_sign(d, i, i + 1, SignKind::surface_plug);
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

void read_freshness(Draft& d) {
    read_ages(d);
    for (std::size_t i = 0; i < d.size(); ++i) {
        if (!d.open_as(i, {Sense::fresh, Sense::older, Sense::crushed})) continue;
        Freshness freshness = freshness_of(d.items[i].sense);
        std::size_t from = i;
        if (const auto denial = d.denial_of(i)) {
            if (freshness != Freshness::fresh) continue;  // not old may be fresh, and may not
            freshness = Freshness::older;
            from = *denial;
        }
        std::size_t to = i + 1;
        if (freshness == Freshness::crushed && d.open(to) && d.items[to].folded == "over") ++to;
        for (std::size_t k = from; k < to; ++k) d.freshness[k] = true;
        use_freshness(d.reading, freshness);
        d.take(from, to, NotePartKind::freshness, to_text(freshness));
    }
    // "fan flat": the word fan is understood, there is just no bearing
    if (!d.lone_fan || d.says_fan() || any_bearing(d)) return;
    const std::size_t fan = *d.lone_fan;
    const bool beside = (fan + 1 < d.size() && d.freshness[fan + 1]) || (fan > 0 && d.freshness[fan - 1]);
    if (!beside) return;
    d.skip(fan);
    d.lone_fan.reset();
}

}  // namespace plugside::note_words
