// The sets of one animal side by side, each as a small close-up with its number and chance. One of them is at hand; the arrow keys and a
// click choose another.
//
// More than fit are shown as a part about the one at hand, and the rim tells how many lie beyond it.
#pragma once

#include <QWidget>
#include <vector>

#include "app/session/choices.h"
#include "app/stages/close_up_drawing.h"

namespace plugside {

class SetStrip : public QWidget {
    Q_OBJECT

public:
    struct Item {
        std::size_t set = 0;  // index into plan.sets
        CloseUpScene scene;
        LadderPlace place;
        SetChoice choice = SetChoice::proposed;
        int in_100 = 0;
    };

    SetStrip(Choices& choices, QWidget* parent = nullptr);
    void show_sets(const QString& animal, std::vector<Item> items, std::size_t at_hand);
    [[nodiscard]] const std::vector<Item>& items() const { return items_; }
    [[nodiscard]] QRectF cell_of(std::size_t item) const;  // empty where it does not fit

Q_SIGNALS:
    void chosen(std::size_t set);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    [[nodiscard]] std::size_t most_cells() const;
    [[nodiscard]] std::size_t first_cell() const;
    void draw_item(QPainter& painter, const Item& item, const QRectF& cell, bool at_hand) const;
    void draw_beyond(QPainter& painter) const;
    void choose(std::size_t item);

    Choices& choices_;
    std::vector<Item> items_;
    std::size_t at_hand_ = 0;  // of items_
};

}  // namespace plugside
