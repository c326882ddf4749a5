// The slip of the Walk step: what was read, what was not understood, the picked mark's facts.
#pragma once

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QWidget>

#include "app/session/choices.h"
#include "app/session/field_session.h"

namespace plugside {

// "141 marks: 128 gopher mounds, 13 other signs" and what else was read, a line each.
[[nodiscard]] QStringList read_lines(const FieldSurvey& field, LengthUnits units);

class WalkPage : public QWidget {
    Q_OBJECT

public:
    WalkPage(FieldSession& session, Choices& choices, QWidget* parent = nullptr);

Q_SIGNALS:
    void open_wanted();
    void add_wanted();

private:
    void refresh();

    FieldSession& session_;
    Choices& choices_;
    QLabel* read_;
    QLabel* seen_;
    QLabel* findings_heading_;
    QListWidget* findings_;
    QWidget* filled_;
    QLabel* empty_;
    QPushButton* add_;
    std::vector<ReadFinding> listed_;
};

}  // namespace plugside
