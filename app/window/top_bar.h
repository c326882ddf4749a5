// The top edge: whose field, how much of it was walked, how many animals, how far along; units, theme, size of text, hand out.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>

#include "app/session/choices.h"
#include "app/session/field_session.h"
#include "app/words/language.h"

namespace plugside {

class TopBar : public QWidget {
    Q_OBJECT

public:
    TopBar(FieldSession& session, Choices& choices, QWidget* parent = nullptr);
    // To the width and the size of text at hand.
    void fit_words();
    // For the menu of projects.
    [[nodiscard]] QPushButton& project() { return *project_; }
    [[nodiscard]] QPushButton& hand_out() { return *hand_out_; }

Q_SIGNALS:
    void hand_out_wanted();
    void keys_wanted();
    void language_wanted(plugside::Language language);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void refresh();
    void fold_buttons(bool folded);
    void fill_look_menu();
    [[nodiscard]] bool too_wide() const;

    FieldSession& session_;
    Choices& choices_;
    QLabel* field_;
    QLabel* walked_;
    QLabel* animals_;
    QLabel* decided_;
    QPushButton* project_;
    QPushButton* units_;
    QPushButton* theme_;
    QPushButton* text_;
    QPushButton* language_;
    QPushButton* keys_;
    QPushButton* look_;  // stands for the five before it where they have no room
    QPushButton* hand_out_;
};

// "6.2 acres walked, 3 % of the field not seen".
[[nodiscard]] QString walked_words(const Plan& plan, LengthUnits units);

}  // namespace plugside
