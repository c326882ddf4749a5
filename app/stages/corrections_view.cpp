#include "app/stages/corrections_view.h"

#include <QVBoxLayout>
#include <array>
#include <cmath>

#include "app/commands/known_facts.h"
#include "app/stages/page_scroll.h"
#include "app/stages/rows_layout.h"
#include "app/window/look_sheet.h"
#include "app/words/language.h"

namespace plugside {

namespace {

struct Button {
    Saying saying;
    QString word, key, tip;
};

QString mend_words(const MendAnswer& answer) {
    const Mend& mend = answer.mend;
    QString marks = QString::fromStdString(mend.marks.empty() ? std::string() : mend.marks.front());
    if (mend.marks.size() > 1) marks = CorrectionsView::tr("%1 and %2 more").arg(marks).arg(mend.marks.size() - 1);
    switch (mend.kind) {
        case MendKind::fan:
            return mend.fan
                       ? CorrectionsView::tr("the fan of %1 points to %2°").arg(marks).arg(std::lround(mend.fan->degrees()))
                       : CorrectionsView::tr("%1 shows no fan").arg(marks);
        case MendKind::turn_fans:
            return CorrectionsView::tr("the fans of %1 turned by %2°").arg(marks).arg(decimal(mend.turn_degrees, 1));
        case MendKind::move: return CorrectionsView::tr("%1 stands elsewhere").arg(marks);
        case MendKind::freshness: return CorrectionsView::tr("%1 looks otherwise").arg(marks);
        case MendKind::sign: return CorrectionsView::tr("%1 is another's sign").arg(marks);
        case MendKind::set_aside: return CorrectionsView::tr("%1 set aside").arg(marks);
        case MendKind::take_back: return CorrectionsView::tr("%1 taken back").arg(marks);
        case MendKind::one_mound: return CorrectionsView::tr("%1: one mound").arg(marks);
    }
    return marks;
}

// A finding's answer is listed with the findings; a person's own mend has the id of one.
bool own(const MendAnswer& answer) {
    return answer.answer == Answer::accepted && !answer.mend.marks.empty() &&
           answer.finding == own_mend_id(answer.mend.kind, answer.mend.marks.front());
}

}  // namespace

CorrectionsView::CorrectionsView(FieldSession& session, Choices& choices, SystemsTool& tool, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices), tool_(tool) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(7);
    build_question();
    column->addWidget(question_);
    build_sayings();
    column->addWidget(sayings_);
    doing_ = label_in_role("body", this);
    column->addWidget(doing_);
    bearing_ = new QLineEdit(this);
    bearing_->setPlaceholderText(tr("the picked fan points to: 135, SE (P)"));
    bearing_->setAccessibleName(tr("bearing of the picked fan"));
    bearing_->setToolTip(bearing_->placeholderText());
    column->addWidget(bearing_);
    list_name_ = label_in_role("heading", this);
    list_name_->setText(tr("Said so far"));
    column->addWidget(list_name_);
    list_ = new QListWidget(this);
    list_->setWordWrap(true);
    list_->setMinimumHeight(72);
    take_what_is_left(*list_);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setAccessibleName(tr("what was said so far; Delete lifts one"));
    column->addWidget(list_, 1);
    column->addStretch(0);
    connect(bearing_, &QLineEdit::returnPressed, this, [this] {
        if (tool_.turn_fan(bearing_->text())) bearing_->clear();
    });
    connect(&tool_, &SystemsTool::changed, this, &CorrectionsView::refresh);
    connect(&session_, &FieldSession::survey_edited, this, &CorrectionsView::fill_list);
    connect(&session_, &FieldSession::field_replaced, this, &CorrectionsView::fill_list);
    connect(&session_, &FieldSession::plan_changed, this, &CorrectionsView::ask_anew);
    connect(&choices_, &Choices::picks_changed, this, &CorrectionsView::refresh);
    fill_list();
    ask_anew();
}

void CorrectionsView::build_sayings() {
    sayings_ = new QWidget(this);
    auto* grid = RowsLayout::even(5, 3);
    sayings_->setLayout(grid);
    const std::array buttons{
        Button{Saying::one_animal, tr("one animal"), tr("O"), tr("the picked mark and another are one animal's")},
        Button{Saying::two_animals, tr("two animals"), tr("T"), tr("the picked mark and another are two animals'")},
        Button{Saying::run_here, tr("run here"), tr("R"), tr("a run joins the picked mark and another")},
        Button{Saying::not_a_gopher, tr("no gopher's"), tr("N"), tr("the picked mark is not a gopher's")},
        Button{Saying::older, tr("older"), tr("A"), tr("the picked mark is older than the others")},
        Button{Saying::no_run, tr("no run"), tr("X"), tr("draw a line that no run crosses")},
        Button{Saying::aside, tr("set aside"), tr("Z"), tr("draw about marks to set aside")}};
    for (const Button& button : buttons) {
        auto* key = new KeyButton(button.word, button.key, choices_, sayings_);
        key->setToolTip(button.tip);
        connect(key, &QPushButton::clicked, this, [this, saying = button.saying] { tool_.say(saying); });
        grid->addWidget(key);
    }
}

