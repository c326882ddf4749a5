// The files that a person brought, laid out before they are read: what each holds, what was said of it, what is left out.
//
// lay_out: looks into the files away from the window's thread. Where nothing deserves a choice (receivers' walks,
// photographs,
//          ground by our own names), or nothing can be read at all, they are read at once and `laid_out` does not come.
//          Files brought while others lie here join them.
// Choices: a changed look is shown at once and counted anew in the background; what an earlier change would have given is
//          forgotten.
// Left out: an entry that cannot be read is left out from the start, but for a field that is read again: there it would take
//          away what the field has, so that a person has to say so.
// read:    asks the session to read all that is not left out; `read_done` or `read_failed` follows, or neither where it is
//          stopped, and the files lie here as before.
#pragma once

#include <QObject>
#include <QStringList>
#include <memory>
#include <set>
#include <vector>

#include "app/reading/file_look.h"
#include "app/reading/place_words.h"
#include "app/session/field_session.h"

namespace plugside {

class ReadingDesk : public QObject {
    Q_OBJECT

public:
    enum class Purpose { opening, adding, reading_again };

    explicit ReadingDesk(FieldSession& session, QObject* parent = nullptr);
    ~ReadingDesk() override;

    void lay_out(const FieldSession::Files& files, Purpose purpose);
    // The files of the open field, as they were read.
    void lay_out_again();
    void clear();

    [[nodiscard]] Purpose purpose() const { return purpose_; }
    [[nodiscard]] bool empty() const { return looks_.empty(); }
    [[nodiscard]] const std::vector<FileLook>& looks() const { return looks_; }
    [[nodiscard]] bool left_out(std::size_t entry) const { return left_out_.contains(entry); }
    // Nothing of what cannot be read can be taken in.
    void leave_out(std::size_t entry, bool out);
    // Still being counted with what was said last.
    [[nodiscard]] bool counting(std::size_t entry) const { return open_.contains(entry); }
    // Nothing that would be read is still being counted: all questions are known.
    [[nodiscard]] bool settled() const;

    // The entry is to be read like this; `other_columns`: see preview_again.
    void change(std::size_t entry, FileLook look, bool other_columns = false);
    [[nodiscard]] North north_of(std::size_t entry) const;
    void tell_north(std::size_t entry, North north);
    void tell_north_of_all(North north);

    // Where the other entries' marks lie, and the open field that these files are added to.
    [[nodiscard]] std::vector<NamedPlace> places_beside(std::size_t entry) const;
    // The first entry that waits for an answer and is not left out.
    [[nodiscard]] std::optional<std::size_t> first_open_question() const;
    [[nodiscard]] std::size_t open_questions() const;
    [[nodiscard]] FileChoices choices() const;
    // All that is not left out, in the order it is read: receivers' walks before tables, layers and photographs.
    [[nodiscard]] FieldSession::Files wanted() const;
    [[nodiscard]] QStringList names_left_out() const;

    void read();
    [[nodiscard]] bool reading() const { return reading_; }
    void stop_reading();

Q_SIGNALS:
    void laid_out();
    void look_changed(int entry);
    void read_done();
    void read_failed(const QString& sentence);
    void read_stopped();

private:
    void take(std::vector<FileLook> looks);
    void read_at_once(const FieldSession::Files& files);
    void work_on_open();

    FieldSession& session_;
    Purpose purpose_ = Purpose::opening;
    FieldSession::Files files_;
    FileChoices told_;
    std::vector<FileLook> looks_;
    std::vector<bool> other_columns_;
    std::set<std::size_t> left_out_;
    std::set<std::size_t> open_;  // to be counted anew
    BackgroundWork counting_;
    bool looking_ = false;
    bool reading_ = false;
};

}  // namespace plugside
