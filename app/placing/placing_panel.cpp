#include "app/placing/placing_panel.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QVBoxLayout>
#include <cmath>

#include "app/placing/typed_place.h"
#include "app/stages/page_scroll.h"
#include "app/stages/rows_layout.h"
#include "app/window/look_sheet.h"
#include "core/units/display.h"

namespace plugside {

namespace {

constexpr double taped_up_to_m = 10.0;

}  // namespace

PlacingPanel::PlacingPanel(PicturePlacing& placing, FieldSession& session, Choices& choices, QWidget* parent)
    : QWidget(parent), placing_(placing), session_(session), choices_(choices) {
    build();
    connect(typed_, &QLineEdit::returnPressed, this, &PlacingPanel::take_typed);
    connect(list_, &QListWidget::currentRowChanged, this, [this](int row) {
        if (!filling_) placing_.pick(row < 0 ? std::nullopt : std::optional(static_cast<std::size_t>(row)));
    });
    connect(remove_, &QPushButton::clicked, &placing_, &PicturePlacing::remove_picked);
    connect(one_scale_, &QCheckBox::toggled, this, [this](bool on) {
        if (!filling_) placing_.use(on ? PlacementKind::similarity : PlacementKind::affine);
    });
    connect(&placing_, &PicturePlacing::begun, this, [this] { say({}); });
    connect(&placing_, &PicturePlacing::changed, this, &PlacingPanel::refresh);
    connect(&choices_, &Choices::units_changed, this, &PlacingPanel::refresh);
}

void PlacingPanel::build() {
    setObjectName(QStringLiteral("slip_side"));
    setAttribute(Qt::WA_StyledBackground);
    auto* side = new QVBoxLayout(this);
    side->setContentsMargins(12, 12, 12, 12);
    auto* paper = new QFrame(this);
    paper->setObjectName(QStringLiteral("slip"));
    side->addWidget(paper);
    auto* outer = new QVBoxLayout(paper);
    outer->setContentsMargins(16, 12, 16, 14);
    outer->setSpacing(8);
    auto* page = new QWidget(paper);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    outer->addWidget(new PageScroll(page, paper), 1);
    title_ = label_in_role("title", paper);
    next_ = label_in_role("body", paper);
    next_->setAccessibleName(tr("what to do next"));
    typed_ = new QLineEdit(paper);
    typed_->setPlaceholderText(tr("place: mark, or latitude, longitude"));
    typed_->setToolTip(typed_->placeholderText());
    typed_->setAccessibleName(tr("place on the map, typed"));
    said_ = label_in_role("stop", paper);
    list_ = new QListWidget(paper);
    list_->setAccessibleName(tr("pairs, each with what it is off by"));
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setWordWrap(true);
    list_->installEventFilter(this);
    list_->setMinimumHeight(90);
    account_ = label_in_role("body", paper);
    account_->setAccessibleName(tr("how well the pairs agree"));
    one_scale_ = new QCheckBox(tr("one scale, no slant"), paper);
    one_scale_->setToolTip(
        tr("For a scan or a photograph taken straight down: the picture is shifted, turned and scaled only, so "
           "that pairs check each other sooner."));
    auto* acts = RowsLayout::natural(6);
    remove_ = new QPushButton(tr("remove (Del)"), paper);
    auto* done = new QPushButton(tr("done (Esc)"), paper);
    done->setObjectName(QStringLiteral("main_button"));
    acts->addWidget(remove_);
    acts->addWidget(done);
    for (QWidget* part : std::initializer_list<QWidget*>{title_, next_, typed_, said_}) column->addWidget(part);
    column->addWidget(list_, 1);
    column->addWidget(account_);
    column->addWidget(one_scale_);
    outer->addLayout(acts);
    connect(done, &QPushButton::clicked, this, &PlacingPanel::done);
}

void PlacingPanel::say(const QString& sentence) {
    said_->setText(sentence);
    said_->setVisible(!sentence.isEmpty());
}

QString PlacingPanel::length_words(double metres) const {
    const Metres length = Metres::of(metres);
    return QString::fromStdString(metres < taped_up_to_m ? tape_reading(length, choices_.units())
                                                         : ground_distance(length, choices_.units()));
}

QString PlacingPanel::next_act() const {
    if (placing_.waiting_spot())
        return tr("Now click the same place on the map, or a mark, or type it. By keys: Ctrl+M goes to the map.");
    if (placing_.waiting_place()) return tr("Now click the same place on the picture.");
    return tr(
        "Click a place on the picture that you can find on the map too: a corner, a pole, a gate. Three pairs place the "
        "picture; more check each other. Pairs are moved by dragging, or by Ctrl with arrows.");
}

QString PlacingPanel::account_words() const {
    const auto& fit = placing_.fit();
    if (!fit) return placing_.pairs().empty() ? QString() : QString::fromStdString(sentence(fit.error()));
    QStringList words;
    if (fit->standard_error_m)
        words << tr("All together: pairs agree to about %1.").arg(length_words(*fit->standard_error_m * std::sqrt(2.0)));
    else
        words << tr("These pairs fit exactly and so check nothing; one more shows how well they agree.");
    if (fit->worst) words << tr("Pair %1 stands out most: look at it first.").arg(*fit->worst + 1);
    if (fit->placement.mirrored()) words << tr("The picture would lie face down: two pairs are probably exchanged.");
    return words.join(QLatin1Char(' '));
}

void PlacingPanel::fill_list() {
    const auto& pairs = placing_.pairs();
    const auto& fit = placing_.fit();
    while (list_->count() > static_cast<int>(pairs.size())) delete list_->takeItem(list_->count() - 1);
    while (list_->count() < static_cast<int>(pairs.size())) list_->addItem(QString());
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        QString line = tr("pair %1").arg(i + 1);
        if (fit) line = tr("pair %1: off by %2").arg(i + 1).arg(length_words(fit->residuals_m.at(i)));
        if (fit && fit->worst == i) line = tr("%1, stands out most").arg(line);
        list_->item(static_cast<int>(i))->setText(line);
    }
    list_->setCurrentRow(placing_.picked() ? static_cast<int>(*placing_.picked()) : -1);
}

void PlacingPanel::refresh() {
    if (!placing_.active()) return;
    filling_ = true;
    title_->setText(tr("Place %1").arg(QString::fromStdString(placing_.file()->filename().string())));
    next_->setText(next_act());
    fill_list();
    account_->setText(account_words());
    one_scale_->setChecked(placing_.kind() == PlacementKind::similarity);
    remove_->setEnabled(placing_.picked().has_value());
    filling_ = false;
}

void PlacingPanel::take_typed() {
    const auto field = session_.field();
    if (!field || typed_->text().trimmed().isEmpty()) return;
    const auto place = typed_place(typed_->text(), *field);
    if (!place) return say(place.error());
    say({});
    typed_->clear();
    if (placing_.waiting_spot() || !placing_.picked())
        placing_.take_place(*place);
    else
        placing_.shift_place(*placing_.picked(), *place);
}

bool PlacingPanel::eventFilter(QObject* watched, QEvent* event) {
    if (watched == list_ && event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Delete) {
        placing_.remove_picked();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace plugside
