#include "app/stages/walk_page.h"

#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "app/stages/mark_key.h"
#include "app/stages/mound_facts.h"
#include "app/window/look_sheet.h"

namespace plugside {

namespace {

QString track_words(const Walk& walk, LengthUnits units) {
    double metres = 0.0;
    for (const TrackSegment& segment : walk.segments)
        for (std::size_t i = 1; i < segment.size(); ++i) metres += distance_m(segment[i - 1].at, segment[i].at);
    const QString name = WalkPage::tr("%1 (%2)").arg(QString::fromStdString(walk.id), QString::fromStdString(walk.source));
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
    auto* inside = new QVBoxLayout(filled_);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(8);
    read_ = label_in_role("body", filled_);
    seen_ = label_in_role("quiet", filled_);
    auto* parts = new QHBoxLayout;
    parts->setSpacing(6);
    look_key_ = new QPushButton(filled_);
    words_key_ = new QPushButton(filled_);
    for (QPushButton* key : {look_key_, words_key_}) {
        key->setProperty("way", true);
        key->setCheckable(true);
        parts->addWidget(key, 1);
    }
    not_understood_ = new QListWidget(filled_);
    not_understood_->setWordWrap(true);
    not_understood_->setSelectionMode(QAbstractItemView::SingleSelection);
    not_understood_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    not_understood_->setAccessibleName(tr("what was not understood"));
    to_look_at_ = new FindingsView(session_, choices_, filled_);
    mark_key_ = new MarkKey(choices_, filled_);
    inside->addWidget(read_);
    inside->addWidget(seen_);
    inside->addLayout(parts);
    inside->addWidget(to_look_at_, 1);
    inside->addWidget(not_understood_, 1);
    inside->addWidget(mark_key_);
    inside->addStretch(0);
    connect(look_key_, &QPushButton::clicked, this, [this] { show_part(false); });
    connect(words_key_, &QPushButton::clicked, this, [this] { show_part(true); });
    connect(to_look_at_, &FindingsView::changed, this, &WalkPage::refresh);
    column->addWidget(filled_, 1);
    column->addStretch(0);
    column->addWidget(new MoundFacts(session, choices, this));
    auto* keys = new QHBoxLayout;
    auto* open = new QPushButton(tr("open a walk…"), this);
    open->setToolTip(tr("Ctrl+O"));
    add_ = new QPushButton(tr("add to it…"), this);
    add_->setToolTip(tr("Ctrl+Shift+O: another walk or the ground's layers"));
    how_read_ = new QPushButton(tr("files read…"), this);
    how_read_->setToolTip(tr("how the files were read: columns, reference systems and norths, to be changed and read again"));
    for (QPushButton* key : {open, add_, how_read_}) {
        key->setProperty("way", true);
        keys->addWidget(key);
    }
    column->addLayout(keys);
    connect(open, &QPushButton::clicked, this, &WalkPage::open_wanted);
    connect(add_, &QPushButton::clicked, this, &WalkPage::add_wanted);
    connect(how_read_, &QPushButton::clicked, this, &WalkPage::reading_wanted);
    connect(&session_, &FieldSession::field_replaced, this, &WalkPage::refresh);
    connect(&session_, &FieldSession::plan_changed, this, &WalkPage::refresh);
    connect(&choices_, &Choices::units_changed, this, &WalkPage::refresh);
    connect(&choices_, &Choices::picks_changed, this, [this] { show_part(words_key_->isChecked()); });
    refresh();
}

void WalkPage::refresh() {
    const auto field = session_.field();
    filled_->setVisible(field != nullptr);
    empty_->setVisible(field == nullptr);
    add_->setEnabled(field != nullptr);
    how_read_->setEnabled(field && !session_.files().empty());
    layout()->setAlignment(empty_, field ? Qt::Alignment() : Qt::AlignTop);
    if (!field) return;
    read_->setText(read_lines(*field, choices_.units()).join('\n'));
    QStringList notes;
    const auto plan = session_.plan();
    if (plan && plan->area_walked_m2)
        notes << tr("seen from the track: %1")
                     .arg(QString::fromStdString(ground_area(*plan->area_walked_m2, choices_.units())));
    if (plan && plan->area_field_m2)
        notes << tr("the field: %1").arg(QString::fromStdString(ground_area(*plan->area_field_m2, choices_.units())));
    if (plan)
        for (const std::string& notice : plan->notices) notes << QString::fromStdString(notice);
    seen_->setText(notes.join('\n'));
    seen_->setVisible(!notes.isEmpty());
    const std::size_t open = to_look_at_->open_findings();
    look_key_->setText(open > 0             ? tr("to look at: %1").arg(open)
                       : session_.judging() ? tr("being looked through")
                                            : tr("nothing to look at"));
    const auto& findings = field->findings;
    words_key_->setText(findings.empty() ? tr("all was understood") : tr("not understood: %1").arg(findings.size()));
    words_key_->setEnabled(!findings.empty());
    if (listed_ != findings) {
        listed_ = findings;
        not_understood_->clear();
        for (const ReadFinding& finding : findings) {
            const std::string place = finding.place.empty() ? finding.file : finding.file + ", " + finding.place;
            not_understood_->addItem(
                tr("%1: %2").arg(QString::fromStdString(place), QString::fromStdString(finding.sentence)));
        }
    }
    show_part(words_key_->isChecked() && !findings.empty());
}

void WalkPage::show_part(bool not_understood) {
    look_key_->setChecked(!not_understood);
    words_key_->setChecked(not_understood);
    // with nothing to look at there is room for what the marks mean
    const bool looking = !not_understood && to_look_at_->open_findings() > 0;
    to_look_at_->setVisible(looking);
    not_understood_->setVisible(not_understood);
    // the picked mark's facts need the room of what was read
    const bool tight = looking && choices_.mound().has_value();
    read_->setVisible(!tight);
    seen_->setVisible(!tight && !seen_->text().isEmpty());
    mark_key_->setVisible(!looking);
}

}  // namespace plugside
