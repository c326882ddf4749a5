#include "core/survey/mend.h"

#include <algorithm>
#include <array>
#include <unordered_map>
#include <utility>

#include "core/survey/survey.h"

namespace plugside {

namespace {

constexpr std::array<std::pair<MendKind, const char*>, 8> kind_words{{
    {MendKind::set_aside, "set aside"},
    {MendKind::take_back, "take back"},
    {MendKind::one_mound, "one mound"},
    {MendKind::move, "move"},
    {MendKind::fan, "fan"},
    {MendKind::turn_fans, "turn fans"},
    {MendKind::sign, "sign"},
    {MendKind::freshness, "freshness"},
}};

RecordedMark as_it_stands(const Mound& mound) {
    return {mound.plug, mound.fan, mound.kind, mound.freshness, mound.position_sd, mound.set_aside_because};
}

void restore(Mound& mound) {
    if (!mound.recorded) return;
    const RecordedMark recorded = *std::exchange(mound.recorded, std::nullopt);
    mound.plug = recorded.plug;
    mound.fan = recorded.fan;
    mound.kind = recorded.kind;
    mound.freshness = recorded.freshness;
    mound.position_sd = recorded.position_sd;
    mound.set_aside_because = recorded.set_aside_because;
}

void change(Mound& mound, const Mend& mend, std::size_t place) {
    switch (mend.kind) {
        case MendKind::set_aside: mound.set_aside_because = mend.because; break;
        case MendKind::take_back: mound.set_aside_because.reset(); break;
        case MendKind::one_mound:
            if (place > 0)
                mound.set_aside_because = same_mound_as(mend.marks.front());
            else if (!mend.to.empty())
                mound.plug = mend.to.front();
            if (place == 0) mound.position_sd = mend.position_sd.value_or(mound.position_sd);
            break;
        case MendKind::move:
            if (place < mend.to.size()) mound.plug = mend.to[place];
            break;
        case MendKind::fan: mound.fan = mend.fan; break;
        case MendKind::turn_fans:
            if (mound.fan) mound.fan = mound.fan->turned(mend.turn_degrees);
            break;
        case MendKind::sign: mound.kind = mend.sign.value_or(mound.kind); break;
        case MendKind::freshness: mound.freshness = mend.freshness.value_or(mound.freshness); break;
    }
}

}  // namespace

std::string to_text(MendKind kind) {
    return std::find_if(kind_words.begin(), kind_words.end(), [&](const auto& word) { return word.first == kind; })->second;
}

std::optional<MendKind> mend_kind_from_text(const std::string& text) {
    const auto* found =
        std::find_if(kind_words.begin(), kind_words.end(), [&](const auto& word) { return text == word.second; });
    if (found == kind_words.end()) return std::nullopt;
    return found->first;
}

std::string to_text(Answer answer) { return answer == Answer::accepted ? "accepted" : "refused"; }

std::optional<Answer> answer_from_text(const std::string& text) {
    if (text == "accepted") return Answer::accepted;
    if (text == "refused") return Answer::refused;
    return std::nullopt;
}

std::string own_mend_id(MendKind kind, const std::string& mark) { return "own " + to_text(kind) + ": " + mark; }

std::string same_mound_as(const std::string& mark) { return "the same mound as " + mark; }

void put_right(Survey& survey) {
    for (Mound& mound : survey.mounds) restore(mound);
    if (survey.answers.empty()) return;
    std::unordered_map<std::string, std::size_t> by_name;
    for (std::size_t i = 0; i < survey.mounds.size(); ++i) by_name.emplace(survey.mounds[i].name, i);
    std::unordered_map<std::size_t, RecordedMark> recorded;
    for (const MendAnswer& answer : survey.answers) {
        if (answer.answer != Answer::accepted) continue;
        for (std::size_t place = 0; place < answer.mend.marks.size(); ++place) {
            const auto found = by_name.find(answer.mend.marks[place]);
            if (found == by_name.end()) continue;
            Mound& mound = survey.mounds[found->second];
            recorded.emplace(found->second, as_it_stands(mound));
            change(mound, answer.mend, place);
        }
    }
    for (const auto& [index, before] : recorded) {
        Mound& mound = survey.mounds[index];
        if (as_it_stands(mound) != before) mound.recorded = before;
    }
}

void answer_finding(Survey& survey, MendAnswer answer) {
    std::erase_if(survey.answers, [&](const MendAnswer& earlier) { return earlier.finding == answer.finding; });
    survey.answers.push_back(std::move(answer));
    put_right(survey);
    ++survey.revision;
}

void take_answer_back(Survey& survey, const std::string& finding) {
    if (std::erase_if(survey.answers, [&](const MendAnswer& answer) { return answer.finding == finding; }) == 0) return;
    put_right(survey);
    ++survey.revision;
}

const MendAnswer* answer_to(const Survey& survey, const std::string& finding) {
    const auto found = std::find_if(survey.answers.begin(), survey.answers.end(),
                                    [&](const MendAnswer& answer) { return answer.finding == finding; });
    return found == survey.answers.end() ? nullptr : &*found;
}

}  // namespace plugside
