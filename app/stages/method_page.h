// The slip of the Method step in five parts: conditions, methods, label, what speaks against, what to load.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <array>

#include "app/stages/against_view.h"
#include "app/stages/conditions_view.h"
#include "app/stages/label_view.h"
#include "app/stages/load_view.h"
#include "app/stages/methods_view.h"

namespace plugside {

enum class MethodPart : std::size_t { conditions, methods, label, against, load };

class MethodPage : public QWidget {
    Q_OBJECT

public:
    MethodPage(FieldSession& session, Choices& choices, WorkAccount& work, QWidget* parent = nullptr);
    [[nodiscard]] ConditionsView& conditions();
    [[nodiscard]] MethodsView& methods() { return *methods_; }
    [[nodiscard]] LabelView& label();
    [[nodiscard]] AgainstView& against() { return *against_; }
    [[nodiscard]] LoadView& load() { return *load_; }
    [[nodiscard]] MethodPart part() const { return part_; }
    void show_part(MethodPart part);

private:
    void refresh();
    void lay_part();
    [[nodiscard]] std::array<QWidget*, 5> parts() const;

    FieldSession& session_;
    Choices& choices_;
    WorkAccount& work_;
    MethodPart part_ = MethodPart::methods;
    QLabel* empty_;
    QLabel* chosen_;
    QWidget* filled_;
    std::array<QPushButton*, 5> part_keys_{};
    // the two forms of many rows are made as they are asked for
    ConditionsView* conditions_ = nullptr;
    MethodsView* methods_;
    LabelView* label_ = nullptr;
    AgainstView* against_;
    LoadView* load_;
};

}  // namespace plugside
