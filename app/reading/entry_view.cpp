#include "app/reading/entry_view.h"

#include <QStyle>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "app/reading/reading_words.h"
#include "app/stages/page_scroll.h"
#include "app/stages/rows_layout.h"
#include "app/window/look_sheet.h"
#include "core/words/words.h"

namespace plugside {

namespace {

constexpr std::array<char, 5> separators{',', ';', '\t', '|', ' '};
constexpr std::array<TextEncoding, 4> encodings{TextEncoding::utf_8, TextEncoding::latin_1, TextEncoding::utf_16_little,
                                                TextEncoding::utf_16_big};
constexpr std::array<DateOrder, 3> orders{DateOrder::year_first, DateOrder::day_first, DateOrder::month_first};
constexpr std::array<North, 3> norths{North::not_told, North::true_north, North::magnetic_north};

template <typename T, std::size_t n>
int place_in(const std::array<T, n>& list, T value) {
    return static_cast<int>(std::find(list.begin(), list.end(), value) - list.begin());
}

void say(QLabel& label, const QString& words) {
    label.setText(words);
    label.setVisible(!words.isEmpty());
}

bool takes_marks(const FileLook& look) { return look.marks + look.other_marks > 0; }

}  // namespace

EntryView::EntryView(ReadingDesk& desk, Choices& choices, QWidget* parent)
    : QWidget(parent), desk_(desk), choices_(choices) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    title_ = label_in_role("title", this);
    taken_ = label_in_role("body", this);
    trouble_ = label_in_role("stop", this);
    where_ = label_in_role("quiet", this);
    auto* north_row = new QHBoxLayout;
    north_ = new PickButton(tr("bearings read from"), this);
    north_->set_options({north_words(North::not_told), north_words(North::true_north), north_words(North::magnetic_north)});
    turned_ = label_in_role("quiet", this);
    north_row->addWidget(north_);
    north_row->addWidget(turned_, 1);
    table_picks_ = new QWidget(this);
    layer_picks_ = new QWidget(this);
    build_table_picks();
    build_layer_picks();
    system_ = new SystemChooser(choices_, this);
    columns_words_ = label_in_role("quiet", this);
    columns_ = new ColumnsView(choices_, this);
    columns_->setMinimumHeight(160);
    take_what_is_left(*columns_);
    rest_ = new QWidget(this);
    for (QWidget* part : std::initializer_list<QWidget*>{title_, taken_, trouble_, where_}) column->addWidget(part);
    column->addLayout(north_row);
    for (QWidget* part : std::initializer_list<QWidget*>{table_picks_, layer_picks_, system_, columns_words_})
        column->addWidget(part);
    column->addWidget(columns_, 1);
    column->addWidget(rest_, 1);
    connect(north_, &PickButton::picked, this,
            [this](int index) { desk_.tell_north(entry_, norths.at(static_cast<std::size_t>(index))); });
    connect(system_, &SystemChooser::taken, this, [this](const QString& code) {
        if (!look()) return;
        FileLook changed = *look();
        set_reference_system(changed, code.toStdString());
        desk_.change(entry_, std::move(changed));
        Q_EMIT reference_system_taken();
    });
    connect(columns_, &ColumnsView::meaning_picked, this, &EntryView::mean);
    connect(&choices_, &Choices::units_changed, this, &EntryView::refresh);
}

void EntryView::build_table_picks() {
    auto* grid = RowsLayout::natural(6);
    table_picks_->setLayout(grid);
    const auto add = [&](const QString& caption, const QStringList& options, bool other_columns, auto change) {
        auto* pick = new PickButton(caption, table_picks_);
        pick->set_options(options);
        grid->addWidget(pick);
        connect(pick, &PickButton::picked, this, [this, change, other_columns](int index) {
            change_table([&](TableGuess& guess) { change(guess, static_cast<std::size_t>(index)); }, other_columns);
        });
        return pick;
    };
    separator_ = add(tr("parted by"), {tr("comma"), tr("semicolon"), tr("tab"), tr("bar"), tr("blanks")}, true,
                     [](TableGuess& guess, std::size_t i) { guess.separator = separators.at(i); });
    decimal_ = add(tr("decimals after a"), {tr("point"), tr("comma")}, false,
                   [](TableGuess& guess, std::size_t i) { guess.decimal = i == 0 ? '.' : ','; });
    heading_ = add(tr("first row"), {tr("headings"), tr("a mark")}, true,
                   [](TableGuess& guess, std::size_t i) { guess.header_row = i == 0; });
    QStringList codes;
    for (const TextEncoding encoding : encodings) codes << QString::fromStdString(Words::shown(to_text(encoding)));
    encoding_ = add(tr("letters"), codes, true, [](TableGuess& guess, std::size_t i) { guess.encoding = encodings.at(i); });
    degrees_ = add(tr("degrees"), {tr("as they are written"), tr("minutes packed in (3815.5)")}, false,
                   [](TableGuess& guess, std::size_t i) { guess.packed_minutes = i == 1; });
    dates_ = add(tr("dates"), {tr("year first"), tr("day first"), tr("month first")}, false,
                 [](TableGuess& guess, std::size_t i) { guess.times.order = orders.at(i); });
}

