#include "app/stages/systems_page.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "app/canvas/mound_glyph.h"
#include "app/stages/mound_facts.h"
#include "app/stages/page_scroll.h"
#include "app/stages/rows_layout.h"
#include "app/window/look_sheet.h"
#include "core/plan/alternative_words.h"

namespace plugside {

QString interval_words(const SystemsEstimate& estimate) {
    if (estimate.high <= 0) return SystemsPage::tr("no animal");
    if (estimate.low == estimate.high)
        return counted(estimate.low, SystemsPage::tr("%1 animal"), SystemsPage::tr("%1 animals"));
    return SystemsPage::tr("%1 to %2 animals").arg(estimate.low).arg(estimate.high);
}

namespace {

// A system covers a few square paces: acres and hectares would all read 0.01.
QString system_area(double area_m2, LengthUnits units) {
    // 1 international square foot = 0.3048^2 m2
    const double amount = units == LengthUnits::metres ? area_m2 : area_m2 / (0.3048 * 0.3048);
    const double rounded = amount < 100.0 ? std::round(amount) : std::round(amount / 10.0) * 10.0;
    return (units == LengthUnits::metres ? SystemsPage::tr("%1 m²") : SystemsPage::tr("%1 sq ft")).arg(rounded, 0, 'f', 0);
}

}  // namespace

SystemsPage::SystemsPage(FieldSession& session, Choices& choices, SystemsTool& tool, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    auto* title = label_in_role("title", this);
    title->setText(tr("Systems"));
    auto* ways = RowsLayout::natural(5);
    animals_key_ = new QPushButton(tr("animals (V)"), this);
    corrections_key_ = new QPushButton(tr("corrections (L)"), this);
    for (QPushButton* key : {animals_key_, corrections_key_}) {
        key->setProperty("way", true);
        key->setCheckable(true);
        ways->addWidget(key);
    }
    connect(animals_key_, &QPushButton::clicked, this, [this] { show_corrections(false); });
    connect(corrections_key_, &QPushButton::clicked, this, [this] { show_corrections(true); });
    animals_ = new QWidget(this);
    corrections_ = new CorrectionsView(session, choices, tool, this);
    interval_ = label_in_role("chance", this);
    likely_ = label_in_role("body", this);
    area_ = label_in_role("quiet", this);
    table_ = new QTableWidget(this);
    table_->setColumnCount(4);
    table_->setHorizontalHeaderLabels({tr("animal"), tr("mounds"), tr("one animal's"), tr("run")});
    table_->verticalHeader()->hide();
    table_->setShowGrid(false);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setTabKeyNavigation(false);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    table_->horizontalHeader()->setSectionResizeMode(3, QHeaderView::Stretch);
    table_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    table_->horizontalHeader()->setHighlightSections(false);
    table_->verticalHeader()->setMinimumSectionSize(10);
    table_->setMinimumHeight(110);
    take_what_is_left(*table_);
    table_->installEventFilter(this);
    table_->setAccessibleName(tr("burrow systems"));
    alternatives_ = label_in_role("quiet", this);
    alternatives_->setAccessibleName(tr("what else may be true"));
    picked_name_ = label_in_role("heading", this);
    picked_ = label_in_role("body", this);
    for (QWidget* widget : std::initializer_list<QWidget*>{title, interval_, likely_}) column->addWidget(widget);
    column->addLayout(ways);
    auto* inside = new QVBoxLayout(animals_);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(6);
    inside->addWidget(area_);
    inside->addWidget(table_, 1);
    inside->addWidget(alternatives_);
    inside->addWidget(picked_name_);
    inside->addWidget(picked_);
    column->addWidget(animals_, 1);
    column->addWidget(corrections_, 1);
    show_corrections(false);
    column->addWidget(new MoundFacts(session, choices, this));
    connect(table_, &QTableWidget::itemSelectionChanged, this, [this] {
        if (!filling_ && table_->currentRow() >= 0 && !table_->selectedItems().isEmpty())
            choices_.pick_system(static_cast<std::size_t>(table_->currentRow()));
    });
    connect(&choices_, &Choices::picks_changed, this, &SystemsPage::show_picked);
    connect(&choices_, &Choices::units_changed, this, &SystemsPage::refresh);
    connect(&choices_, &Choices::theme_changed, this, &SystemsPage::fit_table);
    connect(&session_, &FieldSession::field_replaced, this, &SystemsPage::refresh);
    connect(&session_, &FieldSession::plan_changed, this, &SystemsPage::refresh);
    refresh();
}

void SystemsPage::show_corrections(bool on) {
    correcting_ = on;
    animals_->setVisible(!on);
    corrections_->setVisible(on);
    animals_key_->setChecked(!on);
    corrections_key_->setChecked(on);
}

void SystemsPage::refresh() {
    const auto plan = session_.plan();
    table_->setVisible(plan && !plan->systems.empty());
    alternatives_->clear();
    if (!plan) {
        interval_->setText(session_.field() ? tr("working") : tr("nothing yet"));
        likely_->clear();
        area_->clear();
        show_picked();
        return;
    }
    const SystemsEstimate& estimate = plan->estimate;
    interval_->setText(interval_words(estimate));
    likely_->setText(
        estimate.high > 0
            ? tr("most likely %1; the interval holds in %2 of 100 cases, if the walk was a fair look at the field")
                  .arg(estimate.most_likely)
                  .arg(std::lround(estimate.interval * 100.0))
            : tr("No mound of a gopher takes part."));
    QStringList beside;
    beside << (plan->area_walked_m2 ? tr("counted on %1 walked")
                                          .arg(QString::fromStdString(ground_area(*plan->area_walked_m2, choices_.units())))
               : plan->first_look ? tr("the area walked is still being measured")
                                  : tr("no track was read: the area walked is not known"));
    for (const std::string& notice : plan->notices) beside << QString::fromStdString(notice);
    area_->setText(beside.join('\n'));
    fill_table(*plan);
    tell_alternatives(*plan);
    show_picked();
}

void SystemsPage::tell_alternatives(const Plan& plan) {
    constexpr std::size_t most_told = 3;
    const auto field = session_.field();
    if (!field || field->survey.mounds.size() != plan.mounds.size()) return;  // a plan of other mounds
    QStringList lines;
    for (const std::string& words : likeliest_alternatives(field->survey, plan, most_told))
        lines << QString::fromStdString(words);
    if (!plan.alternatives.doubtful.empty())
        lines << counted(static_cast<long long>(plan.alternatives.doubtful.size()),
                         tr("%1 mound could well be another animal's"), tr("%1 mounds could well be another animal's"));
    if (!lines.isEmpty()) lines.prepend(tr("What else may be true:"));
    alternatives_->setText(lines.join('\n'));
}

void SystemsPage::fill_table(const Plan& plan) {
    filling_ = true;
    table_->setRowCount(static_cast<int>(plan.systems.size()));
    for (std::size_t i = 0; i < plan.systems.size(); ++i) {
        const BurrowSystem& system = plan.systems[i];
        const QStringList cells{QString::fromStdString(system.letter), QString::number(system.mounds.size()),
                                tr("%1 in 100").arg(system.single.in_100()),
                                QString::fromStdString(ground_distance(system.run_length, choices_.units()))};
        for (int k = 0; k < cells.size(); ++k) {
            auto* item = new QTableWidgetItem(cells[k]);
            item->setTextAlignment(k == 0 ? Qt::AlignLeft | Qt::AlignVCenter : Qt::AlignRight | Qt::AlignVCenter);
            table_->setItem(static_cast<int>(i), k, item);
        }
    }
    for (int k = 0; k < 4; ++k)
        table_->horizontalHeaderItem(k)->setTextAlignment(k == 0 ? Qt::AlignLeft | Qt::AlignVCenter
                                                                 : Qt::AlignRight | Qt::AlignVCenter);
    filling_ = false;
    fit_table();
}

// Columns as wide as their words. Where the text is too large for all four, how sure a system is stands with the picked one alone.
void SystemsPage::fit_table() {
    const MapStyle& style = choices_.style();
    table_->verticalHeader()->setDefaultSectionSize(style.text(13));
    table_->setColumnHidden(2, false);
    // the last takes what is left: its own wish is asked for first
    table_->horizontalHeader()->setSectionResizeMode(3, QHeaderView::Fixed);
    int used = 2 * table_->frameWidth() + 4;
    for (const int column : {0, 1, 2, 3}) {
        table_->resizeColumnToContents(column);
        used += table_->columnWidth(column);
    }
    table_->horizontalHeader()->setSectionResizeMode(3, QHeaderView::Stretch);
    table_->setColumnHidden(2, used > table_->width());
}

bool SystemsPage::eventFilter(QObject* watched, QEvent* event) {
    if (watched == table_ && (event->type() == QEvent::Resize || event->type() == QEvent::StyleChange)) fit_table();
    return QWidget::eventFilter(watched, event);
}

void SystemsPage::show_picked() {
    const auto plan = session_.plan();
    const auto system = choices_.system();
    const bool picked = plan && system && *system < plan->systems.size();
    picked_name_->setVisible(picked);
    picked_->setVisible(picked);
    alternatives_->setVisible(!picked && !alternatives_->text().isEmpty());  // the picked system's own stand with its facts
    filling_ = true;
    if (picked && table_->currentRow() != static_cast<int>(*system)) table_->selectRow(static_cast<int>(*system));
    if (!picked) table_->clearSelection();
    filling_ = false;
    if (!picked) return;
    const BurrowSystem& shown = plan->systems[*system];
    picked_name_->setText(tr("Animal %1").arg(QString::fromStdString(shown.letter)));
    const std::vector<DoubtfulMound>& all_doubtful = plan->alternatives.doubtful;
    const auto doubtful = std::count_if(all_doubtful.begin(), all_doubtful.end(),
                                        [&](const DoubtfulMound& mound) { return mound.system == *system; });
    QStringList lines;
    const QString mounds = counted(static_cast<long long>(shown.mounds.size()), tr("%1 mound"), tr("%1 mounds"));
    lines << tr("%1, the freshest: %2").arg(mounds, freshness_word(shown.freshest));
    lines << tr("%1 of run drawn, on %2")
                 .arg(QString::fromStdString(ground_distance(shown.run_length, choices_.units())),
                      system_area(area_m2(shown.outline), choices_.units()));
    lines << tr("%1 in 100 that all of it is one animal's").arg(shown.single.in_100());
    if (doubtful > 0)
        lines << counted(doubtful, tr("%1 mound could well be another animal's"),
                         tr("%1 mounds could well be another animal's"));
    constexpr std::size_t most_told = 2;
    const auto field = session_.field();
    if (field && field->survey.mounds.size() == plan->mounds.size())
        for (const std::string& words : likeliest_alternatives(field->survey, *plan, most_told, *system))
            lines << QString::fromStdString(words);
    picked_->setText(lines.join('\n'));
}

}  // namespace plugside
