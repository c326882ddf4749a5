#include "app/window/walk_through_panel.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QVBoxLayout>

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
            return {
                WalkThroughPanel::tr("1 of 5: look at the walk"),
                WalkThroughPanel::tr(
                    "This field is made up. Each brown fan on the map is a mound as it was marked on the walk. Below stands "
                    "what looks wrong in it: press A to accept what is proposed, or R to refuse it.")};
        case Lesson::draw:
            return {
                WalkThroughPanel::tr("2 of 5: draw the ground"),
                WalkThroughPanel::tr(
                    "Press 2 for the Ground step. What no run crosses, and what is kept clear, is drawn over the picture. "
                    "Draw a line: press D, click two places on the map (or Space, arrows, Space), then Enter.")};
        case Lesson::correct:
            return {WalkThroughPanel::tr("3 of 5: say what you know"),
                    WalkThroughPanel::tr("Press 3, then L. Each letter on the map stands for one animal, as its mounds "
                                         "tell. Below stands a question "
                                         "about two marks: press Y if they are one animal's, D if two.")};
        case Lesson::decide:
            return {
                WalkThroughPanel::tr("4 of 5: decide the sets"),
                WalkThroughPanel::tr(
                    "Press 4. Each flag is a place to probe. Below stands where to tape from the plug, how likely the probe "
                    "meets the run, and what speaks against it. Press K to keep the set, or D to drop it.")};
        case Lesson::hand_out:
            return {WalkThroughPanel::tr("5 of 5: hand out"),
                    WalkThroughPanel::tr("Press Ctrl+S. The kept sets go to the handheld as waypoints, the plan to the "
                                         "farm's maps as a GeoPackage. "
                                         "Look where they would be written, then press Esc: nothing is written.")};
        case Lesson::over: break;
    }
    return {WalkThroughPanel::tr("That is the job"),
            WalkThroughPanel::tr(
                "Begin with a walk of your own: drop its files on this window, or press Ctrl+O. F1 shows all keys, "
                "F2 begins this again. Of the sample nothing is kept.")};
}

}  // namespace

WalkThroughPanel::WalkThroughPanel(WalkThrough& walk_through, QWidget* parent)
    : QFrame(parent), walk_through_(walk_through) {
    setObjectName(QStringLiteral("walk_through"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(14, 9, 14, 10);
    column->setSpacing(5);
    title_ = label_in_role("heading", this);
    words_ = label_in_role("body", this);
    column->addWidget(title_);
    column->addWidget(words_);
    auto* keys = new QHBoxLayout;
    keys->setSpacing(6);
    leave_ = new QPushButton(tr("leave  Esc"), this);
    leave_->setToolTip(tr("leave the walk-through and the sample; nothing of either is kept"));
    stay_ = new QPushButton(tr("stay on the sample"), this);
    back_ = new QPushButton(tr("back"), this);
    back_->setToolTip(tr("Shift+F2"));
    next_ = new QPushButton(tr("next  F2"), this);
    next_->setToolTip(tr("on without doing it"));
    for (QPushButton* key : {leave_, stay_, back_, next_}) key->setProperty("way", true);
    keys->addWidget(leave_);
    keys->addStretch(1);
    for (QPushButton* key : {stay_, back_, next_}) keys->addWidget(key);
    column->addLayout(keys);
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
    const MapStyle& style = style_of(choices_.theme());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF ring = QRectF(rect()).adjusted(2.5, 2.5, -2.5, -2.5);
    painter.setPen(QPen(style.slip, 5.0 * style.line_factor));
    painter.drawRoundedRect(ring, 11.0, 11.0);
    painter.setPen(QPen(style.act, 3.0 * style.line_factor, Qt::DashLine));
    painter.drawRoundedRect(ring, 11.0, 11.0);
}

}  // namespace plugside
