#include "app/stages/tours_view.h"

#include <QGridLayout>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/stages/page_scroll.h"
#include "app/stages/rows_layout.h"
#include "app/stages/set_words.h"
#include "app/window/look_sheet.h"
#include "app/words/language.h"

namespace plugside {

namespace {

// What a choice of a place means: none, the start again, a gate by its number, the place that is there, one to be set on the map.
enum class PlaceKind { usual, back, gate, there, on_the_map };

constexpr int kind_role = Qt::UserRole;
constexpr int gate_role = Qt::UserRole + 1;
constexpr double same_place_m = 0.05;

void add_place(QComboBox* choice, const QString& words, PlaceKind kind, int gate = -1) {
    choice->addItem(words);
    choice->setItemData(choice->count() - 1, static_cast<int>(kind), kind_role);
    choice->setItemData(choice->count() - 1, gate, gate_role);
}

QString gate_words(const Gap& gate, std::size_t number) {
    return gate.name.empty() ? ToursView::tr("gate %1").arg(number + 1)
                             : ToursView::tr("gate: %1").arg(QString::fromStdString(gate.name));
}

// The choice that a place is: a gate, else "the place set on the map".
void add_places(QComboBox* choice, const Ground& ground, const std::optional<LocalPoint>& there) {
    bool is_a_gate = false;
    int at = -1;
    for (std::size_t g = 0; g < ground.gates.size(); ++g) {
        add_place(choice, gate_words(ground.gates[g], g), PlaceKind::gate, static_cast<int>(g));
        if (!there || is_a_gate || distance_m(*there, ground.gates[g].at) > same_place_m) continue;
        is_a_gate = true;
        at = choice->count() - 1;
    }
    if (there && !is_a_gate) {
        add_place(choice, ToursView::tr("the place set on the map"), PlaceKind::there);
        at = choice->count() - 1;
    }
    add_place(choice, ToursView::tr("set it on the map …"), PlaceKind::on_the_map);
    if (at >= 0) choice->setCurrentIndex(at);
}

QString numbers_of(const std::vector<std::size_t>& sets) {
    constexpr std::size_t most = 12;
    QStringList numbers;
    for (std::size_t i = 0; i < std::min(most, sets.size()); ++i) numbers << QString::number(sets[i] + 1);
    if (sets.size() > most) numbers << QStringLiteral("…");
    return numbers.join(QStringLiteral(", "));
}

}  // namespace

ToursView::ToursView(FieldSession& session, Choices& choices, WorkAccount& work, TourAccount& account, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices), account_(account) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 4, 0);
    column->setSpacing(6);
    build_wishes(column);
    people_ = new RowEdit({"walking.people", tr("people"), RowKind::count}, work, choices, this);
    minutes_ = new RowEdit({"walking.minutes-a-day", tr("minutes a day"), RowKind::number}, work, choices, this);
    carry_ = new RowEdit({"walking.carry", tr("traps or placements one carries"), RowKind::count}, work, choices, this);
    auto* figures = new QGridLayout;
    figures->setHorizontalSpacing(10);
    figures->addWidget(people_, 0, 0);
    figures->addWidget(minutes_, 0, 1);
    figures->addWidget(carry_, 1, 0, 1, 2);
    for (RowEdit* row : {people_, minutes_, carry_}) row->field()->setMinimumWidth(60);
    for (const int half : {0, 1}) figures->setColumnStretch(half, 1);
    column->addLayout(figures);
    build_tours(column);
    connect(&account_, &TourAccount::changed, this, &ToursView::refresh);
    for (auto signal : {&Choices::units_changed, &Choices::theme_changed})
        connect(&choices_, signal, this, [this] {
            listed_.reset();
            refresh();
        });
    refresh();
}

void ToursView::build_wishes(QVBoxLayout* column) {
    from_ = page_choice(tr("where the walking order begins"), this);
    to_ = page_choice(tr("where the walking order ends"), this);
    struct Side {
        QString words;
        PageChoice* choice;
        End end;
    };
    auto* ends = new QGridLayout;
    ends->setColumnStretch(1, 1);
    for (const Side& side : {Side{tr("from"), from_, End::start}, Side{tr("to"), to_, End::finish}}) {
        auto* words = label_in_role("body", this);
        words->setText(side.words);
        words->setWordWrap(false);
        const int row = ends->rowCount();
        ends->addWidget(words, row, 0);
        ends->addWidget(side.choice, row, 1);
        connect(side.choice, &PageChoice::settled, this, [this, end = side.end](int at) { choose(end, at); });
    }
    column->addLayout(ends);
}

