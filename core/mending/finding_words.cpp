#include "core/mending/finding_words.h"

#include <algorithm>
#include <cmath>

#include "core/mending/sentences.h"
#include "core/words/words.h"

namespace plugside {

namespace {

Finding about(FindingKind kind, std::vector<std::string> marks, LocalPoint at, double sure) {
    Finding finding;
    finding.kind = kind;
    finding.id = finding_id(kind, marks);
    finding.marks = std::move(marks);
    finding.at = at;
    finding.sure = Probability::of(std::clamp(sure, 0.0, 1.0));
    return finding;
}

Mend mend_of(MendKind kind, std::vector<std::string> marks, std::string because = {}) {
    Mend mend;
    mend.kind = kind;
    mend.marks = std::move(marks);
    mend.because = std::move(because);
    return mend;
}

std::string speaks_for(SignKind kind, bool with_fan) {
    switch (kind) {
        case SignKind::mole:
            return with_fan ? Words::tell("That speaks for a mole, although a fan was read.")
                            : Words::tell("That speaks for a mole.");
        case SignKind::vole:
            return with_fan ? Words::tell("That speaks for a vole, although a fan was read.")
                            : Words::tell("That speaks for a vole.");
        default: break;
    }
    return with_fan ? Words::tell("That speaks for a ground squirrel, although a fan was read.")
                    : Words::tell("That speaks for a ground squirrel.");
}

std::string take_as(SignKind kind, bool one) {
    switch (kind) {
        case SignKind::mole:
            return one ? Words::tell("Look with the key of questions; take it as a mole's.")
                       : Words::tell("Look with the key of questions; take them as a mole's.");
        case SignKind::vole:
            return one ? Words::tell("Look with the key of questions; take it as a vole's.")
                       : Words::tell("Look with the key of questions; take them as a vole's.");
        default: break;
    }
    return one ? Words::tell("Look with the key of questions; take it as a ground squirrel's.")
               : Words::tell("Look with the key of questions; take them as a ground squirrel's.");
}

}  // namespace

std::vector<std::string> FindingWords::names(const std::vector<std::size_t>& marks) const {
    std::vector<std::string> result;
    for (const std::size_t mark : marks) result.push_back(name(mark));
    return result;
}

std::vector<std::string> FindingWords::fans_of_walk(std::size_t walk) const {
    std::vector<std::string> result;
    for (std::size_t i = walk_.walk_begin[walk]; i < walk_.walk_begin[walk + 1]; ++i)
        if (mound(i).fan) result.push_back(name(i));
    std::sort(result.begin(), result.end());
    return result;
}

LocalPoint FindingWords::middle_of_walk(std::size_t walk) const {
    const std::size_t begin = walk_.walk_begin[walk], end = walk_.walk_begin[walk + 1];
    if (begin == end) return {};
    const LocalPoint first = walk_.marks[begin].place.at;
    LocalVector sum;
    for (std::size_t i = begin; i < end; ++i) sum = sum + (walk_.marks[i].place.at - first);
    return first + sum * (1.0 / static_cast<double>(end - begin));
}

std::string FindingWords::fans_in_words(const std::vector<std::size_t>& marks) const {
    std::vector<Bearing> fans;
    for (const std::size_t mark : marks)
        if (mound(mark).fan) fans.push_back(*mound(mark).fan);
    const bool two = marks.size() == 2;
    if (fans.empty())
        return two ? Words::tell("Neither has a fan that could be read.")
                   : Words::tell("None has a fan that could be read.");
    if (fans.size() < marks.size()) return Words::tell("Not all of them have a fan.");
    double widest = 0.0;
    for (const Bearing fan : fans) widest = std::max(widest, std::abs(turn_degrees(fans.front(), fan)));
    const std::string way = direction_in_words(fans.front());
    if (widest <= 45.0) return two ? Words::tell("Both fans point {1}.", {way}) : Words::tell("All fans point {1}.", {way});
    return Words::tell("Their fans differ by {1}.", {in_degrees(widest)});
}

WeighedFinding FindingWords::of(const MarkGroup& group) const {
    std::vector<std::size_t> in_question(group.marks.begin() + 1, group.marks.end());
    const std::size_t stands = group.marks.front();
    std::vector<std::size_t> marks = in_question;
    marks.push_back(stands);
    Finding finding = about(FindingKind::double_mark, names(marks), group.mean.at, group.chance);
    const std::size_t first = in_question.front();
    const auto wait = seconds_between(walk_.marks[stands].place, walk_.marks[first].place);
    const double apart_m = distance_m(walk_.marks[first].place.at, walk_.marks[stands].place.at);
    if (in_question.size() == 1) {
        const std::string apart = in_metres(apart_m), time = wait ? in_time(std::abs(*wait)) : std::string();
        if (!wait)
            finding.found = Words::tell("{1} lies {2} from {3}.", {name(first), apart, name(stands)});
        else if (*wait >= 0.0)
            finding.found =
                Words::tell("{1} lies {2} from {3}, marked {4} later.", {name(first), apart, name(stands), time});
        else
            finding.found =
                Words::tell("{1} lies {2} from {3}, marked {4} before.", {name(first), apart, name(stands), time});
    } else {
        double widest_m = 0.0;
        for (const std::size_t mark : in_question)
            widest_m = std::max(widest_m, distance_m(walk_.marks[mark].place.at, walk_.marks[stands].place.at));
        finding.found =
            Words::tell("{1} lie within {2} of one another.", {listed(finding.marks), in_metres(std::max(widest_m, 0.1))});
    }
    const double sd_m = relative_sd_m(walk_.marks[first].place, walk_.marks[stands].place);
    finding.why = fans_in_words(group.marks) + " " +
                  Words::tell("Two marks of one mound, made so, often lie up to {1} apart.", {in_metres(2.0 * sd_m)});
    finding.proposed =
        group.marks.size() == 2
            ? Words::tell("Take both as one mound, between the places, under the name {1}.", {name(stands)})
            : Words::tell("Take them all as one mound, between the places, under the name {1}.", {name(stands)});
    finding.mend = mend_of(MendKind::one_mound, names(group.marks));
    finding.mend->to = {group.mean.at};
    finding.mend->position_sd = Metres::of(group.mean.own_sd_m);
    return {std::move(finding), static_cast<double>(in_question.size())};
}

WeighedFinding FindingWords::of(const MarkedBefore& match) const {
    std::vector<std::size_t> pair{match.earlier, match.later};
    put_standing_mark_first(survey_, walk_, pair);
    const LocalPoint later = walk_.marks[match.later].place.at, earlier = walk_.marks[match.earlier].place.at;
    // the standing mark keeps its own walk's shift, so that it stays in line with the marks made beside it
    const LocalPoint place =
        pair.front() == match.earlier ? midpoint(earlier, later - match.shift) : midpoint(later, earlier + match.shift);
    Finding finding = about(FindingKind::earlier_walk, {name(match.later), name(match.earlier)}, later, match.chance);
    finding.found = Words::tell("{1} lies {2} from {3} of {4}.",
                                {name(match.later), in_metres(distance_m(later, earlier)), name(match.earlier),
                                 walk_shown(survey_, walk_.marks[match.earlier].place.walk)});
    finding.why = Words::tell(
                      "Hereabouts the marks of the two walks lie {1} apart alike, and these two rest on one another "
                      "when that is taken off.",
                      {in_metres(match.shift.length_m())}) +
                  " " + fans_in_words(pair);
    finding.proposed = Words::tell("Take both as one mound, under the name {1}.", {name(pair.front())});
    finding.mend = mend_of(MendKind::one_mound, names(pair));
    finding.mend->to = {place};
    const double own_m =
        std::hypot(walk_.marks[match.later].place.error.own_m, walk_.marks[match.earlier].place.error.own_m);
    finding.mend->position_sd = Metres::of(own_m / 2.0);
    return {std::move(finding), 1.0};
}

WeighedFinding FindingWords::of(const ReversedFan& fan) const {
    const Mound& mark = mound(fan.mark);
    Finding finding = about(FindingKind::reversed_bearing, {mark.name}, mark.plug, fan.chance);
    finding.found = Words::tell("The fan of {1} points {2}, which puts its run {3} off the line of its neighbours' runs.",
                                {mark.name, direction_in_words(*mark.fan), in_metres(fan.out_m)});
    finding.why = Words::tell("Read from the other end, the run would lie {1} off the line between {2} and {3}.",
                              {in_metres(fan.out_turned_m), name(fan.one), name(fan.other)});
    finding.proposed = Words::tell("Turn the fan round, to {1}.", {direction_in_words(mark.fan->reversed())});
    finding.mend = mend_of(MendKind::fan, {mark.name});
    finding.mend->fan = mark.fan->reversed();
    return {std::move(finding), 0.3};
}

WeighedFinding FindingWords::of(const WrongEndWalk& walk) const {
    // 536 simulated walks of 40 to 300 fans, read rightly: twice the mean of the agreement over its variance is 1.13 to 1.23
    // whatever their number; turned round the sign changes. One walk in twenty is read from the wrong end: our assumption
    const double log_odds = -1.2 * walk.agreement - 2.9;
    Finding finding = about(FindingKind::reversed_bearing, {walk_name(survey_, walk.walk)}, middle_of_walk(walk.walk),
                            1.0 / (1.0 + std::exp(-log_odds)));
    finding.marks = fans_of_walk(walk.walk);
    finding.found = Words::tell("All {1} fans of {2} look as if they were read from the wrong end, towards the plug.",
                                {std::to_string(walk.fans), walk_shown(survey_, walk.walk)});
    finding.why = Words::tell(
        "Turned round, the runs that neighbouring mounds point back to lie in line with one another far better.");
    finding.proposed = Words::tell("Ask the walker which end was read; turn all fans of this walk round.");
    finding.mend = mend_of(MendKind::turn_fans, finding.marks);
    finding.mend->turn_degrees = 180.0;
    return {std::move(finding), 0.5 * static_cast<double>(walk.fans)};
}

WeighedFinding FindingWords::of(const CompassOffset& offset) const {
    const double sds = std::abs(offset.turn_degrees) / std::max(offset.sd_degrees, 0.1);
    Finding finding = about(FindingKind::compass_offset, {walk_name(survey_, offset.walk)}, middle_of_walk(offset.walk),
                            1.0 - std::exp(-0.5 * sds * sds) / (std::exp(-0.5 * sds * sds) + 0.05));
    finding.marks = fans_of_walk(offset.walk);
    const bool clockwise = offset.turn_degrees > 0.0;
    const std::string walk = walk_shown(survey_, offset.walk), turn = in_degrees(std::abs(offset.turn_degrees));
    const std::string give = in_degrees(std::max(std::ceil(2.0 * offset.sd_degrees), 1.0));
    finding.found =
        clockwise
            ? Words::tell("The fans of {1} lie turned by about {2} clockwise, give or take {3}.", {walk, turn, give})
            : Words::tell("The fans of {1} lie turned by about {2} anticlockwise, give or take {3}.", {walk, turn, give});
    finding.why = Words::tell(
        "Fans stand across the runs, and the {1} fans of this walk that have neighbours stand across best when turned back. "
        "A "
        "compass beside iron does this, or magnetic bearings taken for true ones.",
        {std::to_string(offset.fans)});
    finding.proposed =
        clockwise ? Words::tell("Ask how the bearings were taken; turn all fans of this walk by {1} anticlockwise.", {turn})
                  : Words::tell("Ask how the bearings were taken; turn all fans of this walk by {1} clockwise.", {turn});
    finding.mend = mend_of(MendKind::turn_fans, finding.marks);
    finding.mend->turn_degrees = -std::round(10.0 * offset.turn_degrees) / 10.0;
    return {std::move(finding), static_cast<double>(offset.fans) * std::abs(offset.turn_degrees) / 90.0};
}

WeighedFinding FindingWords::of(const TrackJump& jump) const {
    const TrackPoint& point = survey_.walks[jump.walk].segments[jump.segment][jump.begin];
    const std::string number = std::to_string(jump.begin + 1);
    const std::string when = point.time ? moment_in_utc(*point.time) : "point " + number;
    const std::string when_shown = point.time ? time_of_day(*point.time) : Words::tell("point {1}", {number});
    Finding finding = about(FindingKind::jump, {}, jump.at, 0.95);
    finding.id = to_text(FindingKind::jump) + ": " + walk_name(survey_, jump.walk) + ", " + when;
    finding.found = Words::tell("The track of {1} springs {2} away and back at {3}.",
                                {walk_shown(survey_, jump.walk), in_metres(jump.out_m), when_shown});
    finding.why = Words::tell("Nobody walks so fast; the receiver lost itself for a moment.");
    finding.proposed = Words::tell("Nothing is to be done: no mark hangs on it.");
    return {std::move(finding), 0.05};
}

WeighedFinding FindingWords::of(const JumpedMark& jump) const {
    const Mound& mark = mound(jump.mark);
    Finding finding = about(FindingKind::jump, {mark.name}, mark.plug, jump.should_be ? 0.9 : 0.75);
    if (jump.should_be) {
        finding.found =
            Words::tell("{1} lies {2} from where the track was when it was made.", {mark.name, in_metres(jump.out_m)});
        finding.why = Words::tell("Nine in ten marks of this walk lie within {1} of the track.",
                                  {in_metres(std::max(jump.usual_m, 0.1))});
        finding.proposed = Words::tell("Put it where the track was at that time.");
        finding.mend = mend_of(MendKind::move, {mark.name});
        finding.mend->to = {*jump.should_be};
    } else {
        finding.found =
            Words::tell("{1} lies {2} or more from the marks made before and after it.", {mark.name, in_metres(jump.out_m)});
        finding.why = Words::tell("No walker gets there and back in that time.");
        finding.proposed = Words::tell("Set it aside; where it stood is not known.");
        finding.mend = mend_of(MendKind::set_aside, {mark.name}, Words::later("the receiver jumped when it was marked"));
    }
    return {std::move(finding), 1.0};
}

WeighedFinding FindingWords::of(const FarMark& far) const {
    const Mound& mark = mound(far.mark);
    Finding finding = about(FindingKind::far_from_track, {mark.name}, mark.plug, 0.6);
    finding.found = Words::tell("{1} lies {2} from the nearest part of the track of {3}.",
                                {mark.name, in_metres(far.out_m), walk_shown(survey_, walk_.marks[far.mark].place.walk)});
    finding.why = Words::tell("A mark is made where the walker stands, and the walker was not there.");
    finding.proposed = Words::tell("Set it aside, unless it was marked from afar.");
    finding.mend = mend_of(MendKind::set_aside, {mark.name}, Words::later("far from where the walker was"));
    return {std::move(finding), 0.8};
}

WeighedFinding FindingWords::of(const FrozenRun& frozen) const {
    std::vector<std::size_t> rest(frozen.marks.begin() + 1, frozen.marks.end());
    Finding finding = about(FindingKind::frozen_receiver, names(rest), mound(frozen.marks.front()).plug,
                            frozen.should_be.empty() ? 0.85 : 0.95);
    finding.found =
        Words::tell("{1} are all marked at one place, over {2}.", {listed(names(frozen.marks)), in_time(frozen.seconds)});
    if (!frozen.should_be.empty()) {
        finding.why = Words::tell("The track went on in the meantime; the receiver gave the marks an old place.");
        finding.proposed = Words::tell("Put each where the track was at its time.");
        finding.mend = mend_of(MendKind::move, names(frozen.marks));
        finding.mend->to = frozen.should_be;
    } else {
        finding.why = Words::tell("The clock went on and the place did not: the receiver stood still.");
        finding.proposed =
            Words::tell("Keep {1} and set the others aside; where they stood is not known.", {name(frozen.marks.front())});
        finding.mend =
            mend_of(MendKind::set_aside, names(rest), Words::later("the receiver stood still when it was marked"));
    }
    return {std::move(finding), static_cast<double>(rest.size())};
}

WeighedFinding FindingWords::of(const OutsideMark& outside) const {
    const Mound& mark = mound(outside.mark);
    const bool near = outside.edge && outside.inside_chance >= 0.3;
    Finding finding = about(FindingKind::outside_field, {mark.name}, mark.plug,
                            near ? outside.inside_chance : 1.0 - outside.inside_chance);
    finding.found =
        outside.out_m ? Words::tell("{1} lies {2} outside the field.", {mark.name, in_metres(std::max(*outside.out_m, 0.1))})
                      : Words::tell("{1} lies far outside the field.", {mark.name});
    const PlaceError& error = walk_.marks[outside.mark].place.error;
    if (near) {
        const LocalVector way = *outside.edge - mark.plug;
        const double way_m = way.length_m();
        finding.why = Words::tell("The receiver is often out by {1}, so it may stand inside.",
                                  {in_metres(std::hypot(error.own_m, error.shared_m))});
        finding.proposed = Words::tell("Put it at the edge, just inside, so that it takes part.");
        finding.mend = mend_of(MendKind::move, {mark.name});
        finding.mend->to = {*outside.edge + (way_m > 1e-6 ? way * (0.1 / way_m) : LocalVector{})};
        return {std::move(finding), 0.8};
    }
    finding.why = Words::tell("That is more than the receiver's error makes likely.");
    finding.proposed = Words::tell("Set it aside, unless the field's boundary is drawn too narrow.");
    finding.mend = mend_of(MendKind::set_aside, {mark.name}, outside_the_field);
    return {std::move(finding), 0.2};  // it takes no part as it is
}

WeighedFinding FindingWords::of(const OtherDigger& digger) const {
    Finding finding = about(FindingKind::other_digger, names(digger.marks), mound(digger.marks.front()).plug, digger.chance);
    if (digger.word.empty()) {
        finding.found = Words::tell("{1} stand in a line, {2} from one to the next, none with a fan.",
                                    {listed(finding.marks), in_metres(digger.stride_m)});
        finding.why =
            Words::tell("A mole's round hills stand about a stride apart along its ridge; a gopher's mounds seldom do.");
    } else {
        const Mound& mark = mound(digger.marks.front());
        finding.found = Words::tell("The note of {1} says \"{2}\".", {mark.name, digger.word});
        finding.why = speaks_for(digger.kind, mark.fan.has_value());
    }
    finding.proposed = take_as(digger.kind, digger.marks.size() == 1);
    finding.mend = mend_of(MendKind::sign, finding.marks);
    finding.mend->sign = digger.kind;
    return {std::move(finding), static_cast<double>(digger.marks.size())};
}

}  // namespace plugside
