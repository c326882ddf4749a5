// Who dug here: one question at a time about what a person can see, an answer beside a drawing of it, to the end: a kind, or
// that it cannot be told. Taken, the kind becomes the mark's; what was recorded stays beside it, and the act can be undone.
//
// Keys: 1, 2, 3 answer; Backspace goes back a question; Enter takes the kind; Esc puts the key away.
#pragma once

#include <QAbstractButton>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <QWidget>
#include <optional>
#include <vector>

#include "app/session/choices.h"
#include "app/session/field_session.h"
#include "core/mending/digger_key.h"

namespace plugside {

// One answer: its number, its drawing, its words.
class DiggerAnswerButton : public QAbstractButton {
    Q_OBJECT

public:
    DiggerAnswerButton(int number, const DiggerAnswer& answer, Choices& choices, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override { return {320, heightForWidth(320)}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {200, 84}; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] double words_left() const;

    int number_;
    const DiggerAnswer& answer_;
    Choices& choices_;
};

class DiggerKeyView : public QWidget {
    Q_OBJECT

public:
    DiggerKeyView(FieldSession& session, Choices& choices, QWidget* parent = nullptr);

    // Begins with the first question about that mark; `asked`: the finding that raised the question.
    void ask_about(const std::string& mark, const Finding* asked = nullptr);
    [[nodiscard]] const std::string& mark() const { return mark_; }
    // The question shown, or nothing at an end.
    [[nodiscard]] std::optional<std::size_t> question() const;
    // The answer that ended the key, or nothing before.
    [[nodiscard]] const DiggerAnswer* end() const { return end_; }

public Q_SLOTS:
    void answer(int number);  // from 1
    void back();
    void take();

Q_SIGNALS:
    void done();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void show_question();
    void show_end();

    FieldSession& session_;
    Choices& choices_;
    std::string mark_;
    std::optional<Finding> asked_;
    std::vector<std::size_t> way_;  // questions from the first to the one shown
    const DiggerAnswer* end_ = nullptr;
    QLabel* title_;
    QLabel* question_;
    QWidget* answers_;
    QVBoxLayout* answer_column_;
    QLabel* deciding_;
    QLabel* verdict_;
    QLabel* why_;
    QPushButton* back_;
    QPushButton* take_;
    QPushButton* away_;
};

}  // namespace plugside
