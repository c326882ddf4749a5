// The field at hand: its survey, the plan that follows from it, the history of decisions, and the work going on about them.
//
// Edited: only the survey, only through the history (`decide_on`, undo, redo). Each edit starts a new plan, but not one of how the work is done. Adding files and reading
//         them anew are acts of the history, too.
// Plan:   applied only when it was made from the survey's present revision; until then the earlier one stays, marked stale.
//         Where there is no whole plan of these marks to stay, a first look comes before it: shown, never current, never
//         handed out.
// Letters: systems that are still there keep the letters that the last whole plan of this field gave them; where undo or redo comes
//         back to a state that had a whole plan, those of that plan.
// Files:  read and written away from the window's thread. A refusal leaves the field as it was.
// Not seen: worked out after each whole plan whose marks, walks or ground are new; a decision on a set does not change it.
// Kept:   by project_keeper.h, which puts every change into the project file. `not_handed_out` is about something else: whether
//         what was decided went out as a GeoPackage since.
#pragma once

#include <QObject>
#include <QString>
#include <QUndoStack>
#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <set>
#include <tl/expected.hpp>
#include <vector>

#include "app/commands/answer_command.h"
#include "app/commands/read_command.h"
#include "app/commands/survey_part_command.h"
#include "app/planning/background_work.h"
#include "app/reading/told_reading.h"
#include "app/session/hand_out.h"
#include "core/plan/plan.h"
#include "core/plan/system_letters.h"
#include "core/survey/finding.h"
#include "core/survey/refusal.h"
#include "core/units/display.h"
#include "core/walking/not_seen.h"
#include "geo/read/field_survey.h"

namespace plugside {

class FieldSession : public QObject {
    Q_OBJECT

public:
    using Files = std::vector<std::filesystem::path>;
    using HandOut = plugside::HandOut;

    explicit FieldSession(QObject* parent = nullptr);
    ~FieldSession() override;

    // Null before the first field.
    [[nodiscard]] std::shared_ptr<const FieldSurvey> field() const { return field_; }
    [[nodiscard]] std::shared_ptr<const Plan> plan() const { return plan_; }
    // A whole plan of the survey as it is now.
    [[nodiscard]] bool plan_is_current() const;
    // What is shown for want of a whole plan is a first look.
    [[nodiscard]] bool plan_is_first_look() const { return plan_ && plan_->first_look; }
    [[nodiscard]] bool not_handed_out() const { return waits_from_before_ || !history_.isClean(); }
    [[nodiscard]] QUndoStack& history() { return history_; }
    [[nodiscard]] BackgroundWork& planning() { return planning_; }
    [[nodiscard]] BackgroundWork& file_work() { return file_work_; }
    [[nodiscard]] const Files& files() const { return files_; }
    // The files that were read together, in the order of reading.
    [[nodiscard]] const std::vector<Files>& steps() const { return steps_; }
    // Grows with every field that takes the place of another; adding files or reading them anew is the same field.
    [[nodiscard]] std::uint64_t opening() const { return opening_; }

    // Reads `files` into a new field in place of this one.
    void open(const Files& files, const FileChoices& choices = {});
    // Reads `more` into this field: what is there already is not taken twice; decisions and answers stay.
    void add(const Files& more, const FileChoices& choices = {});
    // Reads those of the field's files that are in `wanted` anew, by other choices; what was decided and answered stays.
    // One act of the history, as `add` is.
    void read_again(const Files& wanted, const FileChoices& choices);
    // How the field's files were read, where a person said so.
    [[nodiscard]] const FileChoices& told() const { return told_; }
    // A look into files before they are read, as work of the same kind; not while a plan is being handed out.
    void look_into_files(BackgroundWork::WorkInStages look);
    // Goes on with a field as a project has it. The history begins empty.
    void resume(FieldSurvey field, std::vector<Files> steps, const FileChoices& told, bool not_handed_out);
    // No field, as before the first one. Nothing is told of it: who shows the field is made anew.
    void close();
    // Whether another field may take this one's place now: nothing is being handed out, and what is being read is given up.
    [[nodiscard]] bool make_way();
    // Takes a field that was read already. `resume`: the history begins empty, but what was decided before still waits to be handed
    // out. `keep`: this is an act of the history.
    enum class History { forget, keep, resume };
    void adopt(FieldSurvey field, const Files& files, History history = History::forget);

