// What is said and done while lines are followed: which line, how much of it, what it becomes; layers to follow are opened here.
//
// Every button has its key (told on it); the letters are those of the pens.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>

#include "app/drawing/trace_tool.h"

namespace plugside {

class TraceView : public QWidget {
    Q_OBJECT

public:
    explicit TraceView(TraceTool& tool, QWidget* parent = nullptr);
    [[nodiscard]] QString words() const { return words_->text(); }

Q_SIGNALS:
    void open_wanted();
    void put_down_wanted();

private:
    void refresh();

    TraceTool& tool_;
    QLabel* words_;
    QWidget* makes_;
    QPushButton* other_way_;
};

}  // namespace plugside
