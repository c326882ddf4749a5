#include "geo/read/note_corrections.h"

#include <algorithm>
#include <map>
#include <optional>
#include <unordered_map>
#include <unordered_set>
#include <utility>

#include "geo/read/true_fan.h"
#include "geo/read/walking_direction.h"

namespace plugside {

namespace {

constexpr const char* rule_id = "note rule ";

const std::string& walk_of(const Survey& survey, const Mound& mound) {
    static const std::string none;
    return mound.walk < survey.walks.size() ? survey.walks[mound.walk].id : none;
}

bool in_reach(const NoteRule& rule, const std::string& walk, const std::string& mark) {
    return (rule.walk.empty() || rule.walk == walk) && (rule.mark.empty() || rule.mark == mark);
}

int nearness(const NoteRule& rule) { return (rule.mark.empty() ? 0 : 2) + (rule.walk.empty() ? 0 : 1); }

bool is_plain(char c) { return static_cast<unsigned char>(c) < 128; }
bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
char small(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

// Whether a rule's words may stand in a note: cheap, and never no where they do. The first letters of the words are looked
// for; where they are not plain, or the note is not, it may be so.
bool may_stand_in(const std::string& words, const std::string& note) {
    if (!std::all_of(words.begin(), words.end(), is_plain) || !std::all_of(note.begin(), note.end(), is_plain)) return true;
    const auto from = std::find_if(words.begin(), words.end(), is_letter);
    const auto to = std::find_if_not(from, words.end(), is_letter);
    return from == to || std::search(note.begin(), note.end(), from, to,
                                     [](char a, char b) { return small(a) == small(b); }) != note.end();
}

// Rules by what they are about, so that a mark without any is passed over at once.
class RuleBook {
public:
    explicit RuleBook(const std::vector<NoteRule>& rules) {
        for (const NoteRule& rule : rules)
            (rule.mark.empty() ? of_walks_[rule.walk] : of_marks_[rule.mark]).push_back(&rule);
    }
    // The rules whose words may stand in the mark's note.
    [[nodiscard]] std::vector<NoteRule> holding(const std::string& walk, const Mound& mound) const {
        const std::string& mark = mound.name;
        std::vector<const NoteRule*> found;
        const auto gather = [&](const auto& book, const std::string& key) {
            if (const auto entry = book.find(key); entry != book.end())
                for (const NoteRule* rule : entry->second)
                    if (in_reach(*rule, walk, mark) && may_stand_in(rule->words, mound.note)) found.push_back(rule);
        };
        gather(of_marks_, mark);
        gather(of_walks_, walk);
        if (!walk.empty()) gather(of_walks_, std::string());
        std::reverse(found.begin(), found.end());
        std::stable_sort(found.begin(), found.end(),
                         [](const NoteRule* a, const NoteRule* b) { return nearness(*a) > nearness(*b); });
        std::vector<NoteRule> rules;
        for (const NoteRule* rule : found) rules.push_back(*rule);
        return rules;
    }

private:
    std::unordered_map<std::string, std::vector<const NoteRule*>> of_marks_;
    std::unordered_map<std::string, std::vector<const NoteRule*>> of_walks_;
};

bool same_fan(const NoteReading& a, const NoteReading& b) {
    return a.fan_degrees == b.fan_degrees && a.magnetic_fan_degrees == b.magnetic_fan_degrees &&
           a.clock_hour == b.clock_hour && a.no_fan == b.no_fan;
}

// Turns what a note tells of a fan into a bearing on the field's plane.
class FanTurner {
public:
    FanTurner(const Survey& survey, const LocalFrame& frame) : survey_(survey), frame_(frame) {
        for (const MendAnswer& answer : survey.answers)
            if (answer.answer == Answer::accepted && answer.mend.kind == MendKind::turn_fans)
                turned_.insert(answer.mend.marks.begin(), answer.mend.marks.end());
    }

    std::optional<Bearing> fan(const NoteReading& reading, const Mound& mound) {
        const LocalPoint plug = mound.recorded ? mound.recorded->plug : mound.plug;
        const GeographicPoint at = frame_.to_geographic(plug);
        std::optional<double> degrees = reading.fan_degrees;
        if (reading.magnetic_fan_degrees) {
            degrees = true_fan_from_magnetic(*reading.magnetic_fan_degrees, at, mound.time).degrees;
        } else if (reading.clock_hour) {
            const auto walking = track_of(mound.walk).walking_direction(at, mound.time);
            degrees = walking ? std::optional(fan_from_clock(*reading.clock_hour, *walking).degrees()) : std::nullopt;
        } else if (degrees && !reading.says_north && of_magnetic_walk(mound) && !turned_.contains(mound.name)) {
            // a mark that the walk's own turn of fans names is turned by that
            degrees = true_fan_from_magnetic(*degrees, at, mound.time).degrees;
        }
        if (!degrees) return std::nullopt;
        return frame_.plane_bearing(Bearing::degrees(*degrees), plug);
    }

private:
    [[nodiscard]] bool of_magnetic_walk(const Mound& mound) const {
        return mound.walk < survey_.walks.size() && survey_.walks[mound.walk].bearings_from == North::magnetic_north;
    }

    const TrackTimes& track_of(std::size_t walk) {
        const auto known = tracks_.find(walk);
        if (known != tracks_.end()) return known->second;
        std::vector<std::vector<GeographicTrackPoint>> segments;
        if (walk < survey_.walks.size())
            for (const TrackSegment& segment : survey_.walks[walk].segments) {
                segments.emplace_back();
                for (const TrackPoint& point : segment)
                    segments.back().push_back({frame_.to_geographic(point.at), point.time});
            }
        return tracks_.emplace(walk, TrackTimes(segments)).first->second;
    }

    const Survey& survey_;
    const LocalFrame& frame_;
    std::unordered_set<std::string> turned_;
    std::map<std::size_t, TrackTimes> tracks_;
};

MendAnswer answer_for(const Mound& mound, MendKind kind) {
    Mend mend;
    mend.kind = kind;
    mend.marks = {mound.name};
    return {rule_id + to_text(kind) + ": " + mound.name, Answer::accepted, std::move(mend)};
}

void add_changes(const NoteReading& bare, const NoteReading& ruled, const Mound& mound, FanTurner& turner,
                 std::vector<MendAnswer>& answers) {
    if (!same_fan(bare, ruled)) {
        answers.push_back(answer_for(mound, MendKind::fan));
        answers.back().mend.fan = turner.fan(ruled, mound);
    }
    if (bare.freshness != ruled.freshness) {
        answers.push_back(answer_for(mound, MendKind::freshness));
        answers.back().mend.freshness = ruled.freshness.value_or(Freshness::unknown);
    }
    if (bare.kind != ruled.kind) {
        answers.push_back(answer_for(mound, MendKind::sign));
        answers.back().mend.sign = ruled.kind.value_or(SignKind::gopher_mound);
    }
}

}  // namespace

std::vector<NoteRule> rules_for(const Survey& survey, const Mound& mound) {
    return RuleBook(survey.note_rules).holding(walk_of(survey, mound), mound);
}

NoteReading corrected_reading(const Survey& survey, const Mound& mound) {
    return reread_note(mound.note, walk_of(survey, mound), rules_for(survey, mound));
}

bool is_of_note_rule(const MendAnswer& answer) { return answer.finding.rfind(rule_id, 0) == 0; }

void use_note_rules(Survey& survey, const LocalFrame& frame, std::vector<NoteRule> rules) {
    const RuleBook earlier(survey.note_rules);
    const RuleBook book(rules);
    FanTurner turner(survey, frame);
    std::vector<MendAnswer> answers;
    for (Mound& mound : survey.mounds) {
        if (mound.note.empty()) continue;
        const std::string& walk = walk_of(survey, mound);
        const std::vector<NoteRule> holding = book.holding(walk, mound);
        if (holding.empty()) {
            if (!earlier.holding(walk, mound).empty()) mound.mentions = read_note(mound.note).mentions;
            continue;
        }
        const NoteReading ruled = reread_note(mound.note, walk, holding);
        mound.mentions = ruled.mentions;
        add_changes(read_note(mound.note), ruled, mound, turner, answers);
    }
    std::erase_if(survey.answers, is_of_note_rule);
    survey.answers.insert(survey.answers.begin(), std::make_move_iterator(answers.begin()),
                          std::make_move_iterator(answers.end()));
    survey.note_rules = std::move(rules);
    put_right(survey);
}

void obey_note_rules(Survey& survey, const LocalFrame& frame) {
    if (survey.note_rules.empty())
        put_right(survey);
    else
        use_note_rules(survey, frame, survey.note_rules);
}

RuleEffect effect_of_rules(const Survey& survey, const LocalFrame& frame, const std::vector<NoteRule>& rules) {
    Survey changed;
    for (const Walk& walk : survey.walks) changed.walks.push_back(walk);
    changed.mounds = survey.mounds;
    changed.answers = survey.answers;
    changed.note_rules = survey.note_rules;
    use_note_rules(changed, frame, rules);
    const RuleBook before(survey.note_rules);
    const RuleBook after(rules);
    RuleEffect effect;
    for (std::size_t i = 0; i < survey.mounds.size(); ++i) {
        const Mound& was = survey.mounds[i];
        const Mound& is = changed.mounds[i];
        const bool taken =
            was.fan != is.fan || was.freshness != is.freshness || was.kind != is.kind || was.mentions != is.mentions;
        if (taken) effect.taken_otherwise.push_back(i);
        const std::string& walk = walk_of(survey, was);
        const auto old_rules = before.holding(walk, was);
        const auto new_rules = after.holding(walk, was);
        if (taken || (old_rules != new_rules &&
                      reread_note(was.note, walk, old_rules).rest != reread_note(was.note, walk, new_rules).rest))
            effect.read_otherwise.push_back(i);
    }
    return effect;
}

std::vector<NoteRule> with_rule(std::vector<NoteRule> rules, NoteRule added) {
    std::erase_if(rules, [&](const NoteRule& rule) {
        return rule.words == added.words && rule.walk == added.walk && rule.mark == added.mark;
    });
    rules.push_back(std::move(added));
    return rules;
}

}  // namespace plugside
