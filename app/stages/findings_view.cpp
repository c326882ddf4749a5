#include "app/stages/findings_view.h"

#include <QHBoxLayout>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "app/stages/mound_facts.h"
#include "app/stages/page_scroll.h"
#include "app/stages/rows_layout.h"
#include "app/window/look_sheet.h"

namespace plugside {

QString finding_words(FindingKind kind) {
    switch (kind) {
        case FindingKind::double_mark: return FindingsView::tr("one mound marked twice");
        case FindingKind::reversed_bearing: return FindingsView::tr("fan read from the wrong end");
        case FindingKind::other_digger: return FindingsView::tr("perhaps another digger's");
        case FindingKind::outside_field: return FindingsView::tr("outside the field");
        case FindingKind::earlier_walk: return FindingsView::tr("marked on an earlier walk");
        case FindingKind::swapped_coordinates: return FindingsView::tr("latitude and longitude swapped");
        case FindingKind::lost_sign: return FindingsView::tr("a sign was lost");
        case FindingKind::degrees_and_minutes: return FindingsView::tr("degrees and minutes taken for decimals");
        case FindingKind::jump: return FindingsView::tr("the receiver jumped");
        case FindingKind::frozen_receiver: return FindingsView::tr("the receiver stood still");
        case FindingKind::far_from_track: return FindingsView::tr("far from the track");
        case FindingKind::compass_offset: return FindingsView::tr("bearings turned alike");
    }
    return {};
}

FindingsView::FindingsView(FieldSession& session, Choices& choices, QWidget* parent)
    : QWidget(parent),
      session_(session),
      choices_(choices),
      kind_(label_in_role("heading", this)),
      count_(label_in_role("quiet", this)),
      picture_(new FindingPicture(choices, this)),
      sure_(label_in_role("quiet", this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(7);
    auto* head = new QHBoxLayout;
    count_->setWordWrap(false);
    head->addWidget(kind_, 1);
    head->addWidget(count_, 0, Qt::AlignBottom);
    column->addLayout(head);
    column->addWidget(picture_, 2);
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setMinimumHeight(84);
    take_what_is_left(*scroll);
    scroll->setAccessibleName(tr("what was found, why, and what is proposed"));
    words_ = label_in_role("body", scroll);
    words_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    scroll->setWidget(words_);
    column->addWidget(scroll, 2);
    column->addWidget(sure_);
    build_keys(this);
    connect(&session_, &FieldSession::findings_changed, this, &FindingsView::refresh);
    connect(&session_, &FieldSession::field_replaced, this, &FindingsView::refresh);
    connect(&session_, &FieldSession::survey_edited, this, &FindingsView::refresh);
    refresh();
}

void FindingsView::build_keys(QWidget* parent) {
    auto* column = static_cast<QVBoxLayout*>(parent->layout());
    auto* large = RowsLayout::even(8, 2);
    accept_ = new KeyButton(tr("accept"), QStringLiteral("A"), choices_, this);
    refuse_ = new KeyButton(tr("refuse"), QStringLiteral("R"), choices_, this);
    for (KeyButton* key : {accept_, refuse_}) {
        large->addWidget(key);
        keys_.push_back(key);
    }
    column->addLayout(large);
    connect(accept_, &QPushButton::clicked, this, &FindingsView::accept);
    connect(refuse_, &QPushButton::clicked, this, &FindingsView::refuse);
    auto* small = RowsLayout::natural(6);
    const auto button = [&](const QString& text, const QString& name, const QString& key, auto act) {
        auto* made = new QPushButton(text, this);
        made->setProperty("way", true);
        made->setAccessibleName(name);
        made->setToolTip(tr("%1 (%2)").arg(name, key));
        if (text.size() == 1) made->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
        small->addWidget(made);
        keys_.push_back(made);
        connect(made, &QPushButton::clicked, this, act);
        return made;
    };
    button(tr("‹"), tr("previous finding"), tr("Page up"), &FindingsView::previous);
    button(tr("›"), tr("next finding"), tr("Page down"), &FindingsView::next);
    accept_all_ = button(tr("accept all alike"), tr("accept all of this kind that are as sure"), tr("Shift+A"),
                         &FindingsView::accept_all_alike);
    refuse_all_ = button(tr("refuse all alike"), tr("refuse all of this kind that are no surer"), tr("Shift+R"),
                         &FindingsView::refuse_all_alike);
    column->addLayout(small);
}

const Finding* FindingsView::at_hand() const { return shown_ < open_.size() ? &(*findings_)[open_[shown_]] : nullptr; }

void FindingsView::refresh() {
    findings_ = session_.findings();
    open_.clear();
    const auto field = session_.field();
    if (findings_ && field)
        for (std::size_t i = 0; i < findings_->size(); ++i)
            if (!session_.answered((*findings_)[i].id)) open_.push_back(i);
    const auto same =
        std::find_if(open_.begin(), open_.end(), [&](std::size_t i) { return (*findings_)[i].id == shown_id_; });
    // the one at hand was answered: the next one moves up to its place
    if (same != open_.end())
        shown_ = static_cast<std::size_t>(same - open_.begin());
    else if (shown_ >= open_.size())
        shown_ = 0;
    show_at_hand();
    Q_EMIT changed();
}

void FindingsView::show_at_hand() {
    const Finding* finding = at_hand();
    for (QWidget* key : keys_) key->setEnabled(finding != nullptr);
    if (finding == nullptr) {
        shown_id_.clear();
        picture_->show_nothing();
        kind_->setText(session_.judging() ? tr("The walk is being looked through.") : tr("Nothing is left to look at."));
        count_->clear();
        words_->clear();
        sure_->clear();
        return;
    }
    shown_id_ = finding->id;
    kind_->setText(finding_words(finding->kind));
    count_->setText(tr("%1 of %2").arg(shown_ + 1).arg(open_.size()));
    QStringList sentences;
    for (const std::string* sentence : {&finding->found, &finding->why, &finding->proposed})
        if (!sentence->empty()) sentences << QString::fromStdString(*sentence);
    words_->setText(sentences.join(QStringLiteral("\n\n")));
    sure_->setText(tr("right in about %1 of 100 such cases").arg(finding->sure.in_100()));
    accept_->setEnabled(finding->mend.has_value());
    accept_all_->setEnabled(finding->mend.has_value());
    picture_->show_finding(session_.field(), *finding);
    if (!finding->marks.empty()) {
        const auto& mounds = session_.field()->survey.mounds;
        const auto found =
            std::find_if(mounds.begin(), mounds.end(), [&](const Mound& one) { return one.name == finding->marks.front(); });
        if (found != mounds.end()) choices_.pick_mound(static_cast<std::size_t>(found - mounds.begin()));
    }
}

void FindingsView::answer(Answer answer, bool all_alike) {
    const Finding* finding = at_hand();
    if (finding == nullptr || (answer == Answer::accepted && !finding->mend)) return;
    // all alike: of its kind, and no less sure than the one that is looked at
    std::vector<Finding> answered;
    for (const std::size_t i : open_) {
        const Finding& one = (*findings_)[i];
        const bool meant =
            all_alike ? one.kind == finding->kind &&
                            (answer == Answer::refused ? one.sure <= finding->sure : one.mend && one.sure >= finding->sure)
                      : one.id == finding->id;
        if (meant) answered.push_back(one);
    }
    session_.answer(answered, answer);
}

void FindingsView::accept() { answer(Answer::accepted, false); }
void FindingsView::refuse() { answer(Answer::refused, false); }
void FindingsView::accept_all_alike() { answer(Answer::accepted, true); }
void FindingsView::refuse_all_alike() { answer(Answer::refused, true); }

void FindingsView::step(int by) {
    if (open_.empty()) return;
    const auto count = static_cast<long long>(open_.size());
    shown_ = static_cast<std::size_t>(((static_cast<long long>(shown_) + by) % count + count) % count);
    show_at_hand();
    Q_EMIT changed();
}

void FindingsView::next() { step(1); }
void FindingsView::previous() { step(-1); }

}  // namespace plugside
