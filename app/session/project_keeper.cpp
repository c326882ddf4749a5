#include "app/session/project_keeper.h"

#include <QCoreApplication>
#include <QTimer>
#include <algorithm>
#include <mutex>
#include <utility>

#include "app/planning/call_there.h"
#include "app/session/project_places.h"

namespace plugside {

namespace {

constexpr int pause_before_next_try_ms = 5000;

}  // namespace

// A project while it is open. What the writer's thread alone uses stands apart from what is waiting for it.
struct ProjectKeeper::Kept {
    std::filesystem::path file;
    std::uint64_t asked = 0;    // the window's thread
    std::uint64_t written = 0;  // the window's thread
    bool trying_again = false;  // the window's thread
    QString why_not;            // the window's thread

    std::mutex mutex;
    std::shared_ptr<const Project> waiting;
    std::uint64_t number = 0;  // of what is waiting

    std::optional<ProjectStore> store;  // the writer's thread, once it was handed over
    bool made = false;                  // the file is there: opened again, not made anew
    bool left = false;                  // closed when nothing waits any more

    // One piece of the writer's work: the latest of what waits, or nothing; with its number.
    std::pair<std::uint64_t, std::optional<Refusal>> write() {
        std::shared_ptr<const Project> project;
        std::uint64_t of = 0;
        {
            const std::lock_guard lock(mutex);
            project = std::move(waiting);
            waiting.reset();
            of = number;
        }
        auto refusal = project ? write(project) : std::nullopt;
        if (refusal) {
            const std::lock_guard lock(mutex);
            if (!waiting) waiting = std::move(project);
        } else if (left) {
            store.reset();
        }
        return {of, std::move(refusal)};
    }
    std::optional<Refusal> write(const std::shared_ptr<const Project>& project) {
        if (!store) {
            auto opened = made ? ProjectStore::open(file) : ProjectStore::make(file, project);
            if (!opened) return opened.error();
            store.emplace(std::move(*opened));
            made = true;
        }
        const auto kept = store->keep(project);
        return kept ? std::nullopt : std::optional(kept.error());
    }
};

ProjectKeeper::ProjectKeeper(FieldSession& session, Imagery& imagery, Choices& choices, QObject* parent)
    : QObject(parent), session_(session), imagery_(imagery), choices_(choices) {
    connect(&session_, &FieldSession::field_replaced, this, &ProjectKeeper::follow_field);
    // after the act: while it is being done the history does not count it yet
    connect(&session_.history(), &QUndoStack::indexChanged, this, &ProjectKeeper::keep);
    connect(&session_, &FieldSession::handed_out, this, &ProjectKeeper::keep);
    connect(&imagery_, &Imagery::changed, this, &ProjectKeeper::keep);
    connect(&choices_, &Choices::units_changed, this, &ProjectKeeper::keep);
}

ProjectKeeper::~ProjectKeeper() = default;

std::optional<std::filesystem::path> ProjectKeeper::file() const {
    return at_hand_ ? std::optional(at_hand_->file) : std::nullopt;
}

bool ProjectKeeper::named() const { return at_hand_ && !is_unnamed(at_hand_->file); }

bool ProjectKeeper::kept() const { return !at_hand_ || at_hand_->asked == at_hand_->written; }

QString ProjectKeeper::why_not() const { return at_hand_ ? at_hand_->why_not : QString(); }

bool ProjectKeeper::settle(std::chrono::milliseconds most) {
    static_cast<void>(writer_.wait(most));
    QCoreApplication::sendPostedEvents(this);  // what the writer has to say
    return kept();
}

Project ProjectKeeper::snapshot() const {
    Project project;
    project.field = session_.field();
    for (const auto& together : session_.steps()) {
        project.steps.emplace_back();
        for (const auto& file : together) project.steps.back().push_back(as_kept(file));
    }
    for (const auto& [file, guess] : session_.told().read.tables) project.tables[as_kept(file)] = guess;
    for (const auto& [file, guesses] : session_.told().read.layers) project.layers[as_kept(file)] = guesses;
    project.norths = session_.told().north;
    project.pictures = imagery_.named();
    for (ProjectPicture& picture : project.pictures) picture.file = as_kept(picture.file);
    project.imagery_tone = imagery_.tone();
    project.units = choices_.units();
    project.not_handed_out = session_.not_handed_out();
    return project;
}

void ProjectKeeper::follow_field() {
    if (resuming_ || !session_.field()) return;
    if (passing_ && passing_(session_.files())) {
        leave(std::exchange(at_hand_, nullptr), false);
        Q_EMIT changed();
        return;
    }
    if (!at_hand_ || field_kept_ != session_.opening()) {
        leave(std::exchange(at_hand_, nullptr), false);
        at_hand_ = std::make_shared<Kept>();
        at_hand_->file = place_for(QString::fromStdString(session_.field()->field_name));
        field_kept_ = session_.opening();
        remember_project(at_hand_->file);
    }
    keep();
}

void ProjectKeeper::keep() {
    // what is told while another field takes this one's place is not about this one's project any more
    if (resuming_ || !at_hand_ || !session_.field() || field_kept_ != session_.opening()) return;
    ++at_hand_->asked;
    {
        const std::lock_guard lock(at_hand_->mutex);
        at_hand_->waiting = std::make_shared<const Project>(snapshot());
        at_hand_->number = at_hand_->asked;
    }
    put(at_hand_);
    Q_EMIT changed();
}

void ProjectKeeper::put(const AtHand& project) {
    writer_.tell([this, project] {
        auto [number, refusal] = project->write();
        call_there(this,
                   [this, project, number = number, refusal = std::move(refusal)] { report(project, number, refusal); });
    });
}

void ProjectKeeper::leave(const AtHand& project, bool remove_file) {
    if (!project) return;
    writer_.tell([project, remove_file] {
        const std::lock_guard lock(project->mutex);
        project->left = true;
        if (remove_file) project->waiting.reset();
        if (!project->waiting) project->store.reset();
        std::error_code ignored;
        if (remove_file) std::filesystem::remove(project->file, ignored);
    });
}

void ProjectKeeper::report(const AtHand& project, std::uint64_t number, const std::optional<Refusal>& refusal) {
    if (!refusal) {
        project->written = std::max(project->written, number);
        project->why_not.clear();
        Q_EMIT changed();
        return;
    }
    const QString why = QString::fromStdString(sentence(*refusal));
    const bool news = std::exchange(project->why_not, why) != why;
    if (!std::exchange(project->trying_again, true))
        QTimer::singleShot(pause_before_next_try_ms, this, [this, project] {
            project->trying_again = false;
            if (project->written < project->asked) put(project);
        });
    if (news) Q_EMIT refused(tr("The last change is not in the project file yet; it is tried again. %1").arg(why));
    Q_EMIT changed();
}

void ProjectKeeper::try_again() {
    if (!kept()) put(at_hand_);
}

void ProjectKeeper::open(const std::filesystem::path& project) {
    std::error_code error;
    if (at_hand_ && std::filesystem::equivalent(project, at_hand_->file, error)) {
        Q_EMIT refused(tr("%1 is open here already.").arg(as_text(project)));
        return;
    }
    if (!session_.make_way()) return;
    opening_ = true;
    writer_.tell([this, project] {
        auto store = std::make_shared<tl::expected<ProjectStore, Refusal>>(ProjectStore::open(project));
        call_there(this, [this, store] { take(store); });
    });
}

void ProjectKeeper::take(const std::shared_ptr<tl::expected<ProjectStore, Refusal>>& store) {
    opening_ = false;
    if (!*store) {
        Q_EMIT refused(QString::fromStdString(sentence(store->error())));
        return;
    }
    if (!session_.make_way()) return;
    const std::shared_ptr<const Project> project = (*store)->project();
    const auto earlier = (*store)->earlier_kept_as();
    leave(std::exchange(at_hand_, nullptr), false);
    go_on_in(std::move(**store));
    resuming_ = true;
    FileChoices told;
    told.read.tables = project->tables;
    told.read.layers = project->layers;
    told.north = project->norths;
    session_.resume(*project->field, project->steps, told, project->not_handed_out);
    choices_.use(project->units);
    imagery_.restore(project->pictures, project->imagery_tone);
    resuming_ = false;
    field_kept_ = session_.opening();
    Q_EMIT changed();
    Q_EMIT opened(earlier ? as_text(*earlier) : QString());
}

void ProjectKeeper::go_on_in(ProjectStore store) {
    at_hand_ = std::make_shared<Kept>();
    at_hand_->file = store.file();
    at_hand_->made = true;
    at_hand_->store.emplace(std::move(store));
    remember_project(at_hand_->file);
}

void ProjectKeeper::keep_as(const std::filesystem::path& wanted) {
    if (!at_hand_ || !session_.field()) return;
    const auto file =
        wanted.extension() == project_ending ? wanted : std::filesystem::path(wanted.string() + project_ending);
    std::error_code error;
    if (std::filesystem::equivalent(file, at_hand_->file, error)) {
        Q_EMIT named_anew(as_text(at_hand_->file));
        return;
    }
    writer_.tell([this, file, before = at_hand_, project = std::make_shared<const Project>(snapshot())] {
        auto store = std::make_shared<tl::expected<ProjectStore, Refusal>>(ProjectStore::make(file, project));
        call_there(this, [this, before, store] { take_name(before, store); });
    });
}

void ProjectKeeper::take_name(const AtHand& before, const std::shared_ptr<tl::expected<ProjectStore, Refusal>>& store) {
    if (!*store) {
        Q_EMIT refused(QString::fromStdString(sentence(store->error())));
        return;
    }
    const QString file = as_text((*store)->file());
    if (before != at_hand_) {  // another field was opened meanwhile: this one's file is whole, and closed again
        remember_project((*store)->file());
        Q_EMIT named_anew(file);
        return;
    }
    go_on_in(std::move(**store));
    keep();  // what was done while the file was being made
    const bool was_unnamed = is_unnamed(before->file);
    if (was_unnamed) forget_project(before->file);
    leave(before, was_unnamed);
    Q_EMIT named_anew(file);
}

}  // namespace plugside
