// Where the plan goes when it leaves the program: a GeoPackage for the farm's maps, waypoints for the handheld, field sheets to print or for a
// phone.
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/session/choices.h"
#include "app/session/field_session.h"
#include "app/session/project_places.h"

namespace plugside {

class HandOutDialog : public QDialog {
    Q_OBJECT

public:
    HandOutDialog(FieldSession& session, Choices& choices, QWidget* parent = nullptr);
    [[nodiscard]] FieldSession::HandOut chosen() const;
    void set_folder(const QString& folder) { folder_->setText(folder); }

private:
    // One file that may be written: whether, and under which name.
    struct Row {
        QCheckBox* box;
        QLineEdit* name;
    };
    Row add_row(const QString& what, const QString& file, const QString& name_of_it, bool checked);
    QComboBox* add_choice(const QString& what, const QStringList& offered, int chosen);
    void check();
    void choose_folder();
    [[nodiscard]] std::vector<Row> rows() const { return {plan_, sets_, sheets_, phone_}; }
    [[nodiscard]] QString path_of(const QLineEdit& name) const;

    Choices& choices_;
    QLineEdit* folder_;
    QGridLayout* grid_;
    Row plan_;
    Row sets_;
    Row sheets_;
    Row phone_;
    QComboBox* paper_;
    QComboBox* language_;
    QLabel* remark_;
    QPushButton* go_;
};

}  // namespace plugside
