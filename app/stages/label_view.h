// The label in hand: the figures that a person types from it, the dose that is meant, and each comparison with both numbers.
//
// No product's label is shipped, and the page says so.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QWidget>
#include <vector>

#include "app/stages/row_edit.h"

namespace plugside {

class LabelView : public QWidget {
    Q_OBJECT

public:
    LabelView(FieldSession& session, Choices& choices, WorkAccount& work, QWidget* parent = nullptr);
    [[nodiscard]] RowEdit* row(const std::string& name) const;
    [[nodiscard]] QString compared() const { return compared_->text(); }
    [[nodiscard]] QString wrong() const { return wrong_->text(); }
    void take_focus();
    // As a person types them: sites, what is worn ("spoon: gloves"), weighings.
    void enter_sites(const QString& text);
    void enter_protection(const QString& text);
    void enter_weighings(const QString& text);

private:
    void refresh();
    void fill_lists();
    QLineEdit* list_field(const QString& name, const QString& example, void (LabelView::*enter)(const QString&));

    FieldSession& session_;
    Choices& choices_;
    WorkAccount& work_;
    std::vector<RowEdit*> rows_;
    QLineEdit* sites_;
    QLineEdit* protection_;
    QLineEdit* weighings_;
    QLabel* release_;
    QLabel* wrong_;
    QLabel* compared_;
    std::shared_ptr<const FieldSurvey> shown_of_;
};

}  // namespace plugside
