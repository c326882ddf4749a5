#include "app/stages/digger_key_view.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

#include "app/stages/digger_picture.h"
#include "app/stages/rows_layout.h"
#include "app/window/look_sheet.h"
#include "core/words/words.h"

namespace plugside {

namespace {

constexpr double picture_wide_px = 126.0;

QString verdict(SignKind kind) {
    switch (kind) {
        case SignKind::gopher_mound: return DiggerKeyView::tr("A gopher's mound.");
        case SignKind::surface_plug: return DiggerKeyView::tr("A gopher's surface plug, without a fan.");
        case SignKind::mole: return DiggerKeyView::tr("A mole's work.");
        case SignKind::ground_squirrel: return DiggerKeyView::tr("A ground squirrel's work.");
        case SignKind::vole: return DiggerKeyView::tr("A vole's work.");
        case SignKind::other: break;
    }
    return DiggerKeyView::tr("Something else's work.");
}

QPixmap drawn(DiggerPicture picture, const MapStyle& style, double device_pixel_ratio) {
    constexpr QSizeF size(222.0, 148.0);
    QPixmap pixmap((size * device_pixel_ratio).toSize());
    pixmap.setDevicePixelRatio(device_pixel_ratio);
    pixmap.fill(style.slip);
    QPainter painter(&pixmap);
    draw_digger_picture(painter, QRectF(QPointF(0.5, 0.5), size - QSizeF(1.0, 1.0)), picture, style);
    return pixmap;
}

QString words(std::string_view text) { return QString::fromStdString(Words::shown(std::string(text))); }

}  // namespace

DiggerAnswerButton::DiggerAnswerButton(int number, const DiggerAnswer& answer, Choices& choices, QWidget* parent)
    : QAbstractButton(parent), number_(number), answer_(answer), choices_(choices) {
    setText(words(answer.words));
    setAccessibleName(tr("%1: %2").arg(number).arg(text()));
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

// Behind the drawing and the number.
double DiggerAnswerButton::words_left() const { return picture_wide_px + 18.5 + choices_.style().room(18.0); }

int DiggerAnswerButton::heightForWidth(int width) const {
    QFont font = this->font();
    font.setPixelSize(choices_.style().text());
    const QRect room(0, 0, static_cast<int>(width - words_left() - 8.0), 4000);
    const int high = QFontMetrics(font).boundingRect(room, Qt::TextWordWrap | Qt::AlignLeft, text()).height();
    return std::max(high + 16, 104);
}

void DiggerAnswerButton::paintEvent(QPaintEvent*) {
    const MapStyle& style = choices_.style();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF card = QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5);
    painter.setPen(QPen(hasFocus() ? style.act : style.edge(), hasFocus() ? 2.5 : 1.0));
    painter.setBrush(isDown() || underMouse() ? style.rail : style.slip);
    painter.drawRoundedRect(card, 8.0, 8.0);
    const double high = std::min(card.height() - 14.0, 114.0);
    const QRectF picture(card.left() + 7.0, card.center().y() - 0.5 * high, picture_wide_px, high);
    draw_digger_picture(painter, picture, answer_.picture, style);
    QFont font = this->font();
    font.setPixelSize(style.text(3));
    font.setBold(true);
    painter.setFont(font);
    painter.setPen(style.act);
    const double left = picture.right() + 10.0;
    painter.drawText(QRectF(left, card.top(), style.room(18.0), card.height()), Qt::AlignLeft | Qt::AlignVCenter,
                     QString::number(number_));
    font.setPixelSize(style.text());
    font.setBold(false);
    painter.setFont(font);
    painter.setPen(style.ink);
    painter.drawText(QRectF(words_left(), card.top() + 4.0, card.right() - words_left() - 6.0, card.height() - 8.0),
                     Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, text());
}

DiggerKeyView::DiggerKeyView(FieldSession& session, Choices& choices, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    title_ = label_in_role("heading", this);
    question_ = label_in_role("body", this);
    answers_ = new QWidget(this);
    answer_column_ = new QVBoxLayout(answers_);
    answer_column_->setContentsMargins(0, 0, 0, 0);
    answer_column_->setSpacing(7);
    answer_column_->addStretch(1);
    deciding_ = new QLabel(this);
    deciding_->setAccessibleName(tr("what decided it"));
    verdict_ = label_in_role("title", this);
    why_ = label_in_role("body", this);
    column->addWidget(title_);
    column->addWidget(question_);
    column->addWidget(answers_, 1);
    column->addWidget(deciding_);
    column->addWidget(verdict_);
    column->addWidget(why_);
    column->addStretch(0);
    auto* keys = RowsLayout::natural(6);
    back_ = new QPushButton(tr("back"), this);
    back_->setToolTip(tr("the question before (Backspace)"));
    take_ = new QPushButton(tr("take it so"), this);
    take_->setObjectName(QStringLiteral("main_button"));
    take_->setToolTip(tr("Enter"));
    away_ = new QPushButton(tr("leave it"), this);
    away_->setToolTip(tr("put the questions away, nothing is changed (Esc)"));
    keys->addWidget(back_);
    keys->addWidget(take_);
    keys->addWidget(away_);
    column->addLayout(keys);
    connect(back_, &QPushButton::clicked, this, &DiggerKeyView::back);
    connect(take_, &QPushButton::clicked, this, &DiggerKeyView::take);
    connect(away_, &QPushButton::clicked, this, &DiggerKeyView::done);
    connect(&session_, &FieldSession::field_replaced, this, &DiggerKeyView::done);
    setAccessibleName(tr("who dug here"));
}

std::optional<std::size_t> DiggerKeyView::question() const {
    if (end_ != nullptr || way_.empty()) return std::nullopt;
    return way_.back();
}

void DiggerKeyView::ask_about(const std::string& mark, const Finding* asked) {
    mark_ = mark;
    asked_ = asked ? std::optional(*asked) : std::nullopt;
    way_ = {0};
    title_->setText(tr("Who dug at %1? Only what you saw counts.").arg(QString::fromStdString(mark)));
    show_question();
}

void DiggerKeyView::show_question() {
    end_ = nullptr;
    const DiggerQuestion& asked = digger_key()[way_.back()];
    question_->setText(words(asked.words));
    question_->show();
    qDeleteAll(answers_->findChildren<DiggerAnswerButton*>());
    QWidget* before = back_;
    for (std::size_t i = 0; i < asked.answers.size(); ++i) {
        const int number = static_cast<int>(i) + 1;
        auto* button = new DiggerAnswerButton(number, asked.answers[i], choices_, answers_);
        answer_column_->insertWidget(number - 1, button);
        // the button goes away with its question: not while its own click is under way
        connect(
            button, &QAbstractButton::clicked, this, [this, number] { answer(number); }, Qt::QueuedConnection);
        if (i > 0) setTabOrder(before, button);
        before = button;
        if (i == 0 && isVisible()) button->setFocus(Qt::OtherFocusReason);
    }
    answers_->show();
    deciding_->hide();
    verdict_->hide();
    why_->hide();
    take_->hide();
    back_->setEnabled(way_.size() > 1);
    away_->setText(tr("leave it"));
}

void DiggerKeyView::answer(int number) {
    if (end_ != nullptr || way_.empty()) return;
    const auto answers = digger_key()[way_.back()].answers;
    if (number < 1 || static_cast<std::size_t>(number) > answers.size()) return;
    const DiggerAnswer& given = answers[static_cast<std::size_t>(number) - 1];
    if (given.next) {
        way_.push_back(*given.next);
        show_question();
        return;
    }
    end_ = &given;
    show_end();
}

void DiggerKeyView::show_end() {
    question_->hide();
    answers_->hide();
    const bool told = end_->digger.has_value();
    verdict_->setText(told ? verdict(*end_->digger) : tr("It cannot be told."));
    why_->setText(tr("%1 (%2)").arg(words(end_->why), words(end_->source)));
    deciding_->setPixmap(drawn(end_->picture, choices_.style(), devicePixelRatioF()));
    deciding_->show();
    verdict_->show();
    why_->show();
    back_->setEnabled(true);
    take_->setVisible(told);
    away_->setText(told ? tr("leave it") : tr("leave it as it is"));
    if (isVisible()) (told ? take_ : away_)->setFocus(Qt::OtherFocusReason);
    setAccessibleDescription(verdict_->text() + QLatin1Char(' ') + why_->text());
}

void DiggerKeyView::back() {
    if (end_ != nullptr) {
        show_question();
    } else if (way_.size() > 1) {
        way_.pop_back();
        show_question();
    }
}

void DiggerKeyView::take() {
    if (end_ == nullptr || !end_->digger) return;
    session_.tell_digger(mark_, *end_->digger, asked_ ? &*asked_ : nullptr);
    Q_EMIT done();
}

void DiggerKeyView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        take();
    else if (event->key() == Qt::Key_Backspace)
        back();
    else
        QWidget::keyPressEvent(event);
}

}  // namespace plugside
