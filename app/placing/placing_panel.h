// In place of the slip while a picture is being placed: what to do next, the pairs with what each is off by, and how well they agree.
//
// Lengths are in the person's units. Keys: the list is reached by Tab, Delete removes the pair that is picked; a place is typed in the
// field (mark's name, or latitude and longitude), Enter puts it: for the spot that waits, for the pair that is picked, else first of
// its pair. Esc is done.
#pragma once

#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QWidget>

#include "app/placing/picture_placing.h"
#include "app/session/choices.h"

namespace plugside {

class PlacingPanel : public QWidget {
    Q_OBJECT

public:
    PlacingPanel(PicturePlacing& placing, FieldSession& session, Choices& choices, QWidget* parent = nullptr);

    void say(const QString& sentence);
    [[nodiscard]] QString said() const { return said_->text(); }
    // What is told of the pairs as a whole.
    [[nodiscard]] QString account() const { return account_->text(); }
    [[nodiscard]] QListWidget& list() { return *list_; }
    [[nodiscard]] QLineEdit& typed() { return *typed_; }
    [[nodiscard]] QCheckBox& one_scale() { return *one_scale_; }

Q_SIGNALS:
    void done();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    void refresh();
    void fill_list();
    void take_typed();
    [[nodiscard]] QString next_act() const;
    [[nodiscard]] QString length_words(double metres) const;
    [[nodiscard]] QString account_words() const;

    PicturePlacing& placing_;
    FieldSession& session_;
    Choices& choices_;
    QLabel* title_;
    QLabel* next_;
    QLabel* said_;
    QLineEdit* typed_;
    QListWidget* list_;
    QLabel* account_;
    QCheckBox* one_scale_;
    QPushButton* remove_;
    bool filling_ = false;
};

}  // namespace plugside
