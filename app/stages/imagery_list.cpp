#include "app/stages/imagery_list.h"

#include <QDate>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLocale>
#include <QVBoxLayout>
#include <QVariant>

#include "app/session/server_imagery.h"
#include "app/stages/rows_layout.h"
#include "app/window/look_sheet.h"
#include "app/words/language.h"

namespace plugside {

namespace {

constexpr int whole_tone = 100;
constexpr int number_role = Qt::UserRole;  // 0: not placed yet
constexpr int file_role = Qt::UserRole + 1;
constexpr int server_role = Qt::UserRole + 2;

QString name_of(const std::filesystem::path& file) { return QString::fromStdString(file.filename().string()); }

}  // namespace

ImageryList::ImageryList(Imagery& imagery, QWidget* parent) : QWidget(parent), imagery_(imagery) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    auto* heading = label_in_role("heading", this);
    heading->setText(tr("Imagery"));
    column->addWidget(heading);
    list_ = new QListWidget(this);
    list_->setAccessibleName(tr("pictures under the ground, the topmost first"));
    list_->setMaximumHeight(110);
    list_->setWordWrap(true);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->installEventFilter(this);
    column->addWidget(list_);
    copying_ = label_in_role("quiet", this);
    copying_->setText(tr("A large picture is being reduced; far out it is shown roughly meanwhile."));
    column->addWidget(copying_);
    strength_ = new QWidget(this);
    auto* strength = new QHBoxLayout(strength_);
    strength->setContentsMargins(0, 0, 0, 0);
    auto* words = label_in_role("small", strength_);
    words->setText(tr("strength"));
    words->setWordWrap(false);
    tone_ = new QSlider(Qt::Horizontal, strength_);
    tone_->setRange(0, whole_tone);
    tone_->setPageStep(10);
    tone_->setAccessibleName(tr("how strongly imagery is drawn, in hundredths"));
    strength->addWidget(words);
    strength->addWidget(tone_, 1);
    column->addWidget(strength_);
    auto* acts = RowsLayout::natural(6);
    add_ = new QPushButton(tr("add imagery"), this);
    add_->setToolTip(tr("Lay a picture of the ground under the map (Ctrl+I)"));
    server_ = new QPushButton(tr("server"), this);
    server_->setToolTip(tr("Imagery from a map server, once you entered its address and said yes (Ctrl+Shift+I)"));
    place_ = new QPushButton(tr("place"), this);
    place_->setToolTip(tr("Place a picture without a position by pairs of places (Enter)"));
    take_away_ = new QPushButton(tr("take away"), this);
    for (QPushButton* act : {add_, server_, place_, take_away_}) {
        act->setProperty("way", true);
        acts->addWidget(act);
    }
    column->addLayout(acts);
    connect(add_, &QPushButton::clicked, this, &ImageryList::add_wanted);
    connect(server_, &QPushButton::clicked, this, &ImageryList::server_wanted);
    connect(place_, &QPushButton::clicked, this, &ImageryList::place_chosen);
    connect(list_, &QListWidget::itemActivated, this, &ImageryList::place_chosen);
    connect(take_away_, &QPushButton::clicked, this, &ImageryList::take_chosen_away);
    connect(tone_, &QSlider::valueChanged, this,
            [this](int value) { imagery_.set_tone(static_cast<double>(value) / whole_tone); });
    connect(list_, &QListWidget::itemChanged, this, [this](QListWidgetItem* item) {
        if (refreshing_) return;
        if (item->data(server_role).toBool())
            imagery_.show_server(item->checkState() == Qt::Checked);
        else
            imagery_.show(item->data(number_role).toULongLong(), item->checkState() == Qt::Checked);
    });
    connect(list_, &QListWidget::currentRowChanged, this, &ImageryList::follow_chosen);
    connect(&imagery_, &Imagery::changed, this, &ImageryList::refresh);
    refresh();
}

void ImageryList::use(LengthUnits units) {
    units_ = units;
    refresh();
}

QString ImageryList::words_of(const OpenImagery& picture) const {
    const ImageryFacts& facts = picture.source.facts();
    QStringList words{name_of(facts.file)};
    if (facts.taken)
        words << locale_spoken().toString(
            QDate(static_cast<int>(facts.taken->year()), static_cast<int>(unsigned{facts.taken->month()}),
                  static_cast<int>(unsigned{facts.taken->day()})),
            QLocale::ShortFormat);
    words << tr("%1 a pixel").arg(QString::fromStdString(ground_distance(Metres::of(facts.metres_per_pixel), units_)));
    return words.join(QStringLiteral(", "));
}