void ToursView::build_tours(QVBoxLayout* column) {
    figure_ = label_in_role("body", this);
    held_ = label_in_role("quiet", this);
    column->addWidget(figure_);
    column->addWidget(held_);
    auto* keys = RowsLayout::natural(6);
    stop_ = new QPushButton(this);
    keep_ = new QPushButton(tr("keep this order"), this);
    for (QPushButton* key : {stop_, keep_}) {
        key->setProperty("way", true);
        keys->addWidget(key);
    }
    column->addLayout(keys);
    connect(stop_, &QPushButton::clicked, this, &ToursView::press_stop);
    connect(keep_, &QPushButton::clicked, &account_, &TourAccount::keep);
    left_out_ = label_in_role("stop", this);
    column->addWidget(left_out_);
    tours_ = new QListWidget(this);
    tours_->setAccessibleName(tr("tours, and which of them is shown"));
    tours_->setWordWrap(true);
    tours_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    tours_->setMinimumHeight(110);
    stops_ = new QListView(this);
    stops_->setAccessibleName(tr("sets in walking order"));
    stops_->setUniformItemSizes(true);
    stops_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    stops_->setMinimumHeight(110);
    stop_words_ = new QStringListModel(this);
    stops_->setModel(stop_words_);
    take_what_is_left(*stops_);
    column->addWidget(tours_, 1);
    column->addWidget(stops_, 2);
    connect(tours_, &QListWidget::currentRowChanged, this, [this](int row) {
        if (!filling_ && row >= 0) account_.pick(row == 0 ? std::nullopt : std::optional(row));
    });
    const auto chosen = [this](const QModelIndex& at) {
        const auto row = static_cast<std::size_t>(at.row());
        if (at.isValid() && row < stop_sets_.size() && account_.plan() == session_.plan()) Q_EMIT set_chosen(stop_sets_[row]);
    };
    connect(stops_, &QListView::clicked, this, chosen);
    connect(stops_, &QListView::activated, this, chosen);
}

void ToursView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    account_.watch(true);
    Q_EMIT opened();
}

void ToursView::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    account_.watch(false);
}

void ToursView::choose(End end, int at) {
    QComboBox* choice = end == End::start ? from_ : to_;
    const auto kind = static_cast<PlaceKind>(choice->itemData(at, kind_role).toInt());
    const QString words = end == End::start ? tr("where the walking order begins") : tr("where the walking order ends");
    if (kind == PlaceKind::on_the_map) {
        places_.clear();
        fill_places();
        Q_EMIT place_wanted(end);
        return;
    }
    if (kind == PlaceKind::there || !session_.field()) return;
    std::optional<LocalPoint> place;
    if (kind == PlaceKind::gate)
        place = session_.field()->survey.ground.gates.at(static_cast<std::size_t>(choice->itemData(at, gate_role).toInt())).at;
    if (end == End::start)
        account_.set_start(place, words);
    else
        account_.set_end(kind == PlaceKind::back, place, words);
}

void ToursView::set_place(End end, LocalPoint place) {
    if (end == End::start)
        account_.set_start(place, tr("where the walking order begins"));
    else
        account_.set_end(false, place, tr("where the walking order ends"));
}

void ToursView::refresh() {
    if (!session_.field()) return;
    fill_places();
    const RowValues values = row_values(*session_.field()->survey.work);
    for (RowEdit* row : {people_, minutes_, carry_}) row->show_value(values);
    if (people_->field()->text().isEmpty() && !people_->field()->hasFocus())
        people_->field()->setPlaceholderText(QStringLiteral("1"));
    show_figure();
    show_left_out();
    if (listed_ != account_.tours()) show_tours();
    if (listed_ != account_.tours() || listed_pick_ != account_.picked()) show_stops();
    listed_ = account_.tours();
    listed_pick_ = account_.picked();
}

// Anew only where other places are there to be chosen, so that an open list stays.
void ToursView::fill_places() {
    const Ground& ground = session_.field()->survey.ground;
    const auto tell = [](const std::optional<LocalPoint>& at) {
        return at ? QStringLiteral("%1 %2").arg(at->east_m).arg(at->north_m) : QString();
    };
    QStringList places{tell(account_.start()), tell(account_.end()), account_.wishes().back ? QStringLiteral("back") : QString()};
    for (std::size_t g = 0; g < ground.gates.size(); ++g) places << gate_words(ground.gates[g], g) + tell(ground.gates[g].at);
    if (places == places_ || from_->waits() || to_->waits()) return;
    places_ = places;
    from_->clear();
    to_->clear();
    add_place(from_, tr("where the walk began"), PlaceKind::usual);
    add_place(to_, tr("wherever the last set is"), PlaceKind::usual);
    add_place(to_, tr("back to where it begins"), PlaceKind::back);
    add_places(from_, ground, account_.start());
    add_places(to_, ground, account_.end());
    if (account_.wishes().back) to_->setCurrentIndex(1);
}

