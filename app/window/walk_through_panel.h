// The walk-through on the slip: the lesson at hand in two or three sentences with its keys, and a ring on the window about the place
// that it speaks of.
//
// The ring lies over everything, takes no click, and follows what it is about; it is not seen where that is not.
#pragma once

#include <QFrame>
#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <functional>

#include "app/window/walk_through.h"

namespace plugside {

class WalkThroughPanel : public QFrame {
    Q_OBJECT

public:
    WalkThroughPanel(WalkThrough& walk_through, QWidget* parent = nullptr);
    [[nodiscard]] QString words() const { return words_->text(); }

Q_SIGNALS:
    void leave_wanted();  // the walk-through and the sample with it
    void stay_wanted();   // on the sample, without the walk-through

private:
    void refresh();

    WalkThrough& walk_through_;
    QLabel* title_;
    QLabel* words_;
    QPushButton* leave_;
    QPushButton* back_;
    QPushButton* next_;
    QPushButton* stay_;
};

class PlaceRing : public QWidget {
    Q_OBJECT

public:
    // What is about to be used now, as a widget of this window; null for none.
    using Place = std::function<QWidget*()>;

    PlaceRing(Choices& choices, Place place, QWidget* window);
    void follow(bool on);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void put_about_place();

    Choices& choices_;
    Place place_;
    QTimer looking_;
};

}  // namespace plugside
