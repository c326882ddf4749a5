// Why a set is proposed where it is: its mounds, the runs that meet them, and where else this animal could be met, each with its chance and
// rungs and a key to take it instead. Folded under one key, and filled only while it is unfolded.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <QWidget>

#include "app/session/field_session.h"

namespace plugside {

class SetReasons : public QWidget {
    Q_OBJECT

public:
    SetReasons(FieldSession& session, QWidget* parent = nullptr);
    void show_set(std::size_t set);
    [[nodiscard]] bool unfolded() const { return key_->isChecked(); }
    void fold(bool unfolded);
    // The first of the other places, by its key.
    void take_first();
    [[nodiscard]] QString text() const { return reasons_->text(); }

Q_SIGNALS:
    void taken(const plugside::ProbeKey& instead);
    void folded();  // or unfolded

private:
    void fill();
    void add_others(const Plan& plan);

    FieldSession& session_;
    std::size_t set_ = 0;
    std::vector<ProbeKey> offered_;
    QPushButton* key_;
    QWidget* inside_;
    QLabel* reasons_;
    QLabel* others_head_;
    QVBoxLayout* others_;
    QLabel* others_tail_;
};

}  // namespace plugside
