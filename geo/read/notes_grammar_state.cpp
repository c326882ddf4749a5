// How fresh a mound is, by its soil, its growth, its age, or what went over it.
#include <cmath>

#include "core/words/words.h"
#include "geo/read/notes_grammar_draft.h"

namespace plugside::note_words {

namespace {

bool is_old_word(const Item& item) { return item.folded == "old" || item.folded == "ago"; }

bool is_just_now(const Item& item) {
    const std::string& word = item.folded;
    return word == "freshly" || word == "recently" || word == "newly" || word == "just" || word == "recien" ||
           word == "recientemente" || word == "lately";
}

// Whether the time in items [from, to) is that of something else in its clause: of a mowing, a probing, a visit.
bool is_of_something_else(const Draft& d, std::size_t from, std::size_t to) {
    const auto of_mound = {Sense::fresh, Sense::older};
    const auto something = {Sense::crushed, Sense::mention, Sense::probe,   Sense::hit,    Sense::miss,  Sense::tunnel,
                            Sense::crusher, Sense::passing, Sense::sighted, Sense::growth, Sense::plain, Sense::negation};
    bool other = false;
    for (std::size_t k = from; k > 0 && joined(d.items, k); --k) {
        if (d.is(k - 1, of_mound) || (!other && d.is(k - 1, {Sense::throwing}))) return false;
        other = other || d.is(k - 1, something);
    }
    for (std::size_t k = to; k < d.size() && joined(d.items, k); ++k) {
        if (d.is(k, of_mound) || (!other && d.is(k, {Sense::throwing}))) return false;
        other = other || d.is(k, something);
    }
    return other;
}

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
        if (!told || is_of_something_else(d, from, to)) continue;
        const double days = d.items[i].value * (article ? 1.0 : some ? 3.0 : number.value);
        const Freshness freshness = days <= 1.0 ? Freshness::fresh : Freshness::older;
        for (std::size_t k = from; k < to; ++k) d.freshness[k] = true;
        d.take(from, to, NotePartKind::freshness, Words::shown(to_text(freshness)));
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
    reading.problems.push_back(Words::tell("both {1} and {2} are noted; taken as {3}",
                                           {Words::shown(to_text(*reading.freshness)), Words::shown(to_text(freshness)),
                                            Words::shown(to_text(crushed ? freshness : *reading.freshness))}));
    if (crushed) reading.freshness = freshness;
}

void use_state(Draft& d, std::size_t from, std::size_t to, Freshness freshness) {
    for (std::size_t k = from; k < to; ++k) d.freshness[k] = true;
    use_freshness(d.reading, freshness);
    d.take(from, to, NotePartKind::freshness, Words::shown(to_text(freshness)));
}

bool may_stand_between(const Draft& d, std::size_t i) {
    return d.linked_as(i, {Sense::filler, Sense::article, Sense::more}) ||
           (d.linked_as(i, {Sense::toward}) && d.items[i].value == 1.0);
}

// Behind "crushed": "over", "down", and what did it ("by the tractor", "con la camioneta").
std::size_t end_of_crushing(const Draft& d, std::size_t to) {
    if (d.linked_as(to, {Sense::over}))
        ++to;
    else if (d.open(to) && joined(d.items, to) && (d.items[to].folded == "down" || d.items[to].folded == "flat"))
        ++to;
    std::size_t next = to;
    const auto leads = [&](std::size_t i) {
        if (!d.open(i) || !joined(d.items, i)) return false;
        const std::string& word = d.items[i].folded;
        return d.items[i].sense == Sense::by || word == "with" || word == "w" || word == "con" || word == "under" ||
               word == "bajo" || word == "from" || word == "por los" || word == "por las" || word == "por la";
    };
    const bool led = leads(next);
    if (led) ++next;
    while (may_stand_between(d, next) && next < to + 4) ++next;
    if ((led || next > to) && d.linked_as(next, {Sense::crusher})) {
        to = next + 1;
        while (d.linked_as(to, {Sense::tracks, Sense::crusher})) ++to;
    }
    return to;
}

// Behind "across": "the mound".
bool goes_to_mound(const Draft& d, std::size_t i) {
    while (d.linked_as(i, {Sense::article, Sense::filler})) ++i;
    return d.linked_as(i, {Sense::mound});
}

// "the mower has been over it", "tractor hit it", "paso la camioneta encima", "quad tracks".
void read_crushers(Draft& d) {
    for (std::size_t i = 0; i < d.size(); ++i) {
        if (!d.open_as(i, {Sense::crusher}) || d.denial_of(i)) continue;
        std::size_t from = i;
        while (from > 0 && joined(d.items, from) && d.open_as(from - 1, {Sense::article})) --from;
        std::size_t to = i + 1;
        bool passed = false;
        while (d.linked_as(to, {Sense::passing, Sense::hit, Sense::tracks, Sense::filler, Sense::article}) ||
               may_stand_between(d, to)) {
            passed = passed || d.is(to, {Sense::hit, Sense::tracks});
            ++to;
        }
        const bool over = d.linked_as(to, {Sense::over}) ||
                          (d.open(to) && joined(d.items, to) && d.items[to].folded == "across" && goes_to_mound(d, to + 1));
        const bool crushes = d.linked_as(to, {Sense::crushed});
        std::size_t led = from;
        while (led > 0 && i - led < 4 && joined(d.items, led) &&
               d.open_as(led - 1, {Sense::filler, Sense::article, Sense::by, Sense::preposition}))
            --led;
        const bool passed_before = led > 0 && joined(d.items, led) && d.open_as(led - 1, {Sense::passing}) &&
                                   (d.items[led - 1].language & spanish) != 0;
        if (!over && !crushes && !passed && !passed_before) continue;
        if (passed_before) from = led - 1;
        if (over) {
            ++to;
            while (d.linked_as(to, {Sense::article, Sense::filler})) ++to;
        }
        while (to > i + 1 && d.is(to - 1, {Sense::article, Sense::filler})) --to;
        if (crushes && !over) {
            while (from < i && d.is(from, {Sense::article})) ++from;
        }
        use_state(d, from, to, Freshness::crushed);
    }
}

// "cows went over it", "pasaron los borregos encima", "lo pasó el ganado": beasts and people, who are mentioned already.
void read_treading(Draft& d) {
    for (std::size_t i = 0; i < d.size(); ++i) {
        if (!d.open_as(i, {Sense::passing})) continue;
        std::size_t being = i + 1;
        while (d.linked_as(being, {Sense::article, Sense::filler})) ++being;
        const bool behind = d.is(being, {Sense::mention}) && joined(d.items, being);
        std::size_t before = i;
        while (before > 0 && joined(d.items, before) && d.open_as(before - 1, {Sense::filler})) --before;
        const bool ahead = before > 0 && joined(d.items, before) && d.is(before - 1, {Sense::mention});
        if (!behind && !ahead) continue;
        const std::size_t over = behind ? being + 1 : i + 1;
        const std::string& word = d.items[i].folded;
        const bool it = behind && (word.starts_with("lo ") || word.starts_with("la ") || word.starts_with("los "));
        if (!d.linked_as(over, {Sense::over}) && !it) continue;
        if (d.linked_as(over, {Sense::over}) && behind) d.skip(i);
        if (it && !d.linked_as(over, {Sense::over}))
            use_state(d, i, i + 1, Freshness::crushed);
        else
            use_state(d, behind ? over : i, over + 1, Freshness::crushed);
    }
}

// "covered in weeds, "weeds growing on it".
void read_overgrowth(Draft& d) {
    for (std::size_t i = 0; i < d.size(); ++i) {
        if (!d.open_as(i, {Sense::growth})) continue;
        std::size_t from = i;
        while (from > 0 && i - from < 3 && joined(d.items, from) &&
               d.open_as(from - 1, {Sense::filler, Sense::article, Sense::more, Sense::fresh}))
            --from;
        if (from > 0 && joined(d.items, from) && d.open_as(from - 1, {Sense::overgrowth})) {
            use_state(d, from - 1, i + 1, Freshness::older);
            continue;
        }
        std::size_t to = i + 1;
        while (may_stand_between(d, to) && to < i + 4) ++to;
        if (!d.linked_as(to, {Sense::overgrowth, Sense::over})) continue;
        while (d.linked_as(to, {Sense::overgrowth, Sense::over})) ++to;
        use_state(d, i, to, Freshness::older);
    }
}

// "today", "dug overnight", where it is said of the mound.
void read_times(Draft& d) {
    for (std::size_t i = 0; i < d.size(); ++i) {
        if (!d.open_as(i, {Sense::when}) || d.denial_of(i) || is_of_something_else(d, i, i + 1)) continue;
        const Freshness freshness = d.items[i].value == 0.0 ? Freshness::fresh : Freshness::older;
        if (d.reading.freshness.value_or(freshness) != freshness) {
            d.skip(i);  // what the mound looks like goes before
            continue;
        }
        const bool made = i > 0 && d.open(i - 1) && joined(d.items, i) &&
                          (d.items[i - 1].folded == "dug" || d.items[i - 1].folded.starts_with("hech") ||
                           d.items[i - 1].folded == "made" || d.is(i - 1, {Sense::throwing}));
        use_state(d, made ? i - 1 : i, i + 1, freshness);
    }
}

bool any_bearing(const Draft& d) {
    for (std::size_t i = 0; i < d.size(); ++i)
        if (direction_at(d.items, i, false)) return true;
    return false;
}

// "needs a new blade", "letrero nuevo": where nothing is said of a mound, the state of a known thing.
bool is_of_thing(const Draft& d, std::size_t i) {
    if (!d.reading.parts.empty()) return false;
    const auto thing = [&](std::size_t k) { return d.open_as(k, {Sense::plain, Sense::crusher}) && d.items[k].known; };
    if ((d.items[i].language & english) != 0 && joined(d.items, i + 1) && thing(i + 1)) {
        const bool label = d.linked_as(i + 2, {Sense::number}) || (d.open(i + 2) && d.items[i + 2].folded.size() == 1);
        return !label;  // "fresh row 12"
    }
    return (d.items[i].language & spanish) != 0 && i > 0 && joined(d.items, i) && thing(i - 1);
}

}  // namespace

