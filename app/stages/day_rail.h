// The left edge: the day's steps strung along a drawn run, each with a few words on what is there or still undecided.
//
// Only steps with something to do are on it. Up and down go from step to step while it has the focus.
#pragma once

#include <QAbstractButton>
#include <QWidget>
#include <vector>

#include "app/canvas/wrapped_words.h"
#include "app/session/choices.h"
#include "app/session/field_session.h"
#include "app/stages/work_account.h"

namespace plugside {

class StepButton : public QAbstractButton {
    Q_OBJECT

public:
    StepButton(Step step, const QString& name, Choices& choices, QWidget* parent = nullptr);
    [[nodiscard]] Step step() const { return step_; }
    void set_line(const QString& line);
    [[nodiscard]] const QString& line() const { return line_; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    // What its name alone needs.
    [[nodiscard]] int least_width() const;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    [[nodiscard]] QFont name_font() const;
    [[nodiscard]] QFont line_font() const;
    [[nodiscard]] WrappedWords lines_at(int width) const;

    Step step_;
    Choices& choices_;
    QString line_;
};

class DayRail : public QWidget {
    Q_OBJECT

public:
    DayRail(FieldSession& session, Choices& choices, WorkAccount& work, QWidget* parent = nullptr);
    [[nodiscard]] StepButton* button(Step step) const;
    // As narrow as the steps' names allow at larger text, so that the map keeps its room; the lines under them then have fewer words.
    [[nodiscard]] int fitting_width() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void refresh();

    FieldSession& session_;
    Choices& choices_;
    WorkAccount& work_;
    std::vector<StepButton*> steps_;
};

}  // namespace plugside
