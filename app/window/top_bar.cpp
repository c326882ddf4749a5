#include "app/window/top_bar.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QMenu>
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
    row->setSpacing(8);
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
    text_ = new QPushButton(this);
    keys_ = new QPushButton(tr("keys"), this);
    keys_->setToolTip(tr("F1"));
    look_ = new QPushButton(tr("look"), this);
    look_->setProperty("menu", true);
    look_->setToolTip(tr("units, theme, size of text, language, keys"));
    look_->setMenu(new QMenu(look_));
    connect(look_->menu(), &QMenu::aboutToShow, this, &TopBar::fill_look_menu);
    hand_out_ = new QPushButton(tr("hand out…"), this);
    hand_out_->setObjectName(QStringLiteral("main_button"));
    hand_out_->setToolTip(tr("Ctrl+S: the plan as a GeoPackage, the sets as waypoints"));
    row->addWidget(field_);
    row->addWidget(walked_, 0, Qt::AlignVCenter);
    row->addStretch(1);
    row->addWidget(animals_);
    row->addWidget(decided_);
    row->addStretch(1);
    for (QPushButton* button : {project_, units_, theme_, text_, language_, keys_, look_, hand_out_}) row->addWidget(button);
    connect(units_, &QPushButton::clicked, this, [this] {
        choices_.use(choices_.units() == LengthUnits::metres ? LengthUnits::feet_and_inches : LengthUnits::metres);
    });
    connect(theme_, &QPushButton::clicked, this,
            [this] { choices_.use(choices_.theme() == Theme::light ? Theme::sunlight : Theme::light); });
    connect(language_, &QPushButton::clicked, this,
            [this] { Q_EMIT language_wanted(spoken() == Language::english ? Language::spanish : Language::english); });
    connect(text_, &QPushButton::clicked, this, [this] {
        if (choices_.text_percent() == text_steps.back())
            choices_.use_text(100);
        else
            choices_.step_text(1);
    });
    connect(keys_, &QPushButton::clicked, this, &TopBar::keys_wanted);
    connect(hand_out_, &QPushButton::clicked, this, &TopBar::hand_out_wanted);
    connect(&session_, &FieldSession::field_replaced, this, &TopBar::refresh);
    connect(&session_, &FieldSession::survey_edited, this, &TopBar::refresh);
    connect(&session_, &FieldSession::plan_changed, this, &TopBar::refresh);
    connect(&choices_, &Choices::units_changed, this, &TopBar::refresh);
    connect(&choices_, &Choices::theme_changed, this, &TopBar::refresh);
    refresh();
}

void TopBar::refresh() {
    const bool metric = choices_.units() == LengthUnits::metres;
    units_->setText(metric ? tr("metres") : tr("feet"));
    units_->setAccessibleName(metric ? tr("units: metres; press for feet and inches")
                                     : tr("units: feet and inches; press for metres"));
    units_->setToolTip(tr("feet or metres (Ctrl+U)"));
    const bool light = choices_.theme() == Theme::light;
    theme_->setText(light ? tr("light") : tr("sunlight"));
    theme_->setAccessibleName(light ? tr("light; press for reading in sunlight") : tr("sunlight; press for the light look"));
    theme_->setToolTip(tr("light, or readable in sunlight (Ctrl+L)"));
    text_->setText(tr("text %1 %").arg(choices_.text_percent()));
    text_->setAccessibleName(tr("size of text: %1 in 100; press for larger").arg(choices_.text_percent()));
    text_->setToolTip(tr("size of text (Ctrl++, Ctrl+-, Ctrl+0)"));
    hand_out_->setEnabled(session_.plan_is_current());
    fit_words();
}

void TopBar::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit_words();
}

// Where the bar is too narrow for all of it, the second number goes first, then the area: both stand on the slips too. Then the
// keys to how things look go into one menu, then the other numbers.
void TopBar::fit_words() {
    const auto plan = session_.plan();
    const auto field = session_.field();
    const QString name = field ? QString::fromStdString(field->field_name) : tr("Plugside");
    field_->setText(name);
    field_->setToolTip(QString());
    walked_->setText(plan ? walked_words(*plan, choices_.units()) : QString());
    decided_->setText(QString());
    if (field && plan && !plan->sets.empty()) {
        const SetProgress progress = set_progress(field->survey, *plan);
        decided_->setText(tr("%1 of %2 sets decided").arg(progress.decided).arg(progress.all));
    }
    fold_buttons(false);
    QString interval;
    if (plan && plan->estimate.high > 0) {
        interval = interval_words(plan->estimate);
        const QString both = tr("%1, most likely %2").arg(interval).arg(plan->estimate.most_likely);
        animals_->setText(plan->estimate.low == plan->estimate.high ? interval : both);
    } else {
        animals_->clear();
    }
    animals_->setToolTip(animals_->text());
    if (too_wide()) animals_->setText(interval);
    if (too_wide()) walked_->clear();
    if (too_wide()) fold_buttons(true);
    if (too_wide()) decided_->clear();
    if (too_wide()) animals_->clear();
    if (!too_wide()) return;
    const int room = field_->sizeHint().width() - (layout()->minimumSize().width() - width());
    field_->setText(field_->fontMetrics().elidedText(name, Qt::ElideRight, std::max(room, 40)));
    field_->setToolTip(name);
}

bool TopBar::too_wide() const {
    layout()->invalidate();
    return layout()->minimumSize().width() > width();
}

void TopBar::fold_buttons(bool folded) {
    const QWidget* focus = QApplication::focusWidget();
    for (QPushButton* button : {units_, theme_, text_, language_, keys_}) button->setVisible(!folded);
    look_->setVisible(folded);
    // the key that was pressed to get here may have gone
    if (folded && focus != nullptr && focus->isHidden() && isAncestorOf(focus)) look_->setFocus();
}

// Each entry does what its button does.
void TopBar::fill_look_menu() {
    QMenu* menu = look_->menu();
    menu->clear();
    const auto add = [menu](QPushButton* button, const QString& text) {
        menu->addAction(text, button, &QPushButton::click);
    };
    add(units_, units_->toolTip());
    add(theme_, theme_->toolTip());
    for (const int percent : text_steps) {
        QAction* size = menu->addAction(tr("text %1 %").arg(percent), this, [this, percent] { choices_.use_text(percent); });
        size->setCheckable(true);
        size->setChecked(percent == choices_.text_percent());
    }
    add(language_, language_->toolTip());
    add(keys_, tr("keys (F1)"));
}

}  // namespace plugside
