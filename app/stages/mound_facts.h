// What is known of one mark: what the walker noted, and what the plan makes of it. Hidden while nothing is picked.
#pragma once

#include <QFrame>
#include <QLabel>

#include "app/session/choices.h"
#include "app/session/field_session.h"

namespace plugside {

// The same as lines of text, the mark's name first.
[[nodiscard]] QStringList mound_facts(const FieldSurvey& field, const Plan* plan, std::size_t mound);

class MoundFacts : public QFrame {
    Q_OBJECT

public:
    MoundFacts(FieldSession& session, Choices& choices, QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void refresh();

    FieldSession& session_;
    Choices& choices_;
    QLabel* name_;
    QLabel* facts_;
};

}  // namespace plugside
