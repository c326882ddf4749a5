// A button whose words take as many lines as they need in the width that it is given; a word longer than that is cut.
#pragma once

#include <QEvent>
#include <QPushButton>
#include <QStringList>

namespace plugside {

class LinedButton : public QPushButton {
    Q_OBJECT

public:
    explicit LinedButton(const QString& words, QWidget* parent = nullptr);
    // Another text, broken anew. `text()` is the broken one.
    void set_words(const QString& words);
    [[nodiscard]] const QString& words() const { return words_; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {60, sizeHint().height()}; }

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void break_lines();
    QString words_;
};

}  // namespace plugside