QString ImageryList::words_of(const ProjectPicture& unplaced) const {
    const auto pairs = static_cast<long long>(unplaced.answers.pairs.size());
    if (pairs == 0) return tr("%1, not placed yet").arg(name_of(unplaced.file));
    return tr("%1, not placed yet: %2").arg(name_of(unplaced.file), counted(pairs, tr("%1 pair"), tr("%1 pairs")));
}

void ImageryList::add_line(const QString& words, const std::filesystem::path& file, std::uint64_t number, bool visible) {
    auto* item = new QListWidgetItem(words, list_);
    item->setData(number_role, QVariant::fromValue<qulonglong>(number));
    item->setData(file_role, QString::fromStdString(file.string()));
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
    if (number == 0) return;
    item->setFlags(item->flags() | Qt::ItemIsUserCheckable);
    item->setCheckState(visible ? Qt::Checked : Qt::Unchecked);
}

void ImageryList::add_server_line() {
    const ServerImagery* server = imagery_.server();
    if (server == nullptr) return;
    const QString name = QString::fromStdString(server->address().server());
    auto* item = new QListWidgetItem(
        !server->asking() ? tr("%1, not asked").arg(name) : tr("%1, asked for what you look at").arg(name), list_);
    item->setData(server_role, true);
    item->setData(file_role, QString());
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    item->setCheckState(imagery_.server_is_shown() ? Qt::Checked : Qt::Unchecked);
    item->setToolTip(QString::fromStdString(server->address().text()));
}

bool ImageryList::server_is_chosen() const {
    return list_->currentItem() && list_->currentItem()->data(server_role).toBool();
}

void ImageryList::refresh() {
    refreshing_ = true;
    const QVariant before = list_->currentItem() ? list_->currentItem()->data(file_role) : QVariant();
    list_->clear();
    const auto& pictures = imagery_.pictures();
    for (auto picture = pictures.rbegin(); picture != pictures.rend(); ++picture) {
        add_line(words_of(*picture), picture->source.facts().file, picture->number, picture->visible);
        list_->item(list_->count() - 1)->setToolTip(QString::fromStdString(picture->source.facts().reference_system));
    }
    for (const ProjectPicture& picture : imagery_.unplaced()) add_line(words_of(picture), picture.file, 0, picture.visible);
    add_server_line();
    for (int row = 0; row < list_->count(); ++row)
        if (list_->item(row)->data(file_role) == before) list_->setCurrentRow(row);
    if (!list_->currentItem() && list_->count() > 0) list_->setCurrentRow(0);
    follow_chosen();
    tone_->setValue(qRound(imagery_.tone() * whole_tone));
    copying_->setVisible(imagery_.copying());
    for (QWidget* part : std::initializer_list<QWidget*>{list_, strength_, take_away_}) part->setVisible(list_->count() > 0);
    refreshing_ = false;
}

std::optional<std::filesystem::path> ImageryList::chosen() const {
    const QListWidgetItem* item = list_->currentItem();
    return item && !server_is_chosen() ? std::optional<std::filesystem::path>(item->data(file_role).toString().toStdString())
                                       : std::nullopt;
}

// What lies by its file's own position is not placed by hand.
void ImageryList::follow_chosen() {
    const auto file = chosen();
    const auto state = file ? imagery_.state_of(*file) : std::nullopt;
    const bool unplaced = file && list_->currentItem()->data(number_role).toULongLong() == 0;
    take_away_->setEnabled(file || server_is_chosen());
    place_->setVisible(unplaced || (state && state->answers.placement));
}

void ImageryList::place_chosen() {
    const auto file = chosen();
    if (file && place_->isVisibleTo(this)) Q_EMIT place_wanted(*file);
}

void ImageryList::take_chosen_away() {
    if (server_is_chosen()) {
        imagery_.leave_server();
        return;
    }
    if (const auto file = chosen()) Q_EMIT take_away_wanted(*file);
}

bool ImageryList::eventFilter(QObject* watched, QEvent* event) {
    // before the window's own Delete
    if (watched == list_ && event->type() == QEvent::ShortcutOverride &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Delete) {
        event->accept();
        return true;
    }
    if (watched == list_ && event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Delete) {
        take_chosen_away();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace plugside
