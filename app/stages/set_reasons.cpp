#include "app/stages/set_reasons.h"

#include <algorithm>

#include "app/canvas/mound_glyph.h"
#include "app/stages/set_words.h"
#include "app/window/look_sheet.h"
#include "core/plan/alternative_words.h"
#include "core/sets/why_here.h"

namespace plugside {

namespace {

constexpr std::size_t most_links_told = 4;
constexpr std::size_t most_places_told = 6;

QString mound_line(const Survey& survey, const Plan& plan, std::size_t mound) {
    const Mound& here = survey.mounds.at(mound);
    QStringList words;
    words << QString::fromStdString(here.name) << freshness_word(here.freshness);
    if (here.fan)
        words << plugside::SetReasons::tr("fan towards %1").arg(QString::fromStdString(compass_point(*here.fan)));
    else
        words << plugside::SetReasons::tr("no fan read");
    const MoundInPlan& in_plan = plan.mounds.at(mound);
    if (in_plan.system)
        words << plugside::SetReasons::tr("animal %1's in %2 of 100")
                     .arg(letter_of(plan, *in_plan.system))
                     .arg(in_plan.belongs.in_100());
    return words.join(QStringLiteral(", "));
}

QString link_line(const Survey& survey, const MainRun& run) {
    return plugside::SetReasons::tr("a run joins %1 and %2 in %3 of 100")
        .arg(QString::fromStdString(survey.mounds.at(run.from_mound).name),
             QString::fromStdString(survey.mounds.at(run.to_mound).name))
        .arg(run.probability.in_100());
}

}  // namespace

SetReasons::SetReasons(FieldSession& session, QWidget* parent) : QWidget(parent), session_(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    key_ = new QPushButton(tr("why this place (W)"), this);
    key_->setProperty("way", true);
    key_->setCheckable(true);
    key_->setAccessibleName(tr("why this place, and what else was possible"));
    inside_ = new QWidget(this);
    auto* inner = new QVBoxLayout(inside_);
    inner->setContentsMargins(0, 0, 0, 0);
    inner->setSpacing(5);
    reasons_ = label_in_role("body", inside_);
    others_head_ = label_in_role("heading", inside_);
    others_ = new QVBoxLayout;
    others_->setSpacing(4);
    others_tail_ = label_in_role("quiet", inside_);
    inner->addWidget(reasons_);
    inner->addWidget(others_head_);
    inner->addLayout(others_);
    inner->addWidget(others_tail_);
    column->addWidget(key_, 0, Qt::AlignLeft);
    column->addWidget(inside_);
    inside_->hide();
    connect(key_, &QPushButton::toggled, this, [this](bool on) {
        inside_->setVisible(on);
        fill();
        Q_EMIT folded();
    });
}

void SetReasons::show_set(std::size_t set) {
    set_ = set;
    fill();
}

void SetReasons::fold(bool unfolded) { key_->setChecked(unfolded); }

void SetReasons::fill() {
    const auto field = session_.field();
    const auto plan = session_.plan();
    offered_.clear();
    if (!unfolded() || !field || !plan || set_ >= plan->sets.size()) return;
    const WhyHere why = why_here(*plan, set_);
    QStringList lines;
    for (const std::size_t mound : why.mounds) lines << mound_line(field->survey, *plan, mound);
    for (std::size_t k = 0; k < std::min(most_links_told, why.runs.size()); ++k)
        lines << link_line(field->survey, plan->runs[why.runs[k]]);
    if (why.runs.empty()) lines << tr("No run is drawn to these mounds: the fan alone tells where to probe.");
    if (why.runs.size() > most_links_told)
        lines << counted(static_cast<long long>(why.runs.size() - most_links_told), tr("and %1 more run"),
                         tr("and %1 more runs"));
    const std::size_t system = plan->probes.at(plan->sets[set_].probe).system;
    for (const std::string& words : likeliest_alternatives(field->survey, *plan, 2, system))
        lines << QString::fromStdString(words);
    reasons_->setText(lines.join(QLatin1Char('\n')));
    add_others(*plan);
}

void SetReasons::add_others(const Plan& plan) {
    while (QLayoutItem* item = others_->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
    const WhyHere why = why_here(plan, set_);
    std::vector<std::size_t> free;
    for (const OtherPlace& other : why.others)
        if (!other.set) free.push_back(other.probe);
    const std::size_t set_already = why.others.size() - free.size();
    others_head_->setText(free.empty() ? tr("No other place of this animal is free.") : tr("Take one of these instead:"));
    for (std::size_t k = 0; k < std::min(most_places_told, free.size()); ++k) {
        const ProbeSite& site = plan.probes[free[k]];
        offered_.push_back(site.key);
        const QString place = k == 0 ? tr("%1  (I)").arg(place_words(site)) : place_words(site);
        auto* take = new QPushButton(place + QLatin1Char('\n') + promise_words(site), inside_);
        take->setProperty("place", true);
        take->setAccessibleName(tr("take instead: %1, %2").arg(place_words(site), promise_words(site)));
        connect(take, &QPushButton::clicked, this, [this, key = site.key] { Q_EMIT taken(key); });
        others_->addWidget(take);
    }
    QStringList tail;
    if (free.size() > most_places_told)
        tail << counted(static_cast<long long>(free.size() - most_places_told),
                        tr("%1 further place has no more chance than these."),
                        tr("%1 further places have no more chance than these."));
    if (set_already > 0)
        tail << counted(static_cast<long long>(set_already), tr("%1 other is a set of this plan already."),
                        tr("%1 others are sets of this plan already."));
    others_tail_->setText(tail.join(QLatin1Char('\n')));
    others_tail_->setVisible(!tail.isEmpty());
}

void SetReasons::take_first() {
    if (!unfolded())
        fold(true);
    else if (!offered_.empty())
        Q_EMIT taken(ProbeKey(offered_.front()));
}

}  // namespace plugside
