// A choice of a few words on a button, "separator: semicolon": pressed, it shows them all.
//
// Keys: Space or Enter opens, letters and arrows choose. The accessible name is the caption, its description the choice.
#pragma once

#include <QMenu>
#include <QPushButton>
#include <QStringList>
#include <functional>

namespace plugside {

class PickButton : public QPushButton {
    Q_OBJECT

public:
    explicit PickButton(const QString& caption, QWidget* parent = nullptr);
    void set_options(const QStringList& options);
    void show_option(int index);  // no signal
    [[nodiscard]] int option() const { return option_; }
    // As if the person had taken it.
    void pick(int index);

Q_SIGNALS:
    void picked(int index);

private:
    void open();

    QString caption_;
    QStringList options_;
    int option_ = 0;
};

// A menu of `words` with one of them marked; deletes itself. `taken` is called with the index of the one chosen.
QMenu* open_choice_menu(QWidget* parent, const QStringList& words, int marked, QPoint at,
                        const std::function<void(int)>& taken);

}  // namespace plugside
