// The first rows of a table or layer under what each of its columns means: the uppermost row holds the meanings, to be
// changed.
//
// Keys: arrows move; Enter or Space on a column opens the list of meanings; letters find one in it.
// A thousand columns cost no more than those in sight.
#pragma once

#include <QAbstractTableModel>
#include <QTableView>
#include <vector>

#include "app/session/choices.h"
#include "geo/read/row_marks.h"

namespace plugside {

struct ColumnSheet {
    std::vector<std::string> headings;  // empty: numbered
    std::vector<std::vector<std::string>> rows;
    std::vector<ColumnRole> roles;
    std::vector<ColumnRole> offered;
};

class ColumnsModel : public QAbstractTableModel {
    Q_OBJECT

public:
    using QAbstractTableModel::QAbstractTableModel;
    void show(ColumnSheet sheet);
    [[nodiscard]] const ColumnSheet& sheet() const { return sheet_; }
    [[nodiscard]] ColumnRole role_of(int column) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    ColumnSheet sheet_;
    int columns_ = 0;
};

class ColumnsView : public QTableView {
    Q_OBJECT

public:
    ColumnsView(Choices& choices, QWidget* parent);
    void show_sheet(ColumnSheet sheet);
    void open_meanings(int column);
    [[nodiscard]] const ColumnsModel& columns() const { return *model_; }

Q_SIGNALS:
    void meaning_picked(int column, plugside::ColumnRole role);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void fit_columns(bool only_wider);

    Choices& choices_;
    ColumnsModel* model_;
};

}  // namespace plugside
