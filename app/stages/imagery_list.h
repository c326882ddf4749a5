// The pictures under the ground: which are shown, what they are, how strongly they are drawn; adding and taking away.
//
// Keys: the list is reached by Tab; Space shows or hides the chosen picture, Delete takes it away; the slider moves by arrows.
// Order: the topmost picture first, as one looks at them.
#pragma once

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSlider>
#include <QWidget>

#include "app/session/imagery.h"
#include "core/units/display.h"

namespace plugside {

class ImageryList : public QWidget {
    Q_OBJECT

public:
    explicit ImageryList(Imagery& imagery, QWidget* parent = nullptr);
    void use(LengthUnits units);

    [[nodiscard]] QListWidget& list() { return *list_; }
    [[nodiscard]] QSlider& tone() { return *tone_; }

Q_SIGNALS:
    void add_wanted();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void refresh();
    void take_chosen_away();
    [[nodiscard]] QString words_of(const OpenImagery& picture) const;

    Imagery& imagery_;
    LengthUnits units_ = LengthUnits::feet_and_inches;
    QListWidget* list_;
    QSlider* tone_;
    QLabel* copying_;
    QPushButton* add_;
    QPushButton* take_away_;
    bool refreshing_ = false;
};

}  // namespace plugside
