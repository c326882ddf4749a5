#include "app/window/keys_overlay.h"

#include <QApplication>
#include <QGridLayout>
#include <algorithm>

#include "app/window/look_sheet.h"

namespace plugside {

KeysOverlay::KeysOverlay(QWidget* window) : QFrame(window) {
    setObjectName(QStringLiteral("keys"));
    setAccessibleName(tr("the keys"));
    hide();
}

void KeysOverlay::tell_keys() {
    content_ = new QWidget(this);
    columns_ = new QBoxLayout(QBoxLayout::LeftToRight, content_);
    columns_->setContentsMargins(0, 0, 0, 0);
    columns_->setSpacing(20);
    const Keys left{{tr("1  2  3  4  5"), tr("Walk, Ground, Systems, Method, Sets")},
                    {tr("Ctrl+O"), tr("open a project, or a walk with its ground")},
                    {tr("Ctrl+Shift+O"), tr("add a walk or ground to this field")},
                    {tr("Ctrl+I  Ctrl+Shift+I"), tr("lay a picture, or a server's, under the map")},
                    {tr("Ctrl+S"), tr("hand out")},
                    {tr("Ctrl+Shift+S"), tr("give the project a name and place")},
                    {tr("Ctrl+Z"), tr("undo")},
                    {tr("Ctrl+Shift+Z, Ctrl+Y"), tr("redo")},
                    {tr("Ctrl+U"), tr("feet or metres")},
                    {tr("Ctrl+L"), tr("light, or readable in sunlight")},
                    {tr("Ctrl++  Ctrl+−  Ctrl+0"), tr("larger text, smaller, as at first")},
                    {tr("Ctrl+E"), tr("English or Spanish")},
                    {tr("+  −  F"), tr("nearer, further, the whole field")},
                    {tr("arrows"), tr("move the map; Ctrl+M goes to it")},
                    {tr("Space  [  ]"), tr("on the map: nearest mark, mark by mark")},
                    {tr("Ctrl+G"), tr("follow a receiver; with Shift: in the middle")},
                    {tr("C  S"), tr("latitude, longitude; what is shown")},
                    {tr("F11"), tr("whole screen")},
                    {tr("F1  F2"), tr("this sheet; the job on a sample field")},
                    {tr("Esc"), tr("put away, give up")}};
    const Keys right{{tr("V  L  T  W"), tr("of the walk: read, wrong, notes, not seen")},
                     {tr("I"), tr("who dug at the picked mark; 1 2 3 answer")},
                     {tr("P"), tr("the mark's photograph, large")},
                     {tr("G"), tr("hatch the ground not seen, or not")},
                     {tr("A  R"), tr("accept, refuse a finding; Shift: all alike")},
                     {tr("B D X T K U H Y"), tr("on the ground: draw what the button says")},
                     {tr("W"), tr("an outline about the walk; [ ] its corners, arrows")},
                     {tr("J  E  Del"), tr("join, mend, remove the picked shape")},
                     {tr("R  L"), tr("trace a layer or track; a band about a line")},
                     {tr("O T R N A X Z"), tr("of systems: say what the button says")},
                     {tr("Y  D"), tr("answer the question: one animal, two")},
                     {tr("N  M  L  A  O"), tr("of the method: conditions, methods, label, against, load")},
                     {tr("K  D  U"), tr("keep the set, drop it, undecided again")},
                     {tr("M"), tr("move it: arrows, drag or type a length; Enter")},
                     {tr("Ctrl+arrows"), tr("shift a ladder, turn a fan; Shift for more")},
                     {tr("W  I"), tr("why this place; the first other instead")},
                     {tr("A"), tr("the animal's sets; left, right choose")},
                     {tr("O  T"), tr("which sets to go through; several at once")},
                     {tr("R"), tr("walking order: from, to, people, days, tours")},
                     {tr("N"), tr("next undecided by worth, next finding")},
                     {tr("Page up, Page down"), tr("previous, next set")},
                     {tr(",  Q"), tr("lay the tape on the map; a magnifying glass")},
                     {tr(".  Alt+arrows"), tr("turn the map to the way walked; next mark that way")}};
    add_column(left);
    add_column(right);
    scroll_ = new PageScroll(content_, this);
    scroll_->setFocusPolicy(Qt::StrongFocus);
    scroll_->setProperty("page", false);  // it shows when it has the focus
    scroll_->setAccessibleName(tr("the keys"));
    auto* around = new QVBoxLayout(this);
    around->setContentsMargins(28, 22, 22, 22);
    around->addWidget(scroll_);
}

void KeysOverlay::add_column(const Keys& keys) {
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(20);
    grid->setVerticalSpacing(5);
    grid->setColumnStretch(1, 1);
    int row = 0;
    for (const auto& [name, meaning] : keys) {
        auto* key = label_in_role("heading", content_);
        key->setText(name);
        key->setIndent(4);  // a J reaches to the left of where it begins
        auto* what = label_in_role("body", content_);
        what->setText(meaning);
        words_.push_back(what);
        for (QLabel* label : {key, what}) {
            label->setWordWrap(false);
            label->setTextInteractionFlags(Qt::NoTextInteraction);
            label->setAttribute(Qt::WA_TransparentForMouseEvents);
        }
        grid->addWidget(key, row, 0, Qt::AlignTop);
        grid->addWidget(what, row, 1);
        ++row;
    }
    columns_->addLayout(grid);
}

void KeysOverlay::fit() {
    const QSize room = parentWidget()->size() - QSize(24, 24);
    const QSize rim(58, 52);
    const auto lay = [&](QBoxLayout::Direction direction, bool wrapped) {
        for (QLabel* words : words_) words->setWordWrap(wrapped);
        columns_->setDirection(direction);
        columns_->setSpacing(direction == QBoxLayout::LeftToRight ? 20 : 5);
        for (int i = 0; i < columns_->count(); ++i) columns_->itemAt(i)->layout()->invalidate();
        columns_->invalidate();
    };
    lay(QBoxLayout::LeftToRight, false);
    if (columns_->sizeHint().width() + rim.width() > room.width()) lay(QBoxLayout::TopToBottom, false);
    if (columns_->sizeHint().width() + rim.width() > room.width()) lay(QBoxLayout::TopToBottom, true);
    const int width = std::min(columns_->sizeHint().width() + rim.width(), room.width());
    const int inside = width - rim.width();
    const int high = columns_->hasHeightForWidth() ? columns_->heightForWidth(inside) : columns_->sizeHint().height();
    // room for the bar that scrolls, so that words do not break because of it
    const bool whole = high + rim.height() <= room.height();
    resize(whole ? width : std::min(width + 16, room.width()), std::min(high + rim.height(), room.height()));
    move((parentWidget()->width() - this->width()) / 2, (parentWidget()->height() - height()) / 2);
}

void KeysOverlay::toggle() {
    if (isVisible()) {
        hide();
        return;
    }
    if (content_ == nullptr) tell_keys();
    focus_before_ = QApplication::focusWidget();
    raise();
    show();
    fit();
    scroll_->setFocus(Qt::OtherFocusReason);
}

void KeysOverlay::hideEvent(QHideEvent* event) {
    QFrame::hideEvent(event);
    if (focus_before_ && focus_before_->isVisible()) focus_before_->setFocus(Qt::OtherFocusReason);
}

void KeysOverlay::mousePressEvent(QMouseEvent*) { hide(); }

}  // namespace plugside
