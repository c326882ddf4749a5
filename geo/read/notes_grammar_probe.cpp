#include <algorithm>
#include <array>
#include <cstdio>
#include <string_view>

#include "core/words/words.h"
#include "geo/read/notes_grammar_draft.h"

namespace plugside::note_words {

namespace {

std::string in_centimetres(Metres length) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.3g cm", length.value() * 100.0);
    return text.data();
}

class ProbeReader {
public:
    explicit ProbeReader(Draft& draft) : d_(draft) {}

    void read() {
        std::size_t i = 0;
        while (i < d_.size()) {
            const std::size_t end = run_end(i);
            if (end > i) read_run(i, end);
            i = end > i ? end : i + 1;
        }
        if (!d_.reading.probe) return;
        for (std::size_t k = 0; k < d_.size(); ++k) read_late(k);
    }

private:
    [[nodiscard]] bool is_length(std::size_t i) const {
        if (!d_.open_as(i, {Sense::number}) || d_.items[i].is_clock ||
            !(d_.items[i].value >= 0.0 && d_.items[i].value < 1e5))
            return false;
        if (d_.linked_as(i + 1, {Sense::unit})) return d_.items[i + 1].value > 0.0;
        return d_.linked_as(i + 1, {Sense::reference_letter}) && d_.items[i + 1].folded == "m";
    }
    [[nodiscard]] double length_at(std::size_t i) const {
        return d_.items[i].value * (d_.items[i + 1].sense == Sense::unit ? d_.items[i + 1].value : 1.0);
    }
    // "from the plug": how many words from `i`, 0 for none; also "NW of the mound".
    [[nodiscard]] std::size_t from_plug_at(std::size_t i) const {
        std::size_t next = i;
        if (d_.linked_as(next, {Sense::compass})) ++next;
        if (d_.linked_as(next, {Sense::toward, Sense::distance}) && d_.linked_as(next + 1, {Sense::of})) ++next;
        const bool round = d_.linked_as(next, {Sense::toward}) && d_.items[next].folded.find("ro") != std::string::npos;
        if (!round && !d_.linked_as(next, {Sense::of, Sense::away, Sense::preposition}) &&
            !(next < d_.size() && d_.linked_as(next, {Sense::depth, Sense::filler}) && d_.items[next].folded.front() == 'd'))
            return 0;
        ++next;
        while (d_.linked_as(next, {Sense::article})) ++next;
        return d_.linked_as(next, {Sense::plug, Sense::mound}) ? next + 1 - i : 0;
    }
    // How often and where: "3 places", "4 huecos".
    [[nodiscard]] bool names_a_try(std::size_t i) const {
        using namespace std::string_view_literals;
        constexpr std::array tries{"places"sv, "spots"sv,    "holes"sv,  "points"sv,   "tries"sv,
                                   "pokes"sv,  "sides"sv,    "stabs"sv,  "lugares"sv,  "lados"sv,
                                   "puntos"sv, "partes"sv,   "huecos"sv, "intentos"sv, "hoyos"sv,
                                   "sitios"sv, "attempts"sv, "probes"sv, "feet"sv,     "directions"sv};
        return d_.open(i) && joined(d_.items, i) && std::find(tries.begin(), tries.end(), d_.items[i].folded) != tries.end();
    }
    // The number of items that the one at `i` brings into a run about probing; 0 when it does not belong there.
    [[nodiscard]] std::size_t member_at(std::size_t i) const {
        if (!d_.open(i)) return 0;
        if (is_length(i)) return 2;
        if (d_.open_as(i, {Sense::number}) && (d_.linked_as(i + 1, {Sense::times}) || names_a_try(i + 1))) return 2;
        if (d_.open_as(i, {Sense::number}) && d_.linked_as(i + 1, {Sense::probe})) return 1;
        if (const std::size_t words = from_plug_at(i); words > 0) return words;
        return d_.is(i,
                     {Sense::probe, Sense::tunnel, Sense::hit, Sense::miss, Sense::negation, Sense::none, Sense::depth,
                      Sense::distance, Sense::article, Sense::filler, Sense::of, Sense::at, Sense::at_hour, Sense::toward})
                   ? 1
                   : 0;
    }
    [[nodiscard]] bool is_core(std::size_t i) const {
        return d_.is(i, {Sense::probe, Sense::tunnel, Sense::hit, Sense::miss});
    }

