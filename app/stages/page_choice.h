// A choice of a page. Stepping through it with the arrow keys is one act: what it came to is settled when the choice is left, with Enter,
// or before any other key of the window does its work; Esc gives the steps up. A choice from the open list is settled at once.
//
// Until it drops down for the first time it has no list: as the toolkit's own choice is dressed it makes nine widgets that nobody may ever see.
// A wheel over it scrolls the page, unless it has the focus. While it waits it is not filled anew (`waits`).
#pragma once

#include <QComboBox>

namespace plugside {

class PageChoice : public QComboBox {
    Q_OBJECT

public:
    explicit PageChoice(QWidget* parent = nullptr);
    // Whether steps were made that are not settled.
    [[nodiscard]] bool waits() const { return waits_; }
    // Shows an item, unless it waits.
    void show_item(int index);
    void settle();
    void give_up();
    void showPopup() override;
    // Room for some letters, whatever there is to choose.
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

Q_SIGNALS:
    void settled(int index);

protected:
    bool event(QEvent* event) override;
    void changeEvent(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    bool dropped_ = false;
    bool stepping_ = false;
    bool waits_ = false;
    int from_ = -1;
};

// With its name for who hears the page.
[[nodiscard]] PageChoice* page_choice(const QString& name, QWidget* parent);

}  // namespace plugside
