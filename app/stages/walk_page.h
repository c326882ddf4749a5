// The slip of the Walk step in four parts: what was read; what looks wrong, one finding at a time; the notes and how they
// were read; what was not seen. Below them the picked mark's facts; in place of them all, when asked for, the questions that
// tell who dug.
#pragma once

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QWidget>
#include <array>

#include "app/session/choices.h"
#include "app/session/field_session.h"
#include "app/stages/digger_key_view.h"
#include "app/stages/findings_view.h"
#include "app/stages/not_seen_view.h"
#include "app/stages/notes_view.h"

namespace plugside {

class MarkKey;
class MoundFacts;

// "141 marks: 128 gopher mounds, 13 other signs" and what else was read, a line each.
[[nodiscard]] QStringList read_lines(const FieldSurvey& field, LengthUnits units);

enum class WalkPart : std::size_t { read, to_look_at, notes, not_seen };

class WalkPage : public QWidget {
    Q_OBJECT

public:
    WalkPage(FieldSession& session, Choices& choices, QWidget* parent = nullptr);
    [[nodiscard]] FindingsView& findings() { return *to_look_at_; }
    [[nodiscard]] NotesView& notes() { return *notes_; }
    [[nodiscard]] NotSeenView& not_seen() { return *not_seen_; }
    [[nodiscard]] MoundFacts& facts() { return *facts_; }
    [[nodiscard]] WalkPart part() const { return part_; }
    void show_part(WalkPart part);
    // The questions about the picked mark's digger; null while they are not asked.
    [[nodiscard]] DiggerKeyView* digger_key() { return digger_open_ ? digger_ : nullptr; }
    void ask_who_dug();
    void leave_digger_key();

Q_SIGNALS:
    void open_wanted();
    void add_wanted();
    void reading_wanted();  // how the files were read is to be seen or changed

private:
    void build_parts();
    void refresh();
    void name_parts();
    void list_findings(const std::vector<ReadFinding>& findings);
    void lay_part();
    void pick_what_is_looked_at();
    [[nodiscard]] QStringList plan_lines() const;

    FieldSession& session_;
    Choices& choices_;
    WalkPart part_ = WalkPart::read;
    bool chosen_ = false;  // the part, by a person
    bool digger_open_ = false;
    std::array<QPushButton*, 4> part_keys_{};
    QWidget* about_;
    QLabel* read_;
    QLabel* said_;
    QLabel* seen_;
    QListWidget* not_understood_;
    MarkKey* mark_key_;
    FindingsView* to_look_at_;
    NotesView* notes_;
    NotSeenView* not_seen_;
    QWidget* filled_;
    DiggerKeyView* digger_;
    QLabel* empty_;
    MoundFacts* facts_;
    QWidget* facts_room_;
    QPushButton* add_;
    QPushButton* how_read_;
    std::vector<ReadFinding> listed_;
};

}  // namespace plugside
