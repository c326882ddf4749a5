#include "geo/read/carry_over.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "geo/read/north_of_walk.h"
#include "geo/read/note_corrections.h"
#include "geo/read/work_rows.h"

namespace plugside {

namespace {

constexpr double same_place_m = 0.01;

LocalPoint as_read(const Mound& mound) { return mound.recorded ? mound.recorded->plug : mound.plug; }

std::vector<std::vector<std::size_t>> marks_by_walk(const Survey& survey) {
    std::vector<std::vector<std::size_t>> marks(survey.walks.size());
    for (std::size_t i = 0; i < survey.mounds.size(); ++i) marks[survey.mounds[i].walk].push_back(i);
    return marks;
}

// For each walk of `before` the one of `again`: the first of the same source, the second, and so on.
std::vector<std::optional<std::size_t>> same_walks(const Survey& before, const Survey& again) {
    std::vector<std::optional<std::size_t>> same(before.walks.size());
    std::vector<bool> taken(again.walks.size(), false);
    for (std::size_t i = 0; i < before.walks.size(); ++i)
        for (std::size_t j = 0; j < again.walks.size() && !same[i]; ++j)
            if (!taken[j] && again.walks[j].source == before.walks[i].source) {
                taken[j] = true;
                same[i] = j;
            }
    return same;
}

// Which mark of the new reading each earlier one is.
class SameMarks {
public:
    SameMarks(const FieldSurvey& before, const FieldSurvey& again, const std::vector<std::optional<std::size_t>>& walks)
        : before_(before), again_(again), taken_(again.survey.mounds.size(), false) {
        const auto old_marks = marks_by_walk(before.survey);
        const auto new_marks = marks_by_walk(again.survey);
        for (std::size_t walk = 0; walk < walks.size(); ++walk)
            if (walks[walk]) match(old_marks[walk], new_marks[*walks[walk]]);
    }

    // Nothing for a mark that is not there any more.
    std::optional<std::size_t> now(const std::string& name) const {
        const auto found = by_name_.find(name);
        return found == by_name_.end() ? std::nullopt : std::optional(found->second.now);
    }
    std::string name_now(const std::string& name) const {
        const auto found = now(name);
        return found ? again_.survey.mounds[*found].name : name;
    }
    // How far the mark lies from where it lay, on the new plane.
    std::optional<LocalVector> moved(const std::string& name) const {
        const auto found = by_name_.find(name);
        if (found == by_name_.end()) return std::nullopt;
        return as_read(again_.survey.mounds[found->second.now]) - as_read(before_.survey.mounds[found->second.before]);
    }
    bool as_before() const {
        return by_name_.size() == before_.survey.mounds.size() &&
               std::all_of(by_name_.begin(), by_name_.end(), [&](const auto& entry) {
                   return again_.survey.mounds[entry.second.now].name == entry.first &&
                          moved(entry.first)->length_m() <= same_place_m;
               });
    }

private:
    struct Both {
        std::size_t before = 0;
        std::size_t now = 0;
    };

    void match(const std::vector<std::size_t>& old_marks, const std::vector<std::size_t>& new_marks) {
        std::unordered_map<std::string, std::size_t> names;
        std::map<std::pair<long long, long long>, std::vector<std::size_t>> cells;
        for (const std::size_t mark : new_marks) {
            names.emplace(again_.survey.mounds[mark].name, mark);
            cells[cell(mark)].push_back(mark);
        }
        std::vector<std::pair<std::size_t, std::size_t>> open;  // mark, and its number in the walk
        for (std::size_t number = 0; number < old_marks.size(); ++number) {
            const auto found = names.find(before_.survey.mounds[old_marks[number]].name);
            if (found != names.end())
                take(old_marks[number], found->second);
            else
                open.emplace_back(old_marks[number], number);
        }
        for (const auto& [mark, number] : open) {
            const auto near = find_near(mark, cells);
            if (near)
                take(mark, *near);
            else if (old_marks.size() == new_marks.size() && !taken_[new_marks[number]])
                take(mark, new_marks[number]);
        }
    }

    void take(std::size_t mark, std::size_t now) {
        taken_[now] = true;
        by_name_.emplace(before_.survey.mounds[mark].name, Both{mark, now});
    }

    // Cells of twice the distance in which two places are the same.
    std::pair<long long, long long> cell(std::size_t mark) const { return cell_at(as_read(again_.survey.mounds[mark])); }
    static std::pair<long long, long long> cell_at(LocalPoint at) {
        return {std::llround(at.east_m / (2.0 * same_place_m)), std::llround(at.north_m / (2.0 * same_place_m))};
    }

    std::optional<std::size_t> find_near(
        std::size_t mark, const std::map<std::pair<long long, long long>, std::vector<std::size_t>>& cells) const {
        const LocalPoint at = again_.frame.to_local(before_.frame.to_geographic(as_read(before_.survey.mounds[mark])));
        const auto [east, north] = cell_at(at);
        for (long long across = -1; across <= 1; ++across)
            for (long long up = -1; up <= 1; ++up) {
                const auto found = cells.find({east + across, north + up});
                if (found == cells.end()) continue;
                for (const std::size_t other : found->second)
                    if (!taken_[other] && distance_m(as_read(again_.survey.mounds[other]), at) <= same_place_m) return other;
            }
        return std::nullopt;
    }

