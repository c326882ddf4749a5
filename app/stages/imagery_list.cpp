#include "app/stages/imagery_list.h"

#include <QDate>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLocale>
#include <QVBoxLayout>
#include <QVariant>

#include "app/window/look_sheet.h"
#include "app/words/language.h"

namespace plugside {

namespace {

constexpr int whole_tone = 100;

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
    auto* strength = new QHBoxLayout;
    auto* words = label_in_role("small", this);
    words->setText(tr("strength"));
    words->setWordWrap(false);
    tone_ = new QSlider(Qt::Horizontal, this);
    tone_->setRange(0, whole_tone);
    tone_->setPageStep(10);
    tone_->setAccessibleName(tr("how strongly imagery is drawn, in hundredths"));
    strength->addWidget(words);
    strength->addWidget(tone_, 1);
    column->addLayout(strength);
    auto* acts = new QHBoxLayout;
    add_ = new QPushButton(tr("add imagery"), this);
    take_away_ = new QPushButton(tr("take away"), this);
    acts->addWidget(add_, 1);
    acts->addWidget(take_away_, 1);
    column->addLayout(acts);
    connect(add_, &QPushButton::clicked, this, &ImageryList::add_wanted);
    connect(take_away_, &QPushButton::clicked, this, &ImageryList::take_chosen_away);
    connect(tone_, &QSlider::valueChanged, this,
            [this](int value) { imagery_.set_tone(static_cast<double>(value) / whole_tone); });
    connect(list_, &QListWidget::itemChanged, this, [this](QListWidgetItem* item) {
        if (!refreshing_) imagery_.show(item->data(Qt::UserRole).toULongLong(), item->checkState() == Qt::Checked);
    });
    connect(list_, &QListWidget::currentRowChanged, this, [this](int row) { take_away_->setEnabled(row >= 0); });
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

void ImageryList::refresh() {
    refreshing_ = true;
    const QVariant chosen = list_->currentItem() ? list_->currentItem()->data(Qt::UserRole) : QVariant();
    list_->clear();
    const auto& pictures = imagery_.pictures();
    for (auto picture = pictures.rbegin(); picture != pictures.rend(); ++picture) {
        auto* item = new QListWidgetItem(words_of(*picture), list_);
        item->setData(Qt::UserRole, QVariant::fromValue<qulonglong>(picture->number));
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(picture->visible ? Qt::Checked : Qt::Unchecked);
        item->setToolTip(QString::fromStdString(picture->source.facts().reference_system));
        if (item->data(Qt::UserRole) == chosen) list_->setCurrentItem(item);
    }
    if (!list_->currentItem() && list_->count() > 0) list_->setCurrentRow(0);
    take_away_->setEnabled(list_->count() > 0);
    tone_->setValue(qRound(imagery_.tone() * whole_tone));
    copying_->setVisible(imagery_.copying());
    refreshing_ = false;
}

void ImageryList::take_chosen_away() {
    if (const QListWidgetItem* item = list_->currentItem()) imagery_.take_away(item->data(Qt::UserRole).toULongLong());
}

bool ImageryList::eventFilter(QObject* watched, QEvent* event) {
    if (watched == list_ && event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Delete) {
        take_chosen_away();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace plugside
