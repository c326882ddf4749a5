// Where a map server's address is entered, and what will be asked of whom is told in plain words before anything is asked.
//
// Nothing is asked while the dialog is open; only a yes gives the address on. It is remembered on this computer, in no project, and
// asks for a yes again in every session.
#pragma once

#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <optional>

#include "geo/imagery/tile_address.h"

namespace plugside {

class ServerDialog : public QDialog {
    Q_OBJECT

public:
    explicit ServerDialog(QWidget* parent = nullptr);

    [[nodiscard]] std::optional<TileAddress> address() const;
    [[nodiscard]] int deepest() const { return deepest_->value(); }
    [[nodiscard]] QLineEdit& entered() { return *entered_; }
    [[nodiscard]] QPushButton& yes() { return *yes_; }
    [[nodiscard]] QString told() const { return told_->text(); }
    [[nodiscard]] QString fault() const { return fault_->text(); }

protected:
    void showEvent(QShowEvent* event) override;

private:
    void check();
    void fit_to_words();
    void remember() const;

    QLineEdit* entered_;
    QSpinBox* deepest_;
    QLabel* told_;
    QLabel* fault_;
    QPushButton* yes_;
};

}  // namespace plugside
