#include "app/stages/walk_page.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "app/stages/mark_key.h"
#include "app/stages/mound_facts.h"
#include "app/stages/page_scroll.h"
#include "app/stages/rows_layout.h"
#include "app/window/dresser.h"
#include "app/window/look_sheet.h"
#include "core/mending/walk_marks.h"
#include "core/words/words.h"

namespace plugside {

namespace {

QString track_words(const Walk& walk, LengthUnits units) {
    double metres = 0.0;
    for (const TrackSegment& segment : walk.segments)
        for (std::size_t i = 1; i < segment.size(); ++i) metres += distance_m(segment[i - 1].at, segment[i].at);
    const QString name =
        WalkPage::tr("%1 (%2)").arg(QString::fromStdString(walk_name_shown(walk.id)), QString::fromStdString(walk.source));
    if (metres <= 0.0) return WalkPage::tr("%1: marks without a track").arg(name);
    return WalkPage::tr("%1: a track of %2").arg(name, QString::fromStdString(ground_distance(Metres::of(metres), units)));
}

QString ground_words(const Ground& ground) {
    QStringList parts;
    if (!ground.boundary.empty()) parts << WalkPage::tr("a boundary");
    for (const Barrier& barrier : ground.barriers)
        parts << (barrier.name.empty() ? WalkPage::tr("a barrier") : QString::fromStdString(barrier.name));
    for (const KeepClearArea& area : ground.keep_clear)
        parts << (area.name.empty() ? WalkPage::tr("an area kept clear") : QString::fromStdString(area.name));
    if (parts.isEmpty()) return WalkPage::tr("no boundary, barrier or area to keep clear was read");
    return WalkPage::tr("ground: %1").arg(parts.join(QStringLiteral(", ")));
}

}  // namespace

QStringList read_lines(const FieldSurvey& field, LengthUnits units) {
    const auto& mounds = field.survey.mounds;
    const auto gophers = std::count_if(mounds.begin(), mounds.end(), [](const Mound& m) { return is_gopher_sign(m.kind); });
    const auto fans =
        std::count_if(mounds.begin(), mounds.end(), [](const Mound& m) { return is_gopher_sign(m.kind) && m.fan; });
    QStringList lines;
    lines << counted(gophers, WalkPage::tr("%1 mark of a gopher"), WalkPage::tr("%1 marks of gophers")) +
                 counted(fans, WalkPage::tr(", %1 with a fan that could be read"),
                         WalkPage::tr(", %1 with a fan that could be read"));
    const auto others = static_cast<int>(mounds.size()) - static_cast<int>(gophers);
    if (others > 0)
        lines << counted(others, WalkPage::tr("%1 mark of another digger or thing"),
                         WalkPage::tr("%1 marks of other diggers or things"));
    for (const Walk& walk : field.survey.walks) lines << track_words(walk, units);
    lines << ground_words(field.survey.ground);
    return lines;
}

WalkPage::WalkPage(FieldSession& session, Choices& choices, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices) {
    dress_by_parts(*this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    auto* title = label_in_role("title", this);
    title->setText(tr("Walk"));
    column->addWidget(title);
    empty_ = label_in_role("body", this);
    empty_->setText(tr(
        "No walk is open. Drop the files of a scouting walk here, whatever the handheld gave: walks, tables, photographs, "
        "the farm's layers."));
    column->addWidget(empty_);
    filled_ = new QWidget(this);
    dress_by_parts(*filled_);
    build_parts();
    column->addWidget(filled_, 1);
    digger_ = new DiggerKeyView(session_, choices_, this);
    column->addWidget(digger_, 1);
    digger_->hide();
    column->addStretch(0);
    facts_ = new MoundFacts(session, choices, MoundFacts::Asks::who_dug, this);
    facts_room_ = new QWidget(this);
    auto* around = new QVBoxLayout(facts_room_);
    around->setContentsMargins(0, 0, 0, 0);
    around->addWidget(facts_);
    column->addWidget(facts_room_);
    auto* keys = RowsLayout::natural(6);
    auto* open = new QPushButton(tr("open a walk…"), this);
    open->setToolTip(tr("Ctrl+O"));
    add_ = new QPushButton(tr("add to it…"), this);
    add_->setToolTip(tr("Ctrl+Shift+O: another walk or the ground's layers"));
    how_read_ = new QPushButton(tr("files read…"), this);
    how_read_->setToolTip(
        tr("how the files were read: columns, reference systems and norths, to be changed and read again"));
    for (QPushButton* key : {open, add_, how_read_}) {
        key->setProperty("way", true);
        keys->addWidget(key);
    }
    column->addLayout(keys);
    connect(open, &QPushButton::clicked, this, &WalkPage::open_wanted);
    connect(add_, &QPushButton::clicked, this, &WalkPage::add_wanted);
    connect(facts_, &MoundFacts::digger_asked, this, &WalkPage::ask_who_dug);
    connect(digger_, &DiggerKeyView::done, this, &WalkPage::leave_digger_key);
    connect(how_read_, &QPushButton::clicked, this, &WalkPage::reading_wanted);
    connect(&session_, &FieldSession::field_replaced, this, &WalkPage::refresh);
    connect(&session_, &FieldSession::plan_changed, this, &WalkPage::refresh);
    connect(&choices_, &Choices::units_changed, this, &WalkPage::refresh);
    connect(&choices_, &Choices::picks_changed, this, [this] {
        if (part_ == WalkPart::notes && choices_.mound()) notes_->show_note_of(*choices_.mound());
        lay_part();
    });
    refresh();
}

void WalkPage::build_parts() {
    auto* inside = new QVBoxLayout(filled_);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(8);
    auto* parts = RowsLayout::natural(5);
    const QStringList names{tr("what was read (V)"), tr("what looks wrong (L)"), tr("notes (T)"),
                            tr("what was not seen (W)")};
    for (std::size_t i = 0; i < part_keys_.size(); ++i) {
        auto* key = new QPushButton(filled_);
        key->setProperty("way", true);
        key->setCheckable(true);
        key->setToolTip(names[static_cast<qsizetype>(i)]);
        part_keys_[i] = key;
        parts->addWidget(key);
        connect(key, &QPushButton::clicked, this, [this, i] { show_part(static_cast<WalkPart>(i)); });
    }
    inside->addLayout(parts);
    about_ = new QWidget(filled_);
    auto* about = new QVBoxLayout(about_);
    about->setContentsMargins(0, 0, 0, 0);
    about->setSpacing(8);
    read_ = label_in_role("body", about_);
    said_ = label_in_role("body", about_);
    seen_ = label_in_role("quiet", about_);
    not_understood_ = new QListWidget(about_);
    not_understood_->setWordWrap(true);
    not_understood_->setMinimumHeight(96);
    take_what_is_left(*not_understood_);
    not_understood_->setSelectionMode(QAbstractItemView::SingleSelection);
    not_understood_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    not_understood_->setAccessibleName(tr("what was not understood or was changed in reading"));
    mark_key_ = new MarkKey(choices_, about_);
    about->addWidget(read_);
    about->addWidget(said_);
    about->addWidget(seen_);
    about->addWidget(not_understood_, 1);
    about->addStretch(0);
    about->addWidget(mark_key_);
    to_look_at_ = new FindingsView(session_, choices_, filled_);
    notes_ = new NotesView(session_, choices_, filled_);
    not_seen_ = new NotSeenView(session_, choices_, filled_);
    for (QWidget* part : std::initializer_list<QWidget*>{about_, to_look_at_, notes_, not_seen_}) inside->addWidget(part, 1);
    inside->addStretch(0);
    connect(to_look_at_, &FindingsView::changed, this, &WalkPage::refresh);
    connect(notes_, &NotesView::sorted, this, &WalkPage::refresh);
}

void WalkPage::refresh() {
    const auto field = session_.field();
    empty_->setVisible(field == nullptr);
    add_->setEnabled(field != nullptr);
    how_read_->setEnabled(field && !session_.files().empty());
    layout()->setAlignment(empty_, field ? Qt::Alignment() : Qt::AlignTop);
    if (field) {
        read_->setText(read_lines(*field, choices_.units()).join('\n'));
        const QStringList said = notes_->model().said();
        said_->setText(tr("Said in notes: %1.").arg(said.join(QStringLiteral(", "))));
        said_->setVisible(!said.isEmpty());
        seen_->setText(plan_lines().join('\n'));
        seen_->setVisible(!seen_->text().isEmpty());
        name_parts();
        list_findings(field->findings);
    }
    lay_part();
}

QStringList WalkPage::plan_lines() const {
    QStringList lines;
    const auto plan = session_.plan();
    if (!plan) return lines;
    if (plan->area_walked_m2)
        lines << tr("seen from the track: %1")
                     .arg(QString::fromStdString(ground_area(*plan->area_walked_m2, choices_.units())));
    if (plan->area_field_m2)
        lines << tr("the field: %1").arg(QString::fromStdString(ground_area(*plan->area_field_m2, choices_.units())));
    for (const std::string& notice : plan->notices) lines << QString::fromStdString(notice);
    return lines;
}

void WalkPage::name_parts() {
    const std::size_t open = to_look_at_->open_findings();
    const auto left_over = notes_->model().count(NotesShown::with_a_rest);
    part_keys_[0]->setText(tr("read"));
    part_keys_[1]->setText(open > 0             ? tr("to look at: %1").arg(open)
                           : session_.judging() ? tr("to look at: …")
                                                : tr("all looked at"));
    part_keys_[2]->setText(left_over && *left_over > 0 ? tr("notes: %1").arg(*left_over) : tr("notes"));
    part_keys_[3]->setText(tr("not seen"));
}

void WalkPage::list_findings(const std::vector<ReadFinding>& findings) {
    if (listed_ == findings) return;
    listed_ = findings;
    not_understood_->clear();
    for (const ReadFinding& finding : findings) {
        const std::string place = finding.place.empty() ? finding.file : finding.file + ", " + finding.place;
        not_understood_->addItem(
            tr("%1: %2").arg(QString::fromStdString(place), QString::fromStdString(Words::shown(finding.sentence))));
        not_understood_->item(not_understood_->count() - 1)
            ->setToolTip(not_understood_->item(not_understood_->count() - 1)->text());
    }
}

void WalkPage::show_part(WalkPart part) {
    chosen_ = true;
    part_ = part;
    digger_open_ = false;
    // the focus does not stay behind in a part that goes away
    const QWidget* focus = QApplication::focusWidget();
    if (focus != nullptr && isAncestorOf(focus))
        part_keys_[static_cast<std::size_t>(part)]->setFocus(Qt::ShortcutFocusReason);
    lay_part();
    if (session_.field()) pick_what_is_looked_at();
    if (part == WalkPart::notes) {
        if (choices_.mound()) notes_->show_note_of(*choices_.mound());
        notes_->take_focus();
    }
}

void WalkPage::lay_part() {
    const bool filled = session_.field() != nullptr;
    // until a person chooses, the first thing to do is shown: what looks wrong, else what was read
    if (!chosen_) part_ = to_look_at_->open_findings() > 0 ? WalkPart::to_look_at : WalkPart::read;
    filled_->setVisible(filled && !digger_open_);
    digger_->setVisible(filled && digger_open_);
    for (std::size_t i = 0; i < part_keys_.size(); ++i) part_keys_[i]->setChecked(static_cast<std::size_t>(part_) == i);
    about_->setVisible(part_ == WalkPart::read);
    to_look_at_->setVisible(part_ == WalkPart::to_look_at);
    notes_->setVisible(part_ == WalkPart::notes);
    not_seen_->setVisible(part_ == WalkPart::not_seen);
    not_understood_->setVisible(!listed_.empty());
    // the list of what was not understood needs the room
    mark_key_->setVisible(!choices_.mound());
    facts_room_->setVisible(!digger_open_ && part_ != WalkPart::notes && part_ != WalkPart::not_seen);
}

// What is looked at is picked, so that the map, the facts and the questions are about it.
void WalkPage::pick_what_is_looked_at() {
    const Finding* finding = to_look_at_->at_hand();
    if (part_ != WalkPart::to_look_at || choices_.mound() || !finding || finding->marks.empty()) return;
    const auto& mounds = session_.field()->survey.mounds;
    const auto found =
        std::find_if(mounds.begin(), mounds.end(), [&](const Mound& one) { return one.name == finding->marks.front(); });
    if (found != mounds.end()) choices_.pick_mound(static_cast<std::size_t>(found - mounds.begin()));
}

void WalkPage::ask_who_dug() {
    const auto field = session_.field();
    if (field) pick_what_is_looked_at();
    if (!field || !choices_.mound() || *choices_.mound() >= field->survey.mounds.size()) return;
    const std::string& mark = field->survey.mounds[*choices_.mound()].name;
    const Finding* asked = part_ == WalkPart::to_look_at ? to_look_at_->at_hand() : nullptr;
    const bool about_it =
        asked && asked->kind == FindingKind::other_digger && !asked->marks.empty() && asked->marks.front() == mark;
    digger_open_ = true;
    lay_part();
    digger_->ask_about(mark, about_it ? asked : nullptr);
}

void WalkPage::leave_digger_key() {
    if (!digger_open_) return;
    digger_open_ = false;
    lay_part();
    part_keys_[static_cast<std::size_t>(part_)]->setFocus(Qt::OtherFocusReason);
}

}  // namespace plugside
