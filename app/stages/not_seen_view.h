// What the walk did not see, in plain words: ground walked and not walked, mounds and animals that may be there with their
// interval, and how that was reckoned; with the key to the hatching on the map, and the button that shows or hides it.
//
// While it is being worked out: how far, and a button to stop; stopped, a button to go on.
#pragma once

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QWidget>

#include "app/session/choices.h"
#include "app/session/field_session.h"

namespace plugside {

// The two hatchings of the map, each with its word.
class HatchKey : public QWidget {
    Q_OBJECT

public:
    explicit HatchKey(Choices& choices, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QFont words_font() const;
    [[nodiscard]] std::array<QStringList, 2> words_at(int width) const;

    Choices& choices_;
};

class NotSeenView : public QWidget {
    Q_OBJECT

public:
    NotSeenView(FieldSession& session, Choices& choices, QWidget* parent = nullptr);
    void show_hatched(bool on);
    // All that is told, as text.
    [[nodiscard]] QString told() const;

Q_SIGNALS:
    void hatch_wanted(bool on);

private:
    void refresh();

    FieldSession& session_;
    Choices& choices_;
    QLabel* areas_;
    QLabel* missed_;
    QLabel* missed_words_;
    QLabel* animals_;
    QLabel* animals_words_;
    QLabel* leans_;
    QLabel* reckoned_;
    QWidget* result_;
    QWidget* working_;
    QLabel* state_;
    QProgressBar* share_;
    QPushButton* work_key_;
    QPushButton* hatch_;
};

}  // namespace plugside
