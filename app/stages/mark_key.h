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
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QFont words_font() const;
    [[nodiscard]] int columns_at(int width) const;

    Choices& choices_;
};

}  // namespace plugside
