// How marks are drawn, with the word for each.
#pragma once

#include <QWidget>

#include "app/session/choices.h"

namespace plugside {

class MarkKey : public QWidget {
    Q_OBJECT

public:
    explicit MarkKey(Choices& choices, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Choices& choices_;
};

}  // namespace plugside
