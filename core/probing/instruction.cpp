#include "core/probing/instruction.h"

#include <cmath>

namespace plugside {

namespace {

// A step is read finer than a tape's whole inches and centimetres, since it is laid off again and again: "2 1/4 in", "5.7
// cm".
std::string step_reading(Metres step, LengthUnits units) {
    if (units == LengthUnits::metres) {
        const long millimetres = std::lround(step.value() * 1000.0);
        const std::string whole = std::to_string(millimetres / 10);
        return whole + (millimetres % 10 == 0 ? "" : "." + std::to_string(millimetres % 10)) + " cm";
    }
    const long quarters = std::lround(step.inches() * 4.0);
    constexpr const char* parts[] = {"", " 1/4", " 1/2", " 3/4"};
    return std::to_string(quarters / 4) + parts[quarters % 4] + " in";
}

// "Probe there first, then 2 in nearer, 2 in farther and so on, up to 10 in either way."
std::string rungs_in_words(const ProbeSite& site, const char* one_way, const char* other_way, LengthUnits units) {
    if (site.rungs.size() <= 1) return "Probe there.";
    const std::string step = step_reading(site.ladder.step, units);
    return "Probe there first, then " + step + " " + one_way + ", " + step + " " + other_way + " and so on, up to " +
           tape_reading(site.ladder.half_length, units) + " either way.";
}

std::string sideways(Metres across, LengthUnits units) {
    return tape_reading(Metres::of(std::abs(across.value())), units) +
           (across.value() < 0.0 ? " to the left" : " to the right");
}

// Less than half a centimetre is nothing that a tape shows.
bool negligible(Metres length) { return std::abs(length.value()) < 0.005; }

}  // namespace

std::string instruction(const ProbeSite& site, const Survey& survey, LengthUnits units) {
    const std::string from = survey.mounds[site.from_mound].name;
    const std::string drop = " A sudden drop of about " + tape_reading(Metres::from_inches(2.0), units) + " is the run.";
    const std::string towards =
        std::to_string(std::lround(site.axis.degrees()) % 360) + "\u00B0 (" + compass_point(site.axis) + ")";
    const Ladder& ladder = site.ladder;
    if (!site.to_mound) {
        std::string text = "From the plug of " + from + " tape " + tape_reading(ladder.along, units) +
                           " straight away from the fan, towards " + towards;
        if (!negligible(ladder.across)) text += ", then " + sideways(ladder.across, units);
        return text + ". " + rungs_in_words(site, "nearer the plug", "farther out", units) + drop;
    }
    std::string text = "Tape from the plug of " + from + " to the plug of " + survey.mounds[*site.to_mound].name +
                       ", towards " + towards + ". At " + tape_reading(ladder.along, units);
    text += negligible(ladder.across) ? " on the tape is the middle"
                                      : " step " + sideways(ladder.across, units) + " of the tape";
    return text + ". " + rungs_in_words(site, "to the left", "to the right", units) +
           (site.across_gap
                ? " The row is wide because neither plug shows where the run leaves: it lies across the gap, square to the "
                  "tape."
                : " The row lies across the tape.") +
           drop;
}

}  // namespace plugside
