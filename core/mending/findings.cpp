#include "core/mending/findings.h"

#include <algorithm>
#include <unordered_set>

#include "core/mending/finding_words.h"
#include "core/words/words.h"

namespace plugside {

namespace {

class FindingList {
public:
    FindingList(const Survey& survey, const FindingOptions& options, const Progress& progress)
        : survey_(survey),
          options_(options),
          progress_(progress),
          walk_(walk_marks(survey, options.usual)),
          words_(survey, walk_) {}

    std::optional<std::vector<Finding>> all() {
        progress_.say(0.05, Words::later("following the track"));
        look_at_receiver();
        if (progress_.stopped()) return std::nullopt;
        progress_.say(0.3, Words::later("looking for other diggers and marks outside"));
        for (const OtherDigger& digger : other_diggers(survey_, walk_)) {
            keep(words_.of(digger));
            if (digger.marks.size() > 1) spoil(digger.marks);
        }
        for (const OutsideMark& outside : outside_field(survey_, walk_))
            if (!spoilt_.contains(outside.mark)) keep(words_.of(outside));
        if (progress_.stopped()) return std::nullopt;
        progress_.say(0.4, Words::later("looking for double marks"));
        for (const MarkGroup& group : double_marks(survey_, walk_, options_.doubles, progress_))
            if (!any_spoilt(group.marks)) keep(words_.of(group));
        if (progress_.stopped()) return std::nullopt;
        progress_.say(0.6, Words::later("laying later walks over earlier ones"));
        for (const MarkedBefore& match : marked_before(survey_, walk_, options_.earlier, progress_))
            if (!any_spoilt({match.later, match.earlier})) keep(words_.of(match));
        if (progress_.stopped()) return std::nullopt;
        progress_.say(0.8, Words::later("holding fans against the runs"));
        look_at_fans();
        if (progress_.stopped()) return std::nullopt;
        progress_.say(1.0, Words::later("done"));
        return sorted();
    }

private:
    void look_at_receiver() {
        const ReceiverFaults faults = receiver_faults(survey_, walk_, options_.receiver, progress_);
        for (const TrackJump& jump : faults.track) keep(words_.of(jump));
        for (const FarMark& far : faults.far) keep(words_.of(far));
        for (const JumpedMark& jump : faults.jumped) {
            keep(words_.of(jump));
            spoil({jump.mark});
        }
        for (const FrozenRun& frozen : faults.frozen) {
            keep(words_.of(frozen));
            spoil(frozen.marks);
        }
    }

    void look_at_fans() {
        std::unordered_set<std::size_t> turned_round;
        for (const WrongEndWalk& walk : fan_agreement(survey_, walk_, options_.reversed, progress_)) {
            if (walk.agreement > options_.reversed.most_agreement) continue;
            turned_round.insert(walk.walk);
            keep(words_.of(walk));
        }
        for (const ReversedFan& fan : reversed_fans(survey_, walk_, options_.reversed, progress_))
            if (!spoilt_.contains(fan.mark) && !turned_round.contains(walk_.marks[fan.mark].place.walk))
                keep(words_.of(fan));
        for (const CompassOffset& offset : compass_offsets(survey_, walk_, options_.compass, progress_))
            if (stands_out(offset, options_.compass)) keep(words_.of(offset));
    }

    void spoil(const std::vector<std::size_t>& marks) { spoilt_.insert(marks.begin(), marks.end()); }
    [[nodiscard]] bool any_spoilt(const std::vector<std::size_t>& marks) const {
        return std::any_of(marks.begin(), marks.end(), [&](std::size_t mark) { return spoilt_.contains(mark); });
    }
    void keep(WeighedFinding finding) { found_.push_back(std::move(finding)); }

    std::vector<Finding> sorted() {
        std::unordered_set<std::string> settled;
        for (const MendAnswer& answer : survey_.answers)
            if (answer.answer == Answer::accepted) settled.insert(answer.finding);
        std::sort(found_.begin(), found_.end(), [](const WeighedFinding& a, const WeighedFinding& b) {
            const double worth_a = a.effect * a.finding.sure.value(), worth_b = b.effect * b.finding.sure.value();
            return worth_a != worth_b ? worth_a > worth_b : a.finding.id < b.finding.id;
        });
        std::vector<Finding> list;
        for (WeighedFinding& weighed : found_)
            if (settled.insert(weighed.finding.id).second) list.push_back(std::move(weighed.finding));
        return list;
    }

    const Survey& survey_;
    const FindingOptions& options_;
    const Progress& progress_;
    WalkMarks walk_;
    FindingWords words_;
    std::unordered_set<std::size_t> spoilt_;  // marks whose place says nothing of the mound
    std::vector<WeighedFinding> found_;
};

}  // namespace

std::optional<std::vector<Finding>> findings_of(const Survey& survey, const FindingOptions& options,
                                                const Progress& progress) {
    return FindingList(survey, options, progress).all();
}

}  // namespace plugside