    // Does an act and puts it into the history, which owns it. Every act goes through here, also what is none of the survey's.
    void push(QUndoCommand* act);
    void decide_on(const ProbeKey& probe, SetChoice choice, std::optional<LadderPlace> moved_to = std::nullopt);
    // On several sets at once, as one step of the history that it calls `words`.
    void decide_on_all(const std::vector<SetDecision>& decisions, const QString& words);
    // Whether the plan was taken: only one made from the present revision is, and a first look never in place of a whole
    // plan of it.
    bool accept(std::shared_ptr<const Plan> plan);
    // What looks wrong in the walk, most worth looking at first; null until it was judged. Judged anew after each answer.
    [[nodiscard]] std::shared_ptr<const std::vector<Finding>> findings() const { return findings_; }
    [[nodiscard]] bool answered(const std::string& finding) const { return answered_.contains(finding); }
    [[nodiscard]] bool judging() const { return judging_.running(); }
    // One answer to one or many findings, one act of the history. What has no mend can only be refused.
    void answer(const std::vector<Finding>& findings, Answer answer);
    // Corrections of how notes are read, in place of those there were; one act of the history that it calls `words`.
    void use_note_rules(const std::vector<NoteRule>& rules, const QString& words);
    // What a person saw of a mark's digger. A finding that asked about it is answered with the same act.
    void tell_digger(const std::string& mark, SignKind kind, const Finding* asked = nullptr);
    // What the walk did not see, once it was worked out from a whole plan; null until then, and without a track.
    [[nodiscard]] std::shared_ptr<const NotSeen> not_seen() const { return not_seen_; }
    [[nodiscard]] bool looked_back() const { return looked_back_on_ != nullptr; }
    [[nodiscard]] BackgroundWork& looking_back() { return looking_back_; }
    void look_back_again();
    // One part of the survey in place of what it was; one act of the history that it calls `words`. Nothing if nothing changes.
    void edit(SurveyPart part, const QString& words);
    // A person's own mend of marks, in place of an earlier one of the kind on the first of them; and the same taken back.
    void mend(const Mend& mend, const QString& words);
    void lift_mend(const std::string& id, const QString& words);
    void plan_again();
    // Tells all of it as if it were new, and works out anew what holds sentences: they are in the language that was spoken then.
    void say_anew();
    void hand_out(const HandOut& where);

Q_SIGNALS:
    void field_replaced();
    void survey_edited();
    void decided(const plugside::ProbeKey& probe);  // done, undone or redone
    void findings_changed();
    void not_seen_changed();
    void plan_changed();  // another plan, or its staleness
    void refused(const QString& sentence);
    void handed_out(const QStringList& files, const QString& remarks);
    void reopened_hand_out(int decisions);
    void anew_read(int said_without_mark);  // what was said of marks that are no longer there

private:
    using Read = std::function<tl::expected<FieldSurvey, Refusal>(const Progress&)>;
    void start_reading(const Read& read, const std::function<void(FieldSurvey)>& done);
    [[nodiscard]] bool may_start_on_files();
    void take(std::shared_ptr<const FieldSurvey> field, const Files& files, std::vector<Files> steps, History history);
    void push_reading(ReadField now, const QString& words);
    void remember_letters(SystemLetters letters);
    void take_letters_up(int index);
    void apply_answers(const std::vector<AnswerChange>& changes);
    void adopt_edit(std::shared_ptr<FieldSurvey> edited);
    void adopt_work(std::shared_ptr<FieldSurvey> edited);
    void judge_again();
    void look_back();
    [[nodiscard]] QString name_of_set(const ProbeKey& probe) const;

    std::shared_ptr<const FieldSurvey> field_;
    std::shared_ptr<const Plan> plan_;
    using Letters = std::shared_ptr<const SystemLetters>;
    Letters letters_ = std::make_shared<const SystemLetters>();  // of the last whole plan of this field
    std::map<int, Letters> letters_at_;                          // by place in the history, where there was a whole plan
    Files files_;
    std::vector<Files> steps_;  // the files that were read together, in the order of reading
    FileChoices told_;
    std::uint64_t opening_ = 0;
    bool waits_from_before_ = false;  // decisions of an earlier session that were not handed out
    QUndoStack history_;
    std::shared_ptr<const std::vector<Finding>> findings_;
    std::set<std::string> answered_;  // ids of findings with an answer
    std::shared_ptr<const NotSeen> not_seen_;
    std::shared_ptr<const FieldSurvey> looked_back_on_;  // what not_seen_ was worked out from
    BackgroundWork looking_back_{nullptr, BackgroundWork::Overlap::none};
    BackgroundWork planning_{nullptr, BackgroundWork::Overlap::none};
    BackgroundWork judging_;
    BackgroundWork file_work_;
    bool handing_out_ = false;  // what the file work is about
};

}  // namespace plugside
