// Situations, judged by hand from the facts of the trade: what stops, what holds back, what is asked for.
//
// what:    the situation; begins from a field where everything is answered and nothing speaks against a set (work_situations.h).
// changes: words of `change_by_word` in judged_situations_test.cpp, apart by a blank.
// stops, holds_back, minds: ids of what holds, apart by a blank, in the order of the table of cautions; without what holds at every set, and
//          at every set with bait.
// not_known: ids of the rules, of any weight, that cannot be judged.
// why:     the fact: a row of section 4 of the trade's notes by its source, with its tag.
#pragma once

#include <array>

namespace plugside::test {

struct JudgedByHand {
    const char* what;
    const char* method;
    const char* changes;
    const char* stops;
    const char* holds_back;
    const char* minds;
    const char* not_known;
    const char* why;
};

inline constexpr const char* moisture = "zinc phosphide loses strength in moisture [practice]";
inline constexpr const char* underground = "bait is put below the ground only [read: bait labels]";
inline constexpr const char* ask_first = "strychnine: restricted, below ground, withdrawn in places: ask first [read: Montana; memory]";
inline constexpr const char* licensed = "phosphide: licensed applicator, written plan before every job [read: federal label text, 2018]";
inline constexpr const char* hundred_feet =
    "phosphide: no part of the system within 100 ft of a building where people or domestic animals may be [read], from the system [memory]";
inline constexpr const char* properties = "phosphide: not on the property of homes, schools (athletic fields apart), nursing homes, day care, "
                                          "hospitals [read: federal label text, 2018]";
inline constexpr const char* soil = "phosphide: below 40 F (4.4 C), or dry and loose: hold back [read: the same label; Baldwin]";
inline constexpr const char* reached = "people, children, pets, stock: cover every hole, no open set, signs [practice]";
inline constexpr const char* hands = "gloves by the tool in use [practice]";
inline constexpr const char* wildlife = "protected gophers and burrow users: ask the agency before anything is set [read]";
inline constexpr const char* trap_law = "trap law differs by state and town [memory]";
inline constexpr const char* one_call = "ask the one-call service before probing near lines [practice]";
inline constexpr const char* decides = "the label, local rules and a licensed applicator decide";

inline constexpr std::array<JudgedByHand, 64> judged_by_hand{{
    {"zinc phosphide in wet soil", "bait-probe-hole", "zinc wet", "", "zinc-phosphide-wet", "", "", moisture},
    {"zinc phosphide, damp soil, dry days ahead", "bait-probe-hole", "zinc", "", "", "", "", moisture},
    {"zinc phosphide, rain due", "bait-opened-lateral", "zinc rain", "", "zinc-phosphide-wet", "", "", moisture},
    {"zinc phosphide, irrigation due", "bait-dispensing-probe", "zinc irrigation", "", "zinc-phosphide-wet", "", "", moisture},
    {"zinc phosphide, nobody looked at the forecast", "bait-probe-hole", "zinc rain?", "", "", "", "zinc-phosphide-wet", moisture},
    {"zinc phosphide, the forecast is of the day before yesterday", "bait-probe-hole", "zinc rain-old", "", "", "", "zinc-phosphide-wet", moisture},
    {"zinc phosphide, wet soil, and the forecast not known", "bait-probe-hole", "zinc wet rain?", "", "zinc-phosphide-wet", "", "", moisture},
    {"an anticoagulant in wet soil before rain", "bait-probe-hole", "wet rain", "", "", "", "", moisture},
    {"traps in wet soil before rain", "paired-traps", "wet rain", "", "", "", "", moisture},
    {"zinc phosphide, the table has rain in two days", "bait-probe-hole", "zinc table-wet", "", "zinc-phosphide-wet", "", "", moisture},
    {"zinc phosphide, the table is dry for all days, the plain answer said rain", "bait-probe-hole", "zinc rain table-dry", "", "", "", "", moisture},
    {"a bait whose ingredient nobody typed, wet soil", "bait-probe-hole", "ingredient? wet", "", "", "", "zinc-phosphide-wet label-for-method", moisture},
    {"own way: bait left at the mouth of the hole", "bait-probe-hole", "on-surface", "bait-surface", "", "", "", underground},
    {"own way that does not say where the bait goes", "bait-probe-hole", "placement?", "", "", "", "bait-surface", underground},
    {"bait by spoon in the opened lateral", "bait-opened-lateral", "", "", "", "", "", underground},
    {"strychnine, the state's office not asked", "bait-probe-hole", "strychnine office-not-asked", "", "strychnine", "", "strychnine-withdrawn", ask_first},
    {"strychnine, the office has named its terms", "bait-probe-hole", "strychnine restricted", "", "", "", "", ask_first},
    {"strychnine, withdrawn here", "bait-probe-hole", "strychnine office-withdrawn", "strychnine-withdrawn", "strychnine", "", "", ask_first},
    {"strychnine of restricted use, no licence", "bait-probe-hole", "strychnine restricted no-licence", "restricted-licence", "", "", "", ask_first},
    {"strychnine, office not known", "bait-probe-hole", "strychnine office?", "", "", "", "strychnine strychnine-withdrawn", ask_first},
    {"tablets with licence and plan, far from all", "fumigant", "", "", "", "", "", licensed},
    {"tablets without a licence", "fumigant", "no-licence", "fumigant-licence restricted-licence", "", "", "", licensed},
    {"tablets, the licence ran out last week", "fumigant", "licence-out", "fumigant-licence restricted-licence", "", "", "", licensed},
    {"tablets, licence not told", "fumigant", "licence?", "", "", "", "fumigant-licence restricted-licence", licensed},
    {"tablets, no management plan yet", "fumigant", "no-plan", "fumigant-plan", "", "", "", licensed},
    {"tablets, plan not known", "fumigant", "plan?", "", "", "", "fumigant-plan", licensed},
    {"magnesium phosphide without a plan", "fumigant", "magnesium no-plan", "fumigant-plan", "", "", "", licensed},
    {"smoke cartridge without a licence or a plan", "fumigant", "cartridge no-licence no-plan", "", "", "", "", licensed},
    {"tablets, a house 20 m from the run", "fumigant", "building20", "building", "", "", "", hundred_feet},
    {"tablets, a house 31 m from the run, whose place is known to half a metre", "fumigant", "building31", "building", "", "", "", hundred_feet},
    {"tablets, a house 32 m from the run", "fumigant", "building32", "", "", "", "", hundred_feet},
    {"tablets, a house 36 m from a run whose place is known to 4 m", "fumigant", "vague building36", "building", "", "", "", hundred_feet},
    {"tablets, a house at the far end of the system", "fumigant", "long building-far", "building", "", "", "", hundred_feet},
    {"tablets, a shed 20 m off that neither people nor animals are in", "fumigant", "building20 empty", "", "", "", "", hundred_feet},
    {"tablets, a shed 20 m off, its use not known", "fumigant", "building20 empty?", "building", "", "", "", hundred_feet},
    {"tablets, not every building is drawn", "fumigant", "not-all-drawn", "", "", "", "building label-distance", hundred_feet},
    {"traps 20 m from a house", "paired-traps", "building20", "", "", "", "", hundred_feet},
    {"bait 20 m from a house", "bait-probe-hole", "building20", "", "", "", "", hundred_feet},
    {"tablets on the land of a home", "fumigant", "home", "fumigant-property", "", "", "", properties},
    {"tablets on the lawn of a school", "fumigant", "school lawn", "fumigant-property", "", "", "", properties},
    {"tablets on the athletic field of a school", "fumigant", "school-and-field sports", "", "", "", "", properties},
    {"tablets on a school's land, part of it the athletic field, use not known", "fumigant", "school-and-field use?", "", "", "", "fumigant-property", properties},
    {"tablets beside a day care's athletic field", "fumigant", "day-care-and-field sports", "fumigant-property", "", "", "", properties},
    {"tablets, nobody asked whose property it is", "fumigant", "property?", "", "", "", "fumigant-property", properties},
    {"smoke cartridge on the land of a home", "fumigant", "cartridge home", "", "", "", "", properties},
    {"tablets in soil of 4 C", "fumigant", "cold", "", "fumigant-soil", "", "", soil},
    {"tablets in dry sand", "fumigant", "dry sand", "", "fumigant-soil", "", "", soil},
    {"tablets in dry cracked clay", "fumigant", "dry clay cracks", "", "fumigant-soil", "", "", soil},
    {"tablets in damp sand", "fumigant", "sand", "", "", "", "", soil},
    {"tablets in dry loam without cracks", "fumigant", "dry", "", "", "", "", soil},
    {"tablets, warmth of the soil not known", "fumigant", "warmth?", "", "", "", "fumigant-soil", soil},
    {"traps where children come", "paired-traps", "children", "", "people-and-animals", "", "", reached},
    {"own way: open traps where a dog comes", "paired-traps", "open pets", "open-set", "people-and-animals", "", "", reached},
    {"own way: open traps where nobody comes", "paired-traps", "open", "", "", "", "", reached},
    {"traps, the stock left last week", "trap-in-lateral", "stock-left", "", "", "", "", reached},
    {"bait by dispensing probe, gloves for the spoon alone are typed", "bait-dispensing-probe", "spoon-gloves", "", "", "tool-gloves", "", hands},
    {"a protected gopher is known in the county", "paired-traps", "protected", "protected-known", "protected-species", "", "", wildlife},
    {"the agency was asked and has not answered", "trap-in-lateral", "agency-awaited", "", "protected-species", "", "protected-known protected-terms", wildlife},
    {"traps, the law not read; a gas line 4 m off, not called", "trap-in-lateral", "law-unread line4 not-called", "utility", "kill-trap-law", "near-keep-clear utilities-ask", "", trap_law},
    {"bait without a label, a marked gas line 4 m off", "bait-probe-hole", "no-label line4", "label-missing", "", "near-keep-clear", "tool-gloves restricted-licence label-for-method label-exceeded label-distance label-site label-old label-re-entry", decides},
    {"tablets under the label of a bait", "fumigant", "zinc", "label-for-method", "", "", "", decides},
    {"tablets under the label of a bait, without a licence or a plan", "fumigant", "zinc no-licence no-plan", "restricted-licence label-for-method", "", "", "fumigant-licence fumigant-plan", decides},
    {"bait under the label of tablets, in wet soil", "bait-probe-hole", "aluminium wet", "label-for-method", "", "", "zinc-phosphide-wet", decides},
    {"tablets whose ingredient was called another one, its words say phosphide, no plan", "fumigant", "other-phosphide no-plan", "", "", "", "fumigant-plan label-for-method", licensed},
}};

}  // namespace plugside::test
