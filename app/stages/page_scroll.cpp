#include "app/stages/page_scroll.h"

#include <QApplication>
#include <QEvent>
#include <QLayout>
#include <QScrollBar>
#include <algorithm>

namespace plugside {

PageScroll::PageScroll(QWidget* page, QWidget* parent) : QScrollArea(parent) {
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    setProperty("page", true);
    setWidget(page);
    page->installEventFilter(this);
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
        if (now != nullptr && widget() != nullptr && widget()->isAncestorOf(now)) ensureWidgetVisible(now, 0, 12);
    });
}

bool PageScroll::eventFilter(QObject* watched, QEvent* event) {
    const bool handled = QScrollArea::eventFilter(watched, event);
    if (watched == widget() && event->type() == QEvent::LayoutRequest) fit();
    return handled;
}

void PageScroll::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    fit();
}

void PageScroll::fit() {
    if (fitting_ || widget() == nullptr || widget()->layout() == nullptr) return;
    fitting_ = true;
    const QLayout& layout = *widget()->layout();
    const auto needed = [&layout](int width) {
        return layout.hasHeightForWidth() ? layout.totalMinimumHeightForWidth(width) : layout.totalMinimumSize().height();
    };
    const QSize room = maximumViewportSize();
    int width = room.width();
    if (needed(width) > room.height()) width -= verticalScrollBar()->sizeHint().width();
    widget()->resize(width, std::max(room.height(), needed(width)));
    fitting_ = false;
}

void take_what_is_left(QWidget& part) { part.setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored); }

}  // namespace plugside
