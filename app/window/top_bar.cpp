#include "app/window/top_bar.h"

#include <QHBoxLayout>
#include <algorithm>
#include <cmath>

#include "app/stages/sets_page.h"
#include "app/stages/systems_page.h"
#include "app/window/look_sheet.h"
#include "app/words/language.h"

namespace plugside {

QString walked_words(const Plan& plan, LengthUnits units) {
    if (!plan.area_walked_m2 && plan.first_look) return {};
    if (!plan.area_walked_m2) return TopBar::tr("no track: area walked not known");
    const QString walked = TopBar::tr("%1 walked").arg(QString::fromStdString(ground_area(*plan.area_walked_m2, units)));
    if (!plan.area_field_m2 || *plan.area_field_m2 <= 0.0) return walked;
    const double unseen = std::clamp(area_m2(plan.unwalked) / *plan.area_field_m2, 0.0, 1.0);
    const long percent = std::lround(unseen * 100.0);
    const QString share = percent == 0 && unseen > 0.0 ? TopBar::tr("under 1") : QString::number(percent);
    return TopBar::tr("%1, %2 % not seen").arg(walked, share);
}

TopBar::TopBar(FieldSession& session, Choices& choices, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices) {
    setObjectName(QStringLiteral("top_bar"));
    setAttribute(Qt::WA_StyledBackground);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(18, 8, 18, 8);
    row->setSpacing(12);
    field_ = label_in_role("title", this);
    walked_ = label_in_role("quiet", this);
    animals_ = label_in_role("heading", this);
    decided_ = label_in_role("quiet", this);
    for (QLabel* label : {field_, walked_, animals_, decided_}) {
        label->setWordWrap(false);
        label->setTextInteractionFlags(Qt::NoTextInteraction);
    }
    project_ = new QPushButton(tr("project"), this);
    project_->setProperty("menu", true);
    project_->setToolTip(tr("where this field is kept, and other projects"));
    units_ = new QPushButton(this);
    theme_ = new QPushButton(this);
    language_ = new QPushButton(code_of(spoken()), this);
    language_->setToolTip(tr("English or Spanish (Ctrl+E)"));
    language_->setAccessibleName(tr("language: English; press for Spanish"));
    auto* keys = new QPushButton(tr("keys"), this);
    keys->setToolTip(tr("F1"));
    hand_out_ = new QPushButton(tr("hand out…"), this);
    hand_out_->setObjectName(QStringLiteral("main_button"));
    hand_out_->setToolTip(tr("Ctrl+S: the plan as a GeoPackage, the sets as waypoints"));
    row->addWidget(field_);
    row->addWidget(walked_, 0, Qt::AlignVCenter);
    row->addStretch(1);
    row->addWidget(animals_);
    row->addWidget(decided_);
    row->addStretch(1);
    for (QPushButton* button : {project_, units_, theme_, language_, keys, hand_out_}) row->addWidget(button);
    connect(units_, &QPushButton::clicked, this, [this] {
        choices_.use(choices_.units() == LengthUnits::metres ? LengthUnits::feet_and_inches : LengthUnits::metres);
    });
    connect(theme_, &QPushButton::clicked, this,
            [this] { choices_.use(choices_.theme() == Theme::light ? Theme::sunlight : Theme::light); });
    connect(language_, &QPushButton::clicked, this,
            [this] { Q_EMIT language_wanted(spoken() == Language::english ? Language::spanish : Language::english); });
    connect(keys, &QPushButton::clicked, this, &TopBar::keys_wanted);
    connect(hand_out_, &QPushButton::clicked, this, &TopBar::hand_out_wanted);
    connect(&session_, &FieldSession::field_replaced, this, &TopBar::refresh);
    connect(&session_, &FieldSession::survey_edited, this, &TopBar::refresh);
    connect(&session_, &FieldSession::plan_changed, this, &TopBar::refresh);
    connect(&choices_, &Choices::units_changed, this, &TopBar::refresh);
    connect(&choices_, &Choices::theme_changed, this, &TopBar::refresh);
    refresh();
}

void TopBar::refresh() {
    const auto field = session_.field();
    const auto plan = session_.plan();
    const bool metric = choices_.units() == LengthUnits::metres;
    units_->setText(metric ? tr("metres") : tr("feet"));
    units_->setAccessibleName(metric ? tr("units: metres; press for feet and inches")
                                     : tr("units: feet and inches; press for metres"));
    units_->setToolTip(tr("feet or metres (Ctrl+U)"));
    const bool light = choices_.theme() == Theme::light;
    theme_->setText(light ? tr("light") : tr("sunlight"));
    theme_->setAccessibleName(light ? tr("light; press for reading in sunlight") : tr("sunlight; press for the light look"));
    theme_->setToolTip(tr("light, or readable in sunlight (Ctrl+L)"));
    field_->setText(field ? QString::fromStdString(field->field_name) : tr("Plugside"));
    if (plan && !plan->sets.empty()) {
        const SetProgress progress = set_progress(field->survey, *plan);
        decided_->setText(tr("%1 of %2 sets decided").arg(progress.decided).arg(progress.all));
    } else {
        decided_->clear();
    }
    hand_out_->setEnabled(session_.plan_is_current());
    fit_words();
}

void TopBar::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit_words();
}

// Where the bar is too narrow for all of it, the second number goes first, then the area: both stand on the slips too.
void TopBar::fit_words() {
    const auto plan = session_.plan();
    walked_->setText(plan ? walked_words(*plan, choices_.units()) : QString());
    if (!plan || plan->estimate.high <= 0) {
        animals_->clear();
        return;
    }
    const QString interval = interval_words(plan->estimate);
    const QString both = tr("%1, most likely %2").arg(interval).arg(plan->estimate.most_likely);
    animals_->setText(plan->estimate.low == plan->estimate.high ? interval : both);
    animals_->setToolTip(animals_->text());
    const auto too_wide = [this] {
        layout()->invalidate();
        return layout()->minimumSize().width() > width();
    };
    if (too_wide()) animals_->setText(interval);
    if (too_wide()) walked_->clear();
}

}  // namespace plugside
