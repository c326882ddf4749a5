#include "app/stages/notes_view.h"

#include <QHBoxLayout>
#include <QShortcut>
#include <QVBoxLayout>
#include <algorithm>

#include "app/stages/note_meanings.h"
#include "app/stages/note_row_painter.h"
#include "app/stages/page_scroll.h"
#include "app/stages/rows_layout.h"
#include "app/window/look_sheet.h"

namespace plugside {

namespace {

constexpr int patience_ms = 120;
constexpr int most_names = 6;

QString names_of(const Survey& survey, const std::vector<std::size_t>& mounds) {
    QStringList names;
    for (const std::size_t mound : mounds) {
        if (names.size() == most_names) return names.join(QStringLiteral(", ")) + NotesView::tr(" …");
        names << QString::fromStdString(survey.mounds[mound].name);
    }
    return names.join(QStringLiteral(", "));
}

}  // namespace

NotesView::NotesView(FieldSession& session, Choices& choices, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices), model_(new NotesModel(session, this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    build_filters();
    list_ = new QListView(this);
    list_->setModel(model_);
    list_->setItemDelegate(new NoteRowPainter(*model_, choices_, list_));
    list_->setUniformItemSizes(true);
    list_->setLayoutMode(QListView::Batched);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    list_->setAccessibleName(tr("notes, each with what was read"));
    list_->setMinimumHeight(90);
    take_what_is_left(*list_);
    column->addWidget(list_, 1);
    none_ = label_in_role("quiet", this);
    column->addWidget(none_);
    corrections_ = new QListWidget(this);
    corrections_->setWordWrap(true);
    corrections_->setMinimumHeight(90);
    take_what_is_left(*corrections_);
    corrections_->setAccessibleName(tr("corrections made, each can be lifted"));
    column->addWidget(corrections_, 1);
    lift_ = new QPushButton(tr("lift this correction (Delete)"), this);
    column->addWidget(lift_);
    build_correction();
    patience_.setSingleShot(true);
    patience_.setInterval(patience_ms);
    connect(&patience_, &QTimer::timeout, this, &NotesView::count_again);
    connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this, &NotesView::show_current);
    connect(model_, &NotesModel::modelReset, this, &NotesView::follow_pick);
    connect(model_, &NotesModel::sorted, this, &NotesView::refresh_counts);
    connect(model_, &NotesModel::sorted, this, &NotesView::sorted);
    connect(&session_, &FieldSession::field_replaced, this, &NotesView::refresh_corrections);
    connect(&session_, &FieldSession::survey_edited, this, &NotesView::refresh_corrections);
    connect(lift_, &QPushButton::clicked, this, &NotesView::lift);
    connect(&choices_, &Choices::theme_changed, list_, [this] { list_->doItemsLayout(); });
    show_corrections(false);
    refresh_counts();
    refresh_corrections();
    follow_pick();
}

void NotesView::build_filters() {
    auto* row = RowsLayout::natural(5);
    const auto key = [&](const QString& name, auto act) {
        auto* made = new QPushButton(this);
        made->setProperty("way", true);
        made->setCheckable(true);
        made->setAccessibleName(name);
        made->setToolTip(name);
        row->addWidget(made);
        connect(made, &QPushButton::clicked, this, act);
        return made;
    };
    const auto only = [this](NotesShown which) {
        return [this, which] {
            model_->show_only(which);
            show_corrections(false);
        };
    };
    rest_key_ = key(tr("notes with words that were not understood"), only(NotesShown::with_a_rest));
    all_key_ = key(tr("all notes"), only(NotesShown::all));
    mentions_key_ = key(tr("notes that speak of people, pets, stock or wildlife"), only(NotesShown::with_mentions));
    corrections_key_ = key(tr("corrections made"), [this] { show_corrections(true); });
    static_cast<QVBoxLayout*>(layout())->addLayout(row);
}

void NotesView::build_correction() {
    correcting_ = new QWidget(this);
    auto* column = new QVBoxLayout(correcting_);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    words_ = new NoteWordsView(choices_, correcting_);
    column->addWidget(words_);
    auto* row = RowsLayout::natural(6);
    whole_rest_ = new QPushButton(tr("all of the rest"), correcting_);
    whole_rest_->setCheckable(true);
    whole_rest_->setProperty("way", true);
    whole_rest_->setToolTip(tr("take everything that was not understood: the first stretch means this, the others nothing"));
    meaning_ = new QComboBox(correcting_);
    for (const NoteMeaning& meaning : note_meanings()) meaning_->addItem(meaning.words);
    meaning_->setAccessibleName(tr("what the picked words mean"));
    degrees_ = new QSpinBox(correcting_);
    degrees_->setRange(0, 359);
    degrees_->setWrapping(true);
    degrees_->setSuffix(QStringLiteral("°"));
    degrees_->setAccessibleName(tr("degrees clockwise from true north"));
    auto* means = label_in_role("quiet", correcting_);
    means->setWordWrap(false);
    means->setText(tr("means"));
    row->addWidget(whole_rest_);
    row->addWidget(means);
    row->addWidget(meaning_);
    row->addWidget(degrees_);
    column->addLayout(row);
    told_ = label_in_role("quiet", correcting_);
    column->addWidget(told_);
    auto* keys = RowsLayout::natural(6);
    this_note_ = new QPushButton(tr("in this note"), correcting_);
    this_note_->setToolTip(tr("Ctrl+Enter"));
    whole_walk_ = new QPushButton(tr("in all of the walk"), correcting_);
    whole_walk_->setToolTip(tr("Ctrl+Shift+Enter"));
    keys->addWidget(this_note_);
    keys->addWidget(whole_walk_);
    column->addLayout(keys);
    layout()->addWidget(correcting_);
    connect(words_, &NoteWordsView::picked_changed, this, [this] {
        if (!filling_) whole_rest_->setChecked(false);
        count_again();
    });
    connect(whole_rest_, &QPushButton::toggled, words_, &NoteWordsView::show_all_left_over);
    connect(whole_rest_, &QPushButton::toggled, this, &NotesView::count_again);
    connect(meaning_, &QComboBox::currentIndexChanged, this, &NotesView::count_again);
    connect(degrees_, &QSpinBox::valueChanged, this, [this] {
        effect_.reset();
        tell_effect();
        patience_.start();
    });
    connect(this_note_, &QPushButton::clicked, this, &NotesView::correct_this_note);
    connect(whole_walk_, &QPushButton::clicked, this, &NotesView::correct_the_walk);
    const auto shortcut = [this](const QKeySequence& keys_of, auto act) {
        auto* made = new QShortcut(keys_of, this);
        made->setContext(Qt::WidgetWithChildrenShortcut);
        connect(made, &QShortcut::activated, this, act);
    };
    shortcut(Qt::CTRL | Qt::Key_Return, &NotesView::correct_this_note);
    shortcut(Qt::CTRL | Qt::SHIFT | Qt::Key_Return, &NotesView::correct_the_walk);
    shortcut(Qt::Key_Delete, &NotesView::lift);
}

void NotesView::refresh_counts() {
    const auto number = [](std::optional<std::size_t> count) {
        return count ? QString::number(*count) : QStringLiteral("…");
    };
    rest_key_->setText(tr("rest %1").arg(number(model_->count(NotesShown::with_a_rest))));
    all_key_->setText(tr("all %1").arg(number(model_->count(NotesShown::all))));
    mentions_key_->setText(tr("who %1").arg(number(model_->count(NotesShown::with_mentions))));
    const bool of_notes = !corrections_key_->isChecked();
    rest_key_->setChecked(of_notes && model_->shown() == NotesShown::with_a_rest);
    all_key_->setChecked(of_notes && model_->shown() == NotesShown::all);
    mentions_key_->setChecked(of_notes && model_->shown() == NotesShown::with_mentions);
    const bool known = model_->count(model_->shown()).has_value();
    none_->setText(!known                                         ? tr("The notes are being read.")
                   : model_->shown() == NotesShown::with_a_rest   ? tr("All that was noted was understood.")
                   : model_->shown() == NotesShown::with_mentions ? tr("No note speaks of people, pets, stock or wildlife.")
                                                                  : tr("No mark has a note."));
    none_->setVisible(of_notes && model_->rowCount() == 0);
    list_->setVisible(of_notes && model_->rowCount() > 0);
}

void NotesView::refresh_corrections() {
    const auto field = session_.field();
    const auto& rules = field ? field->survey.note_rules : std::vector<NoteRule>();
    const int at = corrections_->currentRow();
    corrections_->clear();
    for (const NoteRule& rule : rules) corrections_->addItem(rule_words(rule));
    corrections_->setCurrentRow(std::min(std::max(at, 0), corrections_->count() - 1));
    corrections_key_->setText(tr("mended %1").arg(rules.size()));
    corrections_key_->setEnabled(!rules.empty());
    lift_->setEnabled(!rules.empty());
    if (rules.empty() && corrections_key_->isChecked()) show_corrections(false);
    show_current();
}

void NotesView::show_corrections(bool on) {
    corrections_key_->setChecked(on);
    corrections_->setVisible(on);
    lift_->setVisible(on);
    refresh_counts();
    if (correcting_ != nullptr) correcting_->setVisible(!on && at_hand_.has_value());
}

const Mound* NotesView::at_hand() const {
    const auto field = session_.field();
    if (!field || !at_hand_ || *at_hand_ >= field->survey.mounds.size()) return nullptr;
    return &field->survey.mounds[*at_hand_];
}

// After the rows were laid anew the same note stays at hand, or the one that moved up to its place.
void NotesView::follow_pick() {
    if (model_->rowCount() == 0) {
        refresh_counts();
        show_current();
        return;
    }
    int row = 0;
    if (at_hand_) {
        if (const auto same = model_->row_of(*at_hand_)) {
            row = *same;
        } else {
            while (row + 1 < model_->rowCount() && model_->mound_of(row) < *at_hand_) ++row;
        }
    }
    refresh_counts();
    list_->setCurrentIndex(model_->index(row));
    list_->scrollTo(model_->index(row));
    show_current();
}

void NotesView::show_note_of(std::size_t mound) {
    if (const auto row = model_->row_of(mound)) list_->setCurrentIndex(model_->index(*row));
}

void NotesView::show_current() {
    const auto before = at_hand_;
    const QModelIndex index = list_->currentIndex();
    const bool valid = index.isValid() && index.row() < model_->rowCount();
    at_hand_ = valid ? std::optional(model_->mound_of(index.row())) : std::nullopt;
    const Mound* mound = at_hand();
    correcting_->setVisible(mound != nullptr && !corrections_key_->isChecked());
    if (mound == nullptr) return;
    if (isVisible()) choices_.pick_mound(at_hand_);
    filling_ = true;
    words_->show_note(mound->note, corrected_reading(session_.field()->survey, *mound));
    const auto stretches = words_->left_over().size();
    whole_rest_->setVisible(stretches > 1);
    whole_rest_->setChecked(false);
    // what was said of one note is not meant of the next
    if (before != at_hand_) say(0);
    filling_ = false;
    count_again();
}

void NotesView::say(int meaning, int degrees) {
    degrees_->setValue(degrees);
    meaning_->setCurrentIndex(meaning);
}

void NotesView::take_all_of_the_rest() { whole_rest_->setChecked(true); }

bool NotesView::something_to_say() const { return whole_rest_->isChecked() || !words_->picked().empty(); }

std::vector<NoteRule> NotesView::rules_after(bool whole_walk) const {
    const auto field = session_.field();
    const Mound* mound = at_hand();
    const NoteMeaning meaning = note_meanings().at(static_cast<std::size_t>(meaning_->currentIndex()));
    const std::string walk = mound->walk < field->survey.walks.size() ? field->survey.walks[mound->walk].id : std::string();
    const std::vector<std::string> stretches =
        whole_rest_->isChecked() ? words_->left_over() : std::vector<std::string>{words_->picked()};
    std::vector<NoteRule> rules = field->survey.note_rules;
    for (NoteRule& rule :
         rules_from(stretches, told_meaning(meaning, degrees_->value()), walk, whole_walk ? std::string() : mound->name))
        rules = with_rule(std::move(rules), std::move(rule));
    return rules;
}

void NotesView::count_again() {
    if (filling_) return;
    degrees_->setVisible(note_meanings().at(static_cast<std::size_t>(std::max(meaning_->currentIndex(), 0))).wants_bearing);
    effect_.reset();
    counting_.stop();
    tell_effect();
    if (at_hand() == nullptr || !something_to_say() || !isVisible()) return;
    counting_.start([this, field = session_.field(), rules = rules_after(true)](const Progress&) -> BackgroundWork::Apply {
        return [this, field, effect = effect_of_rules(field->survey, field->frame, rules)] {
            if (field != session_.field()) return;
            effect_ = effect;
            tell_effect();
        };
    });
}

void NotesView::tell_effect() {
    const bool sayable = at_hand() != nullptr && something_to_say();
    this_note_->setEnabled(sayable);
    whole_walk_->setEnabled(sayable && effect_ && !effect_->read_otherwise.empty());
    if (!sayable) {
        whole_walk_->setText(tr("in all of the walk"));
        told_->setText(tr("Pick words in the note to say what they mean."));
        return;
    }
    if (!effect_) {
        whole_walk_->setText(tr("in all of the walk: …"));
        return;
    }
    const auto& read = effect_->read_otherwise;
    const auto& taken = effect_->taken_otherwise;
    whole_walk_->setText(
        counted(static_cast<long long>(read.size()), tr("in all of the walk: %1 note"), tr("in all of the walk: %1 notes")));
    const Survey& survey = session_.field()->survey;
    if (read.empty())
        told_->setText(tr("That changes nothing in the walk's notes."));
    else if (taken.empty())
        told_->setText(tr("In all of the walk it would leave every mark as it is taken now, with less left over in %1.")
                           .arg(names_of(survey, read)));
    else
        told_->setText(counted(static_cast<long long>(taken.size()),
                               tr("In all of the walk it would change what %1 mark is taken for: "),
                               tr("In all of the walk it would change what %1 marks are taken for: ")) +
                       names_of(survey, taken) + QLatin1Char('.'));
}

void NotesView::correct_this_note() {
    if (at_hand() == nullptr || !something_to_say()) return;
    session_.use_note_rules(rules_after(false), tr("note of %1").arg(QString::fromStdString(at_hand()->name)));
}

void NotesView::correct_the_walk() {
    if (at_hand() == nullptr || !something_to_say() || !effect_ || effect_->read_otherwise.empty()) return;
    session_.use_note_rules(rules_after(true), counted(static_cast<long long>(effect_->read_otherwise.size()),
                                                       tr("reading of %1 note"), tr("reading of %1 notes")));
}

void NotesView::lift() {
    const auto field = session_.field();
    const int row = corrections_->currentRow();
    if (!field || !corrections_key_->isChecked() || row < 0) return;
    std::vector<NoteRule> rules = field->survey.note_rules;
    if (static_cast<std::size_t>(row) >= rules.size()) return;
    rules.erase(rules.begin() + row);
    session_.use_note_rules(rules, tr("correction lifted"));
}

void NotesView::take_focus() {
    (corrections_key_->isChecked() ? static_cast<QWidget*>(corrections_)
     : list_->isHidden()           ? static_cast<QWidget*>(all_key_)
                                   : list_)
        ->setFocus(Qt::ShortcutFocusReason);
    show_current();
}

}  // namespace plugside