void EntryView::build_layer_picks() {
    auto* grid = RowsLayout::natural(6);
    layer_picks_->setLayout(grid);
    which_layer_ = new PickButton(tr("layer"), layer_picks_);
    points_ = new PickButton(tr("points are"), layer_picks_);
    points_->set_options({tr("mounds"), tr("not used")});
    lines_ = new PickButton(tr("lines are"), layer_picks_);
    lines_->set_options({tr("ways walked"), tr("barriers no run crosses"), tr("not used")});
    polygons_ = new PickButton(tr("polygons are"), layer_picks_);
    polygons_->set_options({tr("the field's boundary"), tr("areas kept clear"), tr("not used")});
    for (PickButton* pick : {which_layer_, points_, lines_, polygons_}) grid->addWidget(pick);
    connect(which_layer_, &PickButton::picked, this, [this](int index) {
        layer_ = static_cast<std::size_t>(index);
        refresh();
    });
    connect(points_, &PickButton::picked, this,
            [this](int i) { change_layer([i](LayerGuess& guess) { guess.points = static_cast<PointUse>(i); }); });
    connect(lines_, &PickButton::picked, this,
            [this](int i) { change_layer([i](LayerGuess& guess) { guess.lines = static_cast<LineUse>(i); }); });
    connect(polygons_, &PickButton::picked, this,
            [this](int i) { change_layer([i](LayerGuess& guess) { guess.polygons = static_cast<PolygonUse>(i); }); });
}

const FileLook* EntryView::look() const { return entry_ < desk_.looks().size() ? &desk_.looks()[entry_] : nullptr; }

void EntryView::show_entry(std::size_t entry) {
    if (entry != entry_) {
        layer_ = 0;
        system_->line().clear();
    }
    entry_ = entry;
    refresh();
}

void EntryView::refresh() {
    const FileLook* shown = look();
    if (!shown) return;
    refresh_words(*shown);
    refresh_system(*shown);
    refresh_table(*shown);
    refresh_layers(*shown);
    const bool columns = columns_->columns().columnCount() > 0 && has_choices(*shown);
    columns_->setVisible(columns);
    columns_words_->setVisible(columns);
    rest_->setVisible(!columns);
}

void EntryView::refresh_words(const FileLook& look) {
    title_->setText(name_of(look));
    taken_->setText(desk_.counting(entry_) ? tr("%1; being counted").arg(taken_words(look)) : taken_words(look));
    QString trouble;
    if (look.refusal && look.refusal->code != Refusal::Code::needs_reference_system) {
        trouble = refusal_words(*look.refusal);
        if (cannot_be_read(look))
            trouble += desk_.left_out(entry_)
                           ? tr(" It is left out; the others can be read without it.")
                           : tr(" Put it back where it was, or leave it out: its marks then go, and what was "
                                "decided on them waits until it is read again.");
    }
    say(*trouble_, trouble);
    QString where;
    if (look.middle) {
        const QString what = takes_marks(look) ? tr("Its marks lie at %1") : tr("It lies at %1");
        where = what.arg(degrees_words(*look.middle));
        if (const auto nearest = nearest_of(desk_.places_beside(entry_), *look.middle))
            where += tr(", %1").arg(distance_words(nearest->first, nearest->second, choices_.units()));
        where += QLatin1Char('.');
    }
    if (look.findings > 0)
        where += counted(static_cast<long long>(look.findings), tr(" %1 remark on it is told after reading."),
                         tr(" %1 remarks on it are told after reading."));
    say(*where_, where);
    const bool asks_north = look.bare_fans > 0;
    north_->setVisible(asks_north);
    north_->show_option(place_in(norths, desk_.north_of(entry_)));
    QString turned;
    if (asks_north && desk_.north_of(entry_) == North::magnetic_north)
        turned = QString::fromStdString(look.turned);
    else if (asks_north && desk_.north_of(entry_) == North::not_told)
        turned = counted(static_cast<long long>(look.bare_fans), tr("%1 fan names no north."), tr("%1 fans name no north."));
    say(*turned_, turned);
}

