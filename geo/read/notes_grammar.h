// What a walker wrote beside a mark, read leniently, in English and Spanish: the fan, how fresh, whose sign, how many
// mounds, what the probe met, who was about; where in the text each was read; and what was not understood.
//
// Fan:       "fan 135", "fan SE", "abanico al sureste", "F135", "135 fan", "135 fresh", "soil thrown SE", "faces NW", or a
//            bearing that is the whole note; degrees clockwise from north, 0..360 (360 is 0); compass points in letters or
//            words, English or Spanish (O = oeste, west): 16, and 32 with by ("N by E", "NbE", "norte por este", "norte
//            cuarta al noreste"); "N45E" from north or south; "130-140" behind the word fan is its middle.
// Words:     numbers in words where a bearing or a length is told: "zero six zero", "two ten", "ciento treinta y cinco",
//            "ten degrees", "a foot". A single one below thirteen is none behind the word fan: it may be an hour.
// Keys:      "age: fresh", "n=3", "digger: vole", "people: 0": the word before the sign only says what is told.
// North:     "135M", "mag", "magnético" is magnetic, "135T", "V", "true", "verdadero" true; a bearing without either is
// taken
//            for a true one, and says_north is false. A lone M is metres only in probe results.
// Clock:     "fan at 3 o'clock", "abanico a las 3", "fan left" are told from the walking direction, 12 ahead (clock_hour).
// Reversed:  "plug NW", "tapón NO", "flat side NW", "points away from NW" mean a fan to the SE. Only compass points, degrees
//            and clock hours turn round: "points away from the fence" is not understood.
// A bare number or compass point is a bearing only beside the word fan, beside a freshness word, alone, or, as a compass
// point,
//            three digits, or with degrees or a north, between commas when the note says something of a mound; never
//            before a length's unit ("fan 12 in wide"), never a count ("3 fresh mounds"), never a place ("N side of the
//            ditch").
// Words of two meanings, settled by what stands beside them, never by case:
//            "no" is north-west behind a Spanish fan, plug or direction word ("tapón NO", "hacia el NO") and behind or
//            before Spanish freshness with nothing to deny ("fresco NO"); before anything it could deny ("abanico no
//            visible", "no fresco") and beside English it denies. Alone it is not understood. "o" is west behind a fan, plug
//            or direction word and at an end; between two words it is "or". "este" is east behind those words or alone,
//            "this" before a thing; so with "ese" (ESE, that). "se" is south-east, but not in "se ve" and the like; "so" is
//            south-west, but not before an English word. "in" is inches behind a number.
// Freshness: fresh, new, moist, ... / old, dry, weathered, ... / crushed, mown, ...; "2 days old": to one day fresh. "Not
// fresh"
//            is older; other denials are not read ("not old").
// Kind:      mole, ground squirrel, vole, surface plug, gopher, mound; other diggers are "other"; "not a mound" is "other".
// Probe:     hit or nothing, with the depth, and how far from the plug, where told with a unit: "probed, found at 14 in",
//            "sin galería".
// Times:     "today", "last week" are freshness when said of the mound, not when of a mowing, a probing or a visit.
// Crushed:   also by what did it ("tractor went over it", "lo pisaron las vacas"); covered in weeds is older.
// Range:     "between S and SW", "130 to 140" behind the word fan: the middle, within a right angle.
// Told over a pause: "Probed near the plug. Nothing.", "depth 20 cm" and "30 cm from the plug" of a probing told elsewhere;
//            "plug still to be seen, at 20 degrees".
// Things:    "needs a new blade", "old fence": no freshness, where the note says nothing else.
// Mentions:  people, pets, stock, wildlife, as said: "no dogs" too, which says what somebody looked for, and each of "no
//            dogs or kids".
// Total:     every text gives a reading; each word lies in a part, in a filler's span, or in the rest. Nothing throws.
// Spans:     bytes of the note, in order, not overlapping. With rules, what one rule put in has the span of what it
// replaced, so
//            several parts may share one.
// Text:      UTF-8; accents composed, combining, missing or Latin-1; case is of no account; a slip of one letter in a longer
//            word is forgiven, in one of four letters and in the word fan
//            a doubled or an exchanged one; so are vowels left out ("frsh") and Spanish written by ear ("biejo", "aplastao").
// Rest:      a preposition stays with a word that is not understood ("by willow"), and is a filler otherwise.
// Cost:      linear in the text. Source: our own grammar; what is noted: common practice of the trade.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/survey/mention.h"
#include "core/survey/mound.h"
#include "core/survey/note_rule.h"
#include "core/units/bearing.h"
#include "core/units/metres.h"

