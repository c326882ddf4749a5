// Puts every change of the open field into its project file at once: decisions, answers, the ground, undo and redo, added files,
// pictures under it, units. Nobody saves.
//
// Where:    a field that was read from files gets a project of its own in the program's data (project_places.h) until it is given a
//           name; `keep_as` gives it one, here and now, and the unnamed file goes.
// When:     with the signal that tells of the change. The window's thread takes a snapshot (the survey itself is shared, not copied);
//           writing is done elsewhere, in order, each time in one transaction. Acts that follow each other faster than the disk takes
//           them are put there together: the file is always as it was after some whole act.
// kept:     whether the file holds the field as it is now.
// Failure:  told once by `refused`; the change stays in memory, with what comes after it, and is tried again every few seconds and
//           with every later act. `why_not` says what stands against it.
// open:     what cannot be opened is refused, and the field at hand stays.
// Passing:  a field read from files of which `set_passing` says so (the sample) is looked at only: no project is made of it.
// Destruction waits until what was handed to the writer is written or has failed.
#pragma once

#include <QObject>
#include <QString>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>

#include "app/session/choices.h"
#include "app/session/field_session.h"
#include "app/session/imagery.h"
#include "app/session/ordered_work.h"
#include "geo/store/project_store.h"

namespace plugside {

class ProjectKeeper : public QObject {
    Q_OBJECT

public:
    ProjectKeeper(FieldSession& session, Imagery& imagery, Choices& choices, QObject* parent = nullptr);
    ~ProjectKeeper() override;

    // Of the field at hand; nothing before the first one.
    [[nodiscard]] std::optional<std::filesystem::path> file() const;
    // The person gave it its name.
    [[nodiscard]] bool named() const;
    [[nodiscard]] bool kept() const;
    [[nodiscard]] QString why_not() const;
    // Waits for the writer, for at most `most`: whether the file then holds everything.
    bool settle(std::chrono::milliseconds most = std::chrono::seconds(3));

    using Passing = std::function<bool(const FieldSession::Files&)>;
    void set_passing(Passing passing) { passing_ = std::move(passing); }
    void try_again();
    void open(const std::filesystem::path& project);
    void keep_as(const std::filesystem::path& project);
    [[nodiscard]] bool opening() const { return opening_; }
    // The field as a project, as it would be kept now. A field is open.
    [[nodiscard]] Project snapshot() const;

Q_SIGNALS:
    void changed();                               // the file, its name, whether all is kept
    void opened(const QString& earlier_kept_as);  // empty: the project was of this version's form
    void named_anew(const QString& file);
    void refused(const QString& sentence);

private:
    struct Kept;
    using AtHand = std::shared_ptr<Kept>;
    void follow_field();
    void keep();
    void put(const AtHand& project);
    void leave(const AtHand& project, bool remove_file);
    void report(const AtHand& project, std::uint64_t number, const std::optional<Refusal>& refusal);
    void take(const std::shared_ptr<tl::expected<ProjectStore, Refusal>>& store);
    void take_name(const AtHand& before, const std::shared_ptr<tl::expected<ProjectStore, Refusal>>& store);
    void go_on_in(ProjectStore store);

    FieldSession& session_;
    Imagery& imagery_;
    Choices& choices_;
    AtHand at_hand_;
    std::uint64_t field_kept_ = 0;  // FieldSession::opening of the field at hand
    bool opening_ = false;
    bool resuming_ = false;
    Passing passing_;
    OrderedWork writer_;  // last: it ends before what its work speaks to goes
};

}  // namespace plugside
