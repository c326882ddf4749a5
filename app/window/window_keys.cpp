// The keys of the window, as they are told on the sheet of keys_overlay.cpp. A letter means what the step at hand makes of it.
#include <QShortcut>

#include "app/stages/mound_facts.h"
#include "app/window/main_window.h"

namespace plugside {

void MainWindow::on_key(const QKeySequence& sequence, std::function<void()> act) {
    auto* shortcut = new QShortcut(sequence, this);
    shortcut->setContext(Qt::WindowShortcut);
    connect(shortcut, &QShortcut::activated, this, std::move(act));
}

// A finding that is not seen is not answered by a key.
bool MainWindow::findings_are_looked_at() const {
    return choices_.step() == Step::walk && slip_->walk().part() == WalkPart::to_look_at &&
           slip_->walk().digger_key() == nullptr;
}

void MainWindow::bind_keys() {
    bind_letters();
    bind_step_keys();
    bind_map_keys();
    bind_file_keys();
}

// What a key does at each step that it does something at.
void MainWindow::on_key_at(const QKeySequence& sequence, std::map<Step, std::function<void()>> acts) {
    on_key(sequence, [this, acts = std::move(acts)] {
        if (placing_.active()) return;
        const auto act = acts.find(choices_.step());
        if (act != acts.end() && session_.field()) act->second();
    });
}

void MainWindow::bind_letters() {
    const auto key = [this](const QKeySequence& sequence, std::map<Step, std::function<void()>> acts) {
        on_key_at(sequence, std::move(acts));
    };
    const auto finding = [this](void (FindingsView::*act)()) {
        return [this, act] {
            if (findings_are_looked_at()) (slip_->walk().findings().*act)();
        };
    };
    const auto method = [this](MethodPart part) { return [this, part] { slip_->method().show_part(part); }; };
    const auto walk = [this](WalkPart part) { return [this, part] { slip_->walk().show_part(part); }; };
    const auto draw = [this](Stroke stroke) { return [this, stroke] { draw_by_key(stroke); }; };
    const auto say = [this](Saying saying) { return [this, saying] { correct_by_key(saying); }; };
    const auto corrections = [this](bool on) { return [this, on] { slip_->systems().show_corrections(on); }; };
    const auto in_corrections = [this](auto act) {
        return [this, act] {
            if (slip_->systems().correcting()) act(slip_->systems().corrections());
        };
    };
    const auto set = [this](void (SetsPage::*act)()) { return [this, act] { (slip_->sets().*act)(); }; };

    key(Qt::Key_A, {{Step::walk, finding(&FindingsView::accept)},
                    {Step::systems, say(Saying::older)},
                    {Step::method, method(MethodPart::against)},
                    {Step::sets, set(&SetsPage::go_to_strip)}});
    key(Qt::SHIFT | Qt::Key_A, {{Step::walk, finding(&FindingsView::accept_all_alike)}});
    key(Qt::Key_B, {{Step::ground, draw(Stroke::boundary)}});
    key(Qt::Key_D, {{Step::ground, draw(Stroke::barrier)},
                    {Step::systems, in_corrections([](CorrectionsView& view) { view.answer(false); })},
                    {Step::sets, set(&SetsPage::drop)}});
    key(Qt::Key_E, {{Step::ground, [this] { drawing_->mend_picked(); }}});
    key(Qt::Key_H, {{Step::ground, draw(Stroke::hole)}});
    key(Qt::Key_I, {{Step::walk, [this] { slip_->walk().ask_who_dug(); }},
                    {Step::ground, [this] { tracing_->go_the_other_way(); }},
                     {Step::sets, set(&SetsPage::take_instead)}});
    key(Qt::Key_J, {{Step::ground, [this] { drawing_->join_with_next(); }}});
    key(Qt::Key_K, {{Step::ground, draw(Stroke::keep_clear)}, {Step::sets, set(&SetsPage::keep)}});
    key(Qt::Key_L, {{Step::walk, walk(WalkPart::to_look_at)},
                    {Step::ground, [this] { slip_->ground().type_a_band(); }},
                    {Step::systems, corrections(true)},
                    {Step::method, method(MethodPart::label)}});
    key(Qt::Key_M, {{Step::method, method(MethodPart::methods)}, {Step::sets, set(&SetsPage::move)}});
    key(Qt::Key_N, {{Step::walk, finding(&FindingsView::next)},
                    {Step::ground, [this] { slip_->ground().type_a_leg(); }},
                    {Step::systems, say(Saying::not_a_gopher)},
                    {Step::method, method(MethodPart::conditions)},
                    {Step::sets, set(&SetsPage::next_undecided)}});
    key(Qt::Key_O, {{Step::ground,
                     [this] {
                         if (tracing_->active()) choose_layer_to_trace();
                     }},
                    {Step::systems, say(Saying::one_animal)},
                    {Step::method, method(MethodPart::load)},
                     {Step::sets, set(&SetsPage::open_show_only)}});
    key(Qt::Key_P, {{Step::walk, [this] { slip_->walk().facts().picture().enlarge(); }},
                    {Step::systems, in_corrections([](CorrectionsView& view) { view.type_a_bearing(); })}});
    key(Qt::Key_R, {{Step::walk, finding(&FindingsView::refuse)},
                    {Step::ground, [this] { trace(); }},
                     {Step::systems, say(Saying::run_here)},
                     {Step::sets, set(&SetsPage::open_tours)}});
    key(Qt::SHIFT | Qt::Key_R, {{Step::walk, finding(&FindingsView::refuse_all_alike)}});
    key(Qt::Key_T, {{Step::walk, walk(WalkPart::notes)},
                    {Step::ground, draw(Stroke::gate)},
                    {Step::systems, say(Saying::two_animals)},
                    {Step::sets, set(&SetsPage::open_several)}});
    key(Qt::Key_U, {{Step::ground, draw(Stroke::untreated)}, {Step::sets, set(&SetsPage::undecide)}});
    key(Qt::Key_V, {{Step::walk, walk(WalkPart::read)}, {Step::systems, corrections(false)}});
    key(Qt::Key_W, {{Step::walk, walk(WalkPart::not_seen)},
                    {Step::ground,
                     [this] {
                         drawing_->go_about_the_walk();
                         map_->setFocus(Qt::ShortcutFocusReason);
                     }},
                    {Step::sets, set(&SetsPage::tell_why)}});
    key(Qt::Key_X, {{Step::ground, draw(Stroke::crossing)}, {Step::systems, say(Saying::no_run)}});
    key(Qt::Key_Y, {{Step::ground, draw(Stroke::split)},
                    {Step::systems, in_corrections([](CorrectionsView& view) { view.answer(true); })}});
    key(Qt::Key_Z, {{Step::systems, say(Saying::aside)}});
}

void MainWindow::bind_step_keys() {
    const auto finding = [this](void (FindingsView::*act)()) {
        return [this, act] {
            if (findings_are_looked_at()) (slip_->walk().findings().*act)();
        };
    };
    const auto corrections = [this](void (CorrectionsView::*act)()) {
        return [this, act] {
            if (slip_->systems().correcting()) (slip_->systems().corrections().*act)();
        };
    };
    on_key_at(Qt::Key_PageDown, {{Step::walk, finding(&FindingsView::next)},
                                 {Step::systems, corrections(&CorrectionsView::next_question)},
                                 {Step::sets, [this] { slip_->sets().next(); }}});
    on_key_at(Qt::Key_PageUp,
              {{Step::walk, finding(&FindingsView::previous)}, {Step::sets, [this] { slip_->sets().previous(); }}});
    on_key_at(Qt::Key_Delete, {{Step::ground, [this] { drawing_->remove_picked(); }},
                               {Step::systems, corrections(&CorrectionsView::lift_picked)}});
    on_key(Qt::Key_Backspace, [this] {
        DiggerKeyView* asked = choices_.step() == Step::walk ? slip_->walk().digger_key() : nullptr;
        if (map_->tool() == tape_)
            tape_->take_place_back();
        else if (asked != nullptr)
            asked->back();
        else if (choices_.step() == Step::ground && tracing_->active())
            tracing_->take_place_back();
        else if (choices_.step() == Step::ground)
            drawing_->take_corner_back();
        else if (choices_.step() == Step::systems)
            correcting_->take_corner_back();
    });
    // the ladder at hand, one mark of the tape or five
    struct Nudge {
        Qt::Key key;
        double along;
        double across;
    };
    for (const Nudge& nudge : {Nudge{Qt::Key_Up, 1.0, 0.0}, Nudge{Qt::Key_Down, -1.0, 0.0}, Nudge{Qt::Key_Right, 0.0, 1.0},
                               Nudge{Qt::Key_Left, 0.0, -1.0}})
        for (const double marks : {1.0, 5.0}) {
            Qt::KeyboardModifiers with = Qt::ControlModifier;
            if (marks > 1.0) with |= Qt::ShiftModifier;
            std::map<Step, std::function<void()>> acts{
                {Step::sets,
                 [this, nudge, marks] { slip_->sets().shift_ladder(marks * nudge.along, marks * nudge.across); }}};
            // the picked fan, by a little or by an eighth of the circle
            if (nudge.across != 0.0)
                acts[Step::systems] = [this, turn = nudge.across * (marks > 1.0 ? 45.0 : 5.0)] {
                    correcting_->turn_fan_by(turn);
                };
            on_key_at(QKeyCombination(with, nudge.key), std::move(acts));
        }
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
    on_key(Qt::Key_1, step_or_answer(1, Step::walk));
    on_key(Qt::Key_2, step_or_answer(2, Step::ground));
    on_key(Qt::Key_3, step_or_answer(3, Step::systems));
    on_key(Qt::Key_4, step_or_answer(4, Step::method));
    on_key(Qt::Key_5, step_or_answer(5, Step::sets));
}

void MainWindow::bind_map_keys() {
    on_key(Qt::Key_G, [this] { map_buttons_->show_not_seen(!map_buttons_->shows_not_seen()); });
    // a picture that is being placed has its own
    const auto on_map_or_picture = [this](void (MapView::*of_map)(), void (PictureView::*of_picture)()) {
        return [this, of_map, of_picture] {
            if (placing_.active() && picture_->hasFocus())
                (picture_->*of_picture)();
            else
                (map_->*of_map)();
        };
    };
    on_key(Qt::Key_F, on_map_or_picture(&MapView::fit, &PictureView::fit));
    for (const QKeySequence& sequence : {QKeySequence(Qt::Key_Plus), QKeySequence(Qt::Key_Equal)})
        on_key(sequence, on_map_or_picture(&MapView::zoom_in, &PictureView::zoom_in));
    on_key(Qt::Key_Minus, on_map_or_picture(&MapView::zoom_out, &PictureView::zoom_out));
    on_key(Qt::Key_Comma, [this] { use_tape(map_->tool() != tape_); });
    on_key(Qt::Key_Q, [this] { map_->magnify(!map_->magnifies()); });
    on_key(Qt::Key_Period, [this] { map_->turn_to_the_walk(); });
    on_key(Qt::Key_C, [this] { map_buttons_->toggle_coordinates(); });
    on_key(Qt::Key_S, [this] { map_buttons_->open_show_menu(); });
    on_key(Qt::CTRL | Qt::Key_M, [this] { map_->setFocus(Qt::ShortcutFocusReason); });
}

void MainWindow::bind_file_keys() {
    on_key(Qt::CTRL | Qt::Key_O, [this] { choose_files(false); });
    on_key(Qt::CTRL | Qt::SHIFT | Qt::Key_O, [this] { choose_files(true); });
    on_key(Qt::CTRL | Qt::Key_S, [this] { open_hand_out(); });
    on_key(Qt::CTRL | Qt::SHIFT | Qt::Key_S, [this] { keep_project_as(); });
    on_key(Qt::CTRL | Qt::Key_Z, [this] { session_.history().undo(); });
    for (const QKeySequence& sequence : {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)})
        on_key(sequence, [this] { session_.history().redo(); });
    on_key(Qt::CTRL | Qt::Key_U, [this] {
        choices_.use(choices_.units() == LengthUnits::metres ? LengthUnits::feet_and_inches : LengthUnits::metres);
    });
    on_key(Qt::CTRL | Qt::Key_L,
           [this] { choices_.use(choices_.theme() == Theme::light ? Theme::sunlight : Theme::light); });
    for (const QKeySequence& sequence : {QKeySequence(Qt::CTRL | Qt::Key_Plus), QKeySequence(Qt::CTRL | Qt::Key_Equal)})
        on_key(sequence, [this] { choices_.step_text(1); });
    on_key(Qt::CTRL | Qt::Key_Minus, [this] { choices_.step_text(-1); });
    on_key(Qt::CTRL | Qt::Key_0, [this] { choices_.use_text(100); });
    on_key(Qt::CTRL | Qt::Key_E,
           [this] { speak_in(spoken() == Language::english ? Language::spanish : Language::english); });
    on_key(Qt::Key_F1, [this] { keys_->toggle(); });
    on_key(Qt::Key_F11, [this] { isFullScreen() ? showNormal() : showFullScreen(); });
    on_key(Qt::Key_Escape, [this] { put_something_away(); });
    on_key(Qt::CTRL | Qt::Key_Q, [this] { close(); });
}

void MainWindow::draw_by_key(Stroke stroke) {
    const auto kind = kind_drawn_by(stroke);
    if (tracing_->picked() && kind && !is_place(*kind)) {
        tracing_->make(*kind);
        return;
    }
    drawing_->take(stroke);
    map_->setFocus(Qt::ShortcutFocusReason);
}

void MainWindow::correct_by_key(Saying saying) {
    slip_->systems().show_corrections(true);
    const bool of_a_mark = saying != Saying::no_run && saying != Saying::aside;
    if (of_a_mark && !choices_.mound()) map_->pick_in_the_middle();
    correcting_->say(saying);
    if (correcting_->saying()) map_->setFocus(Qt::ShortcutFocusReason);
}

}  // namespace plugside