void ToursView::show_figure() {
    const auto tours = account_.tours();
    const bool working = account_.working();
    stop_->setText(working ? tr("stop") : tr("work out anew"));
    stop_->setEnabled(working || account_.holds());
    keep_->setVisible(!account_.kept());
    keep_->setEnabled(account_.holds() && tours && !tours->tours.empty());
    if (!tours) {
        figure_->setText(session_.plan_is_current() ? tr("The walking order is being worked out.")
                                                    : tr("The walking order follows the plan, which is being made."));
        held_->hide();
        return;
    }
    const auto length = [&](Metres metres) { return QString::fromStdString(ground_distance(metres, choices_.units())); };
    QString words = counted(static_cast<long long>(tours->tours.size()), tr("%1 tour, %2 on foot, %3 minutes."),
                            tr("%1 tours, %2 on foot; the longest takes %3 minutes."))
                        .arg(length(tours->length))
                        .arg(std::lround(tours->longest_minutes));
    if (!account_.holds())
        words = tr("Being worked out anew. Until then: %1").arg(words);
    else if (working)
        words += QLatin1Char(' ') + tr("Being made shorter.");
    const auto first = account_.first_length();
    if (account_.holds() && first && tours->length.value() < 0.995 * first->value())
        words += QLatin1Char(' ') + tr("The first was %1.").arg(length(*first));
    figure_->setText(words);
    held_->setText(account_.kept()           ? tr("This order is kept in the project: what is dropped leaves it, what is new is put in.")
                   : tours->of_the_plan      ? tr("This is the order of the plan.")
                   : account_.stopped()      ? tr("Stopped: it may become shorter.")
                                             : tr("While nothing else is wished it stays as far as it can when sets come and go."));
    held_->show();
}

void ToursView::show_left_out() {
    const auto tours = account_.tours();
    QStringList lines;
    if (tours && !tours->cut_off.empty())
        lines << counted(static_cast<long long>(tours->cut_off.size()), tr("No way leads to %1 set: %2. Draw a gate where one gets across."),
                         tr("No way leads to %1 sets: %2. Draw a gate where one gets across."))
                     .arg(numbers_of(tours->cut_off));
    if (tours && !tours->too_long.empty())
        lines << counted(static_cast<long long>(tours->too_long.size()), tr("%1 set does not fit into a day even alone: %2."),
                         tr("%1 sets do not fit into a day even alone: %2."))
                     .arg(numbers_of(tours->too_long));
    left_out_->setVisible(!lines.isEmpty());
    left_out_->setText(lines.join(QLatin1Char('\n')));
}

void ToursView::show_tours() {
    filling_ = true;
    tours_->clear();
    const auto tours = account_.tours();
    const MapStyle& style = choices_.style();
    const QSize sample(style.letters(64), style.letters(20));
    tours_->setIconSize(sample);
    if (tours) {
        tours_->addItem(tr("all tours"));
        int number = 0;
        for (const Tour& tour : tours->tours) {
            const double ratio = devicePixelRatioF();
            QPixmap picture(sample * ratio);
            picture.setDevicePixelRatio(ratio);
            picture.fill(Qt::transparent);
            QPainter painter(&picture);
            draw_tour_sample(painter, QRectF(QPointF(0.0, 0.0), QSizeF(sample)), ++number, style);
            painter.end();
            const QString sets = counted(static_cast<long long>(tour.sets.size()), tr("%1 set"), tr("%1 sets"));
            QString words = tr("person %1, day %2: %3, %4, %5 minutes (%6 to %7)")
                                .arg(tour.person + 1)
                                .arg(tour.day + 1)
                                .arg(sets, QString::fromStdString(ground_distance(tour.length, choices_.units())))
                                .arg(std::lround(tour.minutes))
                                .arg(std::lround(tour.low))
                                .arg(std::lround(tour.high));
            const auto loads = static_cast<long long>(tour.loads_before.size());
            if (loads > 0) words += counted(loads, tr("; back for more %1 time"), tr("; back for more %1 times"));
            auto* item = new QListWidgetItem(QIcon(picture), words, tours_);
            item->setData(Qt::AccessibleTextRole, tr("tour %1: %2").arg(number).arg(words));
        }
        tours_->setCurrentRow(account_.picked().value_or(0));
    }
    filling_ = false;
}

void ToursView::show_stops() {
    QStringList lines;
    stop_sets_.clear();
    const auto tours = account_.tours();
    const auto plan = account_.plan();
    int visit = 0;
    int number = 0;
    for (std::size_t t = 0; tours && plan && t < tours->tours.size(); ++t) {
        const Tour& tour = tours->tours[t];
        ++number;
        for (std::size_t i = 0; i < tour.sets.size(); ++i) {
            ++visit;
            if (account_.picked() && *account_.picked() != number) continue;
            const std::size_t set = tour.sets[i];
            const ProbeSite& site = plan->probes.at(plan->sets.at(set).probe);
            const bool fetches = std::find(tour.loads_before.begin(), tour.loads_before.end(), i) != tour.loads_before.end();
            const QString words = tr("%1.  set %2, %3").arg(visit).arg(set + 1).arg(letter_of(*plan, site.system));
            lines << (fetches ? tr("%1, after fetching more").arg(words) : words);
            stop_sets_.push_back(set);
        }
    }
    stop_words_->setStringList(lines);
}

void ToursView::press_stop() {
    if (account_.working())
        account_.stop();
    else
        account_.again();
}

}  // namespace plugside
