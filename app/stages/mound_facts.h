// What is known of one mark: what the walker noted, what was put right of it, what the plan makes of it, and its photograph.
// Hidden while nothing is picked.
#pragma once

#include <QFrame>
#include <QLabel>

#include "app/session/choices.h"
#include "app/session/field_session.h"
#include "app/stages/mark_picture.h"

namespace plugside {

// The same as lines of text, the mark's name first.
[[nodiscard]] QStringList mound_facts(const FieldSurvey& field, const Plan* plan, std::size_t mound);

class MoundFacts : public QFrame {
    Q_OBJECT

public:
    // Whether it offers the questions that tell who dug.
    enum class Asks { nothing, who_dug };
    MoundFacts(FieldSession& session, Choices& choices, QWidget* parent = nullptr);
    MoundFacts(FieldSession& session, Choices& choices, Asks asks, QWidget* parent = nullptr);
    [[nodiscard]] MarkPicture& picture() { return *picture_; }

Q_SIGNALS:
    void digger_asked();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void refresh();

    FieldSession& session_;
    Choices& choices_;
    QLabel* name_;
    QLabel* facts_;
    MarkPicture* picture_;
};

}  // namespace plugside
