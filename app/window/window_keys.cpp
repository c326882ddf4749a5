// The keys of the window, as they are told on the sheet of keys_overlay.cpp.
#include <QShortcut>

#include "app/stages/mound_facts.h"
#include "app/window/main_window.h"

namespace plugside {

void MainWindow::bind_key(const QKeySequence& sequence, const std::function<void()>& act) {
    auto* shortcut = new QShortcut(sequence, this);
    shortcut->setContext(Qt::WindowShortcut);
    connect(shortcut, &QShortcut::activated, this, act);
}

// A finding that is not seen is not answered by a key.
bool MainWindow::findings_are_looked_at() const {
    return choices_.step() == Step::walk && slip_->walk().part() == WalkPart::to_look_at &&
           slip_->walk().digger_key() == nullptr;
}

void MainWindow::bind_walk_keys() {
    const auto key = [this](const QKeySequence& sequence, const std::function<void()>& act) { bind_key(sequence, act); };
    // while the questions about a digger are asked, digits answer them
    const auto step_or_answer = [this](int number, Step step) {
        return [this, number, step] {
            DiggerKeyView* asked = choices_.step() == Step::walk ? slip_->walk().digger_key() : nullptr;
            if (asked != nullptr && asked->question())
                asked->answer(number);
            else
                choices_.go_to(step);
        };
    };
    key(Qt::Key_1, step_or_answer(1, Step::walk));
    key(Qt::Key_2, step_or_answer(2, Step::systems));
    key(Qt::Key_3, step_or_answer(3, Step::sets));
    key(Qt::Key_Backspace, [this] {
        if (DiggerKeyView* asked = slip_->walk().digger_key()) asked->back();
    });
    const auto in_the_walk = [this](auto act) {
        return [this, act] {
            if (choices_.step() == Step::walk && session_.field()) act(slip_->walk());
        };
    };
    key(Qt::Key_V, in_the_walk([](WalkPage& walk) { walk.show_part(WalkPart::read); }));
    key(Qt::Key_L, in_the_walk([](WalkPage& walk) { walk.show_part(WalkPart::to_look_at); }));
    key(Qt::Key_T, in_the_walk([](WalkPage& walk) { walk.show_part(WalkPart::notes); }));
    key(Qt::Key_W, in_the_walk([](WalkPage& walk) { walk.show_part(WalkPart::not_seen); }));
    key(Qt::Key_I, in_the_walk([](WalkPage& walk) { walk.ask_who_dug(); }));
    key(Qt::Key_P, in_the_walk([](WalkPage& walk) { walk.facts().picture().enlarge(); }));
    key(Qt::Key_G, [this] { map_buttons_->show_not_seen(!map_buttons_->shows_not_seen()); });
}

void MainWindow::bind_keys() {
    const auto key = [this](const QKeySequence& sequence, const std::function<void()>& act) { bind_key(sequence, act); };
    const auto on_a_set = [this](void (SetsPage::*act)()) {
        return [this, act] {
            if (choices_.step() == Step::sets) (slip_->sets().*act)();
        };
    };
    const auto on_a_finding = [this](void (FindingsView::*act)()) {
        return [this, act] {
            if (findings_are_looked_at()) (slip_->walk().findings().*act)();
        };
    };
    key(Qt::Key_A, on_a_finding(&FindingsView::accept));
    key(Qt::Key_R, on_a_finding(&FindingsView::refuse));
    key(Qt::SHIFT | Qt::Key_A, on_a_finding(&FindingsView::accept_all_alike));
    key(Qt::SHIFT | Qt::Key_R, on_a_finding(&FindingsView::refuse_all_alike));
    key(Qt::Key_K, on_a_set(&SetsPage::keep));
    key(Qt::Key_D, on_a_set(&SetsPage::drop));
    key(Qt::Key_M, on_a_set(&SetsPage::move));
    key(Qt::Key_U, on_a_set(&SetsPage::undecide));
    const auto in_either = [this](void (FindingsView::*of_walk)(), void (SetsPage::*of_sets)()) {
        return [this, of_walk, of_sets] {
            if (findings_are_looked_at()) (slip_->walk().findings().*of_walk)();
            if (choices_.step() == Step::sets) (slip_->sets().*of_sets)();
        };
    };
    key(Qt::Key_N, in_either(&FindingsView::next, &SetsPage::next_undecided));
    key(Qt::Key_PageDown, in_either(&FindingsView::next, &SetsPage::next));
    key(Qt::Key_PageUp, in_either(&FindingsView::previous, &SetsPage::previous));
    bind_walk_keys();
    key(Qt::Key_F, [this] { map_->fit(); });
    for (const QKeySequence& sequence : {QKeySequence(Qt::Key_Plus), QKeySequence(Qt::Key_Equal)})
        key(sequence, [this] { map_->zoom_in(); });
    key(Qt::Key_Minus, [this] { map_->zoom_out(); });
    key(Qt::Key_C, [this] { map_buttons_->toggle_coordinates(); });
    key(Qt::Key_S, [this] { map_buttons_->open_show_menu(); });
    key(Qt::CTRL | Qt::Key_M, [this] { map_->setFocus(Qt::ShortcutFocusReason); });
    key(Qt::CTRL | Qt::Key_O, [this] { choose_files(false); });
    key(Qt::CTRL | Qt::SHIFT | Qt::Key_O, [this] { choose_files(true); });
    key(Qt::CTRL | Qt::Key_S, [this] { open_hand_out(); });
    key(Qt::CTRL | Qt::Key_Z, [this] { session_.history().undo(); });
    for (const QKeySequence& sequence : {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)})
        key(sequence, [this] { session_.history().redo(); });
    key(Qt::CTRL | Qt::Key_U, [this] {
        choices_.use(choices_.units() == LengthUnits::metres ? LengthUnits::feet_and_inches : LengthUnits::metres);
    });
    key(Qt::CTRL | Qt::Key_L, [this] { choices_.use(choices_.theme() == Theme::light ? Theme::sunlight : Theme::light); });
    key(Qt::Key_F1, [this] { keys_->toggle(); });
    key(Qt::Key_F11, [this] { isFullScreen() ? showNormal() : showFullScreen(); });
    key(Qt::Key_Escape, [this] { put_something_away(); });
    key(Qt::CTRL | Qt::Key_Q, [this] { close(); });
}

}  // namespace plugside