    // From `i` on as long as the words are about probing; a stop is crossed only between the word probe and its result.
    [[nodiscard]] std::size_t run_end(std::size_t i) const {
        std::size_t end = i;
        bool probed = false;
        while (const std::size_t words = member_at(end)) {
            if (end > i && d_.items[end].gap == Gap::stop &&
                !(probed && d_.is(end, {Sense::hit, Sense::miss, Sense::negation})))
                break;
            probed = probed || d_.is(end, {Sense::probe});
            end += words;
        }
        return end;
    }

    struct Told {
        bool probe = false;
        bool tunnel = false;
        bool hit = false;
        bool sure_hit = false;
        bool length = false;
        bool placed = false;  // "at", "deep", ...
        bool missed = false;
        bool negative = false;
        bool positive = false;
        std::optional<Metres> depth;
        std::optional<Metres> distance;
        bool sure_miss = false;
        [[nodiscard]] bool result() const { return hit || missed; }
    };

    void read_run(std::size_t from, std::size_t end) {
        // what only leads up to it or trails behind it is no part of it
        while (from < end && !is_core(from) && !is_length(from) &&
               !d_.is(from, {Sense::negation, Sense::depth, Sense::distance}))
            ++from;
        while (from < end && d_.is(from, {Sense::negation, Sense::distance}) && !leads_to_core(from, end)) ++from;
        while (end > from && !is_core(end - 1) &&
               !d_.is(end - 1, {Sense::depth, Sense::distance, Sense::unit, Sense::plug, Sense::mound,
                                Sense::reference_letter, Sense::none}))
            --end;
        if (from >= end) return;
        const Told told = told_in(from, end);
        if (!is_about_probing(told, from, end)) return;
        ProbeNote probe;
        probe.result = told.positive ? NotedProbe::hit : told.negative ? NotedProbe::nothing : NotedProbe::untold;
        if (denied_probe(from) || is_a_thing(told, end)) return;
        probe.depth = told.depth;
        probe.distance = told.distance;
        d_.take(from, end, NotePartKind::probe, words_of(probe));
        if (told.positive && told.negative)
            d_.reading.problems.push_back(Words::tell("the note tells of a hit and of none; it is taken as a hit"));
        if (!d_.reading.probe) {
            d_.reading.probe = probe;
        } else if (d_.reading.probe->result == NotedProbe::untold) {
            d_.reading.probe->result = probe.result;
            if (probe.depth) d_.reading.probe->depth = probe.depth;
            if (probe.distance) d_.reading.probe->distance = probe.distance;
        } else if (probe.result != d_.reading.probe->result && probe.result != NotedProbe::untold) {
            d_.reading.problems.push_back(Words::tell("the note tells of a hit and of none; it is taken as a hit"));
            d_.reading.probe = probe.result == NotedProbe::hit ? probe : *d_.reading.probe;
        }
    }

    // A result or a length that is a clause of its own, anywhere in the note: "Probed by the fence. Nothing."
    void read_late(std::size_t from) {
        if (!d_.open(from) || !d_.starts_clause(from)) return;
        ProbeNote& probe = *d_.reading.probe;
        std::size_t end = from;
        while (const std::size_t words = member_at(end)) {
            if (end > from && d_.starts_clause(end)) break;
            end += words;
        }
        if (end == from || !d_.starts_clause(end)) return;
        const Told told = told_in(from, end);
        const bool result = (told.missed || told.hit) && probe.result == NotedProbe::untold;
        const bool depth = told.depth && !probe.depth && (told.placed || told.result());
        const bool distance = told.distance && !probe.distance;
        if (!result && !depth && !distance) return;
        if (result) probe.result = told.positive ? NotedProbe::hit : NotedProbe::nothing;
        if (depth) probe.depth = told.depth;
        if (distance) probe.distance = told.distance;
        d_.take(from, end, NotePartKind::probe, words_of(probe));
    }

    [[nodiscard]] bool leads_to_core(std::size_t i, std::size_t end) const {
        for (std::size_t k = i + 1; k < end && k < i + 5 && joined(d_.items, k); ++k)
            if (is_core(k)) return true;
        return false;
    }
    // "not probed"
    [[nodiscard]] bool denied_probe(std::size_t from) const {
        return d_.is(from, {Sense::negation}) && d_.is(from + 1, {Sense::probe});
    }

