// A line over the map that says what is being worked on and how far it is, with a button to stop it. It shows itself only
// when the work takes long enough to be noticed, and when a plan was stopped and is out of date.
#pragma once

#include <QFrame>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>

#include "app/session/field_session.h"

namespace plugside {

class WorkBanner : public QFrame {
    Q_OBJECT

public:
    explicit WorkBanner(FieldSession& session, QWidget* map);

private:
    void refresh();
    void place();

    FieldSession& session_;
    QLabel* words_;
    QProgressBar* share_;
    QPushButton* button_;
    QTimer patience_;
};

}  // namespace plugside
