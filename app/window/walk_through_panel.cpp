#include "app/window/walk_through_panel.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QVBoxLayout>

#include "app/stages/rows_layout.h"
#include "app/window/look_sheet.h"

namespace plugside {

namespace {

constexpr int ring_room_px = 5;
constexpr int ring_looks_every_ms = 120;

struct LessonWords {
    QString title;
    QString words;
};

LessonWords words_of(Lesson lesson) {
    switch (lesson) {
        case Lesson::look:
            return {WalkThroughPanel::tr("1 of 5: look"),
                    WalkThroughPanel::tr(
                        "This field is made up. Each brown fan is a mound as it was marked on the walk. Look at one: "
                        "click it, or press Ctrl+M, then Space; below stands what was noted.")};
        case Lesson::draw:
            return {WalkThroughPanel::tr("2 of 5: draw"),
                    WalkThroughPanel::tr(
                        "Press 2. What no run crosses is drawn over the picture: press D, click two places on the "
                        "map (or press Space, arrows, Space), then Enter.")};
        case Lesson::correct:
            return {WalkThroughPanel::tr("3 of 5: correct"),
                    WalkThroughPanel::tr(
                        "Press 3, then L. Each letter stands for one animal, as its mounds tell. Below is a question "
                        "about two marks: Y if they are one animal's, D if two.")};
        case Lesson::decide:
            return {WalkThroughPanel::tr("4 of 5: decide"),
                    WalkThroughPanel::tr(
                        "Press 4. Each flag is a place to probe; below stands how to tape it from the plug, its "
                        "chance, and what speaks against it. K keeps the set, D drops it.")};
        case Lesson::hand_out:
            return {WalkThroughPanel::tr("5 of 5: hand out"),
                    WalkThroughPanel::tr(
                        "Press Ctrl+S. The sets go to the handheld as waypoints, the plan to the farm's maps as a "
                        "GeoPackage. See where to, then press Esc: nothing is written.")};
        case Lesson::over: break;
    }
    return {WalkThroughPanel::tr("That is the job"),
            WalkThroughPanel::tr(
                "Begin with a walk of your own: drop its files here, or press Ctrl+O. F1 shows all keys, F2 begins "
                "this again. Of the sample nothing is kept.")};
}

}  // namespace

WalkThroughPanel::WalkThroughPanel(WalkThrough& walk_through, QWidget* parent)
    : QFrame(parent), walk_through_(walk_through) {
    setObjectName(QStringLiteral("walk_through"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 7, 10, 9);
    column->setSpacing(5);
    title_ = label_in_role("heading", this);
    title_->setWordWrap(false);
    words_ = label_in_role("plain", this);
    auto* head = RowsLayout::natural(5);
    leave_ = new QPushButton(tr("leave  Esc"), this);
    leave_->setToolTip(tr("leave the walk-through and the sample; nothing of either is kept"));
    stay_ = new QPushButton(tr("stay"), this);
    stay_->setToolTip(tr("stay on the sample"));
    back_ = new QPushButton(tr("‹"), this);
    back_->setAccessibleName(tr("back"));
    back_->setToolTip(tr("back (Shift+F2)"));
    next_ = new QPushButton(tr("next  F2"), this);
    next_->setToolTip(tr("on without doing it"));
    head->addWidget(title_);
    for (QPushButton* key : {leave_, stay_, back_, next_}) {
        key->setProperty("way", true);
        key->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
        head->addWidget(key);
    }
    column->addLayout(head);
    column->addWidget(words_);
    connect(leave_, &QPushButton::clicked, this, &WalkThroughPanel::leave_wanted);
    connect(stay_, &QPushButton::clicked, this, &WalkThroughPanel::stay_wanted);
    connect(back_, &QPushButton::clicked, &walk_through_, &WalkThrough::back);
    connect(next_, &QPushButton::clicked, &walk_through_, &WalkThrough::next);
    connect(&walk_through_, &WalkThrough::changed, this, &WalkThroughPanel::refresh);
    refresh();
}

void WalkThroughPanel::refresh() {
    const auto lesson = walk_through_.at();
    setVisible(lesson.has_value());
    if (!lesson) return;
    const LessonWords words = words_of(*lesson);
    title_->setText(words.title);
    words_->setText(words.words);
    setAccessibleName(words.title);
    setAccessibleDescription(words.words);
    back_->setEnabled(*lesson != lessons.front());
    next_->setVisible(*lesson != Lesson::over);
    stay_->setVisible(*lesson == Lesson::over);
}

PlaceRing::PlaceRing(Choices& choices, Place place, QWidget* window)
    : QWidget(window), choices_(choices), place_(std::move(place)) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFocusPolicy(Qt::NoFocus);
    looking_.setInterval(ring_looks_every_ms);
    connect(&looking_, &QTimer::timeout, this, &PlaceRing::put_about_place);
    hide();
}

void PlaceRing::follow(bool on) {
    if (on) looking_.start();
    if (!on) looking_.stop();
    put_about_place();
}

void PlaceRing::put_about_place() {
    QWidget* place = looking_.isActive() ? place_() : nullptr;
    const bool seen = place != nullptr && place->isVisible() && window()->isEnabled();
    if (seen) {
        const QRect about(place->mapTo(parentWidget(), QPoint(0, 0)), place->size());
        const QRect ring =
            about.adjusted(-ring_room_px, -ring_room_px, ring_room_px, ring_room_px).intersected(parentWidget()->rect());
        if (ring != geometry()) setGeometry(ring);
        if (isHidden()) raise();
    }
    if (seen == isHidden()) setVisible(seen);
}

void PlaceRing::paintEvent(QPaintEvent*) {
    const MapStyle& style = choices_.style();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF ring = QRectF(rect()).adjusted(2.5, 2.5, -2.5, -2.5);
    painter.setPen(QPen(style.slip, 5.0 * style.line_factor));
    painter.drawRoundedRect(ring, 11.0, 11.0);
    painter.setPen(QPen(style.act, 3.0 * style.line_factor, Qt::DashLine));
    painter.drawRoundedRect(ring, 11.0, 11.0);
}

}  // namespace plugside
