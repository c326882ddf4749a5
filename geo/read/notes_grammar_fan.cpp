#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "core/units/bearing.h"
#include "core/words/words.h"
#include "geo/read/notes_grammar_draft.h"

namespace plugside::note_words {

namespace {

constexpr std::size_t furthest = 6;  // words between a fan's word and its bearing
constexpr double agrees_within_degrees = 45.0;
constexpr double most_declination_degrees = 30.0;  // where people farm; one fan told from both norths is no second fan

std::string spoken_hour(double hour) {
    const int whole = static_cast<int>(std::floor(hour));
    const int minutes = static_cast<int>(std::lround((hour - whole) * 60.0));
    std::string text = std::to_string(whole == 0 ? 12 : whole);
    if (minutes > 0) text.append(minutes < 10 ? ":0" : ":").append(std::to_string(minutes));
    return Words::tell("{1} o'clock", {text});
}

class FanReader {
public:
    explicit FanReader(Draft& draft) : d_(draft) {}

    void read() {
        for (std::size_t i = 0; i < d_.size(); ++i)
            if (d_.open_as(i, {Sense::fan})) read_word(i, false);
        for (std::size_t i = 0; i < d_.size(); ++i)
            if (d_.open_as(i, {Sense::fan_letter})) read_letter(i);
        for (std::size_t i = 0; i < d_.size(); ++i)
            if (d_.open_as(i, {Sense::throwing, Sense::facing, Sense::soil, Sense::bearing_word}) && !leads_from_plug(i))
                read_word(i, false);
        for (std::size_t i = 0; i < d_.size(); ++i)
            if (d_.open_as(i, {Sense::plug})) read_word(i, true);
        for (std::size_t i = 0; i < d_.size(); ++i)
            if (d_.open_as(i, {Sense::bearing_word, Sense::facing})) read_word(i, false);
        for (std::size_t i = 0; i < d_.size(); ++i)
            if (d_.open_as(i, {Sense::away})) read_word(i, false);
    }

    void read_bare() {
        if (d_.says_fan()) return;
        for (std::size_t i = 0; i < d_.size(); ++i) {
            const auto found = direction_at(d_.items, i, d_.lone_fan.has_value());
            if (!found || (d_.plural && !found->marked) || !stands_as_bearing(i, *found)) continue;
            std::size_t from = i;
            while (from > 0 && d_.open_as(from - 1, {Sense::toward, Sense::article, Sense::at}) && joined(d_.items, from))
                --from;
            const bool with_word = d_.lone_fan.has_value();
            if (d_.lone_fan) d_.skip(*d_.lone_fan);
            use(from, i + found->items, *found, with_word, false);
            return;
        }
    }

private:
    void read_letter(std::size_t i) {
        const auto found = joined(d_.items, i + 1) ? direction_at(d_.items, i + 1, true) : std::nullopt;
        if (found && (found->degrees || d_.items[i + 1].sense == Sense::at || d_.items[i + 1].sense == Sense::at_hour))
            use(i, i + 1 + found->items, *found, false, false);
    }

    // "plug bearing 95": the bearing is the plug's.
    [[nodiscard]] bool leads_from_plug(std::size_t i) const {
        if (!d_.is(i, {Sense::bearing_word, Sense::facing})) return false;
        for (std::size_t k = i; k > 0 && i - k < furthest && joined(d_.items, k); --k) {
            if (d_.open_as(k - 1, {Sense::plug})) return true;
            if (!d_.open_as(k - 1, {Sense::toward, Sense::article, Sense::filler, Sense::at, Sense::visible})) return false;
        }
        return false;
    }

    // "plug still to be seen, at 20 degrees": over a comma only what leads to a direction.
    [[nodiscard]] bool goes_on(std::size_t at) const {
        if (joined(d_.items, at)) return true;
        return d_.items[at].gap == Gap::comma && d_.is(at - 1, {Sense::visible}) &&
               d_.is(at, {Sense::toward, Sense::at, Sense::at_hour, Sense::bearing_word, Sense::of});
    }

