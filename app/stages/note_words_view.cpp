#include "app/stages/note_words_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>

namespace plugside {

namespace {

constexpr double rim_px = 8.0;
constexpr double gap_px = 3.0;
constexpr double word_pad_px = 4.0;

}  // namespace

NoteWordsView::NoteWordsView(Choices& choices, QWidget* parent) : QWidget(parent), choices_(choices) {
    setFocusPolicy(Qt::StrongFocus);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(&choices_, &Choices::theme_changed, this, [this] {
        updateGeometry();
        update();
    });
}

void NoteWordsView::show_note(const std::string& note, const NoteReading& reading) {
    note_ = note;
    words_ = words_of(note, reading);
    picked_.reset();
    const auto is_left = [](const NotePiece& word) { return word.sense == PieceSense::left_over; };
    const auto first = std::find_if(words_.begin(), words_.end(), is_left);
    if (first != words_.end()) {
        const auto past = std::find_if_not(first, words_.end(), is_left);
        picked_ = {static_cast<std::size_t>(first - words_.begin()), static_cast<std::size_t>(past - words_.begin()) - 1};
    }
    updateGeometry();
    tell();
}

std::string NoteWordsView::picked() const {
    if (!picked_) return {};
    const auto [low, high] = std::minmax(picked_->first, picked_->second);
    return note_.substr(words_[low].span.begin, words_[high].span.end - words_[low].span.begin);
}

std::vector<std::string> NoteWordsView::left_over() const {
    std::vector<std::string> stretches;
    std::size_t i = 0;
    while (i < words_.size()) {
        std::size_t end = i;
        while (end < words_.size() && words_[end].sense == PieceSense::left_over) ++end;
        if (end > i)
            stretches.push_back(note_.substr(words_[i].span.begin, words_[end - 1].span.end - words_[i].span.begin));
        i = std::max(end, i + 1);
    }
    return stretches;
}

void NoteWordsView::pick(std::size_t first, std::size_t last) {
    if (first >= words_.size() || last >= words_.size()) return;
    picked_ = {first, last};
    tell();
}

void NoteWordsView::show_all_left_over(bool on) {
    all_left_over_ = on;
    update();
}

bool NoteWordsView::is_picked(std::size_t word) const {
    if (all_left_over_) return words_[word].sense == PieceSense::left_over;
    if (!picked_) return false;
    const auto [low, high] = std::minmax(picked_->first, picked_->second);
    return word >= low && word <= high;
}

void NoteWordsView::tell() {
    QString text;
    for (const NotePiece& word : words_) text += word.text + QLatin1Char(' ');
    setAccessibleName(tr("the note's words: %1").arg(text.trimmed()));
    setAccessibleDescription(picked_ ? tr("picked: %1").arg(QString::fromStdString(picked())) : tr("no word is picked"));
    update();
    Q_EMIT picked_changed();
}

QFont NoteWordsView::word_font(const NotePiece& word) const {
    QFont font = this->font();
    font.setPixelSize(choices_.style().text(1));
    font.setBold(word.sense == PieceSense::left_over);
    font.setUnderline(word.sense == PieceSense::left_over);
    return font;
}

std::vector<QRectF> NoteWordsView::places(int width) const {
    const double height = choices_.style().text(11);
    std::vector<QRectF> boxes;
    QPointF at(rim_px, rim_px);
    for (const NotePiece& word : words_) {
        const double room = width - 2.0 * rim_px;
        const double wide =
            std::min(QFontMetricsF(word_font(word)).horizontalAdvance(word.text) + 2.0 * word_pad_px, std::max(room, 20.0));
        if (at.x() > rim_px && at.x() + wide > width - rim_px) at = QPointF(rim_px, at.y() + height + gap_px);
        boxes.emplace_back(at, QSizeF(wide, height));
        at.rx() += wide + gap_px;
    }
    return boxes;
}

int NoteWordsView::heightForWidth(int width) const {
    const auto boxes = places(width);
    const double bottom = boxes.empty() ? choices_.style().text(11) + rim_px : boxes.back().bottom();
    return static_cast<int>(bottom + rim_px);
}

std::optional<std::size_t> NoteWordsView::word_at(QPointF place) const {
    const auto boxes = places(width());
    for (std::size_t i = 0; i < boxes.size(); ++i)
        if (boxes[i].adjusted(-0.5 * gap_px, -0.5 * gap_px, 0.5 * gap_px, 0.5 * gap_px).contains(place)) return i;
    return std::nullopt;
}

void NoteWordsView::paintEvent(QPaintEvent*) {
    const MapStyle& style = choices_.style();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(hasFocus() ? style.act : style.hairline, hasFocus() ? 2.0 : 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1.0, 1.0, -1.0, -1.0), 6.0, 6.0);
    const auto boxes = places(width());
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        const NotePiece& word = words_[i];
        if (is_picked(i)) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(style.act);
            painter.drawRoundedRect(boxes[i], 4.0, 4.0);
        } else if (word.sense == PieceSense::understood) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(style.read());
            painter.drawRoundedRect(boxes[i], 4.0, 4.0);
        }
        painter.setFont(word_font(word));
        painter.setPen(is_picked(i)                           ? style.on_act
                       : word.sense == PieceSense::left_over  ? style.stop_ink
                       : word.sense == PieceSense::understood ? style.ink
                                                              : style.quiet_ink);
        painter.drawText(boxes[i], Qt::AlignCenter, word.text);
    }
}

void NoteWordsView::keyPressEvent(QKeyEvent* event) {
    if (words_.empty()) return QWidget::keyPressEvent(event);
    const std::size_t last = words_.size() - 1;
    const std::size_t at = picked_ ? picked_->second : 0;
    std::size_t to = at;
    switch (event->key()) {
        case Qt::Key_Left: to = picked_ && at > 0 ? at - 1 : 0; break;
        case Qt::Key_Right: to = picked_ ? std::min(at + 1, last) : 0; break;
        case Qt::Key_Home: to = 0; break;
        case Qt::Key_End: to = last; break;
        default: QWidget::keyPressEvent(event); return;
    }
    const bool more = event->modifiers().testFlag(Qt::ShiftModifier) && picked_;
    pick(more ? picked_->first : to, to);
}

void NoteWordsView::mousePressEvent(QMouseEvent* event) {
    if (const auto word = word_at(event->position())) pick(*word, *word);
}

void NoteWordsView::mouseMoveEvent(QMouseEvent* event) {
    const auto word = word_at(event->position());
    if (word && picked_ && *word != picked_->second) pick(picked_->first, *word);
}

}  // namespace plugside
