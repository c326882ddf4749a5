#include "geo/read/kept_answers.h"

#include <algorithm>
#include <cmath>

#include "core/words/words.h"
#include "geo/read/field_extent.h"
#include "geo/read/note_corrections.h"

namespace plugside {

namespace {

constexpr double same_place_m = 0.01;
constexpr double same_fan_degrees = 0.2;  // a fan told for many marks is taken at the first of them

void rename(std::vector<std::string>& marks, const KeptAnswers::Renamed& renamed) {
    for (std::string& mark : marks)
        if (const auto found = renamed.find(mark); found != renamed.end()) mark = found->second;
}

// Ids end with marks' names: "double mark: M014, M012".
std::string renamed_id(const std::string& id, const KeptAnswers::Renamed& renamed) {
    const auto colon = id.find(": ");
    if (renamed.empty() || colon == std::string::npos) return id;
    std::string result = id.substr(0, colon + 2);
    for (std::size_t at = colon + 2; at <= id.size();) {
        const auto comma = std::min(id.find(", ", at), id.size());
        const std::string part = id.substr(at, comma - at);
        const auto found = renamed.find(part);
        result += found == renamed.end() ? part : found->second;
        if (comma < id.size()) result += ", ";
        at = comma + 2;
    }
    return result;
}

bool same_fan(const std::optional<Bearing>& a, const std::optional<Bearing>& b) {
    if (!a || !b) return a.has_value() == b.has_value();
    return std::abs(turn_degrees(*a, *b)) <= same_fan_degrees;
}

// The mends that make `now` what its row says, each of one thing.
std::vector<Mend> mends_back(const Mound& now, const Mound& row) {
    std::vector<Mend> mends;
    const auto add = [&](MendKind kind) -> Mend& {
        mends.emplace_back();
        mends.back().kind = kind;
        mends.back().marks = {row.name};
        return mends.back();
    };
    if (distance_m(now.plug, row.plug) > same_place_m) add(MendKind::move).to = {row.plug};
    if (!same_fan(now.fan, row.fan)) add(MendKind::fan).fan = row.fan;
    if (now.kind != row.kind) add(MendKind::sign).sign = row.kind;
    if (now.freshness != row.freshness) add(MendKind::freshness).freshness = row.freshness;
    const std::string aside_now = now.set_aside_because.value_or("");
    const std::string aside_in_row = row.set_aside_because.value_or("");
    if (aside_now != aside_in_row && !aside_in_row.empty()) add(MendKind::set_aside).because = aside_in_row;
    if (aside_now != aside_in_row && aside_in_row.empty()) add(MendKind::take_back);
    return mends;
}

}  // namespace

FindingList& KeptAnswers::findings_of_file(const std::string& file) {
    return findings_.try_emplace(file, file).first->second;
}

void KeptAnswers::add_record(std::size_t mound, GeographicRecord record, const std::string& file, const std::string& place) {
    records_.push_back({mound, std::move(record), file, place});
}

void KeptAnswers::add_answer(GeographicAnswer answer, const std::string& file, const Renamed& renamed) {
    answer.answer.finding = renamed_id(answer.answer.finding, renamed);
    rename(answer.answer.mend.marks, renamed);
    answers_.push_back({std::move(answer), file});
}

void KeptAnswers::add_finding(GeographicFinding finding, const std::string& file, const Renamed& renamed) {
    finding.finding.id = renamed_id(finding.finding.id, renamed);
    rename(finding.finding.marks, renamed);
    if (finding.finding.mend) rename(finding.finding.mend->marks, renamed);
    found_.push_back({std::move(finding), file});
}

void KeptAnswers::add_rule(GeographicRule rule, const std::string& file, const Renamed& marks, const Renamed& walks) {
    if (const auto found = marks.find(rule.rule.mark); found != marks.end()) rule.rule.mark = found->second;
    const auto walk = walks.find(rule.rule.walk);
    if (!rule.rule.walk.empty() && walk == walks.end()) {
        findings_of_file(file).add(
            rule.place, Words::tell("the correction of {1} is of the walk {2}, which is not there; it is not used",
                                    {quoted_for_display(rule.rule.words), quoted_for_display(rule.rule.walk)}));
        return;
    }
    if (!rule.rule.walk.empty()) rule.rule.walk = walk->second;
    rules_.push_back(std::move(rule.rule));
}

bool KeptAnswers::settle(FieldSurvey& field) {
    if (records_.empty() && answers_.empty() && found_.empty() && rules_.empty() && findings_.empty()) return false;
    Survey& survey = field.survey;
    IndexByName by_name;
    for (std::size_t i = 0; i < survey.mounds.size(); ++i) by_name.emplace(survey.mounds[i].name, i);
    const bool more_found = take_findings(field, by_name);
    const bool more_answers = take_answers(field, by_name);
    std::vector<Mound> as_in_rows;
    for (const Record& record : records_) as_in_rows.push_back(survey.mounds[record.mound]);
    take_records(field);
    const bool more_rules = take_rules(survey);
    const bool of_rules = std::any_of(survey.answers.begin(), survey.answers.end(), is_of_note_rule);
    if (!survey.note_rules.empty() || of_rules)
        use_note_rules(survey, field.frame, survey.note_rules);
    else if (more_answers || !records_.empty())
        put_right(survey);
    // a mend of a mark's row may stand in the place of an answer that made another mark what its row says
    constexpr int most_rounds = 3;
    for (int round = 0; round < most_rounds && keep_rows(survey, as_in_rows); ++round) continue;
    for (auto& [file, list] : findings_)
        for (ReadFinding& finding : list.listed()) field.findings.push_back(std::move(finding));
    return more_found || more_answers || more_rules;
}

bool KeptAnswers::take_answers(FieldSurvey& field, const IndexByName& by_name) {
    Survey& survey = field.survey;
    std::unordered_set<std::string> before;
    for (const MendAnswer& answer : survey.answers) before.insert(answer.finding);
    std::unordered_map<std::string, std::size_t> last;  // of several files' answers to one finding
    for (std::size_t i = 0; i < answers_.size(); ++i) last[answers_[i].answer.answer.finding] = i;
    bool any = false;
    for (std::size_t i = 0; i < answers_.size(); ++i) {
        auto& [told, file] = answers_[i];
        MendAnswer& answer = told.answer;
        if (before.contains(answer.finding) || last[answer.finding] != i) continue;
        const bool near = std::all_of(told.to.begin(), told.to.end(),
                                      [&](GeographicPoint place) { return is_about(field.frame.centre(), place); });
        const bool accepted = answer.answer == Answer::accepted;
        if (!near)
            findings_of_file(file).add(
                told.place, accepted ? Words::tell("the mend of {1} moves a mark away from the field; the finding is open "
                                                   "again",
                                                   {quoted_for_display(answer.finding)})
                                     : Words::tell("the mend of {1} moves a mark away from the field; the finding stays "
                                                   "refused",
                                                   {quoted_for_display(answer.finding)}));
        if (!near && accepted) continue;
        for (const std::string& mark : answer.mend.marks)
            if (!by_name.contains(mark))
                findings_of_file(file).add(
                    told.place,
                    Words::tell("the answer to {1} names the mark {2}, which is not there; it is kept for the others",
                                {quoted_for_display(answer.finding), quoted_for_display(mark)}));
        for (std::size_t place = 0; near && place < told.to.size(); ++place)
            answer.mend.to.push_back(field.frame.to_local(told.to[place]));
        if (told.fan_degrees) {
            const auto first = answer.mend.marks.empty() ? by_name.end() : by_name.find(answer.mend.marks.front());
            const LocalPoint at = first == by_name.end() ? LocalPoint{} : survey.mounds[first->second].plug;
            answer.mend.fan = field.frame.plane_bearing(Bearing::degrees(*told.fan_degrees), at);
        }
        survey.answers.push_back(std::move(answer));
        any = true;
    }
    return any;
}

bool KeptAnswers::take_rules(Survey& survey) {
    const std::vector<NoteRule> before = survey.note_rules;
    std::vector<NoteRule> rules;
    for (NoteRule& rule : rules_) {
        const bool told = std::any_of(before.begin(), before.end(), [&](const NoteRule& earlier) {
            return earlier.words == rule.words && earlier.walk == rule.walk && earlier.mark == rule.mark;
        });
        if (!told) rules = with_rule(std::move(rules), std::move(rule));
    }
    survey.note_rules.insert(survey.note_rules.end(), rules.begin(), rules.end());
    return !rules.empty();
}

bool KeptAnswers::take_findings(FieldSurvey& field, const IndexByName& by_name) {
    std::unordered_set<std::string> told;
    for (const Finding& finding : field.of_reading) told.insert(finding.id);
    bool any = false;
    for (auto& [found, file] : found_) {
        const bool all_there = std::all_of(found.finding.marks.begin(), found.finding.marks.end(),
                                           [&](const std::string& mark) { return by_name.contains(mark); });
        if (!all_there || !is_about(field.frame.centre(), found.at)) {
            findings_of_file(file).add(
                found.place, Words::tell("the finding {1} is of marks or a place that are not there; it is not used",
                                         {quoted_for_display(found.finding.id)}));
            continue;
        }
        if (!told.insert(found.finding.id).second) continue;
        found.finding.at = field.frame.to_local(found.at);
        field.of_reading.push_back(std::move(found.finding));
        any = true;
    }
    return any;
}

void KeptAnswers::take_records(FieldSurvey& field) {
    for (auto& [index, record, file, place] : records_) {
        Mound& mound = field.survey.mounds[index];
        mound.recorded = record.mark;
        if (is_about(field.frame.centre(), record.at)) {
            mound.recorded->plug = field.frame.to_local(record.at);
        } else {
            mound.recorded->plug = mound.plug;
            findings_of_file(file).add(
                place,
                Words::later(
                    "the recorded place of the mark lies away from the field; it counts as recorded where it stands"));
        }
        if (record.fan_degrees)
            mound.recorded->fan = field.frame.plane_bearing(Bearing::degrees(*record.fan_degrees), mound.recorded->plug);
    }
}

bool KeptAnswers::keep_rows(Survey& survey, const std::vector<Mound>& as_in_rows) {
    std::vector<MendAnswer> own;
    std::unordered_set<std::string> replaced;
    for (std::size_t i = 0; i < records_.size(); ++i) {
        const auto mends = mends_back(survey.mounds[records_[i].mound], as_in_rows[i]);
        if (!mends.empty())
            findings_of_file(records_[i].file)
                .add(records_[i].place,
                     Words::later(
                         "the mark's row says something else than what was recorded and answered; the row counts, as "
                         "a mend of your own that can be taken back"));
        for (const Mend& mend : mends) {
            own.push_back({own_mend_id(mend.kind, mend.marks.front()), Answer::accepted, mend});
            replaced.insert(own.back().finding);
        }
    }
    if (own.empty()) return false;
    std::erase_if(survey.answers, [&](const MendAnswer& answer) { return replaced.contains(answer.finding); });
    survey.answers.insert(survey.answers.end(), own.begin(), own.end());
    put_right(survey);
    return true;
}

}  // namespace plugside
