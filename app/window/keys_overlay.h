// All keys on one sheet over the window; put away by F1, Escape or a click. Two columns where they fit, else one that scrolls.
#pragma once

#include <QBoxLayout>
#include <QFrame>
#include <QLabel>
#include <QPointer>
#include <utility>
#include <vector>

#include "app/stages/page_scroll.h"

namespace plugside {

class KeysOverlay : public QFrame {
    Q_OBJECT

public:
    explicit KeysOverlay(QWidget* window);
    void toggle();
    // To the window and the size of text at hand.
    void fit();

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    using Keys = std::vector<std::pair<QString, QString>>;
    void tell_keys();  // when it is wanted for the first time: its labels are a sixth of the window's widgets
    void add_column(const Keys& keys);

    QWidget* content_ = nullptr;
    QBoxLayout* columns_ = nullptr;
    PageScroll* scroll_ = nullptr;
    std::vector<QLabel*> words_;
    QPointer<QWidget> focus_before_;
};

}  // namespace plugside