    const FieldSurvey& before_;
    const FieldSurvey& again_;
    std::vector<bool> taken_;
    std::unordered_map<std::string, Both> by_name_;
};

// "double mark: M014, M012" with the names that the marks have now.
std::string renamed_id(const std::string& id, const SameMarks& marks) {
    const auto colon = id.find(": ");
    if (colon == std::string::npos) return id;
    std::string result = id.substr(0, colon + 1);
    std::string rest = id.substr(colon + 2);
    for (bool first = true;; first = false) {
        const auto comma = rest.find(", ");
        result.append(first ? " " : ", ").append(marks.name_now(rest.substr(0, comma)));
        if (comma == std::string::npos) return result;
        rest.erase(0, comma + 2);
    }
}

class Carrier {
public:
    Carrier(const FieldSurvey& before, FieldSurvey& again)
        : before_(before), again_(again), walks_(same_walks(before.survey, again.survey)), marks_(before, again, walks_) {}

    CarriedOver carry() {
        carried_.as_before = marks_.as_before() && before_.frame.centre() == again_.frame.centre();
        // the answers that turned a walk's fans are given anew, of the fans that are read now
        std::vector<SetDecision> decisions;
        for (SetDecision decision : before_.survey.decisions) {
            count({decision.probe.from_mound, decision.probe.to_mound});
            for (std::string* name : {&decision.probe.from_mound, &decision.probe.to_mound}) *name = marks_.name_now(*name);
            decisions.push_back(std::move(decision));
        }
        again_.survey.decisions = std::move(decisions);
        std::vector<MendAnswer> answers;
        for (const MendAnswer& answer : before_.survey.answers)
            if (!turns_a_walk(answer.finding) && !follows_from_a_rule(answer)) answers.push_back(now(answer));
        again_.survey.answers = std::move(answers);
        std::vector<KnownFact> known;
        for (const KnownFact& fact : before_.survey.known) known.push_back(now(fact));
        again_.survey.known = std::move(known);
        for (const SetMethod& chosen : before_.survey.work->set_methods)
            count({chosen.probe.from_mound, chosen.probe.to_mound});
        again_.survey.work =
            renamed_marks(*before_.survey.work, [this](const std::string& name) { return marks_.name_now(name); });
        again_.field_name = before_.field_name;
        put_right(again_.survey);
        tell_norths();
        use_note_rules(again_.survey, again_.frame, rules_now());
        again_.survey.revision = std::max(before_.survey.revision, again_.survey.revision) + 1;
        return carried_;
    }

private:
    void count(const std::vector<std::string>& names) {
        const bool missing =
            std::any_of(names.begin(), names.end(), [&](const auto& name) { return !name.empty() && !marks_.now(name); });
        carried_.without_mark += missing ? 1U : 0U;
    }

    // Corrections of how notes are read are obeyed anew, by the notes that are read now.
    bool follows_from_a_rule(const MendAnswer& answer) const { return is_of_note_rule(answer); }
    std::vector<NoteRule> rules_now() {
        std::vector<NoteRule> rules = before_.survey.note_rules;
        for (NoteRule& rule : rules) {
            count({rule.mark});
            if (!rule.mark.empty()) rule.mark = marks_.name_now(rule.mark);
            for (std::size_t i = 0; i < walks_.size(); ++i)
                if (walks_[i] && before_.survey.walks[i].id == rule.walk) {
                    rule.walk = again_.survey.walks[*walks_[i]].id;
                    break;
                }
        }
        return rules;
    }

    bool turns_a_walk(const std::string& id) const {
        return std::any_of(before_.survey.walks.begin(), before_.survey.walks.end(),
                           [&](const Walk& walk) { return own_mend_id(MendKind::turn_fans, walk.id) == id; });
    }

    MendAnswer now(MendAnswer answer) {
        count(answer.mend.marks);
        answer.finding = renamed_id(answer.finding, marks_);
        for (std::size_t i = 0; i < answer.mend.to.size(); ++i) {
            const auto moved = i < answer.mend.marks.size() ? marks_.moved(answer.mend.marks[i]) : std::nullopt;
            answer.mend.to[i] = moved ? answer.mend.to[i] + *moved : on_new_plane(answer.mend.to[i]);
        }
        for (std::string& name : answer.mend.marks) name = marks_.name_now(name);
        return answer;
    }

    KnownFact now(KnownFact fact) {
        count(fact.marks);
        for (std::string& name : fact.marks) name = marks_.name_now(name);
        if (fact.line)
            for (LocalPoint& vertex : fact.line->vertices) vertex = on_new_plane(vertex);
        return fact;
    }

    LocalPoint on_new_plane(LocalPoint place) const {
        if (before_.frame.centre() == again_.frame.centre()) return place;
        return again_.frame.to_local(before_.frame.to_geographic(place));
    }

    void tell_norths() {
        for (std::size_t i = 0; i < walks_.size(); ++i) {
            const Walk& walk = before_.survey.walks[i];
            if (!walks_[i] || again_.survey.walks[*walks_[i]].bearings_from == walk.bearings_from) continue;
            const auto told = tell_north(again_.survey, *walks_[i], again_.frame, walk.bearings_from);
            if (!told) again_.findings.push_back({walk.source, "", sentence(told.error())});
        }
    }

    const FieldSurvey& before_;
    FieldSurvey& again_;
    std::vector<std::optional<std::size_t>> walks_;
    SameMarks marks_;
    CarriedOver carried_;
};

}  // namespace

CarriedOver carry_over(const FieldSurvey& before, FieldSurvey& again) { return Carrier(before, again).carry(); }

}  // namespace plugside
