// All keys on one sheet over the window; put away by F1, Escape or a click.
#pragma once

#include <QFrame>

namespace plugside {

class KeysOverlay : public QFrame {
    Q_OBJECT

public:
    explicit KeysOverlay(QWidget* window);
    void toggle();

protected:
    void mousePressEvent(QMouseEvent* event) override;
};

}  // namespace plugside