    // "probe left in the truck": the tool, of which nothing is told.
    [[nodiscard]] bool is_a_thing(const Told& told, std::size_t end) const {
        if (told.positive || told.negative || told.length || d_.starts_clause(end)) return false;
        const std::string& word = d_.items[end - 1].folded;
        return (word == "probe" || word == "rod" || word == "sonda" || word == "varilla") && d_.open(end) &&
               d_.is(end, {Sense::plain, Sense::relative, Sense::gone, Sense::fresh, Sense::older});
    }

    [[nodiscard]] bool is_about_probing(const Told& told, std::size_t from, std::size_t end) const {
        if (told.probe) return true;
        if (told.tunnel && (told.negative || told.hit || (told.length && told.placed))) return true;
        if (told.hit && told.length && (told.placed || told.sure_hit)) return true;
        if ((told.sure_hit && told.negative) || (told.hit && told.missed)) return true;
        if (told.missed && told.length && (told.placed || told.distance)) return true;
        return (told.sure_hit || told.sure_miss) && d_.starts_clause(from) && d_.starts_clause(end);
    }

    [[nodiscard]] Told told_in(std::size_t from, std::size_t end) const {
        Told told;
        bool denied = false;
        bool hit_here = false;
        const auto close_clause = [&] {
            if (denied)
                told.negative = true;
            else if (hit_here)
                told.positive = true;
            denied = hit_here = false;
        };
        bool tunnel_with_length = false;
        for (std::size_t i = from; i < end; ++i) {
            if (i > from && !joined(d_.items, i)) close_clause();
            const Item& item = d_.items[i];
            switch (item.sense) {
                case Sense::probe: told.probe = true; break;
                case Sense::tunnel: told.tunnel = hit_here = true; break;
                case Sense::hit:
                    told.hit = hit_here = true;
                    told.sure_hit = told.sure_hit || item.value == 1.0;
                    break;
                case Sense::miss:
                    told.missed = denied = true;
                    told.sure_miss = told.sure_miss || item.value == 1.0;
                    break;
                case Sense::none:
                case Sense::negation: denied = true; break;
                case Sense::at:
                case Sense::at_hour:
                case Sense::depth: told.placed = true; break;
                case Sense::toward: told.placed = told.placed || item.folded == "en"; break;
                case Sense::article: told.placed = told.placed || item.folded == "a"; break;
                default: break;
            }
            if (is_length(i)) {
                tunnel_with_length = true;
                i = read_length(i, end, told);
            }
        }
        close_clause();
        told.length = tunnel_with_length;
        return told;
    }

    // Gives the last item of the length.
    std::size_t read_length(std::size_t i, std::size_t end, Told& told) const {
        const std::size_t start = i;
        double metres = length_at(i);
        std::size_t next = i + 2;
        if (d_.items[i + 1].value == 0.3048 && next < end && is_length(next) && joined(d_.items, next) &&
            d_.items[next + 1].value == 0.0254) {
            metres += length_at(next);  // 1 ft 2 in
            next += 2;
        }
        const auto before = [&](Sense sense) {
            std::size_t k = start;
            while (k > 0 && joined(d_.items, k) && d_.is(k - 1, {Sense::at, Sense::article, Sense::of, Sense::filler})) --k;
            return k > 0 && joined(d_.items, k) && d_.is(k - 1, {sense});
        };
        const std::size_t plug_words = from_plug_at(next);
        const bool depth_behind = next < end && joined(d_.items, next) && d_.is(next, {Sense::depth});
        const bool far = (next < end && joined(d_.items, next) && d_.is(next, {Sense::distance})) || plug_words > 0 ||
                         (!depth_behind && before(Sense::distance));
        if (far) {
            if (!told.distance) told.distance = Metres::of(metres);
        } else if (!told.depth) {
            told.depth = Metres::of(metres);
        }
        return next - 1;
    }

    [[nodiscard]] static std::string words_of(const ProbeNote& probe) {
        std::string words = probe.result == NotedProbe::untold ? Words::tell("probed") : Words::shown(to_text(probe.result));
        if (probe.depth) words = Words::tell("{1}, {2} deep", {words, in_centimetres(*probe.depth)});
        if (probe.distance) words = Words::tell("{1}, {2} from the plug", {words, in_centimetres(*probe.distance)});
        return words;
    }

    Draft& d_;
};

}  // namespace

void read_probe(Draft& draft) { ProbeReader(draft).read(); }

}  // namespace plugside::note_words