    void read_word(std::size_t i, bool plug) {
        bool away = d_.is(i, {Sense::away});
        bool thrown = d_.is(i, {Sense::throwing});
        std::size_t at = i + 1;
        for (; at <= i + furthest && d_.open(at) && goes_on(at); ++at) {
            if (auto found = direction_at(d_.items, at, true)) {
                if (d_.is(i, {Sense::soil}) && !thrown && !found->from_word && !found->hour) return;
                if (!end_as_place(at, *found)) return;
                return use(i, place_end_, *found, d_.is(i, {Sense::fan, Sense::plug}), plug != away, plug);
            }
            if (d_.is(at, {Sense::of}) && !plug &&
                d_.linked_as(at + 1, {Sense::plug, Sense::mound, Sense::more, Sense::article})) {
                ++at;
                continue;
            }
            away = away || d_.is(at, {Sense::away});
            thrown = thrown || d_.is(at, {Sense::throwing});
            if (!d_.is(at, {Sense::toward, Sense::facing, Sense::throwing, Sense::article, Sense::side, Sense::bearing_word,
                            Sense::filler, Sense::soil, Sense::away, Sense::at, Sense::doubt, Sense::more, Sense::over,
                            Sense::visible, Sense::sighted}) &&
                !leads_between(at))
                break;
        }
        if (d_.is(i, {Sense::fan, Sense::plug}) && read_before(i, plug)) return;
        if (d_.is(i, {Sense::fan}) && !d_.lone_fan) d_.lone_fan = i;
    }

    // "fan off SE", "fan out to the SE", "fan in the direction of SE", "fan runs SE".
    [[nodiscard]] bool leads_between(std::size_t at) const {
        const std::string& word = d_.items[at].folded;
        if (d_.is(at, {Sense::of}) && d_.linked_as(at + 1, {Sense::side})) return true;
        if (d_.is(at, {Sense::by}) && d_.linked_as(at + 1, {Sense::side, Sense::article, Sense::compass})) return true;
        return d_.is(at, {Sense::preposition, Sense::passing}) || word == "out" || word == "off" || word == "down" ||
               word == "runs" || word == "up" || (d_.is(at, {Sense::of}) && d_.is(at - 1, {Sense::bearing_word}));
    }

    // "135 fan", "SE-facing fan", "NW side plug".
    bool read_before(std::size_t i, bool plug) {
        std::size_t end = i;
        while (end > 0 && d_.open_as(end - 1, {Sense::facing, Sense::side}) && joined(d_.items, end)) --end;
        const bool article = end > 1 && d_.open_as(end - 1, {Sense::article}) && joined(d_.items, end);
        if (article && joined(d_.items, end - 1)) --end;
        if (!d_.open(end) || !joined(d_.items, end)) return false;
        for (std::size_t back = furthest; back >= 1; --back) {
            if (back > end) continue;
            const auto found = direction_at(d_.items, end - back, d_.is(end - back, {Sense::at_hour}));
            if (!found || found->items != back) continue;
            if (article && !found->hour) continue;
            const bool counted = !found->from_word && !found->hour && !found->marked && d_.items[i].plural;
            if (counted) return false;
            use(end - back, i + 1, *found, true, plug, plug);
            return true;
        }
        return false;
    }

    // Where the words of the direction end: "N side of the mound" is one; false for a place ("N of the ditch").
    bool end_as_place(std::size_t at, Direction& found) {
        place_end_ = at + found.items;
        if (found.hour) return !d_.is(at, {Sense::relative}) || end_as_side(place_end_);
        if (d_.open_as(place_end_, {Sense::number}) && found.from_word && d_.items[place_end_].gap == Gap::comma &&
            std::abs(std::remainder(d_.items[place_end_].value - *found.degrees, 360.0)) <= 11.25) {
            const auto again = direction_at(d_.items, place_end_, true);  // "SW (225)" says it twice
            if (again && again->degrees) found.reference = again->reference;
            place_end_ += again ? again->items : 1;
            return true;
        }
        std::size_t next = place_end_;
        while (d_.linked_as(next, {Sense::side})) ++next;
        if (!d_.linked_as(next, {Sense::of})) {
            if (found.from_word) place_end_ = next;
            return true;
        }
        std::size_t thing = next + 1;
        while (d_.linked_as(thing, {Sense::article, Sense::filler})) ++thing;
        if (d_.linked_as(thing, {Sense::mound, Sense::plug, Sense::fan})) {
            place_end_ = thing + 1;
            return true;
        }
        if (thing > next + 1 && d_.items[thing - 1].folded == "it") {
            place_end_ = thing;
            return true;
        }
        return !found.from_word;
    }

