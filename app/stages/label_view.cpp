#include "app/stages/label_view.h"

#include <QVBoxLayout>
#include <algorithm>

#include "app/window/dresser.h"
#include "app/window/look_sheet.h"
#include "app/words/language.h"

namespace plugside {

namespace {

std::vector<RowSpec> label_specs() {
    return {{"label.ingredient",
             LabelView::tr("active ingredient"),
             RowKind::words,
             {"zinc-phosphide", "strychnine", "anticoagulant", "aluminium-phosphide", "magnesium-phosphide",
              "smoke-cartridge", "other-ingredient"}},
            {"label.ingredient-words", LabelView::tr("ingredient and strength, as printed"), RowKind::text},
            {"label.registration", LabelView::tr("registration number"), RowKind::text},
            {"label.placement-least", LabelView::tr("least amount a placement"), RowKind::amount},
            {"label.placement-most", LabelView::tr("most amount a placement"), RowKind::amount},
            {"dose", LabelView::tr("amount a placement that you mean to put"), RowKind::amount},
            {"label.placements-a-system", LabelView::tr("most placements a system"), RowKind::count},
            {"label.spacing", LabelView::tr("least distance between placements"), RowKind::length},
            {"label.area-most", LabelView::tr("most on an area, one treatment"), RowKind::rate},
            {"label.season-most", LabelView::tr("most on an area, a season"), RowKind::rate},
            {"label.treatments", LabelView::tr("most treatments a season"), RowKind::count},
            {"label.interval-days", LabelView::tr("least days between treatments"), RowKind::count},
            {"label.restricted-use", LabelView::tr("restricted use"), RowKind::words, {"yes", "no"}},
            {"label.re-entry-hours", LabelView::tr("re-entry after hours (0: none named)"), RowKind::number},
            {"label.building-distance", LabelView::tr("distance from buildings (0: none named)"), RowKind::length},
            {"label.water-distance", LabelView::tr("distance from water (0: none named)"), RowKind::length},
            {"label.grams-per-millilitre", LabelView::tr("bulk density, grams a millilitre, as weighed"), RowKind::number},
            {"label.checked-on", LabelView::tr("compared with the label on"), RowKind::day},
            {"label.good-until", LabelView::tr("good until"), RowKind::day}};
}

QString mark_of(Compared outcome) {
    switch (outcome) {
        case Compared::kept: return LabelView::tr("this figure is kept");
        case Compared::exceeded: return LabelView::tr("exceeded");
        case Compared::not_known: break;
    }
    return LabelView::tr("not known");
}

}  // namespace

LabelView::LabelView(FieldSession& session, Choices& choices, WorkAccount& work, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices), work_(work) {
    dress_by_parts(*this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    auto* says = label_in_role("quiet", this);
    says->setText(
        tr("No product's label is in this program. Type the figures from the label in hand; it and the law stand above "
           "everything here. Without a label no amount is computed."));
    column->addWidget(says);
    auto* heading = label_in_role("heading", this);
    heading->setText(tr("Plan and label compared"));
    wrong_ = label_in_role("stop", this);
    compared_ = label_in_role("body", this);
    column->addWidget(heading);
    column->addWidget(wrong_);
    column->addWidget(compared_);
    auto* figures = label_in_role("heading", this);
    figures->setText(tr("Figures of the label"));
    column->addWidget(figures);
    for (RowSpec& spec : label_specs()) {
        rows_.push_back(new RowEdit(std::move(spec), work_, choices_, this));
        column->addWidget(rows_.back());
    }
    sites_ = list_field(tr("crops and sites it names"), tr("with ; between"), &LabelView::enter_sites);
    protection_ =
        list_field(tr("what is worn with each tool"), tr("spoon: gloves; by hand: …"), &LabelView::enter_protection);
    weighings_ = list_field(tr("grams of ten releases of the dispensing probe"), tr("each weighing, with ; between"),
                            &LabelView::enter_weighings);
    release_ = label_in_role("quiet", this);
    column->addWidget(release_);
    column->addStretch(0);
    connect(&work_, &WorkAccount::changed, this, &LabelView::refresh);
    connect(&choices_, &Choices::units_changed, this, [this] {
        shown_of_.reset();
        refresh();
    });
    refresh();
}

QLineEdit* LabelView::list_field(const QString& name, const QString& example, void (LabelView::*enter)(const QString&)) {
    auto* label = label_in_role("body", this);
    label->setText(name);
    auto* field = new QLineEdit(this);
    field->setAccessibleName(name);
    field->setPlaceholderText(example);
    layout()->addWidget(label);
    layout()->addWidget(field);
    connect(field, &QLineEdit::editingFinished, this, [this, field, enter] { (this->*enter)(field->text()); });
    return field;
}

RowEdit* LabelView::row(const std::string& name) const {
    const auto found = std::find_if(rows_.begin(), rows_.end(), [&](RowEdit* edit) { return edit->spec().row == name; });
    return found == rows_.end() ? nullptr : *found;
}

void LabelView::take_focus() { rows_.front()->choice()->setFocus(Qt::ShortcutFocusReason); }

void LabelView::enter_sites(const QString& text) {
    WorkOrder order = work_.work();
    order.label.sites.clear();
    for (const QString& site : text.split(QLatin1Char(';'), Qt::SkipEmptyParts))
        if (!site.trimmed().isEmpty()) order.label.sites.push_back(site.trimmed().toStdString());
    work_.edit(std::move(order), tr("sites of the label"));
}

void LabelView::enter_protection(const QString& text) {
    WorkOrder order = work_.work();
    order.label.protection.clear();
    for (const QString& part : text.split(QLatin1Char(';'), Qt::SkipEmptyParts)) {
        const QString tool = part.section(QLatin1Char(':'), 0, 0).trimmed();
        if (!tool.isEmpty())
            order.label.protection.push_back(
                {tool.toStdString(), part.section(QLatin1Char(':'), 1).trimmed().toStdString()});
    }
    work_.edit(std::move(order), tr("protection"));
}

void LabelView::enter_weighings(const QString& text) {
    WorkOrder order = work_.work();
    order.calibration.weighed_g.clear();
    for (const QString& part : text.split(QLatin1Char(';'), Qt::SkipEmptyParts)) {
        bool read = false;
        const double grams = part.trimmed().replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&read);
        if (!read || !(grams > 0.0)) {
            release_->setText(tr("“%1” is no weight above zero.").arg(part.trimmed()));
            release_->show();
            return;
        }
        order.calibration.weighed_g.push_back(grams);
    }
    work_.edit(std::move(order), tr("weighing of the dispensing probe"));
}

void LabelView::fill_lists() {
    const WorkOrder& order = work_.work();
    QStringList sites;
    for (const std::string& site : order.label.sites) sites << QString::fromStdString(site);
    QStringList worn;
    for (const Protection& one : order.label.protection)
        worn << QStringLiteral("%1: %2").arg(QString::fromStdString(one.tool), QString::fromStdString(one.worn));
    QStringList weights;
    for (const double grams : order.calibration.weighed_g) weights << in_their_digits(QString::number(grams));
    sites_->setText(sites.join(QStringLiteral("; ")));
    protection_->setText(worn.join(QStringLiteral("; ")));
    weighings_->setText(weights.join(QStringLiteral("; ")));
    const auto release = release_weight(order.calibration);
    release_->setVisible(release.has_value());
    if (!release) return;
    const auto most = releases_a_placement(order.label, release->grams);
    release_->setText(
        most ? counted(*most, tr("One release weighs %2 g; the label's amount a placement is kept by %1 release at most."),
                       tr("One release weighs %2 g; the label's amount a placement is kept by %1 releases at most."))
                   .arg(decimal(release->grams, 2))
             : tr("One release weighs %1 g.").arg(decimal(release->grams, 2)));
}

void LabelView::refresh() {
    if (!session_.field()) return;
    QStringList wrong;
    for (const std::string& sentence : what_is_wrong(work_.work().label)) wrong << QString::fromStdString(sentence);
    wrong_->setText(wrong.join(QLatin1Char('\n')));
    wrong_->setVisible(!wrong.isEmpty());
    QStringList lines;
    if (work_.judged())
        for (const LabelCheck& check : work_.judged()->label)
            lines << tr("%1: %2").arg(mark_of(check.outcome), QString::fromStdString(check.sentence));
    compared_->setText(lines.isEmpty() ? tr("being compared") : lines.join(QLatin1Char('\n')));
    if (shown_of_ == session_.field()) return;
    shown_of_ = session_.field();
    const RowValues values = row_values(work_.work());
    for (RowEdit* row : rows_) row->show_value(values);
    fill_lists();
}

}  // namespace plugside
