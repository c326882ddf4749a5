#include "app/stages/sets_page.h"

#include <QHBoxLayout>
#include <QScrollBar>
#include <algorithm>
#include <cmath>

#include "app/canvas/map_layers.h"
#include "app/canvas/map_view.h"
#include "app/stages/caution_view.h"
#include "app/stages/mound_facts.h"
#include "app/window/look_sheet.h"
#include "core/probing/instruction.h"

namespace plugside {

namespace {

// The way to the other ladder: an instruction is told for the place where the ladder is now.
ProbeSite site_as_moved(const Survey& survey, const ProbeSite& site) {
    ProbeSite moved = site;
    const auto decision = decision_on(survey, site.key);
    if (!decision || !decision->moved_to) return moved;
    moved.middle = ladder_middle(survey, site);
    moved.ladder.along = decision->moved_to->along;
    moved.ladder.across = decision->moved_to->across;
    return moved;
}

QString place_words(const Plan& plan, const ProbeSite& site) {
    const QString letter =
        site.system < plan.systems.size() ? QString::fromStdString(plan.systems[site.system].letter) : QString();
    const QString from = QString::fromStdString(site.key.from_mound);
    if (site.key.kind == ProbeKind::plug_side) return SetsPage::tr("animal %1, plug side of %2").arg(letter, from);
    return SetsPage::tr("animal %1, between %2 and %3").arg(letter, from, QString::fromStdString(site.key.to_mound));
}

QString decided_words(SetChoice choice) {
    switch (choice) {
        case SetChoice::kept: return SetsPage::tr("kept");
        case SetChoice::dropped: return SetsPage::tr("dropped");
        case SetChoice::moved: return SetsPage::tr("kept at the place it was moved to");
        case SetChoice::proposed: break;
    }
    return {};
}

}  // namespace

SetProgress set_progress(const Survey& survey, const Plan& plan) {
    SetProgress progress{0, plan.sets.size()};
    for (const SetPoint& set : plan.sets)
        if (choice_of(survey, plan, set) != SetChoice::proposed) ++progress.decided;
    return progress;
}

SetsPage::SetsPage(FieldSession& session, Choices& choices, QWidget* parent)
    : QWidget(parent),
      session_(session),
      choices_(choices),
      title_(label_in_role("title", this)),
      count_(label_in_role("quiet", this)),
      place_(label_in_role("quiet", this)),
      close_up_(new CloseUp(choices, this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(7);
    auto* head = new QHBoxLayout;
    title_->setWordWrap(false);
    count_->setWordWrap(false);
    head->addWidget(title_);
    head->addStretch(1);
    head->addWidget(count_, 0, Qt::AlignBottom);
    column->addLayout(head);
    column->addWidget(place_);
    column->addWidget(close_up_, 2);
    column->addWidget(build_words(), 3);
    build_keys(column);
    connect(close_up_, &CloseUp::move_accepted, this, [this](const LadderPlace& place) {
        if (const auto set = at_hand())
            session_.decide_on(session_.plan()->probes.at(session_.plan()->sets[*set].probe).key, SetChoice::moved, place);
        refresh();
    });
    connect(close_up_, &CloseUp::move_given_up, this, &SetsPage::refresh);
    connect(close_up_, &CloseUp::shifted, this, &SetsPage::show_instruction);
    // arrow keys then scroll the words
    connect(close_up_, &CloseUp::move_given_up, this, [this] { words_->setFocus(); });
    connect(close_up_, &CloseUp::move_accepted, this, [this] { words_->setFocus(); });
    connect(&choices_, &Choices::picks_changed, this, [this] {
        refresh();
        if (choices_.mound()) words_->verticalScrollBar()->setValue(0);
    });
    connect(&choices_, &Choices::units_changed, this, &SetsPage::refresh);
    connect(&choices_, &Choices::theme_changed, this, &SetsPage::refresh);
    connect(&session_, &FieldSession::survey_edited, this, &SetsPage::refresh);
    connect(&session_, &FieldSession::field_replaced, this, &SetsPage::refresh);
    connect(&session_, &FieldSession::plan_changed, this, &SetsPage::settle_on_a_set);
    connect(&session_, &FieldSession::decided, this, [this](const ProbeKey& probe) { choices_.pick_set(probe); });
    refresh();
}

QWidget* SetsPage::build_words() {
    words_ = new QScrollArea(this);
    words_->setWidgetResizable(true);
    words_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    words_->setFocusPolicy(Qt::StrongFocus);
    words_->setAccessibleName(tr("what to do, the chance, and what to mind"));
    words_->setMinimumHeight(90);
    auto* inside = new QWidget(words_);
    auto* column = new QVBoxLayout(inside);
    column->setContentsMargins(0, 0, 4, 0);
    column->setSpacing(7);
    column->addWidget(new MoundFacts(session_, choices_, inside));
    instruction_ = label_in_role("body", inside);
    column->addWidget(instruction_);
    auto* row = new QHBoxLayout;
    row->setSpacing(14);
    chance_ = label_in_role("chance", inside);
    chance_->setWordWrap(false);
    chance_words_ = label_in_role("quiet", inside);
    row->addWidget(chance_);
    row->addWidget(chance_words_, 1);
    column->addLayout(row);
    decided_ = label_in_role("decided", inside);
    column->addWidget(decided_);
    mind_ = label_in_role("quiet", inside);
    column->addWidget(mind_);
    cautions_ = new QVBoxLayout;
    cautions_->setSpacing(6);
    column->addLayout(cautions_);
    column->addStretch(1);
    words_->setWidget(inside);
    return words_;
}

void SetsPage::build_keys(QVBoxLayout* column) {
    auto* keys = new QHBoxLayout;
    keys->setSpacing(8);
    keep_ = new KeyButton(tr("keep"), QStringLiteral("K"), choices_, this);
    move_ = new KeyButton(tr("move"), QStringLiteral("M"), choices_, this);
    drop_ = new KeyButton(tr("drop"), QStringLiteral("D"), choices_, this);
    for (KeyButton* key : {keep_, move_, drop_}) {
        keys->addWidget(key, 1);
        keys_.push_back(key);
    }
    column->addLayout(keys);
    connect(keep_, &QPushButton::clicked, this, &SetsPage::keep);
    connect(move_, &QPushButton::clicked, this, &SetsPage::move);
    connect(drop_, &QPushButton::clicked, this, &SetsPage::drop);
    auto* ways = new QHBoxLayout;
    ways->setSpacing(6);
    struct Way {
        QString text;
        QString name;
        QString keys;
        void (SetsPage::*go)();
    };
    for (const Way& way : {Way{tr("‹"), tr("previous set"), tr("Page up"), &SetsPage::previous},
                           Way{tr("›"), tr("next set"), tr("Page down"), &SetsPage::next},
                           Way{tr("next undecided  N"), tr("next undecided set"), tr("N"), &SetsPage::next_undecided},
                           Way{tr("undecide  U"), tr("take the decision back"), tr("U"), &SetsPage::undecide}}) {
        auto* button = new QPushButton(way.text, this);
        button->setProperty("way", true);
        button->setAccessibleName(way.name);
        button->setToolTip(tr("%1 (%2)").arg(way.name, way.keys));
        if (way.text.size() == 1) button->setFixedWidth(36);
        ways->addWidget(button, way.text.size() > 1 ? 2 : 0);
        keys_.push_back(button);
        connect(button, &QPushButton::clicked, this, way.go);
    }
    column->addLayout(ways);
}

std::optional<std::size_t> SetsPage::at_hand() const {
    const auto plan = session_.plan();
    if (!plan || !session_.field() || !choices_.set()) return std::nullopt;
    return set_at(*plan, *choices_.set());
}

void SetsPage::settle_on_a_set() {
    const auto plan = session_.plan();
    if (plan && !plan->sets.empty() && !at_hand()) {
        const auto undecided = std::find_if(plan->sets.begin(), plan->sets.end(), [&](const SetPoint& set) {
            return choice_of(session_.field()->survey, *plan, set) == SetChoice::proposed;
        });
        const SetPoint& set = undecided == plan->sets.end() ? plan->sets.front() : *undecided;
        choices_.pick_set(plan->probes.at(set.probe).key);
    }
    refresh();
}

void SetsPage::refresh() {
    const auto set = at_hand();
    // a move belongs to the set it was begun on
    if (close_up_->moving() && choices_.set() != moving_set_) {
        close_up_->give_up_move();
        return;
    }
    for (QWidget* key : keys_) key->setEnabled(set.has_value());
    words_->setVisible(set.has_value());
    close_up_->setVisible(set.has_value());
    if (set) {
        show_set(*set);
        return;
    }
    close_up_->show_nothing();
    title_->setText(tr("Sets"));
    count_->clear();
    place_->setText(!session_.field() ? tr("A set is proposed once a walk is open.")
                    : session_.plan() ? tr("The plan proposes no set. The Walk step says why.")
                                      : tr("The plan is being made."));
}

void SetsPage::show_set(std::size_t index) {
    const auto plan = session_.plan();
    const auto field = session_.field();
    const SetPoint& set = plan->sets[index];
    const ProbeSite& site = plan->probes.at(set.probe);
    const SetChoice choice = choice_of(field->survey, *plan, set);
    const bool current = session_.plan_is_current();
    title_->setText(tr("Set %1").arg(index + 1));
    count_->setText(tr("%1 of %2").arg(index + 1).arg(plan->sets.size()));
    place_->setText(place_words(*plan, site));
    const ProbeSite placed = site_as_moved(field->survey, site);
    if (!close_up_->moving())
        close_up_->show_scene(close_up_scene(*field, *plan, site), {placed.ladder.along, placed.ladder.across},
                              choice == SetChoice::dropped);
    show_instruction();
    chance_->setText(tr("%1 in 100").arg(site.hit.in_100()));
    const auto rungs = static_cast<int>(std::lround(site.expected_rungs));
    chance_words_->setText(
        current ? counted(rungs, tr("to meet the run,\nabout %1 rung"), tr("to meet the run,\nabout %1 rungs"))
                : tr("chance is\nrecomputed"));
    chance_->setEnabled(current);
    decided_->setText(decided_words(choice));
    decided_->setVisible(choice != SetChoice::proposed);
    keep_->set_in_force(choice == SetChoice::kept);
    move_->set_in_force(choice == SetChoice::moved);
    drop_->set_in_force(choice == SetChoice::dropped);
    show_cautions(set);
}

void SetsPage::show_instruction() {
    const auto set = at_hand();
    if (!set) return;
    const auto plan = session_.plan();
    const auto field = session_.field();
    // while the ladder is being moved the words follow it
    ProbeSite site = site_as_moved(field->survey, plan->probes.at(plan->sets[*set].probe));
    if (close_up_->moving()) {
        site.ladder.along = close_up_->place().along;
        site.ladder.across = close_up_->place().across;
    }
    instruction_->setText(QString::fromStdString(instruction(site, field->survey, choices_.units())));
}

void SetsPage::show_cautions(const SetPoint& set) {
    std::vector<std::string> ids = set.cautions;
    // whatever the plan found, the last word is never its own
    if (std::find(ids.begin(), ids.end(), "decides") == ids.end()) ids.emplace_back("decides");
    if (ids == shown_cautions_ && shown_theme_ == choices_.theme()) return;
    shown_cautions_ = ids;
    mind_->setText(counted(static_cast<long long>(ids.size()), tr("%1 thing to mind here"), tr("%1 things to mind here")));
    shown_theme_ = choices_.theme();
    while (QLayoutItem* item = cautions_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    for (const std::string& id : ids)
        if (const Caution* caution = find_caution(id))
            cautions_->addWidget(new CautionView(*caution, style_of(choices_.theme()), words_->widget()));
    words_->verticalScrollBar()->setValue(0);
}

void SetsPage::decide_and_go_on(SetChoice choice) {
    const auto set = at_hand();
    if (!set || close_up_->moving()) return;
    const ProbeKey probe = session_.plan()->probes.at(session_.plan()->sets[*set].probe).key;
    session_.decide_on(probe, choice);
    if (choice != SetChoice::proposed) next_undecided();
}

void SetsPage::keep() { decide_and_go_on(SetChoice::kept); }

void SetsPage::drop() { decide_and_go_on(SetChoice::dropped); }

void SetsPage::undecide() { decide_and_go_on(SetChoice::proposed); }

void SetsPage::move() {
    if (close_up_->moving())
        close_up_->accept_move();
    else if (at_hand()) {
        moving_set_ = choices_.set();
        close_up_->begin_move();
    }
}

void SetsPage::step(int by) {
    const auto plan = session_.plan();
    if (!plan || plan->sets.empty() || close_up_->moving()) return;
    const auto count = static_cast<long long>(plan->sets.size());
    const long long from = at_hand() ? static_cast<long long>(*at_hand()) : 0;
    const auto to = static_cast<std::size_t>(((from + by) % count + count) % count);
    choices_.pick_set(plan->probes.at(plan->sets[to].probe).key);
}

void SetsPage::next() { step(1); }

void SetsPage::previous() { step(-1); }

void SetsPage::next_undecided() {
    const auto plan = session_.plan();
    if (!plan || close_up_->moving()) return;
    const std::size_t from = at_hand().value_or(0);
    for (std::size_t k = 1; k <= plan->sets.size(); ++k) {
        const std::size_t i = (from + k) % plan->sets.size();
        if (choice_of(session_.field()->survey, *plan, plan->sets[i]) != SetChoice::proposed) continue;
        choices_.pick_set(plan->probes.at(plan->sets[i].probe).key);
        return;
    }
}

}  // namespace plugside
