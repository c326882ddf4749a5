#include "app/session/field_session.h"

#include <QFile>
#include <QStringList>
#include <algorithm>
#include <chrono>
#include <utility>

#include "app/commands/decide_command.h"
#include "app/commands/note_rules_command.h"
#include "app/commands/read_command.h"
#include "core/mending/findings.h"
#include "core/mending/sentences.h"
#include "core/plan/make_plan.h"
#include "geo/read/field_reader.h"

namespace plugside {

namespace {

QString as_text(const std::filesystem::path& file) { return QFile::decodeName(file.c_str()); }

FileChoices with_choices(FileChoices told, const FileChoices& more) {
    for (const auto& [file, guess] : more.read.tables) told.read.tables[file] = guess;
    for (const auto& [file, guesses] : more.read.layers) told.read.layers[file] = guesses;
    for (const auto& [name, north] : more.north) told.north[name] = north;
    return told;
}

}  // namespace

FieldSession::FieldSession(QObject* parent) : QObject(parent) {
    connect(&planning_, &BackgroundWork::ended, this, &FieldSession::plan_changed);
    connect(&history_, &QUndoStack::indexChanged, this, &FieldSession::take_letters_up);
}

FieldSession::~FieldSession() {
    history_.disconnect(this);  // it tells of its end, when what would plan anew is gone
}

bool FieldSession::plan_is_current() const {
    return field_ && plan_ && !plan_->first_look && plan_->revision == field_->survey.revision;
}

void FieldSession::open(const Files& files, const FileChoices& choices) {
    if (files.empty()) return;
    start_reading([files, choices](const Progress& progress) { return read_as_told(files, choices, progress); },
                  [this, files, choices](FieldSurvey field) {
                      const int from_file = static_cast<int>(field.survey.decisions.size());
                      told_ = choices;
                      ++opening_;
                      adopt(std::move(field), files, History::forget);
                      if (from_file > 0) Q_EMIT reopened_hand_out(from_file);
                  });
}

void FieldSession::add(const Files& more, const FileChoices& choices) {
    if (more.empty()) return;
    if (!field_) {
        open(more, choices);
        return;
    }
    Files all = files_;
    for (const auto& file : more)
        if (std::find(all.begin(), all.end(), file) == all.end()) all.push_back(file);
    start_reading(
        [more, choices, field = field_](const Progress& progress) { return add_as_told(*field, more, choices, progress); },
        [this, more, choices, all, before = field_](FieldSurvey field) {
            // what was decided while the files were being read would be lost: they are added to that
            if (field_ != before) {
                add(more, choices);
                return;
            }
            ReadField now{std::make_shared<const FieldSurvey>(std::move(field)), all, steps_, with_choices(told_, choices)};
            now.steps.push_back(more);
            push_reading(std::move(now), more.size() == 1 ? tr("add %1").arg(as_text(more.front().filename()))
                                                          : tr("add %1 files").arg(more.size()));
        });
}

void FieldSession::read_again(const Files& wanted, const FileChoices& choices) {
    if (!field_) return;
    auto steps = steps_;
    for (Files& files : steps)
        std::erase_if(files,
                      [&](const auto& file) { return std::find(wanted.begin(), wanted.end(), file) == wanted.end(); });
    auto carried = std::make_shared<CarriedOver>();
    start_reading(
        [steps, choices, carried, field = field_](const Progress& progress) -> tl::expected<FieldSurvey, Refusal> {
            auto anew = read_anew(*field, steps, choices, progress);
            if (!anew) return tl::unexpected(anew.error());
            *carried = anew->carried;
            return std::move(anew->field);
        },
        [this, wanted, steps, choices, carried, before = field_](FieldSurvey field) {
            if (field_ != before) {
                read_again(wanted, choices);
                return;
            }
            Files files;
            for (const auto& file : files_)
                if (std::find(wanted.begin(), wanted.end(), file) != wanted.end()) files.push_back(file);
            push_reading({std::make_shared<const FieldSurvey>(std::move(field)), files, steps, with_choices(told_, choices)},
                         tr("read the files again"));
            Q_EMIT anew_read(static_cast<int>(carried->without_mark));
        });
}

void FieldSession::push(QUndoCommand* act) {
    // what was undone before it can no more be redone
    letters_at_.erase(letters_at_.upper_bound(history_.index()), letters_at_.end());
    history_.push(act);
}

void FieldSession::push_reading(ReadField now, const QString& words) {
    push(new ReadCommand({field_, files_, steps_, told_}, std::move(now), words, [this](const ReadField& to) {
        auto field = to.field;
        if (field->survey.revision <= field_->survey.revision) {
            auto later = std::make_shared<FieldSurvey>(*field);
            later->survey.revision = field_->survey.revision + 1;
            field = std::move(later);
        }
        told_ = to.told;
        take(std::move(field), to.files, to.steps, History::keep);
    }));
}

bool FieldSession::may_start_on_files() {
    if (file_work_.running() && handing_out_) {
        Q_EMIT refused(tr("The plan is still being handed out. Open the file when that is done, or stop it."));
        return false;
    }
    handing_out_ = false;
    return true;
}

bool FieldSession::make_way() {
    if (!may_start_on_files()) return false;
    file_work_.stop();
    return true;
}

void FieldSession::resume(FieldSurvey field, std::vector<Files> steps, const FileChoices& told, bool not_handed_out) {
    Files files;
    for (const Files& together : steps)
        for (const auto& file : together)
            if (std::find(files.begin(), files.end(), file) == files.end()) files.push_back(file);
    told_ = told;
    ++opening_;
    waits_from_before_ = not_handed_out;
    take(std::make_shared<const FieldSurvey>(std::move(field)), files, std::move(steps), History::resume);
}

void FieldSession::close() {
    for (BackgroundWork* work : {&looking_back_, &planning_, &judging_, &file_work_}) work->stop();
    ++opening_;
    field_.reset();
    plan_.reset();
    not_seen_.reset();
    looked_back_on_.reset();
    findings_.reset();
    answered_.clear();
    letters_ = std::make_shared<const SystemLetters>();
    letters_at_.clear();
    files_.clear();
    steps_.clear();
    told_ = {};
    waits_from_before_ = false;
    history_.clear();
}

void FieldSession::look_into_files(BackgroundWork::WorkInStages look) {
    if (may_start_on_files()) file_work_.start_in_stages(std::move(look));
}

void FieldSession::start_reading(const Read& read, const std::function<void(FieldSurvey)>& done) {
    if (!may_start_on_files()) return;
    file_work_.start([this, read, done](const Progress& progress) -> BackgroundWork::Apply {
        auto result = std::make_shared<tl::expected<FieldSurvey, Refusal>>(read(progress));
        return [this, done, result] {
            if (*result)
                done(std::move(**result));
            else if (result->error().code != Refusal::Code::stopped)
                Q_EMIT refused(QString::fromStdString(sentence(result->error())));
        };
    });
}

void FieldSession::say_anew() {
    Q_EMIT field_replaced();
    Q_EMIT plan_changed();
    Q_EMIT findings_changed();
    Q_EMIT not_seen_changed();
    plan_again();
    judge_again();
    look_back_again();
}

void FieldSession::adopt(FieldSurvey field, const Files& files, History history) {
    take(std::make_shared<const FieldSurvey>(std::move(field)), files, {files}, history);
}

void FieldSession::take(std::shared_ptr<const FieldSurvey> field, const Files& files, std::vector<Files> steps,
                        History history) {
    planning_.stop();
    looking_back_.stop();
    not_seen_.reset();
    looked_back_on_.reset();
    if (history != History::keep) {
        letters_ = std::make_shared<const SystemLetters>();
        letters_at_.clear();
        history_.clear();
    }
    if (history == History::forget) waits_from_before_ = false;
    field_ = std::move(field);
    plan_.reset();
    files_ = files;
    steps_ = std::move(steps);
    findings_.reset();
    answered_.clear();
    for (const MendAnswer& answer : field_->survey.answers) answered_.insert(answer.finding);
    Q_EMIT field_replaced();
    plan_again();
    judge_again();
}

QString FieldSession::name_of_set(const ProbeKey& probe) const {
    if (plan_)
        for (std::size_t i = 0; i < plan_->sets.size(); ++i)
            if (plan_->probes.at(plan_->sets[i].probe).key == probe) return tr("set %1").arg(i + 1);
    return tr("set at %1").arg(QString::fromStdString(probe.from_mound));
}

void FieldSession::decide_on(const ProbeKey& probe, SetChoice choice, std::optional<LadderPlace> moved_to) {
    if (!field_) return;
    const auto before = decision_on(field_->survey, probe);
    const SetDecision after{probe, choice, choice == SetChoice::moved ? moved_to : std::nullopt};
    if (before ? *before == after : choice == SetChoice::proposed) return;
    decide_on_all({after}, decision_words(choice, name_of_set(probe)));
}

void FieldSession::decide_on_all(const std::vector<SetDecision>& decisions, const QString& words) {
    if (!field_ || decisions.empty()) return;
    push(new DecideCommand(field_->survey, decisions, words,
                           [this](const ListChange<SetDecision>& change, const ProbeKey& on) {
                               auto edited = std::make_shared<FieldSurvey>(*field_);
                               put(edited->survey.decisions, change);
                               ++edited->survey.revision;
                               field_ = std::move(edited);
                               Q_EMIT survey_edited();
                               plan_again();
                               Q_EMIT decided(on);
                           }));
}

void FieldSession::answer(const std::vector<Finding>& findings, Answer answer) {
    if (!field_ || findings.empty()) return;
    std::vector<AnswerChange> changes;
    for (const Finding& finding : findings)
        if (finding.mend || answer == Answer::refused)
            changes.push_back({finding.id, MendAnswer{finding.id, answer, finding.mend.value_or(Mend{})}});
    if (changes.empty()) return;
    const QString what = changes.size() == 1
                             ? tr("finding of %1").arg(QString::fromStdString(listed(findings.front().marks)))
                             : tr("%1 findings").arg(changes.size());
    push(new AnswerCommand(field_->survey, std::move(changes),
                           answer == Answer::accepted ? tr("accept %1").arg(what) : tr("refuse %1").arg(what),
                           [this](const std::vector<AnswerChange>& to) { apply_answers(to); }));
}

void FieldSession::apply_answers(const std::vector<AnswerChange>& changes) {
    auto edited = std::make_shared<FieldSurvey>(*field_);
    change_answers(edited->survey, changes);
    adopt_edit(std::move(edited));
}

void FieldSession::adopt_edit(std::shared_ptr<FieldSurvey> edited) {
    field_ = std::move(edited);
    answered_.clear();
    for (const MendAnswer& answer : field_->survey.answers) answered_.insert(answer.finding);
    Q_EMIT survey_edited();
    plan_again();
    judge_again();
}

// Neither plan nor findings depend on how the work is done: what is there stays current.
void FieldSession::adopt_work(std::shared_ptr<FieldSurvey> edited) {
    field_ = std::move(edited);
    Q_EMIT survey_edited();
    if (judging_.running()) judge_again();
}

void FieldSession::use_note_rules(const std::vector<NoteRule>& rules, const QString& words) {
    if (!field_ || rules == field_->survey.note_rules) return;
    push(new NoteRulesCommand(change_by_rules(*field_, rules), words, [this](const NoteRulesChange& change) {
        auto edited = std::make_shared<FieldSurvey>(*field_);
        put(edited->survey, change);
        adopt_edit(std::move(edited));
    }));
}

void FieldSession::edit(SurveyPart part, const QString& words) {
    if (!field_) return;
    const Survey& survey = field_->survey;
    SurveyPart before = part_like(survey, part);
    if (before == part) return;
    push(new SurveyPartCommand(std::move(before), std::move(part), words, [this](const SurveyPart& to) {
        auto edited = std::make_shared<FieldSurvey>(*field_);
        put_part(edited->survey, to);
        if (std::holds_alternative<HeldWork>(to))
            adopt_work(std::move(edited));
        else
            adopt_edit(std::move(edited));
    }));
}

void FieldSession::mend(const Mend& mend, const QString& words) {
    if (!field_ || mend.marks.empty()) return;
    const std::string id = own_mend_id(mend.kind, mend.marks.front());
    push(new AnswerCommand(field_->survey, {{id, MendAnswer{id, Answer::accepted, mend}}}, words,
                           [this](const std::vector<AnswerChange>& to) { apply_answers(to); }));
}

void FieldSession::lift_mend(const std::string& id, const QString& words) {
    if (!field_ || answer_to(field_->survey, id) == nullptr) return;
    push(new AnswerCommand(field_->survey, {{id, std::nullopt}}, words,
                           [this](const std::vector<AnswerChange>& to) { apply_answers(to); }));
}

void FieldSession::tell_digger(const std::string& mark, SignKind kind, const Finding* asked) {
    if (!field_) return;
    const auto& mounds = field_->survey.mounds;
    const auto mound = std::find_if(mounds.begin(), mounds.end(), [&](const Mound& one) { return one.name == mark; });
    if (mound == mounds.end()) return;
    std::vector<AnswerChange> changes;
    const bool as_proposed = asked && asked->mend && asked->mend->sign == kind;
    if (asked)
        changes.push_back({asked->id, MendAnswer{asked->id, as_proposed ? Answer::accepted : Answer::refused,
                                                 asked->mend.value_or(Mend{})}});
    if (!as_proposed && mound->kind != kind) {
        Mend mend;
        mend.kind = MendKind::sign;
        mend.marks = {mark};
        mend.sign = kind;
        const std::string id = own_mend_id(MendKind::sign, mark);
        changes.push_back({id, MendAnswer{id, Answer::accepted, std::move(mend)}});
    }
    if (changes.empty()) return;
    push(new AnswerCommand(field_->survey, std::move(changes), tr("digger of %1").arg(QString::fromStdString(mark)),
                           [this](const std::vector<AnswerChange>& to) { apply_answers(to); }));
}

void FieldSession::look_back() {
    if (!plan_is_current()) return;
    const auto same_ground = [](const Survey& a, const Survey& b) {
        return a.mounds == b.mounds && a.walks == b.walks && a.ground == b.ground && a.known == b.known;
    };
    if (looked_back_on_ && same_ground(looked_back_on_->survey, field_->survey)) return;
    look_back_again();
}

void FieldSession::look_back_again() {
    if (!plan_is_current()) return;
    looking_back_.start([this, field = field_, plan = plan_](const Progress& progress) -> BackgroundWork::Apply {
        auto seen = plugside::not_seen(field->survey, *plan, {}, progress);
        if (progress.stopped()) return {};
        return [this, field, result = seen ? std::make_shared<const NotSeen>(std::move(*seen)) : nullptr] {
            not_seen_ = result;
            looked_back_on_ = field;
            Q_EMIT not_seen_changed();
        };
    });
}

void FieldSession::judge_again() {
    if (!field_) return;
    judging_.start([this, field = field_](const Progress& progress) -> BackgroundWork::Apply {
        auto found = findings_of(field->survey, {}, progress);
        if (!found) return {};
        found->insert(found->begin(), field->of_reading.begin(), field->of_reading.end());
        return [this, field, findings = std::make_shared<const std::vector<Finding>>(std::move(*found))] {
            if (field != field_) return;
            findings_ = findings;
            Q_EMIT findings_changed();
        };
    });
}

void FieldSession::plan_again() {
    if (!field_) return;
    // an outdated whole plan is the better picture of what a decision changes; a first look stands in only where there is
    // none
    const bool wants_first_look = !plan_ || plan_->first_look;
    planning_.start_in_stages(
        [this, field = field_, letters = letters_, wants_first_look](
            const Progress& progress, const BackgroundWork::Meanwhile& meanwhile) -> BackgroundWork::Apply {
            const auto applying = [this](Plan made) -> BackgroundWork::Apply {
                return [this, plan = std::make_shared<const Plan>(std::move(made))] { accept(plan); };
            };
            PlanWishes wishes{*letters, {}};
            if (wants_first_look) wishes.first_look = [&](Plan first) { meanwhile(applying(std::move(first))); };
            auto made = make_plan(field->survey, {}, progress, wishes);
            if (!made) return {};
            return applying(std::move(*made));
        });
    Q_EMIT plan_changed();
}

bool FieldSession::accept(std::shared_ptr<const Plan> plan) {
    if (!field_ || !plan || plan->revision != field_->survey.revision || plan->mounds.size() != field_->survey.mounds.size())
        return false;
    if (plan->first_look && plan_is_current()) return false;
    plan_ = std::move(plan);
    if (!plan_->first_look) remember_letters(letters_of(field_->survey, *plan_));
    Q_EMIT plan_changed();
    look_back();
    return true;
}

void FieldSession::remember_letters(SystemLetters letters) {
    // most acts change no letter: one map serves them all
    if (*letters_ != letters) letters_ = std::make_shared<const SystemLetters>(std::move(letters));
    letters_at_[history_.index()] = letters_;
}

void FieldSession::take_letters_up(int index) {
    const auto before = letters_at_.find(index);
    if (before == letters_at_.end() || *before->second == *letters_) return;
    letters_ = before->second;
    plan_again();
}

void FieldSession::hand_out(const HandOut& where) {
    if (!field_ || !plan_is_current()) return;
    handing_out_ = true;
    const int handed_at = history_.index();
    file_work_.start(
        [this, where, handed_at, field = field_, plan = plan_](const Progress& progress) -> BackgroundWork::Apply {
            const UtcTime now = std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
            StagedFiles files;
            const auto remarks = stage_hand_out(where, *field, *plan, now, files, progress);
            if (progress.stopped()) return {};
            std::optional<Refusal> refusal;
            if (!remarks)
                refusal = remarks.error();
            else if (const auto placed = files.commit(); !placed)
                refusal = placed.error();
            if (refusal) return [this, refusal] { Q_EMIT refused(QString::fromStdString(sentence(*refusal))); };
            return [this, where, handed_at, said = *remarks] {
                // only the GeoPackage gives the decisions back when it is opened again
                if (!where.file_of(HandOutFormat::geopackage).empty() && history_.index() == handed_at) {
                    waits_from_before_ = false;
                    history_.setClean();
                }
                QStringList names, lines;
                for (const std::filesystem::path& name : where.told_names()) names << as_text(name);
                for (const std::string& line : said) lines << QString::fromStdString(line);
                Q_EMIT handed_out(names, lines.join(QLatin1Char('\n')));
            };
        });
}

}  // namespace plugside
