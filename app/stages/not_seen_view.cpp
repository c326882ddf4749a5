#include "app/stages/not_seen_view.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "app/canvas/map_layers.h"
#include "app/canvas/wrapped_words.h"
#include "app/stages/page_scroll.h"
#include "app/window/look_sheet.h"
#include "app/words/language.h"
#include "core/walking/not_seen_words.h"

namespace plugside {

namespace {

QString whole_range(const Amount& amount) {
    const long low = std::lround(amount.low);
    const long high = std::lround(amount.high);
    return low == high ? QString::number(low) : NotSeenView::tr("%1 to %2").arg(low).arg(high);
}

int in_100(double share) { return static_cast<int>(std::lround(100.0 * share)); }

QString leaning(const NotSeen& seen) {
    QStringList words;
    words << (seen.detection.fitted
                  ? NotSeenView::tr("How far a mound is seen from was learnt from this walk's own marks.")
                  : NotSeenView::tr(
                        "How far a mound is seen from is a default, not this walk's own: take the numbers as rough."));
    if (seen.unwalked_m2 > 0.0)
        words << NotSeenView::tr(
                     "That the ground not walked is like the ground walked is assumed: %1 in 100 of the mounds not seen "
                     "rest on that alone.")
                     .arg(in_100(seen.assumed_alike));
    return words.join(QLatin1Char(' '));
}

constexpr double words_left = 44.0;

int row_height(const MapStyle& style) { return style.text(11); }

}  // namespace

HatchKey::HatchKey(Choices& choices, QWidget* parent) : QWidget(parent), choices_(choices) {
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setAccessibleName(tr("the hatching on the map"));
    setAccessibleDescription(
        tr("single lines: less than half of the mounds were seen; crossed lines: less than one in ten"));
    connect(&choices_, &Choices::theme_changed, this, [this] { updateGeometry(); });
}

QSize HatchKey::sizeHint() const { return {300, heightForWidth(300)}; }

QFont HatchKey::words_font() const {
    QFont font = this->font();
    font.setPixelSize(choices_.style().text(-1));
    return font;
}

// The words of single lines and of crossed ones, as they are broken at that width.
std::array<QStringList, 2> HatchKey::words_at(int width) const {
    const QFontMetricsF metrics(words_font());
    const auto broken = [&](const QString& words) { return wrapped_words(words, metrics, width - words_left, 4).lines; };
    return {broken(tr("less than 1 in 2 mounds seen")), broken(tr("hardly looked at: less than 1 in 10 seen"))};
}

int HatchKey::heightForWidth(int width) const {
    const auto words = words_at(width);
    return row_height(choices_.style()) * static_cast<int>(words[0].size() + words[1].size());
}

void HatchKey::paintEvent(QPaintEvent*) {
    const MapStyle& style = choices_.style();
    QPainter painter(this);
    const double line = row_height(style);
    const auto words = words_at(width());
    double top = 0.0;
    for (const bool crossed : {false, true}) {
        const QStringList& lines = words[crossed ? 1 : 0];
        draw_unseen_swatch(painter, QRectF(0.0, top + 2.0, words_left - 10.0, line - 5.0), crossed, style);
        painter.setFont(words_font());
        painter.setPen(style.quiet_ink);
        for (const QString& words_of_line : lines) {
            painter.drawText(QRectF(words_left, top, width() - words_left, line), Qt::AlignLeft | Qt::AlignVCenter,
                             words_of_line);
            top += line;
        }
    }
}

NotSeenView::NotSeenView(FieldSession& session, Choices& choices, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    working_ = new QWidget(this);
    auto* work = new QHBoxLayout(working_);
    work->setContentsMargins(0, 0, 0, 0);
    state_ = label_in_role("body", working_);
    share_ = new QProgressBar(working_);
    share_->setRange(0, 100);
    share_->setTextVisible(false);
    share_->setFixedWidth(90);
    work_key_ = new QPushButton(working_);
    work->addWidget(state_, 1);
    work->addWidget(share_);
    work->addWidget(work_key_);
    column->addWidget(working_);
    result_ = new QWidget(this);
    auto* inside = new QVBoxLayout(result_);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(3);
    areas_ = label_in_role("body", result_);
    missed_ = label_in_role("title", result_);
    missed_words_ = label_in_role("quiet", result_);
    animals_ = label_in_role("title", result_);
    animals_words_ = label_in_role("quiet", result_);
    leans_ = label_in_role("body", result_);
    inside->addWidget(areas_);
    inside->addSpacing(6);
    inside->addWidget(missed_);
    inside->addWidget(missed_words_);
    inside->addSpacing(4);
    inside->addWidget(animals_);
    inside->addWidget(animals_words_);
    inside->addSpacing(6);
    inside->addWidget(leans_);
    inside->addSpacing(6);
    auto* scroll = new QScrollArea(result_);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setMinimumHeight(64);
    take_what_is_left(*scroll);
    scroll->setAccessibleName(tr("how it was reckoned"));
    reckoned_ = label_in_role("quiet", scroll);
    reckoned_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    scroll->setWidget(reckoned_);
    inside->addWidget(scroll, 1);
    inside->addWidget(new HatchKey(choices_, result_));
    column->addWidget(result_, 1);
    hatch_ = new QPushButton(tr("hatched on the map (G)"), this);
    hatch_->setCheckable(true);
    hatch_->setProperty("way", true);
    column->addWidget(hatch_);
    column->addStretch(0);
    connect(hatch_, &QPushButton::clicked, this, &NotSeenView::hatch_wanted);
    connect(work_key_, &QPushButton::clicked, this, [this] {
        if (session_.looking_back().running())
            session_.looking_back().stop();
        else
            session_.look_back_again();
    });
    for (auto signal : {&BackgroundWork::started, &BackgroundWork::progressed, &BackgroundWork::ended})
        connect(&session_.looking_back(), signal, this, &NotSeenView::refresh);
    connect(&session_, &FieldSession::not_seen_changed, this, &NotSeenView::refresh);
    connect(&session_, &FieldSession::field_replaced, this, &NotSeenView::refresh);
    connect(&session_, &FieldSession::plan_changed, this, &NotSeenView::refresh);
    connect(&choices_, &Choices::units_changed, this, &NotSeenView::refresh);
    refresh();
}

void NotSeenView::show_hatched(bool on) { hatch_->setChecked(on); }

QString NotSeenView::told() const {
    return QStringList{areas_->text(),         missed_->text(), missed_words_->text(), animals_->text(),
                       animals_words_->text(), leans_->text(),  reckoned_->text()}
        .join(QLatin1Char('\n'));
}

void NotSeenView::refresh() {
    const auto seen = session_.not_seen();
    BackgroundWork& work = session_.looking_back();
    const bool planned = session_.plan_is_current();
    const bool without_track = planned && !seen && !work.running() && session_.looked_back();
    state_->setText(work.running()  ? tr("being worked out")
                    : without_track ? tr("The walk has no track in the field: what was not seen cannot be told.")
                    : planned       ? tr("It was not worked out.")
                                    : tr("It is worked out once the plan is made."));
    share_->setVisible(work.running());
    share_->setValue(in_100(work.share_done()));
    work_key_->setText(work.running() ? tr("stop") : tr("work it out"));
    work_key_->setVisible(work.running() || (planned && !without_track));
    working_->setVisible(work.running() || !seen);
    result_->setVisible(seen != nullptr);
    hatch_->setVisible(seen != nullptr);
    if (!seen) return;
    const auto area = [&](double m2) { return QString::fromStdString(ground_area(m2, choices_.units())); };
    areas_->setText(seen->unwalked_m2 > 0.0
                        ? tr("Walked: %1. Not walked: %2.").arg(area(seen->walked_m2), area(seen->unwalked_m2))
                        : tr("Walked: %1. Without a boundary nobody knows how much was not.").arg(area(seen->walked_m2)));
    const int level = in_100(seen->interval);
    missed_->setText(tr("%1 mounds").arg(whole_range(seen->mounds_missed)));
    missed_words_->setText(tr("not seen where somebody walked, in %1 of 100 such cases; expected %2")
                               .arg(level)
                               .arg(std::lround(seen->mounds_missed.expected)));
    const bool unwalked = seen->unwalked_m2 > 0.0;
    animals_->setVisible(unwalked);
    animals_words_->setVisible(unwalked);
    animals_->setText(tr("%1 animals").arg(whole_range(seen->animals_unwalked)));
    animals_words_->setText(tr("where nobody walked, in %1 of 100 such cases; expected %2, with %3 of their mounds")
                                .arg(level)
                                .arg(decimal(seen->animals_unwalked.expected, 1))
                                .arg(whole_range(seen->mounds_unwalked)));
    leans_->setText(leaning(*seen));
    QStringList sentences;
    for (const std::string& sentence : not_seen_sentences(*seen, choices_.units()))
        sentences << QString::fromStdString(sentence);
    reckoned_->setText(sentences.join(QStringLiteral("\n")));
    result_->setAccessibleName(areas_->text() + QLatin1Char(' ') + missed_->text() + QLatin1Char(' ') +
                               missed_words_->text());
}

}  // namespace plugside
