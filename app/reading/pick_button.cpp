#include "app/reading/pick_button.h"

#include <QActionGroup>
#include <QKeyEvent>

namespace plugside {

namespace {

// A letter goes to the next choice that begins with it.
class ChoiceMenu : public QMenu {
public:
    using QMenu::QMenu;

protected:
    void keyPressEvent(QKeyEvent* event) override {
        const QString letter = event->text();
        const QList<QAction*> all = actions();
        if (letter.isEmpty() || !letter.front().isLetterOrNumber() || all.isEmpty()) {
            QMenu::keyPressEvent(event);
            return;
        }
        const qsizetype from = all.indexOf(activeAction());
        for (qsizetype step = 1; step <= all.size(); ++step) {
            QAction* action = all[(from + step) % all.size()];
            if (!action->text().startsWith(letter, Qt::CaseInsensitive)) continue;
            setActiveAction(action);
            return;
        }
    }
};

}  // namespace

QMenu* open_choice_menu(QWidget* parent, const QStringList& words, int marked, QPoint at,
                        const std::function<void(int)>& taken) {
    auto* menu = new ChoiceMenu(parent);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    auto* group = new QActionGroup(menu);
    for (int i = 0; i < words.size(); ++i) {
        QAction* action = menu->addAction(words[i]);
        action->setCheckable(true);
        action->setActionGroup(group);
        action->setChecked(i == marked);
        if (i == marked) menu->setActiveAction(action);
        QObject::connect(action, &QAction::triggered, parent, [taken, i] { taken(i); });
    }
    menu->popup(at);
    return menu;
}

PickButton::PickButton(const QString& caption, QWidget* parent) : QPushButton(parent), caption_(caption) {
    setProperty("way", true);
    setAccessibleName(caption);
    connect(this, &QPushButton::clicked, this, &PickButton::open);
}

void PickButton::set_options(const QStringList& options) {
    options_ = options;
    show_option(option_);
}

void PickButton::show_option(int index) {
    option_ = index;
    const QString word = index >= 0 && index < options_.size() ? options_[index] : QString();
    setText(tr("%1: %2 ▾").arg(caption_, word));
    setAccessibleDescription(word);
}

void PickButton::pick(int index) {
    if (index == option_) return;
    show_option(index);
    Q_EMIT picked(index);
}

void PickButton::open() {
    open_choice_menu(this, options_, option_, mapToGlobal(QPoint(0, height() + 3)), [this](int index) { pick(index); });
}

}  // namespace plugside
