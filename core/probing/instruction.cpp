#include "core/probing/instruction.h"

#include <cmath>

#include "core/words/words.h"

namespace plugside {

namespace {

// A step is read finer than a tape's whole inches and centimetres, since it is laid off again and again: "2 1/4 in", "5.7
// cm".
std::string step_reading(Metres step, LengthUnits units) {
    if (units == LengthUnits::metres) {
        const long millimetres = std::lround(step.value() * 1000.0);
        const std::string whole = std::to_string(millimetres / 10);
        return Words::decimal(whole + (millimetres % 10 == 0 ? "" : "." + std::to_string(millimetres % 10))) + " cm";
    }
    const long quarters = std::lround(step.inches() * 4.0);
    constexpr const char* parts[] = {"", " 1/4", " 1/2", " 3/4"};
    return Words::tell("{1} in", {std::to_string(quarters / 4) + parts[quarters % 4]});
}

// Less than half a centimetre is nothing that a tape shows.
bool negligible(Metres length) { return std::abs(length.value()) < 0.005; }

enum class RowLies { along_the_lateral, across_the_tape };

std::string rungs_in_words(const ProbeSite& site, RowLies lies, LengthUnits units) {
    if (site.rungs.size() <= 1) return Words::tell("Probe there.");
    const std::string step = step_reading(site.ladder.step, units);
    const std::string reach = tape_reading(site.ladder.half_length, units);
    if (lies == RowLies::along_the_lateral)
        return Words::tell("Probe there first, then {1} nearer the plug, {1} farther out and so on, up to {2} either way.",
                           {step, reach});
    return Words::tell("Probe there first, then {1} to the left, {1} to the right and so on, up to {2} either way.",
                       {step, reach});
}

std::string sideways(Metres across, LengthUnits units) { return tape_reading(Metres::of(std::abs(across.value())), units); }

std::string from_the_plug(const ProbeSite& site, const std::string& from, const std::string& towards, LengthUnits units) {
    const Ladder& ladder = site.ladder;
    const std::string along = tape_reading(ladder.along, units);
    if (negligible(ladder.across))
        return Words::tell("From the plug of {1} tape {2} straight away from the fan, towards {3}.", {from, along, towards});
    const std::string aside = sideways(ladder.across, units);
    if (ladder.across.value() < 0.0)
        return Words::tell("From the plug of {1} tape {2} straight away from the fan, towards {3}, then {4} to the left.",
                           {from, along, towards, aside});
    return Words::tell("From the plug of {1} tape {2} straight away from the fan, towards {3}, then {4} to the right.",
                       {from, along, towards, aside});
}

std::string middle_of_row(const Ladder& ladder, LengthUnits units) {
    const std::string along = tape_reading(ladder.along, units);
    if (negligible(ladder.across)) return Words::tell("At {1} on the tape is the middle.", {along});
    const std::string aside = sideways(ladder.across, units);
    if (ladder.across.value() < 0.0) return Words::tell("At {1} step {2} to the left of the tape.", {along, aside});
    return Words::tell("At {1} step {2} to the right of the tape.", {along, aside});
}

}  // namespace

std::string instruction(const ProbeSite& site, const Survey& survey, LengthUnits units) {
    const std::string from = survey.mounds[site.from_mound].name;
    const std::string drop =
        Words::tell("A sudden drop of about {1} is the run.", {tape_reading(Metres::from_inches(2.0), units)});
    const std::string towards =
        std::to_string(std::lround(site.axis.degrees()) % 360) + "\u00B0 (" + compass_point(site.axis) + ")";
    if (!site.to_mound)
        return from_the_plug(site, from, towards, units) + " " + rungs_in_words(site, RowLies::along_the_lateral, units) +
               " " + drop;
    const std::string tape = Words::tell("Tape from the plug of {1} to the plug of {2}, towards {3}.",
                                         {from, survey.mounds[*site.to_mound].name, towards});
    const std::string row =
        site.across_gap
            ? Words::tell(
                  "The row is wide because neither plug shows where the run leaves: it lies across the gap, square "
                  "to the tape.")
            : Words::tell("The row lies across the tape.");
    return tape + " " + middle_of_row(site.ladder, units) + " " + rungs_in_words(site, RowLies::across_the_tape, units) +
           " " + row + " " + drop;
}

}  // namespace plugside