void EntryView::refresh_system(const FileLook& look) {
    const bool wanted = wants_reference_system(look);
    system_->setVisible(wanted);
    if (wanted) system_->ask(own_places(look), desk_.places_beside(entry_), reference_system_of(look));
}

void EntryView::refresh_table(const FileLook& look) {
    table_picks_->setVisible(look.table.has_value());
    if (!look.table) return;
    const TableGuess& guess = *look.table;
    separator_->show_option(place_in(separators, guess.separator));
    decimal_->show_option(guess.decimal == ',' ? 1 : 0);
    heading_->show_option(guess.header_row ? 0 : 1);
    encoding_->show_option(place_in(encodings, guess.encoding));
    degrees_->show_option(guess.packed_minutes ? 1 : 0);
    dates_->show_option(place_in(orders, guess.times.order));
    ColumnSheet sheet;
    if (look.preview) {
        sheet.headings = look.preview->headings;
        sheet.rows = look.preview->rows;
    }
    sheet.roles = guess.roles;
    sheet.offered = offered_roles(false);
    QStringList words{tr("What each column means; the first rows under it:")};
    for (const std::string& sentence : guess.assumed) words << QString::fromStdString(Words::shown(sentence));
    columns_words_->setText(words.join(QStringLiteral("\n· ")));
    columns_->show_sheet(std::move(sheet));
}

void EntryView::refresh_layers(const FileLook& look) {
    layer_picks_->setVisible(!look.layers.empty());
    if (look.layers.empty()) {
        if (!look.table) columns_->show_sheet({});
        return;
    }
    layer_ = std::min(layer_, look.layers.size() - 1);
    const LayerGuess& guess = look.layers[layer_];
    const LayerSample& sample = look.samples[layer_];
    QStringList names;
    for (const LayerGuess& layer : look.layers) names << QString::fromStdString(layer.layer);
    which_layer_->set_options(names);
    which_layer_->show_option(static_cast<int>(layer_));
    which_layer_->setVisible(names.size() > 1);
    points_->show_option(static_cast<int>(guess.points));
    lines_->show_option(static_cast<int>(guess.lines));
    polygons_->show_option(static_cast<int>(guess.polygons));
    points_->setVisible(sample.points > 0);
    lines_->setVisible(sample.lines > 0);
    polygons_->setVisible(sample.polygons > 0);
    columns_words_->setText(tr("What each column means; the first rows under it:"));
    columns_->show_sheet({sample.columns, sample.rows, guess.roles, offered_roles(true)});
}

void EntryView::change_table(const std::function<void(TableGuess&)>& change, bool other_columns) {
    if (!look() || !look()->table) return;
    FileLook changed = *look();
    change(*changed.table);
    changed.table->assumed.clear();  // the person has said it
    desk_.change(entry_, std::move(changed), other_columns);
}

void EntryView::change_layer(const std::function<void(LayerGuess&)>& change) {
    if (!look() || layer_ >= look()->layers.size()) return;
    FileLook changed = *look();
    change(changed.layers[layer_]);
    desk_.change(entry_, std::move(changed));
}

// One column a meaning, but for notes, which may be several.
void EntryView::mean(int column, ColumnRole role) {
    const auto set = [column, role](std::vector<ColumnRole>& roles) {
        const auto at = static_cast<std::size_t>(column);
        if (roles.size() <= at) roles.resize(at + 1, ColumnRole::none);
        if (role != ColumnRole::note) std::replace(roles.begin(), roles.end(), role, ColumnRole::none);
        roles[at] = role;
    };
    if (look() && look()->table)
        change_table([&](TableGuess& guess) { set(guess.roles); }, false);
    else
        change_layer([&](LayerGuess& guess) { set(guess.roles); });
}

QWidget* EntryView::place_of_answer() {
    if (look() && look()->refusal && look()->refusal->code == Refusal::Code::needs_reference_system) return &system_->line();
    return look() && has_choices(*look()) ? columns_ : nullptr;
}

}  // namespace plugside
