// The walk's notes, each with what was read from it and what was left over; and the place to put a reading right, in one
// note or in all of its walk, and to lift what was said before.
//
// Before a correction is made for a whole walk, the marks that it would change are counted away from the window's thread and
// told; until then it cannot be made.
// Keys: Ctrl+Enter puts this note right, Ctrl+Shift+Enter all of the walk; Delete lifts the correction at hand.
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QListView>
#include <QListWidget>
#include <QPushButton>
#include <QSpinBox>
#include <QTimer>
#include <QWidget>

#include "app/stages/note_words_view.h"
#include "app/stages/notes_model.h"
#include "geo/read/note_corrections.h"

namespace plugside {

class NotesView : public QWidget {
    Q_OBJECT

public:
    NotesView(FieldSession& session, Choices& choices, QWidget* parent = nullptr);

    [[nodiscard]] NotesModel& model() { return *model_; }
    [[nodiscard]] NoteWordsView& words() { return *words_; }
    // Which meaning of note_meanings() is said, and its bearing.
    void say(int meaning, int degrees = 0);
    // Everything left over, not only what is picked.
    void take_all_of_the_rest();
    // What the correction would change in the whole walk; nothing while it is being counted.
    [[nodiscard]] const std::optional<RuleEffect>& effect() const { return effect_; }
    void show_note_of(std::size_t mound);
    void show_corrections(bool on);
    void take_focus();

public Q_SLOTS:
    void correct_this_note();
    void correct_the_walk();
    void lift();

Q_SIGNALS:
    void sorted();

private:
    void build_filters();
    void build_correction();
    void refresh_counts();
    void refresh_corrections();
    void show_current();
    void follow_pick();
    void count_again();
    void tell_effect();
    [[nodiscard]] const Mound* at_hand() const;
    [[nodiscard]] std::vector<NoteRule> rules_after(bool whole_walk) const;
    [[nodiscard]] bool something_to_say() const;

    FieldSession& session_;
    Choices& choices_;
    NotesModel* model_;
    QListView* list_;
    QListWidget* corrections_;
    QPushButton* rest_key_ = nullptr;
    QPushButton* all_key_ = nullptr;
    QPushButton* mentions_key_ = nullptr;
    QPushButton* corrections_key_ = nullptr;
    QLabel* none_;
    QWidget* correcting_;
    NoteWordsView* words_;
    QPushButton* whole_rest_;
    QComboBox* meaning_;
    QSpinBox* degrees_;
    QPushButton* this_note_;
    QPushButton* whole_walk_;
    QPushButton* lift_;
    QLabel* told_;
    QTimer patience_;
    BackgroundWork counting_;
    std::optional<RuleEffect> effect_;
    std::optional<std::size_t> at_hand_;  // mound
    bool filling_ = false;
};

}  // namespace plugside
