// The slip of the Sets step: one set at a time. Close-up, what to do in plain words, the chance, what speaks against it, the
// keys.
//
// The set at hand is named by its marks (ProbeKey), so it stays at hand when a new plan numbers the sets afresh.
#pragma once

#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>
#include <QWidget>

#include "app/session/choices.h"
#include "app/session/field_session.h"
#include "app/stages/close_up.h"
#include "app/stages/key_button.h"

namespace plugside {

struct SetProgress {
    std::size_t decided = 0;
    std::size_t all = 0;
};
[[nodiscard]] SetProgress set_progress(const Survey& survey, const Plan& plan);

class SetsPage : public QWidget {
    Q_OBJECT

public:
    SetsPage(FieldSession& session, Choices& choices, QWidget* parent = nullptr);

    [[nodiscard]] bool moving() const { return close_up_->moving(); }
    [[nodiscard]] CloseUp& close_up() { return *close_up_; }
    [[nodiscard]] QString instruction_text() const { return instruction_->text(); }

public Q_SLOTS:
    void keep();
    void drop();
    void move();
    void undecide();
    void next();
    void previous();
    void next_undecided();

private:
    QWidget* build_words();
    void build_keys(QVBoxLayout* column);
    void refresh();
    void show_set(std::size_t set);
    void show_instruction();
    void show_cautions(const SetPoint& set);
    void decide_and_go_on(SetChoice choice);
    void step(int by);
    void settle_on_a_set();
    [[nodiscard]] std::optional<std::size_t> at_hand() const;

    FieldSession& session_;
    Choices& choices_;
    QLabel* title_;
    QLabel* count_;
    QLabel* place_;
    CloseUp* close_up_;
    QLabel* instruction_;
    QLabel* chance_;
    QLabel* chance_words_;
    QLabel* decided_;
    QLabel* mind_;
    QVBoxLayout* cautions_;
    QScrollArea* words_;
    std::optional<ProbeKey> moving_set_;
    std::vector<std::string> shown_cautions_;
    Theme shown_theme_ = Theme::light;
    KeyButton* keep_;
    KeyButton* move_;
    KeyButton* drop_;
    std::vector<QWidget*> keys_;
};

}  // namespace plugside
