// The methods, one under the other: what each is, what it needs, what speaks against it here before it is chosen, and its steps.
//
// Chosen for the whole field here; for one set in the Sets step. Own variants are made from any of them, as text and numbers; one that
//        sets are worked by is not taken away before another is chosen.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <QWidget>
#include <vector>

#include "app/stages/work_account.h"

namespace plugside {

// Built in ones and the person's own.
[[nodiscard]] std::vector<Method> methods_to_choose(const WorkOrder& work);
// "3 of 12 sets meet a stop, 2 wait for a signature; 4 questions open", or that nothing is known yet.
[[nodiscard]] QString look_words(const WorkAccount& work, const std::string& method);

class OwnMethodEdit : public QWidget {
    Q_OBJECT

public:
    OwnMethodEdit(WorkAccount& work, QWidget* parent = nullptr);
    void show_method(const Method& method);
    [[nodiscard]] QString wrong() const { return wrong_->text(); }
    [[nodiscard]] QLineEdit& name() { return *name_; }
    [[nodiscard]] QLineEdit& minutes() { return *minutes_; }
    [[nodiscard]] QPlainTextEdit& steps() { return *steps_; }

public Q_SLOTS:
    void keep();
    void take_away();

private:
    WorkAccount& work_;
    std::string id_;
    QLineEdit* name_;
    QLineEdit* minutes_;
    QLineEdit* spread_;
    QLineEdit* placements_;
    QLineEdit* tools_;
    QPlainTextEdit* steps_;
    QLabel* wrong_;
};

class MethodsView : public QWidget {
    Q_OBJECT

public:
    MethodsView(FieldSession& session, Choices& choices, WorkAccount& work, QWidget* parent = nullptr);
    void choose(const std::string& method);
    void unfold(const std::string& method);
    void make_own(const std::string& of);
    [[nodiscard]] const std::string& unfolded() const { return unfolded_; }
    [[nodiscard]] OwnMethodEdit& own() { return *own_; }
    [[nodiscard]] QString look_text(const std::string& method) const;
    void take_focus();

private:
    struct Card {
        std::string id;
        QPushButton* name;
        QLabel* place;
        QLabel* look;
        QLabel* steps;
        QPushButton* choose;
        QPushButton* variant;
    };
    void build_cards(const std::vector<Method>& methods);
    Card card_of(const Method& method);
    void refresh();

    FieldSession& session_;
    Choices& choices_;
    WorkAccount& work_;
    QVBoxLayout* list_;
    QLabel* says_;
    std::vector<Card> cards_;
    std::vector<Method> shown_;
    std::string unfolded_;
    OwnMethodEdit* own_;
};

}  // namespace plugside
