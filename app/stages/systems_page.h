// The slip of the Systems step: how many animals there probably are, as an interval first and a number second, always with
// the area it was counted on; the systems; what else may be true of them, the likeliest first and few; the picked one's
// facts.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QWidget>

#include "app/session/choices.h"
#include "app/session/field_session.h"
#include "app/stages/corrections_view.h"

namespace plugside {

// "11 to 14 animals"; "1 animal" where the interval is one number.
[[nodiscard]] QString interval_words(const SystemsEstimate& estimate);

class SystemsPage : public QWidget {
    Q_OBJECT

public:
    SystemsPage(FieldSession& session, Choices& choices, SystemsTool& tool, QWidget* parent = nullptr);
    [[nodiscard]] CorrectionsView& corrections() { return *corrections_; }
    [[nodiscard]] bool correcting() const { return correcting_; }
    [[nodiscard]] QPushButton* corrections_key() { return corrections_key_; }
    // The animals, or what a person knows better.
    void show_corrections(bool on);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void refresh();
    void fit_table();
    void fill_table(const Plan& plan);
    void tell_alternatives(const Plan& plan);
    void show_picked();

    FieldSession& session_;
    Choices& choices_;
    QPushButton* animals_key_;
    QPushButton* corrections_key_;
    CorrectionsView* corrections_;
    QWidget* animals_;
    bool correcting_ = false;
    QLabel* interval_;
    QLabel* likely_;
    QLabel* area_;
    QLabel* alternatives_;
    QTableWidget* table_;
    QLabel* picked_name_;
    QLabel* picked_;
    bool filling_ = false;
};

}  // namespace plugside