void read_freshness(Draft& d) {
    read_crushers(d);
    read_treading(d);
    read_overgrowth(d);
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
        if (freshness == Freshness::crushed) {
            to = end_of_crushing(d, to);
            if (from > 0 && joined(d.items, from) && d.open(from - 1) && is_just_now(d.items[from - 1])) --from;
        }
        if (freshness != Freshness::crushed && is_of_thing(d, i)) continue;
        if (freshness == Freshness::fresh && is_just_now(d.items[i]) && d.linked_as(to, {Sense::crushed})) continue;
        if (freshness == Freshness::fresh && d.linked_as(to, {Sense::throwing})) ++to;  // "freshly thrown"
        use_state(d, from, to, freshness);
    }
    read_times(d);
    // "fan flat": the word fan is understood, there is just no bearing
    if (!d.lone_fan || d.says_fan() || any_bearing(d)) return;
    const std::size_t fan = *d.lone_fan;
    std::size_t next = fan + 1;
    while (d.linked_as(next, {Sense::filler, Sense::article}) ||
           (d.linked_as(next, {Sense::toward}) && d.items[next].value == 1.0))
        ++next;
    const bool beside = (next < d.size() && d.freshness[next]) || (fan > 0 && d.freshness[fan - 1]);
    if (!beside) return;
    d.skip(fan);
    d.lone_fan.reset();
}

}  // namespace plugside::note_words