void CorrectionsView::build_question() {
    question_ = new QWidget(this);
    auto* column = new QVBoxLayout(question_);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(5);
    auto* name = label_in_role("heading", question_);
    name->setText(tr("What would help most"));
    question_words_ = label_in_role("body", question_);
    auto* keys = RowsLayout::even(5, 3);
    auto* yes = new KeyButton(tr("one"), tr("Y"), choices_, question_);
    auto* no = new KeyButton(tr("two"), tr("D"), choices_, question_);
    auto* pass = new KeyButton(tr("not known"), tr("Page down"), choices_, question_);
    connect(yes, &QPushButton::clicked, this, [this] { answer(true); });
    connect(no, &QPushButton::clicked, this, [this] { answer(false); });
    connect(pass, &QPushButton::clicked, this, &CorrectionsView::next_question);
    for (KeyButton* key : {yes, no, pass}) keys->addWidget(key);
    column->addWidget(name);
    column->addWidget(question_words_);
    column->addLayout(keys);
}

void CorrectionsView::ask_anew() {
    const auto plan = session_.plan_is_current() ? session_.plan() : nullptr;
    if (plan != asked_of_) {
        asked_of_ = plan;
        questions_.clear();
        at_hand_ = 0;
        asking_.stop();
        if (plan)
            asking_.start([this, plan](const Progress&) -> BackgroundWork::Apply {
                return [this, plan, questions = helpful_questions(*plan)] {
                    if (plan != asked_of_) return;
                    questions_ = questions;
                    show_question();
                };
            });
    }
    show_question();
}

void CorrectionsView::show_question() {
    const auto field = session_.field();
    const bool asked =
        field && asked_of_ && at_hand_ < questions_.size() && asked_of_->mounds.size() == field->survey.mounds.size();
    question_->setVisible(asked);
    if (!asked) return;
    const HelpfulQuestion& question = questions_[at_hand_];
    question_words_->setText(
        tr("Are %1 and %2 one animal's? %3 in 100 that they are. An answer narrows the number of animals by %4 in 100.")
            .arg(QString::fromStdString(field->survey.mounds[question.first].name),
                 QString::fromStdString(field->survey.mounds[question.second].name))
            .arg(question.one.in_100())
            .arg(std::lround(100.0 * question.narrows)));
}

void CorrectionsView::answer(bool one_animal) {
    const auto field = session_.field();
    if (!field || question_->isHidden() || at_hand_ >= questions_.size()) return;
    const HelpfulQuestion& question = questions_[at_hand_];
    KnownFact fact{one_animal ? FactKind::same_system : FactKind::different_systems,
                   {field->survey.mounds[question.first].name, field->survey.mounds[question.second].name},
                   {},
                   {},
                   {},
                   {}};
    const QString words = QString::fromStdString(to_text(fact));
    session_.edit(SurveyPart(said(field->survey.known, std::move(fact))), words);
}

void CorrectionsView::next_question() {
    if (questions_.empty()) return;
    at_hand_ = (at_hand_ + 1) % questions_.size();
    choices_.pick_mound(questions_[at_hand_].first);
    show_question();
}

void CorrectionsView::type_a_bearing() {
    if (bearing_->isVisible()) bearing_->setFocus(Qt::ShortcutFocusReason);
}

void CorrectionsView::lift_picked() {
    const auto field = session_.field();
    const int row = list_->currentRow();
    if (!field || row < 0 || static_cast<std::size_t>(row) >= listed_.size()) return;
    const Listed listed = listed_[static_cast<std::size_t>(row)];
    if (listed.fact >= 0)
        session_.edit(SurveyPart(lifted(field->survey.known, static_cast<std::size_t>(listed.fact))),
                      tr("lift what was said"));
    else
        session_.lift_mend(listed.mend, tr("lift what was put right"));
}

void CorrectionsView::refresh() {
    const auto field = session_.field();
    const QString doing = tool_.saying() ? saying_help(*tool_.saying()) : QString();
    doing_->setText(doing);
    doing_->setVisible(!doing.isEmpty());
    const bool fan = field && choices_.mound() && *choices_.mound() < field->survey.mounds.size();
    bearing_->setVisible(fan);
    sayings_->setEnabled(field != nullptr);
}

void CorrectionsView::fill_list() {
    const auto field = session_.field();
    list_->clear();
    listed_.clear();
    if (field) {
        for (std::size_t f = 0; f < field->survey.known.size(); ++f) {
            listed_.push_back({static_cast<int>(f), {}});
            list_->addItem(QString::fromStdString(to_text(field->survey.known[f])));
        }
        for (const MendAnswer& answer : field->survey.answers) {
            if (!own(answer)) continue;
            listed_.push_back({-1, answer.finding});
            list_->addItem(mend_words(answer));
        }
    }
    list_->setVisible(!listed_.empty());
    list_name_->setVisible(!listed_.empty());
    refresh();
}

}  // namespace plugside
