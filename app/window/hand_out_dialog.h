// Where the plan goes when it leaves the program: a GeoPackage for the farm's maps, waypoints for the handheld.
#pragma once

#include <QCheckBox>
#include <QDialog>
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
    void check();
    void choose_folder();
    [[nodiscard]] QString path_of(const QLineEdit& name) const;

    Choices& choices_;
    QLineEdit* folder_;
    QCheckBox* with_plan_;
    QLineEdit* plan_name_;
    QCheckBox* with_sets_;
    QLineEdit* sets_name_;
    QLabel* remark_;
    QPushButton* go_;
};

}  // namespace plugside
