#include "app/stages/page_choice.h"

#include <QKeyEvent>
#include <QStyle>
#include <QStyleOptionComboBox>
#include <QWheelEvent>
#include <algorithm>

namespace plugside {

namespace {

// What moves within the choice, leaves it, or is no key by itself.
bool is_its_own(int key) {
    switch (key) {
        case Qt::Key_Up:
        case Qt::Key_Down:
        case Qt::Key_Left:
        case Qt::Key_Right:
        case Qt::Key_Home:
        case Qt::Key_End:
        case Qt::Key_Return:
        case Qt::Key_Enter:
        case Qt::Key_Escape:
        case Qt::Key_Tab:
        case Qt::Key_Backtab:
        case Qt::Key_Shift:
        case Qt::Key_Control:
        case Qt::Key_Alt:
        case Qt::Key_Meta: return true;
        default: return false;
    }
}

}  // namespace

PageChoice::PageChoice(QWidget* parent) : QComboBox(parent) {
    connect(this, &QComboBox::activated, this, [this](int index) {
        if (stepping_) return;
        waits_ = false;
        Q_EMIT settled(index);
    });
}

void PageChoice::showPopup() {
    dropped_ = true;
    QComboBox::showPopup();
}

QSize PageChoice::sizeHint() const {
    constexpr int letters = 8;
    QStyleOptionComboBox option;
    initStyleOption(&option);
    const QSize words(letters * fontMetrics().horizontalAdvance(QLatin1Char('X')), std::max(fontMetrics().height(), 14) + 2);
    return style()->sizeFromContents(QStyle::CT_ComboBox, &option, words, this);
}

void PageChoice::changeEvent(QEvent* event) {
    if (dropped_ || (event->type() != QEvent::StyleChange && event->type() != QEvent::FontChange)) {
        QComboBox::changeEvent(event);
        return;
    }
    QWidget::changeEvent(event);
    updateGeometry();
}

void PageChoice::show_item(int index) {
    if (!waits_) setCurrentIndex(index);
}

void PageChoice::settle() {
    if (!waits_) return;
    waits_ = false;
    if (currentIndex() != from_) Q_EMIT settled(currentIndex());
}

void PageChoice::give_up() {
    if (!waits_) return;
    waits_ = false;
    setCurrentIndex(from_);
}

bool PageChoice::event(QEvent* event) {
    if (waits_ && event->type() == QEvent::ShortcutOverride) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Escape || key == Qt::Key_Return || key == Qt::Key_Enter) {
            event->accept();  // it is this choice's before it is the window's
            return true;
        }
        if (!is_its_own(key)) settle();
    }
    return QComboBox::event(event);
}

void PageChoice::wheelEvent(QWheelEvent* event) {
    if (!hasFocus()) {
        event->ignore();
        return;
    }
    const int was = currentIndex();
    stepping_ = true;
    QComboBox::wheelEvent(event);
    stepping_ = false;
    if (currentIndex() != was && !waits_) from_ = was;
    waits_ = waits_ || currentIndex() != was;
}

void PageChoice::keyPressEvent(QKeyEvent* event) {
    const int key = event->key();
    if (waits_ && (key == Qt::Key_Return || key == Qt::Key_Enter)) return settle();
    if (waits_ && key == Qt::Key_Escape) return give_up();
    const int was = currentIndex();
    stepping_ = true;
    QComboBox::keyPressEvent(event);
    stepping_ = false;
    if (currentIndex() != was && !waits_) from_ = was;
    waits_ = waits_ || currentIndex() != was;
}

void PageChoice::focusOutEvent(QFocusEvent* event) {
    QComboBox::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason) settle();
}

PageChoice* page_choice(const QString& name, QWidget* parent) {
    auto* choice = new PageChoice(parent);
    choice->setFocusPolicy(Qt::StrongFocus);
    choice->setAccessibleName(name);
    return choice;
}

}  // namespace plugside
