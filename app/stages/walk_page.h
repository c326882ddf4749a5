// The slip of the Walk step: what was read; what looks wrong, one finding at a time; what was not understood; the picked
// mark's facts.
#pragma once

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QWidget>

#include "app/session/choices.h"
#include "app/session/field_session.h"
#include "app/stages/findings_view.h"

namespace plugside {

class MarkKey;

// "141 marks: 128 gopher mounds, 13 other signs" and what else was read, a line each.
[[nodiscard]] QStringList read_lines(const FieldSurvey& field, LengthUnits units);

class WalkPage : public QWidget {
    Q_OBJECT

public:
    WalkPage(FieldSession& session, Choices& choices, QWidget* parent = nullptr);
    [[nodiscard]] FindingsView& findings() { return *to_look_at_; }

Q_SIGNALS:
    void open_wanted();
    void add_wanted();
    void reading_wanted();  // how the files were read is to be seen or changed

private:
    void refresh();
    void show_part(bool not_understood);

    FieldSession& session_;
    Choices& choices_;
    QLabel* read_;
    QLabel* seen_;
    QPushButton* look_key_;
    QPushButton* words_key_;
    FindingsView* to_look_at_;
    QListWidget* not_understood_;
    MarkKey* mark_key_;
    QWidget* filled_;
    QLabel* empty_;
    QPushButton* add_;
    QPushButton* how_read_;
    std::vector<ReadFinding> listed_;
};

}  // namespace plugside