namespace plugside {

struct TextSpan {
    std::size_t begin = 0;
    std::size_t end = 0;
    friend bool operator==(TextSpan, TextSpan) = default;
};

enum class NotePartKind { fan, no_fan, freshness, sign, count, probe, mention };

struct NotePart {
    NotePartKind kind = NotePartKind::fan;
    TextSpan span;
    std::string value;  // "fan 135", "fan 315 magnetic", "fan at 3 o'clock", "fresh", "mole", "3 mounds", "pets: dog", ...
};

enum class NotedProbe { untold, hit, nothing };

struct ProbeNote {
    NotedProbe result = NotedProbe::untold;
    std::optional<Metres> depth;
    std::optional<Metres> distance;  // from the plug or mound
};

struct NoteReading {
    std::optional<double> fan_degrees;           // 0 <= degrees < 360, from true north
    std::optional<double> magnetic_fan_degrees;  // 0 <= degrees < 360, from magnetic north; then fan_degrees is absent
    std::optional<double> clock_hour;            // 0 <= hour < 12, 0 is ahead; then both of the above are absent
    bool fan_word = false;                       // the bearing stood with a word for the fan or the plug
    bool says_north = false;                     // the bearing said true or magnetic
    bool from_plug = false;                      // the fan was told by where the plug is
    bool no_fan = false;                         // the note says that no fan can be read
    std::optional<Freshness> freshness;
    std::optional<SignKind> kind;
    std::optional<int> count;  // mounds, 1..999
    std::optional<ProbeNote> probe;
    std::vector<NoteMention> mentions;
    std::vector<NotePart> parts;        // by place in the note
    std::vector<TextSpan> fillers;      // words that say nothing by themselves
    std::vector<TextSpan> rest_spans;   // words not understood
    std::string rest;                   // the same as text, one space between
    std::vector<std::string> problems;  // sentences about what was understood and could not be used
};

[[nodiscard]] NoteReading read_note(std::string_view note);

// The same with a walk's rules: each rule's words, found on word bounds, are read as what the rule says they mean. Longer
// rules go first; what a rule put in is not looked at again. A rule with an empty walk holds for every walk; one that means
// nothing makes its words fillers.
[[nodiscard]] NoteReading reread_note(std::string_view note, const std::string& walk, const std::vector<NoteRule>& rules);

// The named edge from the clock to a bearing: 12 is the walking direction, 3 to its right.
[[nodiscard]] Bearing fan_from_clock(double clock_hour, Bearing walking);

[[nodiscard]] std::string to_text(NotePartKind kind);  // "fan", "no fan", "freshness", "sign", "count", "probe", "mention"
[[nodiscard]] std::string to_text(NotedProbe result);  // "untold", "hit", "nothing"

// Whether a text is only a date and a time, as receivers write into a comment by themselves ("12-JUL-24 9:14:33AM").
[[nodiscard]] bool is_time_stamp(std::string_view text);

// Whether a mark's name or type is that of a thing on the way rather than of a sign ("gate", "Truck 2"), by its first word.
[[nodiscard]] bool names_a_thing(std::string_view text);

}  // namespace plugside
