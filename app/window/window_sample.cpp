// The window's part in the sample: the first start, the walk-through on it, and leaving both without a trace.
#include <QPushButton>
#include <QSettings>
#include <QStandardPaths>

#include "app/session/project_places.h"
#include "app/stages/lined_button.h"
#include "app/window/main_window.h"
#include "app/window/walk_through_panel.h"

namespace plugside {

namespace {

QString shown_key() { return QStringLiteral("walk-through/shown"); }

// The keys that a lesson is about, the one to point at first.
QStringList keys_of(Lesson lesson) {
    switch (lesson) {
        case Lesson::draw: return {QStringLiteral("D")};
        case Lesson::correct: return {QStringLiteral("Y")};
        case Lesson::decide: return {QStringLiteral("K")};
        case Lesson::look:
        case Lesson::hand_out:
        case Lesson::over: break;
    }
    return {};
}

}  // namespace

void MainWindow::begin(const FieldSession::Files& files, bool sample_wanted) {
    const bool first = !QSettings().contains(shown_key()) && recent_projects().empty();
    if (!files.empty())
        take_dropped(files);
    else if (first || sample_wanted)
        show_on_sample();
}

bool MainWindow::sample_is_open() const { return session_.field() && sample_.holds(session_.files()); }

void MainWindow::show_on_sample() {
    if (reading_->isVisible() || reading_->desk().reading() || hand_out_dialog_) return;
    if (session_.field() && !sample_is_open()) {
        const int answer = ask_(tr("A field is open. It stays in its project. Show the job on the sample now?"),
                                {tr("show the sample"), tr("stay")});
        if (answer != 0 || !may_leave_field(tr("show it without"))) return;
    }
    const auto files = sample_.lay_out();
    if (!files) {
        slip_->say(sample_.why_not(), Slip::Weight::refusal);
        return;
    }
    QSettings().setValue(shown_key(), true);
    pictures_waiting_ = {sample_.picture()};
    walk_through_.end();
    walk_through_.begin();
    session_.open(*files);
}

// Everything as at a start without files.
void MainWindow::leave_sample() {
    walk_through_.end();
    if (!pictures_waiting_.empty()) session_.file_work().stop();  // it is still being read
    pictures_waiting_.clear();
    if (!sample_is_open()) return;
    choices_.forget_picks();
    choices_.go_to(Step::walk);
    session_.close();
    imagery_.restore({}, Imagery::first_tone);
    make_parts_anew(Pace::at_once);
    sample_.clear_away();
}

void MainWindow::bind_sample() {
    keeper_.set_passing([this](const FieldSession::Files& files) { return sample_.holds(files); });
    auto* panel = new WalkThroughPanel(walk_through_, slip_);
    slip_->put_above(panel);
    // after the click that asked for it: the button it came from goes
    connect(panel, &WalkThroughPanel::leave_wanted, this, &MainWindow::leave_sample, Qt::QueuedConnection);
    connect(panel, &WalkThroughPanel::stay_wanted, &walk_through_, &WalkThrough::end);
    auto* offer = new LinedButton(tr("see the job on a sample field  F2"), slip_);
    offer->setObjectName(QStringLiteral("sample_offer"));
    slip_->put_below(offer);
    connect(offer, &QPushButton::clicked, this, &MainWindow::show_on_sample, Qt::QueuedConnection);
    ring_ = new PlaceRing(
        choices_, [this] { return place_of_lesson(); }, this);
    const auto follow = [this, offer] {
        offer->setVisible(!session_.field() && !walk_through_.at());
        ring_->follow(walk_through_.at().has_value());
    };
    connect(&walk_through_, &WalkThrough::changed, ring_, follow);
    connect(&session_, &FieldSession::field_replaced, ring_, [this, follow] {
        const bool sample = sample_is_open();
        if (!sample) {
            walk_through_.end();
            sample_.clear_away();
        }
        for (const auto& picture : std::exchange(pictures_waiting_, {})) imagery_.add(picture);
        follow();
    });
    // what could not be read leaves nothing to walk through
    connect(&session_, &FieldSession::refused, ring_, [this] {
        pictures_waiting_.clear();
        if (!session_.field()) walk_through_.end();
    });
    on_key(Qt::Key_F2,
           [this] { walk_through_.at() && *walk_through_.at() != Lesson::over ? walk_through_.next() : show_on_sample(); });
    on_key(Qt::SHIFT | Qt::Key_F2, [this] { walk_through_.back(); });
    follow();
}

// Where a lesson takes place now: its step on the rail until that is at hand, then its key on the slip, the map while something is
// drawn there.
QWidget* MainWindow::place_of_lesson() {
    const auto lesson = walk_through_.at();
    if (!lesson || !session_.field() || hand_out_dialog_) return nullptr;
    if (*lesson == Lesson::hand_out) return &top_bar_->hand_out();
    const auto step = WalkThrough::step_of(*lesson);
    if (!step) return nullptr;
    if (choices_.step() != *step) return rail_->button(*step);
    if (*lesson == Lesson::look || (*lesson == Lesson::draw && drawing_->pen().stroke())) return map_;
    for (const QString& wanted : keys_of(*lesson))
        for (KeyButton* key : slip_->findChildren<KeyButton*>())
            if (key->isVisible() && key->key() == wanted && key->isEnabled()) return key;
    if (*lesson == Lesson::correct) return slip_->systems().corrections_key();
    return nullptr;
}

}  // namespace plugside
