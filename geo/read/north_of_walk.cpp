#include "geo/read/north_of_walk.h"

#include <algorithm>
#include <cassert>

#include "core/words/words.h"
#include "geo/frame/declination.h"
#include "geo/read/notes_grammar.h"
#include "geo/read/true_fan.h"

namespace plugside {

namespace {

std::string sentence_of_turn(const NorthTurn& turn, bool timed) {
    const std::string marks = std::to_string(turn.mend.marks.size());
    const std::string declination = spoken_declination(turn.declination_degrees);
    if (turn.mend.marks.size() == 1)
        return timed ? Words::tell("The fan of one mark is turned by {1}, the declination at the walk's place and time.",
                                   {declination})
                     : Words::tell(
                           "The fan of one mark is turned by {1}, the declination at the walk's place in the middle of "
                           "2027, since its marks have no times.",
                           {declination});
    return timed ? Words::tell("The fans of {1} marks are turned by {2}, the declination at the walk's place and time.",
                               {marks, declination})
                 : Words::tell(
                       "The fans of {1} marks are turned by {2}, the declination at the walk's place in the middle of "
                       "2027, since its marks have no times.",
                       {marks, declination});
}

}  // namespace

namespace {

bool was_corrected(const Survey& survey, const std::string& mark) {
    return std::any_of(survey.answers.begin(), survey.answers.end(), [&](const MendAnswer& answer) {
        return answer.answer == Answer::accepted && answer.mend.kind == MendKind::fan &&
               std::find(answer.mend.marks.begin(), answer.mend.marks.end(), mark) != answer.mend.marks.end();
    });
}

bool is_bare(const Mound& mound) {
    const NoteReading note = read_note(mound.note);
    const bool note_tells = note.fan_degrees || note.magnetic_fan_degrees || note.clock_hour;
    const NoteReading reading = note_tells ? note : read_note(mound.name);
    return !reading.says_north && !reading.clock_hour;
}

}  // namespace

tl::expected<std::optional<NorthTurn>, Refusal> turn_of_magnetic_walk(const Survey& survey, std::size_t walk,
                                                                      const LocalFrame& frame) {
    assert(walk < survey.walks.size());
    NorthTurn turn;
    turn.mend.kind = MendKind::turn_fans;
    LocalVector sum;
    double years = 0.0;
    std::size_t timed = 0;
    for (const Mound& mound : survey.mounds) {
        if (mound.walk != walk) continue;
        const auto& fan = mound.recorded ? mound.recorded->fan : mound.fan;
        if (!fan || !is_bare(mound) || was_corrected(survey, mound.name)) continue;
        turn.mend.marks.push_back(mound.name);
        sum = sum + (mound.plug - LocalPoint{});
        if (!mound.time) continue;
        years += decimal_year(*mound.time);
        ++timed;
    }
    if (turn.mend.marks.empty()) return std::optional<NorthTurn>();
    const auto marks = static_cast<double>(turn.mend.marks.size());
    const GeographicPoint middle = frame.to_geographic(LocalPoint{} + sum * (1.0 / marks));
    const auto field = magnetic_field(middle, timed > 0 ? years / static_cast<double>(timed) : year_without_time);
    if (!field) {
        Refusal refusal = field.error();
        refusal.file = survey.walks[walk].id;
        return tl::unexpected(refusal);
    }
    turn.declination_degrees = field->declination_degrees;
    turn.mend.turn_degrees = field->declination_degrees;
    turn.sentence = sentence_of_turn(turn, timed > 0);
    return std::optional<NorthTurn>(std::move(turn));
}

tl::expected<void, Refusal> tell_north(Survey& survey, std::size_t walk, const LocalFrame& frame, North north) {
    assert(walk < survey.walks.size());
    const std::string id = own_mend_id(MendKind::turn_fans, survey.walks[walk].id);
    const bool magnetic = north == North::magnetic_north;
    // a plan handed out holds turned fans, and no answer that turned them
    const bool turned_as_recorded =
        (survey.walks[walk].bearings_from == North::magnetic_north) != (answer_to(survey, id) != nullptr);
    if (magnetic == turned_as_recorded) {
        take_answer_back(survey, id);
    } else {
        auto turn = turn_of_magnetic_walk(survey, walk, frame);
        if (!turn) return tl::unexpected(turn.error());
        if (*turn) {
            Mend mend = std::move((*turn)->mend);
            if (!magnetic) mend.turn_degrees = -mend.turn_degrees;
            answer_finding(survey, {id, Answer::accepted, std::move(mend)});
        }
    }
    survey.walks[walk].bearings_from = north;
    ++survey.revision;
    return {};
}

}  // namespace plugside
