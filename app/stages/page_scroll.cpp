#include "app/stages/page_scroll.h"

#include <QApplication>
#include <QEvent>
#include <QLayout>
#include <QScrollBar>
#include <algorithm>

#include "app/window/dresser.h"

namespace plugside {

PageScroll::PageScroll(QWidget* page, QWidget* parent, PageHeight height) : QScrollArea(parent), height_(height) {
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    setProperty("page", true);
    setFrameShape(NoFrame);
    dress_by_parts(*this);
    dress_by_parts(*viewport());
    setWidget(page);
    // the paper below shows through
    viewport()->setAutoFillBackground(false);
    page->setAutoFillBackground(false);
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

// Comes once the page's own layout is made: what was measured before that, or while the page was hidden, was measured by layouts within
// it that had not heard of their words' new size.
bool PageScroll::viewportEvent(QEvent* event) {
    const bool handled = QScrollArea::viewportEvent(event);
    if (event->type() == QEvent::LayoutRequest || event->type() == QEvent::Show) fit();
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
    const auto needed = [&layout, this](int width) {
        if (height_ == PageHeight::whole)
            return layout.hasHeightForWidth() ? layout.totalHeightForWidth(width) : layout.totalSizeHint().height();
        return layout.hasHeightForWidth() ? layout.totalMinimumHeightForWidth(width) : layout.totalMinimumSize().height();
    };
    const QSize room = maximumViewportSize();
    // A page much higher than its room is measured once, beside the bar: another width would have all its words broken into lines anew.
    int width = room.width() - verticalScrollBar()->sizeHint().width();
    int height = needed(width);
    if (height <= room.height() + room.height() / 4 && needed(room.width()) <= room.height()) {
        width = room.width();
        height = room.height();
    }
    widget()->resize(width, std::max(room.height(), height));
    fitting_ = false;
}

void take_what_is_left(QWidget& part) { part.setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored); }

}  // namespace plugside