    // "left of the path" is one, "left of the post" a place.
    bool end_as_side(std::size_t next) {
        const bool of = d_.linked_as(next, {Sense::of});
        std::size_t thing = of ? next + 1 : next;
        while (d_.linked_as(thing, {Sense::article, Sense::filler})) ++thing;
        const auto is_way = [&] {
            using namespace std::string_view_literals;
            constexpr std::array ways{"path"sv,   "track"sv, "trail"sv, "line"sv, "route"sv,  "walk"sv, "travel"sv,
                                      "camino"sv, "ruta"sv,  "senda"sv, "paso"sv, "marcha"sv, "me"sv,   "mi"sv};
            return d_.open(thing) && joined(d_.items, thing) &&
                   std::find(ways.begin(), ways.end(), d_.items[thing].folded) != ways.end();
        };
        if (is_way()) {
            place_end_ = thing + 1;
            return true;
        }
        return !d_.linked_as(thing, {Sense::plain, Sense::crusher, Sense::growth});
    }

    void use(std::size_t from, std::size_t to, const Direction& found, bool with_word, bool reversed, bool plug = false) {
        if (found.hour) return use_hour(from, to, *found.hour, with_word, reversed, plug);
        const double written = *found.degrees;
        if (!(written >= 0.0 && written <= 360.0)) {
            d_.reading.problems.push_back(
                Words::tell("the bearing {1} is not within 0 to 360; no fan is taken from it", {shown(written)}));
            return d_.take(from, to, NotePartKind::fan, Words::tell("no bearing: {1}", {shown(written)}));
        }
        const double degrees = std::fmod(written + (reversed ? 180.0 : 0.0), 360.0);
        std::string value = found.reference == 1   ? Words::tell("fan {1} magnetic", {shown(degrees)})
                            : found.reference == 2 ? Words::tell("fan {1} true", {shown(degrees)})
                                                   : Words::tell("fan {1}", {shown(degrees)});
        if (plug) value = Words::tell("{1}, from the plug at {2}", {value, shown(written == 360.0 ? 0.0 : written)});
        d_.take(from, to, NotePartKind::fan, value);
        if (found.range)
            d_.reading.problems.push_back(
                Words::tell("the fan is noted as a range; its middle, {1}, is used", {shown(degrees)}));
        keep(degrees, found.reference, with_word, plug);
    }

    void keep(double degrees, int reference, bool with_word, bool plug) {
        const bool magnetic = reference == 1;
        NoteReading& reading = d_.reading;
        const auto& earlier = reading.fan_degrees ? reading.fan_degrees : reading.magnetic_fan_degrees;
        if (earlier) {
            const double apart = std::abs(std::remainder(*earlier - degrees, 360.0));
            const bool same_north = magnetic == reading.magnetic_fan_degrees.has_value();
            if (plug || reading.from_plug) {
                if (apart > agrees_within_degrees)
                    reading.problems.push_back(
                        Words::tell("the fan and the plug do not lie opposite each other; the first noted is used"));
            } else if (apart > (same_north ? 0.0 : most_declination_degrees)) {
                reading.problems.push_back(Words::tell("a second fan, {1}, is noted; the first is used", {shown(degrees)}));
            }
            return;
        }
        (magnetic ? reading.magnetic_fan_degrees : reading.fan_degrees) = degrees;
        reading.clock_hour.reset();
        reading.says_north = reference != 0;
        reading.fan_word = with_word;
        reading.from_plug = plug;
    }

    void use_hour(std::size_t from, std::size_t to, double hour, bool with_word, bool reversed, bool plug) {
        hour = std::fmod(hour + (reversed ? 6.0 : 0.0), 12.0);
        d_.take(from, to, NotePartKind::fan,
                plug ? Words::tell("fan at {1}, from the plug", {spoken_hour(hour)})
                     : Words::tell("fan at {1}", {spoken_hour(hour)}));
        NoteReading& reading = d_.reading;
        if (reading.clock_hour && std::abs(std::remainder(*reading.clock_hour - hour, 12.0)) > (plug ? 1.5 : 0.0))
            reading.problems.push_back(
                Words::tell("a second fan, at {1}, is noted; the first is used", {spoken_hour(hour)}));
        if (d_.says_fan()) return;  // a bearing goes before the clock
        reading.clock_hour = hour;
        reading.fan_word = with_word;
        reading.from_plug = plug;
    }

