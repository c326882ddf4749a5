// The window in another language: its parts are made anew, the field and what is decided stay.
#include <QEvent>
#include <QSettings>
#include <QShortcut>
#include <QTimer>
#include <functional>
#include <utility>
#include <vector>

#include "app/window/main_window.h"
#include "app/words/language.h"

namespace plugside {

namespace {

// One after the other, with all else that waits for the thread between them.
void in_turns(QObject* of, std::vector<std::function<void()>> steps) {
    if (steps.empty()) return;
    QTimer::singleShot(0, of, [of, steps = std::move(steps)]() mutable {
        const std::function<void()> step = std::move(steps.front());
        steps.erase(steps.begin());
        step();
        in_turns(of, std::move(steps));
    });
}

}  // namespace

void MainWindow::speak_in(Language language) {
    if (language == spoken()) return;
    QSettings().setValue(QStringLiteral("language"), code_of(language));
    speak(language);
}

void MainWindow::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::LanguageChange || made_in_ == spoken()) return;
    made_in_ = spoken();
    // the button that asked for it is one of the parts
    QMetaObject::invokeMethod(
        this, [this] { make_parts_anew(Pace::in_turns); }, Qt::QueuedConnection);
}

// Some hundred widgets go and come: in steps, each a turn of the event loop, so that none keeps the thread for long. Until the last one
// the picture of before stays on the screen.
void MainWindow::make_parts_anew(Pace pace) {
    if (std::exchange(making_anew_, true)) return;  // under way: looked at once more at its end
    setUpdatesEnabled(false);
    const Step step = choices_.step();
    const auto mound = choices_.mound();
    const auto system = choices_.system();
    const auto set = choices_.set();
    stop_hearing();
    qDeleteAll(findChildren<QShortcut*>(QString(), Qt::FindDirectChildrenOnly));
    delete layout();
    // the slip goes page by page; until it has gone no key and no click reaches it
    setFocus();
    slip_->setAttribute(Qt::WA_TransparentForMouseEvents);
    for (QWidget* part : findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly))
        if (part != slip_) delete part;
    std::vector<std::function<void()>> steps;
    for (QWidget* page : slip_->pages()) steps.emplace_back([page] { delete page; });
    const std::vector<std::function<void()>> anew{
        [this] { let_go_of_parts(); },
        [this] { make_map(); },
        [this] { make_slip(); },
        [this] {
            lay_out();
            bind_parts();
        },
        [this, step, mound, system, set] {
            // what is known of the field is shown by the new parts as they hear of it; in the same turn, for it takes the step back to the first
            if (session_.field()) session_.say_anew();
            choices_.go_to(step);
            choices_.pick_system(system);
            if (set) choices_.pick_set(set);
            choices_.pick_mound(mound);
        },
        [this] {
            for (QWidget* part : findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly))
                if (part->isHidden() && !part->testAttribute(Qt::WA_WState_ExplicitShowHide)) part->show();
            map_->setFocus();
        },
        [this, pace, language = spoken()] {
            making_anew_ = false;
            dresser_.show_when_dressed();
            // another one was asked for while the parts were being made
            if (language != spoken()) make_parts_anew(pace);
        }};
    steps.insert(steps.end(), anew.begin(), anew.end());
    if (pace == Pace::in_turns)
        in_turns(this, std::move(steps));
    else
        for (const auto& step_of_it : steps) step_of_it();
}

}  // namespace plugside
