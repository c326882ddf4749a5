// The keys of the window, as they are told on the sheet of keys_overlay.cpp.
#include <QShortcut>

#include "app/window/main_window.h"

namespace plugside {

void MainWindow::bind_keys() {
    const auto key = [this](const QKeySequence& sequence, auto act) {
        auto* shortcut = new QShortcut(sequence, this);
        shortcut->setContext(Qt::WindowShortcut);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    const auto on_a_set = [this](void (SetsPage::*act)()) {
        return [this, act] {
            if (choices_.step() == Step::sets) (slip_->sets().*act)();
        };
    };
    const auto on_a_finding = [this](void (FindingsView::*act)()) {
        return [this, act] {
            if (choices_.step() == Step::walk) (slip_->walk().findings().*act)();
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
            if (choices_.step() == Step::walk) (slip_->walk().findings().*of_walk)();
            if (choices_.step() == Step::sets) (slip_->sets().*of_sets)();
        };
    };
    key(Qt::Key_N, in_either(&FindingsView::next, &SetsPage::next_undecided));
    key(Qt::Key_PageDown, in_either(&FindingsView::next, &SetsPage::next));
    key(Qt::Key_PageUp, in_either(&FindingsView::previous, &SetsPage::previous));
    key(Qt::Key_1, [this] { choices_.go_to(Step::walk); });
    key(Qt::Key_2, [this] { choices_.go_to(Step::systems); });
    key(Qt::Key_3, [this] { choices_.go_to(Step::sets); });
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