    [[nodiscard]] bool stands_as_bearing(std::size_t i, const Direction& found) const {
        const std::size_t next = i + found.items;
        std::size_t first = i;
        while (first > 0 && d_.open_as(first - 1, {Sense::toward, Sense::article}) && joined(d_.items, first)) --first;
        if (is_label(i, found) || may_be_count(i, found)) return false;
        std::size_t end = next;
        while (d_.open_as(end, {Sense::doubt, Sense::filler})) ++end;
        if (first == 0 && end == d_.size()) return true;
        if (d_.open(end) && !d_.starts_clause(end) && end != d_.lone_fan &&
            !d_.is(end, {Sense::fresh, Sense::older, Sense::crushed, Sense::mound, Sense::animal, Sense::surface_plug}))
            return false;  // "N side of the ditch" tells where, not which way
        if (d_.lone_fan) return true;
        if (said(d_.freshness, end) || (first > 0 && said(d_.freshness, first - 1))) return true;
        const bool clear = found.from_word || found.marked || found.hour || three_digits(i);
        if (!clear || (first > 0 && d_.is(first - 1, {Sense::mention}))) return false;
        if ((said(d_.sign, end) && joined(d_.items, end)) ||
            (first > 0 && said(d_.sign, first - 1) && joined(d_.items, first)))
            return true;
        return d_.starts_clause(first) && (end == d_.size() || d_.starts_clause(end)) &&
               (first == 0 || d_.reading.freshness || d_.reading.kind || d_.reading.count);
    }
    // "3 new": of what, is not said.
    [[nodiscard]] bool may_be_count(std::size_t i, const Direction& found) const {
        return !found.from_word && !found.marked && !found.hour && d_.items[i].folded.size() == 1 && !d_.lone_fan &&
               i + 1 < d_.size() && joined(d_.items, i + 1) && d_.is(i + 1, {Sense::fresh, Sense::older, Sense::crushed});
    }
    // "row 12", "flag 7": the number of a thing.
    [[nodiscard]] bool is_label(std::size_t i, const Direction& found) const {
        if (found.from_word || found.marked || found.hour || three_digits(i) || i == 0 || !joined(d_.items, i)) return false;
        return d_.is(i - 1, {Sense::plain, Sense::mound, Sense::digging, Sense::crusher, Sense::group}) &&
               !d_.items[i - 1].plural;
    }
    [[nodiscard]] static bool said(const std::vector<bool>& read, std::size_t i) { return i < read.size() && read[i]; }
    [[nodiscard]] bool three_digits(std::size_t i) const {
        return d_.items[i].sense == Sense::number && d_.items[i].folded.size() >= 3;
    }

    Draft& d_;
    std::size_t place_end_ = 0;
};

}  // namespace

void read_no_fan(Draft& d) {
    const auto between = {Sense::visible, Sense::filler, Sense::article, Sense::sighted, Sense::toward};
    for (std::size_t i = 0; i < d.size(); ++i) {
        if (!d.open_as(i, {Sense::fan})) continue;
        std::size_t from = i;
        std::size_t to = i + 1;
        bool none = false;
        for (std::size_t back = i; back > 0 && i - back < 4 && joined(d.items, back) && !none; --back) {
            none = d.open_as(back - 1, {Sense::negation, Sense::gone, Sense::none});
            if (none) from = back - 1;
            if (!d.open_as(back - 1, between)) break;
        }
        std::size_t next = to;
        while (next < i + 4 && d.linked_as(next, {Sense::filler, Sense::article, Sense::toward, Sense::doubt})) ++next;
        if (d.linked_as(next, {Sense::gone, Sense::none})) {
            none = true;
            to = next + 1;
        } else if (d.linked_as(next, {Sense::negation})) {
            std::size_t seen = next + 1;
            while (seen < next + 4 && d.linked_as(seen, {Sense::filler, Sense::article})) ++seen;
            if (d.linked_as(seen, {Sense::visible, Sense::sighted, Sense::hit})) {
                none = true;
                to = seen + 1;
            } else if (seen > next + 1 && d.starts_clause(seen)) {
                none = true;
                to = seen;  // "no se ve"
            } else if (d.starts_clause(next + 1)) {
                none = true;
                to = next + 1;
            }
        } else if (none && next < d.size() && d.linked_as(next, {Sense::visible, Sense::sighted, Sense::hit})) {
            to = next + 1;
        } else if (none && d.open(to) && joined(d.items, to) && d.items[to].folded == "left") {
            ++to;  // "no fan left"
        } else if (!none && d.open(next) && d.items[next].folded == "?" && next + 1 == d.size()) {
            none = true;
            to = next + 1;
        }
        if (!none) continue;
        d.take(from, to, NotePartKind::no_fan, Words::tell("no fan"));
        d.reading.no_fan = true;
    }
}

void read_fans(Draft& draft) { FanReader(draft).read(); }

void read_bare_bearing(Draft& draft) { FanReader(draft).read_bare(); }

}  // namespace plugside::note_words
