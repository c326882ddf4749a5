#include "app/stages/rows_layout.h"

#include <QWidget>
#include <algorithm>

namespace plugside {

namespace {

int wished_width(const QLayoutItem* item) { return item->sizeHint().width(); }

bool grows(const QLayoutItem* item) { return item->maximumSize().width() > wished_width(item); }

}  // namespace

RowsLayout::RowsLayout(int gap, int most_columns) : gap_(gap), most_columns_(most_columns) {
    setContentsMargins(0, 0, 0, 0);
}

RowsLayout::~RowsLayout() { qDeleteAll(items_); }

void RowsLayout::addItem(QLayoutItem* item) { items_.push_back(item); }

QLayoutItem* RowsLayout::itemAt(int index) const {
    return index >= 0 && index < count() ? items_[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* RowsLayout::takeAt(int index) {
    if (index < 0 || index >= count()) return nullptr;
    QLayoutItem* item = items_[static_cast<std::size_t>(index)];
    items_.erase(items_.begin() + index);
    return item;
}

std::vector<QLayoutItem*> RowsLayout::shown() const {
    std::vector<QLayoutItem*> items;
    for (QLayoutItem* item : items_)
        if (!item->isEmpty()) items.push_back(item);
    return items;
}

// How many items stand in each row.
std::vector<std::size_t> RowsLayout::rows_of(const std::vector<QLayoutItem*>& items, int width) const {
    std::vector<std::size_t> rows;
    if (items.empty()) return rows;
    if (most_columns_ > 0) {
        int widest = 1;
        for (const QLayoutItem* item : items) widest = std::max(widest, wished_width(item));
        const int fit = std::max((width + gap_) / (widest + gap_), 1);
        const auto columns = static_cast<std::size_t>(std::min({fit, most_columns_, static_cast<int>(items.size())}));
        // no row holds less than it must: five of four columns stand as three and two
        const std::size_t wanted = (items.size() + columns - 1) / columns;
        const std::size_t even = (items.size() + wanted - 1) / wanted;
        for (std::size_t left = items.size(); left > 0; left -= std::min(left, even)) rows.push_back(std::min(left, even));
        return rows;
    }
    int used = 0;
    for (const QLayoutItem* item : items) {
        const int wide = wished_width(item);
        if (rows.empty() || used + gap_ + wide > width) {
            rows.push_back(1);
            used = wide;
        } else {
            ++rows.back();
            used += gap_ + wide;
        }
    }
    return rows;
}

std::vector<RowsLayout::Placed> RowsLayout::placed(const QRect& place) const {
    const std::vector<QLayoutItem*> items = shown();
    const std::vector<std::size_t> rows = rows_of(items, place.width());
    std::vector<Placed> result;
    std::size_t next = 0;
    int top = place.top();
    for (const std::size_t in_row : rows) {
        int used = gap_ * (static_cast<int>(in_row) - 1);
        int high = 0;
        for (std::size_t k = 0; k < in_row; ++k) {
            used += wished_width(items[next + k]);
            high = std::max(high, items[next + k]->sizeHint().height());
        }
        const int spare = std::max(place.width() - used, 0);
        int left = place.left();
        const int growing =
            static_cast<int>(std::count_if(items.begin() + static_cast<std::ptrdiff_t>(next),
                                           items.begin() + static_cast<std::ptrdiff_t>(next + in_row), grows));
        const int columns = static_cast<int>(rows.front());
        int grown = 0;
        for (std::size_t k = 0; k < in_row; ++k) {
            QLayoutItem* item = items[next + k];
            int wide = wished_width(item);
            if (most_columns_ > 0) {
                const int at = static_cast<int>(k);
                const int room = place.width() - gap_ * (columns - 1);
                left = place.left() + room * at / columns + gap_ * at;
                wide = room * (at + 1) / columns - room * at / columns;
            } else if (grows(item)) {
                wide += spare * (grown + 1) / growing - spare * grown / growing;
                ++grown;
            }
            result.push_back({item, QRect(left, top, std::min(wide, place.width()), high)});
            left += wide + gap_;
        }
        next += in_row;
        top += high + gap_;
    }
    return result;
}

int RowsLayout::heightForWidth(int width) const {
    const std::vector<Placed> all = placed(QRect(0, 0, width, 0));
    return all.empty() ? 0 : all.back().place.bottom() + 1;
}

QSize RowsLayout::sizeHint() const {
    const std::vector<QLayoutItem*> items = shown();
    int wide = 0;
    int widest = 0;
    int high = 0;
    for (const QLayoutItem* item : items) {
        wide += wished_width(item) + gap_;
        widest = std::max(widest, wished_width(item));
        high = std::max(high, item->sizeHint().height());
    }
    if (most_columns_ > 0) wide = std::min(most_columns_, static_cast<int>(items.size())) * (widest + gap_);
    return {std::max(wide - gap_, 0), high};
}

QSize RowsLayout::minimumSize() const {
    QSize least;
    for (const QLayoutItem* item : shown())
        least = least.expandedTo({item->minimumSize().width(), item->sizeHint().height()});
    return least;
}

void RowsLayout::setGeometry(const QRect& place) {
    QLayout::setGeometry(place);
    for (const Placed& one : placed(place)) one.item->setGeometry(one.place);
}

}  // namespace plugside
