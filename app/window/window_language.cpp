// The window in another language: its parts are made anew, the field and what is decided stay.
#include <QEvent>
#include <QSettings>
#include <QShortcut>

#include "app/window/main_window.h"
#include "app/words/language.h"

namespace plugside {

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
    QMetaObject::invokeMethod(this, &MainWindow::make_parts_anew, Qt::QueuedConnection);
}

void MainWindow::make_parts_anew() {
    const Step step = choices_.step();
    const auto mound = choices_.mound();
    const auto system = choices_.system();
    const auto set = choices_.set();
    let_go_of_parts();
    qDeleteAll(findChildren<QShortcut*>(QString(), Qt::FindDirectChildrenOnly));
    delete layout();
    make_parts();
    // what is known of the field is shown by the new parts as they hear of it
    if (session_.field()) session_.say_anew();
    choices_.go_to(step);
    choices_.pick_system(system);
    if (set) choices_.pick_set(set);
    choices_.pick_mound(mound);
    for (QWidget* part : findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly))
        if (part->isHidden() && !part->testAttribute(Qt::WA_WState_ExplicitShowHide)) part->show();
    map_->setFocus();
}

}  // namespace plugside
