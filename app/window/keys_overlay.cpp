#include "app/window/keys_overlay.h"

#include <QGridLayout>
#include <QLabel>
#include <utility>
#include <vector>

#include "app/window/look_sheet.h"

namespace plugside {

KeysOverlay::KeysOverlay(QWidget* window) : QFrame(window) {
    setObjectName(QStringLiteral("keys"));
    setAccessibleName(tr("the keys"));
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(28, 22, 28, 22);
    grid->setHorizontalSpacing(20);
    grid->setVerticalSpacing(5);
    const std::vector<std::pair<QString, QString>> left{{tr("1  2  3  4"), tr("Walk, Ground, Systems, Sets")},
                                                        {tr("Ctrl+O"), tr("open a project, or a walk with its ground")},
                                                        {tr("Ctrl+Shift+O"), tr("add a walk or ground to this field")},
                                                        {tr("Ctrl+I"), tr("lay a picture under the map")},
                                                        {tr("Ctrl+S"), tr("hand out")},
                                                        {tr("Ctrl+Shift+S"), tr("give the project a name and place")},
                                                        {tr("Ctrl+Z"), tr("undo")},
                                                        {tr("Ctrl+Shift+Z, Ctrl+Y"), tr("redo")},
                                                        {tr("Ctrl+U"), tr("feet or metres")},
                                                        {tr("Ctrl+L"), tr("light, or readable in sunlight")},
                                                        {tr("Ctrl+E"), tr("English or Spanish")},
                                                        {tr("+  −  F"), tr("nearer, further, the whole field")},
                                                        {tr("arrows"), tr("move the map; Ctrl+M goes to it")},
                                                        {tr("Space  [  ]"), tr("on the map: nearest mark, mark by mark")},
                                                        {tr("Ctrl+G"), tr("follow a receiver; with Shift: in the middle")},
                                                        {tr("C  S"), tr("latitude, longitude; what is shown")},
                                                        {tr("F11"), tr("whole screen")},
                                                        {tr("F1  F2"), tr("this sheet; the job on a sample field")},
                                                        {tr("Esc"), tr("put away, give up")}};
    const std::vector<std::pair<QString, QString>> right{
        {tr("V  L  T  W"), tr("of the walk: read, wrong, notes, not seen")},
        {tr("I"), tr("who dug at the picked mark; 1 2 3 answer")},
        {tr("P"), tr("the mark's photograph, large")},
        {tr("G"), tr("hatch the ground not seen, or not")},
        {tr("A  R"), tr("accept, refuse a finding; Shift: all alike")},
        {tr("B D X T K U H Y"), tr("on the ground: draw what the button says")},
        {tr("W"), tr("an outline about the walk; [ ] its corners, arrows")},
        {tr("J  E  Del"), tr("join, mend, remove the picked shape")},
        {tr("O T R N A X Z"), tr("of systems: say what the button says")},
        {tr("Y  D"), tr("answer the question: one animal, two")},
        {tr("K  D  U"), tr("keep the set, drop it, undecided again")},
        {tr("M"), tr("move it: arrows, drag or type a length; Enter")},
        {tr("Ctrl+arrows"), tr("shift a ladder, turn a fan; Shift for more")},
        {tr("W  I"), tr("why this place; the first other instead")},
        {tr("A"), tr("the animal's sets; left, right choose")},
        {tr("O  T"), tr("which sets to go through; several at once")},
        {tr("N"), tr("next undecided by worth, next finding")},
        {tr("Page up, Page down"), tr("previous, next set")},
        {tr(",  Q"), tr("lay the tape on the map; a magnifying glass")},
        {tr(".  Alt+arrows"), tr("turn the map to the way walked; next mark that way")}};
    const auto fill = [&](const std::vector<std::pair<QString, QString>>& keys, int column) {
        for (int row = 0; row < static_cast<int>(keys.size()); ++row) {
            auto* key = label_in_role("heading", this);
            key->setText(keys[static_cast<std::size_t>(row)].first);
            auto* what = label_in_role("body", this);
            what->setText(keys[static_cast<std::size_t>(row)].second);
            for (QLabel* label : {key, what}) {
                label->setWordWrap(false);
                label->setTextInteractionFlags(Qt::NoTextInteraction);
                label->setAttribute(Qt::WA_TransparentForMouseEvents);
            }
            grid->addWidget(key, row, column);
            grid->addWidget(what, row, column + 1);
        }
    };
    fill(left, 0);
    fill(right, 2);
    grid->setColumnMinimumWidth(1, 240);
    hide();
}

void KeysOverlay::toggle() {
    if (isVisible()) {
        hide();
        return;
    }
    adjustSize();
    move((parentWidget()->width() - width()) / 2, (parentWidget()->height() - height()) / 2);
    raise();
    show();
}

void KeysOverlay::mousePressEvent(QMouseEvent*) { hide(); }

}  // namespace plugside
