// Where the plan goes when it leaves the program: a GeoPackage for the farm's maps, waypoints or a route for the handheld, field sheets to print
// or for a phone, and the formats of other programs.
//
// What a format cannot carry stands under it once it is ticked, and is told to a screen reader before; private things go out only where that is
// ticked. Which files there are already and will be replaced is told.
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <optional>
#include <vector>

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
    // One file that may be written: whether, under which name, and what it cannot carry.
    struct Row {
        QCheckBox* box;
        QLineEdit* name;
        QLabel* limits;
        std::optional<HandOutFormat> format;  // nothing: sheets or the phone's page
    };
    void add_rows(const QString& stem);
    Row add_row(const QString& what, const QString& file, const QString& name_of_it, bool checked,
                std::optional<HandOutFormat> format = {});
    QComboBox* add_choice(const QString& what, const QStringList& offered, int chosen);
    void add_keys(QVBoxLayout& outer);
    void listen();
    void check();
    void check_row(const Row& row, QStringList& taken, QStringList& remarks, QStringList& hindrances) const;
    void choose_folder();
    [[nodiscard]] std::vector<std::filesystem::path> files_of_row(const Row& row) const;
    [[nodiscard]] QString limits_told(const Row& row) const;
    [[nodiscard]] QString path_of(const QLineEdit& name) const;
    [[nodiscard]] bool wants(HandOutFormat format) const;

    Choices& choices_;
    QLineEdit* folder_;
    QGridLayout* grid_;
    std::vector<Row> rows_;  // formats in the order in which they are shown, then sheets and phone
    Row sheets_{};
    Row phone_{};
    QCheckBox* private_;
    QComboBox* paper_;
    QComboBox* language_;
    QLabel* remark_;
    QLabel* hindrance_;  // what keeps it from going out, beside the keys
    QPushButton* choose_;
    QPushButton* go_;
};

}  // namespace plugside
