// Two panels of the Sets step that speak of many sets: which are gone through, and what is decided of several at once.
//
// ShowOnly: wishes with the number of sets that each lets through; they narrow each other. What they hide stays on the map and in every
//           count.
// Several:  whose undecided sets the next key decides: the animal's at hand, those of at least a chance, those shown. What was decided
//           already stays. How many there are is said before.
#pragma once

#include <QButtonGroup>
#include <QCheckBox>
#include <QLabel>
#include <QRadioButton>
#include <QSpinBox>
#include <QWidget>

#include "app/stages/set_account.h"

namespace plugside {

class ShowOnly : public QWidget {
    Q_OBJECT

public:
    ShowOnly(SetAccount& account, QWidget* parent = nullptr);
    // `animal`: the letter of the set at hand.
    void refresh(const std::string& animal);
    void take_focus() { undecided_->setFocus(Qt::ShortcutFocusReason); }

private:
    void tell();

    SetAccount& account_;
    std::string animal_;
    QCheckBox* undecided_;
    QCheckBox* cautioned_;
    QCheckBox* under_;
    QSpinBox* limit_;
    QCheckBox* of_animal_;
    QLabel* hidden_;
    bool filling_ = false;
};

class Several : public QWidget {
    Q_OBJECT

public:
    Several(SetAccount& account, QWidget* parent = nullptr);
    void refresh(const std::string& animal);
    void take_focus();
    // The undecided sets of the scope chosen.
    [[nodiscard]] std::vector<std::size_t> scope() const;
    [[nodiscard]] QSpinBox& limit() { return *limit_; }
    [[nodiscard]] QRadioButton& button(int scope) { return *buttons_.at(static_cast<std::size_t>(scope)); }

Q_SIGNALS:
    void scope_changed();

private:
    [[nodiscard]] SetFilter wish(int scope) const;
    [[nodiscard]] std::vector<std::size_t> scope_of(int scope) const;
    void fill();

    SetAccount& account_;
    std::string animal_;
    std::vector<QRadioButton*> buttons_;  // of the animal, of a chance, shown
    QButtonGroup* group_;
    QSpinBox* limit_;
    QLabel* words_;
};

}  // namespace plugside
