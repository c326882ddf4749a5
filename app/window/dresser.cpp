#include "app/window/dresser.h"

#include <QChildEvent>
#include <QElapsedTimer>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <algorithm>

#include "app/window/look_sheet.h"

namespace plugside {

namespace {

constexpr int turn_ms = 8;  // then what else waits has its turn
constexpr const char* mark = "dressed_by_parts";

QList<QWidget*> children_of(const QWidget& part) {
    return part.findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly);
}

}  // namespace

void dress_by_parts(QWidget& part) { part.setProperty(mark, true); }
bool is_dressed_by_parts(const QWidget& part) { return part.property(mark).toBool(); }

Dresser::Dresser(QWidget& window) : QObject(&window), window_(window) {
    dress_by_parts(window_);
    turns_.setInterval(0);
    connect(&turns_, &QTimer::timeout, this, &Dresser::take_turn);
}

void Dresser::put_on(const MapStyle& style) {
    sheet_ = look_sheet(style);
    hint_ = style.quiet_ink;
    waiting_.clear();
    take_parts(window_, waiting_);
    std::erase_if(waiting_, [this](const QPointer<QWidget>& part) { return part->styleSheet() == sheet_; });
    put_seen_first();
    if (seen_ > 0 && window_.isVisible() && !held_ && window_.updatesEnabled()) {
        held_ = true;
        window_.setUpdatesEnabled(false);
    }
    if (waiting_.empty())
        show_again();
    else
        turns_.start();
}

void Dresser::put_seen_first() {
    const auto hidden = std::stable_partition(waiting_.begin(), waiting_.end(), [this](const QPointer<QWidget>& part) {
        return !part || !part->isVisibleTo(&window_);
    });
    seen_ = static_cast<std::size_t>(waiting_.end() - hidden);
}

void Dresser::show_when_dressed() {
    put_seen_first();
    held_ = true;
    if (seen_ == 0) show_again();
}

void Dresser::finish() {
    while (!waiting_.empty()) take_turn();
}

void Dresser::take_turn() {
    QElapsedTimer turn;
    turn.start();
    while (!waiting_.empty() && turn.elapsed() < turn_ms) {
        const QPointer<QWidget> part = waiting_.back();
        waiting_.pop_back();
        if (part && part->styleSheet() != sheet_) dress(*part);
        if (seen_ > 0 && --seen_ == 0) show_again();
    }
    if (!waiting_.empty()) return;
    turns_.stop();
    show_again();
}

void Dresser::show_again() {
    if (std::exchange(held_, false)) window_.setUpdatesEnabled(true);
}

// Of a marked part: its children, and those of marked ones among them; in the order in which they were made, the last first.
void Dresser::take_parts(QWidget& of, std::vector<QPointer<QWidget>>& parts) {
    of.removeEventFilter(this);
    of.installEventFilter(this);
    const QList<QWidget*> children = children_of(of);
    for (auto child = children.rbegin(); child != children.rend(); ++child) {
        if (is_dressed_by_parts(**child))
            take_parts(**child, parts);
        else
            parts.emplace_back(*child);
    }
}

void Dresser::dress(QWidget& part) {
    part.setStyleSheet(sheet_);
    // the sheet would have what a field asks for at half of the ink's strength, too pale to be read
    QList<QWidget*> fields = part.findChildren<QWidget*>();
    fields << &part;
    for (QWidget* field : fields) {
        if (qobject_cast<QLineEdit*>(field) == nullptr && qobject_cast<QPlainTextEdit*>(field) == nullptr) continue;
        QPalette palette = field->palette();
        palette.setColor(QPalette::PlaceholderText, hint_);
        field->setPalette(palette);
    }
}

bool Dresser::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::ChildPolished && !sheet_.isEmpty()) {
        auto* child = qobject_cast<QWidget*>(static_cast<QChildEvent*>(event)->child());
        if (child != nullptr && child->parent() == watched) {
            std::vector<QPointer<QWidget>> parts;
            if (is_dressed_by_parts(*child))
                take_parts(*child, parts);
            else
                parts.emplace_back(child);
            for (const QPointer<QWidget>& part : parts)
                if (part && part->styleSheet() != sheet_ &&
                    std::find(waiting_.begin(), waiting_.end(), part) == waiting_.end())
                    dress(*part);
        }
    }
    return QObject::eventFilter(watched, event);
}

}  // namespace plugside
