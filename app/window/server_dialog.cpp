#include "app/window/server_dialog.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QSettings>
#include <QVBoxLayout>
#include <algorithm>

#include "app/window/look_sheet.h"

namespace plugside {

namespace {

constexpr int usual_deepest = 19;  // common practice: about .3 m a pixel at the equator

}  // namespace

ServerDialog::ServerDialog(QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("Imagery from a server"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(22, 18, 22, 18);
    column->setSpacing(10);
    auto* title = label_in_role("title", this);
    title->setText(tr("Imagery from a server"));
    auto* how = label_in_role("body", this);
    how->setText(
        tr("Enter the address of map tiles that you may use, with {z}, {x} and {y} where level, column and row stand."));
    entered_ = new QLineEdit(this);
    entered_->setPlaceholderText(QStringLiteral("https://tiles.example.org/{z}/{x}/{y}.png"));
    entered_->setAccessibleName(tr("address of the tiles"));
    deepest_ = new QSpinBox(this);
    deepest_->setRange(0, deepest_level);
    deepest_->setAccessibleName(tr("finest level that the server has"));
    auto* level_words = new QLabel(tr("finest level that it has"), this);
    level_words->setBuddy(deepest_);
    auto* level = new QHBoxLayout;
    level->addWidget(level_words);
    level->addWidget(deepest_);
    level->addStretch(1);
    told_ = label_in_role("body", this);
    told_->setAccessibleName(tr("what will be asked of whom"));
    fault_ = label_in_role("stop", this);
    auto* acts = new QHBoxLayout;
    auto* no = new QPushButton(tr("no"), this);
    yes_ = new QPushButton(tr("yes, ask it"), this);
    yes_->setObjectName(QStringLiteral("main_button"));
    yes_->setDefault(true);
    acts->addStretch(1);
    acts->addWidget(no);
    acts->addWidget(yes_);
    for (QWidget* part : std::initializer_list<QWidget*>{title, how, entered_}) column->addWidget(part);
    column->addLayout(level);
    for (QWidget* part : std::initializer_list<QWidget*>{told_, fault_}) column->addWidget(part);
    column->addLayout(acts);
    const QSettings settings;
    deepest_->setValue(settings.value(QStringLiteral("server/deepest"), usual_deepest).toInt());
    connect(entered_, &QLineEdit::textChanged, this, &ServerDialog::check);
    connect(no, &QPushButton::clicked, this, &QDialog::reject);
    connect(yes_, &QPushButton::clicked, this, [this] {
        remember();
        accept();
    });
    entered_->setText(settings.value(QStringLiteral("server/address")).toString());
    check();
    entered_->setFocus();
}

std::optional<TileAddress> ServerDialog::address() const {
    const auto address = TileAddress::of(entered_->text().toStdString());
    return address ? std::optional(*address) : std::nullopt;
}

void ServerDialog::showEvent(QShowEvent* event) {
    fit_to_words();
    QDialog::showEvent(event);
}

// As wide as the address that is shown as an example, as high as the words are then.
void ServerDialog::fit_to_words() {
    for (QWidget* part : findChildren<QWidget*>()) part->ensurePolished();
    layout()->invalidate();
    const QMargins rim = layout()->contentsMargins();
    const int wide =
        std::max(560, entered_->fontMetrics().horizontalAdvance(entered_->placeholderText()) + rim.left() + rim.right() + 30);
    setMinimumSize(wide, layout()->totalHeightForWidth(wide));
    resize(minimumSize().expandedTo(QSize(width(), 0)));
}

void ServerDialog::check() {
    const auto address = TileAddress::of(entered_->text().toStdString());
    const bool empty = entered_->text().trimmed().isEmpty();
    fault_->setText(address || empty ? QString() : QString::fromStdString(address.error()));
    fault_->setVisible(!fault_->text().isEmpty());
    yes_->setEnabled(address.has_value());
    if (!address) {
        told_->setText(tr("Nothing is asked of anyone yet. Without a yes this program never uses the network."));
        if (isVisible()) fit_to_words();
        return;
    }
    QString words = tr("With a yes, %1 is asked for the tiles of what you look at, whenever you look elsewhere on the map. "
                       "It can then see "
                       "which part of the map is looked at, when, and from which network address. Nothing of the project is "
                       "sent: no mark, no "
                       "note, no file. It is asked until you hide it, take it away, or open another field.")
                        .arg(QString::fromStdString(address->server()));
    if (address->is_open_to_others())
        words += QLatin1Char(' ') + tr("The address begins with http: whoever carries the request can read it too.");
    told_->setText(words);
    if (isVisible()) fit_to_words();
}

void ServerDialog::remember() const {
    QSettings settings;
    settings.setValue(QStringLiteral("server/address"), entered_->text().trimmed());
    settings.setValue(QStringLiteral("server/deepest"), deepest_->value());
}

}  // namespace plugside
