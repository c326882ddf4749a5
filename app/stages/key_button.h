// A large button that names its key: the word above, the key below. Filled when what it does is the decision in force.
#pragma once

#include <QPushButton>

#include "app/session/choices.h"

namespace plugside {

class KeyButton : public QPushButton {
    Q_OBJECT

public:
    KeyButton(const QString& word, const QString& key, Choices& choices, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }
    [[nodiscard]] const QString& key() const { return key_; }
    void set_in_force(bool in_force);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString key_;
    Choices& choices_;
    bool in_force_ = false;
};

}  // namespace plugside
